using System.Numerics;
using System.Runtime.InteropServices;
using Lugwork.Catalogues;
using Microsoft.Data.Sqlite;

namespace Lugwork.Benchmarks.Screening;

/// <summary>Row 7: the numbers of all parts that fit one frame, through the index and through SQLite.</summary>
internal sealed class OneFrameRow : IRow, IDisposable
{
    private const int Parts = 1_000_000;
    private const int Asked = 20;

    private readonly SqliteConnection _connection = new("Data Source=:memory:");
    private readonly long[] _ids = new long[Parts];
    private readonly long[] _others = new long[Parts];
    private CatalogueView _view = new PartCatalogue().View;
    private Build[] _builds = [];
    private double _found;

    public IReadOnlyList<Claim> Claims { get; } =
    [
        new("7", $"one frame against {Parts:N0} parts in {ScreeningShop.SlotCount} slots, all fitting ids, each added up", "SQLite in memory, one covering index, the keys of a part as one", 300, LimitKind.AtLeastFaster),
        new("7", "the same, the ids handed out by kind and not gone through", "SQLite in memory, one covering index, the keys of a part as one", 300, LimitKind.AtLeastFaster),
    ];

    public string Note => FormattableString.Invariant($"Row 7: {_found:N0} ids for a frame.");

    public void Prove()
    {
        ScreeningShop shop = ScreeningShop.Shared;
        CatalogueRow[] rows = [.. shop.Rows(Parts)];
        _view = ScreeningShop.Catalogue(rows).View;
        _connection.Open();
        Run("CREATE TABLE part (slot INTEGER, key INTEGER, figure INTEGER, id INTEGER, PRIMARY KEY (slot, key, figure, id)) WITHOUT ROWID");
        Run("CREATE TABLE need (frame INTEGER, slot INTEGER, key INTEGER, least INTEGER, most INTEGER)");
        Run("CREATE INDEX need_by_frame ON need (frame)");
        Fill("INSERT INTO part VALUES ($0, $1, $2, $3)", shop.Flat(rows).OrderBy(p => (p.Slot, p.Key, p.Figure, p.Id)).Select(p => new[] { p.Slot, p.Key, p.Figure, p.Id }));
        Fill("INSERT INTO need VALUES ($0, $1, $2, $3, $4)", shop.Needs(Asked).Select(n => new[] { n.Frame, n.Slot, n.Key, n.Least, n.Most }));
        Run("ANALYZE");
        _builds = [.. shop.Frames.Take(Asked).Select(f => Build.From(f))];
        long all = 0;
        for (int frame = 0; frame < Asked; frame++)
        {
            int count = Copied(frame);
            int others = Peer(frame);
            long sum = 0;
            foreach (long id in _others.AsSpan(0, others))
            {
                sum += id;
            }

            _ids.AsSpan(0, count).Sort();
            _others.AsSpan(0, others).Sort();
            if (count == 0 || !_ids.AsSpan(0, count).SequenceEqual(_others.AsSpan(0, others)) || Summed(frame) != sum || HandedOut(frame) != count)
            {
                throw new InvalidOperationException($"frame {frame}: {count} ids by the index, {others} by SQLite");
            }

            all += count;
        }

        _found = all / (double)Asked;
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        double summed = 0;
        double handed = 0;
        double peer = 0;
        for (int frame = 0; frame < Asked; frame++)
        {
            double[] taken = Timing.InTurn(effort == Effort.Full ? 15 : 5, () => Timing.Of(() => Summed(frame)), () => Timing.Of(() => HandedOut(frame)), () => Timing.Of(() => Peer(frame)));
            summed += taken[0];
            handed += taken[1];
            peer += taken[2];
        }

        return [new(peer / summed), new(peer / handed)];
    }

    public void Dispose() => _connection.Dispose();

    private int Copied(int frame)
    {
        int count = 0;
        foreach (Slot slot in ScreeningShop.Shared.Slots)
        {
            foreach (FittingGroup group in _view.FittingGroups(_builds[frame], slot, Verdict.NeedsPart))
            {
                group.Ids.Span.CopyTo(_ids.AsSpan(count));
                count += group.Count;
            }
        }

        return count;
    }

    private long Summed(int frame)
    {
        long sum = 0;
        foreach (Slot slot in ScreeningShop.Shared.Slots)
        {
            foreach (FittingGroup group in _view.FittingGroups(_builds[frame], slot, Verdict.NeedsPart))
            {
                sum += Sum(group.Ids.Span);
            }
        }

        return sum;
    }

    private int HandedOut(int frame)
    {
        int count = 0;
        foreach (Slot slot in ScreeningShop.Shared.Slots)
        {
            foreach (FittingGroup group in _view.FittingGroups(_builds[frame], slot, Verdict.NeedsPart))
            {
                count += group.Ids.Length;
            }
        }

        return count;
    }

    private static long Sum(ReadOnlySpan<long> ids)
    {
        ReadOnlySpan<Vector<long>> wide = MemoryMarshal.Cast<long, Vector<long>>(ids);
        Vector<long> sums = Vector<long>.Zero;
        foreach (Vector<long> some in wide)
        {
            sums += some;
        }

        long sum = Vector.Sum(sums);
        foreach (long id in ids[(wide.Length * Vector<long>.Count)..])
        {
            sum += id;
        }

        return sum;
    }

    private int Peer(int frame)
    {
        using SqliteCommand command = _connection.CreateCommand();
        command.CommandText = "SELECT p.id FROM need n CROSS JOIN part p ON p.slot = n.slot AND p.key = n.key AND p.figure BETWEEN n.least AND n.most WHERE n.frame = $frame";
        command.Parameters.AddWithValue("$frame", frame);
        using SqliteDataReader reader = command.ExecuteReader();
        int count = 0;
        while (reader.Read())
        {
            _others[count++] = reader.GetInt64(0);
        }

        return count;
    }

    private void Run(string sql)
    {
        using SqliteCommand command = _connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private void Fill(string sql, IEnumerable<long[]> rows)
    {
        using SqliteTransaction transaction = _connection.BeginTransaction();
        using SqliteCommand command = _connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = sql;
        SqliteParameter[] values = [.. Enumerable.Range(0, sql.Count(c => c == '$')).Select(i => command.Parameters.AddWithValue($"${i}", 0L))];
        foreach (long[] row in rows)
        {
            for (int i = 0; i < values.Length; i++)
            {
                values[i].Value = row[i];
            }

            command.ExecuteNonQuery();
        }

        transaction.Commit();
    }
}
