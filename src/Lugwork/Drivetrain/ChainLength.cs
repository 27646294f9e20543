using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>How long a chain has to be, in pitches of 12.7 mm (half an inch).</summary>
/// <remarks>
/// A "link" is two things: standards and shop labels ("116 links") count pitches; many mechanics call a pair of one inner and one outer link, 25.4 mm, one link.
/// Here a pitch is a pitch, and the pair is a full link. A chain that is joined by a pin or a quick link has an even number of pitches; an odd one needs a cranked
/// half link. At most 1,000 pitches. The default is no chain: 0 pitches.
/// Rounding is arithmetic: even = 2 ⌈N / 2⌉, N pitches; the length is 12.7 N mm, by "Chain length page (formula)".
/// </remarks>
public readonly record struct ChainLength
{
    // What a sum may be out by: 0.000001 of a pitch more than a whole number is that number.
    private const double Dust = 1e-6;

    private ChainLength(double pitches) => Pitches = pitches;

    /// <summary>Pitches (half inches) that the sum asks for, not rounded.</summary>
    public double Pitches { get; }

    /// <summary>Rounded up to whole pitches; an odd number needs a cranked half link.</summary>
    public int WholePitches => (int)Math.Ceiling(Pitches - Dust);

    /// <summary>Rounded up to the even number that a chain without a half link has.</summary>
    public int EvenPitches => 2 * FullLinks;

    /// <summary>Rounded down to an even number: where the sum says how long a chain may be at most.</summary>
    public int EvenPitchesNotAbove => 2 * (int)Math.Floor((Pitches + Dust) / 2);

    /// <summary>How many full links, pairs of one inner and one outer link: rounded up.</summary>
    public int FullLinks => (int)Math.Ceiling((Pitches - Dust) / 2);

    /// <summary>Length of the chain of even pitches, from pin to pin laid straight.</summary>
    public Length Cut => Length.FromMillimeters(EvenPitches * Given.PitchMillimetres);

    /// <summary>How much of a pitch rounding up to an even number adds, 0 to 2.</summary>
    public double Spare => EvenPitches - Pitches;

    /// <summary>A length in pitches.</summary>
    /// <param name="pitches">Pitches of half an inch, 0 to 1,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static ChainLength OfPitches(double pitches) => new(Given.Number(pitches, 0, 1_000, nameof(pitches)));

    /// <summary>A length in full links of two pitches.</summary>
    /// <param name="fullLinks">Full links of one inch, two pitches each; 0 to 500.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static ChainLength OfFullLinks(double fullLinks) => new(2 * Given.Number(fullLinks, 0, 500, nameof(fullLinks)));

    /// <summary>This and some pitches more, such as an allowance or the growth of a suspended frame; fewer where negative.</summary>
    /// <param name="pitches">Pitches of half an inch, -200 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, or nothing would be left.</exception>
    public ChainLength Plus(double pitches) => OfPitches(Pitches + Given.Number(pitches, -200, 200, nameof(pitches)));

    /// <summary>"112.80 pitches, cut to 114 (57 full links)".</summary>
    public override string ToString() => FormattableString.Invariant($"{Pitches:0.00} pitches, cut to {EvenPitches} ({FullLinks} full links)");
}
