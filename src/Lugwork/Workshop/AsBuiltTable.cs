namespace Lugwork;

/// <summary>Where a measured figure goes in the build. A figure without a row here stays in the record.</summary>
internal static class AsBuiltTable
{
    private const decimal Pitch = 12.7m;
    private const decimal Least = 0.000001m;

    public static Build Of(WorkRecord kept)
    {
        Build build = kept.Plan.Build;
        foreach (WorkEntry entry in kept.Entries)
        {
            foreach (WorkMeasurement measured in entry.Measurements.Where(m => kept.Plan.Find(entry.Step)!.Figures.Any(f => f.Id == m.Figure)))
            {
                build = Into(build, entry.Step, measured);
            }
        }

        return build;
    }

    /// <summary>The build without what a record can measure, by which a changed part is told from a measured one.</summary>
    public static Build Bare(Build build)
    {
        foreach (string step in (ReadOnlySpan<string>)["front", "rear"])
        {
            foreach (string figure in Figures)
            {
                build = Put(build, step, figure, default);
            }
        }

        return build;
    }

    private static readonly string[] Figures = ["steerer-cut", "spacers-below", "spacers-above", "post-insertion", "post-mark", "drive-spacer", "chain-pitches", "saddle-height", "rotor-thickness"];

    /// <summary>Of these a measured 0 means that there are none; of the others it is no length, and stays in the record alone.</summary>
    private static readonly string[] MayBeNone = ["spacers-below", "spacers-above", "drive-spacer"];

    private static Build Into(Build build, string step, WorkMeasurement measured)
    {
        decimal millimetres = measured.Figure == "chain-pitches" ? Math.Min(measured.Value * Pitch, WorkRecord.MostValue) : measured.Value;
        return millimetres >= Least ? Put(build, step, measured.Figure, Known<Dimension>.Of(Dimension.OfMillimetres(millimetres), new Evidence(EvidenceKind.Measured, $"measured at {step}")))
            : millimetres == 0 && MayBeNone.Contains(measured.Figure) ? Put(build, step, measured.Figure, Known<Dimension>.None)
            : build;
    }

    private static Build Put(Build build, string step, string figure, Known<Dimension> length)
    {
        Slot rotor = step.Contains(WheelEnd.Front.Name, StringComparison.Ordinal) ? Slot.FrontRotor : Slot.RearRotor;
        (Slot? slot, Func<Part, Part>? with) = figure switch
        {
            "steerer-cut" => (Slot.Fork, p => (Fork)p with { SteererLength = length }),
            "spacers-below" => (Slot.Stem, p => (Stem)p with { SpacersBelow = length }),
            "spacers-above" => (Slot.Stem, p => (Stem)p with { SpacersAbove = length }),
            "post-insertion" => (Slot.Seatpost, p => (Seatpost)p with { Insertion = length }),
            "post-mark" => (Slot.Seatpost, p => (Seatpost)p with { Mark = length }),
            "drive-spacer" => (Slot.BottomBracket, p => (BottomBracket)p with { DriveSpacer = length }),
            "chain-pitches" => (Slot.Chain, p => (Chain)p with { Length = length }),
            "saddle-height" => (Slot.Rider, p => (Rider)p with { SaddleHeight = length }),
            "rotor-thickness" => (rotor, p => (Rotor)p with { Thickness = length }),
            _ => ((Slot?)null, (Func<Part, Part>?)null),
        };
        return slot is not null && build[slot] is { } part ? build.With(with!(part), slot) : build;
    }
}
