using Lugwork.Workshop;
using Lugwork.Drawing;
using Lugwork.Drivetrain;
using Lugwork.Geometry;

namespace Lugwork.Notebooks;

/// <summary>What a notebook shows as plain text: the text that the thing has anyway, with the ends of its lines the same on every system.</summary>
internal static class NotebookText
{
    public static string? Of(object shown) => shown switch
    {
        NeedsSheet needs => string.Join('\n', needs),
        FitReport or GearTable or GeometryDifference or WorkPlan or LineDrawing => $"{shown}".ReplaceLineEndings("\n"),
        _ => null,
    };
}
