using Lugwork.Steering;

namespace Lugwork;

/// <summary>Text of a headset code: "ZS44/28.6 | EC44/40" in the spellings of the trade.</summary>
internal static class HeadsetText
{
    private const string Expected = "two halves with a bar between are expected, such as ZS44/28.6|ZS56/40";

    /// <summary>The two halves of a code; false where there are not two.</summary>
    public static bool TrySplit(string text, out string upper, out string lower)
    {
        for (int i = 1; i < text.Length - 1; i++)
        {
            if (Separates(text, i))
            {
                upper = text[..i].Trim();
                lower = text[(i + 1)..].Trim();
                return upper.Length > 0 && lower.Length > 0 && !Contains(lower);
            }
        }

        upper = "";
        lower = "";
        return false;
    }

    /// <summary>Reads both ends of a head tube; what stands after a slash and digit is the headset's, not the frame's.</summary>
    public static bool TryEnds(string text, out Known<HeadTubeBore> upper, out Known<HeadTubeBore> lower, out string reason)
    {
        upper = default;
        lower = default;
        reason = Expected;
        return TrySplit(text, out string first, out string second)
            && KnownText.TryRead(Half(first).Cup, null, out upper, out _, out reason)
            && KnownText.TryRead(Half(second).Cup, null, out lower, out _, out reason);
    }

    /// <summary>Reads a half: cup, and steerer or seat where it is said.</summary>
    public static bool TryHalf<T>(string text, Func<HeadsetCup, bool> where, out Known<HeadsetCup> cup, out Known<T> size, out string reason)
        where T : IInterfaceValue<T>
    {
        (string type, string second) = Half(text);
        size = default;
        return KnownText.TryRead(type, where, out cup, out _, out reason)
            && (second.Length == 0 || KnownText.TryRead(second, null, out size, out _, out reason));
    }

    private static (string Cup, string Size) Half(string text)
    {
        int slash = text.IndexOf('/', StringComparison.Ordinal);
        return slash < 0 ? (text.Trim(), "") : (text[..slash].Trim(), text[(slash + 1)..].Trim());
    }

    private static bool Contains(string half)
    {
        for (int i = 1; i < half.Length - 1; i++)
        {
            if (Separates(half, i))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Separates(string text, int at)
    {
        char next = text[(at + 1)..].TrimStart() is [var first, ..] ? first : ' ';
        return text[at] switch
        {
            '|' or ';' => true,
            ',' => !char.IsAsciiDigit(next),
            '/' => char.IsAsciiLetter(next) || (IsBore(text[..at]) && IsBore(text[(at + 1)..])),
            'I' or 'i' => char.IsWhiteSpace(text[at - 1]) && char.IsWhiteSpace(text[at + 1]),
            ' ' or '\t' => char.IsAsciiLetter(next) && !IsBar(text, at) && char.IsAsciiDigit(text[..at].TrimEnd() is [.., var last] ? last : ' '),
            char c => TextCursor.IsDash(c),
        };
    }

    // "44/56" and "44/44" name two bores, "44/28.6" a bore and a steerer.
    private static bool IsBore(string text) => text.Trim() is "34" or "37" or "44" or "49" or "55" or "56";

    private static bool IsBar(string text, int at) => text[at..].TrimStart() is ['I' or 'i', ' ', ..];
}
