namespace Lugwork.Suspension;

/// <summary>A fork's crowns against what the frame is rated for.</summary>
internal static class ForkRelations
{
    private static readonly Reason Allowed = new("crown-allowed", "{1} on a frame rated for {0}.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason NotRated = new("dual-crown-not-rated", "{1} on a frame rated for {0}: the head tube may break. The frame's maker must allow it.", Cautions.ForkClassCare)
    {
        Mend = "a single-crown fork, or the frame maker's word",
        Sources = [Sources.CommonPractice],
    };

    /// <summary>Inputs: the crowns that the frame is rated for, the fork's.</summary>
    public static Relation CrownOnFrame { get; } = new Matrix(0, 1, Cell, [], [Sources.CommonPractice]);

    private static Outcome Cell(long frame, long fork) =>
        frame == CrownType.Single.FitCode && fork == CrownType.Dual.FitCode ? new(Verdict.Unsafe, NotRated) : new(Verdict.Fits, Allowed);
}
