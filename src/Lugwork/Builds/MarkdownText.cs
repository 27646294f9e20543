using System.Text;

namespace Lugwork;

/// <summary>Text in the cells of a Markdown table, where a bar would end the cell. Line ends are line feeds alone.</summary>
internal static class MarkdownText
{
    /// <summary>Plain text: what Markdown would read as markup is escaped.</summary>
    public static string Plain(string text)
    {
        StringBuilder plain = new(text.Length);
        foreach (char c in text)
        {
            plain.Append(c switch
            {
                '|' or '*' or '`' or '\\' or '[' or ']' => $"\\{c}",
                '<' => "&lt;",
                '\n' or '\r' => " ",
                _ => c.ToString(),
            });
        }

        return plain.ToString();
    }

    /// <summary>Text as code: a bar is escaped in a table even there, everything else stands as it is.</summary>
    public static string Code(string text) => $"`{text.Replace("|", "\\|", StringComparison.Ordinal)}`";

    /// <summary>A row of a table.</summary>
    public static StringBuilder Row(this StringBuilder page, params ReadOnlySpan<string> cells)
    {
        page.Append('|');
        foreach (string cell in cells)
        {
            page.Append(' ').Append(cell).Append(cell.Length > 0 ? " |" : "|");
        }

        return page.Append('\n');
    }

    /// <summary>The head of a table.</summary>
    public static StringBuilder Head(this StringBuilder page, params ReadOnlySpan<string> titles)
    {
        page.Append('\n').Row(titles).Append('|');
        foreach (string _ in titles)
        {
            page.Append(" --- |");
        }

        return page.Append('\n');
    }
}
