namespace Lugwork.Workshop;

/// <summary>What wears and can be measured on the used parts of a build; judged once it stands in the build.</summary>
internal static class WearFigures
{
    public static WorkFigure?[] Of(Build build)
    {
        Slot[] used = [.. build.ToInspect().Select(p => p.Slot)];
        return
        [
            used.Contains(Slot.Chain) && !build.IsBelt() ? SeatFigures.Stated("chain-over-24", "length of the chain over 24 pitches, pulled straight", "the length over 24 pitches, 304.8 mm when new", build.As<Chain>(Slot.Chain)!.Over24Pitches).Into(Slot.Chain, "over24Pitches") : null,
            Rotor(build, used, WheelEnd.Front), Rotor(build, used, WheelEnd.Rear), Rim(build, used, WheelEnd.Front), Rim(build, used, WheelEnd.Rear),
        ];
    }

    private static WorkFigure? Rotor(Build build, Slot[] used, WheelEnd end) => !used.Contains(end.Rotor) ? null
        : SeatFigures.Stated($"{end.Name}-rotor-thickness", $"thickness of the {end.Name} rotor at its thinnest place", "the thickness, by micrometer where the pads run", build.As<Rotor>(end.Rotor)!.Thickness).Into(end.Rotor, "thickness");

    /// <summary>Asked where a pad rubs on the rim, or may.</summary>
    private static WorkFigure? Rim(Build build, Slot[] used, WheelEnd end) => !used.Contains(end.Wheel) || build.As<Wheel>(end.Wheel)!.BrakeTrack.State == KnownState.None || build.Has(end.Caliper) ? null
        : SeatFigures.Stated($"{end.Name}-rim-wall", $"wall of the {end.Name} rim at the brake track", "the wall, by a caliper that reaches behind the hook", build.As<Wheel>(end.Wheel)!.RimWall).Into(end.Wheel, "rimWall");
}
