using System.Collections;
using System.Globalization;
using System.Xml.Linq;
using Lugwork.Drawing;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Tests.Builds;
using Lugwork.Tests.Drawing;
using Lugwork.Workshop;

namespace Lugwork.Tests.Notebooks;

/// <summary>What a notebook shows, found as a notebook finds it: by names alone.</summary>
public sealed class NotebookTests
{
    private static readonly object[] Shown =
    [
        Subjects.Unfit.Check(), Bench.WholeBicycle().Check(), Subjects.Unknown.Check(), Build.From(new Frame()).Check(), Subjects.Plain.Needs(), Build.From(new Frame()).Needs(), Subjects.Gears, GearTable.Of([42], [17], UnitsNet.Length.FromMillimeters(2_100), InternalHub.Find("14")),
        GeometryDifference.Between(Subjects.Before, Subjects.After), Subjects.Plain.WorkPlan(), Subjects.Unfit.WorkPlan(), Drawings.Seatpost(Subjects.Plain), Drawings.Gears(Subjects.Gears),
    ];

    /// <summary>As a notebook does it: an attribute of this name, a source without parameters, forms with a kind, and a method that writes.</summary>
    private static Dictionary<string, string> Forms(object shown)
    {
        Dictionary<string, string> forms = [];
        foreach (object attribute in shown.GetType().GetCustomAttributes(true).Where(a => a.GetType().Name == "TypeFormatterSourceAttribute"))
        {
            object source = Activator.CreateInstance((Type)attribute.GetType().GetProperty("FormatterSourceType")!.GetValue(attribute)!)!;
            foreach (object form in (IEnumerable)source.GetType().GetMethod("CreateTypeFormatters")!.Invoke(source, null)!)
            {
                using StringWriter writer = new();
                Assert.True(form.GetType().GetMethod("Format", [typeof(object), typeof(TextWriter)])!.Invoke(form, [shown, writer]) is true);
                forms.Add((string)form.GetType().GetProperty("MimeType")!.GetValue(form)!, writer.ToString());
            }

            Assert.Equal(forms.Keys.Order(), ((string[])attribute.GetType().GetProperty("PreferredMimeTypes")!.GetValue(attribute)!).Order());
        }

        return forms;
    }

    [Fact]
    public void All_that_is_promised_is_shown_as_a_fragment_and_as_its_text()
    {
        Assert.Equal(6, Shown.Select(s => s.GetType()).Distinct().Count());
        foreach (object shown in Shown)
        {
            Dictionary<string, string> forms = Forms(shown);
            Assert.Equal(["text/html", "text/plain"], forms.Keys.Order());
            Assert.Equal(shown is NeedsSheet needs ? string.Join('\n', needs.Select(n => n.ToString())) : shown.ToString()!.ReplaceLineEndings("\n"), forms["text/plain"]);
            XElement page = XElement.Parse(forms["text/html"], LoadOptions.PreserveWhitespace);
            Assert.Equal("div", page.Name.LocalName);
            string[] own = ["div", "style", "p", "strong", "table", "caption", "thead", "tbody", "tr", "th", "td", "ul", "ol", "li", "details", "summary", "br"];
            Assert.All(page.DescendantsAndSelf().Where(e => e.Name.NamespaceName.Length == 0), e => Assert.Contains(e.Name.LocalName, own));
            Assert.DoesNotContain(page.DescendantsAndSelf().Attributes(), a => a.Name.LocalName is "id" or "href" or "src" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal));

            // Its style is of its own class alone: the page around it keeps its looks.
            string style = page.Elements("style").Single().Value;
            Assert.All(style.Split('}', StringSplitOptions.RemoveEmptyEntries).SelectMany(r => r.Split('{')[0].Split(',')), selector => Assert.StartsWith(".lugwork", selector, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_report_is_shown_whole_and_what_fits_is_folded_away()
    {
        FitReport report = Subjects.Unfit.Check();
        XElement page = XElement.Parse(Forms(report)["text/html"]);
        string[] rows = [.. page.Descendants("tbody").Single().Elements("tr").Select(r => string.Join('|', r.Elements("td").Take(3).Select(c => c.Value)))];
        Assert.Equal(report.Findings.Where(f => f.Verdict != Verdict.Fits).OrderByDescending(f => f.Verdict).Select(f => $"{Verdicts.InWords(f.Verdict)}|{f.Joint!.Name}|{f.Sentence}"), rows);
        Assert.StartsWith("unsafe|", rows[0], StringComparison.Ordinal);
        Assert.Equal(report.Findings.Where(f => f.Verdict == Verdict.Fits).Select(f => f.ToString()), page.Descendants("details").Single().Descendants("li").Select(l => l.Value));
        foreach (string line in report.ToString().ReplaceLineEndings("\n").Split('\n').Where(l => !l.StartsWith("Worst: ", StringComparison.Ordinal) && !l.StartsWith("Remedy: ", StringComparison.Ordinal) && !l.StartsWith("Measure: ", StringComparison.Ordinal)))
        {
            Assert.Contains(page.Descendants("p"), p => p.Value == line);
        }

        // The worst joint stands in the table, and not once more below it.
        Assert.DoesNotContain(page.Descendants("p"), p => p.Value.StartsWith("Worst: ", StringComparison.Ordinal) || p.Value.StartsWith("Remedy: ", StringComparison.Ordinal) || p.Value.StartsWith("Measure: ", StringComparison.Ordinal));
        Assert.All(report.Worst.Remedies, r => Assert.Contains(r.What, page.Value, StringComparison.Ordinal));
        Assert.All(report.ToMeasure, m => Assert.Contains(page.Descendants("li"), l => l.Value == m.ToString()));
        Assert.All(report.Cautions, c => Assert.Contains(page.Descendants("li"), l => l.Value == c.Text));
    }

    [Fact]
    public void A_needs_sheet_has_a_row_for_every_slot_with_each_of_its_lines()
    {
        NeedsSheet needs = Subjects.Plain.Needs();
        XElement[] rows = [.. XElement.Parse(Forms(needs)["text/html"]).Descendants("tbody").Single().Elements("tr")];
        Assert.Equal(needs.Select(n => $"{n.Slot.Name} {(n.IsFilled ? "yes" : "no")} {string.Concat(n.Rows)}"), rows.Select(r => string.Join(' ', r.Elements("td").Select(c => c.Value))));
    }

    [Fact]
    public void The_cells_of_a_gear_table_are_those_of_its_text()
    {
        foreach (GearTable gears in Shown.OfType<GearTable>())
        {
            string[] text = [.. gears.ToString().Split('\n')];
            string[][] cells = [.. XElement.Parse(Forms(gears)["text/html"]).Descendants("tr").Select(r => r.Elements().Select(c => c.Value).ToArray())];
            Assert.Equal(text[1..^1].Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries)), cells.Select(r => r.Where(c => c.Length > 0).ToArray()));
        }
    }

    [Fact]
    public void A_change_of_geometry_is_shown_with_its_figures_and_its_drawing()
    {
        GeometryDifference change = GeometryDifference.Between(Subjects.Before, Subjects.After);
        XElement page = XElement.Parse(Forms(change)["text/html"]);
        string[] rows = [.. page.Descendants("tbody").Single().Elements("tr").Select(r => string.Join(' ', r.Elements("td").Select(c => c.Value)))];
        Assert.Equal(change.ToString().Split('\n').Select(l => string.Join(' ', l.Replace("->", "", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries))), rows);
        Assert.Contains($"trail {Subjects.Before.Trail.Millimeters.ToString("0.0", CultureInfo.InvariantCulture)} {Subjects.After.Trail.Millimeters.ToString("0.0", CultureInfo.InvariantCulture)} {change.Trail.Millimeters.ToString("+0.0;-0.0;0", CultureInfo.InvariantCulture)} mm", rows);
        Assert.Equal(Drawings.Geometry(Subjects.Before, Subjects.After).ToSvg(), page.Elements().Single(e => e.Name.LocalName == "svg").ToString(SaveOptions.DisableFormatting));
    }

    [Fact]
    public void Every_step_of_a_plan_is_folded_under_its_number_with_all_its_lines()
    {
        WorkPlan plan = Subjects.Plain.WorkPlan();
        XElement[] folds = [.. XElement.Parse(Forms(plan)["text/html"]).Elements("details")];
        for (int i = 0; i < plan.Steps.Length; i++)
        {
            Assert.Equal($"{i + 1}. {plan.Steps[i].Title}", folds[i].Element("summary")!.Value);
            Assert.All(plan.Steps[i].Does.Concat(plan.Steps[i].Checks).Concat(plan.Steps[i].Cautions.Select(c => c.Text)), line => Assert.Contains(folds[i].Descendants("li"), l => l.Value == line));
        }

        // Behind the steps stands what is for the whole plan: tools, what to buy, the inspection.
        string[] behind = [.. folds.Skip(plan.Steps.Length).SelectMany(f => f.Descendants("li")).Select(l => l.Value)];
        Assert.NotEmpty(plan.Tools);
        Assert.All(plan.Tools, t => Assert.Contains(behind, l => l.StartsWith(t.Name, StringComparison.Ordinal)));
        Assert.All(plan.Consumables, c => Assert.Contains(c.Name, behind));
        Assert.All(plan.SmallParts, p => Assert.Contains(p.ToString(), behind));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("</td></table><img src=x onerror=alert(1)>&amp;")]
    [InlineData("\u0000\u001B[31m \uD800 \uFFFF \u202E")]
    public void A_hostile_name_is_text(string name)
    {
        Build build = Build.From(Frame.Read("seatTube 27.2") with { Name = name }, name).With(Seatpost.Read("31.6 x 350") with { Name = name });
        foreach (object shown in new object[] { build.Check(), build.Needs(), build.WorkPlan(), Drawings.Seatpost(build) })
        {
            XElement page = XElement.Parse(Forms(shown)["text/html"]);
            Assert.DoesNotContain(page.Descendants(), e => e.Name.LocalName is "script" or "img");
        }
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void It_is_the_same_in_every_culture(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            string[] plain = [.. Shown.SelectMany(s => Forms(s).Values)];
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(plain, Shown.SelectMany(s => Forms(s).Values));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void What_it_does_not_know_it_does_not_show()
    {
        foreach (Lugwork.Notebooks.NotebookForm form in new Lugwork.Notebooks.NotebookForms().CreateTypeFormatters())
        {
            using StringWriter writer = new();
            Assert.False(form.Format("a text", writer));
            Assert.Empty(writer.ToString());
        }
    }
}
