using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Cockpit;

/// <summary>A side of the bicycle, seen by the rider. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<Hand>))]
[TypeConverter(typeof(InterfaceTypeConverter<Hand>))]
public sealed class Hand : Standard<Hand>, IInterfaceValue<Hand>
{
    private Hand(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Left.</summary>
    public static Hand Left { get; } = new(1, "left", "left", Sources.BrakeHands, "left hand", "left side");

    /// <summary>Right.</summary>
    public static Hand Right { get; } = new(2, "right", "right", Sources.BrakeHands, "right hand", "right side");

    /// <summary>Either: a lever that is turned round, a frame with a port on both sides or the run outside.</summary>
    public static Hand Either { get; } = new(3, "either", "either side", Sources.CommonPractice, "both", "ambidextrous");

    /// <summary>Every one.</summary>
    public static ImmutableArray<Hand> All { get; } = [Left, Right, Either];

    /// <inheritdoc/>
    public static string Called => "hand";

    /// <inheritdoc/>
    public static Hand OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<Hand> Read(ReadOnlySpan<char> text) => ByName(text);
}
