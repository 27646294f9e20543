namespace Lugwork.Tests.Builds;

/// <summary>A bare crank that may carry a second ring: what is counted with the one ring beside it does not fit by that alone. 46 and 30 teeth with 11 to 34 need (46 - 30) + (34 - 11) = 39.</summary>
public sealed class BareCrankTests
{
    private static Build With(string crank, int capacity) => Build.From(Frame.Read("chainstay 430")).With(Crankset.Read(crank)).With(Chainring.Read("teeth 46")).With(Cassette.Read("smallest sprocket 11; largest sprocket 34"))
        .With(RearDerailleur.Read(FormattableString.Invariant($"capacity {capacity}"))).With(Chain.Read("pitches 112"));

    private static Verdict? Of(FitReport report, string joint) => report.Findings.Where(f => f.Joint!.Id == joint).Select(f => (Verdict?)f.Verdict).SingleOrDefault();

    [Theory]
    [InlineData("largest ring none; chainline gravel-2x", 25, Verdict.NeedsMeasuring)]
    [InlineData("largest ring none; chainline off-road", 25, Verdict.NeedsMeasuring)]
    [InlineData("largest ring none; chainline gravel-2x | gravel-1x13", 25, Verdict.NeedsMeasuring)]
    [InlineData("largest ring none; smallest ring 30", 38, Verdict.DoesNotFit)]
    [InlineData("largest ring none; smallest ring 30", 39, Verdict.Fits)]
    [InlineData("largest ring none; chainline gravel-2x; smallest ring none", 25, Verdict.Fits)]
    [InlineData("largest ring none; chainline gravel-1x13", 25, Verdict.Fits)]
    [InlineData("largest ring none", 25, Verdict.Fits)]
    public void The_smaller_ring_counts_where_there_may_be_one(string crank, int capacity, Verdict verdict) =>
        Assert.Equal(verdict, Of(With(crank, capacity).Check(), "derailleur-capacity-with-ring"));

    [Theory]
    [InlineData("chainline gravel-2x", true)]
    [InlineData("chainline off-road", true)]
    [InlineData("smallest ring 30", true)]
    [InlineData("chainline gravel-1x13", false)]
    [InlineData("chainline unknown", false)]
    public void A_second_ring_is_asked_about(string crank, bool asked)
    {
        FitReport report = With("largest ring none; " + crank, 45).Check();
        Assert.Equal(asked ? Verdict.NeedsMeasuring : Verdict.Fits, Of(report, "ring-counted-with-crank"));
        Assert.Equal(asked, report.ToMeasure.Any(m => m.What.Slot == Slot.Crankset && m.What.Field == "smallestRing"));
        Assert.DoesNotContain(" none and ", report.Findings.Single(f => f.Joint!.Id == "ring-counted-with-crank").Sentence, StringComparison.Ordinal);
    }

    /// <summary>A front derailleur moves the chain between rings: a bare crank under it has more than the one ring beside it, whatever its chainline says.</summary>
    [Theory]
    [InlineData("largest ring none")]
    [InlineData("largest ring none; chainline gravel-2x")]
    public void Under_a_front_derailleur_no_bare_crank_fits(string crank)
    {
        FitReport report = With(crank, 25).With(FrontDerailleur.Read("band-34.9")).Check();
        Assert.Equal(Verdict.NeedsMeasuring, Of(report, "front-difference"));
        Assert.DoesNotContain(report.Findings, f => f.Verdict == Verdict.Fits && f.Joint!.Id is "derailleur-capacity-with-ring" or "chain-taken-up-with-ring");
        Assert.Null(Of(With("largest ring 46; smallest ring 30", 39).With(FrontDerailleur.Read("band-34.9")).Check(), "front-difference"));
    }

    [Fact]
    public void The_ring_of_unknown_teeth_is_counted_whatever_they_are()
    {
        Fit fit = Build.From(Frame.Read("steel")).With(Crankset.Read("largest ring none")).With(Chainring.Read("teeth unknown")).Check().Findings.Single(f => f.Joint!.Id == "ring-counted-with-crank");
        Assert.Equal(Verdict.Fits, fit.Verdict);
        Assert.Contains("whatever its teeth", fit.Sentence, StringComparison.Ordinal);
    }

    /// <summary>What only a bare crank asks is not asked beside a crank that has its rings.</summary>
    [Fact]
    public void The_needs_of_a_crank_with_rings_have_no_row_of_a_bare_one()
    {
        Build With(string crank) => Build.From(Frame.Read("chainstay 430")).With(Crankset.Read(crank)).With(Chainring.Read("teeth 46")).With(Cassette.Read("smallest sprocket 11; largest sprocket 34"));
        bool Asks(string crank, Slot slot) => With(crank).Needs().Of(slot)!.Lines.Any(l => l.Joint.Id.EndsWith("-with-ring", StringComparison.Ordinal));
        Assert.All([Slot.RearDerailleur, Slot.Chain], s => Assert.False(Asks("largest ring 46; smallest ring 30", s)));
        Assert.All([Slot.RearDerailleur, Slot.Chain], s => Assert.True(Asks("largest ring none", s)));
    }
}
