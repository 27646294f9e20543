using System.Collections;
using System.Collections.Immutable;

namespace Lugwork.Catalogues;

/// <summary>How many parts of a slot have which verdict.</summary>
public sealed record FitCounts
{
    internal FitCounts(int fits, int needsPart, int needsMeasuring, int notJudged, int worse)
    {
        Fits = fits;
        NeedsPart = needsPart;
        NeedsMeasuring = needsMeasuring;
        NotJudged = notJudged;
        Worse = worse;
    }

    /// <summary>How many fit as they are.</summary>
    public int Fits { get; internal init; }

    /// <summary>How many fit with a bought part or shop work.</summary>
    public int NeedsPart { get; internal init; }

    /// <summary>Of how many it is not decided by what is known.</summary>
    public int NeedsMeasuring { get; internal init; }

    /// <summary>Of how many no joint speaks, because what they meet is not there yet.</summary>
    public int NotJudged { get; internal init; }

    /// <summary>How many are worse than what was asked for.</summary>
    public int Worse { get; internal init; }

    /// <summary>How many they are in all.</summary>
    public int Total => Fits + NeedsPart + NeedsMeasuring + NotJudged + Worse;
}

/// <summary>The parts of a catalogue that go into one slot, those that are open apart. Belongs to one state of the catalogue and never changes.</summary>
public sealed class SlotFitting
{
    private readonly SlotIndex? _index;
    private readonly byte[] _verdicts;
    private readonly Func<Part, Build> _with;
    private readonly Slot _aim;
    private readonly Verdict _worst;

    internal SlotFitting(SlotIndex? index, Slot slot, Slot aim, byte[] verdicts, Verdict worst, int most, Func<Part, Build> with)
    {
        _index = index;
        _verdicts = verdicts;
        _with = with;
        _aim = aim;
        _worst = worst;
        Slot = slot;
        Counts = Count(index, verdicts, worst);
        Fits = List(Verdict.Fits, Verdict.Fits, Counts.Fits, most);
        NeedsPart = List(Verdict.NeedsPart, Verdict.NeedsPart, worst >= Verdict.NeedsPart ? Counts.NeedsPart : 0, most);
        Open = worst < Verdict.NeedsMeasuring ? Of([])
            : Of(Merged(Places(Verdict.NeedsMeasuring, Verdict.NeedsMeasuring, Counts.NeedsMeasuring, most), Places(Verdict.NotJudged, Verdict.NotJudged, Counts.NotJudged, most), most));
        IsCapped = Fits.Count < Counts.Fits || NeedsPart.Count < Counts.NeedsPart || (worst >= Verdict.NeedsMeasuring && Open.Count < Counts.NeedsMeasuring + Counts.NotJudged);
    }

    /// <summary>The slot of the parts that are listed; the frame's where frames were sought.</summary>
    public Slot Slot { get; }

    /// <summary>How many there are, whatever is listed.</summary>
    public FitCounts Counts { get; }

    /// <summary>Parts that fit as they are, in the order of their numbers.</summary>
    public FittingParts Fits { get; }

    /// <summary>Parts that fit with a bought part or shop work, in the order of their numbers; empty where only plain fits were asked for.</summary>
    public FittingParts NeedsPart { get; }

    /// <summary>Parts of which too little is known, or of which nothing here speaks, in the order of their numbers; empty where they were not asked for.</summary>
    public FittingParts Open { get; }

    /// <summary>
    /// All of these parts by kind, whatever is listed one by one: parts that say the same in every field have one verdict and one reason,
    /// so that a page shows it once and the numbers below. The best verdict first; not judged ones with those that need measuring.
    /// </summary>
    public ImmutableArray<FittingKind> Kinds => _index is null ? [] : [.. _index.Ranked(_verdicts, _worst).Select(kind => new FittingKind(this, kind))];

    /// <summary>There are more than the lists hold.</summary>
    public bool IsCapped { get; }

    /// <summary>"seatpost: 12 fit, 3 need a part, 1 open, 40 worse".</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Slot.Name}: {Counts.Fits} fit, {Counts.NeedsPart} need a part, {Counts.NeedsMeasuring + Counts.NotJudged} open, {Counts.Worse} worse");

    internal SlotIndex Index => _index!;

    internal long IdAt(int place) => _index!.Ids[place];

    internal Verdict VerdictAt(int place) => (Verdict)_verdicts[_index!.Kinds[place]];

    internal Part PartAt(int place) => _index!.Table.PartOf(_index.Kinds[place]);

    internal ImmutableArray<Fit> FindingsAt(int place) =>
        [.. _with(PartAt(place)).Check().Findings.Where(f => SlotJudge.Counts(f.Joint!, Slot, _aim))];

    internal ImmutableArray<Measurement> AskedAt(int place) => [.. UnjudgedFields.Asked(new PartAlone(Slot, PartAt(place))) ?? []];

    internal static FitCounts Count(SlotIndex? index, byte[] verdicts, Verdict worst)
    {
        Span<int> counts = stackalloc int[(int)Verdict.Unsafe + 1];
        for (int kind = 0; kind < verdicts.Length; kind++)
        {
            counts[verdicts[kind]] += index!.CountOf(kind);
        }

        int worse = 0;
        for (int verdict = (int)worst + 1; verdict < counts.Length; verdict++)
        {
            worse += counts[verdict];
            counts[verdict] = 0;
        }

        return new(counts[(int)Verdict.Fits], counts[(int)Verdict.NeedsPart], counts[(int)Verdict.NeedsMeasuring], counts[(int)Verdict.NotJudged], worse);
    }

    private FittingParts List(Verdict least, Verdict most, int total, int atMost) => Of(Places(least, most, total, atMost));

    private FittingParts Of(int[] places) => new(this, places);

    private int[] Places(Verdict least, Verdict most, int total, int atMost) =>
        total == 0 || atMost == 0 ? [] : _index!.Places(_verdicts, least, most, total, atMost);

    private static int[] Merged(int[] one, int[] other, int atMost)
    {
        int[] all = [.. one, .. other];
        Array.Sort(all);
        return all.Length <= atMost ? all : all[..atMost];
    }
}

/// <summary>Parts of a catalogue with one verdict, in the order of their numbers.</summary>
public sealed class FittingParts : IReadOnlyList<FittingPart>
{
    private readonly SlotFitting _fitting;
    private readonly int[] _places;

    internal FittingParts(SlotFitting fitting, int[] places)
    {
        _fitting = fitting;
        _places = places;
    }

    /// <inheritdoc/>
    public int Count => _places.Length;

    /// <inheritdoc/>
    public FittingPart this[int index] => new(_fitting, _places[index]);

    /// <summary>The numbers alone.</summary>
    public ImmutableArray<long> Ids => [.. Array.ConvertAll(_places, _fitting.IdAt)];

    /// <inheritdoc/>
    public IEnumerator<FittingPart> GetEnumerator() => Enumerable.Range(0, Count).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>One part of an answer. The default is none.</summary>
public readonly struct FittingPart : IEquatable<FittingPart>
{
    private readonly SlotFitting? _fitting;
    private readonly int _place;

    internal FittingPart(SlotFitting fitting, int place)
    {
        _fitting = fitting;
        _place = place;
    }

    /// <summary>The shop's number.</summary>
    public long Id => _fitting?.IdAt(_place) ?? 0;

    /// <summary>The worst verdict of the joints that it takes part in, and at least needs measuring where <see cref="ToAsk"/> holds something; not judged where none is judged yet.</summary>
    public Verdict Verdict => _fitting?.VerdictAt(_place) ?? Verdict.NotJudged;

    /// <summary>The part as the catalogue keeps it, without its name; null for a default.</summary>
    public Part? Part => _fitting?.PartAt(_place);

    /// <summary>Every judged joint that it takes part in, with sentence, remedies and sources. Judged when asked for.</summary>
    public ImmutableArray<Fit> Findings => _fitting?.FindingsAt(_place) ?? [];

    /// <summary>What its maker is to be asked, because it lies outside the library or contradicts itself and no joint reads it. Looked up when asked for.</summary>
    public ImmutableArray<Measurement> ToAsk => _fitting?.AskedAt(_place) ?? [];

    /// <summary>The worst verdict of the joints that what is known decides, those that need measuring left out; not judged where none is decided, needs measuring where <see cref="ToAsk"/> holds something and nothing is worse. Of an open part it says how it stands so far. Judged when asked for.</summary>
    public Verdict SoFar => Findings.Select(f => f.Verdict).Where(v => v != Verdict.NeedsMeasuring).Append(ToAsk.IsEmpty ? Verdict.NotJudged : Verdict.NeedsMeasuring).Max();

    /// <summary>What it needs beside itself: the remedies of the joints that need a part, each once. Judged when asked for.</summary>
    public ImmutableArray<Remedy> Needs => [.. Findings.Where(f => f.Verdict == Verdict.NeedsPart).SelectMany(f => f.Remedies).Distinct()];

    /// <summary>"12: needs a part".</summary>
    public override string ToString() => FormattableString.Invariant($"{Id}: {Verdicts.InWords(Verdict)}");

    /// <inheritdoc/>
    public bool Equals(FittingPart other) => ReferenceEquals(_fitting, other._fitting) && _place == other._place;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is FittingPart other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_fitting, _place);

    /// <summary>The same part of the same answer.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator ==(FittingPart left, FittingPart right) => left.Equals(right);

    /// <summary>Another part, or another answer.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator !=(FittingPart left, FittingPart right) => !left.Equals(right);
}
