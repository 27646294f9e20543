namespace Lugwork.Hubs;

/// <summary>Thru-axle in frame or fork end.</summary>
internal static class AxleRelations
{
    private static readonly Reason Same = new("same-thread", "{1} axle in {0} end; its length under the head and its thread length must be the maker's too.")
    {
        Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker],
    };

    /// <summary>Inputs: thread of the end, thread of the axle.</summary>
    public static Relation Thread { get; } = new Matrix(0, 1, Cell, [], [Sources.ThruAxleHelp, Sources.ThruAxleMaker]);

    private static readonly Reason SameDiameter = new("axle-of-the-end", "{1} axle in {0} end: one diameter.") { Sources = [Sources.ThruAxleHelp, Sources.AxleGuide] };

    /// <summary>Inputs: end, thread of the axle.</summary>
    public static Relation Diameter { get; } = new Matrix(0, 1, Through, [], [Sources.ThruAxleHelp, Sources.AxleGuide]);

    private static Outcome Through(long end, long axle)
    {
        HubStandard standard = HubStandard.OfFitCode(end);
        AxleThread thread = AxleThread.OfFitCode(axle);
        if (standard.Axles.IsEmpty || (thread == AxleThread.Own && standard.TakesThruAxle))
        {
            return new(Verdict.NeedsMeasuring, Misfits.AskEnd);
        }

        foreach (int diameter in standard.Axles)
        {
            if (thread.Diameter > 0 && diameter == thread.Diameter * 1_000)
            {
                return new(Verdict.Fits, SameDiameter);
            }
        }

        return new(Verdict.DoesNotFit, Misfits.NotThisEnd);
    }

    private static Outcome Cell(long end, long axle)
    {
        AxleThread hole = AxleThread.OfFitCode(end);
        AxleThread bolt = AxleThread.OfFitCode(axle);
        return hole == AxleThread.Own || bolt == AxleThread.Own ? new(Verdict.NeedsMeasuring, Misfits.OwnThread)
            : hole == bolt ? new(Verdict.Fits, Same)
            : hole.Diameter == bolt.Diameter ? new(Verdict.Unsafe, Misfits.OtherPitch) : new(Verdict.DoesNotFit, Misfits.OtherDiameter);
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason OwnThread = new("own-thread", "{1} in {0}: a maker's own thread is no standard. Compare the axle with the one the maker sells for this frame or fork.", Cautions.AxleThread)
        {
            Sources = [Sources.Memory],
        };

        public static readonly Reason OtherPitch = new("other-pitch", "{1} axle in {0} end: one diameter, two pitches. It starts, then ruins the thread.", Cautions.AxleThread)
        {
            Mend = "an axle with the end's own pitch",
            Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker],
        };

        public static readonly Reason OtherDiameter = new("other-diameter", "{1} axle does not go in {0} end.", Cautions.AxleThread)
        {
            Mend = "an axle with the end's own diameter and pitch",
            Sources = [Sources.ThruAxleHelp],
        };

        public static readonly Reason NotThisEnd = new("axle-not-of-the-end", "{1} axle does not go in {0} end.", Cautions.AxleThread)
        {
            Mend = "an axle of the end's own diameter, or the skewer or nuts of an open end",
            Sources = [Sources.ThruAxleHelp, Sources.AxleGuide],
        };

        public static readonly Reason AskEnd = new("own-end", "{1} axle in {0} end: one of them is a maker's own. Compare the axle with the one the maker sells for this frame or fork.", Cautions.AxleThread)
        {
            Sources = [Sources.Memory],
        };
    }
}
