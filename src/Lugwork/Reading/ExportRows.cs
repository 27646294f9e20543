namespace Lugwork.Reading;

/// <summary>What a row of a shop's export says of trade and not of the part: numbers of articles, bar codes, stock, quantities and prices. Their figures are of no interface.</summary>
/// <remarks>A row has four cells at least, parted by semicolons, bars or tabs. A figure with nothing beside it is a price or a quantity only among cells of trade.</remarks>
internal static class ExportRows
{
    private const int FewestCells = 4;

    /// <summary>Where a row says in words how many there are, a bare figure of a shell's width is no second quantity.</summary>
    private const int LeastWidth = 60;

    public static void Mend(List<SpecItem> items)
    {
        if (Sign(items) is not { } sign)
        {
            return;
        }

        List<(int From, int To, RowCell Kind)> cells = [];
        int from = 0;
        for (int i = 0; i <= items.Count; i++)
        {
            if (i == items.Count || Ends(items, i, sign))
            {
                cells.Add((from, i, KindOf(items, from, i)));
                from = i + 1;
            }
        }

        if (cells.Count < FewestCells || (!cells.Exists(c => c.Kind is RowCell.Trade) && (sign == ',' || !IsPriced(items, cells))))
        {
            return;
        }

        if (sign == ',')
        {
            // A comma parts sentences too: only what says by itself that it is of trade.
            foreach ((int start, int end, _) in cells.FindAll(c => c.Kind == RowCell.Trade))
            {
                SaysNothing(items, start, end);
            }

            return;
        }

        // "1 ud;290", "1 st;329;art AD-12": a sum without its currency, behind how many there are.
        for (int i = 1; i < cells.Count; i++)
        {
            if (cells[i] is { Kind: RowCell.Other } sum && sum.To - sum.From == 1 && items[sum.From] is { IsNumber: true, Places: 0, Unit: "", IsFraction: false, IsDiameter: false } && (i == cells.Count - 1 ? cells[i - 1].Kind is RowCell.Trade or RowCell.Count : i > cells.Count / 2 && CountsPieces(items, cells[i - 1].From, cells[i - 1].To) && IsTrade(cells[i + 1].Kind)))
            {
                cells[i] = sum with { Kind = RowCell.Trade };
            }
        }

        foreach ((int start, int end, _) in cells.FindAll(c => c.To - c.From == 1 && ExportWords.IsArticle(items[c.From].Text)))
        {
            // A column of articles without a number.
            SaysNothing(items, start, end);
        }

        bool said = cells.Exists(c => c.Kind == RowCell.Trade && CountsPieces(items, c.From, c.To));
        int quantity = -1;
        for (int i = 1; i < cells.Count; i++)
        {
            bool beside = IsTrade(cells[i - 1].Kind) || (i + 1 < cells.Count && IsTrade(cells[i + 1].Kind)) || (i > 1 && i == cells.Count - 1 && cells[i - 1].Kind == RowCell.Words && IsTrade(cells[i - 2].Kind) && items[cells[i].From].Value < 10);
            quantity = cells[i].Kind == RowCell.Count && beside && !(said && items[cells[i].From].Value >= LeastWidth) ? i : quantity;
        }

        for (int i = 0; i < cells.Count; i++)
        {
            if ((IsTrade(cells[i].Kind) && (i > 0 || cells[i].Kind == RowCell.Code || IsNumberOfStock(items, cells[i].From, cells[i].To))) || i == quantity)
            {
                SaysNothing(items, cells[i].From, cells[i].To);
            }
        }
    }

    private enum RowCell
    {
        /// <summary>Of the part, or not known.</summary>
        Other,

        /// <summary>Words alone, of a colour or the like.</summary>
        Words,

        /// <summary>By its words or its length: an article, a bar code, a stock, a sum of money.</summary>
        Trade,

        /// <summary>A figure of two decimals and nothing else.</summary>
        Price,

        /// <summary>Letters and figures in one that name nothing: "RE-5762".</summary>
        Code,

        /// <summary>A whole figure up to 99 and nothing else.</summary>
        Count,
    }

    private static bool IsTrade(RowCell kind) => kind is RowCell.Trade or RowCell.Price or RowCell.Code;

    /// <summary>A price beside a count or a code: "RE-5762;6;39,90", "39,90;6".</summary>
    private static bool IsPriced(List<SpecItem> items, List<(int From, int To, RowCell Kind)> cells)
    {
        for (int i = Math.Max(1, cells.Count - 4); i < cells.Count; i++)
        {
            if (i == cells.Count - 1 && cells[i].Kind == RowCell.Price && cells[i - 1].Kind == RowCell.Words && items[cells[i].From].Value >= 40)
            {
                // "oliva;1199,00", "negro;399,00": more than any post or bore.
                return true;
            }

            if ((cells[i].Kind == RowCell.Price || (cells[i].Kind == RowCell.Code && i > 0)) && ((cells[i - 1].Kind is RowCell.Count or RowCell.Code) || (i + 1 < cells.Count && cells[i + 1].Kind is RowCell.Count or RowCell.Code)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The sign that parts the cells of the line; null where it is no row.</summary>
    private static char? Sign(List<SpecItem> items)
    {
        foreach (char sign in ";|\t/,")
        {
            int ends = 0;
            for (int i = 1; i < items.Count; i++)
            {
                ends += Ends(items, i, sign) ? 1 : 0;
            }

            if (ends >= FewestCells - 1)
            {
                return sign;
            }
        }

        return null;
    }

    /// <summary>A cell ends here; a slash or a comma with no blank does not end one.</summary>
    private static bool Ends(List<SpecItem> items, int i, char sign) =>
        items[i].IsSign(sign) && (sign is not ('/' or ',') || (items[i].IsFraction && (sign == ',' || !items[i].Glued)));

    private static RowCell KindOf(List<SpecItem> items, int from, int to)
    {
        if (to <= from)
        {
            return RowCell.Other;
        }

        (int numbers, int words, int others, bool article, bool quantity, bool money) = (0, 0, 0, false, false, false);
        for (int i = from; i < to; i++)
        {
            SpecItem item = items[i];
            bool first = i == from || (i == from + 1 && items[from].Kind == SpecTokenKind.Sign);
            article |= (i == from && item.IsSign('#') && to - from > 1) || (first && item.Kind == SpecTokenKind.Word && ExportWords.IsArticle(item.Text) && to - from > 1 && (item.Text != "no" || (i + 1 < to && items[i + 1].IsSign('.'))));
            article |= i > from + 1 && item.Text is "nr" or "no" or "num" or "nummer" && items[i - 1].IsSign('-') && items[i - 2].Kind == SpecTokenKind.Word && i + 1 < to;
            article |= i == from && item.Text == "id" && i + 1 < to && items[i + 1] is { IsNumber: true, Places: 0, Text.Length: >= 4 };
            money |= ExportWords.IsCurrency(item.Text) || (item.IsNumber && item.Unit == "other");
            numbers += item.IsNumber ? 1 : 0;
            bool counted = item.Kind == SpecTokenKind.Word && (ExportWords.IsQuantity(item.Text) || item.Is("m:stock") || ExportWords.IsCurrency(item.Text));
            quantity |= counted;
            words += item.Kind == SpecTokenKind.Word ? 1 : 0;
            others += item.Kind == SpecTokenKind.Word && !counted && !ExportWords.IsFiller(item.Text) && item.Text.Length > 1 ? 1 : 0;
        }

        SpecItem one = items[from];
        if (IsThousands(items, from, to))
        {
            return RowCell.Trade;
        }

        if ((numbers == 0 && words > 0 && others == 0 && money) || (numbers == 1 && words == 0 && to - from == 3 && one.IsNumber && items[from + 1].IsSign(',') && items[from + 2].IsSign('-')))
        {
            // "VB", "89,-".
            return RowCell.Trade;
        }

        if (numbers == 1 && words == 0 && one.IsNumber && to - from == 1)
        {
            return IsLong(one) || one.Unit == "other" ? RowCell.Trade
                : one is { Places: 2, IsFraction: false, Unit: "" } ? IsSizeAsPrice(items, one) ? RowCell.Other : RowCell.Price
                : one is { Places: 0, IsFraction: false, IsDiameter: false, IsBroken: false, Unit: "", Value: >= 1 and <= 99 } ? RowCell.Count : RowCell.Other;
        }

        if (to - from == 2 && one.IsSign('x') && items[from + 1] is { IsNumber: true, Glued: true, Places: 0, IsFraction: false, Unit: "", Value: < 100 })
        {
            // "x8".
            return RowCell.Trade;
        }

        if ((article && !IsOfInterface(items, from, to)) || IsPlace(items, from, to) || IsNumberOfStock(items, from, to) || (to - from is 2 or 3 && one.Text == "coll" && items[to - 1] is { Places: 0, IsFraction: false, Unit: "", Value: >= 1 and <= 20 }) || (numbers == 1 && others == 0 && (money || (quantity && IsWhole(items, from, to)))))
        {
            return RowCell.Trade;
        }

        if (numbers == 2 && words == 0 && to - from == 2 && items[from] is { Places: 0, Unit: "", Value: >= 1 and <= 99 } && items[from + 1] is { Places: 2, Value: < 1000, Unit: "" })
        {
            // "1 350,00".
            return RowCell.Price;
        }

        if (IsThousands(items, from, to, money, others))
        {
            return RowCell.Trade;
        }

        if (to - from == 2 && one.IsSign('x') && items[from + 1] is { Glued: true, Places: 0, IsFraction: false, IsDiameter: false, IsBroken: false, Unit: "", Value: >= 1 and <= 99 })
        {
            // "x8": how many there are.
            return RowCell.Count;
        }

        return numbers == 0 && words > 0 ? RowCell.Words : IsCode(items, from, to) ? RowCell.Code : RowCell.Other;
    }

    /// <summary>"1 450 \u20AC", "PV 1 199 \u20AC": a sum with a blank behind its thousands.</summary>
    private static bool IsThousands(List<SpecItem> items, int from, int to, bool money, int others)
    {
        if (!money || others > 0)
        {
            return false;
        }

        int first = -1;
        for (int i = from; i < to; i++)
        {
            if (!items[i].IsNumber)
            {
                continue;
            }

            if (first >= 0)
            {
                return i == first + 1 && items[i].Value is >= 0 and < 1000 && items[i] is { Places: 0 or 2, IsFraction: false } && items[i].End - items[i].Start >= 3 && !CountsOn(items, i + 1, to);
            }

            if (items[i] is not { Places: 0, IsFraction: false, Unit: "", Value: >= 1 and <= 99 })
            {
                return false;
            }

            first = i;
        }

        return false;
    }

    /// <summary>A figure stands at a place or behind it, before the end of the cell.</summary>
    private static bool CountsOn(List<SpecItem> items, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (items[i].IsNumber)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Stk 14", "7 pcs": a quantity by its word.</summary>
    private static bool CountsPieces(List<SpecItem> items, int from, int to)
    {
        bool word = false;
        for (int i = from; i < to; i++)
        {
            word |= items[i].Kind == SpecTokenKind.Word && ExportWords.IsQuantity(items[i].Text);
        }

        return word && to - from <= 3;
    }

    /// <summary>"Lg A7", "est. C4", "Lg 5", "Lg 2-B": a place in the store, where no length is so small or has a letter.</summary>
    private static bool IsPlace(List<SpecItem> items, int from, int to)
    {
        if (items[from].Text is not ("lg" or "est") || to - from is < 2 or > 5)
        {
            return false;
        }

        bool letter = false;
        SpecItem? number = null;
        for (int i = from + 1; i < to; i++)
        {
            if (items[i].IsNumber)
            {
                if (number is not null || items[i] is not { Places: 0, IsFraction: false, Unit: "", Value: <= 99 })
                {
                    return false;
                }

                number = items[i];
            }

            letter |= items[i] is { Kind: SpecTokenKind.Word, Text.Length: 1 };
        }

        return number is not null && (letter || (number.Value < 10 && items[from].Text == "lg"));
    }

    /// <summary>"7-4431": two figures of which the second has four digits are no size, nor "0815-33" with a nought in front of three.</summary>
    private static bool IsNumberOfStock(List<SpecItem> items, int from, int to) =>
        to - from == 3 && items[from] is { IsNumber: true, Places: 0, Unit: "", IsFraction: false } first && items[from + 1].IsSign('-') && items[from + 1].Glued && items[from + 2] is { IsNumber: true, Glued: true, Places: 0, Unit: "" } second && (second.Text.Length == 4 || (first.Text.Length < first.End - first.Start && first.End - first.Start == 4));

    /// <summary>"1.499,00", "£ 1,190.00", "2.199,00 EUR": a thousand and more with hundredths is a sum.</summary>
    private static bool IsThousands(List<SpecItem> items, int from, int to)
    {
        bool money = ExportWords.IsCurrency(items[from].Text) || ExportWords.IsCurrency(items[to - 1].Text) || items[to - 1].Unit == "other";
        from += ExportWords.IsCurrency(items[from].Text) ? 1 : 0;
        to -= to > from && ExportWords.IsCurrency(items[to - 1].Text) ? 1 : 0;
        if (to - from == 2 && money && items[from] is { IsNumber: true, Places: 0, Value: >= 1 and < 100, IsFraction: false } && items[from + 1] is { IsNumber: true, Places: 0, IsFraction: false, Value: < 1000 } rest && (rest.Text.Length == 3 || rest.Value < 100))
        {
            // "1 450 \u20AC".
            return true;
        }

        return to - from == 3 && items[from] is { IsNumber: true, Places: 3, Value: >= 1 and < 100, IsFraction: false } && (items[from + 1].IsSign(',') || items[from + 1].IsSign('.')) && items[from + 1].Glued && items[from + 2] is { IsNumber: true, Glued: true, Places: 0, IsFraction: false } cents && (cents.End - cents.Start == 2 || cents.Unit == "other");
    }

    /// <summary>"REF 30.9", "art 37-622", "ref 12x148": what stands behind the word is written as no article is.</summary>
    private static bool IsOfInterface(List<SpecItem> items, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if ((items[i].IsNumber && (items[i].Places == 1 || items[i].IsFraction)) || (items[i].IsSign('x') && i + 1 < to && items[i + 1].IsNumber) || (items[i].IsNumber && i > from + 1 && i == to - 1 && IsBeadSeat(items[i]) && items[i - 1].IsSign('-') && items[i - 2] is { IsNumber: true, Value: >= 18 }))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The figure is the bead seat of a tyre.</summary>
    internal static bool IsBeadSeat(SpecItem number) => number is { Places: 0, Value: 622 or 584 or 559 or 571 or 630 or 635 or 590 or 507 or 406 or 451 or 349 or 355 or 305 };

    /// <summary>"100;35;31,80": a size of a post or bar with a nought behind it, where no other figure of the row has a comma.</summary>
    private static bool IsSizeAsPrice(List<SpecItem> items, SpecItem price) =>
        price.Value is 25.4m or 27.2m or 30.9m or 31.6m or 31.8m && !items.Exists(i => i != price && i.IsNumber && (i.Places > 0 || i.IsFraction));

    private static bool IsWhole(List<SpecItem> items, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (items[i].IsNumber && (items[i].Places > 0 || items[i].IsFraction || items[i].Value > 999 || items[i].Unit is not ("" or "other")))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Five figures and more, or a nought in front: no size is written so.</summary>
    private static bool IsLong(SpecItem number) => (number is { IsBroken: true, Places: 0 } && number.End - number.Start >= 7) || number is { IsFraction: false, Places: 0, Unit: "" } && (number.Text.Length >= 5 || (number.Text.Length > 2 && number.Text[0] == '0'));

    private static bool IsCode(List<SpecItem> items, int from, int to)
    {
        if (items[from] is not { Kind: SpecTokenKind.Word } word || to - from is < 2 or > 6 || ExportWords.IsFamily(word.Text))
        {
            return false;
        }

        bool plain = word.Terms.IsEmpty || (word.Text.Length <= 3 && items[from + 1].IsSign('-') && (word.Text is "ti" or "al" or "st" or "cr" || !word.Terms.Any(t => t[0] is not 't')));
        (bool figures, bool padded) = (false, false);
        for (int i = from + 1; i < to; i++)
        {
            if (!items[i].Glued || items[i].Text == "iscg" || (items[i].Kind == SpecTokenKind.Sign && !items[i].IsSign('-') && !(from == 0 && items[i].IsSign('/'))) || (items[i].IsNumber && (items[i].Unit.Length > 0 || items[i].Places > 0)))
            {
                return false;
            }

            if (i > from + 2 && i == to - 1 && items[i].IsNumber && IsBeadSeat(items[i]) && items[i - 1].IsSign('-') && items[i - 2].IsNumber)
            {
                // "TY-37-622".
                return false;
            }

            figures |= items[i].IsNumber;
            padded |= items[i] is { IsNumber: true, Places: 0, IsFraction: false } && (items[i].End - items[i].Start > items[i].Text.Length || (items[i].Text.Length > (from == 0 && items[i - 1].IsSign('/') ? 1 : 2) && items[i].Text[0] == '0'));
        }

        return figures && (plain || padded);
    }

    private static void SaysNothing(List<SpecItem> items, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (items[i].IsNumber)
            {
                (items[i].Unit, items[i].IsBroken) = ("other", false);
            }
            else if (items[i].Kind == SpecTokenKind.Word)
            {
                items[i] = new() { Kind = SpecTokenKind.Word, Text = "", Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause, Terms = ["m:nothing"] };
            }
        }
    }
}
