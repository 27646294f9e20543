using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>Two ways to one figure of a frame that come out apart by more than rounding explains.</summary>
public sealed class ChartDisagreement
{
    private readonly double _stated;
    private readonly double _follows;
    private readonly double _rounding;

    internal ChartDisagreement(FrameFigure figure, double stated, double follows, double rounding, ImmutableArray<FrameFigure> figures)
    {
        Figure = figure;
        _stated = stated;
        _follows = follows;
        _rounding = rounding;
        Figures = figures;
    }

    /// <summary>The figure at which the two ways meet.</summary>
    public FrameFigure Figure { get; }

    /// <summary>What the chart says, or one way to it.</summary>
    public Length Stated => Length.FromMillimeters(_stated);

    /// <summary>What follows from the other figures.</summary>
    public Length Follows => Length.FromMillimeters(_follows);

    /// <summary>What is stated less what follows.</summary>
    public Length Size => Length.FromMillimeters(_stated - _follows);

    /// <summary>How far rounding of the chart could have put them apart.</summary>
    public Length Rounding => Length.FromMillimeters(_rounding);

    /// <summary>The printed figures on which both ways rest: one of them, or more, is wrong or means something else.</summary>
    public ImmutableArray<FrameFigure> Figures { get; }

    /// <summary>"wheelbase: 1230 mm against 1221.4 mm, 8.6 mm apart where rounding explains 2.1 mm; by reach, stack ...".</summary>
    public override string ToString()
    {
        // As many digits as it takes for the gap to show, and to show as more than rounding explains.
        string format = "0.#";
        while (format.Length < 12 && Rounded(Math.Abs(_stated - _follows)) <= Rounded(_rounding))
        {
            format += "#";
        }

        return string.Create(CultureInfo.InvariantCulture, $"{Figure}: {Number(_stated)} mm against {Number(_follows)} mm, {Number(Math.Abs(_stated - _follows))} mm apart where rounding explains {Number(_rounding)} mm; by {string.Join(", ", Figures)}");

        string Number(double value) => value.ToString(format, CultureInfo.InvariantCulture);

        double Rounded(double value) => Math.Round(value, format.Length - 2);
    }
}

/// <summary>What a chart came to: the frame, or what is missing; and what disagrees.</summary>
public sealed class ChartReading
{
    internal ChartReading(FrameGeometry? frame, ImmutableArray<ChartDisagreement> disagreements, ImmutableArray<FrameFigure> missing)
    {
        Frame = frame;
        Disagreements = disagreements;
        Missing = missing;
    }

    /// <summary>The frame; null where a figure is missing or two disagree: which of them is wrong the sums cannot know. Take one out of the chart and solve again.</summary>
    public FrameGeometry? Frame { get; }

    /// <summary>Each figure to which two ways lead that do not agree; empty where none is.</summary>
    public ImmutableArray<ChartDisagreement> Disagreements { get; }

    /// <summary>Figures that would do: with them the frame can be drawn, without one of them it cannot. Others may do as well. Empty where nothing is missing.</summary>
    public ImmutableArray<FrameFigure> Missing { get; }

    /// <summary>What the relations rest on: plain trigonometry.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.Derived];

    /// <summary>"consistent", or a line for what is missing and one for each disagreement.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        if (!Missing.IsEmpty)
        {
            text.Append("missing: ").AppendJoin(", ", Missing);
        }

        foreach (ChartDisagreement disagreement in Disagreements)
        {
            text.Append(text.Length > 0 ? "\n" : "").Append("disagrees: ").Append(disagreement);
        }

        return text.Length > 0 ? text.ToString() : "consistent";
    }
}
