using Lugwork.EntityFrameworkCore;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Lugwork.Databases;

/// <summary>An empty shop in a database of its own, gone when it is disposed.</summary>
internal sealed class ModelStore : IDisposable
{
    private readonly SqliteConnection? _sqlite;
    private readonly string? _postgres;
    private readonly StoredAs _stored;

    public ModelStore(string engine, StoredAs stored)
    {
        _stored = stored;
        if (engine == "SQLite")
        {
            _sqlite = new("Data Source=:memory:");
            _sqlite.Open();
        }
        else
        {
            _postgres = new NpgsqlConnectionStringBuilder(PostgresEngine.ConnectionString) { Database = $"m{Guid.NewGuid():N}", Pooling = false }.ConnectionString;
        }

        using ShopModel shop = Open();
        Assert.True(shop.Database.EnsureCreated());
    }

    public ShopModel Open() => new(o => _ = _sqlite is null ? o.UseNpgsql(_postgres) : o.UseSqlite(_sqlite), _stored);

    public void Dispose()
    {
        if (_sqlite is null)
        {
            using ShopModel shop = Open();
            shop.Database.EnsureDeleted();
        }

        _sqlite?.Dispose();
    }
}
