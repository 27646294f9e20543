using Lugwork.Brakes;

namespace Lugwork;

/// <summary>Front beside rear, adapter on adapter, crown under down tube.</summary>
internal static class PairChecks
{
    /// <summary>Code of a hub without any fixing, and of no second adapter, which are answers of their own here.</summary>
    public const long NoFixing = 100;

    private const long Millimetre = Nanometres.PerMillimetre;

    private const long MuchWider = 10 * Millimetre;

    private static readonly Reason OneFixing = new("rotor-fixings-alike", "Rotors are held by {0} in front and behind.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason TwoFixings = new("rotor-fixings-differ", "Rotors are held by {0} in front and {1} behind: nothing against it, save two tools and two kinds of spare.") { IsNote = true, Sources = [Sources.CommonPractice] };

    /// <summary>Inputs: rotor fixing of the front hub, of the rear hub. A note, never a refusal.</summary>
    public static Relation Fixings { get; } = new Computed("a note where the two differ", v => v[0] == 0 || v[1] == 0 ? new(Verdict.NeedsMeasuring, TwoFixings) : new(Verdict.Fits, v[0] == v[1] ? OneFixing : TwoFixings), [], [Sources.CommonPractice]);

    private static readonly Reason TyresAlike = new("tyres-front-and-rear", "A tyre of {0} in front and of {1} behind.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason RearWider = new("rear-tyre-wider", "A tyre of {0} in front and one of {1}, wider by 10 mm or more (our own bound, no source), behind: it grips behind longer than in front, and the bicycle steers the more sharply. Was it meant so?") { IsNote = true, Sources = [Sources.CommonPractice] };

    private static readonly Reason NoWidth = new("tyre-widths-not-stated", "The widths of the tyres are not compared: {0} in front, {1} behind. A tubular has no ISO size.") { Sources = [Sources.CommonPractice] };

    /// <summary>Inputs: width of the front tyre, of the rear tyre. A note, never a refusal.</summary>
    public static Relation Tyres { get; } = new Computed("a note where the rear tyre is 10 mm wider", v => v[0] == 0 || v[1] == 0 ? new(Verdict.NeedsMeasuring, NoWidth) : new(Verdict.Fits, v[1] - v[0] >= MuchWider ? RearWider : TyresAlike), [], [Sources.CommonPractice]);

    private static readonly Reason OneAdapter = new("one-adapter", "There is no second adapter.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason TwoAdapters = new("adapters-stacked", "An adapter of {0} on top of another: adapters are made for the bare mount, and two work loose under braking.", Cautions.BrakeWork)
    {
        Mend = "the one adapter for mount and rotor, or a rotor for which there is one",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason NotLooked = new("adapters-not-looked-at", "Nobody looked whether there is one adapter or two.") { Sources = [Sources.CommonPractice] };

    /// <summary>Input: the adapter on the first one, or the code of none.</summary>
    public static Relation Stacked { get; } = new Computed("one adapter only", v => v[0] == 0 ? new(Verdict.NeedsMeasuring, NotLooked) : v[0] == NoFixing ? new(Verdict.Fits, OneAdapter) : new(Verdict.DoesNotFit, TwoAdapters), [], [Sources.CommonPractice]);

    private static readonly Reason CrownHits = new("crown-meets-down-tube", "The knobs of the crown stand {0} mm above the seat of the race, the down tube hangs {2} mm below the head tube there, and the headset lowers the fork by {1} mm: they meet by [over] mm when the bar turns.", Cautions.GeometryCare)
    {
        Mend = "a bumper, a lower half or spacer with more stack, or another fork",
        Sources = [Sources.DownTubeClearance],
    };

    private static readonly Reason CrownNear = new("crown-near-down-tube", "[sum] mm are left between the knobs of the crown and the down tube: less than 3 mm (our own bound, no source). Turn the bar with the fork compressed and see.", Cautions.GeometryCare) { Sources = [Sources.DownTubeClearance] };

    private static readonly Reason CrownClear = new("crown-clears-down-tube", "[sum] mm are left between the knobs of the crown and the down tube.") { Sources = [Sources.DownTubeClearance] };

    /// <summary>Inputs: how far the knobs stand above the seat of the race, lower stack, how far the down tube hangs below the head tube at their radius.</summary>
    public static SumRelation Crown { get; } = new SumRelation(
            "lower stack less knobs less down tube, at least 3 mm", "mm",
            v => v[1] - v[0] - v[2], [-1, 1, -1],
            new(long.MinValue, new(Verdict.DoesNotFit, CrownHits)), new(0, new(Verdict.NeedsMeasuring, CrownNear)), new(3 * Millimetre, new(Verdict.Fits, CrownClear)));
}
