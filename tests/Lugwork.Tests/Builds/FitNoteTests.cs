namespace Lugwork.Tests.Builds;

/// <summary>What fits and has to be read all the same.</summary>
public sealed class FitNoteTests
{
    [Theory]
    [InlineData("140", "160", true)]
    [InlineData("160", "160", false)]
    [InlineData("160", "140", false)]
    public void A_rear_rotor_that_is_the_larger_one_is_noted(string front, string rear, bool isNote)
    {
        Fit fit = Build.From(new Frame()).With(Rotor.Read(front), Slot.FrontRotor).With(Rotor.Read(rear), Slot.RearRotor).Check().Findings.Single(f => f.ReasonId is "rotors-alike" or "rear-rotor-larger");
        Assert.Equal(Verdict.Fits, fit.Verdict);
        Assert.Equal(isNote, fit.IsNote);
    }

    [Fact]
    public void Only_what_fits_is_a_note() => Assert.False(default(Fit).IsNote);

    /// <summary>A sentence that asks whether it was meant so, and one with a warning, are read; the plain ones are not.</summary>
    [Fact]
    public void What_asks_or_warns_is_noted_and_most_is_not()
    {
        Random random = new(31);
        (int noted, int plain) = (0, 0);
        for (int i = 0; i < 400; i++)
        {
            foreach (Fit fit in Bicycles.Any(random).Check().Findings)
            {
                bool asks = fit.Verdict == Verdict.Fits && (fit.Sentence.Contains('?', StringComparison.Ordinal) || !fit.Cautions.IsEmpty);
                Assert.True(!asks || fit.IsNote, fit.ToString());
                Assert.True(fit.Verdict == Verdict.Fits || !fit.IsNote, fit.ToString());
                noted += fit.IsNote ? 1 : 0;
                plain += fit.Verdict == Verdict.Fits && !fit.IsNote ? 1 : 0;
            }
        }

        Assert.True(noted > 20 && plain > noted, $"{noted} notes and {plain} others");
    }
}
