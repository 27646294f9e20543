using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>
/// The spacers under the cups, for this crank across this shell. What the table of cranks and shells says of spacers is asked of it, not written again; where somebody said what stands there, this row
/// speaks of the pair and of what it takes to go across, and the table by itself no more. The plate of a chain guide or of an E-type front derailleur under the drive-side cup stands in the place of one spacer.
/// </summary>
internal sealed class SpacersOnShell : Relation, ICutsLengths
{
    /// <summary>Thickness of one spacer, and of a plate in its place.</summary>
    private const long One = 2_500_000;

    private const long ByTheChart = -1;

    private static readonly ImmutableArray<Source> Chart = [Sources.SpacerChart24, Sources.SpacerChart30, Sources.Overview2899];

    private static readonly ImmutableArray<Source> OffRoad = [Sources.SpacerPost, Sources.SpacerUpgrades, Sources.CupSpacers];

    private static readonly ImmutableArray<Source> Plates = [Sources.GuideOnBracket, Sources.CupSpacers, Sources.SpacerPost];

    private static readonly Reason LeftOut = new("bracket-spacers-left-out", "{1} crank across {0} shell takes [bridge]; without, the arm clamps with side play, or a chainring meets the frame.");

    private static readonly Reason Count = new("bracket-spacers-to-count", "{1} crank across {0} shell with {2} mm of spacers under the drive-side cup: count them by the crank maker's chart.") { Sources = Chart };

    private static readonly Reason AsCharted = new("bracket-spacers-right", "{1} crank across {0} shell with {2} mm of spacers under the drive-side cup, as the chart says.") { Sources = Chart };

    private static readonly Reason TwoAndOne = new("bracket-spacers-two-and-one", "{1} crank across {0} shell with {2} mm of spacers under the drive-side cup, as the chart says; it takes one of 2.5 mm on the other side too.") { Sources = OffRoad };

    private static readonly Reason PlateFills = new("bracket-plate-in-place", "{1} crank across {0} shell with {2} mm of spacers under the drive-side cup and the {3} in the place of one: as the chart says. On a 68 mm shell one spacer of 2.5 mm stands on the other side too.") { Sources = Plates };

    private static readonly Reason PlateTakes = new("bracket-plate-takes-spacer", "{1} crank across {0} shell with {2} mm of spacers under the drive-side cup and the {3}: one of 2.5 mm comes out for the plate, or cup and rings stand too far out. State what is left.", Cautions.GuidePlate) { Sources = Plates, Asks = [2] };

    private static readonly Reason NoPlace = new("bracket-plate-without-place", "{1} crank across {0} shell takes no spacer under the drive-side cup, and the {3} wants the place of one: the chainline moves outward and the cup loses thread. Ask the crank's maker.", Cautions.GuidePlate)
    {
        Mend = "a guide for tabs, or a front derailleur for the seat tube, where the frame takes them",
        Sources = Plates,
    };

    private static readonly Reason CountBesidePlate = new("bracket-spacers-beside-plate", "{1} crank across {0} shell with {2} mm of spacers under the drive-side cup and the {3}, which stands for one of 2.5 mm: count them by the crank maker's chart.") { Sources = Plates };

    private static readonly Bridge OneMore = Lacking("bracket-spacer-drive-side", "one 2.5 mm bottom-bracket spacer under the drive-side cup", OffRoad);

    private static readonly Bridge OneMoreAndOther = Lacking("bracket-spacer-each-side", "two 2.5 mm bottom-bracket spacers, one on each side", OffRoad);

    private static readonly Bridge Three = Lacking("bracket-spacers-three", "three 2.5 mm bottom-bracket spacers, two on the drive side and one on the other", OffRoad);

    private static readonly Bridge Charted = Lacking("bracket-spacers-of-chart", "the bottom-bracket spacers of the crank maker's chart", Chart);

    private readonly long _plate;

    private SpacersOnShell(long plate) => _plate = plate;

    /// <summary>Without a plate. Inputs: shell, spindle, spacers under the drive-side cup in nanometres (none without).</summary>
    public static SpacersOnShell UnderCups { get; } = new(0);

    /// <summary>With what may have a plate under the cup. Inputs: as without, and the mount of it; <paramref name="mount"/> is the one with a plate.</summary>
    public static SpacersOnShell WithPlate(long mount) => new(mount);

    public override string Kind => _plate == 0 ? "spacers as the table of cranks and shells says" : "spacers as the table of cranks and shells says, a plate in the place of one";

    public override ImmutableArray<Bridge> Bridges => [OneMore, OneMoreAndOther, Three, Charted, .. SpindleAcrossShell.Table.Bridges];

    public override ImmutableArray<Source> RestsOn => SpindleAcrossShell.Table.RestsOn;

    ImmutableArray<long> ICutsLengths.Cuts => [One, 2 * One];

    ImmutableArray<long> ICutsLengths.Gaps => [];

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        Outcome across = SpindleAcrossShell.Table.Judge(values[..2]);
        long spacers = values[2];
        bool plate = _plate != 0 && values[3] == _plate;
        if (_plate != 0 && values[3] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        if (across is { Verdict: Verdict.NeedsPart, Bridge.Kind: not BridgeKind.Spacers })
        {
            return plate ? new(Verdict.NeedsMeasuring, CountBesidePlate, across.Bridge)
                : spacers == 0 && across.Reason!.Id != SpindleAcrossShell.PartSpaced ? across : new(Verdict.NeedsMeasuring, Count, across.Bridge);
        }

        return across.Verdict is not (Verdict.Fits or Verdict.NeedsPart) ? across : plate ? BesidePlate(Asked(across), spacers) : Alone(Asked(across), spacers);
    }

    /// <summary>What stands under the drive-side cup by the table of cranks and shells: where it asks for three spacers, two of them.</summary>
    private static long Asked(Outcome across) => across.Verdict == Verdict.NeedsPart ? 2 * One : across.Reason!.Id switch
    {
        SpindleAcrossShell.Spaced => ByTheChart,
        SpindleAcrossShell.OneSpacer => One,
        _ => 0,
    };

    private static Outcome Alone(long asked, long spacers) =>
        asked == ByTheChart ? spacers == 0 ? Lacks(Charted) : new(Verdict.NeedsMeasuring, Count)
        : spacers == asked ? new(Verdict.Fits, asked > One ? TwoAndOne : AsCharted)
        : spacers == 0 ? Lacks(asked > One ? Three : OneMore)
        : spacers == One && asked > One ? Lacks(OneMore)
        : new(Verdict.NeedsMeasuring, Count);

    private static Outcome BesidePlate(long asked, long spacers) =>
        asked == 0 && spacers == 0 ? new(Verdict.NeedsMeasuring, NoPlace)
        : asked > 0 && spacers + One == asked ? new(Verdict.Fits, PlateFills)
        : asked > 0 && spacers == asked ? new(Verdict.NeedsMeasuring, PlateTakes)
        : asked > One && spacers == 0 ? Lacks(OneMoreAndOther)
        : new(Verdict.NeedsMeasuring, CountBesidePlate);

    private static Outcome Lacks(Bridge spacers) => new(Verdict.NeedsPart, LeftOut, spacers);

    private static Bridge Lacking(string id, string what, ImmutableArray<Source> sources) => new()
    {
        Id = id,
        Kind = BridgeKind.Spacers,
        Result = Verdict.NeedsPart,
        What = what,
        Sources = sources,
    };
}
