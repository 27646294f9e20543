using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>From a computed spoke length to one that is sold. Rules of thumb (common practice, no source); the name says which.</summary>
/// <remarks>A spoke that is too long runs out of thread or stands into the rim bed; one that is 1 to 2 mm short still has its thread in the nipple. So a half goes down. S = t ⌊L / t⌋, or the nearest, L the computed length, t the step, mm: common practice, no source.</remarks>
public static class SpokeStock
{
    /// <summary>Where the rules come from.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.CommonPractice];

    /// <summary>The longest stock length that is not above the computed one.</summary>
    /// <param name="computed">10 to 500 mm.</param>
    /// <param name="step">Steps in which spokes are at hand, usually 1 or 2 mm; 0.5 to 10 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range or no number.</exception>
    public static Length NotAbove(Length computed, Length step)
    {
        (long length, long steps) = Whole(computed, step);
        return new Nanometres(length - (length % steps)).ToLength();
    }

    /// <summary>The nearest stock length; of two that are equally near, the shorter.</summary>
    /// <param name="computed">10 to 500 mm.</param>
    /// <param name="step">Steps in which spokes are at hand, usually 1 or 2 mm; 0.5 to 10 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range or no number.</exception>
    public static Length Nearest(Length computed, Length step)
    {
        (long length, long steps) = Whole(computed, step);
        long over = length % steps;
        return new Nanometres(over * 2 > steps ? length - over + steps : length - over).ToLength();
    }

    private static (long Length, long Step) Whole(Length computed, Length step) =>
        (Nanometres.OfMillimetres((decimal)NumberRange.Millimetres(computed, 10, 500)).Value, Nanometres.OfMillimetres((decimal)NumberRange.Millimetres(step, 0.5, 10)).Value);
}
