using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace SpecToNeeds;

/// <summary>The text of a sheet: HTML and Markdown are read by their own libraries, and each row of a table becomes a line.</summary>
internal static class SheetFile
{
    public static string Text(string path) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".HTML" or ".HTM" => OfHtml(File.ReadAllText(path)),
        ".MD" => OfMarkdown(File.ReadAllText(path)),
        _ => File.ReadAllText(path),
    };

    private static string OfHtml(string html)
    {
        IDocument page = new HtmlParser().ParseDocument(html);
        IEnumerable<string> rows = page.QuerySelectorAll("tr").Select(r => string.Join(": ", r.Children.Select(c => c.TextContent.Trim())));
        IEnumerable<string> others = page.QuerySelectorAll("h1, h2, h3, p, li").Select(e => e.TextContent.Trim());
        return string.Join('\n', others.Concat(rows).Where(l => l.Length > 0));
    }

    private static string OfMarkdown(string markdown)
    {
        MarkdownDocument page = Markdown.Parse(markdown, new MarkdownPipelineBuilder().UsePipeTables().Build());
        List<string> lines = [];
        foreach (TableRow row in page.Descendants<TableRow>())
        {
            lines.Add(string.Join(": ", row.OfType<TableCell>().Select(Plain)));
        }

        lines.AddRange(page.Descendants<HeadingBlock>().Select(Plain));
        lines.AddRange(page.Descendants<ListItemBlock>().Select(Plain));
        return string.Join('\n', lines);
    }

    private static string Plain(MarkdownObject block) => string.Concat(block.Descendants<LiteralInline>().Select(l => l.Content.ToString())).Trim();
}
