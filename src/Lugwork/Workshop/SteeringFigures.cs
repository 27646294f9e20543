using Lugwork.Hubs;
using Lugwork.Steering;
using UnitsNet;

namespace Lugwork.Workshop;

/// <summary>Figures of headset, steerer and stem, by <see cref="SteererLength"/> and <see cref="SteererCut"/>.</summary>
internal static class SteeringFigures
{
    private const string CutName = "where the steerer is cut, from the seat of the crown race";

    /// <summary>Id of how much a steerer is too short.</summary>
    public const string TooShort = "steerer-too-short";

    public static WorkFigure? Cup(Build build, bool upper)
    {
        (string id, string name) = upper ? ("upper-cup", "upper cup or bearing across its outside") : ("lower-cup", "lower cup or bearing across its outside");
        return build.As<Headset>(Slot.Headset) is not { } headset ? null
            : (upper ? headset.UpperCup : headset.LowerCup) is { State: KnownState.Value } cup
                ? WorkFigure.Of(id, name, cup.Value.OutsideDiameter.Millimeters, "mm", cup.Value.Source) with { Words = cup.Value.FitKey }
                : WorkFigure.Lacks(id, name, "the code of this half, such as ZS44").Into(Slot.Headset, upper ? "upperCup" : "lowerCup");
    }

    /// <summary>Where the steerer is cut, what comes off and the gap that stays.</summary>
    public static WorkFigure?[] OfSteerer(Build build)
    {
        if (build.IsThreaded() == true || build.As<Fork>(Slot.Fork) is not { } fork)
        {
            return [];
        }

        if (build.IsThreaded() is null)
        {
            return [WorkFigure.Lacks("steerer-cut", CutName, "whether the steerer is threaded or threadless") with { Unit = "mm" }];
        }

        if (build.HasTwoCrowns() is not false and var crowns)
        {
            WorkFigure lacks = WorkFigure.Lacks("steerer-cut", CutName, crowns is null ? "whether the fork has one crown or two" : "the fork maker's rule for a fork with two crowns") with { Unit = "mm" };
            return [crowns is null ? lacks : lacks.Into(Slot.Fork, "steererLength", isCut: true)];
        }

        FigureInputs given = new();
        SteererLength stack = Stack(build, given);
        WorkFigure cut = given.Figure("steerer-cut", CutName, "mm", () => stack.Cut.Millimeters, Sources.SteererGap, Sources.SteererRequirement).Into(Slot.Fork, "steererLength", isCut: true);
        if (!cut.IsKnown)
        {
            return [cut];
        }

        WorkFigure shortest = given.Figure("steerer-shortest", "the shortest steerer that holds the stem", "mm", () => stack.Shortest.Millimeters, Sources.SteererRequirement);
        decimal now = given.Millimetres("the length of the steerer as it is", fork.SteererLength);
        Material? material = fork.SteererMaterial.State == KnownState.Value ? fork.SteererMaterial.Value : null;
        double lacking = fork.SteererLength.State is KnownState.Value or KnownState.Measured ? (shortest.Value ?? 0) - (double)now : 0;
        SteererCut Cut() => SteererCut.Of(stack, Length.FromMillimeters((double)now), material);
        return
        [
            cut, shortest, lacking > 0 ? given.Figure(TooShort, "what the steerer lacks for this stem and stack", "mm", () => lacking, Sources.SteererRequirement) : null,
            given.Figure("steerer-off", "what comes off", "mm", () => Cut().Off.Millimeters, Sources.SteererGap),
            given.Figure("gap-after-cut", "gap under the cap after the cut", "mm", () => Cut().GapUnderCap.Millimeters, Sources.SteererGap),
        ];
    }

    public static WorkFigure? NutDepth(Build build) =>
        build.IsThreaded() != false || build.IsCarbonSteerer() != false || build.As<Preload>(Slot.Preload)?.Kind.MayBe(SteererPreload.StarNut) != true ? null
        : WorkFigure.Of("star-nut-depth", "star nut below the top of the steerer, about", SteererCut.StarNutBelowTop.Millimeters, "mm", Sources.StarNutSetting);

    public static WorkFigure?[] OfStem(Build build)
    {
        if (build.As<Stem>(Slot.Stem) is not { } stem)
        {
            return [];
        }

        FigureInputs mark = new();
        decimal marked = mark.Millimetres("the mark of the quill, from its lower end", stem.Mark);
        return build.HasQuill() switch
        {
            true =>
            [
                mark.Figure("quill-mark", "quill at least as deep as its mark", "mm", () => (double)marked).Into(Slot.Stem, "mark"),
                stem.Fixing is { State: KnownState.Value } foot && foot.Value.LeastInsertion is { } least ? WorkFigure.Of("quill-least", "least depth of an unmarked quill", least.Millimeters, "mm", Sources.StemSizes) : null,
                SeatFigures.Stated("quill-insertion", "how deep the quill sits", "the depth of the quill in the steerer", stem.Insertion).Into(Slot.Stem, "insertion"),
            ],
            false => [Spacers("spacers-below", "spacers below the stem", stem.SpacersBelow).Into(Slot.Stem, "spacersBelow", mayBeNone: true), Spacers("spacers-above", "spacers above the stem", stem.SpacersAbove).Into(Slot.Stem, "spacersAbove", mayBeNone: true), Most(build)],
            _ => [WorkFigure.Lacks("stem-fixing", "how the stem is held", "a quill or a clamp, and its size").Into(Slot.Stem, "fixing")],
        };
    }

    private static WorkFigure? Most(Build build)
    {
        FigureInputs given = new();
        return build.As<Fork>(Slot.Fork) is not { } fork || build.IsCarbonSteerer() == false || fork.MostSpacers.State == KnownState.None ? null
            : given.Millimetres("the fork maker's largest height of spacers", fork.MostSpacers) is var most ? given.Figure("most-spacers", "most spacers below the stem by the fork maker", "mm", () => (double)most).Into(Slot.Fork, "mostSpacers") : null;
    }

    private static WorkFigure Spacers(string id, string name, Known<Dimension> height)
    {
        FigureInputs given = new();
        decimal high = given.Millimetres($"the height of the {name}", height, noneIsZero: true);
        return given.Figure(id, name, "mm", () => (double)high);
    }

    private static SteererLength Stack(Build build, FigureInputs given)
    {
        Headset? headset = build.As<Headset>(Slot.Headset);
        Stem? stem = build.As<Stem>(Slot.Stem);
        return SteererLength.OfMillimetres(
            given.Millimetres("the length of the head tube", build.Frame.HeadTubeLength),
            given.Millimetres("the stack of the lower headset half", headset?.LowerStackOrOpen ?? default, noneIsZero: true),
            given.Millimetres("the stack of the upper headset half, cover and all", headset?.UpperStackOrOpen ?? default, noneIsZero: true),
            given.Millimetres("the height of the spacers below the stem", stem?.SpacersBelow ?? default, noneIsZero: true),
            given.Millimetres("the height of the stem at the steerer", stem?.ClampHeight ?? default),
            given.Millimetres("the height of the spacers above the stem", stem?.SpacersAbove ?? default, noneIsZero: true));
    }
}
