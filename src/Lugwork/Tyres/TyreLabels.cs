using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Finds the rows of a label; made when a label is first read, then allocates nothing.</summary>
internal static class TyreLabels
{
    /// <summary>Room for all rows that one label can have.</summary>
    public const int Most = 8;

    /// <summary>A decimal or French label of any width, by code of its row: outer diameter and the widths, in hundred-thousandths of an inch.</summary>
    private static readonly (int Code, long Outer, long Least, long Most, bool AlsoWhole)[] Families =
    [
        (1, 29_00000, 1, long.MaxValue, true),
        (3, 28_00000, 1, long.MaxValue, false),
        (5, 27_50000, 1, long.MaxValue, true),
        (6, 26_00000, 1_00000, 3_00000, false),
        (20, 24_00000, 1_50000, 2_12500, false),
        (24, 20_00000, 1_50000, 2_12500, false),
        (28, 18_00000, 1_75000, 2_12500, false),
    ];

    private const int AnyCode = 48;

    private const int Row650A = 107;

    private const int Row650B = 110;

    private const int Row650C = 113;

    private const int Row650By45 = 117;

    /// <summary>By the whole inches or millimetres of the outer diameter, then as the rows stand.</summary>
    private static readonly (LabelKey Key, int Row)[] Keys = MakeKeys();

    /// <summary>Where the keys of each whole outer diameter begin.</summary>
    private static readonly ImmutableArray<short> Begins = MakeBegins();

    private const int MostOuter = 1_000;

    private const int OuterBits = 16;

    /// <summary>A bit for every whole outer diameter of a label.</summary>
    private static readonly ImmutableArray<ulong> Outers = BitsOfOuters();

    private const int LeastFrench = 100;

    /// <summary>27 in labels of any width are one family.</summary>
    private const int AnyOuter = 27;

    /// <summary>The ASCII letters that a label, its marks and its units are written with, then a bit for each.</summary>
    private const string Written = "0123456789 \t\r\n.,/\"'()*-_xXabcdefABCDEFsSoOlLuUiInNmM";

    private static readonly ulong LowLetters = BitsOf(0);

    private static readonly ulong HighLetters = BitsOf(64);

    /// <summary>Puts the rows of a label into room that is given; whether they stand for just this label, not for its family.</summary>
    public static int Match(LabelKey key, Span<int> rows, out bool exact)
    {
        int count = 0;
        bool marked = false;
        if (key.IsBare && key.Outer == 650 * LabelText.One)
        {
            // Without letter and width it is any label of this outer diameter.
            exact = false;
            ReadOnlySpan<int> bare = [Row650A, Row650B, Row650C, Row650By45];
            bare.CopyTo(rows);
            return bare.Length;
        }

        foreach ((LabelKey known, int row) in OfOuter(key.Outer))
        {
            if (known.Second != key.Second)
            {
                continue;
            }

            if (known == key)
            {
                rows[0] = row;
                exact = true;
                return 1;
            }

            if (known.Mark != LabelMark.None && key.Mark == LabelMark.None && known with { Mark = LabelMark.None } == key && count < rows.Length)
            {
                rows[count++] = row;
                marked = true;
            }
        }

        // A label that has its mark left out can also be a plain one of the family.
        int family = Family(key);
        exact = marked && family < 0;
        if (family >= 0 && count < rows.Length)
        {
            rows[count++] = family;
        }

        return count;
    }

    /// <summary>The only size that a label with a width says beyond doubt. A decimal label never does: makers print different ISO widths with it.</summary>
    public static bool TryOnly<TChar>(ReadOnlySpan<TChar> text, int outer, out TyreSize size)
        where TChar : unmanaged
    {
        // Apart from what follows, so that the room for rows costs nothing here.
        size = default;
        return (uint)outer < 64 * OuterBits && ((Outers[outer >> 6] >> (outer & 63)) & 1) != 0 && MayBe(text, outer) && IsOnly(text, out size);
    }

    private static bool IsOnly<TChar>(ReadOnlySpan<TChar> text, out TyreSize size)
        where TChar : unmanaged
    {
        size = default;
        if (!LabelText.TryRead(text, out LabelKey key))
        {
            return false;
        }

        Span<int> rows = stackalloc int[Most];
        int count = Match(key, rows, out bool exact);
        if (count != 1 || !exact || key.SecondForm == NumberForm.None || TyreLabel.All[rows[0]] is not { IsDoubtful: false, System: not LabelSystem.Decimal, SizeCodes.Length: 1 } label)
        {
            return false;
        }

        size = TyreSize.OfFitCode(label.SizeCodes[0]);
        return true;
    }

    /// <summary>What a label says that is no single size; null where the text is none.</summary>
    public static TextReading<TyreSize>? Explain<TChar>(ReadOnlySpan<TChar> text)
        where TChar : unmanaged
    {
        Span<int> rows = stackalloc int[Most];
        if (!LabelText.TryRead(text, out LabelKey key) || Match(key, rows, out bool exact) is not (> 0 and var count))
        {
            return null;
        }

        ImmutableArray<TyreSize>.Builder sizes = ImmutableArray.CreateBuilder<TyreSize>();
        bool covered = exact;
        foreach (int row in rows[..count])
        {
            TyreLabel label = TyreLabel.All[row];
            foreach (BeadSeat seat in label.Seats)
            {
                covered &= Carries(label, seat);
            }

            foreach (TyreSize size in label.Sizes)
            {
                if (exact && !sizes.Contains(size))
                {
                    sizes.Add(size);
                }
            }
        }

        return covered && sizes.Count > 1
            ? TextReading<TyreSize>.Several(sizes.ToImmutable(), "tyres with this label are printed with different ISO sizes; read the number on the sidewall")
            : TextReading<TyreSize>.Refused($"the label says the bead seat only, {string.Join(" or ", Seats(rows[..count]))} mm; give the number printed as 37-622 on the sidewall{Printed(sizes)}");
    }

    /// <summary>The bead seats of a label, and whether one of its rows leaves a doubt; none where the text is no label.</summary>
    public static ImmutableArray<BeadSeat> Seats(ReadOnlySpan<char> text, out bool doubtful)
    {
        doubtful = false;
        Span<int> rows = stackalloc int[Most];
        if (!LabelText.TryRead(text, out LabelKey key) || Match(key, rows, out _) is not (> 0 and var count))
        {
            return [];
        }

        foreach (int row in rows[..count])
        {
            doubtful |= TyreLabel.All[row].IsDoubtful;
        }

        return Seats(rows[..count]);
    }

    private static ImmutableArray<BeadSeat> Seats(ReadOnlySpan<int> rows)
    {
        ImmutableArray<BeadSeat>.Builder seats = ImmutableArray.CreateBuilder<BeadSeat>();
        foreach (int row in rows)
        {
            foreach (BeadSeat seat in TyreLabel.All[row].Seats)
            {
                if (!seats.Contains(seat))
                {
                    seats.Add(seat);
                }
            }
        }

        return seats.ToImmutable();
    }

    private static string Printed(ImmutableArray<TyreSize>.Builder sizes) => sizes.Count == 0 ? "" : $", with this label perhaps {string.Join(" or ", sizes)}";

    private static bool Carries(TyreLabel label, BeadSeat seat)
    {
        foreach (int size in label.SizeCodes)
        {
            if (size % 1_000 == seat.FitCode)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The row of the family of a label; -1 where it has none.</summary>
    private static int Family(LabelKey key)
    {
        if (key.ThirdForm != NumberForm.None || key.Mark != LabelMark.None || key.SecondForm == NumberForm.None)
        {
            return -1;
        }

        if (key.Letter != 0 || key.Outer == 700 * LabelText.One)
        {
            LabelKey bare = key with { Second = 0, SecondForm = NumberForm.None };
            return key.SecondForm == NumberForm.Whole ? RowOf(bare) : -1;
        }

        foreach ((int code, long outer, long least, long most, bool alsoWhole) in Families)
        {
            if (key.Outer == outer && key.Second >= least && key.Second <= most && (key.SecondForm == NumberForm.Decimal || (alsoWhole && key.SecondForm == NumberForm.Whole)))
            {
                return code - 1;
            }
        }

        return key.Outer == AnyOuter * LabelText.One ? AnyCode - 1 : -1;
    }

    private static int RowOf(LabelKey key)
    {
        foreach ((LabelKey known, int row) in OfOuter(key.Outer))
        {
            if (known == key)
            {
                return row;
            }
        }

        return -1;
    }

    /// <summary>May a text that begins with the outer diameter of a label be one, with a width?</summary>
    private static bool MayBe<TChar>(ReadOnlySpan<TChar> text, int outer)
        where TChar : unmanaged
    {
        if (!IsWritten(Code(text[^1])))
        {
            return false;
        }

        // Behind a dash a label has a fraction, 12-1/2; an ISO size has a bead seat.
        int at = 0;
        int signs = 0;
        bool isWide = false;
        while (at < text.Length && IsWritten(Code(text[at])))
        {
            if (typeof(TChar) == typeof(byte) && Code(text[at]) >= 0x80)
            {
                // A piece of a sign that takes several bytes, a times sign among them: it is read to know.
                isWide = true;
                at++;
                continue;
            }

            if (TextCursor.IsDash((char)Code(text[at])) && !IsSlash(text, at + 2) && !IsSlash(text, at + 3))
            {
                return false;
            }

            signs += TextCursor.IsTimes((char)Code(text[at])) ? 1 : 0;
            at++;
        }

        // A French label with a width has one times sign, an inch label one or two.
        return at == text.Length && (isWide || (signs > 0 && signs <= (outer < LeastFrench ? 2 : 1)));
    }

    private static bool IsSlash<TChar>(ReadOnlySpan<TChar> text, int at)
        where TChar : unmanaged => at < text.Length && Code(text[at]) is '/' or 0x2044;

    private static int Code<TChar>(TChar letter)
        where TChar : unmanaged => typeof(TChar) == typeof(char) ? (char)(object)letter : (byte)(object)letter;

    private static ReadOnlySpan<(LabelKey Key, int Row)> OfOuter(long outer)
    {
        long whole = outer / LabelText.One;
        return whole is >= 0 and <= MostOuter ? Keys.AsSpan(Begins[(int)whole]..Begins[(int)whole + 1]) : [];
    }

    private static bool IsWritten(int code) => code >= 0x80 || (((code < 64 ? LowLetters : HighLetters) >> (code & 63)) & 1) != 0;

    private static ulong BitsOf(int from)
    {
        ulong bits = 0;
        foreach (char letter in Written)
        {
            bits |= letter >= from && letter < from + 64 ? 1UL << (letter - from) : 0;
        }

        return bits;
    }

    private static ImmutableArray<ulong> BitsOfOuters()
    {
        ulong[] bits = new ulong[OuterBits];
        for (int outer = 0; outer <= MostOuter; outer++)
        {
            bits[outer >> 6] |= Begins[outer] != Begins[outer + 1] || outer == AnyOuter ? 1UL << (outer & 63) : 0;
        }

        return ImmutableArray.Create(bits);
    }

    private static ImmutableArray<short> MakeBegins()
    {
        short[] begins = new short[MostOuter + 2];
        int at = 0;
        for (int whole = 0; whole < begins.Length; whole++)
        {
            while (at < Keys.Length && Keys[at].Key.Outer / LabelText.One < whole)
            {
                at++;
            }

            begins[whole] = (short)at;
        }

        return ImmutableArray.Create(begins);
    }

    /// <summary>Families have words for their width and so no key of numbers.</summary>
    private static (LabelKey Key, int Row)[] MakeKeys()
    {
        List<(LabelKey Key, int Row)> keys = [];
        for (int row = 0; row < TyreLabel.All.Length; row++)
        {
            TyreLabel label = TyreLabel.All[row];
            if (LabelText.TryRead(label.FitKey.AsSpan(), out LabelKey key))
            {
                keys.Add((key, row));
            }

            foreach (string name in label.Names)
            {
                if (LabelText.TryRead(name.AsSpan(), out key))
                {
                    keys.Add((key, row));
                }
            }
        }

        // Rows of one outer diameter stay in the order in which they were found.
        (LabelKey Key, int Row)[] ordered = [.. keys];
        int[] places = new int[ordered.Length];
        for (int i = 0; i < places.Length; i++)
        {
            places[i] = ((int)(ordered[i].Key.Outer / LabelText.One) * ordered.Length) + i;
        }

        Array.Sort(places, ordered);
        return ordered;
    }
}
