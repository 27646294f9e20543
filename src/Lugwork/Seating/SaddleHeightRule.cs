using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>A rule of thumb from leg or body to saddle height: bottom bracket to the top of the saddle along the seat tube. Closed set, identity equality; none is a criterion of fit.</summary>
/// <remarks>
/// Height = factor x inseam (or body) + constant, millimetres. Their pages print a formula and an example or two (inseams of 750 to 830 mm, a body of 1,670 mm), and no range:
/// an inseam of 650 to 1,000 mm and a body of 1,450 to 2,050 mm, grown riders, is our own bound, no source. What lies beyond is refused.
/// By "Saddle adjustment (in Japanese)", "A sizing chart (blog post that names the 0.883 formula)" and "Saddle height factors of a team's riders (in Japanese)"; 1.09 is from memory.
/// </remarks>
public sealed class SaddleHeightRule
{
    private const double LeastOfInseam = 650;
    private const double MostOfInseam = 1_000;
    private const double LeastOfBody = 1_450;
    private const double MostOfBody = 2_050;

    private readonly double _factor;
    private readonly double _constant;

    private SaddleHeightRule(string name, double factor, double constant, Source source, bool countsCrank = false, bool isOfBody = false)
    {
        Name = name;
        _factor = factor;
        _constant = constant;
        Source = source;
        CountsCrank = countsCrank;
        IsOfBody = isOfBody;
    }

    /// <summary>0.875 of the inseam.</summary>
    public static SaddleHeightRule Inseam875 { get; } = new("0.875 x inseam", 0.875, 0, Sources.SaddleAdjustment);

    /// <summary>0.883 of the inseam, from a time of thinner shoes and higher pedals.</summary>
    public static SaddleHeightRule Inseam883 { get; } = new("0.883 x inseam", 0.883, 0, Sources.SizingChartPost);

    /// <summary>1.09 of the inseam from the pedal axle, crank down and in line: the crank comes off. The factor is from memory.</summary>
    public static SaddleHeightRule PedalToSaddle { get; } = new("1.09 x inseam, less the crank", 1.09, 0, Sources.Memory, countsCrank: true);

    /// <summary>A line through the inseams of one team's riders.</summary>
    public static SaddleHeightRule TeamInseam { get; } = new("0.7445 x inseam + 104.3 mm", 0.7445, 104.3, Sources.SaddleRegression);

    /// <summary>A line through the body heights of one team's riders.</summary>
    public static SaddleHeightRule TeamBody { get; } = new("0.5143 x body height - 188.4 mm", 0.5143, -188.4, Sources.SaddleRegression, isOfBody: true);

    /// <summary>Every rule.</summary>
    public static ImmutableArray<SaddleHeightRule> All { get; } = [Inseam875, Inseam883, PedalToSaddle, TeamInseam, TeamBody];

    /// <summary>The rule in words: "0.875 x inseam".</summary>
    public string Name { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>Whether its figure reaches to the pedal and counts the crank.</summary>
    public bool CountsCrank { get; }

    /// <summary>Whether it asks for the height of the body instead of the inseam.</summary>
    public bool IsOfBody { get; }

    /// <summary>What the rule says, to the bottom bracket or, where it counts the crank, to the pedal axle.</summary>
    /// <param name="body">Inseam without shoes, 650 to 1,000 mm; for a rule of the body its height, 1,450 to 2,050 mm: <see cref="LeastInput"/> to <see cref="MostInput"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or no number.</exception>
    public Length For(Length body) => Length.FromMillimeters((_factor * NumberRange.Millimetres(body, LeastInput.Millimeters, MostInput.Millimeters, nameof(body))) + _constant);

    /// <summary>The shortest inseam, or body, that it takes: our own bound, no source.</summary>
    public Length LeastInput => Length.FromMillimeters(IsOfBody ? LeastOfBody : LeastOfInseam);

    /// <summary>The longest inseam, or body, that it takes: our own bound, no source.</summary>
    public Length MostInput => Length.FromMillimeters(IsOfBody ? MostOfBody : MostOfInseam);

    /// <summary>What all rules of the inseam say together, from the bottom bracket: a place to start.</summary>
    /// <param name="inseam">Inseam without shoes, 650 to 1,000 mm.</param>
    /// <param name="crank">Length of the crank, 100 to 250 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range.</exception>
    public static RuleOfThumb Range(Length inseam, Length crank)
    {
        double arm = NumberRange.Millimetres(crank, 100, 250, nameof(crank));
        double least = double.MaxValue;
        double most = double.MinValue;
        foreach (SaddleHeightRule rule in All)
        {
            if (!rule.IsOfBody)
            {
                double says = rule.For(inseam).Millimeters - (rule.CountsCrank ? arm : 0);
                least = Math.Min(least, says);
                most = Math.Max(most, says);
            }
        }

        return new("saddle height", least, most, [Sources.SaddleAdjustment, Sources.InseamMeasuring, Sources.SizingChartPost, Sources.SaddleRegression, Sources.Memory]);
    }

    /// <summary>The rule.</summary>
    public override string ToString() => Name;
}
