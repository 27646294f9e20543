using Lugwork.Workshop;
using System.Collections.Immutable;
using System.Text;

namespace Lugwork.Notebooks;

/// <summary>A piece of HTML for the middle of somebody else's page: it is well-formed, has a style of its own class alone, no ids and no scripts, and every text in it is escaped.</summary>
internal sealed class HtmlFragment
{
    /// <summary>Lines and letters in the colours of the notebook, whatever these are.</summary>
    private const string Style =
        ".lugwork{overflow-x:auto;max-width:60rem}.lugwork table{border-collapse:collapse;margin:.4em 0}.lugwork th,.lugwork td{border-bottom:1px solid;padding:.15em .6em;text-align:left;vertical-align:top}"
        + ".lugwork .lw-number{text-align:right}.lugwork caption{text-align:left;font-weight:bold}.lugwork summary{cursor:pointer}.lugwork ol,.lugwork ul{margin:.2em 0}.lugwork svg{max-width:100%;height:auto}";

    private readonly StringBuilder _page = new($"<div class='lugwork'><style>{Style}</style>");

    public HtmlFragment Head(string title) => Raw($"<p><strong>{PlanHtml.Escape(title)}</strong></p>");

    public HtmlFragment Line(string text) => Raw($"<p>{PlanHtml.Escape(text)}</p>");

    /// <summary>A list with its title; nothing where the list is empty.</summary>
    public HtmlFragment List(string title, IEnumerable<string> lines, bool isOrdered = false)
    {
        string[] all = [.. lines];
        return all.Length == 0 ? this : Raw($"{(title.Length > 0 ? $"<p>{PlanHtml.Escape(title)}</p>" : "")}<{(isOrdered ? "ol" : "ul")}>{string.Concat(all.Select(l => $"<li>{PlanHtml.Escape(l)}</li>"))}</{(isOrdered ? "ol" : "ul")}>");
    }

    /// <summary>A table with heads; nothing where it has no row.</summary>
    /// <param name="caption">What it shows.</param>
    /// <param name="rows">The heads, then the rows, all of one length.</param>
    /// <param name="numbersFrom">Column from which on cells are numbers, from 0.</param>
    public HtmlFragment Table(string caption, ImmutableArray<ImmutableArray<string>> rows, int numbersFrom = int.MaxValue)
    {
        if (rows.Length < 2)
        {
            return this;
        }

        Raw("<table>").Raw(caption.Length > 0 ? $"<caption>{PlanHtml.Escape(caption)}</caption>" : "").Raw("<thead>").Row(rows[0], "th scope='col'", "th", numbersFrom).Raw("</thead><tbody>");
        foreach (ImmutableArray<string> row in rows.AsSpan(1..))
        {
            Row(row, "td", "td", numbersFrom);
        }

        return Raw("</tbody></table>");
    }

    /// <summary>What a reader opens by a click.</summary>
    public HtmlFragment Folded(string title, Action<HtmlFragment> inside)
    {
        Raw($"<details><summary>{PlanHtml.Escape(title)}</summary>");
        inside(this);
        return Raw("</details>");
    }

    /// <summary>What is HTML already.</summary>
    public HtmlFragment Raw(string html)
    {
        _page.Append(html);
        return this;
    }

    public override string ToString() => _page + "</div>";

    private HtmlFragment Row(ImmutableArray<string> cells, string open, string close, int numbersFrom)
    {
        Raw("<tr>");
        for (int i = 0; i < cells.Length; i++)
        {
            Raw($"<{open}{(i >= numbersFrom ? " class='lw-number'" : "")}>{PlanHtml.Escape(cells[i])}</{close}>");
        }

        return Raw("</tr>");
    }
}
