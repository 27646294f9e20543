using System.Numerics;

namespace Lugwork.Planning;

/// <summary>Sees every combination that goes together.</summary>
internal interface IChoiceVisitor
{
    /// <summary>It looks at the join's places; else they are not kept for it.</summary>
    static abstract bool LooksAtPlaces { get; }

    /// <summary>A combination: what it costs and where it stands in the message that is left. The join's places tell the rest. False to stop.</summary>
    bool Visit(ChoiceJoin join, long cost, long at);
}

/// <summary>
/// The tables and messages that speak of one variable, laid side by side: the variable first, then the others, each as its classes over all of them. Combinations are gone through from the
/// first on, and left as soon as two do not go together.
/// </summary>
internal sealed class ChoiceJoin
{
    // By place the inputs that speak of it, and for each of its classes what it adds to where each of them is asked.
    private readonly int[][] _touches;
    private readonly long[][] _offsets;
    private readonly int[][] _endsAt;
    private readonly long[] _outStride;

    public ChoiceJoin(int variable, IReadOnlyList<ChoiceMessage> inputs, int[] stateCounts)
    {
        Variable = variable;
        Inputs = [.. inputs];
        ulong others = 0;
        foreach (ChoiceMessage input in Inputs)
        {
            others |= input.Mask;
        }

        others &= ~(1UL << variable);
        Variables = new int[BitOperations.PopCount(others) + 1];
        Variables[0] = variable;
        for (ulong rest = others; rest != 0; rest &= rest - 1)
        {
            Variables[^BitOperations.PopCount(rest)] = BitOperations.TrailingZeroCount(rest);
        }

        Scope = Variables[1..];
        ClassOf = new int[Variables.Length][];
        Sizes = new int[Variables.Length];
        _offsets = new long[Variables.Length][];
        _touches = new int[Variables.Length][];
        _endsAt = new int[Variables.Length][];
        for (int place = 0; place < Variables.Length; place++)
        {
            Lay(place, stateCounts[Variables[place]]);
            _endsAt[place] = Array.FindAll(_touches[place], i => LastOf(Inputs[i].Mask & others) == (place == 0 ? -1 : Variables[place]));
        }

        _outStride = new long[Variables.Length];
        long stride = 1;
        for (int place = Variables.Length - 1; place > 0; place--)
        {
            _outStride[place] = stride;
            stride = stride > ChoiceEntry.Never / Math.Max(1, Sizes[place]) ? ChoiceEntry.Never : stride * Sizes[place];
        }

        Cells = stride;
        At = new int[Variables.Length];
        InputAt = new long[Inputs.Length];
    }

    public int Variable { get; }

    public ChoiceMessage[] Inputs { get; }

    /// <summary>The other variables, ascending: those of the message that is left.</summary>
    public int[] Scope { get; }

    /// <summary>The variable, then the others.</summary>
    public int[] Variables { get; }

    /// <summary>By place and state the class over all inputs; -1 where the state goes with nothing.</summary>
    public int[][] ClassOf { get; }

    public int[] Sizes { get; }

    /// <summary>How many cells a full message has.</summary>
    public long Cells { get; }

    /// <summary>While it is gone through: the class at each place.</summary>
    public int[] At { get; }

    /// <summary>While it is gone through: where each input is asked.</summary>
    public long[] InputAt { get; }

    /// <summary>The highest of some variables; -1 where there are none.</summary>
    private static int LastOf(ulong variables) => 63 - BitOperations.LeadingZeroCount(variables);

    /// <summary>Classes over all inputs, numbered in the order of their first coming, and what each adds to where an input is asked.</summary>
    private void Lay(int place, int states)
    {
        ulong bit = 1UL << Variables[place];
        int[] touching = Touching(bit);
        int[] classOf = new int[states];
        int[] first = new int[Math.Max(1, states)];
        int count = states == 0 ? 0 : 1;
        foreach (int input in touching)
        {
            count = Split(classOf, count, Inputs[input].ClassesOf(bit, out int size, out _), size, first);
        }

        ClassOf[place] = classOf;
        Sizes[place] = count;
        _touches[place] = touching;
        long[] offsets = new long[count * touching.Length];
        for (int n = 0; n < touching.Length; n++)
        {
            int[] own = Inputs[touching[n]].ClassesOf(bit, out _, out long stride);
            for (int number = 0; number < count; number++)
            {
                offsets[(number * touching.Length) + n] = own[first[number]] * stride;
            }
        }

        _offsets[place] = offsets;
    }

    private int[] Touching(ulong bit)
    {
        int count = 0;
        foreach (ChoiceMessage input in Inputs)
        {
            count += (input.Mask & bit) != 0 ? 1 : 0;
        }

        int[] touching = new int[count];
        for (int i = Inputs.Length - 1; i >= 0; i--)
        {
            if ((Inputs[i].Mask & bit) != 0)
            {
                touching[--count] = i;
            }
        }

        return touching;
    }

    /// <summary>Splits classes by those of one input more.</summary>
    /// <param name="classOf">By state its class so far, -1 where it goes with nothing; is renewed.</param>
    /// <param name="count">How many classes there are so far.</param>
    /// <param name="others">By state the class of the input.</param>
    /// <param name="size">How many classes the input has.</param>
    /// <param name="first">Takes the first state of each class.</param>
    /// <returns>How many there are then.</returns>
    private static int Split(int[] classOf, int count, int[] others, int size, int[] first)
    {
        int found = 0;
        Dictionary<long, int>? many = (long)count * size > 1 << 16 ? [] : null;
        Span<int> few = many is not null ? [] : count * size <= 256 ? stackalloc int[count * size] : new int[count * size];
        few.Clear();
        for (int state = 0; state < classOf.Length; state++)
        {
            if (classOf[state] < 0 || others[state] < 0)
            {
                classOf[state] = -1;
                continue;
            }

            long both = ((long)classOf[state] * size) + others[state];
            ref int number = ref many is null ? ref few[(int)both] : ref System.Runtime.InteropServices.CollectionsMarshal.GetValueRefOrAddDefault(many, both, out _);
            if (number == 0)
            {
                first[found] = state;
                number = ++found;
            }

            classOf[state] = number - 1;
        }

        return found;
    }

    /// <summary>Goes through all combinations that go together.</summary>
    /// <param name="own">The cost of each class of the variable itself.</param>
    /// <param name="visitor">Who sees them.</param>
    /// <param name="budget">How many steps may be taken; less than nothing is left where it did not suffice.</param>
    /// <param name="cancellationToken">Looked at every some thousand steps.</param>
    public void Go<TVisitor>(ReadOnlySpan<long> own, ref TVisitor visitor, ref long budget, CancellationToken cancellationToken)
        where TVisitor : struct, IChoiceVisitor
    {
        Array.Clear(InputAt);
        for (int number = 0; number < Sizes[0] && budget >= 0; number++)
        {
            if (own[number] < ChoiceEntry.Never)
            {
                cancellationToken.ThrowIfCancellationRequested();
                Step(0, number, own[number], 0, ref visitor, ref budget, cancellationToken);
            }
        }
    }

    private void Step<TVisitor>(int place, int number, long cost, long at, ref TVisitor visitor, ref long budget, CancellationToken cancellationToken)
        where TVisitor : struct, IChoiceVisitor
    {
        if (!Take(1, ref budget, cancellationToken))
        {
            return;
        }

        int[] touches = _touches[place];
        ReadOnlySpan<long> offsets = _offsets[place].AsSpan(number * touches.Length, touches.Length);
        for (int i = 0; i < touches.Length; i++)
        {
            InputAt[touches[i]] += offsets[i];
        }

        At[place] = number;
        foreach (int input in _endsAt[place])
        {
            cost += Inputs[input][InputAt[input]];
        }

        if (cost < ChoiceEntry.Never)
        {
            if (place + 1 == Variables.Length)
            {
                budget = visitor.Visit(this, cost, at) ? budget : -1;
            }
            else if (place + 2 == Variables.Length)
            {
                Last(cost, at, ref visitor, ref budget, cancellationToken);
            }
            else
            {
                long stride = _outStride[place + 1];
                for (int next = 0; next < Sizes[place + 1]; next++)
                {
                    Step(place + 1, next, cost, at + (next * stride), ref visitor, ref budget, cancellationToken);
                }
            }
        }

        for (int i = 0; i < touches.Length; i++)
        {
            InputAt[touches[i]] -= offsets[i];
        }
    }

    /// <summary>The last place, where most of the steps are: every input that speaks of it is complete there.</summary>
    private void Last<TVisitor>(long cost, long at, ref TVisitor visitor, ref long budget, CancellationToken cancellationToken)
        where TVisitor : struct, IChoiceVisitor
    {
        int place = Variables.Length - 1;
        int size = Sizes[place];
        if (!Take(size, ref budget, cancellationToken))
        {
            return;
        }

        int[] touches = _touches[place];
        ReadOnlySpan<long> offsets = _offsets[place];
        for (int number = 0; number < size; number++)
        {
            long sum = cost;
            for (int i = 0; i < touches.Length; i++)
            {
                sum += Inputs[touches[i]][InputAt[touches[i]] + offsets[i]];
            }

            if (sum < ChoiceEntry.Never && !Seen(place, number, offsets, sum, at + number, ref visitor))
            {
                budget = -1;
                return;
            }

            offsets = offsets[touches.Length..];
        }
    }

    private bool Seen<TVisitor>(int place, int number, ReadOnlySpan<long> offsets, long sum, long at, ref TVisitor visitor)
        where TVisitor : struct, IChoiceVisitor
    {
        if (!TVisitor.LooksAtPlaces)
        {
            return visitor.Visit(this, sum, at);
        }

        int[] touches = _touches[place];
        At[place] = number;
        for (int i = 0; i < touches.Length; i++)
        {
            InputAt[touches[i]] += offsets[i];
        }

        bool goesOn = visitor.Visit(this, sum, at);
        for (int i = 0; i < touches.Length; i++)
        {
            InputAt[touches[i]] -= offsets[i];
        }

        return goesOn;
    }

    private static bool Take(long steps, ref long budget, CancellationToken cancellationToken)
    {
        long before = budget;
        budget -= steps;
        if (before >> 16 != budget >> 16)
        {
            cancellationToken.ThrowIfCancellationRequested();
        }

        return budget >= 0;
    }
}
