using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>The chain from one ring to one sprocket, seen from above.</summary>
public sealed class ChainRun
{
    private readonly double _off;

    private readonly double _chainstay;

    internal ChainRun(int ring, int sprocket, double off, double chainstay) => (Ring, Sprocket, _off, _chainstay) = (ring, sprocket, off, chainstay);

    /// <summary>Which ring, counted from 1, the outermost.</summary>
    public int Ring { get; }

    /// <summary>Which sprocket, counted from 1, the smallest, which stands outermost.</summary>
    public int Sprocket { get; }

    /// <summary>How far the sprocket stands outside the ring; negative inside of it.</summary>
    public Length Deviation => Length.FromMillimeters(_off);

    /// <summary>Angle of the chain to the plane of the wheel, atan(|deviation| / chainstay), 0 to 90 degrees.</summary>
    public Angle Angle => Angle.FromDegrees(Degrees);

    internal double Degrees => Math.Atan(Math.Abs(_off) / _chainstay) * 180 / Math.PI;

    /// <summary>"ring 1, sprocket 12: 2.64 degrees inward".</summary>
    public override string ToString() => FormattableString.Invariant($"ring {Ring}, sprocket {Sprocket}: {Degrees:0.00} degrees{(_off < 0 ? " inward" : _off > 0 ? " outward" : "")}");
}
