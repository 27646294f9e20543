namespace Lugwork.PublishedTables;

/// <summary>Puts the parts of a published case together and judges one joint.</summary>
internal static class Case
{
    public static Fit Judge(string joint, string frame, params (Slot Slot, Part Part)[] parts)
    {
        Build build = Build.From(Frame.Read(frame));
        foreach ((Slot slot, Part part) in parts)
        {
            build = build.With(part, slot);
        }

        return build.Check().Fits.Single(f => f.Joint!.Id == joint);
    }

    /// <summary>Verdict and, where one is named, a word that the remedies, cautions or the sentence must bring.</summary>
    public static void Expect(Verdict expected, string says, Fit fit)
    {
        Assert.Equal(expected, fit.Verdict);
        if (says.Length > 0)
        {
            string told = fit.Sentence + string.Join(' ', fit.Remedies) + string.Join(' ', fit.Cautions);
            Assert.Contains(says, told, StringComparison.Ordinal);
        }
    }
}
