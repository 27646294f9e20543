using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>A rule of thumb from inseam to crank length. Closed set, identity equality. They lie up to 15 mm apart; none is a criterion of fit.</summary>
public sealed class CrankLengthRule
{
    private readonly double _factor;
    private readonly double _constant;

    private CrankLengthRule(string name, double factor, double constant, Source source)
    {
        Name = name;
        _factor = factor;
        _constant = constant;
        Source = source;
    }

    /// <summary>5.48 mm of crank for each inch of inseam; its own author says that the trade does not share it.</summary>
    public static CrankLengthRule Proportion { get; } = new("5.48 mm an inch of inseam", 5.48 / 25.4, 0, Sources.CrankFormula);

    /// <summary>172.5 mm at an inseam of 32 in, and 2.5 mm for each inch more or less; printed for 29 to 33 in.</summary>
    public static CrankLengthRule Steps { get; } = new("172.5 mm at 32 in, 2.5 mm an inch", 2.5 / 25.4, 172.5 - (32 * 2.5), Sources.CrankLengthPost);

    /// <summary>Every rule.</summary>
    public static ImmutableArray<CrankLengthRule> All { get; } = [Proportion, Steps];

    /// <summary>The rule in words.</summary>
    public string Name { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>What the rule says.</summary>
    /// <param name="inseam">Inseam without shoes, 400 to 1,200 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public Length For(Length inseam) => Length.FromMillimeters((_factor * NumberRange.Millimetres(inseam, 400, 1_200, nameof(inseam))) + _constant);

    /// <summary>What all rules say together: a place to start.</summary>
    /// <param name="inseam">Inseam without shoes, 400 to 1,200 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static RuleOfThumb Range(Length inseam)
    {
        double one = Proportion.For(inseam).Millimeters;
        double other = Steps.For(inseam).Millimeters;
        return new("crank length", Math.Min(one, other), Math.Max(one, other), [Sources.CrankFormula, Sources.CrankLengthPost]);
    }

    /// <summary>The rule.</summary>
    public override string ToString() => Name;
}
