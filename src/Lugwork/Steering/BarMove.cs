using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>How far a bar comes forward and up. The default stays where it is.</summary>
public readonly record struct BarMove
{
    private readonly double _forward;
    private readonly double _up;

    internal BarMove(double forward, double up)
    {
        _forward = forward;
        _up = up;
    }

    /// <summary>Forward; negative is towards the rider.</summary>
    public Length Forward => Length.FromMillimeters(_forward);

    /// <summary>Up; negative is down.</summary>
    public Length Up => Length.FromMillimeters(_up);

    /// <summary>"4.2 mm back, 43.7 mm up".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(_forward):0.#} mm {(_forward < 0 ? "back" : "forward")}, {Math.Abs(_up):0.#} mm {(_up < 0 ? "down" : "up")}");
}
