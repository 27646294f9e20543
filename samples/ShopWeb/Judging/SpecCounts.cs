using System.Collections.Immutable;
using Lugwork;
using Microsoft.EntityFrameworkCore;
using ShopWeb.Stock;

namespace ShopWeb.Judging;

/// <summary>How many articles of a slot say which spec.</summary>
internal sealed record SpecTally(ImmutableDictionary<long, int> Articles)
{
    public static SpecTally Empty { get; } = new(ImmutableDictionary<long, int>.Empty);

    public IReadOnlyCollection<long> Specs { get; } = [.. Articles.Keys];
}

/// <summary>The tallies of every slot at one state of the stock.</summary>
internal sealed record Tallies(long Version, ImmutableDictionary<Slot, SpecTally> BySlot);

/// <summary>Counts articles once for each state of the stock: whoever changes it raises its version in the same transaction.</summary>
internal sealed class SpecCounts : IDisposable
{
    private readonly SemaphoreSlim _counting = new(1, 1);
    private Tallies _last = new(-1, ImmutableDictionary<Slot, SpecTally>.Empty);

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
        var rows = await shop.Articles.GroupBy(a => a.SpecId).Select(g => new { Spec = g.Key, Count = g.Count() })
            .Join(shop.Fits.Where(f => f.Joint == ""), g => g.Spec, f => f.SpecId, (g, f) => new { f.Slot, g.Spec, g.Count })
            .ToListAsync(cancellation);
        Tallies now = new(version, rows.Where(r => Slot.Find(r.Slot) is not null).GroupBy(r => Slot.Find(r.Slot)!).ToImmutableDictionary(g => g.Key, g => new SpecTally(g.ToImmutableDictionary(r => r.Spec, r => r.Count))));
        if (now.Version > _last.Version)
        {
            Volatile.Write(ref _last, now);
        }

        return now;
    }
}
