using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Lugwork.Browser;

/// <summary>What people do with the pages, in a real browser.</summary>
public sealed partial class PageTests(Shop shop, Chromium browser)
{
    private const string Sheet = "Gravel frame\nRear axle: 12 x 142 mm\nBottom bracket: BSA 68\nSeatpost: 27,2 mm\nHead tube: IS42 / IS52\nRear brake: flat mount 140\nMax. tyre: 50-622";

    [Fact]
    public async Task From_a_pasted_sheet_to_parts_verdict_small_parts_and_drawings()
    {
        await using Visit visit = await browser.Visit(shop.Process.Address);
        IPage page = visit.Page;
        await page.GotoAsync("/");
        await page.GetByLabel("The sheet, as it is printed").FillAsync(Sheet);
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the sheet" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("What the sheet says");
        await Assertions.Expect(page.GetByRole(AriaRole.Row).Filter(new() { HasText = "Seat tube" })).ToContainTextAsync("27,2 mm");
        await page.GetByRole(AriaRole.Link, new() { Name = "Go on with this frame" }).ClickAsync();
        await Assertions.Expect(page.GetByText("No two parts meet yet.").First).ToBeVisibleAsync();
        await page.Locator("#slot-seatpost summary").ClickAsync();
        await Assertions.Expect(page.Locator("#slot-seatpost")).ToContainTextAsync("27.2");

        await Choose(page, "seatpost", "Seatpost 27.2");
        await Choose(page, "rearWheel", "R142-12");
        await Choose(page, "fork", "Fork, ");
        await Choose(page, "headset", "IS42/28.6 over IS52/40");
        await Choose(page, "rearRotor", "Rotor");
        Assert.Equal(5, await page.Locator(".chosen").CountAsync());
        await Assertions.Expect(page.Locator("#verdict")).ToContainTextAsync("Seatpost in seat tube");
        Assert.NotEqual(0, await page.Locator("#small li").CountAsync());
        await Assertions.Expect(page.Locator(".mind").First).ToContainTextAsync("makers' figures");
        ILocator drawings = page.Locator("#drawings img");
        Assert.True(await drawings.CountAsync() >= 3);
        for (int i = 0; i < await drawings.CountAsync(); i++)
        {
            await drawings.Nth(i).ScrollIntoViewIfNeededAsync();
            await Assertions.Expect(drawings.Nth(i)).ToHaveJSPropertyAsync("complete", true);
            Assert.True(await drawings.Nth(i).EvaluateAsync<int>("i => i.naturalWidth") > 0, "a drawing is not shown");
        }

        // The cart stands in the address: who opens it elsewhere sees the same.
        await using Visit other = await browser.Visit(shop.Process.Address);
        await other.Page.GotoAsync(page.Url);
        Assert.Equal(5, await other.Page.Locator(".chosen").CountAsync());
        await page.Locator("#slot-rearRotor").GetByRole(AriaRole.Link, new() { Name = "Take out the rear rotor" }).ClickAsync();
        Assert.Equal(4, await page.Locator(".chosen").CountAsync());
        Assert.Empty(visit.Errors);
        Assert.Empty(other.Errors);
    }

    [Fact]
    public async Task A_frame_of_the_shop_and_a_part_that_takes_another()
    {
        await using Visit visit = await browser.Visit(shop.Process.Address);
        IPage page = visit.Page;
        await page.GotoAsync("/");
        await page.GetByLabel("Kind of bicycle").SelectOptionAsync("touring");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show frames" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { NameRegex = TouringFrame() }).First.ClickAsync();
        await page.Locator("#slot-seatpost").GetByRole(AriaRole.Link, new() { Name = "Choose the seatpost" }).ClickAsync();
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Lists" }).GetByRole(AriaRole.Link, new() { NameRegex = WithAnother() }).ClickAsync();
        await Assertions.Expect(page.Locator(".articles li").First).ToContainTextAsync("shim");
        await page.Locator(".articles .button").First.ClickAsync();
        await Assertions.Expect(page.Locator(".sum .badge")).ToContainTextAsync("Needs a part");
        await Assertions.Expect(page.Locator("#small")).ToContainTextAsync("shim");
        Assert.Empty(visit.Errors);
    }

    [Fact]
    public async Task Without_a_mouse()
    {
        await using Visit visit = await browser.Visit(shop.Process.Address);
        IPage page = visit.Page;
        await page.GotoAsync("/");
        await page.Keyboard.PressAsync("Tab");
        Assert.Equal("Skip to the page", await Focused(page));
        await page.Keyboard.PressAsync("Enter");
        await TabTo(page, "e => e.id === 'sheet'");
        await page.Keyboard.InsertTextAsync(Sheet);
        await Assertions.Expect(page.Locator("#sheet")).ToHaveValueAsync(Sheet);
        await TabTo(page, "e => e.tagName === 'BUTTON' && e.textContent === 'Read the sheet'");
        await Enter(page, "**/sheet");
        await TabTo(page, "e => e.textContent === 'Go on with this frame'");
        await Enter(page, "**/build?**");
        await TabTo(page, "e => e.textContent === 'Choose the seatpost'");
        await Enter(page, "**/parts/seatpost?**");
        await TabTo(page, "e => e.textContent.startsWith('Add')");
        Assert.True(await page.EvaluateAsync<bool>("() => parseFloat(getComputedStyle(document.activeElement).outlineWidth) >= 2"), "where the focus is cannot be seen");
        await Enter(page, "**/build?**#slot-seatpost");
        Assert.Equal(1, await page.Locator(".chosen").CountAsync());
        await TabTo(page, "e => e.tagName === 'SUMMARY' && e.closest('.needs') !== null");
        await page.Keyboard.PressAsync("Space");
        Assert.True(await page.EvaluateAsync<bool>("() => document.activeElement.parentElement.open"), "a fold does not open by its key");
        Assert.Empty(visit.Errors);
    }

    /// <summary>A key that a busy page did not take is pressed again, as a person would.</summary>
    private static async Task Enter(IPage page, string address)
    {
        for (int again = 0; ; again++)
        {
            await page.Keyboard.PressAsync("Enter");
            try
            {
                await page.WaitForURLAsync(address, new() { Timeout = 20_000 });
                return;
            }
            catch (TimeoutException) when (again < 2)
            {
            }
        }
    }

    [Fact]
    public async Task A_phone_shows_it_whole()
    {
        await using Visit visit = await browser.Visit(shop.Process.Address, 390, 844);
        IPage page = visit.Page;
        foreach (string address in new[]
        {
            "/", "/build?frame=10001", "/build?frame={0}&assumed=shell&part=seatpost.1", "/parts/seatpost?frame={0}&list=NeedsPart", "/parts/rearWheel?frame={0}&list=Fits", "/nothing",
        })
        {
            await page.GotoAsync(string.Format(CultureInfo.InvariantCulture, address, Shop.Frames));
            Assert.True(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth") <= 390, $"{address} is wider than the phone");
            double[] heights = await page.EvaluateAsync<double[]>("() => [...document.querySelectorAll('button, .button')].map(b => b.getBoundingClientRect().height)");
            Assert.NotEmpty(heights);
            Assert.All(heights, h => Assert.True(h >= 44, $"{address}: a button of {h} is too low for a finger"));
        }

        Assert.Empty(visit.Errors);
    }

    [Fact]
    public async Task A_sheet_that_says_nothing_is_told_and_can_be_mended()
    {
        await using Visit visit = await browser.Visit(shop.Process.Address);
        IPage page = visit.Page;
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the sheet" }).ClickAsync();
        Assert.EndsWith("/", page.Url, StringComparison.Ordinal);
        const string Nothing = "<script>alert(1)</script> a frame as blue as the sea";
        await page.GetByLabel("The sheet, as it is printed").FillAsync(Nothing);
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the sheet" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Nothing in the text names a size or a fitting of a frame");
        Assert.Equal(Nothing, await page.GetByLabel("The sheet, as it is printed").InputValueAsync());
        await page.GetByLabel("The sheet, as it is printed").FillAsync("Seatpost: 27.2 mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the sheet" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Go on with this frame" })).ToBeVisibleAsync();

        await page.GotoAsync("/build?frame=" + Uri.EscapeDataString("rear <img src=x onerror=alert(1)>"));
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("The frame cannot be read.");
        await page.GotoAsync("/build?frame=10001&part=saddle.99999999");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("no longer on the shelf");
        Assert.Empty(visit.Errors);
    }

    [Fact]
    public async Task Ten_thousand_rows_on_one_page()
    {
        await using Visit visit = await browser.Visit(shop.Process.Address);
        IPage page = visit.Page;
        await page.GotoAsync($"/parts/saddle?frame={Shop.Frames}&list=NotJudged");
        await page.GotoAsync($"/parts/rearTyre?frame={Shop.Frames}&list=Fits");
        string count = await page.Locator(".lists a[aria-current] .count").InnerTextAsync();
        int total = int.Parse(count, NumberStyles.AllowThousands, CultureInfo.InvariantCulture);
        Assert.True(total >= 10_000, $"{total} tyres fit");
        await Follow(page, page.GetByRole(AriaRole.Navigation, new() { Name = "Pages" }).GetByRole(AriaRole.Link, new() { NameRegex = OnOnePage() }), "size=10000");
        await Assertions.Expect(page.Locator(".articles > li")).ToHaveCountAsync(10_000);
        await page.Keyboard.PressAsync("End");
        ILocator last = page.Locator(".articles .button").Last;
        await last.ScrollIntoViewIfNeededAsync();
        await last.ClickAsync();
        await Assertions.Expect(page.Locator("#slot-rearTyre .chosen")).ToContainTextAsync("Tyre");
        Assert.Empty(visit.Errors);
    }

    /// <summary>Follows a link by the keyboard, once more where the browser did not set off: a click at the foot of a page that is still being laid out was lost now and then.</summary>
    private static async Task Follow(IPage page, ILocator link, string to)
    {
        for (int tries = 1; !page.Url.Contains(to, StringComparison.Ordinal); tries++)
        {
            await link.PressAsync("Enter");
            try
            {
                await page.WaitForURLAsync(u => u.Contains(to, StringComparison.Ordinal), new() { Timeout = 15_000, WaitUntil = WaitUntilState.Commit });
            }
            catch (TimeoutException) when (tries < 3)
            {
            }
        }
    }

    private static async Task Choose(IPage page, string slot, string name)
    {
        await page.Locator($"#slot-{slot} .button").ClickAsync();
        await page.Locator(".articles li").Filter(new() { HasText = name }).First.Locator(".button").ClickAsync();
        await Assertions.Expect(page.Locator($"#slot-{slot} .chosen")).ToContainTextAsync(name);
    }

    private static Task<string> Focused(IPage page) => page.EvaluateAsync<string>("() => document.activeElement.textContent");

    private static async Task TabTo(IPage page, string isIt)
    {
        for (int i = 0; i < 120; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>($"() => ({isIt})(document.activeElement)"))
            {
                return;
            }
        }

        Assert.Fail($"no key leads to {isIt}");
    }

    [GeneratedRegex("^Touring frame")]
    private static partial Regex TouringFrame();

    [GeneratedRegex("^Fit with another part")]
    private static partial Regex WithAnother();

    [GeneratedRegex("on one page$")]
    private static partial Regex OnOnePage();
}
