using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>How the upper end of a rear shock is held; the lower end is an eyelet on both. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<ShockMount>))]
[TypeConverter(typeof(InterfaceTypeConverter<ShockMount>))]
public sealed class ShockMount : Standard<ShockMount>, IInterfaceValue<ShockMount>
{
    private ShockMount(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>An eyelet with a bush and a through bolt at both ends.</summary>
    public static ShockMount Eyelet { get; } = new(1, "eyelet", "eyelet mount", Sources.InlineShockSizes, "standard", "standard mount", "eye to eye");

    /// <summary>Two screws into the sides of the body; no bush at that end.</summary>
    public static ShockMount Trunnion { get; } = new(2, "trunnion", "trunnion mount", Sources.InlineShockSizes, "trunnion eye", "T", "TR");

    /// <summary>Every one.</summary>
    public static ImmutableArray<ShockMount> All { get; } = [Eyelet, Trunnion];

    /// <inheritdoc/>
    public static string Called => "shock mount";

    /// <summary>Width between the frame's faces, about 54 mm, at a trunnion; null for an eyelet, whose width is that of its hardware. From memory.</summary>
    public Length? Width => this == Trunnion ? Length.FromMillimeters(54) : null;

    /// <summary>Diameter of the two screws of a trunnion, metric thread; null for an eyelet, whose bolt is that of its hardware. From memory.</summary>
    public Length? Screw => this == Trunnion ? Length.FromMillimeters(10) : null;

    /// <summary>What width and screw rest on; null for an eyelet.</summary>
    public Source? WidthSource => this == Trunnion ? Sources.Memory : null;

    /// <summary>The warning that goes with it; null for an eyelet.</summary>
    public Caution? Caution => this == Trunnion ? Cautions.TrunnionLoad : null;

    /// <inheritdoc/>
    public static ShockMount OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<ShockMount> Read(ReadOnlySpan<char> text) => ByName(text);
}
