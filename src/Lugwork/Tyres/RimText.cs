using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Two numbers and the letters of a rim type before or behind them.</summary>
internal static class RimText
{
    public const int LeastTenths = 100;
    public const int MostTenths = 1_000;

    private const long PerTenth = Nanometres.PerMillimetre / 10;

    public static TextReading<RimSize> Read(ReadOnlySpan<char> text)
    {
        if (text.Length > 60)
        {
            return Refused("a rim size is shorter than this", 60);
        }

        bool marked = IsoMark.TryStrip(text, out ReadOnlySpan<char> rest);
        TextCursor cursor = new(rest);
        RimType? type = null;
        cursor.SkipBlanks();
        int at = cursor.Position;
        if (!cursor.AtEnd && char.IsLetter(cursor.Rest[0]) && (type = TypeOf(cursor.Word())) is null)
        {
            return Refused("a rim type is one of SS, C, HB, TSS and TC", at);
        }

        cursor.SkipBlanks();
        if (!cursor.TryNumber(out long first))
        {
            return Refused("a bead seat and an inner width are expected, such as 622x19C", cursor.Position);
        }

        cursor.SkipMillimetres();
        if (!cursor.TryTimes() && !cursor.TryDash())
        {
            return Refused("a times sign or dash and a second number are expected, such as 622x19C", cursor.Position);
        }

        if (!cursor.TryNumber(out long second))
        {
            return Refused("a second number is expected, such as 622x19C", cursor.Position);
        }

        cursor.SkipMillimetres();
        if (!cursor.AtEnd)
        {
            at = cursor.Position;
            RimType? behind = TypeOf(cursor.Word());
            cursor.SkipBlanks();
            if (behind is null || !cursor.AtEnd || (type is not null && type != behind))
            {
                return Refused("one rim type, SS, C, HB, TSS or TC, may stand with the numbers", at);
            }

            type = behind;
        }

        return type == RimType.HookedBead
            ? Refused("a hooked-bead rim has diameters of its own, for beaded-edge tyres", 0)
            : Sized(first, second, type, marked);
    }

    private static TextReading<RimSize> Sized(long first, long second, RimType? type, bool marked)
    {
        ImmutableArray<RimSize>.Builder sizes = ImmutableArray.CreateBuilder<RimSize>();
        const long Label700 = BeadSeat.Label700 * Nanometres.PerMillimetre;
        if (!marked && (first == Label700 || second == Label700))
        {
            long inner = first == Label700 ? second : first;
            if (type == RimType.Crochet)
            {
                // The C may be that of 700C, and say nothing of the type.
                type = null;
                Add(622 * Nanometres.PerMillimetre, inner);
                type = RimType.Crochet;
            }

            foreach (BeadSeat seat in BeadSeat.SeatsOf700)
            {
                Add(seat.FitCode * Nanometres.PerMillimetre, inner);
            }

            return sizes.Count == 0
                ? Refused("an inner width is 10 to 100 mm, in whole tenths", 0)
                : TextReading<RimSize>.Several(sizes.ToImmutable(), "700 is a label of 622 mm rims today and of 647 mm ones once, and a rare bead seat; give the ISO diameter, such as 622x19C");
        }

        Add(first, second);
        if (first != second)
        {
            Add(second, first);
        }

        return sizes.Count switch
        {
            0 => Refused(IsSeat(first) || IsSeat(second) ? "an inner width is 10 to 100 mm, in whole tenths" : "no rim has such a bead seat; give the ISO diameter in millimetres, such as 622", 0),
            1 => TextReading<RimSize>.Of(sizes[0]),
            _ => TextReading<RimSize>.Several(sizes.ToImmutable(), "both numbers can be the bead seat"),
        };

        void Add(long bead, long width)
        {
            if (IsSeat(bead) && width % PerTenth == 0 && width / PerTenth is >= LeastTenths and <= MostTenths)
            {
                sizes.Add(new((int)(bead / Nanometres.PerMillimetre), (int)(width / PerTenth), type is null ? 0 : (int)type.FitCode));
            }
        }
    }

    private static bool IsSeat(long nanometres)
    {
        foreach (BeadSeat seat in BeadSeat.All)
        {
            if (seat.FitCode * Nanometres.PerMillimetre == nanometres)
            {
                return true;
            }
        }

        return false;
    }

    private static RimType? TypeOf(ReadOnlySpan<char> word)
    {
        foreach (RimType type in RimType.All)
        {
            if (word.Equals(type.FitKey, StringComparison.OrdinalIgnoreCase))
            {
                return type;
            }
        }

        return null;
    }

    private static TextReading<RimSize> Refused(string reason, int position) => TextReading<RimSize>.Refused(reason, position);
}
