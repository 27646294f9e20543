using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Cockpit;

/// <summary>Outside diameter of a bar where grips, levers and shifters go. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<GripDiameter>))]
[TypeConverter(typeof(InterfaceTypeConverter<GripDiameter>))]
public sealed class GripDiameter : Standard<GripDiameter>, IInterfaceValue<GripDiameter>
{
    private GripDiameter(int code, string key, string name, Source source, int hundredths, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Hundredths = hundredths;
    }

    /// <summary>Flat, BMX and city bars: 7/8 in.</summary>
    public static GripDiameter Mm22Point2 { get; } = new(1, "22.2", "22.2 mm grip", Sources.PostSizesCanada, 2220, "22.2 mm", "7/8 in", "flat", "flat bar");

    /// <summary>Old French bars.</summary>
    public static GripDiameter Mm23Point5 { get; } = new(2, "23.5", "23.5 mm grip", Sources.BarAndStemTable, 2350, "23.5 mm", "French");

    /// <summary>Drop bars, whatever their middle measures: 15/16 in.</summary>
    public static GripDiameter Mm23Point8 { get; } = new(3, "23.8", "23.8 mm grip", Sources.LeverSeats, 2380, "23.8 mm", "15/16 in", "drop", "drop bar");

    /// <summary>Every one, smallest first.</summary>
    public static ImmutableArray<GripDiameter> All { get; } = [Mm22Point2, Mm23Point5, Mm23Point8];

    /// <inheritdoc/>
    public static string Called => "grip diameter";

    /// <summary>The diameter.</summary>
    public Length Diameter => Length.FromMillimeters(Hundredths / 100d);

    internal int Hundredths { get; }

    internal override Nanometres? MainLength => new(Hundredths * (Nanometres.PerMillimetre / 100));

    /// <summary>The ones within the error of a measured size.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<GripDiameter> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(g => Math.Abs((g.Hundredths / 100m) - millimetres) <= error)];

    /// <summary>What a grip diameter can be, from what it measures.</summary>
    /// <param name="diameter">Outside diameter of the bare bar where the controls go, or inside diameter of a control's closed band.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<GripDiameter> Identify(MeasuredLength diameter) => GripDiameterDimensions.Table.Identify(diameter);

    /// <inheritdoc/>
    public static GripDiameter OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a size in millimetres, with a decimal comma and a unit if need be, or a name.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<GripDiameter> Read(ReadOnlySpan<char> text) =>
        SizedText.Find<GripDiameter>(text, g => g.Hundredths) is { } sized ? TextReading<GripDiameter>.Of(sized) : ByName(text);

    /// <summary>Made when something is first identified.</summary>
    private static class GripDiameterDimensions
    {
        public static readonly IdentificationTable<GripDiameter> Table = new([new("diameter", "outside caliper on the bare bar where the controls go")], Rows(), g => g.TradeName);

        private static ImmutableArray<DimensionRow<GripDiameter>> Rows()
        {
            ImmutableArray<DimensionRow<GripDiameter>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<GripDiameter>>(All.Length);
            foreach (GripDiameter grip in All)
            {
                string apart = grip == Mm22Point2 ? "a flat bar" : grip == Mm23Point5 ? "an old French bar, 25.0 mm in the middle" : "a drop bar";
                rows.Add(new(grip, [(grip.Hundredths / 100m, grip.Hundredths / 100m)], apart));
            }

            return rows.MoveToImmutable();
        }
    }
}
