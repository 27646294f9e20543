namespace Lugwork.Tyres;

/// <summary>Tyre held by its beads or stuck on: tyre and rim are of one kind.</summary>
internal static class TubularRelations
{
    private static readonly Reason Beads = new("both-clincher", "Tyre and rim both hold by the beads.") { Sources = [Sources.Iso5775Part1Sample, Sources.Iso5775Article] };

    private static readonly Reason Stuck = new("both-tubular", "Tyre and rim are both for tubulars: the tyre is stuck on.", Cautions.Tubular) { Sources = [Sources.Iso5775Part1Sample, Sources.CommonPractice] };

    private static readonly Reason TubularOnClincher = new("tubular-on-clincher", "A tubular has no beads and no ISO size, and a clincher rim has no bed to stick it on: {1} on {0}.", Cautions.Tubular)
    {
        Mend = "a tyre with beads in the rim's ISO size, or a wheel with a rim for tubulars",
        Sources = [Sources.Iso5775Part1Sample],
    };

    private static readonly Reason ClincherOnTubular = new("clincher-on-tubular", "A rim for tubulars has no flanges to hold beads: {1} on {0}.", Cautions.Tubular)
    {
        Mend = "a tubular, or a wheel with a clincher rim of the tyre's ISO size",
        Sources = [Sources.Iso5775Part1Sample, Sources.CommonPractice],
    };

    /// <summary>Inputs: rim, tyre.</summary>
    public static Relation OnRim { get; } = new Matrix(0, 1, Cell, [], [Sources.Iso5775Part1Sample]);

    private static Outcome Cell(long rim, long tyre) =>
        rim == tyre ? new(Verdict.Fits, rim == TyreHold.Clincher.FitCode ? Beads : Stuck)
        : new(Verdict.DoesNotFit, tyre == TyreHold.Tubular.FitCode ? TubularOnClincher : ClincherOnTubular);
}
