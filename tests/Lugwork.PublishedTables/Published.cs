namespace Lugwork.PublishedTables;

/// <summary>One joint of a build against what is published of it.</summary>
internal static class Published
{
    public static Fit Of(Build build, string joint) => build.Check().Findings.Single(f => f.Joint!.Id == joint);

    /// <summary>The key of what a page calls something; a word that is no value of the library fails the check, "unknown" and "none" stay.</summary>
    public static string Key<T>(string words, string source)
        where T : IInterfaceValue<T>
    {
        if (words is "unknown" or "none" or "")
        {
            return words;
        }

        TextReading<T> reading = T.Read(words);
        Assert.True(reading.IsClear, $"{source}: {words} is one {T.Called}, read: {string.Join(", ", reading.Values.Select(v => v.FitKey))} {reading.Reason}");
        return reading.Values[0].FitKey;
    }

    public static void Says(Build build, string joint, string source, Verdict expected, string remedy = "")
    {
        Fit fit = Of(build, joint);
        Assert.True(expected == fit.Verdict, $"{source}: {expected} is published, judged: {fit}");
        Assert.Contains(remedy, string.Join(" | ", fit.Remedies), StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Where the source only says that it is no fit, or only memory says that a part mends it.</summary>
    public static void SaysNothingMilder(Build build, string joint, string source, Verdict least)
    {
        Fit fit = Of(build, joint);
        Assert.True(fit.Verdict >= least, $"{source}: nothing milder than {least} is published, judged: {fit}");
    }
}
