using System.Collections.Immutable;
using Lugwork.Geometry;
using Lugwork.Seating;

namespace Lugwork;

/// <summary>Hoses and housing estimated from the points of a frame and the width of its bar: to buy by, never to cut by.</summary>
internal static class LineEstimates
{
    /// <summary>Id of the housing of a dropper.</summary>
    public const string Dropper = "dropper-line";

    /// <summary>For the loop before the head tube, for lever and brake, and for what is cut off. Our own, no source.</summary>
    internal const double Allowance = 200;

    /// <summary>From the lever of a drop bar along its bend to the straight middle. No field tells the reach of a bar. Our own, no source.</summary>
    internal const double Bend = 120;

    private static readonly ImmutableArray<string> Lines = ["front-brake-line", "rear-brake-line", "shift-line", "front-shift-line", Dropper];

    /// <summary>The figure with an estimate, where it is a line of which nothing is stated and the way is known as far as it can be; else as it is, with what an estimate takes.</summary>
    public static WorkFigure Of(WorkFigure figure, Build build, FrameGeometry frame)
    {
        if (figure.IsKnown || !Lines.Contains(figure.Id))
        {
            return figure;
        }

        string[] lacking = [.. Lacking(figure, build, frame)];
        if (lacking.Length > 0)
        {
            return figure with { Lacking = [.. figure.Lacking, .. lacking.Select(l => $"for an estimate {l}")] };
        }

        (double bar, string along) = AlongBar(build);
        return figure.Id switch
        {
            "front-brake-line" when EndsAtCrown(build) => Told(figure, bar + frame.HeadTube.Millimeters + frame.LowerStack.Millimeters, $"{along} and head tube, down to the crown", build),
            "front-brake-line" => Told(figure, bar + frame.HeadTube.Millimeters + frame.LowerStack.Millimeters + frame.AxleToCrown.Millimeters, $"{along}, head tube and fork", build),
            "front-shift-line" => Told(figure, bar + Down(frame), $"{along} and down tube", build),
            "rear-brake-line" when EndsAtRim(build) => RimLine(figure, build, frame, bar, along),
            Dropper when build.IsDropperInside() == false => OutsideLine(figure, build, frame, bar, along),
            Dropper => DropperLine(figure, build, bar + Down(frame), along),
            _ => Told(figure, bar + Down(frame) + frame.Chainstay.Millimeters, $"{along}, down tube and chainstay", build),
        };
    }

    /// <summary>What the way of a line takes that neither this build nor the chart says.</summary>
    private static IEnumerable<string> Lacking(WorkFigure figure, Build build, FrameGeometry frame)
    {
        if (build.IsDropBar() is null)
        {
            yield return "whether the bar is a drop bar or a flat one";
        }

        if (build.As<Handlebar>(Slot.Handlebar)?.Width is not { State: KnownState.Value })
        {
            yield return "the width of the bar";
        }

        bool atRim = figure.Id == "rear-brake-line" && EndsAtRim(build);
        bool? inside = figure.Id == Dropper ? build.IsDropperInside() : true;
        if (inside is null)
        {
            yield return "whether it runs inside the frame or outside";
        }

        if ((atRim || inside == false) && frame.SeatAngle is null)
        {
            yield return "the seat angle of the chart";
        }

        if ((atRim || figure.Id == Dropper) && build.Frame.SeatTubeLength is not { State: KnownState.Value })
        {
            yield return "the length of the seat tube";
        }

        if (atRim && SeatOf(build) is null)
        {
            yield return "the bead seat of the rear wheel";
        }

        if (inside == false && build.As<Dropper>(Slot.Dropper) is { } dropper)
        {
            if (dropper.Travel.State != KnownState.Value)
            {
                yield return "the travel of the dropper";
            }

            if (dropper.Stack.State != KnownState.Value)
            {
                yield return "the stack of the dropper, since the line may end at its head";
            }
        }
    }

    /// <summary>From the lever to the middle of the bar. A dropper's lever may stand on the straight part of a drop bar: then the line is long enough.</summary>
    private static (double Length, string Along) AlongBar(Build build)
    {
        double half = build.As<Handlebar>(Slot.Handlebar)!.Width.Value.Length.Millimeters / 2;
        return build.IsDropBar() == true ? (half + Bend, FormattableString.Invariant($"{Bend:0} mm of our own along the bend of the drop bar, half the bar")) : (half, "half the bar");
    }

    private static bool EndsAtCrown(Build build) => build.Has(Slot.FrontRimBrake) && !build.Has(Slot.FrontCaliper);

    /// <summary>Down to the bottom bracket, and up the seat tube to the lower end of the post, where its depth is known; else the whole seat tube, which is long enough.</summary>
    private static WorkFigure DropperLine(WorkFigure figure, Build build, double toBracket, string along)
    {
        double tube = build.Frame.SeatTubeLength.Value.Length.Millimeters;
        double? deep = build.As<Seatpost>(Slot.Seatpost)?.Insertion is { State: KnownState.Value } depth ? depth.Value.Length.Millimeters : null;
        return deep is { } post && post < tube
            ? Told(figure, toBracket + tube - post, $"{along}, down tube, and seat tube up to the end of the post", build)
            : Told(figure, toBracket + tube, $"{along}, down tube and the whole seat tube, since the depth of the post is not known", build);
    }

    private static bool EndsAtRim(Build build) => build.Has(Slot.RearRimBrake) && !build.Has(Slot.RearCaliper);

    /// <summary>Diameter of the bead seat of the rear rim, by the wheel, else by its tyre.</summary>
    private static double? SeatOf(Build build) =>
        build.As<Wheel>(Slot.RearWheel)?.BeadSeat is { State: KnownState.Value } rim ? rim.Value.Diameter.Millimeters
        : build.As<Tyre>(Slot.RearTyre)?.Size is { State: KnownState.Value } tyre ? tyre.Value.Bead.Diameter.Millimeters : null;

    /// <summary>Top of the seat tube, which is taken as straight through the bottom bracket at the seat angle of the chart.</summary>
    private static (double X, double Y) SeatTop(Build build, FrameGeometry frame)
    {
        double angle = frame.SeatAngle!.Value.Radians;
        double length = build.Frame.SeatTubeLength.Value.Length.Millimeters;
        return (-length * Math.Cos(angle), length * Math.Sin(angle));
    }

    private static double AlongTopTube((double X, double Y) top, FrameGeometry frame) => double.Hypot(frame.HeadTubeTop.X.Millimeters - top.X, frame.HeadTubeTop.Y.Millimeters - top.Y);

    /// <summary>Top tube to the seat tube, and down the seat stay to the rim.</summary>
    private static WorkFigure RimLine(WorkFigure figure, Build build, FrameGeometry frame, double bar, string along)
    {
        (double X, double Y) top = SeatTop(build, frame);
        double stay = double.Hypot(frame.RearAxle.X.Millimeters - top.X, frame.RearAxle.Y.Millimeters - top.Y) - (SeatOf(build)!.Value / 2);
        return Told(figure, bar + AlongTopTube(top, frame) + Math.Max(0, stay), $"{along}, top tube, and seat stay down to the rim{Straight}", build);
    }

    /// <summary>Top tube to the seat tube, then the post that stands out fully up: a line that ends at the collar is shorter, and the loop of the travel is the same.</summary>
    private static WorkFigure OutsideLine(WorkFigure figure, Build build, FrameGeometry frame, double bar, string along)
    {
        Dropper dropper = build.As<Dropper>(Slot.Dropper)!;
        return Told(figure, bar + AlongTopTube(SeatTop(build, frame), frame) + dropper.Travel.Value.Length.Millimeters + dropper.Stack.Value.Length.Millimeters, $"{along}, top tube, and the post up to its head fully up, should the line end there{Straight}", build);
    }

    private const string Straight = "; tubes are taken as straight, the seat tube through the bottom bracket at the seat angle of the chart";

    /// <summary>Lower end of the head tube to the bottom bracket, which is the origin.</summary>
    private static double Down(FrameGeometry frame) => double.Hypot(frame.HeadTubeBottom.X.Millimeters, frame.HeadTubeBottom.Y.Millimeters);

    private static WorkFigure Told(WorkFigure figure, double path, string along, Build build) => figure with
    {
        Value = Math.Ceiling((path + Allowance) / Step) * Step,
        Lacking = [],
        Words = FormattableString.Invariant($"an estimate to buy by, never to cut by: {along}, and {Allowance:0} mm of our own for loop, ends and waste; not known are {Unknown(build)}"),
        Sources = [Sources.Derived],
    };

    /// <summary>An estimate is rounded up to this. Our own, no source.</summary>
    internal const double Step = 10;

    private static string Unknown(Build build) => build.IsDropBar() == true ? "stem, reach of the bar, ports and stops" : "stem, ports and stops";
}
