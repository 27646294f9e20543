using System.Globalization;
using System.Text;

namespace Lugwork.Workshop;

/// <summary>A plan as Markdown; what would be read as markup is escaped. Line ends are line feeds alone.</summary>
internal static class PlanMarkdown
{
    private const string Marks = "\\`*_{}[]>#!|~$";

    public static string Write(WorkPlan plan)
    {
        StringBuilder page = new();
        page.Append("# ").Append(Plain(PlanPage.Title(plan))).Append('\n');
        foreach (PlanBlock block in PlanPage.Head(plan))
        {
            Block(page, block, "## ");
        }

        page.Append("\n## Steps\n");
        for (int i = 0; i < plan.Steps.Length; i++)
        {
            WorkStep step = plan.Steps[i];
            page.Append(CultureInfo.InvariantCulture, $"\n### {i + 1}. {Plain(step.Title)}\n\n{PlanPage.Class(step)}\n");
            foreach (PlanBlock block in PlanPage.Of(plan, step))
            {
                Block(page, block, "#### ");
            }
        }

        foreach (PlanBlock block in PlanPage.Tail(plan))
        {
            Block(page, block, "## ");
        }

        return page.ToString();
    }

    /// <summary>One line of text that Markdown reads as text, wherever it stands.</summary>
    internal static string Plain(string text)
    {
        string line = PlanPage.OneLine(text).Trim();
        StringBuilder plain = new(line.Length + 8);
        for (int i = 0; i < line.Length; i++)
        {
            // A list, a rule or a numbered item begins only at the start of a line.
            bool begins = i == 0 ? line[0] is '-' or '+' or '=' : line[i] is '.' or ')' && line.AsSpan(0, i).IndexOfAnyExceptInRange('0', '9') < 0;
            if (begins || Marks.Contains(line[i], StringComparison.Ordinal))
            {
                plain.Append('\\');
            }

            _ = line[i] switch { '<' => plain.Append("&lt;"), '&' => plain.Append("&amp;"), _ => plain.Append(line[i]) };
        }

        return plain.ToString();
    }

    private static void Block(StringBuilder page, PlanBlock block, string level)
    {
        page.Append('\n').Append(level).Append(block.Title).Append("\n\n");
        for (int i = 0; i < block.Lines.Length; i++)
        {
            page.Append(block.IsTicked ? "- [ ] " : block.IsOrdered ? string.Create(CultureInfo.InvariantCulture, $"{i + 1}. ") : block.IsList ? "- " : i > 0 ? "\n" : "").Append(Plain(block.Lines[i])).Append('\n');
        }
    }
}
