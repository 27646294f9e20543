using Lugwork;

namespace FrameUp;

/// <summary>The report and the needs sheet as a person reads them.</summary>
internal static class Sheet
{
    /// <summary>The worst wins: does not fit before needs measuring before needs parts.</summary>
    public static int ExitCode(FitReport report) => report.Verdict switch
    {
        Verdict.NeedsMeasuring when report.Findings.IsEmpty => 3,
        Verdict.Fits => 0,
        Verdict.NeedsPart => 3,
        Verdict.DoesNotFit or Verdict.Unsafe => 1,
        _ => 4,
    };

    public static void WriteReport(FitReport report, TextWriter to)
    {
        if (report.Build.Name.Length > 0)
        {
            to.WriteLine(report.Build.Name);
            to.WriteLine(new string('-', report.Build.Name.Length));
        }

        to.WriteLine(report);
        foreach (Fit fit in report.Findings.Where(f => f.Verdict != Verdict.Fits).OrderByDescending(f => f.Verdict))
        {
            to.WriteLine();
            WriteFit(fit, to);
        }

        Part(to, "Fits as it is", report.Findings.Where(f => f.Verdict == Verdict.Fits).Select(f => $"{f.Joint!.Name}: {f.Sentence}"));
        Part(to, "Parts to add", report.PartsToAdd.Select(r => r.ToString()));
        Part(to, "Small parts that are not there yet", report.Build.SmallParts().Select(p => p.ToString()));
        Part(to, "To measure or ask, most telling first", report.ToMeasure.Select(m => m.ToString()));
        Part(to, "To look at before it is called inspected", report.Build.ToInspect().Select(p => p.ToString()));
        Part(to, "Measured or cut on the bicycle", report.Build.AsBuilt.Select(v => v.ToString()));
        Part(to, "Cautions (the makers' figures come first)", report.Cautions.Select(c => c.Text));
    }

    public static void WriteReasons(FitReport report, TextWriter to)
    {
        foreach (Fit fit in report.Findings.OrderByDescending(f => f.Verdict))
        {
            to.WriteLine(fit.Explain());
            to.WriteLine();
        }
    }

    private static void WriteFit(Fit fit, TextWriter to)
    {
        to.WriteLine(fit);
        to.WriteLine($"  between: {string.Join("; ", fit.Compared)}");
        foreach (Remedy remedy in fit.Remedies)
        {
            to.WriteLine($"  {remedy.Kind switch { RemedyKind.IfMeasured => "if it measures right", RemedyKind.IfRefused => "if not", _ => "remedy" }}: {remedy.What}");
        }

        to.WriteLine($"  rule: {fit.Joint!.RelationInWords} ({fit.Joint.Id}); weakest source: {fit.WeakestLeg}");
    }

    public static void WriteNeeds(Build build, TextWriter to)
    {
        to.WriteLine(build.Name.Length > 0 ? $"Needs: {build.Name}" : "Needs");
        foreach (Need need in build.Needs())
        {
            to.WriteLine();
            to.WriteLine(need.IsFilled ? $"{need.Slot.Name} (there is one)" : need.Slot.Name);
            foreach (string row in need.Rows)
            {
                to.WriteLine($"  {row}");
            }
        }
    }

    private static void Part(TextWriter to, string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length == 0)
        {
            return;
        }

        to.WriteLine();
        to.WriteLine(title);
        foreach (string line in all)
        {
            to.WriteLine($"  - {line}");
        }
    }
}
