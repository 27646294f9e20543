using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace Lugwork.Drawing;

/// <summary>Writes SVG in millimetres of the sheet; every number in the invariant culture, to a thousandth.</summary>
internal sealed class DraftPen
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private readonly List<XElement> _lines = [];
    private readonly List<XElement> _texts = [];

    public void Box(string part, string marks, (double X, double Y) from, (double X, double Y) to) =>
        _lines.Add(new(Svg + "rect", new XAttribute("class", marks), Part(part), At("x", from.X), At("y", from.Y), At("width", to.X - from.X), At("height", to.Y - from.Y)));

    public void Ring(string part, string marks, (double X, double Y) middle, double radius, double band)
    {
        XElement ring = new(Svg + "circle", new XAttribute("class", marks), Part(part), At("cx", middle.X), At("cy", middle.Y), At("r", radius));
        if (band > 0)
        {
            ring.Add(new XAttribute("style", $"stroke-width:{Text(band)};stroke-dasharray:.5 .7;stroke-linecap:butt"));
        }

        _lines.Add(ring);
    }

    public void Path(string part, string marks, ReadOnlySpan<(double X, double Y)> points, bool closed, ReadOnlySpan<(double X, double Y)> hole = default)
    {
        StringBuilder path = new();
        Add(path, points, closed);
        Add(path, hole, closed);
        _lines.Add(new(Svg + "path", new XAttribute("class", marks), Part(part), hole.IsEmpty ? null : new XAttribute("fill-rule", "evenodd"), new XAttribute("d", path.ToString())));
    }

    private static void Add(StringBuilder path, ReadOnlySpan<(double X, double Y)> points, bool closed)
    {
        for (int i = 0; i < points.Length; i++)
        {
            path.Append(i == 0 ? 'M' : 'L').Append(Text(points[i].X)).Append(' ').Append(Text(points[i].Y));
        }

        if (closed && !points.IsEmpty)
        {
            path.Append('Z');
        }
    }

    /// <summary>Many short lines as one path.</summary>
    public void Strokes(string marks, List<((double X, double Y) From, (double X, double Y) To)> strokes)
    {
        StringBuilder path = new();
        foreach (((double X, double Y) from, (double X, double Y) to) in strokes)
        {
            path.Append('M').Append(Text(from.X)).Append(' ').Append(Text(from.Y)).Append('L').Append(Text(to.X)).Append(' ').Append(Text(to.Y));
        }

        if (path.Length > 0)
        {
            _lines.Add(new(Svg + "path", new XAttribute("class", marks), new XAttribute("d", path.ToString())));
        }
    }

    public void Line(string marks, (double X, double Y) from, (double X, double Y) to, string figure = "")
    {
        XElement line = new(Svg + "line", new XAttribute("class", marks), At("x1", from.X), At("y1", from.Y), At("x2", to.X), At("y2", to.Y));
        if (figure.Length > 0)
        {
            line.Add(new XAttribute("data-dimension", figure));
        }

        _lines.Add(line);
    }

    public void Dot((double X, double Y) at) => _lines.Add(new(Svg + "circle", new XAttribute("class", "lw-dot"), At("cx", at.X), At("cy", at.Y), At("r", 0.45)));

    /// <summary>A text with the width that it was laid out with. What comes here has been cleaned.</summary>
    public void Write(DraftPlace place)
    {
        if (place.IsCovering)
        {
            _texts.Add(new(Svg + "rect", new XAttribute("class", "lw-paper"), At("x", place.Left - 0.4), At("y", place.Top + 0.3), At("width", place.Width + 0.8), At("height", place.Height - 0.3)));
        }

        double line = place.Size * DraftStyle.Leading;
        for (int i = 0; i < place.Lines.Length; i++)
        {
            string text = place.Lines[i];
            double y = place.Top + (i * line) + (place.Size * (DraftStyle.Ascent + ((DraftStyle.Leading - DraftStyle.Ascent - DraftStyle.Descent) / 2)));
            _texts.Add(new(
                Svg + "text",
                new XAttribute("class", place.IsBold ? "lw-t lw-b" : "lw-t"),
                At("x", place.Left),
                At("y", y),
                At("font-size", place.Size),
                At("textLength", DraftPlace.WidthOf(text, place.Size, place.IsBold)),
                new XAttribute("lengthAdjust", "spacingAndGlyphs"),
                text));
        }
    }

    public XElement Sheet(string title, string description, string scale, double perMillimetre, double width, double height) =>
        new(
            Svg + "svg",
            new XAttribute("class", "lw-drawing"),
            new XAttribute("role", "img"),
            new XAttribute("aria-label", title),
            new XAttribute("width", Text(width) + "mm"),
            new XAttribute("height", Text(height) + "mm"),
            new XAttribute("viewBox", $"0 0 {Text(width)} {Text(height)}"),
            new XAttribute("data-scale", perMillimetre.ToString("0.######", CultureInfo.InvariantCulture)),
            new XAttribute("data-scale-words", scale),
            new XElement(Svg + "title", title),
            new XElement(Svg + "desc", description),
            new XElement(Svg + "style", DraftStyle.Text),
            new XElement(Svg + "rect", new XAttribute("class", "lw-paper"), At("x", 0), At("y", 0), At("width", width), At("height", height)),
            _lines,
            _texts);

    private static XAttribute? Part(string part) => part.Length == 0 ? null : new("data-part", part);

    private static XAttribute At(string name, double value) => new(name, Text(value));

    private static string Text(double value) => DraftText.Number(value);
}
