using System.Collections.Immutable;

namespace Lugwork.Seating;

/// <summary>The sizes in which seatposts are made, with their sources.</summary>
internal static class SeatDiameters
{
    /// <summary>Tenths of a millimetre would lose 21.15, so hundredths.</summary>
    public static ImmutableArray<(int Hundredths, string Use, Source Source)> Rows { get; } =
    [
        (2115, "old 7/8 in tube", Sources.CollarPage),
        (2200, "folding, BMX", Sources.Memory),
        (2220, "old steel, cruisers", Sources.ClampShop),
        (2340, "old French", Sources.Memory),
        (2380, "old steel, 15/16 in", Sources.Memory),
        (2400, "old French", Sources.Memory),
        (2500, "old French, aluminium", Sources.PostModernism),
        (2540, "BMX, cruisers", Sources.ClampShop),
        (2580, "steel", Sources.Memory),
        (2600, "steel, aluminium", Sources.PostModernism),
        (2620, "steel, French", Sources.FrenchPosts),
        (2640, "steel, French", Sources.FrenchPosts),
        (2660, "steel, French", Sources.FrenchPosts),
        (2680, "steel, mid grade", Sources.PostSizesCanada),
        (2700, "steel, thick wall", Sources.PostSizesCanada),
        (2720, "most common: good steel, road, gravel", Sources.PostSizes),
        (2740, "thin-wall steel", Sources.PostSizes),
        (2760, "rare", Sources.OddPostMeasured),
        (2800, "rare", Sources.Memory),
        (2840, "rare", Sources.Memory),
        (2860, "city, some aluminium", Sources.Memory),
        (2880, "rare", Sources.Memory),
        (2940, "rare", Sources.Memory),
        (2960, "rare", Sources.Memory),
        (2980, "aluminium, older off-road", Sources.Memory),
        (3000, "aluminium", Sources.PostSizesCanada),
        (3020, "rare", Sources.Memory),
        (3040, "rare", Sources.Memory),
        (3060, "rare", Sources.Memory),
        (3080, "aluminium", Sources.Memory),
        (3090, "common off-road and city; droppers", Sources.DropperAnatomy),
        (3140, "rare", Sources.Memory),
        (3160, "common off-road and road aluminium; droppers", Sources.DropperAnatomy),
        (3180, "city", Sources.Memory),
        (3240, "rare", Sources.RoadPostFeature),
        (3390, "folding; also written 34.0", Sources.FoldingPosts),
        (3490, "off-road droppers, some gravel", Sources.DropperAnatomy),
        (3500, "rare, top of the published range", Sources.CollarPage),
    ];

    /// <summary>The smallest and the largest size that is read, millimetres.</summary>
    public const decimal Least = 18m;

    public const decimal Most = 40m;

    public static Nanometres Exact(int hundredths) => new(hundredths * (Nanometres.PerMillimetre / 100));

    /// <summary>How much smaller than its bore a post is made for a slip fit, millimetres.</summary>
    public const decimal SlipFit = 0.1m;

    /// <summary>Sizes of seatposts as a caliper meets them: the post up to a slip fit under its name, its bore up to one above it.</summary>
    /// <param name="values">The nominal sizes, in the order in which equals are to be ranked.</param>
    /// <param name="hundredths">The size of each, hundredths.</param>
    /// <param name="called">What each is called.</param>
    /// <param name="postFirst">The post is the first reading, the bore the second; else the other way round.</param>
    public static IdentificationTable<T> Table<T>(ImmutableArray<T> values, Func<T, int> hundredths, Func<T, string> called, bool postFirst)
    {
        MeasuredDimension post = new("post", "caliper over the post where it sits in the tube, at three heights");
        MeasuredDimension bore = new("bore", "inside callipers, two directions, 20 mm below the slot");
        DimensionRow<T>[] rows = new DimensionRow<T>[values.Length];
        for (int i = 0; i < rows.Length; i++)
        {
            decimal size = hundredths(values[i]) / 100m;
            (decimal, decimal)? over = (size - SlipFit, size);
            (decimal, decimal)? within = (size, size + SlipFit);
            rows[i] = new(values[i], postFirst ? [over, within] : [within, over], Neighbours(hundredths(values[i])));
        }

        return new(postFirst ? [post, bore] : [bore, post], ImmutableArray.Create(rows), called);
    }

    /// <summary>The sizes in which droppers are made today, hundredths.</summary>
    private static readonly ImmutableArray<int> Current = [2720, 3090, 3160, 3490];

    /// <summary>The use of a size, the sizes beside it and, for one of today's, the next of those.</summary>
    private static string Neighbours(int hundredths)
    {
        string told = "";
        for (int i = 0; i < Rows.Length; i++)
        {
            if (Rows[i].Hundredths == hundredths)
            {
                told = Rows[i].Use;
                told += i > 0 ? Beside(Rows[i - 1].Hundredths, hundredths) : "";
                told += i + 1 < Rows.Length ? Beside(Rows[i + 1].Hundredths, hundredths) : "";
            }
        }

        for (int i = 0; i < Current.Length; i++)
        {
            if (Current[i] == hundredths)
            {
                told += i > 0 ? Usual(Current[i - 1], hundredths) : "";
                told += i + 1 < Current.Length ? Usual(Current[i + 1], hundredths) : "";
            }
        }

        return told;
    }

    private static string Beside(int other, int hundredths) =>
        FormattableString.Invariant($"; {other / 100m:0.##} is {Math.Abs(other - hundredths) / 100m:0.##} {(other < hundredths ? "less" : "more")}{(Math.Abs(other - hundredths) <= 10 ? ": only a micrometer or the stamp tells" : "")}");

    private static string Usual(int other, int hundredths) =>
        FormattableString.Invariant($"; against {other / 100m:0.##}, {Math.Abs(other - hundredths) / 100m:0.##} {(other < hundredths ? "less" : "more")}, a caliper decides");

    /// <summary>The source of a nominal size; null where no row has it.</summary>
    public static Source? SourceOf(long nanometres)
    {
        foreach ((int hundredths, _, Source source) in Rows)
        {
            if (Exact(hundredths).Value == nanometres)
            {
                return source;
            }
        }

        return null;
    }

    public static string? Read(ReadOnlySpan<char> text, out long nanometres, out int position)
    {
        TextCursor cursor = new(text);
        cursor.SkipBlanks();
        if (!cursor.AtEnd && cursor.Rest[0] is '\u00D8' or '\u2300' or '\u00F8')
        {
            cursor.Position++;
        }

        if (!cursor.TryNumber(out nanometres))
        {
            position = cursor.Position;
            return "a diameter in millimetres is expected, such as 27.2";
        }

        cursor.SkipMillimetres();
        position = cursor.Position;
        if (!cursor.AtEnd)
        {
            return "only millimetres may follow the diameter";
        }

        position = 0;
        decimal millimetres = new Nanometres(nanometres).Millimetres;
        return millimetres is < Least or > Most ? "a seatpost is 18 to 40 mm across" : null;
    }
}
