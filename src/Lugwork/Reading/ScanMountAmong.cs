namespace Lugwork.Reading;

/// <summary>The rotor that a mount is made for, in a clause that is about other parts too.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Flat mount directo para disco de 160 y tija de 26,8", "l'étrier flat mount passe un disque de 160 en direct": only words of the mount lead to the figure, one of them says that it is made for the rotor, and what stands behind begins with an "and" or a sign; -1 where they are not.</summary>
    private int RotorAmong(int mark, bool post)
    {
        bool made = false;
        bool rotor = false;
        int size = -1;
        for (int j = mark + 1; j < _items.Count && j <= mark + 9 && _items[j].Clause == _items[mark].Clause; j++)
        {
            if (_items[j].IsNumber)
            {
                size = MountSize(j, post) && IsRotorSize(_items[j], post) && !JoinsClosely(j) ? j : -1;
                break;
            }

            if (_items[j].Kind != SpecTokenKind.Word || !IsOfMount(_items[j]) || _items[j].Is("t:fork") || _items[j].Is("m:not") || SetAside.IsWith(_items[j]))
            {
                return -1;
            }

            rotor |= _items[j].Is("t:rotor");
            made |= IsDirectWord(_items[j]) || IsMadeFor(_items[j]);
        }

        if (size < 0)
        {
            return -1;
        }

        int at = size + 1;
        while (at < _items.Count && at <= size + 3 && _items[at].Clause == _items[size].Clause && _items[at].Kind == SpecTokenKind.Word && (IsDirectWord(_items[at]) || _items[at].Text is "en" or "mm" or "in" || _items[at].Is("t:rotor")))
        {
            rotor |= _items[at].Is("t:rotor");
            made |= IsDirectWord(_items[at]);
            at++;
        }

        bool ends = at >= _items.Count || _items[at].Clause != _items[size].Clause || _items[at].Kind == SpecTokenKind.Sign || IsAndWord(_items[at]);
        return made && rotor && ends && Anywhere("m:adapt") < 0 && Anywhere("m:max") < 0 && _slot != Slot.Fork ? size : -1;
    }

    private static bool IsMadeFor(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanMountAmongIsMadeFor.Contains(item.Text);
}
