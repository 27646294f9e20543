using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Tyres;

/// <summary>How a label of the trade names a size.</summary>
public enum LabelSystem
{
    /// <summary>Outer diameter and a decimal width, inches: "26 x 1.75".</summary>
    Decimal = 0,

    /// <summary>Outer diameter and a width as a fraction or a whole number, inches: "26 x 1 3/4". Never the same tyre as the decimal of equal value.</summary>
    Fraction,

    /// <summary>Diameter, height and width in inches; German labels put the width before the height.</summary>
    ThreePart,

    /// <summary>Outer diameter and width in millimetres and a letter for the rim: "650 x 38B". The later the letter, the smaller the rim.</summary>
    French,
}

/// <summary>What is printed on tyres and tubes beside or instead of the ISO size. Closed set of published labels, identity equality.</summary>
/// <remarks>
/// A label says a bead seat, sometimes several, and a width only where it is printed with an ISO size. Decimal and fraction are different tyres.
/// "26 x decimal" and "650B" are families: a label of another width is read as them, and only the bead seat carries over.
/// </remarks>
[JsonConverter(typeof(InterfaceJsonConverter<TyreLabel>))]
[TypeConverter(typeof(InterfaceTypeConverter<TyreLabel>))]
public sealed class TyreLabel : Standard<TyreLabel>, IInterfaceValue<TyreLabel>
{
    private readonly ImmutableArray<int> _seats;
    private readonly ImmutableArray<int> _sizes;

    private TyreLabel(int code, string key, LabelSystem system, ImmutableArray<int> seats, ImmutableArray<int> sizes, bool doubtful, Source source, params ImmutableArray<string> names)
        : base(code, key, key, source, names)
    {
        System = system;
        _seats = seats;
        _sizes = sizes;
        IsDoubtful = doubtful;
    }

    /// <summary>Every published label: inches by decimal, by fraction, in three parts, then French ones.</summary>
    public static ImmutableArray<TyreLabel> All { get; } =
    [
        new(1, "29 x decimal", LabelSystem.Decimal, [622], [], false, Sources.BeadSeats),
        new(2, "29 x 2.0", LabelSystem.Decimal, [622], [52622], false, Sources.TyreMakerSizes),
        new(3, "28 x decimal", LabelSystem.Decimal, [622], [], false, Sources.SizeDesignation),
        new(4, "28 x 1.40", LabelSystem.Decimal, [622], [37622], false, Sources.SizeDesignation),
        new(5, "27.5 x decimal", LabelSystem.Decimal, [584], [], false, Sources.BeadSeatSingle),
        new(6, "26 x decimal", LabelSystem.Decimal, [559], [], false, Sources.DecimalSizes),
        new(7, "26 x 1.25 old", LabelSystem.Decimal, [599], [], true, Sources.DecimalSizes),
        new(8, "26 x 1.375", LabelSystem.Decimal, [599], [], false, Sources.DecimalSizes),
        new(9, "26 x 1.4", LabelSystem.Decimal, [559], [35559], false, Sources.TyreMakerSizes),
        new(10, "26 x 1.50", LabelSystem.Decimal, [559], [], false, Sources.DecimalSizes),
        new(11, "26 x 1.75", LabelSystem.Decimal, [559], [44559, 47559], false, Sources.TyreMakerSizes),
        new(12, "26 x 1.85", LabelSystem.Decimal, [559], [47559], false, Sources.TyreMakerSizes),
        new(13, "26 x 1.95", LabelSystem.Decimal, [559], [50559], false, Sources.TyreMakerSizes),
        new(14, "26 x 2.00", LabelSystem.Decimal, [559], [52559], false, Sources.TyreMakerSizes),
        new(15, "26 x 2.125", LabelSystem.Decimal, [559], [54559], false, Sources.TyreMakerSizes),
        new(16, "26 x 2.2", LabelSystem.Decimal, [559], [56559], false, Sources.TyreMakerSizes),
        new(17, "26 x 2.3", LabelSystem.Decimal, [559], [58559], false, Sources.TyreMakerSizes),
        new(18, "26 x 2.35", LabelSystem.Decimal, [559], [60559], false, Sources.TyreMakerSizes),
        new(19, "26 x 2.8", LabelSystem.Decimal, [559], [62559], false, Sources.TyreMakerSizes),
        new(20, "24 x decimal", LabelSystem.Decimal, [507], [], false, Sources.DecimalSizes),
        new(21, "24 x 1.75", LabelSystem.Decimal, [507], [44507], false, Sources.TyreMakerSizes),
        new(22, "22 x 1.75", LabelSystem.Decimal, [457], [], false, Sources.DecimalSizes),
        new(23, "22 x 2.125", LabelSystem.Decimal, [457], [], false, Sources.DecimalSizes),
        new(24, "20 x decimal", LabelSystem.Decimal, [406], [], false, Sources.DecimalSizes),
        new(25, "20 x 1.75", LabelSystem.Decimal, [406], [44406], false, Sources.TyreMakerSizes),
        new(26, "20 x 2.125", LabelSystem.Decimal, [406], [54406], false, Sources.TyreMakerSizes),
        new(27, "18 x 1.5", LabelSystem.Decimal, [355], [], false, Sources.DecimalSizes),
        new(28, "18 x decimal", LabelSystem.Decimal, [355], [], false, Sources.DecimalSizes),
        new(29, "16 x 1.50", LabelSystem.Decimal, [305], [40305], false, Sources.SixteenInchSizes),
        new(30, "16 x 1.75", LabelSystem.Decimal, [305], [47305], true, Sources.SixteenInchSizes),
        new(31, "16 x 2.00", LabelSystem.Decimal, [305], [50305], false, Sources.SixteenInchSizes),
        new(32, "16 x 1.35", LabelSystem.Decimal, [349], [35349], true, Sources.SixteenInchSizes),
        new(33, "14 x 1.75", LabelSystem.Decimal, [254], [47254], false, Sources.CrossReference),
        new(34, "12 1/2 x 1.75", LabelSystem.Decimal, [203], [44203, 47203], false, Sources.CrossReference),
        new(35, "12 x 2.00", LabelSystem.Decimal, [203], [50203], false, Sources.CrossReference),
        new(36, "12 x 1.95", LabelSystem.Decimal, [203], [54203], false, Sources.CrossReference),
        new(37, "28 x 1 1/2", LabelSystem.Fraction, [635, 622], [40635], true, Sources.BeadSeats),
        new(38, "28 x 1 1/2 F.13", LabelSystem.Fraction, [622], [], false, Sources.BeadSeats),
        new(39, "28 x 1 5/8 x 1 3/8", LabelSystem.ThreePart, [622], [37622], false, Sources.SizeDesignation),
        new(40, "28 x 1 3/8 x 1 5/8", LabelSystem.ThreePart, [622], [37622], false, Sources.DutchAndGermanOrder),
        new(41, "28 x 1 5/8 x 1 1/8", LabelSystem.ThreePart, [622], [28622], false, Sources.DutchAndGermanOrder),
        new(42, "28 x 1 1/4 x 1 5/8", LabelSystem.ThreePart, [622], [32622], false, Sources.TyreSizeGuide),
        new(43, "28 x 1 3/4 x 1 1/4", LabelSystem.ThreePart, [622], [32622], false, Sources.TyreSizeGuide),
        new(44, "28 x 7/8", LabelSystem.Fraction, [622], [20622], false, Sources.TyreMakerSizes),
        new(45, "28 x 1", LabelSystem.Fraction, [622], [23622], false, Sources.TyreMakerSizes),
        new(46, "28 x 1 3/8", LabelSystem.Fraction, [642], [37642], true, Sources.FrenchDiameters),
        new(47, "28 x 1 1/4", LabelSystem.Fraction, [647], [], true, Sources.FrenchDiameters),
        new(48, "27 x any", LabelSystem.Fraction, [630], [], false, Sources.BeadSeats),
        new(49, "27 x 1 1/4", LabelSystem.Fraction, [630], [32630], false, Sources.BeadInterchange),
        new(50, "27 x 1 3/8", LabelSystem.Fraction, [630], [], false, Sources.ImperialAndUs27, "27 x 1 3/8 US"),
        new(51, "26 x 1", LabelSystem.Fraction, [571], [], false, Sources.BeadSeats),
        new(52, "26 x 1 3/4", LabelSystem.Fraction, [571], [47571], true, Sources.BeadSeats, "26 x 1 3/4 S-7"),
        new(53, "26 x 1 1/2", LabelSystem.Fraction, [584], [40584], true, Sources.BeadSeats),
        new(54, "26 x 1 3/8 E.A.3", LabelSystem.Fraction, [590], [37590], false, Sources.BeadSeats),
        new(55, "26 x 1 3/8 S-6", LabelSystem.Fraction, [597], [], false, Sources.BeadSeats),
        new(56, "26 x 1 1/4", LabelSystem.Fraction, [597], [32597], false, Sources.BeadSeats),
        new(57, "24 x 1 3/8 E.5", LabelSystem.Fraction, [540], [37540], false, Sources.BeadSeats),
        new(58, "24 x 1 3/8 S-5", LabelSystem.Fraction, [547], [], false, Sources.BeadSeats),
        new(59, "24 x 1 1/4", LabelSystem.Fraction, [547, 540], [32547], true, Sources.BeadSeats),
        new(60, "24 x 1 1/8", LabelSystem.Fraction, [540, 520], [28540, 28520], true, Sources.BeadSeats),
        new(61, "24 x 1", LabelSystem.Fraction, [520], [25520], false, Sources.BeadSeats),
        new(62, "20 x 1 1/8", LabelSystem.Fraction, [451], [], false, Sources.SizeChart),
        new(63, "20 x 1 1/4", LabelSystem.Fraction, [451], [], false, Sources.SizeChart),
        new(64, "20 x 1 3/8", LabelSystem.Fraction, [451, 440, 438], [], true, Sources.SizeChart),
        new(65, "20 x 1 3/4", LabelSystem.Fraction, [419], [47419], false, Sources.SizeChart),
        new(66, "18 x 1 3/8", LabelSystem.Fraction, [400], [37400], false, Sources.SizeList),
        new(67, "18 x 1", LabelSystem.Fraction, [400], [], false, Sources.SizeList),
        new(68, "17 x 1 1/4", LabelSystem.Fraction, [369], [32369], false, Sources.SizeList),
        new(69, "16 x 1 3/8", LabelSystem.Fraction, [349, 340, 337, 335], [37349], true, Sources.SizeList),
        new(70, "16 x 1 1/4", LabelSystem.Fraction, [349], [32349], false, Sources.SixteenInchSizes),
        new(71, "16 x 1 3/4", LabelSystem.Fraction, [317], [47317], false, Sources.SizeChart),
        new(72, "14 x 1 3/8", LabelSystem.Fraction, [298, 288], [37298, 37288], true, Sources.SizeList),
        new(73, "14 x 1 1/2", LabelSystem.Fraction, [279], [40279], false, Sources.CrossReference),
        new(74, "12 1/2 x 2 1/4", LabelSystem.Fraction, [203, 239], [57203, 62203, 57239], true, Sources.CrossReference),
        new(75, "12 1/2 x 2 1/4 (300 x 55A)", LabelSystem.Fraction, [239], [57239], false, Sources.CrossReference),
        new(76, "12 1/2 x 1 3/8 x 1 1/4", LabelSystem.ThreePart, [239], [32239], false, Sources.CrossReference),
        new(77, "12 x 1 1/4", LabelSystem.Fraction, [248], [32248], false, Sources.CrossReference),
        new(78, "11 x 1 3/4", LabelSystem.Fraction, [222], [47222], false, Sources.CrossReference),
        new(79, "10 x 2", LabelSystem.Fraction, [152], [54152], false, Sources.CrossReference),
        new(80, "10 x 1 5/8", LabelSystem.Fraction, [194], [44194], false, Sources.CrossReference),
        new(81, "8 1/2 x 2", LabelSystem.Fraction, [110], [54110], false, Sources.CrossReference),
        new(82, "8 x 1 1/4", LabelSystem.Fraction, [137], [32137], false, Sources.CrossReference),
        new(83, "8 x 2", LabelSystem.Fraction, [94], [50094], false, Sources.BeadSeatSingle),
        new(84, "200 x 50", LabelSystem.French, [94], [50094], false, Sources.BeadSeatSingle),
        new(85, "7 x 1 3/4", LabelSystem.Fraction, [93], [47093], false, Sources.CrossReference),
        new(86, "36 x 2 1/4", LabelSystem.Fraction, [787], [60787], false, Sources.OldDutchSizes),
        new(87, "700", LabelSystem.French, [647, 622], [], true, Sources.FrenchDiameters),
        new(88, "700A", LabelSystem.French, [642], [37642], false, Sources.FrenchDiameters),
        new(89, "700 x 28A", LabelSystem.French, [642], [28642], false, Sources.BeadSeatSingle),
        new(90, "700B", LabelSystem.French, [635], [40635], false, Sources.FrenchDiameters),
        new(91, "700 x 28B", LabelSystem.French, [635], [32635], false, Sources.BeadSeatSingle),
        new(92, "700 x 38B", LabelSystem.French, [635], [40635], false, Sources.BeadSeatSingle),
        new(93, "700C", LabelSystem.French, [622], [], false, Sources.BeadSeats),
        new(94, "700 x 18C", LabelSystem.French, [622], [18622], false, Sources.BeadSeatSingle),
        new(95, "700 x 20C", LabelSystem.French, [622], [20622], false, Sources.BeadSeatSingle),
        new(96, "700 x 23C", LabelSystem.French, [622], [23622], false, Sources.BeadSeatSingle),
        new(97, "700 x 25C", LabelSystem.French, [622], [25622], false, Sources.BeadSeatSingle),
        new(98, "700 x 28C", LabelSystem.French, [622], [28622, 30622], false, Sources.BeadSeatSingle),
        new(99, "700 x 32C", LabelSystem.French, [622], [32622], false, Sources.BeadSeatSingle),
        new(100, "700 x 35C", LabelSystem.French, [622], [35622, 37622], false, Sources.BeadSeatSingle),
        new(101, "700 x 38C", LabelSystem.French, [622], [38622, 40622], false, Sources.BeadSeatSingle),
        new(102, "700 x 40C", LabelSystem.French, [622], [40622, 42622], false, Sources.BeadSeatSingle),
        new(103, "700 x 42C", LabelSystem.French, [622], [42622, 44622, 47622], false, Sources.BeadSeatSingle),
        new(104, "700 x 45C", LabelSystem.French, [622], [47622, 45622], false, Sources.BeadSeatSingle),
        new(105, "700 x 47C", LabelSystem.French, [622], [47622], false, Sources.BeadSeatSingle),
        new(106, "700 x 50C", LabelSystem.French, [622], [50622], false, Sources.BeadSeatSingle),
        new(107, "700D", LabelSystem.French, [587], [], true, Sources.BeadSeats),
        new(108, "650A", LabelSystem.French, [590], [], false, Sources.BeadSeatSingle),
        new(109, "650 x 35A", LabelSystem.French, [590], [37590], false, Sources.BeadSeatSingle),
        new(110, "650 x 38A", LabelSystem.French, [590], [40590], false, Sources.BeadSeatSingle),
        new(111, "650B", LabelSystem.French, [584], [], false, Sources.BeadSeatSingle),
        new(112, "650 x 38B", LabelSystem.French, [584], [40584], false, Sources.BeadSeatSingle),
        new(113, "650 x 42B", LabelSystem.French, [584], [44584], false, Sources.BeadSeatSingle),
        new(114, "650C", LabelSystem.French, [571], [], false, Sources.BeadSeatSingle),
        new(115, "650 x 23C", LabelSystem.French, [571], [23571], false, Sources.BeadSeatSingle),
        new(116, "650 x 20C", LabelSystem.French, [571], [20571], false, Sources.BeadSeatSingle),
        new(117, "650 x 45C", LabelSystem.French, [571], [47571], false, Sources.BeadSeatSingle, "650 CS"),
        new(118, "650 x 45", LabelSystem.French, [559], [47559], true, Sources.BeadSeatSingle),
        new(119, "600A", LabelSystem.French, [541, 540], [37541, 37540], true, Sources.BeadSeatSingle, "600 x 35A"),
        new(120, "600 x 38B", LabelSystem.French, [534], [40534], false, Sources.BeadSeatSingle),
        new(121, "550A", LabelSystem.French, [490], [37490], false, Sources.BeadSeatSingle, "550 x 35A"),
        new(122, "500A", LabelSystem.French, [440, 438], [37440, 37438], true, Sources.BeadSeatSingle, "500 x 35A"),
        new(123, "500 x 45", LabelSystem.French, [406, 400], [47406, 54400], true, Sources.BeadSeatSingle),
        new(124, "450A", LabelSystem.French, [390], [37390], false, Sources.BeadSeatSingle, "450 x 35A"),
        new(125, "400A", LabelSystem.French, [340, 349], [37340], true, Sources.BeadSeatSingle, "400 x 35A"),
        new(126, "400 x 38B", LabelSystem.French, [330], [40330], false, Sources.BeadSeatSingle),
        new(127, "350A", LabelSystem.French, [288, 298], [37288], true, Sources.SizeList),
        new(128, "350 x 38B", LabelSystem.French, [279], [40279], false, Sources.BeadSeatSingle),
        new(129, "350 x 35A", LabelSystem.French, [298], [37298], false, Sources.BeadSeatSingle),
        new(130, "330 x 65", LabelSystem.French, [203], [67203], false, Sources.BeadSeatSingle),
        new(131, "320 x 57", LabelSystem.French, [203], [62203], false, Sources.BeadSeatSingle),
        new(132, "300 x 32A", LabelSystem.French, [239, 248], [32239, 32248], true, Sources.BeadSeatSingle),
        new(133, "300 x 55A", LabelSystem.French, [239], [57239], false, Sources.BeadSeatSingle),
    ];

    /// <inheritdoc/>
    public static string Called => "tyre label";

    /// <summary>How it names a size.</summary>
    public LabelSystem System { get; }

    /// <summary>The bead seats that carry it, the likeliest first.</summary>
    public ImmutableArray<BeadSeat> Seats
    {
        get
        {
            ImmutableArray<BeadSeat>.Builder seats = ImmutableArray.CreateBuilder<BeadSeat>(_seats.Length);
            foreach (int seat in _seats)
            {
                seats.Add(BeadSeat.OfFitCode(seat));
            }

            return seats.MoveToImmutable();
        }
    }

    /// <summary>The ISO sizes that are printed with the label as it stands here; none where only the bead seat is published.</summary>
    public ImmutableArray<TyreSize> Sizes
    {
        get
        {
            ImmutableArray<TyreSize>.Builder sizes = ImmutableArray.CreateBuilder<TyreSize>(_sizes.Length);
            foreach (int size in _sizes)
            {
                sizes.Add(TyreSize.OfFitCode(size));
            }

            return sizes.MoveToImmutable();
        }
    }

    /// <summary>The label alone must not settle a size: it was or is used of other rims, or is easily taken for another. Read the ISO number.</summary>
    public bool IsDoubtful { get; }

    internal ImmutableArray<int> SeatCodes => _seats;

    internal ImmutableArray<int> SizeCodes => _sizes;

    /// <inheritdoc/>
    public static TyreLabel OfFitCode(long code) => ByCode(code);

    /// <summary>
    /// Reads a label: "26 x 1.75", "28 x 1 5/8 x 1 3/8", "650x47B", "26 x 1 3/8 E.A.3". Decimal point or comma, any times sign, ordinary or single-sign fractions.
    /// A label that several rows share gives them all. A bare outer diameter such as 26 is refused.
    /// </summary>
    /// <param name="text">Any text.</param>
    public static TextReading<TyreLabel> Read(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        if (!LabelText.TryRead(trimmed, out LabelKey key))
        {
            return Find(trimmed) is { } named
                ? TextReading<TyreLabel>.Of(named)
                : TextReading<TyreLabel>.Refused("a label is an outer diameter by a width, such as 26 x 1.75, 28 x 1 1/2 or 650 x 38B");
        }

        Span<int> found = stackalloc int[TyreLabels.Most];
        int count = TyreLabels.Match(key, found, out _);
        ImmutableArray<TyreLabel>.Builder labels = ImmutableArray.CreateBuilder<TyreLabel>(count);
        foreach (int row in found[..count])
        {
            labels.Add(All[row]);
        }

        return count switch
        {
            0 when key.IsBare => TextReading<TyreLabel>.Refused("an outer diameter alone is shared by several bead seats; give the whole label or the ISO size"),
            0 => TextReading<TyreLabel>.Refused("this label is in no table; give the ISO size such as 37-622"),
            1 => TextReading<TyreLabel>.Of(labels[0]),
            _ => TextReading<TyreLabel>.Several(labels.ToImmutable(), "tyres for different rims carry this label; its mark, such as E.A.3 or S-6, or the ISO size tells them apart"),
        };
    }
}
