using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>The index and every engine give one answer.</summary>
public sealed class CandidateTests
{
    private static readonly Lazy<RandomShop>[] Shops = [.. Enumerable.Range(1, 3).Select(seed => new Lazy<RandomShop>(() => new(seed)))];

    public static TheoryData<string, int> EveryShop
    {
        get
        {
            TheoryData<string, int> data = [];
            foreach (string engine in Engine.Names)
            {
                for (int shop = 0; shop < Shops.Length; shop++)
                {
                    data.Add(engine, shop);
                }
            }

            return data;
        }
    }

    [Fact]
    public void The_query_of_the_library_is_the_one_that_is_documented() => Assert.Equal(Recipes.Of("candidates"), FitRelations.CandidateQuery.ReplaceLineEndings("\n"));

    /// <summary>Else what follows would hold of nothing.</summary>
    [Fact]
    public void The_shops_hold_what_is_hard()
    {
        foreach (RandomShop shop in Shops.Select(s => s.Value))
        {
            Assert.Contains(shop.NeedRows, r => r.Bridge.Length > 0 && r.Bridge is not (FitRelations.Measure or FitRelations.Check));
            Assert.Contains(shop.NeedRows, r => r.Bridge == FitRelations.Measure);
            Assert.Contains(shop.NeedRows, r => r.Bridge == FitRelations.Check);
            Assert.Contains(shop.NeedRows, r => r.LimitMax is > 0 and < FitRelations.NoLimit);
            ILookup<(string, string), PartFitRow> parts = shop.PartRows.ToLookup(p => (p.Slot, p.Key));
            Assert.Contains(shop.NeedRows, n => n.LimitMax is > 0 and < FitRelations.NoLimit && parts[(n.Slot, n.Key)].Any(p => p.LimitMin == n.LimitMax));
            Assert.Contains(shop.NeedRows, n => n.LimitMax is > 0 and < FitRelations.NoLimit && parts[(n.Slot, n.Key)].Any(p => p.LimitMin > n.LimitMax && p.LimitMin - n.LimitMax <= 1_000_000));
            HashSet<(Candidate, Verdict Verdict)> indexed = shop.Indexed();
            Assert.All(new[] { Verdict.Fits, Verdict.NeedsPart, Verdict.NeedsMeasuring, Verdict.NotJudged }, v => Assert.Contains(indexed, i => i.Verdict == v));
            Assert.True(indexed.Count < shop.Builds.Length * shop.Parts.Count / 2, "hardly a part is refused");
        }
    }

    [Theory]
    [MemberData(nameof(EveryShop))]
    public void An_engine_joins_what_the_relations_say_and_the_check_leaves_what_the_index_finds(string name, int number)
    {
        RandomShop shop = Shops[number].Value;
        using Engine engine = Engine.Open(name);
        engine.Fill(shop);
        List<Candidate> found = engine.Candidates(FitRelations.CandidateQuery);
        Assert.Equal(found.Count, found.Distinct().Count());
        Assert.Equal(shop.Joined().OrderBy(c => (c.Frame, c.Slot, c.Part)), found.OrderBy(c => (c.Frame, c.Slot, c.Part)));
        Assert.Equal(Told(shop.Indexed()), Told(shop.Confirmed(found)));
    }

    [Theory]
    [MemberData(nameof(EveryShop))]
    public void What_a_candidate_takes_besides_stands_beside_it(string name, int number)
    {
        RandomShop shop = Shops[number].Value;
        using Engine engine = Engine.Open(name);
        engine.Fill(shop);
        HashSet<(Candidate, string, string)> told = [.. engine.Read(Recipes.Of("bridges"), r => (new Candidate(r.GetInt64(0), r.GetString(1), r.GetInt64(2)), r.GetString(3), r.GetString(4)))];
        ILookup<(string, string), PartFitRow> rows = shop.PartRows.ToLookup(r => (r.Slot, r.Key));
        HashSet<(Candidate, string, string)> plain = [.. shop.NeedRows
            .SelectMany(n => rows[(n.Slot, n.Key)].Where(p => p.LimitMin <= n.LimitMax && p.LimitMax >= n.LimitMin).Select(p => (Of: new Candidate(n.FrameId, n.Slot, p.PartId), n.Joint, n.Bridge)))
            .GroupBy(m => (m.Of, m.Joint))
            .Select(g => (g.Key.Of, g.Key.Joint, Least: g.Select(m => m.Bridge).Min(StringComparer.Ordinal)!))
            .Where(m => m.Least.Length > 0)];
        Assert.Equal(plain.Count, told.Count);
        Assert.Equal(plain.Select(p => (p.Item1, p.Item2)).ToHashSet(), told.Select(t => (t.Item1, t.Item2)).ToHashSet());
        Assert.All(told, t => Assert.Contains(shop.NeedRows, n => n.FrameId == t.Item1.Frame && n.Joint == t.Item2 && n.Bridge == t.Item3));
    }

    private static IEnumerable<string> Told(IEnumerable<(Candidate Of, Verdict Verdict)> answers) =>
        answers.Select(a => $"{a.Of.Frame} {a.Of.Slot} {a.Of.Part} {a.Verdict}").Order(StringComparer.Ordinal);
}
