using System.Diagnostics;
using System.Text.Json;

namespace Lugwork.Browser;

/// <summary>Answers while the stock changes.</summary>
public sealed class TornTests(Shop shop)
{
    private const int PerDelivery = 200;
    private const int States = 3;
    private static readonly TimeSpan Least = TimeSpan.FromSeconds(3);

    [Fact]
    public async Task No_answer_is_torn_while_deliveries_come()
    {
        await using ShopProcess busy = await ShopProcess.Start($"Data Source={shop.Copy("busy.db")}", ("Shop__DeliverEvery", "00:00:00.05"), ("Shop__RequestsPerMinute", "1000000"));
        await IsWhole([busy]);
    }

    /// <summary>Six ask shops that share a stock, each until it has seen some states: every answer is of one.</summary>
    internal static async Task IsWhole(ShopProcess[] shops)
    {
        // A slow machine gets more time, not fewer states to see.
        using CancellationTokenSource end = new(TimeSpan.FromSeconds(60));
        HashSet<long>[] seen = await Task.WhenAll(Enumerable.Range(0, 6).Select(i => Task.Run(() => Ask(shops[i % shops.Length].Client, end.Token))));
        string said = string.Join('\n', shops.Select(s => s.Said));
        Assert.All(seen, versions => Assert.True(versions.Count >= States, $"{versions.Count} states were seen; the shop said {said}"));
        Assert.DoesNotContain("fail:", said, StringComparison.Ordinal);
    }

    private static async Task<HashSet<long>> Ask(HttpClient client, CancellationToken end)
    {
        HashSet<long> versions = [];
        Stopwatch watch = Stopwatch.StartNew();
        while (!end.IsCancellationRequested && (versions.Count < States || watch.Elapsed < Least))
        {
            JsonElement answer = await Shop.Json(client, $"/api/parts/seatpost?frame={Shop.Frames}&size=10000");
            long version = answer.GetProperty("version").GetInt64();
            JsonElement[] rows = [.. answer.GetProperty("rows").EnumerateArray()];
            Assert.Equal(answer.GetProperty("counts").GetProperty("fits").GetInt32(), rows.Length);
            long[] delivered = [.. rows.Select(r => r.GetProperty("delivery").GetInt64()).Where(d => d > 0)];
            Assert.All(delivered, d => Assert.Equal(version, d));
            Assert.Equal(version == 0 ? 0 : PerDelivery, delivered.Length);
            versions.Add(version);
        }

        return versions;
    }
}
