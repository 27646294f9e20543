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
internal sealed class SpecShelf(ILogger<SpecShelf> log)
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
            if (_held.TryAdd(spec.Id, spec.Part() is not null) && !_held[spec.Id])
            {
                log.LogWarning("spec {Spec} of a {Slot} cannot be read; its articles are in no list and no count", spec.Id, spec.Slot);
            }
        }

        return _catalogue.View;
    }

    /// <summary>Whether a spec that is held could be read: of one that could not, nothing is said, not even that it does not fit.</summary>
    public bool CanRead(long spec) => _held.TryGetValue(spec, out bool isRead) && isRead;

    private static IEnumerable<CatalogueRow> Rows(Spec spec)
    {
        // What another program wrote and this one cannot read is no part: it is in no list, and the others are.
        return spec.Part() is { } part ? part.Places.Select(place => new CatalogueRow(spec.Id, place, part)) : [];
    }
}
