namespace Lugwork.Reading;

/// <summary>Parts that one or two figures or words tell.</summary>
internal sealed partial class LineScan
{
    private void ReadSmaller()
    {
        switch (_slot.Key)
        {
            case "frontRotor" or "rearRotor":
                ReadRotor();
                break;
            case "frontBrake" or "rearBrake":
                ReadCaliper();
                break;
            case "frontLever" or "rearLever":
                Words("CablePull", "pull");
                Words("BrakeFluid", "fluid");
                break;
            case "frontRimBrake" or "rearRimBrake":
                ReadRimBrake();
                break;
            case "frontAxle" or "rearAxle":
                ReadThruAxle();
                break;
            case "frontNuts" or "rearNuts":
                ReadHubAxleThread("thread", bare: true);
                break;
            case "seatpost":
                ReadSeatpost();
                break;
            case "seatClamp":
                ReadOne("size", "t:seatclamp", "t:clamp", "t:seattube");
                break;
            case "handlebar":
                ReadHandlebar();
                break;
            case "saddle":
                ReadRails("rails", bare: true);
                Words("SaddleRails", "rails");
                break;
            case "pedals":
                ReadPedalThread("thread", needTopic: false);
                Words("PedalSides", "sides");
                break;
            case "rearDerailleur":
                Words("DerailleurMount", "mount");
                if (Values.TryGetValue("mount", out LineFinding? mount) && mount.Key == "direct-mount" && _items.FindIndex(i => i.Is("v:Hanger=UDH")) is >= 0 and int hanger)
                {
                    Several("mount", ["direct-mount", "hangerless"], Math.Min(mount.First, hanger), Math.Max(mount.Last, hanger), "on this hanger a direct mount is mostly one without a hanger");
                }

                ReadMountBolt();
                ReadTeethOf("t:capacity", "capacity");
                ReadTeethOf("t:largestsprocket", "largestSprocket");
                Words("ShiftSignal", "signal");
                TakeSpeeds("chain");
                Words("ActuationFamily", "actuation");
                break;
            case "shifter" or "frontShifter":
                Words("ShiftSignal", "signal");
                Words("ActuationFamily", "actuation");
                break;
            case "frontDerailleur":
                ReadFrontMount("mount", needTopic: false);
                ReadTeethOf("t:difference", "difference");
                Words("ShiftSignal", "signal");
                TakeSpeeds("speeds");
                break;
            default:
                ReadSmallest();
                break;
        }
    }

    /// <summary>Teeth beside the word for what they are of.</summary>
    private void ReadTeethOf(string topic, string field)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Free(i) && _items[i].Unit is "teeth" or "" && TopicOf(i) == topic && _items[i].Value == decimal.Truncate(_items[i].Value) && !Joins(i))
            {
                _claimed[Link(i)] = true;
                Take(field, _items[i].Text, i, i);
            }
        }
    }

    /// <summary>M10 x 1, the bolt of a derailleur that hangs from a hanger.</summary>
    private void ReadMountBolt()
    {
        for (int i = 1; i < _items.Count; i++)
        {
            if (Free(i) && _items[i].Value == 10 && _items[i].Glued && _items[i - 1].Text == "m")
            {
                int last = Pair(i, out int second) && _items[second].Value == 1 ? second : i;
                Keep("mount", "M10-bolt", i - 1, last);
            }
        }
    }

    private void ReadSmallest()
    {
        switch (_slot.Key)
        {
            case "chainGuide":
                Words("ChainGuideMount", "mount");
                break;
            case "shock":
                ReadShock();
                break;
            case "frontValve" or "rearValve":
                Words("ValveStem", "valve");
                ReadLengths("length");
                break;
            case "frontRimTape" or "rearRimTape":
                ReadLengths("width");
                break;
            case "upperBearing" or "lowerBearing":
                ReadBearings("size", "size");
                break;
            case "headsetCover":
                Words("CableWay", "cables");
                break;
            case "preload":
                Words("SteererPreload", "kind");
                break;
            case "controls":
                Words("ControlClamp", "clamp");
                ReadOne("clamp", "t:clamp", "t:bar", "");
                break;
            case "grips":
                ReadOne("bore", "t:grip", "t:bar", "t:clamp");
                break;
            case "shellAdapter":
                Words("BracketAdapter", "kind");
                break;
            case "dropper":
                Words("DropperRouting", "routing");
                break;
            case "rider":
                ReadRider();
                break;
        }
    }

    /// <summary>One figure that the part is told by, bare or beside one of its words.</summary>
    private void ReadOne(string field, params string[] topics)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].Unit is not ("" or "mm" or "in") || TopicOf(i) is not string topic || (topic.Length > 0 && Array.IndexOf(topics, topic) < 0))
            {
                continue;
            }

            bool inch = _items[i].IsInch || _items[i].IsFraction;
            if ((!inch && _items[i].Value is < 20 or > 60) || (_slot == Slot.Grips && i > 0 && _items[i - 1].Is("m:outside")))
            {
                continue;
            }

            Take(field, inch ? InchName(_items[i].Value) + " in" : _items[i].Text, i, i);
        }
    }

    private void ReadLengths(string field)
    {
        (decimal least, decimal most) = TopicFields.Range(_slot, field);
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            // Metres of tape and numbers of pieces are of no interface; a bare figure has to be a likely one.
            if (Free(i) && _items[i].IsMillimetre && !(field == "length" && _items[i].Value < 15) && !IsBar(i) && !TopicOf(i).StartsWith("n:bottle", StringComparison.Ordinal) && !(i + 1 < _items.Count && _items[i + 1].Text == "m")
                && (_items[i].Unit == "mm" || (_items[i].Value >= least && _items[i].Value <= most)) && !(i > 0 && _items[i - 1].IsSign('x') && _items[i].Unit.Length == 0) && TopicOf(i) is not ("t:valvehole" or "t:inner" or "t:rim"))
            {
                Length(field, i);
            }
        }
    }

    private void ReadThruAxle()
    {
        ReadAxleThread("thread");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].Value is < 60 or > 300)
            {
                continue;
            }

            bool width = Joins(i) && (IsHubWidth(_items[i].Value, true) || IsHubWidth(_items[i].Value, false));
            if (width)
            {
                Several("length", [], i, i, "the figure can be the width of the hub or the length of the axle");
            }
            else if (TopicOf(i) is "" or "t:length" or "t:axlelength" or "t:axle")
            {
                Length("length", i);
            }
        }
    }

    private void ReadSeatpost()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool slash = Free(i) && i + 2 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2) && _items[i].Value < 40 && _items[i + 2].Value >= 200;
            int second = i + 2;
            if ((slash || (Pair(i, out second) && !InTriple(i))) && _items[i].IsMillimetre && _items[second].IsMillimetre && !TopicOf(i).StartsWith("n:", StringComparison.Ordinal) && TopicOf(i) is not "t:rails")
            {
                (int small, int large) = _items[i].Value < _items[second].Value ? (i, second) : (second, i);
                if (_items[large].Value < 40 && TopicOf(i) is "")
                {
                    continue;
                }

                Take("diameter", _items[small].Text, small, small);
                Length("length", large);
            }
        }

        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction)
            {
                continue;
            }

            string topic = TopicOf(i);
            topic = topic == "t:length" && _items[i].Value < 40 ? "" : topic;
            bool own = topic is "" or "t:post" or "t:seattube" or "t:dropper" or "t:clamp" or "t:material";
            if (_items[i].IsDiameter || (own && _items[i].Value is > 18 and < 40))
            {
                Take("diameter", _items[i].Text, i, i);
            }
            else if (own && topic != "t:length" && _items[i].Value % 10 != 0 && IsNominal(ItemCutter.Plain(_items[i].Value / 10)))
            {
                Several("diameter", [ItemCutter.Plain(_items[i].Value / 10)], i, i, "the figure can be a diameter without its decimal point");
            }
            else if (topic == "t:length" || (own && _items[i].Unit == "mm" && _items[i].Value is >= 200 and <= 650))
            {
                Length("length", i);
            }
        }

        if (!_items.Exists(i => i.Is("t:saddle") && i.Terms.Length == 1) || Values.Count == 0)
        {
            ReadRails("railClamp", bare: false);
        }

        Words("FrameMaterial", "material", OfWhole);
        Words("UseCategory", "use");
    }

    /// <summary>Rails: 7 x 9, 7 mm round.</summary>
    private void ReadRails(string field, bool bare)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool topic = TopicOf(i) is "t:rails" || (bare && TopicOf(i) is "" or "t:saddle" or "t:clamp");
            if (!topic || !Free(i) || _items[i].Value is < 6 or > 12 || (TopicOf(i) is not "t:rails" && !Pair(i, out _) && (_items[i].Unit != "mm" || HasUnknownWord(i))))
            {
                continue;
            }

            if (Pair(i, out int second))
            {
                (decimal a, decimal b) = (_items[i].Value, _items[second].Value);
                Take(field, $"{ItemCutter.Plain(Math.Min(a, b))}x{ItemCutter.Plain(Math.Max(a, b))}", i, second);
            }
            else if (HasMark(i, "m:oval"))
            {
                Refuse(field, i, i, "the second figure of oval rails is missing");
            }
            else
            {
                Take(field, $"{_items[i].Text} mm round", i, i);
            }
        }
    }

    private void ReadHandlebar()
    {
        Words("UseCategory", "use");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].Unit is not ("" or "mm" or "in"))
            {
                continue;
            }

            bool inch = _items[i].IsInch || _items[i].IsFraction;
            string topic = TopicOf(i);
            string text = inch ? InchName(_items[i].Value) + " in" : _items[i].Text;
            bool likely = inch ? _items[i].Value < 2 : _items[i].Value is > 20 and < 40;
            if (topic == "t:grip")
            {
                _claimed[Link(i)] = true;
                Take("grip", text, i, i);
            }
            else if (likely && (topic is "t:clamp" or "t:bar" or "" || (topic == "t:stem" && Clause(i, "t:clamp"))))
            {
                if (likely)
                {
                    Take("clamp", text, i, i);
                }
            }
        }
    }

    private void ReadShock()
    {
        ReadHardware("lowerHardware", "upperHardware");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Pair(i, out int second) && !InTriple(i))
            {
                ShockSize("size", i, second);
            }
        }
    }

    private void ShockSize(string field, int i, int second)
    {
        bool trunnion = Anywhere("m:trunnion") >= 0;
        bool eyelet = Anywhere("m:eyelet") >= 0;
        bool inch = _items[i].IsInch || _items[second].IsInch || _items[i].IsFraction || _items[second].IsFraction;
        (decimal a, decimal b) = (Math.Max(_items[i].Value, _items[second].Value), Math.Min(_items[i].Value, _items[second].Value));
        if (trunnion && eyelet)
        {
            Refuse(field, i, second, "the line says both eyelet and trunnion", LineDoubtKind.Conflict);
            return;
        }

        string size = $"{ItemCutter.Plain(a)} x {ItemCutter.Plain(b)}{(inch ? " in" : "")}";
        Take(field, (trunnion ? "trunnion " : eyelet ? "eyelet " : "") + size, i, second);
    }

    private void ReadHardware(string lower, string upper)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Pair(i, out int second) || InTriple(i) || _items[i].IsFraction)
            {
                continue;
            }

            (decimal width, decimal bolt) = (Math.Max(_items[i].Value, _items[second].Value), Math.Min(_items[i].Value, _items[second].Value));
            bool topic = TopicOf(i) is "t:hardware" || Clause(i, "t:hardware");
            if (!topic || width > 70 || bolt > 12)
            {
                continue;
            }

            int low = FindMark(i, "m:lower", 0);
            int up = FindMark(i, "m:upper", 0);
            if (low < 0 && up < 0)
            {
                Several(lower, [], i, second, "the end of the shock is not said: upper or lower");
                continue;
            }

            bool isLower = low >= 0 && (up < 0 || Math.Abs(low - i) < Math.Abs(up - i));
            Take(isLower ? lower : upper, $"{ItemCutter.Plain(width)}x{ItemCutter.Plain(bolt)}", i, second);
        }
    }

    private void ReadShockOfFrame()
    {
        ReadHardware("lowerShockHardware", "upperShockHardware");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Pair(i, out int second) || InTriple(i))
            {
                continue;
            }

            (decimal large, decimal small) = (Math.Max(_items[i].Value, _items[second].Value), Math.Min(_items[i].Value, _items[second].Value));
            bool inch = large < 15 && (_items[i].IsFraction || _items[i].IsInch || _items[second].IsInch || TopicOf(i) is "t:shock") && Clause(i, "t:shock");
            if ((large is >= 140 and <= 280 && small is >= 25 and <= 100 && !IsSeat(large)) || (inch && large >= 5))
            {
                ShockSize("shock", i, second);
            }
        }
    }

    private bool HasSystemWord(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.Text is "system" or "systeem" or "systeme" or "sistema" or "total" or "gesamt" or "totale" or "totaal")
            {
                return true;
            }
        }

        return false;
    }

    private void ReadRider()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Free(i) && _items[i].Unit is "kg" or "lb" && Free(i))
            {
                string topic = TopicOf(i);
                Mass(topic switch { "t:luggage" => "withLuggage", "t:systemweight" => "system", _ => HasSystemWord(i) ? "system" : "mass" }, i);
            }
        }

        Words("UseCategory", "use");
    }
}
