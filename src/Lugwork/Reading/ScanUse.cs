namespace Lugwork.Reading;

/// <summary>The condition of use by the norm for bicycles.</summary>
internal sealed partial class LineScan
{
    /// <summary>"ASTM F2043, cond. 4": a word cut short counts where the norm is named.</summary>
    private void ReadUse()
    {
        Words("UseCategory", "use");
        int norm = Values.ContainsKey("use") ? -1 : _items.FindIndex(i => i.Text is "astm" or "f2043");
        for (int i = norm < 0 ? _items.Count : norm + 1; i + 1 < _items.Count && !Full; i++)
        {
            if (!WordLists.ScanUseReadUse.Contains(_items[i].Text))
            {
                continue;
            }

            int at = _items[i + 1].IsSign('.') || _items[i + 1].IsSign(':') ? i + 2 : i + 1;
            bool last = at + 1 >= _items.Count || _items[at + 1].Kind == SpecTokenKind.Sign && !Links(_items[at + 1]);
            if (last && at < _items.Count && Free(at) && _items[at] is { Unit: "", Value: >= 1 and <= 5, Places: 0, IsFraction: false } && !Negated(i) && Anywhere("m:or") < 0)
            {
                Keep("use", "condition-" + _items[at].Text, i, at);
                _items[at].Used = true;
                foreach (SpecItem item in _items.Where(o => o is { IsNumber: true, Value: 2043 }))
                {
                    item.Used = true;
                }

                return;
            }
        }
    }
}
