using System.Collections.Immutable;

namespace Lugwork.Workshop;

/// <summary>What stands out in a record.</summary>
internal static class RecordQuestions
{
    /// <summary>Figures of safety that have to be known or written down, beside those that are cut.</summary>
    private static readonly ImmutableArray<string> OfSafety = ["post-mark", "post-insertion", "quill-insertion", "rotor-thickness"];

    public static ImmutableArray<string> Of(WorkRecord kept)
    {
        ImmutableArray<string>.Builder told = ImmutableArray.CreateBuilder<string>();
        if (kept.KeptFor.Length > 0 && kept.KeptFor != kept.Plan.Build.Name)
        {
            told.Add($"the record was kept for \u201C{kept.KeptFor}\u201D, and this plan is of another build: see that it is the same bicycle");
        }

        foreach (WorkEntry entry in kept.Entries)
        {
            WorkStep step = kept.Plan.Find(entry.StepId)!;
            if (entry.Parts.Length > 0 && entry.Parts != kept.PartsOf(entry.StepId))
            {
                told.Add($"{step.Id} was written down with other parts than this build has now: look whether it still stands");
            }

            told.AddRange(step.After.Where(a => entry.IsDone && !kept.IsDone(a.StepId)).Select(a => $"{step.Id} is done and {a.StepId} is not: {a.Because}"));
            told.AddRange(step.Open.Where(f => entry.IsDone && f.Verdict is Verdict.DoesNotFit or Verdict.Unsafe or Verdict.NeedsMeasuring).Select(f => $"{step.Id} is done, and {f.Joint!.Id} {Verdicts.InWords(f.Verdict)}"));
            foreach (WorkTorque applied in entry.Torques.Where(t => !step.Figures.Any(f => f.Id == t.FastenerId && f.Unit == WorkFigure.NewtonMetres)))
            {
                TorqueFigure? row = step.Torques.FirstOrDefault(t => t.Id == applied.FastenerId);
                if (row is null || Doubt(row, applied) is { } doubt)
                {
                    told.Add(row is null ? $"{step.Id}: {applied} is of a fastener that the step no longer names" : $"{step.Id}: {applied} is {Doubt(row, applied)}; the maker's figure rules");
                }
            }

            told.AddRange(entry.Torques.Where(t => step.Figures.Any(f => f.Id == t.FastenerId && f.Unit == WorkFigure.NewtonMetres)).Select(t => (Torque: t, Doubt: LikeTorques.Doubt(t))).Where(t => t.Doubt is not null).Select(t => $"{step.Id}: {t.Torque} is {t.Doubt}"));
            if (entry.IsDone && Unwritten(kept, step, entry) is { Length: > 0 } unwritten)
            {
                told.Add($"{step.Id} is done, and no torque is written down for {string.Join(", ", unwritten)}");
            }

            told.AddRange(entry.Measurements.Where(m => !IsInBuild(kept.Plan.Build, step, m)).Select(m => Nothing(step, m)).OfType<string>());
        }

        told.AddRange(kept.Entries.Where(e => e.IsDone).SelectMany(e => kept.Plan.Find(e.StepId)!.Figures.Where(f => IsOpen(kept, e, f)).Select(f => $"{e.StepId} is done, and {f.Id} was neither known nor written down")));
        told.AddRange(Differing(kept));
        List<string> refused = [];
        _ = MeasuredBuild.Of(kept, refused);
        told.AddRange(refused);
        told.AddRange(kept.Lapsed.Select(e => $"{e.StepId} is no step of this build any more: its entry has lapsed"));
        return told.ToImmutable();
    }

    /// <summary>Why what was written down counts for nothing; null where it counts.</summary>
    private static string? Nothing(WorkStep step, WorkMeasurement measured) =>
        step.Figures.FirstOrDefault(f => f.Id == measured.FigureId) is not { } figure ? $"{step.Id}: {measured} is of a figure that the step no longer names"
        : figure.Unit != measured.Unit ? $"{step.Id}: {measured} counts for nothing: {figure.Id} is {WorkRecord.InWords(figure.Unit)}"
        : figure.Place is { IsMark: false } && MeasuredBuild.Taken(step, measured) is null ? $"{step.Id}: {measured} counts for nothing: it is no length of {figure.Id}" : null;

    /// <summary>A cut, or a figure of safety, that stands neither in the build nor among what counts of the entry.</summary>
    private static bool IsOpen(WorkRecord kept, WorkEntry entry, WorkFigure figure) =>
        figure is { IsKnown: false, Place: { IsMark: false } place } && (place.IsCut || OfSafety.Contains(figure.Id))
        && kept.Plan.Build[place.Slot] is { } part && PartForms.Of(place.Slot).TextOf(part, place.Field) is null or "unknown"
        && entry.Measurements.All(m => m.FigureId != figure.Id || MeasuredBuild.Taken(kept.Plan.Find(entry.StepId)!, m) is null);

    /// <summary>One field of a part with two answers: the later step counts. A step that sets it anew, such as the saddle height, may differ from the one that fitted it.</summary>
    private static IEnumerable<string> Differing(WorkRecord kept)
    {
        Dictionary<(Slot, string), (string Step, WorkMeasurement Said, FigurePlace Place)> first = [];
        foreach (WorkEntry entry in kept.Entries)
        {
            WorkStep step = kept.Plan.Find(entry.StepId)!;
            foreach (WorkMeasurement measured in entry.Measurements)
            {
                if (step.Figures.FirstOrDefault(f => f.Id == measured.FigureId) is not { Place: { } place } figure || figure.Unit != measured.Unit)
                {
                    continue;
                }

                if (first.TryGetValue((place.Slot, place.Field), out var earlier) && earlier.Said.Text != measured.Text && step.Stage != WorkStage.SettingUp && !IsCutAfter(earlier.Place, place))
                {
                    yield return $"{step.Id} says {measured}, and {earlier.Step} says {earlier.Said}: the later one counts; measure once more";
                }

                first[(place.Slot, place.Field)] = (step.Id, measured, place);
            }
        }
    }

    /// <summary>What was measured before it was cut is longer, as it should be; a mark says where the cut was to come.</summary>
    private static bool IsCutAfter(FigurePlace earlier, FigurePlace later) => later.IsCut && earlier is { IsCut: false, IsMark: false };

    /// <summary>
    /// Torques of a step that is done which stand neither there nor in the last pass, where that is done. Of rows that exclude each other one is enough;
    /// of a torque that only the maker names a note says as well that there is none, such as of grips without a clamp.
    /// </summary>
    private static string[] Unwritten(WorkRecord kept, WorkStep step, WorkEntry entry)
    {
        HashSet<string> written = [.. entry.Torques.Select(t => t.FastenerId)];
        if (step.Stage < WorkStage.FinalChecks && kept.IsDone(FinalSteps.LastPass))
        {
            written.UnionWith(kept.Entries.Single(e => e.StepId == FinalSteps.LastPass).Torques.Select(t => t.FastenerId));
        }

        return
        [
            .. step.Torques.Where(t => !t.IsByHand).GroupBy(t => t.Either.Length > 0 ? t.Either : t.Id).Where(g => !g.Any(t => written.Contains(t.Id)) && !(entry.Note.Length > 0 && g.All(t => t.OnlyWhere.Length > 0))).Select(g => string.Join(" or ", g.Select(t => t.Id)) + (g.All(t => t.OnlyWhere.Length > 0) ? " (or a note that there is none)" : "")),
            .. entry.Note.Length > 0 ? [] : step.Figures.Where(f => f.Unit == WorkFigure.NewtonMetres && !written.Contains(f.Id)).Select(f => $"{f.Id} (or a note that there is none)"),
        ];
    }

    /// <summary>What speaks against a torque; null where a page prints it for this fastener.</summary>
    private static string? Doubt(TorqueFigure row, WorkTorque applied)
    {
        TorqueRange[] within = [.. row.Ranges.Where(r => r.Holds(applied.Applied))];
        return within.Any(r => !r.IsOfOtherParts && !r.Source.IsUnpublished) ? null
            : within.Length == 0 ? $"outside every figure that was read ({string.Join("; ", row.Ranges)})"
            : within.All(r => r.IsOfOtherParts) ? $"within the figure of other parts alone ({string.Join("; ", within.Select(r => $"{r}, {r.Of}"))})"
            : $"within a figure alone that no page was read for ({string.Join("; ", within.Where(r => !r.IsOfOtherParts).Select(r => $"{r}, {r.Source.Title}"))})";
    }

    /// <summary>The build has it from this step already, so that nothing is lacking there any more.</summary>
    private static bool IsInBuild(Build build, WorkStep step, WorkMeasurement measured) =>
        build.AsBuilt.Any(v => v.Note == MeasuredBuild.NoteOf(step.Id) && (v.Value == measured.Text || measured.FigureId.EndsWith(v.Field, StringComparison.OrdinalIgnoreCase)));
}
