using System.Collections.Immutable;

namespace Lugwork;

/// <summary>How the inputs of a joint must stand to each other. Pure and total over settled codes; 0 means "has none".</summary>
internal abstract class Relation
{
    public abstract Outcome Judge(ReadOnlySpan<long> values);

    /// <summary>The verdict alone.</summary>
    public virtual Verdict Settle(ReadOnlySpan<long> values) => Judge(values).Verdict;

    /// <summary>Kind in words, as a mechanic reads them behind "Rule:".</summary>
    public abstract string Kind { get; }

    /// <summary>Every bridge that the relation can offer.</summary>
    public virtual ImmutableArray<Bridge> Bridges => [];

    /// <summary>Every source that a row of the relation rests on.</summary>
    public virtual ImmutableArray<Source> RestsOn => [];
}

/// <summary>A relation with a figure to tell: [sum] in a sentence becomes it.</summary>
internal interface ITells
{
    string Tell(string sentence, ImmutableArray<JointInput> inputs, in CandidateRow row);
}

/// <summary>Both must have the same key; bridge rows span the gaps that can be spanned, alone or two in a chain.</summary>
internal sealed class SameKey : Relation
{
    private readonly int _seat;
    private readonly int _part;
    private readonly Reason _same;
    private readonly Func<long, long, Reason> _apart;
    private readonly Func<ImmutableArray<Bridge>> _bridges;
    private readonly ImmutableArray<Bridge> _offered = [];
    private readonly ImmutableArray<long> _loose;

    /// <param name="seat">Number of the input that receives.</param>
    /// <param name="part">Number of the input that goes in.</param>
    /// <param name="same">Reason where the keys are equal.</param>
    /// <param name="apart">Reason where they are not and nothing bridges them.</param>
    /// <param name="bridges">What spans gaps.</param>
    /// <param name="loose">Keys that stand for several things, so that equal keys settle nothing.</param>
    public SameKey(int seat, int part, Reason same, Func<long, long, Reason> apart, ImmutableArray<Bridge> bridges, params ImmutableArray<long> loose)
        : this(seat, part, same, apart, () => bridges, loose)
    {
    }

    /// <summary>The same with a table of bridges that is made when two keys first differ: most pairs have the same one. It gives the same rows each time.</summary>
    public SameKey(int seat, int part, Reason same, Func<long, long, Reason> apart, Func<ImmutableArray<Bridge>> bridges, params ImmutableArray<long> loose)
    {
        _loose = loose;
        _seat = seat;
        _part = part;
        _same = same;
        _apart = apart;
        _bridges = bridges;
    }

    public override string Kind => "the same size or kind, or a listed adapter";

    public override ImmutableArray<Bridge> Bridges => Lacks is { } lacks ? [.. _bridges(), .. _offered, lacks.Bridge] : [.. _bridges(), .. _offered];

    /// <summary>Rows that reasons of this relation offer: they are told, and no verdict rests on them.</summary>
    public ImmutableArray<Bridge> Offered
    {
        init => _offered = value;
    }

    /// <summary>What it says where one side is a piece that is not there yet: by itself nothing is wrong, and it has to be bought.</summary>
    public (int Input, Reason Reason, Bridge Bridge)? Lacks { get; init; }

    /// <summary>Keys that are the common name of several others: they are judged as any of those.</summary>
    public ImmutableArray<CommonName> Names { get; init; } = [];

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        long seat = values[_seat];
        long part = values[_part];
        if (seat == 0 || part == 0)
        {
            return Lacks is { } lacks && values[lacks.Input] == 0 && (seat != 0 || part != 0)
                ? new(Verdict.NeedsPart, lacks.Reason, lacks.Bridge)
                : new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        ReadOnlySpan<long> seats = Sizes(seat, new ReadOnlySpan<long>(in seat));
        ReadOnlySpan<long> parts = Sizes(part, new ReadOnlySpan<long>(in part));
        Outcome first = Judged(seats[0], parts[0], values);
        foreach (long one in seats)
        {
            foreach (long other in parts)
            {
                if (Judged(one, other, values).Verdict != first.Verdict)
                {
                    return new(Verdict.NeedsMeasuring, seat == part ? Reasons.LooseName : Reasons.NameOfSeveral);
                }
            }
        }

        return first;
    }

    private ReadOnlySpan<long> Sizes(long key, ReadOnlySpan<long> itself)
    {
        foreach (CommonName name in Names)
        {
            if (name.Key == key)
            {
                return name.Sizes;
            }
        }

        return itself;
    }

    private Outcome Judged(long seat, long part, ReadOnlySpan<long> values)
    {
        if (seat == part)
        {
            return IsLoose(seat) ? new(Verdict.NeedsMeasuring, Reasons.LooseName) : new(Verdict.Fits, _same);
        }

        Outcome best = new(Verdict.DoesNotFit, _apart(seat, part));
        ImmutableArray<Bridge> bridges = _bridges();
        foreach (Bridge one in bridges)
        {
            if (one.From == part && one.To == seat)
            {
                return Crossed(one, null, values);
            }
        }

        foreach (Bridge one in bridges)
        {
            if (one.From != part || !one.Chains)
            {
                continue;
            }

            foreach (Bridge two in bridges)
            {
                if (two.From == one.To && two.Chains && two.To == seat)
                {
                    Outcome chained = Crossed(one, two, values);
                    best = chained.Verdict < best.Verdict ? chained : best;
                }
            }
        }

        return best;
    }

    private bool IsLoose(long key)
    {
        foreach (long loose in _loose)
        {
            if (loose == key)
            {
                return true;
            }
        }

        return false;
    }

    private static Outcome Crossed(Bridge one, Bridge? two, ReadOnlySpan<long> values)
    {
        Verdict verdict = Verdicts.Worse(Result(one, values), two is null ? Verdict.Fits : Result(two, values));
        return verdict switch
        {
            Verdict.Fits => new(verdict, Reasons.MadeForBoth, one, two),
            Verdict.NeedsPart => new(verdict, Reasons.Bridged, one, two),
            Verdict.NeedsMeasuring => new(verdict, Reasons.Check, one, two),
            Verdict.Unsafe => new(verdict, Reasons.NeverForce, null, null),
            _ => new(verdict, Reasons.BridgeNotPossible, null, null),
        };
    }

    private static Verdict Result(Bridge bridge, ReadOnlySpan<long> values) =>
        bridge.ConditionInput < 0 || (bridge.ConditionInput < values.Length && values[bridge.ConditionInput] == bridge.ConditionCode)
            ? bridge.Result
            : bridge.Otherwise;
}

/// <summary>A key that the trade says for several others.</summary>
/// <param name="Key">The common one.</param>
/// <param name="Sizes">Those that it can be.</param>
internal readonly record struct CommonName(long Key, long[] Sizes);

/// <summary>A table with a cell for every pair; no silent blanks. A side that has none of it does not mate.</summary>
internal sealed class Matrix(int row, int column, Func<long, long, Outcome> cell, ImmutableArray<Bridge> bridges, ImmutableArray<Source> sources) : Relation
{
    public override string Kind => "from the table of pairs";

    public override ImmutableArray<Bridge> Bridges => bridges;

    public override ImmutableArray<Source> RestsOn => sources;

    public override Outcome Judge(ReadOnlySpan<long> values) =>
        values[row] == 0 || values[column] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate) : cell(values[row], values[column]);
}

/// <summary>The cells of a matrix by two small codes, while it is written down; a pair that was never said is an error.</summary>
internal sealed class Cells(int rows, int columns)
{
    // What was said, each once where it was said of several pairs in turn, and its number at each pair; 0 where nothing was.
    private readonly short[] _said = new short[(rows + 1) * (columns + 1)];
    private Outcome[] _outcomes = new Outcome[64];
    private short _count;

    public Outcome this[long row, long column]
    {
        get => Find(row, column) is { Verdict: not Verdict.NotJudged } said ? said : throw new ArgumentOutOfRangeException(nameof(column), column, "no cell was said for this pair");
        set => _said[At(row, column)] = NumberOf(value);
    }

    /// <summary>Every bridge that a cell offers.</summary>
    public ImmutableArray<Bridge> Bridges
    {
        get
        {
            ImmutableArray<Bridge>.Builder bridges = ImmutableArray.CreateBuilder<Bridge>();
            foreach (short said in _said)
            {
                if (_outcomes[said].Bridge is { } bridge)
                {
                    bridges.Add(bridge);
                }
            }

            return bridges.ToImmutable();
        }
    }

    /// <summary>What was said of a pair; the default where nothing was.</summary>
    public Outcome Find(long row, long column) => _outcomes[_said[At(row, column)]];

    private short NumberOf(in Outcome outcome)
    {
        ref Outcome last = ref _outcomes[_count];
        if (last.Verdict == outcome.Verdict && ReferenceEquals(last.Reason, outcome.Reason) && ReferenceEquals(last.Bridge, outcome.Bridge) && ReferenceEquals(last.Second, outcome.Second))
        {
            return _count;
        }

        if (++_count == _outcomes.Length)
        {
            Array.Resize(ref _outcomes, 2 * _outcomes.Length);
        }

        _outcomes[_count] = outcome;
        return _count;
    }

    private int At(long row, long column) =>
        row > 0 && row <= rows && column > 0 && column <= columns ? (int)((row * (columns + 1)) + column) : throw new ArgumentOutOfRangeException(nameof(row), row, "the table has no such row or column");
}

/// <summary>A length that must be at least a limit; a limit of "none" asks for nothing.</summary>
internal sealed class AtLeast(int length, int limit, Reason met, Reason missed, Verdict below) : Relation
{
    public override string Kind => "at least what is asked for";

    public override Outcome Judge(ReadOnlySpan<long> values) => new(Settle(values), Settle(values) == Verdict.Fits ? met : missed);

    public override Verdict Settle(ReadOnlySpan<long> values) => values[limit] == 0 || values[length] >= values[limit] ? Verdict.Fits : below;
}

/// <summary>A length that must be at most a limit; <paramref name="without"/> says what a limit of "none" means.</summary>
internal sealed class AtMost(int length, int limit, Reason met, Reason missed, Verdict above, Outcome without, bool needsLength = false) : Relation
{
    public override string Kind => "at most what is allowed";

    public override Outcome Judge(ReadOnlySpan<long> values) =>
        needsLength && values[length] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate) : values[limit] == 0 ? without : values[length] <= values[limit] ? new(Verdict.Fits, met) : new(above, missed);
}

/// <summary>A length between two limits, both included; a limit of "none" asks for nothing.</summary>
internal sealed class Within(int length, int least, int most, Reason met, Reason belowReason, Verdict below, Reason aboveReason, Verdict above) : Relation
{
    public override string Kind => "within the limits";

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        if (values[least] != 0 && values[length] < values[least])
        {
            return new(below, belowReason);
        }

        return values[most] != 0 && values[length] > values[most] ? new(above, aboveReason) : new(Verdict.Fits, met);
    }
}

/// <summary>Several relations over the same inputs: the worst counts, the first where equal.</summary>
internal sealed class AllOf(params ImmutableArray<Relation> relations) : Relation
{
    public override string Kind => "all of these: " + string.Join("; ", relations.Select(r => r.Kind));

    public override ImmutableArray<Bridge> Bridges => [.. relations.SelectMany(r => r.Bridges)];

    public override ImmutableArray<Source> RestsOn => [.. relations.SelectMany(r => r.RestsOn)];

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        Outcome worst = relations[0].Judge(values);
        foreach (Relation relation in relations.AsSpan()[1..])
        {
            Outcome next = relation.Judge(values);
            worst = next.Verdict > worst.Verdict ? next : worst;
        }

        return worst;
    }

    public override Verdict Settle(ReadOnlySpan<long> values)
    {
        Verdict worst = Verdict.NotJudged;
        foreach (Relation relation in relations)
        {
            Verdict next = relation.Settle(values);
            worst = next > worst ? next : worst;
        }

        return worst;
    }
}

/// <summary>Arithmetic that no table says; tied to its inverse by a law.</summary>
internal sealed class Computed(string kind, Func<ReadOnlySpan<long>, Outcome> judge, Func<ImmutableArray<Bridge>> bridges, ImmutableArray<Source> sources) : Relation
{
    public Computed(string kind, Func<ReadOnlySpan<long>, Outcome> judge, ImmutableArray<Bridge> bridges, ImmutableArray<Source> sources)
        : this(kind, judge, () => bridges, sources)
    {
    }

    public override string Kind => kind;

    public override ImmutableArray<Bridge> Bridges => bridges();

    public override ImmutableArray<Source> RestsOn => sources;

    public override Outcome Judge(ReadOnlySpan<long> values) => judge(values);
}

/// <summary>Reasons that many joints share.</summary>
internal static class Reasons
{
    public static Reason NothingToMate { get; } = new("nothing-to-mate", "One side has none of this: {0} against {1}.");

    public static Reason FrameSpecific { get; } = new("frame-specific", "only the frame maker's own part goes here.");

    public static Reason NotCovered { get; } = new("not-covered", "this family is outside the library; ask its maker.");

    public static Reason NameOfSeveral { get; } = new("name-of-several", "{1} or {0} is a name for several sizes, of which some mate here and some do not: measure the axle and the slot.");

    public static Reason LooseName { get; } = new("loose-name", "{1} and {0} share a name that stands for several things: compare axle, offset or holes on the parts, or ask the maker.");

    public static Reason MadeForBoth { get; } = new("made-for-both", "{1} in {0}: [bridge].");

    public static Reason Bridged { get; } = new("bridged", "{1} does not mate with {0} as it is; it takes [bridge].");

    public static Reason Check { get; } = new("check", "{1} against {0}: may work with [bridge], but the source says to check first.");

    public static Reason Check3 { get; } = new("check", "{2} on {0}: may work with [bridge], but this rests on memory; check first.");

    public static Reason SpacedShell { get; } = new("spaced-shell", "The shell, {0} mm wide, takes cups made for {1} mm with [bridge].");

    public static Reason BridgeNotPossible { get; } = new("bridge-not-possible", "{1} is not {0}, and what would bridge them does not go on this part.")
    {
        Mend = "a part of the other side's own standard",
    };

    public static Reason NeverForce { get; } = new("never-force", "{1} in {0} means forcing the frame, which this material does not take.", Cautions.NeverSpread)
    {
        Mend = "a part of the frame's own standard",
    };
}
