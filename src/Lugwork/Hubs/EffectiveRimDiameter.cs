using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>Effective rim diameter, ERD: the circle on which the ends of the spokes are to lie. Immutable.</summary>
/// <remarks>
/// Most builders mean the circle at the end of the nipple, by its slot; some data sheets print the circle of the nipple seats under the same
/// name, which makes spokes too short. The factory says which one was measured. It is never the bead seat diameter. 50 to 900 mm.
/// Measuring by "Hub and rim measuring (Damon Rinard text)", the word by "Rim technology glossary".
/// </remarks>
public sealed class EffectiveRimDiameter
{
    private const double Least = 50;
    private const double Most = 900;

    private EffectiveRimDiameter(double millimetres) => Millimetres = millimetres;

    /// <summary>The diameter.</summary>
    public Length Diameter => Length.FromMillimeters(Millimetres);

    /// <summary>What the meaning of the word rests on.</summary>
    public static ImmutableArray<Source> Sources { get; } = [Lugwork.Sources.HubMeasuring, Lugwork.Sources.RimGlossary];

    internal double Millimetres { get; }

    /// <summary>As printed or measured where the spokes are to end.</summary>
    /// <param name="diameter">50 to 900 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is out of range or no number.</exception>
    public static EffectiveRimDiameter OfSpokeEnds(Length diameter) => new(NumberRange.Millimetres(diameter, Least, Most));

    /// <summary>From the circle of the nipple seats: E = d + 2 b.</summary>
    /// <param name="seats">d, diameter of the circle on which the nipples rest, 50 to 900 mm.</param>
    /// <param name="beyondSeat">b, how far beyond the seat a spoke is to end, which is nearly the height of the nipple's head, 0 to 25 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length, or the result, is out of range or no number.</exception>
    public static EffectiveRimDiameter FromNippleSeats(Length seats, Length beyondSeat) =>
        Made(NumberRange.Millimetres(seats, Least, Most) + (2 * NumberRange.Millimetres(beyondSeat, 0, 25)));

    /// <summary>From the outside of the rim: E = d - 2 t.</summary>
    /// <param name="outside">d, over the outside of the rim, 50 to 900 mm.</param>
    /// <param name="toSlot">t, from the outside in to the slot of a nipple that stands in its hole, 0 to 150 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length, or the result, is out of range or no number.</exception>
    public static EffectiveRimDiameter FromOutside(Length outside, Length toSlot) =>
        Made(NumberRange.Millimetres(outside, Least, Most) - (2 * NumberRange.Millimetres(toSlot, 0, 150)));

    /// <summary>From a spoke that was right in a wheel: the inverse of <see cref="SpokeLength.Of"/>.</summary>
    /// <param name="spoke">Its length, from the inside of the bend to the end of the thread, 10 to 500 mm.</param>
    /// <param name="flange">The flange that it was on.</param>
    /// <param name="lacing">How the wheel was laced.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spoke is out of range, or too short to leave the flange.</exception>
    public static EffectiveRimDiameter FromSpoke(Length spoke, SpokeFlange flange, SpokeLacing lacing)
    {
        ArgumentNullException.ThrowIfNull(flange);
        ArgumentNullException.ThrowIfNull(lacing);
        double free = NumberRange.Millimetres(spoke, 10, 500) + (flange.HoleMillimetres / 2);
        double hub = flange.CircleMillimetres / 2;
        (double sine, double cosine) = Math.SinCos(lacing.Degrees * Math.PI / 180);
        double square = (free * free) - (flange.OffsetMillimetres * flange.OffsetMillimetres) - (hub * hub * sine * sine);
        return Made(2 * ((hub * cosine) + Math.Sqrt(square)));
    }

    private static EffectiveRimDiameter Made(double effective) => new(NumberRange.Checked(effective, Least, Most, "mm"));

    /// <summary>"ERD 540 mm".</summary>
    public override string ToString() => FormattableString.Invariant($"ERD {Millimetres:0.##} mm");
}
