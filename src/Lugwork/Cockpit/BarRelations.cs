using System.Collections.Immutable;

namespace Lugwork.Cockpit;

/// <summary>Handlebar in stem; a clamp never grows.</summary>
internal static class BarRelations
{
    private static readonly Reason Same = new("same-clamp", "{1} bar in {0} clamp.") { Sources = [Sources.BarAndStemTable, Sources.GripFit] };

    private static readonly Reason TooLarge = new("bar-too-large", "{1} bar does not go in {0} clamp; a clamp is never opened to suit.", Cautions.BarClampCare)
    {
        Mend = "a stem for this bar, or a bar of the stem's own size",
        Sources = [Sources.GripFit, Sources.BarAndStemTable],
    };

    private static readonly Reason TooSmall = new("bar-too-small", "{1} bar is loose in {0} clamp, and no shim for this pair is known here.", Cautions.BarClampCare)
    {
        Mend = "a stem for this bar, or a bar of the stem's own size",
        Sources = [Sources.GripFit, Sources.BarAndStemTable],
    };

    private static readonly Reason Forced = new("bar-forced-in", "{1} bar can be forced into a {0} clamp, 0.6 mm too small for it: bar or clamp cracks afterwards.", Cautions.BarClampCare)
    {
        Mend = "a stem for this bar, or a bar of the stem's own size; a clamp is never opened to suit",
        Sources = [Sources.GripFit, Sources.BarMismatch],
    };

    private static readonly Reason PulledTight = new("bar-pulled-tight", "{1} bar can be pulled tight in a {0} clamp, 0.6 mm too large for it: it turns under load, and the clamp is bent.", Cautions.BarClampCare)
    {
        Mend = "a stem for this bar, or a bar of the stem's own size",
        Sources = [Sources.GripFit, Sources.BarMismatch],
    };

    /// <summary>Inputs: stem's clamp, bar. 25.4 and 26.0 are so near that either goes into the other's clamp, and then fails.</summary>
    public static Relation InStem { get; } = new AllOf(
        new SameKey(0, 1, Same, (stem, bar) => BarClamp.OfFitCode(bar).Hundredths > BarClamp.OfFitCode(stem).Hundredths ? TooLarge : TooSmall, () => BarShims.Table),
        new Matrix(0, 1, NearlyAlike, [], [Sources.GripFit, Sources.BarMismatch]));

    private static Outcome NearlyAlike(long stem, long bar) =>
        stem == BarClamp.Mm25Point4.FitCode && bar == BarClamp.Mm26.FitCode ? new(Verdict.Unsafe, Forced)
        : stem == BarClamp.Mm26.FitCode && bar == BarClamp.Mm25Point4.FitCode ? new(Verdict.Unsafe, PulledTight)
        : new(Verdict.Fits, Same);
}
