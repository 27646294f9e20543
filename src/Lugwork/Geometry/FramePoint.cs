using System.Globalization;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>A point of a frame from the side, seen from the right: x forward, y up. The default is the bottom bracket, where both begin.</summary>
public readonly record struct FramePoint
{
    internal FramePoint(double x, double y)
    {
        XMillimetres = x;
        YMillimetres = y;
    }

    /// <summary>Forward of the bottom bracket, millimetres.</summary>
    public double XMillimetres { get; }

    /// <summary>Above the bottom bracket, millimetres.</summary>
    public double YMillimetres { get; }

    /// <summary>Forward of the bottom bracket.</summary>
    public Length X => Length.FromMillimeters(XMillimetres);

    /// <summary>Above the bottom bracket.</summary>
    public Length Y => Length.FromMillimeters(YMillimetres);

    /// <summary>Turned about the bottom bracket, front up.</summary>
    internal FramePoint Turned(double radians)
    {
        (double sin, double cos) = Math.SinCos(radians);
        return new((XMillimetres * cos) - (YMillimetres * sin), (XMillimetres * sin) + (YMillimetres * cos));
    }

    /// <summary>"(455, 620)" in millimetres.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({XMillimetres:0.#}, {YMillimetres:0.#})");
}
