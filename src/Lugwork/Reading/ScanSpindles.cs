using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Spindles and the threads of pedals.</summary>
internal sealed partial class LineScan
{
    private void ReadSpindleSeat()
    {
        Words("SpindleSeat", "takes", i => !IsOfSpider(i) && !IsOnlyCompatible(i));
        SquareApart("takes");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Free(i) && _items[i].IsMillimetre && _items[i].Value is 24 or 25 or 29 or 28.99m or 30 or 19 or 22 && Free(i) && TopicOf(i) is "t:spindle" or "" or "t:bb" or "t:crank" or "t:axle" && (_items[i].Unit == "mm" || TopicOf(i) is "t:spindle" or "t:axle" || IsThroughSpindle(i) || IsHollow(i)))
            {
                if (Free(i + 2) && i + 2 < _items.Count && _items[i + 1].IsSign('/') && ((_items[i].Value == 24 && _items[i + 2].Value == 22) || (_items[i].Value == 30 && _items[i + 2].Value == 28)))
                {
                    Take("takes", $"{_items[i].Text}/{_items[i + 2].Text}", i, i + 2);
                    continue;
                }

                Take("takes", _items[i].Value is 19 or 22 ? "BMX-" + _items[i].Text : _items[i].Text, i, i);
            }
        }

        Settle("takes");
    }

    /// <summary>"24er Hohlachse", "asse passante da 24", "axe intégré de 24": the spindle of two-piece cranks, by what it is like; the only axle of the clause.</summary>
    private bool IsHollow(int i)
    {
        if (JoinsClosely(i) || _items[i].Value is not (24 or 25 or 29 or 28.99m or 30))
        {
            return false;
        }

        bool hollow = false;
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.Is("t:hub") || item.Is("t:wheel") || item.Is("t:chainring") || item.Is("t:pedal") || item.Is("t:bcd") || (item.IsNumber && item != _items[i] && item.Value is > 15 and < 35))
            {
                return false;
            }

            hollow |= item.Is("m:thru") || WordLists.ScanSpindlesIsHollow.Contains(item.Text)
                || (WordLists.ScanSpindlesIsHollow2.Contains(item.Text) && HasAxleWord(item.Clause));
        }

        return hollow;
    }

    private bool HasAxleWord(int clause) =>
        Clauses(clause).Any(o => o.Is("t:axle") || o.Is("t:spindle") || WordLists.ScanSpindlesHasAxleWord.Contains(o.Text));

    /// <summary>"Asse passante da 24": in a bottom bracket what passes through is the spindle.</summary>
    private bool IsThroughSpindle(int i) =>
        !Joins(i) && ((i > 0 && _items[i - 1].Is("m:thru")) || (i > 1 && _items[i - 2].Is("m:thru") && WordLists.ScanSpindlesIsThroughSpindle.Contains(_items[i - 1].Text)));

    private void ReadSpindle()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].Value is not (24 or 25 or 29 or 28.99m or 30 or 19 or 22) || !(TopicOf(i) is "t:spindle" or "t:axle" || Clause(i, "t:spindle") || IsHollow(i) || (_items[i].Unit == "mm" && _items[i].Value == 24 && i + 1 < _items.Count && (_items[i + 1].Is("m:road") || _items[i + 1].Is("m:offroad")))))
            {
                continue;
            }

            if (i + 2 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2))
            {
                Take("spindle", $"{_items[i].Text}/{_items[i + 2].Text}", i, i + 2);
                continue;
            }

            bool road = FindMark(i, "m:road", 1) >= 0;
            bool off = FindMark(i, "m:offroad", 1) >= 0;
            if (!road && !off)
            {
                (road, off) = (IsCrankOf("m:road"), IsCrankOf("m:offroad"));
            }

            string key = (_items[i].Value, road, off) switch
            {
                (24, true, false) => "24-road",
                (24, false, true) => "24-MTB",
                _ => "",
            };
            if (key.Length > 0)
            {
                Keep("spindle", key, i, i);
            }
            else if (_items[i].Value is 30 && LengthOfSpindle() is { Length: > 0 } length)
            {
                Keep("spindle", "30-" + length, i, i);
            }
            else if (_items[i].Value is 30 && OfShell79() is >= 0 and int shell)
            {
                Keep("spindle", "30-79", i, i);
                _items[shell].Used = true;
            }
            else if (_items[i].Value is 24)
            {
                Several("spindle", ["24-road", "24-MTB"], i, i, "spindles of this name differ in length");
            }
            else if (_items[i].Value is 30)
            {
                Several("spindle", ["30-short", "30-79", "30-long"], i, i, "spindles of this name differ in length");
            }
            else
            {
                Take("spindle", _items[i].Value is 19 or 22 ? "BMX-" + _items[i].Text : _items[i].Text, i, i);
            }
        }

        Words("SpindleSeat", "spindle", i => !IsOfSpider(i) && !IsOnlyCompatible(i));
        SquareApart("spindle");
        SplinesApart("spindle");
        Settle("spindle");
    }

    /// <summary>"Bielas de carretera de cinco brazos, ...", "pédalier VTT ...": the word for what it is ridden on stands right beside the name of the crankset.</summary>
    private bool IsCrankOf(string use)
    {
        for (int i = 0; i < _items.Count && i < Reach; i++)
        {
            if (_items[i].Is("t:crank") || (_slot == Slot.Crankset && _items[i].Is("t:bb") && _items[i].Text is "pedalier"))
            {
                int at = i + 1;
                at += at < _items.Count && IsJoiningWord(_items[at]) && !_items[at].Is(use) ? 1 : 0;
                return (at < _items.Count && _items[at].Clause == _items[i].Clause && _items[at].Is(use)) || (i > 0 && _items[i - 1].Clause == _items[i].Clause && _items[i - 1].Is(use));
            }
        }

        return false;
    }

    /// <summary>"The long one": a word for the length without a figure, and no word for the other.</summary>
    private string LengthOfSpindle()
    {
        bool isLong = false;
        bool isShort = false;
        for (int i = 0; i < _items.Count; i++)
        {
            bool figure = (i > 0 && _items[i - 1].IsNumber) || (i + 1 < _items.Count && _items[i + 1].IsNumber);
            isLong |= !figure && !Negated(i) && WordLists.ScanSpindlesLengthOfSpindle.Contains(_items[i].Text);
            isShort |= !figure && !Negated(i) && WordLists.ScanSpindlesLengthOfSpindle2.Contains(_items[i].Text);
        }

        return isLong == isShort ? "" : isLong ? "long" : "short";
    }

    /// <summary>"Axe carré ISO", "Vierkant nach JIS": the kind of a square taper a word or two beside it.</summary>
    private void SquareApart(string field)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (!_items[i].Is("v:SpindleSeat=square-JIS|square-ISO") || Negated(i))
            {
                continue;
            }

            int iso = -1;
            int jis = -1;
            for (int j = Math.Max(0, i - 4); j < _items.Count && j <= i + 4; j++)
            {
                bool near = Math.Abs(_items[j].Clause - _items[i].Clause) <= 1 && !_items[j].IsFraction;
                iso = near && _items[j].Text == "iso" && !(j + 1 < _items.Count && _items[j + 1].IsNumber) ? j : iso;
                jis = near && _items[j].Text == "jis" ? j : jis;
            }

            if (iso >= 0 != jis >= 0)
            {
                int word = Math.Max(iso, jis);
                Doubts.RemoveAll(d => d.Field == field && d.Kind == LineDoubtKind.Several && d.Keys.Contains("square-JIS"));
                Keep(field, iso >= 0 ? "square-ISO" : "square-JIS", Math.Min(i, word), Math.Max(i, word));
            }
        }
    }

    private void ReadPedalThread(string field, bool needTopic)
    {
        int other = _items.FindIndex(o => o is { IsNumber: true, Unit: "tpi", Value: not 20 });
        if (other >= 0 && !needTopic && _items.Exists(o => o is { IsFraction: true, IsNumber: true, Value: 0.5625m }))
        {
            // "9/16 axle, 24 tpi": no pedal has that.
            Refuse(field, other, other, "no thread of a pedal has so many turns an inch");
            return;
        }

        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool topic = !needTopic || TopicOf(i) is "t:pedal" or "t:pedalthread" || Clause(i, "t:pedal") || Clause(i, "t:pedalthread");
            if (!topic)
            {
                continue;
            }

            if (!needTopic && IsFrenchPedal(i, out int pitch))
            {
                Take(field, "14x1.25", i, pitch);
            }
            else if (Free(i) && i > 0 && _items[i - 1].Text == "fg" && _items[i] is { IsFraction: false, Value: 14.3m })
            {
                // "FG 14,3": the name of the thread in the German norm (DIN 79012, from memory).
                Take(field, "9/16x20", i - 1, i);
            }
            else if (Pair(i, out int second) && !InTriple(i) && (_items[i].IsFraction || (_items[i].Value == 14 && _items[second].Value == 1.25m)))
            {
                Take(field, $"{_items[i].Text}{(_items[i].IsFraction ? "" : "")}x{_items[second].Text}", i, second);
            }
            else if (Free(i) && _items[i].IsFraction && i + 2 < _items.Count && _items[i + 1].IsSign('-') && Free(i + 2) && _items[i + 2] is { Value: 20, Unit: "" or "tpi" } && (_items[i + 1].Glued || EndsClause(i + 2)))
            {
                Take(field, $"{_items[i].Text}x20", i, i + 2);
            }
            else if (Free(i) && _items[i].IsFraction)
            {
                int turns = TurnsOfPedal(i);
                if (turns >= 0 && _items[turns].Value != 20)
                {
                    Refuse(field, Math.Min(i, turns), Math.Max(i, turns), "no pedal has these turns");
                    continue;
                }

                Take(field, turns < 0 ? _items[i].Text : _items[i].Text + "x20", turns < 0 ? i : Math.Min(i, turns), turns < 0 ? i : Math.Max(i, turns));
            }
            else if (!needTopic && Free(i) && i + 2 < _items.Count && _items[i + 1].IsSign('/') && _items[i + 1].Glued && _items[i + 2].IsNumber)
            {
                Refuse(field, i, i + 2, "the thread is broken off or garbled");
            }
        }
    }

    /// <summary>"9/16 Zoll, 20 Gg.", "9/16 a 20 hilos": how many turns an inch has, a word or two behind the size; -1 where none are said.</summary>
    private int TurnsOfPedal(int size)
    {
        for (int i = Math.Max(0, size - 8); i < _items.Count && i <= size + 4; i++)
        {
            if (!_items[i].IsNumber || i == size)
            {
                continue;
            }

            bool turns = _items[i].Unit == "tpi" || _items[i].UnitWord is "gang" or "gange" or "gangen"
                || (_items[i].Unit.Length == 0 && i + 2 < _items.Count && WordLists.ScanSpindlesTurnsOfPedal.Contains(_items[i + 1].Text) && _items[i + 2].Text is "pouce" or "inch" or "zoll" or "pulgada" or "pollice" or "duim" or "the")
                || (_items[i].Unit.Length == 0 && i + 1 < _items.Count && WordLists.ScanSpindlesTurnsOfPedal2.Contains(_items[i + 1].Text));
            turns &= Free(i) && !_items[i].IsFraction;
            if (turns || i > size)
            {
                // "20 threads to the inch on a half-inch axle": also before the size.
                return turns ? i : -1;
            }
        }

        return -1;
    }
}
