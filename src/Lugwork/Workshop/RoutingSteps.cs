using System.Collections.Immutable;

namespace Lugwork;

/// <summary>Lines in and along the frame.</summary>
internal static class RoutingSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "route-lines", Title = "Lay cables, hoses and wires", Stage = WorkStage.Routing, Needed = b => b.HasLines(), Uses = [Slot.Frame, Slot.Fork, Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter, Slot.Dropper],
            After = [new("inspect-parts", "ports, stops and guides are looked at first"), new("prepare-shell", "chips and taps come through the shell"), new("press-headset", "a liner in the head tube is in the way of the press")],
            Does = b =>
            [
                "Note which lines run inside the frame and which outside; count ports, stops and guides.",
                "Draw a liner through for every line inside, while shell and head tube are still open.",
                b.RunsThroughHeadset() ? "Lay lines that go through the headset ready at the head tube: they are led through the upper bearing and its cover before the fork goes in." : null,
                b.PullsCables() ? "Lay housing and hoses outside in their guides, in wide curves, with ferrules at the stops and foam where a line rattles." : "Lay lines outside in their guides, in wide curves, with foam where one rattles.",
                "Leave every line long: it is cut with the bar in place, turned fully to both sides.",
            ],
            Tools = b => [Kit.Liner, b.PullsCables() ? Kit.CableCutter : null], Consumables = b => [new("liner-tube", "liner tube for lines inside the frame, foam sleeves against rattle"), b.PullsCables() ? Kit.CableEnds : null],
            Figures = r => [.. new[] { RoutingFigures.Line(r.Build, WheelEnd.Front), RoutingFigures.Line(r.Build, WheelEnd.Rear), RoutingFigures.Shift(r.Build, Slot.RearShifter), RoutingFigures.Shift(r.Build, Slot.FrontShifter), SeatFigures.Line(r.Build) }.OfType<WorkFigure>().Select(f => f with { Place = null })],
            Checks = b => ["No line is pinched, kinked or rubs on a tube.", b.HasRearTravel() != false ? "With rear suspension the lines have slack through the whole travel." : null],
            Skill = WorkSkill.Practised, Time = WorkTime.Longer,
            Shop = b => b.RunsThroughHeadset() ? new(false, "lines through the headset are cut, led and bled in one go, and redone when one is too short") : null,
        },
    ];
}

/// <summary>Lengths of hoses and housing: as stated with lever or shifter, else estimated where frame and bar are known as figures, else to be measured along the path.</summary>
internal static class RoutingFigures
{
    internal const string Path = "the way through or along this frame, measured along the path with the bar turned fully to both sides";

    public static WorkFigure? Line(Build build, WheelEnd end)
    {
        if (build.As<BrakeLever>(end.Lever) is not { } lever)
        {
            return null;
        }

        string name = $"length of the {end.Name} brake {(build.IsFluid(end.Lever) switch { true => "hose", false => "housing", _ => "line" })}";
        return SeatFigures.Stated($"{end.Name}-brake-line", name, Path, lever.HoseLength).Into(end.Lever, "hoseLength", isCut: true);
    }

    public static WorkFigure? Shift(Build build, Slot shifter) =>
        build.As<Shifter>(shifter) is not { } held || !build.NeedsLine(shifter) ? null
        : SeatFigures.Stated(shifter == Slot.RearShifter ? "shift-line" : "front-shift-line", $"length of the line of the {shifter.Name}", Path, held.HousingLength).Into(shifter, "housingLength", isCut: true);
}
