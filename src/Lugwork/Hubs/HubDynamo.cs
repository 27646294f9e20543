using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>A dynamo inside a front hub, by what it gives. Closed set, identity equality.</summary>
/// <remarks>To the fork it is a front hub like any other: <see cref="HubStandard"/> says its ends. Lamps and chargers must be made for its voltage.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<HubDynamo>))]
[TypeConverter(typeof(InterfaceTypeConverter<HubDynamo>))]
public sealed class HubDynamo : Standard<HubDynamo>, IInterfaceValue<HubDynamo>
{
    private readonly int _volts;
    private readonly decimal _watts;

    private HubDynamo(int code, string key, string name, Source source, int volts, decimal watts, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _volts = volts;
        _watts = watts;
    }

    /// <summary>The usual one.</summary>
    public static HubDynamo Watt3 { get; } = new(1, "6V-3W", "6 V, 3 W hub dynamo", Sources.HubDynamos, 6, 3m, "6 V 3 W", "3 W", "hub dynamo 3 W");

    /// <summary>A small one for lamps that want little.</summary>
    public static HubDynamo Watt1Half { get; } = new(2, "6V-1.5W", "6 V, 1.5 W hub dynamo", Sources.Memory, 6, 1.5m, "6 V 1.5 W", "1.5 W", "hub dynamo 1.5 W");

    /// <summary>Up to 6 W at 12 V, which some give.</summary>
    public static HubDynamo Watt6 { get; } = new(3, "12V-6W", "12 V, 6 W hub dynamo", Sources.HubDynamos, 12, 6m, "12 V 6 W", "6 W", "hub dynamo 6 W");

    /// <summary>Every one.</summary>
    public static ImmutableArray<HubDynamo> All { get; } = [Watt3, Watt1Half, Watt6];

    /// <inheritdoc/>
    public static string Called => "hub dynamo";

    /// <summary>Nominal voltage.</summary>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(_volts);

    /// <summary>Nominal power at that voltage; some give more.</summary>
    public Power Power => Power.FromWatts((double)_watts);

    /// <inheritdoc/>
    public static HubDynamo OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "hub dynamo" alone is any.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<HubDynamo> Read(ReadOnlySpan<char> text) =>
        Trim(text).Equals("hub dynamo", StringComparison.OrdinalIgnoreCase) || Trim(text).Equals("dynamo", StringComparison.OrdinalIgnoreCase) || Trim(text).Equals("dynamo hub", StringComparison.OrdinalIgnoreCase)
            ? TextReading<HubDynamo>.Several(All, "read volts and watts off the hub")
            : ByName(text);
}
