using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Cockpit;

/// <summary>Diameter of a handlebar at the stem, and of the stem's clamp. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<BarClamp>))]
[TypeConverter(typeof(InterfaceTypeConverter<BarClamp>))]
public sealed class BarClamp : Standard<BarClamp>, IInterfaceValue<BarClamp>
{
    private BarClamp(int code, string key, string name, Source source, int hundredths, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Hundredths = hundredths;
    }

    /// <summary>BMX, old steel, city.</summary>
    public static BarClamp Mm22Point2 { get; } = new(1, "22.2", "22.2 mm", Sources.BarAndStemTable, 2220, "7/8 in");

    /// <summary>Old British steel.</summary>
    public static BarClamp Mm23Point8 { get; } = new(2, "23.8", "23.8 mm", Sources.BarAndStemTable, 2380, "15/16 in");

    /// <summary>Old French.</summary>
    public static BarClamp Mm25 { get; } = new(3, "25", "25.0 mm", Sources.BarAndStemTable, 2500, "25.0");

    /// <summary>Flat bars before 2005, old drop bars.</summary>
    public static BarClamp Mm25Point4 { get; } = new(4, "25.4", "25.4 mm", Sources.BarAndStemTable, 2540, "1 in");

    /// <summary>In-between drop bars.</summary>
    public static BarClamp Mm25Point8 { get; } = new(5, "25.8", "25.8 mm", Sources.BarAndStemTable, 2580);

    /// <summary>Italian drop bars.</summary>
    public static BarClamp Mm26 { get; } = new(6, "26", "26.0 mm", Sources.BarAndStemTable, 2600, "26.0");

    /// <summary>Older Italian.</summary>
    public static BarClamp Mm26Point4 { get; } = new(7, "26.4", "26.4 mm", Sources.BarAndStemTable, 2640);

    /// <summary>Obsolete French.</summary>
    public static BarClamp Mm27 { get; } = new(8, "27", "27.0 mm", Sources.BarAndStemTable, 2700, "27.0");

    /// <summary>Modern road, gravel and off-road; also printed 31.7.</summary>
    public static BarClamp Mm31Point8 { get; } = new(9, "31.8", "31.8 mm", Sources.BarAndStemTable, 3180, "31.7", "1-1/4 in");

    /// <summary>Modern off-road.</summary>
    public static BarClamp Mm35 { get; } = new(10, "35", "35.0 mm", Sources.Memory, 3500, "35.0");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<BarClamp> All { get; } =
    [
        Mm22Point2, Mm23Point8, Mm25, Mm25Point4, Mm25Point8, Mm26, Mm26Point4, Mm27,
        Mm31Point8, Mm35,
    ];

    /// <inheritdoc/>
    public static string Called => "bar clamp diameter";

    /// <summary>The ones within the error of a measured size; a bar may measure 0.1 mm under its name.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<BarClamp> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(s => s.Hundredths / 100m >= millimetres - error && s.Hundredths / 100m <= millimetres + error + 0.1m)];

    /// <summary>The diameter.</summary>
    public Length Diameter => Length.FromMillimeters(Hundredths / 100d);

    /// <summary>Where hands and controls go on such bars: flat bars and drop bars of one clamp differ.</summary>
    public ImmutableArray<GripDiameter> Grips => FitCode switch
    {
        1 or 2 or 10 => [GripDiameter.Mm22Point2],
        3 => [GripDiameter.Mm23Point5],
        4 or 9 => [GripDiameter.Mm22Point2, GripDiameter.Mm23Point8],
        _ => [GripDiameter.Mm23Point8],
    };

    internal int Hundredths { get; }

    internal override Nanometres? MainLength => new(Hundredths * (Nanometres.PerMillimetre / 100));

    /// <summary>What a bar can be, from what it measures; a bar may measure 0.1 mm under its name.</summary>
    /// <param name="clamp">Outside diameter in the middle of the bar, or inside diameter of the closed stem clamp.</param>
    /// <param name="grip">Outside diameter where the controls go.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<BarClamp> Identify(MeasuredLength? clamp = null, MeasuredLength? grip = null) =>
        BarClampDimensions.Table.Identify(clamp, grip);

    /// <inheritdoc/>
    public static BarClamp OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a size in millimetres, with a decimal comma and a unit if need be, or a name.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<BarClamp> Read(ReadOnlySpan<char> text) =>
        (SizedText.Find<BarClamp>(text, s => s.Hundredths) ?? SizedText.Find<BarClamp>(text, s => s == Mm31Point8 ? 3170 : -1)) is { } sized ? TextReading<BarClamp>.Of(sized) : ByName(text);

    /// <summary>Made when something is first identified.</summary>
    private static class BarClampDimensions
    {
        public static readonly IdentificationTable<BarClamp> Table = new(
            [
                new("clamp", "outside caliper in the middle of the bar, two directions, to 0.05 mm"),
                new("grip", "outside caliper where the controls go"),
            ],
            Rows(),
            c => c.TradeName);

        private static ImmutableArray<DimensionRow<BarClamp>> Rows()
        {
            ImmutableArray<DimensionRow<BarClamp>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<BarClamp>>(All.Length);
            foreach (BarClamp clamp in All)
            {
                // A clamp that is made for flat and for drop bars is not ruled out by either grip.
                decimal grip = clamp.Grips[0].Hundredths / 100m;
                rows.Add(new(clamp, [((clamp.Hundredths / 100m) - 0.1m, clamp.Hundredths / 100m), clamp.Grips.Length == 1 ? (grip, grip) : null], Apart(clamp)));
            }

            return rows.MoveToImmutable();
        }

        private static string Apart(BarClamp clamp) => clamp.FitCode switch
        {
            4 => "flat bars with 22.2 mm at the grips, drop bars with 23.8 mm",
            5 => "between 25.4 and 26.0: measure to 0.05 mm in two directions",
            9 => "also printed 31.7; flat bars with 22.2 mm at the grips, drop bars with 23.8 mm",
            3 => "French: 23.5 mm at the grips",
            _ => "",
        };
    }
}
