namespace Lugwork.Reading;

/// <summary>Labels that are printed on tyres.</summary>
internal sealed partial class LineScan
{
    /// <summary>The printed label that starts at a figure: "700x25C", "28 x 1 5/8 x 1 3/8", "26 x 1 3/8 E.A.3".</summary>
    private bool Label(int first, out int last, out string text)
    {
        SpecItem start = _items[first];
        last = first;
        text = start.Text;
        bool size = start.Value is 700 or 650 or 600 or 550 or 500 or 450 or 400 or 350 or 300 || (start.Value is >= 7 and <= 36 && start.Unit is "" or "in");
        if (!size)
        {
            return false;
        }

        if (DashedLabel(first, ref last, ref text) || SplitLabel(first, ref last, ref text))
        {
            return true;
        }

        if (start.Value >= 300)
        {
            string letter = Letter(last + 1, out int behind);
            last = letter.Length > 0 ? behind : last;
            text += letter;
        }

        for (int parts = 0; parts < 2 && last + 2 < _items.Count && _items[last + 1].IsSign('x') && Free(last + 2); parts++)
        {
            text += $" x {_items[last + 2].Text}";
            last += 2;
        }

        if (start.Value >= 300 && last > first)
        {
            string letter = Letter(last + 1, out int behind);
            if (letter.Length > 0)
            {
                // "700C x 32" is what "700x32C" says.
                text += char.IsLetter(text[^1]) ? "" : letter;
                last = behind;
            }
            else if (text.Length > 3 && char.IsLetter(text[3]) && text.Contains(" x ", StringComparison.Ordinal))
            {
                text = string.Concat(text.AsSpan(0, 3), text.AsSpan(4), text.AsSpan(3, 1));
            }

            text = text.Replace(" ", "", StringComparison.Ordinal);
        }
        else if (last + 3 < _items.Count + 3 && last > first)
        {
            Suffix(ref last, ref text);
            text += HasPartedSuffix(text) ? " E.A.3" : "";
        }
        else if (last == first && start.Value < 400)
        {
            if (last + 1 < _items.Count && _items[last + 1].Text == "er" && _items[last + 1].Glued)
            {
                last++;
                text += "er";
            }
            else
            {
                text += " in";
            }
        }

        return true;
    }

    private string Letter(int at, out int behind)
    {
        behind = at;
        return at < _items.Count && _items[at].Kind == SpecTokenKind.Word && (_items[at].Text is "b" or "c" || (_items[at].Text is "a" or "d" && _items[at].Glued)) ? _items[at].Text.ToUpperInvariant() : "";
    }

    /// <summary>"E.A.3", "S-6", "F.13" behind a label in inches.</summary>
    private void Suffix(ref int last, ref string text)
    {
        string suffix = "";
        int at = last + 1;
        while (at < _items.Count && at <= last + 6 && (_items[at].Kind == SpecTokenKind.Word && _items[at].Text is "e" or "a" or "ea" or "s" or "f" or "k" || (suffix.Length > 0 && (_items[at].IsSign('.') || _items[at].IsSign('-')))))
        {
            suffix += _items[at].Text;
            at++;
        }

        if (suffix.Length > 0 && Free(at) && _items[at].Value is 3 or 5 or 6 or 13)
        {
            text += " " + (suffix.Replace(".", "", StringComparison.Ordinal) + _items[at].Text).ToUpperInvariant() switch
            {
                "EA3" => "E.A.3",
                "E5" => "E.5",
                "F13" => "F.13",
                "S6" or "S-6" => "S-6",
                "S5" or "S-5" => "S-5",
                string other => other,
            };
            last = at;
        }
    }
}
