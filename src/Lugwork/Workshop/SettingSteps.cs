using System.Collections.Immutable;

namespace Lugwork;

/// <summary>Adjusting what is fitted.</summary>
internal static class SettingSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "adjust-brakes", Title = "Adjust the brakes", Stage = WorkStage.SettingUp, Needed = b => b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) || b.HasHubBrake(WheelEnd.Front) == true || b.HasHubBrake(WheelEnd.Rear) == true, Uses = [Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.FrontCaliper, Slot.RearCaliper, Slot.FrontRimBrake, Slot.RearRimBrake],
            After = [new("connect-front-brake", "a brake is set once its lever pulls it"), new("connect-rear-brake", "a brake is set once its lever pulls it"), new("hold-front-hub-brake", "a hub brake is set once its arm is held"), new("hold-rear-hub-brake", "a hub brake is set once its arm is held"), new("bleed-front-brake", "a brake with air in it cannot be set"), new("bleed-rear-brake", "a brake with air in it cannot be set"), new("fit-front-wheel", "the pads are set to the wheel as it stands"), new("fit-rear-wheel", "the pads are set to the wheel as it stands")],
            Does = b =>
            [
                "Set the brakes so that the wheels turn without rubbing.",
                b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) ? "Set the reach of the levers to the rider's hands." : null,
                b.HasAny(Slot.FrontRotor, Slot.RearRotor) ? "Wipe the rotors with alcohol." : null,
                b.HasAny(Slot.FrontRimBrake, Slot.RearRimBrake) ? "Wipe the tracks of the rims with alcohol." : null,
            ],
            Tools = _ => [Kit.HexKeys, Kit.Stand], Consumables = b => [b.HasAny(Slot.FrontRotor, Slot.RearRotor, Slot.FrontRimBrake, Slot.RearRimBrake) ? Kit.Alcohol : null],
            Checks = b => [b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) ? "A firm pull brings no lever to the bar." : null, "Each brake alone holds the bicycle on the spot.", b.Has(Slot.Fork) && (b.Has(Slot.FrontBrakeLever) || b.HasHubBrake(WheelEnd.Front) == true) ? "Rocked with the front brake on, the headset has no play." : null], Cautions = _ => [Lugwork.Cautions.BrakeWork], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
            Shop = _ => new(false, "brakes are checked by someone who does it daily, before the first ride"),
        },
        new()
        {
            Id = "adjust-gears", Title = "Set the gears", Stage = WorkStage.SettingUp, Needed = b => b.HasAny(Slot.RearDerailleur, Slot.FrontDerailleur) || (b.HasHubGear() == true && b.Has(Slot.RearShifter)), Uses = [Slot.RearWheel, Slot.RearShifter, Slot.RearDerailleur, Slot.FrontDerailleur, Slot.Chain, Slot.Cassette],
            After = [new("fit-chain", "the limits are set with the chain on"), new("connect-shifters", "the shifters pull what is set"), new("align-hanger", "indexing on a bent hanger never settles"), new("tighten-derailleur", "a derailleur that still moves cannot be set")],
            Does = b =>
            [
                b.HasHubGear() == true ? "Set the hub gear by the marks and in the gear that its maker names." : null,
                b.Has(Slot.FrontDerailleur) || (b.Has(Slot.RearDerailleur) && b.IsHangerless() == false) ? "Set the outer limits before the first shift." : null,
                b.Has(Slot.RearDerailleur) && b.IsHangerless() != false ? "Set limits and the distance of the upper pulley of the rear derailleur before the first shift, where it has screws for them, as its maker says." : null,
                "Shift through every gear by hand on the stand.",
                b.Has(Slot.RearDerailleur) ? "Set cable tension or offset until each click is one sprocket." : null,
                b.Has(Slot.RearDerailleur) && b.IsHangerless() == false ? "Set the distance of the upper pulley as its maker says." : null,
            ],
            Tools = _ => [Kit.HexKeys, Kit.Stand],
            Checks = b => [b.HasAny(Slot.RearDerailleur, Slot.FrontDerailleur) ? "The chain falls off neither side." : "No gear slips or jumps under load.", b.Has(Slot.RearDerailleur) ? "The cage clears the spokes in the lowest gear." : null], Cautions = _ => [Lugwork.Cautions.ChainOff, Lugwork.Cautions.ShiftSetUp], Skill = WorkSkill.Practised, Time = WorkTime.Hour,
        },
        new()
        {
            Id = "set-saddle-height", Title = "Set saddle, bar and levers to the rider", Stage = WorkStage.SettingUp, Needed = b => b.Has(Slot.Seatpost) && b.Has(Slot.Saddle), Uses = [Slot.Seatpost, Slot.Saddle, Slot.Handlebar, Slot.Stem, Slot.Controls, Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter],
            After = [new("fit-saddle", "the height is measured to the saddle that is on"), new("fit-crankset", "the height is measured from the bottom bracket"), new("fit-handlebar", "the bar is set against the saddle"), new("fit-controls", "the levers are set on the bar as it then stands"), new("align-steering", "the bar is turned in a stem that stands straight")],
            Does = b =>
            [
                "Set the height from the middle of the bottom bracket along the seat tube to the top of the saddle, and tighten the binder again to the maker's torque.",
                "Mark it, and look again at the insertion of the post.",
                b.Has(Slot.Handlebar) ? "Turn the bar in its clamp until the rider's wrists are straight, and tighten it again to the maker's torque." : null,
                b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) ? "Turn the levers into line with the rider's forearms, and tighten them again to the maker's torque." : null,
            ],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench, Kit.Caliper], Torques = b => [SeatSteps.BinderTorque(b), .. b.Has(Slot.Handlebar) ? CockpitSteps.BarTorques(b) : [], .. b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) ? CockpitSteps.ControlTorques(b) : []],
            Figures = r => [SeatFigures.SaddleHeight(r.Build), .. SeatFigures.OfPost(r.Build), SeatSteps.BinderLacks(r.Build), r.Build.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) ? CockpitSteps.ControlLacks(r.Build) : null],
            Checks = b => ["The mark of the post is still hidden.", b.Has(Slot.Dropper) ? "Fully up, the saddle is at riding height; fully down, it meets neither tyre nor frame, also at full travel." : null], Cautions = b => [Lugwork.Cautions.Insertion, Lugwork.Cautions.BodyRules, b.Has(Slot.Handlebar) && b.IsCarbonBar() != false ? Lugwork.Cautions.CarbonBar : null], Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "set-sag", Title = "Set the sag", Stage = WorkStage.SettingUp, Needed = b => b.Has(Slot.Shock) || b.As<Fork>(Slot.Fork)?.Travel is { State: KnownState.Value or KnownState.Measured }, Uses = [Slot.Fork, Slot.Shock, Slot.Rider],
            After = [new("fit-shock", "the shock is in"), new("fit-fork", "the fork is in"), new("fit-front-wheel", "the bicycle stands on its wheels"), new("fit-rear-wheel", "the bicycle stands on its wheels"), new("set-saddle-height", "the rider sits as when riding")],
            Does = b => ["Sit on the bicycle, dressed for riding, with an O-ring pushed up.", b.Has(Slot.Shock) ? "Set pressure or spring until the sag is what fork and shock maker ask for." : "Set pressure or spring of the fork until the sag is what its maker asks for.", "Set rebound and compression to the maker's start."],
            Tools = _ => [new("shock-pump", "shock pump"), Kit.Caliper], Checks = _ => ["Nothing meets at full travel."], Cautions = _ => [Lugwork.Cautions.SuspensionSums], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "inflate-tyres", Title = "Set the tyre pressure", Stage = WorkStage.SettingUp, Needed = b => b.HasAny(Slot.FrontTyre, Slot.RearTyre), Uses = [Slot.FrontTyre, Slot.RearTyre],
            After = [new("fit-front-wheel", "the wheel is in"), new("fit-rear-wheel", "the wheel is in"), new("fit-front-tyre", "the bead is seated first"), new("fit-rear-tyre", "the bead is seated first")],
            Does = _ => ["Pump to the rider's pressure, between the least and the most that tyre and rim allow."], Tools = _ => [Kit.Pump],
            Figures = r => [r.Build.Has(Slot.FrontTyre) ? TyreFigures.Lowest(r.Build, WheelEnd.Front) : null, r.Build.Has(Slot.RearTyre) ? TyreFigures.Lowest(r.Build, WheelEnd.Rear) : null],
            Checks = _ => ["The pressure holds overnight."], Cautions = _ => [Lugwork.Cautions.PressureLimit], Time = WorkTime.QuarterHour,
        },
    ];
}
