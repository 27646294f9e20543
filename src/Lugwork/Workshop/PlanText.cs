using System.Globalization;
using System.Text;

namespace Lugwork.Workshop;

/// <summary>A plan as plain text. Line ends are line feeds alone.</summary>
internal static class PlanText
{
    public static string Write(WorkPlan plan)
    {
        StringBuilder text = new();
        string title = PlanPage.OneLine(PlanPage.Title(plan));
        text.Append(title).Append('\n').Append('=', title.Length).Append('\n');
        foreach (PlanBlock block in PlanPage.Head(plan))
        {
            Block(text, block, "");
        }

        for (int i = 0; i < plan.Steps.Length; i++)
        {
            WorkStep step = plan.Steps[i];
            text.Append(CultureInfo.InvariantCulture, $"\n{i + 1}. {PlanPage.OneLine(step.Title)}\n   {PlanPage.Class(step)}\n");
            foreach (PlanBlock block in PlanPage.Of(plan, step))
            {
                Block(text, block, "   ");
            }
        }

        foreach (PlanBlock block in PlanPage.Tail(plan))
        {
            Block(text, block, "");
        }

        return text.ToString();
    }

    private static void Block(StringBuilder text, PlanBlock block, string indent)
    {
        text.Append(indent.Length == 0 ? "\n" : "").Append(indent).Append(block.Title).Append(":\n");
        for (int i = 0; i < block.Lines.Length; i++)
        {
            text.Append(indent).Append(block.IsTicked ? "  [ ] " : block.IsOrdered ? string.Create(CultureInfo.InvariantCulture, $"  {i + 1}. ") : block.IsList ? "  - " : "  ").Append(PlanPage.OneLine(block.Lines[i])).Append('\n');
        }
    }
}
