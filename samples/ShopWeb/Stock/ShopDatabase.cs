using System.Data;
using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace ShopWeb.Stock;

/// <summary>Which engine, by the words of the connection string: PostgreSQL where it names a host, SQLite where it names a file.</summary>
internal static class ShopDatabase
{
    private const long Turn = 4_711_2026;

    /// <exception cref="ArgumentException">It is no connection string, or names neither a host nor a file.</exception>
    public static bool IsPostgres(string connection)
    {
        DbConnectionStringBuilder words = new() { ConnectionString = connection };
        bool IsSaid(params string[] any) => any.Any(words.ContainsKey);
        return IsSaid("Host", "Server") || (IsSaid("Data Source", "DataSource", "Filename") ? false
            : throw new ArgumentException("the connection string of the shop names neither a host (Host=...) nor a file (Data Source=...)", nameof(connection)));
    }

    public static void Use(DbContextOptionsBuilder options, string connection)
    {
        // A list is one parameter, whatever its length: a plan is made once, and no engine's limit of parameters is met.
        if (IsPostgres(connection))
        {
            options.UseNpgsql(connection, o => o.UseParameterizedCollectionMode(ParameterTranslationMode.Parameter));
        }
        else
        {
            options.UseSqlite(connection, o => o.UseParameterizedCollectionMode(ParameterTranslationMode.Parameter));
        }
    }

    /// <summary>Everything that is read until it ends is of one moment, whatever others write meanwhile.</summary>
    public static async Task<DbTransaction> OfOneMoment(this ShopContext shop, CancellationToken cancellation)
    {
        await shop.Database.OpenConnectionAsync(cancellation);
        DbConnection connection = shop.Database.GetDbConnection();
        DbTransaction transaction = connection is SqliteConnection sqlite
            ? sqlite.BeginTransaction(deferred: true)
            : await connection.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancellation);
        await shop.Database.UseTransactionAsync(transaction, cancellation);
        return transaction;
    }

    /// <summary>Makes the tables where there are none; readers of SQLite then go on while one writes.</summary>
    /// <exception cref="InvalidOperationException">The database holds something else.</exception>
    public static async Task Prepare(this ShopContext shop, CancellationToken cancellation)
    {
        try
        {
            await shop.Database.EnsureCreatedAsync(cancellation);
        }
        catch (DbException) when (shop.Database.IsSqlite())
        {
            // Another process may have made them in between; if not, it is told below.
        }

        if (!await shop.HasStock(cancellation))
        {
            throw new InvalidOperationException("the database has tables, and none of them is the shop's: give the shop a database of its own, or an empty one");
        }

        if (shop.Database.IsSqlite())
        {
            await shop.Database.ExecuteSqlRawAsync("PRAGMA journal_mode=WAL", cancellation);
        }
    }

    /// <summary>Waits until no other process prepares or fills the same PostgreSQL database; the turn ends with the connection. SQLite's own lock does the same for its file.</summary>
    public static async Task TakeTurn(this ShopContext shop, CancellationToken cancellation)
    {
        if (!shop.Database.IsSqlite() && await shop.Database.CanConnectAsync(cancellation))
        {
            await shop.Database.OpenConnectionAsync(cancellation);
            await shop.Database.ExecuteSqlAsync($"SELECT pg_advisory_lock({Turn})", cancellation);
        }
    }

    public static async Task EndTurn(this ShopContext shop)
    {
        if (!shop.Database.IsSqlite() && shop.Database.GetDbConnection().State == ConnectionState.Open)
        {
            await shop.Database.ExecuteSqlAsync($"SELECT pg_advisory_unlock({Turn})");
            await shop.Database.CloseConnectionAsync();
        }
    }

    private static async Task<bool> HasStock(this ShopContext shop, CancellationToken cancellation)
    {
        int found = await (shop.Database.IsSqlite()
            ? shop.Database.SqlQuery<int>($"SELECT COUNT(*) AS \"Value\" FROM sqlite_master WHERE type = 'table' AND name = 'stock_state'")
            : shop.Database.SqlQuery<int>($"SELECT CAST(COUNT(*) AS INT) AS \"Value\" FROM information_schema.tables WHERE table_name = 'stock_state'")).SingleAsync(cancellation);
        return found > 0;
    }
}
