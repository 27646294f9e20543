using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>Outside diameter of a seat tube at its top, and of the collar that goes round it. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<SeatClampSize>))]
[TypeConverter(typeof(InterfaceTypeConverter<SeatClampSize>))]
public sealed class SeatClampSize : Standard<SeatClampSize>, IInterfaceValue<SeatClampSize>
{
    private SeatClampSize(int code, string key, string name, Source source, int hundredths, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Hundredths = hundredths;
    }

    /// <summary>Usual with a 22.2 post.</summary>
    public static SeatClampSize Mm25Point4 { get; } = new(1, "25.4", "25.4 mm", Sources.ClampShop, 2540, "1 in");

    /// <summary>Thin steel, and 25.4 posts.</summary>
    public static SeatClampSize Mm28Point6 { get; } = new(2, "28.6", "28.6 mm", Sources.ClampShop, 2860, "1-1/8 in");

    /// <summary>Some 27.2 frames.</summary>
    public static SeatClampSize Mm30 { get; } = new(3, "30", "30.0 mm", Sources.ClampShop, 3000, "30.0");

    /// <summary>Usual with a 27.2 post.</summary>
    public static SeatClampSize Mm31Point8 { get; } = new(4, "31.8", "31.8 mm", Sources.ClampShop, 3180, "1-1/4 in");

    /// <summary>Usual with 30.9 and 31.6 posts; also printed 35.0.</summary>
    public static SeatClampSize Mm34Point9 { get; } = new(5, "34.9", "34.9 mm", Sources.Memory, 3490, "35.0", "35", "1-3/8 in");

    /// <summary>Some 31.6 frames.</summary>
    public static SeatClampSize Mm36Point4 { get; } = new(6, "36.4", "36.4 mm", Sources.Memory, 3640);

    /// <summary>Usual with a 34.9 post.</summary>
    public static SeatClampSize Mm38Point6 { get; } = new(7, "38.6", "38.6 mm", Sources.Memory, 3860);

    /// <summary>Some 34.9 frames.</summary>
    public static SeatClampSize Mm39 { get; } = new(8, "39", "39.0 mm", Sources.Memory, 3900, "39.0");

    /// <summary>Some 34.9 frames, folding.</summary>
    public static SeatClampSize Mm40 { get; } = new(9, "40", "40.0 mm", Sources.Memory, 4000, "40.0");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<SeatClampSize> All { get; } =
    [
        Mm25Point4, Mm28Point6, Mm30, Mm31Point8, Mm34Point9, Mm36Point4, Mm38Point6, Mm39,
        Mm40,
    ];

    /// <inheritdoc/>
    public static string Called => "seat clamp size";

    /// <summary>The ones within the error of a measured size.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<SeatClampSize> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(s => s.Hundredths / 100m >= millimetres - error && s.Hundredths / 100m <= millimetres + error)];

    /// <summary>The diameter.</summary>
    public Length Diameter => Length.FromMillimeters(Hundredths / 100d);

    internal int Hundredths { get; }

    internal override Nanometres? MainLength => new(Hundredths * (Nanometres.PerMillimetre / 100));

    /// <summary>The collars that a reading round the top of the seat tube can be.</summary>
    /// <param name="outside">Over the seat tube where the collar sits, without paint lips.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<SeatClampSize> Identify(MeasuredLength outside) => SeatClampSizeMeasures.Table.Identify(outside);

    /// <inheritdoc/>
    public static SeatClampSize OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a size in millimetres, with a decimal comma and a unit if need be, or a name.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<SeatClampSize> Read(ReadOnlySpan<char> text) =>
        SizedText.Find<SeatClampSize>(text, s => s.Hundredths) is { } sized ? TextReading<SeatClampSize>.Of(sized) : ByName(WithoutMillimetres(text));

    private static class SeatClampSizeMeasures
    {
        public static IdentificationTable<SeatClampSize> Table { get; } = new([new("outside", "caliper over the top of the seat tube, collar off, across the slot and along it")], Rows(), size => size.FitKey);

        private static ImmutableArray<DimensionRow<SeatClampSize>> Rows()
        {
            DimensionRow<SeatClampSize>[] rows = new DimensionRow<SeatClampSize>[All.Length];
            for (int i = 0; i < rows.Length; i++)
            {
                decimal size = All[i].Hundredths / 100m;

                // 34.9 is also printed 35.0.
                rows[i] = new(All[i], [(size, All[i] == Mm34Point9 ? 35m : size)], SeatClampForPost.TellsApart(All[i]));
            }

            return ImmutableArray.Create(rows);
        }
    }
}
