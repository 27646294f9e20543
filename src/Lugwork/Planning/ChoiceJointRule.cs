namespace Lugwork.Planning;

/// <summary>A joint of the table as a rule: its verdict by the relation, its bridges by their prices.</summary>
internal sealed class ChoiceJointRule : ChoiceRule
{
    /// <summary>Class of an empty slot: the joint is not judged there.</summary>
    public const int Empty = 0;

    private readonly ChoicePrices _prices;
    private readonly int[][] _inputs;
    private readonly ChoiceInterner[] _seen;
    private readonly List<ChoiceClass>[] _classes;

    // Of a place of which another row may speak: what its part answers then; null at a place of the joint itself.
    private readonly Func<Part, bool>?[] _speaks;
    private readonly Candidates[] _read = new Candidates[Joint.MostInputs];

    public ChoiceJointRule(Joint joint, int[] scope, Slot[] slots, ChoicePrices prices)
        : base(scope)
    {
        Joint = joint;
        _prices = prices;
        _inputs = new int[scope.Length][];
        _seen = new ChoiceInterner[scope.Length];
        _classes = new List<ChoiceClass>[scope.Length];
        _speaks = [.. scope.Select(n => joint.GivesWay.Where(g => g.Slot == slots[n]).Select(g => g.Speaks).FirstOrDefault())];
        for (int i = 0; i < scope.Length; i++)
        {
            _inputs[i] = [.. Enumerable.Range(0, joint.Inputs.Length).Where(n => joint.Inputs[n].Slot == slots[scope[i]])];
            _seen[i] = new();
            _seen[i].NumberOf([]);
            _classes[i] = [default];
        }
    }

    public Joint Joint { get; }

    public override (long Price, long Mass) Most => _prices.MostOf(Joint);

    private readonly record struct ChoiceClass(Candidates[] Read, int Stated, bool IsAsItWas, bool Speaks);

    /// <summary>The class of a part in one slot of the scope: what the joint reads of it.</summary>
    public int Of(int place, Part? part, bool isAsItWas)
    {
        if (part is null)
        {
            return Empty;
        }

        int[] inputs = _inputs[place];
        Span<long> key = stackalloc long[(4 * Joint.MostInputs) + (Known<Dimension>.MostValues * Joint.MostInputs) + 3];
        Candidates[] read = _read;
        int used = 0;
        int stated = 0;
        for (int i = 0; i < inputs.Length; i++)
        {
            JointInput input = Joint.Inputs[inputs[i]];
            Candidates candidates = input.Read(part);
            read[i] = candidates;
            key[used++] = (long)candidates.State;
            key[used++] = candidates.Low;
            key[used++] = candidates.High;
            key[used++] = candidates.Codes?.Length ?? 0;
            foreach (long code in candidates.Codes ?? [])
            {
                key[used++] = code;
            }

            if (Joint.Counts(inputs[i]) && input.IsStated(part))
            {
                stated |= 1 << inputs[i];
            }
        }

        bool speaks = _speaks[place] is { } asks && asks(part);
        key[used++] = speaks ? 1 : 0;
        key[used++] = stated;
        key[used++] = isAsItWas && _speaks[place] is null ? 1 : 0;
        int number = _seen[place].NumberOf(key[..used]);
        if (number == _classes[place].Count)
        {
            _classes[place].Add(new(read[..inputs.Length], stated, isAsItWas, speaks));
        }

        return number;
    }

    protected override (long Price, long Mass) Judge(ReadOnlySpan<int> classes)
    {
        CandidateRow row = default;
        int stated = 0;
        bool asItWas = true;
        for (int i = 0; i < classes.Length; i++)
        {
            if (classes[i] == Empty)
            {
                if (_speaks[i] is not null)
                {
                    continue;
                }

                return default;
            }

            ChoiceClass own = _classes[i][classes[i]];
            if (_speaks[i] is not null)
            {
                if (own.Speaks)
                {
                    return default;
                }

                continue;
            }

            stated |= own.Stated;
            asItWas &= own.IsAsItWas;
            for (int n = 0; n < own.Read.Length; n++)
            {
                row[_inputs[i][n]] = own.Read[n];
            }
        }

        return asItWas || !Joint.IsSeen((uint)stated) ? default : _prices.Of(Joint, row);
    }
}
