using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>How a rotor is fixed to a hub. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<RotorFixing>))]
[TypeConverter(typeof(InterfaceTypeConverter<RotorFixing>))]
public sealed class RotorFixing : Standard<RotorFixing>, IInterfaceValue<RotorFixing>
{
    private RotorFixing(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Six M5 bolts on a 44 mm circle.</summary>
    public static RotorFixing SixBolt { get; } = new(1, "six-bolt", "six-bolt", Sources.SixBoltAndSplined, "6-bolt", "6 bolt", "IS 6-bolt");

    /// <summary>Center Lock: splines and a lockring.</summary>
    public static RotorFixing CenterLock { get; } = new(2, "center-lock", "Center Lock", Sources.SixBoltAndSplined, "centre lock", "CL", "splined");

    /// <summary>Older four- and five-bolt patterns.</summary>
    public static RotorFixing OldPattern { get; } = new(3, "old-bolt-pattern", "four- or five-bolt", Sources.LockringArticle, "4-bolt", "5-bolt", "four-bolt", "five-bolt");

    /// <summary>Every kind.</summary>
    public static ImmutableArray<RotorFixing> All { get; } = [SixBolt, CenterLock, OldPattern];

    /// <inheritdoc/>
    public static string Called => "rotor fixing";

    /// <summary>Diameter of the circle that the bolts stand on: 44 mm for six bolts, partly from memory; null where there are none or none is known.</summary>
    public Length? BoltCircle => this == SixBolt ? Length.FromMillimeters(44) : null;

    /// <summary>Thread of the bolts: "M5", with T25 heads; empty where there are none or none is known.</summary>
    public string Bolt => this == SixBolt ? "M5" : "";

    /// <summary>How many bolts; null where that is open, 0 where a lockring holds the rotor.</summary>
    public int? Bolts => this == SixBolt ? 6 : this == CenterLock ? 0 : null;

    /// <inheritdoc/>
    public static RotorFixing OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<RotorFixing> Read(ReadOnlySpan<char> text) => ByName(text);
}
