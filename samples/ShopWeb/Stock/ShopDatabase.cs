using System.Data;
using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace ShopWeb.Stock;

/// <summary>Which engine, by the connection string: "Host=..." is PostgreSQL, anything else SQLite.</summary>
internal static class ShopDatabase
{
    public static bool IsPostgres(string connection) => connection.Contains("Host=", StringComparison.OrdinalIgnoreCase);

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
    public static async Task Prepare(this ShopContext shop, CancellationToken cancellation)
    {
        await shop.Database.EnsureCreatedAsync(cancellation);
        if (shop.Database.IsSqlite())
        {
            await shop.Database.ExecuteSqlRawAsync("PRAGMA journal_mode=WAL", cancellation);
        }
    }
}
