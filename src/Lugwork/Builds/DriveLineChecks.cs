using System.Collections.Immutable;

namespace Lugwork;

/// <summary>The line of the chain: its steepest angle over a cassette, one ring and one sprocket, the height of a front derailleur's tab, the shell a crank is made for.</summary>
internal static class DriveLineChecks
{
    private const long Millimetre = Nanometres.PerMillimetre;

    /// <summary>One ring and one sprocket run within it, by the source.</summary>
    internal const long StraightNanometres = 2 * Millimetre;

    /// <summary>Beyond it no spacer is meant to bring them together. Our own bound, no source.</summary>
    internal const long CrookedNanometres = 6 * Millimetre;

    /// <summary>Inputs: chainline of the crank, hub, spacing of the sprockets, chainstay. No limit is published: the angle is told, and nothing is refused by it.</summary>
    public static Relation Angle { get; } = new ChainAngleRelation();

    private static readonly Reason Straight = new("single-line-straight", "The ring stands at {0} mm, the sprocket at {1} mm: within 2 mm.") { Sources = [Sources.OneSprocketLine] };

    private static readonly Reason NearlyStraight = new("single-line-off", "The ring stands at {0} mm, the sprocket at {1} mm, more than 2 mm apart: it runs loud, wears, and can throw the chain. Measure both again, and bring them together.", Cautions.ShiftSetUp)
    {
        Mend = "spacers under ring, sprocket or axle, or another spindle",
        Sources = [Sources.OneSprocketLine, Sources.GearHubChainline],
    };

    private static readonly Reason Crooked = new("single-line-crooked", "The ring stands at {0} mm, the sprocket at {1} mm, more than 6 mm apart (our own bound, no source).", Cautions.ShiftSetUp)
    {
        Mend = "a crank or a hub of the other's chainline",
        Sources = [Sources.GearHubChainline, Sources.OneSprocketLine],
    };

    /// <summary>Inputs: line of the one ring, line of the one sprocket.</summary>
    public static Relation OneSprocket { get; } = new SingleRelation();

    private static readonly Reason TabHigh = new("tab-for-larger-ring", "The tab lets a derailleur down to an outer ring of {0} teeth; this one has {1}: the cage may stay too high above it. Hold it there and measure 1 to 3 mm.", Cautions.ShiftSetUp)
    {
        Mend = "a larger outer ring, or an adapter that lowers the derailleur",
        Sources = [Sources.FrontDerailleurs],
    };

    private static readonly Reason TabNotSaid = new("tab-without-figure", "The frame maker prints no smallest outer ring for the tab: hold the derailleur there and measure 1 to 3 mm above the ring of {1}.", Cautions.ShiftSetUp) { Sources = [Sources.FrontDerailleurs] };

    private static readonly Reason TabReaches = new("tab-reaches-ring", "The tab lets a derailleur down to an outer ring of {0} teeth; this one has {1}.") { Sources = [Sources.FrontDerailleurs] };

    /// <summary>Inputs: smallest outer ring of the frame's tab, largest ring of the crank, mount of the front derailleur that hangs there; the last is not judged, but without a derailleur nothing is.</summary>
    public static SumRelation Tab { get; } = new SumRelation(
            "outer ring at least as large as the tab is made for", "teeth",
            v => v[0] == 0 ? 0 : v[1] - v[0], [-1, 1, 1],
            new(long.MinValue, new(Verdict.NeedsMeasuring, TabHigh)), new(0, new(Verdict.Fits, TabReaches)))
        .Without(0, Verdict.NeedsMeasuring, TabNotSaid).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate);

    /// <summary>Inputs: shell, width that the crank is made for.</summary>
    public static Relation ShellOfCrank { get; } = new CrankForShell();

    private sealed class SingleRelation : Relation, ICutsLengths
    {
        public override string Kind => "ring and sprocket in one line, within 2 mm";

        public override ImmutableArray<Source> RestsOn => [Sources.OneSprocketLine, Sources.GearHubChainline];

        public ImmutableArray<long> Cuts => [];

        public ImmutableArray<long> Gaps { get; } = [StraightNanometres, -StraightNanometres, CrookedNanometres, -CrookedNanometres];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            long off = Math.Abs(values[0] - values[1]);
            return values[0] == 0 || values[1] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
                : off <= StraightNanometres ? new(Verdict.Fits, Straight)
                : off <= CrookedNanometres ? new(Verdict.NeedsMeasuring, NearlyStraight)
                : new(Verdict.DoesNotFit, Crooked);
        }
    }
}
