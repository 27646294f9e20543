using System.Diagnostics;
using System.Net;
using System.Text.Json;

namespace Lugwork.Browser;

/// <summary>How often, how many at once, and what a start refuses.</summary>
public sealed class LimitTests(Shop shop)
{
    /// <summary>Behind a proxy the forwarded address counts, where the setting of the README is set; of version 6 its first 64 bits.</summary>
    [Fact]
    public async Task Who_asks_too_often_has_to_wait_and_a_network_of_version_6_is_one_caller()
    {
        await using ShopProcess slow = await ShopProcess.Start($"Data Source={shop.File}", ("Shop__RequestsPerMinute", "2"), ("Shop__AtOnce", "1"), ("ASPNETCORE_FORWARDEDHEADERS_ENABLED", "true"));
        async Task<HttpStatusCode> From(string address, string path = "/icon.svg")
        {
            using HttpRequestMessage request = new(HttpMethod.Get, path);
            request.Headers.Add("X-Forwarded-For", address);
            using HttpResponseMessage answer = await slow.Client.SendAsync(request);
            return answer.StatusCode;
        }

        // Who waits for a place, as one of these has to, has not used one of the requests of its minute twice.
        string list = $"/api/parts/seatpost?frame={Shop.Frames}&size=1";
        HttpStatusCode[] both = await Task.WhenAll(From("192.0.2.7", list), From("192.0.2.7", list));
        Assert.All(both, s => Assert.Equal(HttpStatusCode.OK, s));
        Assert.Equal(HttpStatusCode.TooManyRequests, await From("192.0.2.7"));

        Assert.Equal(HttpStatusCode.OK, await From("2001:db8:1:2::1"));
        Assert.Equal(HttpStatusCode.OK, await From("2001:db8:1:2:ffff::2"));
        Assert.Equal(HttpStatusCode.TooManyRequests, await From("2001:db8:1:2::3"));
        Assert.Equal(HttpStatusCode.OK, await From("2001:db8:1:3::1"));
        Assert.Equal(HttpStatusCode.OK, await From("192.0.2.1"));
        Assert.Equal(HttpStatusCode.OK, await From("192.0.2.2"));

        for (int i = 0; i < 2; i++)
        {
            using HttpResponseMessage good = await slow.Client.GetAsync("/api/frames");
            Assert.Equal(HttpStatusCode.OK, good.StatusCode);
        }

        using HttpResponseMessage refused = await slow.Client.GetAsync("/api/frames");
        await HostileTests.IsProblem(refused, HttpStatusCode.TooManyRequests);
        Assert.True(refused.Headers.RetryAfter!.Delta > TimeSpan.Zero);
        using HttpResponseMessage page = await slow.Client.GetAsync("/");
        Assert.Equal(HttpStatusCode.TooManyRequests, page.StatusCode);
        Assert.Equal("Healthy", await slow.Client.GetStringAsync("/health"));
    }

    [Fact]
    public async Task A_shop_that_is_full_says_so_and_goes_on()
    {
        await using ShopProcess narrow = await ShopProcess.Start($"Data Source={shop.File}", ("Shop__AtOnce", "1"), ("Shop__MayWait", "1"), ("Shop__RequestsPerMinute", "1000000"));
        string address = $"/api/parts/seatpost?frame={Shop.Frames}&size=1000";
        HttpResponseMessage[] answers = await Task.WhenAll(Enumerable.Range(0, 12).Select(_ => narrow.Client.GetAsync(address)));
        Assert.Contains(answers, a => a.StatusCode == HttpStatusCode.OK);
        HttpResponseMessage[] full = [.. answers.Where(a => a.StatusCode != HttpStatusCode.OK)];
        Assert.NotEmpty(full);
        foreach (HttpResponseMessage refused in full)
        {
            await HostileTests.IsProblem(refused, HttpStatusCode.ServiceUnavailable);
            Assert.True(refused.Headers.RetryAfter!.Delta > TimeSpan.Zero);
        }

        Assert.True((await Shop.Json(narrow.Client, address)).GetProperty("rows").GetArrayLength() > 0);
        Array.ForEach(answers, a => a.Dispose());
    }

    [Theory]
    [InlineData("Shop__AtOnce", "0", "AtOnce")]
    [InlineData("Shop__RequestsPerMinute", "0", "RequestsPerMinute")]
    [InlineData("Shop__AnswerWithin", "00:00:00", "AnswerWithin")]
    [InlineData("ConnectionStrings__Shop", "Username=nobody", "names neither a host")]
    public async Task A_setting_that_cannot_be_is_refused_at_the_start(string key, string value, string told)
    {
        Exception e = await Assert.ThrowsAnyAsync<InvalidOperationException>(async () =>
        {
            await using ShopProcess none = await ShopProcess.Start($"Data Source={shop.File}", (key, value));
        });
        Assert.Contains(told, e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_database_that_holds_something_else_is_refused_at_the_start()
    {
        string file = Path.Combine(shop.Folder, "other.db");
        await using (Microsoft.Data.Sqlite.SqliteConnection connection = new($"Data Source={file};Pooling=False"))
        {
            await connection.OpenAsync();
            await using Microsoft.Data.Sqlite.SqliteCommand command = connection.CreateCommand();
            command.CommandText = "CREATE TABLE recipe (id INTEGER)";
            await command.ExecuteNonQueryAsync();
        }

        Exception e = await Assert.ThrowsAnyAsync<InvalidOperationException>(async () =>
        {
            await using ShopProcess none = await ShopProcess.Start($"Data Source={file}");
        });
        Assert.Contains("a database of its own", e.Message, StringComparison.Ordinal);
    }

    /// <summary>The fixture starts two at once on an empty file.</summary>
    [Fact]
    public async Task Of_two_shops_that_start_together_one_writes_the_stock_and_both_sell_it()
    {
        string[] wrote = [.. new[] { shop.Process.Said, shop.Second.Said }.Where(s => s.Contains("50000 invented articles were written", StringComparison.Ordinal))];
        Assert.Single(wrote);
        string address = $"/api/parts/seatpost?frame={Shop.Frames}&size=1";
        Assert.Equal((await shop.Json(address)).GetRawText(), (await Shop.Json(shop.Second.Client, address)).GetRawText());
    }

    /// <summary>Nobody limits who asks for health, so that it costs nothing: the database is asked once a second.</summary>
    [Fact]
    public async Task Health_is_asked_of_the_database_once_a_second_at_most()
    {
        string file = shop.Copy("health.db");
        await using ShopProcess other = await ShopProcess.Start($"Data Source={file};Pooling=False");
        Stopwatch watch = Stopwatch.StartNew();
        Assert.Equal("Healthy", await other.Client.GetStringAsync("/health"));
        await using (Microsoft.Data.Sqlite.SqliteConnection connection = new($"Data Source={file};Pooling=False"))
        {
            await connection.OpenAsync();
            await using Microsoft.Data.Sqlite.SqliteCommand command = connection.CreateCommand();
            command.CommandText = "DELETE FROM stock_state";
            Assert.Equal(1, await command.ExecuteNonQueryAsync());
        }

        using HttpResponseMessage soon = await other.Client.GetAsync("/health");
        Assert.True(soon.IsSuccessStatusCode || watch.Elapsed > TimeSpan.FromSeconds(1), "it was asked again at once");
        while (watch.Elapsed < TimeSpan.FromSeconds(30))
        {
            using HttpResponseMessage later = await other.Client.GetAsync("/health");
            if (later.StatusCode == HttpStatusCode.ServiceUnavailable)
            {
                return;
            }

            await Task.Delay(100);
        }

        Assert.Fail("it stays healthy without a stock");
    }
}
