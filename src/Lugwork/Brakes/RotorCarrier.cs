using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Brakes;

/// <summary>What holds a six-bolt rotor on a splined hub. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<RotorCarrier>))]
[TypeConverter(typeof(InterfaceTypeConverter<RotorCarrier>))]
public sealed class RotorCarrier : Standard<RotorCarrier>, IInterfaceValue<RotorCarrier>
{
    private RotorCarrier(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>A carrier to which six bolts hold the rotor.</summary>
    public static RotorCarrier Bolts { get; } = new(1, "bolts", "carrier with bolts", Sources.SixBoltAndSplined, "bolted");

    /// <summary>A carrier with pins: their heads may foul a lockring with external notches.</summary>
    public static RotorCarrier Pins { get; } = new(2, "pins", "carrier with pins", Sources.SplinedRotorNotes, "pinned");

    /// <summary>Carrier and lockring sold together, one made for the other.</summary>
    public static RotorCarrier WithLockring { get; } = new(3, "with-lockring", "carrier sold with its lockring", Sources.SplinedRotorNotes, "sold with its lockring");

    /// <summary>Every one.</summary>
    public static ImmutableArray<RotorCarrier> All { get; } = [Bolts, Pins, WithLockring];

    /// <inheritdoc/>
    public static string Called => "rotor carrier";

    /// <inheritdoc/>
    public static RotorCarrier OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<RotorCarrier> Read(ReadOnlySpan<char> text) => ByName(text);
}
