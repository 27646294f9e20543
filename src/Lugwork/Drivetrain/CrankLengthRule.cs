using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>A rule of thumb from inseam to crank length. Closed set, identity equality. They lie up to 15 mm apart; none is a criterion of fit.</summary>
/// <remarks>Crank = factor x inseam + constant, mm, by "Bicycle Crank Length: A Formula" and "Post on crank lengths, rec.bicycles.tech"; an inseam beyond what a page prints is refused.</remarks>
public sealed class CrankLengthRule
{
    // What an inch as a double may be off by.
    private const double Dust = 1e-6;

    private readonly double _factor;
    private readonly double _constant;

    private readonly double _least;
    private readonly double _most;

    private CrankLengthRule(string name, double factor, double constant, double leastInches, double mostInches, Source source)
    {
        (_least, _most) = (leastInches * 25.4, mostInches * 25.4);
        Name = name;
        _factor = factor;
        _constant = constant;
        Source = source;
    }

    /// <summary>5.48 mm of crank for each inch of inseam; its own author says that the trade does not share it, and that it gives grown riders 150 to 200 mm: for that it is taken.</summary>
    public static CrankLengthRule Proportion { get; } = new("5.48 mm an inch of inseam", 5.48 / 25.4, 0, 150 / 5.48, 200 / 5.48, Sources.CrankFormula);

    /// <summary>172.5 mm at an inseam of 32 in, and 2.5 mm for each inch more or less; printed for 29 to 33 in.</summary>
    public static CrankLengthRule Steps { get; } = new("172.5 mm at 32 in, 2.5 mm an inch", 2.5 / 25.4, 172.5 - (32 * 2.5), 29, 33, Sources.CrankLengthPost);

    /// <summary>Every rule.</summary>
    public static ImmutableArray<CrankLengthRule> All { get; } = [Proportion, Steps];

    /// <summary>The rule in words.</summary>
    public string Name { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>Shortest inseam for which its page prints it.</summary>
    public Length LeastInseam => Length.FromMillimeters(_least);

    /// <summary>Longest inseam for which its page prints it.</summary>
    public Length MostInseam => Length.FromMillimeters(_most);

    /// <summary>What the rule says: factor times inseam, and a constant.</summary>
    /// <param name="inseam">Inseam without shoes, <see cref="LeastInseam"/> to <see cref="MostInseam"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Beyond the range that is printed, or no number.</exception>
    public Length For(Length inseam) => Length.FromMillimeters((_factor * NumberRange.Millimetres(inseam, _least - Dust, _most + Dust, nameof(inseam))) + _constant);

    private bool Holds(Length inseam) => inseam.Millimeters >= _least - Dust && inseam.Millimeters <= _most + Dust;

    /// <summary>What all rules that are printed for an inseam say together: a place to start.</summary>
    /// <param name="inseam">Inseam without shoes, within the range of one rule at least.</param>
    /// <exception cref="ArgumentOutOfRangeException">Beyond the range of every rule, or no number.</exception>
    public static RuleOfThumb Range(Length inseam)
    {
        double one = Proportion.For(inseam).Millimeters;
        double other = Steps.Holds(inseam) ? Steps.For(inseam).Millimeters : one;
        return new("crank length", Math.Min(one, other), Math.Max(one, other), Steps.Holds(inseam) ? [Sources.CrankFormula, Sources.CrankFormulaRange, Sources.CrankLengthPost] : [Sources.CrankFormula, Sources.CrankFormulaRange]);
    }

    /// <summary>The rule.</summary>
    public override string ToString() => Name;
}
