using System.Globalization;
using Lugwork.Geometry;

namespace Lugwork.Drawing;

/// <summary>A frame from the right, on the ground; with another after a change over it. The rear axles stand on one upright line, the ground is level.</summary>
internal static class GeometryDraft
{
    public static LineDrawing Of(FrameGeometry before, FrameGeometry? after)
    {
        DraftBicycle first = new(before);
        DraftBicycle second = new(after ?? before);
        double wide = Math.Max(first.Wide, second.Wide);
        double tall = Math.Max(first.Tall, second.Tall);
        DraftSheet sheet = new(
            after is null ? "Frame geometry" : "Frame geometry, before and after",
            after is null ? "Seen from the right, on level ground; axles, tubes and the steering axis as lines." : "Seen from the right, on level ground; thin is 1, before the change, heavy is 2, after it. The rear axles stand on one upright line.",
            DraftScale.For(wide, tall, 230, 140));
        if (after is not null)
        {
            Draw(sheet, first, DraftLine.Plain, " before");
            Draw(sheet, second, DraftLine.Heavy, " after");
            sheet.Label("1", first.HeadTop.X, first.HeadTop.Y, -4.5, -1.5, 0.5);
            sheet.Label("2", second.HeadTop.X, second.HeadTop.Y, 4.5, -1.5, 0.5);
        }
        else
        {
            Draw(sheet, first, DraftLine.Heavy, "");
        }

        sheet.Path("ground", DraftLine.Plain, false, (-Math.Max(before.RearRadius.Millimeters, second.RearRadius), 0), (wide - Math.Max(before.RearRadius.Millimeters, second.RearRadius), 0));
        Dimensions(sheet, first, after is null ? "" : " before");
        if (after is not null)
        {
            Dimensions(sheet, second, " after");
        }

        Table(sheet, before, after);
        return sheet.Finish();
    }

    private static void Draw(DraftSheet sheet, DraftBicycle f, DraftLine line, string when)
    {
        sheet.Ring("rear wheel" + when, null, 0, -f.RearRadius, f.RearRadius, line: line);
        sheet.Ring("front wheel" + when, null, f.FrontAxle.X, f.FrontAxle.Y, f.FrontRadius, line: line);
        sheet.Path("chainstay" + when, line, false, f.RearAxle, f.Bracket);
        sheet.Path("down tube" + when, line, false, f.Bracket, f.HeadFoot);
        sheet.Path("head tube" + when, line, false, f.HeadTop, f.HeadFoot);
        sheet.Path("fork" + when, line, false, f.HeadFoot, f.FrontAxle);
        sheet.Path("fork offset" + when, DraftLine.Thin, false, f.AxisBesideAxle, f.FrontAxle);
        sheet.Path("steering axis" + when, DraftLine.Axis, false, f.AxisAbove, f.AxisOnGround);
        if (f.SeatTop is { } seat)
        {
            sheet.Path("seat tube" + when, line, false, f.Bracket, seat);
            sheet.Path("effective top tube" + when, DraftLine.Thin, false, seat, f.HeadTop);
            sheet.Path("seat stay" + when, DraftLine.Thin, false, f.RearAxle, seat);
        }
    }

    private static void Dimensions(DraftSheet sheet, DraftBicycle f, string when)
    {
        sheet.Measure(Rounded("reach" + when, f.HeadTop.X - f.Bracket.X), f.Bracket.X, f.Bracket.Y, f.HeadTop.X, f.HeadTop.Y, DraftSide.Top);
        sheet.Measure(Rounded("stack" + when, f.Bracket.Y - f.HeadTop.Y), f.HeadTop.X, f.HeadTop.Y, f.Bracket.X, f.Bracket.Y, DraftSide.Right);
        sheet.Measure(Rounded("bottom-bracket height" + when, -f.Bracket.Y), f.Bracket.X, f.Bracket.Y, f.Bracket.X, 0, DraftSide.Left);
        sheet.Measure(Rounded("wheelbase" + when, f.FrontAxle.X), 0, f.RearAxle.Y, f.FrontAxle.X, f.FrontAxle.Y, DraftSide.Bottom);
        sheet.Measure(Rounded("trail" + when, f.AxisOnGround.X - f.FrontAxle.X), f.FrontAxle.X, 0, f.AxisOnGround.X, 0, DraftSide.Bottom);
    }

    /// <summary>Said to a tenth, as the rows below say it.</summary>
    private static DraftSize Rounded(string name, double millimetres) => DraftSize.Known(name, millimetres) with { Said = $"{DraftText.Number(millimetres, 1)} mm" };

    private static void Table(DraftSheet sheet, FrameGeometry before, FrameGeometry? after)
    {
        if (after is not null)
        {
            sheet.Rows.Add(["", "1 before", "2 after", "change"]);
        }

        Row("head angle", g => g.HeadAngle.Degrees, "\u00B0", 2);
        if (before.SeatAngle is not null && (after ?? before).SeatAngle is not null)
        {
            Row("seat angle", g => g.SeatAngle!.Value.Degrees, "\u00B0", 2);
        }

        Row("reach", g => g.Reach.Millimeters, " mm", 1);
        Row("stack", g => g.Stack.Millimeters, " mm", 1);
        Row("trail", g => g.Trail.Millimeters, " mm", 1);
        Row("bottom-bracket height", g => g.BottomBracketHeight.Millimeters, " mm", 1);
        Row("wheelbase", g => g.Wheelbase.Millimeters, " mm", 1);
        Row("front centre", g => g.FrontCentre.Millimeters, " mm", 1);
        Row("chainstay", g => g.Chainstay.Millimeters, " mm", 1);
        Row("axle to crown", g => g.AxleToCrown.Millimeters, " mm", 1);
        Row("fork offset", g => g.ForkOffset.Millimeters, " mm", 1);
        Row("rear wheel radius", g => g.RearRadius.Millimeters, " mm", 1);
        Row("front wheel radius", g => g.FrontRadius.Millimeters, " mm", 1);

        void Row(string name, Func<FrameGeometry, double> figure, string unit, int places)
        {
            string format = places == 2 ? "0.00" : "0.0";
            string one = figure(before).ToString(format, CultureInfo.InvariantCulture) + unit;
            if (after is null)
            {
                sheet.Rows.Add([name, one]);
                return;
            }

            double change = Math.Round(figure(after) - figure(before), places);
            sheet.Rows.Add([name, one, figure(after).ToString(format, CultureInfo.InvariantCulture) + unit, change.ToString($"+{format};-{format};0", CultureInfo.InvariantCulture) + unit]);
        }
    }

    /// <summary>A frame in the axes of the sheet: x forward of the rear axle, y down from the ground.</summary>
    private sealed class DraftBicycle
    {
        public DraftBicycle(FrameGeometry g)
        {
            double ground = g.RearAxle.YMillimetres - g.RearRadius.Millimeters;
            (double X, double Y) Put(double x, double y) => (x - g.RearAxle.XMillimetres, ground - y);
            (double sin, double cos) = Math.SinCos(g.HeadAngle.Radians);
            RearRadius = g.RearRadius.Millimeters;
            FrontRadius = g.FrontRadius.Millimeters;
            RearAxle = Put(g.RearAxle.XMillimetres, g.RearAxle.YMillimetres);
            FrontAxle = Put(g.FrontAxle.XMillimetres, g.FrontAxle.YMillimetres);
            Bracket = Put(0, 0);
            HeadTop = Put(g.HeadTubeTop.XMillimetres, g.HeadTubeTop.YMillimetres);
            HeadFoot = Put(g.HeadTubeBottom.XMillimetres, g.HeadTubeBottom.YMillimetres);
            double x = g.FrontAxle.XMillimetres - (g.ForkOffset.Millimeters * sin);
            double y = g.FrontAxle.YMillimetres - (g.ForkOffset.Millimeters * cos);
            AxisBesideAxle = Put(x, y);
            double above = g.HeadTubeTop.YMillimetres + 30;
            AxisAbove = Put(x - ((above - y) * cos / sin), above);
            AxisOnGround = Put(x + ((y - ground) * cos / sin), ground);
            SeatTop = g.EffectiveTopTube is { } tube ? Put(g.HeadTubeTop.XMillimetres - tube.Millimeters, g.HeadTubeTop.YMillimetres) : null;
        }

        public double RearRadius { get; }

        public double FrontRadius { get; }

        public (double X, double Y) RearAxle { get; }

        public (double X, double Y) FrontAxle { get; }

        public (double X, double Y) Bracket { get; }

        public (double X, double Y) HeadTop { get; }

        public (double X, double Y) HeadFoot { get; }

        public (double X, double Y) AxisBesideAxle { get; }

        public (double X, double Y) AxisOnGround { get; }

        public (double X, double Y) AxisAbove { get; }

        public (double X, double Y)? SeatTop { get; }

        public double Wide => RearRadius + FrontAxle.X + FrontRadius;

        public double Tall => Math.Max(-HeadTop.Y + 30, 2 * Math.Max(RearRadius, FrontRadius));
    }
}
