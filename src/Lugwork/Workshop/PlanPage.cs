using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Lugwork.Workshop;

/// <summary>A title and the lines below it.</summary>
internal sealed record PlanBlock(string Title, ImmutableArray<string> Lines, bool IsList = true, bool IsWarning = false, bool IsTicked = false)
{
    /// <summary>The lines are done one after the other.</summary>
    public bool IsOrdered { get; init; }

    /// <summary>For each line the place of the step that it names, from 1; empty where they name none.</summary>
    public ImmutableArray<int> Steps { get; init; } = [];
}

/// <summary>What a plan says, block by block, so that text, Markdown and HTML say the same. Nothing is escaped here.</summary>
internal static class PlanPage
{
    public static string Title(WorkPlan plan) => OneLine(plan.Build.Name).Trim().Length == 0 ? "Work plan" : $"Work plan: {plan.Build.Name}";

    /// <summary>What stands before the steps.</summary>
    public static ImmutableArray<PlanBlock> Head(WorkPlan plan)
    {
        Fit[] open = [.. plan.Report.Findings.Where(f => f.Verdict != Verdict.Fits)];
        bool bad = open.Any(f => f.Verdict is Verdict.DoesNotFit or Verdict.Unsafe);
        string verdict = VerdictOf(plan);
        ImmutableArray<PlanBlock> all =
        [
            new("Before you begin", [WorkPlan.MakersRule, verdict, FitReport.NotYetJudged], false, bad),
            new("Still empty", [.. plan.Report.Missing.Select(s => s.Name)], IsWarning: true),
            new("Not settled yet", [.. open.OrderByDescending(f => f.Verdict).Select(Told)], IsWarning: true),
            new("Parts", [.. Slot.All.Where(s => plan.Build[s] is not null).Select(s => plan.Build[s]!.Name is { Length: > 0 } name ? $"{s.Name}: {name}" : s.Name)]),
        ];
        return [.. all.Where(b => !b.Lines.IsEmpty)];
    }

    /// <summary>Whether the plan may be followed, in one sentence.</summary>
    public static string VerdictOf(WorkPlan plan) =>
        plan.Report.Findings.Any(f => f.Verdict is Verdict.DoesNotFit or Verdict.Unsafe) ? "Do not follow this plan yet: some parts do not fit."
        : plan.Report.Verdict == Verdict.Fits ? "Every joint that was judged fits." : "Settle what is open before the step that needs it.";

    /// <summary>What stands after the steps.</summary>
    public static ImmutableArray<PlanBlock> Tail(WorkPlan plan)
    {
        ImmutableArray<PlanBlock> all =
        [
            new("Tools", [.. plan.Tools.Select(t => t.IsOfTheShop ? $"{t.Name} (a shop's tool)" : t.Name)]),
            new("To buy: consumables", [.. plan.Consumables.Select(s => s.Name)]),
            new("To buy: small parts", [.. plan.SmallParts.Select(p => p.ToString())]),
            new("For a shop", [.. plan.ForShop.Select(s => $"{s.Title}: {s.Shop}")]),
            new("To do at home", [.. plan.AtHome.Select(s => s.Title)]),
            new("Longest chain of steps", [.. plan.LongestChain.Select(l => $"{plan.Find(l.LaterId)!.Title} waits for \u201C{plan.Find(l.EarlierId)!.Title}\u201D: {l.Because}")]),
            new("Inspection of the finished bicycle", [.. plan.Inspection.SelectMany(Lines)], IsTicked: true),
        ];
        return [.. all.Where(b => !b.Lines.IsEmpty)];
    }

    /// <summary>Stage, practice and time of a step in one line.</summary>
    public static string Class(WorkStep step) => $"{step.Stage.InWords()}; {step.Skill.InWords()}; {step.Time.InWords()}";

    public static ImmutableArray<PlanBlock> Of(WorkPlan plan, WorkStep step)
    {
        ImmutableArray<PlanBlock> all =
        [
            new("Shop", step.Shop is null ? [] : [step.Shop.ToString()], false, true),
            new("Open", [.. step.Open.Select(Told)], IsWarning: true),
            new("After", [.. step.After.Select(a => $"\u201C{plan.Find(a.StepId)!.Title}\u201D: {a.Because}")]) { Steps = [.. step.After.Select(a => plan.Steps.IndexOf(plan.Find(a.StepId)!) + 1)] },
            new("Do", step.Does) { IsOrdered = true },
            new("Figures of this build", [.. step.Figures.Select(f => f.ToString())]),
            IsPass(step) ? new(PassTitle, [.. step.Torques.Select(t => t.Brief)], IsTicked: true) : new("Torque", [.. step.Torques.Select(t => t.ToString())]),
            new("Tools", step.Tools.IsEmpty ? [] : [string.Join("; ", step.Tools.Select(t => t.Name))], false),
            new("Consumables", step.Consumables.IsEmpty ? [] : [string.Join("; ", step.Consumables.Select(s => s.Name))], false),
            new("Check", step.Checks, IsTicked: true),
            new("Caution", [.. step.Cautions.Select(c => c.Text)], IsWarning: true),
        ];
        return [.. all.Where(b => !b.Lines.IsEmpty)];
    }

    private const string PassTitle = "Torque, each as at its step, where the pages stand too; the maker's figure rules";

    /// <summary>It goes over what was tightened before: sources are not told a second time.</summary>
    private static bool IsPass(WorkStep step) => step.Stage >= WorkStage.FinalChecks;

    /// <summary>
    /// One line of printable text: what ends a line or moves a cursor becomes a space, half a character the replacement mark. Of the characters without width
    /// the two joiners stay, without which names in some scripts are spelled wrong; all others, such as those that turn the reading direction or hide text, are left out.
    /// </summary>
    public static string OneLine(string text)
    {
        StringBuilder line = new(text.Length);
        for (int at = 0; at < text.Length;)
        {
            bool whole = Rune.DecodeFromUtf16(text.AsSpan(at), out Rune rune, out int read) == System.Buffers.OperationStatus.Done;
            at += read;
            if (!whole || (rune.Value & 0xFFFE) == 0xFFFE)
            {
                line.Append('\uFFFD');
                continue;
            }

            _ = Rune.GetUnicodeCategory(rune) switch
            {
                UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => line.Append(' '),
                UnicodeCategory.Format when rune.Value is not (NonJoiner or Joiner) => line,
                _ => line.Append(rune.ToString()),
            };
        }

        return line.ToString();
    }

    private const int NonJoiner = 0x200C;
    private const int Joiner = 0x200D;

    private static string Told(Fit fit) => $"{fit.Joint!.Name}, {Verdicts.InWords(fit.Verdict)}: {fit.Sentence}";

    private static IEnumerable<string> Lines(FinalPoint point)
    {
        string rests = point.IsPractice ? "common practice" : string.Join("; ", point.Sources.Where(s => !s.IsUnpublished).Select(s => s.Title));
        string figures = point.Figures.IsEmpty ? "" : $" This build: {string.Join("; ", point.Figures.Select(f => f.ToString()))}.";
        yield return $"{point.Ask} ({rests}){figures}";
    }
}
