using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>What a caliper finds at a spindle, and which seat it can be.</summary>
internal static class SpindleDimensions
{
    /// <summary>Across the flats at the small end of a square taper, micrometres, as far apart as it is printed; 0 for other seats.</summary>
    public static (int Least, int Most) Flats(SpindleSeat seat) => seat.FitCode switch
    {
        7 => (12_630, 12_730),
        8 => (12_500, 12_650),
        _ => default,
    };

    /// <summary>Outside of the spindle on the drive side, micrometres; over the splines where it has some. 0 where none is known.</summary>
    public static (int Least, int Most) Outside(SpindleSeat seat) => seat.FitCode switch
    {
        9 or 10 => (22_000, 22_000),
        11 => (21_000, 21_000),
        16 => (15_500, 15_900),
        _ => (seat.DriveMicrometres, seat.DriveMicrometres),
    };

    /// <summary>Number, length and width of the splines; micrometres, 0 where unknown.</summary>
    public static (int Number, int Length, int Width) Splines(SpindleSeat seat) => seat.FitCode switch
    {
        9 => (8, 5_000, 2_200),
        10 => (8, 9_000, 2_800),
        11 => (10, 0, 0),
        _ => default,
    };

    public static Identification<SpindleSeat> Identify(MeasuredLength? driveSide, MeasuredLength? otherSide, MeasuredLength? acrossFlats, MeasuredLength? splineLength, MeasuredLength? splineWidth)
    {
        bool round = driveSide is not null || otherSide is not null;
        bool splined = splineLength is not null || splineWidth is not null;
        ImmutableArray<DimensionRow<SpindleSeat>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<SpindleSeat>>();
        foreach (SpindleSeat seat in SpindleSeat.All)
        {
            // A square taper has no diameter, and only a square taper has flats: that is no unknown dimension.
            bool square = Flats(seat).Least > 0;
            if (!(square ? round || splined : acrossFlats is not null || (splined && Splines(seat).Number == 0)))
            {
                rows.Add(Row(seat));
            }
        }

        return new IdentificationTable<SpindleSeat>(Dimensions, rows.ToImmutable(), s => s.FitKey).Identify(driveSide, otherSide, acrossFlats, splineLength, splineWidth);
    }

    private static ImmutableArray<MeasuredDimension> Dimensions { get; } =
    [
        new("diameter on the drive side", "caliper where the bearing sits, or over the splines"),
        new("diameter on the other side", "caliper where the bearing sits"),
        new("across the flats", "caliper at the small end of the taper"),
        new("spline length", "caliper along one spline"),
        new("spline width", "caliper across one spline"),
    ];

    private static DimensionRow<SpindleSeat> Row(SpindleSeat seat)
    {
        (int _, int length, int width) = Splines(seat);
        int other = seat.OtherMicrometres;
        return new(seat, [Range(Outside(seat)), Range((other, other)), Range(Flats(seat)), Range((length, length)), Range((width, width))], Apart(seat));
    }

    private static (decimal Least, decimal Most)? Range((int Least, int Most) micrometres) =>
        micrometres.Least == 0 ? null : (micrometres.Least / 1_000m, micrometres.Most / 1_000m);

    private static string Apart(SpindleSeat seat) => seat.FitCode switch
    {
        2 or 6 => "a step on the non-drive side",
        3 => "two halves joined in the middle, bearings on the spindle",
        7 or 8 => "tapers by 2 degrees a face; the printed tips of the two overlap, so that the other crank tried on tells more than a caliper",
        9 or 10 => "8 splines",
        11 => "10 splines and a shoulder",
        12 => "crank and spindle are one forging",
        13 or 14 or 15 => "splined for a BMX crank, separate from both arms",
        16 => "a flat for a cotter pin",
        _ => "part of one crank arm",
    };
}
