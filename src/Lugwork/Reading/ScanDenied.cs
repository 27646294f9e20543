using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>What a line denies.</summary>
internal sealed partial class LineScan
{
    /// <summary>A word of denial of which it is not sure what it denies, and what was denied in one place and read in another.</summary>
    private void Denied()
    {
        for (int i = 0; i < _items.Count && Doubts.Count == 0; i++)
        {
            if (_items[i].Is("m:not") && (_read.Contains(_items[i].Clause) || DeniesBefore(i)))
            {
                Several("", [], i, i, "the line denies something, and it is not sure what");
            }
        }

        foreach (SpecItem denied in _denied)
        {
            if (Doubts.Count == 0 && (IsReadToo(denied) || (denied.Is("m:boost") && IsBoostRead()) || (denied.Is("m:superboost") && Values.Values.Any(v => v.Key == "R157-12W"))
                || (denied.Is("m:trunnion") && Values.Values.Any(v => v.Key.StartsWith("trunnion", StringComparison.Ordinal))) || (denied.Is("m:eyelet") && Values.Values.Any(v => v.Key.StartsWith("eyelet", StringComparison.Ordinal)))))
            {
                Doubts.Add(new("", [], denied.Start, denied.End, LineDoubtKind.Several, "the line denies what it says"));
            }
        }
    }

    /// <summary>"No travel": the word alone is denied, not a figure of it.</summary>
    private bool IsBareDenial(string topic)
    {
        int at = _denied.FindIndex(d => d.Is(topic));
        return !_denied.Exists(d => d.Clause == _denied[at].Clause && (d.IsNumber || (d != _denied[at] && d.Kind == SpecTokenKind.Word)));
    }

    /// <summary>A figure or a value that is denied was read elsewhere.</summary>
    private bool IsReadToo(SpecItem denied)
    {
        foreach (LineFinding value in Values.Values)
        {
            foreach (string term in denied.Terms)
            {
                if (term.StartsWith("v:", StringComparison.Ordinal) && term.EndsWith("=" + value.Key, StringComparison.Ordinal))
                {
                    return true;
                }
            }

        }

        return denied.IsNumber && denied.Value > 20 && !IsOfOtherPair(denied) && ReadFigures.Contains((denied.Value, denied.IsFraction));
    }

    /// <summary>37-622, not 37-635: the figure is denied only together with one that was not read.</summary>
    private bool IsOfOtherPair(SpecItem denied)
    {
        int at = _denied.IndexOf(denied);
        foreach (int other in (ReadOnlySpan<int>)[at - 2, at + 2])
        {
            int sign = (at + other) / 2;
            if (other >= 0 && other < _denied.Count && Links(_denied[sign]) && _denied[other].IsNumber && !ReadFigures.Contains((_denied[other].Value, _denied[other].IsFraction)))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsBoostRead()
    {
        foreach (LineFinding value in Values.Values)
        {
            if (value.Key is "R148-12" or "R141-QR" or "R157-12W" or "F110-15B" or "F110-20B")
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A denial that ends its clause is of what stands before it: "UDH: no".</summary>
    private bool DeniesBefore(int not)
    {
        int clause = _items[not].Clause;
        for (int j = not + 1; j < _items.Count && _items[j].Clause == clause; j++)
        {
            if (_items[j].Kind != SpecTokenKind.Sign)
            {
                return false;
            }
        }

        bool alone = true;
        bool heading = false;
        for (int j = not - 1; j >= 0 && _items[j].Clause == clause; j--)
        {
            alone &= _items[j].Kind == SpecTokenKind.Sign;
            heading |= j == not - 1 && (_items[j].IsSign(':') || _items[j].IsSign('='));
        }

        return _read.Contains(clause) || (alone && _read.Contains(clause - 1)) || (heading && _read.Contains(clause + 1));
    }
}
