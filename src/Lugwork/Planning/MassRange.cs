using System.Globalization;
using UnitsNet;

namespace Lugwork.Planning;

/// <summary>What is known of a mass: exactly, between two, at least, at most, or nothing at all.</summary>
/// <remarks>Kept in grams, exact to the milligram and never rounded; 0 to 500 kg for what is given, totals may be more. The default is the mass of which nothing is known: 0 or more.</remarks>
public readonly record struct MassRange
{
    private const decimal MostGiven = 500_000m;

    private readonly decimal _least;

    private MassRange(decimal least, decimal? most) => (_least, MostGrams) = (least, most);

    /// <summary>Nothing is known; also the default.</summary>
    public static MassRange Unknown => default;

    /// <summary>The least in grams; 0 where nothing is known below.</summary>
    public decimal LeastGrams => _least;

    /// <summary>The most in grams; null where nothing is known above.</summary>
    public decimal? MostGrams { get; }

    /// <summary>The least.</summary>
    public Mass Least => Mass.FromGrams((double)_least);

    /// <summary>The most; null where nothing is known above.</summary>
    public Mass? Most => MostGrams is { } most ? Mass.FromGrams((double)most) : null;

    /// <summary>Both ends are known and the same.</summary>
    public bool IsExact => MostGrams == _least;

    /// <summary>An exact mass.</summary>
    /// <param name="grams">0 to 500,000; at most three places after the point.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <exception cref="ArgumentException">Finer than a milligram.</exception>
    public static MassRange OfGrams(decimal grams) => new(Checked(grams), grams);

    /// <summary>A mass that is one or the other or between.</summary>
    /// <param name="least">Grams, 0 to 500,000; at most three places after the point.</param>
    /// <param name="most">Grams, not below the least.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, or the most is below the least.</exception>
    /// <exception cref="ArgumentException">Finer than a milligram.</exception>
    public static MassRange BetweenGrams(decimal least, decimal most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, least);
        return new(Checked(least), Checked(most));
    }

    /// <summary>A mass of which the least is known.</summary>
    /// <param name="least">Grams, 0 to 500,000; at most three places after the point.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <exception cref="ArgumentException">Finer than a milligram.</exception>
    public static MassRange AtLeastGrams(decimal least) => new(Checked(least), null);

    /// <summary>Whether a mass lies in the range.</summary>
    /// <param name="grams">Grams.</param>
    public bool HoldsGrams(decimal grams) => grams >= _least && (MostGrams is not { } most || grams <= most);

    /// <summary>"285 g", "280 to 300 g", "at least 285 g", "at most 300 g", "unknown"; the same in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{(MostGrams is { } most ? IsExact ? $"{most:0.###} g" : _least == 0 ? $"at most {most:0.###} g" : $"{_least:0.###} to {most:0.###} g" : _least == 0 ? "unknown" : $"at least {_least:0.###} g")}");

    internal static MassRange Nothing { get; } = new(0, 0);

    internal MassRange Times(int count) => new(_least * count, MostGrams * count);

    internal MassRange Plus(MassRange other) => new(_least + other._least, MostGrams + other.MostGrams);

    private static decimal Checked(decimal grams)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(grams);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(grams, MostGiven);
        return decimal.Round(grams, 3) == grams ? grams : throw new ArgumentException("a mass is given to the milligram at the finest", nameof(grams));
    }
}
