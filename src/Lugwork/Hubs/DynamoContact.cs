using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Hubs;

/// <summary>How the wire is joined to a hub dynamo. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<DynamoContact>))]
[TypeConverter(typeof(InterfaceTypeConverter<DynamoContact>))]
public sealed class DynamoContact : Standard<DynamoContact>, IInterfaceValue<DynamoContact>
{
    private DynamoContact(int code, string key, string name, Source source, bool fork, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        NeedsOwnFork = fork;
    }

    /// <summary>Two blades beside the axle that take a spade each; two makers' patterns differ in size.</summary>
    public static DynamoContact Spades { get; } = new(1, "spades", "two spade terminals", Sources.DynamoConnectors, false, "spade", "spade terminals", "blade terminals");

    /// <summary>A plug in two halves that clamps bare wire ends and is pushed onto the hub.</summary>
    public static DynamoContact Plug { get; } = new(2, "plug", "plug that clamps the wires", Sources.DynamoPlug, false, "clip", "push-on plug");

    /// <summary>A plate in the fork end, touched by the hub: no loose wire, and a fork that has it.</summary>
    public static DynamoContact ForkEnd { get; } = new(3, "fork-end", "contact plate in the fork end", Sources.DynamoConnectors, true, "drop-out contact", "contact drop-out");

    /// <summary>Every one.</summary>
    public static ImmutableArray<DynamoContact> All { get; } = [Spades, Plug, ForkEnd];

    /// <inheritdoc/>
    public static string Called => "dynamo contact";

    /// <summary>It works only in a fork that is made for it, seldom any but one built to order.</summary>
    public bool NeedsOwnFork { get; }

    /// <inheritdoc/>
    public static DynamoContact OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<DynamoContact> Read(ReadOnlySpan<char> text) => ByName(text);
}
