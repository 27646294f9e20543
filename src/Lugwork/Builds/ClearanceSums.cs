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

    /// <summary>Inputs: front centre, crank, twice the radius of the front tyre.</summary>
    public static SumRelation Toes { get; } = new SumRelation(
            "front centre less radius of the wheel less crank, at least 100 mm", "mm",
            v => v[0] - v[1] - (v[2] / 2), [1, -1, -1],
            new(long.MinValue, new(Verdict.NeedsMeasuring, new Reason("toes-near-tyre", "About [sum] mm between pedal and front tyre with a crank of {1} mm and a front centre of {0} mm; 89 mm is asked for by regulation and 100 by one test. Turn the wheel and look.") { Mend = "shorter cranks, or a smaller front wheel or tyre", Sources = [Sources.ClearanceRegulation, Sources.ToeClearanceTest] })),
            new((long)AmpleToeMillimetres * Millimetre, new(Verdict.Fits, new Reason("toes-clear", "About [sum] mm between pedal and front tyre with a crank of {1} mm.") { Sources = [Sources.ClearanceRegulation, Sources.ToeClearanceTest] })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate);

    /// <summary>Inputs: crank, drop, outside of the rear tyre, height of the pedal, Q factor, reach of the pedal. Height of the pedal's edge above a lean of 25 degrees.</summary>
    public static SumRelation Pedals { get; } = new SumRelation(
            "pedal clear of the ground at a lean of 25 degrees", "mm",
            v => (v[2] / 2) - v[1] - v[0] - (v[3] / 2) - (long)(LeastSlope * ((v[4] / 2) + v[5])), [-1, -1, 1, -1, -1, -1],
            new(long.MinValue, new(Verdict.Unsafe, new Reason("pedal-strikes", "With a crank of {0} mm and a drop of {1} mm the pedal meets the ground before a lean of 25 degrees: [over] mm of height are missing.") { Mend = "shorter cranks, thinner or narrower pedals, or larger tyres", Sources = Regulation })),
            new(0, new(Verdict.NeedsMeasuring, new Reason("pedal-near-ground", "With a crank of {0} mm and a drop of {1} mm the pedal clears a lean of 25 degrees by [sum] mm of height, less than labels may be off: measure it on the bicycle.") { Sources = Regulation })),
            new((long)HeightDoubtMillimetres * Millimetre, new(Verdict.Fits, new Reason("pedal-clear", "With a crank of {0} mm and a drop of {1} mm the pedal clears a lean of 25 degrees by [sum] mm of height.") { Sources = Regulation })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(3, Verdict.DoesNotFit, Reasons.NothingToMate)
        .Without(4, Verdict.DoesNotFit, Reasons.NothingToMate).Without(5, Verdict.DoesNotFit, Reasons.NothingToMate);

    /// <summary>Inputs: inseam, standover.</summary>
    public static SumRelation Standover { get; } = new SumRelation(
            "inseam above the standover by 25 mm", "mm",
            v => v[0] - v[1], [1, -1],
            new(long.MinValue, new(Verdict.DoesNotFit, new Reason("standover-too-high", "A standover of {1} mm is higher than an inseam of {0} mm.") { Mend = "a frame with a lower top tube, or smaller wheels where the frame allows them", Sources = [Sources.CommonPractice] })),
            new(0, new(Verdict.NeedsMeasuring, new Reason("standover-close", "[sum] mm between a standover of {1} mm and an inseam of {0} mm: stand over it in your shoes.") { Mend = "a frame with a lower top tube", Sources = [Sources.CommonPractice] })),
            new(StandoverRoom, new(Verdict.Fits, new Reason("standover-clear", "[sum] mm between a standover of {1} mm and an inseam of {0} mm.") { Sources = [Sources.CommonPractice] })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate);
}
