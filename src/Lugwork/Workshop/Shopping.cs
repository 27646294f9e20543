using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What is to buy for a plan, each thing on one of its two lists alone.</summary>
internal static class Shopping
{
    /// <summary>Consumables that the list of small parts names too, by the end of its id.</summary>
    private static readonly ImmutableArray<string> Twice = ["grease", "carbon-paste", "threadlock", "sealant", "bar-tape"];

    public static ImmutableArray<SmallPart> SmallParts(WorkPlan plan)
    {
        HashSet<string> used = [.. Used(plan).Select(s => s.Id)];
        return [.. plan.Build.SmallParts().Where(p => !Twice.Any(t => p.Id.EndsWith(t, StringComparison.Ordinal) && used.Contains(t)))];
    }

    public static ImmutableArray<WorkConsumable> Consumables(WorkPlan plan)
    {
        HashSet<string> parts = [.. plan.Build.SmallParts().Select(p => p.Id)];
        return [.. Used(plan).Where(s => !ComesWith(plan.Build, s.Id, parts))];
    }

    private static IEnumerable<WorkConsumable> Used(WorkPlan plan) => plan.Steps.SelectMany(s => s.Consumables).Distinct();

    /// <summary>Every line that needs it is a small part to buy, with its ends and its fluid.</summary>
    private static bool ComesWith(Build build, string supply, HashSet<string> parts) =>
        supply == "hose-ends" || supply.StartsWith("fluid-", StringComparison.Ordinal) ? AllOf(parts, (build.IsFluid(Slot.FrontBrakeLever) == true, "front-hose-ends"), (build.IsFluid(Slot.RearBrakeLever) == true, "rear-hose-ends"))
        : supply == "cable-ends" && AllOf(
            parts, (MayPull(build, Slot.FrontBrakeLever), "front-brake-cable"), (MayPull(build, Slot.RearBrakeLever), "rear-brake-cable"), (MayShift(build, Slot.RearShifter), "rear-shift-cable"),
            (MayShift(build, Slot.FrontShifter), "front-shift-cable"), (build.HasDropperLine(), "dropper-cable"));

    private static bool MayPull(Build build, Slot lever) => build.Has(lever) && build.IsFluid(lever) != true;

    private static bool MayShift(Build build, Slot shifter) => build.As<Shifter>(shifter)?.Signal.MayBe(Drivetrain.ShiftSignal.Cable) == true;

    private static bool AllOf(HashSet<string> parts, params ReadOnlySpan<(bool IsNeeded, string Part)> lines)
    {
        foreach ((bool needed, string part) in lines)
        {
            if (needed && !parts.Contains(part))
            {
                return false;
            }
        }

        return true;
    }
}
