using Lugwork.Tyres;

namespace Lugwork.Reading;

/// <summary>Tyres, tubes, rims and wheels.</summary>
internal sealed partial class LineScan
{
    private static bool IsSeat(decimal value) => value is >= 200 and < 800 && value == decimal.Truncate(value) && BeadSeat.Find(ItemCutter.Plain(value)) is not null;

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
            (decimal width, decimal seat) = a < b ? (a, b) : (b, a);
            if (field.StartsWith("largest", StringComparison.Ordinal) && (HasMark(i, "m:eyelet") || HasMark(i, "m:trunnion") || Clause(i, "t:shock")))
            {
                continue;
            }

            if (field.StartsWith("largest", StringComparison.Ordinal) && TopicOf(i) is not ("" or "t:tyre" or "t:wheel" or "t:rim" or "t:beadseat"))
            {
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
            if (IsSeat(seat) && width is >= 18 and <= 132 && field.StartsWith("largest", StringComparison.Ordinal) && FindMark(i, "m:max", 1) < 0)
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
            if (Free(i) && label(i) && Label(i, out int last, out string text) && _fields[field].Read(text) is { } reading && (reading.Keys.Length > 0 || (strict && last > i)))
            {
                Take(field, text, i, last);
                i = last;
            }
        }

        return found;
    }

    /// <summary>The printed label that starts at a figure: "700x25C", "28 x 1 5/8 x 1 3/8", "26 x 1 3/8 E.A.3".</summary>
    private bool Label(int first, out int last, out string text)
    {
        SpecItem start = _items[first];
        last = first;
        text = start.Text;
        bool size = start.Value is 700 or 650 or 600 or 550 or 500 or 450 or 400 || (start.Value is >= 7 and <= 36 && start.Unit is "" or "in");
        if (!size)
        {
            return false;
        }

        if (start.Value >= 400)
        {
            string letter = Letter(last + 1, out int behind);
            last = letter.Length > 0 ? behind : last;
            text += letter;
        }

        for (int parts = 0; parts < 2 && last + 2 < _items.Count && _items[last + 1].IsSign('x') && Free(last + 2); parts++)
        {
            text += $" x {_items[last + 2].Text}";
            last += 2;
        }

        if (start.Value >= 400 && last > first)
        {
            string letter = Letter(last + 1, out int behind);
            if (letter.Length > 0)
            {
                // "700C x 32" is what "700x32C" says.
                text += char.IsLetter(text[^1]) ? "" : letter;
                last = behind;
            }
            else if (text.Length > 3 && char.IsLetter(text[3]) && text.Contains(" x ", StringComparison.Ordinal))
            {
                text = string.Concat(text.AsSpan(0, 3), text.AsSpan(4), text.AsSpan(3, 1));
            }

            text = text.Replace(" ", "", StringComparison.Ordinal);
        }
        else if (last + 3 < _items.Count + 3 && last > first)
        {
            Suffix(ref last, ref text);
        }
        else if (last == first && start.Value < 400)
        {
            if (last + 1 < _items.Count && _items[last + 1].Text == "er" && _items[last + 1].Glued)
            {
                last++;
                text += "er";
            }
            else
            {
                text += " in";
            }
        }

        return true;
    }

    private string Letter(int at, out int behind)
    {
        behind = at;
        return at < _items.Count && _items[at].Kind == SpecTokenKind.Word && _items[at].Text is "a" or "b" or "c" or "d" ? _items[at].Text.ToUpperInvariant() : "";
    }

    /// <summary>"E.A.3", "S-6", "F.13" behind a label in inches.</summary>
    private void Suffix(ref int last, ref string text)
    {
        string suffix = "";
        int at = last + 1;
        while (at < _items.Count && at <= last + 6 && (_items[at].Kind == SpecTokenKind.Word && _items[at].Text is "e" or "a" or "ea" or "s" or "f" or "k" || (suffix.Length > 0 && (_items[at].IsSign('.') || _items[at].IsSign('-')))))
        {
            suffix += _items[at].Text;
            at++;
        }

        if (suffix.Length > 0 && Free(at) && _items[at].Value is 3 or 5 or 6 or 13)
        {
            text += " " + (suffix.Replace(".", "", StringComparison.Ordinal) + _items[at].Text).ToUpperInvariant() switch
            {
                "EA3" => "E.A.3",
                "E5" => "E.5",
                "F13" => "F.13",
                "S6" or "S-6" => "S-6",
                "S5" or "S-5" => "S-5",
                string other => other,
            };
            last = at;
        }
    }

    private void ReadTyre()
    {
        ReadIso("size", i => TopicOf(i) is "" or "t:tyre" or "t:beadseat" or "t:rim" or "n:size" or "t:wheel", strict: true);
        TyreApart("size");
        // A tyre for use without a tube is mostly a folding one: the words do not exclude each other, and none is the one value.
        if (!(Anywhere("v:TyreBead=tubeless") >= 0 && Anywhere("v:TyreBead=folding") >= 0 && Anywhere("m:or") < 0 && Anywhere("v:TyreBead=wired") < 0))
        {
            Words("TyreBead", "bead");
        }

        Words("TyreHold", "hold");
    }

    /// <summary>"28-622 to 40-622": the narrowest and the widest tyre, each whole.</summary>
    private bool TubeFromTo()
    {
        for (int i = 0; i + 6 < _items.Count; i++)
        {
            bool seven = Free(i) && Free(i + 2) && Free(i + 4) && Free(i + 6) && _items[i + 1].IsSign('-') && _items[i + 5].IsSign('-')
                && (_items[i + 3].IsSign('-') || _items[i + 3].Is("m:to") || _items[i + 3].Is("m:max") || _items[i + 3].Is("m:and"));
            if (seven && IsSeat(_items[i + 2].Value) && IsSeat(_items[i + 6].Value) && _items[i + 2].Value >= 200 && _items[i + 6].Value >= 200 && _items[i].Value < _items[i + 4].Value && _items[i].Value >= 10 && _items[i + 4].Value <= 132)
            {
                Length("narrowestTyre", i);
                Length("widestTyre", i + 4);
                Take("seat", _items[i + 2].Text, i + 2, i + 2);
                if (_items[i + 6].Value != _items[i + 2].Value)
                {
                    Take("otherSeat", _items[i + 6].Text, i + 6, i + 6);
                }

                _items[i + 6].Used = true;
                return true;
            }
        }

        return false;
    }

    /// <summary>"700C x 18/25", "700x18-25C": the label with the narrowest and the widest tyre.</summary>
    private bool TubeLabel()
    {
        for (int i = 0; i + 4 < _items.Count; i++)
        {
            if (!Free(i) || _items[i].Value != 700)
            {
                continue;
            }

            bool letter = _items[i + 1] is { Glued: true, Text: "c" };
            int at = i + (letter ? 2 : 1);
            if (at + 3 >= _items.Count || !_items[at].IsSign('x') || !Free(at + 1) || !(_items[at + 2].IsSign('/') || _items[at + 2].IsSign('-')) || !Free(at + 3))
            {
                continue;
            }

            bool behind = at + 4 < _items.Count && _items[at + 4] is { Glued: true, Text: "c" };
            bool whole = _items[at + 1].Value == decimal.Truncate(_items[at + 1].Value) && _items[at + 3].Value == decimal.Truncate(_items[at + 3].Value);
            if ((letter || behind) && whole && _items[at + 1].Value is >= 16 and < 60 && _items[at + 3].Value > _items[at + 1].Value && _items[at + 3].Value <= 64)
            {
                Length("narrowestTyre", at + 1);
                Length("widestTyre", at + 3);
                Keep("seat", "622", i, behind ? at + 4 : at + 3);
                return true;
            }
        }

        return false;
    }

    private void ReadTube()
    {
        bool sizes = TubeFromTo() || TubeLabel();
        for (int i = 0; i + 4 < _items.Count && !sizes; i++)
        {
            // 18/25-622, 18-25 x 622, 622 x 18/25.
            bool five = Free(i) && Free(i + 2) && Free(i + 4) && Links(_items[i + 1]) && Links(_items[i + 3]);
            if (!five)
            {
                continue;
            }

            (int narrow, int wide, int seat) = IsSeat(_items[i + 4].Value) ? (i, i + 2, i + 4) : (i + 2, i + 4, i);
            if (IsSeat(_items[seat].Value) && _items[narrow].Value < _items[wide].Value && _items[wide].Value <= 132 && _items[narrow].Value >= 10
                && !(seat == i && (_items[i + 1].IsSign('/') || _items[i + 3].IsSign('x'))))
            {
                Length("narrowestTyre", narrow);
                Length("widestTyre", wide);
                Take("seat", _items[seat].Text, seat, seat);
                if (seat == i + 4 && seat + 2 < _items.Count && _items[seat + 1].IsSign('/') && Free(seat + 2) && IsSeat(_items[seat + 2].Value) && _items[seat + 2].Value >= 200)
                {
                    Take("otherSeat", _items[seat + 2].Text, seat + 2, seat + 2);
                }

                sizes = true;
            }
            else if (_items[seat].Value >= 200)
            {
                Refuse("seat", i, i + 4, "narrowest and widest tyre and the bead seat are expected, such as 18/25-622");
                sizes = true;
            }
            else
            {
                continue;
            }

            break;
        }

        if (!sizes)
        {
            ReadSeat("seat");
        }

        Words("ValveStem", "valve");
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && !Joins(i) && _items[i].Value is >= 20 and <= 120 && _items[i].IsMillimetre && IsBehindStem(i))
            {
                Length("valveLength", i);
            }
            else if (Free(i) && (_items[i].Unit == "mm" || TopicOf(i) is "t:valvelength" || (TopicOf(i) is "t:length" && Clause(i, "t:valve"))) && TopicOf(i) is "" or "t:valve" or "t:valvelength" or "t:length" or "t:tube" && Free(i) && _items[i].IsMillimetre && _items[i].Value is >= 20 and <= 120 && !Joins(i))
            {
                Length("valveLength", i);
            }
        }
    }

    /// <summary>"Presta valve 48 mm", "valvola Presta da 60": the figure right behind the name of a valve.</summary>
    private bool IsBehindStem(int i)
    {
        for (int j = i - 1; j >= 0 && j >= i - 3 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j--)
        {
            if (!_items[j].Terms.IsEmpty && _items[j].Terms[0].StartsWith("v:ValveStem=", StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A times sign, slash or dash stands against a figure: it is one of several.</summary>
    private bool Joins(int i) => (i > 0 && Links(_items[i - 1])) || (i + 1 < _items.Count && Links(_items[i + 1]));

    /// <summary>The same without a slash between blanks, which parts clauses.</summary>
    private bool JoinsClosely(int i) => (i > 0 && Links(_items[i - 1]) && !_items[i - 1].IsFraction) || (i + 1 < _items.Count && Links(_items[i + 1]) && !_items[i + 1].IsFraction);

    private static bool Links(SpecItem item) => item.IsSign('x') || item.IsSign('/') || (item.IsSign('-') && item.Glued);
}
