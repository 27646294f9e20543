using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>Rear derailleur on frame.</summary>
internal static class HangerRelations
{
    private static readonly Reason Universal = new("on-universal-hanger", "Derailleur with {1} on {0}: the hanger part takes any M10 x 1 derailleur.") { Sources = [Sources.UniversalHangerGravel] };

    private static readonly Reason Coaxial = new("on-universal-end", "{1} derailleur clamps the frame end of {0} itself.") { Sources = [Sources.UniversalHangerMaker, Sources.UniversalHangerGravel] };

    private static readonly Reason LinkOff = new("link-removed", "Derailleur with {1} on {0}: its intermediate link comes off.") { Sources = [Sources.DirectMountHanger] };

    private static readonly Bridge Link = new()
    {
        Id = "direct-mount-derailleur-on-hanger",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = "the derailleur's own intermediate link",
        From = DerailleurMount.DirectMount.FitCode,
        To = Hanger.M10.FitCode,
        Sources = [Sources.DirectMountHanger],
    };

    private static readonly Bridge Claw = new()
    {
        Id = "derailleur-on-claw",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsMeasuring,
        What = "a bolt-on claw hanger, if the axle slot is open; closed ends take none",
        From = DerailleurMount.Bolt.FitCode,
        To = Hanger.NoHanger.FitCode,
        Sources = [Sources.HangersDemystified],
    };

    private static readonly Bridge Tapping = new()
    {
        Id = "derailleur-on-tapped-hole",
        Kind = BridgeKind.ShopWork,
        Result = Verdict.NeedsMeasuring,
        What = "chasing or tapping the hole M10 x 1 and, where there is no stop, making one (leave it to a shop); or a claw in an open axle slot",
        From = DerailleurMount.Bolt.FitCode,
        To = Hanger.Plain.FitCode,
        Sources = [Sources.UnthreadedEnds, Sources.HangersDemystified],
    };

    /// <summary>Inputs: hanger, derailleur.</summary>
    public static Relation OnHanger { get; } = new Matrix(0, 1, Cell, [Link, Claw, Tapping], [Sources.UniversalHangerNews, Sources.UniversalHangerMaker, Sources.DirectMountHanger]);

    private static Outcome Cell(long place, long mount)
    {
        Hanger hanger = Hanger.OfFitCode(place);
        if (mount == DerailleurMount.Hangerless.FitCode)
        {
            return hanger == Hanger.Universal ? new(Verdict.Fits, Coaxial) : new(Verdict.DoesNotFit, Misfits.NoEnd);
        }

        bool direct = mount == DerailleurMount.DirectMount.FitCode;
        if (hanger == Hanger.NoHanger)
        {
            return new(Verdict.NeedsMeasuring, Misfits.AskClaw, Claw, direct ? Link : null);
        }

        if (hanger == Hanger.Plain || hanger == Hanger.M10Pitch26)
        {
            return new(Verdict.NeedsMeasuring, Misfits.ChaseOrTap, Tapping, direct ? Link : null);
        }

        return hanger == Hanger.DirectMount
            ? direct ? new(Verdict.Fits, LinkOff) : new(Verdict.DoesNotFit, Misfits.TooLong)
            : direct ? new(Verdict.NeedsPart, Reasons.Bridged, Link)
            : new(Verdict.Fits, hanger == Hanger.Universal ? Universal : Misfits.Threaded);
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason Threaded = new("derailleur-on-hanger", "Derailleur with {1} on {0}.") { Sources = [Sources.UniversalHangerNews] };

        public static readonly Reason NoEnd = new("no-universal-end", "{1} derailleur needs a frame end that follows the universal hanger; {0} is none, and no adapter makes it one.")
        {
            Mend = "Derailleur that hangs on the frame's own hanger",
            Sources = [Sources.UniversalHangerMaker, Sources.UniversalHangerGravel],
        };

        public static readonly Reason TooLong = new("hanger-too-long", "Derailleur with {1} on {0}: the hanger stands for a link that this derailleur does not have.")
        {
            Mend = "a direct-mount derailleur, or the conventional hanger for this frame where one is sold",
            Sources = [Sources.DirectMountHanger],
        };

        public static readonly Reason ChaseOrTap = new("chase-or-tap", "Derailleur with {1} on {0}: the hole is not M10 x 1, or has no stop.")
        {
            Sources = [Sources.UnthreadedEnds, Sources.HangersDemystified],
        };

        public static readonly Reason AskClaw = new("ask-claw", "Derailleur with {1} and {0}: it needs something to hang on.")
        {
            Sources = [Sources.HangersDemystified],
        };
    }
}
