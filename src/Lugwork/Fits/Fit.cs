using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Lugwork;

/// <summary>One judged joint. Holds references only; every sentence is made when it is asked for. The default is not judged.</summary>
public struct Fit : IEquatable<Fit>
{
    private readonly IParts? _parts;
    private readonly short _joint;
    private Verdict _verdict;

    internal Fit(IParts parts, int joint, Verdict verdict)
    {
        _parts = parts;
        _joint = (short)joint;
        _verdict = verdict;
    }

    /// <summary>The joint; null only for a default.</summary>
    public readonly Joint? Joint => _parts?.JointAt(_joint);

    /// <summary>How it was judged.</summary>
    public readonly Verdict Verdict => _verdict;

    /// <summary>The sentence: what was compared and why it is so.</summary>
    public readonly string Sentence => Tell().Sentence;

    /// <summary>Id of the reason, for a front end that words it itself: "too-large". Empty for a default.</summary>
    public readonly string ReasonId => Tell().Reason?.Id ?? "";

    /// <summary>The values compared, each field once, in the order of the joint.</summary>
    public readonly ImmutableArray<ComparedValue> Compared
    {
        get
        {
            if (Joint is not { } joint)
            {
                return [];
            }

            IParts parts = _parts!;
            return [.. joint.Inputs.DistinctBy(i => (i.Slot, i.Field)).Select(i => new ComparedValue(i, parts.At(i.Slot)!))];
        }
    }

    /// <summary>What would mend it, or what it needs; empty for a plain fit.</summary>
    public readonly ImmutableArray<Remedy> Remedies => Tell().Remedies;

    /// <summary>What has to be measured or asked to settle it, or to choose between the parts that it may need; else empty.</summary>
    public readonly ImmutableArray<Measurement> Measurements => Tell().Measurements;

    /// <summary>Warnings that go with it.</summary>
    public readonly ImmutableArray<Caution> Cautions => Tell().Cautions;

    /// <summary>It fits, and the sentence has to be read all the same: the reason is a note, or a warning goes with it. False for every other verdict, whose sentence is read anyway.</summary>
    public readonly bool IsNote => Verdict == Verdict.Fits && Tell() is var told && (told.Reason is { IsNote: true } || !told.Cautions.IsEmpty);

    /// <summary>What the judgement rests on, weakest first.</summary>
    public readonly ImmutableArray<Source> Sources => Tell().Sources;

    /// <summary>The weakest source it rests on; null for a default.</summary>
    public readonly Source? WeakestLeg => Sources is [var weakest, ..] ? weakest : null;

    /// <summary>"Seatpost in seat tube: does not fit. ...".</summary>
    public readonly override string ToString() => Joint is null ? "not judged" : $"{Joint.Name}: {Verdicts.InWords(Verdict)}. {Sentence}";

    /// <inheritdoc/>
    public readonly bool Equals(Fit other) => _joint == other._joint && ReferenceEquals(_parts, other._parts) && Verdict == other.Verdict;

    /// <inheritdoc/>
    public readonly override bool Equals(object? obj) => obj is Fit other && Equals(other);

    /// <inheritdoc/>
    public readonly override int GetHashCode() => HashCode.Combine(_joint, Verdict);

    /// <summary>Same joint, same build, same verdict.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator ==(Fit left, Fit right) => left.Equals(right);

    /// <summary>Another joint, build or verdict.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator !=(Fit left, Fit right) => !left.Equals(right);

    /// <summary>
    /// The whole reasoning, for a person who wants to check it: what was compared with the evidence for each figure, the relation,
    /// the rows and bridges used, the sources with their confidence, and the weakest leg.
    /// </summary>
    public readonly string Explain() => _parts is null ? "Nothing was judged." : Explanation.Of(this, _parts);

    /// <summary>The verdict that it was waiting for; the only thing that is ever set, before anyone has seen it.</summary>
    internal void Become(Verdict verdict) => _verdict = verdict;

    internal readonly Account Tell() => _parts is null ? Account.Empty : _parts.ToldAt(_joint, Verdict);
}

/// <summary>Something that would mend a joint.</summary>
public sealed record Remedy
{
    internal Remedy(RemedyKind kind, string what, Bridge? bridge = null)
    {
        Kind = kind;
        What = what;
        Bridge = bridge;
    }

    /// <summary>What kind of thing.</summary>
    public RemedyKind Kind { get; internal init; }

    /// <summary>What to buy, have done or do.</summary>
    public string What { get; internal init; }

    /// <summary>The row it comes from; null where none.</summary>
    public Bridge? Bridge { get; internal init; }

    /// <summary>What to buy, have done or do.</summary>
    public override string ToString() => What;
}

/// <summary>What kind of thing a remedy is.</summary>
public enum RemedyKind
{
    /// <summary>Buy a part.</summary>
    BuyPart = 0,

    /// <summary>Have a shop do it.</summary>
    ShopWork,

    /// <summary>Take another part.</summary>
    ReplacePart,

    /// <summary>Only if a measurement allows it.</summary>
    IfMeasured,

    /// <summary>Only if a measurement refuses the part.</summary>
    IfRefused,
}

/// <summary>Something to measure or ask.</summary>
public sealed record Measurement
{
    internal Measurement(Slot slot, string field, string called, string how)
    {
        Slot = slot;
        Field = field;
        Called = called;
        How = how;
    }

    /// <summary>The part.</summary>
    public Slot Slot { get; internal init; }

    /// <summary>Its field in a build file.</summary>
    public string Field { get; internal init; }

    /// <summary>What it is called.</summary>
    public string Called { get; internal init; }

    /// <summary>Where, with what and how exactly.</summary>
    public string How { get; internal init; }

    /// <summary>"rear wheel, hub ends: ..."; what is called after its part, "condition of the fork", does not name it twice.</summary>
    public override string ToString() => $"{Slot.Name}, {CalledOn(Slot, Called)}: {How}";

    /// <summary>What something is called where its part stands before it.</summary>
    internal static string CalledOn(Slot slot, string called)
    {
        const string OfThe = " of the ";
        int at = called.LastIndexOf(OfThe, StringComparison.Ordinal);
        return at > 0 && $" {slot.Name}".EndsWith($" {called.AsSpan(at + OfThe.Length)}", StringComparison.Ordinal) ? called[..at] : called;
    }
}

/// <summary>Something to measure or ask, with what it is worth.</summary>
public sealed record RankedMeasurement
{
    internal RankedMeasurement(Measurement what, int settles, int touches)
    {
        What = what;
        Settles = settles;
        Touches = touches;
    }

    /// <summary>What to measure and how.</summary>
    public Measurement What { get; internal init; }

    /// <summary>How many verdicts it settles on its own.</summary>
    public int Settles { get; internal init; }

    /// <summary>How many more it helps to settle together with others, or by asking.</summary>
    public int Touches { get; internal init; }

    /// <summary>"frame, seat tube bore: ... (settles 1 joint)".</summary>
    public override string ToString() => $"{What} ({Worth})";

    private string Worth => (Settles, Touches) switch
    {
        (0, _) => $"helps with {Joints(Touches)}",
        (_, 0) => $"settles {Joints(Settles)}",
        _ => $"settles {Joints(Settles)}, helps with {Touches} more",
    };

    private static string Joints(int count) => count == 1 ? "1 joint" : $"{count} joints";
}

/// <summary>The told form of a judged joint, gathered from every completion.</summary>
internal sealed partial class Account
{
    public static Account Empty { get; } = new();

    /// <summary>The verdict it tells of.</summary>
    public Verdict Verdict { get; private init; }

    public string Sentence { get; private init; } = "Nothing was judged.";

    public Reason? Reason { get; private init; }

    public ImmutableArray<Remedy> Remedies { get; private init; } = [];

    public ImmutableArray<Measurement> Measurements { get; private init; } = [];

    /// <summary>The completions differ: a measurement can settle it. Otherwise the source itself says to check.</summary>
    public bool IsOpen { get; private init; }

    /// <summary>The bridge rows that the outcomes rest on.</summary>
    public ImmutableArray<Bridge> Bridges { get; private init; } = [];

    public ImmutableArray<Caution> Cautions { get; private init; } = [];

    public ImmutableArray<Source> Sources { get; private init; } = [];

    public static Account Of(Joint joint, IParts parts, Verdict verdict)
    {
        CandidateRow row = default;
        if (!joint.TryRead(parts, ref row))
        {
            return Empty;
        }

        if (verdict == Verdict.NeedsMeasuring && OfOutside(joint, row) is { } apart)
        {
            return apart;
        }

        OutcomeSurvey survey = new(joint.Inputs.Length);
        joint.VisitSpread(row, survey.Add);
        List<Outcome> outcomes = survey.Outcomes;
        outcomes.Sort((a, b) => a.Verdict.CompareTo(b.Verdict));
        Outcome told = outcomes.Find(o => o.Verdict == verdict) is { Reason: not null } same ? same : outcomes[^1];
        bool open = verdict == Verdict.NeedsMeasuring && outcomes.Exists(o => o.Verdict != Verdict.NeedsMeasuring);
        ImmutableArray<Remedy> oneOf = verdict == Verdict.NeedsPart ? OneOf(outcomes) : [];
        ImmutableArray<Measurement> measurements =
            [.. joint.Inputs.Where((_, i) => oneOf.IsEmpty ? verdict == Verdict.NeedsMeasuring && (open ? survey.Matters[i] : told.Reason!.Asks.IsEmpty || told.Reason.Asks.Contains(i)) : survey.Decides[i]).Select(i => new Measurement(i.Slot, i.Field, i.Called, i.Measure))];
        return new Account
        {
            Verdict = verdict,
            Reason = open ? OpenReason : told.Reason,
            Sentence = open ? OpenSentence(joint, parts, outcomes, measurements) : oneOf.IsEmpty ? Wording.Of(told, joint, parts) : OneOfSentence(joint, parts, oneOf, measurements),
            Measurements = measurements,
            IsOpen = open,
            Bridges = [.. outcomes.SelectMany(o => new[] { o.Bridge, o.Second }.OfType<Bridge>().Concat(o.Reason?.Offers ?? [])).Distinct()],
            Remedies = !oneOf.IsEmpty ? oneOf : [.. outcomes.SelectMany(o => RemediesOf(o, open || o.Verdict == Verdict.NeedsMeasuring)).DistinctBy(r => (r.Kind, r.What))],
            Cautions = [.. outcomes.SelectMany(o => CautionsOf(joint, o)).Distinct()],
            Sources = [.. outcomes.SelectMany(o => SourcesOf(joint, o)).Concat(joint.Inputs.Select(i => i.RestsOn(parts.At(i.Slot)!)).OfType<Source>()).Distinct().OrderBy(s => s.Strength).ThenBy(s => s.Id, StringComparer.Ordinal)],
        };
    }

    private static Reason OpenReason { get; } = new("open", "What is known leaves it open.");

    private static string OpenSentence(Joint joint, IParts parts, List<Outcome> outcomes, ImmutableArray<Measurement> measurements)
    {
        string[] verdicts = [.. outcomes.Select(o => o.Verdict).Distinct().Select(v => v == Verdict.Unsafe ? "is unsafe" : Verdicts.InWords(v))];
        string could = $"{string.Join(", ", verdicts[..^1])} or {verdicts[^1]}";
        string what = string.Join(" and ", measurements.DistinctBy(m => (m.Slot, m.Field)).Select(m => m.Called));
        return $"With {KnownOf(joint, parts)} it {could}; it depends on the {what}.";
    }

    /// <summary>Where every completion needs a part and not all the same: those that all need, and one remedy that offers the rest as a choice. Empty where there is nothing to choose.</summary>
    private static ImmutableArray<Remedy> OneOf(List<Outcome> outcomes)
    {
        ImmutableArray<Remedy>[] each = [.. outcomes.Select(o => RemediesOf(o, false).ToImmutableArray())];
        Remedy[] always = [.. each[0].Where(r => each.All(e => e.Contains(r)))];
        Remedy[] rest = [.. each.SelectMany(e => e).Where(r => !always.Contains(r))];
        string[] choices = [.. each.Select(e => string.Join(" and ", e.Where(r => !always.Contains(r)).Select(r => r.What))).Where(c => c.Length > 0).Distinct()];
        return choices.Length < 2 ? [] : [.. always, new Remedy(rest[0].Kind, $"one of these, as it measures: {string.Join("; or ", choices)}")];
    }

    private static string OneOfSentence(Joint joint, IParts parts, ImmutableArray<Remedy> remedies, ImmutableArray<Measurement> measurements)
    {
        string what = string.Join(" and ", measurements.DistinctBy(m => (m.Slot, m.Field)).Select(m => m.Called));
        return $"With {KnownOf(joint, parts)} it needs {string.Join(", and ", remedies.Select(r => r.What))}; which, depends on the {what}.";
    }

    private static string KnownOf(Joint joint, IParts parts) =>
        string.Join(", ", joint.Inputs.DistinctBy(i => (i.Slot, i.Field)).Select(i => Named(i.Called, i.ShowKnown(parts.At(i.Slot)!))));

    /// <summary>"chain of the derailleur" and "chain for 9-speed" say the noun once.</summary>
    private static string Named(string called, string known)
    {
        string[] noun = called.Split(' ');
        string[] words = known.Split(' ');
        int same = 0;
        while (same < noun.Length && same + 1 < words.Length && noun[same] == words[same].TrimEnd(','))
        {
            same++;
        }

        return $"{called} {string.Join(' ', words[same..])}";
    }

    private static IEnumerable<Remedy> RemediesOf(Outcome outcome, bool onlyIf)
    {
        foreach (Bridge? bridge in new[] { outcome.Bridge, outcome.Second }.Concat(outcome.Reason?.Offers ?? []))
        {
            if (bridge is not null && bridge.Kind != BridgeKind.MadeForBoth)
            {
                RemedyKind kind = onlyIf ? RemedyKind.IfMeasured : bridge.Kind == BridgeKind.ShopWork ? RemedyKind.ShopWork : RemedyKind.BuyPart;
                yield return new Remedy(kind, bridge.What, bridge);
            }
        }

        if (!string.IsNullOrEmpty(outcome.Reason?.Mend))
        {
            RemedyKind kind = !onlyIf ? RemedyKind.ReplacePart : outcome.Verdict > Verdict.NeedsMeasuring ? RemedyKind.IfRefused : RemedyKind.IfMeasured;
            yield return new Remedy(kind, outcome.Reason.Mend);
        }
    }

    private static IEnumerable<Caution> CautionsOf(Joint joint, Outcome outcome)
    {
        if (outcome.Verdict != Verdict.Fits && joint.Caution is { } own)
        {
            yield return own;
        }

        if (outcome.Reason?.Caution is { } told)
        {
            yield return told;
        }

        if (outcome.Bridge?.Caution is { } first)
        {
            yield return first;
        }

        if (outcome.Second?.Caution is { } second)
        {
            yield return second;
        }

        foreach (Bridge offered in outcome.Reason?.Offers ?? [])
        {
            if (offered.Caution is { } withIt)
            {
                yield return withIt;
            }
        }
    }

    private static IEnumerable<Source> SourcesOf(Joint joint, Outcome outcome)
    {
        IEnumerable<Source> rows = (outcome.Bridge?.Sources ?? []).Concat(outcome.Second?.Sources ?? []).Concat(outcome.Reason?.Sources ?? []).Concat((outcome.Reason?.Offers ?? []).SelectMany(b => b.Sources));
        return rows.Any() ? rows : joint.Sources;
    }
}
