using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Seating;

/// <summary>What holds the seatpost in the seat tube. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<SeatBinder>))]
[TypeConverter(typeof(InterfaceTypeConverter<SeatBinder>))]
public sealed class SeatBinder : Standard<SeatBinder>, IInterfaceValue<SeatBinder>
{
    private SeatBinder(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>A separate collar round the tube.</summary>
    public static SeatBinder Collar { get; } = new(1, "collar", "separate collar", Sources.CarbonPostCracks, "separate clamp", "seat collar");

    /// <summary>Ears welded or brazed to the tube, with a bolt through them.</summary>
    public static SeatBinder WeldedTabs { get; } = new(2, "welded-tabs", "ears welded to the seat tube", Sources.CarbonPostCracks, "welded ears", "brazed ears", "binder tabs", "binder bolt");

    /// <summary>Every one.</summary>
    public static ImmutableArray<SeatBinder> All { get; } = [Collar, WeldedTabs];

    /// <inheritdoc/>
    public static string Called => "seat binder";

    /// <inheritdoc/>
    public static SeatBinder OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<SeatBinder> Read(ReadOnlySpan<char> text) => ByName(text);
}
