using System.Collections.Immutable;
using Lugwork.Cockpit;

namespace Lugwork;

/// <summary>Handlebar, levers and grips.</summary>
internal static class CockpitSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "fit-handlebar", Title = "Fit the handlebar", Stage = WorkStage.Cockpit, Needed = b => b.Has(Slot.Handlebar), Uses = [Slot.Stem, Slot.Handlebar], Joints = ["bar-in-stem"],
            After = [new("fit-stem", "the stem holds still while the bar is clamped"), new("inspect-parts", "a bar that was crashed is not fitted")],
            Does = b => ["Clean clamp and bar.", b.HasCarbonBar() switch
            {
                true => "Put assembly paste in the clamp, none on the bolts.",
                false => null,
                _ => "Find out whether bar or stem is carbon: if so, put assembly paste in the clamp.",
            }, "Lay the bar in the middle of the clamp, at its angle.", b.HasQuill() != false ? "See whether one large bolt or several small ones hold the bar: the torque goes by them." : null, "Tighten the bolts, a faceplate crosswise, with an even gap, to the maker's torque."],
            Tools = b => [KeySizes.M5, b.HasQuill() == false ? null : Kit.HexKeys, Kit.TorqueWrench], Consumables = b => [b.HasCarbonBar() == false ? null : Kit.Paste],
            Torques = BarTorques,
            Checks = _ => ["The gap of the clamp is the same above and below, or as the stem maker says.", "The bar does not turn under the weight of the arms."],
            Cautions = _ => [Lugwork.Cautions.BarClampCare, Lugwork.Cautions.SteeringCare], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "fit-controls", Title = "Fit levers and shifters on the bar", Stage = WorkStage.Cockpit, Needed = b => b.HasAny(Slot.Controls, Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter),
            Uses = [Slot.Handlebar, Slot.Controls, Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter], Joints = ["control-on-bar", "levers-one-each-side", "front-brake-hand", "brake-hands-together"],
            After = [new("fit-handlebar", "angle and place are set against the bar that is fixed")],
            Does = b => ["Slide levers and shifters on, and line them up left and right.", b.IsCarbonBar() switch
            {
                true => "Put assembly paste under their clamps where the makers of bar and levers allow it, and use the lower of their torques.",
                false => null,
                _ => "Find out first whether the bar is carbon: the torque of every clamp on it goes by that.",
            }, "Tighten their clamps so that they hold, and turn in a fall.", "Set which lever works which brake as the country asks for, and as the rider is used to."],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench],
            Consumables = b => [b.IsCarbonBar() == true ? Kit.Paste : null], Torques = ControlTorques, Figures = r => [ControlLacks(r.Build)],
            Checks = b => [b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) ? "No lever moves under a firm pull." : "No clamp moves under a firm push.", b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) ? "The fingers reach the levers." : null],
            Cautions = b => [Lugwork.Cautions.BrakeWork, b.IsCarbonBar() == false ? null : Lugwork.Cautions.CarbonBar], Time = WorkTime.HalfHour,
            Shop = b => b.IsCarbonBar() == true ? new(false, "carbon at a clamp cracks where the torque is guessed") : null,
        },
        new()
        {
            Id = "fit-grips", Title = "Fit the grips", Stage = WorkStage.Cockpit, Needed = b => b.Has(Slot.Grips), Uses = [Slot.Handlebar, Slot.Grips], Joints = ["grip-on-bar"],
            After = [new("fit-controls", "the levers go on from the end of the bar"), new("fit-handlebar", "the grips go on the bar that is fixed")],
            Does = b => ["Clean the bar with alcohol.", "Push the grips on dry, or clamp them as their maker says.", b.IsCarbonBar() switch
            {
                true => "Clamp no tighter than the bar's maker allows; some carbon bars take no clamped grips.",
                false => null,
                _ => "Find out first whether the bar is carbon before grips are clamped on it.",
            }, "Plug the ends of the bar."],
            Figures = r => [WorkFigure.LacksTorque("grip-torque", "torque of grips that are clamped", r.Build.IsCarbonBar() == false ? "the grip maker's figure, where they are clamped" : "the figures of grip maker and bar maker, where they are clamped; the lower of the two counts")],
            Consumables = _ => [Kit.Alcohol, new("bar-plugs", "plugs for the ends of the bar")], Checks = _ => ["No grip turns or slides.", "Both ends of the bar are plugged."], Cautions = b => [Lugwork.Cautions.Grips, b.IsCarbonBar() == false ? null : Lugwork.Cautions.CarbonBar], Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "tape-bar", Title = "Tape the handlebar", Stage = WorkStage.SettingUp, Needed = b => b.Has(Slot.Handlebar) && b.IsDropBar() == true && !b.Has(Slot.Grips), Uses = [Slot.Handlebar],
            After = [new("fit-controls", "the tape goes over the clamps"), new("set-saddle-height", "bar and levers stand where the rider wants them"), new("connect-front-brake", "the tape covers the lines"), new("connect-rear-brake", "the tape covers the lines"), new("connect-shifters", "the tape covers the lines"), new("fit-dropper-line", "the tape covers its line"), new("adjust-brakes", "what lies under the tape has proven itself first"), new("adjust-gears", "what lies under the tape has proven itself first")],
            Does = _ => ["Fix the lines along the bar.", "Wind the bar tape from the ends, tight and overlapping.", "Plug the ends of the bar."],
            Consumables = _ => [new("bar-tape", "handlebar tape with plugs")], Checks = _ => ["Both ends of the bar are plugged."], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
    ];

    internal static TorqueFigure?[] BarTorques(Build build) => [build.HasQuill() != false ? TorqueTable.SteeringTorques.BarBinderOld : null, TorqueTable.SteeringTorques.Faceplate];

    /// <summary>Rows of flat metal bars alone: on carbon the lower of two makers' figures holds, and no page was read for a drop-bar lever.</summary>
    internal static TorqueFigure?[] ControlTorques(Build build) => build.IsDropBar() != false || build.IsCarbonBar() != false ? []
        : [build.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) ? TorqueTable.BrakeTorques.LeverClamp : null, build.HasAny(Slot.RearShifter, Slot.FrontShifter) ? TorqueTable.DriveTorques.ShifterClamp : null];

    internal static WorkFigure? ControlLacks(Build build) => build.IsDropBar() switch
    {
        true => WorkFigure.LacksTorque("drop-lever-torque", "torque of a drop-bar lever", build.IsCarbonBar() == false ? "the lever maker's figure: no page was read that prints one" : "the figures of lever maker and bar maker; on carbon the lower of the two counts"),
        false => build.IsCarbonBar() switch
        {
            true => WorkFigure.LacksTorque("control-torque", "torque of levers and shifters on a carbon bar", "the figures of bar maker and lever maker; the lower of the two counts"),
            false => build.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter) ? null : WorkFigure.LacksTorque("control-torque", "torque of levers and shifters", "whether they brake, shift or both, and their maker's figure"),
            _ => WorkFigure.LacksTorque("control-torque", "torque of levers and shifters", "what the bar is made of"),
        },
        _ => WorkFigure.LacksTorque("drop-lever-torque", "torque of levers and shifters", "whether the bar is a drop bar or a flat one"),
    };

    /// <summary>A drop bar, a flat one, or null where neither grips nor levers say it.</summary>
    internal static bool? IsDropBar(this Build build) =>
        build.As<Controls>(Slot.Controls)?.Clamp is { State: KnownState.Value } clamp ? clamp.Value == ControlClamp.DropBar
        : build.As<Handlebar>(Slot.Handlebar)?.Grip is { State: KnownState.Value } grip ? grip.Value != GripDiameter.Mm22Point2 : null;
}
