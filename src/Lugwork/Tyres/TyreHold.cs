using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Tyres;

/// <summary>How a tyre is held on its rim. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<TyreHold>))]
[TypeConverter(typeof(InterfaceTypeConverter<TyreHold>))]
public sealed class TyreHold : Standard<TyreHold>, IInterfaceValue<TyreHold>
{
    private TyreHold(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>By its two beads in a rim of an ISO size, with a tube or without.</summary>
    public static TyreHold Clincher { get; } = new(1, "clincher", "beads in a clincher rim", Sources.Iso5775Part1Sample, "beaded", "wired-on");

    /// <summary>Sewn round its tube and stuck on a rim without flanges; it has no ISO size.</summary>
    public static TyreHold Tubular { get; } = new(2, "tubular", "tubular, stuck on", Sources.Iso5775Part1Sample, "sew-up", "tub", "glued");

    /// <summary>Every one.</summary>
    public static ImmutableArray<TyreHold> All { get; } = [Clincher, Tubular];

    /// <inheritdoc/>
    public static string Called => "way a tyre is held";

    /// <inheritdoc/>
    public static TyreHold OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<TyreHold> Read(ReadOnlySpan<char> text) => ByName(text);
}
