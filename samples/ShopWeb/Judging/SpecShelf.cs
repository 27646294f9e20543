using System.Collections.Concurrent;
using Lugwork;
using Lugwork.Catalogues;
using Microsoft.EntityFrameworkCore;
using ShopWeb.Stock;

namespace ShopWeb.Judging;

/// <summary>
/// Every spec that was ever asked for, as a catalogue that judges each different part once. A spec never changes, so that nothing here can
/// contradict the database: which articles there are is asked there, each time.
/// </summary>
internal sealed class SpecShelf
{
    private readonly PartCatalogue _catalogue = new();
    private readonly ConcurrentDictionary<long, bool> _held = [];

    /// <summary>A view that holds these specs at least.</summary>
    public async Task<CatalogueView> Holding(ShopContext shop, IReadOnlyCollection<long> specs, CancellationToken cancellation)
    {
        List<long> lacking = [.. specs.Where(id => !_held.ContainsKey(id))];
        if (lacking.Count == 0)
        {
            return _catalogue.View;
        }

        List<Spec> found = await shop.Specs.AsNoTracking().Where(s => lacking.Contains(s.Id)).ToListAsync(cancellation);
        _catalogue.Load(found.SelectMany(Rows), cancellation);
        foreach (Spec spec in found)
        {
            _held[spec.Id] = true;
        }

        return _catalogue.View;
    }

    private static IEnumerable<CatalogueRow> Rows(Spec spec)
    {
        // What another program wrote and this one cannot read is no part: it is in no list, and the others are.
        return spec.Part() is { } part ? part.Places.Select(place => new CatalogueRow(spec.Id, place, part)) : [];
    }
}
