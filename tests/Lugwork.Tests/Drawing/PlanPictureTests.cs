using System.Xml.Linq;
using Lugwork.Drawing;
using Lugwork.Tests.Builds;
using Lugwork.Workshop;

namespace Lugwork.Tests.Drawing;

/// <summary>Drawings on the page of a work plan.</summary>
public sealed class PlanPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static XElement Read(string html) => XDocument.Parse(html[html.IndexOf("<html", StringComparison.Ordinal)..], LoadOptions.PreserveWhitespace).Root!;

    private static string Title(XElement figure) => figure.Element(Svg + "svg")!.Element(Svg + "title")!.Value;

    [Fact]
    public void A_step_has_the_drawing_of_what_it_puts_together()
    {
        WorkPlan plan = Subjects.Plain.WorkPlan();
        XElement page = Read(plan.ToHtml());
        Dictionary<string, string> steps = page.Descendants("article").SelectMany(a => a.Elements("figure").Select(f => (Title(f), (string)a.Attribute("id")!))).ToDictionary(p => p.Item1, p => p.Item2);
        Assert.Equal(8, steps.Count);
        foreach ((string title, string joint) in new[]
        {
            ("Head tube and headset", "headset-upper-in-head-tube"), ("Seatpost in the seat tube", "seatpost-in-seat-tube"), ("Bottom bracket in the shell", "bottom-bracket-in-shell"),
            ("Rear hub, sprockets and chainline", "rear-wheel-in-frame"), ("Front tyre, rim and fork", "front-tyre-bead-on-rim"), ("Rear tyre, rim and frame", "rear-tyre-bead-on-rim"),
            ("Front rotor, adapter and caliper", "front-caliper-on-mount"), ("Rear rotor, adapter and caliper", "rear-caliper-on-mount"),
        })
        {
            WorkStep step = plan.Steps.Single(s => s.Findings.Any(f => f.Joint!.Id == joint));
            Assert.Equal($"step-{plan.Steps.IndexOf(step) + 1}", steps[title]);
        }

        Assert.All(page.Descendants("figure"), f => Assert.StartsWith(Title(f), f.Element("figcaption")!.Value, StringComparison.Ordinal));
        Assert.Contains(page.Descendants("figcaption"), c => c.Value == $"Seatpost in the seat tube; {Drawings.Seatpost(Subjects.Plain).Scale} where it is {Drawings.Seatpost(Subjects.Plain).WidthMillimetres:0.#} mm wide.");
    }

    [Fact]
    public void Ids_stand_once_on_the_page_and_nothing_is_fetched_or_run()
    {
        foreach (Build build in Subjects.Builds)
        {
            XElement page = Read(build.WorkPlan().ToHtml(Drawings.All(build).AddRange(Subjects.Charts)));
            string[] ids = [.. page.Descendants().Attributes("id").Select(a => a.Value)];
            Assert.Equal(ids.Length, ids.Distinct().Count());
            Assert.DoesNotContain(page.Descendants(), e => e.Name.LocalName is "script" or "image" or "foreignObject" or "use" or "link");
            Assert.DoesNotContain(page.Descendants().Attributes(), a => a.Name.LocalName is "src" || (a.Name.LocalName == "href" && !a.Value.StartsWith('#')));
            Assert.Equal(Drawings.All(build).Length + Subjects.Charts.Length, page.Descendants("figure").Count());
        }
    }

    [Fact]
    public void A_drawing_without_any_figure_is_left_out_and_one_that_no_step_assembles_stands_behind_the_steps()
    {
        Assert.Empty(Read(Subjects.Unknown.WorkPlan().ToHtml()).Descendants("figure"));
        Assert.Empty(Read(Subjects.Plain.WorkPlan().ToHtml([])).Descendants("figure"));
        Assert.DoesNotContain(Read(Subjects.Plain.WorkPlan().ToHtml()).Descendants("h2"), h => h.Value == "Drawings");
        XElement page = Read(Subjects.Plain.WorkPlan().ToHtml([Drawings.Geometry(Subjects.Before, Subjects.After), Drawings.Gears(Subjects.Gears)]));
        XElement section = page.Descendants("section").Single(s => s.Element("h2")?.Value == "Drawings");
        Assert.Equal(["Frame geometry, before and after", "Gears"], section.Elements("figure").Select(Title));
        Assert.Equal(2, page.Descendants("figure").Count());
    }

    [Fact]
    public void On_paper_a_drawing_is_not_torn_and_never_wider_than_the_page()
    {
        string style = string.Concat(Read(Subjects.Plain.WorkPlan().ToHtml()).Descendants().Where(e => e.Name.LocalName == "style").Select(s => s.Value));
        Assert.Contains("figure { margin: 0.6em 0; break-inside: avoid; }", style, StringComparison.Ordinal);
        Assert.Contains("figure svg { max-width: 100%; height: auto; }", style, StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme:dark", style, StringComparison.Ordinal);
        Assert.Contains("@media print{.lw-drawing{color:#000}", style, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_was_never_made_is_refused()
    {
        WorkPlan plan = Subjects.Plain.WorkPlan();
        Assert.Throws<ArgumentException>(() => plan.ToHtml(default));
        Assert.Throws<ArgumentException>(() => plan.ToHtml([null!]));
    }
}
