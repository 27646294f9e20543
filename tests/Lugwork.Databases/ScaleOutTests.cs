using System.Globalization;
using System.Text.RegularExpressions;
using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>More than one worker or process gives the answer of one.</summary>
public sealed partial class ScaleOutTests
{
    [Fact]
    public void PostgreSQL_cuts_by_slot_and_reads_with_several_workers()
    {
        RandomShop shop = RandomShop.Of(2);
        using Engine engine = Engine.Open("PostgreSQL");
        engine.Fill(shop, "partitioned");
        engine.Run("ANALYZE part_fit; ANALYZE frame_need; SET max_parallel_workers_per_gather = 2; SET min_parallel_table_scan_size = 0; SET min_parallel_index_scan_size = 0; SET parallel_setup_cost = 0; SET parallel_tuple_cost = 0");

        // The server gives a worker where one is free: other tests have some of their own.
        string plan = Plan(engine, FitRelations.CandidateQuery);
        for (int again = 0; again < 50 && !Launched().IsMatch(plan); again++)
        {
            Thread.Sleep(200);
            plan = Plan(engine, FitRelations.CandidateQuery);
        }

        Assert.Contains("Workers Planned: 2", plan, StringComparison.Ordinal);
        Assert.Matches(Launched(), plan);
        Assert.Contains("part_fit_seatpost", plan, StringComparison.Ordinal);
        Assert.Contains("part_fit_other", plan, StringComparison.Ordinal);
        Assert.Equal(shop.Joined, engine.Candidates(FitRelations.CandidateQuery).ToHashSet());

        string one = FitRelations.CandidateQuery.Replace("GROUP BY n.", "WHERE n.slot = 'seatpost' AND p.slot = 'seatpost'\nGROUP BY n.", StringComparison.Ordinal);
        string pruned = Plan(engine, one);
        Assert.Contains("part_fit_seatpost", pruned, StringComparison.Ordinal);
        Assert.DoesNotContain("part_fit_other", pruned, StringComparison.Ordinal);
        HashSet<Candidate> posts = [.. shop.Joined.Where(c => c.Slot == "seatpost")];
        Assert.NotEmpty(posts);
        Assert.Equal(posts, engine.Candidates(one).ToHashSet());
    }

    [Fact]
    public async Task DuckDB_answers_over_Parquet_in_several_processes()
    {
        RandomShop shop = RandomShop.Of(1);
        string folder = Directory.CreateTempSubdirectory("parquet").FullName;
        try
        {
            using (Engine engine = Engine.Open("DuckDB"))
            {
                engine.Fill(shop);
                engine.Run($"COPY part_fit TO '{folder}/part_fit' (FORMAT parquet, PARTITION_BY (slot)); COPY frame_need TO '{folder}/frame_need' (FORMAT parquet, PARTITION_BY (slot))");
            }

            string[] slots = [.. shop.NeedRows.Select(n => n.SlotKey).Distinct()];
            OwnProcess[] parts = [.. Enumerable.Range(0, 3).Select(i => OwnProcess.Start(["candidates-in-parquet", folder, .. slots.Where((_, at) => at % 3 == i)]))];
            try
            {
                HashSet<Candidate> all = [];
                foreach (OwnProcess part in parts)
                {
                    Candidate[] some = [.. (await part.Said()).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Candidate)];
                    Assert.NotEmpty(some);
                    Assert.All(some, c => Assert.True(all.Add(c), $"{c} came from two processes"));
                }

                Assert.Equal(shop.Joined, all);
            }
            finally
            {
                Array.ForEach(parts, p => p.Dispose());
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Plan(Engine engine, string sql) => string.Join('\n', engine.Read($"EXPLAIN (ANALYZE, COSTS OFF, TIMING OFF) {sql}", r => r.GetString(0)));

    [GeneratedRegex("Workers Launched: [12]")]
    private static partial Regex Launched();

    private static Candidate Candidate(string line) =>
        line.Split('\t') is [var frame, var slot, var part] ? new(long.Parse(frame, CultureInfo.InvariantCulture), slot, long.Parse(part, CultureInfo.InvariantCulture)) : throw new FormatException(line);
}
