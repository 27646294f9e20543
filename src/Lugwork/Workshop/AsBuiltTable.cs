namespace Lugwork;

/// <summary>Where a measured figure goes in the build. A figure without a row here stays in the record.</summary>
internal static class AsBuiltTable
{
    private const decimal Pitch = 12.7m;

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

    private static Build Into(Build build, string step, WorkMeasurement measured)
    {
        Known<Dimension> length = measured.Value == 0 ? Known<Dimension>.None : Known<Dimension>.Of(
            Dimension.OfMillimetres(measured.Figure == "chain-pitches" ? Math.Min(measured.Value * Pitch, WorkRecord.MostValue) : measured.Value),
            new Evidence(EvidenceKind.Measured, $"measured at {step}"));
        Slot rotor = step.Contains(WheelEnd.Front.Name, StringComparison.Ordinal) ? Slot.FrontRotor : Slot.RearRotor;
        (Slot? slot, Func<Part, Part>? with) = measured.Figure switch
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
