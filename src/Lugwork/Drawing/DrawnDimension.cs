namespace Lugwork.Drawing;

/// <summary>A named figure of a drawing, with the two points of the sheet between which it is drawn.</summary>
/// <remarks>Figure = distance of the points x <see cref="PerSheetMillimetre"/>; the points are in millimetres of the sheet, from its upper left corner, x to the right and y down.</remarks>
public sealed class DrawnDimension
{
    internal DrawnDimension(string name, double? figure, string unit, string said, (double X, double Y) from, (double X, double Y) to, double perSheetMillimetre)
    {
        Name = name;
        Figure = figure;
        Unit = unit;
        Said = said;
        From = from;
        To = to;
        PerSheetMillimetre = perSheetMillimetre;
    }

    /// <summary>What is measured: "seat tube bore".</summary>
    public string Name { get; }

    /// <summary>The number, in <see cref="Unit"/>; null where it is not known or not decided, and then it is drawn dashed, at a size that says nothing.</summary>
    public double? Figure { get; }

    /// <summary>"mm", "m", "kg" or a currency.</summary>
    public string Unit { get; }

    /// <summary>The figure as it stands in the drawing, with its unit and error; "?" where nothing is known.</summary>
    public string Said { get; }

    /// <summary>Where it begins, millimetres of the sheet.</summary>
    public (double X, double Y) From { get; }

    /// <summary>Where it ends, millimetres of the sheet.</summary>
    public (double X, double Y) To { get; }

    /// <summary>How much of <see cref="Unit"/> one millimetre of the sheet stands for.</summary>
    public double PerSheetMillimetre { get; }

    /// <summary>"seat tube bore 27.2 mm", "? insertion".</summary>
    public override string ToString() => Figure is not null ? $"{Name} {Said}" : Said == "?" ? $"? {Name}" : $"? {Name}: {Said}";
}
