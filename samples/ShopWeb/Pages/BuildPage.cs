using System.Collections.Immutable;
using Lugwork;
using Lugwork.Drawing;
using ShopWeb.Judging;

namespace ShopWeb.Pages;

/// <summary>The build: what the build is so far, what every slot has to be, and what it comes to.</summary>
internal static class BuildPage
{
    public static IResult Of(Cart cart, ImmutableDictionary<Slot, SlotCounts> counts)
    {
        Build build = cart.ToBuild();
        FitReport report = build.Check();
        NeedsSheet needs = build.Needs();
        return Layout.Page(cart.FrameName, Html.Of(
            $"""
            <h1>{Layout.Capital(cart.FrameName)}</h1>
            {Html.Join(cart.Gone.Select(id => Html.Of($"""<p role="alert" class="note">Article {id} is no longer on the shelf and was taken out.</p>""")))}
            {Layout.Assumed(cart, "/build")}
            <p class="sum">{Layout.Badge(report.Findings.IsEmpty ? Verdict.NotJudged : report.Verdict, capital: true)} <span>{Said(report)}</span> <strong>{cart.Price:0.00} EUR</strong>, {cart.Parts.Length} parts, {cart.Kilograms:0.00} kg</p>
            <nav aria-label="On this page"><a href="#needs">Needs</a> <a href="#verdict">Verdict</a> <a href="#small">Small parts</a> <a href="#drawings">Drawings</a> <a href="{cart.Address("/build.json")}">Build file</a></nav>
            <section id="needs"><h2>Needs</h2>
            <p>What every slot has to be beside what is here. A part that is chosen changes what the others have to be.</p>
            <ul class="needs">{needs.Select(n => Need(n, cart, counts))}</ul>
            {More(build, needs, cart, counts)}
            </section>
            {VerdictSection.Of(report)}
            <section id="small"><h2>Small parts</h2>{Small(build)}</section>
            <section id="drawings"><h2>Drawings</h2>{Drawn(build, cart)}</section>
            """));
    }

    private static string Said(FitReport report) => report.Findings.IsEmpty
        ? "No two parts meet yet."
        : $"{report.Findings.Count(f => f.Verdict == Verdict.Fits)} of {report.Findings.Length} joints fit as they are; {(report.IsComplete ? "every slot is filled." : $"{report.Missing.Length} slots are empty.")}";

    private static Html Need(Need need, Cart cart, ImmutableDictionary<Slot, SlotCounts> counts)
    {
        Chosen? chosen = cart.Parts.FirstOrDefault(p => p.Slot == need.Slot);
        string[] lines = [.. need.Rows];
        return Html.Of(
            $"""
            <li id="slot-{need.Slot.Key}"><h3>{Layout.Capital(need.Slot.Name)}</h3>
            {Pick(need.Slot, chosen, cart, counts)}
            {Html.If(chosen is null && lines.Length > 0, () => Html.Of($"<details><summary>{lines.Length} {(lines.Length == 1 ? "requirement" : "requirements")}<span class=\"hidden\"> of the {need.Slot.Name}</span></summary>{Layout.List(lines)}</details>"))}
            </li>
            """);
    }

    private static Html Pick(Slot slot, Chosen? chosen, Cart cart, ImmutableDictionary<Slot, SlotCounts> counts)
    {
        if (chosen is not null)
        {
            return Html.Of(
                $"""
                <p class="chosen">{chosen.Article.Name} <span class="price">{chosen.Article.Price:0.00} EUR</span> <span class="ways">
                <a href="{cart.Address("/parts/" + slot.Key)}">Change<span class="hidden"> the {slot.Name}</span></a>
                <a href="{cart.Address("/build", without: slot)}#slot-{slot.Key}">Take out<span class="hidden"> the {slot.Name}</span></a></span></p>
                """);
        }

        SlotCounts here = counts.GetValueOrDefault(slot) ?? new(0, 0, 0, 0, 0);
        return here.Total == 0
            ? Html.Of($"<p>We have none.</p>")
            : Html.Of($"""<p class="pick"><a class="button" href="{cart.Address("/parts/" + slot.Key, null, null, ("list", First(here)))}">Choose<span class="hidden"> the {slot.Name}</span></a> <span class="tally">{Tally(here)}</span></p>""");
    }

    private static string First(SlotCounts here) =>
        here.Fits > 0 ? Lists.Word(Verdict.Fits) : here.NeedsPart > 0 ? Lists.Word(Verdict.NeedsPart) : here.NeedsMeasuring > 0 ? Lists.Word(Verdict.NeedsMeasuring) : Lists.Word(here.NotJudged > 0 ? Verdict.NotJudged : Verdict.Fits);

    public static string Tally(SlotCounts here)
    {
        string[] said =
        [
            here.Fits > 0 ? $"{here.Fits:#,0} fit" : "",
            here.NeedsPart > 0 ? $"{here.NeedsPart:#,0} fit with another part" : "",
            here.NeedsMeasuring > 0 ? $"{here.NeedsMeasuring:#,0} to measure first" : "",
            here.NotJudged > 0 ? $"{here.NotJudged:#,0} meet nothing yet" : "",
            here.DoNotFit > 0 ? $"{here.DoNotFit:#,0} do not fit" : "",
        ];
        return string.Join(", ", said.Where(s => s.Length > 0));
    }

    private static Html More(Build build, NeedsSheet needs, Cart cart, ImmutableDictionary<Slot, SlotCounts> counts)
    {
        HashSet<Slot> shown = [.. needs.Select(n => n.Slot)];
        Slot[] others = [.. Slot.All.Where(s => counts.ContainsKey(s) && !shown.Contains(s) && s != Slot.Frame)];
        return Html.If(others.Length > 0, () => Html.Of(
            $"""<details{Html.If(others.Any(s => build[s] is not null), () => Html.Of($" open"))}><summary>Optional parts</summary><ul class="needs">{others.Select(s => Html.Of($"<li id=\"slot-{s.Key}\"><h3>{Layout.Capital(s.Name)}</h3>{Pick(s, cart.Parts.FirstOrDefault(p => p.Slot == s), cart, counts)}</li>"))}</ul></details>"""));
    }

    private static Html Small(Build build)
    {
        ImmutableArray<SmallPart> parts = build.SmallParts();
        return parts.IsEmpty
            ? Html.Of($"<p>Nothing is asked for yet.</p>")
            : Html.Of($"<p>What it takes beside the main parts.</p><ul class=\"small\">{parts.Select(p => Html.Of($"<li>{Layout.Capital(p.What)} <small>for: {p.Because}</small></li>"))}</ul>");
    }

    private static Html Drawn(Build build, Cart cart)
    {
        ImmutableArray<LineDrawing> drawings = Drawings.All(build);
        return drawings.IsEmpty
            ? Html.Of($"<p>A drawing comes with the first part that meets the frame.</p>")
            : Html.Of($"<div class=\"drawings\">{drawings.Select((d, i) => Figure(d, i, cart))}</div>");
    }

    private static Html Figure(LineDrawing drawing, int number, Cart cart) => Html.Of(
        $"""
        <figure><a href="{cart.Address($"/drawings/{number}.svg")}"><img src="{cart.Address($"/drawings/{number}.svg")}" alt="{drawing.Title}, scale {drawing.Scale}" loading="lazy" width="{(long)(drawing.WidthMillimetres * 4)}" height="{(long)(drawing.HeightMillimetres * 4)}"></a>
        <figcaption>{drawing.Title}, {drawing.Scale}<details><summary>In words<span class="hidden">: {drawing.Title}</span></summary><p>{drawing.Description}</p></details></figcaption></figure>
        """);
}
