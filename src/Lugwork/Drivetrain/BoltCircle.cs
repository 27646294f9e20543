using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>The circle of bolts by which a chainring is held: number of arms, diameter, and whether the holes are evenly spaced. Closed set, identity equality.</summary>
/// <remarks>Circles of one diameter are several: five even arms of 110 mm take no ring of four uneven ones. The smallest rings of many rows are from memory, see <see cref="SmallestRingSource"/>.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<BoltCircle>))]
[TypeConverter(typeof(InterfaceTypeConverter<BoltCircle>))]
public sealed class BoltCircle : Standard<BoltCircle>, IInterfaceValue<BoltCircle>
{
    private const double ChainPitch = 12.7;

    private const double Roller = 7.75;

    private BoltCircle(int code, int arms, int diameter, string spacing, int smallest, Source source, Source? smallestFrom)
        : base(code, $"{arms}x{diameter}{(spacing.Length == 0 ? "" : "-" + spacing)}", $"{diameter} mm, {arms} arms{(spacing.Length == 0 ? "" : ", " + spacing)}", source)
    {
        Arms = arms;
        Millimetres = diameter;
        IsEven = spacing is "" or "even";
        SmallestRing = smallest == 0 ? null : smallest;
        SmallestRingSource = smallestFrom;
    }

    /// <summary>Every circle, five arms before four and three, large before small.</summary>
    public static ImmutableArray<BoltCircle> All { get; } =
    [
        Known(1, 5, 151, 44, Sources.BoltCircles),
        Known(2, 5, 144, 41, Sources.BoltCircles),
        Known(3, 5, 135, 39, Sources.BoltCircles),
        Known(4, 5, 130, 38, Sources.BoltCircles),
        Known(5, 5, 128, 38, Sources.BoltCircles),
        Known(6, 5, 122, 38, Sources.BoltCircles),
        Known(7, 5, 118, 36, Sources.BoltCircles),
        Known(8, 5, 116, 35, Sources.Memory),
        Known(9, 5, 110, 34, Sources.CrankPage),
        new(10, 5, 94, "", 29, Sources.BoltCircleHowTo, Sources.Memory),
        new(11, 5, 92, "", 30, Sources.RingMeasuring, Sources.Memory),
        new(12, 5, 86, "", 28, Sources.BoltCircleHowTo, Sources.Memory),
        Known(13, 5, 74, 24, Sources.CrankPage),
        Known(14, 5, 58, 20, Sources.CrankPage),
        new(15, 5, 56, "", 20, Sources.BoltCircleHowTo, Sources.Memory),
        new(16, 4, 146, "", 44, Sources.RingMeasuring, Sources.Memory),
        new(17, 4, 120, "", 38, Sources.RingMeasuring, Sources.Memory),
        Known(18, 4, 112, 33, Sources.Memory),
        new(19, 4, 110, "uneven", 34, Sources.BoltHolePatterns, Sources.Memory),
        new(20, 4, 104, "", 32, Sources.RingMeasuring, Sources.Memory),
        new(21, 4, 102, "", 32, Sources.RingMeasuring, Sources.Memory),
        new(22, 4, 96, "even", 30, Sources.Memory, Sources.Memory),
        new(23, 4, 96, "uneven", 30, Sources.BoltHolePatterns, Sources.Memory),
        new(24, 4, 88, "", 28, Sources.RingMeasuring, Sources.Memory),
        new(25, 4, 80, "", 26, Sources.RingMeasuring, Sources.Memory),
        new(26, 4, 64, "", 22, Sources.RingMeasuring, Sources.Memory),
        new(27, 3, 86, "", 28, Sources.RingMeasuring, Sources.Memory),
        new(28, 5, 110, "offset", 0, Sources.OffsetHole, null),
    ];

    /// <inheritdoc/>
    public static string Called => "bolt circle";

    /// <summary>Number of arms, one bolt each.</summary>
    public int Arms { get; }

    /// <summary>Diameter of the circle through the middles of the holes.</summary>
    public Length Diameter => Length.FromMillimeters(Millimetres);

    /// <summary>All neighbouring holes are equally far apart.</summary>
    public bool IsEven { get; }

    /// <summary>From the middle of one hole to the middle of the next, by arithmetic to the nanometre; null where the holes are not evenly spaced.</summary>
    public Length? AdjacentHoles => IsEven ? Length.FromMillimeters((double)Chord) : null;

    /// <summary>Teeth of the smallest ring that goes on the circle; single makers went one or two lower. Null where no figure is known.</summary>
    public int? SmallestRing { get; }

    /// <summary>Where <see cref="SmallestRing"/> comes from.</summary>
    public Source? SmallestRingSource { get; }

    internal int Millimetres { get; }

    internal override Nanometres? MainLength => new(Millimetres * Nanometres.PerMillimetre);

    internal decimal Chord => decimal.Round((decimal)(Millimetres * Math.Sin(Math.PI / Arms)), 6);

    /// <inheritdoc/>
    public static BoltCircle OfFitCode(long code) => ByCode(code);

    /// <summary>How much the circle at the root of a ring's teeth is larger than the bolt circle: rings usually need 14 to 20 mm. The roller of 7.75 mm is from memory.</summary>
    /// <param name="teeth">Teeth of the ring, 10 to 80.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such ring.</exception>
    public Length RootOver(int teeth)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(teeth, 10);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(teeth, 80);
        return Length.FromMillimeters((ChainPitch / Math.Sin(Math.PI / teeth)) - Roller - Millimetres);
    }

    /// <summary>What circle measured holes can lie on, likeliest first, and what to count or measure next.</summary>
    /// <param name="adjacentHoles">Between the middles of neighbouring holes; uneven circles have several and are never ruled out by one.</param>
    /// <param name="diameter">Through the middles of the holes: twice from the middle of the ring to one hole, or across to the opposite one.</param>
    /// <param name="arms">Number of arms.</param>
    /// <exception cref="ArgumentException">No length was measured, or a reading is a default.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of arms is below one.</exception>
    public static Identification<BoltCircle> Identify(MeasuredLength? adjacentHoles = null, MeasuredLength? diameter = null, int? arms = null) =>
        BoltCircleMeasured.Identify(adjacentHoles, diameter, arms);

    /// <summary>Reads a key, or a diameter with or without the number of arms and the word even, uneven or offset in any order; what several circles are called gives all of them.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<BoltCircle> Read(ReadOnlySpan<char> text) => BoltCircleText.Read(Trim(text));

    private static BoltCircle Known(int code, int arms, int diameter, int smallest, Source source) => new(code, arms, diameter, "", smallest, source, source);
}
