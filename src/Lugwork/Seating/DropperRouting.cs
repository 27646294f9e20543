using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Seating;

/// <summary>How a dropper is worked from the bar. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<DropperRouting>))]
[TypeConverter(typeof(InterfaceTypeConverter<DropperRouting>))]
public sealed class DropperRouting : Standard<DropperRouting>, IInterfaceValue<DropperRouting>
{
    private DropperRouting(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Cable or hose through the frame to the foot of the post.</summary>
    public static DropperRouting Internal { get; } = new(1, "internal", "routed through the frame", Sources.CommonPractice, "internally routed", "stealth routing");

    /// <summary>Cable or hose along the outside, to the head or the collar of the post.</summary>
    public static DropperRouting External { get; } = new(2, "external", "routed outside the frame", Sources.CommonPractice, "externally routed");

    /// <summary>No cable.</summary>
    public static DropperRouting Wireless { get; } = new(3, "wireless", "wireless", Sources.CommonPractice, "no cable", "cableless");

    /// <summary>Every one.</summary>
    public static ImmutableArray<DropperRouting> All { get; } = [Internal, External, Wireless];

    /// <inheritdoc/>
    public static string Called => "dropper routing";

    /// <inheritdoc/>
    public static DropperRouting OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<DropperRouting> Read(ReadOnlySpan<char> text) => ByName(text);
}
