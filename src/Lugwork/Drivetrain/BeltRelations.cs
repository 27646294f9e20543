namespace Lugwork.Drivetrain;

/// <summary>A belt in a frame. What a belt runs on stands with the chains.</summary>
internal static class BeltRelations
{
    private static readonly Reason ChainOpens = new("chain-opens", "{1}: a chain is closed where it lies, so any rear triangle takes it.") { Sources = [Sources.BeltConversion] };

    private static readonly Reason FrameOpens = new("frame-opens", "{1} goes in where the rear triangle opens.", Cautions.BeltCare) { Sources = [Sources.SplitFrames, Sources.BeltConversion] };

    private static readonly Reason FrameClosed = new("frame-closed", "{1} is one closed loop, and this rear triangle does not open for it.")
    {
        Mend = "a chain; else leave it to a frame builder: a joint in the right stay or drop-out, where the frame's material and maker allow it",
        Sources = [Sources.BeltConversion, Sources.SplitFrames],
    };

    private static readonly Reason NoTriangle = new("no-rear-triangle", "{1} in a frame without a rear triangle: ask the frame maker how the belt goes in.", Cautions.BeltCare) { Sources = [Sources.Memory] };

    /// <summary>Inputs: rear triangle, chain.</summary>
    public static Relation ThroughRearTriangle { get; } = new Computed("closed loop in rear triangle", Judge, [], [Sources.BeltConversion, Sources.SplitFrames]);

    private static Outcome Judge(ReadOnlySpan<long> values) =>
        values[1] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
        : values[1] != ChainSize.Belt.FitCode ? new(Verdict.Fits, ChainOpens)
        : values[0] == RearTriangle.Opens.FitCode ? new(Verdict.Fits, FrameOpens)
        : values[0] == RearTriangle.Closed.FitCode ? new(Verdict.DoesNotFit, FrameClosed)
        : new(Verdict.NeedsMeasuring, NoTriangle);
}
