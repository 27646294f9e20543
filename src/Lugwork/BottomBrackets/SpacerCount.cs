using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>Spacers under the cup of each side, where a page counts them for a crank across a shell. The verdict stands in <see cref="SpindleAcrossShell"/>; this only counts.</summary>
/// <param name="DriveNanometres">Under the drive-side cup.</param>
/// <param name="OtherNanometres">Under the other cup.</param>
/// <param name="DriveBesidePlateNanometres">Under the drive-side cup, where the plate of a front derailleur or guide sits there too.</param>
/// <param name="Sources">The pages that count.</param>
internal sealed record SpacerCount(long DriveNanometres, long OtherNanometres, long DriveBesidePlateNanometres, ImmutableArray<Source> Sources)
{
    private const long One = 2_500_000;

    /// <summary>The count of a pair; null where it does not go, or only the maker's chart counts.</summary>
    public static SpacerCount? Of(Shell shell, Spindle spindle)
    {
        Outcome across = SpindleAcrossShell.Table.Judge([shell.FitCode, spindle.FitCode]);
        return across switch
        {
            { Verdict: Verdict.NeedsPart, Bridge: { Kind: BridgeKind.Spacers } three } => new(2 * One, One, One, three.Sources),
            { Verdict: Verdict.Fits, Reason: { Id: SpindleAcrossShell.OneSpacer } one } => new(One, 0, 0, one.Sources),
            { Verdict: Verdict.Fits, Reason: { } none } when none.Id != SpindleAcrossShell.Spaced => new(0, 0, 0, none.Sources),
            _ => null,
        };
    }

    /// <summary>It goes, with spacers that only the maker's chart counts.</summary>
    public static bool IsByChart(Shell shell, Spindle spindle) =>
        SpindleAcrossShell.Table.Judge([shell.FitCode, spindle.FitCode]) is { Verdict: Verdict.Fits, Reason.Id: SpindleAcrossShell.Spaced } or { Verdict: Verdict.NeedsPart, Reason.Id: SpindleAcrossShell.PartSpaced };
}
