using System.Collections.Immutable;
using System.Xml.Linq;

namespace Lugwork.Drawing;

/// <summary>A drawing to scale, with its dimensions and a text that says what a reader sees. Immutable.</summary>
/// <remarks>
/// The sheet is measured in millimetres, and one unit of the SVG is one of them. Tones have a pattern and a letter beside their colour; what is not known is dashed, with
/// a question mark and the name of what to measure. The SVG has no scripts, no links, no ids and no outside references, and is the same in every culture.
/// </remarks>
public sealed partial class LineDrawing
{
    private readonly XElement _svg;

    internal LineDrawing(string title, string description, string scale, double width, double height, ImmutableArray<DrawnDimension> dimensions, string about, XElement svg)
    {
        Title = title;
        Description = description;
        Scale = scale;
        WidthMillimetres = width;
        HeightMillimetres = height;
        Dimensions = dimensions;
        About = about;
        _svg = svg;
    }

    /// <summary>What it shows: "Seatpost in the seat tube".</summary>
    public string Title { get; }

    /// <summary>The text alternative: what a reader sees, figures, unknowns and verdicts included.</summary>
    public string Description { get; }

    /// <summary>"1:2", or what a millimetre of a chart stands for.</summary>
    public string Scale { get; }

    /// <summary>Width of the sheet, millimetres.</summary>
    public double WidthMillimetres { get; }

    /// <summary>Height of the sheet, millimetres.</summary>
    public double HeightMillimetres { get; }

    /// <summary>Every figure that is drawn, known or not, in the order of the drawing.</summary>
    public ImmutableArray<DrawnDimension> Dimensions { get; }

    /// <summary>Id of the joint that it shows; empty for a chart and for the geometry of a frame.</summary>
    internal string About { get; }

    /// <summary>At least one of its figures is known; without one it says only what is to be measured.</summary>
    internal bool HasFigures => Dimensions.Any(d => d.Figure is not null);

    /// <summary>The drawing as one SVG element, without an XML declaration: for a file of its own or for the middle of a page.</summary>
    public string ToSvg() => DraftWriter.Write(_svg);

    /// <summary>Title and description, for those who read rather than look.</summary>
    public override string ToString() => $"{Title}. {Description}";
}
