using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>One flange of a hub, as spokes see it: the circle of its holes, its distance from the middle of the wheel, its holes. Immutable.</summary>
/// <remarks>The two flanges of a hub are often unlike in all three. o = OLD / 2 - d, OLD over the locknuts, d locknut to flange, mm, by "Hub and rim measuring (Damon Rinard text)".</remarks>
public sealed class SpokeFlange
{
    private SpokeFlange(double holeCircle, double offset, double hole)
    {
        (CircleMillimetres, OffsetMillimetres, HoleMillimetres) = (holeCircle, offset, hole);
    }

    /// <summary>Diameter of the circle through the middles of the spoke holes.</summary>
    public Length HoleCircle => Length.FromMillimeters(CircleMillimetres);

    /// <summary>Middle of the flange to the plane midway between the locknuts, in which the rim stands.</summary>
    public Length Offset => Length.FromMillimeters(OffsetMillimetres);

    /// <summary>Diameter of a spoke hole, usually 2.3 to 2.8 mm.</summary>
    public Length Hole => Length.FromMillimeters(HoleMillimetres);

    /// <summary>How a hub is measured.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.HubMeasuring];

    internal double CircleMillimetres { get; }

    internal double OffsetMillimetres { get; }

    internal double HoleMillimetres { get; }

    /// <summary>Makes a flange.</summary>
    /// <param name="holeCircle">Circle of the holes, 15 to 300 mm.</param>
    /// <param name="offset">Middle of the flange to the middle of the wheel, 0 to 150 mm.</param>
    /// <param name="hole">Diameter of a hole, 1.5 to 5 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range or no number.</exception>
    public static SpokeFlange Of(Length holeCircle, Length offset, Length hole) => new(
        NumberRange.Millimetres(holeCircle, 15, 300),
        NumberRange.Millimetres(offset, 0, 150),
        NumberRange.Millimetres(hole, 1.5, 5));

    /// <summary>Offset of a flange from what can be measured on a hub: o = OLD / 2 - d.</summary>
    /// <param name="overLocknuts">OLD, over the locknuts or end faces, 50 to 250 mm.</param>
    /// <param name="locknutToFlange">d, from the locknut of that side to the middle of the flange, 0 to half of the width over the locknuts.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range or no number.</exception>
    public static Length OffsetFrom(Length overLocknuts, Length locknutToFlange)
    {
        double half = NumberRange.Millimetres(overLocknuts, 50, 250) / 2;
        return Length.FromMillimeters(half - NumberRange.Millimetres(locknutToFlange, 0, half));
    }

    /// <summary>"hole circle 58 mm, 39 mm from the middle, holes 2.6 mm".</summary>
    public override string ToString() => FormattableString.Invariant($"hole circle {CircleMillimetres:0.##} mm, {OffsetMillimetres:0.##} mm from the middle, holes {HoleMillimetres:0.##} mm");
}
