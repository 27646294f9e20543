using System.Collections.Immutable;

namespace Lugwork;

/// <summary>
/// How much lower the bottom bracket stands than the drop of the chart and the rear tyre say. A fork that is shorter by d than the one of the chart lets the front
/// end down by about d, and a front tyre whose radius is smaller by r than the rear one's lets the front axle down by r; the frame turns about the rear axle, and the bottom bracket goes down by the
/// part of it that the chainstay is of the wheelbase. It is a bound by similar triangles, and asks for a reading; it refuses nothing.
/// </summary>
internal static class SunkenBracket
{
    private const long Millimetre = Nanometres.PerMillimetre;

    /// <summary>Chainstay over wheelbase where one of them is not known: short wheelbases have 0.42. Our own bound, no source.</summary>
    private const double MostPart = 0.45;

    /// <summary>Of a longer fork, what lifts the front end at the slackest head angle, 58 degrees.</summary>
    private const double LeastLift = 0.85;

    private static readonly ImmutableArray<Source> Rests = [Sources.ClearanceRegulation, Sources.Derived];

    private static SumRelation Read { get; } = new(
        "height of the pedal as measured", "mm", v => 0, [1, -1, 1, -1, 1, -1, -1, 1],
        new SumBand(long.MinValue, new(Verdict.Fits, new Reason("pedal-height-measured", "The pedal stands {7} mm above the ground, as measured with this fork and these tyres.") { Sources = Rests })));

    /// <summary>Inputs: front tyre, rear tyre, fork, fork of the chart, wheelbase, chainstay, drop, height of the pedal as measured. Where the frame does not say which fork its chart holds for, the chart is taken as it stands; a fork of unknown length may be as short as forks are.</summary>
    public static SumRelation Sinks { get; } = new SumRelation(
            "bottom bracket at most 5 mm lower than with the fork and wheels of the chart", "mm",
            v => -Sunk(v), [1, -1, 1, -1, 1, -1, -1, 1],
            new(long.MinValue, new(Verdict.NeedsMeasuring, new Reason("bottom-bracket-sinks", "With this fork and these tyres the bottom bracket stands up to [over] mm lower than the drop of {6} mm says with the fork of the chart and two wheels of one size: measure how high the pedal stands.") { Mend = "a fork of the chart's length, or a larger front tyre", Sources = Rests, Asks = [7] })),
            new(-(long)ClearanceSums.HeightDoubtMillimetres * Millimetre, new(Verdict.Fits, new Reason("bottom-bracket-stands", "With these tyres, and with this fork where the frame says which fork its chart holds for, the bottom bracket stands as the drop of {6} mm says, to 5 mm.") { Sources = Rests })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Measured(7, Read);

    internal static long Sunk(ReadOnlySpan<long> v)
    {
        double shorter = v[2] == 0 || v[3] == 0 ? 0 : v[3] - v[2];
        double down = (shorter > 0 ? shorter : LeastLift * shorter) + ((v[1] - v[0]) / 2d);
        double part = v[4] == 0 || v[5] == 0 ? MostPart : Math.Min(1, (double)v[5] / v[4]);
        return (long)(Math.Max(0, down) * part);
    }
}
