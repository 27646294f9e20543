using Lugwork.Brakes;

namespace Lugwork.Workshop;

/// <summary>Adapter and thickness of a disc brake, by <see cref="AdapterChoice"/> and what rotor and caliper state.</summary>
internal static class BrakeFigures
{
    /// <summary>Which adapter the mount takes for the rotor, and how far the pads move out.</summary>
    public static WorkFigure?[] Adapter(Build build, WheelEnd end)
    {
        string name = $"adapter for the {end.Name} rotor";
        if (build.As<Caliper>(end.Caliper) is not { } caliper)
        {
            return [];
        }

        Known<BrakeMount> mount = build.MountOf(end);
        Known<RotorSize> rotor = build.As<Rotor>(end.Rotor)?.Size ?? default;
        if (mount.State != KnownState.Value || caliper.Mounting.State != KnownState.Value || rotor.State != KnownState.Value)
        {
            string?[] lacking = [mount.State != KnownState.Value ? "the mount of frame or fork" : null, caliper.Mounting.State != KnownState.Value ? "how the caliper is held" : null, rotor.State != KnownState.Value ? "the size of the rotor" : null];
            return [WorkFigure.Lacks("brake-adapter", name, [.. lacking.OfType<string>()])];
        }

        Known<Dimension> largest = end.IsFront ? build.As<Fork>(Slot.Fork)?.LargestFrontRotor ?? default : build.Frame.LargestRearRotor;
        RotorSize? most = largest.State == KnownState.Value ? RotorSize.All.LastOrDefault(s => s.FitCode <= largest.Value.Millimetres) : null;
        AdapterChoice choice = AdapterChoice.Of(mount.Value, caliper.Mounting.Value, rotor.Value, most);
        return
        [
            WorkFigure.Told("brake-adapter", name, choice.Adapter.Length > 0 ? choice.Adapter : choice.Limit.Verdict == Verdict.Unsafe ? choice.Limit.Sentence : choice.OnMount.Sentence, [.. choice.OnMount.Sources]),
            WorkFigure.Of("rotor-offset", "pads further out than on the mount's own rotor, along the radius", (rotor.Value.FitCode - mount.Value.NativeRotorMillimetres) / 2.0, "mm", Sources.RotorInterchange, Sources.Derived),
        ];
    }

    /// <summary>Mount, caliper and rotor are known, and the caliper sits on the mount as it is.</summary>
    public static bool SitsWithoutAdapter(Build build, WheelEnd end) =>
        build.MountOf(end) is { State: KnownState.Value } mount && build.As<Caliper>(end.Caliper)?.Mounting is { State: KnownState.Value } foot && build.As<Rotor>(end.Rotor)?.Size is { State: KnownState.Value } rotor
        && AdapterChoice.Of(mount.Value, foot.Value, rotor.Value, null).OnMount.Verdict == Verdict.Fits;

    public static WorkFigure? Thickness(Build build, WheelEnd end) => build.As<Rotor>(end.Rotor) is not { } rotor ? null
        : SeatFigures.Stated("rotor-thickness", "thickness of the rotor, against the least that is stamped on it", "the thickness of the rotor, by caliper where the pads run", rotor.Thickness).Into(end.Rotor, "thickness");
}
