using System.Globalization;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Lugwork.Browser;

/// <summary>A rule engine for accessibility goes over every kind of page, by day and by night, wide and narrow.</summary>
public sealed class AccessTests(Shop shop, Chromium browser)
{
    /// <summary>Names a folder in which every page is kept as a picture, to be looked at.</summary>
    private const string Pictures = "LUGWORK_PICTURES";

    private static readonly string[] Addresses =
    [
        "/", "/build?frame=10200", "/build?frame={0}&part=seatpost.99999999", "/parts/seatpost?frame={0}", "/parts/seatpost?frame={0}&list=needs-part", "/parts/rearWheel?frame={0}&list=needs-measuring", "/nothing",
    ];

    public static TheoryData<string, int> Looks => new() { { nameof(ColorScheme.Light), 1_200 }, { nameof(ColorScheme.Dark), 1_200 }, { nameof(ColorScheme.Light), 390 } };

    [Theory]
    [MemberData(nameof(Looks))]
    public async Task No_finding_is_serious(string colours, int width)
    {
        await using Visit visit = await browser.Visit(shop.Process.Address, width, 900, Enum.Parse<ColorScheme>(colours));
        List<string> found = [];
        foreach (string address in Addresses)
        {
            await visit.Page.GotoAsync(string.Format(CultureInfo.InvariantCulture, address, Shop.Frames));
            await Look(visit.Page, address, found, colours, width);
        }

        await visit.Page.GotoAsync("/");
        await visit.Page.GetByLabel("The sheet, as it is printed").FillAsync("Seatpost: 27.2 mm\nRear axle: 12x142\nBB: 68 mm\nColour: moss");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Read the sheet" }).ClickAsync();
        await Look(visit.Page, "/sheet", found, colours, width);
        await visit.Page.GotoAsync(await Filled());
        await visit.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
        await Look(visit.Page, "a build with parts", found, colours, width);
        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found));
    }

    /// <summary>A build with a part that fits, one that takes another, and one of another size.</summary>
    private async Task<string> Filled()
    {
        async Task<long> First(string slot, string list)
        {
            System.Text.Json.JsonElement rows = (await shop.Json($"/api/parts/{slot}?frame={Shop.Frames}&list={list}&size=1")).GetProperty("rows");
            return rows[0].GetProperty("number").GetInt64();
        }

        return $"/build?frame={Shop.Frames}&part=seatpost.{await First("seatpost", "needs-part")}&part=rearWheel.{await First("rearWheel", "fits")}&part=rearTyre.{await First("rearTyre", "fits")}&part=fork.{await First("fork", "fits")}";
    }

    private static async Task Look(IPage page, string what, List<string> found, string colours, int width)
    {
        if (Environment.GetEnvironmentVariable(Pictures) is { Length: > 0 } folder)
        {
            string name = string.Concat(what.Where(char.IsLetterOrDigit));
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{colours}-{width}.png"), FullPage = false });
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{colours}-{width}-whole.png"), FullPage = true });
        }

        AxeResult result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        found.AddRange(result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{what}: {v.Impact} {v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}"));
    }
}
