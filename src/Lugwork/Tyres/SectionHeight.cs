using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>A convention by which a tyre's height follows from the width in its name, and with it diameter and circumference. Closed set, identity equality.</summary>
/// <remarks>
/// Overall diameter D + 2 H, D bead seat, H height; circumference pi (D + 2 H), without load. The conventions differ by up to 35 mm of
/// circumference, and both are printed in rollout charts: never mix them in one comparison.
/// All in mm, by "Cyclecomputer calibration, radius table", "ISO 5775 (older copy of the encyclopaedia article)" and "Wheel size list in a Bluetooth cycling-sensor profile".
/// </remarks>
public sealed class SectionHeight
{
    private readonly double _narrow;
    private readonly double _every;

    private SectionHeight(string name, double narrow, double every, Source source)
    {
        (_narrow, _every) = (narrow, every);
        Name = name;
        Source = source;
    }

    /// <summary>H = W. Nearest to measured rollout: for distance and gearing.</summary>
    public static SectionHeight EqualToWidth { get; } = new("height equal to width", 0, 0, Sources.CalibrationPage);

    /// <summary>H = W, and W + 2.5 mm below 28 mm, as an older edition of the tyre standard is reported.</summary>
    public static SectionHeight OlderStandard { get; } = new("older standard", 2.5, 0, Sources.OlderIso5775);

    /// <summary>The older standard and 3 mm for the tolerance of the class: the largest that a tyre of this name is likely to be. For clearance, never for distance. Derived: half of one published rollout list follows it.</summary>
    public static SectionHeight UpperSize { get; } = new("upper size", 2.5, 3, Sources.RolloutSizes);

    /// <summary>Every convention.</summary>
    public static ImmutableArray<SectionHeight> All { get; } = [EqualToWidth, OlderStandard, UpperSize];

    /// <summary>"height equal to width".</summary>
    public string Name { get; }

    /// <summary>What it rests on.</summary>
    public Source Source { get; }

    /// <summary>Height of a tyre over the bead seat.</summary>
    /// <param name="width">Nominal section width, 15 to 140 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is out of range or no number.</exception>
    public Length Of(Length width) => Length.FromMillimeters(Millimetres(NumberRange.Millimetres(width, 15, 140)));

    internal double Millimetres(double width) => width + _every + (width < 28 ? _narrow : 0);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
