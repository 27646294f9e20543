namespace Lugwork.Reading;

/// <summary>Bottom brackets.</summary>
internal sealed partial class LineScan
{
    private void ReadBracket()
    {
        int at = -1;
        string family = "";
        string width = "";
        for (int i = 0; i < _items.Count; i++)
        {
            string? shell = Term(i, ShellPrefix);
            string? name = WithoutPreposition(Term(i, FamilyPrefix), i);
            if (Negated(i) || (shell is null && name is null) || (name is not null && shell is null && Array.IndexOf(PlaceNames, _items[i].Text) >= 0 && !OfShell(i)))
            {
                continue;
            }

            string kind = shell is not null ? FamilyOf(shell) : name!;
            if (IsBesideOtherPlace(i, kind))
            {
                Refuse("family", i, i, "two families are named", LineDoubtKind.Conflict);
                return;
            }

            if (kind.Contains('|', StringComparison.Ordinal))
            {
                if (family.Length == 0)
                {
                    Several("family", [.. kind.Split('|')], i, i, "the words stand for several");
                }

                continue;
            }

            if (family.Length > 0 && family != kind)
            {
                Refuse("family", at, i, "two families are named", LineDoubtKind.Conflict);
                return;
            }

            if (shell is not null && width.Length > 0 && !shell.EndsWith("-" + width, StringComparison.Ordinal))
            {
                if (family == kind && i == at + 2 && _items[i - 1].IsSign('/'))
                {
                    // BB86/BB92: one family, for either width.
                    Keep("family", kind, i, i);
                    ReadSpindleSeat();
                    return;
                }

                Several("narrowestShell", [width, shell[(shell.LastIndexOf('-') + 1)..]], at, i, "two shells are named");
                return;
            }

            (family, at) = (kind, i);
            width = shell is not null && SaysWidth(kind) ? shell[(shell.LastIndexOf('-') + 1)..] : width;
            Keep("family", kind, i, i);
        }

        for (int i = 0; i < _items.Count && family.Length == 0; i++)
        {
            if (FamilyOfThread(i) is { } threaded)
            {
                (family, at) = (threaded, i);
                int named = _items.FindIndex(i + 3, o => o.Terms.Contains(FamilyPrefix + threaded));
                Keep("family", threaded, i, named >= 0 && named <= i + 5 ? named : i + 2);
                MarkAll(i, i + 2);
            }
        }

        Settle("family");
        Doubts.RemoveAll(d => d.Field == "family" && d.Kind == LineDoubtKind.Several && family.Length > 0);
        ReadBracketWidths(at, width);
        WidthsOfFamily(width);
        ReadSpindleSeat();
        SplinesApart("takes");
    }

    /// <summary>"BB86", "pressfit 92": a name with the width in it. "Spanish BMX" and "Euro BMX" say none.</summary>
    private static bool SaysWidth(string family) => family is not ("Spanish" or "Mid" or "American" or "Thompson" or "BSA");

    /// <summary>The widths that were read and that no shell of the family has.</summary>
    private void WidthsOfFamily(string named)
    {
        if (!Values.TryGetValue("family", out LineFinding? family))
        {
            return;
        }

        decimal[] known = [.. BottomBrackets.Shell.All.Where(s => FamilyOf(s.FitKey) == family.Key).Select(s => decimal.TryParse(s.FitKey[(s.FitKey.LastIndexOf('-') + 1)..], System.Globalization.CultureInfo.InvariantCulture, out decimal width) ? width : 0)];
        foreach (string field in (ReadOnlySpan<string>)["narrowestShell", "widestShell"])
        {
            if (known.Length > 0 && !known.Contains(0) && Values.TryGetValue(field, out LineFinding? said)
                && decimal.TryParse(said.Key, System.Globalization.CultureInfo.InvariantCulture, out decimal read) && (!known.Any(w => Math.Abs(w - read) <= 1) || (decimal.TryParse(named, System.Globalization.CultureInfo.InvariantCulture, out decimal own) && Math.Abs(own - read) > 1)))
            {
                Refuse(field, Math.Min(family.First, said.First), Math.Max(family.Last, said.Last), "no shell of this family has this width");
                return;
            }
        }
    }

    private static string FamilyOf(string shell)
    {
        foreach (BottomBrackets.Shell known in BottomBrackets.Shell.All)
        {
            if (known.FitKey == shell)
            {
                return shell[..shell.LastIndexOf('-')];
            }
        }

        return shell;
    }

    private void ReadBracketWidths(int at, string width)
    {
        bool square = _items.Exists(t => t.Terms.Length > 0 && t.Terms[0].StartsWith("v:SpindleSeat=square", StringComparison.Ordinal));
        for (int i = 0; i < _items.Count; i++)
        {
            // 68 x 113: the shell and the spindle of a square taper.
            if (square && Pair(i, out int spindle) && !InTriple(i) && Math.Min(_items[i].Value, _items[spindle].Value) is >= 55 and <= 100 && Math.Max(_items[i].Value, _items[spindle].Value) is > 102 and <= 150)
            {
                int shell = _items[i].Value < _items[spindle].Value ? i : spindle;
                Take("narrowestShell", _items[shell].Text, shell, shell);
                Take("widestShell", _items[shell].Text, shell, shell);
                MarkAll(i, spindle);
                continue;
            }

            if (!ShellSize(i) || _items[i].Value > 135 || TopicOf(i) is "t:spindle" or "t:length" || (at < 0 && TopicOf(i) is not ("t:bb" or "" or "n:width")))
            {
                continue;
            }

            // The longer figure beside a width and a square taper is the length of the spindle.
            if (_items[i].Value > 102 && square)
            {
                _items[i].Used = true;
                continue;
            }

            int second = i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('-') || _items[i + 1].Is("m:to") || _items[i + 1].Text is "bis" or "tot" or "hasta" or "al" || _items[i + 1].Is("m:or") || _items[i + 1].Is("m:and")) && ShellSize(i + 2) ? i + 2 : -1;
            if (second >= 0 && _items[second].Value > _items[i].Value)
            {
                if (at >= 0 && _items[i + 1].Is("m:or") && FitsShells(i))
                {
                    _joined.Add(i + 1);
                }

                Length("narrowestShell", i);
                Length("widestShell", second);
                i = second;
            }
            else if (LimitOf(i) == "m:max")
            {
                Several("narrowestShell", [], i, i, "only the widest shell is said");
            }
            else
            {
                string text = _items[i].Text;
                Take("narrowestShell", text, i, i);
                Take("widestShell", text, i, i);
            }
        }

        if (width.Length > 0 && !Values.ContainsKey("narrowestShell") && at >= 0)
        {
            Keep("narrowestShell", width, at, at);
            Keep("widestShell", width, at, at);
        }
    }

    /// <summary>"Spacers for 68 or 73", "pour boîte de 68 ou 73": what it goes into, one as well as the other.</summary>
    private bool FitsShells(int i)
    {
        if (_items.Exists(o => o.Is("d:extra") || o.Is("d:option")))
        {
            return false;
        }

        for (int j = i - 1; j >= 0 && j >= i - 6 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j--)
        {
            if (WordLists.ScanBottomBracketFitsShells.Contains(_items[j].Text))
            {
                return true;
            }
        }

        return false;
    }
}
