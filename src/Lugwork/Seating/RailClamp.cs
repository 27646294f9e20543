using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>What a seatpost head holds. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<RailClamp>))]
[TypeConverter(typeof(InterfaceTypeConverter<RailClamp>))]
public sealed class RailClamp : Standard<RailClamp>, IInterfaceValue<RailClamp>
{
    private RailClamp(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Standard jaws for 7 mm round rails.</summary>
    public static RailClamp Round7 { get; } = new(1, "7-round", "7 mm round rails", Sources.Memory, "7 mm round", "7 round", "7mm", "7 mm", "7x7");

    /// <summary>Jaws for oval rails, 7 wide and 9 high.</summary>
    public static RailClamp Oval7x9 { get; } = new(2, "7x9", "7 x 9 mm oval rails", Sources.Memory, "7x9 oval", "7 x 9 mm", "7×9");

    /// <summary>Jaws for oval rails, 7 wide and 10 high.</summary>
    public static RailClamp Oval7x10 { get; } = new(4, "7x10", "7 x 10 mm oval rails", Sources.Memory, "7x10 oval");

    /// <summary>Jaws for 8 mm round rails.</summary>
    public static RailClamp Round8 { get; } = new(5, "8-round", "8 mm round rails", Sources.Memory, "8 mm round", "8 round", "8mm", "8 mm");

    /// <summary>A head for one beam.</summary>
    public static RailClamp Beam { get; } = new(6, "single-rail", "a single rail", Sources.Memory, "I-beam", "beam", "monorail");

    /// <summary>A head for a pivotal saddle.</summary>
    public static RailClamp Pivotal { get; } = new(7, "pivotal", "a pivotal saddle", Sources.Memory);

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<RailClamp> All { get; } =
    [
        Round7, Oval7x9, Oval7x10, Round8, Beam, Pivotal,
    ];

    /// <inheritdoc/>
    public static string Called => "rails";

    /// <summary>Width of the rail that the jaws hold; null for a single rail and a pivotal saddle.</summary>
    public Length? Width => Hundredths.Width == 0 ? null : Length.FromMillimeters(Hundredths.Width / 100d);

    /// <summary>Height of the rail that the jaws hold; null for a single rail and a pivotal saddle.</summary>
    public Length? Height => Hundredths.Width == 0 ? null : Length.FromMillimeters(Hundredths.Most / 100d);

    private (int Width, int Most) Hundredths => FitCode switch
    {
        1 => (700, 700),
        2 => (700, 900),
        4 => (700, 1000),
        5 => (800, 800),
        _ => default,
    };

    /// <inheritdoc/>
    public static RailClamp OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<RailClamp> Read(ReadOnlySpan<char> text) => ByName(text);
}
