using System.Collections.Immutable;
using Lugwork.Brakes;

namespace Lugwork.Workshop;

/// <summary>Calipers, rim brakes and what joins them to the levers: one declaration for both ends.</summary>
internal static class BrakeSteps
{
    private static readonly LeaveToShop IfInDoubt = new(false, "a brake that fails throws the rider, so have it checked");

    private const string WhichFluid = "Find out first which fluid lever and caliper take; the wrong one ruins the seals, and the brake fails.";

    private const string WhichFluidOfLever = "Find out first which fluid this lever takes; the wrong one ruins the seals, and the brake fails.";

    private static readonly WorkPrerequisite Tensioned = new("set-chain-tension", "the wheel moves in its slots until the chain is set");

    public static ImmutableArray<StepRule> For(WheelEnd end) =>
    [
        new()
        {
            Id = $"mount-{end.Name}-caliper", Title = $"Mount the {end.Name} caliper", Stage = WorkStage.Brakes, Needed = b => b.Has(end.Caliper), Uses = [end.Holder, end.Caliper, end.Rotor],
            Joints = [$"{end.Name}-caliper-on-mount", $"{end.Name}-rotor-thickness-in-caliper", $"{end.Name}-adapter-with-rotor", $"{end.Name}-adapters-stacked", end.IsFront ? "disc-on-open-ends" : "flat-mount-bolt-in-stay"],
            After = [new("check-brake-mounts", "a caliper on an uneven face drags"), new($"fit-{end.Name}-wheel", "the caliper is set over the rotor as the wheel stands"), new($"fit-{end.Name}-rotor", "the rotor decides the adapter"), end.IsFront ? new("fit-fork", "the caliper hangs on the fork that is in") : Tensioned],
            Does = b =>
            [
                FootOf(b, end) is null ? "Find out first how the caliper is held: bolts, their length and their torque go by it." : null,
                HasAdapter(b, end) == false ? null : FootOf(b, end) == CaliperFoot.Flat ? "Bolt the plate on where one belongs between, the way up that the rotor asks for." : "Bolt the adapter on where one is needed; see whether its bolts are M5 or M6: the torque goes by them.",
                "Bolt the caliper on, loose.", b.Has(end.Rotor) ? "Wipe the rotor with alcohol." : null, "Set it over the rotor with an even gap on both sides, and tighten its bolts to the maker's torque; thread lock where the maker asks for it.",
            ],
            Tools = b => [.. CaliperKeys(b, end), Kit.TorqueWrench], Consumables = b => [b.Has(end.Rotor) ? Kit.Alcohol : null, Kit.Threadlock],
            Torques = b => CaliperTorques(b, end),
            Figures = r => [.. BrakeFigures.Adapter(r.Build, end), BrakeFigures.Thickness(r.Build, end), CaliperTorques(r.Build, end).Length > 0 ? null : WorkFigure.LacksTorque("caliper-torque", "torque of the caliper", "how the caliper is held")],
            Checks = _ => ["The bolts are the length of mount and adapter: neither bottomed nor short.", "The wheel turns without rubbing."],
            Cautions = b => [Lugwork.Cautions.BrakeWork, b.As<Caliper>(end.Caliper)!.Mounting.MayBe(CaliperFoot.Flat) ? Lugwork.Cautions.FlatMountBolts : null], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour, Shop = _ => IfInDoubt,
        },
        new()
        {
            Id = $"mount-{end.Name}-rim-brake", Title = $"Mount the {end.Name} rim brake", Stage = WorkStage.Brakes, Needed = b => b.Has(end.RimBrake), Uses = [end.Holder, end.Wheel, end.RimBrake],
            Joints = [$"{end.Name}-brake-on-bosses", $"{end.Name}-bosses-with-rim", $"{end.Name}-brake-arms-on-boss-spacing", $"{end.Name}-caliper-bolt-in-hole", $"{end.Name}-rim-caliper-reach", $"{end.Name}-pads-on-rim"],
            After = [new($"fit-{end.Name}-wheel", "the pads are set to the rim as the wheel stands"), end.IsFront ? new("fit-fork", "the brake hangs on the fork that is in") : Tensioned],
            Does = b => [RimType(b, end) switch
            {
                { } type when type == BrakeType.RimCaliper => "Grease the bolt that holds the brake.",
                { } => "Grease the outside of the bosses thinly, and put nothing on the threads that their maker does not name.",
                _ => "Find out first what rim brake it is: one on bosses is greased outside them, one on a bolt at the bolt.",
            }, "Bolt the brake on so that its arms move freely.", "Wipe the track with alcohol.", "Set the pads on the track, clear of the tyre, front ends a little closer."],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench], Consumables = _ => [Kit.Grease, Kit.Alcohol],
            Torques = b => RimTorques(b, end), Figures = r => [PadLacks(r.Build, end)],
            Checks = _ => ["No pad touches the tyre or dips below the rim.", "The pads are made for this rim."], Cautions = _ => [Lugwork.Cautions.BrakeWork, Lugwork.Cautions.RimPads], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour, Shop = _ => IfInDoubt,
        },
        new()
        {
            Id = $"hold-{end.Name}-hub-brake", Title = $"Hold the arm of the {end.Name} hub brake", Stage = WorkStage.Brakes, Needed = b => b.HasHubBrake(end) != false, Uses = [end.Holder, end.Wheel],
            After = [new($"fit-{end.Name}-wheel", "the arm is held where the wheel stands"), end.IsFront ? new("fit-fork", "the arm is held by the fork that is in") : Tensioned],
            Does = b =>
            [
                b.HasHubBrake(end) is null ? "Find out first whether the hub holds a brake: nothing else brakes this wheel yet. Where it does, its arm is held as follows." : null,
                "Clamp or bolt the reaction arm to blade or stay, with the part that the hub maker names, without bending it.",
                b.As<Wheel>(end.Wheel)!.HubBrake.Is(BrakeType.Coaster) ? "Turn the crank back by hand: the wheel stops, and runs free when pedalled on." : "See that the wheel turns freely, and that the arm cannot turn either way.",
            ],
            Tools = _ => [new("arm-spanner", "screwdriver or spanner for the clip of the arm")],
            Figures = _ => [WorkFigure.LacksTorque("arm-torque", "torque of the clip of the arm", "the hub maker's figure")],
            Checks = _ => ["The arm does not move under a firm pull by hand.", "The brake stops the wheel."],
            Cautions = _ => [Lugwork.Cautions.BrakeWork, Lugwork.Cautions.ReactionArm], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour, Shop = _ => IfInDoubt,
        },
        new()
        {
            Id = $"connect-{end.Name}-brake", Title = $"Join the {end.Name} lever to its brake", Stage = WorkStage.Brakes, Needed = b => b.Has(end.Lever), Uses = [end.Lever, end.Caliper, end.RimBrake],
            Joints = [$"{end.Name}-lever-fluid-with-caliper", $"{end.Name}-lever-with-disc-brake", $"{end.Name}-lever-with-rim-brake", $"{end.Name}-lever-with-hub-brake", .. end.IsFront ? ImmutableArray<string>.Empty : ["rear-hose-side", "rear-hose-side-of-rider"]],
            After = [new("fit-controls", "the line is measured to the lever in its place"), new("route-lines", "the line lies in the frame"), new($"mount-{end.Name}-caliper", "the line ends at the caliper"), new($"mount-{end.Name}-rim-brake", "the cable ends at the brake"), new($"hold-{end.Name}-hub-brake", "the cable pulls against the arm that is held"), new($"fit-{end.Name}-wheel", "a brake in the hub is reached with the wheel in")],
            Waits = (b, step) => step != $"fit-{end.Name}-wheel" || b.HasHubBrake(end) != false,
            Does = b => b.IsFluid(end.Lever) switch
            {
                true => ["Turn the bar fully to both sides and cut the hose to length.", "Put a new insert and olive on, and tighten the nut.", b.FluidOf(end) is { } fluid ? $"Use the fluid of this brake alone: {fluid.TradeName}." : b.Has(end.Caliper) ? WhichFluid : WhichFluidOfLever],
                false => [Straddles(b, end) is null ? "Find out first what rim brake it is: one with a cable from arm to arm needs a stop for the housing, and a guard over the tyre." : null, Straddles(b, end) == true ? "See that a stop for the housing stands on stem, headset, fork or seat collar, and hang the straddle cable on both arms." : null, "Turn the bar fully to both sides and cut the housing to length.", "Grind the ends square, put ferrules on, thread the cable.", "Clamp the cable, pull it hard several times, and clamp it again.", "Cap the end of the cable."],
                _ => ["Find out first whether the lever pulls a cable or holds fluid, and whether the brake goes with it.", "Leave the line long, and cut nothing before that is known."],
            },
            Tools = b => [b.IsFluid(end.Lever) is { } fluid ? fluid ? new("hose-cutter", "hose cutter and insert press") : Kit.CableCutter : null],
            Consumables = b => [b.IsFluid(end.Lever) is { } fluid ? fluid ? new("hose-ends", "inserts and olives of the brake maker") : Kit.CableEnds : null],
            Torques = b => [b.IsFluid(end.Lever) is { } fluid ? fluid ? TorqueTable.BrakeTorques.HoseNut : TorqueTable.BrakeTorques.BrakeCable : null],
            Figures = r => [RoutingFigures.Line(r.Build, end)],
            Checks = b => ["The line is not strained with the bar fully turned.", b.IsFluid(end.Lever) switch
            {
                true => "No fluid shows at either end under a firm pull.",
                false => "The cable does not slip under a firm pull.",
                _ => null,
            }, Straddles(b, end) == true ? "A guard or reflector bracket keeps the straddle cable off the tyre, should its cable let go: caught in the tread it locks the wheel." : null],
            Cautions = _ => [Lugwork.Cautions.BrakeWork], Skill = WorkSkill.Practised, Time = WorkTime.Hour, Shop = _ => IfInDoubt,
        },
        new()
        {
            Id = $"bleed-{end.Name}-brake", Title = $"Bleed the {end.Name} brake", Stage = WorkStage.Brakes, Needed = b => b.IsFluid(end.Lever) is { } fluid ? fluid : b.Has(end.Lever) && b.As<Caliper>(end.Caliper) is { } held && held.FluidOrType.State != KnownState.None, Uses = [end.Lever, end.Caliper],
            After = [new($"connect-{end.Name}-brake", "a cut hose has let air in")],
            Does = b =>
            [
                b.IsFluid(end.Lever) is null ? "Find out first whether the lever holds fluid; one that pulls a cable has nothing to bleed." : null,
                b.FluidOf(end) is null ? b.Has(end.Caliper) ? WhichFluid : WhichFluidOfLever : null,
                b.Has(end.Wheel) ? "Take the wheel and the pads out, and put the bleed block in." : "Take the pads out and put the bleed block in.",
                b.FluidOf(end) is { } fluid ? $"Bleed as the brake maker says, with {fluid.TradeName} and nothing else." : "Bleed as the brake maker says, with the fluid printed on it.",
                b.Has(end.Wheel) ? "Wipe every drop off with alcohol before the pads and the wheel go back; hold the wheel as it was held." : "Wipe every drop off with alcohol before the pads go back.",
            ],
            Tools = _ => [new("bleed-kit", "bleed kit of the brake maker")],
            Consumables = b => [b.FluidOf(end) is { } fluid ? new($"fluid-{fluid.FitKey}", $"brake fluid: {fluid.TradeName}") : null, Kit.Alcohol],
            Checks = _ => ["The lever feels hard, and stays off the bar, after a minute of firm pull."], Cautions = _ => [Lugwork.Cautions.BrakeWork], Skill = WorkSkill.Mechanic, Time = WorkTime.Hour, Shop = _ => IfInDoubt,
        },
    ];

    private static BrakeType? RimType(Build build, WheelEnd end) => build.As<RimBrake>(end.RimBrake)?.Type is { State: KnownState.Value } type ? type.Value : null;

    /// <summary>By the one type that is known: no row of one kind of brake holds for another.</summary>
    private static TorqueFigure?[] RimTorques(Build build, WheelEnd end) => RimType(build, end) switch
    {
        { } type when type == BrakeType.RimCaliper => [end.IsFront ? TorqueTable.BrakeTorques.RimCaliperFront : TorqueTable.BrakeTorques.RimCaliperRear, TorqueTable.BrakeTorques.PadCaliper],
        { } type when type == BrakeType.DirectPull || type == BrakeType.MiniDirectPull => [TorqueTable.BrakeTorques.ArmBolt, TorqueTable.BrakeTorques.PadLinear],
        { } type when type == BrakeType.Cantilever => [TorqueTable.BrakeTorques.ArmBolt],
        _ => [],
    };

    private static WorkFigure? PadLacks(Build build, WheelEnd end) =>
        RimTorques(build, end).Length == 2 ? null
        : RimType(build, end) is null ? WorkFigure.LacksTorque("rim-brake-torque", "torque of bolts and pads", "the type of the brake")
        : WorkFigure.LacksTorque("rim-brake-torque", RimType(build, end) == BrakeType.Cantilever ? "torque of the pads" : "torque of bolts and pads", "the brake maker's figures");

    /// <summary>A cable from arm to arm is pulled in its middle.</summary>
    private static bool? Straddles(Build build, WheelEnd end) => !build.Has(end.RimBrake) ? false
        : BuildLook.Common(build.As<RimBrake>(end.RimBrake)!.Type, t => t == BrakeType.Cantilever || t == BrakeType.CentrePull || t == BrakeType.UBrake);

    private static CaliperFoot? FootOf(Build build, WheelEnd end) => build.As<Caliper>(end.Caliper)?.Mounting is { State: KnownState.Value } foot ? foot.Value : null;

    /// <summary>An adapter is bolted on, none is, or null where neither the caliper nor mount and rotor say it.</summary>
    private static bool? HasAdapter(Build build, WheelEnd end) => build.As<Caliper>(end.Caliper)?.Adapter.State switch
    {
        KnownState.None => false,
        KnownState.Value or KnownState.OneOf => true,
        _ => BrakeFigures.SitsWithoutAdapter(build, end) ? false : null,
    };

    /// <summary>Flat mount has M5 bolts, posts and tabs M6; an adapter may have either.</summary>
    private static WorkTool?[] CaliperKeys(Build build, WheelEnd end) => FootOf(build, end) switch
    {
        null => [Kit.HexKeys],
        { } foot when foot == CaliperFoot.Flat => [KeySizes.M5],
        _ => [KeySizes.M6, HasAdapter(build, end) == false ? null : KeySizes.M5],
    };

    /// <summary>By the one foot that is known: flat mount has other bolts than posts and tabs.</summary>
    private static TorqueFigure?[] CaliperTorques(Build build, WheelEnd end) => FootOf(build, end) switch
    {
        null => [],
        { } foot when foot == CaliperFoot.Flat => [TorqueTable.BrakeTorques.FlatMountBolts],
        _ => [TorqueTable.BrakeTorques.CaliperBolts, TorqueTable.BrakeTorques.CaliperBody, HasAdapter(build, end) == false ? null : TorqueTable.BrakeTorques.AdapterBolts],
    };
}
