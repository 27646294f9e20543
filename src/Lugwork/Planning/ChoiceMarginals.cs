namespace Lugwork.Planning;

/// <summary>
/// After an exact elimination, from its end back to its beginning: for every cell of every message, and every state of every variable, what no whole choice through it goes below. It is the least itself
/// save where states that behaved alike in a message lie apart outside of it: then the better of them speaks for both.
/// </summary>
internal sealed class ChoiceMarginals
{
    private readonly ChoiceElimination _elimination;
    private readonly Dictionary<ChoiceMessage, long[]> _least = [];

    public ChoiceMarginals(ChoiceNetwork network, ChoiceElimination elimination, CancellationToken cancellationToken)
    {
        _elimination = elimination;
        Of = [.. network.States.Select(s => new long[s.Length])];
        for (int i = elimination.Buckets.Length - 1; i >= 0; i--)
        {
            Back(elimination.Buckets[i], cancellationToken);
        }
    }

    /// <summary>By variable and state what no choice with the best entry of this state goes below; never where there is none.</summary>
    public long[][] Of { get; }

    /// <summary>What everything outside of a bucket does not go below at one place of the message that it left.</summary>
    public long Rest(ChoiceBucket bucket, int[] state)
    {
        ChoiceBucketPart part = bucket.Parts[0];
        if (part.Left is not { } left)
        {
            return _elimination.Bound - part.Constant;
        }

        long at = 0;
        for (int i = 0; i < left.Scope.Length; i++)
        {
            int own = left.ClassOf[i][state[left.Scope[i]]];
            if (own < 0)
            {
                return ChoiceEntry.Never;
            }

            at = (at * left.Sizes[i]) + own;
        }

        long least = _least[left][at];
        return least >= ChoiceEntry.Never ? ChoiceEntry.Never : least - left[at];
    }

    private void Back(ChoiceBucket bucket, CancellationToken cancellationToken)
    {
        ChoiceBucketPart part = bucket.Parts[0];
        ChoiceJoin join = part.Join;
        foreach (ChoiceMessage input in join.Inputs)
        {
            if (input.From is not null)
            {
                long[] cells = new long[input.Cells!.Length];
                Array.Fill(cells, ChoiceEntry.Never);
                _least[input] = cells;
            }
        }

        ChoiceBackward visitor = new(this, part, join);
        long budget = long.MaxValue;
        join.Go(ChoiceElimination.OwnBy(join, _elimination.Own[bucket.Variable]), ref visitor, ref budget, cancellationToken);
        long[] own = ChoiceElimination.OwnBy(join, _elimination.Own[bucket.Variable]);
        for (int state = 0; state < Of[bucket.Variable].Length; state++)
        {
            int number = join.ClassOf[0][state];
            long least = number < 0 ? ChoiceEntry.Never : visitor.Least[number];
            Of[bucket.Variable][state] = least >= ChoiceEntry.Never ? ChoiceEntry.Never : least - own[number] + _elimination.Own[bucket.Variable][state];
        }
    }

    private readonly struct ChoiceBackward : IChoiceVisitor
    {
        private readonly ChoiceMessage? _left;
        private readonly long _rest;
        private readonly long[][] _place;
        private readonly long[]?[] _cells;
        private readonly long[]? _leftLeast;

        public ChoiceBackward(ChoiceMarginals all, ChoiceBucketPart part, ChoiceJoin join)
        {
            _left = part.Left;
            _leftLeast = _left is null ? null : all._least[_left];
            _rest = _left is null ? all._elimination.Bound - part.Constant : 0;
            Least = new long[join.Sizes[0]];
            Array.Fill(Least, ChoiceEntry.Never);
            _cells = [.. join.Inputs.Select(i => i.From is null ? null : all._least[i])];
            _place = new long[join.Sizes.Length][];
            for (int place = 1; place < _place.Length; place++)
            {
                _place[place] = new long[join.Sizes[place]];
                for (int state = 0; state < join.ClassOf[place].Length; state++)
                {
                    if (join.ClassOf[place][state] >= 0)
                    {
                        _place[place][join.ClassOf[place][state]] = _left!.ClassOf[place - 1][state] * _left.Stride(place - 1);
                    }
                }
            }
        }

        public static bool LooksAtPlaces => true;

        public long[] Least { get; }

        public bool Visit(ChoiceJoin join, long cost, long at)
        {
            long total = cost + _rest;
            if (_left is not null)
            {
                long cell = 0;
                for (int place = 1; place < _place.Length; place++)
                {
                    cell += _place[place][join.At[place]];
                }

                long least = _leftLeast![cell];
                total = least >= ChoiceEntry.Never ? ChoiceEntry.Never : cost - _left[cell] + least;
            }

            if (total >= ChoiceEntry.Never)
            {
                return true;
            }

            Least[join.At[0]] = Math.Min(Least[join.At[0]], total);
            for (int i = 0; i < _cells.Length; i++)
            {
                if (_cells[i] is { } cells)
                {
                    cells[join.InputAt[i]] = Math.Min(cells[join.InputAt[i]], total);
                }
            }

            return true;
        }
    }
}
