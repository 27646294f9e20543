using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Data.Sqlite;

namespace Lugwork.Browser;

/// <summary>Input that nobody means well with: refused or escaped, and the shop goes on.</summary>
public sealed partial class HostileTests(Shop shop)
{
    private const string Script = "<script>alert(1)</script><img src=x onerror=alert(2)>\"'&";

    [Theory]
    [InlineData("/api/search", "{\"post\":", 400)]
    [InlineData("/api/search", "{\"post\":\"10x135\"}", 400)]
    [InlineData("/api/search", "{\"post\":{\"a\":1}}", 400)]
    [InlineData("/api/search", "[]", 400)]
    [InlineData("/api/search", "", 400)]
    [InlineData("/api/search", "{\"hub\":\"\\ud800\"}", 400)]
    [InlineData("/api/sheet", "null", 400)]
    [InlineData("/api/sheet", "{\"text\":\"\"}", 400)]
    [InlineData("/api/check", "{\"parts\":{\"frame\":{},\"frame\":{}}}", 400)]
    [InlineData("/api/check", "{\"parts\":{\"wheel\":{\"x\":\"<script>\"}}}", 400)]
    [InlineData("/api/check", "\u0000", 400)]
    public async Task Malformed_json_is_a_problem_with_its_place(string path, string json, int status)
    {
        using StringContent body = new(json, Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await shop.Client.PostAsync(path, body);
        await IsProblem(answer, (HttpStatusCode)status);
    }

    [Fact]
    public async Task Json_that_is_far_too_deep_is_refused()
    {
        foreach (string path in new[] { "/api/search", "/api/check" })
        {
            using StringContent body = new(new string('[', 50_000), Encoding.UTF8, "application/json");
            using HttpResponseMessage answer = await shop.Client.PostAsync(path, body);
            await IsProblem(answer, HttpStatusCode.BadRequest);
        }
    }

    [Theory]
    [InlineData("/api/search")]
    [InlineData("/api/sheet")]
    [InlineData("/api/check")]
    public async Task A_body_that_is_too_large_is_refused(string path)
    {
        using StringContent body = new("{\"text\":\"" + new string('a', 400_000) + "\"}", Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await shop.Client.PostAsync(path, body);
        await IsProblem(answer, HttpStatusCode.RequestEntityTooLarge);
    }

    [Fact]
    public async Task A_form_that_is_too_large_is_refused()
    {
        using FormUrlEncodedContent form = new([new("sheet", new string('a', 30_000))]);
        using HttpResponseMessage answer = await shop.Client.PostAsync("/sheet", form);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        using FormUrlEncodedContent larger = new([new("sheet", new string('a', 400_000))]);
        using HttpResponseMessage refused = await shop.Client.PostAsync("/sheet", larger);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, refused.StatusCode);
    }

    [Fact]
    public async Task Another_kind_of_content_is_refused()
    {
        using StringContent body = new("<a/>", Encoding.UTF8, "text/xml");
        using HttpResponseMessage answer = await shop.Client.PostAsync("/api/search", body);
        await IsProblem(answer, HttpStatusCode.UnsupportedMediaType);
    }

    [Theory]
    [InlineData("/api/parts/seatpost")]
    [InlineData("/api/parts/seatpost?frame=99999999")]
    [InlineData("/api/parts/seatpost?frame=-1")]
    [InlineData("/api/parts/seatpost?frame=rear%20nonsense")]
    [InlineData("/api/parts/frame?frame=10001")]
    [InlineData("/api/parts/nothing?frame=10001")]
    [InlineData("/api/parts/seatpost?frame=10001&size=0")]
    [InlineData("/api/parts/seatpost?frame=10001&size=10001")]
    [InlineData("/api/parts/seatpost?frame=10001&page=99999999999")]
    [InlineData("/api/parts/seatpost?frame=10001&list=all")]
    [InlineData("/api/parts/seatpost?frame=10001&part=seatpost")]
    [InlineData("/api/parts/seatpost?frame=10001&part=frame.10001")]
    [InlineData("/api/parts/seatpost?frame=10001&part=saddle.10001")]
    [InlineData("/api/parts/seatpost?frame=10001&part=saddle.1&part=saddle.2")]
    [InlineData("/api/seatposts/99")]
    [InlineData("/api/tyres/26")]
    [InlineData("/api/wheels?hub=10x135")]
    public async Task Bad_addresses_are_problems_and_never_errors(string address)
    {
        using HttpResponseMessage answer = await shop.Client.GetAsync(address);
        Assert.InRange((int)answer.StatusCode, 400, 404);
        await IsProblem(answer, answer.StatusCode);
    }

    [Fact]
    public async Task An_address_that_is_too_long_is_refused()
    {
        using HttpResponseMessage line = await shop.Client.GetAsync("/api/needs?frame=" + new string('a', 20_000));
        Assert.Equal(HttpStatusCode.RequestUriTooLong, line.StatusCode);
        using HttpResponseMessage frame = await shop.Client.GetAsync("/api/needs?frame=" + new string('a', 5_000));
        await IsProblem(frame, HttpStatusCode.BadRequest);
    }

    [Fact]
    public async Task Sql_in_an_address_finds_nothing_and_changes_nothing()
    {
        foreach (string sql in new[] { "' OR 1=1 --", "'; DROP TABLE article; --", "10001; DELETE FROM article", "x' UNION SELECT * FROM spec --", "\" OR \"\"=\"" })
        {
            string said = Uri.EscapeDataString(sql);
            foreach (string address in new[] { $"/api/parts/{said}?frame=10001", $"/api/needs?frame={said}", $"/api/needs?frame=10001&part=saddle.{said}", $"/api/seatposts/{said}", $"/api/wheels?body={said}", $"/api/frames?kind={said}" })
            {
                using HttpResponseMessage answer = await shop.Client.GetAsync(address);
                Assert.InRange((int)answer.StatusCode, 400, 404);
            }
        }

        Assert.NotEmpty((await shop.Json("/api/frames")).EnumerateArray());
    }

    [Fact]
    public async Task Script_in_a_sheet_or_an_address_comes_back_as_text()
    {
        using FormUrlEncodedContent form = new([new("sheet", $"Seatpost: 27.2 mm\n{Script}")]);
        using HttpResponseMessage sheet = await shop.Client.PostAsync("/sheet", form);
        IsEscaped(await sheet.Content.ReadAsStringAsync(), told: true);
        foreach (string address in new[] { $"/build?frame={Uri.EscapeDataString(Script)}", $"/parts/seatpost?frame=10001&list={Uri.EscapeDataString(Script)}", $"/parts/{Uri.EscapeDataString(Script)}?frame=10001", $"/?kind={Uri.EscapeDataString(Script)}" })
        {
            using HttpResponseMessage page = await shop.Client.GetAsync(address);
            Assert.InRange((int)page.StatusCode, 400, 404);
            IsEscaped(await page.Content.ReadAsStringAsync(), told: false);
        }
    }

    [Fact]
    public async Task Script_and_sql_in_the_name_of_an_article_are_a_name()
    {
        string name = Script + "'; DROP TABLE article; --";
        string file = shop.Copy("names.db");
        await using (SqliteConnection connection = new($"Data Source={file};Pooling=False"))
        {
            await connection.OpenAsync();
            await using SqliteCommand command = connection.CreateCommand();
            command.CommandText = """UPDATE article SET "Name" = $name, "Cents" = 1 WHERE "Id" = (SELECT a."Id" FROM article a JOIN spec s ON s."Id" = a."SpecId" WHERE s."Post" = '27.2' LIMIT 1)""";
            command.Parameters.AddWithValue("$name", name);
            Assert.Equal(1, await command.ExecuteNonQueryAsync());
        }

        await using ShopProcess other = await ShopProcess.Start($"Data Source={file}");
        string page = await other.Client.GetStringAsync($"/parts/seatpost?frame={Shop.Frames}");
        IsEscaped(page, told: true);
        JsonElement first = (await Shop.Json(other.Client, $"/api/parts/seatpost?frame={Shop.Frames}")).GetProperty("rows")[0];
        Assert.Equal(name, first.GetProperty("name").GetString());
        string bench = await other.Client.GetStringAsync($"/build?frame={Shop.Frames}&part=seatpost.{first.GetProperty("number").GetInt64()}");
        IsEscaped(bench, told: true);
        JsonElement report = await Shop.Json(other.Client, $"/api/report?frame={Shop.Frames}&part=seatpost.{first.GetProperty("number").GetInt64()}");
        Assert.NotEmpty(report.GetProperty("joints").EnumerateArray());

        // Which of the drawings print a name is theirs to know; one at least has to.
        int named = 0;
        for (int i = 0; i < DrawingOf().Count(bench); i++)
        {
            using HttpResponseMessage answer = await other.Client.GetAsync($"/drawings/{i}.svg?frame={Shop.Frames}&part=seatpost.{first.GetProperty("number").GetInt64()}");
            string drawing = await answer.Content.ReadAsStringAsync();
            Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType!.MediaType);
            Assert.DoesNotContain("<script", drawing, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<img", drawing, StringComparison.OrdinalIgnoreCase);
            named += drawing.Contains("alert(1)", StringComparison.Ordinal) ? 1 : 0;
        }

        Assert.True(named > 0, "no drawing prints the name");
    }

    [Fact]
    public async Task Every_answer_brings_its_guards()
    {
        foreach (string address in new[] { "/", "/nothing", "/api/nothing", "/shop.css", "/api/frames", "/health", $"/build?frame={Shop.Frames}", "/api/needs", "/openapi/v1.json" })
        {
            using HttpResponseMessage answer = await shop.Client.GetAsync(address);
            string policy = answer.Headers.GetValues("Content-Security-Policy").Single();
            Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
            Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
            Assert.Equal("no-referrer", answer.Headers.GetValues("Referrer-Policy").Single());
            Assert.Equal("DENY", answer.Headers.GetValues("X-Frame-Options").Single());
            Assert.False(answer.Headers.Contains("Server"));
        }
    }

    /// <summary>A drawing brings a style of its own and nothing else.</summary>
    [Fact]
    public async Task A_drawing_brings_its_own_guards()
    {
        long post = (await shop.Json($"/api/parts/seatpost?frame={Shop.Frames}&size=1")).GetProperty("rows")[0].GetProperty("number").GetInt64();
        using HttpResponseMessage answer = await shop.Client.GetAsync($"/drawings/0.svg?frame={Shop.Frames}&part=seatpost.{post}");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'", answer.Headers.GetValues("Content-Security-Policy").Single());
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
    }

    /// <summary>The path says whether a program asks, in whatever case it is written.</summary>
    [Theory]
    [InlineData("/api/nothing")]
    [InlineData("/API/nothing")]
    public async Task A_program_is_refused_in_json(string address)
    {
        using HttpResponseMessage answer = await shop.Client.GetAsync(address);
        await IsProblem(answer, HttpStatusCode.NotFound);
    }

    /// <summary>A build file full of fields that are none is answered with less than it was.</summary>
    [Fact]
    public async Task Much_that_is_wrong_is_told_in_short()
    {
        string fields = string.Join(',', Enumerable.Range(0, 5_000).Select(i => $"\"rear{i}\":\"x\""));
        using StringContent body = new($"{{\"parts\":{{\"frame\":{{{fields}}}}}}}", Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await shop.Client.PostAsync("/api/check", body);
        await IsProblem(answer, HttpStatusCode.BadRequest);
        Assert.True((await answer.Content.ReadAsStringAsync()).Length < 100_000);
    }

    [Fact]
    public async Task Another_host_is_not_answered()
    {
        using HttpRequestMessage request = new(HttpMethod.Get, "/") { Headers = { Host = "elsewhere.example" } };
        using HttpResponseMessage answer = await shop.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    internal static async Task IsProblem(HttpResponseMessage answer, HttpStatusCode status)
    {
        string text = await answer.Content.ReadAsStringAsync();
        Assert.True(status == answer.StatusCode, $"{(int)answer.StatusCode} {text}");
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        JsonElement problem = JsonDocument.Parse(text).RootElement;
        Assert.Equal((int)status, problem.GetProperty("status").GetInt32());
        Assert.NotEqual("", problem.GetProperty("title").GetString());
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
    }

    private static void IsEscaped(string page, bool told)
    {
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img src=x", page, StringComparison.OrdinalIgnoreCase);
        Assert.True(!told || page.Contains("&lt;script&gt;alert(1)", StringComparison.Ordinal), "it is not shown at all");
    }

    [GeneratedRegex("<img src=\"/drawings/")]
    private static partial Regex DrawingOf();
}
