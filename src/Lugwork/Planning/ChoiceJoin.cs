namespace Lugwork.Planning;

/// <summary>Sees every combination that goes together.</summary>
internal interface IChoiceVisitor
{
    /// <summary>A combination: what it costs and where it stands in the message that is left. The join's places tell the rest. False to stop.</summary>
    bool Visit(ChoiceJoin join, long cost, long at);
}

/// <summary>
/// The tables and messages that speak of one variable, laid side by side: the variable first, then the others, each as its classes over all of them. Combinations are gone through from the
/// first on, and left as soon as two do not go together.
/// </summary>
internal sealed class ChoiceJoin
{
    private readonly long[][][] _offsets;
    private readonly int[][] _endsAt;
    private readonly int[][] _touches;
    private readonly long[] _outStride;

    public ChoiceJoin(int variable, IReadOnlyList<ChoiceMessage> inputs, int[] stateCounts)
    {
        Variable = variable;
        Inputs = [.. inputs];
        Scope = [.. inputs.SelectMany(i => i.Scope).Distinct().Where(v => v != variable).Order()];
        Variables = [variable, .. Scope];
        ClassOf = new int[Variables.Length][];
        Sizes = new int[Variables.Length];
        _offsets = new long[Variables.Length][][];
        _touches = new int[Variables.Length][];
        for (int place = 0; place < Variables.Length; place++)
        {
            Lay(place, stateCounts[Variables[place]]);
        }

        _endsAt = [.. Variables.Select((v, place) => Enumerable.Range(0, Inputs.Length).Where(i => Inputs[i].Scope.Max(s => Array.IndexOf(Variables, s)) == place).ToArray())];
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

    /// <summary>Classes over all inputs, and what each adds to where an input is asked.</summary>
    private void Lay(int place, int states)
    {
        int variable = Variables[place];
        int[] touching = [.. Enumerable.Range(0, Inputs.Length).Where(i => Inputs[i].Scope.Contains(variable))];
        int[] own = [.. touching.Select(i => Array.IndexOf(Inputs[i].Scope, variable))];
        long[] strides = [.. touching.Select((i, n) => Inputs[i].Stride(own[n]))];
        ChoiceInterner seen = new();
        int[] classOf = new int[states];
        Span<long> key = stackalloc long[touching.Length];
        for (int state = 0; state < states; state++)
        {
            bool dead = false;
            for (int n = 0; n < touching.Length; n++)
            {
                int number = Inputs[touching[n]].ClassOf[own[n]][state];
                dead |= number < 0;
                key[n] = number;
            }

            classOf[state] = dead ? -1 : seen.NumberOf(key);
        }

        ClassOf[place] = classOf;
        Sizes[place] = seen.Count;
        _touches[place] = touching;
        _offsets[place] = new long[seen.Count][];
        for (int number = 0; number < seen.Count; number++)
        {
            ReadOnlySpan<long> classes = seen[number];
            long[] offsets = new long[touching.Length];
            for (int n = 0; n < offsets.Length; n++)
            {
                offsets[n] = classes[n] * strides[n];
            }

            _offsets[place][number] = offsets;
        }
    }

    /// <summary>Goes through all combinations that go together.</summary>
    /// <param name="own">The cost of each class of the variable itself.</param>
    /// <param name="visitor">Who sees them.</param>
    /// <param name="budget">How many steps may be taken; less than nothing is left where it did not suffice.</param>
    /// <param name="cancellation">Looked at every some thousand steps.</param>
    public void Go<TVisitor>(ReadOnlySpan<long> own, ref TVisitor visitor, ref long budget, CancellationToken cancellation)
        where TVisitor : struct, IChoiceVisitor
    {
        Array.Clear(InputAt);
        for (int number = 0; number < Sizes[0] && budget >= 0; number++)
        {
            if (own[number] < ChoiceEntry.Never)
            {
                cancellation.ThrowIfCancellationRequested();
                Step(0, number, own[number], 0, ref visitor, ref budget, cancellation);
            }
        }
    }

    private void Step<TVisitor>(int place, int number, long cost, long at, ref TVisitor visitor, ref long budget, CancellationToken cancellation)
        where TVisitor : struct, IChoiceVisitor
    {
        if (--budget < 0)
        {
            return;
        }

        if ((budget & 0xFFFF) == 0)
        {
            cancellation.ThrowIfCancellationRequested();
        }

        long[] offsets = _offsets[place][number];
        int[] touches = _touches[place];
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
            else
            {
                long stride = _outStride[place + 1];
                for (int next = 0; next < Sizes[place + 1]; next++)
                {
                    Step(place + 1, next, cost, at + (next * stride), ref visitor, ref budget, cancellation);
                }
            }
        }

        for (int i = 0; i < touches.Length; i++)
        {
            InputAt[touches[i]] -= offsets[i];
        }
    }
}
