using System.Text.Json;

namespace Lugwork;

/// <summary>The shape of a report as JSON.</summary>
internal sealed class ReportSheet
{
    public required int Format { get; init; }

    public required string Verdict { get; init; }

    public required bool Complete { get; init; }

    public required string[] Missing { get; init; }

    public required FitSheet[] Joints { get; init; }

    public required RemedySheet[] PartsToAdd { get; init; }

    public required MeasureSheet[] ToMeasure { get; init; }

    public required CautionSheet[] Cautions { get; init; }

    public required string[] NotLookedAt { get; init; }

    public required WaivedSheet[] Waived { get; init; }

    public required string[] Lapsed { get; init; }

    public required SmallPartSheet[] SmallParts { get; init; }

    public required InspectSheet[] ToInspect { get; init; }

    public required AsBuiltSheet[] AsBuilt { get; init; }

    public required AsBuiltSheet[] OldReadings { get; init; }

    public required string NotYetJudged { get; init; }
}

/// <summary>The shape of an accepted finding as JSON.</summary>
internal sealed class WaivedSheet
{
    public required string Joint { get; init; }

    public required string Verdict { get; init; }

    public required string Reason { get; init; }
}

/// <summary>The shape of one judged joint as JSON.</summary>
internal sealed class FitSheet
{
    public required string Joint { get; init; }

    public required string Verdict { get; init; }

    public required string Reason { get; init; }

    public required string Sentence { get; init; }

    public required ComparedSheet[] Compared { get; init; }

    public required RemedySheet[] Remedies { get; init; }

    public required MeasureSheet[] Measurements { get; init; }

    public required string[] Cautions { get; init; }

    public required SourceSheet[] Sources { get; init; }
}

/// <summary>The shape of one compared value as JSON.</summary>
internal sealed class ComparedSheet
{
    public required string Slot { get; init; }

    public required string Field { get; init; }

    public required string Name { get; init; }

    public required string Value { get; init; }
}

/// <summary>Reports as JSON.</summary>
internal static class ReportFile
{
    public static string Write(FitReport report)
    {
        ReportSheet sheet = new()
        {
            Format = FileFormat.Now,
            Verdict = report.Verdict.ToString(),
            Complete = report.IsComplete,
            Missing = [.. report.Missing.Select(s => s.Key)],
            Joints =
            [
                .. report.Findings.Select(f => new FitSheet
                {
                    Joint = f.Joint!.Id,
                    Verdict = f.Verdict.ToString(),
                    Reason = f.ReasonId,
                    Sentence = f.Sentence,
                    Compared = [.. f.Compared.Select(c => new ComparedSheet { Slot = c.Slot.Key, Field = c.Field, Name = c.Name, Value = c.Value })],
                    Remedies = [.. f.Remedies.Select(RemedySheet.Of)],
                    Measurements = [.. f.Measurements.Select(MeasureSheet.Of)],
                    Cautions = [.. f.Cautions.Select(c => c.Id)],
                    Sources = [.. f.Sources.Select(SourceSheet.Of)],
                }),
            ],
            PartsToAdd = [.. report.PartsToAdd.Select(RemedySheet.Of)],
            ToMeasure = [.. report.ToMeasure.Select(MeasureSheet.Of)],
            Cautions = [.. report.Cautions.Select(CautionSheet.Of)],
            NotLookedAt = [.. report.NotLookedAt.Select(j => j.Id)],
            Waived = [.. report.Waived.Select(w => new WaivedSheet { Joint = w.Fit.Joint!.Id, Verdict = w.Fit.Verdict.ToString(), Reason = w.Reason })],
            Lapsed = [.. report.Lapsed.Select(w => w.JointId)],
            SmallParts = [.. report.Build.SmallParts().Select(SmallPartSheet.Of)],
            ToInspect = [.. report.Build.ToInspect().Select(InspectSheet.Of)],
            AsBuilt = [.. report.Build.AsBuilt.Select(AsBuiltSheet.WithValue)],
            OldReadings = [.. report.OldReadings.Select(AsBuiltSheet.WithValue)],
            NotYetJudged = FitReport.NotYetJudged,
        };
        return JsonSerializer.Serialize(sheet, BuildJson.Default.ReportSheet);
    }
}
