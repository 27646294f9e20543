using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>Diameter of a hooked-bead rim, for beaded-edge tyres only. Closed set, identity equality.</summary>
/// <remarks>These are no seats for wired tyres: <see cref="BeadSeat"/> holds those. Old; not the hook of a modern rim.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<BeadedEdgeSeat>))]
[TypeConverter(typeof(InterfaceTypeConverter<BeadedEdgeSeat>))]
public sealed class BeadedEdgeSeat : Standard<BeadedEdgeSeat>, IInterfaceValue<BeadedEdgeSeat>
{
    private BeadedEdgeSeat(int millimetres)
        : base(millimetres, FormattableString.Invariant($"HB {millimetres}"), FormattableString.Invariant($"hooked bead {millimetres} mm"), Sources.RimsJapan)
    {
    }

    /// <summary>Nominal 270 mm.</summary>
    public static BeadedEdgeSeat Mm270 { get; } = new(270);

    /// <summary>Nominal 321 mm.</summary>
    public static BeadedEdgeSeat Mm321 { get; } = new(321);

    /// <summary>Nominal 372 mm.</summary>
    public static BeadedEdgeSeat Mm372 { get; } = new(372);

    /// <summary>Nominal 422 mm.</summary>
    public static BeadedEdgeSeat Mm422 { get; } = new(422);

    /// <summary>Every one, smallest first.</summary>
    public static ImmutableArray<BeadedEdgeSeat> All { get; } = [Mm270, Mm321, Mm372, Mm422];

    /// <inheritdoc/>
    public static string Called => "beaded-edge diameter";

    /// <summary>The nominal diameter.</summary>
    public Length Diameter => Length.FromMillimeters((double)FitCode);

    internal override Nanometres? MainLength => new(FitCode * Nanometres.PerMillimetre);

    /// <summary>The specified diameter, with the circumference that is printed for it.</summary>
    public ImmutableArray<SpecifiedDiameter> Specified => SpecifiedDiameter.Of(FitCode);

    /// <summary>What a measured hooked-bead rim can be.</summary>
    /// <param name="diameter">Across the rim.</param>
    /// <param name="circumference">By a tape round it.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is the default.</exception>
    public static Identification<BeadedEdgeSeat> Identify(MeasuredLength? diameter = null, MeasuredLength? circumference = null) => SeatsByMeasure.Rows.Identify(diameter, circumference);

    /// <inheritdoc/>
    public static BeadedEdgeSeat OfFitCode(long code) => ByCode(code);

    /// <summary>Reads "HB 372"; the bare number is refused, since rims for wired tyres are named by such numbers.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<BeadedEdgeSeat> Read(ReadOnlySpan<char> text) => ByName(text);

    private static class SeatsByMeasure
    {
        public static readonly IdentificationTable<BeadedEdgeSeat> Rows = Make();

        private static IdentificationTable<BeadedEdgeSeat> Make()
        {
            ImmutableArray<DimensionRow<BeadedEdgeSeat>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<BeadedEdgeSeat>>();
            foreach (BeadedEdgeSeat seat in All)
            {
                rows.Add(new(seat, RoundMeasure.Of(SpecifiedDiameter.Range(seat.FitCode)), "deep hooks turned inwards, made for a thick edge without a wire"));
            }

            return new(RoundMeasure.Dimensions, rows.ToImmutable(), s => s.FitKey);
        }
    }
}
