using System.Collections.Immutable;
using System.Data.Common;
using Lugwork;
using Lugwork.Catalogues;
using Microsoft.EntityFrameworkCore;
using ShopWeb.Stock;

namespace ShopWeb.Judging;

/// <summary>Asks the database which articles there are and the library which of them go together with a cart.</summary>
internal sealed class StockReader(ShopContext shop, SpecShelf shelf, SpecCounts counts)
{
    /// <summary>A cart out of an address, and how many articles of every slot go with it, all of one moment.</summary>
    public async Task<(Cart Cart, ImmutableDictionary<Slot, SlotCounts> Counts)> Read(CartRequest asked, bool count, CancellationToken cancellation)
    {
        await using DbTransaction moment = await shop.OfOneMoment(cancellation);
        Cart cart = await CartReader.Read(shop, asked, cancellation);
        ImmutableDictionary<Slot, SlotCounts>.Builder found = ImmutableDictionary.CreateBuilder<Slot, SlotCounts>();
        Build build = cart.ToBuild();
        IReadOnlyDictionary<Slot, SpecTally> stock = count ? (await counts.Now(shop, cancellation)).BySlot : new Dictionary<Slot, SpecTally>();
        foreach ((Slot slot, SpecTally tally) in stock.Where(s => s.Key != Slot.Frame))
        {
            CatalogueView view = await shelf.Holding(shop, tally, cancellation);
            found[slot] = Sum(view.Fitting(build, slot, 0, Verdict.NeedsMeasuring, cancellation).Kinds.SelectMany(Numbered), tally);
        }

        return (cart, found.ToImmutable());
    }

    /// <summary>One list of a slot.</summary>
    public async Task<(Cart Cart, SlotList List)> List(CartRequest asked, Slot slot, Verdict verdict, int page, int size, CancellationToken cancellation)
    {
        await using DbTransaction moment = await shop.OfOneMoment(cancellation);
        Cart cart = await CartReader.Read(shop, asked, cancellation);
        Build build = cart.ToBuild();
        Tallies tallies = await counts.Now(shop, cancellation);
        SpecTally tally = tallies.BySlot.GetValueOrDefault(slot) ?? SpecTally.Empty;

        // The two relations find what has to be looked at; the check decides.
        List<long> candidates = await CandidateQuery.Of(shop, build, slot).ToListAsync(cancellation);
        CatalogueView view = await shelf.Holding(shop, tally, cancellation);
        HashSet<long> near = [.. candidates];
        Dictionary<long, FittingPart> judged = All(view.Fitting(build, slot, int.MaxValue, Verdict.NeedsMeasuring, cancellation)).Where(p => near.Contains(p.Id)).ToDictionary(p => p.Id);
        List<long> specs = [.. judged.Where(p => p.Value.Verdict == verdict).Select(p => p.Key)];
        List<Article> articles = await shop.Articles.AsNoTracking()
            .Where(a => specs.Contains(a.SpecId))
            .OrderBy(a => a.Cents).ThenBy(a => a.Id)
            .Skip((page - 1) * size).Take(size)
            .ToListAsync(cancellation);
        Dictionary<long, Reasons> told = articles.Select(a => a.SpecId).Distinct().ToDictionary(id => id, id => Reasons.Of(judged[id]));
        return (cart, new(slot, verdict, Sum(judged.Values.Select(p => (p.Id, p.Verdict)), tally), [.. articles.Select(a => new ListedArticle(a, told[a.SpecId]))], page, size, tallies.Version));
    }

    private static IEnumerable<FittingPart> All(SlotFitting fitting) => fitting.Fits.Concat(fitting.NeedsPart).Concat(fitting.Open);

    private static IEnumerable<(long Spec, Verdict Verdict)> Numbered(FittingKind kind)
    {
        Verdict verdict = kind.First.Verdict;
        return kind.Ids.Select(spec => (spec, verdict));
    }

    private static SlotCounts Sum(IEnumerable<(long Spec, Verdict Verdict)> judged, SpecTally tally)
    {
        int[] by = new int[(int)Verdict.Unsafe + 1];
        foreach ((long spec, Verdict verdict) in judged)
        {
            by[(int)verdict] += tally.Articles.GetValueOrDefault(spec);
        }

        // What is not listed does not fit, save what could not be read.
        int rest = tally.Readable - by.Sum();
        return new(by[(int)Verdict.Fits], by[(int)Verdict.NeedsPart], by[(int)Verdict.NeedsMeasuring], by[(int)Verdict.NotJudged], rest);
    }
}
