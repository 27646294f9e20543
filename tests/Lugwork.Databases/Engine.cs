using System.Data.Common;
using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>A database engine with the two relations in it.</summary>
internal abstract class Engine : IDisposable
{
    protected Engine(DbConnection connection) => Connection = connection;

    public static string[] Names { get; } = ["SQLite", "PostgreSQL", "DuckDB"];

    protected DbConnection Connection { get; }

    /// <summary>Opens an engine by its name; the test is skipped where it is not there.</summary>
    public static Engine Open(string name) => name switch
    {
        "SQLite" => new SqliteEngine(),
        "PostgreSQL" => new PostgresEngine(),
        "DuckDB" => new DuckEngine(),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    /// <summary>Makes the tables by the recipe, and fills them.</summary>
    public void Fill(RandomShop shop, string tables = "tables") => Fill(shop.PartRows, shop.NeedRows, tables);

    public void Fill(PartFitRow[] parts, FrameNeedRow[] needs, string tables = "tables")
    {
        Run(Recipes.Of(tables));
        if (tables != "tables")
        {
            Run(Recipes.Of("tables").Split(';').Single(s => s.Contains("TABLE frame_need", StringComparison.Ordinal)));
        }

        Put(parts);
        Put(needs);
        Run(Recipes.Of("indexes"));
    }

    public abstract void Put(PartFitRow[] rows);

    public abstract void Put(FrameNeedRow[] rows);

    public void Run(string sql)
    {
        foreach (string one in sql.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            using DbCommand command = Connection.CreateCommand();
            command.CommandText = one;
            command.ExecuteNonQuery();
        }
    }

    public List<T> Read<T>(string sql, Func<DbDataReader, T> row)
    {
        using DbCommand command = Connection.CreateCommand();
        command.CommandText = sql;
        using DbDataReader reader = command.ExecuteReader();
        List<T> rows = [];
        while (reader.Read())
        {
            rows.Add(row(reader));
        }

        return rows;
    }

    public List<Candidate> Candidates(string sql) => Read(sql, r => new Candidate(r.GetInt64(0), r.GetString(1), r.GetInt64(2)));

    public void Dispose()
    {
        Close();
        Connection.Dispose();
        GC.SuppressFinalize(this);
    }

    protected virtual void Close()
    {
    }
}
