using Lugwork;
using ShopWeb.Judging;
using ShopWeb.Stock;

namespace ShopWeb.Pages;

/// <summary>The articles of one slot, those that fit apart from those that take another part and those that have to be measured.</summary>
internal static class PartsPage
{
    /// <summary>Longer pages go without the sentences of what fits; their notes and cautions stay.</summary>
    private const int Explained = 200;

    private static readonly Verdict[] Shown = [Verdict.Fits, Verdict.NeedsPart, Verdict.NeedsMeasuring, Verdict.NotJudged];

    public static IResult Of(Cart cart, SlotList list)
    {
        string slot = list.Slot.Name;
        Caution[] cautions = [.. list.Rows.SelectMany(r => r.Reasons.Cautions).Distinct()];
        return Layout.Page($"{Layout.Capital(slot)} for {cart.FrameName}", Html.Of(
            $"""
            <p class="back"><a href="{cart.Address("/build")}#slot-{list.Slot.Key}">Back to the build</a></p>
            <h1>{Layout.Capital(slot)} for {cart.FrameName}</h1>
            {Layout.Assumed(cart, "/parts/" + list.Slot.Key)}
            <nav class="lists" aria-label="Lists">{Shown.Select(v => Tab(cart, list, v))}</nav>
            <p>{Lists.Meaning(list.Verdict)} {Html.If(list.Counts.DoNotFit > 0, () => Html.Of($"{list.Counts.DoNotFit:#,0} more do not fit and are not listed."))}</p>
            {Layout.Cautions(cautions, "Cautions")}
            {Html.If(list.Rows.IsEmpty, () => Html.Of($"<p>There is none.</p>"))}
            {Html.If(!list.Rows.IsEmpty, () => Rows(cart, list))}
            {Pager(cart, list)}
            """));
    }

    private static Html Tab(Cart cart, SlotList list, Verdict verdict)
    {
        Html inside = Html.Of($"""{Layout.Capital(Lists.Called(verdict))} <span class="count">{list.Counts.Of(verdict):#,0}</span>""");
        string address = Address(cart, list, verdict, 1, list.Size);
        return verdict == list.Verdict ? Html.Of($"""<a href="{address}" aria-current="page">{inside}</a>""") : Html.Of($"""<a href="{address}">{inside}</a>""");
    }

    private static Html Rows(Cart cart, SlotList list) => Html.Of(
        $"""
        <ul class="articles">{list.Rows.Select(r => Html.Of(
            $"""
            <li><div><strong>{r.Article.Name}</strong> <span class="price">{r.Article.Price:0.00} EUR</span> {Reason(r.Reasons, r.Article, list)}</div>
            <a class="button" href="{cart.Address("/build", null, (list.Slot, r.Article.Id))}#slot-{list.Slot.Key}">Add<span class="hidden"> {r.Article.Name}</span></a></li>
            """))}</ul>
        """);

    private static Html Reason(Reasons reasons, Article article, SlotList list) => list.Verdict == Verdict.Fits
        ? Html.Of(
            $"""
            <div class="reason">{Layout.Badge(list.Verdict)} {reasons.Lines[0]}
            {Html.If(reasons.Lines.Length > 1, () => Layout.List(reasons.Lines.Skip(1)))}
            {Html.If(list.Rows.Length <= Explained, () => Html.Of($"<details><summary>Why<span class=\"hidden\">: {article.Name}</span></summary>{Layout.List(reasons.Compared)}</details>"))}</div>
            """)
        : Html.Of($"""<div class="reason">{Layout.Badge(list.Verdict)}{Layout.List(reasons.Lines)}</div>""");

    private static Html Pager(Cart cart, SlotList list)
    {
        int total = list.Counts.Of(list.Verdict);
        Html page = Html.If(list.Pages > 1, () => Html.Of(
            $"""
            {Html.If(list.Page > 1, () => Html.Of($"<a href=\"{Address(cart, list, list.Verdict, list.Page - 1, list.Size)}\" rel=\"prev\">Previous page</a>"))}
            <span>Page {list.Page} of {list.Pages:#,0}</span>
            {Html.If(list.Page < list.Pages, () => Html.Of($"<a href=\"{Address(cart, list, list.Verdict, list.Page + 1, list.Size)}\" rel=\"next\">Next page</a>"))}
            """));
        Html all = Html.If(list.Size < Lists.MostRows && total > list.Size, () => Html.Of($"""<a href="{Address(cart, list, list.Verdict, 1, Lists.MostRows)}">{(total <= Lists.MostRows ? "All" : "The first 10,000")} on one page</a>"""));
        return Html.If(total > Lists.UsualRows, () => Html.Of($"""<nav class="pager" aria-label="Pages">{page}{all}</nav>"""));
    }

    private static string Address(Cart cart, SlotList list, Verdict verdict, int page, int size) => size == Lists.UsualRows
        ? cart.Address("/parts/" + list.Slot.Key, null, null, ("list", Lists.Word(verdict)), ("page", page.ToString(System.Globalization.CultureInfo.InvariantCulture)))
        : cart.Address("/parts/" + list.Slot.Key, null, null, ("list", Lists.Word(verdict)), ("page", page.ToString(System.Globalization.CultureInfo.InvariantCulture)), ("size", size.ToString(System.Globalization.CultureInfo.InvariantCulture)));
}
