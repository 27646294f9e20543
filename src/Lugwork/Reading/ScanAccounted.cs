namespace Lugwork.Reading;

/// <summary>Figures that are known to be of something without an interface.</summary>
internal sealed partial class LineScan
{
    /// <summary>A year, a number of an article or of a standard.</summary>
    private bool IsLargeNumber(int i) =>
        (_items[i] is { Unit: "mm", Value: >= 1200 }) || _items[i].Value >= 1000 && _items[i].Unit.Length == 0 && _items[i].Value == decimal.Truncate(_items[i].Value) && !(i > 0 && _items[i - 1].IsSign('x')) && !(i + 1 < _items.Count && _items[i + 1].IsSign('x'));

    /// <summary>35-50 Nm, 9-12 speed, 2.5-5 bar, 23/2019: the first figure is of what the second says.</summary>
    private bool IsLinkedToAccounted(int i)
    {
        for (int steps = 0; steps < 3 && i + 4 < _items.Count && _items[i].Unit.Length == 0 && Links(_items[i + 1]) && !_items[i + 1].IsSign('x') && _items[i + 2] is { IsNumber: true, Used: false, Unit: "" } && Links(_items[i + 3]) && _items[i + 4].IsNumber; steps++)
        {
            i += 2;
        }

        if (i + 2 < _items.Count && _items[i].Unit.Length == 0 && Links(_items[i + 1]) && !_items[i + 1].IsSign('x') && _items[i + 2] is { IsNumber: true, Used: false } next)
        {
            return next is { Unit: "mm", Value: >= 1200 } || next.Unit is "deg" or "teeth" or "tpi" || (next.Unit is "g" or "w" or "other" && (next.Glued || !_items[i + 1].IsSign('/'))) || (next.Unit == "speed" && _slot == Slot.RearWheel) || IsBar(i + 2) || (next.Value is >= 1950 and <= 2060 && _items[i].Value <= 53);
        }

        return IsBar(i);
    }

    /// <summary>The size of the thread beside the shell that was read.</summary>
    private bool IsThreadOfShell(int i) =>
        (Values.ContainsKey("shell") || Values.ContainsKey("family")) && (IsThreadSize(i) || IsThreadSize(i - 2) || (_items[i].IsMillimetre && (_items[i].Value == 44 || IsBore(_items[i].Value)) && HasMark(i, "m:inside")) || IsBoreOfFamily(i));

    /// <summary>"BB30, Ø 42": the bore that all shells of the family have.</summary>
    private bool IsBoreOfFamily(int i) =>
        _items[i].IsMillimetre && !_items[i].IsFraction && !Joins(i) && Values.TryGetValue("family", out LineFinding? family) && BottomBrackets.ShellFamily.All.Any(f => f.FitKey == family.Key && HasBore(f, _items[i].Value));

    /// <summary>Bars of pressure, of a tyre or what goes with one.</summary>
    private bool IsBar(int i) => i + 1 < _items.Count && _items[i + 1].Text is "bar" or "bars" && _items[i].Value <= 16 && (_slot.Key.Contains("Tyre", StringComparison.Ordinal) || _slot.Key.Contains("Tube", StringComparison.Ordinal) || _slot.Key.Contains("Tape", StringComparison.Ordinal) || _slot.Key.Contains("Wheel", StringComparison.Ordinal));

    /// <summary>26 x 4.8 in the line of a frame or fork.</summary>
    private bool IsLabelOfTyre(int i)
    {
        if (_slot != Slot.Frame && _slot != Slot.Fork)
        {
            return false;
        }

        if ((_items[i].IsInch && _items[i].Value is 24 or 26 or 27.5m or 28 or 29) || (_items[i].Value >= 120 && Clause(i, "t:rotor")) || (_slot == Slot.Frame && (TopicOf(i) is "t:steerer" || (IsSteererInch(i) && Values.ContainsKey("headTubeUpper") && (Values.ContainsKey("headTubeLower") || Clause(i, "t:headset") || HasMark(i, "m:threadless") || Clause(i, "t:headtube"))))))
        {
            return true;
        }

        bool first = i + 2 < _items.Count && _items[i + 1].IsSign('x') && _items[i + 2].IsNumber && _items[i].Value is >= 16 and <= 29 && _items[i + 2].Value is >= 1.2m and <= 5.5m;
        bool second = i >= 2 && _items[i - 1].IsSign('x') && _items[i - 2].IsNumber && _items[i - 2].Value is >= 16 and <= 29 && _items[i].Value is >= 1.2m and <= 5.5m;
        return (first || second) && !_items[i].IsFraction;
    }

    /// <summary>"180 mm long": a length of a part that has no field for one.</summary>
    private bool IsBeforeLength(int i) =>
        (i + 1 < _items.Count && _items[i + 1].Is("t:length") && _items[i + 1].Text.Length > 1 && _items[i + 1].Clause == _items[i].Clause && !_fields.ContainsKey("length"))
        || (i > 0 && _items[i - 1].Text == "tpi") || (i + 1 < _items.Count && _items[i + 1] is { Text: "m", Glued: false } && _slot.Key.EndsWith("Tape", StringComparison.Ordinal))
        || (_slot == Slot.Fork && _items[i].Value is >= 100 and <= 350 && TopicOf(i) is "t:steerer" && _items[i].Unit == "mm");

    /// <summary>Figures that such a part usually has beside its interfaces.</summary>
    private bool IsOfThisPart(int i)
    {
        SpecItem item = _items[i];
        if (item.IsFraction && _slot == Slot.Cassette && item.Text is "9/32" or "11/32" or "13/32" && !item.IsInch)
        {
            return true;
        }

        if (_slot == Slot.UpperBearing || _slot == Slot.LowerBearing)
        {
            // The steerer that a bearing is for.
            return (item.IsInch || item.IsFraction) && item.Value is 1m or 1.125m or 1.25m or 1.375m or 1.5m && Values.ContainsKey("size");
        }

        if (item is { IsInch: true, Value: 1 } && i > 0 && _items[i - 1].IsSign('/') && Values.ContainsKey("thread"))
        {
            // "24 h/1\"": turns an inch.
            return true;
        }

        if (item is { IsInch: true, Value: >= 1.5m and <= 5.5m } && _slot == Slot.Frame && TopicOf(i) == "t:tyre")
        {
            return true;
        }

        if (!item.IsMillimetre || item.IsFraction)
        {
            return false;
        }

        bool range = IsRangeOfTeeth(i);
        return _slot.Key switch
        {
            "frame" => (Values.ContainsKey("shell") && !Values.ContainsKey("rear") && item.Value is >= 19 and <= 150 && TopicOf(i) is "t:spindle" or "t:axle")
                || (TopicOf(i) is "t:headtube" && item.Value >= 80) || (TopicOf(i) is "t:seattube" or "t:frame" && item.Value >= 250) || (TopicOf(i) is "t:dropper" or "t:post" && item.Value >= 60 && !Joins(i))
                || (Values.ContainsKey("material") && item.Value is 4130 or 6061 or 6066 or 6069 or 7003 or 7005 or 7020 or 7046),
            "frontRimBrake" or "rearRimBrake" => item.Value is >= 65 and <= 125 && IsArmLength(i),
            "frontWheel" or "rearWheel" when IsBehindStem(i) => true,
            "rearWheel" when range && (item.Value is >= 9 and <= 13 || (i >= 2 && _items[i - 2].Value is >= 9 and <= 13)) => true,
            "frontWheel" or "rearWheel" when IsHolesOfWheel(i) => true,
            "frontWheel" when item.Value >= 120 => TopicOf(i) is "t:rotor",
            "rearWheel" when item.Value >= 120 => TopicOf(i) is "t:rotor",
            "saddle" => item.Value >= 100,
            "grips" => item.Value >= 60 || (i > 0 && _items[i - 1].Is("m:outside")),
            "pedals" => item.Value is 14 or 15 or >= 60,
            "frontThruAxle" or "rearThruAxle" => item.Value < 40 && item.Unit == "mm" && (Values.ContainsKey("thread") || item.Value is 12 or 15 or 20) && !Joins(i),
            "frontTyre" or "rearTyre" => item.Value <= 12 && item.Unit == "mm" && !Joins(i),
            "frontTubelessValve" or "rearTubelessValve" => item.Value < 15,
            "frontAxleNuts" or "rearAxleNuts" => item.Value is >= 13 and <= 19 && item.Value == decimal.Truncate(item.Value),
            "frontCaliper" or "rearCaliper" => item.Value >= 300,
            "frontBrakeLever" or "rearBrakeLever" => item.Value is 22.2m or 23.8m or 24 || item.Value >= 300,
            "rider" => item.Value >= 1000,
            "stem" => item.Value is >= 42 and <= 160 || (item.Value is >= 36 and < 42 && item.Places == 0 && Values.ContainsKey("bar") && Values.ContainsKey("fixing")) || (i > 0 && _items[i - 1].IsSign('-') && item.Value <= 40 && item.Unit.Length == 0 && !item.Glued),
            "handlebar" => item.Value is >= 300 and <= 900 || (item is { Value: >= 36 and <= 60, Places: 0 } && i > 0 && WordLists.ScanAccountedIsOfThisPart.Contains(_items[i - 1].Text)),
            "crankset" => item.Value is >= 150 and <= 185 || range || (TopicOf(i) is "t:bb" && item.Value is >= 60 and <= 135),
            "chainring" => range,
            "cassette" => range || IsEndSprocket(i) || (item.Value is >= 9 and <= 26 && item.Unit.Length == 0 && !Joins(i) && Values.TryGetValue("pattern", out LineFinding? one) && one.Key is "fixed-sprocket" or "3-lug" or "freewheel"),
            "rearDerailleur" or "frontDerailleur" => range,
            "chain" => item.Value is >= 90 and <= 160 || (item.Value is >= 5 and <= 9 && item.Unit == "mm" && item.Value != decimal.Truncate(item.Value)),
            "rearWheel" => item.Value == 36.75m && Values.TryGetValue("body", out LineFinding? body) && body.Key == "HG-L",
            "bottomBracket" => item.Value is >= 103 and <= 150 && Values.TryGetValue("takes", out LineFinding? seat) && seat.Key.StartsWith("square", StringComparison.Ordinal),
            "frontRotor" or "rearRotor" => item.Value is >= 1.5m and <= 2.5m && !Values.ContainsKey("thickness"),
            "seatClamp" => TopicOf(i) is "t:post" || item.Value < 20,
            "seatpost" => item.Value is >= 50 and <= 240 && (TopicOf(i) is "t:dropper" || Anywhere("t:dropper") >= 0 || Clause(i, "t:travel")),
            _ => false,
        };
    }

    /// <summary>"Arms 85 mm": how long the arms of a direct-pull brake are.</summary>
    private bool IsArmLength(int i) =>
        (i > 0 && IsArmWord(_items[i - 1].Text)) || (i + 1 < _items.Count && IsArmWord(_items[i + 1].Text)) || (i > 1 && _items[i - 1].IsSign(':') && IsArmWord(_items[i - 2].Text));

    /// <summary>11-34, 10-51, 50/34: sprockets or rings from one to another.</summary>
    private bool IsRangeOfTeeth(int i)
    {
        if ((i + 2 < _items.Count && IsFromToTeeth(i + 1) && IsRangeWith(i, i + 2)) || (i >= 2 && IsFromToTeeth(i - 1) && IsRangeWith(i, i - 2)))
        {
            return true;
        }

        return _slot == Slot.Cassette && ((i + 3 < _items.Count && IsFromToTeeth(i + 1) && IsArticle(i + 2) && IsRangeWith(i, i + 3)) || (i >= 3 && IsArticle(i - 1) && IsFromToTeeth(i - 2) && IsRangeWith(i, i - 3)));
    }

    /// <summary>"From a 10 to a 45", "dall'11 fino al 34": the small word before the second sprocket.</summary>
    private bool IsArticle(int i) =>
        _items[i].Kind == SpecTokenKind.Word && WordLists.ScanAccountedIsArticle.Contains(_items[i].Text);

    private bool IsRangeWith(int i, int other)
    {
        return _items[other].IsNumber && _items[i].Value is >= 9 and <= 60 && _items[other].Value is >= 9 and <= 60 && _items[i].Value == decimal.Truncate(_items[i].Value) && Math.Abs(_items[i].Value - _items[other].Value) >= 8;
    }

    /// <summary>"holes=24": a count behind the word for it, which says neither hub nor rim.</summary>
    private bool IsHolesOfWheel(int i)
    {
        int word = i > 1 && (_items[i - 1].IsSign(':') || _items[i - 1].IsSign('=')) ? i - 2 : i - 1;
        return word >= 0 && _items[i].Value is >= 12 and <= 56 && _items[i].Value == decimal.Truncate(_items[i].Value) && !Joins(i)
            && WordLists.ScanAccountedIsHolesOfWheel.Contains(_items[word].Text);
    }

    private bool IsFromToTeeth(int i) => _items[i].IsSign('-') || _items[i].IsSign('/') || (_slot == Slot.Cassette && _items[i].IsSign('x') && i > 0 && _items[i - 1] is { IsFraction: false, Value: >= 9 and <= 14 }) || (_slot == Slot.Cassette && (_items[i].Is("m:to") || WordLists.ScanAccountedIsFromToTeeth.Contains(_items[i].Text)));

    /// <summary>"Kleinste 10 grootste 45": the end sprockets by their names.</summary>
    private bool IsEndSprocket(int i) =>
        i > 0 && _items[i] is { IsFraction: false, Places: 0, Unit: "", Value: >= 9 and <= 60 } && !Joins(i) && WordLists.ScanAccountedIsEndSprocket.Contains(_items[i - 1].Text);

    /// <summary>A label in inches or of the 700 kind beside an ISO size that is one of those it is printed on.</summary>
    private bool IsLabelBesideSize(int i)
    {
        LineFinding? size = Values.GetValueOrDefault("size") ?? Values.GetValueOrDefault("largestRearTyre") ?? Values.GetValueOrDefault("largestFrontTyre") ?? Values.GetValueOrDefault("beadSeat") ?? Values.GetValueOrDefault("seat") ?? Values.GetValueOrDefault("rearBosses") ?? Values.GetValueOrDefault("frontBosses");
        if (size is null)
        {
            return false;
        }

        int start = i;
        if (start >= 4 && _items[start - 1].IsSign('-') && _items[start] is { IsFraction: false, Value: > 1 and < 5 } && _items[start - 2] is { IsNumber: true, Value: > 1 and < 5 } && _items[start - 3].IsSign('x'))
        {
            // 29 x 1.75-2.4
            start -= 2;
            i = start;
        }

        while (start >= 2 && start > i - 6 && _items[start - 1].IsSign('x') && _items[start - 2].IsNumber)
        {
            start -= 2;
        }

        if (start > 0 && _items[start].IsFraction && (start > 1 && (_items[start - 1].IsSign(',') || _items[start - 1].IsSign('(')) ? start - 2 : start - 1) is int inches && _items[inches] is { IsNumber: true, IsInch: true, IsFraction: false })
        {
            // 28" 1 5/8 x 1 3/8
            start = inches;
        }

        string seat = size.Key[(size.Key.LastIndexOf('-') + 1)..];
        decimal of = _items[start].Value;
        bool slashed = start == i && _items[start].Value is 26 or 27.5m or 28 or 29 or 700 or 650 && ((i + 1 < _items.Count && _items[i + 1].IsSign('/') && !_items[i + 1].Glued) || (i > 0 && _items[i - 1].IsSign('/') && !_items[i].Glued) || (i > 0 && _items[i - 1].IsSign('(')));
        bool label = slashed || (start == i && (IsInchesInWords(i) || IsSizeOfWheel(i))) || (start == i && (IsMetricLabel(i) || (_items[start].Value is 700 or 650 && i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "c" or "b" or "a" }))) || (start == i && _items[i].Value is 32 or 36 && _items[i].End - _items[i].Start > _items[i].Text.Length) || _items[start].Unit == "in" || (start == i && i + 1 < _items.Count && _items[i + 1].IsSign('+') && _items[i + 1].Glued) || start < i || (i + 1 < _items.Count && (_items[i + 1].IsSign('x') || (_items[i + 1].Text == "er" && _items[i + 1].Glued)));
        bool chained = IsDashed(start) || (IsDashed(i) && !(start < i && i + 2 < _items.Count && _items[i + 1].IsSign('-') && _items[i + 2] is { IsNumber: true, Value: > 1 and < 5 } && _items[i].Value is > 1 and < 5));
        chained &= !(start < i && i + 2 < _items.Count && _items[i + 1].IsSign('/') && size.First == i + 2);
        return label && !chained && _items[start].Unit is "" or "in" && (!_items[start].IsFraction || _items[start].Value == 12.5m) && seat switch
        {
            "622" => of is 28 or 29 or 700,
            "584" => of is 27.5m or 650 or 26,
            "559" => of is 26,
            "571" or "590" or "597" => of is 26 or 650,
            "587" => of is 700,
            "630" => of is 27,
            "635" or "642" => of is 28 or 700,
            "507" or "520" or "540" or "541" or "547" => of is 24 or 600,
            "489" or "490" or "498" or "501" or "457" => of is 22 or 550,
            "406" or "428" or "438" or "440" or "451" => of is 20 or 500,
            "305" or "317" or "337" or "340" or "349" => of is 16 or 400,
            "355" or "369" or "387" or "390" or "400" => of is 18 or 17 or 450,
            "254" or "279" or "288" or "298" => of is 14 or 350,
            "203" => of is 12 or 12.5m,
            "686" => of is 32,
            "787" => of is 36,
            _ => false,
        };
    }

    /// <summary>700C, 650B, 500A: an outer diameter in millimetres with its letter.</summary>
    private bool IsMetricLabel(int i) => _items[i].Value is 350 or 400 or 450 or 500 or 550 or 600 or 650 or 700 && i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "a" or "b" or "c" or "d" };

    /// <summary>"26 x 1 3/8 S-6", "2.8 plus": the width of the rim behind a label, and the width of the tyre in inches, beside an ISO size that says the same.</summary>
    private bool IsPieceOfLabel(int i)
    {
        if (!_slot.Key.EndsWith("Tyre", StringComparison.Ordinal) || !Values.TryGetValue("size", out LineFinding? size) || _items[i].Unit is not ("" or "in") || _items[i].IsFraction)
        {
            return false;
        }

        decimal width = decimal.Parse(size.Key[..size.Key.LastIndexOf('-')], System.Globalization.CultureInfo.InvariantCulture);
        return (_items[i].Value is >= 3 and <= 8 && i > 1 && _items[i - 1].IsSign('-') && _items[i].Glued && _items[i - 2].Text == "s")
            || (size.Key.EndsWith("-590", StringComparison.Ordinal) && IsEaThree(i))
            || (size.Key.EndsWith("-540", StringComparison.Ordinal) && _items[i] is { Value: 5, Unit: "" } && i > 1 && (_items[i - 1].Text is "e" || (_items[i - 1].IsSign('.') && _items[i - 2].Text is "e")))
            || (_items[i].Value is > 1 and < 5.5m && _items[i].Value != decimal.Truncate(_items[i].Value) && !JoinsClosely(i) && Math.Abs((_items[i].Value * 25.4m) - width) <= 4);
    }

    /// <summary>A dash or slash stands against the figure.</summary>
    private bool IsDashed(int i) =>
        (i > 1 && (_items[i - 1].IsSign('-') || _items[i - 1].IsSign('/')) && _items[i].Glued && !(_items[i - 2].Kind == SpecTokenKind.Word && _items[i - 2].Text.Length > 3)) || (i + 1 < _items.Count && (_items[i + 1].IsSign('-') || _items[i + 1].IsSign('/')) && _items[i + 1].Glued && !IsCompoundOfInches(i));
}
