using System.Collections.Immutable;

namespace Lugwork.Drawing;

/// <summary>Text of one or more lines with its place on the sheet.</summary>
internal sealed class DraftPlace
{
    /// <summary>Room that is kept between two texts, millimetres.</summary>
    private const double Gap = 1.1;

    public DraftPlace(ImmutableArray<string> lines, double size, bool bold = false)
    {
        Lines = lines;
        Size = size;
        IsBold = bold;
        Widths = new double[lines.Length];
        for (int i = 0; i < lines.Length; i++)
        {
            Widths[i] = DraftText.Width(lines[i], size) * (bold ? 1.08 : 1);
            Width = Math.Max(Width, Widths[i]);
        }
    }

    public ImmutableArray<string> Lines { get; }

    public double Size { get; }

    public bool IsBold { get; }

    /// <summary>Width of each line: measured once, and written down with it.</summary>
    public double[] Widths { get; }

    public double Width { get; }

    public double Height => Lines.Length * Size * DraftStyle.Leading;

    public double Left { get; set; }

    public double Top { get; set; }

    /// <summary>The lines behind it are covered, so that none runs through its letters.</summary>
    public bool IsCovering { get; init; }

    /// <summary>Where it would stand if it were alone: its middle.</summary>
    public double Wanted { get; set; }

    /// <summary>What its line goes to, on the sheet.</summary>
    public (double X, double Y)? Anchor { get; set; }

    public bool Meets(DraftPlace other) =>
        Left < other.Left + other.Width + 0.3 && other.Left < Left + Width + 0.3 && Top < other.Top + other.Height + 0.2 && other.Top < Top + Height + 0.2;

    /// <summary>Puts texts under each other in a column, each as near as it can be to where it wants to be and none on another: down from the top, then up from the foot.</summary>
    /// <returns>Where the column ends.</returns>
    public static double Spread(List<DraftPlace> places, double top, double foot)
    {
        // A stable sort: texts that want one place keep their order.
        List<DraftPlace> sorted = [.. places.OrderBy(p => p.Wanted)];
        double at = top;
        foreach (DraftPlace place in sorted)
        {
            place.Top = Math.Max(place.Wanted - (place.Height / 2), at);
            at = place.Top + place.Height + Gap;
        }

        double whole = sorted.Sum(p => p.Height + Gap) - Gap;
        double end = Math.Max(foot, top + whole);
        for (int i = sorted.Count - 1; i >= 0; i--)
        {
            sorted[i].Top = Math.Min(sorted[i].Top, end - sorted[i].Height);
            end = sorted[i].Top - Gap;
        }

        return sorted.Count == 0 ? top : sorted[^1].Top + sorted[^1].Height;
    }
}
