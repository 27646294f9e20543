using Lugwork.Workshop;
using System.Collections.Immutable;
using System.Text.Json;

namespace Lugwork.Fuzz;

/// <summary>Records of work, on with the plan of a committed build.</summary>
internal sealed class RecordTarget : TextTarget
{
    private static readonly WorkPlan Plan = BuildTarget.Builds.MaxBy(b => Slot.All.Count(s => b[s] is not null))!.WorkPlan();

    public override string Name => "record";

    public override int MostBytes => 4_000;

    public override IEnumerable<byte[]> Words => Plan.Steps.SelectMany(s => s.Figures.Select(f => f.Id).Concat(s.Torques.Select(t => t.Id)).Append(s.Id)).Distinct()
        .Concat(["\"step\": \"", "\"done\": true", "\"own\": true", "\"measured\": {\"", "\"torqueNewtonMetres\": {\"", "\"value\": \"", "\"unit\": \"mm\"", "\"unit\": \"teeth\"", "\"unit\": \"pitches\"", "\"note\": \"", "\"parts\": \"", "\"build\": \"", "\"format\": 1", "null", "0.001", "300", "300.0001", "5e-1", "0.0005", "1e-28", "\"\\uD800\"", "}, {"]).Select(Bytes);

    public override void Run(string text)
    {
        bool good = WorkRecordFile.TryRead(text, Plan, out WorkRecord? kept, out ImmutableArray<SpecProblem> problems);
        Law.Holds(good == problems.IsEmpty && good == kept is not null, "a record is refused with its problems", text);
        if (!good)
        {
            return;
        }

        string written = WorkRecordFile.Write(kept!);
        Law.Holds(WorkRecordFile.TryRead(written, Plan, out WorkRecord? back, out ImmutableArray<SpecProblem> wrong), "what is written of a record is read", $"{string.Join(", ", wrong)} in {written}");
        Law.Same(written, WorkRecordFile.Write(back!), "a record is written the same again");
        Law.Same(string.Join('\n', kept!.Entries.Concat(kept.Lapsed)), string.Join('\n', back!.Entries.Concat(back.Lapsed)), "a record has the same entries again");
        NothingLost(kept, text);
        Law.Holds(!kept.Questions.IsDefault && !kept.Next.IsDefault, "a record says what is open");
        BuildTarget.Whole(kept.AsBuilt());
    }

    private static void NothingLost(WorkRecord kept, string text)
    {
        using JsonDocument file = JsonDocument.Parse(text.TrimStart('\uFEFF'));
        foreach (JsonElement step in file.RootElement.GetProperty("steps").EnumerateArray())
        {
            WorkEntry entry = kept.Entries.Concat(kept.Lapsed).Single(e => e.StepId == step.GetProperty("step").GetString());
            Law.Holds(Count(step, "measured") == entry.Measurements.Length, "nothing measured is lost", text);
            Law.Holds(Count(step, "torqueNewtonMetres") == entry.Torques.Length, "no torque is lost", text);
            Law.Same(step.TryGetProperty("note", out JsonElement note) ? note.GetString() ?? "" : "", entry.Note, "a note is kept");
            Law.Holds(entry.IsDone == (step.TryGetProperty("done", out JsonElement done) && done.GetBoolean()), "what is done stays done", text);
        }
    }

    private static int Count(JsonElement step, string property) => step.TryGetProperty(property, out JsonElement list) && list.ValueKind == JsonValueKind.Object ? list.EnumerateObject().Count() : 0;
}
