using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork;

/// <summary>Values of a line of a needs sheet as a person reads them: sizes as runs, "22 to 63", and names as far as they can be taken in, with how many more there are.</summary>
internal sealed class NeedList
{
    private readonly JointInput _input;
    private readonly int _most;
    private readonly int _letters;
    private readonly Dictionary<long, int> _places = [];
    private readonly bool _isFigures;

    /// <param name="input">What the values are of.</param>
    /// <param name="all">Every value that there can be, in order: a run is of values that follow each other in it.</param>
    /// <param name="inShort">Only the first of them are told.</param>
    public NeedList(JointInput input, IEnumerable<long> all, bool inShort)
    {
        (int most, int letters) = inShort ? (5, 60) : (12, 1_000);
        _input = input;
        _most = most;
        _letters = letters;
        foreach (long code in all)
        {
            _places.TryAdd(code, _places.Count);
        }

        decimal before = decimal.MinValue;
        _isFigures = _places.Count > 2;
        foreach (long code in _places.Keys)
        {
            _isFigures &= decimal.TryParse(input.Show(code), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal figure) && figure > before;
            before = figure;
        }
    }

    /// <summary>All of them are told.</summary>
    public bool IsShort(ImmutableArray<long> codes) => Told(Names(codes)) == Names(codes).Length;

    /// <summary>The values in words; empty for none.</summary>
    public string Of(ImmutableArray<long> codes)
    {
        string[] names = Names(codes);
        string parted = Array.Exists(names, n => n.Contains(',', StringComparison.Ordinal)) ? " / " : ", ";
        int told = Told(names);
        return string.Join(parted, names.Take(told)) + (told == names.Length ? "" : $" and {names.Length - told} more");
    }

    /// <summary>How many are told: one at least.</summary>
    private int Told(string[] names)
    {
        int told = 0;
        for (int letters = 0; told < names.Length && told < _most && (told == 0 || letters + names[told].Length <= _letters); told++)
        {
            letters += names[told].Length + 2;
        }

        return told;
    }

    /// <summary>Runs of three or more figures that follow each other, and everything else by itself.</summary>
    private string[] Names(ImmutableArray<long> codes)
    {
        if (!_isFigures)
        {
            return [.. codes.Select(_input.Tell)];
        }

        List<string> names = [];
        for (int first = 0; first < codes.Length;)
        {
            int last = first;
            while (last + 1 < codes.Length && _places[codes[last + 1]] == _places[codes[last]] + 1)
            {
                last++;
            }

            if (last - first < 2 || codes.Length <= _most)
            {
                names.Add(_input.Show(codes[first]));
                first++;
                continue;
            }

            names.Add($"{_input.Show(codes[first])} to {_input.Show(codes[last])}");
            first = last + 1;
        }

        return [.. names];
    }
}
