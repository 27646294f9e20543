using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>The misspelt words of a line, and of which values each was read for.</summary>
internal readonly struct Guesses
{
    private readonly List<SpecItem> _items;
    private readonly List<int> _guessed;

    /// <summary>Those that are words of a value.</summary>
    private readonly HashSet<int> _within;

    /// <summary>Clauses in which a value stands.</summary>
    private readonly HashSet<int> _clauses;

    public Guesses(List<SpecItem> items, IEnumerable<LineFinding> findings)
    {
        _items = items;
        _guessed = [];
        _clauses = [];
        _within = [];
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i].IsGuessed && (items[i].IsNumber || (!items[i].Terms.IsEmpty && !SaysNothing(items[i]))))
            {
                _guessed.Add(i);
            }
        }

        if (_guessed.Count > 0)
        {
            foreach (LineFinding finding in findings)
            {
                _clauses.UnionWith([items[finding.First].Clause, items[finding.Last].Clause]);
                foreach (int i in _guessed)
                {
                    if (i >= finding.First && i <= finding.Last)
                    {
                        _within.Add(i);
                    }
                }
            }
        }
    }

    /// <summary>A word for a colour, a mass or a price, or one that says nothing.</summary>
    private static bool SaysNothing(SpecItem item) => item.Is("m:nothing") || item.Terms[0].StartsWith("n:", StringComparison.Ordinal);

    /// <summary>What was guessed for a value: a word of it, one of its clause, or one beside it in a clause that has no value of its own. The word that names the part is one for all values.</summary>
    /// <param name="finding">The value.</param>
    /// <param name="isPartOfLine">The line itself names the part.</param>
    public ImmutableArray<string> Of(LineFinding finding, bool isPartOfLine)
    {
        if (_guessed.Count == 0)
        {
            return [];
        }

        ImmutableArray<string>.Builder told = ImmutableArray.CreateBuilder<string>();
        int from = _items[finding.First].Clause;
        int to = _items[finding.Last].Clause;
        foreach (int i in _guessed)
        {
            int clause = _items[i].Clause;
            bool within = _within.Contains(i) && !isPartOfLine;
            if ((within ? i >= finding.First && i <= finding.Last : isPartOfLine || (clause >= from && clause <= to) || ((clause == from - 1 || clause == to + 1) && !_clauses.Contains(clause))) && !told.Contains(_items[i].Guess))
            {
                told.Add(_items[i].Guess);
            }
        }

        return told.ToImmutable();
    }
}
