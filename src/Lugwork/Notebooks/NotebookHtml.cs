using Lugwork.Workshop;
using System.Collections.Immutable;
using System.Globalization;
using Lugwork.Drawing;
using Lugwork.Drivetrain;
using Lugwork.Geometry;

namespace Lugwork.Notebooks;

/// <summary>What a notebook shows as HTML. It says no more and nothing else than the thing itself does: verdicts stand in words, and what fits is folded away.</summary>
internal static class NotebookHtml
{
    public static string? Of(object shown) => shown switch
    {
        FitReport report => Report(report),
        NeedsSheet needs => Needs(needs),
        GearTable gears => Gears(gears),
        GeometryDifference change => Change(change),
        WorkPlan plan => Plan(plan),
        LineDrawing drawing => new HtmlFragment().Raw(drawing.ToSvg()).ToString(),
        _ => null,
    };

    private static string Report(FitReport report)
    {
        Fit[] open = [.. report.Findings.Where(f => f.Verdict != Verdict.Fits).OrderByDescending(f => f.Verdict)];
        Fit[] clean = [.. report.Findings.Where(f => f.Verdict == Verdict.Fits)];
        HtmlFragment page = new();
        string[] lines = $"{report}".ReplaceLineEndings("\n").Split('\n');
        page.Head(lines[0]);
        page.Table("Joints that do not fit as they are", [["verdict", "joint", "what was found", "remedy, or what to measure"], .. open.Select(f => ImmutableArray.Create(Verdicts.InWords(f.Verdict), f.Joint!.Name, f.Sentence, Mend(f)))]);

        // All that the report says of the whole; its worst joint stands in the table, with its remedy.
        foreach (string line in lines.Skip(1).Where(l => !IsOfTheWorst(l)))
        {
            page.Line(line);
        }

        page.List("To measure or ask, most telling first:", report.ToMeasure.Select(m => m.ToString()), isOrdered: true);
        page.List("Cautions (the makers' figures come first):", report.Cautions.Select(c => c.Text));
        return (clean.Length == 0 ? page : page.Folded($"{clean.Length.ToString(CultureInfo.InvariantCulture)} that fit", p => p.List("", clean.Select(f => f.ToString())))).ToString();
    }

    private static bool IsOfTheWorst(string line) => line.StartsWith("Worst: ", StringComparison.Ordinal) || line.StartsWith("Remedy: ", StringComparison.Ordinal) || line.StartsWith("Measure: ", StringComparison.Ordinal);

    private static string Mend(Fit fit) => string.Join("; ", fit.Remedies.Select(r => r.What).Concat(fit.Measurements.Select(m => m.ToString())).Distinct());

    private static string Needs(NeedsSheet needs)
    {
        HtmlFragment page = new();
        page.Raw("<table><caption>What every slot has to be</caption><thead><tr><th scope='col'>slot</th><th scope='col'>there is one</th><th scope='col'>it has to be</th></tr></thead><tbody>");
        foreach (Need need in needs)
        {
            page.Raw($"<tr><td>{PlanHtml.Escape(need.Slot.Name)}</td><td>{(need.IsFilled ? "yes" : "no")}</td><td>{string.Join("<br />", need.Rows.Select(PlanHtml.Escape))}</td></tr>");
        }

        return page.Raw("</tbody></table>").ToString();
    }

    private static string Gears(GearTable gears) => new HtmlFragment().Table(gears.Unit(GearMeasure.Development), gears.Rows(GearMeasure.Development), 1).Line(gears.Summary()).ToString();

    private static string Change(GeometryDifference change) =>
        new HtmlFragment()
            .Table("What the change does to the frame", [["", "before", "after", "change", "unit"], .. change.Rows.Select(r => ImmutableArray.Create(r.Name, r.Before, r.After, r.Change, r.Unit))], 1)
            .Raw(Drawings.Geometry(change.Before, change.After).ToSvg()).ToString();

    private static string Plan(WorkPlan plan)
    {
        HtmlFragment page = new HtmlFragment().Head(PlanPage.Title(plan));
        foreach (PlanBlock block in PlanPage.Head(plan))
        {
            Block(page, block);
        }

        for (int i = 0; i < plan.Steps.Length; i++)
        {
            WorkStep step = plan.Steps[i];
            page.Folded(string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {step.Title}"), p =>
            {
                p.Line(PlanPage.Class(step));
                foreach (PlanBlock block in PlanPage.Of(plan, step))
                {
                    Block(p, block);
                }
            });
        }

        foreach (PlanBlock block in PlanPage.Tail(plan))
        {
            page.Folded(block.Title, p => p.List("", block.Lines, block.IsOrdered));
        }

        return page.ToString();
    }

    private static void Block(HtmlFragment page, PlanBlock block) => page.List($"{block.Title}:", block.Lines, block.IsOrdered);
}
