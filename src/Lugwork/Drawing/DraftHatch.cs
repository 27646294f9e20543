namespace Lugwork.Drawing;

/// <summary>Hatching of an area as plain lines: no pattern has to be named, so that many drawings can stand on one page.</summary>
internal static class DraftHatch
{
    /// <summary>No area takes more lines than this in one direction; a large one is hatched wider.</summary>
    private const int Most = 90;

    /// <summary>Adds the lines at one angle; the area may have any form and a hole.</summary>
    public static void Add(List<((double X, double Y) From, (double X, double Y) To)> strokes, ReadOnlySpan<(double X, double Y)> outline, ReadOnlySpan<(double X, double Y)> hole, double degrees, double spacing)
    {
        // Across: square to the lines. Along: on them. Up to the right is a falling y.
        (double sin, double cos) = Math.SinCos(-degrees * Math.PI / 180);
        double low = double.MaxValue;
        double high = double.MinValue;
        foreach ((double x, double y) in outline)
        {
            double across = (y * cos) - (x * sin);
            (low, high) = (Math.Min(low, across), Math.Max(high, across));
        }

        double step = Math.Max(spacing, (high - low) / Most);
        List<double> cuts = [];
        for (double at = low + (step / 2); at < high; at += step)
        {
            cuts.Clear();
            Cut(cuts, outline, sin, cos, at);
            Cut(cuts, hole, sin, cos, at);
            cuts.Sort();
            for (int i = 0; i + 1 < cuts.Count; i += 2)
            {
                strokes.Add((((cuts[i] * cos) - (at * sin), (cuts[i] * sin) + (at * cos)), ((cuts[i + 1] * cos) - (at * sin), (cuts[i + 1] * sin) + (at * cos))));
            }
        }
    }

    /// <summary>Where a line meets an outline, along the line.</summary>
    private static void Cut(List<double> cuts, ReadOnlySpan<(double X, double Y)> outline, double sin, double cos, double at)
    {
        for (int i = 0; i < outline.Length; i++)
        {
            (double x1, double y1) = outline[i];
            (double x2, double y2) = outline[(i + 1) % outline.Length];
            double from = (y1 * cos) - (x1 * sin) - at;
            double to = (y2 * cos) - (x2 * sin) - at;
            if ((from > 0) != (to > 0))
            {
                double part = from / (from - to);
                cuts.Add(((x1 + (part * (x2 - x1))) * cos) + ((y1 + (part * (y2 - y1))) * sin));
            }
        }
    }
}
