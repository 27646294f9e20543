using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>What a chain is made for; a belt stands among them. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<ChainSize>))]
[TypeConverter(typeof(InterfaceTypeConverter<ChainSize>))]
public sealed class ChainSize : Standard<ChainSize>, IInterfaceValue<ChainSize>
{
    private ChainSize(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>One speed, 3.175 mm inside.</summary>
    public static ChainSize Eighth { get; } = new(1, "1/8", "1/8 in chain", Sources.ChainWidths, "1/8 in", "single 1/8", "1/2 x 1/8");

    /// <summary>2.38 mm inside; about 7.0 to 7.8 mm outside.</summary>
    public static ChainSize To8 { get; } = new(2, "5-8", "chain for 5 to 8 speeds (3/32 in)", Sources.ChainWidths, "3/32", "3/32 in", "8-speed", "7-speed", "6-speed", "5-speed", "8", "7", "6", "5");

    /// <summary>9 speeds, 2.18 mm inside.</summary>
    public static ChainSize For9 { get; } = new(3, "9", "9-speed chain", Sources.ChainWidths, "9-speed", "9 speed", "9s");

    /// <summary>10 speeds, 2.18 mm inside.</summary>
    public static ChainSize For10 { get; } = new(4, "10", "10-speed chain", Sources.ChainWidths, "10-speed", "10 speed", "10s");

    /// <summary>11 speeds, 2.18 mm inside.</summary>
    public static ChainSize For11 { get; } = new(5, "11", "11-speed chain", Sources.ChainWidths, "11-speed", "11 speed", "11s");

    /// <summary>12 speeds, 2.18 mm inside.</summary>
    public static ChainSize For12 { get; } = new(6, "12", "12-speed chain", Sources.ChainWidths, "12-speed", "12 speed", "12s");

    /// <summary>13 speeds, 2.18 mm inside.</summary>
    public static ChainSize For13 { get; } = new(7, "13", "13-speed chain", Sources.ChainWidths, "13-speed", "13 speed", "13s");

    /// <summary>Freight and work bicycles, 4.0 mm inside.</summary>
    public static ChainSize Freight { get; } = new(8, "5/32", "5/32 in chain", Sources.ChainWidths, "5/32 in", "freight");

    /// <summary>A toothed belt instead of a chain: one closed loop, on belt sprockets only. Its lengths are its maker's.</summary>
    public static ChainSize Belt { get; } = new(9, "belt", "toothed belt", Sources.BeltConversion, "belt drive", "drive belt", "tooth belt", "timing belt", "carbon belt");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<ChainSize> All { get; } =
    [
        Eighth, To8, For9, For10, For11, For12, For13, Freight, Belt,
    ];

    /// <summary>Pitch of every bicycle chain, 12.7 mm; a belt has one of its own.</summary>
    public static Length Pitch => Length.FromMillimeters(12.7);

    /// <inheritdoc/>
    public static string Called => "chain size";

    /// <summary>It opens at a link: a belt does not, so the frame has to.</summary>
    public bool Opens => this != Belt;

    /// <summary>Between the inner plates; null for a belt, which has none.</summary>
    public Length? InnerWidth => Opens ? Length.FromMicrometers(InnerMicrometres) : null;

    /// <summary>Least printed width over the rivets; null where none is printed: that of the 1/8 in chain, about 9 mm, is only remembered.</summary>
    public Length? LeastOverRivets => OverRivets is { Least: > 0 } over ? Length.FromMicrometers(over.Least) : null;

    /// <summary>Most printed width over the rivets; null where none is printed. Of 5 to 8 speeds it is that of 6: 7.8 mm; 7 speeds have 7.3, 8 speeds 7.0 to 7.3.</summary>
    public Length? MostOverRivets => OverRivets is { Least: > 0 } over ? Length.FromMicrometers(over.Most) : null;

    internal int InnerMicrometres => FitCode switch { 1 => 3_175, 2 => 2_380, 8 => 4_000, 9 => 0, _ => 2_180 };

    // Bicycle chain explained (width tables), the printed widths over the rivets.
    internal (int Least, int Most) OverRivets => FitCode switch
    {
        2 => (7_000, 7_800),
        3 => (6_500, 6_700),
        4 => (5_840, 6_200),
        5 => (5_460, 5_740),
        6 => (5_150, 5_250),
        7 => (4_900, 4_900),
        _ => default,
    };

    /// <summary>The chains whose printed width over the rivets is within the error of a measured one, 0.1 mm of wear and maker's difference included. The wide chains have no printed one and are never read from a caliper.</summary>
    /// <param name="millimetres">What was measured over the rivets, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<ChainSize> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(c => c.OverRivets is { Least: > 0 } over && millimetres + error >= (over.Least / 1_000m) - 0.1m && millimetres - error <= (over.Most / 1_000m) + 0.1m)];

    /// <summary>What chain measured widths can be, likeliest first, and what to measure next.</summary>
    /// <param name="overRivets">Over the ends of a rivet. For the wide chains only a least figure is known, by arithmetic: plates as thick as those of 6 speeds.</param>
    /// <param name="innerWidth">Between the inner plates.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public static Identification<ChainSize> Identify(MeasuredLength? overRivets = null, MeasuredLength? innerWidth = null) => ChainMeasured.Table.Identify(overRivets, innerWidth);

    /// <inheritdoc/>
    public static ChainSize OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<ChainSize> Read(ReadOnlySpan<char> text) => ByName(text);
}
