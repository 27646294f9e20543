using Lugwork.Catalogues;
using Npgsql;

namespace Lugwork.Databases;

/// <summary>A PostgreSQL server, named by a connection string in the environment. Every engine works in a schema of its own.</summary>
internal sealed class PostgresEngine : Engine
{
    private const string Variable = "LUGWORK_POSTGRES";

    private readonly string _schema = $"t{Guid.NewGuid():N}";

    public PostgresEngine()
        : base(new NpgsqlConnection(ConnectionString))
    {
        Connection.Open();
        Run($"CREATE SCHEMA {_schema}; SET search_path TO {_schema}");
    }

    /// <summary>Skips the test where there is none.</summary>
    public static string ConnectionString
    {
        get
        {
            string? text = Environment.GetEnvironmentVariable(Variable);
            Assert.SkipWhen(string.IsNullOrEmpty(text), $"no PostgreSQL: {Variable} holds no connection string");
            return text!;
        }
    }

    public override void Put(PartFitRow[] rows)
    {
        using NpgsqlBinaryImporter to = ((NpgsqlConnection)Connection).BeginBinaryImport("COPY part_fit FROM STDIN (FORMAT BINARY)");
        foreach (PartFitRow r in rows)
        {
            to.WriteRow(r.PartId, r.SlotKey, r.JointId, r.Key, r.LimitMin, r.LimitMax);
        }

        to.Complete();
    }

    public override void Put(FrameNeedRow[] rows)
    {
        using NpgsqlBinaryImporter to = ((NpgsqlConnection)Connection).BeginBinaryImport("COPY frame_need FROM STDIN (FORMAT BINARY)");
        foreach (FrameNeedRow r in rows)
        {
            to.WriteRow(r.FrameId, r.SlotKey, r.JointId, r.Key, r.LimitMin, r.LimitMax, r.Bridge);
        }

        to.Complete();
    }

    protected override void Close() => Run($"DROP SCHEMA {_schema} CASCADE");
}
