using System.Collections.Immutable;
using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>Radius of a wheel with its tyre.</summary>
/// <remarks>A nominal radius is a guess of some millimetres: a tyre is seldom as high as its label is wide, and it sinks under the rider. Measure the roll-out for the real one. Nominal R = bead seat / 2 + width, rolled R = distance / 2π, mm: common practice, no source.</remarks>
public static class WheelRadius
{
    /// <summary>What the nominal radius rests on: common practice, the height of a tyre taken as its width.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.CommonPractice];

    /// <summary>Half the bead seat and the label's width: 23-622 gives 334 mm.</summary>
    /// <param name="tyre">The tyre.</param>
    /// <exception cref="ArgumentException">The tyre is a default.</exception>
    public static Length Nominal(TyreSize tyre) =>
        tyre == default
            ? throw new ArgumentException("a default is no tyre", nameof(tyre))
            : Length.FromMillimeters((tyre.Bead.Diameter.Millimeters / 2) + tyre.WidthMillimetres);

    /// <summary>The radius that a roll-out of one turn gives: distance / (2 pi), under the load it was measured with.</summary>
    /// <param name="rollOut">Distance of one turn, 600 to 3,200 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static Length OfRollOut(Length rollOut) => Length.FromMillimeters(NumberRange.Millimetres(rollOut, 600, 3_200, nameof(rollOut)) / (2 * Math.PI));
}
