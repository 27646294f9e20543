using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Hubs;

/// <summary>How the open slots of a rear end run. Closed ends for a thru-axle: "none". Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<DropoutSlot>))]
[TypeConverter(typeof(InterfaceTypeConverter<DropoutSlot>))]
public sealed class DropoutSlot : Standard<DropoutSlot>, IInterfaceValue<DropoutSlot>
{
    private DropoutSlot(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Along the chain or nearly: the wheel can be drawn back to tension it.</summary>
    public static DropoutSlot Horizontal { get; } = new(1, "horizontal", "horizontal slot", Sources.NonTurnWashers, "track end", "track ends", "horizontal dropouts");

    /// <summary>Up and down: nothing in the end tensions a chain.</summary>
    public static DropoutSlot Vertical { get; } = new(2, "vertical", "vertical slot", Sources.NonTurnWashers, "vertical dropouts");

    /// <summary>Every one.</summary>
    public static ImmutableArray<DropoutSlot> All { get; } = [Horizontal, Vertical];

    /// <inheritdoc/>
    public static string Called => "dropout slot";

    /// <inheritdoc/>
    public static DropoutSlot OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<DropoutSlot> Read(ReadOnlySpan<char> text) => ByName(text);
}
