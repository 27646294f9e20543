using System.Collections.Immutable;

namespace Lugwork;

/// <summary>Room between rider, wheel and ground, by the figures of the parts. The same limits hold for the sums of a frame as a figure.</summary>
internal static class ClearanceSums
{
    /// <summary>The least toe room by regulation.</summary>
    internal const double LeastToeMillimetres = 89;

    /// <summary>The least toe room by the other test: above it nothing has to be measured.</summary>
    internal const double AmpleToeMillimetres = 100;

    /// <summary>The least lean until a pedal meets the ground.</summary>
    internal const double LeastLeanDegrees = 25;

    /// <summary>How far a height worked out of labels and a chart may be off.</summary>
    internal const double HeightDoubtMillimetres = 5;

    private const long Millimetre = Nanometres.PerMillimetre;

    private const long StandoverRoom = 25 * Millimetre;

    private static readonly double LeastSlope = Math.Tan(LeastLeanDegrees * Math.PI / 180);

    private static readonly ImmutableArray<Source> Regulation = [Sources.ClearanceRegulation];

    private static SumRelation MeasuredToes { get; } = new(
            "measured room, at least 89 mm", "mm",
            v => v[3], [1, -1, -1, 1, 1, -1, 1],
            new(long.MinValue, new(Verdict.DoesNotFit, new Reason("toes-overlap", "[sum] mm between pedal and front tyre, as measured: 89 mm is asked for by regulation of a new bicycle, and 100 by one test where nothing holds the foot on the pedal. Who rides with less accepts it with a reason.") { Mend = "shorter cranks, or a smaller front wheel or tyre", Sources = [Sources.ClearanceRegulation, Sources.ToeClearanceTest] })),
            new((long)LeastToeMillimetres * Millimetre, new(Verdict.Fits, new Reason("toes-clear-measured", "[sum] mm between pedal and front tyre, as measured; 89 mm is asked for by regulation, and 100 by one test where nothing holds the foot on the pedal.") { Sources = [Sources.ClearanceRegulation, Sources.ToeClearanceTest] })));

    private static SumRelation MeasuredPedals { get; } = new SumRelation(
            "measured pedal clear of the ground at a lean of 25 degrees", "mm",
            v => v[6] - (long)(LeastSlope * ((v[4] / 2) + v[5])), [-1, -1, 1, -1, -1, -1, 1],
            new(long.MinValue, new(Verdict.Unsafe, new Reason("pedal-strikes-measured", "The outer edge of the pedal stands {6} mm above the ground, as measured, and meets it before a lean of 25 degrees: [over] mm of height are missing.") { Mend = "shorter cranks, thinner or narrower pedals, or larger tyres", Sources = Regulation })),
            new(0, new(Verdict.Fits, new Reason("pedal-clear-measured", "The outer edge of the pedal stands {6} mm above the ground, as measured, and clears a lean of 25 degrees by [sum] mm of height.") { Sources = Regulation })))
        .Without(4, Verdict.DoesNotFit, Reasons.NothingToMate).Without(5, Verdict.DoesNotFit, Reasons.NothingToMate);

    /// <summary>The slackest head angle that counts where none is known, by which a shorter fork takes most of the front centre. Our own bound, no source.</summary>
    private const double Slackest = 60;

    /// <summary>Inputs: front centre, crank, twice the radius of the front tyre, the room as measured, fork, fork of the chart, head angle; where the frame does not say which fork its chart holds for, the chart is taken as it stands. A fork that is shorter by d than the chart's draws the wheel in by at most d times the cosine of the head angle.</summary>
    public static SumRelation Toes { get; } = new SumRelation(
            "front centre less radius of the wheel less crank, at least 100 mm", "mm",
            v => v[0] - v[1] - (v[2] / 2) - DrawnIn(v[4], v[5], v[6]), [1, -1, -1, 1, 1, -1, 1],
            new(long.MinValue, new(Verdict.NeedsMeasuring, new Reason("toes-near-tyre", "About [sum] mm between pedal and front tyre with a crank of {1} mm and a front centre of {0} mm; 89 mm is asked for by regulation and 100 by one test. Turn the wheel and look.") { Mend = "shorter cranks, or a smaller front wheel or tyre", Sources = [Sources.ClearanceRegulation, Sources.ToeClearanceTest], Asks = [3] })),
            new((long)AmpleToeMillimetres * Millimetre, new(Verdict.Fits, new Reason("toes-clear", "About [sum] mm between pedal and front tyre with a crank of {1} mm.") { Sources = [Sources.ClearanceRegulation, Sources.ToeClearanceTest] })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Measured(3, MeasuredToes);

    /// <summary>Inputs: crank, drop, outside of the rear tyre, height of the pedal, Q factor, reach of the pedal, and its height above the ground as measured. Height of the pedal's edge above a lean of 25 degrees.</summary>
    public static SumRelation Pedals { get; } = new SumRelation(
            "pedal clear of the ground at a lean of 25 degrees", "mm",
            v => (v[2] / 2) - v[1] - v[0] - (v[3] / 2) - (long)(LeastSlope * ((v[4] / 2) + v[5])), [-1, -1, 1, -1, -1, -1, 1],
            new(long.MinValue, new(Verdict.Unsafe, new Reason("pedal-strikes", "With a crank of {0} mm and a drop of {1} mm the pedal meets the ground before a lean of 25 degrees: [over] mm of height are missing.") { Mend = "shorter cranks, thinner or narrower pedals, or larger tyres", Sources = Regulation })),
            new(0, new(Verdict.NeedsMeasuring, new Reason("pedal-near-ground", "With a crank of {0} mm and a drop of {1} mm the pedal clears a lean of 25 degrees by [sum] mm of height, less than labels may be off: measure it on the bicycle.") { Sources = Regulation, Asks = [6] })),
            new((long)HeightDoubtMillimetres * Millimetre, new(Verdict.Fits, new Reason("pedal-clear", "With a crank of {0} mm and a drop of {1} mm the pedal clears a lean of 25 degrees by [sum] mm of height.") { Sources = Regulation })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(3, Verdict.DoesNotFit, Reasons.NothingToMate)
        .Without(4, Verdict.DoesNotFit, Reasons.NothingToMate).Without(5, Verdict.DoesNotFit, Reasons.NothingToMate).Measured(6, MeasuredPedals);

    private static long DrawnIn(long fork, long ofChart, long angle) => fork == 0 || ofChart <= fork ? 0
        : (long)((ofChart - fork) * Math.Cos(Math.Clamp(angle == 0 ? Slackest : angle / (double)FrameAngle.PerDegree, Slackest, 90) * Math.PI / 180));

    /// <summary>Inputs: inseam, standover, fork, fork of the chart; where the frame does not say which that is, the chart is taken as it stands. A fork that is longer by d than the chart's lifts the top tube by at most d, and a shorter one lowers it by at most d: both take a plain answer to a question, and neither turns a question to an answer.</summary>
    public static SumRelation StandoverWithFork { get; } = new SumRelation(
            "inseam above the standover by 25 mm with this fork", "mm",
            v => WithFork(v[0] - v[1], v[2], v[3]), [1, -1, -1, 1],
            new(long.MinValue, new(Verdict.DoesNotFit, new Reason("standover-too-high-with-fork", "A standover of {1} mm is higher than an inseam of {0} mm, with this fork too.") { Mend = "a frame with a lower top tube, or smaller wheels where the frame allows them", Sources = [Sources.CommonPractice] })),
            new(0, new(Verdict.NeedsMeasuring, new Reason("standover-close-with-fork", "[least] mm or more between a standover of {1} mm and an inseam of {0} mm: a fork longer than the chart's lifts the top tube by at most the difference, a shorter one lowers it. Stand over it in your shoes, or measure it as built.") { Mend = "a frame with a lower top tube, or a fork as long as the chart's", Sources = [Sources.CommonPractice, Sources.Derived], Asks = [1] })),
            new(StandoverRoom, new(Verdict.Fits, new Reason("standover-clear-with-fork", "[least] mm or more between a standover of {1} mm, with the wheels of the chart, and an inseam of {0} mm; a fork that is longer than the chart's is reckoned in where both lengths are known.") { Sources = [Sources.CommonPractice, Sources.Derived] })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate);

    private static long WithFork(long room, long fork, long ofChart)
    {
        long lifted = fork == 0 || ofChart == 0 ? 0 : fork - ofChart;
        return room >= 0 ? Math.Max(0, room - Math.Max(0, lifted)) : Math.Min(0, room + Math.Max(0, -lifted));
    }

    /// <summary>Inputs: inseam, standover.</summary>
    public static SumRelation Standover { get; } = new SumRelation(
            "inseam above the standover by 25 mm", "mm",
            v => v[0] - v[1], [1, -1],
            new(long.MinValue, new(Verdict.DoesNotFit, new Reason("standover-too-high", "A standover of {1} mm is higher than an inseam of {0} mm.") { Mend = "a frame with a lower top tube, or smaller wheels where the frame allows them", Sources = [Sources.CommonPractice] })),
            new(0, new(Verdict.NeedsMeasuring, new Reason("standover-close", "[sum] mm between a standover of {1} mm and an inseam of {0} mm: stand over it in your shoes.") { Mend = "a frame with a lower top tube", Sources = [Sources.CommonPractice] })),
            new(StandoverRoom, new(Verdict.Fits, new Reason("standover-clear", "[sum] mm between a standover of {1} mm, with the fork and the wheels of the chart, and an inseam of {0} mm.") { Sources = [Sources.CommonPractice] })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate);
}
