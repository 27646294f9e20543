using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.BottomBrackets;

/// <summary>Which cranks two pedals are threaded for. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<PedalSides>))]
[TypeConverter(typeof(InterfaceTypeConverter<PedalSides>))]
public sealed class PedalSides : Standard<PedalSides>, IInterfaceValue<PedalSides>
{
    private PedalSides(int code, string key, string name, params ImmutableArray<string> names)
        : base(code, key, name, Sources.PedalAttachment, names)
    {
    }

    /// <summary>A right one with a right-hand thread and a left one with a left-hand thread.</summary>
    public static PedalSides Pair { get; } = new(1, "pair", "a left and a right one", "left and right", "L and R");

    /// <summary>Two left ones: one would have to go in the right crank.</summary>
    public static PedalSides TwoLeft { get; } = new(2, "two-left", "two left ones", "both left");

    /// <summary>Two right ones: one would have to go in the left crank.</summary>
    public static PedalSides TwoRight { get; } = new(3, "two-right", "two right ones", "both right");

    /// <summary>Every one.</summary>
    public static ImmutableArray<PedalSides> All { get; } = [Pair, TwoLeft, TwoRight];

    /// <inheritdoc/>
    public static string Called => "pedal sides";

    /// <inheritdoc/>
    public static PedalSides OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<PedalSides> Read(ReadOnlySpan<char> text) => ByName(text);
}
