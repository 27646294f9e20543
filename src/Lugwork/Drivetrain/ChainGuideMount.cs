using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>How a chain guide is held. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<ChainGuideMount>))]
[TypeConverter(typeof(InterfaceTypeConverter<ChainGuideMount>))]
public sealed class ChainGuideMount : Standard<ChainGuideMount>, IInterfaceValue<ChainGuideMount>
{
    private readonly int _micrometres;

    private ChainGuideMount(int code, string key, string name, int micrometres, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _micrometres = micrometres;
    }

    /// <summary>ISCG: three M6 tabs on a circle of 59.24 mm.</summary>
    public static ChainGuideMount Iscg { get; } = new(1, "ISCG", "ISCG (old), 59.24 mm", 59_240, Sources.ChainGuideTabs, "old ISCG", "ISCG old");

    /// <summary>ISCG 05: three M6 tabs on a circle of 73 mm.</summary>
    public static ChainGuideMount Iscg05 { get; } = new(2, "ISCG05", "ISCG 05, 73 mm", 73_000, Sources.ChainGuideTabs);

    /// <summary>A plate between shell and drive-side cup, in the place of one 2.5 mm spacer: only where there is one.</summary>
    public static ChainGuideMount Bracket { get; } = new(3, "BB-mount", "bottom-bracket mount", 0, Sources.GuideOnBracket, "BB", "bottom bracket");

    /// <summary>The mount of the front derailleur.</summary>
    public static ChainGuideMount SeatTube { get; } = new(4, "derailleur-mount", "seat tube or direct mount", 0, Sources.CommonPractice, "seat tube", "front derailleur mount", "direct mount");

    /// <summary>Every mount.</summary>
    public static ImmutableArray<ChainGuideMount> All { get; } = [Iscg, Iscg05, Bracket, SeatTube];

    /// <inheritdoc/>
    public static string Called => "chain-guide mount";

    /// <summary>Diameter of the circle through the middles of the tabs' holes; null for mounts without tabs.</summary>
    public Length? Circle => _micrometres == 0 ? null : Length.FromMicrometers(_micrometres);

    /// <summary>Number of tabs, three; null for mounts without tabs.</summary>
    public int? Tabs => _micrometres == 0 ? null : 3;

    /// <summary>Thread of the tabs' bolts, "M6"; empty for mounts without tabs.</summary>
    public string Bolt => _micrometres == 0 ? "" : "M6";

    /// <summary>Thickness of the spacer whose place a plate takes, 2.5 mm; null for mounts without a plate.</summary>
    public Length? Plate => this == Bracket ? Length.FromMillimeters(2.5) : null;

    /// <inheritdoc/>
    public static ChainGuideMount OfFitCode(long code) => ByCode(code);

    /// <summary>Which tabs a measured circle is.</summary>
    /// <param name="circle">Diameter through the middles of the holes of the tabs: twice from the middle of the spindle to a hole.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<ChainGuideMount> Identify(MeasuredLength circle) => TabsMeasured.Table.Identify(circle);

    /// <summary>Reads a key or a name; the bare letters are the old tabs, as the 05 is never left out.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ChainGuideMount> Read(ReadOnlySpan<char> text) => ByName(text);

    private static class TabsMeasured
    {
        public static readonly IdentificationTable<ChainGuideMount> Table = new(
            [new("circle", "twice from the middle of the spindle to the middle of a hole")],
            [Row(Iscg, "the older, smaller circle"), Row(Iscg05, "the larger circle")],
            m => m.FitKey);

        private static DimensionRow<ChainGuideMount> Row(ChainGuideMount mount, string apart) => new(mount, [(mount._micrometres / 1_000m, mount._micrometres / 1_000m)], apart);
    }
}
