using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Keeps what was read: a value, several readings or a refusal.</summary>
internal sealed partial class LineScan
{
    /// <summary>Reads the text for a field and keeps what comes of it: a value, a doubt or a refusal.</summary>
    private bool Take(string field, string text, int first, int last, string assumed = "")
    {
        if (!_fields.TryGetValue(field, out SpecField? known) || Counted())
        {
            return false;
        }

        MarkRead(first, last);
        FieldReading reading = known.Read(text);
        if (known.Type.Name is "SeatpostDiameter" or "SeatTubeBore" && reading.Keys.Length == 1 && !IsNominal(reading.Keys[0]))
        {
            Refuse(field, first, last, "no post of this diameter is listed, and the nearest is not guessed");
            return false;
        }

        if (reading.Keys is [string key])
        {
            if (first == last)
            {
                _fieldOf[first] = field;
            }

            Keep(field, key, first, last, assumed);
            return true;
        }

        Doubts.Add(new(field, reading.Keys, _items[first].Start, _items[last].End, reading.Keys.IsEmpty ? LineDoubtKind.Refused : LineDoubtKind.Several, reading.Reason));
        return false;
    }

    /// <summary>Counts what would be a value; true where there are too many of them, which is a doubt of its own.</summary>
    private bool Counted()
    {
        if (++_takes == MostTakes + 1)
        {
            Doubts.Add(new("", [], _items[0].Start, _items[^1].End, LineDoubtKind.Refused, "there are too many figures for one line"));
        }

        return _takes > MostTakes;
    }

    private static bool IsNominal(string diameter)
    {
        foreach (Seating.SeatpostDiameter known in Seating.SeatpostDiameter.All)
        {
            if (known.FitKey == diameter)
            {
                return true;
            }
        }

        return false;
    }

    private void Keep(string field, string key, int first, int last, string assumed = "")
    {
        if (Full || Counted())
        {
            return;
        }

        MarkRead(first, last);
        LineFinding finding = new(field, key, _items[first].Start, _items[last].End, assumed, first, last);
        if (!Values.TryGetValue(field, out LineFinding? before))
        {
            Values[field] = finding;
        }
        else if (before.Key == key && Math.Max(before.End, finding.End) - Math.Min(before.Start, finding.Start) <= 60 && assumed.Length == 0)
        {
            // Said twice beside each other: the words of both.
            Values[field] = before with { Start = Math.Min(before.Start, finding.Start), First = Math.Min(before.First, first), End = Math.Max(before.End, finding.End), Last = Math.Max(before.Last, last), Assumed = before.Assumed.Length > 0 ? assumed : before.Assumed };
        }
        else if (before.Key != key)
        {
            Doubts.Add(new(field, [before.Key, key], finding.Start, finding.End, LineDoubtKind.Conflict, "the line says two different values"));
        }
        else if (before.Assumed.Length > 0 && assumed.Length == 0)
        {
            Values[field] = finding;
        }
    }

    /// <summary>Marks what a value was read from. A figure in between counts only where a sign joins it to another one of them: any other is still open.</summary>
    private void MarkRead(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            bool joined = (i - 2 >= first && Links(_items[i - 1]) && _items[i - 2].IsNumber) || (i + 2 <= last && Links(_items[i + 1]) && _items[i + 2].IsNumber);
            _items[i].Used |= joined || !_items[i].IsNumber || i == first || i == last;
        }
    }

    private void Several(string field, ImmutableArray<string> keys, int first, int last, string reason)
    {
        for (int i = first; i <= last; i++)
        {
            _items[i].Used = true;
        }

        Doubts.Add(new(field, keys, _items[first].Start, _items[last].End, LineDoubtKind.Several, reason));
    }

    private void Refuse(string field, int first, int last, string reason, LineDoubtKind kind = LineDoubtKind.Refused)
    {
        for (int i = first; i <= last; i++)
        {
            _items[i].Used = true;
        }

        Doubts.Add(new(field, [], _items[first].Start, _items[last].End, kind, reason));
    }

    /// <summary>Words that are values of one type go to one field of that type.</summary>
    private void Words(string type, string field, Func<int, bool>? where = null)
    {
        string prefix = "v:" + type + "=";
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            SpecItem item = _items[i];
            if ((item.Used && item.IsNumber) || (item.Text is "av" && !item.IsFraction && type == "ValveStem" && OtherStem(i)))
            {
                continue;
            }

            foreach (string term in item.Terms)
            {
                if (!term.StartsWith(prefix, StringComparison.Ordinal) || (where is not null && !where(i)))
                {
                    continue;
                }

                if (Negated(i))
                {
                    item.Used = true;
                    break;
                }

                string[] keys = term[prefix.Length..].Split('|');
                if (keys.Length == 1)
                {
                    Keep(field, keys[0], i, i);
                }
                else
                {
                    Several(field, [.. keys], i, i, "the words stand for several");
                }

                break;
            }
        }
    }

    /// <summary>A valve is named in full beside "AV", which then says "front" in French.</summary>
    private bool OtherStem(int av)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (i != av && _items[i].Text.Length > 2 && !_items[i].Terms.IsEmpty && _items[i].Terms[0].StartsWith("v:ValveStem=", StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Drops what a closer reading of the same field makes needless: a kind without its size beside one with it.</summary>
    private void Settle(string field)
    {
        if (Values.TryGetValue(field, out LineFinding? found))
        {
            Doubts.RemoveAll(d => d.Field == field && d.Kind == LineDoubtKind.Several && d.Keys.Contains(found.Key));
        }
    }
}
