using System.Collections.Immutable;

namespace Lugwork.Steering;

/// <summary>The notation of headset bearings: two diameters, height, and the angles where they are said.</summary>
internal static class HeadsetBearingText
{
    private const long Hundredth = Nanometres.PerMillimetre / 100;

    /// <summary>The reading; null where the text is no three lengths, so that it can still be a name.</summary>
    public static TextReading<HeadsetBearing>? Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (!cursor.TryNumber(out long first) || !Next(ref cursor, out long second) || !Next(ref cursor, out long height))
        {
            return null;
        }

        cursor.SkipMillimetres();
        bool angled = TryAngles(ref cursor, out long inner, out long outer);
        if (!cursor.AtEnd)
        {
            return null;
        }

        ImmutableArray<HeadsetBearing> found = Of(Math.Min(first, second), Math.Max(first, second), height);
        if (!angled)
        {
            return found.Length switch
            {
                0 => TextReading<HeadsetBearing>.Refused("no bearing of this size is listed; many more are made, so measure both diameters, the height and both angles"),
                1 => TextReading<HeadsetBearing>.Refused($"both angles belong to it: the listed one of this size is {found[0].FitKey}", cursor.Position),
                _ => TextReading<HeadsetBearing>.Several(found, "bearings of this size come with other angles: say both, as in 40x52x7 45/45"),
            };
        }

        foreach (HeadsetBearing bearing in found)
        {
            if (bearing.Inner == inner && bearing.Outer == outer)
            {
                return TextReading<HeadsetBearing>.Of(bearing);
            }
        }

        return null;
    }

    private static bool Next(ref TextCursor cursor, out long nanometres)
    {
        nanometres = 0;
        cursor.SkipMillimetres();
        return cursor.TryTimes() && cursor.TryNumber(out nanometres);
    }

    /// <summary>"-36/45", ", 36 x 45", "36°/45°".</summary>
    private static bool TryAngles(ref TextCursor cursor, out long inner, out long outer)
    {
        inner = outer = 0;
        TextCursor ahead = new(cursor.Rest);
        ahead.SkipBlanks();
        if (!ahead.TryDash() && !ahead.AtEnd && ahead.Rest[0] is ',' or '(')
        {
            ahead.Position++;
        }

        if (!ahead.TryNumber(out inner) || !Degrees(ref ahead) || !Between(ref ahead) || !ahead.TryNumber(out outer) || !Degrees(ref ahead))
        {
            return false;
        }

        if (!ahead.AtEnd && ahead.Rest[0] == ')')
        {
            ahead.Position++;
        }

        ahead.SkipBlanks();
        cursor.Position += ahead.Position;
        inner /= Nanometres.PerMillimetre;
        outer /= Nanometres.PerMillimetre;
        return true;
    }

    private static bool Degrees(ref TextCursor cursor)
    {
        cursor.SkipBlanks();
        if (!cursor.AtEnd && cursor.Rest[0] is '\u00B0' or '\u00BA')
        {
            cursor.Position++;
        }

        cursor.SkipBlanks();
        return true;
    }

    private static bool Between(ref TextCursor cursor)
    {
        if (!cursor.AtEnd && cursor.Rest[0] == '/')
        {
            cursor.Position++;
            return true;
        }

        return cursor.TryTimes() || cursor.TryDash();
    }

    /// <summary>The bearings of a size by their own figures; those that are told by a rounded name are found by name.</summary>
    private static ImmutableArray<HeadsetBearing> Of(long inside, long outside, long height)
    {
        ImmutableArray<HeadsetBearing>.Builder found = ImmutableArray.CreateBuilder<HeadsetBearing>();
        foreach (HeadsetBearing bearing in HeadsetBearing.All)
        {
            bool rounded = bearing == HeadsetBearing.Mm46Point9 && outside == 4700 * Hundredth && inside >= 3400 * Hundredth && inside <= 3420 * Hundredth;
            if (bearing.Tall * Hundredth == height && (rounded || (bearing.Inside * Hundredth == inside && bearing.Outside * Hundredth == outside)))
            {
                found.Add(bearing);
            }
        }

        return found.ToImmutable();
    }
}
