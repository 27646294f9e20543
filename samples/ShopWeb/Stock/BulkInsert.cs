using System.Data.Common;
using System.Text;

namespace ShopWeb.Stock;

/// <summary>Many rows at once through one prepared command, in the SQL that both engines take.</summary>
internal sealed class BulkInsert : IAsyncDisposable
{
    private const int AtOnce = 250;
    private readonly DbConnection _connection;
    private readonly DbTransaction _transaction;
    private readonly string _table;
    private readonly string[] _columns;
    private readonly List<object?[]> _rows = [];
    private DbCommand? _full;

    public BulkInsert(DbConnection connection, DbTransaction transaction, string table, params string[] columns)
    {
        _connection = connection;
        _transaction = transaction;
        _table = table;
        _columns = columns;
    }

    /// <summary>A row, each value in the form of its column.</summary>
    public async ValueTask Add(params object?[] row)
    {
        _rows.Add(row);
        if (_rows.Count == AtOnce)
        {
            _full ??= Command(AtOnce);
            await Write(_full);
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_full is not null)
        {
            await _full.DisposeAsync();
        }
    }

    /// <summary>What is left over.</summary>
    public async Task Finish()
    {
        if (_rows.Count > 0)
        {
            await using DbCommand last = Command(_rows.Count);
            await Write(last);
        }
    }

    // Nothing but names of this file's callers and numbers stands in the text; what comes from elsewhere is a parameter.
    private DbCommand Command(int rows)
    {
        StringBuilder sql = new($"INSERT INTO {_table} ({string.Join(", ", _columns.Select(c => $"\"{c}\""))}) VALUES ");
        DbCommand command = _connection.CreateCommand();
        for (int i = 0; i < rows * _columns.Length; i++)
        {
            sql.Append(i % _columns.Length > 0 ? ", " : i > 0 ? "), (" : "(").Append("@p").Append(i);
            DbParameter parameter = command.CreateParameter();
            parameter.ParameterName = "@p" + i;
            command.Parameters.Add(parameter);
        }

        command.CommandText = sql.Append(')').ToString();
        command.Transaction = _transaction;
        return command;
    }

    private async Task Write(DbCommand command)
    {
        int at = 0;
        foreach (object? value in _rows.SelectMany(r => r))
        {
            command.Parameters[at++].Value = value ?? DBNull.Value;
        }

        await command.ExecuteNonQueryAsync();
        _rows.Clear();
    }
}
