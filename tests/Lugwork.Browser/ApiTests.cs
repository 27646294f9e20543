using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace Lugwork.Browser;

/// <summary>What programs get.</summary>
public sealed class ApiTests(Shop shop)
{
    [Fact]
    public async Task The_shop_is_healthy() => Assert.Equal("Healthy", await shop.Client.GetStringAsync("/health"));

    [Fact]
    public async Task A_list_holds_what_its_count_says_and_every_row_has_a_reason()
    {
        foreach (string list in new[] { "Fits", "NeedsPart", "NeedsMeasuring", "NotJudged" })
        {
            JsonElement answer = await shop.Json($"/api/parts/seatpost?frame={Shop.Frames}&list={list}&size=10000");
            string count = char.ToLowerInvariant(list[0]) + list[1..];
            Assert.Equal(list, answer.GetProperty("list").GetString());
            JsonElement[] rows = [.. answer.GetProperty("rows").EnumerateArray()];
            JsonElement[] reasons = [.. answer.GetProperty("reasons").EnumerateArray()];
            Assert.Equal(answer.GetProperty("counts").GetProperty(count).GetInt32(), rows.Length);
            Assert.All(rows, r => Assert.Contains(reasons[r.GetProperty("reason").GetInt32()].GetProperty("lines").EnumerateArray(), l => l.GetString()!.Length > 0));
            Assert.Equal(rows.Select(r => r.GetProperty("price").GetDecimal()).Order(), rows.Select(r => r.GetProperty("price").GetDecimal()));
        }
    }

    [Fact]
    public async Task A_post_of_another_size_takes_a_shim_or_is_not_listed()
    {
        JsonElement fits = await shop.Json($"/api/parts/seatpost?frame={Shop.Frames}&size=10000");
        Assert.NotEmpty(fits.GetProperty("rows").EnumerateArray());
        Assert.All(fits.GetProperty("rows").EnumerateArray(), r => Assert.StartsWith("Seatpost 27.2,", r.GetProperty("name").GetString(), StringComparison.Ordinal));
        JsonElement part = await shop.Json($"/api/parts/seatpost?frame={Shop.Frames}&list=NeedsPart&size=10000");
        Assert.All(part.GetProperty("rows").EnumerateArray(), r => Assert.DoesNotContain("31.6", r.GetProperty("name").GetString(), StringComparison.Ordinal));
        Assert.All(part.GetProperty("reasons").EnumerateArray(), r => Assert.Contains("shim", r.GetProperty("lines")[0].GetString(), StringComparison.Ordinal));
        JsonElement open = await shop.Json($"/api/parts/seatpost?frame={Shop.Frames}&list=NeedsMeasuring&size=10000");
        Assert.Contains(open.GetProperty("rows").EnumerateArray(), r => r.GetProperty("name").GetString()!.Contains("diameter not stated", StringComparison.Ordinal));
    }

    /// <summary>
    /// Rows that another build of the library wrote may lack a joint; then nothing of a slot would fit. A spec that another program spoilt is in
    /// no list and no count, "do not fit" among them, and everything else goes on.
    /// </summary>
    [Fact]
    public async Task A_relation_of_another_build_of_the_library_is_written_anew_without_what_cannot_be_read()
    {
        string file = shop.Copy("older.db");
        Assert.True(await Scalar(file, """UPDATE stock_state SET "Library" = 'another'; DELETE FROM part_fit WHERE "Joint" = 'seatpost-in-seat-tube'; SELECT changes()""") > 100);
        await using ShopProcess older = await ShopProcess.Start($"Data Source={file}", ("Shop__RequestsPerMinute", "1000000"));
        long spoilt = await Scalar(file,
            """
            UPDATE spec SET "Text" = 'no such part' WHERE "Id" = (SELECT MIN("Id") FROM spec WHERE "Post" = '27.2');
            SELECT COUNT(*) FROM article WHERE "SpecId" = (SELECT "Id" FROM spec WHERE "Text" = 'no such part')
            """);
        Assert.True(spoilt > 0);
        foreach (string slot in new[] { "seatpost", "frontWheel", "rearTyre" })
        {
            string address = $"/api/parts/{slot}?frame={Shop.Frames}&size=1";
            JsonElement whole = (await shop.Json(address)).GetProperty("counts");
            JsonElement rest = (await Shop.Json(older.Client, address)).GetProperty("counts");
            foreach (JsonProperty count in whole.EnumerateObject())
            {
                Assert.Equal(count.Value.GetInt64() - (slot == "seatpost" && count.Name == "fits" ? spoilt : 0), rest.GetProperty(count.Name).GetInt64());
            }
        }
    }

    private static async Task<long> Scalar(string file, string sql)
    {
        await using SqliteConnection connection = new($"Data Source={file};Pooling=False");
        await connection.OpenAsync();
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToInt64(await command.ExecuteScalarAsync(), CultureInfo.InvariantCulture);
    }

    [Fact]
    public async Task Interface_values_are_read_from_routes_queries_and_bodies_in_the_spellings_of_the_trade()
    {
        JsonElement posts = await shop.Json("/api/seatposts/27,2%20mm");
        Assert.NotEmpty(posts.EnumerateArray());
        Assert.All(posts.EnumerateArray(), p => Assert.Equal("27.2", p.GetProperty("post").GetString()));
        JsonElement wheels = await shop.Json("/api/wheels?hub=r142-12&body=hg-l");
        Assert.NotEmpty(wheels.EnumerateArray());
        Assert.All(wheels.EnumerateArray(), w => Assert.Equal(("R142-12", "HG-L"), (w.GetProperty("hub").GetString(), w.GetProperty("body").GetString())));
        using HttpResponseMessage found = await shop.Client.PostAsJsonAsync("/api/search", new { tyre = "40 - 622", post = (string?)null });
        JsonElement tyres = (await found.Content.ReadFromJsonAsync<JsonElement>())!;
        Assert.NotEmpty(tyres.EnumerateArray());
        Assert.All(tyres.EnumerateArray(), t => Assert.Equal("40-622", t.GetProperty("tyre").GetString()));
    }

    [Fact]
    public async Task A_sheet_becomes_a_frame_and_says_what_it_left_out()
    {
        using HttpResponseMessage answer = await shop.Client.PostAsJsonAsync("/api/sheet", new { text = "Rear axle: 12 x 142 mm\nSeatpost: 27.2 or 31.6 mm\nColour: moss" });
        JsonElement sheet = (await answer.Content.ReadFromJsonAsync<JsonElement>())!;
        Assert.Contains("rear R142-12", sheet.GetProperty("frame").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("seatTube", sheet.GetProperty("frame").GetString(), StringComparison.Ordinal);
        Assert.NotEmpty(sheet.GetProperty("doubts").EnumerateArray().Concat(sheet.GetProperty("conflicts").EnumerateArray()));
    }

    [Fact]
    public async Task A_build_file_is_checked_and_its_cautions_are_told()
    {
        string build = await File.ReadAllTextAsync(Path.Combine(ShopProcess.Root(), "samples", "FrameUp", "builds", "trail-frame-donor-mix.json"));
        using StringContent body = new(build, System.Text.Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await shop.Client.PostAsync("/api/check", body);
        JsonElement report = (await answer.Content.ReadFromJsonAsync<JsonElement>())!;
        Assert.Equal("Unsafe", report.GetProperty("verdict").GetString());
        Assert.NotEmpty(report.GetProperty("cautions").EnumerateArray());
    }

    [Fact]
    public async Task The_document_names_every_way_and_shows_interface_values_as_strings()
    {
        JsonElement document = await shop.Json("/openapi/v1.json");
        JsonElement paths = document.GetProperty("paths");
        foreach (string path in new[] { "/api/sheet", "/api/needs", "/api/parts/{slot}", "/api/report", "/api/check", "/api/seatposts/{diameter}", "/api/tyres/{size}", "/api/wheels", "/api/frames", "/api/search" })
        {
            Assert.True(paths.TryGetProperty(path, out _), path);
        }

        JsonElement route = paths.GetProperty("/api/seatposts/{diameter}").GetProperty("get").GetProperty("parameters")[0].GetProperty("schema");
        JsonElement schema = Resolved(document, route);
        Assert.Equal("string", schema.GetProperty("type").GetString());
        Assert.Matches(schema.GetProperty("pattern").GetString()!, schema.GetProperty("examples")[0].GetString()!);
        Assert.Matches(schema.GetProperty("pattern").GetString()!, "27.2");
        JsonElement hub = Resolved(document, paths.GetProperty("/api/wheels").GetProperty("get").GetProperty("parameters")[0].GetProperty("schema"));
        Assert.Matches(hub.GetProperty("pattern").GetString()!, "R142-12");
        Assert.DoesNotMatch(hub.GetProperty("pattern").GetString()!, "R142");
    }

    [Fact]
    public async Task A_way_that_is_not_there_is_said_to_be_missing()
    {
        using HttpResponseMessage api = await shop.Client.GetAsync("/api/nothing");
        Assert.Equal((HttpStatusCode.NotFound, "application/problem+json"), (api.StatusCode, api.Content.Headers.ContentType!.MediaType));
        using HttpResponseMessage page = await shop.Client.GetAsync("/nothing");
        Assert.Equal((HttpStatusCode.NotFound, "text/html"), (page.StatusCode, page.Content.Headers.ContentType!.MediaType));
    }

    private static JsonElement Resolved(JsonElement document, JsonElement schema) =>
        schema.TryGetProperty("$ref", out JsonElement reference) ? document.GetProperty("components").GetProperty("schemas").GetProperty(reference.GetString()!.Split('/')[^1]) : schema;
}
