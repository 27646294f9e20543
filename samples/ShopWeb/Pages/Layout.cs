using Lugwork;
using ShopWeb.Judging;

namespace ShopWeb.Pages;

/// <summary>The frame of every page.</summary>
internal static class Layout
{
    public static IResult Page(string title, Html main, int status = StatusCodes.Status200OK) =>
        Results.Content(Whole(title, main).ToString(), "text/html; charset=utf-8", statusCode: status);

    private static Html Whole(string title, Html main) => Html.Of(
        $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        <title>{title} - Frame-up counter</title>
        <link rel="stylesheet" href="/shop.css">
        <link rel="icon" href="/icon.svg" type="image/svg+xml">
        </head>
        <body>
        <a class="skip" href="#main">Skip to the page</a>
        <header class="top"><a href="/">Frame-up counter</a> <span>An invented shop: parts that go with a bare frame</span></header>
        <main id="main" tabindex="-1">
        {main}
        </main>
        <footer>
        <p>Articles and prices are invented. Figures come from published pages; the makers' figures come first. If in doubt, let a shop look. <a href="/openapi/v1.json">For programs</a></p>
        </footer>
        </body>
        </html>
        """);

    /// <summary>A verdict with its sign: colour is never the only one.</summary>
    public static Html Badge(Verdict verdict, bool capital = false) => Html.Of(
        $"""<span class="badge {Class(verdict)}"><span aria-hidden="true">{Sign(verdict)}</span> {Words(verdict, capital)}</span>""");

    public static string Words(Verdict verdict, bool capital)
    {
        string words = Verdicts.InWords(verdict);
        return capital ? char.ToUpperInvariant(words[0]) + words[1..] : words;
    }

    private static string Sign(Verdict verdict) => verdict switch
    {
        Verdict.Fits => "=",
        Verdict.NeedsPart => "+",
        Verdict.NeedsMeasuring => "?",
        Verdict.NotJudged => "-",
        _ => "x",
    };

    private static string Class(Verdict verdict) => verdict switch
    {
        Verdict.Fits => "good",
        Verdict.NeedsPart => "part",
        Verdict.NeedsMeasuring or Verdict.NotJudged => "open",
        _ => "bad",
    };

    public static Html Cautions(IReadOnlyCollection<Caution> cautions, string heading) => Html.If(cautions.Count > 0, () => Html.Of(
        $"""
        <section class="mind"><h2>{heading}</h2><ul>{cautions.Select(c => Html.Of($"<li>{c.Text}</li>"))}</ul><p>The makers' figures, local codes and licensed practice come first.</p></section>
        """));

    /// <summary>What of the frame its sheet did not say in so many words, wherever something rests on it.</summary>
    public static Html Assumed(Cart cart, string path) => Html.If(!cart.Assumed.IsEmpty, () => Html.Of(
        $"""
        <aside class="assumed" aria-label="Assumed"><p><strong>Assumed, not said by the sheet:</strong> {string.Join("; ", cart.Assumed.Select(a => $"{Field(a.Field)} {a.Value}"))}. What fits here rests on it: make sure before you buy.
        {Html.If(cart.AddressAsStated(path) is not null, () => Html.Of($"""<a href="{cart.AddressAsStated(path)}">Go on without it</a>"""))}</p></aside>
        """));

    public static Html List(IEnumerable<string> lines) => Html.Of($"<ul>{lines.Select(l => Html.Of($"<li>{l}</li>"))}</ul>");

    /// <summary>The key of a field in words: "head tube upper" of "headTubeUpper".</summary>
    public static string Field(string key) => string.Concat(key.Select(c => char.IsAsciiLetterUpper(c) ? " " + char.ToLowerInvariant(c) : c.ToString()));

    public static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
