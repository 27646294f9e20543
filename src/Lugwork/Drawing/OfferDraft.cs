using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork.Drawing;

/// <summary>Price against mass: a point for each offer, and a line through those that none beats in both.</summary>
internal static class OfferDraft
{
    /// <summary>The field of the chart, millimetres of the sheet.</summary>
    private const double Wide = 120;
    private const double Tall = 90;

    public static LineDrawing Of(ImmutableArray<(string Name, decimal Price, decimal Kilograms)> offers, string currency)
    {
        double dearest = offers.Max(o => (double)o.Price);
        double heaviest = offers.Max(o => (double)o.Kilograms);
        double money = Nice(dearest / Wide * 1.08);
        double mass = Nice(heaviest / Tall * 1.08);
        string unit = DraftText.Clean(currency);
        DraftSheet sheet = new("Price and mass", $"Price in {unit} to the right, mass in kg upwards. The line goes through the offers that no other beats in both; they have a thick ring and an asterisk in the rows.", 1, $"1 mm stands for {money.ToString("0.#########", CultureInfo.InvariantCulture)} {unit} to the right and {mass.ToString("0.#########", CultureInfo.InvariantCulture)} kg upwards");
        sheet.Path("axes", DraftLine.Plain, false, (0, -Tall), (0, 0), (Wide, 0));
        Ticks(sheet, money, mass);
        sheet.Label(DraftText.Wrap($"price, {unit}", 60, DraftStyle.Size, 1) is [var axis] ? axis : "price", Wide, 0, 0, 8.5, 1);
        sheet.Label("mass, kg", 0, -Tall, -2, -4.5, 0);
        int[] order = [.. Enumerable.Range(0, offers.Length).OrderBy(i => offers[i].Price).ThenBy(i => offers[i].Kilograms).ThenBy(i => i)];
        List<(double X, double Y)> front = [];
        sheet.Rows.Add(["", $"price, {unit}", "mass, kg"]);
        decimal lightest = decimal.MaxValue;
        for (int rank = 0; rank < order.Length; rank++)
        {
            (string name, decimal price, decimal kilograms) = offers[order[rank]];
            bool best = kilograms < lightest;
            lightest = Math.Min(lightest, kilograms);
            (double x, double y) = ((double)price / money, -(double)kilograms / mass);
            if (best)
            {
                front.AddRange(front.Count > 0 ? [(x, front[^1].Y), (x, y)] : [(x, y)]);
            }

            string number = (rank + 1).ToString(CultureInfo.InvariantCulture);
            sheet.Ring(best ? "offer that none beats" : "offer", best ? DraftTone.Base : DraftTone.Fitted, x, y, best ? 1.6 : 1.2, line: best ? DraftLine.Heavy : DraftLine.Plain);
            sheet.Loose.Add(new(number, (x, y), DraftSide.Right));
            sheet.Rows.Add([$"{number}{(best ? "*" : "")}: {name}", price.ToString("0.00", CultureInfo.InvariantCulture), kilograms.ToString("0.000", CultureInfo.InvariantCulture)]);
            sheet.Bars.Add(new(new($"{number} price", (double)price, (double)price, $"{price.ToString("0.00", CultureInfo.InvariantCulture)} {unit}"), (0, y), (x, y), DraftSide.Top, unit, money));
            sheet.Bars.Add(new(new($"{number} mass", (double)kilograms, (double)kilograms, $"{kilograms.ToString("0.000", CultureInfo.InvariantCulture)} kg"), (x, 0), (x, y), DraftSide.Right, "kg", mass));
        }

        sheet.Path("line of the best", DraftLine.Heavy, false, [.. front]);
        return sheet.Finish();
    }

    private static void Ticks(DraftSheet sheet, double money, double mass)
    {
        for (int i = 0; i <= 6; i++)
        {
            double x = i * Wide / 6;
            sheet.Path("", DraftLine.Thin, false, (x, 0), (x, 1.5));
            sheet.Label(DraftText.Number(x * money), x, 0, 0, 4, 0.5);
        }

        for (int i = 1; i <= 6; i++)
        {
            double y = -i * Tall / 6;
            sheet.Path("", DraftLine.Thin, false, (0, y), (-1.5, y));
            sheet.Label(DraftText.Number(-y * mass), 0, y, -2.5, 0, 1);
        }
    }

    /// <summary>The next of 1, 2 and 5 times a power of ten.</summary>
    private static double Nice(double least)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        foreach (double step in new[] { 1.0, 2.0, 5.0 })
        {
            if (step * power >= least)
            {
                return Math.Round(step * power, 9);
            }
        }

        return Math.Round(10 * power, 9);
    }
}
