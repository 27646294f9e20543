using System.Collections.Immutable;
using static Lugwork.JointInputs;

namespace Lugwork;

/// <summary>
/// The checks of used parts, a row each, in the words of the joints. A row asks one part only, so it is on the needs sheet where that part is there and
/// something is stated; where nothing is stated a part counts as it is listed, and no report says that nobody looked.
/// </summary>
internal static class ConditionChecks
{
    public static ImmutableArray<Joint> All { get; } =
    [
        .. Conditions(),
        new("chain-elongation", "Wear of the chain", () => WearRelations.Chain, ChainOver24, ChainFor) { Sources = [Sources.ChainWearLimits, Sources.ChainWearShop, Sources.ChainWearRuler], Caution = Cautions.ChainWorn, Seen = [0], MostHaveNone = true, IsOfCondition = true },
        new("front-rotor-wear", "Wear of the front rotor", () => WearRelations.Rotor, ThicknessOf(Slot.FrontRotor), MarkWhereItMatters(Slot.FrontRotor)) { Sources = [Sources.RotorFaq, Sources.WornRotors], Caution = Cautions.BrakeWork, Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true, IsOfCondition = true },
        new("rear-rotor-wear", "Wear of the rear rotor", () => WearRelations.Rotor, ThicknessOf(Slot.RearRotor), MarkWhereItMatters(Slot.RearRotor)) { Sources = [Sources.RotorFaq, Sources.WornRotors], Caution = Cautions.BrakeWork, Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true, IsOfCondition = true },
        new("front-rim-wear", "Wear of the front rim", () => WearRelations.RimWall, RimWallOf(Slot.FrontWheel), TrackOrNone(Slot.FrontWheel)) { Sources = [Sources.RimWall, Sources.RimWallBreaks], Caution = Cautions.UsedPart, Seen = [0], MostHaveNone = true, IsOfCondition = true, GivesWay = [(Slot.FrontRimBrake, IsThere)] },
        new("rear-rim-wear", "Wear of the rear rim", () => WearRelations.RimWall, RimWallOf(Slot.RearWheel), TrackOrNone(Slot.RearWheel)) { Sources = [Sources.RimWall, Sources.RimWallBreaks], Caution = Cautions.UsedPart, Seen = [0], MostHaveNone = true, IsOfCondition = true, GivesWay = [(Slot.RearRimBrake, IsThere)] },
        new("front-rim-wear-under-pads", "Wear of the front rim under its pads", () => WearRelations.RimWallUnderPads, RimWallOf(Slot.FrontWheel), TrackOrNone(Slot.FrontWheel), RimMaterial(Slot.FrontWheel), TypeOf(Slot.FrontRimBrake)) { Sources = [Sources.RimWall, Sources.RimWallBreaks], Caution = Cautions.UsedPart, Seen = [0], MostHaveNone = true, IsOfCondition = true },
        new("rear-rim-wear-under-pads", "Wear of the rear rim under its pads", () => WearRelations.RimWallUnderPads, RimWallOf(Slot.RearWheel), TrackOrNone(Slot.RearWheel), RimMaterial(Slot.RearWheel), TypeOf(Slot.RearRimBrake)) { Sources = [Sources.RimWall, Sources.RimWallBreaks], Caution = Cautions.UsedPart, Seen = [0], MostHaveNone = true, IsOfCondition = true },
        new("drive-worn-as-a-set", "Chain, sprockets and rings as a set", () => WornSetRelation.AsASet, ConditionBeside(Slot.Chain), ConditionBeside(Slot.Cassette), ConditionBeside(Slot.Crankset), ElongationBeside, ChainFor) { Sources = [Sources.ChainWithSprockets, Sources.UsedBicycle], Caution = Cautions.ChainWorn, Seen = [0, 1, 2], MostHaveNone = true },
        new("drive-worn-with-chainring", "Chain, sprockets and chainring as a set", () => WornSetRelation.AsASet, ConditionBeside(Slot.Chain), ConditionBeside(Slot.Cassette), ConditionBeside(Slot.Chainring), ElongationBeside, ChainFor) { Sources = [Sources.ChainWithSprockets, Sources.UsedBicycle], Caution = Cautions.ChainWorn, Seen = [2], MostHaveNone = true },
    ];

    private static bool IsThere(Part part) => true;

    private static List<Joint> Conditions()
    {
        List<Joint> rows = new(Slot.All.Length);
        foreach (Slot slot in Slot.All)
        {
            if (InspectionTable.Of(slot) is { } row)
            {
                JointInput? material = MaterialOf(slot);
                string id = string.Concat("condition-of-", Dashed(slot.Key));
                string name = string.Concat("Condition of the ", slot.Name);
                rows.Add(slot == Slot.Fork ? new(id, name, () => ConditionRelations.OfFork, ConditionOf(slot), ForkMaterial, SteererMaterialOfFork) { Sources = row.Sources, Seen = [0], MostHaveNone = true, IsOfCondition = true }
                    : material is null
                    ? new(id, name, () => ConditionRelations.Of(row.Duty), ConditionOf(slot)) { Sources = row.Sources, Seen = [0], MostHaveNone = true, IsOfCondition = true }
                    : new(id, name, () => ConditionRelations.OfMaterial(row.Duty), ConditionOf(slot), material) { Sources = row.Sources, Seen = [0], MostHaveNone = true, IsOfCondition = true });
            }
        }

        return rows;
    }

    private static JointInput? MaterialOf(Slot slot) =>
        slot == Slot.Frame ? JointInputs.MaterialOfFrame
        : slot == Slot.FrontWheel || slot == Slot.RearWheel ? RimMaterial(slot)
        : slot == Slot.Seatpost ? PostMaterial
        : slot == Slot.Stem ? StemMaterial
        : slot == Slot.Handlebar ? BarMaterial
        : slot == Slot.Crankset ? CrankMaterial
        : null;

    /// <summary>"rearWheel" as "rear-wheel".</summary>
    private static string Dashed(string key)
    {
        Span<char> text = stackalloc char[2 * key.Length];
        int length = 0;
        foreach (char letter in key)
        {
            if (char.IsAsciiLetterUpper(letter))
            {
                text[length++] = '-';
            }

            text[length++] = char.ToLowerInvariant(letter);
        }

        return text[..length].ToString();
    }
}
