using System.Globalization;

namespace Lugwork.Reading;

/// <summary>Cranks and chainrings: teeth, bolt circles, chainline.</summary>
internal sealed partial class LineScan
{
    private void ReadRings()
    {
        ReadBoltCircle();
        if (_slot == Slot.Chainring)
        {
            ReadTeeth("teeth", largest: false);
            int speeds = _items.FindIndex(i => i is { IsNumber: true, Unit: "speed" });
            if (speeds >= 0 && !Joins(speeds) && _items.FindLastIndex(i => i is { IsNumber: true, Unit: "speed" }) == speeds && LimitOf(speeds).Length == 0)
            {
                TakeSpeeds("speeds");
            }

        }
        else
        {
            ReadPedalThread("pedalThread", needTopic: true);
            ReadSpindle();
            ReadChainline();
            ReadTeeth("largestRing", largest: true);
            if (!TakeSpeeds("rings"))
            {
                TakeSingleWidth("rings");
            }

        }

        DirectMountBolts();
        Words("DirectMountRing", "directMount");
        Settle("directMount");
    }

    /// <summary>"Direct mount, 3 bolts": the number beside the words.</summary>
    private void DirectMountBolts()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool direct = _items[i].Is("v:DirectMountRing=3-bolt|8-bolt|own") || _items[i].Text is "directo" or "diretto" or "direkt" or "dm" || (_items[i].Is("v:DerailleurMount=direct-mount") && !_items[i].Is("v:DirectMountRing=3-bolt"));
            for (int j = i - 4; direct && j <= i + 4 && !Values.ContainsKey("directMount"); j++)
            {
                if (j >= 0 && j < _items.Count && Free(j) && _items[j] is { Value: 3 or 8, Unit: "arms" or "holes" } && Math.Abs(_items[j].Clause - _items[i].Clause) <= 1)
                {
                    Keep("directMount", _items[j].Text + "-bolt", Math.Min(i, j), Math.Max(i, j));
                }
            }
        }
    }

    private void ReadTeeth(string field, bool largest)
    {
        int best = -1;
        int others = 0;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || _items[i].Value is < 20 or > 80 || _items[i].Value != decimal.Truncate(_items[i].Value) || _items[i].IsFraction)
            {
                continue;
            }

            bool teeth = _items[i].Unit == "teeth" || (i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('-') || _items[i + 1].IsSign('x')) && _items[i + 2].IsNumber && (_items[i + 2].Unit == "teeth" || Chained(i + 2)));
            bool pair = largest && _items[i].Unit.Length == 0 && _items[i].Value >= 34 && i + 2 < _items.Count && (_items[i + 1].IsSign('/') || (_items[i + 1].IsSign('-') && _items[i + 1].Glued)) && Free(i + 2) && _items[i + 2].Unit.Length == 0 && _items[i + 2].Value >= 22 && _items[i].Value - _items[i + 2].Value >= 8 && TopicOf(i) is "" or "t:crank" or "t:chainring" or "t:bb";
            if (pair)
            {
                _items[i + 2].Used = true;
                if (i + 4 < _items.Count && (_items[i + 3].IsSign('/') || _items[i + 3].IsSign('-')) && Free(i + 4) && _items[i + 4].Value is >= 20 and < 45)
                {
                    _items[i + 4].Used = true;
                }
            }

            bool ringed = pair || largest && _items[i].Unit.Length == 0 && TopicOf(i) is "t:chainring";
            if (!teeth && !ringed)
            {
                continue;
            }

            if (largest && _slot == Slot.Crankset && HasMark(i, "m:max"))
            {
                continue;
            }

            others += best >= 0 ? 1 : 0;
            best = best < 0 || _items[i].Value > _items[best].Value ? i : best;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            _items[i].Used |= _items[i].Unit == "teeth";
        }

        if (best >= 0 && (largest || others == 0))
        {
            for (int j = best; j + 2 < _items.Count && (_items[j + 1].IsSign('/') || _items[j + 1].IsSign('-')) && _items[j + 2] is { IsNumber: true, Value: >= 20 and <= 60 } && largest; j += 2)
            {
                _items[j + 2].Used = true;
            }

            Take(field, _items[best].Text, best, best);
        }
        else if (best >= 0)
        {
            Several(field, [], best, best, "several numbers of teeth are named");
        }
    }

    /// <summary>Another step of a list that ends in teeth: 50/34T, 42-32-24T.</summary>
    private bool Chained(int i) => i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('-')) && _items[i + 2].IsNumber && _items[i + 2].Unit == "teeth";

    private void ReadBoltCircle()
    {
        bool said = false;
        for (int i = 0; i < _items.Count && !said; i++)
        {
            said = Free(i) && TopicOf(i) is "t:bcd" && _items[i].IsMillimetre && _items[i].Value is >= 50 and <= 160;
        }

        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].IsFraction || !_items[i].IsMillimetre || _items[i].Value is < 50 or > 160)
            {
                continue;
            }

            bool topic = TopicOf(i) is "t:bcd" || (!said && Clause(i, "t:bcd"));
            if (said && TopicOf(i) is not "t:bcd")
            {
                continue;
            }

            if (i + 2 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2) && _items[i + 2].Value is >= 50 and <= 160 && (TopicOf(i) is "t:bcd" || Clause(i, "t:bcd")))
            {
                Several("boltCircle", [], i, i + 2, "two bolt circles are named");
                continue;
            }

            int arms = -1;
            if (i >= 2 && _items[i - 1].IsSign('x') && Free(i - 2) && _items[i - 2].Value is 3 or 4 or 5)
            {
                arms = i - 2;
            }
            else if (i + 2 < _items.Count && _items[i + 1].IsSign('x') && Free(i + 2) && _items[i + 2].Value is 3 or 4 or 5)
            {
                arms = i + 2;
            }
            else
            {
                for (int j = Math.Max(0, i - 8); j < _items.Count && j <= i + 8 && arms < 0; j++)
                {
                    arms = _items[j] is { IsNumber: true, Used: false, Unit: "arms" or "holes" } && _items[j].Value is 3 or 4 or 5 && Math.Abs(_items[j].Clause - _items[i].Clause) <= 1 ? j : -1;
                }
            }

            if (!topic && arms < 0)
            {
                continue;
            }

            // The length of the arms is no bolt circle.
            if (!topic && TopicOf(i) is not ("" or "t:crank" or "t:chainring" or "t:spacing"))
            {
                continue;
            }

            bool uneven = FindMark(i, "m:uneven", 1) >= 0;
            bool even = FindMark(i, "m:even", 1) >= 0;
            string text = arms < 0 ? _items[i].Text : $"{_items[arms].Text}x{_items[i].Text}";
            if (arms >= 0 && (uneven || even))
            {
                string named = text + (uneven ? "-uneven" : "-even");
                text = _fields["boltCircle"].Read(named).Keys.Length == 1 ? named : text;
            }

            Take("boltCircle", text, arms < 0 ? i : Math.Min(i, arms), Math.Max(i, arms));
        }
    }

    /// <summary>1/8 or 3/32 of an inch: the inside width of the chain of a single sprocket, by itself in its clause.</summary>
    private void TakeSingleWidth(string field)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i].IsFraction && _items[i].Text is "1/8" or "3/32" && !Joins(i) && TopicOf(i) is "" or "t:cassette" or "t:chain" or "t:chainring" or "t:crank" && Free(i))
            {
                string text = _items[i].Text;
                Take(field, _fields[field].Read(text).Keys.Length == 1 ? text : text + "-single", i, i);
            }
        }
    }

    private void ReadChainline()
    {
        for (int i = 1; i < _items.Count; i++)
        {
            if (Free(i) && _items[i - 1].Text == "cl" && !_items[i].Glued && _items[i].Value is >= 38 and <= 60)
            {
                _items[i].Used = true;
            }
        }

        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && TopicOf(i) is "t:chainline")
            {
                FieldReading reading = _fields["chainline"].Read(_items[i].Text);
                if (reading.Keys.Length > 1)
                {
                    Several("chainline", reading.Keys, i, i, "several uses have this chainline");
                }
                else if (reading.Keys.Length == 1)
                {
                    Take("chainline", _items[i].Text, i, i);
                }
                else
                {
                    _items[i].Used = true;
                }
            }
        }
    }
}
