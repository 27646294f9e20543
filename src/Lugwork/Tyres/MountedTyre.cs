using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>A tyre on a rim: how wide, how high, how far round, how much air. Estimates from its name; a mounted tyre is measured. Immutable.</summary>
/// <remarks>
/// Width: W + 0.4 (R - R0), R0 the rim on which tyres of this width are measured since 2020; at the most 1 mm for each millimetre of rim and
/// 3 mm of tolerance more. Heights, diameters and circumferences go by the width in the name and by a <see cref="SectionHeight"/>.
/// All in mm; R0 by "2020 ETRTO standards for bike tires", the tolerance by "Why are tires sometimes narrower than their listed size?", 0.4 by "How to measure bike rim width".
/// </remarks>
public sealed class MountedTyre
{
    internal const double Tolerance = 3;
    private readonly double _rim;
    private readonly double _measuringRim;

    private MountedTyre(TyreSize size, double rim, double measuringRim, bool isRimKnown)
    {
        Size = size;
        IsRimKnown = isRimKnown;
        (_rim, _measuringRim) = (rim, measuringRim);
    }

    /// <summary>The tyre's size.</summary>
    public TyreSize Size { get; }

    /// <summary>The rim was given; otherwise the tyre is taken as on the rim on which tyres of its width are measured, and no room around it is called a fit.</summary>
    public bool IsRimKnown { get; }

    /// <summary>Inner width of the rim.</summary>
    public Length InnerWidth => Length.FromMillimeters(_rim);

    /// <summary>Inner width of the rim on which tyres of this size are measured.</summary>
    public Length MeasuredOn => Length.FromMillimeters(_measuringRim);

    /// <summary>Likely width.</summary>
    public Length Width => Length.FromMillimeters(TyreGrowth.ByCasing.Millimetres(Size.WidthMillimetres, _measuringRim, _rim));

    /// <summary>The narrowest that a tyre of this name may be: 3 mm below its class, shrunk one for one on a narrower rim.</summary>
    public Length LeastWidth => Length.FromMillimeters(Math.Min(Grown(TyreGrowth.ByCasing), Grown(TyreGrowth.OneForOne)) - Tolerance);

    /// <summary>The widest that a tyre of this name may be: 3 mm above its class, grown one for one on a wider rim. For clearance.</summary>
    public Length MostWidth => Length.FromMillimeters(WidestMillimetres);

    /// <summary>Air in the tyre as a ring of round section: V = 2 pi² Rc r², r = W / 2, Rc = D / 2 + r.</summary>
    public Volume AirVolume
    {
        get
        {
            double r = Size.WidthMillimetres / 2.0;
            return Volume.FromCubicMillimeters(2 * Math.PI * Math.PI * (Seat / 2 + r) * r * r);
        }
    }

    /// <summary>What the estimates rest on; the convention of a height has its own.</summary>
    public static ImmutableArray<Source> Sources { get; } =
        [Lugwork.Sources.MeasuringRims2020, Lugwork.Sources.WidthTolerance, Lugwork.Sources.RimWidthMeasuring, Lugwork.Sources.OlderIso5775, Lugwork.Sources.Derived];

    internal double WidestMillimetres => Math.Max(Grown(TyreGrowth.ByCasing), Grown(TyreGrowth.OneForOne)) + Tolerance;

    private double Seat => Size.Bead.FitCode;

    /// <summary>On the rim on which tyres of its width are measured: where the real rim is not known.</summary>
    /// <param name="size">The tyre's size; not the default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is the default.</exception>
    public static MountedTyre OnMeasuringRim(TyreSize size)
    {
        double rim = MeasuringRim.For(size.WidthMillimetres).InnerWidth.Millimeters;
        return new(size, rim, rim, false);
    }

    /// <summary>On a rim. Whether the two may go together is another question.</summary>
    /// <param name="size">The tyre's size; not the default.</param>
    /// <param name="innerWidth">Inner width of the rim, 10 to 100 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is the default, or the width is out of range or no number.</exception>
    public static MountedTyre OnRim(TyreSize size, Length innerWidth) =>
        new(size, NumberRange.Millimetres(innerWidth, 10, 100), MeasuringRim.For(size.WidthMillimetres).InnerWidth.Millimeters, true);

    /// <summary>Height over the bead seat.</summary>
    /// <param name="convention">How height follows from width.</param>
    public Length Height(SectionHeight convention) => Length.FromMillimeters(HeightMillimetres(convention));

    /// <summary>Diameter over the tyre, without load: D + 2 H.</summary>
    /// <param name="convention">How height follows from width.</param>
    public Length OutsideDiameter(SectionHeight convention) => Length.FromMillimeters(OutsideMillimetres(convention));

    /// <summary>Circumference without load: pi (D + 2 H).</summary>
    /// <param name="convention">How height follows from width.</param>
    public Length UnloadedCircumference(SectionHeight convention) => Length.FromMillimeters(Math.PI * OutsideMillimetres(convention));

    /// <summary>What a wheel rolls under a rider: 0.7 to 1.2 % less than without load. A rule of thumb from one reader's test; rolling it out on the floor is best.</summary>
    /// <param name="convention">How height follows from width.</param>
    /// <returns>The least and the most.</returns>
    public LengthRange LoadedCircumference(SectionHeight convention)
    {
        double unloaded = Math.PI * OutsideMillimetres(convention);
        return new(unloaded * 0.988, unloaded * 0.993);
    }

    /// <summary>Where the loss under a rider comes from.</summary>
    public static Source LoadedSource => Lugwork.Sources.LoadedRollout;

    internal double OutsideMillimetres(SectionHeight convention) => Seat + (2 * HeightMillimetres(convention));

    private double HeightMillimetres(SectionHeight convention)
    {
        ArgumentNullException.ThrowIfNull(convention);
        return convention.Millimetres(Size.WidthMillimetres);
    }

    private double Grown(TyreGrowth growth) => growth.Millimetres(Size.WidthMillimetres, _measuringRim, _rim);

    /// <summary>"28-622 on a rim 21 mm wide inside: about 28.8 mm wide".</summary>
    public override string ToString() => FormattableString.Invariant($"{Size} on a rim {_rim:0.#} mm wide inside: about {Grown(TyreGrowth.ByCasing):0.0} mm wide");
}
