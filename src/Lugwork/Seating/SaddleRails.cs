using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>The rails of a saddle. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<SaddleRails>))]
[TypeConverter(typeof(InterfaceTypeConverter<SaddleRails>))]
public sealed class SaddleRails : Standard<SaddleRails>, IInterfaceValue<SaddleRails>
{
    private SaddleRails(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Steel, titanium or aluminium, 7 mm round.</summary>
    public static SaddleRails Round7 { get; } = new(1, "7-round", "7 mm round rails", Sources.Memory, "7 mm round", "7 round", "7mm", "7 mm", "7x7");

    /// <summary>Carbon, 7 wide and 9 high.</summary>
    public static SaddleRails Oval7x9 { get; } = new(2, "7x9", "7 x 9 mm oval rails", Sources.Memory, "7x9 oval", "7 x 9 mm", "7×9");

    /// <summary>Carbon, 7 wide and 9.3 to 9.6 high.</summary>
    public static SaddleRails Oval7x9Point6 { get; } = new(3, "7x9.6", "7 x 9.6 mm oval rails", Sources.Memory, "7x9.3", "7x9.6 oval");

    /// <summary>Carbon, 7 wide and 10 high.</summary>
    public static SaddleRails Oval7x10 { get; } = new(4, "7x10", "7 x 10 mm oval rails", Sources.Memory, "7x10 oval");

    /// <summary>Older steel, 8 mm round.</summary>
    public static SaddleRails Round8 { get; } = new(5, "8-round", "8 mm round rails", Sources.Memory, "8 mm round", "8 round", "8mm", "8 mm");

    /// <summary>One beam; a head of its own.</summary>
    public static SaddleRails Beam { get; } = new(6, "single-rail", "single rail saddle", Sources.Memory, "I-beam", "beam", "monorail");

    /// <summary>BMX, one bolt down the middle.</summary>
    public static SaddleRails Pivotal { get; } = new(7, "pivotal", "pivotal saddle", Sources.Memory);

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<SaddleRails> All { get; } =
    [
        Round7, Oval7x9, Oval7x9Point6, Oval7x10, Round8, Beam, Pivotal,
    ];

    /// <inheritdoc/>
    public static string Called => "saddle rails";

    /// <summary>Width of one rail; null for a single rail and a pivotal saddle.</summary>
    public Length? Width => Hundredths.Width == 0 ? null : Length.FromMillimeters(Hundredths.Width / 100d);

    /// <summary>Height of one rail, the most that is printed (9.3 and 9.6 are one kind); null for a single rail and a pivotal saddle.</summary>
    public Length? Height => Hundredths.Width == 0 ? null : Length.FromMillimeters(Hundredths.Most / 100d);

    private (int Width, int Least, int Most) Hundredths => FitCode switch
    {
        1 => (700, 700, 700),
        2 => (700, 900, 900),
        3 => (700, 930, 960),
        4 => (700, 1000, 1000),
        5 => (800, 800, 800),
        _ => default,
    };

    /// <summary>The rails that readings can be; the height decides between ovals. A single rail and a pivotal saddle have no rails to measure and are told by eye.</summary>
    /// <param name="width">Across one rail, level, where the clamp holds it.</param>
    /// <param name="height">Up and down over one rail, where the clamp holds it.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public static Identification<SaddleRails> Identify(MeasuredLength? width = null, MeasuredLength? height = null) => SaddleRailsMeasures.Table.Identify(width, height);

    /// <inheritdoc/>
    public static SaddleRails OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<SaddleRails> Read(ReadOnlySpan<char> text) => ByName(text);

    private static class SaddleRailsMeasures
    {
        public static IdentificationTable<SaddleRails> Table { get; } = new(
            [
                new("width", "caliper across one rail, level, where the clamp holds it"),
                new("height", "caliper up and down over one rail, where the clamp holds it"),
            ],
            [
                Row(Round7, "round: steel, titanium or aluminium"), Row(Oval7x9, "oval carbon"), Row(Oval7x9Point6, "oval carbon, between 9 and 10 high"),
                Row(Oval7x10, "oval carbon"), Row(Round8, "round: older steel"),
            ],
            rails => rails.FitKey);

        private static DimensionRow<SaddleRails> Row(SaddleRails rails, string tellsApart) =>
            new(rails, [(rails.Hundredths.Width / 100m, rails.Hundredths.Width / 100m), (rails.Hundredths.Least / 100m, rails.Hundredths.Most / 100m)], tellsApart);
    }
}
