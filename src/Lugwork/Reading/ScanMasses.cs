namespace Lugwork.Reading;

/// <summary>Masses: of a rider, of rider and luggage, of all together, and what a part is good for.</summary>
internal sealed partial class LineScan
{
    /// <summary>How far the words of a sum stand from its figure, items.</summary>
    private const int SumReach = 16;

    /// <summary>What a mass is the sum of.</summary>
    private readonly record struct MassWords(bool Bicycle, bool Rider, bool Luggage, bool Total, bool Load, bool Limit)
    {
        public bool Says => Bicycle || Rider || Luggage || Total || Load || Limit;
    }

    internal static bool IsLuggage(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanMassesIsLuggage.Contains(item.Text);

    private static bool IsBicycle(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanMassesIsBicycle.Contains(item.Text);

    /// <summary>A limit by what it is the sum of: "max. weight, rider and luggage". A limit of which the line does not say that is none.</summary>
    private void ReadLimitsOfMass()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            UnitBefore(i);
            if (i + 1 < _items.Count && Free(i) && _items[i] is { Unit: "", IsFraction: false, Value: >= 150 and <= 450 } && _items[i + 1].Text is "livres" && TopicOf(i) is "t:systemweight" or "t:loadlimit" or "t:riderweight" or "t:limit")
            {
                _items[i].Unit = "lb";
            }

            if (!Free(i) || _items[i].Unit is not ("kg" or "lb"))
            {
                continue;
            }

            MassWords sum = SumOf(i);
            if (sum == new MassWords(false, false, false, false, false, true))
            {
                sum = SumBehind(i);
            }

            bool max = sum.Limit || sum.Load || sum.Total || LimitOf(i) == "m:max";
            string? field = !max ? null
                : sum.Bicycle && (sum.Rider || sum.Luggage || sum.Total || sum.Load) ? "systemLimit"
                : sum.Total && !sum.Load && !(sum.Rider || sum.Luggage) ? "systemLimit"
                : sum.Rider && sum.Luggage && !sum.Bicycle && Together(i) ? "loadLimit"
                : sum.Total ? null
                : (sum.Rider && sum.Luggage) || sum.Load ? "loadLimit"
                : sum.Rider ? "riderLimit"
                : null;
            field = field == "loadLimit" && !(sum.Rider || sum.Luggage) && SaysSystem(i) ? "systemLimit" : field;
            if (field == "loadLimit" && !(sum.Rider || sum.Luggage || SaysOfWhom(i)) && FindMark(i, "m:anyload", 1) is >= 0 and int load && _fields.ContainsKey(field))
            {
                Several(field, [], Math.Min(i, load), Math.Max(i, load), "the line does not say whether the load is of rider and luggage or of all together");
            }
            else if (field is not null && _fields.ContainsKey(field))
            {
                Mass(field, i);
            }
        }
    }

    /// <summary>"Charge max. système 300 lb": the limit of bicycle, rider and luggage together, whatever it is called.</summary>
    private bool SaysSystem(int i)
    {
        for (int j = i - 1; j >= 0 && j >= i - 6 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j--)
        {
            if (_items[j].Kind == SpecTokenKind.Word && _items[j].Text is "system" or "systeme" or "sistema" or "systeem")
            {
                return true;
            }
        }

        return i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && _items[i + 1].Text is "system" or "systeme" or "sistema" or "systeem";
    }

    /// <summary>What a figure is the sum of: by the words of its own clause before it, then behind it, then by those before it back to the figure before, then by those behind.</summary>
    private MassWords SumOf(int i)
    {
        int near = i;
        while (near > 0 && near > i - SumReach && !_items[near - 1].IsNumber && (!Ends(near - 1) || IsListOfSum(near - 1)))
        {
            near--;
        }

        MassWords sum = SumIn(near, i);
        bool bare = sum is { Limit: true, Bicycle: false, Rider: false, Luggage: false, Total: false, Load: false } && !HasWeight(near, i);
        if (!bare && (sum.Says || HasWeight(near, i)))
        {
            return sum.Rider && sum.Luggage && !sum.Limit && SaysLoadBefore(near) ? sum with { Limit = true } : sum;
        }

        if (bare)
        {
            // "Max 115 kg rider and bags", "bis 115 kg (Fahrer plus Gepäck)": what is weighed stands behind.
            int end = i + 1;
            while (end < _items.Count && end <= i + SumReach && !_items[end].IsNumber)
            {
                end++;
            }

            MassWords behind = end < _items.Count && _items[end].IsNumber ? default : SumIn(i + 1, end);
            return behind.Rider && behind.Luggage ? behind with { Limit = true } : sum;
        }

        int to = i + 1;
        while (to < _items.Count && to <= i + SumReach && !_items[to].IsNumber && (!Ends(to) || IsListOfSum(to)))
        {
            to++;
        }

        sum = SumIn(i + 1, to);
        if (sum.Says)
        {
            return sum;
        }

        while (near > 0 && near > i - SumReach && !_items[near - 1].IsNumber)
        {
            near--;
        }

        sum = SumIn(near, i);
        if (sum.Says || HasWeight(near, i))
        {
            return sum;
        }

        while (to < _items.Count && to <= i + SumReach && !_items[to].IsNumber)
        {
            to++;
        }

        return to < _items.Count && _items[to].IsNumber ? default : SumIn(i + 1, to);
    }

    /// <summary>"Pas plus de 150 kg au total, vélo et bonhomme": a limit before the figure, and behind it, to the next one, what it is of.</summary>
    private MassWords SumBehind(int i)
    {
        int to = i + 1;
        while (to < _items.Count && to <= i + SumReach && !_items[to].IsNumber && _items[to].Clause - _items[i].Clause <= 1)
        {
            to++;
        }

        return (to < _items.Count && _items[to].IsNumber ? default : SumIn(i + 1, to)) with { Limit = true };
    }

    /// <summary>"Carga máx. de la rueda, ciclista + equipaje: 115 kg": a word for a load before the comma, and no figure between.</summary>
    private bool SaysLoadBefore(int near)
    {
        for (int j = near - 1; j >= 0 && j >= near - SumReach && !_items[j].IsNumber; j--)
        {
            if (_items[j].Is("t:loadlimit") || _items[j].Is("t:limit") || _items[j].Is("m:anyload"))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Bike, rider and bags": a comma between two things that are weighed.</summary>
    private bool IsListOfSum(int i)
    {
        if (!_items[i].IsSign(',') || i == 0 || i + 1 >= _items.Count)
        {
            return false;
        }

        int next = i + 1;
        next += next + 1 < _items.Count && WordLists.ScanMassesIsListOfSum.Contains(_items[next].Text) ? 1 : 0;
        return IsWeighed(_items[i - 1]) && IsWeighed(_items[next]);
    }

    /// <summary>"Max. load 105 kg (rider and bags)": of whom a load is, in the clause of the figure or beside it.</summary>
    private bool SaysOfWhom(int i)
    {
        for (int clause = _items[i].Clause - 1; clause <= _items[i].Clause + 1; clause++)
        {
            if (Clauses(clause).Any(o => o.Is("t:rider") || o.Is("t:luggage") || IsLuggage(o)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsWeighed(SpecItem item) => IsBicycle(item) || IsLuggage(item) || item.Is("t:rider") || item.Is("t:luggage");

    /// <summary>A sign that ends the words of a sum; a plus joins them.</summary>
    private bool Ends(int i) => _items[i].Kind == SpecTokenKind.Sign && _items[i].IsFraction && !_items[i].IsSign('+') && !_items[i].IsSign('&');

    /// <summary>A weight of the thing itself.</summary>
    private bool HasWeight(int from, int to)
    {
        for (int j = from; j < to; j++)
        {
            if (_items[j].Is("n:weight"))
            {
                return true;
            }
        }

        return false;
    }

    private MassWords SumIn(int from, int to)
    {
        MassWords sum = default;
        for (int j = from; j < to; j++)
        {
            SpecItem item = _items[j];
            sum = new(
                sum.Bicycle || IsBicycle(item),
                sum.Rider || item.Is("t:rider") || item.Is("t:riderweight") || item.Is("t:luggage"),
                sum.Luggage || item.Is("t:luggage") || IsLuggage(item),
                sum.Total || item.Is("t:systemweight") || WordLists.ScanMassesSumIn.Contains(item.Text),
                sum.Load || item.Is("t:loadlimit"),
                sum.Limit || item.Is("t:limit") || item.Is("m:max"));
        }

        return sum;
    }

    /// <summary>"14 st 4", "12 stone": stones and pounds are pounds.</summary>
    private void Stones()
    {
        for (int i = 0; i + 1 < _items.Count; i++)
        {
            if (!Free(i) || _items[i] is not { Unit: "", IsFraction: false, Value: >= 4 and <= 35 } || _items[i + 1].Text is not ("st" or "stone" or "stones"))
            {
                continue;
            }

            if (HalfBehind(i + 2))
            {
                // "12 stone and a half"
                _items[i].Value += 0.5m;
            }

            int pounds = i + 2 < _items.Count && Free(i + 2) && _items[i + 2].Unit is "" or "lb" && _items[i + 2].Value is >= 0 and < 14 && _items[i + 2].Clause == _items[i].Clause ? i + 2 : -1;
            _items[i].Value = (_items[i].Value * 14) + (pounds < 0 ? 0 : _items[pounds].Value);
            _items[i].Text = ItemCutter.Plain(_items[i].Value);
            _items[i].Unit = "lb";
            _items[i + 1].Glued = false;
            _items[i].End = _items[pounds < 0 ? i + 1 : pounds].End;
            if (pounds >= 0)
            {
                _items[pounds].Used = true;
                _items[pounds].Unit = "lb";
            }
        }
    }

    /// <summary>"Peso totale max: kg 130", "Gewicht (kg): 74,5", "poids en kg : 82": the unit before the figure.</summary>
    private void UnitBefore(int i)
    {
        if (i < 2 || !Free(i) || _items[i] is not { Unit: "", IsFraction: false, Value: >= 30 and <= 400 } || (i + 1 < _items.Count && (Links(_items[i + 1]) || _items[i + 1].Is("m:or"))))
        {
            return;
        }

        int colon = _items[i - 1].IsSign(':') || _items[i - 1].IsSign('=') ? i - 1 : -1;
        bool bracket = colon > 2 && _items[colon - 1].IsSign(')') && _items[colon - 3].IsSign('(') && IsKilo(colon - 2);
        bool worded = colon > 2 && IsKilo(colon - 1) && _items[colon - 2].Text is "in" or "en";
        bool behind = colon < 0 && IsKilo(i - 1) && _items[i - 2].IsSign(':');
        if (bracket || worded || behind)
        {
            _items[i].Unit = "kg";
        }
    }

    private bool IsKilo(int i) => _items[i].Is("u:kg") || _items[i].Text is "kg" or "chili" or "kilos" or "kilo";

    private bool HalfBehind(int i) =>
        i + 1 < _items.Count && _items[i].Text is "and" && (_items[i + 1].Text is "half" || (i + 2 < _items.Count && _items[i + 1].Text is "a" && _items[i + 2].Text is "half"));

    private void ReadRider()
    {
        Stones();
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!_items.Exists(o => o.Is("m:max") || o.Is("t:limit") || o.Is("m:anyload") || o.Text.StartsWith("max", StringComparison.Ordinal)))
            {
                UnitBefore(i);
            }

            if (i + 1 < _items.Count && Free(i) && _items[i] is { Unit: "", IsFraction: false, Value: >= 60 and <= 450 } && _items[i + 1].Text is "livres")
            {
                // Also "delivered" without its accent, so that it is a unit of riders alone.
                _items[i].Unit = "lb";
            }

            if (!Free(i) || _items[i].Unit is not ("kg" or "lb"))
            {
                continue;
            }

            MassWords sum = SumOf(i);
            if (IsRange(i))
            {
                Several("mass", [], i, i, "two masses are offered for one");
            }
            else if (sum.Bicycle && !sum.Rider && !sum.Total && !(sum.Luggage && Comes(i)))
            {
                // "Bike 12 kg": the mass of what is not the rider.
                _items[i].Used = true;
            }
            else if (sum.Luggage && !sum.Rider && !sum.Total && !sum.Limit && !Comes(i))
            {
                _items[i].Used = true;
            }
            else
            {
                Mass(sum.Bicycle || sum.Total ? "systemMass" : sum.Luggage ? "massWithLuggage" : "mass", i);
            }
        }

        ReadUse();
    }

    /// <summary>"With bicycle and bags": what stands before is added to it.</summary>
    private bool Comes(int i)
    {
        for (int j = i - 1; j >= 0 && j >= i - SumReach && !_items[j].IsNumber; j--)
        {
            if (_items[j].Is("m:and") || _items[j].Is("d:kit") || _items[j].IsSign('+') || _items[j].IsSign('&'))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Between 75 and 80 kg": a figure without a unit before it, joined by a word.</summary>
    private bool IsRange(int i) =>
        i >= 2 && _items[i - 2] is { IsNumber: true, Unit: "", Used: false } && (_items[i - 1].Is("m:and") || _items[i - 1].Is("m:to") || _items[i - 1].Is("m:or") || _items[i - 1].IsSign('-') || _items[i - 1].IsSign('/') || _items[i - 1].Text == "bis" || _items[i - 1].Text == "tot" || _items[i - 1].Text == "hasta");
}
