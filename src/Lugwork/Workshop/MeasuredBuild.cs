namespace Lugwork.Workshop;

/// <summary>What a record measured, as values of the parts of its build.</summary>
internal static class MeasuredBuild
{
    /// <summary>The build with every measured figure that has a field in a part.</summary>
    /// <param name="kept">The record.</param>
    /// <param name="refused">Takes what a part refused, and why.</param>
    public static Build Of(WorkRecord kept, List<string> refused)
    {
        Build build = kept.Plan.Build;
        foreach (WorkEntry entry in kept.Entries)
        {
            WorkStep step = kept.Plan.Find(entry.StepId)!;
            foreach (WorkMeasurement measured in entry.Measurements)
            {
                if (Taken(step, measured) is var (place, text))
                {
                    if (build.TryBuilt(place.Slot, place.Field, text, place.IsCut ? AsBuiltKind.Cut : AsBuiltKind.Measured, NoteOf(entry.StepId), null, out Build built, out SpecProblem? problem))
                    {
                        build = built;
                    }
                    else
                    {
                        refused.Add($"{entry.StepId}: {measured} stays in the record alone: {problem!.Reason}");
                    }
                }
            }
        }

        return build;
    }

    /// <summary>The note of a value that a step brought.</summary>
    public static string NoteOf(string step) => $"at {step}";

    /// <summary>The build as it was before anything was measured or cut, by which a changed part is told from a measured one.</summary>
    public static Build Bare(Build build)
    {
        foreach (AsBuiltValue value in build.AsBuilt)
        {
            if (build[value.Slot] is { } part && PartForms.Of(value.Slot).TrySet(part, value.Field, value.Was, Evidence.AsValue, out Part was, out _))
            {
                build = build.AsStated(was, value.Slot);
            }
        }

        return build;
    }

    /// <summary>Where what was written down goes, and as what; null where it counts for nothing: of another unit, no length, only marked, or of a figure without a field.</summary>
    public static (FigurePlace Place, string Text)? Taken(WorkStep step, WorkMeasurement measured) =>
        step.Figures.FirstOrDefault(f => f.Id == measured.FigureId) is { Place: { IsMark: false } place } figure && figure.Unit == measured.Unit && TextOf(measured, place) is { } text ? (place, text) : null;

    private static string? TextOf(WorkMeasurement measured, FigurePlace place) =>
        measured.Unit != WorkMeasurement.Millimetres || measured.Text != "0" ? measured.Text : place.MayBeNone ? "none" : null;
}
