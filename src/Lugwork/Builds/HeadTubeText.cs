using Lugwork.Steering;

namespace Lugwork;

/// <summary>The two ends of a head tube and the two halves of a headset in text: a headset code, or two values with a bar between.</summary>
internal static class HeadTubeText
{
    private const string Expected = "two halves with a bar between are expected, such as ZS44/28.6|ZS56/40";

    /// <summary>The two halves; false where there are not two. What is the frame maker's own or not covered is so in both.</summary>
    public static bool TrySplit(string text, out string upper, out string lower)
    {
        if (OutsideText.Read(text) is not null)
        {
            (upper, lower) = (text, text);
            return true;
        }

        if (HeadsetPair.TryParse(text, null, out HeadsetPair pair))
        {
            (upper, lower) = (pair.Upper.ToString(), pair.Lower.ToString());
            return true;
        }

        // Ends that are told by their bore alone: "44|56", "44/56".
        char bar = text.Contains('|', StringComparison.Ordinal) ? '|' : '/';
        string[] halves = text.Split(bar, StringSplitOptions.TrimEntries);
        bool two = halves.Length == 2 && halves[0].Length > 0 && halves[1].Length > 0;
        (upper, lower) = two ? (halves[0], halves[1]) : ("", "");
        return two;
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
        (string type, string second) = OutsideText.Read(text) is null ? Half(text) : (text, text);
        size = default;
        return KnownText.TryRead(type, where, out cup, out _, out reason)
            && (second.Length == 0 || KnownText.TryRead(second, null, out size, out _, out reason));
    }

    private static (string Cup, string Size) Half(string text)
    {
        string plain = HeadsetHalf.TryParse(text, null, out HeadsetHalf half) ? half.ToString() : text;
        int slash = plain.IndexOf('/', StringComparison.Ordinal);
        return slash < 0 ? (plain.Trim(), "") : (plain[..slash].Trim(), plain[(slash + 1)..].Trim());
    }
}
