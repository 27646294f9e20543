using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>The crank's spindle in, or crank on, the bottom bracket. A larger spindle never goes in a smaller system.</summary>
internal static class SpindleInBracket
{
    private const string OwnBracket = "a bottom bracket for the crank's own spindle that exists for this shell, or a crank for this bottom bracket";

    private static readonly Reason Same = new("same-spindle", "{1} spindle in a bottom bracket for {0}.") { Sources = [Sources.SpindleOptions, Sources.BracketGuide] };

    private static readonly Bridge StepSleeve = new()
    {
        Id = "spindle-24-22-in-24-sleeve",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = "a sleeve from 24 to 22 mm that is sold for this bearing, on the side away from the chain",
        From = SpindleSeat.Stepped24.FitCode,
        To = SpindleSeat.Mm24.FitCode,
        Caution = Cautions.NeverSleeve,
        Sources = [Sources.SpindleOptions, Sources.SpindleLaunch, Sources.SteppedSpindle],
    };

    /// <summary>Inputs: spindle seat of the bottom bracket, spindle seat of the crank.</summary>
    public static Relation Relation { get; } = new SameKey(
        0, 1, Same, Apart,
        () => SpindleSleeves.Table)
    {
        Offered = [StepSleeve],
    };

    private static Reason Apart(long bracket, long crank)
    {
        (SpindleSeat seat, SpindleSeat spindle) = (SpindleSeat.OfFitCode(bracket), SpindleSeat.OfFitCode(crank));
        return IsSplined(seat) && IsSplined(spindle) ? Misfits.Splines
            : !seat.IsRound || !spindle.IsRound || seat == SpindleSeat.Mm25 || spindle == SpindleSeat.Mm25 ? Misfits.OtherKind
            : spindle.DriveMicrometres > seat.DriveMicrometres || spindle.OtherMicrometres > seat.OtherMicrometres ? Misfits.TooLarge
            : spindle == SpindleSeat.Mm2899 ? Misfits.OneMillimetre
            : spindle == SpindleSeat.Stepped24 && seat == SpindleSeat.Mm24 ? Misfits.StepLoose
            : Misfits.TooSmall;
    }

    private static bool IsSplined(SpindleSeat seat) => seat == SpindleSeat.EightSplineShort || seat == SpindleSeat.EightSplineLong || seat == SpindleSeat.TenSpline;

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason TooLarge = new("spindle-too-large", "{1} spindle is larger than {0} bottom bracket takes; nothing makes a bearing larger.") { Mend = OwnBracket, Sources = [Sources.BracketDetail, Sources.Derived] };

        public static readonly Reason TooSmall = new("spindle-too-small", "{1} spindle is loose in {0} bottom bracket, and no reducer is listed for this pair.", Cautions.NeverSleeve) { Mend = OwnBracket, Sources = [Sources.SpindleOptions, Sources.Derived] };

        public static readonly Reason OneMillimetre = new("28.99-in-30", "{1} spindle in {0} bottom bracket is 1.01 mm loose: it runs in its own bottom brackets only.", Cautions.NeverSleeve) { Mend = "a bottom bracket for the 28.99 mm spindle", Sources = [Sources.SpindleLaunch, Sources.SpindleSystem, Sources.Derived] };

        public static readonly Reason StepLoose = new("step-loose", "The crank's {1} spindle fills {0} bottom bracket on the drive side and is loose on the other.", Cautions.NeverSleeve)
        {
            Mend = "a stepped bottom bracket",
            Offers = [StepSleeve],
            Sources = [Sources.SpindleOptions, Sources.SpindleLaunch, Sources.SteppedSpindle],
        };

        public static readonly Reason Splines = new("other-splines", "{1} and {0}: the splines differ in number or length, and nothing goes between.")
        {
            Mend = "a bottom bracket with the crank's own splines",
            Sources = [Sources.ShortAndLongSplines, Sources.SpindleTypes],
        };

        public static readonly Reason OtherKind = new("spindle-of-another-kind", "{1} and {0} are two kinds of crank fixing, and nothing goes between.") { Mend = OwnBracket, Sources = [Sources.SpindleTypes, Sources.BracketGuide] };
    }
}
