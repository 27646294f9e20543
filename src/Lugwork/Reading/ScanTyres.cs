using Lugwork.Tyres;

namespace Lugwork.Reading;

/// <summary>Tyres, tubes, rims and wheels.</summary>
internal sealed partial class LineScan
{
    internal static bool IsSeat(decimal value) => value is >= 200 and < 800 && value == decimal.Truncate(value) && BeadSeat.Find(ItemCutter.Plain(value)) is not null;

    /// <summary>A width and a bead seat in either order; a printed label only where it may be one.</summary>
    private bool ReadIso(string field, Func<int, bool> label, bool strict = false)
    {
        bool found = false;
        for (int i = 0; i + 2 < _items.Count && !Full; i++)
        {
            if (!Free(i) || !Free(i + 2) || _items[i].Unit == "other" || !(_items[i + 1].IsSign('-') || _items[i + 1].IsSign('x') || _items[i + 1].IsSign('/')) || InTriple(i) || _items[i].IsFraction || _items[i + 2].IsFraction)
            {
                continue;
            }

            decimal a = _items[i].Value;
            decimal b = _items[i + 2].Value;
            if (a is 400 or 450 or 500 or 550 or 600 && _items[i + 1].IsSign('x') && i + 3 < _items.Count && _items[i + 3] is { Glued: true, Text: "a" or "b" or "c" })
            {
                // 400x38B is a label, of another bead seat.
                continue;
            }

            (decimal width, decimal seat) = a < b ? (a, b) : (b, a);
            if (field.StartsWith("largest", StringComparison.Ordinal) && (HasMark(i, "m:eyelet") || HasMark(i, "m:trunnion") || Clause(i, "t:shock")))
            {
                continue;
            }

            if (field.StartsWith("largest", StringComparison.Ordinal) && TopicOf(i) is not ("" or "t:tyre" or "t:wheel" or "t:rim" or "t:beadseat") && !(_slot == Slot.Fork && TopicOf(i) == "t:fork" && IsSeat(seat) && width >= 18 && FindMark(i, "m:max", 1) >= 0) && !(IsSeat(seat) && FindMark(i, "m:max", 0) >= 0 && (_items[Link(i)].Clause != _items[i].Clause || (width >= 18 && Clause(i, "t:tyre")))))
            {
                continue;
            }

            if (strict && a > b && IsSeat(a) && b is >= 13 and <= 50 && TopicOf(i) == "t:rim" && Anywhere("t:tyre") < 0)
            {
                // "Rim 622x25": a bead seat and an inside width, of the rim.
                Several(field, [], i, i + 2, "these are figures of a rim");
                found = true;
                continue;
            }

            bool looks = seat is >= 200 and < 800 && width < 200 && seat is not (700 or 650) && _items[i].Unit is "" or "mm";
            if (!looks || seat < 200 || seat is 700 or 650)
            {
                if (strict && a >= 200 && b >= 200 && seat < 800)
                {
                    Refuse(field, i, i + 2, "a tyre is not as wide as that");
                }

                continue;
            }

            // The largest tyre that fits is a limit and has to be said as one; a tyre alone is the one that is fitted.
            if (IsSeat(seat) && width is >= 18 and <= 132 && field.StartsWith("largest", StringComparison.Ordinal) && FindMark(i, "m:max", BracketBefore(i) || (i > 0 && _items[i - 1].IsSign(')')) ? 3 : 1) < 0)
            {
                Several(field, [], i, i + 2, "the line does not say that this is the largest tyre");
                found = true;
            }
            else if (IsSeat(seat) && width is >= 18 and <= 132)
            {
                Take(field, $"{ItemCutter.Plain(width)}-{ItemCutter.Plain(seat)}", i, i + 2);
                found = true;
            }
            else if (strict)
            {
                Refuse(field, i, i + 2, IsSeat(seat) ? "a tyre is 18 to 132 mm wide" : "no rim has this bead seat");
                found = true;
            }
        }

        for (int i = 0; i < _items.Count && !found && !Full; i++)
        {
            if (Free(i) && label(i) && Label(i, out int last, out string text) && !HasFullerLabel(i, text) && _fields[field].Read(text) is { } reading && (reading.Keys.Length > 0 || (strict && last > i)))
            {
                Take(field, text, i, last);
                i = last;
            }
        }

        return found;
    }

    private void ReadTyre()
    {
        TyreByTwoFigures("size");
        ReadIso("size", i => TopicOf(i) is "" or "t:tyre" or "t:beadseat" or "t:rim" or "n:size" or "t:wheel" || (Link(i) is >= 0 and int of && _items[of].Text is "old" or "course" or "corsa" or "race"), strict: true);
        TyreApart("size");
        // A tyre for use without a tube is mostly a folding one: the words do not exclude each other, and none is the one value.
        if (!(Anywhere("v:TyreBead=tubeless") >= 0 && Anywhere("v:TyreBead=folding") >= 0 && Anywhere("m:or") < 0 && Anywhere("v:TyreBead=wired") < 0))
        {
            Words("TyreBead", "bead", i => !IsOfFoldingBike(i));
        }

        Words("TyreHold", "hold", i => !(_items[i].IsFraction && _items.Exists(IsOfPatch)));
    }

    /// <summary>What else is glued: "zum Kleben der Flicken".</summary>
    private static bool IsOfPatch(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && (item.Text.StartsWith("patch", StringComparison.Ordinal) || item.Text.StartsWith("flick", StringComparison.Ordinal) || item.Text.StartsWith("rustine", StringComparison.Ordinal) || item.Text.StartsWith("parche", StringComparison.Ordinal) || item.Text.StartsWith("topp", StringComparison.Ordinal) || item.Text.StartsWith("pezz", StringComparison.Ordinal) || item.Text.StartsWith("plakker", StringComparison.Ordinal) || item.Text.StartsWith("reparatur", StringComparison.Ordinal) || item.Text.StartsWith("reflekt", StringComparison.Ordinal) || item.Text.StartsWith("reflex", StringComparison.Ordinal) || item.Text.StartsWith("reflect", StringComparison.Ordinal) || item.Text.StartsWith("riflett", StringComparison.Ordinal) || item.Text.StartsWith("strip", StringComparison.Ordinal) || item.Text.StartsWith("sticker", StringComparison.Ordinal)
            || item.Text.StartsWith("pegatina", StringComparison.Ordinal) || item.Text.StartsWith("repair", StringComparison.Ordinal) || item.Text.StartsWith("aufkleber", StringComparison.Ordinal) || item.Text.StartsWith("adesiv", StringComparison.Ordinal) || item.Text.StartsWith("kit", StringComparison.Ordinal) || WordLists.ScanTyresIsOfPatch.Contains(item.Text));

    /// <summary>A times sign, slash or dash stands against a figure: it is one of several.</summary>
    private bool Joins(int i) => (i > 0 && Links(_items[i - 1])) || (i + 1 < _items.Count && Links(_items[i + 1]));

    /// <summary>The same without a slash between blanks, which parts clauses.</summary>
    private bool JoinsClosely(int i) => (i > 0 && Links(_items[i - 1]) && !_items[i - 1].IsFraction) || (i + 1 < _items.Count && Links(_items[i + 1]) && !_items[i + 1].IsFraction);

    private static bool Links(SpecItem item) => item.IsSign('x') || item.IsSign('/') || (item.IsSign('-') && item.Glued);
}
