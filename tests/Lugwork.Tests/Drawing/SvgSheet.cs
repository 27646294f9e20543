using System.Globalization;
using System.Xml.Linq;
using Lugwork.Drawing;

namespace Lugwork.Tests.Drawing;

/// <summary>A drawing read back from its SVG alone: scale, forms, lines and the boxes of texts.</summary>
internal sealed class SvgSheet
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public SvgSheet(LineDrawing drawing)
        : this(drawing.ToSvg())
    {
    }

    public SvgSheet(string svg)
    {
        Root = XDocument.Parse(svg).Root!;
        Scale = Number(Root, "data-scale");
        string[] box = ((string)Root.Attribute("viewBox")!).Split(' ');
        (Width, Height) = (double.Parse(box[2], CultureInfo.InvariantCulture), double.Parse(box[3], CultureInfo.InvariantCulture));
    }

    public XElement Root { get; }

    public double Scale { get; }

    public double Width { get; }

    public double Height { get; }

    public string Title => Root.Element(Svg + "title")!.Value;

    public string Description => Root.Element(Svg + "desc")!.Value;

    public IEnumerable<XElement> All(string name) => Root.Descendants(Svg + name);

    /// <summary>Length of the line of a figure, in what the scale makes of it: millimetres of the thing.</summary>
    public double Measured(string figure)
    {
        XElement line = All("line").Single(l => (string?)l.Attribute("data-dimension") == figure);
        return double.Hypot(Number(line, "x2") - Number(line, "x1"), Number(line, "y2") - Number(line, "y1")) / Scale;
    }

    /// <summary>Is drawn dashed.</summary>
    public bool IsOpen(string figure) => ((string)All("line").Single(l => (string?)l.Attribute("data-dimension") == figure).Attribute("class")!).Contains("lw-open", StringComparison.Ordinal);

    /// <summary>Boxes of a part: left, top, width and height in millimetres of the thing.</summary>
    public (double X, double Y, double Width, double Height)[] Boxes(string part) =>
        [.. All("rect").Where(r => (string?)r.Attribute("data-part") == part).Select(r => (Number(r, "x") / Scale, Number(r, "y") / Scale, Number(r, "width") / Scale, Number(r, "height") / Scale))];

    public double[] Radii(string part) => [.. All("circle").Where(c => (string?)c.Attribute("data-part") == part).Select(c => Number(c, "r") / Scale)];

    public bool Has(string part) => Root.Descendants().Any(e => (string?)e.Attribute("data-part") == part);

    public string[] Texts => [.. All("text").Select(t => t.Value)];

    /// <summary>Where each text stands, in millimetres of the sheet, by its own attributes.</summary>
    public (string Text, double Left, double Top, double Right, double Bottom)[] TextBoxes =>
        [.. All("text").Select(t => (t.Value, Number(t, "x"), Number(t, "y") - (0.78 * Number(t, "font-size")), Number(t, "x") + Number(t, "textLength"), Number(t, "y") + (0.24 * Number(t, "font-size"))))];

    /// <summary>Pairs of texts that stand on each other, and texts that leave the sheet.</summary>
    public List<string> Collisions()
    {
        List<string> found = [];
        (string Text, double Left, double Top, double Right, double Bottom)[] boxes = TextBoxes;
        for (int i = 0; i < boxes.Length; i++)
        {
            (string text, double left, double top, double right, double bottom) = boxes[i];
            if (left < 0 || top < 0 || right > Width || bottom > Height)
            {
                found.Add($"'{text}' leaves the sheet");
            }

            for (int k = i + 1; k < boxes.Length; k++)
            {
                if (left < boxes[k].Right && boxes[k].Left < right && top < boxes[k].Bottom && boxes[k].Top < bottom)
                {
                    found.Add($"'{text}' on '{boxes[k].Text}'");
                }
            }
        }

        return found;
    }

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, NumberStyles.Float, CultureInfo.InvariantCulture);
}
