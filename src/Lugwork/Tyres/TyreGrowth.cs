using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>By how much a tyre grows wider for each millimetre that its rim is wider inside. Rules of thumb that disagree. Closed set, identity equality.</summary>
/// <remarks>W' = W + k (R - R0): R inner width of the rim, R0 of the rim on which the tyre is W wide. A narrower rim makes the tyre narrower. Measure the mounted tyre after a day at pressure: it grows by another 1 to 2 mm. All in mm, by "How to measure bike rim width", "Tyre width on a wider rim" and "Why are tires sometimes narrower than their listed size?".</remarks>
public sealed class TyreGrowth
{
    private TyreGrowth(string name, double perMillimetre, Source source)
    {
        Name = name;
        PerMillimetre = perMillimetre;
        Source = source;
    }

    /// <summary>0.4: a casing of fixed length bent to a circle gives it near the usual ratios.</summary>
    public static TyreGrowth ByCasing { get; } = new("0.4 by the casing", 0.4, Sources.RimWidthMeasuring);

    /// <summary>0.5, argued in a forum; both readings beside it were wider.</summary>
    public static TyreGrowth Half { get; } = new("half", 0.5, Sources.WidthOnWiderRim);

    /// <summary>2 / pi, argued in the same place; both readings were wider still.</summary>
    public static TyreGrowth TwoOverPi { get; } = new("2 / pi", 2 / Math.PI, Sources.WidthOnWiderRim);

    /// <summary>1: the most that is published, of one tyre on two rims by its maker. For clearance.</summary>
    public static TyreGrowth OneForOne { get; } = new("one for one", 1, Sources.WidthTolerance);

    /// <summary>Every rule, the smallest first.</summary>
    public static ImmutableArray<TyreGrowth> All { get; } = [ByCasing, Half, TwoOverPi, OneForOne];

    /// <summary>"half".</summary>
    public string Name { get; }

    /// <summary>k, millimetres of width for each millimetre of rim.</summary>
    public double PerMillimetre { get; }

    /// <summary>What it rests on.</summary>
    public Source Source { get; }

    /// <summary>Width of a tyre on another rim.</summary>
    /// <param name="width">W, 15 to 140 mm.</param>
    /// <param name="onRim">R0, inner width of the rim on which it is that wide, 10 to 100 mm.</param>
    /// <param name="rim">R, inner width of the other rim, 10 to 100 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is out of range or no number.</exception>
    public Length WidthOn(Length width, Length onRim, Length rim) =>
        Length.FromMillimeters(Millimetres(NumberRange.Millimetres(width, 15, 140), NumberRange.Millimetres(onRim, 10, 100), NumberRange.Millimetres(rim, 10, 100)));

    internal double Millimetres(double width, double onRim, double rim) => width + (PerMillimetre * (rim - onRim));

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
