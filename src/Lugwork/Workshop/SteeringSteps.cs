using System.Collections.Immutable;

namespace Lugwork;

/// <summary>Fork, steerer and stem.</summary>
internal static class SteeringSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "dry-fit-fork", Title = "Put the fork together dry", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Fork), Uses = [Slot.Frame, Slot.Fork, Slot.Headset, Slot.Stem],
            Joints = ["steerer-through-head-tube", "fork-in-head-tube", "headset-on-steerer", "headset-kind", "fork-length-within-limit", "fork-crowns-on-frame", "fork-not-too-short"],
            After = [new("press-headset", "the stack is measured on the headset that is in"), new("set-crown-race", "the steerer is measured from the race that is set"), new("measure-interfaces", "the stack is built of measured heights")],
            Does = b => ["Put fork, bearings, cover, spacers and stem together without grease.", b.IsThreaded() ? "See that the locknut has its full thread." : "Mark the steerer at the top of the stem.", "Turn the bars to both sides and look at the height."],
            Tools = _ => [Kit.Caliper], Figures = r => SteeringFigures.OfSteerer(r.Build),
            Checks = _ => ["The bearings sit down all round.", "Bar height and stem are the ones that stay; leave the steerer long if unsure."],
            Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "cut-steerer", Title = "Cut the steerer", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Fork) && b.Has(Slot.Stem) && !b.IsThreaded(), Uses = [Slot.Fork, Slot.Stem],
            After = [new("dry-fit-fork", "the mark comes from the stack as it stands; a steerer cut too short is lost")],
            Does = b =>
            [
                "Measure twice; compare the mark with the figure below.",
                b.IsCarbonSteerer() ? "Cut carbon wet with a fine blade for carbon, and keep the dust out of the lungs." : "Cut in a saw guide.",
                "Deburr the edge inside and outside.",
            ],
            Tools = b => [new("saw-guide", "saw guide"), new("saw", b.IsCarbonSteerer() ? "fine blade for carbon" : "fine metal saw"), new("file", "fine file"), Kit.Caliper],
            Figures = r => SteeringFigures.OfSteerer(r.Build),
            Checks = _ => ["The cut is square.", "The gap under the cap is 2 to 3 mm, and the steerer ends not more than 5 mm below the top of the stem."],
            Cautions = b => [Lugwork.Cautions.SteeringCare, b.IsCarbonSteerer() ? Lugwork.Cautions.CarbonSpacers : null],
            Skill = WorkSkill.Mechanic, Time = WorkTime.HalfHour, Shop = _ => new(false, "a steerer that is cut too short or askew ruins the fork"),
        },
        new()
        {
            Id = "set-preload", Title = "Set the star nut or the expander", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Preload), Uses = [Slot.Fork, Slot.Preload], Joints = ["preload-in-steerer"],
            After = [new("cut-steerer", "its depth is measured from the cut end")],
            Does = b => b.IsCarbonSteerer()
                ? ["Put the maker's expander in, at the height of the stem clamp, and tighten it as its maker says."]
                : ["Set a star nut square, below the top of the steerer; an expander as its maker says."],
            Tools = b => [b.IsCarbonSteerer() ? Kit.TorqueWrench : new("star-nut-setter", "star nut setter")],
            Torques = b => [b.IsCarbonSteerer() ? TorqueTable.SteeringTorques.Expander : null],
            Figures = r => [SteeringFigures.NutDepth(r.Build)],
            Checks = _ => ["Never a star nut in a carbon steerer."],
            Cautions = _ => [Lugwork.Cautions.StarNutCare], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "fit-headset-cover", Title = "Fit the cover of the headset", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.HeadsetCover), Uses = [Slot.Frame, Slot.HeadsetCover], Joints = ["headset-cover-system"],
            After = [new("route-lines", "lines that pass the cover are led first"), new("press-headset", "the cover lies on the upper bearing"), new("dry-fit-fork", "the cover was part of the measured stack")],
            Does = b => ["Grease the centring ring.", b.RunsThroughHeadset() ? "Lead the lines through the cover without a kink." : "Lay the cover on the upper bearing."],
            Supplies = _ => [Kit.Grease], Checks = _ => ["The cover does not rub on the frame."], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "fit-fork", Title = "Fit the fork for good", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Fork), Uses = [Slot.Frame, Slot.Fork, Slot.Headset, Slot.HeadsetCover],
            After = [new("dry-fit-fork", "what fits is known before it is greased"), new("cut-steerer", "chips of the cut stay out of the bearings"), new("set-preload", "the cap pulls on the nut or expander"), new("route-lines", "lines past the bearings are in before the fork closes the way"), new("fit-headset-cover", "lines through the cover are led while the fork is out")],
            Does = b => ["Grease the bearings and their seats.", "Slide the fork in, lay on bearing, ring and cover.", b.IsThreaded() ? "Screw the upper race down until play is gone, then hold it with the locknut." : null],
            Tools = b => [b.IsThreaded() ? new("headset-spanners", "headset spanners") : null], Supplies = _ => [Kit.Grease],
            Torques = b => [b.IsThreaded() ? TorqueTable.SteeringTorques.Locknut : null],
            Checks = _ => ["The fork turns freely from stop to stop."], Cautions = _ => [Lugwork.Cautions.SteeringCare], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "fit-stem", Title = "Fit the stem and take up the play", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Stem), Uses = [Slot.Fork, Slot.Stem],
            Joints = ["stem-on-steerer", "quill-insertion", "steerer-reaches-stem", "gap-under-cap", "spacers-on-carbon-steerer"],
            After = [new("fit-fork", "the stem clamps the fork that is in"), new("set-preload", "the cap needs something to pull on")],
            Does = b => b.HasQuill()
                ? ["Grease the quill and its wedge.", "Put it in beyond its mark, in line with the wheel.", "Tighten the wedge bolt to the maker's torque."]
                : ["Put spacers and stem on.", "Turn the cap bolt until the play is just gone.", "Line the stem up and tighten its clamp bolts in turn to the maker's torque."],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench], Supplies = b => [b.IsCarbonSteerer() ? Kit.Paste : b.HasQuill() ? Kit.Grease : null],
            Torques = b => b.HasQuill() ? [TorqueTable.SteeringTorques.QuillWedge] : [TorqueTable.SteeringTorques.TopCap, b.IsCarbonSteerer() ? TorqueTable.SteeringTorques.StemOnCarbon : TorqueTable.SteeringTorques.StemOnSteerer],
            Figures = r => SteeringFigures.OfStem(r.Build),
            Checks = b => ["With the front brake on, no play in the headset; with the wheel up, it turns freely.", b.HasQuill() ? "The mark of the quill is hidden." : "The steerer ends at most 5 mm below the top of the stem."],
            Cautions = b => [Lugwork.Cautions.SteeringCare, b.HasQuill() ? Lugwork.Cautions.QuillInsertion : null, b.IsCarbonSteerer() ? Lugwork.Cautions.CarbonSpacers : null],
            Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour, Shop = b => b.IsCarbonSteerer() ? new(false, "a carbon steerer breaks without warning where it is clamped wrongly") : null,
        },
        new()
        {
            Id = "fit-shock", Title = "Fit the rear shock", Stage = WorkStage.Suspension, Needed = b => b.Has(Slot.Shock), Uses = [Slot.Frame, Slot.Shock],
            Joints = ["shock-in-frame", "shock-hardware-in-frame", "upper-shock-hardware-in-frame", "shock-bush-in-eyelet"],
            After = [new("inspect-parts", "worn pivots are found before the shock hides them"), new("route-lines", "lines near the pivots run before the shock is in their way")],
            Does = _ => ["Press the bushes in; fit the hardware.", "Bolt the shock in without load, the maker's way up.", "Let the air out, or take the spring off, and move the rear through its whole travel by hand."],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench, new("bush-tool", "tool for shock bushes")], Supplies = _ => [Kit.Grease, Kit.Threadlock],
            Torques = _ => [TorqueTable.SteeringTorques.ShockBolts], Figures = r => SeatFigures.OfShock(r.Build),
            Checks = _ => ["Neither shock, tyre nor link meets anything in the whole travel.", "The bolts do not bottom; the eyelets turn without play."],
            Cautions = _ => [Lugwork.Cautions.ShockSizeCare], Skill = WorkSkill.Mechanic, Time = WorkTime.HalfHour,
        },
    ];
}
