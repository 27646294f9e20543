namespace Lugwork.Reading;

/// <summary>Bosses of cantilevers, by the bead seat that they are placed for.</summary>
internal sealed partial class LineScan
{
    /// <summary>Brakes of which the bosses stand above the rim.</summary>
    private static bool IsHighBoss(SpecItem item) => item.Is("v:BrakeType=u-brake") || item.Is("v:BrakeType=roller-cam");

    /// <summary>"Tasseaux de U-brake", "bosses for a U-brake": the word that joins them.</summary>
    private static bool IsSmallJoin(SpecItem item) => item.Kind == SpecTokenKind.Word && WordLists.ScanBossesIsSmallJoin.Contains(item.Text);

    private void ReadBosses(string field)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!(_items[i].Is("m:canti") || (_items[i].Is("t:bosses") && !NextTo(i, "m:canti"))) || Negated(i))
            {
                continue;
            }

            if (WordLists.ScanBossesReadBosses.Contains(_items[i].Text) && !_items[i].IsFraction && (Clause(i, "m:is") || Clause(i, "m:pm") || Clause(i, "m:fm") || _items[i].Is("m:is")))
            {
                // "IS2000, nokken achter": the tabs of a disc brake.
                continue;
            }

            int other = IsHighBoss(_items[i]) ? i : i > 0 && IsHighBoss(_items[i - 1]) ? i - 1 : i + 1 < _items.Count && IsHighBoss(_items[i + 1]) ? i + 1 : i + 2 < _items.Count && _items[i + 1].IsSign(':') && IsHighBoss(_items[i + 2]) ? i + 2 : i + 2 < _items.Count && _items[i + 2].Clause == _items[i].Clause && IsSmallJoin(_items[i + 1]) && IsHighBoss(_items[i + 2]) ? i + 2 : i + 3 < _items.Count && _items[i + 3].Clause == _items[i].Clause && IsSmallJoin(_items[i + 1]) && IsSmallJoin(_items[i + 2]) && IsHighBoss(_items[i + 3]) ? i + 3 : i > 1 && _items[i - 1].IsSign('-') && IsHighBoss(_items[i - 2]) ? i - 2 : -1;
            if (other >= 0)
            {
                Keep(field, "u-brake", Math.Min(i, other), Math.Max(i, other));
                continue;
            }

            int seat = SeatOfBosses(i, named: false);
            seat = seat < 0 ? SeatOfBosses(i, named: true) : seat;
            if (seat >= 0)
            {
                // "Canti bosses, 26\"/559": the label is no part of it.
                bool labelled = seat > i + 2 && _items[seat - 1].IsSign('/') && _items[seat - 2].IsNumber;
                Keep(field, "cantilever-" + BossSeat(seat), labelled ? seat : Math.Min(i, seat), Math.Max(i, seat));
                if (labelled)
                {
                    _items[seat - 2].Used = true;
                }
            }
            else
            {
                Several(field, ["cantilever-622", "cantilever-584", "cantilever-559"], i, i, "the bead seat that the bosses are placed for is not said");
            }
        }

        Settle(field);
    }

    /// <summary>The bead seat near the word for bosses, by its figure or by its French name; -1 where there is none.</summary>
    private int SeatOfBosses(int i, bool named)
    {
        for (int j = Math.Max(0, i - 8); j < _items.Count && j <= i + 12; j++)
        {
            bool seat = named ? BossSeat(j).Length > 0 : _items[j].Value is 622 or 584 or 559;
            if (seat && Free(j) && (j <= i + 8 || IsOnlySeat(j)) && Math.Abs(_items[j].Clause - _items[i].Clause) <= (IsOnlySeat(j) ? 4 : 1) && !JoinsFigure(j))
            {
                return j;
            }
        }

        return -1;
    }

    /// <summary>A sign joins it to another figure; "622-wiel" is joined to a word.</summary>
    private bool JoinsFigure(int j) => !(j > 1 && _items[j - 1].IsSign('/') && (_items[j - 2].Value, _items[j].Value) is (26, 559) or (28 or 29 or 700, 622) or (27.5m or 650, 584) && _items[j - 2].Unit is "in" or "") && ((j > 1 && Links(_items[j - 1]) && (_items[j - 2].IsNumber || !_items[j - 1].Glued)) || (j + 2 < _items.Count && Links(_items[j + 1]) && _items[j + 2].Kind != SpecTokenKind.Word));

    /// <summary>The bead seat by its figure or its French name: 622, 700C.</summary>
    private string BossSeat(int j) => _items[j].Value switch
    {
        622 or 584 or 559 => _items[j].Text,
        700 when j + 1 < _items.Count && _items[j + 1] is { Text: "c", Kind: SpecTokenKind.Word } => "622",
        650 when j + 1 < _items.Count && _items[j + 1] is { Text: "b", Kind: SpecTokenKind.Word } => "584",
        _ => "",
    };

    /// <summary>No other bead seat stands in the line.</summary>
    private bool IsOnlySeat(int j) => ItemsShort && !_items.Exists(o => o.IsNumber && o != _items[j] && o.Value >= 300 && IsSeat(o.Value));

    private bool NextTo(int i, string term) => (i > 0 && _items[i - 1].Is(term)) || (i + 1 < _items.Count && _items[i + 1].Is(term));
}
