namespace Lugwork.Reading;

/// <summary>The marks around a line that was cut out of a file: <c>"rear": "12x142",</c>, or a field of a table in which marks of inches are doubled. They are of the file, and no inches.</summary>
internal readonly struct Quotation
{
    private const int LongestKey = 40;

    private readonly int _first;
    private readonly int _behindKey;
    private readonly int _value;
    private readonly int _last;
    private readonly bool _isDoubled;

    private Quotation(int first, int behindKey, int value, int last, bool isDoubled)
    {
        (_first, _behindKey, _value, _last, _isDoubled) = (first, behindKey, value, last, isDoubled);
    }

    public bool IsThere => _last > 0;

    public static Quotation Of(ReadOnlySpan<char> text)
    {
        int first = text.IndexOf('"');
        int last = text.TrimEnd(" \t,").Length - 1;
        if (first < 0 || last <= first || text[last] != '"' || !text[..first].IsWhiteSpace())
        {
            return default;
        }

        if (text[(last + 1)..].IsWhiteSpace() && IsDoubled(text[(first + 1)..last]))
        {
            return new(first, -1, -1, last, isDoubled: true);
        }

        int key = first + 1;
        while (key < last && key - first < LongestKey && (char.IsLetter(text[key]) || text[key] is ' ' or '_' or '-' or '.' or '/'))
        {
            key++;
        }

        int value = key + 1;
        while (value < last && text[value] is ' ' or ':' or '\t')
        {
            value++;
        }

        return text[key] == '"' && value < last && text[value] == '"' && text[key..value].Contains(':') && IsClosedAt(text, value + 1, last) ? new(first, key, value, last, isDoubled: false) : default;
    }

    /// <summary>The mark is one of those around, and says nothing.</summary>
    public bool Passes(int at) => IsThere && (at == _first || at == _behindKey || at == _value || at == _last);

    /// <summary>A mark between stands twice for once.</summary>
    public bool Doubles(int at) => _isDoubled && at > _first && at < _last;

    /// <summary>There are marks, and each is doubled.</summary>
    private static bool IsDoubled(ReadOnlySpan<char> text)
    {
        bool any = false;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] != '"')
            {
                continue;
            }

            if (i + 1 >= text.Length || text[i + 1] != '"')
            {
                return false;
            }

            any = true;
            i++;
        }

        return any;
    }

    /// <summary>No mark between closes the value before its end.</summary>
    private static bool IsClosedAt(ReadOnlySpan<char> text, int from, int last)
    {
        for (int i = from; i < last; i++)
        {
            if (text[i] == '"' && text[i - 1] != '\\')
            {
                return false;
            }
        }

        return true;
    }
}
