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
internal sealed class SpecShelf(ILogger<SpecShelf> log) : IDisposable
{
    private readonly PartCatalogue _catalogue = new();
    private readonly ConcurrentDictionary<long, bool> _held = [];
    private readonly SemaphoreSlim _fetching = new(1, 1);

    /// <summary>How many specs it holds that can be read.</summary>
    public int Count => _held.Count(h => h.Value);

    /// <summary>A view that holds the specs of a tally at least.</summary>
    public async Task<CatalogueView> Holding(ShopContext shop, SpecTally tally, CancellationToken cancellation)
    {
        if (tally.Readable < 0)
        {
            await Hold(shop, tally.Specs, cancellation);
            tally.Readable = tally.Articles.Where(a => CanRead(a.Key)).Sum(a => a.Value);
        }

        return _catalogue.View;
    }

    private async Task Hold(ShopContext shop, IReadOnlyCollection<long> specs, CancellationToken cancellation)
    {
        if (Lacking(specs).Count == 0)
        {
            return;
        }

        // At a cold start everybody asks for the same: one fetches it, and the others find it there.
        await _fetching.WaitAsync(cancellation);
        try
        {
            List<long> lacking = Lacking(specs);
            if (lacking.Count > 0)
            {
                List<Spec> found = await shop.Specs.AsNoTracking().Where(s => lacking.Contains(s.Id)).ToListAsync(cancellation);
                Put(found.ConvertAll(s => (s, s.Part())), cancellation);
            }
        }
        finally
        {
            _fetching.Release();
        }
    }

    public void Dispose() => _fetching.Dispose();

    private List<long> Lacking(IReadOnlyCollection<long> specs) => [.. specs.Where(id => !_held.ContainsKey(id))];

    /// <summary>What another program wrote and this one cannot read is no part: it is in no list, and the others are.</summary>
    private void Put(List<(Spec Spec, Part? Part)> found, CancellationToken cancellation)
    {
        _catalogue.Load(found.Where(f => f.Part is not null).SelectMany(f => f.Part!.Places.Select(place => new CatalogueRow(f.Spec.Id, place, f.Part))), cancellation);
        foreach ((Spec spec, Part? part) in found)
        {
            _held[spec.Id] = part is not null;
            if (part is null)
            {
                log.LogWarning("spec {Spec} of a {Slot} cannot be read; its articles are in no list and no count", spec.Id, spec.Slot);
            }
        }
    }

    /// <summary>Whether a spec that is held could be read: of one that could not, nothing is said, not even that it does not fit.</summary>
    private bool CanRead(long spec) => _held.TryGetValue(spec, out bool isRead) && isRead;
}
