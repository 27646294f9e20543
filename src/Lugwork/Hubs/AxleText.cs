namespace Lugwork.Hubs;

/// <summary>Axle by width: a length or a fraction of an inch, a times sign, and another. Nothing is allocated.</summary>
internal static class AxleText
{
    private const long LeastAxle = 5 * Nanometres.PerMillimetre;
    private const long MostAxle = 25 * Nanometres.PerMillimetre;
    private const long LeastWidth = 60 * Nanometres.PerMillimetre;
    private const long MostWidth = 250 * Nanometres.PerMillimetre;

    private const string Line = "a fraction is of an inch, with 2, 4, 8, 16, 32 or 64 below the line";

    /// <summary>1 left by the sign, 2 below its line; 3 and 4 the same to the right.</summary>
    private static readonly Grammar Grammar = Make();

    public static bool TryRead<TChar>(ReadOnlySpan<TChar> text, out AxleSize size)
        where TChar : unmanaged
    {
        size = default;
        Findings found = default;
        if (Grammar.Read(text, ref found) != Grammar.Whole || ((found[2] | found[4]) != 0 && !ToNanometres(ref found)))
        {
            return false;
        }

        long axle = Math.Min(found[1], found[3]);
        long width = Math.Max(found[1], found[3]);
        if (!(IsAxle(axle) & IsWidth(width)))
        {
            return false;
        }

        size = new((int)axle, (int)width);
        return true;
    }

    /// <summary>Why a text was refused.</summary>
    public static Slip Why<TChar>(ReadOnlySpan<TChar> text)
        where TChar : unmanaged
    {
        Findings found = default;
        long stop = Grammar.Read(text, ref found);
        return stop != Grammar.Whole ? Grammar.Why(stop)
            : !ToNanometres(ref found) ? new(Line, 0)
            : new(IsAxle(Math.Min(found[1], found[3])) ? "a width over locknuts is 60 to 250 mm" : "an axle is 5 to 25 mm thick", 0);
    }

    private static bool IsAxle(long value) => (ulong)(value - LeastAxle) <= MostAxle - LeastAxle;

    private static bool IsWidth(long value) => (ulong)(value - LeastWidth) <= MostWidth - LeastWidth;

    private static bool ToNanometres(ref Findings found) => OfInches(ref found[1], found[2]) & OfInches(ref found[3], found[4]);

    /// <summary>Below the line stands a power of two, of which an inch is whole nanometres; 0 where there is no line.</summary>
    private static bool OfInches(ref long value, long below)
    {
        if (below is 2 or 4 or 8 or 16 or 32 or 64)
        {
            value = value / Nanometres.PerMillimetre * (Nanometres.PerInch / below);
            return true;
        }

        return below == 0;
    }

    private static Grammar Make()
    {
        const string Behind = "something unexpected follows the size";
        GrammarDraft draft = new();
        byte start = draft.State("an axle and a width are expected, such as 12x142");
        byte sign = draft.State("a second number is expected, such as 12x142");
        draft.On(Letter.Blank, start, start);
        draft.On(Letter.Blank, sign, sign);
        foreach (byte end in Length(draft, start, 1, "a times sign and a second number are expected, such as 12x142", false))
        {
            draft.On(Letter.Times, sign, end);
        }

        Length(draft, sign, 3, Behind, true);
        return draft.WithDone();
    }

    /// <summary>A length behind a state, with its unit and blanks; gives the states in which it may end.</summary>
    private static byte[] Length(GrammarDraft draft, byte from, int slot, string expected, bool ends)
    {
        GrammarDraft.Number number = draft.Length(slot, expected, ends);
        byte blank = draft.State(expected, ends);
        byte m = draft.State(expected);
        byte end = draft.State(expected, ends);
        draft.On(Letter.Digit, number.First, from);
        draft.On(Letter.Blank, blank, [.. number.Ends, blank]);
        draft.On(Letter.M, m, [.. number.Ends, blank]);
        draft.On(Letter.M, end, m);
        draft.On(Letter.Blank, end, end);

        byte line = draft.State(Line);
        byte[] below = draft.Digits(2, slot + 1, expected, ends: ends);
        byte inches = draft.State(expected, ends);
        byte i = draft.State(expected);
        byte n = draft.State(expected, ends);
        byte c = draft.State(expected);
        draft.On(Letter.Slash, line, number.Whole);
        draft.On(Letter.Digit, below[0], line);
        draft.On(Letter.Blank, inches, [.. below, inches]);
        draft.On(Letter.I, i, [.. below, inches]);
        draft.On(Letter.N, n, i);
        draft.On(Letter.C, c, n);
        draft.On(Letter.H, end, c);
        draft.On(Letter.Blank, end, n);
        draft.On(Letter.Inches, end, [.. below, inches]);
        return [.. number.Ends, blank, end, .. below, inches, n];
    }
}
