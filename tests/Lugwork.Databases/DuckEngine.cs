using DuckDB.NET.Data;
using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>DuckDB in memory.</summary>
internal sealed class DuckEngine : Engine
{
    public DuckEngine()
        : base(new DuckDBConnection("DataSource=:memory:")) => Connection.Open();

    public override void Put(PartFitRow[] rows)
    {
        using DuckDBAppender to = ((DuckDBConnection)Connection).CreateAppender("part_fit");
        foreach (PartFitRow r in rows)
        {
            to.CreateRow().AppendValue(r.PartId).AppendValue(r.SlotKey).AppendValue(r.JointId).AppendValue(r.Key).AppendValue(r.LimitMin).AppendValue(r.LimitMax).EndRow();
        }
    }

    public override void Put(FrameNeedRow[] rows)
    {
        using DuckDBAppender to = ((DuckDBConnection)Connection).CreateAppender("frame_need");
        foreach (FrameNeedRow r in rows)
        {
            to.CreateRow().AppendValue(r.FrameId).AppendValue(r.SlotKey).AppendValue(r.JointId).AppendValue(r.Key).AppendValue(r.LimitMin).AppendValue(r.LimitMax).AppendValue(r.Bridge).EndRow();
        }
    }
}
