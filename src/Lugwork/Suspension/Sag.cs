using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>How far a suspension sinks under its rider in riding position.</summary>
/// <remarks>Share p of the whole, 0 to 1: sag = s p at the shock, s stroke; at wheel and fork T p, T travel. At the rear wheel it is exact only for a constant leverage ratio: sag is set at the shock. All in mm; arithmetic on the meaning of the word, no source.</remarks>
public static class Sag
{
    /// <summary>What the arithmetic rests on; how much sag is right is <see cref="SagAdvice"/>.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.Derived];

    /// <summary>Sag at the shaft of a rear shock.</summary>
    /// <param name="stroke">Stroke of the shock, 10 to 150 mm.</param>
    /// <param name="share">Share of the stroke, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or no number.</exception>
    public static Length AtShock(Length stroke, Ratio share) => Length.FromMillimeters(NumberRange.Millimetres(stroke, 10, 150) * NumberRange.Parts(share, 0, 1));

    /// <summary>Sag at the rear wheel, as if the leverage ratio were constant.</summary>
    /// <param name="wheelTravel">Travel of the rear wheel, 20 to 300 mm.</param>
    /// <param name="share">Share of the stroke, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or no number.</exception>
    public static Length AtRearWheelByMeanRatio(Length wheelTravel, Ratio share) => Length.FromMillimeters(NumberRange.Millimetres(wheelTravel, 20, 300) * NumberRange.Parts(share, 0, 1));

    /// <summary>Sag at the legs of a fork.</summary>
    /// <param name="forkTravel">Travel of the fork, 20 to 300 mm.</param>
    /// <param name="share">Share of the travel, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or no number.</exception>
    public static Length AtFork(Length forkTravel, Ratio share) => Length.FromMillimeters(NumberRange.Millimetres(forkTravel, 20, 300) * NumberRange.Parts(share, 0, 1));

    /// <summary>The share that a measured sag is: the inverse.</summary>
    /// <param name="measured">How far it sinks, 0 to the whole.</param>
    /// <param name="whole">Stroke of the shock or travel of the fork, 10 to 300 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or no number.</exception>
    public static Ratio ShareOf(Length measured, Length whole)
    {
        double all = NumberRange.Millimetres(whole, 10, 300);
        return Ratio.FromDecimalFractions(NumberRange.Millimetres(measured, 0, all) / all);
    }
}
