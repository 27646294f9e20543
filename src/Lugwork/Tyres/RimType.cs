using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Tyres;

/// <summary>How the rim holds the bead, by the letters of ISO 5775-2. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<RimType>))]
[TypeConverter(typeof(InterfaceTypeConverter<RimType>))]
public sealed class RimType : Standard<RimType>, IInterfaceValue<RimType>
{
    private RimType(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Straight side, tube type; takes rigid wired beads only.</summary>
    public static RimType StraightSide { get; } = new(1, "SS", "straight side", Sources.Iso5775Part2Extract);

    /// <summary>Crochet: a small hook, tube type.</summary>
    public static RimType Crochet { get; } = new(2, "C", "crochet", Sources.Iso5775Part2Extract, "tube type crochet");

    /// <summary>Hooked bead: an old type for beaded-edge tyres with diameters of their own. Not the hook of a modern rim.</summary>
    public static RimType HookedBead { get; } = new(3, "HB", "hooked bead", Sources.Iso5775Part2Extract, "beaded edge");

    /// <summary>Tubeless straight side: hookless.</summary>
    public static RimType Hookless { get; } = new(4, "TSS", "hookless", Sources.Iso5775Article, "tubeless straight side");

    /// <summary>Tubeless crochet.</summary>
    public static RimType TubelessCrochet { get; } = new(5, "TC", "tubeless crochet", Sources.Iso5775Article, "tubeless hooked", "hooked tubeless");

    /// <summary>Every rim type.</summary>
    public static ImmutableArray<RimType> All { get; } = [StraightSide, Crochet, HookedBead, Hookless, TubelessCrochet];

    /// <inheritdoc/>
    public static string Called => "rim type";

    /// <inheritdoc/>
    public static RimType OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a code or a name. "Hooked" alone is several: crochet, tubeless crochet or the old hooked bead.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<RimType> Read(ReadOnlySpan<char> text) =>
        Trim(text).Equals("hooked", StringComparison.OrdinalIgnoreCase)
            ? TextReading<RimType>.Several([Crochet, HookedBead, TubelessCrochet], "'hooked' is said of crochet rims and of the old hooked-bead type")
            : ByName(text);
}
