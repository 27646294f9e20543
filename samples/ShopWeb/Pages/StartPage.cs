using Lugwork;
using ShopWeb.Stock;

namespace ShopWeb.Pages;

/// <summary>Where a visit begins: a sheet to paste, or a frame of the shop.</summary>
internal static class StartPage
{
    public static IResult Of(IReadOnlyList<Article> frames, BicycleKind kind, IReadOnlyList<BicycleKind> kinds) => Layout.Page("Start with a frame", Html.Of(
        $"""
        <h1>Start with a frame</h1>
        <p>Say which frame you have. You then see what every part has to be, which of our parts go with it, and what else they take.</p>
        <div class="two">
        <section><h2>Paste its spec sheet</h2>
        {SheetForm("")}
        </section>
        <section><h2>Or take one of ours</h2>
        <form action="/" method="get" class="row"><label for="kind">Kind of bicycle</label>
        <select id="kind" name="kind">{kinds.Select(k => Option(k, k == kind))}</select>
        <button type="submit">Show frames</button></form>
        <ul class="picks">{frames.Select(f => Html.Of($"""<li><a href="/build?frame={f.Id}">{f.Name}</a> <span class="price">{f.Price:0.00} EUR</span></li>"""))}</ul>
        {Html.If(frames.Count == 0, () => Html.Of($"<p>We have no frame of this kind.</p>"))}
        </section>
        </div>
        """));

    public static Html SheetForm(string text) => Html.Of(
        $"""
        <form action="/sheet" method="post">
        <label for="sheet">The sheet, as it is printed</label>
        <p id="sheet-hint" class="hint">One line for each thing, in any order; English, German, French, Italian, Spanish and Dutch are read. What is not said stays unknown.</p>
        <textarea id="sheet" name="sheet" rows="9" required maxlength="20000" aria-describedby="sheet-hint" placeholder="Rear axle: 12 x 142 mm&#10;Bottom bracket: BSA 68&#10;Seatpost: 27.2 mm">{text}</textarea>
        <button type="submit">Read the sheet</button>
        </form>
        """);

    private static Html Option(BicycleKind kind, bool chosen) => chosen
        ? Html.Of($"""<option value="{kind.FitKey}" selected>{kind.TradeName}</option>""")
        : Html.Of($"""<option value="{kind.FitKey}">{kind.TradeName}</option>""");
}
