using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Hubs;

/// <summary>Whether the ends of a hub can be changed for others. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<HubEnds>))]
[TypeConverter(typeof(InterfaceTypeConverter<HubEnds>))]
public sealed class HubEnds : Standard<HubEnds>, IInterfaceValue<HubEnds>
{
    private HubEnds(int code, string key, string name, params ImmutableArray<string> names)
        : base(code, key, name, Sources.HubStandards, names)
    {
    }

    /// <summary>Caps or sleeves that the hub maker sells in several sizes, on a shell that a 12 mm axle passes.</summary>
    public static HubEnds Swappable { get; } = new(1, "swappable", "swappable end caps", "swappable ends", "convertible", "end caps");

    /// <summary>A solid axle, or a 9 or 10 mm axle with cones that stays in the hub.</summary>
    public static HubEnds Fixed { get; } = new(2, "fixed", "fixed axle", "fixed ends", "cup and cone", "solid axle");

    /// <summary>Both kinds.</summary>
    public static ImmutableArray<HubEnds> All { get; } = [Swappable, Fixed];

    /// <inheritdoc/>
    public static string Called => "hub ends";

    /// <inheritdoc/>
    public static HubEnds OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<HubEnds> Read(ReadOnlySpan<char> text) => ByName(text);
}
