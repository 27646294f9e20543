namespace Lugwork.Drivetrain;

/// <summary>A screwed freewheel or fixed sprocket on the thread of a hub. Where splines hold the sprockets no thread takes part.</summary>
/// <remarks>
/// Inputs: body of the hub, pattern of the sprockets, thread of the hub, thread of the sprockets, lockring (or none). Threads of one pitch that differ by hundredths
/// exchange where the source says so; a thread of another pitch binds where it is smaller and grips only the tops where it is larger.
/// </remarks>
internal sealed class ThreadOnHub : Relation
{
    /// <summary>Code of a fixed sprocket without a lockring: an unknown one may be missing.</summary>
    public const long NoLockring = 101;

    private static readonly Reason NoThread = new("no-thread", "{1} on {0}: no thread takes part.") { Sources = [Sources.Freewheels] };

    private static readonly Reason SameThread = new("same-freewheel-thread", "{3} screws on {2}.", Cautions.FreewheelThread) { Sources = [Sources.Freewheels] };

    private static readonly Reason Exchanges = new("threads-exchange", "{3} on {2}: one pitch and hundredths of a millimetre apart; they are said to exchange.", Cautions.FreewheelLoad) { Sources = [Sources.Freewheels] };

    private static readonly Reason Slips = new("grips-the-tops", "{3} on {2}: it is larger and of another pitch, grips only the tops of the thread, and slips under load.", Cautions.FreewheelThread)
    {
        Mend = "a freewheel with the hub's own thread",
        Sources = [Sources.Freewheels],
    };

    private static readonly Reason Binds = new("thread-binds", "{3} on {2}: another pitch, it binds after a few turns.", Cautions.FreewheelThread)
    {
        Mend = "a freewheel with the hub's own thread",
        Sources = [Sources.Freewheels],
    };

    private static readonly Reason FarApart = new("threads-far-apart", "{3} on {2}: the diameters are millimetres apart.", Cautions.FreewheelThread)
    {
        Mend = "a freewheel with the hub's own thread",
        Sources = [Sources.Freewheels, Sources.Derived],
    };

    private static readonly Reason NotSaid = new("exchange-not-said", "{3} on {2}: no source says that they exchange. It must start by hand and turn freely to its shoulder.", Cautions.FreewheelThread) { Sources = [Sources.Freewheels, Sources.Memory] };

    private static readonly Reason LockringThread = new("lockring-thread", "{3} on {2}: the smaller left-hand thread is for a lockring alone.", Cautions.FreewheelThread)
    {
        Mend = "the right-hand thread beside it",
        Sources = [Sources.FixedLockring],
    };

    private static readonly Reason Unscrews = new("unscrews", "{1} on {0}: without a left-hand lockring it unscrews under back-pedalling.", Cautions.FixedLockring)
    {
        Mend = "a track hub with a left-hand lockring, or a freewheel",
        Sources = [Sources.FixedLockring, Sources.CommonPractice],
    };

    private static readonly Reason LockringMissing = new("lockring-missing", "{1} on {0} without its left-hand lockring unscrews under back-pedalling.", Cautions.FixedLockring)
    {
        Mend = "the left-hand lockring of the hub, tightened against the sprocket",
        Sources = [Sources.FixedLockring, Sources.CommonPractice],
    };

    private static readonly Reason NoneOnOneSide = new("no-thread-on-one-side", "One side has no thread: {2} against {3}.");

    public static Relation OnHub { get; } = new ThreadOnHub();

    public override string Kind => "threads by diameter and pitch, where a thread takes part";

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        (long body, long pattern, long hub, long part) = (values[0], values[1], values[2], values[3]);
        return body == 0 || pattern == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : !IsThreaded(body) || !IsScrewed(pattern) ? new(Verdict.Fits, NoThread)
            : pattern == CassettePattern.FixedSprocket.FitCode && body == FreehubBody.FreewheelThread.FitCode ? new(Verdict.Unsafe, Unscrews)
            : pattern == CassettePattern.FixedSprocket.FitCode && (values[4] is 0 or NoLockring) ? new(Verdict.Unsafe, LockringMissing)
            : hub == 0 || part == 0 ? new(Verdict.DoesNotFit, NoneOnOneSide)
            : Threads(FreewheelThread.OfFitCode(hub), FreewheelThread.OfFitCode(part));
    }

    /// <summary>The hub has a thread for its sprockets.</summary>
    internal static bool IsThreaded(long body) => body == FreehubBody.FreewheelThread.FitCode || body == FreehubBody.Track.FitCode;

    /// <summary>The sprockets are screwed on.</summary>
    internal static bool IsScrewed(long pattern) => pattern == CassettePattern.Freewheel.FitCode || pattern == CassettePattern.FixedSprocket.FitCode;

    /// <summary>What screws on a hub's thread.</summary>
    internal static Outcome Threads(FreewheelThread hub, FreewheelThread part)
    {
        if (hub.IsLeftHand || part.IsLeftHand)
        {
            return new(Verdict.DoesNotFit, LockringThread);
        }

        if (hub == part)
        {
            return new(Verdict.Fits, SameThread);
        }

        if (hub.Interchanges(part))
        {
            return new(Verdict.Fits, Exchanges);
        }

        bool small = hub == FreewheelThread.Bmx || part == FreewheelThread.Bmx;
        return small ? new(Verdict.DoesNotFit, FarApart)
            : hub == FreewheelThread.French ? new(Verdict.Unsafe, Slips)
            : part == FreewheelThread.French ? new(Verdict.DoesNotFit, Binds)
            : new(Verdict.NeedsMeasuring, NotSaid);
    }
}
