using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Seating;

/// <summary>Whether a frame lets the cable of a dropper in. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<DropperEntry>))]
[TypeConverter(typeof(InterfaceTypeConverter<DropperEntry>))]
public sealed class DropperEntry : Standard<DropperEntry>, IInterfaceValue<DropperEntry>
{
    private DropperEntry(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>It has a hole for the cable and a free way to the foot of the seat tube.</summary>
    public static DropperEntry Hole { get; } = new(1, "hole", "entry hole", Sources.CommonPractice, "entry", "port");

    /// <summary>It has no hole.</summary>
    public static DropperEntry NoHole { get; } = new(2, "no-hole", "no entry hole", Sources.CommonPractice, "no entry", "no port");

    /// <summary>Every one.</summary>
    public static ImmutableArray<DropperEntry> All { get; } = [Hole, NoHole];

    /// <inheritdoc/>
    public static string Called => "dropper entry of the frame";

    /// <inheritdoc/>
    public static DropperEntry OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<DropperEntry> Read(ReadOnlySpan<char> text) => ByName(text);
}
