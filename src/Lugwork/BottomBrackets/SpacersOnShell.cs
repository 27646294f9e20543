using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>The spacers under the cups, for this crank across this shell. What the table of cranks and shells says of spacers is asked of it, not written again; what the crank takes to go across is asked for there, and not once more here.</summary>
internal sealed class SpacersOnShell : Relation, ICutsLengths
{
    private const long OneSpacer = 2_500_000;

    private static readonly ImmutableArray<Source> Chart = [Sources.SpacerChart24, Sources.SpacerChart30, Sources.Overview2899];

    private static readonly Reason LeftOut = new("bracket-spacers-left-out", "{1} crank across {0} shell takes spacers under the cups by the maker's chart, and there are none: the arm clamps with side play, or a chainring meets the frame.")
    {
        Mend = "the spacers of the crank maker's chart",
        Sources = Chart,
    };

    private static readonly Reason Count = new("bracket-spacers-to-count", "{1} crank across {0} shell with {2} mm of spacers under the drive-side cup: count them by the crank maker's chart.") { Sources = Chart };

    private static readonly Reason AsCharted = new("bracket-spacers-right", "{1} crank across {0} shell with {2} mm of spacers under the drive-side cup, as the chart says.") { Sources = Chart };

    private static readonly Reason NoneBeside = new("bracket-spacers-none-beside", "{1} crank goes across {0} shell in a part that makes up the width, and there are no spacers beside it.") { Sources = Chart };

    public static SpacersOnShell UnderCups { get; } = new();

    public override string Kind => "spacers as the table of cranks and shells says";

    public override ImmutableArray<Source> RestsOn => SpindleAcrossShell.Table.RestsOn;

    ImmutableArray<long> ICutsLengths.Cuts => [OneSpacer];

    ImmutableArray<long> ICutsLengths.Gaps => [];

    /// <summary>Inputs: shell, spindle, spacers under the drive-side cup in nanometres (none without).</summary>
    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        Outcome across = SpindleAcrossShell.Table.Judge(values[..2]);
        long spacers = values[2];
        return across is { Verdict: Verdict.NeedsPart, Bridge.Kind: BridgeKind.Spacers } ? Spaced(spacers)
            : across.Verdict == Verdict.NeedsPart ? spacers == 0 && across.Reason!.Id != SpindleAcrossShell.PartSpaced ? new(Verdict.Fits, NoneBeside) : new(Verdict.NeedsMeasuring, Count)
            : across.Verdict != Verdict.Fits ? across : across.Reason!.Id switch
        {
            SpindleAcrossShell.Spaced => Spaced(spacers),
            SpindleAcrossShell.OneSpacer => spacers == 0 ? new(Verdict.DoesNotFit, LeftOut) : spacers == OneSpacer ? new(Verdict.Fits, AsCharted) : new(Verdict.NeedsMeasuring, Count),
            _ => spacers == 0 ? new(Verdict.Fits, AsCharted) : new(Verdict.NeedsMeasuring, Count),
        };
    }

    private static Outcome Spaced(long spacers) => spacers == 0 ? new(Verdict.DoesNotFit, LeftOut) : new(Verdict.NeedsMeasuring, Count);
}
