using DuckDB.NET.Data;
using Lugwork.Catalogues;

namespace Lugwork.Benchmarks.Screening;

/// <summary>DuckDB in memory with two threads.</summary>
internal sealed class Duck : IDisposable
{
    private readonly DuckDBConnection _connection = new("DataSource=:memory:");

    public Duck()
    {
        _connection.Open();
        Run("SET threads = 2");
    }

    public void Run(string sql)
    {
        using DuckDBCommand command = _connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public List<long[]> Read(string sql)
    {
        using DuckDBCommand command = _connection.CreateCommand();
        command.CommandText = sql;
        using DuckDBDataReader reader = command.ExecuteReader();
        List<long[]> rows = [];
        while (reader.Read())
        {
            long[] row = new long[reader.FieldCount];
            for (int i = 0; i < row.Length; i++)
            {
                row[i] = reader.GetInt64(i);
            }

            rows.Add(row);
        }

        return rows;
    }

    public void Put(string table, FlatPart[] rows)
    {
        using DuckDBAppender to = _connection.CreateAppender(table);
        foreach (FlatPart row in rows)
        {
            to.CreateRow().AppendValue(row.Id).AppendValue(row.Slot).AppendValue(row.Key).AppendValue(row.Figure).EndRow();
        }
    }

    public void Put(string table, FlatNeed[] rows)
    {
        using DuckDBAppender to = _connection.CreateAppender(table);
        foreach (FlatNeed row in rows)
        {
            to.CreateRow().AppendValue(row.Frame).AppendValue(row.Slot).AppendValue(row.Key).AppendValue(row.Least).AppendValue(row.Most).EndRow();
        }
    }

    public void Put(string table, IEnumerable<PartFitRow> rows)
    {
        using DuckDBAppender to = _connection.CreateAppender(table);
        foreach (PartFitRow row in rows)
        {
            to.CreateRow().AppendValue(row.PartId).AppendValue(row.SlotKey).AppendValue(row.JointId).AppendValue(row.Key).AppendValue(row.LimitMin).AppendValue(row.LimitMax).EndRow();
        }
    }

    public void Dispose() => _connection.Dispose();
}
