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
    private CatalogueView _view = PartCatalogueView();
    private Build[] _builds = [];
    private double _found;

    public IReadOnlyList<Claim> Claims { get; } = [new("7", $"one frame against {Parts:N0} parts in {ScreeningShop.SlotCount} slots, all fitting ids", "SQLite in memory, one covering index, the keys of a part as one", 300, LimitKind.AtLeastFaster)];

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
            int count = Library(frame);
            int others = Peer(frame);
            _ids.AsSpan(0, count).Sort();
            _others.AsSpan(0, others).Sort();
            if (count == 0 || !_ids.AsSpan(0, count).SequenceEqual(_others.AsSpan(0, others)))
            {
                throw new InvalidOperationException($"frame {frame}: {count} ids by the index, {others} by SQLite");
            }

            all += count;
        }

        _found = all / (double)Asked;
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        double library = 0;
        double peer = 0;
        for (int frame = 0; frame < Asked; frame++)
        {
            double[] taken = Timing.InTurn(effort == Effort.Full ? 15 : 5, () => Timing.Of(() => Library(frame)), () => Timing.Of(() => Peer(frame)));
            library += taken[0];
            peer += taken[1];
        }

        return [new(peer / library)];
    }

    public void Dispose() => _connection.Dispose();

    private static CatalogueView PartCatalogueView() => new PartCatalogue().View;

    private int Library(int frame)
    {
        int count = 0;
        foreach (Slot slot in ScreeningShop.Shared.Slots)
        {
            foreach (FittingKind kind in _view.Fitting(_builds[frame], slot, 0, Verdict.NeedsPart).Kinds)
            {
                kind.CopyIds(_ids.AsSpan(count));
                count += kind.Count;
            }
        }

        return count;
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
