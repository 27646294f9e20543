using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>What a change did to a frame: every figure after it less the one before.</summary>
/// <remarks>Difference = after - before, mm and degrees; plain arithmetic, no source.</remarks>
public sealed partial class GeometryDifference
{
    private readonly FrameGeometry _before;
    private readonly FrameGeometry _after;

    private GeometryDifference(FrameGeometry before, FrameGeometry after)
    {
        _before = before;
        _after = after;
    }

    /// <summary>Steering axis to the ground; negative is slacker.</summary>
    public Angle HeadAngle => _after.HeadAngle - _before.HeadAngle;

    /// <summary>Seat tube to the ground, known or not: it turns with the frame; negative is slacker.</summary>
    public Angle SeatAngle => _after.HeadTubeAngle - _before.HeadTubeAngle;

    /// <summary>Trail on the ground.</summary>
    public Length Trail => _after.Trail - _before.Trail;

    /// <summary>Flop factor.</summary>
    public Length FlopFactor => _after.FlopFactor - _before.FlopFactor;

    /// <summary>Stack.</summary>
    public Length Stack => _after.Stack - _before.Stack;

    /// <summary>Reach.</summary>
    public Length Reach => _after.Reach - _before.Reach;

    /// <summary>Drop below the rear axle.</summary>
    public Length BottomBracketDrop => _after.BottomBracketDrop - _before.BottomBracketDrop;

    /// <summary>Height of the bottom bracket.</summary>
    public Length BottomBracketHeight => _after.BottomBracketHeight - _before.BottomBracketHeight;

    /// <summary>Wheelbase.</summary>
    public Length Wheelbase => _after.Wheelbase - _before.Wheelbase;

    /// <summary>Front centre, straight.</summary>
    public Length FrontCentre => _after.FrontCentre - _before.FrontCentre;

    /// <summary>Toe clearance straight ahead, whatever the crank: front centre less the radius of the front wheel.</summary>
    public Length ToeClearance => FrontCentre - (_after.FrontRadius - _before.FrontRadius);

    /// <summary>The difference of two frames, or of one before and after a change.</summary>
    /// <param name="before">As it was.</param>
    /// <param name="after">As it is now.</param>
    public static GeometryDifference Between(FrameGeometry before, FrameGeometry after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return new(before, after);
    }

    /// <summary>The frame as it was.</summary>
    internal FrameGeometry Before => _before;

    /// <summary>The frame as it is now.</summary>
    internal FrameGeometry After => _after;

    /// <summary>A row a figure, in words: what, before, after, the change, unit.</summary>
    internal ImmutableArray<(string Name, string Before, string After, string Change, string Unit)> Rows
    {
        get
        {
            ImmutableArray<(string Name, string Before, string After, string Change, string Unit)>.Builder rows = ImmutableArray.CreateBuilder<(string, string, string, string, string)>(10);
            Row("head angle", _before.HeadAngle.Degrees, _after.HeadAngle.Degrees, "degrees");
            if (_before.SeatAngle is { } seatBefore && _after.SeatAngle is { } seatAfter)
            {
                Row("seat angle", seatBefore.Degrees, seatAfter.Degrees, "degrees");
            }

            Row("trail", _before.Trail.Millimeters, _after.Trail.Millimeters, "mm");
            Row("flop factor", _before.FlopFactor.Millimeters, _after.FlopFactor.Millimeters, "mm");
            Row("reach", _before.Reach.Millimeters, _after.Reach.Millimeters, "mm");
            Row("stack", _before.Stack.Millimeters, _after.Stack.Millimeters, "mm");
            Row("bottom-bracket height", _before.BottomBracketHeight.Millimeters, _after.BottomBracketHeight.Millimeters, "mm");
            Row("bottom-bracket drop", _before.BottomBracketDrop.Millimeters, _after.BottomBracketDrop.Millimeters, "mm");
            Row("wheelbase", _before.Wheelbase.Millimeters, _after.Wheelbase.Millimeters, "mm");
            Row("front centre", _before.FrontCentre.Millimeters, _after.FrontCentre.Millimeters, "mm");
            return rows.ToImmutable();

            void Row(string name, double before, double after, string unit)
            {
                string format = unit == "mm" ? "0.0" : "0.00";
                rows.Add((name, before.ToString(format, CultureInfo.InvariantCulture), after.ToString(format, CultureInfo.InvariantCulture), (after - before).ToString("+" + format + ";-" + format + ";0", CultureInfo.InvariantCulture), unit));
            }
        }
    }

    /// <summary>A line a figure: before, after and the change.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        foreach ((string name, string before, string after, string change, string unit) in Rows)
        {
            text.Append(text.Length > 0 ? "\n" : "").Append(name.PadRight(22)).Append(before.PadLeft(8)).Append(" -> ").Append(after.PadLeft(8)).Append("  ").Append(change).Append(' ').Append(unit);
        }

        return text.ToString();
    }
}
