using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Spindles and the threads of pedals.</summary>
internal sealed partial class LineScan
{
    private void ReadSpindleSeat()
    {
        Words("SpindleSeat", "takes", i => !IsOfSpider(i));
        SquareApart("takes");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Free(i) && _items[i].IsMillimetre && _items[i].Value is 24 or 25 or 29 or 28.99m or 30 or 19 or 22 && Free(i) && TopicOf(i) is "t:spindle" or "" or "t:bb" or "t:crank" or "t:axle" && (_items[i].Unit == "mm" || TopicOf(i) is "t:spindle" or "t:axle"))
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

    private void ReadSpindle()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].Value is not (24 or 25 or 29 or 28.99m or 30 or 19 or 22) || !(TopicOf(i) is "t:spindle" or "t:axle" || Clause(i, "t:spindle") || (_items[i].Unit == "mm" && _items[i].Value == 24 && i + 1 < _items.Count && (_items[i + 1].Is("m:road") || _items[i + 1].Is("m:offroad")))))
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

        Words("SpindleSeat", "spindle", i => !IsOfSpider(i));
        SquareApart("spindle");
        SplinesApart("spindle");
        Settle("spindle");
    }

    /// <summary>"One-piece spider": in one piece is what stands behind, and not the cranks.</summary>
    private bool IsOfSpider(int i) =>
        _items[i].Is("v:SpindleSeat=one-piece") && i + 1 < _items.Count && (_items[i + 1].Is("t:chainring") || _items[i + 1].Text is "spider" or "stern" or "arm" or "arms" or "cage" or "etoile" or "arana" or "ragno" or "spin" or "driver");

    /// <summary>"Acht Keile, 9 mm lang", "eight splines, short (5 mm)": the length of the splines apart from their number.</summary>
    private void SplinesApart(string field)
    {
        int mark = Anywhere("m:eightspline");
        string said = Values.TryGetValue(field, out LineFinding? before) ? before.Key : "";
        if (!said.StartsWith("8-spline", StringComparison.Ordinal) && (mark < 0 || said.Length > 0))
        {
            return;
        }

        int at = said.Length > 0 ? before!.First : mark;
        int figure = -1;
        int word = -1;
        string key = said;
        for (int i = Math.Max(0, at - 6); i < _items.Count && i <= at + 8; i++)
        {
            bool depth = Free(i) && _items[i] is { Unit: "mm", Value: 5 or 9 };
            bool isShort = depth ? _items[i].Value == 5 : _items[i].Text is "short" or "kurz" or "kurze" or "kurzer" or "court" or "courte" or "courtes" or "corto" or "corta" or "cortas" or "corte" or "kort" or "korte";
            bool isLong = depth ? _items[i].Value == 9 : _items[i].Text is "long" or "lang" or "lange" or "langer" or "longue" or "longues" or "largo" or "larga" or "largas" or "lungo" or "lunga" or "lunghe";
            if ((!isShort && !isLong) || Math.Abs(_items[i].Clause - _items[at].Clause) > 1 || Negated(i))
            {
                continue;
            }

            // "9 mm lang": the word is of the figure.
            if (!depth && i > 0 && _items[i - 1] is { IsNumber: true, Unit: "mm" })
            {
                continue;
            }

            string one = isShort ? "8-spline-short" : "8-spline-long";
            if (key.Length > 0 && key != one)
            {
                Several(field, [key, one], Math.Min(at, i), Math.Max(at, i), "the splines are said to be short and long");
                return;
            }

            key = one;
            figure = depth ? i : figure;
            word = i;
        }

        if (word >= 0)
        {
            Keep(field, key, Math.Min(at, word), Math.Max(at, word));
            if (figure >= 0)
            {
                _items[figure].Used = true;
            }
        }
    }

    /// <summary>"For a 79 mm shell": where the only width of a shell is that one.</summary>
    private int OfShell79()
    {
        int at = _items.FindIndex(i => i is { IsNumber: true, Used: false, Value: 79, IsFraction: false });
        return at >= 0 && TopicOf(at) is "t:bb" && !Joins(at) && !_items.Exists(i => i is { IsNumber: true, Value: 68 or 73 or 83 or 86 or 86.5m or 89.5m or 92 }) ? at : -1;
    }

    /// <summary>"The long one": a word for the length without a figure, and no word for the other.</summary>
    private string LengthOfSpindle()
    {
        bool isLong = false;
        bool isShort = false;
        for (int i = 0; i < _items.Count; i++)
        {
            bool figure = (i > 0 && _items[i - 1].IsNumber) || (i + 1 < _items.Count && _items[i + 1].IsNumber);
            isLong |= !figure && !Negated(i) && _items[i].Text is "long" or "lang" or "lange" or "langer" or "longue" or "largo" or "larga" or "lungo" or "lunga";
            isShort |= !figure && !Negated(i) && _items[i].Text is "short" or "kurz" or "kurze" or "kurzer" or "court" or "courte" or "corto" or "corta" or "kort" or "korte";
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

    /// <summary>"14 mm P1.25", "rosca francesa de 14 mm": the one metric thread of pedals, by its pitch or its name.</summary>
    private bool IsFrenchPedal(int i, out int last)
    {
        last = i;
        if (!Free(i) || _items[i].Value != 14 || !_items[i].IsMillimetre || _items[i].IsFraction || Joins(i))
        {
            return false;
        }

        for (int j = i + 1; j < _items.Count && j <= i + 4; j++)
        {
            if (Free(j) && _items[j] is { Value: 1.25m, IsFraction: false } && (_items[j - 1].Text is "p" || _items[j - 1].Is("t:pitch") || TopicOf(j) is "t:pitch"))
            {
                last = j;
                return true;
            }
        }

        for (int j = Math.Max(0, i - 5); j < _items.Count && j <= i + 5; j++)
        {
            if (Math.Abs(_items[j].Clause - _items[i].Clause) <= 1 && !Negated(j) && (_items[j].Is("v:ShellFamily=French") || _items[j].Text is "francesa" or "francese" or "francais" or "franzosisch" or "franzosisches" or "frans" or "franse" or "frances" or "french"))
            {
                return true;
            }
        }

        return false;
    }

    private void ReadPedalThread(string field, bool needTopic)
    {
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
            else if (Pair(i, out int second) && !InTriple(i) && (_items[i].IsFraction || (_items[i].Value == 14 && _items[second].Value == 1.25m)))
            {
                Take(field, $"{_items[i].Text}{(_items[i].IsFraction ? "" : "")}x{_items[second].Text}", i, second);
            }
            else if (Free(i) && _items[i].IsFraction && i + 2 < _items.Count && _items[i + 1] is { Glued: true } dash && dash.IsSign('-') && Free(i + 2) && _items[i + 2].Value == 20)
            {
                Take(field, $"{_items[i].Text}x20", i, i + 2);
            }
            else if (Free(i) && _items[i].IsFraction)
            {
                Take(field, _items[i].Text, i, i);
            }
            else if (!needTopic && Free(i) && i + 2 < _items.Count && _items[i + 1].IsSign('/') && _items[i + 1].Glued && _items[i + 2].IsNumber)
            {
                Refuse(field, i, i + 2, "the thread is broken off or garbled");
            }
        }
    }
}
