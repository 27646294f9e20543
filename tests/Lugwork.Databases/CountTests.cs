using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>Counts from the cumulative histogram are those that counting the parts one by one gives.</summary>
public sealed class CountTests
{
    public static TheoryData<string, string> EveryForm => new() { { "SQLite", "counts" }, { "PostgreSQL", "counts" }, { "DuckDB", "counts" }, { "DuckDB", "asof" } };

    [Theory]
    [MemberData(nameof(EveryForm))]
    public void A_histogram_counts_what_is_there(string name, string recipe)
    {
        RandomShop shop = RandomShop.Of(1);
        using Engine engine = Engine.Open(name);
        engine.Fill(shop);
        engine.Run(Recipes.Of("histogram"));
        engine.Run("CREATE INDEX part_histogram_by_key ON part_histogram (slot, key, at_limit)");
        Dictionary<(long, string, string), long> counted = engine
            .Read(Recipes.Of(recipe), r => (Of: (r.GetInt64(0), r.GetString(1), r.GetString(2)), Parts: r.GetInt64(3)))
            .ToDictionary(r => r.Of, r => r.Parts);
        ILookup<(string, string), PartFitRow> rows = shop.PartRows.Where(p => p.LimitMin == p.LimitMax).ToLookup(r => (r.SlotKey, r.Key));
        Dictionary<(long, string, string), long> plain = shop.NeedRows.GroupBy(n => (n.FrameId, n.SlotKey, n.JointId))
            .ToDictionary(g => g.Key, g => g.Sum(n => (long)rows[(n.SlotKey, n.Key)].Count(p => p.LimitMin >= n.LimitMin && p.LimitMin <= n.LimitMax)));
        Assert.Equal(plain.OrderBy(p => p.Key), counted.OrderBy(p => p.Key));
        Assert.Contains(plain, p => p.Value > 5);
        Assert.Contains(plain, p => p.Value == 0);
    }
}
