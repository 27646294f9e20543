using System.Collections.Immutable;
using Lugwork;
using Lugwork.Catalogues;
using ShopWeb.Stock;

namespace ShopWeb.Judging;

/// <summary>How many articles of a slot have which verdict beside a cart.</summary>
/// <param name="Fits">They fit as they are.</param>
/// <param name="NeedsPart">They fit with another part or shop work.</param>
/// <param name="NeedsMeasuring">Something has to be measured or asked first.</param>
/// <param name="NotJudged">They meet nothing that is in the cart yet.</param>
/// <param name="DoNotFit">They do not fit, or would not be safe.</param>
internal sealed record SlotCounts(int Fits, int NeedsPart, int NeedsMeasuring, int NotJudged, int DoNotFit)
{
    public int Of(Verdict verdict) => verdict switch
    {
        Verdict.Fits => Fits,
        Verdict.NeedsPart => NeedsPart,
        Verdict.NeedsMeasuring => NeedsMeasuring,
        Verdict.NotJudged => NotJudged,
        _ => DoNotFit,
    };

    public int Total => Fits + NeedsPart + NeedsMeasuring + NotJudged + DoNotFit;
}

/// <summary>An article with why it is in the list that it is in.</summary>
internal sealed record ListedArticle(Article Article, Reasons Reasons);

/// <summary>Why a part has its verdict, in words.</summary>
/// <param name="Lines">A line for each thing to say; of a part that fits, the names of its joints and then what has to be read all the same.</param>
/// <param name="Cautions">Warnings that go with them.</param>
/// <param name="Compared">Of a part that fits, the sentence of every joint; else empty.</param>
internal sealed record Reasons(ImmutableArray<string> Lines, ImmutableArray<Caution> Cautions, ImmutableArray<string> Compared)
{
    public static Reasons Of(FittingPart part)
    {
        ImmutableArray<Fit> findings = part.Findings;
        ImmutableArray<string> lines = part.Verdict switch
        {
            Verdict.Fits => [string.Join(", ", findings.Select(f => f.Joint!.Name).Distinct().Select(Inside)), .. Notes(findings)],
            Verdict.NeedsPart => [.. Taken(findings, part.Needs), .. Notes(findings)],
            Verdict.NeedsMeasuring => [.. findings.Where(f => f.Verdict == Verdict.NeedsMeasuring).Select(f => f.Sentence), .. Measured(findings), .. part.ToAsk.Select(a => "Ask: " + a), .. Notes(findings)],
            _ => ["Nothing in the cart meets it yet."],
        };
        ImmutableArray<string> compared = part.Verdict == Verdict.Fits ? [.. findings.Select(f => f.Sentence).Distinct()] : [];
        return new([.. lines.Distinct()], [.. findings.OrderByDescending(f => f.Verdict).SelectMany(f => f.Cautions).Distinct()], compared);
    }

    /// <summary>A name behind another in a sentence; "ISO ..." stays as it is.</summary>
    private static string Inside(string name, int place) => place > 0 && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;

    /// <summary>What is to be read of joints that fit.</summary>
    private static IEnumerable<string> Notes(ImmutableArray<Fit> findings) => findings.Where(f => f.IsNote).Select(f => f.Sentence);

    /// <summary>The sentences, and what they leave unsaid of what to buy.</summary>
    private static ImmutableArray<string> Taken(ImmutableArray<Fit> findings, ImmutableArray<Remedy> needs)
    {
        string[] said = [.. findings.Where(f => f.Verdict == Verdict.NeedsPart).Select(f => f.Sentence)];
        return [.. said, .. needs.Where(n => !said.Any(s => s.Contains(n.What, StringComparison.Ordinal))).Select(n => "Takes " + n.What)];
    }

    private static IEnumerable<string> Measured(ImmutableArray<Fit> findings) =>
        findings.Where(f => f.Verdict == Verdict.NeedsMeasuring).SelectMany(f => f.Measurements).Select(m => $"Measure or ask: {m}");
}

/// <summary>The articles of one slot that have one verdict beside a cart, a page of them, all of one moment.</summary>
/// <param name="Slot">The slot.</param>
/// <param name="Verdict">The verdict that is listed.</param>
/// <param name="Counts">How many there are of each.</param>
/// <param name="Rows">The page, cheapest first.</param>
/// <param name="Page">Which page, from 1.</param>
/// <param name="Size">Rows of a page.</param>
/// <param name="Version">The state of the stock.</param>
internal sealed record SlotList(Slot Slot, Verdict Verdict, SlotCounts Counts, ImmutableArray<ListedArticle> Rows, int Page, int Size, long Version)
{
    public int Pages => Math.Max(1, (Counts.Of(Verdict) + Size - 1) / Size);
}
