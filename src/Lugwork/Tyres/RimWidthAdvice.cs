using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>Which inner rim widths go with a tyre width: what the tables list, where it is measured, and two rules of thumb. Immutable.</summary>
/// <remarks>Advice only: the tables stand for limits, the ratios are a range of comfort. The makers of rim and tyre come first, and hookless rims have minimums of their own. W / 2 ≤ R ≤ W / 1.45, W width of the tyre, R inner width of the rim, mm, by "Bike tire width v rim width (reproduces the guideline of T21)"; 0.65 and 0.55 by "ISO 5775 (older copy of the encyclopaedia article)".</remarks>
public sealed class RimWidthAdvice
{
    private readonly int _tyre;

    private RimWidthAdvice(int tyre) => _tyre = tyre;

    /// <summary>Nominal section width of the tyre.</summary>
    public Length TyreWidth => Length.FromMillimeters(_tyre);

    /// <summary>The rim on which tyres of this width are measured.</summary>
    public MeasuringRim MeasuredOn => MeasuringRim.For(_tyre);

    /// <summary>Rule of thumb: the tyre is 1.45 to 2 times as wide as the rim is inside; the narrowest such rim.</summary>
    public Length LeastByRatio => Length.FromMillimeters(_tyre / 2.0);

    /// <summary>Rule of thumb: the tyre is 1.45 to 2 times as wide as the rim is inside; the widest such rim.</summary>
    public Length MostByRatio => Length.FromMillimeters(_tyre / 1.45);

    /// <summary>An older edition of the tyre standard as reported: 0.65 of the tyre below 30 mm, 0.55 from 30 mm up.</summary>
    public Length ByOlderRule => Length.FromMillimeters(_tyre * (_tyre < 30 ? 0.65 : 0.55));

    /// <summary>Every row, of every edition, that holds the tyre.</summary>
    public ImmutableArray<TyreWidthRange> Rows
    {
        get
        {
            ImmutableArray<TyreWidthRange>.Builder rows = ImmutableArray.CreateBuilder<TyreWidthRange>();
            foreach (TyreWidthRange row in TyreWidthRange.All)
            {
                if (row.Holds(_tyre))
                {
                    rows.Add(row);
                }
            }

            return rows.ToImmutable();
        }
    }

    /// <summary>What the advice rests on; each row has its own.</summary>
    public static ImmutableArray<Source> Sources { get; } = [Lugwork.Sources.WidthGuideline, Lugwork.Sources.OlderIso5775, Lugwork.Sources.MeasuringRims2020];

    /// <summary>Advice for a tyre.</summary>
    /// <param name="tyreWidth">Nominal section width, 18 to 132 mm, in whole millimetres.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is out of range, no number or no whole millimetres.</exception>
    public static RimWidthAdvice For(Length tyreWidth) => new(NumberRange.Whole(tyreWidth, 18, 132));

    /// <summary>Published inner widths of a rim type that lie within the ratios; empty for tubeless types, whose codes were not readable.</summary>
    /// <param name="type">A rim type.</param>
    public ImmutableArray<Length> CodesWithinRatio(RimType type)
    {
        ImmutableArray<Length>.Builder codes = ImmutableArray.CreateBuilder<Length>();
        foreach (decimal inner in RimWidths.Millimetres(type))
        {
            if (inner * 2 >= _tyre && inner * 1.45m <= _tyre)
            {
                codes.Add(Length.FromMillimeters((double)inner));
            }
        }

        return codes.ToImmutable();
    }

    /// <summary>"28 mm: a rim 14 to 19.3 mm wide inside by rule of thumb, measured on 19C".</summary>
    public override string ToString() => FormattableString.Invariant($"{_tyre} mm: a rim {_tyre / 2.0:0.#} to {_tyre / 1.45:0.#} mm wide inside by rule of thumb, measured on {MeasuredOn.Designation}");
}
