using Lugwork.BottomBrackets;
using Lugwork.EntityFrameworkCore;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;
using Microsoft.EntityFrameworkCore;

namespace Lugwork.Databases;

/// <summary>Queries over interface values become SQL, and the rows that come back are the right ones.</summary>
public sealed class QueryTests
{
    private static readonly SeatpostDiameter[] Accepted = [.. FitKeys.Accepted(Build.From(Frame.Read("seat tube 27.2")), Slot.Seatpost, Verdict.NeedsPart)
        .Where(row => row.JointId == "seatpost-in-seat-tube").Select(row => SeatpostDiameter.Parse(row.Key))];

    public static TheoryData<string, StoredAs> EveryStore => new()
    {
        { "SQLite", StoredAs.FitKey }, { "SQLite", StoredAs.FitCode }, { "PostgreSQL", StoredAs.FitKey }, { "PostgreSQL", StoredAs.FitCode },
    };

    private static Article[] Articles() =>
    [
        new()
        {
            Id = 1, Diameter = SeatpostDiameter.OfMillimetres(27.2m), Bore = SeatTubeBore.Parse("27.2"), Shell = Shell.Parse("BSA-68"), Hub = HubStandard.Parse("R142-12"), Tyre = TyreSize.Parse("37-622"),
            Headset = HeadsetPair.Parse("ZS44/28.6|ZS56/40"), Axle = AxleSize.Parse("12x142"), LeastInsertion = Dimension.OfMillimetres(80), MostLoad = Load.OfKilograms(100), HeadAngle = FrameAngle.OfDegrees(71.5m),
        },
        new() { Id = 2, Diameter = SeatpostDiameter.OfMillimetres(31.6m), Shell = Shell.Parse("T47-68"), LeastInsertion = Dimension.OfMillimetres(80.000001m) },
        new() { Id = 3, Diameter = SeatpostDiameter.OfMillimetres(26.8m), Shell = Shell.Parse("BSA-68"), LeastInsertion = Dimension.OfMillimetres(100) },
        new() { Id = 4, Diameter = SeatpostDiameter.OfMillimetres(27.20001m), Shell = Shell.Parse("BSA-73") },
    ];

    [Theory]
    [MemberData(nameof(EveryStore))]
    public void Rows_come_back_as_they_were_saved(string engine, StoredAs stored)
    {
        using ModelStore store = Filled(engine, stored);
        using ShopModel shop = store.Open();
        foreach ((Article saved, Article read) in Articles().Zip(shop.Articles.OrderBy(a => a.Id).ToList()))
        {
            Assert.Equal(
                (saved.Id, saved.Diameter, saved.Bore, saved.Shell, saved.Hub, saved.Tyre, saved.Headset),
                (read.Id, read.Diameter, read.Bore, read.Shell, read.Hub, read.Tyre, read.Headset));
            Assert.Equal((saved.Axle, saved.LeastInsertion, saved.MostLoad, saved.HeadAngle), (read.Axle, read.LeastInsertion, read.MostLoad, read.HeadAngle));
        }
    }

    [Theory]
    [MemberData(nameof(EveryStore))]
    public void Accepted_keys_are_a_list_in_the_query(string engine, StoredAs stored)
    {
        Assert.Contains(SeatpostDiameter.OfMillimetres(26.8m), Accepted);
        using ModelStore store = Filled(engine, stored);
        using ShopModel shop = store.Open();
        SeatpostDiameter[] accepted = [.. Accepted];
        IQueryable<Article> query = shop.Articles.Where(a => accepted.Contains(a.Diameter));
        string sql = query.ToQueryString();
        string one = stored == StoredAs.FitKey ? "27.2" : "27200000";
        string condition = engine == "SQLite" ? "WHERE \"a\".\"Diameter\" IN (" : "WHERE a.\"Diameter\" = ANY (";
        Assert.True(sql.Contains(condition, StringComparison.Ordinal), sql);
        Assert.Contains(one, sql, StringComparison.Ordinal);
        Assert.Equal([1, 3], query.OrderBy(a => a.Id).Select(a => a.Id).ToArray());
    }

    [Theory]
    [MemberData(nameof(EveryStore))]
    public void What_is_not_known_is_asked_for_apart(string engine, StoredAs stored)
    {
        using ModelStore store = Filled(engine, stored);
        using ShopModel shop = store.Open();
        IQueryable<Article> query = shop.Articles.Where(a => a.Hub == null);
        Assert.Contains(engine == "SQLite" ? "WHERE \"a\".\"Hub\" IS NULL" : "WHERE a.\"Hub\" IS NULL", query.ToQueryString(), StringComparison.Ordinal);
        Assert.Equal([2, 3, 4], query.OrderBy(a => a.Id).Select(a => a.Id).ToArray());

        HubStandard[] hubs = [HubStandard.Parse("R142-12")];
        Assert.Equal([1, 2, 3, 4], shop.Articles.Where(a => a.Hub == null || hubs.Contains(a.Hub)).OrderBy(a => a.Id).Select(a => a.Id).ToArray());
        SeatTubeBore?[] bores = [SeatTubeBore.Parse("27.2")];
        Assert.Equal([1], shop.Articles.Where(a => bores.Contains(a.Bore)).Select(a => a.Id).ToArray());
    }

    [Theory]
    [MemberData(nameof(EveryStore))]
    public void A_limit_is_a_range_of_whole_nanometres(string engine, StoredAs stored)
    {
        using ModelStore store = Filled(engine, stored);
        using ShopModel shop = store.Open();
        Dimension most = Dimension.OfMillimetres(80);
        IQueryable<Article> query = shop.Articles.Where(a => a.LeastInsertion <= most);
        string sql = query.ToQueryString();
        Assert.Contains(engine == "SQLite" ? "WHERE \"a\".\"LeastInsertion\" <= " : "WHERE a.\"LeastInsertion\" <= ", sql, StringComparison.Ordinal);
        Assert.Contains("80000000", sql, StringComparison.Ordinal);
        Assert.Equal([1], query.Select(a => a.Id).ToArray());
        Assert.Equal([1, 2, 3], shop.Articles.Where(a => a.LeastInsertion >= most).OrderBy(a => a.LeastInsertion).Select(a => a.Id).ToArray());
        Load light = Load.OfKilograms(99.9m);
        Assert.Equal([1], shop.Articles.Where(a => a.MostLoad > light).Select(a => a.Id).ToArray());
        FrameAngle steep = FrameAngle.OfDegrees(71.500001m);
        Assert.Equal([1], shop.Articles.Where(a => a.HeadAngle < steep).Select(a => a.Id).ToArray());
    }

    [Theory]
    [MemberData(nameof(EveryStore))]
    public void Values_group_compare_and_stand_in_a_query_by_themselves(string engine, StoredAs stored)
    {
        using ModelStore store = Filled(engine, stored);
        using ShopModel shop = store.Open();
        Shell shell = Shell.Parse("BSA-68");
        Assert.Equal([1, 3], shop.Articles.Where(a => a.Shell == shell).OrderBy(a => a.Id).Select(a => a.Id).ToArray());
        Assert.Equal([2, 4], shop.Articles.Where(a => a.Shell != shell).OrderBy(a => a.Id).Select(a => a.Id).ToArray());
        Dictionary<Shell, int> counts = shop.Articles.GroupBy(a => a.Shell).Select(g => new { g.Key, Count = g.Count() }).ToDictionary(g => g.Key, g => g.Count);
        Assert.Equal(2, counts[shell]);
        Assert.Equal(3, counts.Count);
        HeadsetPair pair = HeadsetPair.Parse("zs44/28.6 | zs56/40");
        Assert.Equal([1], shop.Articles.Where(a => a.Headset == pair).Select(a => a.Id).ToArray());
    }

    [Theory]
    [MemberData(nameof(EveryStore))]
    public void A_change_is_seen_and_the_same_value_is_none(string engine, StoredAs stored)
    {
        using ModelStore store = Filled(engine, stored);
        using ShopModel shop = store.Open();
        Article article = shop.Articles.Single(a => a.Id == 1);
        article.Diameter = SeatpostDiameter.OfMillimetres(27.20m);
        article.Shell = Shell.Parse("bsa 68");
        Assert.False(shop.ChangeTracker.HasChanges());
        article.Bore = null;
        article.Diameter = SeatpostDiameter.OfMillimetres(30.9m);
        Assert.Equal(1, shop.SaveChanges());
        using ShopModel again = store.Open();
        Article back = again.Articles.Single(a => a.Id == 1);
        Assert.Equal((SeatpostDiameter.OfMillimetres(30.9m), (SeatTubeBore?)null), (back.Diameter, back.Bore));
    }

    [Theory]
    [MemberData(nameof(EveryStore))]
    public void The_default_of_a_size_is_never_saved_and_text_that_is_none_is_said(string engine, StoredAs stored)
    {
        using ModelStore store = Filled(engine, stored);
        using (ShopModel shop = store.Open())
        {
            shop.Articles.Add(new() { Id = 9, Shell = Shell.Parse("BSA-68") });
            Exception refused = Assert.ThrowsAny<Exception>(() => shop.SaveChanges());
            Assert.Contains("seatpost diameter", (refused.InnerException ?? refused).Message, StringComparison.Ordinal);
        }

        using ShopModel spoilt = store.Open();
        Assert.Equal(4, spoilt.Articles.Count());
        _ = stored == StoredAs.FitKey
            ? spoilt.Database.ExecuteSqlRaw("UPDATE \"Articles\" SET \"Diameter\" = 'x''; DROP TABLE \"Articles\"; --' WHERE \"Id\" = 4")
            : spoilt.Database.ExecuteSqlRaw("UPDATE \"Articles\" SET \"Diameter\" = -1 WHERE \"Id\" = 4");
        Exception said = Assert.ThrowsAny<Exception>(() => spoilt.Articles.Single(a => a.Id == 4));
        Assert.True(Inner(said) is FormatException or ArgumentOutOfRangeException, said.ToString());
        Assert.Equal(4, spoilt.Articles.Count());
    }

    private static Exception Inner(Exception e) => e.InnerException is { } inner ? Inner(inner) : e;

    private static ModelStore Filled(string engine, StoredAs stored)
    {
        ModelStore store = new(engine, stored);
        using ShopModel shop = store.Open();
        shop.AddRange(Articles());
        Assert.Equal(Articles().Length, shop.SaveChanges());
        return store;
    }
}
