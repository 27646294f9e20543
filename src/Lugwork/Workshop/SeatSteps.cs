using System.Collections.Immutable;
using Lugwork.Seating;

namespace Lugwork.Workshop;

/// <summary>Collar, post, dropper and saddle.</summary>
internal static class SeatSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "fit-seat-collar", Title = "Fit the seat collar", Stage = WorkStage.Seat, Needed = b => b.Has(Slot.SeatClamp), Uses = [Slot.Frame, Slot.SeatClamp], Joints = ["seat-clamp-on-seat-tube", "collar-on-binder"],
            After = [new("inspect-parts", "the slot of the seat tube is looked at for cracks first")],
            Does = b => [b.IsCarbonFrame() switch
            {
                true => "Look at the slot and the top of the seat tube for cracks and splinters, and put no file to carbon.",
                false => "Deburr the slot and the top of the seat tube.",
                _ => "Find out first what the seat tube is made of: metal is deburred, and no file goes on carbon.",
            }, "Slide the collar on; grease its bolt, not the tube."],
            Tools = _ => [Kit.HexKeys], Consumables = _ => [Kit.Grease], Checks = _ => ["The collar sits down all round."], Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "fit-seatpost", Title = "Fit the seatpost", Stage = WorkStage.Seat, Needed = b => b.Has(Slot.Seatpost), Uses = [Slot.Frame, Slot.Seatpost, Slot.SeatClamp],
            Joints = ["seatpost-in-seat-tube", "seatpost-room-in-seat-tube", "seatpost-insertion", "binder-on-post", "post-material-in-binder", "saddle-height-least-insertion", "saddle-height-open-depth", "insertion-at-saddle-height"],
            After = [new("fit-seat-collar", "the collar holds the post"), new("measure-interfaces", "the bore is measured before a post is pushed in"), new("fit-dropper-line", "the line of a dropper is joined to the post outside the frame")],
            Does = b =>
            [
                "Clean the bore.",
                b.HasCarbonSeat() switch
                {
                    true => "Put assembly paste on the post; no grease on carbon.",
                    false => "Grease the post and the bore.",
                    _ => "Find out first what frame and post are made of: carbon takes paste and a low torque, metal takes grease.",
                },
                "Push the post in at least to its own mark and to the frame maker's figure, whichever is deeper.",
                "Tighten the binder to the maker's torque, no harder.",
            ],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench, Kit.Caliper], Consumables = b => [b.HasCarbonSeat() is { } carbon ? carbon ? Kit.Paste : Kit.Grease : null],
            Torques = b => [BinderTorque(b)],
            Figures = r => [.. SeatFigures.OfPost(r.Build), BinderLacks(r.Build)],
            Checks = _ => ["The slot of the binder stays open.", "The mark of the post is hidden in the frame.", "The post neither turns nor slips."],
            Cautions = b => [Lugwork.Cautions.Insertion, b.IsCarbonPost() != false ? Lugwork.Cautions.CarbonPost : null], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
            Shop = b => b.HasCarbonSeat() != false ? new(false, "carbon at a clamp cracks where the torque is guessed") : null,
        },
        new()
        {
            Id = "fit-dropper-line", Title = "Fit the dropper and its line", Stage = WorkStage.Seat, Needed = b => b.Has(Slot.Dropper), Uses = [Slot.Frame, Slot.Dropper], Joints = ["dropper-routing-in-frame", "dropper-at-saddle-height"],
            After = [new("fit-handlebar", "its lever stands on the bar that is fixed"), new("fit-controls", "its lever finds its place beside the others"), new("route-lines", "its line is led with the others"), new("measure-interfaces", "the open depth of the seat tube decides which dropper goes in")],
            Does = b => b.HasDropperLine()
                ? [b.IsDropperInside() switch
                {
                    true => "Lead housing and cable to the lower end of the post, with ferrules.",
                    false => "Lead housing and cable along the frame to the head or the collar of the post, with ferrules, where they stand clear of tyre and legs.",
                    _ => "Find out first whether the line runs inside the frame to the lower end of the post, or outside to its head or collar.",
                }, "Join the line to the post, then to its lever, and tighten clamp and lever to the maker's torque.", b.IsDropperInside() switch
                {
                    true => "Leave enough line to draw the post out again.",
                    false => "Leave enough line for the whole travel, and lead it so that it falls clear when the post goes down.",
                    _ => null,
                }]
                : ["Pair lever and post as their maker says, and tighten the lever to the maker's torque.", "Charge the battery."],
            Tools = b => [Kit.HexKeys, b.HasDropperLine() ? Kit.CableCutter : null], Consumables = b => [b.HasDropperLine() ? Kit.CableEnds : null],
            Figures = r => [.. SeatFigures.OfDropper(r.Build), WorkFigure.LacksTorque("dropper-torque", r.Build.HasDropperLine() ? "torque of the lever and of the clamp of the cable" : "torque of the lever", "the dropper maker's figures")],
            Checks = b => [b.HasDropperLine() ? "The lever moves the post over its whole travel, and the line is not kinked." : "The lever moves the post over its whole travel."],
            Cautions = _ => [Lugwork.Cautions.Insertion], Skill = WorkSkill.Practised, Time = WorkTime.Hour,
        },
        new()
        {
            Id = "fit-saddle", Title = "Fit the saddle", Stage = WorkStage.Seat, Needed = b => b.Has(Slot.Saddle), Uses = [Slot.Seatpost, Slot.Saddle], Joints = ["saddle-on-seatpost"],
            After = [new("fit-seatpost", "the post holds still while its clamp is tightened")],
            Does = b =>
            [
                HoldsRoundRails(b) is null ? "Find out first what rails the saddle has and what the post is made of: the torque goes by them." : null,
                "Grease the bolts of the clamp, not the rails.", "Lay the rails in the clamp, within their marks.", "Set it level and in line.",
                HoldsRoundRails(b) == true ? "See which bolts hold the rails, one, two or a pair of nuts: the torque goes by them." : null,
                "Tighten the bolts in turn to the maker's torque.",
            ],
            Tools = b => [HoldsRoundRails(b) == true ? KeySizes.SaddleClamp : Kit.HexKeys, Kit.TorqueWrench], Consumables = _ => [Kit.Grease],
            Torques = b => SaddleTorques(b), Figures = r => [SaddleLacks(r.Build)],
            Checks = _ => ["The clamp holds the rails on their straight part, inside the marks.", "The saddle does not rock."], Cautions = b => [BuildLook.Common(b.As<Saddle>(Slot.Saddle)?.Rails ?? default, r => r == SaddleRails.Round7) == true ? null : Lugwork.Cautions.Rails, b.IsCarbonPost() == true ? Lugwork.Cautions.CarbonPost : null], Time = WorkTime.QuarterHour,
        },
    ];

    /// <summary>The guide of 2002 is of metal posts and round 7 mm rails: true for those, false where one is another, null where it is not known.</summary>
    private static bool? HoldsRoundRails(Build build)
    {
        bool? round = BuildLook.Common(build.As<Saddle>(Slot.Saddle)?.Rails ?? default, r => r == SaddleRails.Round7);
        bool? metal = build.IsCarbonPost() is { } carbon ? !carbon : null;
        return round & metal;
    }

    private static TorqueFigure?[] SaddleTorques(Build build) =>
        HoldsRoundRails(build) == true ? [TorqueTable.SteeringTorques.RailBolts, TorqueTable.SteeringTorques.RailBolt, TorqueTable.SteeringTorques.RailNuts] : [];

    private static WorkFigure? SaddleLacks(Build build) => HoldsRoundRails(build) switch
    {
        true => null,
        false => WorkFigure.LacksTorque("saddle-torque", "torque of the saddle clamp", "the figures of post maker and saddle maker; the lower of the two counts"),
        _ => WorkFigure.LacksTorque("saddle-torque", "torque of the saddle clamp", "what rails the saddle has, and what the post is made of"),
    };

    /// <summary>A collar of its own holds the post: it is there, or the frame is stated to take one, and no ears are.</summary>
    private static bool HasCollar(Build build) => build.Frame.Binder.Is(SeatBinder.Collar) || (build.Has(Slot.SeatClamp) && !build.Frame.Binder.Is(SeatBinder.WeldedTabs));

    /// <summary>Of a dropper its maker's figure rules, since a tight collar binds it. The page on metal is of binder bolts through ears, not of a separate collar.</summary>
    internal static TorqueFigure? BinderTorque(Build build) =>
        build.Has(Slot.Dropper) ? null
        : build.HasCarbonSeat() switch
        {
            true when HasCollar(build) => TorqueTable.SteeringTorques.SeatCollarCarbon,
            false when !build.Has(Slot.SeatClamp) && build.Frame.Binder.Is(SeatBinder.WeldedTabs) => TorqueTable.SteeringTorques.SeatBinder,
            _ => null,
        };

    internal static WorkFigure? BinderLacks(Build build) =>
        BinderTorque(build) is not null ? null
        : WorkFigure.LacksTorque("binder-torque", "torque of the binder", build.Has(Slot.Dropper) ? "the figures of dropper maker and collar maker; the lower of the two counts" : build.HasCarbonSeat() is null ? "what frame and post are made of"
            : build.Frame.Binder.Is(SeatBinder.WeldedTabs) ? "the figures of frame maker and post maker; the lower of the two counts"
            : build.HasCarbonSeat() == true ? "how the post is held, by a collar, ears or a wedge, and the figure printed there" : "the figure printed on the collar");
}
