namespace Lugwork.Reading;

/// <summary>What is forbidden, what is gone, and words that are not known beside a value that they could turn round.</summary>
internal sealed partial class LineScan
{
    /// <summary>A word for something that is gone stands in the clause of a value, or alone behind it. Lips that are gone are a value of their own.</summary>
    private bool IsGone(int i)
    {
        int clause = _items[i].Clause;
        if (Values.TryGetValue("frontLips", out LineFinding? lips) && lips.Key == "missing" && _items[lips.First].Clause == clause)
        {
            return false;
        }

        if (lips?.Key == "missing" && Math.Abs(_items[lips.First].Clause - clause) == 1 && Clauses(clause).All(o => o.Kind == SpecTokenKind.Sign || o == _items[i]))
        {
            // "Sin topes (limados)".
            return false;
        }

        bool alone = true;
        foreach (SpecItem item in Clauses(clause))
        {
            alone &= item.Kind == SpecTokenKind.Sign || item.Is("d:gone") || item.Is("m:removed");
        }

        return Values.Values.Any(v => _items[v.First].Clause == clause) || (alone && _read.Contains(clause - 1));
    }

    /// <summary>A bore, or the outside of a tube whose bore stands beside it.</summary>
    private bool IsMeasuredTube(LineFinding value) => IsBore(value) || (value.Field == "seatTubeOutside" && Values.ContainsKey("seatTube"));

    private bool IsBore(LineFinding value) => _fields[value.Field].Type.Name == nameof(Seating.SeatTubeBore);

    /// <summary>Every word of the line is known, or is one that turns nothing round. A longer line is none.</summary>
    private bool IsPlain() => _items.Count <= ShortLine && !_items.Exists(IsUnknown);

    /// <summary>The same of the clause of an item, of the one before, and of the one behind where no semicolon parts them.</summary>
    private bool IsPlainAround(int i)
    {
        int clause = _items[i].Clause;
        bool parted = Clauses(clause).Concat(Clauses(clause + 1).Take(1)).Any(o => o.IsSign(';'));
        return !Clauses(clause).Concat(Clauses(clause - 1)).Concat(parted ? [] : Clauses(clause + 1)).Any(IsUnknown);
    }

    private static bool IsUnknown(SpecItem item) => item.Kind == SpecTokenKind.Word && item.Terms.IsEmpty && !item.Used && !IsSmallWord(item.Text) && !IsLeave(item.Text);

    /// <summary>That something is allowed or goes in, which "not" turns round before it is looked at.</summary>
    private static bool IsLeave(string word) => WordLists.ScanRefusedIsLeave.Contains(word);

    /// <summary>A size of the head tube, and another one that the line says of something else: "head tube 1.5, steerer 1 1/8".</summary>
    private bool IsOfHeadAndOther(List<(string Size, int At)> sizes)
    {
        int head = sizes.FindIndex(s => TopicOf(s.At) == "t:headtube");
        if (head < 0)
        {
            return false;
        }

        int clause = _items[sizes[head].At].Clause;
        return sizes.Exists(s => TopicOf(s.At) is "t:steerer" or "t:fork" || (_items[s.At].Clause != clause && TopicOf(s.At) != "t:headtube" && Clauses(_items[s.At].Clause).Any(o => o.Kind == SpecTokenKind.Word && (IsUnknown(o) || o.IsTopic))));
    }

    private static bool IsSmallWord(string text) =>
        WordLists.ScanRefusedIsSmallWord.Contains(text);

    /// <summary>A word that keeps what is named to one place.</summary>
    private bool SaysOnly() =>
        _items.Exists(i => i.Kind == SpecTokenKind.Word && WordLists.ScanRefusedSaysOnly.Contains(i.Text));

    /// <summary>A sign of comparison, once or several times, with its figure behind and no like sign that closes it: "&lt;&lt; 180", but not "&gt;&gt;&gt; 142x12 &lt;&lt;&lt;".</summary>
    private bool ComparesFigure(int i)
    {
        char sign = _items[i].Text[0];
        int end = i;
        while (end + 1 < _items.Count && _items[end + 1].IsSign(sign) && _items[end + 1].Glued)
        {
            end++;
        }

        if (end + 1 >= _items.Count || !_items[end + 1].IsNumber)
        {
            return false;
        }

        char closing = sign switch { '<' => '>', '>' => '<', _ => sign };
        for (int j = end + 2; j + 1 < _items.Count; j++)
        {
            if ((_items[j].IsSign(closing) || _items[j].IsSign(sign)) && _items[j + 1].IsSign(_items[j].Text[0]) && _items[j + 1].Glued && !(j + 2 < _items.Count && _items[j + 2].IsNumber))
            {
                return false;
            }
        }

        return true;
    }
}
