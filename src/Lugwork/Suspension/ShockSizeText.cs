using System.Collections.Immutable;

namespace Lugwork.Suspension;

/// <summary>Text of shock sizes: two lengths in millimetres or inches, with the mount before or behind them.</summary>
internal static class ShockSizeText
{
    // No shock is as short as this in millimetres, none as long in inches.
    private const long MostInches = 15 * Nanometres.PerMillimetre;

    /// <summary>The reading; null where the text is no two lengths, so that it can still be a name.</summary>
    public static TextReading<ShockSize>? Read(ReadOnlySpan<char> text)
    {
        if (TextCursor.IsNegative(text))
        {
            return null;
        }

        TextCursor cursor = new(text);
        ShockMount? mount = null;
        Words(ref cursor, ref mount);
        if (!Number(ref cursor, out long eye) || !cursor.TryTimes() || !Number(ref cursor, out long stroke))
        {
            return null;
        }

        Words(ref cursor, ref mount);
        if (!cursor.AtEnd)
        {
            return null;
        }

        ImmutableArray<ShockSize> found = Of(eye, stroke, mount);
        return found.Length switch
        {
            0 => TextReading<ShockSize>.Refused("no shock of this length and stroke is listed; the frame maker's figure counts, length first, then stroke, as in 210x55"),
            1 => TextReading<ShockSize>.Of(found[0]),
            _ => TextReading<ShockSize>.Several(found, "say eyelet or trunnion: both come in this size, and neither goes in place of the other"),
        };
    }

    private static ImmutableArray<ShockSize> Of(long eye, long stroke, ShockMount? mount)
    {
        ImmutableArray<ShockSize>.Builder found = ImmutableArray.CreateBuilder<ShockSize>();
        foreach (ShockSize size in ShockSize.All)
        {
            bool same = eye <= MostInches
                ? size.IsNamed(eye / 1_000, stroke / 1_000) && eye % 1_000 == 0 && stroke % 1_000 == 0
                : Inside(eye, size.EyeRange) && Inside(stroke, size.StrokeRange);
            if (same && (mount is null || mount == size.Mount))
            {
                found.Add(size);
            }
        }

        return found.ToImmutable();
    }

    private static bool Inside(long nanometres, (decimal Least, decimal Most) range) =>
        nanometres >= range.Least * Nanometres.PerMillimetre && nanometres <= range.Most * Nanometres.PerMillimetre;

    /// <summary>Decimal, or whole inches with a fraction: "7.875", "7-7/8", "7 7/8"; a unit may follow.</summary>
    private static bool Number(ref TextCursor cursor, out long nanometres)
    {
        if (!cursor.TryNumber(out nanometres))
        {
            return false;
        }

        TextCursor ahead = new(cursor.Rest);
        ahead.TryDash();
        if (nanometres <= MostInches && ahead.TryNumber(out long part) && !ahead.AtEnd && ahead.Rest[0] == '/')
        {
            ahead.Position++;
            if (!ahead.TryNumber(out long whole) || whole == 0 || part >= whole)
            {
                return false;
            }

            nanometres += part * Nanometres.PerMillimetre / whole;
            cursor.Position += ahead.Position;
        }

        cursor.SkipMillimetres();
        while (!cursor.AtEnd && (cursor.Rest[0] is '"' or '\u2033' or '\u201D' || cursor.Rest.StartsWith("in", StringComparison.OrdinalIgnoreCase)))
        {
            cursor.Position += cursor.Rest.StartsWith("in", StringComparison.OrdinalIgnoreCase) ? 2 : 1;
            cursor.SkipBlanks();
        }

        return true;
    }

    /// <summary>Words of the mount and words of no weight, in brackets or not.</summary>
    private static void Words(ref TextCursor cursor, ref ShockMount? mount)
    {
        while (true)
        {
            cursor.SkipBlanks();
            int start = cursor.Position;
            if (cursor.AtEnd || char.IsAsciiDigit(cursor.Rest[0]))
            {
                return;
            }

            ReadOnlySpan<char> word = cursor.Word();
            if (ShockMount.Find(word) is { } found && (mount is null || mount == found))
            {
                mount = found;
            }
            else if (word is not ("-" or "," or "(" or ")") && !Weightless(word))
            {
                cursor.Position = start;
                return;
            }
        }
    }

    private static bool Weightless(ReadOnlySpan<char> word) =>
        word.Equals("mount", StringComparison.OrdinalIgnoreCase) || word.Equals("metric", StringComparison.OrdinalIgnoreCase) || word.Equals("imperial", StringComparison.OrdinalIgnoreCase);
}
