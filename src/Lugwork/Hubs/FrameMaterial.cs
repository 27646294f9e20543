using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Hubs;

/// <summary>What the rear triangle is made of; only steel can be re-spaced. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<FrameMaterial>))]
[TypeConverter(typeof(InterfaceTypeConverter<FrameMaterial>))]
public sealed class FrameMaterial : Standard<FrameMaterial>, IInterfaceValue<FrameMaterial>
{
    private FrameMaterial(int code, string key, params ImmutableArray<string> names)
        : base(code, key, key, Sources.FrameSpacing, names)
    {
    }

    /// <summary>Steel.</summary>
    public static FrameMaterial Steel { get; } = new(1, "steel", "cromo", "chromoly", "CrMo");

    /// <summary>Aluminium.</summary>
    public static FrameMaterial Aluminium { get; } = new(2, "aluminium", "aluminum", "alloy");

    /// <summary>Carbon.</summary>
    public static FrameMaterial Carbon { get; } = new(3, "carbon", "carbon fibre", "carbon fiber");

    /// <summary>Titanium.</summary>
    public static FrameMaterial Titanium { get; } = new(4, "titanium", "ti");

    /// <summary>Every material.</summary>
    public static ImmutableArray<FrameMaterial> All { get; } = [Steel, Aluminium, Carbon, Titanium];

    /// <inheritdoc/>
    public static string Called => "frame material";

    /// <inheritdoc/>
    public static FrameMaterial OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static Reading<FrameMaterial> Read(ReadOnlySpan<char> text) => ByName(text);
}
