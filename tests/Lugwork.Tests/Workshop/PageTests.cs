using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using Lugwork.Tests.Builds;
using Lugwork.Workshop;

namespace Lugwork.Tests.Workshop;

/// <summary>Text, Markdown, HTML and JSON of a plan: the same steps, well-formed, escaped, readable in light and dark.</summary>
public sealed class PageTests
{
    private static readonly WorkPlan Plan = Bench.WholeBicycle().WorkPlan();

    private static readonly string[] Hostile =
    [
        "<script>alert(1)</script>", "</title><img src=x onerror=alert(1)>", "\" onmouseover=\"x", "'><b>", "&lt;&amp;", "]]>", "a\u0000b\u0007c\u001bd", "line\r\n# heading\n- [x] item",
        "\uD800 alone", "\uDC00", "\uFFFF\uFFFE", "\u202Eback\u2066", "| cell | `code` *bold* _x_ [link](javascript:x) ![i](y)", "1. one", "- dash", "===", new string('x', 5_000), "\u2028\u2029",
        "Schutz\u00ADblech \u200Bzero\uFEFF", "\u0645\u06CC\u200C\u0646", "\u200B\u2060", "\uDB40\uDC41tag", "\u061Cmark",
    ];

    public static TheoryData<int> Names => [.. Enumerable.Range(0, Hostile.Length)];

    [Fact]
    public void Every_form_says_every_step_in_order()
    {
        foreach (string page in new[] { Plan.ToString(), Plan.ToMarkdown(), Plan.ToHtml() })
        {
            int at = 0;
            foreach (WorkStep step in Plan.Steps)
            {
                int next = page.IndexOf(step.Title, at, StringComparison.Ordinal);
                Assert.True(next >= at, step.Id);
                at = next;
            }

            Assert.Contains("The maker", page, StringComparison.Ordinal);
            Assert.DoesNotContain("\r", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_page_is_well_formed_with_headings_in_order_and_neither_script_nor_anything_fetched()
    {
        XElement html = Read(Plan.ToHtml());
        Assert.Equal("en", (string?)html.Attribute("lang"));
        int level = 0;
        foreach (int heading in html.Descendants().Where(e => e.Name.LocalName is ['h', >= '1' and <= '6']).Select(e => e.Name.LocalName[1] - '0'))
        {
            Assert.InRange(heading, 1, level + 1);
            level = heading;
        }

        Assert.Single(html.Descendants("h1"));
        Assert.Equal(Plan.Steps.Length, html.Descendants("article").Count());
        Assert.Equal(Plan.Steps.Length, html.Descendants("h3").Count());

        // A drawing is held by the tests of its own.
        html.Descendants().Where(e => e.Name.LocalName == "svg").Remove();
        string[] allowed = ["figure", "figcaption", "html", "head", "meta", "title", "style", "body", "header", "main", "section", "article", "h1", "h2", "h3", "h4", "p", "ul", "ol", "li", "div", "span", "nav", "a"];
        Assert.All(html.DescendantsAndSelf(), e => Assert.Contains(e.Name.LocalName, allowed));
        Assert.All(html.Descendants().Attributes(), a => Assert.Contains(a.Name.LocalName, new[] { "charset", "name", "content", "id", "class", "href" }));
        string[] places = [.. html.Descendants("article").Select(e => $"#{(string?)e.Attribute("id")}")];
        Assert.Equal(places, html.Descendants("nav").Single().Descendants("a").Select(e => (string?)e.Attribute("href")));
        Assert.All(html.Descendants("a"), e => Assert.Contains((string?)e.Attribute("href"), places));
        Assert.Equal(Plan.Steps.Sum(s => s.After.Length) + Plan.Steps.Length, html.Descendants("a").Count());
        Assert.Equal(Plan.Steps.Length + 1, html.Descendants("ol").Count());
        Assert.Equal(["utf-8"], html.Descendants("meta").Select(m => (string?)m.Attribute("charset")).OfType<string>());
        Assert.Equal("width=device-width, initial-scale=1", (string?)html.Descendants("meta").Single(m => (string?)m.Attribute("name") == "viewport").Attribute("content"));
        Assert.DoesNotContain("url(", PlanStyle.Sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", PlanStyle.Sheet, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_hostile_name_is_text_in_every_form(int index)
    {
        string name = Hostile[index];
        WorkPlan plan = Build.From(Frame.Read("material steel") with { Name = name }, name).With(Saddle.Read("7 mm round") with { Name = name }).WorkPlan()
            .With(new WorkStep { Id = name, Title = name, Stage = WorkStage.Preparation, Skill = WorkSkill.Practised, Time = WorkTime.HalfHour, Does = [name] });
        XElement html = Read(plan.ToHtml());
        Assert.Equal(PlanPage.OneLine(name).Trim().Length == 0 ? "Work plan" : $"Work plan: {PlanPage.OneLine(name)}".Trim(), html.Descendants("h1").Single().Value.Trim());
        Assert.Contains(html.Descendants("li"), li => li.Value == PlanPage.OneLine(name));
        string[] elements = ["script", "img", "b"];
        Assert.DoesNotContain(html.Descendants(), e => elements.Contains(e.Name.LocalName));
        Assert.All(html.Descendants("a"), e => Assert.Matches("^#step-[0-9]+$", (string?)e.Attribute("href")));

        Assert.Equal(plan.Steps.Length, plan.ToMarkdown().Split('\n').Count(l => l.StartsWith("### ", StringComparison.Ordinal)));
        Assert.DoesNotContain("<script", plan.ToMarkdown(), StringComparison.Ordinal);
        Assert.DoesNotContain(plan.ToString(), c => char.IsControl(c) && c != '\n');
        Assert.Single(plan.ToString().Split('\n'), l => l.StartsWith("===", StringComparison.Ordinal));
        using JsonDocument json = JsonDocument.Parse(plan.ToJson());
        Assert.Equal(plan.Steps.Length, json.RootElement.GetProperty("steps").GetArrayLength());
    }

    [Fact]
    public void Of_characters_without_width_the_joiners_stay_and_the_others_go()
    {
        Assert.Equal("Schutzblech", PlanPage.OneLine("Schutz\u00ADblech\uFEFF\u200B"));
        Assert.Equal("\u0645\u06CC\u200C\u0646", PlanPage.OneLine("\u0645\u06CC\u200C\u0646"));
        Assert.Equal("\U0001F469\u200D\U0001F527", PlanPage.OneLine("\U0001F469\u200D\U0001F527"));
        Assert.Equal("back x", PlanPage.OneLine("\u202Eback\u2066\tx"));
        Assert.Equal("tag \uFFFD \uFFFD", PlanPage.OneLine("\U000E0041tag \uD800 \uFFFE"));
    }

    /// <summary>What the text says of a step, its JSON says too, in the same words.</summary>
    [Fact]
    public void The_json_says_all_that_the_text_says()
    {
        Build build = Bench.WholeBicycle();
        Build half = Build.From(Frame.Read("material steel; head tube length 140 \u00B1 1; seatTube 27.2")).With(Seatpost.Read("31.6 x 350")).With(Fork.Read("steerer kind threadless; condition used")).With(Headset.Read("upper ZS44/28.6; lower ZS56/40; threadless; upper stack 12; lower stack 10")).With(Stem.Read("28.6 clamp; clamp height 40; spacers below 15; spacers above 5"));
        foreach (WorkPlan plan in new[] { build.WorkPlan(), half.WorkPlan() })
        {
            using JsonDocument json = JsonDocument.Parse(plan.ToJson());
            HashSet<string> said = [.. Strings(json.RootElement)];
            foreach (WorkStep step in plan.Steps)
            {
                IEnumerable<string> words = [PlanPage.Class(step), .. step.Does, .. step.Checks, .. step.Cautions.Select(c => c.Text), .. step.Tools.Select(t => t.Name), .. step.Consumables.Select(s => s.Name), .. step.Figures.Select(f => f.ToString()), .. step.Torques.Select(t => t.ToString()), .. step.Open.Select(f => f.Sentence), .. step.Open.Select(f => f.Joint!.Name), .. step.After.Select(a => a.Because)];
                Assert.All(words, w => Assert.Contains(w, said));
            }

            Assert.All(PlanPage.Head(plan)[0].Lines, l => Assert.Contains(l, said));
            Assert.All(plan.Inspection.SelectMany(p => p.Figures).Select(f => f.ToString()), l => Assert.Contains(l, said));
            Assert.Equal(plan.AtHome.Select(s => s.Id), json.RootElement.GetProperty("atHome").EnumerateArray().Select(e => e.GetString()));
            Assert.Equal(plan.Tools.Count(t => t.IsOfTheShop), json.RootElement.GetProperty("tools").EnumerateArray().Count(t => t.GetProperty("isOfTheShop").GetBoolean()));
        }

        static IEnumerable<string> Strings(JsonElement e) => e.ValueKind switch
        {
            JsonValueKind.String => [e.GetString()!],
            JsonValueKind.Array => e.EnumerateArray().SelectMany(Strings),
            JsonValueKind.Object => e.EnumerateObject().SelectMany(p => Strings(p.Value)),
            _ => [],
        };
    }

    [Fact]
    public void Short_lines_stand_in_columns_and_paper_has_its_own_size_and_colours()
    {
        XElement html = Read(Plan.ToHtml());
        XElement[] columns = [.. html.Descendants("ul").Where(e => (string?)e.Attribute("class") == "short")];
        Assert.True(columns.Length >= 2);
        Assert.All(columns, c => Assert.All(c.Elements("li"), li => Assert.InRange(li.Value.Length, 1, 70)));
        Assert.DoesNotContain(html.Descendants("ol"), e => (string?)e.Attribute("class") == "short");
        Assert.Contains("@page { size: A4;", PlanStyle.Sheet, StringComparison.Ordinal);
        Assert.Contains("overflow-wrap: anywhere", PlanStyle.Sheet, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"width:\s*[0-9]{3,}px", PlanStyle.Sheet);
        Assert.All(html.Descendants().Attributes("class").Select(a => a.Value).Where(c => !c.StartsWith("lw-", StringComparison.Ordinal)), c => Assert.Contains($".{c} ", PlanStyle.Sheet + " .number ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("# heading", "\\# heading")]
    [InlineData("- item", "\\- item")]
    [InlineData("12. item", "12\\. item")]
    [InlineData("M12 - 1.5", "M12 - 1.5")]
    [InlineData("a*b_c`d|e<f&g", "a\\*b\\_c\\`d\\|e&lt;f&amp;g")]
    public void Markdown_marks_are_escaped_where_they_would_mark(string text, string expected) => Assert.Equal(expected, PlanMarkdown.Plain(text));

    [Fact]
    public void Every_pair_of_colours_has_a_contrast_of_four_and_a_half()
    {
        string[] blocks = [.. PlanStyle.Sheet.Split(":root {").Skip(1).Select(b => b[..b.IndexOf('}', StringComparison.Ordinal)])];
        Assert.Equal(3, blocks.Length);
        foreach (string block in blocks)
        {
            Dictionary<string, string> colour = block.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(p => p.Split(": ")).ToDictionary(p => p[0], p => p[1]);
            foreach ((string ink, string paper) in new[] { ("--ink", "--paper"), ("--soft", "--paper"), ("--accent", "--paper"), ("--warn-ink", "--warn-paper"), ("--ink", "--warn-paper") })
            {
                double contrast = Contrast(colour[ink], colour[paper]);
                Assert.True(contrast >= 4.5, $"{ink} on {paper}: {contrast:0.00}");
            }
        }
    }

    [Fact]
    public void The_contrast_of_black_and_white_is_21() => Assert.Equal(21, Contrast("#000000", "#ffffff"), 6);

    [Fact]
    public void The_json_holds_torques_with_every_source_and_figures_with_what_they_lack()
    {
        using JsonDocument json = JsonDocument.Parse(Plan.ToJson());
        JsonElement[] steps = [.. json.RootElement.GetProperty("steps").EnumerateArray()];
        JsonElement rotor = steps.Single(s => s.GetProperty("id").GetString() == "fit-front-rotor").GetProperty("torques")[0];
        Assert.Equal("Overlap", rotor.GetProperty("agreement").GetString());
        Assert.True(rotor.GetProperty("ranges")[3].GetProperty("isOfOtherParts").GetBoolean());
        Assert.Equal(4, rotor.GetProperty("ranges").GetArrayLength());
        Assert.Equal(6.2m, rotor.GetProperty("ranges")[0].GetProperty("most").GetDecimal());
        Assert.True(steps.Single(s => s.GetProperty("id").GetString() == "fit-front-tyre").GetProperty("figures")[0].GetProperty("lacking").GetArrayLength() > 0);
    }

    /// <summary>The passes over all bolts are lists to tick, short enough to be worked off; the pages stand where a bolt is first tightened.</summary>
    [Fact]
    public void A_pass_over_the_bolts_is_a_short_list_to_tick_with_every_figure()
    {
        foreach (string id in new[] { "final-torque", "recheck" })
        {
            WorkStep step = Plan.Find(id)!;
            PlanBlock pass = PlanPage.Of(Plan, step).Single(b => b.Title.StartsWith("Torque", StringComparison.Ordinal));
            Assert.True(pass.IsTicked);
            Assert.Contains("the maker's figure rules", pass.Title, StringComparison.Ordinal);
            Assert.Equal(step.Torques.Length, pass.Lines.Length);
            Assert.All(step.Torques.Zip(pass.Lines), t => Assert.True(t.First.Ranges.All(r => t.Second.Contains(r.ToString(), StringComparison.Ordinal) && t.Second.Contains(r.Of, StringComparison.Ordinal)), t.Second));
            Assert.All(pass.Lines, l => Assert.InRange(l.Length, 10, 330));
        }

        Assert.Contains("contradict", TorqueTable.Find("caliper-bolts")!.Brief, StringComparison.Ordinal);
        Assert.Contains("no page was read", TorqueTable.Find("flat-mount-bolts")!.Brief, StringComparison.Ordinal);
        Assert.Contains("2 to 4 N m (with a plate that locks them)", TorqueTable.Find("rotor-bolts")!.Brief, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_of_parts_that_do_not_mate_says_so_first()
    {
        WorkPlan plan = Build.From(Frame.Read("seatTube 27.2; leastInsertion 80; mostInsertion 210")).With(Seatpost.Read("31.6 x 350")).WorkPlan();
        Assert.Contains("Do not follow this plan yet", plan.ToString(), StringComparison.Ordinal);
        Assert.Contains(plan.Find("fit-seatpost")!.Open, f => f.Joint!.Id == "seatpost-in-seat-tube");
        Assert.DoesNotContain("Do not follow this plan yet", Plan.ToString(), StringComparison.Ordinal);
    }

    private static XElement Read(string html) => XDocument.Parse(html[html.IndexOf("<html", StringComparison.Ordinal)..], LoadOptions.PreserveWhitespace).Root!;

    private static double Contrast(string one, string other)
    {
        (double a, double b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double[] parts = [.. Enumerable.Range(0, 3).Select(i => int.Parse(colour.AsSpan(1 + (2 * i), 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255d).Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4))];
        return (0.2126 * parts[0]) + (0.7152 * parts[1]) + (0.0722 * parts[2]);
    }
}
