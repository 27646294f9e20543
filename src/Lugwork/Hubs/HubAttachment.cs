using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>What holds a hub in its ends. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<HubAttachment>))]
[TypeConverter(typeof(InterfaceTypeConverter<HubAttachment>))]
public sealed class HubAttachment : Standard<HubAttachment>, IInterfaceValue<HubAttachment>
{
    private readonly int _skewer;

    private HubAttachment(int code, string key, string name, Source source, int skewer, bool closed, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _skewer = skewer;
        HasClosedEnds = closed;
    }

    /// <summary>A skewer through a hollow axle, in open slots.</summary>
    public static HubAttachment QuickRelease { get; } = new(1, "QR", "quick-release skewer", Sources.AxleGuide, 5, false, "quick release", "quick-release", "skewer", "Q/R");

    /// <summary>A solid threaded axle and two nuts, in open slots.</summary>
    public static HubAttachment Nuts { get; } = new(2, "nuts", "solid axle with nuts", Sources.AxleNut, 0, false, "nutted", "nutted axle", "solid axle", "track nuts");

    /// <summary>Bolts into the ends of the axle.</summary>
    public static HubAttachment Bolts { get; } = new(3, "bolts", "bolts into the axle", Sources.TrialsHubs, 0, false, "bolt", "bolted", "bolt-on");

    /// <summary>A bolt of 9 or 10 mm through the hub, in open slots.</summary>
    public static HubAttachment ThruBolt { get; } = new(4, "thru-bolt", "thru-bolt in open slots", Sources.AxleStandardsBlog, 0, false, "through bolt");

    /// <summary>An axle of 12, 15 or 20 mm through closed ends.</summary>
    public static HubAttachment ThruAxle { get; } = new(5, "thru-axle", "thru-axle in closed ends", Sources.AxleGuide, 0, true, "through axle", "TA");

    /// <summary>Whatever the maker of a one-sided or proprietary fork gives with it.</summary>
    public static HubAttachment Own { get; } = new(6, "own", "maker-own fastening", Sources.Memory, 0, false, "maker-own");

    /// <summary>Every one.</summary>
    public static ImmutableArray<HubAttachment> All { get; } = [QuickRelease, Nuts, Bolts, ThruBolt, ThruAxle, Own];

    /// <inheritdoc/>
    public static string Called => "hub attachment";

    /// <summary>The axle goes through closed ends; an open slot never becomes one.</summary>
    public bool HasClosedEnds { get; }

    /// <summary>Thickness of the skewer, 5 mm; null where there is none.</summary>
    public Length? Skewer => _skewer == 0 ? null : Length.FromMillimeters(_skewer);

    /// <inheritdoc/>
    public static HubAttachment OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<HubAttachment> Read(ReadOnlySpan<char> text) => ByName(text);
}
