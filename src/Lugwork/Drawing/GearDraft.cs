using System.Globalization;
using Lugwork.Drivetrain;

namespace Lugwork.Drawing;

/// <summary>Every gear as a bar, as long as the way that one turn of the cranks makes, to scale; lowest first.</summary>
internal static class GearDraft
{
    /// <summary>From one bar to the next, and how thick one is, millimetres of the sheet.</summary>
    private const double Step = 4.6;
    private const double Bar = 2.8;

    public static LineDrawing Of(GearTable gears)
    {
        double rolled = gears.RolledCircumference.Millimeters;
        double longest = gears.Gears[^1].Ratio * rolled;
        double scale = DraftScale.For(longest, 1, 115, double.MaxValue);
        DraftTone[] tones = [DraftTone.Fitted, DraftTone.Base, DraftTone.Between];
        DraftSheet sheet = new("Gears", $"A bar for each gear, as long as the way of one turn of the cranks; {DraftText.Number(rolled, 1)} mm rolled. Lowest gear first.", scale);
        for (int i = 0; i < gears.Gears.Length; i++)
        {
            Gear gear = gears.Gears[i];
            double way = gear.Ratio * rolled;
            double top = i * Step / scale;
            int ring = gears.Rings.IndexOf(gear.Ring);
            bool near = i > 0 && Math.Abs(Math.Log(gear.Ratio / gears.Gears[i - 1].Ratio)) < GearTable.UsualTolerancePercent / 100;
            string called = gears.Hub is { } hub ? string.Create(CultureInfo.InvariantCulture, $"{gear.Ring}/{gear.Sprocket}, hub gear {hub.Ratios.IndexOf(gear.Hub) + 1}") : gear.ToString();
            sheet.Box($"ring {gear.Ring}", tones[Math.Min(ring, 2)], 0, top, way, top + (Bar / scale));
            sheet.Label(called, 0, top + (Bar / scale / 2), -1.5, 0, 1);
            string step = i == 0 ? "" : $", step {Gearing.StepPercent(gears.Gears[i - 1].Ratio, gear.Ratio).ToString("0.0", CultureInfo.InvariantCulture)} %{(near ? " (nearly one gear)" : "")}";
            sheet.Label($"{(way / 1_000).ToString("0.00", CultureInfo.InvariantCulture)} m{step}", way, top + (Bar / scale / 2), 1.5);
            sheet.Way(called, way, top + (Bar / scale / 2));
        }

        sheet.Path("one turn of the cranks makes nothing", DraftLine.Plain, false, (0, -1.5 / scale), (0, ((gears.Gears.Length * Step) - 0.5) / scale));
        if (gears.Gears.Length > 1)
        {
            sheet.Say($"Range {DraftText.Number(gears.RangePercent, 1)} %, {gears.Gears.Length} gears, {gears.CountOfDifferent()} that differ by {DraftText.Number(GearTable.UsualTolerancePercent)} % or more.");
        }

        return sheet.Finish();
    }

    /// <summary>The bar itself is the measured line.</summary>
    private static void Way(this DraftSheet sheet, string name, double way, double y) =>
        sheet.Bars.Add(new(new(name, way / 1_000, way / 1_000, $"{(way / 1_000).ToString("0.00", CultureInfo.InvariantCulture)} m"), (0, y), (way, y), DraftSide.Top, "m", 1 / sheet.Scale / 1_000));
}
