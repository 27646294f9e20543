using Lugwork.Brakes;

namespace Lugwork;

/// <summary>Forms of levers, rim brakes and axle nuts.</summary>
internal static partial class PartForms
{
    public static PartForm<BrakeLever> BrakeLever { get; } = new("brake lever", () => new BrakeLever(),
        PartField<BrakeLever>.Of("pull", "short, long, newer-road, or none for a lever with fluid", p => p.Pull, (p, v) => p with { Pull = v }, ["cable pull"], bare: true),
        PartField<BrakeLever>.Of("fluid", "mineral-oil, glycol-ether, or none for a lever with a cable", p => p.Fluid, (p, v) => p with { Fluid = v }, [], bare: true),
        PartField<BrakeLever>.Of("hand", "left, right or either", p => p.Hand, (p, v) => p with { Hand = v }, []),
        PartField<BrakeLever>.Of("hoseLength", Millimetres, p => p.HoseLength, (p, v) => p with { HoseLength = v }, ["hose length", "housing length"]))
        {
            Contradiction = CableAndFluid,
        };

    public static PartForm<RimBrake> RimBrake { get; } = new("rim brake", () => new RimBrake(),
        PartField<RimBrake>.Of("type", "a kind such as rim-caliper, cantilever or direct-pull", p => p.Type, (p, v) => p with { Type = v }, [], bare: true, where: t => t.IsRimBrake),
        PartField<RimBrake>.Of("reach", "a reach such as 47-57", p => p.Reach, (p, v) => p with { Reach = v }, []),
        PartField<RimBrake>.Of("bolt", "recessed-6, nutted-6 or nutted-1/4", p => p.Bolt, (p, v) => p with { Bolt = v }, ["brake bolt"]),
        PartField<RimBrake>.Of("pads", "for-aluminium or for-carbon", p => p.Pads, (p, v) => p with { Pads = v }, []));

    public static PartForm<AxleNuts> AxleNuts { get; } = new("axle nuts", () => new AxleNuts(),
        PartField<AxleNuts>.Of("thread", "a thread such as 3/8x26", p => p.Thread, (p, v) => p with { Thread = v }, [], bare: true));

    private static (string Field, string Reason, string Expected)? CableAndFluid(BrakeLever lever) =>
        (!lever.Pull.Values.IsEmpty && !lever.Fluid.Values.IsEmpty) ? ("fluid", "a lever pulls a cable or holds fluid, not both", "one of the two, or none for the other")
        : lever.Pull.State == KnownState.None && lever.Fluid.State == KnownState.None ? ("fluid", "a lever pulls a cable or holds fluid", "one of the two")
        : null;

    private static (string Field, string Reason, string Expected)? OtherWorkThanFluid(Caliper caliper)
    {
        if (caliper.Type.Values is not { IsEmpty: false } types)
        {
            return null;
        }

        return !caliper.Fluid.Values.IsEmpty && !types.Contains(BrakeType.HydraulicDisc) && !types.Contains(BrakeType.CableHydraulicDisc) ? ("fluid", "a caliper that a cable works holds no fluid", "none, or disc-cable-hydraulic for one in which the cable presses fluid")
            : caliper.Fluid.State == KnownState.None && types.All(t => t == BrakeType.HydraulicDisc) ? ("fluid", "a hydraulic caliper holds fluid", "mineral-oil or glycol-ether, or another type")
            : null;
    }
}
