using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Lugwork.Drawing;

namespace Lugwork.Workshop;

/// <summary>Drawings on the page of a plan: each in the step that assembles the joint that it shows, all others behind the steps.</summary>
internal static class PlanPictures
{
    /// <summary>Where a drawing stands that no step of the plan assembles.</summary>
    public const int NoStep = -1;

    /// <summary>The drawings of a build of which at least one figure is known.</summary>
    public static ImmutableArray<LineDrawing> Of(Build build) => [.. Drawings.All(build).Where(d => d.HasFigures)];

    /// <summary>Place of the step that assembles what a drawing shows, from 0.</summary>
    public static int StepOf(WorkPlan plan, LineDrawing drawing)
    {
        for (int i = 0; i < plan.Steps.Length; i++)
        {
            if (plan.Steps[i].Findings.Any(f => f.Joint!.Id == drawing.About))
            {
                return i;
            }
        }

        return NoStep;
    }

    /// <summary>The drawings one below the other. A sheet that is wider than the page is made smaller to fit, so its caption says at which width its scale holds.</summary>
    public static void Write(StringBuilder page, IEnumerable<LineDrawing> drawings)
    {
        foreach (LineDrawing drawing in drawings)
        {
            string scale = char.IsAsciiDigit(drawing.Scale[^1]) ? string.Create(CultureInfo.InvariantCulture, $"{drawing.Scale} where it is {drawing.WidthMillimetres:0.#} mm wide") : drawing.Scale;
            page.Append("<figure>\n").Append(drawing.ToSvg()).Append("\n<figcaption>").Append(PlanHtml.Escape($"{drawing.Title}; {scale}.")).Append("</figcaption>\n</figure>\n");
        }
    }
}
