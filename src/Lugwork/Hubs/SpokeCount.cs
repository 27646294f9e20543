using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Hubs;

/// <summary>How many holes for spokes a hub has in both flanges together, or a rim. Closed set, identity equality.</summary>
/// <remarks>Hub and rim must have the same number, except where a wheel is laced two to one by its maker. 28, 32 and 36 are printed; the other numbers are from memory.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<SpokeCount>))]
[TypeConverter(typeof(InterfaceTypeConverter<SpokeCount>))]
public sealed class SpokeCount : Standard<SpokeCount>, IInterfaceValue<SpokeCount>
{
    private SpokeCount(int holes, Source source)
        : base(holes, FormattableString.Invariant($"{holes}"), FormattableString.Invariant($"{holes} holes"), source, FormattableString.Invariant($"{holes}h"), FormattableString.Invariant($"{holes} hole"), FormattableString.Invariant($"{holes} spokes"))
    {
    }

    /// <summary>Every number, few holes before many.</summary>
    public static ImmutableArray<SpokeCount> All { get; } =
    [
        new(16, Sources.Memory), new(18, Sources.Memory), new(20, Sources.Memory), new(24, Sources.Memory),
        new(28, Sources.RimTable), new(32, Sources.RimTable), new(36, Sources.RimTable),
        new(40, Sources.Memory), new(48, Sources.Memory),
    ];

    /// <inheritdoc/>
    public static string Called => "spoke holes";

    /// <inheritdoc/>
    public static SpokeCount OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<SpokeCount> Read(ReadOnlySpan<char> text) => ByName(text);
}
