using System.Text;

namespace ShopWeb.Stock;

/// <summary>Draws articles from a row: the same seed draws the same.</summary>
internal sealed class ArticleDraw(int seed)
{
    private readonly Dictionary<string, string> _shown = [];
    private uint _state = (uint)seed;

    /// <summary>An article: its name without its number, and its short form.</summary>
    public (string Name, string Text) From(ArticleRow row)
    {
        _shown.Clear();
        StringBuilder text = new();
        Draw(row.Text, text);
        string name = row.Name;
        foreach ((string word, string shown) in _shown)
        {
            name = name.Replace($"{{{word}}}", shown, StringComparison.Ordinal);
        }

        return (name, string.Join("; ", text.ToString().Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)));
    }

    /// <summary>A number from 0 to below.</summary>
    public int Below(int below)
    {
        _state = unchecked((_state * 1_664_525u) + 1_013_904_223u);
        return (int)((_state >> 16) % (uint)below);
    }

    private void Draw(string pattern, StringBuilder text)
    {
        int at = 0;
        while (at < pattern.Length)
        {
            int open = pattern.IndexOf('{', at);
            if (open < 0)
            {
                text.Append(pattern, at, pattern.Length - at);
                return;
            }

            text.Append(pattern, at, open - at);
            int close = Close(pattern, open);
            One(pattern[(open + 1)..close], text);
            at = close + 1;
        }
    }

    private void One(string inside, StringBuilder text)
    {
        List<string> choices = Choices(inside);
        int colon = choices[0].IndexOf(':', StringComparison.Ordinal);
        string? word = colon > 0 && choices[0].AsSpan(0, colon).IndexOfAny(" {;") < 0 ? choices[0][..colon] : null;
        choices[0] = word is null ? choices[0] : choices[0][(colon + 1)..];
        string[] drawn = choices[Below(choices.Count)].Split('~');
        if (word is not null)
        {
            _shown[word] = drawn[^1];
        }

        Draw(drawn[0], text);
    }

    private static List<string> Choices(string inside)
    {
        List<string> choices = [];
        int depth = 0;
        int from = 0;
        for (int i = 0; i <= inside.Length; i++)
        {
            char c = i == inside.Length ? '|' : inside[i];
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            if (c == '|' && depth == 0)
            {
                choices.Add(inside[from..i]);
                from = i + 1;
            }
        }

        return choices;
    }

    private static int Close(string pattern, int open)
    {
        int depth = 0;
        for (int i = open; ; i++)
        {
            depth += pattern[i] == '{' ? 1 : pattern[i] == '}' ? -1 : 0;
            if (depth == 0)
            {
                return i;
            }
        }
    }
}
