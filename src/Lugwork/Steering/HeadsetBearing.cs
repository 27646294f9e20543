using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>A cartridge bearing of a headset, by inside and outside diameter, height and the angles of its two rings. Closed set, identity equality.</summary>
/// <remarks>Well over forty sizes are made; these are the ones that are listed. All four figures belong to the interface: one of the right size and another angle runs rough and works loose.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<HeadsetBearing>))]
[TypeConverter(typeof(InterfaceTypeConverter<HeadsetBearing>))]
public sealed class HeadsetBearing : Standard<HeadsetBearing>, IInterfaceValue<HeadsetBearing>
{
    private HeadsetBearing(int code, string key, string name, Source source, int inside, int outside, int height, int innerAngle, int outerAngle, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Inside = inside;
        Outside = outside;
        Tall = height;
        Inner = innerAngle;
        Outer = outerAngle;
    }

    /// <summary>1 in integrated, IS38.</summary>
    public static HeadsetBearing Mm38 { get; } = new(1, "28x38x7-36/45", "38 mm bearing, 1 in", Sources.Memory, 2800, 3800, 700, 36, 45);

    /// <summary>IS41, and ZS44 and EC34 cups for a 28.6 mm steerer.</summary>
    public static HeadsetBearing Mm41 { get; } = new(2, "30.15x41x6.5-36/45", "41 mm bearing, 36/45", Sources.BearingSeller, 3015, 4100, 650, 36, 45);

    /// <summary>The 45 degree kind for IS41.</summary>
    public static HeadsetBearing Mm41At45 { get; } = new(3, "30.15x41x7-45/45", "41 mm bearing, 45/45", Sources.Memory, 3015, 4100, 700, 45, 45);

    /// <summary>IS42, 8 mm high.</summary>
    public static HeadsetBearing Mm41Point8 { get; } = new(4, "30.5x41.8x8-45/45", "41.8 mm bearing, 8 mm high", Sources.Memory, 3050, 4180, 800, 45, 45);

    /// <summary>IS42, 6 mm high: a lower stack than the 8 mm one.</summary>
    public static HeadsetBearing Mm41Point8Low { get; } = new(5, "30.5x41.8x6-45/45", "41.8 mm bearing, 6 mm high", Sources.FrameBearingsMeasured, 3050, 4180, 600, 45, 45);

    /// <summary>1-1/4 in, EC37.</summary>
    public static HeadsetBearing Mm44 { get; } = new(6, "34x44x7-36/45", "44 mm bearing, 1-1/4 in", Sources.Memory, 3400, 4400, 700, 36, 45);

    /// <summary>1-1/4 in, IS47; measured 34.0 to 34.2 mm inside on two frames, and sold as 47 mm.</summary>
    public static HeadsetBearing Mm46Point9 { get; } = new(7, "34.1x46.9x7-45/45", "46.9 mm bearing, 1-1/4 in", Sources.CarbonFrameBearings, 3410, 4690, 700, 45, 45, "34x47x7-45/45", "34.2x47x7-45/45", "34.1x47x7-45/45");

    /// <summary>1-1/4 in, IS47, from memory; what was measured of that size is 34 mm inside with 45 degrees on both rings.</summary>
    public static HeadsetBearing Mm47 { get; } = new(8, "33.05x47x7-36/45", "47 mm bearing, 36/45", Sources.Memory, 3305, 4700, 700, 36, 45);

    /// <summary>1-3/8 in, IS49.</summary>
    public static HeadsetBearing Mm49 { get; } = new(9, "37x49x6.5-36/45", "49 mm bearing, 1-3/8 in", Sources.ForkCutting, 3700, 4900, 650, 36, 45);

    /// <summary>A variant of the 1.5 in lower bearing.</summary>
    public static HeadsetBearing Mm51Point8 { get; } = new(10, "40x51.8x8-36/45", "51.8 mm bearing, 1.5 in", Sources.Memory, 4000, 5180, 800, 36, 45);

    /// <summary>IS52, and ZS56, EC44 and EC49 lower halves.</summary>
    public static HeadsetBearing Mm52 { get; } = new(11, "40x52x7-45/45", "52 mm bearing, 45/45", Sources.Memory, 4000, 5200, 700, 45, 45);

    /// <summary>IS52, and ZS56 and EC44 lower halves.</summary>
    public static HeadsetBearing Mm52At36 { get; } = new(12, "40x52x6.5-36/45", "52 mm bearing, 36/45", Sources.Memory, 4000, 5200, 650, 36, 45);

    /// <summary>A plain radial bearing without chamfers, found in a race frame; no replacement for an angular one.</summary>
    public static HeadsetBearing Mm52Radial { get; } = new(13, "40x52x7-radial", "52 mm bearing, radial (6808)", Sources.RadialHeadBearing, 4000, 5200, 700, 0, 0, "6808", "40x52x7-0/0");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<HeadsetBearing> All { get; } =
    [
        Mm38, Mm41, Mm41At45, Mm41Point8, Mm41Point8Low, Mm44, Mm46Point9,
        Mm47, Mm49, Mm51Point8, Mm52, Mm52At36, Mm52Radial,
    ];

    /// <inheritdoc/>
    public static string Called => "headset bearing";

    /// <summary>Outside diameter, on which the head tube or the cup sits.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(Outside / 100d);

    /// <summary>Inside diameter.</summary>
    public Length InsideDiameter => Length.FromMillimeters(Inside / 100d);

    /// <summary>Height over both rings.</summary>
    public Length Height => Length.FromMillimeters(Tall / 100d);

    /// <summary>Angle of the inner chamfer, to the ring or race on the steerer; null for a radial bearing, which has none.</summary>
    public Angle? InnerAngle => Inner == 0 ? null : Angle.FromDegrees(Inner);

    /// <summary>Angle of the outer chamfer, to the seat in frame or cup; null for a radial bearing, which has none.</summary>
    public Angle? OuterAngle => Outer == 0 ? null : Angle.FromDegrees(Outer);

    internal int Inside { get; }

    internal int Outside { get; }

    internal int Tall { get; }

    internal int Inner { get; }

    internal int Outer { get; }

    /// <summary>What a bearing can be, from what it measures. The angles have to be read off the ring or laid beside a new one: a caliper does not show them.</summary>
    /// <param name="outside">Outside diameter.</param>
    /// <param name="inside">Inside diameter.</param>
    /// <param name="height">Height over both rings.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<HeadsetBearing> Identify(MeasuredLength? outside = null, MeasuredLength? inside = null, MeasuredLength? height = null) =>
        HeadsetBearingDimensions.Table.Identify(outside, inside, height);

    /// <inheritdoc/>
    public static HeadsetBearing OfFitCode(long code) => ByCode(code);

    /// <summary>Reads the notation of the trade, inside or outside diameter first: "30.15x41x6.5 36/45", "41 x 30.15 x 6.5, 36 x 45". Without angles every listed one of that size is kept.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<HeadsetBearing> Read(ReadOnlySpan<char> text) => HeadsetBearingText.Read(text) ?? ByName(text);

    /// <summary>Made when something is first identified.</summary>
    private static class HeadsetBearingDimensions
    {
        public static readonly IdentificationTable<HeadsetBearing> Table = new(
            [
                new("outside", "outside caliper, two directions"),
                new("inside", "inside caliper, two directions"),
                new("height", "caliper over both rings"),
            ],
            Rows(),
            b => b.FitKey);

        private static ImmutableArray<DimensionRow<HeadsetBearing>> Rows()
        {
            ImmutableArray<DimensionRow<HeadsetBearing>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<HeadsetBearing>>(All.Length);
            foreach (HeadsetBearing bearing in All)
            {
                // Two frames were measured: 34.0 to 34.2 mm inside, and sold as 47 mm.
                (decimal Least, decimal Most)? outside = bearing == Mm46Point9 ? (46.9m, 47m) : (bearing.Outside / 100m, bearing.Outside / 100m);
                (decimal Least, decimal Most)? inside = bearing == Mm46Point9 ? (34m, 34.2m) : (bearing.Inside / 100m, bearing.Inside / 100m);
                rows.Add(new(bearing, [outside, inside, (bearing.Tall / 100m, bearing.Tall / 100m)], Apart(bearing)));
            }

            return rows.MoveToImmutable();
        }

        private static string Apart(HeadsetBearing bearing) =>
            bearing.Inner == 0 ? "square edges, no chamfer"
            : FormattableString.Invariant($"{bearing.Inner} degrees at the inner chamfer, {bearing.Outer} at the outer one");
    }
}
