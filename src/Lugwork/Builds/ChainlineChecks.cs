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

    private static readonly ImmutableArray<Source> Model = [Sources.ChainlineFormula, Sources.FatHubSpacing, Sources.ChainlineTable];

    private static readonly Reason Sold = new("chainline-of-rear-end", "A crank of {0} is sold for a rear end of {1}.") { Sources = [Sources.ChainlineTable, Sources.CrankTable] };

    private static readonly Reason Off = new("chainline-of-other-rear-end", "A crank of {0} is not sold for a rear end of {1}: measure both lines on the bicycle. More than 3 mm between the rings and the middle of the sprockets makes outer gears run rough.", Cautions.ShiftSetUp)
    {
        Mend = "a ring with another offset, or a crank for this rear end",
        Sources = Model,
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

    private static readonly Reason WideRoad = new("road-rings-wide-ends", "A road double of {0} with a rear end of {1}: makers ask for a longer chainstay, or for rings moved out. Ask the crank's maker, and measure both lines.", Cautions.ShiftSetUp)
    {
        Mend = "a crank with its rings moved out, or the maker's word for this chainstay",
        Sources = [Sources.ChainlineRoadDisc],
    };

    /// <summary>Inputs: chainline of the crank, hub, spacing of the sprockets.</summary>
    public static Relation Rings { get; } = new Computed("chainline sold for the rear end, or measured", Judge, [], [.. Model, Sources.ChainlineRoadDisc, Sources.CrankTable]);

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

    private static Outcome Judge(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

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

        foreach (int width in front.RearEnds)
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
