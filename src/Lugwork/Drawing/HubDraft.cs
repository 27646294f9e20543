using System.Collections.Immutable;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using UnitsNet;

namespace Lugwork.Drawing;

/// <summary>Rear hub, sprockets and rings from above. x = 0 is the middle plane of the frame, the drive side to the right; y = 0 is the rear axle, forward is up.</summary>
internal static class HubDraft
{
    private const double Pitch = 12.7;
    private const double EndPlate = 7;

    /// <summary>Half of what lies between two rings, and the flanges and the body of a hub: no joint reads them, and they are drawn dashed and without figures.</summary>
    private const double HalfBetweenRings = 4;
    private const double Flange = 27;
    private const double Body = 14;
    private const string Ends = "rear end of the frame";
    private const string HubPart = "rear hub and sprockets";
    private const string RingPart = "ring of the crank";

    public static LineDrawing Of(Build build)
    {
        Frame frame = build.Frame;
        Wheel wheel = build[Slot.RearWheel] as Wheel ?? new();
        Cassette cassette = build[Slot.Cassette] as Cassette ?? new();
        Crankset crank = build[Slot.Crankset] as Crankset ?? new();

        DraftSize end = DraftSize.Of(frame.RearEnd, h => h.OldMicrometres / 1_000d, "rear end, for a hub of", JointInputs.RearEnd, 135);
        DraftSize gap = DraftSize.Of(frame.RearEnd, h => h.GapMicrometres / 1_000d, "between the faces", JointInputs.RearEnd, end.Drawn);
        DraftSize hub = DraftSize.Of(wheel.Hub, h => h.OldMicrometres / 1_000d, "hub over its ends", JointInputs.Hub(Slot.RearWheel), end.Drawn);
        if (!end.IsKnown && hub.IsKnown)
        {
            end = end with { Drawn = hub.Drawn };
            gap = gap with { Drawn = hub.Drawn };
        }

        DraftSize stay = DraftSize.Of(frame.Chainstay, "chainstay", JointInputs.Chainstay, 430);
        DraftSize line = Line(crank);
        RearChainline? rear = Rear(wheel, cassette);
        DraftSize middle = DraftSize.Of(wheel.CassetteChainline, "line of the cassette", JointInputs.CassetteLine, 0);
        DraftSize small = DraftSize.Of(cassette.SmallestSprocket, t => Radius(t.Teeth), "smallest sprocket", JointInputs.SmallestOfCassette, Radius(11));
        DraftSize large = DraftSize.Of(cassette.LargestSprocket, t => Radius(t.Teeth), "largest sprocket", JointInputs.LargestOfCassette, Radius(32));
        Known<ToothCount> teeth = LargestOn(build, crank);
        DraftSize ring = DraftSize.Of(teeth, t => Radius(t.Teeth), "largest ring", JointInputs.LargeRing, Radius(40));

        DraftSize inner = DraftSize.Of(crank.SmallestRing, t => Radius(t.Teeth), "smallest ring", JointInputs.SmallRing, 0.75 * ring.Drawn);
        DraftSize single = DraftSize.Of(wheel.SprocketChainline, "line of the sprocket", JointInputs.SprocketLine, Math.Min(47, (hub.Drawn / 2) - 9));
        bool isSingle = rear is null && (single.IsKnown || (small.IsKnown && small.Drawn == large.Drawn));

        double half = (Math.Max(end.Drawn, hub.Drawn) / 2) + EndPlate;
        double front = -stay.Drawn - ring.Drawn;
        double back = large.Drawn + 6;
        DraftSheet sheet = new("Rear hub, sprockets and chainline", isSingle ? "Seen from above, forward is up, the drive side to the right. The body of the hub is drawn without figures." : "Seen from above, forward is up, the drive side to the right. The body of the hub and the sprockets between the smallest and the largest are drawn without figures.", DraftScale.For(2 * half, back - front, 120, 250));
        sheet.Path("middle plane of the frame", DraftLine.Axis, false, (0, front - 6), (0, back + 4));
        double axle = (wheel.Hub.State == KnownState.Value && wheel.Hub.Value.AxleDiameters is [var first, ..] ? first.Millimeters : 10) / 2;
        sheet.Pair(Ends, DraftTone.Base, end.Drawn / 2, -26, (end.Drawn / 2) + EndPlate, 22, !end.IsKnown);
        sheet.Box(HubPart, DraftTone.Fitted, -hub.Drawn / 2, -axle, hub.Drawn / 2, axle, !hub.IsKnown);
        HubBody(sheet, -(hub.Drawn / 2) + 22, isSingle ? single.Drawn - 7 : rear is null ? (hub.Drawn / 2) - 50 : rear.Largest.Millimeters - 6, axle);
        Mismatch(sheet, end, hub, Math.Max(axle, 7));
        if (isSingle)
        {
            sheet.Box(HubPart, DraftTone.Fitted, single.Drawn - 1, -small.Drawn, single.Drawn + 1, small.Drawn, !small.IsKnown || !single.IsKnown);
            sheet.Measure(single, 0, small.Drawn, single.Drawn, small.Drawn, DraftSide.Bottom);
        }
        else
        {
            Sprockets(sheet, rear, middle, small, large, hub);
        }

        Rings(sheet, crank, teeth, line, ring, inner, stay);
        Chain(sheet, line, stay, rear, middle, isSingle && single.IsKnown ? single : null, HasSeveralRings(crank));

        sheet.Measure(hub, -hub.Drawn / 2, axle, hub.Drawn / 2, axle, DraftSide.Bottom);
        sheet.Measure(end, -end.Drawn / 2, 22, end.Drawn / 2, 22, DraftSide.Bottom);
        if (gap.IsKnown && gap.Drawn != end.Drawn)
        {
            sheet.Measure(gap, -gap.Drawn / 2, 22, gap.Drawn / 2, 22, DraftSide.Bottom);
        }

        sheet.Measure(stay, -half, -stay.Drawn, -half, 0, DraftSide.Left);
        sheet.Measure(line, 0, -stay.Drawn, line.Drawn, -stay.Drawn, DraftSide.Top);
        sheet.Note(DraftTone.Base, frame.RearEnd.State == KnownState.Value ? $"rear end {frame.RearEnd.Value.TradeName}" : "rear end of the frame", -(end.Drawn / 2) - (EndPlate / 2), 14, DraftSide.Left);
        sheet.Note(DraftTone.Fitted, wheel.Hub.State == KnownState.Value ? $"hub {wheel.Hub.Value.TradeName}" : "hub", -hub.Drawn / 4, 0, DraftSide.Left);
        sheet.Called(build, Slot.Frame, Slot.RearWheel, Slot.Cassette, Slot.Crankset);
        sheet.Tell(build, "rear-wheel-in-frame", "cassette-on-freehub-body", "chainline", "chain-angle", "single-chainline");
        return sheet.Finish();
    }

    /// <summary>Pitch radius of teeth: pitch / (2 sin(180 / teeth)).</summary>
    private static double Radius(int teeth) => Pitch / (2 * Math.Sin(Math.PI / teeth));

    /// <summary>The largest ring of the crank; of an arm that says none the one that stands in its own place.</summary>
    private static Known<ToothCount> LargestOn(Build build, Crankset crank) =>
        crank.LargestRing.State == KnownState.Unknown && build[Slot.Chainring] is Chainring apart ? apart.Teeth : crank.LargestRing;

    private static DraftSize Line(Crankset crank)
    {
        if (crank.MeasuredChainline.State is KnownState.Value or KnownState.Measured)
        {
            return DraftSize.Of(crank.MeasuredChainline, "line of the ring", JointInputs.RingLine, 47);
        }

        DraftSize line = DraftSize.Of(crank.Chainline, c => (double)(c.Range.Least + c.Range.Most) / 2, "chainline of the crank", JointInputs.CrankChainline, 47);
        if (crank.Chainline.State != KnownState.Value)
        {
            return line;
        }

        FrontChainline stated = crank.Chainline.Value;
        string middle = stated.MostRings == 1 ? "" : stated.LeastRings == 2 && stated.MostRings == 2 ? ", middle of two rings" : stated.LeastRings == 3 ? ", middle ring of three" : ", middle of its rings";
        string range = stated.Range.Least == stated.Range.Most ? $"{DraftText.Number(line.Drawn)} mm" : $"{DraftText.Number((double)stated.Range.Least)} to {DraftText.Number((double)stated.Range.Most)} mm";
        return line with { Said = range + middle };
    }

    /// <summary>Where the sprockets stand by the model; null where hub or spacing is not known, or there is one sprocket.</summary>
    private static RearChainline? Rear(Wheel wheel, Cassette cassette)
    {
        if (wheel.Hub.State != KnownState.Value || wheel.Hub.Value.GapMicrometres == 0 || cassette.SpacingOrPattern.State != KnownState.Value)
        {
            return null;
        }

        SprocketSpacing spacing = cassette.SpacingOrPattern.Value;
        decimal room = (wheel.Hub.Value.GapMicrometres / 2_000m) - 5 - (spacing.Speeds * spacing.MostMicrometres / 1_000m);
        return spacing.StackMicrometres > 0 && room > 0 ? spacing.InInnerGap(Dimension.OfMillimetres(wheel.Hub.Value.GapMicrometres / 1_000m)) : null;
    }

    private static void Mismatch(DraftSheet sheet, DraftSize end, DraftSize hub, double axle)
    {
        double over = hub.Drawn - end.Drawn;
        if (!end.IsKnown || !hub.IsKnown || over == 0)
        {
            return;
        }

        if (over > 0)
        {
            sheet.Pair("hub wider than the rear end", DraftTone.Clash, end.Drawn / 2, -axle, hub.Drawn / 2, axle);
            sheet.Note(DraftTone.Clash, $"the hub is {DraftText.Number(over)} mm wider than the rear end", hub.Drawn / 2, 0, DraftSide.Right);
        }
        else
        {
            sheet.Note(null, $"gap: the hub is {DraftText.Number(-over)} mm narrower than the rear end", ((end.Drawn / 2) + (hub.Drawn / 2)) / 2, 0, DraftSide.Right);
        }
    }

    /// <summary>How far the sprockets were measured to stand from where the model has them; nothing where nobody measured.</summary>
    private static double Beside(RearChainline? rear, DraftSize middle) => rear is not null && middle.IsKnown ? middle.Drawn - rear.Middle.Millimeters : 0;

    private static void Sprockets(DraftSheet sheet, RearChainline? rear, DraftSize middle, DraftSize small, DraftSize large, DraftSize hub)
    {
        if (rear is null)
        {
            double outer = (hub.Drawn / 2) - 6;
            sheet.Box(HubPart, DraftTone.Fitted, outer - 38, -large.Drawn, outer, large.Drawn, open: true);
            if (middle.IsKnown)
            {
                sheet.Measure(middle, 0, large.Drawn, middle.Drawn, large.Drawn, DraftSide.Bottom);
                return;
            }

            sheet.Measure(DraftSize.Open("middle of the sprockets", outer - 19, "?", JointInputs.SpacingOfCassette.Measure), 0, large.Drawn, outer - 19, large.Drawn, DraftSide.Bottom);
            return;
        }

        Length[] lines = [.. rear.Sprockets];
        bool open = !small.IsKnown || !large.IsKnown;
        for (int i = 0; i < lines.Length; i++)
        {
            double x = lines[i].Millimeters + Beside(rear, middle);
            double radius = lines.Length == 1 ? small.Drawn : small.Drawn + ((large.Drawn - small.Drawn) * i / (lines.Length - 1));
            sheet.Blade(HubPart, x - 0.8, -radius, x + 0.8, radius, open);
        }

        if (middle.IsKnown)
        {
            sheet.Measure(middle, 0, large.Drawn, middle.Drawn, large.Drawn, DraftSide.Bottom);
            return;
        }

        string model = $", by a model right to about {DraftText.Number(RearChainline.ErrorMicrometres / 1_000d)} mm";
        sheet.Measure(DraftSize.Known("smallest sprocket", rear.Smallest.Millimeters, model), 0, small.Drawn, rear.Smallest.Millimeters, small.Drawn, DraftSide.Bottom);
        sheet.Measure(DraftSize.Known("largest sprocket", rear.Largest.Millimeters, model), 0, large.Drawn, rear.Largest.Millimeters, large.Drawn, DraftSide.Bottom);
    }

    /// <summary>The line of the crank is that of the middle of two rings, or of the middle one of three, and none or one of them stands on it.</summary>
    private static bool HasSeveralRings(Crankset crank) =>
        crank.Chainline.State == KnownState.Value
        && (crank.Chainline.Value.LeastRings > 1 || (crank.Chainline.Value.MostRings > 1 && crank.SmallestRing.State == KnownState.Value && crank.LargestRing.State == KnownState.Value && crank.SmallestRing.Value != crank.LargestRing.Value));

    private static void Rings(DraftSheet sheet, Crankset crank, Known<ToothCount> largest, DraftSize line, DraftSize ring, DraftSize inner, DraftSize stay)
    {
        bool several = HasSeveralRings(crank);
        bool three = several && crank.Chainline.Value.LeastRings == 3;
        (double Off, double Radius)[] rings = !several ? [(0, ring.Drawn)]
            : three ? [(2 * HalfBetweenRings, ring.Drawn), (0, (ring.Drawn + inner.Drawn) / 2), (-2 * HalfBetweenRings, inner.Drawn)]
            : [(HalfBetweenRings, ring.Drawn), (-HalfBetweenRings, inner.Drawn)];
        foreach ((double off, double radius) in rings)
        {
            sheet.Box(RingPart, DraftTone.Between, line.Drawn + off - 1.5, -stay.Drawn - radius, line.Drawn + off + 1.5, -stay.Drawn + radius, several || !line.IsKnown || !ring.IsKnown || !stay.IsKnown);
        }

        string teeth = largest.State == KnownState.Value ? $", {largest.Value.Teeth} teeth{(several ? " the largest" : "")}" : "";
        sheet.Note(DraftTone.Between, several ? $"{(three ? "three" : "two")} rings{teeth}; how far apart is not known" : $"ring{teeth}", line.Drawn + rings[0].Off, -stay.Drawn - (ring.Drawn / 2), DraftSide.Right);
    }

    /// <summary>Runs of the chain from one ring, or the chainline where no ring stands on it.</summary>
    private static void Chain(DraftSheet sheet, DraftSize line, DraftSize stay, RearChainline? rear, DraftSize middle, DraftSize? single, bool several)
    {
        double beside = Beside(rear, middle);
        if (!line.IsKnown)
        {
            return;
        }

        if (several)
        {
            sheet.Path("chainline", DraftLine.Axis, false, (line.Drawn, -stay.Drawn), (line.Drawn, 0));
        }
        else if (rear is not null)
        {
            sheet.Path("chain on the smallest sprocket", DraftLine.Thin, !stay.IsKnown, (line.Drawn, -stay.Drawn), (rear.Smallest.Millimeters + beside, 0));
            sheet.Path("chain on the largest sprocket", DraftLine.Thin, !stay.IsKnown, (line.Drawn, -stay.Drawn), (rear.Largest.Millimeters + beside, 0));
            if (stay is { IsKnown: true, Drawn: >= 200 and <= 2_000 } && line.Drawn <= 300 && line.Drawn - beside is >= 1 and <= 300)
            {
                ChainlineStudy study = ChainlineStudy.Of([Length.FromMillimeters(line.Drawn - beside)], rear, Length.FromMillimeters(stay.Drawn));
                double degrees = study.Worst.Angle.Degrees;
                sheet.Note(null, $"steepest run {DraftText.Number(Math.Abs(degrees), 1)} degrees, to the {(study.Worst.Sprocket == 1 ? "smallest" : "largest")} sprocket", (line.Drawn + rear.Largest.Millimeters + beside) / 2, -stay.Drawn / 2, DraftSide.Right);
            }
        }
        else if (single is not null)
        {
            sheet.Path("chain", DraftLine.Thin, !stay.IsKnown, (line.Drawn, -stay.Drawn), (single.Drawn, 0));
        }

        if (rear is not null || middle.IsKnown)
        {
            double off = line.Drawn - (middle.IsKnown ? middle.Drawn : rear!.Middle.Millimeters);
            sheet.Say($"The {(several ? "chainline of the crank" : "ring")} stands {DraftText.Number(Math.Abs(off), 1)} mm {(off < 0 ? "inside" : "outside")} the middle of the sprockets, {(middle.IsKnown ? "as measured" : "by the model")}.");
        }
    }

    /// <summary>Two flanges and what is between them, or a plain body where there is no room for flanges.</summary>
    private static void HubBody(DraftSheet sheet, double left, double right, double axle)
    {
        if (right - left < 30)
        {
            if (right > left)
            {
                sheet.Area(HubPart, DraftTone.Fitted, true, (left, -Body), (right, -Body), (right, Body), (left, Body));
            }

            return;
        }

        double slope = Math.Max(axle + 2, Body);
        ImmutableArray<(double X, double Y)> upper = [(left, -Flange), (left + 3, -Flange), (left + 9, -slope), (right - 9, -slope), (right - 3, -Flange), (right, -Flange)];
        sheet.Area(HubPart, DraftTone.Fitted, true, [.. upper, .. upper.Reverse().Select(p => (p.X, -p.Y))]);
    }
}
