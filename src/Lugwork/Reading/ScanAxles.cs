using System.Collections.Immutable;
using Lugwork.Hubs;

namespace Lugwork.Reading;

/// <summary>Threads of axles.</summary>
internal sealed partial class LineScan
{
    /// <summary>Threads of thru-axles: M12 and M15 with their pitch, in any order.</summary>
    private void ReadAxleThread(string field)
    {
        bool axleSlot = _slot == Slot.FrontAxle || _slot == Slot.RearAxle;
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool metric = i > 0 && _items[i - 1].Text == "m" && _items[i].Glued;
            if (!Free(i) || _items[i].Value is not (12 or 15 or 20))
            {
                continue;
            }

            if (i + 2 < _items.Count && (_items[i + 1].IsSign('x') || _items[i + 1].Text == "p") && Free(i + 2) && _items[i + 2].Value < 3 && !_items[i + 2].IsFraction)
            {
                Take(field, $"M{_items[i].Text}x{_items[i + 2].Text}", metric ? i - 1 : i, i + 2);
                _items[i].Used = true;
                if (axleSlot && i + 4 < _items.Count && _items[i + 3].IsSign('x') && Free(i + 4) && _items[i + 4].Value is >= 80 and <= 270)
                {
                    Length("length", i + 4);
                }

                continue;
            }

            if (i + 3 < _items.Count && _items[i + 1].IsSign('x') && _items[i + 2].Text == "p" && Free(i + 3) && _items[i + 3].Value is 1 or 1.5m or 1.75m)
            {
                Take(field, $"M{_items[i].Text}x{_items[i + 3].Text}", metric ? i - 1 : i, i + 3);
                _items[i].Used = true;
                continue;
            }

            bool topic = metric || axleSlot || TopicOf(i) is "t:axle" or "t:axlethread" or "t:thread" or "t:pitch";
            int pitch = topic ? PitchNear(i) : -1;
            if (pitch >= 0)
            {
                Take(field, $"M{_items[i].Text}x{_items[pitch].Text}", Math.Min(metric ? i - 1 : i, pitch), Math.Max(i, pitch));
                _items[i].Used = true;
                _items[pitch].Used = true;
            }
            else if (metric)
            {
                Take(field, "M" + _items[i].Text, i - 1, i);
            }
        }

        Settle(field);
    }

    /// <summary>A pitch by its word or its letter: "P1.0", "pitch 1.5".</summary>
    private int PitchNear(int i)
    {
        for (int j = Math.Max(1, i - Reach); j < _items.Count && j <= i + Reach; j++)
        {
            if (j != i && Free(j) && _items[j].Value is 1 or 1.5m or 1.75m && ((_items[j - 1].Text == "p" && _items[j].Glued) || TopicOf(j) is "t:pitch" || (Link(j) >= 0 && _items[Link(j)].Is("t:pitch")) || (TopicOf(j) is "t:thread" or "t:axlethread" && _items[j].Value != 1)))
            {
                return j;
            }
        }

        return -1;
    }

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
            else if (bare && Free(i) && (metric || _items[i].IsFraction || _items[i].Value is 9 or 10 or 14 && _items[i].IsMillimetre))
            {
                Take(field, metric ? "M" + _items[i].Text : _items[i].IsFraction ? _items[i].Text : _items[i].Text + " mm", metric ? i - 1 : i, i);
            }
        }
    }
}
