using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Steering;

/// <summary>Whether a steerer, or a headset, is threaded. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<SteererKind>))]
[TypeConverter(typeof(InterfaceTypeConverter<SteererKind>))]
public sealed class SteererKind : Standard<SteererKind>, IInterfaceValue<SteererKind>
{
    private SteererKind(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Plain steerer; a stem clamps it.</summary>
    public static SteererKind Threadless { get; } = new(1, "threadless", "threadless", Sources.HeadsetArticle, "ahead", "plain");

    /// <summary>Threaded steerer; a locknut holds the headset and a quill goes inside.</summary>
    public static SteererKind Threaded { get; } = new(2, "threaded", "threaded", Sources.HeadsetArticle);

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<SteererKind> All { get; } =
    [
        Threadless, Threaded,
    ];

    /// <inheritdoc/>
    public static string Called => "steerer kind";

    /// <inheritdoc/>
    public static SteererKind OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<SteererKind> Read(ReadOnlySpan<char> text) => ByName(text);
}
