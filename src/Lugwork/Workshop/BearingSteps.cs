using System.Collections.Immutable;
using Lugwork.BottomBrackets;

namespace Lugwork.Workshop;

/// <summary>Pressed and screwed bearings: headset and bottom bracket.</summary>
internal static class BearingSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "press-headset", Title = "Fit the headset in the head tube", Stage = WorkStage.Bearings, Needed = b => b.HasAny(Slot.Headset, Slot.UpperBearing, Slot.LowerBearing), Uses = [Slot.Frame, Slot.Headset, Slot.UpperBearing, Slot.LowerBearing],
            Joints = ["headset-upper-in-head-tube", "headset-lower-in-head-tube", "upper-cup-depth-in-head-tube", "lower-cup-depth-in-head-tube", "upper-bearing-in-seat", "lower-bearing-in-seat"],
            After = [new("prepare-head-tube", "a cup pressed into an unfaced end stands askew"), new("inspect-parts", "a cracked head tube is found before it is pressed"), new("measure-interfaces", "bores and codes have to agree before anything is pressed")],
            Does = b => b.HasPressedCup()
                ? ["Grease the seats of metal frames; on carbon as the frame maker says.", "Press one cup at a time, square, until it is flush all round.", "Put the bearings in with their bevels the right way."]
                : ["Grease the seats of metal frames; on carbon as the frame maker says.", "Lay the bearings in with their bevels the right way; nothing is pressed."],
            Tools = b => [b.HasPressedCup() ? Kit.HeadsetPress : null, Kit.Caliper],
            Consumables = _ => [Kit.Grease],
            Figures = r => [SteeringFigures.Cup(r.Build, true), SteeringFigures.Cup(r.Build, false)],
            Checks = b => [b.HasPressedCup() ? "Each cup is flush all round; no gap lets light through." : "The bearings sit down all round.", "The bearings turn freely by finger."],
            Cautions = b => [b.HasPressedCup() ? Lugwork.Cautions.PressFitCare : null],
            Skill = WorkSkill.Mechanic, Time = WorkTime.HalfHour,
            Shop = b => b.HasPressedCup() ? new(true, "cups go in square with a press; no hammer, on carbon never") : null,
        },
        new()
        {
            Id = "set-crown-race", Title = "Set the crown race", Stage = WorkStage.Bearings, Needed = b => b.Has(Slot.Headset) && b.Has(Slot.Fork), Uses = [Slot.Fork, Slot.Headset], Joints = ["headset-on-crown"],
            After = [new("inspect-parts", "a cracked crown is found before a race is driven on")],
            Does = _ => ["Where an old race is on, take it off first, evenly, with a puller or a soft wedge.", "Measure the seat of the crown; one that is too large is milled by a shop, and only in metal.", "Clean the seat of the crown and grease it thinly.", "Slide a split race on by hand; drive a closed one on with a setter until it is down all round."],
            Tools = _ => [Kit.RaceSetter], Consumables = _ => [Kit.Grease],
            Checks = _ => ["No gap under the race, all round."],
            Cautions = _ => [Lugwork.Cautions.PressFitCare],
            Skill = WorkSkill.Mechanic, Time = WorkTime.QuarterHour,
            Shop = b => b.As<Headset>(Slot.Headset)?.CrownRace.State == KnownState.None ? null : new(false, "a closed race takes a setter of its size; a split one goes on by hand"),
        },
        new()
        {
            Id = "fit-shell-adapter", Title = "Fit the bottom-bracket adapter", Stage = WorkStage.Bearings, Needed = b => b.Has(Slot.ShellAdapter), Uses = [Slot.Frame, Slot.ShellAdapter], Joints = ["adapter-on-shell-face"],
            After = [new("prepare-shell", "the adapter bears on the faces of the shell")],
            Does = b => IsInside(b) switch
            {
                true => ["Clean the bore and the sleeve.", "Grease the seat of metal; in carbon as the frame maker says.", "Press the sleeve in square, with a press, as its maker says; no hammer."],
                false => ["Clean the faces it bears on, and grease its thread or seat.", "Fit the adapter as its maker says, and no tighter."],
                _ => ["Find out first whether the adapter bears on the faces of the shell or sits in its bore: one in the bore is pressed in."],
            },
            Tools = b => [IsInside(b) == true ? new("adapter-press", "press with seats for the adapter", true) : new("adapter-tool", "the tool that the adapter's maker names")], Consumables = b => [IsInside(b) is null ? null : Kit.Grease],
            Figures = r => [IsInside(r.Build) == true ? null : WorkFigure.LacksTorque("shell-adapter-torque", "torque of the adapter", "the adapter maker's figure, where it is screwed in or bolted on")],
            Checks = b => [IsInside(b) == true ? "It stands square in the bore, down all round." : "It bears all round on bare metal."],
            Cautions = b => [Lugwork.Cautions.ShellFace, IsInside(b) == false ? null : Lugwork.Cautions.PressFitCare],
            Skill = WorkSkill.Mechanic, Time = WorkTime.HalfHour,
            Shop = b => IsInside(b) switch
            {
                true => new(true, "a sleeve goes in square, with a press"),
                false => new(false, "an adapter that stands askew ruins bearings and crank"),
                _ => new(true, "whether the adapter is pressed in is not known, and a wrong guess ruins the shell"),
            },
        },
        new()
        {
            Id = "fit-bottom-bracket", Title = "Fit the bottom bracket", Stage = WorkStage.Bearings, Needed = b => b.Has(Slot.BottomBracket), Uses = [Slot.Frame, Slot.BottomBracket],
            Joints = ["bottom-bracket-in-shell", "bottom-bracket-width", "pressed-unit-in-measured-bore", "bottom-bracket-spacers", "bottom-bracket-spacers-with-guide", "bottom-bracket-spacers-with-front-derailleur"],
            After = [new("prepare-shell", "cups seat on the prepared shell"), new("fit-shell-adapter", "the bottom bracket goes into the adapter"), new("route-lines", "lines that pass the shell inside run before it is closed")],
            Does = b => b.IsShellThreaded() switch
            {
                true =>
                [
                    ShellFigures.MayHaveLooseCups(b) ? "See whether it is a cartridge or has loose cups: the torque of a cartridge ruins bearings with loose cups." : null,
                    "Put the spacers under the cups as the figures say.", "Grease the threads; on titanium use the compound that the maker names.",
                    "Start both cups by hand, then tighten them to the maker's torque.",
                    ShellFigures.MayHaveLooseCups(b) ? "Of loose cups tighten the fixed one; screw the other in until play is gone, and hold it with its lockring." : null,
                ],
                false => ["Grease the seats of metal, or use the compound that the maker names; on carbon as the frame maker says.", "Press both sides in square, with a press, until they are down all round."],
                _ => ["Find out first how the shell holds a bottom bracket: threaded or pressed."],
            },
            Tools = b => [ShellFigures.Tool(b)],
            Consumables = b => [b.IsShellThreaded() is null ? null : Kit.Grease],
            Torques = b => [ShellFigures.CupTorque(b)],
            Figures = r => [ShellFigures.Thread(r.Build), ShellFigures.Spacers(r), .. ShellFigures.SideSpacers(r.Build), ShellFigures.CupLacks(r.Build)],
            Checks = b => [b.IsShellThreaded() switch
            {
                true => "The hand of each thread was right: it started by fingers.",
                false => "Both sides are down all round.",
                _ => "It is known how the unit is held.",
            }, "The bearings turn freely."],
            Cautions = b => [b.IsShellThreaded() == false ? Lugwork.Cautions.PressFitCare : Lugwork.Cautions.ShellThreads],
            Skill = WorkSkill.Mechanic, Time = WorkTime.HalfHour,
            Shop = b => b.IsShellThreaded() switch
            {
                true => null,
                false => new(true, "a pressed unit goes in square, with a press"),
                _ => new(true, "whether the shell is threaded or pressed is not known, and a wrong guess ruins it"),
            },
        },
    ];

    /// <summary>The adapter sits in the bore, bears on the faces, or null where it is not known.</summary>
    private static bool? IsInside(Build build) => BuildLook.Common(build.As<ShellAdapter>(Slot.ShellAdapter)?.Kind ?? default, k => k == ShellAdapterKind.Inside);
}
