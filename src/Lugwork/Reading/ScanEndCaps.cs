namespace Lugwork.Reading;

/// <summary>End caps of hubs: whether they can be changed, and the large ones of one standard.</summary>
internal sealed partial class LineScan
{
    /// <summary>Words that say only that the end caps change: they make nothing else doubtful.</summary>
    private readonly HashSet<int> _caps = [];

    /// <summary>"Swappable end caps": said of the hub and not of an axle in the line.</summary>
    private void ReadEndCaps()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!_items[i].Is("m:endcaps") || Negated(i))
            {
                continue;
            }

            for (int step = 1; step <= 5; step++)
            {
                foreach (int j in (ReadOnlySpan<int>)[i - step, i + step])
                {
                    bool joined = j >= 0 && j < _items.Count && (_items[j].Clause == _items[i].Clause || (step <= 3 && OnlySigns(Math.Min(i, j), Math.Max(i, j))));
                    if (joined && (_items[j].Is("m:swap") || _items[j].Is("d:option")) && !Negated(j) && !IsOfBody(j) && !_caps.Contains(i))
                    {
                        Keep("ends", "swappable", Math.Min(i, j), Math.Max(i, j));
                        _caps.Add(i);
                        _caps.Add(j);
                    }
                }
            }
        }
    }

    private bool OnlySigns(int from, int to)
    {
        for (int k = from + 1; k < to; k++)
        {
            if (_items[k].Kind != SpecTokenKind.Sign)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>"XD driver swappable, end caps fixed": said of the body right before it.</summary>
    private bool IsOfBody(int i) =>
        i > 0 && _items[i - 1].Clause == _items[i].Clause && (_items[i - 1].Is("t:freehub") || _items[i - 1].Terms.Any(t => t.StartsWith("v:FreehubBody=", StringComparison.Ordinal)));

    /// <summary>"15x110 Boost, 31 mm end caps": the fork hub with large end caps, which is a standard of its own.</summary>
    private int LargeCaps()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool caps = Free(i) && _items[i].Value == 31 && _items[i].IsMillimetre;
            if (caps && ((i + 1 < _items.Count && _items[i + 1].Is("m:endcaps")) || (i > 0 && _items[i - 1].Is("m:endcaps")) || (i > 1 && _items[i - 2].Is("m:endcaps"))))
            {
                return i;
            }
        }

        return -1;
    }

    private void MarkCaps(int figure)
    {
        _items[figure].Used = true;
        for (int j = Math.Max(0, figure - 2); j <= figure + 1 && j < _items.Count; j++)
        {
            if (_items[j].Is("m:endcaps"))
            {
                _caps.Add(j);
            }
        }
    }
}
