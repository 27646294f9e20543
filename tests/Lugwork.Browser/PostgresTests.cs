using System.Text.Json;
using Npgsql;

namespace Lugwork.Browser;

/// <summary>The same shop on PostgreSQL.</summary>
public sealed class PostgresTests(Shop shop)
{
    private const string Variable = "LUGWORK_POSTGRES";

    [Fact]
    public async Task It_answers_as_it_does_on_sqlite_and_whole_while_two_of_it_take_deliveries()
    {
        string? server = Environment.GetEnvironmentVariable(Variable);
        Assert.SkipWhen(string.IsNullOrEmpty(server), $"no PostgreSQL: {Variable} holds no connection string");
        string database = $"shop{Guid.NewGuid():N}";
        await using NpgsqlDataSource source = NpgsqlDataSource.Create(server!);
        await using (NpgsqlCommand create = source.CreateCommand($"CREATE DATABASE {database}"))
        {
            await create.ExecuteNonQueryAsync();
        }

        string connection = new NpgsqlConnectionStringBuilder(server) { Database = database }.ConnectionString;
        try
        {
            await AnswersAlike(connection);
            await TakesDeliveries(connection);
            await IsRefusedWhereSomethingElseIs(connection);
        }
        finally
        {
            await using NpgsqlCommand drop = source.CreateCommand($"DROP DATABASE {database} WITH (FORCE)");
            await drop.ExecuteNonQueryAsync();
        }
    }

    private async Task AnswersAlike(string connection)
    {
        ShopProcess[] both = await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => ShopProcess.Start(connection, ("Shop__RequestsPerMinute", "1000000"))));
        try
        {
            Assert.Single(both, b => b.Said.Contains("50000 invented articles were written", StringComparison.Ordinal));
            foreach (string address in new[]
            {
                $"/api/needs?frame={Shop.Frames}", $"/api/parts/seatpost?frame={Shop.Frames}&list=NeedsPart", $"/api/parts/rearTyre?frame={Shop.Frames}&page=3", "/api/needs?frame=10200",
                "/api/parts/rearWheel?frame=10200&list=NeedsPart", "/api/seatposts/27.2", "/api/wheels?hub=R142-12&body=HG-L", "/api/frames?kind=gravel",
            })
            {
                JsonElement there = await Shop.Json(both[0].Client, address);
                Assert.Equal((await shop.Json(address)).GetRawText(), there.GetRawText());
            }
        }
        finally
        {
            await Task.WhenAll(both.Select(b => b.DisposeAsync().AsTask()));
        }
    }

    /// <summary>Two writers that read the same state would both write the next: one of them has to begin anew.</summary>
    private static async Task TakesDeliveries(string connection)
    {
        ShopProcess[] both = await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => ShopProcess.Start(connection, ("Shop__DeliverEvery", "00:00:00.02"), ("Shop__RequestsPerMinute", "1000000"))));
        try
        {
            await TornTests.IsWhole(both);
        }
        finally
        {
            await Task.WhenAll(both.Select(b => b.DisposeAsync().AsTask()));
        }
    }

    private static async Task IsRefusedWhereSomethingElseIs(string connection)
    {
        await using (NpgsqlDataSource own = NpgsqlDataSource.Create(connection))
        {
            await using NpgsqlCommand change = own.CreateCommand("DROP TABLE stock_state");
            await change.ExecuteNonQueryAsync();
        }

        Exception e = await Assert.ThrowsAnyAsync<InvalidOperationException>(async () =>
        {
            await using ShopProcess none = await ShopProcess.Start(connection);
        });
        Assert.Contains("a database of its own", e.Message, StringComparison.Ordinal);
    }
}
