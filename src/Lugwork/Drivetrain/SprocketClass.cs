using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>What sprockets or rings are spaced and cut for. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<SprocketClass>))]
[TypeConverter(typeof(InterfaceTypeConverter<SprocketClass>))]
public sealed class SprocketClass : Standard<SprocketClass>, IInterfaceValue<SprocketClass>
{
    private SprocketClass(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>One sprocket, 1/8 in tooth.</summary>
    public static SprocketClass Eighth { get; } = new(1, "1/8", "1/8 in single", Sources.ChainWidths, "1/8 in", "single 1/8");

    /// <summary>One sprocket, 3/32 in tooth.</summary>
    public static SprocketClass Single332 { get; } = new(2, "3/32-single", "3/32 in single", Sources.ChainCatalogue, "3/32", "3/32 in", "single 3/32");

    /// <summary>Sprockets or rings for 5 to 8 speeds.</summary>
    public static SprocketClass To8 { get; } = new(3, "5-8", "5 to 8 speeds", Sources.SprocketSpacing, "8-speed", "7-speed", "6-speed", "5-speed", "8", "7", "6", "5");

    /// <summary>Sprockets or rings for 9 speeds.</summary>
    public static SprocketClass For9 { get; } = new(4, "9", "9 speeds", Sources.SprocketSpacing, "9-speed", "9 speed", "9s");

    /// <summary>Sprockets or rings for 10 speeds.</summary>
    public static SprocketClass For10 { get; } = new(5, "10", "10 speeds", Sources.SprocketSpacing, "10-speed", "10 speed", "10s");

    /// <summary>Sprockets or rings for 11 speeds.</summary>
    public static SprocketClass For11 { get; } = new(6, "11", "11 speeds", Sources.CassetteWidths, "11-speed", "11 speed", "11s");

    /// <summary>Sprockets or rings for 12 speeds.</summary>
    public static SprocketClass For12 { get; } = new(7, "12", "12 speeds", Sources.CassetteWidths, "12-speed", "12 speed", "12s");

    /// <summary>Sprockets or rings for 13 speeds.</summary>
    public static SprocketClass For13 { get; } = new(8, "13", "13 speeds", Sources.N3wPage, "13-speed", "13 speed", "13s");

    /// <summary>For a toothed belt: no chain runs on it.</summary>
    public static SprocketClass Belt { get; } = new(9, "belt", "belt sprocket", Sources.BeltTracks, "belt sprockets", "belt pulley", "belt ring", "belt cog");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<SprocketClass> All { get; } =
    [
        Eighth, Single332, To8, For9, For10, For11, For12, For13, Belt,
    ];

    /// <inheritdoc/>
    public static string Called => "sprocket class";

    /// <inheritdoc/>
    public static SprocketClass OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<SprocketClass> Read(ReadOnlySpan<char> text) => ByName(text);
}
