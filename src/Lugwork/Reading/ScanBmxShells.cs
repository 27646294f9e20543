using System.Collections.Immutable;
using Lugwork.BottomBrackets;

namespace Lugwork.Reading;

/// <summary>Shells whose width the name says only together with another word or with the bore.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Mid, 41.2 ID x 73mm": the line has two figures, and one of them is the bore of the family that is named; the other one is then its width. -1 where it is otherwise.</summary>
    private int WidthByBore(ImmutableArray<string> kinds, int at)
    {
        if (kinds.Length != 1 || FigureCount != 2 || ShellFamily.All.FirstOrDefault(f => f.FitKey == kinds[0]) is not { IsThreaded: false } family)
        {
            return -1;
        }

        int first = _items.FindIndex(o => o.IsNumber);
        int second = _items.FindIndex(first + 1, o => o.IsNumber);
        if (!Free(first) || !Free(second) || !_items[first].IsMillimetre || !_items[second].IsMillimetre || Math.Abs(_items[second].Clause - _items[at].Clause) > 2)
        {
            return -1;
        }

        (int bore, int width) = HasBore(family, _items[first].Value) ? (first, second) : (second, first);
        if (!HasBore(family, _items[bore].Value) || !IsShellWidth(width) || TopicOf(bore) is not ("" or "t:bb" or "t:inner" or "t:shellbore") || TopicOf(width) is not ("" or "t:bb" or "t:inner" or "n:width" or "t:shellbore" or "t:length"))
        {
            return -1;
        }

        _items[bore].Used = true;
        return width;
    }

    /// <summary>"BMX frame, mid BB": the word that makes "mid" and "Spanish" the names of shells of one width; -1 where it is missing, or where any other figure could be a width.</summary>
    private int BmxOfShell()
    {
        int bmx = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            bmx = _items[i].Is("m:bmx") || _items[i] is { Text: "bmx", Kind: SpecTokenKind.Word } ? i : bmx;
            if (_items[i] is { IsNumber: true, Value: >= 55 and <= 105 } or { IsBroken: true })
            {
                return -1;
            }
        }

        return bmx;
    }
}
