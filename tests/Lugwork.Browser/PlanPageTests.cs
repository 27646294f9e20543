using System.Text;
using System.Text.RegularExpressions;
using Lugwork.Workshop;
using Microsoft.Playwright;

namespace Lugwork.Browser;

/// <summary>The page of a work plan on paper and on a phone: nothing is cut off, and a page that is too wide shows.</summary>
public sealed partial class PlanPageTests(Chromium browser)
{
    /// <summary>Nothing is fetched; a context has to have an address all the same.</summary>
    private static readonly Uri Nowhere = new("http://localhost/");

    private static readonly WorkPlan Plan = BuildFile.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "builds", "road-frame-to-cut.json"))).WorkPlan();

    private const string Wide = "() => [...document.querySelectorAll('body *')].filter(e => !e.closest('svg') && e.getBoundingClientRect().right > document.documentElement.clientWidth + 1).map(e => e.tagName + ': ' + e.textContent.slice(0, 60))";

    [Theory]
    [InlineData(390, Media.Screen)]
    [InlineData(1_200, Media.Screen)]
    [InlineData(680, Media.Print)]
    public async Task Nothing_of_the_page_is_wider_than_the_window_or_the_paper(int width, Media media)
    {
        await using Visit visit = await browser.Visit(Nowhere, width);
        await visit.Page.EmulateMediaAsync(new() { Media = media });
        await visit.Page.SetContentAsync(Plan.ToHtml());
        Assert.Equal(Plan.Steps.Length, await visit.Page.Locator("article").CountAsync());
        Assert.NotEqual(0, await visit.Page.Locator("article svg").CountAsync());
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(Wide));
        Assert.InRange(await visit.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"), 1, width);
        Assert.Empty(visit.Errors);

        await visit.Page.EvaluateAsync("() => document.querySelector('main').insertAdjacentHTML('beforeend', '<p style=\"width: 1300px\">too wide</p>')");
        Assert.NotEmpty(await visit.Page.EvaluateAsync<string[]>(Wide));
    }

    [Fact]
    public async Task The_page_prints_on_sheets_of_A4()
    {
        await using Visit visit = await browser.Visit(Nowhere);
        await visit.Page.SetContentAsync(Plan.ToHtml());
        string paper = Encoding.Latin1.GetString(await visit.Page.PdfAsync(new() { Format = "A4", PreferCSSPageSize = true }));
        int sheets = Sheet().Count(paper);
        Assert.InRange(sheets, 5, 80);
        Assert.Equal(sheets, A4().Count(paper));
    }

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex Sheet();

    /// <summary>210 by 297 mm in points, as far as the browser rounds them.</summary>
    [GeneratedRegex(@"/MediaBox\s*\[\s*0 0 59[45](\.\d+)? 84[12](\.\d+)?\s*\]")]
    private static partial Regex A4();
}
