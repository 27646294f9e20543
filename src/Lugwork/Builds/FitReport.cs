using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Lugwork;

/// <summary>A whole build judged: every joint, clean ones included.</summary>
[DebuggerDisplay("{Verdict}, {Findings.Length} joints")]
public sealed partial class FitReport
{
    private readonly List<Measurement>? _asked;

    internal FitReport(Build build, ImmutableArray<Fit> fits, ImmutableArray<Slot> missing)
    {
        Build = build;
        _asked = UnjudgedFields.Asked(build);
        Findings = fits;
        Missing = missing;
        Verdict worst = fits.IsEmpty || _asked is not null ? Verdict.NeedsMeasuring : Verdict.Fits;
        foreach (Fit fit in fits)
        {
            worst = Verdicts.Worse(worst, fit.Verdict);
        }

        Verdict = missing.IsEmpty ? worst : Verdicts.Worse(worst, Verdict.NeedsPart);
    }

    /// <summary>What this version does not judge yet, said in every report.</summary>
    public static string NotYetJudged => "Not judged by this version: brake hoses, disc pads, tyre pressure, spoke lengths, cable routing.";

    /// <summary>The build that was judged.</summary>
    public Build Build { get; }

    /// <summary>The worst joint's verdict; a bicycle of a kind, or with anything else, that is outside the library and in no joint at least <see cref="Verdict.NeedsMeasuring"/>, and where a required slot is empty at least <see cref="Verdict.NeedsPart"/>.</summary>
    public Verdict Verdict { get; }

    /// <summary>What was found of every joint whose slots are filled, whatever the verdict: as many as there are joints, and not only those that fit.</summary>
    public ImmutableArray<Fit> Findings { get; }

    /// <summary>Joints about what shows only on the parts, such as the gap of a binder or the bore of a shell, of which nothing is stated and which could still be wrong: nobody looked, and no verdict here speaks of them. What most bicycles have none of, such as a brake inside the hub, is not listed.</summary>
    public ImmutableArray<Joint> NotLookedAt =>
        [.. JointTable.All.Where(j => j.IsOnlyWhereLooked && !j.MostHaveNone && j.Slots.All(s => Build[s] is not null) && !j.IsSeen(Build) && !j.GivesWayIn(Build) && j.Judge(Build) != Verdict.Fits)];

    /// <summary>Findings that someone accepted for these very parts. They count as before: a waiver is reported and clears nothing.</summary>
    public ImmutableArray<WaivedFit> Waived =>
        [.. Build.Waivers.SelectMany(w => Findings.Where(f => f.Joint!.Id == w.JointId && f.Verdict != Verdict.Fits && Waiver.PartsOf(f.Joint, Build) == w.Parts).Select(f => new WaivedFit(f, w.Reason)))];

    /// <summary>Waivers that hold no more: a part of the joint is another than it was, or the joint finds nothing now.</summary>
    public ImmutableArray<Waiver> Lapsed
    {
        get
        {
            ImmutableArray<WaivedFit> standing = Waived;
            return [.. Build.Waivers.Where(w => !standing.Any(s => s.Fit.Joint!.Id == w.JointId))];
        }
    }

    /// <summary>Readings that were taken with other parts than are there now, so that they are unknown again. What is reckoned stands in their place: measure anew.</summary>
    public ImmutableArray<AsBuiltValue> OldReadings => Build.OldReadings;

    /// <summary>Required slots that are empty.</summary>
    public ImmutableArray<Slot> Missing { get; }

    /// <summary>Every required slot is filled.</summary>
    public bool IsComplete => Missing.IsEmpty;

    /// <summary>What has to be bought or done beside the parts: the remedies of joints that need a part.</summary>
    public ImmutableArray<Remedy> PartsToAdd =>
        [.. Findings.Where(f => f.Verdict == Verdict.NeedsPart).SelectMany(f => f.Remedies).Distinct()];

    /// <summary>What to measure or ask, each field once, those first that settle most verdicts.</summary>
    public ImmutableArray<RankedMeasurement> ToMeasure
    {
        get
        {
            Dictionary<(Slot Slot, string Field), RankedMeasurement> ranked = [];
            foreach (Measurement apart in _asked ?? [])
            {
                ranked[(apart.Slot, apart.Field)] = new(apart, 0, Findings.Length);
            }

            foreach (Fit fit in Findings)
            {
                Account account = fit.Tell();
                bool alone = account.IsOpen && account.Measurements.Select(m => (m.Slot, m.Field)).Distinct().Count() == 1;
                foreach (Measurement measurement in account.Measurements.DistinctBy(m => (m.Slot, m.Field)))
                {
                    RankedMeasurement before = ranked.GetValueOrDefault((measurement.Slot, measurement.Field)) ?? new(measurement, 0, 0);
                    ranked[(measurement.Slot, measurement.Field)] = before with { Settles = before.Settles + (alone ? 1 : 0), Touches = before.Touches + (alone ? 0 : 1) };
                }
            }

            return [.. ranked.Values.OrderByDescending(r => r.Settles).ThenByDescending(r => r.Touches).ThenBy(r => r.What.Slot.Number).ThenBy(r => r.What.Field, StringComparer.Ordinal)];
        }
    }

    /// <summary>Every caution, each once, the worst joint's first.</summary>
    public ImmutableArray<Caution> Cautions => [.. Findings.OrderByDescending(f => f.Verdict).SelectMany(f => f.Cautions).Distinct()];

    /// <summary>The worst joint; the first of equals. Default where nothing was judged.</summary>
    public Fit Worst => Findings.IsEmpty ? default : Findings.MaxBy(f => Verdicts.Worse(f.Verdict, Verdict.Fits));

    /// <summary>The report as JSON: verdicts as their enum names; joints, slots, fields, cautions, bridges and sources by their ids, with the words for a person beside them.</summary>
    /// <remarks>The number of its format stands first, 1; properties may be added in a minor version, and none is taken out or changed under that number.</remarks>
    public string ToJson() => ReportFile.Write(this);

    /// <summary>The answer of a mechanic in five lines: verdict, worst joint, remedy, what is missing, what is not judged.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        int clean = Findings.Count(f => f.Verdict == Verdict.Fits);
        text.AppendLine(Findings.IsEmpty ? "Nothing to judge yet: no two parts that meet." : $"{Capital(Verdicts.InWords(Verdict))}: {clean} of {Findings.Length} joints fit as they are.");
        Fit worst = Worst;
        if (worst.Joint is not null && worst.Verdict != Verdict.Fits)
        {
            text.Append("Worst: ").AppendLine(worst.ToString());
            text.AppendLine(
                worst.Verdict == Verdict.NeedsPart && worst.Measurements is [var choose, ..] ? $"Remedy: {worst.Remedies[^1].What}. Measure: {choose}"
                : worst.Measurements is [var measure, ..] ? (KnownStates.Read(worst.ReasonId) is null ? $"Measure: {measure}{IfRight(worst)}" : $"Ask: {measure}")
                : worst.Remedies is [var first, ..] ? "Remedy: " + first.What
                : "Remedy: none known.");
        }

        foreach (Measurement apart in _asked ?? [])
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"Ask: {apart}");
        }

        text.AppendLine(IsComplete ? "Every slot is filled." : $"Still empty: {string.Join(", ", Missing)}.");
        if (NotLookedAt is { IsEmpty: false } unseen)
        {
            text.Append("Not looked at, so not judged: ").AppendJoin("; ", unseen.Select(j => j.Name)).AppendLine(".");
        }

        foreach (AsBuiltValue old in OldReadings)
        {
            text.Append(CultureInfo.InvariantCulture, $"Measured with other parts, so unknown again: {old.Slot.Name}, {old.Field}: {old.Value}. Measure anew.").AppendLine();
        }

        foreach (WaivedFit waived in Waived)
        {
            text.Append("Accepted, and still counted: ").Append(waived).AppendLine(".");
        }

        foreach (Waiver lapsed in Lapsed)
        {
            text.Append("Accepted before, and lapsed: ").Append(lapsed).AppendLine(".");
        }

        text.Append(NotYetJudged);
        return text.ToString();
    }

    private static string IfRight(Fit fit) => fit.Remedies.FirstOrDefault(r => r.Kind == RemedyKind.IfMeasured) is { } remedy ? $" If it measures right: {remedy.What}." : "";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
