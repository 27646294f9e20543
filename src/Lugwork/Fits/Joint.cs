using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Lugwork;

/// <summary>Two or more interfaces that must mate and the relation between them, or one part against a limit of its own. Declared once, interpreted by check, needs, fit keys, pairs for planners and reference page.</summary>
public sealed class Joint
{
    internal const int MostInputs = 8;
    private const int Looks = 48;

    // Made when first asked for: most processes judge, and never ask.
    private Slot[]? _slots;

    // One of the two is given. What is made first is kept, so that two threads at once get the same one.
    private readonly Func<Relation>? _making;
    private Relation? _relation;

    /// <summary>The largest field that is gone through whole when it is told.</summary>
    internal const int MostTold = 20_000;

    internal Joint(string id, string name, Relation relation, params ImmutableArray<JointInput> inputs)
        : this(id, name, inputs) => _relation = relation;

    /// <summary>A joint that is judged only where someone has looked: its relation is made when it is first judged or told.</summary>
    internal Joint(string id, string name, Func<Relation> relation, params ImmutableArray<JointInput> inputs)
        : this(id, name, inputs) => _making = relation;

    private Joint(string id, string name, ImmutableArray<JointInput> inputs)
    {
        if (inputs.Length is < 1 or > MostInputs)
        {
            throw new ArgumentException($"a joint has 1 to {MostInputs} inputs", nameof(inputs));
        }

        Id = id;
        Name = name;
        Inputs = inputs;
    }

    /// <summary>Descriptive, permanent id: "seatpost-in-seat-tube".</summary>
    public string Id { get; }

    /// <summary>Plain name: "Seatpost in seat tube".</summary>
    public string Name { get; }

    /// <summary>What the judgement rests on, beside the rows it uses.</summary>
    public required ImmutableArray<Source> Sources { get; init; }

    /// <summary>Warning that goes with every judgement of this joint that is not a plain fit; may be null.</summary>
    public Caution? Caution { get; internal init; }

    /// <summary>
    /// Judged only where one of its findings is stated, or all of them where it compares them, such as the gap of a binder or the depth of a cup: what shows on the parts once someone looks, and stands on no
    /// sheet. Where nobody looked the joint is no part of a report, and a "fits" says nothing of it.
    /// </summary>
    public bool IsOnlyWhereLooked => !Seen.IsEmpty;

    /// <summary>Numbers of the inputs of which at least one has to be stated; empty for a joint that is always judged.</summary>
    internal ImmutableArray<int> Seen { get; init; } = [];

    /// <summary>Judged only where all of what has to be stated is, not one of it: a comparison that nobody asks for until both sides are known.</summary>
    internal bool NeedsAllSeen { get; init; }

    /// <summary>Numbers of the inputs that have to be stated whatever else is: they say what the row is of, such as a crank that is known to be bare.</summary>
    internal ImmutableArray<int> OnlyWith { get; init; } = [];

    /// <summary>Most bicycles have none of it, such as a brake inside the hub or a used part: where nothing is stated, a report does not say that nobody looked.</summary>
    internal bool MostHaveNone { get; init; }

    /// <summary>Slots whose part, where it is there and answers so, makes another row speak of the same in place of this one. None of them is a slot of the joint itself.</summary>
    internal ImmutableArray<(Slot Slot, Func<Part, bool> Speaks)> GivesWay { get; init; } = [];

    /// <summary>The slots whose parts meet here, each once, in order.</summary>
    public ImmutableArray<Slot> Slots => ImmutableCollectionsMarshal.AsImmutableArray(_slots ??= [.. Inputs.Select(i => i.Slot).Distinct()]);

    /// <summary>It asks for the condition or the wear of one part, and nothing of its neighbours. Judged only where something of it is stated.</summary>
    public bool IsOfCondition { get; internal init; }

    /// <summary>It takes parts in three slots or more: a system check.</summary>
    public bool IsSystemCheck => Slots.Length > 2;

    /// <summary>The rule of the joint in words: "the same size or kind, or a listed adapter".</summary>
    public string RelationInWords => Relation.Kind;

    internal Relation Relation => _relation ?? Interlocked.CompareExchange(ref _relation, _making!(), null) ?? _relation!;

    internal ImmutableArray<JointInput> Inputs { get; }

    /// <summary>The id.</summary>
    public override string ToString() => Id;

    internal bool IsFilled(IParts parts)
    {
        foreach (JointInput input in Inputs)
        {
            if (parts.At(input.Slot) is null)
            {
                return false;
            }
        }

        return IsSeen(parts) && !GivesWayIn(parts);
    }

    /// <summary>A part of another slot is there of which another row speaks in place of this one.</summary>
    internal bool GivesWayIn(IParts parts)
    {
        foreach ((Slot slot, Func<Part, bool> speaks) in GivesWay)
        {
            if (parts.At(slot) is { } part && speaks(part))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Something is stated of what has to be looked at, or all of it where all is asked for, or nothing has to be.</summary>
    internal bool IsSeen(IParts parts)
    {
        uint stated = 0;
        for (int input = 0; input < Inputs.Length; input++)
        {
            stated |= Counts(input) && parts.At(Inputs[input].Slot) is { } part && IsStated(input, part) ? 1u << input : 0;
        }

        return IsSeen(stated);
    }

    /// <summary>Whether it is stated decides if the joint is judged.</summary>
    internal bool Counts(int input) => Seen.Contains(input) || OnlyWith.Contains(input);

    /// <summary>The same where it is known of each input whether it is stated, a bit each by its number.</summary>
    internal bool IsSeen(uint stated)
    {
        bool any = Seen.IsEmpty;
        bool all = true;
        foreach (int input in Seen)
        {
            bool said = (stated & (1u << input)) != 0;
            any |= said;
            all &= said;
        }

        bool with = true;
        foreach (int input in OnlyWith)
        {
            with &= (stated & (1u << input)) != 0;
        }

        return with && (NeedsAllSeen ? all : any);
    }

    /// <summary>The part says something of what one input reads.</summary>
    internal bool IsStated(int input, Part part) => Inputs[input].IsStated(part);

    /// <summary>Judges the parts as they are, unknowns included; nothing is allocated. Not judged where a slot is empty.</summary>
    internal Verdict Judge(IParts parts)
    {
        CandidateRow row = default;
        return TryRead(parts, ref row) ? Common(row) : Verdict.NotJudged;
    }

    internal bool TryRead(IParts parts, ref CandidateRow row)
    {
        for (int i = 0; i < Inputs.Length; i++)
        {
            if (parts.At(Inputs[i].Slot) is not { } part)
            {
                return false;
            }

            row[i] = Inputs[i].Read(part);
        }

        return true;
    }

    /// <summary>
    /// The common verdict of all completions; needs measuring where they differ, but a pair that every completion refuses is refused. With an input that is the frame maker's own or
    /// outside the library it is never milder than needs measuring: what does not fit whatever the value stays so.
    /// </summary>
    internal Verdict Common(in CandidateRow row)
    {
        Span<long> values = stackalloc long[MostInputs];
        bool outside = false;
        int open = -1;
        int opens = 0;
        for (int i = 0; i < Inputs.Length; i++)
        {
            if (!row[i].IsSettled)
            {
                open = i;
                opens++;
            }

            outside |= row[i].IsOutside;
            values[i] = row[i].Low;
        }

        if (opens == 0)
        {
            return Relation.Judge(values[..Inputs.Length]).Verdict;
        }

        if (Relation is SumRelation sum)
        {
            Verdict summed = sum.Common(Inputs, row);
            return outside ? Verdicts.Worse(summed, Verdict.NeedsMeasuring) : summed;
        }

        bool listed = opens == 1 && !outside && row[open].State == KnownState.Unknown && !Inputs[open].IsLength && Inputs[open].Family == 0;
        Verdict common = listed ? CommonOfListed(values[..Inputs.Length], open) : CommonOfAll(row);
        return outside ? Verdicts.Worse(common, Verdict.NeedsMeasuring) : common;
    }

    /// <summary>The same of one unknown that has a list, which most bicycles leave open somewhere: nothing is allocated.</summary>
    private Verdict CommonOfListed(Span<long> values, int open)
    {
        Verdict common = Verdict.NotJudged;
        foreach (long code in Inputs[open].Domain)
        {
            values[open] = code;
            Verdict verdict = Relation.Judge(values).Verdict;
            common = common == Verdict.NotJudged ? verdict : Either(common, verdict);
            if (common == Verdict.NeedsMeasuring)
            {
                break;
            }
        }

        return common;
    }

    // Apart from the settled path, so that its closure is not made there.
    private Verdict CommonOfAll(in CandidateRow row)
    {
        Span<long> store = stackalloc long[Completions.Most];
        Span<int> start = stackalloc int[MostInputs + 1];
        long combinations = Completions.Lay(this, row, store, start);

        // A full store may have left some out: what was not gone through is not said.
        if (start[Inputs.Length] == Completions.Most || (combinations > 2 * Looks && DifferSoon(store, start)))
        {
            return Verdict.NeedsMeasuring;
        }

        Verdict common = Verdict.NotJudged;
        VisitAll(store, start, (_, outcome) =>
        {
            common = common == Verdict.NotJudged ? outcome.Verdict : Either(common, outcome.Verdict);
            return common != Verdict.NeedsMeasuring;
        });
        return common;
    }

    /// <summary>What two completions have in common: a pair that is refused either way is refused, by the lesser claim.</summary>
    internal static Verdict Either(Verdict one, Verdict other) =>
        one == other ? one : one > Verdict.NeedsMeasuring && other > Verdict.NeedsMeasuring ? Verdict.DoesNotFit : Verdict.NeedsMeasuring;

    internal delegate bool Visitor(ReadOnlySpan<long> values, Outcome outcome);

    /// <summary>Goes through every completion that can make a difference; the visitor stops it by returning false.</summary>
    internal void Visit(in CandidateRow row, Visitor visitor)
    {
        if (Relation is SumRelation sum)
        {
            sum.Visit(Inputs, row, visitor);
            return;
        }

        Span<long> store = stackalloc long[Completions.Most];
        Span<int> start = stackalloc int[MostInputs + 1];
        Completions.Lay(this, row, store, start);
        VisitAll(store, start, visitor);
    }

    /// <summary>
    /// The same where there is time for it; where there are too many, the lists of single inputs, with the others at places from all over the field.
    /// </summary>
    internal void VisitSpread(in CandidateRow row, Visitor visitor)
    {
        if (Relation is SumRelation sum)
        {
            sum.Visit(Inputs, row, visitor);
            return;
        }

        Span<long> store = stackalloc long[Completions.Most];
        Span<int> start = stackalloc int[MostInputs + 1];
        if (Completions.Lay(this, row, store, start) <= MostTold)
        {
            VisitAll(store, start, visitor);
            return;
        }

        Span<long> values = stackalloc long[MostInputs];
        uint draw = 1;
        for (int turn = 0; turn < Looks / 2; turn++)
        {
            Spread(store, start, turn, ref draw, values);
            for (int sweep = 0; sweep < 2 * Inputs.Length; sweep++)
            {
                int moved = sweep % Inputs.Length;
                Verdict here = Relation.Settle(values[..Inputs.Length]);
                long onward = values[moved];
                foreach (long value in store[start[moved]..start[moved + 1]])
                {
                    values[moved] = value;
                    Outcome outcome = Relation.Judge(values[..Inputs.Length]);
                    onward = outcome.Verdict == here ? onward : value;
                    visitor(values[..Inputs.Length], outcome);
                }

                // On from a place of another verdict, where the other inputs may matter.
                values[moved] = onward;
            }
        }
    }

    private void VisitAll(ReadOnlySpan<long> store, ReadOnlySpan<int> start, Visitor visitor)
    {
        int inputs = Inputs.Length;
        Span<int> at = stackalloc int[MostInputs];
        Span<long> values = stackalloc long[MostInputs];
        for (int i = 0; i < inputs; i++)
        {
            at[i] = start[i];
            values[i] = store[start[i]];
        }

        while (visitor(values[..inputs], Relation.Judge(values[..inputs])))
        {
            int turn = inputs - 1;
            while (turn >= 0 && ++at[turn] == start[turn + 1])
            {
                at[turn] = start[turn];
                values[turn] = store[at[turn]];
                turn--;
            }

            if (turn < 0)
            {
                return;
            }

            values[turn] = store[at[turn]];
        }
    }

    /// <summary>Whether a few completions from all over the field already differ: then the rest need not be gone through.</summary>
    private bool DifferSoon(ReadOnlySpan<long> store, ReadOnlySpan<int> start)
    {
        int inputs = Inputs.Length;
        Span<long> values = stackalloc long[MostInputs];
        Verdict common = Verdict.NotJudged;
        uint draw = 1;
        for (int turn = 0; turn < Looks && common != Verdict.NeedsMeasuring; turn++)
        {
            Spread(store, start, turn, ref draw, values);
            Verdict verdict = Relation.Settle(values[..inputs]);
            common = common == Verdict.NotJudged ? verdict : Either(common, verdict);
        }

        return common == Verdict.NeedsMeasuring;
    }

    /// <summary>One completion from anywhere in the field.</summary>
    private void Spread(ReadOnlySpan<long> store, ReadOnlySpan<int> start, int turn, ref uint draw, Span<long> values)
    {
        for (int i = 0; i < Inputs.Length; i++)
        {
            // Every other time the same place in every list: like meets like there.
            draw = i > 0 && turn % 2 == 0 ? draw : (draw * 1_664_525) + 1_013_904_223;
            values[i] = store[start[i] + (int)((draw >> 8) % (uint)(start[i + 1] - start[i]))];
        }
    }
}
