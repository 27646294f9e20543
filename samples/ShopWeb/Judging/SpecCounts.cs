using System.Collections.Concurrent;
using Lugwork;
using Microsoft.EntityFrameworkCore;
using ShopWeb.Stock;

namespace ShopWeb.Judging;

/// <summary>How many articles of a slot say which spec.</summary>
internal sealed record SpecTally(IReadOnlyDictionary<long, int> Articles)
{
    public static SpecTally Empty { get; } = new(new Dictionary<long, int>());

    public IReadOnlyCollection<long> Specs { get; } = [.. Articles.Keys];

    /// <summary>How many articles have a spec that could be read; negative before all of them are on the shelf, which never loses one and need not be asked again.</summary>
    public int Readable { get; set; } = -1;
}

/// <summary>The tallies of every slot at one state of the stock.</summary>
internal sealed record Tallies(long Version, IReadOnlyDictionary<Slot, SpecTally> BySlot);

/// <summary>Counts articles once for each state of the stock: whoever changes it raises its version in the same transaction.</summary>
internal sealed class SpecCounts : IDisposable
{
    // More than so many are asked for all at once.
    private const int ManySpecs = 500;

    // Where a spec goes never changes; which articles there are does.
    private readonly ConcurrentDictionary<long, Slot[]> _places = [];
    private readonly SemaphoreSlim _counting = new(1, 1);
    private Tallies _last = new(-1, new Dictionary<Slot, SpecTally>());

    /// <summary>The tallies of the moment that the transaction of this context reads.</summary>
    public async Task<Tallies> Now(ShopContext shop, CancellationToken cancellation)
    {
        long version = await shop.States.Select(s => s.Version).SingleAsync(cancellation);
        Tallies last = Volatile.Read(ref _last);
        if (last.Version == version)
        {
            return last;
        }

        // After a change one request counts, and the others of the same state wait for it.
        await _counting.WaitAsync(cancellation);
        try
        {
            last = Volatile.Read(ref _last);
            return last.Version == version ? last : await Count(shop, version, cancellation);
        }
        finally
        {
            _counting.Release();
        }
    }

    public void Dispose() => _counting.Dispose();

    private async Task<Tallies> Count(ShopContext shop, long version, CancellationToken cancellation)
    {
        Dictionary<long, int> articles = await shop.Articles.GroupBy(a => a.SpecId).Select(g => new { g.Key, Count = g.Count() }).ToDictionaryAsync(g => g.Key, g => g.Count, cancellation);
        await Learn(shop, [.. articles.Keys.Where(spec => !_places.ContainsKey(spec))], cancellation);
        Dictionary<Slot, Dictionary<long, int>> counts = [];
        foreach ((long spec, int count) in articles)
        {
            foreach (Slot slot in _places[spec])
            {
                (counts.TryGetValue(slot, out Dictionary<long, int>? of) ? of : counts[slot] = [])[spec] = count;
            }
        }

        Tallies now = new(version, counts.ToDictionary(c => c.Key, c => new SpecTally(c.Value)));
        if (now.Version > _last.Version)
        {
            Volatile.Write(ref _last, now);
        }

        return now;
    }

    /// <summary>The slots of specs that were not met before.</summary>
    private async Task Learn(ShopContext shop, List<long> specs, CancellationToken cancellation)
    {
        if (specs.Count == 0)
        {
            return;
        }

        IQueryable<SpecFit> places = shop.Fits.Where(f => f.Joint == "");
        places = specs.Count > ManySpecs ? places : places.Where(f => specs.Contains(f.SpecId));
        ILookup<long, Slot?> found = (await places.Select(f => new { f.SpecId, f.Slot }).ToListAsync(cancellation)).ToLookup(f => f.SpecId, f => Slot.Find(f.Slot));
        foreach (long spec in specs)
        {
            _places[spec] = [.. found[spec].OfType<Slot>()];
        }
    }
}
