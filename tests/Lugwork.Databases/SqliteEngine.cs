using Lugwork.Catalogues;
using Microsoft.Data.Sqlite;

namespace Lugwork.Databases;

/// <summary>SQLite in memory.</summary>
internal sealed class SqliteEngine : Engine
{
    public SqliteEngine()
        : base(new SqliteConnection("Data Source=:memory:")) => Connection.Open();

    public override void Put(PartFitRow[] rows) =>
        Put("INSERT INTO part_fit VALUES ($0, $1, $2, $3, $4, $5)", 6, rows.Select(r => new object[] { r.PartId, r.SlotKey, r.JointId, r.Key, r.LimitMin, r.LimitMax }));

    public override void Put(FrameNeedRow[] rows) =>
        Put("INSERT INTO frame_need VALUES ($0, $1, $2, $3, $4, $5, $6)", 7, rows.Select(r => new object[] { r.FrameId, r.SlotKey, r.JointId, r.Key, r.LimitMin, r.LimitMax, r.Bridge }));

    private void Put(string sql, int columns, IEnumerable<object[]> rows)
    {
        SqliteConnection connection = (SqliteConnection)Connection;
        using SqliteTransaction transaction = connection.BeginTransaction();
        using SqliteCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = sql;
        SqliteParameter[] values = [.. Enumerable.Range(0, columns).Select(i => command.Parameters.AddWithValue($"${i}", null))];
        foreach (object[] row in rows)
        {
            for (int i = 0; i < columns; i++)
            {
                values[i].Value = row[i];
            }

            command.ExecuteNonQuery();
        }

        transaction.Commit();
    }
}
