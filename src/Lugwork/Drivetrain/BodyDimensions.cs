using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>Length, splines and first sprocket of freehub bodies.</summary>
internal static class BodyDimensions
{
    /// <summary>Length of the splined part, micrometres, as far apart as it is printed; 0 where none is known.</summary>
    public static (int Least, int Most) Length(FreehubBody body) => body.FitCode switch
    {
        3 => (31_000, 31_000),
        4 => (34_900, 35_000),
        5 => (35_000, 35_000),
        6 => (36_750, 36_750),
        7 => (37_650, 37_650),
        11 => (36_000, 36_000),
        12 => (38_000, 38_000),

        // 4.4 mm under the body that it follows.
        13 => (33_600, 33_600),
        _ => default,
    };

    /// <summary>Where the length comes from.</summary>
    public static Source? LengthSource(FreehubBody body) => body.FitCode switch
    {
        4 or 6 or 7 => Sources.SprocketExchange,
        3 or 5 or 11 or 12 => Sources.FreehubLengths,
        13 => Sources.Derived,
        _ => null,
    };

    /// <summary>Number of splines or lugs; 0 is a thread, null is not told.</summary>
    public static int? Splines(FreehubBody body) => body.FitCode switch
    {
        1 or 18 => 0,
        2 or 3 or 4 or 5 or 6 or 14 or 19 => 9,
        7 => 18,
        8 => 23,
        11 or 12 or 13 => 8,
        16 => 3,
        _ => null,
    };

    /// <summary>Teeth of the smallest sprocket that goes on, as they are printed.</summary>
    public static (int Least, int Most) Smallest(FreehubBody body) => body.FitCode switch
    {
        1 => (12, 16),
        2 => (11, 12),
        8 => (10, 10),
        9 => (9, 10),
        10 => (10, 10),
        11 => (12, 13),
        13 => (9, 9),
        15 => (8, 9),
        16 or 17 => (13, 13),
        18 => (12, 13),
        _ => (11, 11),
    };

    public static Identification<FreehubBody> Identify(MeasuredLength? length, int? splines) =>
        CountedTable.Identify(BodyRows.Dimensions, BodyRows.Rows, "number of splines", Splines, splines, length);

    private static string Apart(FreehubBody body) => body.FitCode switch
    {
        1 => "a thread of 1.375 in x 24, right-hand, and no splines",
        2 => "nine equal splines and a thread at the end for the smallest sprocket",
        4 or 6 => "nine splines, one of them narrow",
        5 => "nine deep splines, of aluminium",
        8 => "fine splines, smaller across than an HG body",
        9 or 10 => "short splines and a thread on the body itself; the longer one by 1.85 mm is XDR",
        11 => "eight shallow splines; the 7-speed one is 5 mm shorter",
        12 => "eight deep splines",
        13 => "eight deep splines, 4.4 mm shorter, and room for 9 teeth",
        14 => "pattern of an HG body, for one sprocket and spacers",
        15 => "one piece with the smallest sprocket",
        16 => "three lugs and a snap ring, bore 1 3/8 in",
        17 => "carrier of the hub's maker",
        18 => "two threads side by side, the outer one left-hand",
        19 => "splines of an HG body that stand taller; its maker is not the system's",
        _ => "",
    };

    private static class BodyRows
    {
        private const int SevenSpeedShorter = 5_000;

        public static readonly ImmutableArray<MeasuredDimension> Dimensions = [new("length", "depth caliper along the splines, from the shoulder to the end")];

        public static readonly ImmutableArray<DimensionRow<FreehubBody>> Rows = Fill();

        private static ImmutableArray<DimensionRow<FreehubBody>> Fill()
        {
            ImmutableArray<DimensionRow<FreehubBody>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<FreehubBody>>();
            foreach (FreehubBody body in FreehubBody.All)
            {
                (int least, int most) = Length(body);
                rows.Add(Row(body, least, most));
                if (body == FreehubBody.EightSplineOld)
                {
                    rows.Add(Row(body, least - SevenSpeedShorter, most - SevenSpeedShorter));
                }
            }

            return rows.ToImmutable();
        }

        private static DimensionRow<FreehubBody> Row(FreehubBody body, int least, int most) =>
            new(body, [least == 0 ? null : (least / 1_000m, most / 1_000m)], Apart(body));
    }
}
