using System.Collections.Immutable;
using System.Text;

namespace Lugwork.Planning;

/// <summary>One part of the donor against the new build.</summary>
public sealed class CarriedPart
{
    internal CarriedPart(Part part, Slot from, CarryDecision plan, CarryJudgement judged, ImmutableArray<CarryPlace> places)
    {
        (Part, From, Plan, Places) = (part, from, plan, places);
        (Slot, Verdict, Findings) = (judged.Slot, judged.Verdict, judged.Findings);
        Measurements = Verdict != Verdict.NeedsMeasuring ? [] : [.. Findings.Where(f => f.Verdict == Verdict.NeedsMeasuring).SelectMany(f => f.Measurements).Concat(judged.Asked).DistinctBy(m => (m.Slot, m.Field))];
    }

    /// <summary>The part.</summary>
    public Part Part { get; }

    /// <summary>Where it is on the donor.</summary>
    public Slot From { get; }

    /// <summary>Where it goes, or would go, on the new build.</summary>
    public Slot Slot { get; }

    /// <summary>What becomes of it.</summary>
    public CarryDecision Plan { get; }

    /// <summary>
    /// Worst of its joints with the new frame, with the parts that the new build has, and with the parts that move before it, in the order of a build sheet. <see cref="Verdict.NotJudged"/>
    /// where it meets nothing that is there: that is no fit. A part that is worn out, damaged or recalled by its stated condition is refused by it.
    /// </summary>
    public Verdict Verdict { get; }

    /// <summary>The same with the new frame and the parts that the new build has alone, at <see cref="Slot"/>. Knowing more never turns it from refused into a fit.</summary>
    public Verdict WithFrame => Places.First(p => p.Slot == Slot).Verdict;

    /// <summary>Each place that it can go to, its own first, with the new frame and the parts that the new build has.</summary>
    public ImmutableArray<CarryPlace> Places { get; }

    /// <summary>The joints behind the verdict, in the order of the joint table, those that do not fit too.</summary>
    public ImmutableArray<Fit> Findings { get; }

    /// <summary>The worst of those joints, the first of equals; a default where nothing was judged.</summary>
    public Fit Why => Findings.IsEmpty ? default : Findings.MaxBy(f => f.Verdict);

    /// <summary>What has to be bought or done so that it goes, each with its class of price; what other joints leave open comes on top. Empty where none is asked for or the part is refused.</summary>
    public ImmutableArray<CarriedBridge> Bridges =>
        Verdict > Verdict.NeedsMeasuring ? [] : [.. Findings.Where(f => f.Verdict == Verdict.NeedsPart).SelectMany(f => f.Remedies.Select(r => new CarriedBridge(f.Joint!, r, CostClassTable.Of(r, f))))];

    /// <summary>What it may take once it was measured; empty unless it needs measuring.</summary>
    public ImmutableArray<CarriedBridge> BridgesIfMeasured =>
        Verdict != Verdict.NeedsMeasuring ? [] : [.. Findings.Where(f => f.Verdict == Verdict.NeedsMeasuring).SelectMany(f => f.Remedies.Where(r => r.Kind == RemedyKind.IfMeasured && r.Bridge is not null).Select(r => new CarriedBridge(f.Joint!, r, CostClassTable.Of(r, f))))];

    /// <summary>The dearest class among its bridges; not said where there are none or one of them has no class.</summary>
    public CostClass BridgeClass => Bridges is { IsEmpty: false } bridges && bridges.All(b => b.Class != CostClass.NotSaid) ? bridges.Max(b => b.Class) : CostClass.NotSaid;

    /// <summary>What to measure or ask, each field once: where, with what tool and how exactly; empty unless it needs measuring.</summary>
    public ImmutableArray<Measurement> Measurements { get; }

    /// <summary>Warnings of the joints that are no plain fit, the worst joint's first, each once.</summary>
    public ImmutableArray<Caution> Cautions => [.. Findings.Where(f => f.Verdict != Verdict.Fits).OrderByDescending(f => f.Verdict).SelectMany(f => f.Cautions).Distinct()];

    /// <summary>What to look at before it is ridden again: where its condition is stated as used, unknown or from a crash, and where nothing is stated of a part that throws the rider when it fails. Else null.</summary>
    public InspectionPoint? Inspection =>
        InspectionTable.Of(From) is not { } row ? null
        : InspectionTable.IsOpen(Part.Condition) || (Part.Condition.State == KnownState.Unknown && IsOfSafety) ? new(From, row.What, row.Sources)
        : null;

    /// <summary>Parts of the donor that move too and share a joint with it, by their slots on the new build.</summary>
    public ImmutableArray<Slot> Together { get; internal init; } = [];

    /// <summary>Required slots that are still empty and share a joint with it: what goes there has to fit it.</summary>
    public ImmutableArray<Slot> Follows { get; internal init; } = [];

    /// <summary>It moves, and fits as it is or with a shim or adapter; a part that throws the rider when it fails only where its condition leaves nothing to be looked at first.</summary>
    public bool IsWorthMoving => Plan == CarryDecision.Moves && Verdict is Verdict.Fits or Verdict.NeedsPart && !(Inspection is not null && IsOfSafety);

    /// <summary>It goes only with an adapter that costs as much as a main part, or with shop work: whether that is worth it is for its owner to say.</summary>
    public bool IsDear => Bridges.Any(b => b.Class == CostClass.Dear);

    private bool IsOfSafety => InspectionTable.Of(From) is { Duty: PartDuty.Safety or PartDuty.Cockpit or PartDuty.Crank };

    /// <summary>"seatpost (the old post): fits with seatpost shim 26.8 to 27.2 (cheap)".</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        text.Append(From.Name).Append(Part.Name.Length > 0 ? $" ({Part.Name})" : "").Append(Slot == From ? "" : $" as {Slot.Name}").Append(": ").Append(Said());
        text.Append(Plan switch
        {
            CarryDecision.Spare => $"; a spare, there is a {Slot.Name} already",
            CarryDecision.NotAsked => "; this bicycle asks for none",
            _ => "",
        });
        if (Inspection is not null && Verdict <= Verdict.NeedsMeasuring)
        {
            text.Append(Part.Condition.State == KnownState.Unknown ? "; age and condition not stated, look it over first" : "; look it over first");
        }

        return text.ToString();
    }

    private string Said() => Verdict switch
    {
        Verdict.NotJudged => $"not judged, it meets nothing that is there{(Follows.IsEmpty ? "" : $"; it follows the {string.Join(", ", Follows)}")}",
        Verdict.Fits => "fits",
        Verdict.NeedsPart => $"fits with {string.Join(" and ", Bridges)}",
        Verdict.NeedsMeasuring => $"needs measuring: {string.Join("; ", Measurements.Select(m => $"{m.Slot.Name}, {m.Called}"))}{(BridgesIfMeasured.IsEmpty ? "" : $"; perhaps with {string.Join(" or ", BridgesIfMeasured)}")}",
        Verdict.Unsafe when Cautions is [var first, ..] => $"unsafe: {Why.Sentence} {first}",
        _ => $"{Verdicts.InWords(Verdict)}: {Why.Sentence}",
    };
}
