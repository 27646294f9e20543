using Lugwork.Brakes;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>Inputs of the checks of used parts.</summary>
internal static partial class JointInputs
{
    private const string MaterialMeasure = "A magnet sticks to steel; woven or plain black without a seam is carbon. Ask the part's maker.";

    public static JointInput ConditionOf(Slot slot) => Input<Part, PartCondition>(slot, "condition", $"condition of the {slot.Name}", p => p.Condition, InspectionTable.Of(slot)!.What);

    public static readonly JointInput ForkMaterial = Input<Fork, Material>(Slot.Fork, "material", "material of the fork", p => p.Material, MaterialMeasure);
    public static readonly JointInput StemMaterial = Input<Stem, Material>(Slot.Stem, "material", "material of the stem", p => p.Material, MaterialMeasure);
    public static readonly JointInput BarMaterial = Input<Handlebar, Material>(Slot.Handlebar, "material", "material of the handlebar", p => p.Material, MaterialMeasure);
    public static readonly JointInput CrankMaterial = Input<Crankset, Material>(Slot.Crankset, "material", "material of the crank", p => p.Material, MaterialMeasure);

    public static JointInput RimMaterial(Slot slot) => Input<Wheel, Material>(slot, "rimMaterial", "material of the rim", p => p.RimMaterial, MaterialMeasure);

    public static JointInput RimWallOf(Slot slot) => Input<Wheel, Dimension>(slot, "rimWall", "wall of the rim", p => p.RimWall, "Caliper with thin jaws that reach behind the hook, tyre off, at the thinnest place of either brake track, to 0.1 mm.", Lengths);

    public static JointInput TrackOrNone(Slot slot) => WithNone<Wheel, BrakeTrack>(slot, "brakeTrack", "brake track of the rim", p => p.BrakeTrack, ConditionRelations.NotSaid, "none", "Look at the flanks: bright turned metal, bare carbon, or paint and decals, which is no track.");

    public static JointInput MarkOfRotor(Slot slot) => Input<Rotor, Dimension>(slot, "leastThickness", "least thickness marked on the rotor", p => p.LeastThickness, "Read it off the rotor (\"min. TH\"); the maker's sheet where it is worn away.", Lengths);

    /// <summary>The same where a rotor is judged once it was measured and its mark read: below what any rotor is marked with, the mark has not to be read.</summary>
    public static JointInput MarkWhereItMatters(Slot slot) => new MarkWhereNeeded(MarkOfRotor(slot), part => IsBelowAnyMark(((Rotor)part).Thickness.ToCandidates()));

    private static bool IsBelowAnyMark(in Candidates thickness) =>
        thickness.State is KnownState.Value or KnownState.Measured or KnownState.OneOf && thickness.Low > 0 && thickness.High < RotorThickness.LeastListedNanometres;

    /// <summary>A mark that nobody has read is none.</summary>
    public static JointInput MarkIfRead(Slot slot) => Input<Rotor, Dimension>(slot, "leastThickness", "least thickness marked on the rotor", p => p.LeastOrUnread, "Read it off the rotor (\"min. TH\"); the maker's sheet where it is worn away.", Lengths);

    public static readonly JointInput ChainOver24 = Input<Chain, Dimension>(Slot.Chain, "over24Pitches", "chain over 24 pitches", p => p.Over24Pitches, "Steel rule from pin to pin over 24 pitches of the chain, pulled straight and loaded, to 0.3 mm; new 304.8 mm.", Lengths);

    /// <summary>The length of a chain beside conditions: not measured is an answer of its own, none.</summary>
    public static readonly JointInput ElongationBeside = new OwnInput<Chain, Dimension>(Slot.Chain, ChainOver24.Field, ChainOver24.Called, p => p.Over24Pitches, ChainOver24.Measure)
    {
        Reads = p => p.Over24Pitches is { State: not KnownState.Unknown } known ? known.ToCandidates() : new Candidates(KnownState.None, 0, 0, null),
        Lists = () => [],
        Family = ChainOver24.Family,
        Tells = known => known.State == KnownState.Unknown ? "not measured" : known.InTradeWords(),
        Stated = part => ((Chain)part).Over24Pitches.State != KnownState.Unknown,
    };

    /// <summary>The condition of a part beside others: not said is an answer of its own.</summary>
    public static JointInput ConditionBeside(Slot slot) => new OwnInput<Part, PartCondition>(slot, "condition", $"condition of the {slot.Name}", p => p.Condition, InspectionTable.Of(slot)!.What)
    {
        Reads = p => p.Condition is { State: not KnownState.Unknown } known ? known.ToCandidates() : new Candidates(KnownState.Value, ConditionRelations.NotSaid, ConditionRelations.NotSaid, null),
        Lists = () => [.. CodesOf<PartCondition>(null), ConditionRelations.NotSaid],
        Shows = code => code == ConditionRelations.NotSaid ? "not said" : PartCondition.OfFitCode(code).FitKey,
        Tells = known => known.State == KnownState.Unknown ? "not said" : known.InTradeWords(),
        Stated = part => part.Condition.State != KnownState.Unknown,
    };
}
