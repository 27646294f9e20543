using Lugwork.Geometry;

namespace Lugwork;

/// <summary>Hoses and housing estimated from the points of a frame and the width of a flat bar: to buy by, never to cut by.</summary>
internal static class LineEstimates
{
    /// <summary>For the loop before the head tube, for lever and brake, and for what is cut off. Our own, no source.</summary>
    internal const double Allowance = 200;

    /// <summary>The figure with an estimate, where it is a line of which nothing is stated and the bar is known to be flat; else as it is. The way to a rear rim brake, along top tube or seat tube, is not estimated.</summary>
    public static WorkFigure Of(WorkFigure figure, Build build, FrameGeometry frame)
    {
        if (figure.IsKnown || build.IsDropBar() != false || build.As<Handlebar>(Slot.Handlebar)?.Width is not { State: KnownState.Value } width)
        {
            return figure;
        }

        double half = width.Value.Length.Millimeters / 2;
        return figure.Id switch
        {
            "front-brake-line" when build.Has(Slot.FrontRimBrake) && !build.Has(Slot.FrontBrake) => Told(figure, half + frame.HeadTube.Millimeters + frame.LowerStack.Millimeters, "half the bar and head tube, down to the crown"),
            "rear-brake-line" when build.Has(Slot.RearRimBrake) && !build.Has(Slot.RearBrake) => figure,
            "front-brake-line" => Told(figure, half + frame.HeadTube.Millimeters + frame.LowerStack.Millimeters + frame.AxleToCrown.Millimeters, "half the bar, head tube and fork"),
            "rear-brake-line" or "shift-line" => Told(figure, half + Down(frame) + frame.Chainstay.Millimeters, "half the bar, down tube and chainstay"),
            "front-shift-line" => Told(figure, half + Down(frame), "half the bar and down tube"),
            _ => figure,
        };
    }

    /// <summary>Lower end of the head tube to the bottom bracket, which is the origin.</summary>
    private static double Down(FrameGeometry frame) => double.Hypot(frame.HeadTubeBottom.X.Millimeters, frame.HeadTubeBottom.Y.Millimeters);

    private static WorkFigure Told(WorkFigure figure, double path, string along) => figure with
    {
        Value = path + Allowance,
        Lacking = [],
        Words = FormattableString.Invariant($"an estimate to buy by: {along}, and {Allowance:0} mm of our own for loop, ends and waste; cut it by the path, with the bar turned fully"),
        Sources = [Sources.Derived],
    };
}
