namespace Lugwork.Reading;

/// <summary>Rims by their size in inches: the two names that are of one bead seat, and the others beside the bead seat that tells them apart.</summary>
internal sealed partial class LineScan
{
    /// <summary>29" and 27.5" of a rim, of which the inner width was read: there is one bead seat of this name.</summary>
    private void MountainSeat()
    {
        if (!Values.ContainsKey("innerWidth") || Values.ContainsKey("beadSeat") || Anywhere("t:tyre") >= 0 || Doubts.Exists(d => d.Field != "beadSeat" || d.Kind != LineDoubtKind.Several))
        {
            return;
        }

        int found = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!_items[i].IsNumber || _items[i].IsFraction || !(_items[i].IsInch ? _items[i].Value is > 10 and < 40 : IsInchesInWords(i)))
            {
                continue;
            }

            bool joined = (i + 2 < _items.Count && Links(_items[i + 1]) && _items[i + 2].IsNumber) || (i > 1 && Links(_items[i - 1]) && _items[i - 2].IsNumber);
            if (found >= 0 || joined)
            {
                return;
            }

            found = i;
        }

        string seat = found < 0 ? "" : _items[found].Value switch { 29 or 700 => "622", 27.5m => "584", _ => "" };
        if (seat.Length > 0 && Doubts.TrueForAll(d => d.Keys.Contains(seat)))
        {
            Doubts.Clear();
            Keep("beadSeat", seat, found, found);
        }
    }

    /// <summary>29" or 27.5" of a mountain bicycle: the word tells it from the other rims of this name.</summary>
    private bool IsMountainSeat(int i, out string seat)
    {
        seat = _items[i] is { IsInch: true, IsFraction: false } ? _items[i].Value switch { 29 => "622", 27.5m => "584", _ => "" } : "";
        return seat.Length > 0 && (Anywhere("m:offroad") >= 0 || (Values.ContainsKey("innerWidth") && Anywhere("t:tyre") < 0)) && !(i + 2 < _items.Count && Links(_items[i + 1]) && _items[i + 2].IsNumber) && !(i > 1 && Links(_items[i - 1]) && _items[i - 2].IsNumber);
    }

    /// <summary>"26er (559)", "26in (559)": a size in inches that several rims share, beside the bead seat that tells them apart.</summary>
    private void SettleSeat(string field)
    {
        if (Values.TryGetValue(field, out LineFinding? seat))
        {
            Doubts.RemoveAll(d => d.Field == field && d.Kind == LineDoubtKind.Several && (d.Keys.Contains(seat.Key) || (d.Keys.IsEmpty && _items.Find(i => i.Start == d.Start) is { IsNumber: true } inches && IsInchesOfSeat(inches.Value, seat.Key))));
        }
    }

    private static bool IsInchesOfSeat(decimal inches, string seat) => seat switch
    {
        "559" => inches == 26,
        "622" => inches is 28 or 29,
        "584" => inches is 27.5m or 26,
        "571" or "590" or "597" => inches == 26,
        "630" => inches == 27,
        "635" => inches == 28,
        "507" or "540" or "520" => inches == 24,
        "406" or "451" => inches == 20,
        "355" => inches == 18,
        "305" or "349" => inches == 16,
        _ => false,
    };
}
