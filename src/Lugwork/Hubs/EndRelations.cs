using System.Collections.Immutable;

namespace Lugwork.Hubs;

/// <summary>What holds a hub in its ends: nuts, the length of a thru-axle, lips, washers.</summary>
internal static class EndRelations
{
    /// <summary>Code of a drive without gears inside.</summary>
    public const long PlainDrive = 1;

    /// <summary>Code of a hub with gears inside.</summary>
    public const long GearHub = 2;

    /// <summary>Code of ends that are known to be closed.</summary>
    public const long ClosedEnds = 101;

    /// <summary>M10 on 3/8 in is 0.475 mm, 3/8 in on M9 0.525 mm: such a nut starts, and its threads shear.</summary>
    private const long NearlyOneSize = 600_000;

    private static readonly Reason NutFromMemory = new("nut-thread-from-memory", "Nuts of {1} on an axle of {0}; that 14 mm axles have 1 mm a turn rests on memory: try the nut by hand over its whole length.", Cautions.Axle) { Sources = [Sources.Memory] };

    private static readonly Reason LengthRight = new("axle-length-right", "A thru-axle {1} mm long where the maker asks for {0} mm; length of the thread and seat of the head, flat or conical, must be the maker's too.")
    {
        Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker],
    };

    private static readonly Reason ShorterThanHub = new("axle-shorter-than-hub", "A thru-axle {1} mm long does not reach through a hub of {2} and into the thread.", Cautions.AxleThread)
    {
        Mend = "the axle that the frame or fork maker names",
        Sources = [Sources.Derived, Sources.ThruAxleHelp],
    };

    private static readonly Reason AxleTooShort = new("axle-too-short", "A thru-axle {1} mm long where the maker asks for {0} mm: fewer turns of the thread hold the wheel.", Cautions.AxleThread)
    {
        Mend = "the axle that the frame or fork maker names",
        Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker],
    };

    private static readonly Reason AxleTooLong = new("axle-too-long", "A thru-axle {1} mm long where the maker asks for {0} mm: it may bottom in a closed end before its head clamps, or stand out.", Cautions.AxleThread)
    {
        Mend = "the axle that the frame or fork maker names",
        Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker],
    };

    private static readonly Reason Closed = new("closed-ends", "{0} is closed: the brake cannot push the axle out.") { Sources = [Sources.OpenEndsGlossary] };

    private static readonly Reason LipsKept = new("lips-kept", "A disc brake on open ends, {0}, with {2}: keep the skewer tight and the lips as they are.", Cautions.DiscOnOpenEnds) { Sources = [Sources.OpenEndsGlossary] };

    private static readonly Reason NoGearsInside = new("no-gears-inside", "No gears inside the hub: its axle is not turned against the ends.") { Sources = [Sources.HubGearPage] };

    private static readonly Reason WashersOfSlot = new("washers-of-slot", "A hub gear in a {1} with washers made for it: the wheel is drawn back to tension the chain.", Cautions.HubGearAxle) { Sources = [Sources.NonTurnWashers] };

    private static readonly Bridge Tensioner = new()
    {
        Id = "chain-tensioner-for-vertical-slot",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = "a chain tensioner, where no eccentric bottom bracket or sliding end tensions the chain",
        From = DropoutSlot.Vertical.FitCode,
        To = DropoutSlot.Vertical.FitCode,
        Caution = Cautions.HubGearAxle,
        Sources = [Sources.CommonPractice, Sources.NonTurnWashers],
    };

    /// <summary>Inputs: thread of the axle, thread of the nuts.</summary>
    public static Relation Nuts { get; } = new Matrix(0, 1, Nut, [], [Sources.AxleNut]);

    /// <summary>Inputs: length that the frame or fork asks for, length of the axle, O.L.D. of the end (nanometres; 1 where it is the maker's own).</summary>
    public static Relation Length { get; } = new LengthRelation();

    /// <summary>Inputs: fork end, caliper mounting, lips.</summary>
    public static Relation DiscOnOpenEnds { get; } = new Computed("closed ends, or open ones with lips", Lips, [], [Sources.OpenEndsGlossary]);

    /// <summary>Inputs: drive of the hub (plain or gears inside), slot of the frame (or closed ends), slot that the washers are made for.</summary>
    public static Relation GearHubInDropout { get; } = new Computed("from the table of slot and washers, for hubs with gears inside", Washers, [Tensioner], [Sources.NonTurnWashers, Sources.CommonPractice]);

    private static Outcome Nut(long axle, long nut)
    {
        if (axle == nut)
        {
            return new(Verdict.Fits, axle == HubAxleThread.M14.FitCode ? NutFromMemory : SameNut);
        }

        long over = (HubAxleThread.OfFitCode(nut).MainLength?.Value ?? 0) - (HubAxleThread.OfFitCode(axle).MainLength?.Value ?? 0);
        return over == 0 ? new(Verdict.DoesNotFit, Misfits.NutPitch)
            : over is > 0 and <= NearlyOneSize ? new(Verdict.Unsafe, Misfits.NutLoose)
            : new(Verdict.DoesNotFit, Misfits.NutDiameter);
    }

    private static Outcome Lips(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        HubStandard end = HubStandard.OfFitCode(values[0]);
        return end.Axles.IsEmpty ? new(Verdict.NeedsMeasuring, Misfits.OwnEnd)
            : end.TakesThruAxle ? new(Verdict.Fits, Closed)
            : values[2] != RetentionLips.Kept.FitCode ? new(Verdict.Unsafe, Misfits.WithoutLips)
            : new(Verdict.Fits, LipsKept);
    }

    private static Outcome Washers(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        return values[0] == PlainDrive ? new(Verdict.Fits, NoGearsInside)
            : values[1] == ClosedEnds ? new(Verdict.NeedsMeasuring, Misfits.GearHubInClosedEnds)
            : values[2] == 0 ? new(Verdict.NeedsMeasuring, values[1] == DropoutSlot.Vertical.FitCode ? Misfits.VerticalSlot : Misfits.NoWashers)
            : values[2] != values[1] ? new(Verdict.DoesNotFit, Misfits.OtherWashers)
            : values[1] == DropoutSlot.Vertical.FitCode ? new(Verdict.NeedsPart, Misfits.VerticalHeld, Tensioner)
            : new(Verdict.Fits, WashersOfSlot);
    }

    /// <summary>An axle is ruled to half a millimetre; our own bound.</summary>
    private const long Ruled = Nanometres.PerMillimetre / 2;

    private sealed class LengthRelation : Relation, ICutsLengths
    {
        public ImmutableArray<long> Cuts => [];

        public ImmutableArray<long> Gaps { get; } = [Ruled, -Ruled];

        public override string Kind => "the length that the maker asks for";

        public override ImmutableArray<Source> RestsOn => [Sources.ThruAxleHelp, Sources.ThruAxleMaker, Sources.Derived];

        public override Outcome Judge(ReadOnlySpan<long> values) =>
            values[0] == 0 || values[1] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : values[1] <= values[2] ? new(Verdict.DoesNotFit, ShorterThanHub)
            : values[1] < values[0] - Ruled ? new(Verdict.Unsafe, AxleTooShort)
            : values[1] > values[0] + Ruled ? new(Verdict.DoesNotFit, AxleTooLong)
            : new(Verdict.Fits, LengthRight);
    }

    private static readonly Reason SameNut = new("same-axle-thread", "Nuts of {1} on an axle of {0}.", Cautions.Axle) { Sources = [Sources.AxleNut] };

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason NutPitch = new("nut-of-another-pitch", "Nuts of {1} on an axle of {0}: one diameter, two pitches. They start and cross-thread; a caliper cannot tell them, a thread gauge can.", Cautions.Axle)
        {
            Mend = "nuts of the axle's own thread",
            Sources = [Sources.AxleNut],
        };

        public static readonly Reason NutLoose = new("nut-nearly-of-the-axle", "Nuts of {1} on an axle of {0}: they go on, hold by the tops of the threads and strip when they are tightened.", Cautions.Axle)
        {
            Mend = "nuts of the axle's own thread",
            Sources = [Sources.NutStripped],
        };

        public static readonly Reason NutDiameter = new("nut-of-another-diameter", "Nuts of {1} do not go on an axle of {0}.", Cautions.Axle)
        {
            Mend = "nuts of the axle's own thread",
            Sources = [Sources.AxleNut],
        };

        public static readonly Reason WithoutLips = new("without-lips", "A disc brake on open ends, {0}, without retention lips: the brake pushes the axle towards the mouth of the slot, and nothing keeps the wheel in when the skewer works loose.", Cautions.DiscOnOpenEnds)
        {
            Mend = "a fork with its lips in place, or one for a thru-axle",
            Sources = [Sources.OpenEndsGlossary],
        };

        public static readonly Reason OwnEnd = new("disc-on-own-end", "{0}: the fork's maker says what holds the wheel against a disc brake.", Cautions.DiscOnOpenEnds) { Sources = [Sources.OpenEndsGlossary] };

        public static readonly Reason VerticalSlot = new("gear-hub-in-vertical-slot", "A hub gear in a {1}: nothing in the end tensions the chain, and the washers that keep the axle from turning follow the angle of the slot. Look for a tensioner or an eccentric bottom bracket, and for washers made for this slot.", Cautions.HubGearAxle)
        {
            Sources = [Sources.CommonPractice, Sources.NonTurnWashers],
        };

        public static readonly Reason VerticalHeld = new("gear-hub-held-in-vertical-slot", "A hub gear in a {1} with washers made for it: nothing in the end tensions the chain. It takes [bridge].", Cautions.HubGearAxle)
        {
            Sources = [Sources.CommonPractice, Sources.NonTurnWashers],
        };

        public static readonly Reason OtherWashers = new("washers-of-another-slot", "A hub gear in a {1} with washers made for a {2}: they let the axle turn.", Cautions.HubGearAxle)
        {
            Mend = "the hub maker's washers for this slot",
            Sources = [Sources.NonTurnWashers],
        };

        public static readonly Reason NoWashers = new("no-washers", "A hub gear in a {1} without washers: ask the hub maker what keeps its axle from turning.", Cautions.HubGearAxle) { Sources = [Sources.NonTurnWashers] };

        public static readonly Reason GearHubInClosedEnds = new("gear-hub-in-closed-ends", "A hub gear in closed ends: ask the hub maker for its version for this axle and what keeps it from turning.", Cautions.HubGearAxle) { Sources = [Sources.NonTurnWashers] };
    }
}
