using System.Collections.Immutable;
using Lugwork.BottomBrackets;

namespace Lugwork;

/// <summary>
/// A crank that is stated to be made for the width of a threaded shell, across another one. Widths speak against each other only where both have their bearings in the
/// same place, outside a BSA shell; whether the spindle reaches, and with which spacers, is for the rows of crank and shell.
/// </summary>
internal sealed class CrankForShell : Relation, ICutsLengths
{
    /// <summary>Spacers of a chart make up 5 mm of shell; twice that they do not. Our own bound, no source.</summary>
    private const long Far = 10 * Nanometres.PerMillimetre;

    private const string OwnBound = "10 mm or more (our own bound, no source)";

    private static readonly Reason ForShell = new("crank-for-this-shell", "A crank made for a shell {1} mm wide across {0}.") { Sources = [Sources.SuperBoostPress] };

    private static readonly Reason NotCompared = new("crank-shell-not-compared", "A crank made for a shell {1} mm wide across {0}: the bearings of the two are not both outside a BSA shell, and the widths alone say nothing. The row of crank and shell judges the spindle.") { Sources = [Sources.CranksAndBrackets] };

    private static readonly Reason NearShell = new("crank-for-near-shell", "A crank made for a shell {1} mm wide across {0}: spindle and spacers decide, which have rows of their own.") { Sources = [Sources.CranksAndBrackets, Sources.SpacerChart24] };

    private static readonly Reason ShellFarWider = new("crank-for-narrower-shell", $"A crank made for a shell {{1}} mm wide across {{0}}, which is wider by {OwnBound}: only a bottom bracket that carries its own spindle makes up for it. Ask the crank maker's chart.", Cautions.ShiftSetUp) { Sources = [Sources.CranksAndBrackets] };

    private static readonly Reason ShellFarNarrower = new("crank-for-far-wider-shell", $"A crank made for a shell {{1}} mm wide across {{0}}, which is narrower by {OwnBound}: it stands too far out on both sides, its rings miss the chainline of the frame, and the stays.", Cautions.ShiftSetUp)
    {
        Mend = "a crank made for this shell, with the frame's chainline",
        Sources = [Sources.SuperBoostPress],
    };

    public override string Kind => "the threaded shell that the crank is made for";

    public override ImmutableArray<Source> RestsOn => [Sources.SuperBoostPress, Sources.CranksAndBrackets, Sources.SpacerChart24];

    /// <summary>The widths of the shells that are compared.</summary>
    public ImmutableArray<long> Cuts { get; } = Widths();

    public ImmutableArray<long> Gaps => [];

    /// <summary>Inputs: shell, width that the crank is made for (nanometres).</summary>
    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        Shell shell = Shell.OfFitCode(values[0]);
        long over = values[1] - shell.WidthNanometres;
        return shell.Family != ShellFamily.Bsa || !Cuts.AsSpan().Contains(values[1]) ? new(Verdict.Fits, NotCompared)
            : over == 0 ? new(Verdict.Fits, ForShell)
            : over >= Far ? new(Verdict.DoesNotFit, ShellFarNarrower)
            : over <= -Far ? new(Verdict.NeedsMeasuring, ShellFarWider)
            : new(Verdict.Fits, NearShell);
    }

    private static ImmutableArray<long> Widths()
    {
        SortedSet<long> widths = [];
        foreach (Shell shell in Shell.All)
        {
            if (shell.Family == ShellFamily.Bsa)
            {
                widths.Add(shell.WidthNanometres);
            }
        }

        return [.. widths];
    }
}
