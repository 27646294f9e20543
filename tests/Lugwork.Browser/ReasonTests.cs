using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Lugwork.Browser;

/// <summary>What has to be read before a part is bought is read in the list, not only on the page of the build.</summary>
public sealed partial class ReasonTests(Shop shop)
{
    /// <summary>A rear rotor may be larger than the front one: it fits, and the shop asks whether it was meant so.</summary>
    [Fact]
    public async Task A_part_that_fits_is_listed_with_its_notes()
    {
        string frame = Uri.EscapeDataString("kind gravel; rear R142-12; rearBrake FM-rear-140; largestRearRotor 160");
        long small = await First("frontRotor", $"frame={frame}", "Rotor 140");
        string cart = $"frame={frame}&part=frontRotor.{small}";
        JsonElement list = await shop.Json($"/api/parts/rearRotor?{cart}&size=10000");
        JsonElement[] reasons = [.. list.GetProperty("reasons").EnumerateArray()];
        ILookup<bool, JsonElement> rows = list.GetProperty("rows").EnumerateArray().ToLookup(r => r.GetProperty("name").GetString()!.StartsWith("Rotor 160", StringComparison.Ordinal));
        bool IsNoted(JsonElement row) => reasons[row.GetProperty("reason").GetInt32()].GetProperty("lines").EnumerateArray().Any(l => l.GetString()!.Contains("larger than 140 mm in front", StringComparison.Ordinal));
        Assert.NotEmpty(rows[true]);
        Assert.NotEmpty(rows[false]);
        Assert.All(rows[true], r => Assert.True(IsNoted(r), r.GetRawText()));
        Assert.All(rows[false], r => Assert.False(IsNoted(r), r.GetRawText()));
        Assert.Contains("was it meant so?", await shop.Client.GetStringAsync($"/parts/rearRotor?{cart}"), StringComparison.Ordinal);
    }

    /// <summary>Some fits carry a warning; it stands above the list, and beside the reason in the answer to a program.</summary>
    [Fact]
    public async Task Cautions_of_what_fits_stand_above_the_list_and_in_the_answer()
    {
        string cart = $"frame={Uri.EscapeDataString("kind gravel; rear R142-12; hanger M10x1")}&part=rearShifter.{await First("rearShifter", $"frame={Shop.Frames}", "Rear shifter", "NotJudged")}";
        HashSet<string> told = [];
        foreach (string slot in new[] { "rearDerailleur", "crankset", "bottomBracket", "fork", "rearThruAxle", "cassette" })
        {
            JsonElement list = await shop.Json($"/api/parts/{slot}?{cart}&list=Fits");
            string[] here = [.. list.GetProperty("reasons").EnumerateArray().SelectMany(r => r.GetProperty("cautions").EnumerateArray()).Select(c => c.GetString()!)];
            string page = System.Net.WebUtility.HtmlDecode(await shop.Client.GetStringAsync($"/parts/{slot}?{cart}&list=Fits"));
            Assert.All(here, c => Assert.Contains(c, page, StringComparison.Ordinal));
            told.UnionWith(here);
        }

        Assert.NotEmpty(told);
    }

    [Fact]
    public async Task Every_row_that_fits_tells_how_each_joint_does()
    {
        string page = await shop.Client.GetStringAsync($"/parts/seatpost?frame={Shop.Frames}");
        Assert.Equal(50, Folds().Count(page));
        Assert.Equal(50, Sizes().Count(page));
    }

    [Fact]
    public async Task What_was_assumed_is_said_wherever_something_rests_on_it()
    {
        const string Text = "Rear axle: 12 x 142 mm\nBottom bracket: Italian\nSeatpost: 27.2 mm";
        using HttpResponseMessage read = await shop.Client.PostAsJsonAsync("/api/sheet", new { text = Text });
        JsonElement sheet = await read.Content.ReadFromJsonAsync<JsonElement>();
        JsonElement assumed = Assert.Single(sheet.GetProperty("assumed").EnumerateArray());
        Assert.Equal("shell", assumed.GetProperty("field").GetString());

        using FormUrlEncodedContent form = new([new("sheet", Text)]);
        using HttpResponseMessage told = await shop.Client.PostAsync("/sheet", form);
        string on = System.Net.WebUtility.HtmlDecode(GoOn().Match(await told.Content.ReadAsStringAsync()).Groups[1].Value);
        Assert.Contains("assumed=shell", on, StringComparison.Ordinal);
        string build = await shop.Client.GetStringAsync(on);
        Assert.Contains("Assumed, not said by the sheet:</strong> shell Italian-70", build, StringComparison.Ordinal);

        // It goes on to the list, and from there back to the build with a part in it.
        string list = await shop.Client.GetStringAsync(Link(build, "/parts/seatpost?"));
        Assert.Contains("Assumed, not said by the sheet:</strong> shell Italian-70", list, StringComparison.Ordinal);
        Assert.Contains("Assumed", await shop.Client.GetStringAsync(Link(list, "/build?", "seatpost.")), StringComparison.Ordinal);

        // Without it the shell is unknown again.
        string without = Without().Match(build).Groups[1].Value;
        Assert.DoesNotContain("Italian", without, StringComparison.Ordinal);
        string stated = await shop.Client.GetStringAsync(System.Net.WebUtility.HtmlDecode(without));
        Assert.DoesNotContain("Assumed", stated, StringComparison.Ordinal);
        Assert.DoesNotContain("Assumed", await shop.Client.GetStringAsync($"/build?frame={Shop.Frames}"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nothing")]
    [InlineData("shell,%3Cscript%3E")]
    public async Task What_the_frame_does_not_have_was_not_assumed(string assumed)
    {
        using HttpResponseMessage answer = await shop.Client.GetAsync($"/build?frame={Shop.Frames}&assumed={assumed}");
        Assert.Equal(400, (int)answer.StatusCode);
    }

    private static string Link(string page, string path, string with = "") =>
        System.Net.WebUtility.HtmlDecode(Links().Matches(page).Select(m => m.Groups[1].Value).First(a => a.StartsWith(path, StringComparison.Ordinal) && a.Contains(with, StringComparison.Ordinal)));

    private async Task<long> First(string slot, string cart, string name, string list = "Fits")
    {
        JsonElement[] rows = [.. (await shop.Json($"/api/parts/{slot}?{cart}&list={list}&size=10000")).GetProperty("rows").EnumerateArray()];
        JsonElement row = rows.FirstOrDefault(r => r.GetProperty("name").GetString()!.StartsWith(name, StringComparison.Ordinal));
        Assert.True(row.ValueKind == JsonValueKind.Object, $"no {slot} '{name}' in {list}");
        return row.GetProperty("number").GetInt64();
    }

    [GeneratedRegex("<summary>Why<span")]
    private static partial Regex Folds();

    [GeneratedRegex("<summary>Why<span[^>]*>[^<]*</span></summary><ul>(<li>[^<]*</li>)*?<li>[^<]*27\\.2[^<]*27\\.2")]
    private static partial Regex Sizes();

    [GeneratedRegex("""href="([^"]+)">Go on with this frame""")]
    private static partial Regex GoOn();

    [GeneratedRegex("""href="([^"]+)">Go on without it""")]
    private static partial Regex Without();

    [GeneratedRegex("href=\"([^\"]+)\"")]
    private static partial Regex Links();
}
