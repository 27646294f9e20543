using System.Text.Json;

namespace Lugwork;

/// <summary>The shape of a report as JSON.</summary>
internal sealed class ReportSheet
{
    public required string Verdict { get; init; }

    public required bool Complete { get; init; }

    public required string[] Missing { get; init; }

    public required FitSheet[] Joints { get; init; }

    public required string[] PartsToAdd { get; init; }

    public required string[] ToMeasure { get; init; }

    public required string[] Cautions { get; init; }

    public required string[] NotLookedAt { get; init; }

    public required WaivedSheet[] Waived { get; init; }

    public required string[] Lapsed { get; init; }

    public required string[] SmallParts { get; init; }

    public required string[] ToInspect { get; init; }

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

    public required Dictionary<string, string> Compared { get; init; }

    public required string[] Remedies { get; init; }

    public required string[] Sources { get; init; }
}

/// <summary>Reports as JSON.</summary>
public static class ReportFile
{
    /// <summary>Writes a report: verdicts as their enum names, joints by id.</summary>
    /// <param name="report">The report.</param>
    public static string Write(FitReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        ReportSheet sheet = new()
        {
            Verdict = report.Verdict.ToString(),
            Complete = report.IsComplete,
            Missing = [.. report.Missing.Select(s => s.Key)],
            Joints =
            [
                .. report.Fits.Select(f => new FitSheet
                {
                    Joint = f.Joint!.Id,
                    Verdict = f.Verdict.ToString(),
                    Reason = f.ReasonId,
                    Sentence = f.Sentence,
                    Compared = f.Compared.ToDictionary(),
                    Remedies = [.. f.Remedies.Select(r => r.What)],
                    Sources = [.. f.Sources.Select(s => s.ToString())],
                }),
            ],
            PartsToAdd = [.. report.PartsToAdd.Select(r => r.What)],
            ToMeasure = [.. report.ToMeasure.Select(m => m.ToString())],
            Cautions = [.. report.Cautions.Select(c => c.Text)],
            NotLookedAt = [.. report.NotLookedAt.Select(j => j.Id)],
            Waived = [.. report.Waived.Select(w => new WaivedSheet { Joint = w.Fit.Joint!.Id, Verdict = w.Fit.Verdict.ToString(), Reason = w.Reason })],
            Lapsed = [.. report.Lapsed.Select(w => w.JointId)],
            SmallParts = [.. report.Build.SmallParts().Select(p => p.Id)],
            ToInspect = [.. report.Build.ToInspect().Select(p => p.ToString())],
            AsBuilt = [.. report.Build.AsBuilt.Select(AsBuiltSheet.WithValue)],
            OldReadings = [.. report.OldReadings.Select(AsBuiltSheet.WithValue)],
            NotYetJudged = FitReport.NotYetJudged,
        };
        return JsonSerializer.Serialize(sheet, BuildJson.Default.ReportSheet);
    }
}
