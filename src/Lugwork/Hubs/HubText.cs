using System.Collections.Immutable;

namespace Lugwork.Hubs;

/// <summary>Axle and width in either order, with the words the trade puts around them.</summary>
internal static class HubText
{
    private const long Tolerance = 60_000;

    private static readonly string[] Noise = ["MM", "OLD", "O.L.D.", "HUB", "SPACING", ",", "-", "(", ")", "MTB", "THE", "WIDE-FLANGE", "/"];

    public static TextReading<HubStandard> Read(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
        {
            return TextReading<HubStandard>.Refused("the text is empty");
        }

        if (text.Length > 200)
        {
            return TextReading<HubStandard>.Refused("a hub standard is shorter than this", 200);
        }

        long first = 0;
        long second = 0;
        List<string> words = [];
        TextCursor cursor = new(text);
        cursor.SkipBlanks();
        bool fresh = true;
        while (!cursor.AtEnd)
        {
            int at = cursor.Position;
            if (fresh && TextCursor.IsNegative(cursor.Rest))
            {
                return TextReading<HubStandard>.Refused("a size is above zero", at);
            }

            fresh = false;
            if (cursor.TryNumber(out long number))
            {
                if (number == 0)
                {
                    return TextReading<HubStandard>.Refused("a size is above zero", at);
                }

                if (number == 31 * Nanometres.PerMillimetre)
                {
                    words.Add("31");
                }
                else if (first == 0)
                {
                    first = number;
                }
                else if (second == 0)
                {
                    second = number;
                }
                else
                {
                    return TextReading<HubStandard>.Refused("two numbers, axle and width, are expected", at);
                }

                cursor.SkipMillimetres();
                fresh = cursor.TryTimes();
            }
            else
            {
                string word = cursor.Word().ToString().ToUpperInvariant();
                if (word.Length > 0 && !Noise.Contains(word))
                {
                    words.Add(word);
                }
            }

            cursor.SkipBlanks();
        }

        (long axle, long old) = first > second ? (second, first) : (first, second);
        if (old < 60 * Nanometres.PerMillimetre)
        {
            return TextReading<HubStandard>.Refused("a width over locknuts in millimetres is expected, such as 12x142 or 130");
        }

        return Match(axle, old, words);
    }

    private static TextReading<HubStandard> Match(long axle, long old, List<string> words)
    {
        // One name stands for several axles: with a thickness it is one of them, without it is the name.
        // The trade calls a 10 mm rear quick-release axle by the 9 mm of its front fellow; the front fat hub has both.
        bool nineRear = Math.Abs(axle - (9 * Nanometres.PerMillimetre)) <= Tolerance && old == 135 * Nanometres.PerMillimetre;
        ImmutableArray<HubStandard> found =
        [
            .. HubStandard.All.Where(h => h.OldMicrometres * 1_000L == old
                && (axle == 0 || h.Axles.Any(a => Math.Abs((a * 1_000L) - axle) <= Tolerance) || (nineRear && h.FitKey == "R135-QR"))
                && (axle == 0 ? !h.IsASizeOfAName : h.Sizes.IsEmpty)
                && h.Answers(words)),
        ];
        return found.Length switch
        {
            0 => TextReading<HubStandard>.Refused("no standard has this axle and width with these words; known ones are such as 9x100, 15x110, 10x135, 12x142, 12x148"),
            1 => TextReading<HubStandard>.Of(found[0]),
            _ => TextReading<HubStandard>.Several(found, "several standards share these numbers; the words QR, Boost, bolt, nutted, DH or wide tell them apart"),
        };
    }
}
