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
        (2760, "rare", Sources.Memory),
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
