using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>How a rear derailleur is held. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<DerailleurMount>))]
[TypeConverter(typeof(InterfaceTypeConverter<DerailleurMount>))]
public sealed class DerailleurMount : Standard<DerailleurMount>, IInterfaceValue<DerailleurMount>
{
    private DerailleurMount(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>An upper pivot bolt M10 x 1.</summary>
    public static DerailleurMount Bolt { get; } = new(1, "M10-bolt", "M10 bolt", Sources.UniversalHangerNews, "M10", "M10x1", "conventional", "standard");

    /// <summary>A derailleur whose intermediate link comes off for a direct-mount hanger.</summary>
    public static DerailleurMount DirectMount { get; } = new(2, "direct-mount", "direct mount with a link", Sources.DirectMountHanger, "direct mount");

    /// <summary>It clamps the frame end itself, round the axle.</summary>
    public static DerailleurMount Hangerless { get; } = new(3, "hangerless", "hangerless", Sources.UniversalHangerMaker, "full mount", "coaxial");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<DerailleurMount> All { get; } =
    [
        Bolt, DirectMount, Hangerless,
    ];

    /// <inheritdoc/>
    public static string Called => "derailleur mount";

    /// <inheritdoc/>
    public static DerailleurMount OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<DerailleurMount> Read(ReadOnlySpan<char> text) => ByName(text);
}
