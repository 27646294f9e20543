namespace Lugwork.Suspension;

/// <summary>The head angle that a frame has with another fork, against what its maker allows.</summary>
/// <remarks>
/// A fork that is longer by d than the one that the chart holds for lifts the front end until both wheels stand on the ground again: the frame
/// turns about the rear axle by the angle whose tangent is d sin h / (wheelbase + d cos h), and the head angle h is slacker by it. A shorter
/// fork makes it steeper in the same way. Wheels, offset of the fork and headset are taken as in the chart, and d as measured along the
/// steering axis: for forks of one offset it is less than a hundredth longer than the difference from axle to crown.
/// </remarks>
internal static class HeadAngleRelations
{
    private const long Shortest = 150 * Nanometres.PerMillimetre;
    private const long Longest = 900 * Nanometres.PerMillimetre;
    private const long MostChange = 500 * Nanometres.PerMillimetre;
    private const long LeastWheelbase = 500 * Nanometres.PerMillimetre;
    private const long MostWheelbase = 2_000 * Nanometres.PerMillimetre;
    private const long LeastAngle = 30 * FrameAngle.PerDegree;
    private const long MostAngle = 110 * FrameAngle.PerDegree;

    private static readonly Reason SteepEnough = new("head-angle-within-slackest", "A fork of {0} mm axle to crown, where the chart of the frame holds for {2} mm at {3}: the head angle stays [sum]\u00B0 steeper than the slackest that the frame maker allows, {1}.") { Sources = [Sources.ForkTravel, Sources.Derived] };

    private static readonly Reason TooSlack = new("head-angle-too-slack", "A fork of {0} mm axle to crown, where the chart of the frame holds for {2} mm at {3}, makes the head angle [over]\u00B0 slacker than the {1} that the frame maker allows.", Cautions.GeometryCare)
    {
        Mend = "a shorter fork, or the frame maker's word",
        Sources = [Sources.ForkTravel, Sources.Derived],
    };

    private static readonly Reason SlackEnough = SteepEnough with { Id = "head-angle-within-steepest", Template = "A fork of {0} mm axle to crown, where the chart of the frame holds for {2} mm at {3}: the head angle stays [sum]\u00B0 slacker than the steepest that the frame maker allows, {1}." };

    private static readonly Reason TooSteep = TooSlack with
    {
        Id = "head-angle-too-steep",
        Template = "A fork of {0} mm axle to crown, where the chart of the frame holds for {2} mm at {3}, makes the head angle [over]\u00B0 steeper than the {1} that the frame maker allows.",
        Mend = "a longer fork, or the frame maker's word",
    };

    private static readonly Reason NoLimit = new("no-head-angle-limit", "The frame maker prints no limit for the head angle: ask.", Cautions.GeometryCare) { Sources = [Sources.ForkTravel] };

    private static readonly Reason NoChart = new("no-head-angle-chart", "Without head angle, wheelbase and the fork that they hold for, nobody can say what a fork of {0} mm axle to crown makes of the frame.", Cautions.GeometryCare) { Sources = [Sources.Derived] };

    /// <summary>Inputs: axle to crown of the fork, slackest angle, axle to crown that the chart holds for, head angle and wheelbase of the chart.</summary>
    public static SumRelation NotTooSlack { get; } = Against(SteepEnough, TooSlack, v => Turned(v, true) - v[1], [-1, -1, 1, 1, 1]);

    /// <summary>Inputs: axle to crown of the fork, steepest angle, axle to crown that the chart holds for, head angle and wheelbase of the chart.</summary>
    public static SumRelation NotTooSteep { get; } = Against(SlackEnough, TooSteep, v => v[1] - Turned(v, false), [1, 1, -1, -1, 1]);

    private static SumRelation Against(Reason within, Reason beyond, Func<ReadOnlySpan<long>, long> sum, System.Collections.Immutable.ImmutableArray<int> directions) =>
        new SumRelation("head angle within the frame's limit", SumRelation.Degrees, sum, directions, new(long.MinValue, new(Verdict.Unsafe, beyond)), new(0, new(Verdict.Fits, within)))
            .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.NeedsMeasuring, NoLimit)
            .Without(2, Verdict.NeedsMeasuring, NoChart).Without(3, Verdict.NeedsMeasuring, NoChart).Without(4, Verdict.NeedsMeasuring, NoChart);

    /// <summary>The head angle with the fork, microdegrees; where it counts to one side only, a change to the other is none. Beyond what is built every input stays at the end of its range, or the sum would turn round.</summary>
    private static long Turned(ReadOnlySpan<long> v, bool slacker)
    {
        long change = Math.Clamp(Math.Clamp(v[0], Shortest, Longest) - Math.Clamp(v[2], Shortest, Longest), slacker ? 0 : -MostChange, slacker ? MostChange : 0);
        long angle = Math.Clamp(v[3], LeastAngle, MostAngle);
        return angle - TurnOf(change, angle, Math.Clamp(v[4], LeastWheelbase, MostWheelbase));
    }

    /// <summary>By how much a longer fork turns the frame, microdegrees: atan2(d sin h, wheelbase + d cos h). Negative for a shorter one.</summary>
    internal static long TurnOf(long change, long angle, long wheelbase)
    {
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians((double)angle / FrameAngle.PerDegree));
        return (long)Math.Round(double.RadiansToDegrees(Math.Atan2(change * sin, wheelbase + (change * cos))) * FrameAngle.PerDegree);
    }
}
