using Lugwork.BottomBrackets;

namespace Lugwork.Reading;

/// <summary>Shells that are told by thread or bore and width, without the name of a family.</summary>
internal sealed partial class LineScan
{
    /// <summary>1.37 x 24, 36 x 24, M47 x 1: a thread that one family has.</summary>
    private string? FamilyOfThread(int i)
    {
        if (!IsThreadSize(i) || !Free(i) || !Free(i + 2) || (_items[i].IsFraction && _items[i].Value != 1.375m && _slot != Slot.BottomBracket) || (_items[i + 2].Value == 26 && TopicOf(i) is "t:tyre" or "t:wheel" or "t:rim" or "t:beadseat"))
        {
            return null;
        }

        return (_items[i].Value, _items[i + 2].Value) switch
        {
            (1.37m or 1.375m or 34.8m, 24) => "BSA",
            (1.37m or 1.375m or 34.8m, 26) => "26tpi",
            (36, 24) => "Italian",
            (47, 1) => "T47",
            _ => null,
        };
    }

    /// <summary>A pressed shell by its bore and its width: "bore 46, width 68", "41 x 92 press fit". Where only the bore is said, it is the field of the measured bore.</summary>
    private bool ShellByBore(string field)
    {
        bool bracket = Anywhere("t:bb") >= 0 || Anywhere("t:shellbore") >= 0 || _items.Exists(i => i.Terms.Any(t => t.StartsWith(FamilyPrefix, StringComparison.Ordinal)));
        if (!bracket)
        {
            return false;
        }

        int bore = -1;
        int width = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i].IsMillimetre && !_items[i].IsFraction)
            {
                bool paired = Pair(i, out int second) && !InTriple(i) && _items[second].IsMillimetre;
                if (paired && bore < 0 && width < 0 && IsBore(_items[i].Value) && _items[second].Value is >= 55 and <= 135)
                {
                    (bore, width) = (i, second);
                    break;
                }

                if (paired && bore < 0 && width < 0 && IsBore(_items[second].Value) && _items[i].Value is >= 55 and <= 135)
                {
                    (bore, width) = (second, i);
                    break;
                }

                bool inside = HasMark(i, "m:inside") || TopicOf(i) is "t:shellbore" or "t:inner" || (_items[i].Value is 41 or 42 or 46 && TopicOf(i) is "t:bb" or "" && Clauses(_items[i].Clause).Any(o => o.Terms.Any(t => t.StartsWith("v:ShellFamily=PF41|", StringComparison.Ordinal))));
                if (bore < 0 && inside && IsBore(_items[i].Value))
                {
                    bore = i;
                }
                else if (width < 0 && ShellSize(i) && TopicOf(i) is "t:bb" or "n:width" or "" or "t:shellbore" or "t:inner")
                {
                    width = i;
                }
            }
        }

        if (bore < 0)
        {
            return false;
        }

        if (width < 0)
        {
            if (field == "shell" && _fields.ContainsKey("shellBore") && !Doubts.Exists(d => d.Field == "shell") && (TopicOf(bore) is "t:shellbore" || Clause(bore, "t:bb") || Clause(bore, "t:shellbore")))
            {
                Length("shellBore", bore);
            }

            return false;
        }

        string[] keys = [.. Shell.All.Where(s => HasBore(s.Family, _items[bore].Value) && HasWidth(s, _items[width].Value)).Select(s => s.FitKey)];
        (int first, int last) = (Math.Min(bore, width), Math.Max(bore, width));
        _items[bore].Used = true;
        _items[width].Used = true;
        if (keys.Length == 1)
        {
            Keep(field, keys[0], first, last);
        }
        else if (keys.Length == 0)
        {
            Refuse(field, first, last, "no shell has this bore and width");
        }
        else
        {
            Several(field, [.. keys], first, last, "shells of several kinds have this bore and width");
        }

        return true;
    }

    /// <summary>"BB30, bore measured 41.96 mm": a bore beside the shell that was read, to the hundredth or with a word for measuring, is the field of the measured bore.</summary>
    private void MeasuredBore()
    {
        if (Values.ContainsKey("shellBore") || !Values.TryGetValue("shell", out LineFinding? said) || Shell.All.FirstOrDefault(s => s.FitKey == said.Key) is not { } shell)
        {
            return;
        }

        (int least, int most) = ShellDimensions.PrintedBores(shell.Family);
        for (int i = 0; i < _items.Count; i++)
        {
            bool bore = Free(i) && _items[i].IsMillimetre && !_items[i].IsFraction && !JoinsClosely(i) && !shell.Family.IsThreaded && most > 0 && _items[i].Value * 1000 > least - 400 && _items[i].Value * 1000 < most + 400
                && HasMark(i, "m:inside") && TopicOf(i) is "" or "t:bb" or "t:inner" or "t:shellbore";
            if (bore && (decimal.Truncate(_items[i].Value) != _items[i].Value || Clauses(_items[i].Clause).Any(o => o.Kind == SpecTokenKind.Word && IsMeasureWord(o.Text))))
            {
                Length("shellBore", i);
                return;
            }
        }
    }

    private static bool IsBore(decimal millimetres) => ShellFamily.All.Any(f => HasBore(f, millimetres));

    private static bool HasBore(ShellFamily family, decimal millimetres)
    {
        (int least, int most) = ShellDimensions.PrintedBores(family);
        return !family.IsThreaded && most > 0 && millimetres < 1_000 && (int)(millimetres * 1000) >= least && (int)(millimetres * 1000) <= most;
    }

    private static bool HasWidth(Shell shell, decimal millimetres) =>
        (decimal)shell.LeastWidth.Millimeters <= millimetres && millimetres <= (decimal)shell.MostWidth.Millimeters;

    /// <summary>The only width of a shell elsewhere in the line, of the shell by its words.</summary>
    private int WidthElsewhere()
    {
        bool only = !_items.Exists(i => i.IsTopic && !WordLists.ScanShellSizeWidthElsewhere.Contains(TopicIn(i)));
        bool plain = Anywhere("m:qr") < 0 && Anywhere("m:thru") < 0 && Anywhere("m:boost") < 0 && Anywhere("m:nutted") < 0;
        int found = -1;
        for (int j = 0; j < _items.Count; j++)
        {
            bool own = ShellSize(j) && (TopicOf(j) is "t:bb" || (TopicOf(j) is "n:width" && (only || Clause(j, "t:bb"))) || (only && plain && TopicOf(j) is "" && IsAloneBesideSmall(j)));
            if (own && found >= 0 && _items[found].Value != _items[j].Value)
            {
                return -1;
            }

            found = own ? j : found;
        }

        return found;
    }
}
