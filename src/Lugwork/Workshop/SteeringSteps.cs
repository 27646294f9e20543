using System.Collections.Immutable;
using Lugwork.Steering;

namespace Lugwork.Workshop;

/// <summary>Fork, steerer and stem.</summary>
internal static class SteeringSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "dry-fit-fork", Title = "Put the fork together dry", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Fork), Uses = [Slot.Frame, Slot.Fork, Slot.Headset, Slot.Stem],
            Joints = ["steerer-through-head-tube", "fork-in-head-tube", "headset-on-steerer", "headset-kind", "fork-length-within-limit", "fork-crowns-on-frame", "fork-not-too-short", "head-angle-not-too-slack", "head-angle-with-headset", "head-angle-not-too-steep", "steerer-reaches-stem", "gap-under-cap", "spacers-on-carbon-steerer", "crown-under-down-tube"],
            After = [new("press-headset", "the stack is measured on the headset that is in"), new("set-crown-race", "the steerer is measured from the race that is set"), new("measure-interfaces", "the stack is built of measured heights")],
            Does = b => [b.IsThreaded() == true ? "Put fork, bearings, upper race, washers and locknut together without grease." : b.Has(Slot.Stem) ? "Put fork, bearings, cover, spacers and stem together without grease." : "Put fork, bearings, cover and spacers together without grease.", b.IsThreaded() switch
            {
                true => "Count the turns that the locknut still goes on above the race: it needs its full thread.",
                false when b.HasTwoCrowns() == true => "Mark nothing by this stack: with two crowns the fork maker's rule says where steerer and legs end.",
                false when b.HasTwoCrowns() is null => "Find out first whether the fork has one crown or two: nothing is marked or cut before that is known.",
                false => b.Has(Slot.Stem) ? "Mark the steerer at the top of the whole stack, the spacers above the stem included." : "Mark nothing before the stem is there: its height belongs to the stack.",
                _ => "Find out first whether the steerer is threaded: nothing is marked or cut before that is known.",
            }, "Turn the fork to both sides and look at the height."],
            Tools = _ => [Kit.Caliper], Figures = r => [.. SteeringFigures.OfSteerer(r.Build).Select(f => f?.AsMark())],
            Checks = b => ["The bearings sit down all round.", b.IsThreaded() == true ? "The locknut has its full thread above washer and race." : b.Has(Slot.Stem) ? "Bar height and stem are the ones that stay; leave the steerer long if unsure." : "Leave the steerer long until the stem is there."],
            Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "cut-steerer", Title = "Cut the steerer", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Fork) && b.Has(Slot.Stem) && b.IsThreaded() != true, Uses = [Slot.Fork, Slot.Stem],
            After = [new("dry-fit-fork", "the mark comes from the stack as it stands; a steerer cut too short is lost")],
            Does = b => b.IsThreaded() is null
                ? ["Find out first whether the steerer is threaded or threadless, and whether the stem is a quill: only a threadless one is cut to the stem.", "Cut nothing before that is known."]
                : b.HasTwoCrowns() is null
                ? ["Find out first whether the fork has one crown or two: a steerer of two crowns goes by the fork maker's rule alone.", "Cut nothing before that is known."]
                : b.HasTwoCrowns() == true
                ? ["Cut nothing by the stack of the stem: the upper crown holds this steerer.", "See by the fork maker's sheet whether the steerer is cut at all, and where; have a cut made by a shop."]
                : TooShort(b) is { } lacks
                ? [FormattableString.Invariant($"Do not go on: the steerer is {lacks:0.#} mm too short for this stem and stack."), "Take a lower stack, a stem that is lower at the steerer, or another fork; a steerer is never lengthened."]
                : NothingComesOff(b)
                ? ["Do not cut: by the figures below nothing comes off.", "Measure once more, and go back to the dry fit where the gap under the cap is not right."]
                :
            [
                "Settle first what is open at the dry fit: a cut cannot be taken back.",
                SteeringFigures.OfSteerer(b).Any(f => f is { Id: "steerer-cut", IsKnown: true }) ? "Measure twice: the figure below lies 3 mm under the mark at the top of the stack; where it does not, find out why." : "Measure first what the figure below takes; it lies 3 mm under the mark at the top of the stack, and nothing is cut by eye alone.",
                "Take the fork out of the frame before you saw.",
                b.IsCarbonSteerer() switch
                {
                    true => "Cut carbon wet with a fine blade for carbon, and keep the dust out of the lungs.",
                    false => "Cut in a saw guide.",
                    _ => "Find out first what the steerer is made of: carbon and metal take different blades.",
                },
                "Deburr the edge inside and outside.",
            ],
            Tools = b => IsLeft(b) ? [Kit.Caliper] : [new("saw-guide", "saw guide"), b.IsCarbonSteerer() is { } carbon ? new("saw", carbon ? "fine blade for carbon" : "fine metal saw") : null, new("file", "fine file"), Kit.Caliper],
            Figures = r => SteeringFigures.OfSteerer(r.Build),
            Checks = b => b.IsThreaded() is null ? ["It is known what steerer and stem are."] : b.HasTwoCrowns() != false ? ["Steerer and legs end where the fork maker says."] : TooShort(b) is not null ? ["The steerer reaches through the stem as its maker asks."] : [NothingComesOff(b) ? null : "The cut is square.", "The gap under the cap is 2 to 3 mm, and the steerer ends not more than 5 mm below the top of the stem."],
            Cautions = b => [Lugwork.Cautions.SteeringCare, b.IsCarbonSteerer() != false ? Lugwork.Cautions.CarbonSpacers : null],
            Skill = WorkSkill.Mechanic, Time = WorkTime.HalfHour, Shop = _ => new(false, "a steerer that is cut too short or askew ruins the fork"),
        },
        new()
        {
            Id = "set-preload", Title = "Set the star nut or the expander", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Preload) || (b.Has(Slot.Fork) && b.Has(Slot.Stem) && b.IsThreaded() == false), Uses = [Slot.Fork, Slot.Preload], Joints = ["preload-in-steerer"],
            After = [new("cut-steerer", "its depth is measured from the cut end")],
            Does = b => b.IsThreaded() is null ? ["Find out first whether the steerer is threaded: a nut or an expander belongs into a threadless one alone."] : b.IsThreaded() == true ? ["Put neither a star nut nor an expander into a threaded steerer: a locknut takes its play up."] : !b.Has(Slot.Preload) ? [b.IsCarbonSteerer() switch
            {
                true => "No expander is in this build: get the one that the fork's maker names. A carbon steerer is not clamped without it.",
                false => "No star nut or expander is in this build: get one. Without it the cap has nothing to pull on.",
                _ => "Find out first what the steerer is made of, and get the star nut or expander for it: none is in this build.",
            }] : b.IsCarbonSteerer() switch
            {
                true => ["Put the maker's expander in, at the height of the stem clamp, and tighten it as its maker says."],
                false => [b.TakesStarNut() ? "Set a star nut square, below the top of the steerer; an expander as its maker says." : "Put the expander in, and tighten it to the maker's torque."],
                _ => ["Find out first what the steerer is made of: nothing is set into it before that is known."],
            },
            Tools = b => [b.TakesStarNut() ? new("star-nut-setter", "star nut setter") : null],
            Torques = b => [b.Has(Slot.Preload) && b.IsThreaded() == false && b.IsCarbonSteerer() == true ? TorqueTable.SteeringTorques.Expander : null],
            Figures = r => [SteeringFigures.NutDepth(r.Build), PlugLacks(r.Build)],
            Checks = _ => ["Never a star nut in a carbon steerer."],
            Cautions = _ => [Lugwork.Cautions.StarNutCare], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "fit-headset-cover", Title = "Make the cover of the headset ready", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.HeadsetCover), Uses = [Slot.Frame, Slot.HeadsetCover], Joints = ["headset-cover-system"],
            After = [new("route-lines", "lines that pass the cover are led first"), new("press-headset", "the cover belongs on the upper bearing that is in"), new("dry-fit-fork", "the cover was part of the measured stack")],
            Does = b => ["See that cover and centring ring are those of this headset.", b.RunsThroughHeadset() ? "With the fork out, lead the lines through upper bearing and cover without a kink." : "Lay both ready: they go on once the fork is in."],
            Checks = b => ["The edge of the cover is as wide as the head tube.", b.RunsThroughHeadset() ? "No line is pinched between cover and frame." : null], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "fit-fork", Title = "Fit the fork for good", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Fork), Uses = [Slot.Frame, Slot.Fork, Slot.Headset, Slot.HeadsetCover],
            After = [new("dry-fit-fork", "what fits is known before it is greased"), new("cut-steerer", "chips of the cut stay out of the bearings"), new("set-preload", "the cap pulls on the nut or expander"), new("route-lines", "lines past the bearings are in before the fork closes the way"), new("fit-headset-cover", "lines through the cover are led while the fork is out")],
            Does = b => ["Grease the bearings and their seats.", b.IsThreaded() == true ? "Slide the fork in, and lay on the upper bearing." : "Slide the fork in; lay on the bearing, the greased centring ring and the cover.", b.IsThreaded() switch
            {
                true => "Screw the upper race down until play is gone, then hold it with the locknut.",
                false => null,
                _ => "Find out first whether the steerer is threaded: its play is taken up by a locknut or by the cap.",
            }, .. Crowns(b)],
            Tools = b => [b.IsThreaded() == true ? KeySizes.Headset(b) : null, b.HasTwoCrowns() == true ? Kit.HexKeys : null], Consumables = _ => [Kit.Grease],
            Torques = b => [b.IsThreaded() == true ? TorqueTable.SteeringTorques.Locknut : null],
            Figures = r => [r.Build.HasTwoCrowns() == true ? WorkFigure.LacksTorque("crown-torque", "torque of the clamp bolts of both crowns", "the fork maker's figures") : null],
            Checks = b => ["The fork turns freely from stop to stop.", b.HasTwoCrowns() == true ? "Turned to either stop, no leg meets the frame." : null, b.HasTwoCrowns() == true ? "At full travel the wheel meets neither crown nor frame." : null],
            Cautions = b => [Lugwork.Cautions.SteeringCare, b.HasTwoCrowns() == false ? null : Lugwork.Cautions.ForkClassCare], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
            Shop = b => b.HasTwoCrowns() == true ? new(false, "legs that are clamped unevenly, or at a height their maker does not allow, break the fork") : null,
        },
        new()
        {
            Id = "fit-stem", Title = "Fit the stem and take up the play", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Stem), Uses = [Slot.Fork, Slot.Stem],
            Joints = ["stem-on-steerer", "quill-insertion"],
            After = [new("fit-fork", "the stem clamps the fork that is in"), new("set-preload", "the cap needs something to pull on")],
            Does = b => b.HasQuill() is null
                ? [b.HasTwoCrowns() == true ? "Find out first whether the stem bolts to the upper crown, by the fork maker's sheet, or clamps the steerer: play and torque go by it." : "Find out first whether the stem is a quill or clamps the steerer: depth, play and torque go by it.", "Tighten nothing before that is known."]
                : b.HasQuill() == true
                ? ["Grease the quill and its wedge.", "Put it in beyond its mark; it is lined up once the wheel is in.", "Tighten the wedge bolt to the maker's torque."]
                : [StemStart(b), b.HasTwoCrowns() == true ? "A stem that bolts to the upper crown goes by the fork maker's sheet alone: what follows is of one that clamps the steerer." : null, "Put spacers and stem on.", "Turn the cap bolt until the play is just gone.", b.IsCarbonSteerer() == false ? "See whether small M5 bolts or one or two large ones clamp the steerer: the torque goes by them." : null, "Tighten its clamp bolts in turn to the maker's torque; it is lined up once the wheel is in."],
            Tools = b => [StemKey(b), Kit.HexKeys, Kit.TorqueWrench], Consumables = b => [b.HasQuill() == true ? Kit.Grease : b.HasQuill() == false && b.IsCarbonSteerer() == true ? Kit.Paste : null],
            Torques = b => b.HasQuill() switch
            {
                true => [TorqueTable.SteeringTorques.QuillWedge],
                false => [TorqueTable.SteeringTorques.TopCap, .. StemTorques(b)],
                _ => [],
            },
            Figures = r => [.. SteeringFigures.OfStem(r.Build), StemLacks(r.Build)],
            Checks = b => ["No play in the headset by hand; the fork turns freely.", b.HasQuill() switch
            {
                true => "The mark of the quill is hidden.",
                false => "The steerer ends at most 5 mm below the top of the stem.",
                _ => "It is known what holds the stem.",
            }],
            Cautions = b => [Lugwork.Cautions.SteeringCare, b.HasQuill() != false ? Lugwork.Cautions.QuillInsertion : null, b.HasQuill() != true && b.IsCarbonSteerer() != false ? Lugwork.Cautions.CarbonSpacers : null],
            Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour, Shop = b => b.HasQuill() != true && b.IsCarbonSteerer() != false ? new(false, b.IsCarbonSteerer() == true ? "a carbon steerer breaks without warning where it is clamped wrongly" : "it may be a carbon steerer, which breaks without warning where it is clamped wrongly") : null,
        },
        new()
        {
            Id = "align-steering", Title = "Line the stem up with the wheel", Stage = WorkStage.Steering, Needed = b => b.Has(Slot.Stem) && b.Has(Slot.Fork) && b.Has(Slot.FrontWheel), Uses = [Slot.Fork, Slot.Stem, Slot.FrontWheel],
            After = [new("fit-stem", "the stem is on"), new("fit-front-wheel", "the stem is lined up with the wheel that is in"), new("fit-handlebar", "the bar shows whether the stem stands straight")],
            Does = b => b.HasQuill() switch
            {
                true => ["Loosen the wedge bolt a little.", "Line stem and bar up with the front wheel.", "Tighten the wedge bolt to the maker's torque."],
                false => ["Loosen the clamp bolts of the stem.", "Line stem and bar up with the front wheel.", "See that no play came in, then tighten the clamp bolts in turn to the maker's torque."],
                _ => ["Find out first whether the stem is a quill or clamps the steerer.", "Line stem and bar up with the front wheel."],
            },
            Tools = b => [StemKey(b), StemTorques(b).Length == 1 && b.HasQuill() == false ? null : Kit.HexKeys],
            Torques = b => b.HasQuill() switch
            {
                true => [TorqueTable.SteeringTorques.QuillWedge],
                false => StemTorques(b),
                _ => [],
            }, Figures = r => [StemLacks(r.Build)],
            Checks = _ => ["Held between the knees, the wheel does not turn under a firm pull at the bar.", "With the wheel against a wall and a hand on the headset, no play; with the wheel up, it turns freely."],
            Cautions = _ => [Lugwork.Cautions.SteeringCare], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "fit-shock", Title = "Fit the rear shock", Stage = WorkStage.Suspension, Needed = b => b.Has(Slot.Shock), Uses = [Slot.Frame, Slot.Shock],
            Joints = ["shock-in-frame", "shock-hardware-in-frame", "upper-shock-hardware-in-frame", "shock-bush-in-eyelet"],
            After = [new("check-pivots", "pivots are felt without the shock"), new("inspect-parts", "worn pivots are found before the shock hides them"), new("route-lines", "lines near the pivots run before the shock is in their way")],
            Does = _ => ["Press the bushes in with their tool, with a little grease; fit the hardware.", "Bolt the shock in without load, with thread lock where the frame maker asks for it, the maker's way up.", "Let the air out, or take the spring off, and move the rear through its whole travel by hand."],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench, new("bush-tool", "tool for shock bushes", true)], Consumables = _ => [Kit.Grease, Kit.Threadlock],
            Torques = _ => [TorqueTable.SteeringTorques.ShockBolts], Figures = r => SeatFigures.OfShock(r.Build),
            Checks = _ => ["Neither shock, tyre nor link meets anything in the whole travel.", "The bolts do not bottom; the eyelets turn without play."],
            Cautions = _ => [Lugwork.Cautions.ShockSizeCare], Skill = WorkSkill.Mechanic, Time = WorkTime.HalfHour,
            Shop = _ => new(false, "bushes are pressed in square with a tool of their size; one that stands askew wears the eyelet"),
        },
    ];

    /// <summary>The upper crown, which goes on with the fork and is tightened once the play is gone.</summary>
    private static string[] Crowns(Build build) => build.HasTwoCrowns() switch
    {
        true =>
        [
            "Put the upper crown on legs and steerer as the fork maker shows.", "Set both legs to one height, within the range that the fork maker marks on them.",
            "Take the play up as the fork maker says, and only then tighten the clamp bolts of both crowns, in turn, to the maker's torque.",
        ],
        false => [],
        _ => ["Find out first whether the fork has one crown or two: an upper crown is fitted, set in height and tightened by the fork maker's sheet."],
    };

    /// <summary>How much the steerer is too short for the stem, in millimetres; null where it is long enough, or not known.</summary>
    private static double? TooShort(Build build) => SteeringFigures.OfSteerer(build).FirstOrDefault(f => f is { Id: SteeringFigures.TooShort })?.Value;

    /// <summary>Nothing is sawn here.</summary>
    private static bool IsLeft(Build build) => build.IsThreaded() is null || build.HasTwoCrowns() != false || NothingComesOff(build);

    private static bool NothingComesOff(Build build) => SteeringFigures.OfSteerer(build).Any(f => f is { Id: "steerer-off", Value: <= 0 });

    private static bool TakesStarNut(this Build build) => build.Has(Slot.Preload) && build.IsThreaded() == false && build.IsCarbonSteerer() == false && build.As<Preload>(Slot.Preload)?.Kind.Is(SteererPreload.Expander) != true;

    /// <summary>The row of an expander is of carbon steerers.</summary>
    private static WorkFigure? PlugLacks(Build build) =>
        build.Has(Slot.Preload) && build.IsThreaded() == false && build.IsCarbonSteerer() == false && !build.TakesStarNut() ? WorkFigure.LacksTorque("expander-torque", "torque of the expander", "its maker's figure") : null;

    private static string? StemStart(Build build) => build.IsCarbonSteerer() switch
    {
        true => "Put assembly paste between stem and steerer.",
        false => null,
        _ => "Find out first what the steerer is made of: paste, plug and torque go by it.",
    };

    /// <summary>Never a figure for carbon with nothing inside; the large bolts of old stems are of metal steerers alone.</summary>
    private static TorqueFigure?[] StemTorques(Build build) => build.IsCarbonSteerer() switch
    {
        true => build.Has(Slot.Preload) ? [TorqueTable.SteeringTorques.StemOnCarbon] : [],
        false => [TorqueTable.SteeringTorques.StemOnSteerer, TorqueTable.SteeringTorques.StemOnSteererOld],
        _ => [],
    };

    /// <summary>The rows of a stem that clamps are of M5 bolts, beside that of old ones with large bolts.</summary>
    private static WorkTool? StemKey(Build build) => build.HasQuill() == false ? KeySizes.M5 : null;

    private static WorkFigure? StemLacks(Build build) =>
        build.HasQuill() switch
        {
            true => null,
            false => StemTorques(build).Length > 0 ? null : WorkFigure.LacksTorque("stem-torque", "torque of the stem on the steerer", build.IsCarbonSteerer() is null ? "what the steerer is made of" : "the expander of the fork's maker in the steerer, and the fork maker's figure"),
            _ => WorkFigure.LacksTorque("stem-torque", "torque of the stem", "whether the stem is a quill or clamps the steerer"),
        };
}
