using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Lugwork.Drawing;

namespace Lugwork.Workshop;

/// <summary>A plan as one HTML page that is well-formed XML too: headings in order, no script, nothing fetched, every text escaped.</summary>
internal static class PlanHtml
{
    public static string Write(WorkPlan plan, ImmutableArray<LineDrawing> drawings)
    {
        ImmutableArray<int> places = [.. drawings.Select(d => PlanPictures.StepOf(plan, d))];
        string title = Escape(PlanPage.Title(plan));
        StringBuilder page = new();
        page.Append("<!DOCTYPE html>\n<html lang='en'>\n<head>\n<meta charset='utf-8' />\n<meta name='viewport' content='width=device-width, initial-scale=1' />\n<meta name='color-scheme' content='light dark' />\n");
        page.Append("<title>").Append(title).Append("</title>\n<style>\n").Append(PlanStyle.Sheet).Append("</style>\n</head>\n<body>\n");
        page.Append("<header>\n<h1>").Append(title).Append("</h1>\n</header>\n<main>\n");
        foreach (PlanBlock block in PlanPage.Head(plan))
        {
            Section(page, block);
        }

        page.Append("<nav>\n<h2>Steps at a glance</h2>\n<ol>\n");
        for (int i = 0; i < plan.Steps.Length; i++)
        {
            page.Append(CultureInfo.InvariantCulture, $"<li><a href='#step-{i + 1}'>{Escape(plan.Steps[i].Title)}</a></li>\n");
        }

        page.Append("</ol>\n</nav>\n<section>\n<h2>Steps</h2>\n");
        for (int i = 0; i < plan.Steps.Length; i++)
        {
            WorkStep step = plan.Steps[i];
            page.Append(CultureInfo.InvariantCulture, $"<article id='step-{i + 1}'>\n<h3><span class='number'>{i + 1}.</span> {Escape(step.Title)}</h3>\n<p class='soft'>{Escape(PlanPage.Class(step))}</p>\n");
            foreach (PlanBlock block in PlanPage.Of(plan, step))
            {
                Block(page, block, "h4");
            }

            PlanPictures.Write(page, drawings.Where((_, at) => places[at] == i));
            page.Append("</article>\n");
        }

        page.Append("</section>\n");
        if (places.Contains(PlanPictures.NoStep))
        {
            page.Append("<section>\n<h2>Drawings</h2>\n");
            PlanPictures.Write(page, drawings.Where((_, at) => places[at] == PlanPictures.NoStep));
            page.Append("</section>\n");
        }

        foreach (PlanBlock block in PlanPage.Tail(plan))
        {
            Section(page, block);
        }

        page.Append("</main>\n</body>\n</html>\n");
        return page.ToString();
    }

    /// <summary>One line of text, safe between tags and in quoted attributes; well-formed whatever it holds.</summary>
    internal static string Escape(string text)
    {
        StringBuilder safe = new(text.Length + 16);
        foreach (char c in PlanPage.OneLine(text))
        {
            _ = c switch
            {
                '&' => safe.Append("&amp;"),
                '<' => safe.Append("&lt;"),
                '>' => safe.Append("&gt;"),
                '"' => safe.Append("&quot;"),
                '\'' => safe.Append("&#39;"),
                _ => safe.Append(c),
            };
        }

        return safe.ToString();
    }

    private static void Section(StringBuilder page, PlanBlock block)
    {
        page.Append("<section>\n");
        Block(page, block, "h2");
        page.Append("</section>\n");
    }

    /// <summary>Many short lines stand in columns, where there is room for them.</summary>
    private static bool IsShort(PlanBlock block) => block is { IsList: true, IsOrdered: false, Lines.Length: >= 6 } && block.Lines.All(l => l.Length <= 70);

    private static void Block(StringBuilder page, PlanBlock block, string heading)
    {
        string kind = block.IsWarning ? " class='warning'" : block.IsTicked ? " class='ticks'" : IsShort(block) ? " class='short'" : "";
        page.Append(CultureInfo.InvariantCulture, $"<{heading}>{Escape(block.Title)}</{heading}>\n");
        string list = !block.IsList ? "div" : block.IsOrdered ? "ol" : "ul";
        string item = block.IsList ? "li" : "p";
        page.Append(CultureInfo.InvariantCulture, $"<{list}{kind}>\n");
        for (int i = 0; i < block.Lines.Length; i++)
        {
            string line = Escape(block.Lines[i]);
            page.Append(CultureInfo.InvariantCulture, $"<{item}>{(block.Steps.IsEmpty ? line : $"<a href='#step-{block.Steps[i]}'>{line}</a>")}</{item}>\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"</{list}>\n");
    }
}

/// <summary>How the page looks: dark on light, light on dark where the reader asks for it, black on white on paper. Every pair of colours has a contrast of 4.5 or more; a test computes it.</summary>
internal static class PlanStyle
{
    public const string Sheet = """
        :root { --paper: #ffffff; --ink: #1a1a1a; --soft: #555555; --accent: #0b4f8a; --warn-paper: #fdf0ee; --warn-ink: #7a1712; --line: #c8c8c8; }
        @media (prefers-color-scheme: dark) { :root { --paper: #16181c; --ink: #e8e8e8; --soft: #b4b8bf; --accent: #8ab8ff; --warn-paper: #33201f; --warn-ink: #ffb4a8; --line: #4a4d55; } }
        @media print { :root { --paper: #ffffff; --ink: #000000; --soft: #444444; --accent: #000000; --warn-paper: #ffffff; --warn-ink: #000000; --line: #999999; } }
        body { margin: 0 auto; padding: 1rem; max-width: 46rem; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; overflow-wrap: anywhere; }
        h1, h2, h3, h4 { line-height: 1.25; margin: 1.2em 0 0.3em; }
        h2, h3 { color: var(--accent); }
        h4 { font-size: 1rem; margin-top: 0.8em; }
        article { border-top: 1px solid var(--line); padding-top: 0.2rem; }
        ul, ol { margin: 0.2em 0; padding-left: 1.8em; }
        a { color: var(--accent); }
        p { margin: 0.3em 0; }
        .soft { color: var(--soft); }
        .warning { background: var(--warn-paper); color: var(--warn-ink); border-left: 4px solid var(--warn-ink); padding: 0.3rem 0.3rem 0.3rem 1.8em; }
        .short { columns: 18em; }
        .ticks { list-style: "\2610  "; }
        figure { margin: 0.6em 0; break-inside: avoid; }
        figure svg { max-width: 100%; height: auto; }
        figcaption { color: var(--soft); }
        @page { size: A4; margin: 14mm; }
        @media print { body { max-width: none; padding: 0; font-size: 9pt; line-height: 1.3; } h1, h2, h3, h4 { margin: 0.7em 0 0.2em; } h4 { font-size: 9pt; margin-top: 0.4em; } p { margin: 0.1em 0; } nav ol { columns: 2; } .short { columns: 2; } h2, h3, h4, .soft { break-after: avoid; } li, p { break-inside: avoid; } a { text-decoration: none; } article { break-inside: auto; } .warning { padding-right: 0; } figure svg { max-height: 230mm; } }

        """;
}
