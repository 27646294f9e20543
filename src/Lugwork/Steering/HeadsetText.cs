namespace Lugwork.Steering;

/// <summary>
/// The grammar of headset codes. A half is EC, ZS or IS, the bore and perhaps a second number behind a slash; a pair is two halves with a
/// bar, a letter I, a semicolon, comma, dash, blank or slash between them. Nothing is allocated.
/// </summary>
internal static class HeadsetText
{
    private const long LeastBore = 20 * Nanometres.PerMillimetre;
    private const long MostBore = 70 * Nanometres.PerMillimetre;
    private const long LeastSecond = 20 * Nanometres.PerMillimetre;
    private const long MostSecond = 50 * Nanometres.PerMillimetre;
    private const long None = -1;

    private const string AHalf = "EC, ZS or IS and a bore are expected, such as EC34";
    private const string TheOther = "a bar and the lower half are expected, as in ZS44/28.6|ZS56/40: one half alone is no headset code";

    /// <summary>Slots 1 to 3 for the upper half: letter of its style, bore, second number; 4 to 6 for the lower.</summary>
    private static readonly Grammar Pairs = MakePair();

    private static readonly Grammar Halves = MakeHalf();

    public static bool TryRead<TChar>(ReadOnlySpan<TChar> text, out HeadsetHalf half)
        where TChar : unmanaged
    {
        Findings found = default;
        found[3] = None;
        if (Halves.Read(text, ref found) == Grammar.Whole && InRange(found[2], found[3]))
        {
            half = new(StyleOf(found[1]), (int)found[2], Second(found[3]));
            return true;
        }

        half = default;
        return false;
    }

    public static bool TryRead<TChar>(ReadOnlySpan<TChar> text, out HeadsetPair pair)
        where TChar : unmanaged
    {
        Findings found = default;
        found[3] = found[6] = None;
        if (Pairs.Read(text, ref found) == Grammar.Whole && (InRange(found[2], found[3]) & InRange(found[5], found[6])))
        {
            pair = new(new(StyleOf(found[1]), (int)found[2], Second(found[3])), new(StyleOf(found[4]), (int)found[5], Second(found[6])));
            return true;
        }

        pair = default;
        return false;
    }

    /// <summary>Why a text was refused as one half.</summary>
    public static Slip WhyNoHalf<TChar>(ReadOnlySpan<TChar> text)
        where TChar : unmanaged => Why(Halves, text);

    /// <summary>Why a text was refused as a pair.</summary>
    public static Slip WhyNoPair<TChar>(ReadOnlySpan<TChar> text)
        where TChar : unmanaged => Why(Pairs, text);

    private static Slip Why<TChar>(Grammar grammar, ReadOnlySpan<TChar> text)
        where TChar : unmanaged
    {
        Findings found = default;
        long stop = grammar.Read(text, ref found);
        return stop != Grammar.Whole ? grammar.Why(stop) : new("the bore of a head tube is 20 to 70 mm, a steerer or crown race seat 20 to 50 mm", 0);
    }

    private static bool InRange(long bore, long second) =>
        ((ulong)(bore - LeastBore) <= MostBore - LeastBore) & ((second == None) | ((ulong)(second - LeastSecond) <= MostSecond - LeastSecond));

    /// <summary>1 for E, 2 for Z, 3 for I, from the low four bits of the letter.</summary>
    private static int StyleOf(long letter) => (int)(((1L << (4 * ('E' & 15))) | (2L << (4 * ('Z' & 15))) | (3L << (4 * ('I' & 15)))) >> (int)(4 * letter)) & 15;

    /// <summary>Without a decision: none becomes 0.</summary>
    private static int Second(long second) => (int)(second & ~(second >> 63));

    private static Grammar MakeHalf()
    {
        GrammarDraft draft = new();
        byte start = draft.State(AHalf);
        draft.On(Letter.Blank, start, start);
        HalfStates half = Half(draft, 1, "something unexpected follows the half", true);
        half.EnterFrom(draft, start);
        return draft.WithDone();
    }

    private static Grammar MakePair()
    {
        GrammarDraft draft = new();
        byte start = draft.State(AHalf);
        draft.On(Letter.Blank, start, start);
        HalfStates upper = Half(draft, 1, TheOther, false);
        HalfStates lower = Half(draft, 4, "something unexpected follows the lower half", true);
        upper.EnterFrom(draft, start);

        byte sign = draft.State(TheOther);
        draft.On(Letter.Blank, sign, sign);
        lower.EnterFrom(draft, sign);
        byte[] ends = [.. upper.Bore.Ends, .. upper.AfterBore, .. upper.Seat.Ends, .. upper.AfterSeat];
        draft.On(Letter.Bar, sign, ends);
        draft.On(Letter.Dash, sign, ends);

        // Behind whole digits a comma may be the decimal mark; a slash behind the bore may be its own.
        draft.On(Letter.Comma, sign, [.. upper.Bore.Decimals, .. upper.AfterBore, .. upper.Seat.Decimals, .. upper.AfterSeat]);
        draft.On(Letter.Blank, sign, upper.Bore.Comma, upper.Seat.Comma);
        draft.On(Letter.Slash, sign, [.. upper.Seat.Ends, .. upper.AfterSeat]);
        lower.EnterFrom(draft, upper.Bore.Comma, upper.Seat.Comma, upper.Line);

        // A letter I parts the halves, unless it stands behind a blank and begins the word IS.
        byte letterI = draft.State(TheOther);
        byte perhaps = draft.Kept(4, TheOther);
        draft.On(Letter.I, letterI, ends);
        lower.EnterFrom(draft, letterI);
        lower.EnterFrom(draft, upper.Blanks);
        draft.On(Letter.I, perhaps, upper.Blanks);
        draft.On(Letter.Blank, sign, letterI, perhaps);
        lower.EnterFrom(draft, perhaps);
        draft.On(Letter.S, lower.Typed, perhaps);
        return draft.WithDone();
    }

    /// <summary>One half: style, bore, and a second number behind a slash, with units and blanks.</summary>
    private static HalfStates Half(GrammarDraft draft, int slot, string expected, bool ends)
    {
        const string Bore = "the bore of the head tube is expected, such as 34 in EC34";
        const string Second = "a steerer or a crown race seat is expected, such as 28.6 in ZS44/28.6";
        byte e = draft.Kept(slot, AHalf);
        byte z = draft.Kept(slot, AHalf);
        byte i = draft.Kept(slot, AHalf);
        byte typed = draft.State(Bore);
        draft.On(Letter.C, typed, e);
        draft.On(Letter.S, typed, z, i);
        draft.On(Letter.Blank, typed, typed);
        (GrammarDraft.Number bore, byte[] afterBore) = Length(draft, typed, slot + 1, expected, ends);
        byte line = draft.State(Second);
        draft.On(Letter.Slash, line, [.. bore.Ends, .. afterBore]);
        draft.On(Letter.Blank, line, line);
        (GrammarDraft.Number seat, byte[] afterSeat) = Length(draft, line, slot + 2, expected, ends);
        return new(e, z, i, typed, bore, afterBore, line, seat, afterSeat);
    }

    /// <summary>A length behind a state; blanks, the unit and blanks behind the unit are states after it, in this order.</summary>
    private static (GrammarDraft.Number Number, byte[] After) Length(GrammarDraft draft, byte from, int slot, string expected, bool ends)
    {
        GrammarDraft.Number number = draft.Length(slot, expected, ends);
        byte blank = draft.State(expected, ends);
        byte m = draft.State(expected);
        byte unit = draft.State(expected, ends);
        byte end = draft.State(expected, ends);
        draft.On(Letter.Digit, number.First, from);
        draft.On(Letter.Blank, blank, [.. number.Ends, blank]);
        draft.On(Letter.M, m, [.. number.Ends, blank]);
        draft.On(Letter.M, unit, m);
        draft.On(Letter.Blank, end, unit, end);
        return (number, [blank, unit, end]);
    }

    private sealed record HalfStates(byte E, byte Z, byte I, byte Typed, GrammarDraft.Number Bore, byte[] AfterBore, byte Line, GrammarDraft.Number Seat, byte[] AfterSeat)
    {
        /// <summary>Behind a blank, with or without a unit before it.</summary>
        public byte[] Blanks => [AfterBore[0], AfterBore[2], AfterSeat[0], AfterSeat[2]];

        public void EnterFrom(GrammarDraft draft, params ReadOnlySpan<byte> from)
        {
            draft.On(Letter.E, E, from);
            draft.On(Letter.Z, Z, from);
            draft.On(Letter.I, I, from);
        }
    }
}
