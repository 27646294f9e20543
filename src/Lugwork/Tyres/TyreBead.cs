using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Tyres;

/// <summary>What the edge of a tyre is made for. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<TyreBead>))]
[TypeConverter(typeof(InterfaceTypeConverter<TyreBead>))]
public sealed class TyreBead : Standard<TyreBead>, IInterfaceValue<TyreBead>
{
    private TyreBead(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Rigid wire bead, with a tube.</summary>
    public static TyreBead Wired { get; } = new(1, "wired", "rigid wired bead", Sources.Iso5775Part2Extract, "wire", "rigid", "wire bead");

    /// <summary>Folding bead, with a tube.</summary>
    public static TyreBead Folding { get; } = new(2, "folding", "folding bead", Sources.Iso5775Part2Extract, "foldable");

    /// <summary>Tubeless or tubeless-ready bead.</summary>
    public static TyreBead Tubeless { get; } = new(3, "tubeless", "tubeless or tubeless-ready bead", Sources.TyreStatement, "tubeless-ready", "TLR");

    /// <summary>Every kind.</summary>
    public static ImmutableArray<TyreBead> All { get; } = [Wired, Folding, Tubeless];

    /// <inheritdoc/>
    public static string Called => "tyre bead";

    /// <inheritdoc/>
    public static TyreBead OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<TyreBead> Read(ReadOnlySpan<char> text) => ByName(text);
}
