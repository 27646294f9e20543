using Lugwork.Hubs;

namespace Lugwork;

/// <summary>The condition of one part, judged by what comes of it when such a part fails.</summary>
internal static class ConditionRelations
{
    /// <summary>Code of a part of which no condition is stated, where it stands beside others.</summary>
    public const long NotSaid = 100;

    private const string Another = "another part, or the word of its maker";

    private static readonly Reason NothingSaid = new("condition-none", "There is no condition or material to judge by: a part has both.");

    private static readonly Reason AsNew = new("condition-new", "The part is {0}.");

    private static readonly Reason LookedOver = new("condition-inspected", "The part is {0}, and nothing was found.");

    private static readonly Reason NotLooked = new("condition-used", "The part is {0}: it has to be looked over first.", Cautions.UsedPart) { Asks = [0], Sources = [Sources.ReuseInspection, Sources.UsedBicycle] };

    private static readonly Reason Harmless = new("condition-used-harmless", "The part is {0}: when it fails it stops working, and nobody falls by it.", Cautions.UsedPart) { Sources = [Sources.CommonPractice] };

    private static readonly Reason WornOut = new("condition-worn", "The part is {0}.") { Mend = "a new one", Sources = [Sources.UsedBicycle] };

    private static readonly Reason WornDangerous = new("condition-worn-unsafe", "The part is {0}, and the rider depends on it.", Cautions.UsedPart) { Mend = "a new one", Sources = [Sources.UsedBicycle] };

    private static readonly Reason Broken = new("condition-damaged", "The part is {0}.") { Mend = Another, Sources = [Sources.UsedBicycle] };

    private static readonly Reason BrokenDangerous = new("condition-damaged-unsafe", "The part is {0}, and the rider depends on it.", Cautions.UsedPart) { Mend = Another, Sources = [Sources.UsedBicycle] };

    private static readonly Reason CalledBack = new("condition-recalled", "The part is {0}.", Cautions.Recall) { Mend = "the remedy that its maker offers", Sources = [Sources.CommonPractice] };

    private static readonly Reason CarbonHit = new("condition-crashed-carbon", "The part is of {1} and {0}: it can be broken inside and look whole.", Cautions.CarbonCrash) { Mend = Another, Sources = [Sources.CarbonCrashManual, Sources.CarbonFrameManual] };

    private static readonly Reason AlloyHit = new("condition-crashed-alloy", "The part is of {1} and {0}: after a fall such a part is replaced.", Cautions.AlloyCrash) { Mend = "a new one", Sources = [Sources.AlloyBarsAfterFall] };

    private static readonly Reason Hit = new("condition-crashed", "The part is {0}: it has to be looked over for what a blow does to it.", Cautions.UsedPart) { Asks = [0], Sources = [Sources.UsedBicycle] };

    private static readonly Reason MetalHit = new("condition-crashed-metal", "The part is of {1} and {0}: metal shows a blow as a bend or a crack, and has to be looked over and measured for both.", Cautions.UsedPart) { Asks = [0], Sources = [Sources.CarbonCrashManual] };

    private static readonly Reason CarbonSteererHit = new("condition-crashed-carbon-steerer", "The steerer is of {2} and the fork {0}: it can be broken inside and look whole.", Cautions.CarbonCrash) { Mend = Another, Sources = [Sources.CarbonCrashManual, Sources.CarbonFrameManual] };

    /// <summary>Input: the condition.</summary>
    public static Relation Of(PartDuty duty) => All[(int)duty];

    /// <summary>Inputs: the condition, the material.</summary>
    public static Relation OfMaterial(PartDuty duty) => WithMaterial[(int)duty];

    /// <summary>Inputs: the condition, the material of the fork, the material of its steerer. Carbon in either is carbon.</summary>
    public static Relation OfFork { get; } = new Computed(
        "the state of the part and what it and its steerer are made of",
        v => v[0] == PartCondition.Crashed.FitCode && v[2] == Material.Carbon.FitCode && v[1] != Material.Carbon.FitCode ? new(Verdict.Unsafe, CarbonSteererHit)
            : Cell(PartDuty.Safety, v[0], v[1], v[1] == 0),
        [],
        [Sources.ReuseInspection, Sources.UsedBicycle, Sources.CarbonCrashManual, Sources.CarbonFrameManual]);

    private static readonly Relation[] All = [Plain(PartDuty.Safety), Plain(PartDuty.Cockpit), Plain(PartDuty.Wear), Plain(PartDuty.Bearing), Plain(PartDuty.Other), Plain(PartDuty.Crank)];

    private static readonly Relation[] WithMaterial = [Material(PartDuty.Safety), Material(PartDuty.Cockpit), Material(PartDuty.Wear), Material(PartDuty.Bearing), Material(PartDuty.Other), Material(PartDuty.Crank)];

    private static Computed Plain(PartDuty duty) => new Computed("the state of the part", v => Cell(duty, v[0], 0), [], [Sources.ReuseInspection, Sources.UsedBicycle]);

    private static Computed Material(PartDuty duty) =>
        new Computed("the state of the part and what it is made of", v => Cell(duty, v[0], v[1], v[1] == 0), [], [Sources.ReuseInspection, Sources.UsedBicycle, Sources.CarbonCrashManual, Sources.CarbonFrameManual, Sources.AlloyBarsAfterFall]);

    /// <summary>A part that is said to be of no material never fits, and a damaged one is no better for it.</summary>
    private static Outcome Cell(PartDuty duty, long condition, long material, bool isOfNothing)
    {
        Outcome cell = Cell(duty, condition, material);
        return isOfNothing && cell.Verdict < Verdict.NeedsMeasuring ? new(Verdict.NeedsMeasuring, NothingSaid) : cell;
    }

    private static Outcome Cell(PartDuty duty, long condition, long material)
    {
        bool grave = duty is PartDuty.Safety or PartDuty.Cockpit;
        return condition == 0 ? new(Verdict.NeedsMeasuring, NothingSaid)
            : condition == PartCondition.New.FitCode ? new(Verdict.Fits, AsNew)
            : condition == PartCondition.Inspected.FitCode ? new(Verdict.Fits, LookedOver)
            : condition == PartCondition.Used.FitCode || condition == PartCondition.NotKnown.FitCode ? duty == PartDuty.Other ? new(Verdict.Fits, Harmless) : new(Verdict.NeedsMeasuring, NotLooked)
            : condition == PartCondition.Worn.FitCode ? grave ? new(Verdict.Unsafe, WornDangerous) : new(Verdict.DoesNotFit, WornOut)
            : condition == PartCondition.Damaged.FitCode ? grave || duty == PartDuty.Crank ? new(Verdict.Unsafe, BrokenDangerous) : new(Verdict.DoesNotFit, Broken)
            : condition == PartCondition.Recalled.FitCode ? new(Verdict.Unsafe, CalledBack)
            : material == Material.Carbon.FitCode ? new(Verdict.Unsafe, CarbonHit)
            : duty == PartDuty.Cockpit && material == Material.Aluminium.FitCode ? new(Verdict.Unsafe, AlloyHit)
            : new(Verdict.NeedsMeasuring, material == 0 ? Hit : MetalHit);
    }
}
