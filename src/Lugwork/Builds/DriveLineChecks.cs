using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>The line of the chain: its steepest angle over a cassette, one ring and one sprocket, the height of a front derailleur's tab, the shell a crank is made for.</summary>
internal static class DriveLineChecks
{
    private const long Millimetre = Nanometres.PerMillimetre;

    /// <summary>Tangent of 4 degrees, in ten-millionths.</summary>
    private const long SteepestSlope = 699_268;

    private const long Slope = 10_000_000;

    internal const double SteepestDegrees = 4;

    /// <summary>One ring and one sprocket run within it, by the source.</summary>
    internal const long StraightNanometres = 2 * Millimetre;

    /// <summary>Beyond it no spacer is meant to bring them together. Our own bound, no source.</summary>
    internal const long CrookedNanometres = 6 * Millimetre;

    private static readonly ImmutableArray<Source> OfAngle = [Sources.ChainAngle, Sources.ChainlineFormula, Sources.CommonPractice];

    private static readonly Reason NoModel = new("chain-angle-not-known", "A crank of {0}, a rear end of {1} and sprockets {2}: the sum knows no gap or no spacing for them; measure both lines.", Cautions.ShiftSetUp) { Sources = OfAngle };

    private static readonly Reason Steep = new("chain-angle-steep", "From the rings of {0} to the farther end of {2} sprockets on a chainstay of {3} mm the chain runs at more than 4 degrees (our own bound, no page prints one; drives as they are sold stay below): try the outermost gears under load.", Cautions.ShiftSetUp)
    {
        Mend = "a ring with another offset, or fewer sprockets used",
        Sources = OfAngle,
    };

    private static readonly Reason Shallow = new("chain-angle-usual", "From the rings of {0} to either end of {2} sprockets on a chainstay of {3} mm the chain runs at 4 degrees or less.") { Sources = OfAngle };

    /// <summary>Inputs: chainline of the crank, hub, spacing of the sprockets, chainstay. From the middle of the rings, by the model of the sprockets.</summary>
    public static Relation Angle { get; } = new Computed("angle of the chain from the rings to the farthest sprocket, at most 4 degrees", JudgeAngle, [], OfAngle);

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

    private static readonly Reason TabReaches = new("tab-reaches-ring", "The tab lets a derailleur down to an outer ring of {0} teeth; this one has {1}.") { Sources = [Sources.FrontDerailleurs] };

    /// <summary>Inputs: smallest outer ring of the frame's tab, largest ring of the crank.</summary>
    public static SumRelation Tab { get; } = new SumRelation(
            "outer ring at least as large as the tab is made for", "teeth",
            v => v[0] == 0 ? 0 : v[1] - v[0], [-1, 1],
            new(long.MinValue, new(Verdict.NeedsMeasuring, TabHigh)), new(0, new(Verdict.Fits, TabReaches)))
        .Without(0, Verdict.NeedsMeasuring, TabHigh).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate);

    private static readonly Reason ForShell = new("crank-for-this-shell", "A crank made for a shell {1} mm wide across one of {0}.") { Sources = [Sources.SuperBoostPress] };

    private static readonly Reason ShellWider = new("crank-for-narrower-shell", "A crank made for a shell {1} mm wide does not reach across one of {0}.") { Mend = "a crank made for this shell", Sources = [Sources.CranksAndBrackets] };

    private static readonly Reason ShellNarrower = new("crank-for-wider-shell", "A crank made for a shell {1} mm wide across one of {0}: only spacers of its maker's chart make up the rest, and they move the rings.", Cautions.ShiftSetUp) { Sources = [Sources.CranksAndBrackets] };

    private static readonly Reason ShellFarNarrower = new("crank-for-far-wider-shell", "A crank made for a shell {1} mm wide stands 5 mm or more too far out on both sides of one of {0}: its rings miss the chainline of the frame, and the stays.", Cautions.ShiftSetUp)
    {
        Mend = "a crank made for this shell, with the frame's chainline",
        Sources = [Sources.SuperBoostPress],
    };

    /// <summary>Inputs: width of the shell, width that the crank is made for.</summary>
    public static Relation ShellOfCrank { get; } = new ShellRelation();

    /// <summary>Twice the greatest run from the middle of the rings to a sprocket, micrometres; null where the model knows nothing.</summary>
    private static long? Farthest(long chainline, long hub, long spacing)
    {
        long gap = HubStandard.OfFitCode(hub).GapMicrometres;
        if (gap == 0 || SprocketSpacing.OfFitCode(spacing) is not { StackMicrometres: > 0 } sprockets)
        {
            return null;
        }

        FrontChainline front = FrontChainline.OfFitCode(chainline);
        long rings = (long)((front.Range.Least + front.Range.Most) * 1_000);
        long smallest = gap - (long)(2 * RearChainline.UsualEnd * 1_000) - sprockets.SprocketMicrometres;
        long largest = smallest - (2 * (sprockets.Speeds - 1) * sprockets.MostMicrometres);
        return Math.Max(Math.Abs(smallest - rings), Math.Abs(rings - largest));
    }

    private static Outcome JudgeAngle(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        return values[2] == 0 || values[3] == 0 || Farthest(values[0], values[1], values[2]) is not { } twice ? new(Verdict.NeedsMeasuring, NoModel)
            : (twice * Slope) > (2 * (Math.Min(values[3], 100_000 * Millimetre) / 1_000) * SteepestSlope) ? new(Verdict.NeedsMeasuring, Steep)
            : new(Verdict.Fits, Shallow);
    }

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

    private sealed class ShellRelation : Relation, ICutsLengths
    {
        private const long FarNarrower = 10 * Millimetre;

        public override string Kind => "the shell that the crank is made for";

        public override ImmutableArray<Source> RestsOn => [Sources.SuperBoostPress, Sources.CranksAndBrackets];

        public ImmutableArray<long> Cuts { get; } = EveryShell();

        public ImmutableArray<long> Gaps { get; } = [-FarNarrower];

        /// <summary>Where the shell is not known, it can be each of the list.</summary>
        private static ImmutableArray<long> EveryShell()
        {
            SortedSet<long> cuts = [];
            foreach (Shell shell in Shell.All)
            {
                cuts.Add(shell.WidthNanometres);
                cuts.Add(shell.WidthNanometres + FarNarrower);
            }

            return [.. cuts];
        }

        public override Outcome Judge(ReadOnlySpan<long> values) =>
            values[0] == 0 || values[1] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : values[0] == values[1] ? new(Verdict.Fits, ForShell)
            : values[0] > values[1] ? new(Verdict.DoesNotFit, ShellWider)
            : values[1] - values[0] >= FarNarrower ? new(Verdict.DoesNotFit, ShellFarNarrower)
            : new(Verdict.NeedsMeasuring, ShellNarrower);
    }
}
