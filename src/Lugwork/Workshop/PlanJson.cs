using System.Text.Json;
using System.Text.Json.Serialization;

namespace Lugwork.Workshop;

/// <summary>A plan as JSON: ids, texts and numbers, in the order of the plan.</summary>
internal static class PlanJson
{
    public static string Write(WorkPlan plan)
    {
        PlanSheet sheet = new()
        {
            Format = FileFormat.Now,
            Name = plan.Build.Name,
            Rule = WorkPlan.MakersRule,
            Verdict = plan.Report.Verdict.ToString(),
            VerdictSaid = PlanPage.VerdictOf(plan),
            NotYetJudged = FitReport.NotYetJudged,
            Missing = [.. plan.Report.Missing.Select(s => s.Key)],
            Steps = [.. plan.Steps.Select(Of)],
            Parts = Slot.All.Where(s => plan.Build[s] is not null).ToDictionary(s => s.Key, s => plan.Build[s]!.Name ?? ""),
            Tools = [.. plan.Tools.Select(Of)],
            Consumables = [.. plan.Consumables.Select(Of)],
            SmallParts = [.. plan.SmallParts.Select(SmallPartSheet.Of)],
            ForShop = [.. plan.ForShop.Select(s => s.Id)],
            AtHome = [.. plan.AtHome.Select(s => s.Id)],
            LongestChain = [.. plan.LongestChain.Select(l => new LinkSheet { Step = l.EarlierId, Before = l.LaterId, Because = l.Because })],
            Inspection = [.. plan.Inspection.Select(p => new PointSheet { Id = p.Id, Ask = p.Ask, IsPractice = p.IsPractice, Figures = [.. p.Figures.Select(Of)], Sources = [.. p.Sources.Select(SourceSheet.Of)] })],
        };
        return JsonSerializer.Serialize(sheet, WorkJson.Default.PlanSheet);
    }

    private static StepSheet Of(WorkStep step) => new()
    {
        Id = step.Id,
        Title = step.Title,
        Stage = step.Stage.ToString(),
        Does = [.. step.Does],
        Slots = [.. step.Slots.Select(s => s.Key)],
        Joints = step.Findings.ToDictionary(f => f.Joint!.Id, f => new JointSheet { Name = f.Joint!.Name, Verdict = f.Verdict.ToString(), Says = f.Verdict == Verdict.Fits ? null : f.Sentence }),
        After = [.. step.After.Select(a => new LinkSheet { Step = a.StepId, Because = a.Because })],
        Tools = [.. step.Tools.Select(Of)],
        Consumables = [.. step.Consumables.Select(Of)],
        Torques = [.. step.Torques.Select(Of)],
        Figures = [.. step.Figures.Select(Of)],
        Checks = [.. step.Checks],
        Cautions = [.. step.Cautions.Select(CautionSheet.Of)],
        Skill = step.Skill.ToString(),
        Time = step.Time.ToString(),
        Class = PlanPage.Class(step),
        Shop = step.Shop?.Reason,
        ShopIsNeeded = step.Shop?.IsNeeded,
    };

    private static ToolSheet Of(WorkTool tool) => new() { Id = tool.Id, Name = tool.Name, IsOfTheShop = tool.IsOfTheShop, Source = tool.Source is { } source ? SourceSheet.Of(source) : null };

    private static ConsumableSheet Of(WorkConsumable supply) => new() { Id = supply.Id, Name = supply.Name };

    private static TorqueSheet Of(TorqueFigure torque) => new()
    {
        Id = torque.Id,
        Fastener = torque.Fastener,
        Ranges = [.. torque.Ranges.Select(r => new RangeSheet { Least = r.LeastHundredths / 100m, Most = r.MostHundredths / 100m, Unit = "N m", Of = r.Of.Length == 0 ? null : r.Of, InchPounds = r.ToString(TorqueScale.InchPounds), IsOfOtherParts = r.IsOfOtherParts, IsUnpublished = r.Source.IsUnpublished, Source = SourceSheet.Of(r.Source) })],
        Agreement = torque.Agreement.ToString(),
        IsUnpublished = torque.IsUnpublished,
        Said = torque.ToString(),
        Thread = TorqueFigure.InWords(torque.Treatment),
        ThreadSource = torque.TreatmentSource is { } source ? SourceSheet.Of(source) : null,
        Note = torque.Note.Length == 0 ? null : torque.Note,
    };

    private static FigureSheet Of(WorkFigure figure) => new()
    {
        Id = figure.Id,
        Name = figure.Name,
        Value = figure.Value,
        Unit = figure.Unit.Length == 0 ? null : figure.Unit,
        Doubt = figure.Doubt > 0 ? figure.Doubt : null,
        Said = figure.ToString(),
        Words = figure.Words.Length == 0 ? null : figure.Words,
        Lacking = figure.IsKnown ? null : [.. figure.Lacking],
        Sources = figure.Sources.IsEmpty ? null : [.. figure.Sources.Select(SourceSheet.Of)],
    };
}

[JsonSourceGenerationOptions(WriteIndented = true, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull, AllowDuplicateProperties = false, MaxDepth = BuildFile.DepthLimit)]
[JsonSerializable(typeof(PlanSheet))]
[JsonSerializable(typeof(RecordSheet))]
internal sealed partial class WorkJson : JsonSerializerContext;
