using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Words near a figure, and figures that stand in pairs and threes.</summary>
internal sealed partial class LineScan
{
    /// <summary>Up to so many items a line is gone through anew for each question, which costs less than to remember.</summary>
    private const int Short = 64;

    private Dictionary<string, int>? _firsts;

    /// <summary>A mark stands in the clause of an item, within reach.</summary>
    private bool HasMark(int i, string term) => FindMark(i, term, 0) >= 0;

    private int FindMark(int i, string term, int clauses)
    {
        int clause = _items[i].Clause;
        for (int step = 0; step <= Reach; step++)
        {
            foreach (int j in (ReadOnlySpan<int>)[i - step, i + step])
            {
                if (j >= 0 && j < _items.Count && Math.Abs(_items[j].Clause - clause) <= clauses && _items[j].Is(term) && !Negated(j))
                {
                    return j;
                }
            }
        }

        return -1;
    }

    /// <summary>A mark anywhere in the line.</summary>
    private int Anywhere(string term)
    {
        if (_items.Count <= Short)
        {
            return FirstOf(term);
        }

        // Asked for each item of a long line it would grow with the square of the line; what items say no longer changes here.
        _firsts ??= new(StringComparer.Ordinal);
        if (!_firsts.TryGetValue(term, out int first))
        {
            first = FirstOf(term);
            _firsts[term] = first;
        }

        return first;
    }

    private int FirstOf(string term)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i].Is(term) && !Negated(i))
            {
                return i;
            }
        }

        return -1;
    }

    private bool Negated(int i) =>
        (i > 0 && _items[i - 1].Is("m:not") && _items[i - 1].Clause == _items[i].Clause)
        || (i > 1 && _items[i - 2].Is("m:not") && _items[i - 1].Kind == SpecTokenKind.Word && !_items[i - 1].IsTopic && _items[i - 2].Clause == _items[i].Clause);

    private bool Free(int i) => i >= 0 && i < _items.Count && _items[i] is { IsNumber: true, Used: false, IsBroken: false, Unit: not ("other" or "g") };

    /// <summary>A figure, a times sign and a figure, none of them used; the place of the last one.</summary>
    private bool Pair(int i, out int second)
    {
        second = i + 2;
        if (Free(i) && i + 3 < _items.Count && _items[i + 1].IsSign('x') && _items[i + 2].IsSign('\u00F8'))
        {
            second = i + 3;
        }

        return Free(i) && i + 2 < _items.Count && _items[i + 1].IsSign('x') && Free(second);
    }

    private bool Triple(int i) => Pair(i, out int second) && second == i + 2 && i + 4 < _items.Count && _items[i + 3].IsSign('x') && Free(i + 4);

    private bool InTriple(int i) => Triple(i) || (i >= 2 && Free(i - 2) && _items[i - 1].IsSign('x'));
}
