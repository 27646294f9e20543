using System.Globalization;
using UnitsNet;

namespace Lugwork;

/// <summary>From a least length to a greatest one, both among it; exact to the nanometre. The default is from 0 to 0.</summary>
public readonly record struct LengthRange
{
    private readonly long _least;
    private readonly long _most;

    internal LengthRange(double leastMillimetres, double mostMillimetres)
    {
        _least = (long)Math.Round(leastMillimetres * Nanometres.PerMillimetre);
        _most = (long)Math.Round(mostMillimetres * Nanometres.PerMillimetre);
    }

    /// <summary>The least.</summary>
    public Length Least => new Nanometres(_least).ToLength();

    /// <summary>The greatest.</summary>
    public Length Most => new Nanometres(_most).ToLength();

    /// <summary>"25 to 28 mm", to the thousandth, the same in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{new Nanometres(_least).Millimetres:0.###} to {new Nanometres(_most).Millimetres:0.###} mm");
}
