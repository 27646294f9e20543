using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>How a chainring without a bolt circle sits on its arm. Closed set, identity equality.</summary>
/// <remarks>Each maker of arms has splines of its own; beside the two versions of one family, whose bolts can be counted, the name of the arm decides.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<DirectMountRing>))]
[TypeConverter(typeof(InterfaceTypeConverter<DirectMountRing>))]
public sealed class DirectMountRing : Standard<DirectMountRing>, IInterfaceValue<DirectMountRing>
{
    // A ring offset of 6 mm gives 49 mm, one of 3 mm gives 52 mm.
    private const decimal WithoutOffset = 55m;

    private DirectMountRing(int code, string key, string name, int bolts, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Bolts = bolts == 0 ? null : bolts;
    }

    /// <summary>Three bolts; goes on no arm of the 8-bolt version.</summary>
    public static DirectMountRing ThreeBolt { get; } = new(1, "3-bolt", "direct mount, 3 bolts", 3, Sources.RingDecoder, "3-bolt direct mount", "direct mount 3-bolt");

    /// <summary>Eight bolts; goes on no arm of the 3-bolt version.</summary>
    public static DirectMountRing EightBolt { get; } = new(2, "8-bolt", "direct mount, 8 bolts", 8, Sources.RingDecoder, "8-bolt direct mount", "direct mount 8-bolt");

    /// <summary>Splines of the arm's maker: only a ring that is sold for the arm.</summary>
    public static DirectMountRing Own { get; } = new(3, "own", "direct mount, maker-own splines", 0, Sources.RingDecoder, "maker-own", "splined", "maker-own direct mount");

    /// <summary>Every one.</summary>
    public static ImmutableArray<DirectMountRing> All { get; } = [ThreeBolt, EightBolt, Own];

    /// <inheritdoc/>
    public static string Called => "direct-mount ring";

    /// <summary>Number of bolts; null for splines with a lockring or bolts of the maker.</summary>
    public int? Bolts { get; }

    /// <summary>Where <see cref="Chainline"/> comes from: printed offsets and chainlines, and arithmetic on both.</summary>
    public static ImmutableArray<Source> ChainlineSources => [Sources.RingOffsets, Sources.Chainline55, Sources.Derived];

    /// <inheritdoc/>
    public static DirectMountRing OfFitCode(long code) => ByCode(code);

    /// <summary>Chainline of a ring by its inward offset on an arm of the 3-bolt family with an off-road spindle: 6 mm gives 49, 3 mm 52, 0 mm 55. By arithmetic; arms with longer spindles differ.</summary>
    /// <param name="offsetMillimetres">Inward offset, -10 to 10 mm; outward is negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such offset.</exception>
    public static Length Chainline(decimal offsetMillimetres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(offsetMillimetres, -10m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(offsetMillimetres, 10m);
        return Length.FromMillimeters((double)(WithoutOffset - offsetMillimetres));
    }

    /// <summary>Reads a key or a name; "direct mount" alone is all three.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<DirectMountRing> Read(ReadOnlySpan<char> text) =>
        Trim(text).Equals("direct mount", StringComparison.OrdinalIgnoreCase) || Trim(text).Equals("direct-mount", StringComparison.OrdinalIgnoreCase)
            ? TextReading<DirectMountRing>.Several(All, "each maker of arms has an interface of its own: count the bolts, else go by the name of the arm")
            : ByName(text);
}
