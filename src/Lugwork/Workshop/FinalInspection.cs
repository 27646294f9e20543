using System.Collections.Immutable;
using Lugwork.Hubs;
using static Lugwork.Sources;

namespace Lugwork.Workshop;

/// <summary>One row: when a point is asked and what fills it in.</summary>
internal sealed record FinalRule(string Id, string Ask, Func<Build, bool> Needed, Func<FitReport, WorkFigure?[]> Figures, params ImmutableArray<Source> Sources);

/// <summary>Points of an assembled bicycle, of the kind that the safety standard asks; local rules come on top.</summary>
internal static class FinalInspection
{
    private static readonly Func<FitReport, WorkFigure?[]> Nothing = _ => [];

    private static readonly Func<Build, bool> Always = _ => true;

    public static ImmutableArray<FinalRule> All { get; } =
    [
        new("post-mark", "The insertion mark of the seatpost is hidden; the post is in by its mark and the frame maker's figure, whichever is deeper.", b => b.Has(Slot.Seatpost), r => SeatFigures.OfPost(r.Build), SeatRegulation, FrameManual),
        new("quill-mark", "The insertion mark of the quill is hidden.", b => b.HasQuill() != false, r => SteeringFigures.OfStem(r.Build), StemSizes),
        new("stem-gap", "The top of the steerer ends at most 5 mm below the top of the stem, and the clamped part has no thread.", b => b.Has(Slot.Stem) && b.HasQuill() != true, r => [Of(r, "steerer-reaches-stem"), Of(r, "gap-under-cap"), .. SteeringFigures.OfSteerer(r.Build)], SteererRequirement),
        new("steering-play", "The steering turns freely by at least 60 degrees to each side and has no play.", b => b.Has(Slot.Fork), Nothing, SteeringLockClause),
        new("two-brakes", "Two brakes that do not depend on each other, one on each wheel; each holds by itself.", Always, r => [Brake(r.Build, WheelEnd.Front), Brake(r.Build, WheelEnd.Rear)], AssemblyClauses),
        new("lever-reach", "From bar to lever at most 90 mm over the 40 mm where the fingers lie, 100 mm at one point of a drop-bar lever, 75 mm for small riders; the US rule says 89 mm to the middle of the lever.", b => b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever), Nothing, LeverReachTest, LeverRegulation),
        new("lever-travel", "No lever reaches the bar under a firm pull; no fluid shows anywhere.", b => b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever), Nothing, CommonPractice),
        new("cable-ends", "The end of every cable is capped.", b => MayPull(b, Slot.FrontBrakeLever) || MayPull(b, Slot.RearBrakeLever) || b.ShiftsByCable() || b.HasDropperLine(), Nothing, CableEndClause),
        new("toe-clearance", "A shoe clears the front tyre with the wheel turned: 100 mm without foot retention, 89 mm with it; the US rule says 89 mm.", b => b.Has(Slot.Crankset) && b.Has(Slot.FrontTyre), r => [Of(r, "toe-clearance")], ToeClearanceTest, ClearanceRegulation),
        new("pedal-clearance", "The bicycle leans by 25 degrees before a pedal meets the ground.", b => b.Has(Slot.Pedals), r => [Of(r, "pedal-ground-clearance")], ClearanceRegulation),
        new("tyre-room", "Each tyre clears frame, fork and guards all round: 6 mm, 4 mm on a racing bicycle, never less than the maker's figure; the US rule says 1.6 mm.", b => b.HasAny(Slot.FrontTyre, Slot.RearTyre), r => [Judged(r, "front-tyre-on-its-rim-in-fork") ?? Of(r, "front-tyre-in-fork"), Judged(r, "rear-tyre-on-its-rim-in-frame") ?? Of(r, "rear-tyre-in-frame")], RacingClearance, WheelsManual, WheelRegulation),
        new("wheels-hold", "Each wheel stays when it is pulled hard sideways and down; axles and nuts are tight.", b => b.HasAny(Slot.FrontWheel, Slot.RearWheel), r => [Held(r.Build, WheelEnd.Front), Held(r.Build, WheelEnd.Rear)], RetentionClauses),
        new("quick-releases", "Each quick release shows whether it is open or closed, is closed, and is adjusted so that it closes firmly by hand.", b => MayHaveSkewer(b, WheelEnd.Front) || MayHaveSkewer(b, WheelEnd.Rear), r => [Held(r.Build, WheelEnd.Front), Held(r.Build, WheelEnd.Rear)], RetentionClauses),
        new("run-out", "The wheels run true.", b => b.HasAny(Slot.FrontWheel, Slot.RearWheel), Nothing, CommonPractice),
        new("pressure", "The pressure is at most the lower of the largest ones marked on tyre and rim, and at least the least of the tyre.", b => b.HasAny(Slot.FrontTyre, Slot.RearTyre), r => [Pressure(r.Build, WheelEnd.Front), Pressure(r.Build, WheelEnd.Rear)], LowerMarking),
        new("bar-width", "The handlebar is 350 to 1000 mm wide, and its grips at most 400 mm above the saddle at its lowest.", b => b.Has(Slot.Handlebar), r => [SeatFigures.Stated("bar-width", "width of the handlebar", "the width of the handlebar", r.Build.As<Handlebar>(Slot.Handlebar)!.Width).Into(Slot.Handlebar, "width")], AssemblyClauses),
        new("bar-ends", "Both ends of the bar are plugged; no grip turns.", b => b.Has(Slot.Handlebar), Nothing, CommonPractice),
        new("threads-shown", "No thread stands out of its nut by more than its diameter where a rider can touch it.", Always, Nothing, AssemblyClauses),
        new("saddle-fixed", "The saddle does not move under hand force, forward, sideways or up.", b => b.Has(Slot.Saddle), Nothing, CommonPractice),
        new("saddle-height", "The saddle stands at the rider's height; the rider can stand over the frame.", b => b.Has(Slot.Saddle), r => [SeatFigures.SaddleHeight(r.Build), Of(r, r.Build.Has(Slot.Fork) ? "standover-with-fork" : "standover")], CommonPractice),
        new("pedals-tight", "Both pedals are tight; left and right are not exchanged.", b => b.Has(Slot.Pedals), Nothing, ThreadConcepts),
        new("gears", "The chain falls off neither side in any gear; nothing touches the spokes.", b => b.HasAny(Slot.RearDerailleur, Slot.FrontDerailleur), Nothing, CommonPractice),
        new("load", "Rider, luggage and riding are within every maker's limit.", Always, Loads, CommonPractice),
        new("reflectors", "Reflectors as the local rules ask; by the US rule one white or colourless in front, one red behind, two on each pedal, and one at each side or reflecting tyres or rims.", Always, Nothing, ReflectorRegulation),
        new("lights-and-bell", "Lights and bell are as the local rules ask for; they differ by country.", Always, Nothing, CommonPractice),
        new("bell-in-germany", "Where the bicycle is ridden in Germany: a bell that is clearly heard, lights that are approved, and two yellow reflectors in each wheel or white rings.", Always, Nothing, GermanRoadRules),
        new("weight-share", "With the rider seated fully rearward, the front wheel carries at least a quarter of bicycle and rider.", b => b.Has(Slot.Fork) && b.Has(Slot.Saddle), Nothing, AssemblyClauses),
        new("above-saddle", "Nothing of the saddle or its frame stands more than 125 mm above the saddle, at the line of the post; the US rule says so.", b => b.Has(Slot.Saddle), Nothing, SeatRegulation),
        new("retention", "With its quick release open, the front wheel is still held by lips or nuts, and does not drop out by itself.", b => MayHaveSkewer(b, WheelEnd.Front), r => [Lips(r.Build)], RetentionClauses),
        new("brake-sides", "Each lever works the brake that the rider expects and the country asks for.", b => b.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever), r => [Of(r, "front-brake-hand"), Of(r, "brake-hands-together"), Of(r, "levers-one-each-side")], BrakeHands, BrakeHandsByCountry),
        new("sharp-edges", "No edge, burr, wire or bolt end is sharp where hands, legs or clothes come.", Always, Nothing, CommonPractice),
        new("hub-brake-arm", "The arm of each hub brake is held, and does not move under a firm pull.", b => b.HasHubBrake(WheelEnd.Front) != false || b.HasHubBrake(WheelEnd.Rear) != false, r => [Of(r, "hub-brake-arm-on-frame")], DrumArmClip),
        new("carbon", "No crack, whitening or dull sound at any clamp of carbon.", b => b.MayHaveCarbon(), Nothing, CarbonPostCracks),
    ];

    public static ImmutableArray<FinalPoint> Of(FitReport report) =>
        [.. All.Where(r => r.Needed(report.Build)).Select(r => new FinalPoint { Id = r.Id, Ask = r.Ask, Figures = [.. r.Figures(report).OfType<WorkFigure>()], Sources = r.Sources })];

    private static bool MayHaveSkewer(Build build, WheelEnd end) =>
        build.Has(end.Wheel) && (build.HeldBy(end) is not { } held || held == HubAttachment.QuickRelease);

    /// <summary>There is a lever, and it is not known to hold fluid.</summary>
    private static bool MayPull(Build build, Slot lever) => build.Has(lever) && build.IsFluid(lever) != true;

    /// <summary>What brakes one end, by the parts that are there.</summary>
    private static WorkFigure Brake(Build build, WheelEnd end)
    {
        string[] there = [.. new[] { end.Caliper, end.RimBrake }.Where(build.Has).Select(s => s.Name), .. build.HasHubBrake(end) == true ? new[] { "a brake in the hub" } : []];
        return there.Length == 0 ? WorkFigure.Lacks($"{end.Name}-brake", $"{end.Name} brake", "a brake at this end: none is in the build") : WorkFigure.Told($"{end.Name}-brake", $"{end.Name} brake", string.Join(" and ", there));
    }

    private static WorkFigure? Held(Build build, WheelEnd end) => !build.Has(end.Wheel) ? null
        : build.HeldBy(end) is { } held ? WorkFigure.Told($"{end.Name}-held", $"what holds the {end.Name} wheel", held.TradeName)
        : WorkFigure.Lacks($"{end.Name}-held", $"what holds the {end.Name} wheel", "what holds the hub");

    private static WorkFigure? Lips(Build build) => build.As<Fork>(Slot.Fork) is not { } fork ? null
        : fork.FrontLips.State is KnownState.Value or KnownState.None ? WorkFigure.Told("front-lips", "lips of the fork", fork.FrontLips.InTradeWords())
        : WorkFigure.Lacks("front-lips", "lips of the fork", "whether the ends of the fork have lips");

    private static WorkFigure? Pressure(Build build, WheelEnd end) => build.Has(end.Tyre) ? TyreFigures.Lowest(build, end) : null;

    /// <summary>Every limit that was judged; where none was, what that takes.</summary>
    private static WorkFigure?[] Loads(FitReport report)
    {
        WorkFigure?[] judged = [.. report.Findings.Where(f => f.Joint!.Id.StartsWith("rider-on-", StringComparison.Ordinal)).Select(f => Of(report, f.Joint!.Id))];
        return judged.Length > 0 ? judged : [WorkFigure.Lacks("load", "rider and luggage on each part", "the mass of rider and luggage", "the makers' limits")];
    }

    /// <summary>What the check of this build says; what it lacks, where its parts are there and nobody looked; null where a part is not there, or another row speaks in its place.</summary>
    private static WorkFigure? Of(FitReport report, string joint) =>
        Judged(report, joint) is { } told ? told
        : JointTable.All.First(j => j.Id == joint) is { IsOnlyWhereLooked: true, MostHaveNone: false } row && row.Slots.All(report.Build.Has) && !row.GivesWay.Any(g => report.Build[g.Slot] is { } part && g.Speaks(part))
            ? WorkFigure.Lacks(joint, row.Name, string.Join(row.NeedsAllSeen ? " and " : " or ", row.Seen.Select(i => row.Inputs[i].Called).Distinct())) : null;

    private static WorkFigure? Judged(FitReport report, string joint) =>
        report.Findings.FirstOrDefault(f => f.Joint!.Id == joint) is { Joint: { } judged } fit ? WorkFigure.Told(joint, judged.Name, $"{fit.Sentence} ({Verdicts.InWords(fit.Verdict)})", [.. fit.Sources]) : null;
}
