using System.Collections.Immutable;
using Lugwork.Hubs;

namespace Lugwork.Reading;

/// <summary>Threads of axles.</summary>
internal sealed partial class LineScan
{
    /// <summary>Threads of thru-axles: M12 and M15 with their pitch, in any order.</summary>
    private void ReadAxleThread(string field)
    {
        bool axleSlot = _slot == Slot.FrontThruAxle || _slot == Slot.RearThruAxle;
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool metric = i > 0 && _items[i - 1].Text == "m" && _items[i].Glued;
            if (!Free(i) || _items[i].Value is not (12 or 15 or 20))
            {
                continue;
            }

            if (i + 2 < _items.Count && (_items[i + 1].IsSign('x') || _items[i + 1].Text == "p" || (metric && _items[i + 1].IsSign('/') && _items[i + 1].Glued)) && Free(i + 2) && _items[i + 2].Value < 3 && !_items[i + 2].IsFraction)
            {
                Take(field, $"M{_items[i].Text}x{_items[i + 2].Text}", metric ? i - 1 : i, i + 2);
                _items[i].Used = true;
                if (axleSlot && i + 4 < _items.Count && _items[i + 3].IsSign('x') && Free(i + 4) && _items[i + 4].Value is >= 80 and <= 270)
                {
                    Length("length", i + 4);
                }

                continue;
            }

            if (i + 3 < _items.Count && ((_items[i + 1].IsSign('x') && _items[i + 2].Text == "p") || (_items[i + 1].Text == "p" && _items[i + 2].IsSign('.'))) && Free(i + 3) && _items[i + 3].Value is 1 or 1.5m or 1.75m)
            {
                Take(field, $"M{_items[i].Text}x{_items[i + 3].Text}", metric ? i - 1 : i, i + 3);
                _items[i].Used = true;
                continue;
            }

            bool topic = metric || axleSlot || TopicOf(i) is "t:axle" or "t:axlethread" or "t:thread" or "t:pitch" || (IsThickness(i) && Anywhere("t:pitch") >= 0) || IsPitchBehindHub(i);
            int pitch = topic ? PitchNear(i) : -1;
            pitch = pitch < 0 && metric ? _onlyPitch ??= OnlyPitch() : pitch;
            pitch = pitch >= 0 && Free(pitch) ? pitch : -1;
            if (pitch >= 0 && IsAxleByWidth(i))
            {
                // "12 x 142, pitch 1.75": the axle is of the hub too.
                Take(field, $"M{_items[i].Text}x{_items[pitch].Text}", pitch, pitch);
            }
            else if (pitch >= 0)
            {
                Take(field, $"M{_items[i].Text}x{_items[pitch].Text}", Math.Min(metric ? i - 1 : i, pitch), Math.Max(i, pitch));
                _items[i].Used = true;
                _items[pitch].Used = true;
            }
            else if (metric && !(Values.TryGetValue(field, out LineFinding? said) && said.Key.StartsWith($"M{_items[i].Text}x", StringComparison.Ordinal)))
            {
                Take(field, "M" + _items[i].Text, i - 1, i);
            }
        }

        Settle(field);
    }

    /// <summary>An axle that a times sign joins to the width of a hub, on a frame or a fork.</summary>
    private bool IsAxleByWidth(int i) =>
        (_slot == Slot.Frame || _slot == Slot.Fork) && ((Pair(i, out int second) && !InTriple(i) && IsHubWidth(_items[second].Value, _slot == Slot.Frame)) || (i >= 2 && Pair(i - 2, out _) && !InTriple(i - 2) && IsHubWidth(_items[i - 2].Value, _slot == Slot.Frame)));

    /// <summary>"12 x 142, pitch 1.75": the pitch is the next figure behind the axle and its width, and no other part is named before it.</summary>
    private bool IsPitchBehindHub(int i)
    {
        if (!IsAxleByWidth(i))
        {
            return false;
        }

        for (int j = (Pair(i, out int second) ? second : i) + 1; j < _items.Count && j <= i + Reach; j++)
        {
            if (_items[j].IsNumber)
            {
                return _items[j].Value is 1 or 1.5m or 1.75m && !JoinsClosely(j) && !Clauses(_items[j].Clause).Any(o => IsPart(o) && !o.Is("t:axle"));
            }

            if (_items[j].Kind == SpecTokenKind.Word && _items[j].Text.Length > 3 && !_items[j].Is("t:pitch") && !_items[j].Is("t:thread") && !_items[j].Is("t:axle") && !_items[j].Is("t:axlethread") && !_items[j].Is("m:thru"))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>3/8 in and 24 tpi, M10 and pitch 1: the turns or the pitch of a solid axle, apart from its size.</summary>
    private int SolidThread(int i)
    {
        bool metric = i > 0 && _items[i - 1].Text == "m" && _items[i].Glued && _items[i].Value is 9 or 10 or 14;
        bool inch = _items[i].IsFraction && _items[i].Value is 0.375m or 0.3125m;
        int found = -1;
        bool bareNuts = _slot == Slot.FrontAxleNuts || _slot == Slot.RearAxleNuts;
        for (int j = Math.Max(0, i - Reach); (metric || inch) && j < _items.Count && j <= i + Reach; j++)
        {
            bool turns = j != i && Free(j) && !_items[j].IsFraction && (inch ? _items[j].Value is 24 or 26 && (_items[j].Unit == "tpi" || (bareNuts && _items[j].Unit == "holes" && _items[j].UnitWord is "h") || (_items[j].Unit == "speed" && _items[j].UnitWord is "gang" or "gange" or "gangen") || IsTurnsBehind(j) || TopicOf(j) is "t:pitch" or "t:thread" or "t:axlethread") : _items[j].Value == 1 && _items[j].IsMillimetre && (TopicOf(j) is "t:pitch" || (Link(j) is >= 0 and int of && _items[of].Is("t:pitch"))));
            if (turns && found >= 0)
            {
                return -1;
            }

            found = turns ? j : found;
        }

        return found;
    }

    /// <summary>"M10 fine thread 1.25": a pitch that no solid axle has, which is not passed over.</summary>
    private int OtherPitch(int i)
    {
        for (int j = Math.Max(0, i - Reach); j < _items.Count && j <= i + Reach; j++)
        {
            if (j != i && Free(j) && !_items[j].IsFraction && _items[j].IsMillimetre && _items[j].Value is > 0.4m and < 3 and not 1 && Link(j) is >= 0 and int of && _items[of].Is("t:pitch"))
            {
                return j;
            }
        }

        return -1;
    }

    /// <summary>"26 hilos", "26 filets", "26 Gang": turns, without the inch that they are of.</summary>
    private bool IsTurnsBehind(int j) => j + 1 < _items.Count && _items[j].Unit.Length == 0 && _items[j + 1].Kind == SpecTokenKind.Word && WordLists.ScanAxlesIsTurnsBehind.Contains(_items[j + 1].Text);

    /// <summary>A pitch by its word or its letter: "P1.0", "pitch 1.5".</summary>
    private int PitchNear(int i)
    {
        for (int j = Math.Max(1, i - Reach); j < _items.Count && j <= i + Reach; j++)
        {
            if (j != i && Free(j) && !(j + 1 < _items.Count && _items[j + 1].IsSign('x')) && _items[j].Value is 1 or 1.5m or 1.75m && ((j + 1 < _items.Count && _items[j].Places > 0 && _items[j].IsMillimetre && _items[j + 1].Clause == _items[j].Clause && (_items[j + 1].Is("t:pitch") || _items[j + 1].Is("t:thread"))) || (_items[j - 1].Text == "p" && (_items[j].Glued || (j == i + 3 && i > 0 && _items[i - 1].Text == "m"))) || TopicOf(j) is "t:pitch" || (Link(j) >= 0 && _items[Link(j)].Is("t:pitch")) || (TopicOf(j) is "t:thread" or "t:axlethread" && (_items[j].Value != 1 || _items[j].Places > 0))))
            {
                return j;
            }
        }

        return -1;
    }

    /// <summary>The only figure of the line that can be a pitch, in a line that names a pitch or a thread: "passo filetto 1,0 (M12)".</summary>
    private int OnlyPitch()
    {
        int found = -1;
        bool word = false;
        for (int j = 0; j < _items.Count; j++)
        {
            word |= _items[j].Is("t:pitch") || _items[j].Is("t:thread") || _items[j].Is("t:axlethread");
            if (!Free(j) || _items[j].IsFraction || !_items[j].IsMillimetre || _items[j].Value is not (1 or 1.5m or 1.75m) || JoinsClosely(j))
            {
                continue;
            }

            if (found >= 0 && _items[found].Value != _items[j].Value)
            {
                return -1;
            }

            found = j;
        }

        return word ? found : -1;
    }

    private int? _onlyPitch;

    /// <summary>Threads of solid axles: M10 x 1, 3/8 x 26.</summary>
    private void ReadHubAxleThread(string field, bool bare)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool metric = i > 0 && _items[i - 1].Text == "m" && _items[i].Glued;
            if (Pair(i, out int second) && !InTriple(i) && ((_items[i].Value is 9 or 10 or 14 && _items[second].Value == 1) || (_items[i].IsFraction && _items[second].Value is 24 or 26)))
            {
                Take(field, $"{(_items[i].IsFraction ? "" : "M")}{_items[i].Text}x{_items[second].Text}", metric ? i - 1 : i, second);
            }
            else if (Free(i) && i > 0 && _items[i - 1].Text == "fg" && _items[i] is { IsFraction: false, Value: 7.9m or 9.5m })
            {
                // "FG 9,5": the bicycle thread of the German norm, 26 turns an inch (DIN 79012, from memory).
                Take(field, _items[i].Value == 9.5m ? "3/8x26" : "5/16x26", i - 1, i);
            }
            else if (Free(i) && _items[i].IsFraction && i + 2 < _items.Count && ((_items[i + 1].IsSign('-') && _items[i + 1].Glued && _items[i + 2].Glued) || (_items[i + 1].IsSign('/') && _items[i].IsInch && (_slot == Slot.FrontAxleNuts || _slot == Slot.RearAxleNuts))) && Free(i + 2) && _items[i + 2] is { Value: 24 or 26, Unit: "" } && _items[i].Value is 0.375m or 0.3125m && !(i + 3 < _items.Count && (_items[i + 3].IsSign('/') || _items[i + 3].Is("m:or"))))
            {
                // "3/8-26", "3/8\"/26": size and turns.
                Take(field, $"{_items[i].Text}x{_items[i + 2].Text}", i, i + 2);
            }
            else if ((bare || TopicOf(i) is "t:axle" or "t:thread" or "t:axlethread" || HasMark(i, "m:nutted") || (FindMark(i, "m:nutted", 1) >= 0 && (_items[i].IsFraction || metric))) && Free(i) && SolidThread(i) is >= 0 and int turns)
            {
                Take(field, $"{(_items[i].IsFraction ? "" : "M")}{_items[i].Text}x{_items[turns].Text}", Math.Min(metric ? i - 1 : i, turns), Math.Max(i, turns));
                _items[i].Used = true;
                _items[turns].Used = true;
            }
            else if (!bare && metric && Free(i) && _items[i].Value is 9 or 10 or 14 && Free(i) && (HasMark(i, "m:nutted") || Clause(i, "t:axle")) && Clause(i, "t:thread") && _fields[field].Read("M" + _items[i].Text).Keys.Length == 1)
            {
                // "Solid axle with M9 thread": one pitch is made of it.
                Take(field, "M" + _items[i].Text, i - 1, i);
            }
            else if (bare && metric && Free(i) && OtherPitch(i) is >= 0 and int odd)
            {
                Refuse(field, Math.Min(i - 1, odd), Math.Max(i, odd), "no axle has this pitch");
            }
            else if (bare && Free(i) && (metric || _items[i].IsFraction || _items[i].Value is 9 or 10 or 14 && _items[i].IsMillimetre))
            {
                Take(field, metric ? "M" + _items[i].Text : _items[i].IsFraction ? _items[i].Text : _items[i].Text + " mm", metric ? i - 1 : i, i);
            }
        }
    }
}
