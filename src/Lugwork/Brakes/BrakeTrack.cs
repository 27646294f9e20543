using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Brakes;

/// <summary>What the pads of a rim brake press on. A rim made for discs has none: "none". Closed set, identity equality.</summary>
/// <remarks>Steel and coated tracks have no row: no page was found that pairs them with pads.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<BrakeTrack>))]
[TypeConverter(typeof(InterfaceTypeConverter<BrakeTrack>))]
public sealed class BrakeTrack : Standard<BrakeTrack>, IInterfaceValue<BrakeTrack>
{
    private BrakeTrack(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>The flanks of an aluminium rim, or an aluminium track on a carbon rim.</summary>
    public static BrakeTrack Aluminium { get; } = new(1, "aluminium", "aluminium brake track", Sources.CarbonRimPads, "aluminum", "alloy");

    /// <summary>Carbon flanks: they carry heat away badly and take only pads made for them.</summary>
    public static BrakeTrack Carbon { get; } = new(2, "carbon", "carbon brake track", Sources.CarbonRimPads, "carbon fibre");

    /// <summary>Every one.</summary>
    public static ImmutableArray<BrakeTrack> All { get; } = [Aluminium, Carbon];

    /// <inheritdoc/>
    public static string Called => "brake track";

    /// <inheritdoc/>
    public static BrakeTrack OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<BrakeTrack> Read(ReadOnlySpan<char> text) => ByName(text);
}
