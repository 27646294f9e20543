using System.Collections.Immutable;

namespace Lugwork.Drawing;

/// <summary>A side of the view to which a figure or a note is put.</summary>
internal enum DraftSide
{
    Top,
    Bottom,
    Left,
    Right,
}

/// <summary>What a line looks like.</summary>
internal enum DraftLine
{
    Plain,
    Heavy,
    Thin,
    Axis,
}

/// <summary>A form of the view, in millimetres of what is drawn, y down. A box has two corners, a ring its middle and a radius.</summary>
internal sealed record DraftForm(string Part, DraftTone? Tone, bool IsOpen, DraftLine Line, ImmutableArray<(double X, double Y)> Points, bool IsClosed = false, bool IsBox = false, double Radius = 0, double Band = 0)
{
    /// <summary>A hole in a closed area; empty where there is none.</summary>
    public ImmutableArray<(double X, double Y)> Hole { get; init; } = [];
}

/// <summary>A figure between two points of the view.</summary>
internal sealed record DraftFigure(DraftSize Size, (double X, double Y) From, (double X, double Y) To, DraftSide Side, string Unit, double PerSheet);

/// <summary>A note beside the view, with a line to the point that it is about.</summary>
internal sealed record DraftNote(string Text, (double X, double Y) At, DraftSide Side);

/// <summary>A text in the view, at a point and moved by millimetres of the sheet; begins there, ends there or stands in the middle for 0, 1 and 0.5.</summary>
internal sealed record DraftLabel(string Text, (double X, double Y) At, double Right, double Down, double Align);
