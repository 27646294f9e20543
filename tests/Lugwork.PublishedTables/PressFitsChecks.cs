using Lugwork.Steering;

namespace Lugwork.PublishedTables;

/// <summary>Published and measured pairs of cup and bore, seat and race.</summary>
public sealed class PressFitsChecks
{
    private const string Rule = "Headset Tech: preparation; a headset maker";
    private const string Guide = "Headset Identification and Specification Guide, rev. F+; a headset maker, 2010";
    private const string OneInch = "Column of 2 Oct 2022: 1-inch headset, Italian vs JIS (in Japanese); Overwheel";
    private const string Manual = "The Paterek Manual, ch. 6";
    private const string Pair = "Crown race won't fit on fork; MTBR forum";
    private const string CarbonRace = "Crown race won't fit on carbon steerer; RoadBikeReview forums, 2012";
    private const string Reaming = "Musings on headset reaming tolerances; Velocipede Salon forum, 2020";
    private const string Fitting = "Fork crown race fitting; Cycling UK forum, 2020";
    private const string Types = "Building a bike from parts 2: headset types (table, in Japanese); shobota.com";

    [Theory]
    [InlineData(30.02, 29.92, false, Pair)] // measured on a normal pair
    [InlineData(44.05, 43.95, false, Rule)] // 0.1 is the rule's own limit
    [InlineData(44.04, 43.95, false, Reaming)]
    [InlineData(26.46, 26.43, false, Fitting)] // 0.03 to 0.05 is kind to brittle races
    [InlineData(26.48, 26.43, false, Fitting)]
    [InlineData(30.0, 29.90, false, Guide)]
    [InlineData(30.2, 30.10, false, Guide)]
    [InlineData(30.0, 29.85, true, Guide)] // above the other maker's 0.1, and published
    [InlineData(30.2, 30.05, true, Guide)]
    [InlineData(49.6, 49.57, false, Types)]
    public void A_published_pair_holds(double larger, double smaller, bool caution, string source)
    {
        SumCheck check = Check(larger, smaller);
        Assert.True(check.Verdict == Verdict.Fits && !check.Cautions.IsEmpty && check.Sentence.Contains("above the 0.10", StringComparison.Ordinal) == caution, $"{source}: {larger} in {smaller} holds, judged: {check}");
    }

    [Theory]
    [InlineData(33.6, 32.9, CarbonRace)] // 0.7 mm
    [InlineData(30.2, 29.9, OneInch)] // ISO cup in a JIS bore
    [InlineData(30.2, 29.9, Manual)] // has to be reamed
    [InlineData(30.0, 30.1, OneInch)] // JIS cup loose in an ISO bore
    [InlineData(26.4, 27.03, OneInch)] // a 27.0 race on a 26.4 seat
    [InlineData(27.07, 26.43, OneInch)] // a 26.4 race on a 27.0 seat
    [InlineData(34.1, 33.9, Rule)] // what one drawing seems to say is outside the other maker's limit
    public void A_published_misfit_needs_work(double larger, double smaller, string source)
    {
        SumCheck check = Check(larger, smaller);
        Assert.True(check.Verdict == Verdict.DoesNotFit && check.Remedy is not null, $"{source}: {larger} in {smaller} needs work, judged: {check}");
    }

    [Fact]
    [PrintedIn(Rule)]
    public void Beyond_the_rule_there_is_no_silent_fit()
    {
        for (double interference = 0.11; interference < 1; interference += 0.01)
        {
            SumCheck check = Check(44 + interference, 44);
            Assert.True(!check.Cautions.IsEmpty && check.Sentence.Contains(", above 0.15", StringComparison.Ordinal) | check.Sentence.Contains("above the 0.10", StringComparison.Ordinal), $"{Rule}: {interference} is above 0.1");
        }
    }

    private static SumCheck Check(double larger, double smaller) =>
        PressFit.Check(MeasuredLength.OfMillimetres((decimal)larger, 0), MeasuredLength.OfMillimetres((decimal)smaller, 0));
}
