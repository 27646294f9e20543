using System.Collections.Immutable;
using System.ComponentModel;
using System.Globalization;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>The diameter at which tyre and rim meet; both must have the same one.</summary>
/// <remarks>Closed set, identity equality. The key is the diameter; that of 700 mm is "ISO 700", since 700 alone is a label. An inch size such as "26" is refused with its readings: several seats share it.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<BeadSeat>))]
[TypeConverter(typeof(InterfaceTypeConverter<BeadSeat>))]
public sealed class BeadSeat : Standard<BeadSeat>, IInterfaceValue<BeadSeat>
{
    private BeadSeat(int millimetres, string inchClass, Source source)
        : this(millimetres, Key(millimetres), inchClass, source)
    {
    }

    private BeadSeat(int millimetres, string key, string inchClass, Source source)
        : base(millimetres, key, key + " mm", source)
    {
        InchClass = inchClass;
    }

    /// <summary>Every bead seat of the trade, smallest first.</summary>
    public static ImmutableArray<BeadSeat> All { get; } =
    [
        new(93, "7", Sources.BeadSeats),
        new(94, "8", Sources.BeadSeats),
        new(110, "8", Sources.BeadSeats),
        new(137, "8", Sources.BeadSeats),
        new(152, "10", Sources.BeadSeats),
        new(194, "10", Sources.BeadSeats),
        new(203, "12", Sources.BeadSeats),
        new(222, "11", Sources.BeadSeats),
        new(239, "12", Sources.BeadSeats),
        new(248, "12", Sources.BeadSeats),
        new(251, "14", Sources.BeadSeats),
        new(252, "12", Sources.BeadSeatSingle),
        new(254, "14", Sources.BeadSeats),
        new(279, "14", Sources.BeadSeats),
        new(288, "14", Sources.BeadSeats),
        new(298, "14", Sources.BeadSeats),
        new(305, "16", Sources.BeadSeats),
        new(317, "16", Sources.BeadSeats),
        new(330, "16", Sources.BeadSeats),
        new(335, "16", Sources.BeadSeatSingle),
        new(337, "16", Sources.BeadSeats),
        new(340, "16", Sources.BeadSeats),
        new(349, "16", Sources.BeadSeats),
        new(355, "18", Sources.BeadSeats),
        new(357, "17", Sources.BeadSeatSingle),
        new(369, "17", Sources.BeadSeats),
        new(381, "20", Sources.BeadSeatSingle),
        new(387, "18", Sources.BeadSeatSingle),
        new(390, "18", Sources.BeadSeats),
        new(400, "18", Sources.BeadSeats),
        new(406, "20", Sources.BeadSeats),
        new(419, "20", Sources.BeadSeats),
        new(428, "20", Sources.BeadSeats),
        new(432, "20", Sources.BeadSeatSingle),
        new(438, "20", Sources.BeadSeats),
        new(440, "20", Sources.BeadSeats),
        new(451, "20", Sources.BeadSeats),
        new(457, "22", Sources.BeadSeats),
        new(484, "22", Sources.BeadSeatSingle),
        new(489, "22", Sources.BeadSeatSingle),
        new(490, "22", Sources.BeadSeats),
        new(498, "22", Sources.BeadSeatSingle),
        new(501, "22", Sources.BeadSeatSingle),
        new(507, "24", Sources.BeadSeats),
        new(520, "24", Sources.BeadSeats),
        new(531, "24", Sources.BeadSeatSingle),
        new(534, "24", Sources.BeadSeatSingle),
        new(540, "24", Sources.BeadSeats),
        new(541, "24", Sources.BeadSeats),
        new(547, "24", Sources.BeadSeats),
        new(559, "26", Sources.BeadSeats),
        new(571, "26", Sources.BeadSeats),
        new(584, "26 / 27.5", Sources.BeadSeats),
        new(587, "28", Sources.BeadSeats),
        new(590, "26", Sources.BeadSeats),
        new(597, "26", Sources.BeadSeats),
        new(599, "26", Sources.BeadSeats),
        new(609, "27 / 28", Sources.BeadSeatSingle),
        new(622, "28 / 29", Sources.BeadSeats),
        new(630, "27", Sources.BeadSeats),
        new(635, "28", Sources.BeadSeats),
        new(642, "28", Sources.BeadSeats),
        new(647, "28", Sources.BeadSeatSingle),
        new(686, "32", Sources.Memory),
        new(700, "30", Sources.BeadSeatSingle),
        new(787, "36", Sources.BeadSeats),
    ];

    /// <inheritdoc/>
    public static string Called => "bead seat diameter";

    /// <summary>The inch size that the trade gives it; several seats share one.</summary>
    public string InchClass { get; }

    /// <summary>The nominal diameter.</summary>
    public Length Diameter => Length.FromMillimeters((double)FitCode);

    internal override Nanometres? MainLength => new(FitCode * Nanometres.PerMillimetre);

    /// <summary>What is specified for it exactly; empty for most, since the tables of the standard were not read.</summary>
    public ImmutableArray<SpecifiedDiameter> Specified => SpecifiedDiameter.Of(FitCode);

    /// <summary>The published labels that it carries, alone or with other seats.</summary>
    public ImmutableArray<TyreLabel> Labels
    {
        get
        {
            ImmutableArray<TyreLabel>.Builder labels = ImmutableArray.CreateBuilder<TyreLabel>();
            foreach (TyreLabel label in TyreLabel.All)
            {
                if (label.SeatCodes.Contains((int)FitCode))
                {
                    labels.Add(label);
                }
            }

            return labels.ToImmutable();
        }
    }

    /// <summary>What a measured rim can be. Neighbours lie 1 mm apart in places, so read closely or by tape.</summary>
    /// <param name="diameter">Across the rim from bead seat to bead seat.</param>
    /// <param name="circumference">By a thin tape round the bead seat; its error counts a third as much.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is the default.</exception>
    public static Identification<BeadSeat> Identify(MeasuredLength? diameter = null, MeasuredLength? circumference = null) => SeatIdentification.Rows.Identify(diameter, circumference);

    /// <inheritdoc/>
    public static BeadSeat OfFitCode(long code) => ByCode(code);

    /// <summary>The bead seats within the error of a measured one.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<BeadSeat> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(b => Math.Abs(b.FitCode - millimetres) <= error)];

    /// <summary>Reads the ISO diameter, or a label that says one seat beyond doubt: "650B", "26 x 1 3/8 E.A.3", "29 x 2.4". An inch size alone gives all seats that share it, and so do 650 and 700 without a letter.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<BeadSeat> Read(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        if (trimmed.EndsWith("mm", StringComparison.OrdinalIgnoreCase))
        {
            trimmed = Trim(trimmed[..^2]);
        }

        if (trimmed is "700")
        {
            return TextReading<BeadSeat>.Several([.. SeatsOf700], "700 without a letter is a label of 622 mm rims today and of 647 mm ones once, and a rare bead seat, then written ISO 700; give the ISO diameter, or measure");
        }

        if (Find(trimmed) is { } found || (IsoMark.TryStrip(trimmed, out ReadOnlySpan<char> rest) && (found = Find(rest)) is not null))
        {
            return TextReading<BeadSeat>.Of(found);
        }

        string inches = trimmed.TrimEnd("\"\u2033 in").ToString();
        ImmutableArray<BeadSeat> shared = [.. All.Where(b => Array.Exists(b.InchClass.Split(" / "), c => c == inches))];
        return shared.Length == 1 ? TextReading<BeadSeat>.Of(shared[0])
            : shared.IsEmpty ? OfLabel(trimmed)
            : TextReading<BeadSeat>.Several(shared, "an inch size is shared by several bead seats; give the ISO diameter in millimetres");
    }

    /// <summary>700 is a label far more often than a bead seat.</summary>
    internal const int Label700 = 700;

    /// <summary>What 700 without a letter can mean: as a label of today, as an old one, as the seat itself.</summary>
    internal static ImmutableArray<BeadSeat> SeatsOf700 => [ByCode(622), ByCode(647), ByCode(Label700)];

    /// <summary>The diameter as it is written: with ISO in front where the number alone is a label.</summary>
    internal static string Key(int millimetres)
    {
        string number = millimetres.ToString(CultureInfo.InvariantCulture);
        return millimetres == Label700 ? IsoMark.Written + number : number;
    }

    private static TextReading<BeadSeat> OfLabel(ReadOnlySpan<char> text)
    {
        ImmutableArray<BeadSeat> seats = TyreLabels.Seats(text, out bool doubtful);
        return seats.Length switch
        {
            0 => TextReading<BeadSeat>.Refused("no rim has this bead seat; give the ISO diameter in millimetres, such as 622"),
            > 1 => TextReading<BeadSeat>.Several(seats, "rims of different bead seats carry this label; give the ISO diameter in millimetres"),
            _ when doubtful => TextReading<BeadSeat>.Refused($"the label is easily taken for another; it should be {seats[0]} mm: make sure by the ISO number"),
            _ => TextReading<BeadSeat>.Of(seats[0]),
        };
    }
}
