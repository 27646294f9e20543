using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Brakes;

/// <summary>What track the pads of a rim brake are made for. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<RimPads>))]
[TypeConverter(typeof(InterfaceTypeConverter<RimPads>))]
public sealed class RimPads : Standard<RimPads>, IInterfaceValue<RimPads>
{
    private RimPads(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Wear-resistant, for aluminium.</summary>
    public static RimPads ForAluminium { get; } = new(1, "for-aluminium", "pads for aluminium rims", Sources.CarbonRimPads, "aluminium", "aluminum", "alloy");

    /// <summary>Soft, for carbon: on aluminium they wear out quickly and pick up chips.</summary>
    public static RimPads ForCarbon { get; } = new(2, "for-carbon", "pads for carbon rims", Sources.CarbonRimPads, "carbon");

    /// <summary>Every one.</summary>
    public static ImmutableArray<RimPads> All { get; } = [ForAluminium, ForCarbon];

    /// <inheritdoc/>
    public static string Called => "rim-brake pads";

    /// <inheritdoc/>
    public static RimPads OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<RimPads> Read(ReadOnlySpan<char> text) => ByName(text);
}
