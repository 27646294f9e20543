namespace Lugwork.Reading;

/// <summary>Figures beside wheels and tyres that say again what was read, or that are of no interface.</summary>
internal sealed partial class LineScan
{
    /// <summary>"9er Driver", "driver de 9 dientes", "driver 9T": the sprocket that is of one piece with a driver.</summary>
    private bool IsSprocketOfDriver(int i)
    {
        if (_items[i] is not { IsFraction: false, Places: 0, Value: >= 8 and <= 13, Unit: "" or "teeth" } || Joins(i) || !Values.TryGetValue("body", out LineFinding? body) || body.Key != "BMX-driver")
        {
            return false;
        }

        int behind = i + 1 < _items.Count && _items[i + 1] is { Glued: true, Kind: SpecTokenKind.Word } ? i + 2 : i + 1;
        if (behind < _items.Count && _items[behind].Clause == _items[i].Clause && IsDriver(behind))
        {
            return true;
        }

        int before = i - 1;
        while (before > 0 && before > i - 4 && _items[before].Clause == _items[i].Clause && !IsDriver(before) && (_items[before].IsSign(':') || _items[before].Kind == SpecTokenKind.Word))
        {
            before--;
        }

        return before >= 0 && _items[before].Clause == _items[i].Clause && IsDriver(before);
    }

    private bool IsDriver(int i) => _items[i].Is("v:FreehubBody=BMX-driver") || _items[i].Text is "driver" or "mitnehmer" or "antreiber" or "entraineur" or "arrastre" or "trascinatore" or "meenemer";

    /// <summary>"1-teilig", "one-piece": of how many pieces a part is.</summary>
    private bool IsOfOnePiece(int i) =>
        _items[i] is { Value: 1 or 2, IsFraction: false, Unit: "" } && i + 2 < _items.Count && _items[i + 1].IsSign('-') && _items[i + 2] is { Kind: SpecTokenKind.Word, Text: "teilig" or "teiliger" or "teilige" or "teiliges" or "teiligem" or "teiligen" or "piece" or "delig" or "delige" };

    /// <summary>"20-Zoll-Mantel", "26-inch-velg": the dash of a compound behind the inches.</summary>
    private bool IsCompoundOfInches(int i) =>
        _items[i].Unit == "in" && i + 2 < _items.Count && _items[i + 1].IsSign('-') && _items[i + 2] is { Kind: SpecTokenKind.Word, Glued: true, Text.Length: > 3 };

    /// <summary>"27.5 650B", "27.5 (584)": the size of the wheel in inches right before the bead seat that it is known by.</summary>
    private bool IsInchesOfSeat(int i)
    {
        LineFinding? seat = Values.GetValueOrDefault("beadSeat") ?? Values.GetValueOrDefault("seat");
        return seat is not null && !Joins(i) && _items[i] is { Unit: "" or "in", IsFraction: false } && (seat.First == i + 1 || (seat.First == i + 2 && _items[i + 1].IsSign('(')))
            && (_items[i].Value, seat.Key) is (27.5m, "584") or (29, "622") or (28, "622") or (26, "559") or (24, "507") or (20, "406");
    }

    /// <summary>"Bici de 24", "camera da 20", "plegable de 26": the size of the wheel behind what has it, beside the bead seat that was read.</summary>
    private bool IsSizeOfWheel(int i)
    {
        if (IsInchesOfSeat(i))
        {
            return true;
        }

        if (i < 2 || Joins(i) || _items[i] is not { Unit: "", IsFraction: false, Value: 12 or 14 or 16 or 18 or 20 or 24 or 26 or 27.5m or 28 or 29 } || (i + 1 < _items.Count && _items[i + 1].Glued && _items[i + 1].Kind == SpecTokenKind.Word))
        {
            return false;
        }

        return _items[i - 1].Text is "de" or "da" or "van" or "von" or "en" && WordLists.ScanAccountedWheelsIsSizeOfWheel.Contains(_items[i - 2].Text);
    }
}
