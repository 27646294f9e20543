using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Steering;

/// <summary>Where cables and hoses run at the headset. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<CableWay>))]
[TypeConverter(typeof(InterfaceTypeConverter<CableWay>))]
public sealed class CableWay : Standard<CableWay>, IInterfaceValue<CableWay>
{
    private CableWay(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Past the headset: a plain cover.</summary>
    public static CableWay Outside { get; } = new(1, "outside", "cables outside the headset", Sources.CableHeadsets, "external", "plain");

    /// <summary>Down through the cover and the upper bearing; cover, centring ring and spacers are one system.</summary>
    public static CableWay Through { get; } = new(2, "through", "cables through the headset", Sources.CableHeadsets, "internal", "through the headset");

    /// <summary>Every one.</summary>
    public static ImmutableArray<CableWay> All { get; } = [Outside, Through];

    /// <inheritdoc/>
    public static string Called => "way of the cables at the headset";

    /// <inheritdoc/>
    public static CableWay OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<CableWay> Read(ReadOnlySpan<char> text) => ByName(text);
}
