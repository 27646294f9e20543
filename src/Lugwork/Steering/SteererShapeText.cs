using System.Collections.Immutable;

namespace Lugwork.Steering;

/// <summary>Text of a steerer's shape: inch marks, "in", "inch" and "to" do not matter; some words leave several shapes open.</summary>
internal static class SteererShapeText
{
    private const int MostLetters = 60;

    /// <summary>The text without inch marks and words of no weight; a text that is too long for a shape comes back empty.</summary>
    public static string Plain(ReadOnlySpan<char> text)
    {
        if (text.Length > MostLetters)
        {
            return "-";
        }

        Span<char> room = stackalloc char[4 * MostLetters];
        int length = 0;
        TextCursor cursor = new(InchText.WithoutFractionSigns(text));
        while (true)
        {
            cursor.SkipBlanks();
            if (cursor.AtEnd)
            {
                return KindFirst(room[..length].ToString());
            }

            ReadOnlySpan<char> word = cursor.Word();
            if (Skipped(word))
            {
                continue;
            }

            ReadOnlySpan<char> kept = word.Length > 2 && word.EndsWith("in", StringComparison.OrdinalIgnoreCase) && char.IsAsciiDigit(word[^3]) ? word[..^2] : word;
            kept = kept switch { "1.125" => "1-1/8", "1.25" => "1-1/4", _ => kept };
            kept.CopyTo(room[length..]);
            length += kept.Length;
        }
    }

    /// <summary>"1-1/8-1.5 tapered" is "tapered 1-1/8-1.5".</summary>
    private static string KindFirst(string plain)
    {
        foreach (string kind in new[] { "tapered", "straight" })
        {
            if (plain.Length > kind.Length && plain.EndsWith(kind, StringComparison.OrdinalIgnoreCase))
            {
                return kind + plain[..^kind.Length];
            }
        }

        return plain;
    }

    /// <summary>The shapes that a text leaves open; empty where it does not.</summary>
    public static ImmutableArray<SteererShape> Several(ReadOnlySpan<char> text, out string reason)
    {
        string plain = Plain(text).ToUpperInvariant().Replace("-", "", StringComparison.Ordinal);
        reason = "";
        switch (plain)
        {
            case "TAPERED" or "TAPER":
                reason = "several tapers are made: measure the top and the crown-race seat";
                return Where(s => s.IsTapered);
            case "STRAIGHT":
                reason = "straight steerers come in several sizes: measure the top";
                return Where(s => !s.IsTapered);
            case "11/8" or "28.6":
                reason = "a top of 1-1/8 in is straight or tapered: measure the crown-race seat";
                return Where(s => s.Tops.Contains(SteererSize.Mm28Point6));
            case "11/4" or "31.8":
                reason = "a top of 1-1/4 in is straight or tapered: measure the crown-race seat";
                return Where(s => s.Tops.Contains(SteererSize.Mm31Point8));
            case "1.5" or "11/2" or "38.1":
                reason = "1.5 in is a straight steerer, or the foot of a tapered one: measure the top";
                return [SteererShape.Straight1Point5, SteererShape.Tapered1Point5, SteererShape.TaperedOversize];
            case "TAPERED1.5" or "TAPERED11/2":
                reason = "two tapers end at 1.5 in: measure the top";
                return [SteererShape.Tapered1Point5, SteererShape.TaperedOversize];
            default:
                return [];
        }
    }

    private static ImmutableArray<SteererShape> Where(Func<SteererShape, bool> holds)
    {
        ImmutableArray<SteererShape>.Builder found = ImmutableArray.CreateBuilder<SteererShape>();
        foreach (SteererShape shape in SteererShape.All)
        {
            if (holds(shape))
            {
                found.Add(shape);
            }
        }

        return found.ToImmutable();
    }

    private static bool Skipped(ReadOnlySpan<char> word) =>
        word is "\"" or "\u2033" or "\u201D" || word.Equals("in", StringComparison.OrdinalIgnoreCase) || word.Equals("inch", StringComparison.OrdinalIgnoreCase)
        || word.Equals("to", StringComparison.OrdinalIgnoreCase) || word.Equals("mm", StringComparison.OrdinalIgnoreCase);
}
