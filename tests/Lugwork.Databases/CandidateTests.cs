using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>The index and every engine give one answer.</summary>
public sealed class CandidateTests
{
    private static readonly int[] Seeds = [1, 2];

    public static TheoryData<string, int> EveryShop
    {
        get
        {
            TheoryData<string, int> data = [];
            foreach (string engine in Engine.Names)
            {
                foreach (int seed in Seeds)
                {
                    data.Add(engine, seed);
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
        foreach (RandomShop shop in Seeds.Select(RandomShop.Of))
        {
            Assert.Contains(shop.NeedRows, r => r.Bridge.Length > 0 && r.Bridge is not (FitRelations.Measure or FitRelations.Check));
            Assert.Contains(shop.NeedRows, r => r.Bridge == FitRelations.Measure);
            Assert.Contains(shop.NeedRows, r => r.Bridge == FitRelations.Check);
            Assert.Contains(shop.NeedRows, r => r.LimitMax is > 0 and < FitRelations.NoLimit);
            ILookup<(string, string), PartFitRow> parts = shop.PartRows.ToLookup(p => (p.SlotKey, p.Key));
            Assert.Contains(shop.NeedRows, n => n.LimitMax is > 0 and < FitRelations.NoLimit && parts[(n.SlotKey, n.Key)].Any(p => p.LimitMin == n.LimitMax));
            Assert.Contains(shop.NeedRows, n => n.LimitMax is > 0 and < FitRelations.NoLimit && parts[(n.SlotKey, n.Key)].Any(p => p.LimitMin > n.LimitMax && p.LimitMin - n.LimitMax <= 1_000_000));
            HashSet<(Candidate, Verdict Verdict)> indexed = shop.Indexed();
            Assert.All(new[] { Verdict.Fits, Verdict.NeedsPart, Verdict.NeedsMeasuring, Verdict.NotJudged }, v => Assert.Contains(indexed, i => i.Verdict == v));
            int refused = (shop.Builds.Length * shop.Parts.Count) - indexed.Count;
            Assert.True(refused > 200, $"only {refused} are refused");
            Assert.True(shop.Joined.Count < indexed.Count + refused, "the join meets every part");
        }
    }

    /// <summary>What the engines are held to below is what the index finds, once the check has looked at each candidate.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Of_the_candidates_the_check_leaves_what_the_index_finds(int seed)
    {
        RandomShop shop = RandomShop.Of(seed);
        Assert.Equal(Told(shop.Indexed()), Told(shop.Confirmed(shop.Joined)));
    }

    [Theory]
    [MemberData(nameof(EveryShop))]
    public void An_engine_joins_what_the_relations_say(string name, int seed)
    {
        RandomShop shop = RandomShop.Of(seed);
        using Engine engine = Engine.Open(name);
        engine.Fill(shop);
        List<Candidate> found = engine.Candidates(FitRelations.CandidateQuery);
        Assert.Equal(found.Count, found.Distinct().Count());
        Assert.Equal(shop.Joined.OrderBy(c => (c.Frame, c.Slot, c.Part)), found.OrderBy(c => (c.Frame, c.Slot, c.Part)));
    }

    [Theory]
    [MemberData(nameof(EveryShop))]
    public void What_a_candidate_takes_besides_stands_beside_it(string name, int seed)
    {
        RandomShop shop = RandomShop.Of(seed);
        using Engine engine = Engine.Open(name);
        engine.Fill(shop);
        HashSet<(Candidate, string, string)> told = [.. engine.Read(Recipes.Of("bridges"), r => (new Candidate(r.GetInt64(0), r.GetString(1), r.GetInt64(2)), r.GetString(3), r.GetString(4)))];
        ILookup<(string, string), PartFitRow> rows = shop.PartRows.ToLookup(r => (r.SlotKey, r.Key));
        HashSet<(Candidate, string, string)> plain = [.. shop.NeedRows
            .SelectMany(n => rows[(n.SlotKey, n.Key)].Where(p => p.LimitMin <= n.LimitMax && p.LimitMax >= n.LimitMin).Select(p => (Of: new Candidate(n.FrameId, n.SlotKey, p.PartId), n.JointId, n.Bridge)))
            .GroupBy(m => (m.Of, m.JointId))
            .Select(g => (g.Key.Of, g.Key.JointId, Bridge: g.Select(m => m.Bridge).Distinct().ToArray() is [var one] ? one : FitRelations.Check))
            .Where(m => m.Bridge.Length > 0)];
        Assert.Equal(plain, told);
    }

    /// <summary>One of its sizes fits as it is and the other takes a shim: nothing is said for it that holds of one alone.</summary>
    [Theory]
    [InlineData("SQLite")]
    [InlineData("PostgreSQL")]
    [InlineData("DuckDB")]
    public void A_part_that_may_be_one_of_two_is_left_to_the_check(string name)
    {
        using Engine engine = Engine.Open(name);
        Dictionary<long, string> posts = new() { [1] = "27.2", [2] = "26.8", [3] = "27.2 | 26.8", [4] = "25.4 | 26.8" };
        engine.Fill([.. posts.SelectMany(p => FitRelations.OfPart(p.Key, Seatpost.Read($"diameter {p.Value}"), Slot.Seatpost))], [.. FitRelations.NeedsOf(1, Build.From(Frame.Read("seatTube 27.2")), Verdict.NeedsMeasuring)]);
        Assert.Equal([1, 2, 3, 4], engine.Candidates(FitRelations.CandidateQuery).Where(c => c.Slot == "seatpost").Select(c => c.Part).Order());
        Dictionary<long, string> told = engine.Read(Recipes.Of("bridges"), r => (Slot: r.GetString(1), Part: r.GetInt64(2), Joint: r.GetString(3), Bridge: r.GetString(4)))
            .Where(r => r is { Slot: "seatpost", Joint: "seatpost-in-seat-tube" }).ToDictionary(r => r.Part, r => r.Bridge);
        Assert.DoesNotContain(1, told.Keys);
        Assert.Contains("shim", told[2], StringComparison.Ordinal);
        Assert.Equal(FitRelations.Check, told[3]);
        Assert.Equal(FitRelations.Check, told[4]);
    }

    private static IEnumerable<string> Told(IEnumerable<(Candidate Of, Verdict Verdict)> answers) =>
        answers.Select(a => $"{a.Of.Frame} {a.Of.Slot} {a.Of.Part} {a.Verdict}").Order(StringComparer.Ordinal);
}
