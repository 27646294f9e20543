namespace Lugwork.Hubs;

/// <summary>Thru-axle in frame or fork end.</summary>
internal static class AxleRelations
{
    private static readonly Reason Same = new("same-thread", "{1} axle in {0} end; its length under the head and its thread length must be the maker's too.")
    {
        Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker],
    };

    private static readonly Reason OwnThread = new("own-thread", "{1} in {0}: a maker's own thread is no standard. Compare the axle with the one the maker sells for this frame or fork.", Cautions.AxleThread)
    {
        Sources = [Sources.Memory],
    };

    private static readonly Reason OtherPitch = new("other-pitch", "{1} axle in {0} end: one diameter, two pitches. It starts, then ruins the thread.", Cautions.AxleThread)
    {
        Mend = "an axle with the end's own pitch",
        Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker],
    };

    private static readonly Reason OtherDiameter = new("other-diameter", "{1} axle does not go in {0} end.", Cautions.AxleThread)
    {
        Mend = "an axle with the end's own diameter and pitch",
        Sources = [Sources.ThruAxleHelp],
    };

    /// <summary>Inputs: thread of the end, thread of the axle.</summary>
    public static Relation Thread { get; } = new Matrix(0, 1, Cell, [], [Sources.ThruAxleHelp, Sources.ThruAxleMaker]);

    private static Outcome Cell(long end, long axle)
    {
        AxleThread hole = AxleThread.OfFitCode(end);
        AxleThread bolt = AxleThread.OfFitCode(axle);
        return hole == AxleThread.Own || bolt == AxleThread.Own ? new(Verdict.NeedsMeasuring, OwnThread)
            : hole == bolt ? new(Verdict.Fits, Same)
            : hole.Diameter == bolt.Diameter ? new(Verdict.Unsafe, OtherPitch) : new(Verdict.DoesNotFit, OtherDiameter);
    }
}
