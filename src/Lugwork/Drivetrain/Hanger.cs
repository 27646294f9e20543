using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Where a rear derailleur hangs on a frame. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<Hanger>))]
[TypeConverter(typeof(InterfaceTypeConverter<Hanger>))]
public sealed class Hanger : Standard<Hanger>, IInterfaceValue<Hanger>
{
    private Hanger(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>A threaded hole M10 x 1, fixed or on a replaceable hanger.</summary>
    public static Hanger M10 { get; } = new(1, "M10x1", "M10 x 1 hanger", Sources.UniversalHangerNews, "M10", "replaceable", "conventional", "standard", "M10x1.0");

    /// <summary>Older Italian.</summary>
    public static Hanger M10Pitch26 { get; } = new(2, "M10x26", "10 mm x 26 tpi hanger", Sources.Memory, "10x26");

    /// <summary>A plain hole without a stop; older French.</summary>
    public static Hanger Plain { get; } = new(3, "plain", "unthreaded hanger", Sources.UnthreadedEnds, "unthreaded");

    /// <summary>An axle slot and nothing else.</summary>
    public static Hanger NoHanger { get; } = new(4, "no-hanger", "no hanger", Sources.HangersDemystified, "without hanger", "claw");

    /// <summary>A longer hanger that stands for the derailleur's own link.</summary>
    public static Hanger DirectMount { get; } = new(5, "direct-mount", "direct-mount hanger", Sources.DirectMountHanger, "direct mount");

    /// <summary>A frame end that follows the universal hanger.</summary>
    public static Hanger Universal { get; } = new(6, "UDH", "universal hanger (UDH)", Sources.UniversalHangerMaker, "universal");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<Hanger> All { get; } =
    [
        M10, M10Pitch26, Plain, NoHanger, DirectMount, Universal,
    ];

    /// <inheritdoc/>
    public static string Called => "derailleur hanger";

    /// <summary>Pitch of the hole's thread: 1.0 mm, or 0.977 mm for 26 threads to the inch; null where there is none. Diameter is 10 mm in both.</summary>
    public Length? Pitch => FitCode switch { 1 or 6 => Length.FromMillimeters(1), 2 => Length.FromMillimeters(25.4 / 26), _ => null };

    /// <summary>Length of thread that the universal hanger's bolt gives the thru-axle, 12.7 mm of M12 x 1.0; null for others.</summary>
    public Length? AxleThreadLength => this == Universal ? Length.FromMillimeters(12.7) : null;

    /// <summary>The bolt that holds the hanger in the frame has a left-hand thread.</summary>
    public bool HasLeftHandBolt => this == Universal;

    /// <summary>How many variants of the frame side are drawn: five for the universal hanger, some with a washer; null for others.</summary>
    public int? FrameVariants => this == Universal ? 5 : null;

    /// <inheritdoc/>
    public static Hanger OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<Hanger> Read(ReadOnlySpan<char> text) => ByName(text);
}
