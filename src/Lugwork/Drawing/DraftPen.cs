using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace Lugwork.Drawing;

/// <summary>Writes SVG in millimetres of the sheet; every number in the invariant culture, to a thousandth.</summary>
internal sealed class DraftPen
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // Made once: finding a name by its text costs as much as writing it.
    private static readonly XName Rect = Svg + "rect";
    private static readonly XName Circle = Svg + "circle";
    private static readonly XName PathName = Svg + "path";
    private static readonly XName LineName = Svg + "line";
    private static readonly XName TextName = Svg + "text";
    private static readonly XName Class = "class";
    private static readonly XName PartOf = "data-part";
    private static readonly XName X = "x";
    private static readonly XName Y = "y";
    private static readonly XName Width = "width";
    private static readonly XName Height = "height";
    private static readonly XName MiddleX = "cx";
    private static readonly XName MiddleY = "cy";
    private static readonly XName Radius = "r";
    private static readonly XName FromX = "x1";
    private static readonly XName FromY = "y1";
    private static readonly XName ToX = "x2";
    private static readonly XName ToY = "y2";
    private static readonly XName Data = "d";
    private static readonly XName StyleOf = "style";
    private static readonly XName FillRule = "fill-rule";
    private static readonly XName DimensionOf = "data-dimension";
    private static readonly XName LetterSize = "font-size";
    private static readonly XName TextLength = "textLength";
    private static readonly XName LengthAdjust = "lengthAdjust";

    private readonly StringBuilder _path = new(2_000);
    private readonly List<XElement> _lines = [];
    private readonly List<XElement> _texts = [];

    public void Box(string part, string marks, (double X, double Y) from, (double X, double Y) to) =>
        _lines.Add(new(Rect, new XAttribute(Class, marks), Part(part), At(X, from.X), At(Y, from.Y), At(Width, to.X - from.X), At(Height, to.Y - from.Y)));

    public void Ring(string part, string marks, (double X, double Y) middle, double radius, double band)
    {
        XElement ring = new(Circle, new XAttribute(Class, marks), Part(part), At(MiddleX, middle.X), At(MiddleY, middle.Y), At(Radius, radius));
        if (band > 0)
        {
            ring.Add(new XAttribute(StyleOf, $"stroke-width:{Text(band)};stroke-dasharray:.5 .7;stroke-linecap:butt"));
        }

        _lines.Add(ring);
    }

    public void Path(string part, string marks, ReadOnlySpan<(double X, double Y)> points, bool closed, ReadOnlySpan<(double X, double Y)> hole = default)
    {
        StringBuilder path = _path.Clear();
        Add(path, points, closed);
        Add(path, hole, closed);
        _lines.Add(new(PathName, new XAttribute(Class, marks), Part(part), hole.IsEmpty ? null : new XAttribute(FillRule, "evenodd"), new XAttribute(Data, path.ToString())));
    }

    private static void Add(StringBuilder path, ReadOnlySpan<(double X, double Y)> points, bool closed)
    {
        for (int i = 0; i < points.Length; i++)
        {
            To(path, i == 0 ? 'M' : 'L', points[i]);
        }

        if (closed && !points.IsEmpty)
        {
            path.Append('Z');
        }
    }

    private static void To(StringBuilder path, char command, (double X, double Y) point)
    {
        path.Append(command);
        DraftText.Number(path, point.X);
        path.Append(' ');
        DraftText.Number(path, point.Y);
    }

    /// <summary>Many short lines as one path.</summary>
    public void Strokes(string marks, List<((double X, double Y) From, (double X, double Y) To)> strokes)
    {
        StringBuilder path = _path.Clear();
        foreach (((double X, double Y) from, (double X, double Y) to) in strokes)
        {
            To(path, 'M', from);
            To(path, 'L', to);
        }

        if (path.Length > 0)
        {
            _lines.Add(new(PathName, new XAttribute(Class, marks), new XAttribute(Data, path.ToString())));
        }
    }

    public void Line(string marks, (double X, double Y) from, (double X, double Y) to, string figure = "")
    {
        XElement line = new(LineName, new XAttribute(Class, marks), At(FromX, from.X), At(FromY, from.Y), At(ToX, to.X), At(ToY, to.Y));
        if (figure.Length > 0)
        {
            line.Add(new XAttribute(DimensionOf, figure));
        }

        _lines.Add(line);
    }

    public void Dot((double X, double Y) at) => _lines.Add(new(Circle, new XAttribute(Class, "lw-dot"), At(MiddleX, at.X), At(MiddleY, at.Y), At(Radius, 0.45)));

    /// <summary>A text with the width that it was laid out with. What comes here has been cleaned.</summary>
    public void Write(DraftPlace place)
    {
        if (place.IsCovering)
        {
            _texts.Add(new(Rect, new XAttribute(Class, "lw-paper"), At(X, place.Left - 0.4), At(Y, place.Top + 0.3), At(Width, place.Width + 0.8), At(Height, place.Height - 0.3)));
        }

        double line = place.Size * DraftStyle.Leading;
        for (int i = 0; i < place.Lines.Length; i++)
        {
            string text = place.Lines[i];
            double y = place.Top + (i * line) + (place.Size * (DraftStyle.Ascent + ((DraftStyle.Leading - DraftStyle.Ascent - DraftStyle.Descent) / 2)));
            _texts.Add(new(
                TextName,
                new XAttribute(Class, place.IsBold ? "lw-t lw-b" : "lw-t"),
                At(X, place.Left),
                At(Y, y),
                At(LetterSize, place.Size),
                At(TextLength, place.Widths[i]),
                new XAttribute(LengthAdjust, "spacingAndGlyphs"),
                text));
        }
    }

    public XElement Sheet(string title, string description, string scale, double perMillimetre, double width, double height) =>
        new(
            Svg + "svg",
            new XAttribute(Class, "lw-drawing"),
            new XAttribute("role", "img"),
            new XAttribute("aria-label", title),
            new XAttribute(Width, Text(width) + "mm"),
            new XAttribute(Height, Text(height) + "mm"),
            new XAttribute("viewBox", $"0 0 {Text(width)} {Text(height)}"),
            new XAttribute("data-scale", perMillimetre.ToString("0.######", CultureInfo.InvariantCulture)),
            new XAttribute("data-scale-words", scale),
            new XElement(Svg + "title", title),
            new XElement(Svg + "desc", description),
            new XElement(Svg + "style", DraftStyle.Text),
            new XElement(Rect, new XAttribute(Class, "lw-paper"), At(X, 0), At(Y, 0), At(Width, width), At(Height, height)),
            _lines,
            _texts);

    private static XAttribute? Part(string part) => part.Length == 0 ? null : new(PartOf, part);

    private static XAttribute At(XName name, double value) => new(name, Text(value));

    private static string Text(double value) => DraftText.Number(value);
}
