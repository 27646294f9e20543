using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Lugwork.Workshop;

/// <summary>Records of work as JSON, saved and resumed.</summary>
/// <remarks>With the number of the format, 1, as a build file has it. At most 1 MB and 32 deep; a repeated property, an unknown one and an unknown step are problems.</remarks>
public static class WorkRecordFile
{
    /// <summary>Reading stops at so many problems: who has them has another file. Our own bound, no source.</summary>
    private const int MostProblems = 100;

    /// <summary>Writes a record; reads back to the same entries.</summary>
    /// <param name="kept">The record.</param>
    public static string Write(WorkRecord kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        RecordSheet sheet = new()
        {
            Format = FileFormat.Now,
            Build = kept.KeptFor.Length > 0 ? kept.KeptFor : kept.Plan.Build.Name.Length == 0 ? null : kept.Plan.Build.Name,
            Steps = [.. kept.All.Select(e => new EntrySheet
            {
                Step = e.StepId,
                Own = e.IsOwn ? true : null,
                Parts = e.Parts.Length == 0 ? null : e.Parts,
                Done = e.IsDone,
                Measured = e.Measurements.IsEmpty ? null : e.Measurements.ToDictionary(m => m.FigureId, m => new MeasuredSheet { Value = m.Text, Unit = m.Unit.Length == 0 ? null : m.Unit }),
                TorqueNewtonMetres = e.Torques.IsEmpty ? null : e.Torques.ToDictionary(t => t.FastenerId, t => t.Thousandths / 1000m),
                Note = e.Note.Length == 0 ? null : e.Note,
            })],
        };
        return JsonSerializer.Serialize(sheet, WorkJson.Default.RecordSheet);
    }

    /// <summary>Reads a record and goes on with a plan; entries of steps that this plan does not need have lapsed.</summary>
    /// <param name="text">The JSON.</param>
    /// <param name="plan">The plan of the build as it is now.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static WorkRecord Read(string text, WorkPlan plan) =>
        TryRead(text, plan, out WorkRecord? kept, out ImmutableArray<SpecProblem> problems) ? kept : throw new SpecException(problems);

    /// <summary>The same, with problems as data.</summary>
    /// <param name="text">The JSON.</param>
    /// <param name="plan">The plan of the build as it is now.</param>
    /// <param name="kept">The record; null where there are problems.</param>
    /// <param name="problems">All problems, up to about a hundred; empty where true is returned.</param>
    public static bool TryRead(string text, WorkPlan plan, [NotNullWhen(true)] out WorkRecord? kept, out ImmutableArray<SpecProblem> problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(plan);
        List<SpecProblem> found = [];
        RecordSheet? sheet = Parse(text, found);
        ImmutableDictionary<string, WorkEntry> entries = ImmutableDictionary<string, WorkEntry>.Empty;
        EntrySheet?[] steps = sheet?.Steps ?? [];
        for (int i = 0; i < steps.Length && found.Count < MostProblems; i++)
        {
            string path = $"$.steps[{i}]";
            if (steps[i] is not { Step: { } step } told)
            {
                found.Add(new(path, 0, "an entry names no step", "the id of a step"));
            }
            else if (plan.Find(step) is null && told.Own != true && StepTable.All.All(r => r.Id != step))
            {
                found.Add(new($"{path}.step", 0, $"there is no step {step}", "the id of a step of this plan"));
            }
            else if (entries.ContainsKey(step))
            {
                found.Add(new($"{path}.step", 0, $"{step} stands twice", "each step once"));
            }
            else
            {
                entries = entries.Add(step, EntryOf(told, step, path, plan, found));
            }
        }

        problems = [.. found];
        kept = problems.IsEmpty ? new(plan, entries, sheet?.Build ?? "") : null;
        return kept is not null;
    }

    private static WorkEntry EntryOf(EntrySheet told, string step, string path, WorkPlan plan, List<SpecProblem> found)
    {
        // A step of one's own names its torques as it likes; one that its plan lacks by now is asked about, and takes nothing else with it.
        bool isOwn = StepTable.All.All(r => r.Id != step);
        List<WorkMeasurement> measurements = [];
        foreach ((string figure, MeasuredSheet? value) in told.Measured ?? [])
        {
            if (Read(figure, value) is { } measurement)
            {
                measurements.Add(measurement);
            }
            else
            {
                found.Add(new($"{path}.measured.{figure}", 0, "the value is none of its unit, or out of range", "0 to 100,000 mm, 1 to 1,000 pitches or teeth, or words without a unit"));
            }
        }

        foreach ((string torque, decimal value) in told.TorqueNewtonMetres ?? [])
        {
            bool isThere = isOwn || TorqueTable.Find(torque) is not null || StepTable.MakersTorques.Contains(torque);
            if (!isThere || value is < 0.001m or > (decimal)WorkRecord.MostTorque)
            {
                found.Add(new($"{path}.torqueNewtonMetres.{torque}", 0, isThere ? "the torque is out of range" : "there is no such torque", "the id of a torque row and 0.001 to 300 N m"));
            }
        }

        if (told.Note?.Length > WorkRecord.MostNote)
        {
            found.Add(new($"{path}.note", 0, "the note is too long", $"at most {WorkRecord.MostNote} characters"));
        }

        return new()
        {
            StepId = step,
            Parts = told.Parts ?? "",
            IsDone = told.Done,
            Measurements = [.. measurements],
            Torques = [.. (told.TorqueNewtonMetres ?? []).Where(t => t.Value is >= 0.001m and <= (decimal)WorkRecord.MostTorque).Select(t => new WorkTorque(t.Key, (int)Math.Round(t.Value * 1000)))],
            Note = told.Note ?? "",
        };
    }

    private static WorkMeasurement? Read(string figure, MeasuredSheet? told) => told switch
    {
        { Value: { Length: > 0 } text, Unit: WorkMeasurement.Millimetres } when decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal length) && length <= (decimal)WorkRecord.MostMillimetres
            => new(figure, Math.Round(length, 6).ToString("0.######", CultureInfo.InvariantCulture), WorkMeasurement.Millimetres),
        { Value: { Length: > 0 } text, Unit: "pitches" or "teeth" } when int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= WorkRecord.MostCount
            => new(figure, count.ToString(CultureInfo.InvariantCulture), told.Unit),
        { Value: { Length: > 0 and <= WorkRecord.NoteLimit } text, Unit: null } when text.Trim().Length > 0 => new(figure, text.Trim(), ""),
        _ => null,
    };

    private static RecordSheet? Parse(string text, List<SpecProblem> found)
    {
        string json = text.Length > 0 && text[0] == '\uFEFF' ? text[1..] : text;
        if (json.Length > BuildFile.MostBytes || Encoding.UTF8.GetByteCount(json) > BuildFile.MostBytes)
        {
            found.Add(new("$", 0, "the text is larger than 1 MB", "a record of at most 1 MB"));
            return null;
        }

        try
        {
            RecordSheet? sheet = JsonSerializer.Deserialize(json, WorkJson.Default.RecordSheet);
            if (FileFormat.Problem(sheet?.Format) is { } format)
            {
                found.Add(format);
                return null;
            }

            if (sheet?.Steps is null)
            {
                found.Add(new("$.steps", 0, "there are no steps", "an object with an array of steps"));
            }

            return sheet;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or ArgumentException)
        {
            found.Add(FileFormat.NewerThanThis(Encoding.UTF8.GetBytes(json)) ?? new((e as JsonException)?.Path ?? "$", (int)Math.Min(int.MaxValue, (e as JsonException)?.BytePositionInLine ?? 0), "it is no record", "JSON of a record of work"));
            return null;
        }
    }
}
