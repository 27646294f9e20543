namespace Lugwork.Reading;

/// <summary>Figures and words that were read, and what stands against them.</summary>
internal sealed partial class LineScan
{
    /// <summary>A figure that was read, but with a unit or letters against it that do not go with its field, or far too large for its unit.</summary>
    private void DoubtfulFigures()
    {
        foreach (LineFinding value in Values.Values)
        {
            if (Doubts.Count == 0 && IsWordWithOther(value))
            {
                Several(value.Field, [value.Key], value.First, value.Last, "another word stands beside it that may be its alternative");
            }

            string type = _fields[value.Field].Type.Name;
            for (int i = value.First; i <= value.Last && Doubts.Count == 0; i++)
            {
                SpecItem item = _items[i];
                if (!item.IsNumber || !item.Used)
                {
                    continue;
                }

                bool unit = item.Unit switch
                {
                    "mm" when item is { UnitWord: "cm", Places: >= 3 } => false,
                    "" or "mm" => true,
                    "in" => item.Value < 15 || (type == nameof(Tyres.TyreSize) && item.Value <= 36) || (type == nameof(Tyres.BeadSeat) && IsMountainSeat(i, out _)),
                    "kg" or "lb" => type == nameof(Load),
                    "g" or "deg" or "w" or "other" => type == nameof(Steering.HeadsetBearing) && item.Unit == "deg",
                    "tpi" => type.EndsWith("Thread", StringComparison.Ordinal) || item.Value is 20 or 24 or 26,
                    _ => true,
                };
                if (!unit)
                {
                    Several(value.Field, [value.Key], i, i, "the unit does not go with it");
                }
                else if (IsChainedToLeft(i, type))
                {
                    Several(value.Field, [value.Key], i, i, "another figure hangs on it that was not read");
                }
                else if (IsLettered(i, type))
                {
                    Several(value.Field, [value.Key], i, i, "letters stand against the figure");
                }
            }
        }
    }

    /// <summary>A dash or slash without blanks joins it to a figure that was not read: 37-622-01.</summary>
    private bool IsChainedToLeft(int i, string type)
    {
        bool behind = i + 2 < _items.Count && _items[i + 1] is { Kind: SpecTokenKind.Sign, Glued: true } next && next.Text is "-" or "/" && _items[i + 2] is { IsNumber: true, Glued: true, Used: false } && !IsInchesOfRead(i + 2) && !(type == nameof(Steering.HeadsetBearing) && IsSealOfBearing(i + 2));
        behind = behind && !(_items[i + 2] is { IsInch: true, Value: 1 } && type.EndsWith("Thread", StringComparison.Ordinal));
        bool before = i >= 2 && _items[i].Glued && _items[i - 1] is { Kind: SpecTokenKind.Sign, Glued: true } last && last.Text is "-" or "/" && _items[i - 2] is { IsNumber: true, Used: false } && !(type == nameof(Tyres.TyreSize) && last.Text is "/" && i > 3 && _items[i - 3].IsSign('x') && _items[i - 4].IsNumber && Math.Abs((_items[i - 2].Value * 25.4m) - _items[i].Value) <= 6 && IsLabelBesideSize(i - 2));
        return behind || before;
    }

    /// <summary>A word that was read has another word behind a slash, or in brackets against it: XD(R), JIS/ISO, short / long.</summary>
    private bool IsWordWithOther(LineFinding value)
    {
        if (value.First != value.Last || _items[value.First].IsNumber)
        {
            return false;
        }

        bool behind = value.Last + 2 < _items.Count && (_items[value.Last + 1].IsSign('/') || (_items[value.Last + 1].IsSign('(') && _items[value.Last + 1].Glued && _items[value.Last + 2].Glued)) && IsOtherWord(value.Last + 2);
        bool before = value.First >= 2 && _items[value.First - 1].IsSign('/') && IsOtherWord(value.First - 2);
        return behind || before;
    }

    private bool IsOtherWord(int i) => _items[i] is { Kind: SpecTokenKind.Word, Used: false } word && (word.Terms.IsEmpty || word.Is("t:beadseat") || word.Is("t:length")) && !(i + 1 < _items.Count && IsCage(_items[i + 1].Text)) && (_items[i].Glued || word.Is("t:length") || (i + 1 < _items.Count && _items[i + 1].IsSign('/') && IsShortWord(word)));

    /// <summary>"Long cage", "gabbia lunga": what the word for a length is of.</summary>
    private static bool IsCage(string word) => word is "cage" or "kafig" or "chape" or "caja" or "pata" or "gabbia" or "kooi";

    private static bool IsShortWord(SpecItem word) => WordLists.ScanDoubtfulFiguresIsShortWord.Contains(word.Text);

    /// <summary>Letters that mean nothing here stand against the figure: part of a number of an article, or of another figure.</summary>
    private bool IsLettered(int i, string type)
    {
        if (i + 1 < _items.Count && _items[i + 1] is { Kind: SpecTokenKind.Word, Glued: true, Text: "er" })
        {
            return _items[i].Unit != "teeth" && !(i + 2 < _items.Count && _items[i].Value is 20 or 24 or 26 && _items[i + 2].Text is "gewinde" or "gewinden" or "draad" && (type.EndsWith("Thread", StringComparison.Ordinal) || type == "ShellFamily")) && _items[i].Value is not (29 or 26 or 27.5m) && !(_items[i].Value == 700 && type == nameof(Tyres.TyreSize)) && !IsSeat(_items[i].Value);
        }

        if (i + 1 < _items.Count && _items[i + 1] is { Kind: SpecTokenKind.Word, Glued: true, Text: "e" or "y" or "a" or "o" } letter && !_items[i].IsFraction && _items[i].Value is not (700 or 650) && !(letter.Text == "a" && (_slot == Slot.FrontTyre || _slot == Slot.RearTyre) && i >= 2 && _items[i - 1].IsSign('x')))
        {
            return true;
        }

        if (i + 1 < _items.Count && _items[i + 1] is { Kind: SpecTokenKind.Word, Glued: true } next && next.Terms.IsEmpty && !WordLists.ScanDoubtfulFiguresIsLettered.Contains(next.Text))
        {
            return !(next.Text == "f" && IsThreadSize(i - 2));
        }

        return i > 0 && _items[i].Glued && _items[i - 1] is { Kind: SpecTokenKind.Word } before && before.Terms.IsEmpty && !(before.Text is "ea" or "f" or "e" or "s" && type is "TyreSize") && !WordLists.ScanDoubtfulFiguresIsLettered2.Contains(before.Text);
    }
}
