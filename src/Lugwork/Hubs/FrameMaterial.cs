using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Hubs;

/// <summary>What the rear triangle is made of; only steel can be re-spaced. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<Material>))]
[TypeConverter(typeof(InterfaceTypeConverter<Material>))]
public sealed class Material : Standard<Material>, IInterfaceValue<Material>
{
    private Material(int code, string key, params ImmutableArray<string> names)
        : base(code, key, key, Sources.FrameSpacing, names)
    {
    }

    /// <summary>Steel.</summary>
    public static Material Steel { get; } = new(1, "steel", "cromo", "chromoly", "CrMo");

    /// <summary>Aluminium.</summary>
    public static Material Aluminium { get; } = new(2, "aluminium", "aluminum", "alloy");

    /// <summary>Carbon.</summary>
    public static Material Carbon { get; } = new(3, "carbon", "carbon fibre", "carbon fiber");

    /// <summary>Titanium.</summary>
    public static Material Titanium { get; } = new(4, "titanium", "ti");

    /// <summary>Every material.</summary>
    public static ImmutableArray<Material> All { get; } = [Steel, Aluminium, Carbon, Titanium];

    /// <inheritdoc/>
    public static string Called => "frame material";

    /// <inheritdoc/>
    public static Material OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<Material> Read(ReadOnlySpan<char> text) => ByName(text);
}
