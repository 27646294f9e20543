using Lugwork;

namespace ShopWeb.Pages;

/// <summary>What the check found, the worst first, with remedies, cautions and sources.</summary>
internal static class VerdictSection
{
    public static Html Of(FitReport report)
    {
        Fit[] open = [.. report.Findings.Where(f => f.Verdict != Verdict.Fits).OrderByDescending(f => f.Verdict)];
        Fit[] clean = [.. report.Findings.Where(f => f.Verdict == Verdict.Fits)];
        return Html.Of(
            $"""
            <section id="verdict"><h2>Verdict</h2>
            {Html.If(open.Length == 0, () => Html.Of($"<p>{(clean.Length == 0 ? "No two parts meet yet." : "Nothing that was judged speaks against it.")}</p>"))}
            <ul class="found">{open.Select(Finding)}</ul>
            {Html.If(clean.Length > 0, () => Html.Of($"<details><summary>{clean.Length} joints that fit as they are</summary>{Layout.List(clean.Select(f => $"{f.Joint!.Name}. {f.Sentence}"))}</details>"))}
            {Html.If(!report.ToMeasure.IsEmpty, () => Html.Of($"<h3>To measure or ask, most telling first</h3>{Layout.List(report.ToMeasure.Select(m => m.ToString()))}"))}
            {Html.If(!report.NotLookedAt.IsEmpty, () => Html.Of($"<h3>Not looked at, so not judged</h3>{Layout.List(report.NotLookedAt.Select(j => j.Name))}"))}
            <p>{FitReport.NotYetJudged}</p>
            </section>
            {Layout.Cautions(report.Cautions, "Cautions")}
            """);
    }

    private static Html Finding(Fit fit) => Html.Of(
        $"""
        <li>{Layout.Badge(fit.Verdict)} <strong>{fit.Joint!.Name}.</strong> {fit.Sentence}
        {Html.If(!fit.Remedies.IsEmpty, () => Layout.List(fit.Remedies.Select(r => Prefix(r.Kind) + r.What)))}
        <details><summary>Why<span class="hidden">: {fit.Joint.Name}</span></summary><pre tabindex="0">{fit.Explain()}</pre></details></li>
        """);

    private static string Prefix(RemedyKind kind) => kind switch
    {
        RemedyKind.BuyPart => "Buy: ",
        RemedyKind.ShopWork => "Shop work: ",
        RemedyKind.ReplacePart => "Take another: ",
        RemedyKind.IfMeasured => "If it measures right: ",
        _ => "If it does not measure right: ",
    };
}
