using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;
using Microsoft.Data.Sqlite;

namespace Lugwork.Browser;

/// <summary>What a shop prepares beside its start.</summary>
public sealed partial class FirstAnswerTests(Shop shop)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>Nobody asks anything, and every different part of the stock is on the shelf, as the database counts them.</summary>
    [Fact]
    public async Task The_first_answers_are_prepared_before_anybody_asks()
    {
        string copy = shop.Copy("prepared.db");
        await using ShopProcess fresh = await ShopProcess.Start($"Data Source={copy}");
        Match said = await Said(fresh, Prepared());
        Assert.Equal(Count(copy, "SELECT COUNT(DISTINCT spec.Id) FROM article JOIN spec ON spec.Id = article.SpecId WHERE spec.Slot <> 'frame'"), long.Parse(said.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>The relation is gone: that is said with its reason, and what does not need it is answered.</summary>
    [Fact]
    public async Task What_cannot_be_prepared_is_reported_and_the_shop_goes_on()
    {
        string copy = shop.Copy("unprepared.db");
        Run(copy, "DROP TABLE part_fit");
        await using ShopProcess broken = await ShopProcess.Start($"Data Source={copy}");
        await Said(broken, Failed());
        Assert.DoesNotContain("were prepared", broken.Said, StringComparison.Ordinal);
        Assert.Equal("Healthy", await broken.Client.GetStringAsync("/health"));
        using HttpResponseMessage posts = await broken.Client.GetAsync("/api/seatposts/27.2");
        Assert.Equal(HttpStatusCode.OK, posts.StatusCode);

        // Nothing was hidden: who asks for what could not be prepared is told.
        using HttpResponseMessage needs = await broken.Client.GetAsync($"/api/needs?frame={Shop.Frames}");
        await HostileTests.IsProblem(needs, needs.StatusCode);
        Assert.False(needs.IsSuccessStatusCode);
    }

    [Fact]
    public async Task A_stock_without_a_frame_that_can_be_read_is_reported()
    {
        string copy = shop.Copy("frameless.db");
        Run(copy, "UPDATE spec SET text = 'nothing at all' WHERE slot = 'frame'");
        await using ShopProcess frameless = await ShopProcess.Start($"Data Source={copy}");
        await Said(frameless, Unread());
        using HttpResponseMessage posts = await frameless.Client.GetAsync($"/api/parts/seatpost?frame={Shop.Frames}");
        Assert.Equal(HttpStatusCode.OK, posts.StatusCode);
    }

    private static async Task<Match> Said(ShopProcess process, Regex wanted)
    {
        for (Stopwatch watch = Stopwatch.StartNew(); watch.Elapsed < Patience;)
        {
            if (wanted.Match(process.Said) is { Success: true } match)
            {
                return match;
            }

            await Task.Delay(100);
        }

        throw new InvalidOperationException("it was not said:\n" + process.Said);
    }

    private static long Count(string file, string sql)
    {
        using SqliteConnection connection = Open(file);
        using SqliteCommand command = new(sql, connection);
        return (long)command.ExecuteScalar()!;
    }

    private static void Run(string file, string sql)
    {
        using SqliteConnection connection = Open(file);
        using SqliteCommand command = new(sql, connection);
        command.ExecuteNonQuery();
    }

    private static SqliteConnection Open(string file)
    {
        SqliteConnection connection = new($"Data Source={file};Pooling=False");
        connection.Open();
        return connection;
    }

    [GeneratedRegex("the first answers were prepared with frame [0-9]+ in [0-9.]+ s; the shelf holds ([0-9]+) specs")]
    private static partial Regex Prepared();

    [GeneratedRegex("""fail: .*\s+the first answers could not be prepared; the first customer waits for them\s+.*no such table""", RegexOptions.Singleline)]
    private static partial Regex Failed();

    [GeneratedRegex("warn: [^\n]*\n[^\n]*the first answers were not prepared: no frame of the stock can be read")]
    private static partial Regex Unread();
}
