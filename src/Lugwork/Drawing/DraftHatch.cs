namespace Lugwork.Drawing;

/// <summary>Hatching of an area as plain lines: no pattern has to be named, so that many drawings can stand on one page.</summary>
internal static class DraftHatch
{
    /// <summary>No area takes more lines than this in one direction; a large one is hatched wider.</summary>
    private const int Most = 90;

    /// <summary>Points of an outline and its hole whose places are kept on the stack; a form has seldom more.</summary>
    private const int OnStack = 128;

    /// <summary>Adds the lines at one angle; the area may have any form and a hole.</summary>
    public static void Add(List<((double X, double Y) From, (double X, double Y) To)> strokes, ReadOnlySpan<(double X, double Y)> outline, ReadOnlySpan<(double X, double Y)> hole, double degrees, double spacing)
    {
        // Across: square to the lines. Along: on them. Up to the right is a falling y.
        (double sin, double cos) = Math.SinCos(-degrees * Math.PI / 180);
        Span<double> across = outline.Length + hole.Length <= OnStack ? stackalloc double[OnStack] : new double[outline.Length + hole.Length];
        Span<double> around = across[..outline.Length];
        Span<double> within = across.Slice(outline.Length, hole.Length);
        Across(outline, sin, cos, around);
        Across(hole, sin, cos, within);
        double low = double.MaxValue;
        double high = double.MinValue;
        foreach (double place in around)
        {
            (low, high) = (Math.Min(low, place), Math.Max(high, place));
        }

        double step = Math.Max(spacing, (high - low) / Most);
        List<double> cuts = [];
        for (double at = low + (step / 2); at < high; at += step)
        {
            cuts.Clear();
            Cut(cuts, outline, around, sin, cos, at);
            Cut(cuts, hole, within, sin, cos, at);
            cuts.Sort();
            for (int i = 0; i + 1 < cuts.Count; i += 2)
            {
                strokes.Add((((cuts[i] * cos) - (at * sin), (cuts[i] * sin) + (at * cos)), ((cuts[i + 1] * cos) - (at * sin), (cuts[i + 1] * sin) + (at * cos))));
            }
        }
    }

    private static void Across(ReadOnlySpan<(double X, double Y)> outline, double sin, double cos, Span<double> across)
    {
        for (int i = 0; i < outline.Length; i++)
        {
            across[i] = (outline[i].Y * cos) - (outline[i].X * sin);
        }
    }

    /// <summary>Where a line meets an outline, along the line.</summary>
    private static void Cut(List<double> cuts, ReadOnlySpan<(double X, double Y)> outline, ReadOnlySpan<double> across, double sin, double cos, double at)
    {
        for (int i = 0; i < outline.Length; i++)
        {
            int next = i + 1 == outline.Length ? 0 : i + 1;
            double from = across[i] - at;
            double to = across[next] - at;
            if ((from > 0) != (to > 0))
            {
                (double x1, double y1) = outline[i];
                (double x2, double y2) = outline[next];
                double part = from / (from - to);
                cuts.Add(((x1 + (part * (x2 - x1))) * cos) + ((y1 + (part * (y2 - y1))) * sin));
            }
        }
    }
}
