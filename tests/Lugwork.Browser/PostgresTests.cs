using System.Text.Json;
using Npgsql;

namespace Lugwork.Browser;

/// <summary>The same shop on PostgreSQL.</summary>
public sealed class PostgresTests(Shop shop)
{
    private const string Variable = "LUGWORK_POSTGRES";

    [Fact]
    public async Task It_answers_as_it_does_on_sqlite()
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
            await using ShopProcess other = await ShopProcess.Start(connection, ("Shop__RequestsPerMinute", "1000000"));
            foreach (string address in new[]
            {
                $"/api/needs?frame={Shop.Frames}", $"/api/parts/seatpost?frame={Shop.Frames}&list=needs-part", $"/api/parts/rearTyre?frame={Shop.Frames}&page=3", "/api/needs?frame=10200",
                "/api/parts/rearWheel?frame=10200&list=needs-part", "/api/seatposts/27.2", "/api/wheels?hub=R142-12&body=HG-L", "/api/frames?kind=gravel",
            })
            {
                JsonElement there = await Shop.Json(other.Client, address);
                Assert.Equal((await shop.Json(address)).GetRawText(), there.GetRawText());
            }
        }
        finally
        {
            await using NpgsqlCommand drop = source.CreateCommand($"DROP DATABASE {database} WITH (FORCE)");
            await drop.ExecuteNonQueryAsync();
        }
    }
}
