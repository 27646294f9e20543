using System.Globalization;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Lugwork.Browser;

/// <summary>
/// A rule engine for accessibility goes over every kind of page: by day and wide with all its rules, by night and on a phone with those
/// whose answer can be another there. One page of the browser takes all looks of an address, so that each is loaded once.
/// </summary>
public sealed class AccessTests(Shop shop, Chromium browser)
{
    /// <summary>Names a folder in which every page is kept as pictures, to be looked at.</summary>
    private const string Pictures = "LUGWORK_PICTURES";

    private const int SliceHeight = 1_400;

    private const int MostSlices = 9;

    private static readonly string[] OfColours = ["color-contrast", "link-in-text-block"];

    private static readonly string[] OfWidth = ["target-size", "scrollable-region-focusable", "meta-viewport"];

    /// <summary>The rules of each look; null for all.</summary>
    private static readonly (ColorScheme Colours, int Width, string[]? Rules)[] Looks =
    [
        (ColorScheme.Light, 1_200, null), (ColorScheme.Dark, 1_200, OfColours), (ColorScheme.Light, 390, OfWidth),
    ];

    /// <summary>A page of each kind; a list needs no more rows than tell how one looks.</summary>
    private static readonly string[] Addresses = ["/", "/parts/seatpost?frame={0}&size=12", "/parts/rearWheel?frame={0}&list=NeedsMeasuring&size=6", "/nothing"];

    [Fact]
    public async Task No_finding_is_serious()
    {
        await using Visit visit = await browser.Visit(shop.Process.Address);
        IPage page = visit.Page;
        List<string> found = [];
        foreach (string address in Addresses)
        {
            await page.GotoAsync(string.Format(CultureInfo.InvariantCulture, address, Shop.Frames));
            await Look(page, address, found);
        }

        await page.GotoAsync("/");
        await page.GetByLabel("The sheet, as it is printed").FillAsync("Seatpost: 27.2 mm\nRear axle: 12x142\nBB: 68 mm\nFront derailleur: 35 mm clamp\nColour: moss");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the sheet" }).ClickAsync();
        await Look(page, "/sheet", found);
        await page.GotoAsync(await Filled());
        await page.EvaluateAsync("() => document.querySelectorAll('#verdict details, #drawings details, .needs li:nth-child(2) details').forEach(d => d.open = true)");
        await Look(page, "a build with parts", found);
        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found));
    }

    /// <summary>A build with all that a page can show: a part that fits, one that takes another, one of another size, one that is gone, and a figure that was assumed.</summary>
    private async Task<string> Filled()
    {
        async Task<long> First(string slot, string list)
        {
            System.Text.Json.JsonElement rows = (await shop.Json($"/api/parts/{slot}?frame={Shop.Frames}&list={list}&size=1")).GetProperty("rows");
            return rows[0].GetProperty("number").GetInt64();
        }

        return $"/build?frame={Shop.Frames}&assumed=shell&part=saddle.99999999&part=seatpost.{await First("seatpost", "NeedsPart")}&part=rearWheel.{await First("rearWheel", "Fits")}&part=rearTyre.{await First("rearTyre", "Fits")}&part=fork.{await First("fork", "Fits")}";
    }

    private static async Task Look(IPage page, string what, List<string> found)
    {
        foreach ((ColorScheme colours, int width, string[]? rules) in Looks)
        {
            await page.EmulateMediaAsync(new() { ColorScheme = colours });
            await page.SetViewportSizeAsync(width, 900);
            await Keep(page, $"{string.Concat(what.Where(char.IsLetterOrDigit))}-{colours}-{width}");
            AxeResult result = await page.RunAxe(rules is null ? new() { ResultTypes = [ResultType.Violations] } : new() { ResultTypes = [ResultType.Violations], RunOnly = new RunOnlyOptions { Type = "rule", Values = [.. rules] } });
            string[] asked = [.. result.Passes.Concat(result.Violations).Concat(result.Incomplete).Concat(result.Inapplicable).Select(r => r.Id)];
            Assert.NotEmpty(result.Passes);
            Assert.All(rules ?? [.. OfColours, "page-has-heading-one", "label", "image-alt"], r => Assert.Contains(r, asked));
            found.AddRange(result.Violations.Where(v => v.Impact is "serious" or "critical")
                .Select(v => $"{what}, {colours} {width}: {v.Impact} {v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}"));
        }
    }

    private static async Task Keep(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable(Pictures) is not { Length: > 0 } folder)
        {
            return;
        }

        // Pictures and rows that wait until they are seen are seen now.
        await page.EvaluateAsync("async () => { for (const l of document.querySelectorAll('.articles > li')) { l.style.contentVisibility = 'visible'; } for (const i of document.images) { i.loading = 'eager'; } await Promise.all([...document.images].map(i => i.decode().catch(() => 0))); }");
        int height = await page.EvaluateAsync<int>("() => document.documentElement.scrollHeight");
        int width = await page.EvaluateAsync<int>("() => document.documentElement.clientWidth");
        for (int i = 0; i < MostSlices && i * SliceHeight < height; i++)
        {
            await page.ScreenshotAsync(new()
            {
                Path = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{name}-{i}.png")),
                FullPage = true,
                Clip = new() { X = 0, Y = i * SliceHeight, Width = width, Height = Math.Min(SliceHeight, height - (i * SliceHeight)) },
            });
        }
    }
}
