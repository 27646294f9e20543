using System.Collections.Immutable;

namespace Lugwork;

/// <summary>Adjusting what is fitted.</summary>
internal static class SettingSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "adjust-brakes", Title = "Adjust and bed in the brakes", Stage = WorkStage.SettingUp, Needed = b => b.HasAny(Slot.FrontLever, Slot.RearLever), Uses = [Slot.FrontLever, Slot.RearLever, Slot.FrontBrake, Slot.RearBrake, Slot.FrontRimBrake, Slot.RearRimBrake],
            After = [new("connect-front-brake", "a brake is set once its lever pulls it"), new("connect-rear-brake", "a brake is set once its lever pulls it"), new("bleed-front-brake", "a brake with air in it cannot be set"), new("bleed-rear-brake", "a brake with air in it cannot be set"), new("fit-front-wheel", "the pads are set to the wheel as it stands"), new("fit-rear-wheel", "the pads are set to the wheel as it stands")],
            Does = b =>
            [
                "Centre the pads; the wheels turn without rubbing.", "Set the reach of the levers to the rider's hands.",
                b.HasAny(Slot.FrontRotor, Slot.RearRotor) ? "Bed in discs as the brake maker says: many firm stops from a moderate speed, never to a standstill." : "Roll and brake in a yard before riding out.",
            ],
            Tools = _ => [Kit.HexKeys, Kit.Stand], Supplies = _ => [Kit.Alcohol],
            Checks = _ => ["A firm pull brings no lever to the bar.", "Each brake alone holds the bicycle on the spot."], Cautions = _ => [Lugwork.Cautions.BrakeWork], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
            Shop = _ => new(false, "brakes are checked by someone who does it daily, before the first ride"),
        },
        new()
        {
            Id = "adjust-gears", Title = "Set limits and index the gears", Stage = WorkStage.SettingUp, Needed = b => b.HasAny(Slot.RearDerailleur, Slot.FrontDerailleur), Uses = [Slot.RearDerailleur, Slot.FrontDerailleur, Slot.Chain, Slot.Cassette],
            After = [new("fit-chain", "the limits are set with the chain on"), new("connect-shifters", "the shifters pull what is set"), new("align-hanger", "indexing on a bent hanger never settles")],
            Does = _ => ["Set the outer limits before the first shift.", "Shift through every gear by hand on the stand.", "Set cable tension or offset until each click is one sprocket.", "Set the distance of the upper pulley as its maker says."],
            Tools = _ => [Kit.HexKeys, Kit.Stand], Checks = _ => ["The chain falls off neither side.", "The cage clears the spokes in the lowest gear."], Cautions = _ => [Lugwork.Cautions.ChainOff, Lugwork.Cautions.ShiftSetUp], Skill = WorkSkill.Practised, Time = WorkTime.Hour,
        },
        new()
        {
            Id = "set-saddle-height", Title = "Set saddle, bar and levers to the rider", Stage = WorkStage.SettingUp, Needed = b => b.Has(Slot.Seatpost) && b.Has(Slot.Saddle), Uses = [Slot.Seatpost, Slot.Saddle, Slot.Handlebar],
            After = [new("fit-saddle", "the height is measured to the saddle that is on"), new("fit-crankset", "the height is measured from the bottom bracket"), new("fit-handlebar", "the bar is set against the saddle")],
            Does = _ => ["Set the height from the middle of the bottom bracket along the seat tube to the top of the saddle.", "Mark it.", "Look again at the insertion of the post."],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench, Kit.Caliper], Figures = r => [SeatFigures.Stated("saddle-height", "saddle height", "the rider's saddle height", r.Build.As<Rider>(Slot.Rider)?.SaddleHeight ?? default), .. SeatFigures.OfPost(r.Build)],
            Checks = _ => ["The mark of the post is still hidden."], Cautions = _ => [Lugwork.Cautions.Insertion, Lugwork.Cautions.BodyRules], Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "set-sag", Title = "Set the sag", Stage = WorkStage.SettingUp, Needed = b => b.Has(Slot.Shock) || b.As<Fork>(Slot.Fork)?.Travel is { State: KnownState.Value or KnownState.Measured }, Uses = [Slot.Fork, Slot.Shock, Slot.Rider],
            After = [new("fit-shock", "the shock is in"), new("fit-fork", "the fork is in"), new("fit-front-wheel", "the bicycle stands on its wheels"), new("fit-rear-wheel", "the bicycle stands on its wheels"), new("set-saddle-height", "the rider sits as when riding")],
            Does = _ => ["Sit on the bicycle, dressed for riding, with an O-ring pushed up.", "Set pressure or spring until the sag is what fork and shock maker ask for.", "Set rebound and compression to the makers' start."],
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
