using System.Collections.Immutable;

namespace Lugwork.Suspension;

/// <summary>The head angle that a frame has with another fork, against what its maker allows.</summary>
/// <remarks>
/// A fork that is longer by d than the one that the chart holds for lifts the front end until both wheels stand on the ground again: the frame
/// turns about the rear axle by the angle whose tangent is d sin h / (wheelbase + d cos h), and the head angle h is slacker by it. A shorter
/// fork makes it steeper in the same way. Wheels, offset of the fork and headset are taken as in the chart, and d as measured along the
/// steering axis: for forks of one offset it is less than a hundredth longer than the difference from axle to crown. Since headset and wheel turn the frame too, what comes near the limit is asked.
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

    /// <summary>Nearer to the limit than this the lower half of the headset and the wheel decide: 6 or 7 mm of height in front. Our own bound, no source.</summary>
    private const long Near = 3 * FrameAngle.PerDegree / 10;

    /// <summary>A lower half up to which the band near a limit holds what it turns the frame by; taller ones stand on their own input. Our own bound, no source.</summary>
    internal const long UsualLowerHalf = 8 * Nanometres.PerMillimetre;

    private const long TallestLowerHalf = 100 * Nanometres.PerMillimetre;

    /// <summary>The sum of a chart that is beyond its own limit.</summary>
    private const long ChartBeyond = -1_000 * FrameAngle.PerDegree;

    private static readonly ImmutableArray<Source> Rest = [Sources.ForkTravel, Sources.Derived];

    private static readonly Reason SteepEnough = new("head-angle-within-slackest", "A fork of {0} mm axle to crown, where the chart of the frame holds for {2} mm at {3}: the head angle stays within the slackest that the frame maker allows, {1}.") { Sources = Rest };

    private static readonly Reason TooSlack = new("head-angle-too-slack", "A fork of {0} mm axle to crown, where the chart of the frame holds for {2} mm at {3}, makes the head angle [over]\u00B0 slacker than the {1} that the frame maker allows.", Cautions.GeometryCare)
    {
        Mend = "a shorter fork, or the frame maker's word",
        Sources = Rest,
    };

    private static readonly Reason NearSlackest = new("head-angle-near-slackest", "A fork of {0} mm axle to crown, where the chart of the frame holds for {2} mm at {3}, brings the head angle within 0.3\u00B0 of the {1} that the frame maker allows (our own bound, no source): the lower half of the headset and the wheel turn the frame as much. Measure the head angle as built, or ask the frame maker.", Cautions.GeometryCare)
    {
        Mend = "a shorter fork, or the frame maker's word",
        Sources = Rest,
        Asks = [1, 2, 3],
    };

    private static readonly Reason ChartPast = new("head-angle-chart-beyond-limit", "The chart of the frame says {3}, which is beyond the limit of its own maker, {1}: one of the two is misread. Ask the frame maker.", Cautions.GeometryCare)
    {
        Sources = Rest,
        Asks = [1, 3],
    };

    private static readonly Reason SlackEnough = SteepEnough with { Id = "head-angle-within-steepest", Template = "A fork of {0} mm axle to crown, where the chart of the frame holds for {2} mm at {3}: the head angle stays within the steepest that the frame maker allows, {1}." };

    private static readonly Reason TooSteep = TooSlack with
    {
        Id = "head-angle-too-steep",
        Template = "A fork of {0} mm axle to crown, where the chart of the frame holds for {2} mm at {3}, makes the head angle [over]\u00B0 steeper than the {1} that the frame maker allows.",
        Mend = "a longer fork, or the frame maker's word",
    };

    private static readonly Reason NearSteepest = NearSlackest with { Id = "head-angle-near-steepest", Mend = "a longer fork, or the frame maker's word" };

    private static readonly Reason NearWithHeadset = NearSlackest with
    {
        Id = "head-angle-near-slackest-with-headset",
        Template = "A fork of {0} mm axle to crown over a lower half of {5} mm, where the chart of the frame holds for {2} mm at {3}, may bring the head angle within 0.3\u00B0 of the {1} that the frame maker allows, or beyond (our own bound, no source): nobody says with which lower half the chart was drawn, and what is above 8 mm of it counts as the fork's. Measure the head angle as built, or ask the frame maker.",
        Mend = "a lower half with less stack, a shorter fork, or the frame maker's word",
    };

    private static readonly Reason NoLimit = new("no-head-angle-limit", "The frame maker prints no limit for the head angle: ask.", Cautions.GeometryCare) { Sources = [Sources.ForkTravel] };

    private static readonly Reason NoChart = new("no-head-angle-chart", "Without head angle, wheelbase and the fork that they hold for, nobody can say what a fork of {0} mm axle to crown makes of the frame.", Cautions.GeometryCare) { Sources = [Sources.Derived] };

    /// <summary>Inputs: axle to crown of the fork, slackest angle, axle to crown that the chart holds for, head angle and wheelbase of the chart.</summary>
    public static SumRelation NotTooSlack { get; } = Against(SteepEnough, NearSlackest, TooSlack, v => Left(Angle(v) - v[1], TurnOf(Math.Max(0, Change(v)), Angle(v), Wheelbase(v))), [-1, -1, 1, 1, 1]);

    /// <summary>Inputs: axle to crown of the fork, steepest angle, axle to crown that the chart holds for, head angle and wheelbase of the chart.</summary>
    public static SumRelation NotTooSteep { get; } = Against(SlackEnough, NearSteepest, TooSteep, v => Left(v[1] - Angle(v), -TurnOf(Math.Min(0, Change(v)), Angle(v), Wheelbase(v))), [1, 1, -1, -1, 1]);

    /// <summary>
    /// Inputs: as of <see cref="NotTooSlack"/>, and a lower half of the headset that is taller than usual. The chart's own is not known: what the half is above the usual asks as if the fork
    /// were longer by it, and refuses nothing.
    /// </summary>
    public static SumRelation WithHeadset { get; } = Against(SteepEnough, NearWithHeadset, TooSlack, WithLowerHalf, [-1, -1, 1, 1, 1, -1]);

    private static long WithLowerHalf(ReadOnlySpan<long> v)
    {
        long taller = Math.Clamp(v[5] - UsualLowerHalf, 0, TallestLowerHalf);
        long plain = Left(Angle(v) - v[1], TurnOf(Math.Max(0, Change(v)), Angle(v), Wheelbase(v)));
        long lifted = Left(Angle(v) - v[1], TurnOf(Math.Max(0, Change(v) + taller), Angle(v), Wheelbase(v)));
        return lifted >= Near ? lifted : plain < -Near ? plain : Math.Max(lifted, -Near);
    }

    private static SumRelation Against(Reason within, Reason near, Reason beyond, Func<ReadOnlySpan<long>, long> sum, ImmutableArray<int> directions) =>
        new SumRelation(
            "head angle within the frame's limit", SumRelation.Degrees, sum, directions,
            new(long.MinValue, new(Verdict.NeedsMeasuring, ChartPast)), new(ChartBeyond + 1, new(Verdict.Unsafe, beyond)), new(-Near, new(Verdict.NeedsMeasuring, near)), new(Near, new(Verdict.Fits, within)))
            .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.NeedsMeasuring, NoLimit)
            .Without(2, Verdict.NeedsMeasuring, NoChart).Without(3, Verdict.NeedsMeasuring, NoChart).Without(4, Verdict.NeedsMeasuring, NoChart);

    /// <summary>What a turn leaves of the room between chart and limit, microdegrees. A fork that does not turn the frame to this side leaves it as its maker has it: then what the chart says is within, however near.</summary>
    private static long Left(long room, long turn) => room < 0 ? ChartBeyond : turn <= 0 ? room + Near : room - turn;

    // Beyond what is built every input stays at the end of its range, or the sum would turn round.
    private static long Change(ReadOnlySpan<long> v) => Math.Clamp(Math.Clamp(v[0], Shortest, Longest) - Math.Clamp(v[2], Shortest, Longest), -MostChange, MostChange);

    private static long Angle(ReadOnlySpan<long> v) => Math.Clamp(v[3], LeastAngle, MostAngle);

    private static long Wheelbase(ReadOnlySpan<long> v) => Math.Clamp(v[4], LeastWheelbase, MostWheelbase);

    /// <summary>By how much a longer fork turns the frame, microdegrees: atan2(d sin h, wheelbase + d cos h). Negative for a shorter one.</summary>
    internal static long TurnOf(long change, long angle, long wheelbase)
    {
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians((double)angle / FrameAngle.PerDegree));
        return (long)Math.Round(double.RadiansToDegrees(Math.Atan2(change * sin, wheelbase + (change * cos))) * FrameAngle.PerDegree);
    }
}
