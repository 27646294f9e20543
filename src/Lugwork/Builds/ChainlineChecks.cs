using System.Collections.Immutable;
using Lugwork.Drivetrain;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>
/// The rings against the rear end. A crank fits the widths of rear ends with which its chainline is sold; beside them the line is measured, and where the model
/// of the sprockets says that the rings stand beside all of them, it is refused.
/// </summary>
internal static class ChainlineChecks
{
    /// <summary>The road double whose makers ask for a longer chainstay behind wide rear ends, micrometres.</summary>
    private const int RoadDouble = 43_500;

    private const int WideGap = 135_000;

    /// <summary>Rings and middle of the sprockets run well within it, by the sources.</summary>
    private const long Straight = 3 * Nanometres.PerMillimetre;

    private static readonly ImmutableArray<Source> Model = [Sources.ChainlineFormula, Sources.FatHubSpacing, Sources.ChainlineTable];

    private static readonly Reason Sold = new("chainline-of-rear-end", "A crank of {0} is sold for a rear end of {1}.") { Sources = [Sources.ChainlineTable, Sources.CrankTable] };

    private static readonly Reason Off = new("chainline-of-other-rear-end", "A crank of {0} is not sold for a rear end of {1}: measure both lines on the bicycle. More than 3 mm between the rings and the middle of the sprockets makes outer gears run rough.", Cautions.ShiftSetUp)
    {
        Mend = "a ring with another offset, or a crank for this rear end",
        Sources = Model,
        Asks = [3, 4],
    };

    private static readonly Reason Past = new("chainline-past-the-sprockets", "A crank of {0} stands beside all {2} sprockets of a rear end of {1}: the chain runs straight on none.", Cautions.ShiftSetUp)
    {
        Mend = "a crank for this rear end",
        Sources = Model,
    };

    private static readonly Reason NoOffset = new("chainline-needs-offset", "A crank of {0} is for a rear end that is moved to the drive side; {1} is not.", Cautions.ShiftSetUp)
    {
        Mend = "a crank for this rear end",
        Sources = [Sources.FatHubSpacing],
    };

    private static readonly Reason WideRoad = new("road-rings-wide-ends", "Rings at {0} with a rear end of {1}: makers of road doubles ask for a longer chainstay, or for rings moved out. Ask the crank's maker, and measure both lines.", Cautions.ShiftSetUp)
    {
        Mend = "a crank with its rings moved out, or the maker's word for this chainstay",
        Asks = [3, 4],
        Sources = [Sources.ChainlineRoadDisc],
    };

    private static readonly Reason InLine = new("chainline-measured", "The rings stand at {3} mm, the middle of the sprockets at {4} mm: within 3 mm.") { Sources = Model };

    private static readonly Reason OutOfLine = new("chainline-measured-off", "The rings stand at {3} mm, the middle of the sprockets at {4} mm: more than 3 mm apart, and outer gears run rough. It takes [bridge].", Cautions.ShiftSetUp) { Sources = Model };

    private static readonly Reason MeasuredPast = new("chainline-measured-past", "The rings stand at {3} mm, beside all {2} sprockets, of which the middle stands at {4} mm: the chain runs straight on none.", Cautions.ShiftSetUp)
    {
        Mend = "a crank for this rear end",
        Sources = Model,
    };

    private static readonly Bridge MovedRing = new()
    {
        Id = "ring-moved-into-line",
        Kind = BridgeKind.Spacers,
        Result = Verdict.NeedsPart,
        What = "a ring with another offset, or the spacers of the crank's maker, that bring rings and sprockets within 3 mm",
        Sources = Model,
    };

    /// <summary>Inputs: chainline of the crank, hub, spacing of the sprockets, and the lines of rings and sprockets as measured.</summary>
    public static Relation Rings { get; } = new RingsWithRearEnd();

    private sealed class RingsWithRearEnd : Relation, ICutsLengths
    {
        private static readonly long[] Halves = [.. SprocketSpacing.All.Where(s => s.StackMicrometres > 0).Select(HalfStack).Distinct()];

        public override string Kind => "chainline sold for the rear end, or both lines measured";

        public override ImmutableArray<Bridge> Bridges => [MovedRing];

        public override ImmutableArray<Source> RestsOn => [.. Model, Sources.ChainlineRoadDisc, Sources.CrankTable];

        /// <summary>Where a line of the rings is no longer that of a crank as it is sold.</summary>
        public ImmutableArray<long> Cuts { get; } = [.. FrontChainline.All.SelectMany(c => new[] { Edge(c.Range.Least) - Straight, Edge(c.Range.Most) + Straight }).Distinct()];

        public ImmutableArray<long> Gaps { get; } = [Straight, -Straight, .. Halves, .. Halves.Select(h => -h)];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            if (values[0] == 0 || values[1] == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            long off = Math.Abs(values[3] - values[4]);
            bool measured = values[3] != 0 && values[4] != 0;
            return !measured ? Listed(values)
                : off <= Straight ? new(Verdict.Fits, InLine)
                : values[2] != 0 && SprocketSpacing.OfFitCode(values[2]) is { StackMicrometres: > 0 } sprockets && off > HalfStack(sprockets) ? new(Verdict.DoesNotFit, MeasuredPast)
                : IsAsSold(values[0], values[3]) && Listed(values) is { Verdict: Verdict.Fits } sold ? sold
                : new(Verdict.NeedsPart, OutOfLine, MovedRing);
        }

        /// <summary>The rings stand where the crank is sold to have them: what its maker sells it for then holds, though the middle of the sprockets is farther off.</summary>
        private static bool IsAsSold(long chainline, long rings)
        {
            FrontChainline front = FrontChainline.OfFitCode(chainline);
            return rings >= Edge(front.Range.Least) - Straight && rings <= Edge(front.Range.Most) + Straight;
        }

        private static long Edge(decimal millimetres) => (long)(millimetres * Nanometres.PerMillimetre);

        /// <summary>From the middle of the sprockets to the farthest place where one can stand, and the error of reading two lines; nanometres.</summary>
        private static long HalfStack(SprocketSpacing sprockets) =>
            (((sprockets.Speeds - 1) * sprockets.MostMicrometres / 2) + RearChainline.ErrorMicrometres) * 1_000L;
    }

    private static readonly Reason HangerlessLine = new("hangerless-chainline", "A crank of {0} under a derailleur with {1}, which is made for a chainline of 55 mm.", Cautions.ShiftSetUp) { Sources = [Sources.Chainline55] };

    private static readonly Reason HangerlessOff = new("hangerless-other-chainline", "A crank of {0} under a derailleur with {1}: hangerless drives are made for a chainline of 55 mm, others for less. Ask the maker of the drive, and measure both lines.", Cautions.ShiftSetUp)
    {
        Mend = "a ring with another offset, or a crank of the drive's own chainline",
        Sources = [Sources.Chainline55],
    };

    private static readonly Reason AnyHanger = new("hanger-chainline", "A crank of {0} under a derailleur with {1}.") { Sources = [Sources.Chainline55] };

    /// <summary>Inputs: chainline of the crank, mount of the rear derailleur.</summary>
    public static Relation OfDerailleur { get; } = new Computed("the chainline of a hangerless drive", v => OfMount(v[0], v[1]), [], [Sources.Chainline55]);

    private static Outcome OfMount(long chainline, long mount) =>
        chainline == 0 || mount == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
        : (chainline == FrontChainline.OffRoad55.FitCode) != (mount == DerailleurMount.Hangerless.FitCode) ? new(Verdict.NeedsMeasuring, HangerlessOff)
        : mount == DerailleurMount.Hangerless.FitCode ? new(Verdict.Fits, HangerlessLine) : new(Verdict.Fits, AnyHanger);

    private static Outcome Listed(ReadOnlySpan<long> values)
    {
        FrontChainline front = FrontChainline.OfFitCode(values[0]);
        HubStandard hub = HubStandard.OfFitCode(values[1]);
        (long least, long most) = ((long)(front.Range.Least * 1_000), (long)(front.Range.Most * 1_000));
        int gap = hub.GapMicrometres;
        if (most == RoadDouble && gap >= WideGap)
        {
            return new(Verdict.NeedsMeasuring, WideRoad);
        }

        if (front == FrontChainline.FatOffset && HubDetails.Of(hub).Shift is not > 0)
        {
            return new(Verdict.DoesNotFit, NoOffset);
        }

        foreach (int width in front.RearEndsMillimetres)
        {
            if (width * 1_000 == hub.OldMicrometres)
            {
                return new(Verdict.Fits, Sold);
            }
        }

        if (values[2] == 0 || gap == 0 || SprocketSpacing.OfFitCode(values[2]) is not { StackMicrometres: > 0 } sprockets)
        {
            return new(Verdict.NeedsMeasuring, Off);
        }

        long smallest = (gap / 2) - (long)(RearChainline.UsualEnd * 1_000) - (sprockets.SprocketMicrometres / 2);
        long largest = smallest - ((sprockets.Speeds - 1) * sprockets.MostMicrometres);
        return least > smallest + RearChainline.ErrorMicrometres || most < largest - RearChainline.ErrorMicrometres ? new(Verdict.DoesNotFit, Past) : new(Verdict.NeedsMeasuring, Off);
    }
}
