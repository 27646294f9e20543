using System.Text;
using System.Xml.Linq;

namespace Lugwork.Drawing;

/// <summary>Writes a finished sheet as text, letter for letter what <see cref="XNode.ToString(SaveOptions)"/> writes without formatting: a sheet has one namespace, and an element of it holds elements or a text, so nothing has to be looked up on the way.</summary>
internal static class DraftWriter
{
    public static string Write(XElement sheet)
    {
        StringBuilder text = new(Usual);
        Element(text, sheet, isRoot: true);
        return text.ToString();
    }

    /// <summary>Letters of a usual drawing.</summary>
    private const int Usual = 24_000;

    private static void Element(StringBuilder text, XElement element, bool isRoot)
    {
        text.Append('<').Append(element.Name.LocalName);
        for (XAttribute? attribute = element.FirstAttribute; attribute is not null; attribute = attribute.NextAttribute)
        {
            text.Append(' ').Append(attribute.Name.LocalName).Append("=\"");
            Escaped(text, attribute.Value, inAttribute: true);
            text.Append('"');
        }

        if (isRoot)
        {
            text.Append(" xmlns=\"").Append(element.Name.NamespaceName).Append('"');
        }

        if (element.IsEmpty)
        {
            text.Append(" />");
            return;
        }

        text.Append('>');
        if (element.HasElements)
        {
            foreach (XElement inner in element.Elements())
            {
                Element(text, inner, isRoot: false);
            }
        }
        else
        {
            Escaped(text, element.Value, inAttribute: false);
        }

        text.Append("</").Append(element.Name.LocalName).Append('>');
    }

    /// <summary>What was cleaned has no control characters: only the signs of the markup are left to be written otherwise.</summary>
    private static void Escaped(StringBuilder text, string value, bool inAttribute)
    {
        ReadOnlySpan<char> rest = value;
        while (rest.IndexOfAny(inAttribute ? "&<>\"" : "&<>") is var at and >= 0)
        {
            text.Append(rest[..at]).Append(rest[at] switch { '&' => "&amp;", '<' => "&lt;", '>' => "&gt;", _ => "&quot;" });
            rest = rest[(at + 1)..];
        }

        text.Append(rest);
    }
}
