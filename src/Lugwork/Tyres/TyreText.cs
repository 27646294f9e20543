using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>The text of tyre sizes: two numbers, a sign between, and what the trade hangs on. One value is settled without allocating; doubt is told apart.</summary>
internal static class TyreText
{
    private const int LeastWidth = 18;
    private const int MostWidth = 132;

    private const int MostBits = 16;

    /// <summary>The only width that a source prints with a bead seat of 700 mm.</summary>
    private const int PrintedWith700 = 37;

    /// <summary>The first byte of the times sign in UTF-8; no dash begins so.</summary>
    private const int FirstOfTimes = 0xC3;

    /// <summary>Read to the end, but with a part of a millimetre.</summary>
    private const long Broken = -2;

    // 700C labels with a single ISO width.
    private const ulong SingleLabels = (1UL << 18) | (1UL << 20) | (1UL << 23) | (1UL << 25) | (1UL << 32) | (1UL << 47) | (1UL << 50);

    /// <summary>A bit for every bead seat, by millimetres.</summary>
    private static readonly ImmutableArray<ulong> Seats = BitsOfSeats();

    private static readonly Grammar Grammar = Make();

    public static bool TryRead<TChar>(ReadOnlySpan<TChar> text, out TyreSize size)
        where TChar : unmanaged
    {
        size = default;
        if (Numbers(text, out int a, out int b, out bool letterC) != Grammar.Whole)
        {
            // The mark stands before the first number, a label begins with one.
            return a == 0 ? IsoMark.MayBe(text) && TryMarked(text, out size) : TyreLabels.TryOnly(text, a, out size);
        }

        // Choices, not branches: labels and turned sizes stand among the others in no order.
        (int width, int bead) = Ordered(a, b);
        bool label = a == 700;
        width = label ? OnlyWidth(b) : width;
        bead = label ? 622 : bead;
        bool good = ((uint)(width - LeastWidth) <= MostWidth - LeastWidth) & IsSeat(bead) & (label | !letterC);
        size = good ? new(width, bead) : default;
        return good || (!label && (b == BeadSeat.Label700 ? TryTurned(text, a, letterC, out size) : TyreLabels.TryOnly(text, a, out size)));
    }

    /// <summary>Behind the mark stand two numbers of the standard and no label.</summary>
    private static bool TryMarked<TChar>(ReadOnlySpan<TChar> text, out TyreSize size)
        where TChar : unmanaged
    {
        size = default;
        if (IsoMark.TryStrip(text, out ReadOnlySpan<TChar> rest) && Numbers(rest, out int a, out int b, out bool letterC) == Grammar.Whole && !letterC && Ordered(a, b) is var (width, bead)
            && width is >= LeastWidth and <= MostWidth && (IsSeat(bead) || bead == BeadSeat.Label700))
        {
            size = new(width, bead);
            return true;
        }

        return false;
    }

    /// <summary>A size that ends in 700: with a C the turned label, and one ISO size is printed so, with a dash.</summary>
    private static bool TryTurned<TChar>(ReadOnlySpan<TChar> text, int width, bool letterC, out TyreSize size)
        where TChar : unmanaged
    {
        int only = letterC ? OnlyWidth(width) : 0;
        size = only != 0 ? new(only, 622) : !letterC && width == PrintedWith700 && !HasTimes(text) ? new(width, BeadSeat.Label700) : default;
        return size != default;
    }

    private static bool HasTimes<TChar>(ReadOnlySpan<TChar> text)
        where TChar : unmanaged
    {
        foreach (TChar letter in text)
        {
            int code = typeof(TChar) == typeof(char) ? (char)(object)letter : (byte)(object)letter;
            if (TextCursor.IsTimes((char)code) || (typeof(TChar) == typeof(byte) && code == FirstOfTimes))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Why a text that was refused is no single size; several, where it stands for several.</summary>
    public static TextReading<TyreSize> Explain<TChar>(ReadOnlySpan<TChar> text)
        where TChar : unmanaged
    {
        if (IsoMark.TryStrip(text, out ReadOnlySpan<TChar> rest))
        {
            return TextReading<TyreSize>.Refused("a width of 18 to 132 mm and a bead seat of the standard are expected behind the mark, such as ISO 37-622", text.Length - rest.Length);
        }

        long stop = Numbers(text, out int a, out int b, out bool letterC);
        if ((stop != Grammar.Whole || a != 700) && TyreLabels.Explain(text) is { } told)
        {
            return told;
        }

        if (stop != Grammar.Whole)
        {
            return TextReading<TyreSize>.Refused(stop == Broken ? new("a decimal or inch label is not an ISO size; give the number printed as 37-622 on the sidewall", 0) : Grammar.Why(stop));
        }

        if (a == 700)
        {
            return OfLabel(b);
        }

        if (b == BeadSeat.Label700 && a is >= LeastWidth and <= MostWidth)
        {
            return letterC ? OfLabel(a) : Of700(a);
        }

        if (letterC)
        {
            return TextReading<TyreSize>.Refused("only 700C labels are read; give the ISO size such as 37-622");
        }

        (int width, int bead) = Ordered(a, b);
        return TextReading<TyreSize>.Refused(width is < LeastWidth or > MostWidth ? "a tyre is 18 to 132 mm wide" : $"no rim has a bead seat of {bead} mm");
    }

    /// <summary>Slot 1 the first number, 2 the second, 3 a letter C, 4 and 5 what stands behind a decimal mark.</summary>
    private static Grammar Make()
    {
        const string Sign = "a dash or times sign and a second number are expected, such as 37-622";
        const string Behind = "something unexpected follows the size";
        GrammarDraft draft = new();
        byte start = draft.State("an ISO size is expected, such as 37-622");
        GrammarDraft.Number first = draft.Millimetres(1, 4, Sign);
        byte blank = draft.State(Sign);
        byte sign = draft.State("a second number is expected, such as 37-622");
        GrammarDraft.Number second = draft.Millimetres(2, 5, Behind, ends: true);
        draft.On(Letter.Blank, start, start);
        draft.On(Letter.Digit, first.First, start);
        draft.On(Letter.Blank, blank, [.. first.Ends, blank]);
        draft.On(Letter.Dash, sign, [.. first.Ends, blank]);
        draft.On(Letter.Times, sign, [.. first.Ends, blank]);
        draft.On(Letter.Blank, sign, sign);
        draft.On(Letter.Digit, second.First, sign);

        // A unit stands alone: no C follows it without a blank.
        (byte bare, byte behindUnit) = Unit(draft, Behind, second.Ends);
        byte letterC = draft.Kept(3, Behind, ends: true);
        draft.On(Letter.C, letterC, [.. second.Ends, bare, behindUnit]);
        Unit(draft, Behind, letterC);
        return draft.WithDone();
    }

    /// <summary>Blanks, "mm" and blanks behind some states; gives the state behind the first blanks and that behind the last.</summary>
    private static (byte Bare, byte End) Unit(GrammarDraft draft, string expected, params ReadOnlySpan<byte> from)
    {
        byte bare = draft.State(expected, ends: true);
        byte m = draft.State(expected);
        byte unit = draft.State(expected, ends: true);
        byte end = draft.State(expected, ends: true);
        draft.On(Letter.Blank, bare, [.. from, bare]);
        draft.On(Letter.M, m, [.. from, bare]);
        draft.On(Letter.M, unit, m);
        draft.On(Letter.Blank, end, unit, end);
        return (bare, end);
    }

    /// <summary>Two whole numbers of millimetres and whether a C follows; what the grammar answers, or <see cref="Broken"/>.</summary>
    private static long Numbers<TChar>(ReadOnlySpan<TChar> text, out int first, out int second, out bool letterC)
        where TChar : unmanaged
    {
        Findings found = default;
        long stop = Grammar.Read(text, ref found);
        if (stop != Grammar.Whole)
        {
            // How far it came: a label begins with the whole number of its outer diameter too.
            first = (int)Math.Min(found[1], int.MaxValue);
            second = 0;
            letterC = false;
            return stop;
        }

        first = (int)found[1];
        second = (int)found[2];
        letterC = found[3] != 0;
        return (found[4] | found[5]) != 0 ? Broken : stop;
    }

    /// <summary>Width and bead seat. The wider numbers of fat tyres overlap with the smallest seats, so from 90 up the width must come first.</summary>
    private static (int Width, int Bead) Ordered(int a, int b)
    {
        bool turned = (a > b) & (b < 90);
        return (turned ? b : a, turned ? a : b);
    }

    private static bool IsSeat(int bead) => ((Seats[(bead >> 6) & (MostBits - 1)] >> bead) & 1 & ((uint)bead < 64 * MostBits ? 1UL : 0)) != 0;

    private static ImmutableArray<ulong> BitsOfSeats()
    {
        ulong[] bits = new ulong[MostBits];
        foreach (BeadSeat seat in BeadSeat.All)
        {
            // 700 is a label nearly always: it is looked at apart from the others.
            bits[seat.FitCode >> 6] |= seat.FitCode == BeadSeat.Label700 ? 0 : 1UL << (int)(seat.FitCode & 63);
        }

        return ImmutableArray.Create(bits);
    }

    /// <summary>The only ISO width of a 700C label; 0 where there are several or none.</summary>
    private static int OnlyWidth(int label)
    {
        int listed = (int)((SingleLabels >> label) & 1) & ((uint)label < 64 ? 1 : 0);
        return label & -listed;
    }

    /// <summary>The ISO widths printed with a French label that has several; the label is not always the ISO width.</summary>
    private static ReadOnlySpan<int> Widths(int label) => label switch
    {
        28 => [28, 30],
        35 => [35, 37],
        38 => [38, 40],
        40 => [40, 42],
        42 => [42, 44, 47],
        45 => [45, 47],
        _ => [],
    };

    /// <summary>A width with 700 behind it: what the label turned round would say, the old 700, and the size as it stands.</summary>
    private static TextReading<TyreSize> Of700(int width)
    {
        ImmutableArray<TyreSize>.Builder sizes = ImmutableArray.CreateBuilder<TyreSize>();
        ReadOnlySpan<int> widths = Widths(width);
        foreach (int printed in widths.IsEmpty ? [width] : widths)
        {
            sizes.Add(new(printed, 622));
        }

        sizes.Add(new(width, 647));
        sizes.Add(new(width, BeadSeat.Label700));
        return TextReading<TyreSize>.Several(sizes.ToImmutable(), "a bead seat of 700 mm hardly occurs, the label 700 does: write 700x28C where that is meant, and read the ISO number on the sidewall");
    }

    private static TextReading<TyreSize> OfLabel(int label)
    {
        ReadOnlySpan<int> widths = Widths(label);
        if (widths.IsEmpty)
        {
            return TextReading<TyreSize>.Refused("this 700C label is in no table; give the ISO size such as 37-622");
        }

        ImmutableArray<TyreSize>.Builder sizes = ImmutableArray.CreateBuilder<TyreSize>();
        foreach (int width in widths)
        {
            sizes.Add(new(width, 622));
        }

        return TextReading<TyreSize>.Several(sizes.ToImmutable(), "tyres with this label are printed with different ISO widths; read the number on the sidewall");
    }
}
