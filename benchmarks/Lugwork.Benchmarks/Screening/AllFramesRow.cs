using Lugwork.Catalogues;

namespace Lugwork.Benchmarks.Screening;

/// <summary>Row 9: counts for every frame and slot. The peer has its histogram and the keys that each frame accepts ready.</summary>
internal sealed class AllFramesRow : IRow, IDisposable
{
    private const int Parts = 1_000_000;
    private const int Frames = 10_000;
    private const int Threads = 2;

    private const string Counts = """
        CREATE OR REPLACE TABLE counts AS
        SELECT n.frame, n.slot, CAST(SUM(COALESCE(u.up_to, 0) - COALESCE(l.up_to, 0)) AS BIGINT) AS parts
        FROM need n
        ASOF LEFT JOIN histogram u ON u.slot = n.slot AND u.key = n.key AND u.figure <= n.most
        ASOF LEFT JOIN histogram l ON l.slot = n.slot AND l.key = n.key AND l.figure < n.least
        GROUP BY n.frame, n.slot
        """;

    private readonly Duck _duck = new();
    private CatalogueView _view = new PartCatalogue().View;
    private long _needs;
    private int _wider;

    public IReadOnlyList<Claim> Claims { get; } = [new("9", $"10,000 frames x {Parts:N0} parts, counts for each of {ScreeningShop.SlotCount} slots, {Threads} threads", "DuckDB with 2 threads, cumulative histogram and ASOF join", 8, LimitKind.AtLeastFaster)];

    public string Note => FormattableString.Invariant($"Row 9: {_needs:N0} rows of need; {_wider:N0} of {ScreeningShop.Shared.Frames.Length:N0} frames left out, of which the rows leave something to the check.");

    public void Prove()
    {
        ScreeningShop shop = ScreeningShop.Shared;
        CatalogueRow[] rows = [.. shop.Rows(Parts)];
        PartCatalogue catalogue = ScreeningShop.Catalogue(rows);
        catalogue.Load(shop.Frames.Select((f, i) => new CatalogueRow(i, Slot.Frame, f)));
        _duck.Run("CREATE TABLE part (id BIGINT, slot INTEGER, key INTEGER, figure BIGINT)");
        _duck.Run("CREATE TABLE need (frame INTEGER, slot INTEGER, key INTEGER, least BIGINT, most BIGINT)");
        _duck.Put("part", shop.Flat(rows));
        _duck.Put("need", shop.Needs(shop.Frames.Length));
        _duck.Run("CREATE TABLE histogram AS SELECT slot, key, figure, CAST(SUM(COUNT(*)) OVER (PARTITION BY slot, key ORDER BY figure) AS BIGINT) AS up_to FROM part GROUP BY slot, key, figure");
        HashSet<long> wider = [.. Unequal(catalogue.View)];
        long[] asked = [.. catalogue.View.CountsOfFrames().Ids.Where(f => !wider.Contains(f)).Take(Frames)];
        _duck.Run($"DELETE FROM need WHERE frame NOT IN ({string.Join(", ", asked)})");
        catalogue.Remove(Slot.Frame, Enumerable.Range(0, shop.Frames.Length).Select(f => (long)f).Except(asked));
        _view = catalogue.View;
        _needs = _duck.Read("SELECT COUNT(*) FROM need")[0][0];
        _wider = wider.Count;
        if (asked.Length < Frames || Unequal(_view).Any())
        {
            throw new InvalidOperationException($"of {asked.Length} frames the counts were equal, and have to be of {Frames}");
        }
    }

    /// <summary>Frames of which a join lets in more parts than the joints do, because their rows leave something to the check. A join that lets in fewer is wrong.</summary>
    private IEnumerable<long> Unequal(CatalogueView view)
    {
        Slot[] slots = ScreeningShop.Shared.Slots;
        _duck.Run(Counts);
        Dictionary<(long, long), long> peer = _duck.Read("SELECT frame, slot, parts FROM counts").ToDictionary(r => (r[0], r[1]), r => r[2]);
        FrameCounts counts = view.CountsOfFrames();
        foreach (long frame in counts.Ids)
        {
            bool wider = false;
            for (int slot = 0; slot < slots.Length; slot++)
            {
                FitCounts own = counts.Of(frame, slots[slot])!;
                long joined = peer.GetValueOrDefault((frame, (long)slot));
                wider |= own.Fits + own.NeedsPart < joined;
                if (own.Fits + own.NeedsPart > joined)
                {
                    throw new InvalidOperationException($"frame {frame}, {slots[slot]}: {own} by the index, {joined} by DuckDB");
                }
            }

            if (wider)
            {
                yield return frame;
            }
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        double[] taken = Timing.InTurn(effort == Effort.Full ? 9 : 3, () => Timing.Of(() => _view.CountsOfFrames(Threads)), () => Timing.Of(() => _duck.Run(Counts)));
        return [new(taken[1] / taken[0])];
    }

    public void Dispose() => _duck.Dispose();
}
