using System.Globalization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>Room around a mounted tyre: at the sides of a gap, or above it. Immutable.</summary>
/// <remarks>
/// Each side (g - W) / 2 less what the wheel stands off the middle, g the gap; above a - OD / 2, a from the axle to the crown or bridge. Once with the
/// likely tyre, once with the largest and once with the smallest that the name allows. Run-out of the wheel and the travel of a suspension come on top.
/// All in mm; the spread of a name by "Why are tires sometimes narrower than their listed size?", the rims by "2020 ETRTO standards for bike tires".
/// </remarks>
public sealed class TyreClearance
{
    private readonly double _likely;
    private readonly double _least;
    private readonly double _most;
    private readonly string _where;
    private readonly bool _isRimKnown;
    private readonly bool _isOffMeasuringRim;
    private readonly bool _isMeasured;

    private TyreClearance(double likely, double least, double most, string where, bool isRimKnown, bool isOffMeasuringRim = false, bool isMeasured = false) =>
        (_likely, _least, _most, _where, _isRimKnown, _isOffMeasuringRim, _isMeasured) = (likely, least, most, where, isRimKnown, isOffMeasuringRim, isMeasured);

    /// <summary>Room with the likely tyre; below zero it meets.</summary>
    public Length Likely => Length.FromMillimeters(_likely);

    /// <summary>Room with the largest tyre of this name; below zero it may meet.</summary>
    public Length Least => Length.FromMillimeters(_least);

    /// <summary>Room with the smallest tyre of this name; below zero it meets for certain.</summary>
    public Length Most => Length.FromMillimeters(_most);

    /// <summary>Room on the closer side of a gap.</summary>
    /// <param name="tyre">The mounted tyre.</param>
    /// <param name="gap">Between the stays or blades where the tyre is widest, 10 to 250 mm.</param>
    /// <param name="offMiddle">How far the wheel stands off the middle of the gap, 0 to 20 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range or no number.</exception>
    public static TyreClearance EachSide(MountedTyre tyre, Length gap, Length offMiddle)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        double half = NumberRange.Millimetres(gap, 10, 250) / 2;
        double off = NumberRange.Millimetres(offMiddle, 0, 20);
        return new(half - off - (tyre.Width.Millimeters / 2), half - off - (tyre.WidestMillimetres / 2), half - off - (tyre.LeastWidth.Millimeters / 2), "at the closer side", tyre.IsRimKnown);
    }

    /// <summary>Room on the closer side of a gap beside a tyre that was measured on this rim: what its name allows is no question any more.</summary>
    internal static TyreClearance EachSideAsMeasured(double narrowest, double widest, Length gap, Length offMiddle)
    {
        double half = (NumberRange.Millimetres(gap, 10, 250) / 2) - NumberRange.Millimetres(offMiddle, 0, 20);
        return new(half - ((narrowest + widest) / 4), half - (widest / 2), half - (narrowest / 2), "at the closer side", isRimKnown: true, isMeasured: true);
    }

    /// <summary>Room on each side of a gap with the wheel in its middle.</summary>
    /// <param name="tyre">The mounted tyre.</param>
    /// <param name="gap">Between the stays or blades where the tyre is widest, 10 to 250 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gap is out of range or no number.</exception>
    public static TyreClearance EachSide(MountedTyre tyre, Length gap) => EachSide(tyre, gap, Length.Zero);

    /// <summary>Room above the tread. Off the measuring rim the height may differ by as much as the rim does: our own bound, no source, for no height there is published.</summary>
    /// <param name="tyre">The mounted tyre.</param>
    /// <param name="axleToFrame">From the middle of the axle to crown, bridge or mudguard, 50 to 600 mm; the least in the travel of a suspension.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is out of range or no number.</exception>
    public static TyreClearance Above(MountedTyre tyre, Length axleToFrame)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        double room = NumberRange.Millimetres(axleToFrame, 50, 600) - (tyre.OutsideMillimetres(SectionHeight.EqualToWidth) / 2);
        double upper = (tyre.OutsideMillimetres(SectionHeight.UpperSize) - tyre.OutsideMillimetres(SectionHeight.EqualToWidth)) / 2;
        // No height off the measuring rim is published: at most one for one, to either side. Our own bound, no source.
        double off = Math.Abs(tyre.InnerWidth.Millimeters - tyre.MeasuredOn.Millimeters);
        return new(room, room - upper - off, room + MountedTyre.Tolerance + off, "above the tread", tyre.IsRimKnown, off > 0);
    }

    /// <summary>Holds the room against a rule.</summary>
    /// <param name="rule">How much is asked for.</param>
    /// <returns>Fits where even the largest tyre of the name leaves it, but never by <see cref="ClearanceRule.UnitedStates"/> alone; does not fit where even the smallest does not; needs measuring between, and for every tyre whose rim is not known.</returns>
    public SumCheck Check(ClearanceRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        string largest = _isMeasured ? "by the width as measured" : string.Create(CultureInfo.InvariantCulture, $"{_least:0.0} mm with the largest tyre of this name");
        string told = string.Create(CultureInfo.InvariantCulture, $"{_likely:0.0} mm {_where}, {largest}; {rule} are asked for{(_isOffMeasuringRim ? "; off the measuring rim the height is bounded one for one, our own bound, no source" : "")}");
        SumCheck check = !_isRimKnown ? new("tyre-clearance", Verdict.NeedsMeasuring, told + "; the rim is not known, and the tyre is taken as on the one on which it is measured", "the inner width of the rim", Cautions.TyreRoom, [rule.Source, Sources.WidthTolerance])
            : _least >= rule.Millimetres && rule == ClearanceRule.UnitedStates ? new("tyre-clearance", Verdict.NeedsMeasuring, told + ", which leaves no room for dirt or run-out", "the frame maker's figure, or more room than that", Cautions.TyreRoom, [rule.Source, Sources.WidthTolerance])
            : _least >= rule.Millimetres ? new("tyre-clearance", Verdict.Fits, told, "", Cautions.TyreRoom, [rule.Source, Sources.WidthTolerance])
            : _most < rule.Millimetres ? new("tyre-clearance", Verdict.DoesNotFit, told, "a narrower tyre", Cautions.TyreRoom, [rule.Source, Sources.WidthTolerance])
            : new("tyre-clearance", Verdict.NeedsMeasuring, told, "the mounted tyre at riding pressure, by caliper", Cautions.TyreRoom, [rule.Source, Sources.WidthTolerance]);
        return check.Comparing(("room", _likely, "mm"), (_isMeasured ? "least room" : "room with the largest tyre of the name", _least, "mm"), (_isMeasured ? "most room" : "room with the smallest tyre of the name", _most, "mm"), ("asked for", rule.Millimetres, "mm"));
    }

    /// <summary>"5.2 mm at the closer side, at least 3.1 mm".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{_likely:0.0} mm {_where}, at least {_least:0.0} mm");
}
