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
            case "frontCaliper" or "rearCaliper":
                ReadCaliper();
                break;
            case "frontBrakeLever" or "rearBrakeLever":
                Words("CablePull", "pull");
                if (!Values.ContainsKey("pull") && Anywhere("v:BrakeType=direct-pull") is >= 0 and int linear)
                {
                    // The lever of a direct-pull brake has the long pull.
                    Keep("pull", "long", linear, linear);
                }

                Words("BrakeFluid", "fluid");
                break;
            case "frontRimBrake" or "rearRimBrake":
                ReadRimBrake();
                break;
            case "frontThruAxle" or "rearThruAxle":
                ReadThruAxle();
                break;
            case "frontAxleNuts" or "rearAxleNuts":
                ReadHubAxleThread("thread", bare: true);
                break;
            case "seatpost":
                ReadSeatpost();
                break;
            case "seatClamp":
                ReadOne("size", "t:seatclamp", "t:clamp", "t:seattube", "t:inner", "t:tube", _items.Exists(i => i.Is("m:outside")) ? "t:frame" : "t:seatclamp");
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
                ElectronicCable();
                HydraulicOfBrake();
                if (!Values.ContainsKey("mount") && Anywhere("v:Hanger=no-hanger") is >= 0 and int without)
                {
                    Keep("mount", "hangerless", without, without);
                }

                NumberSprockets();
                if (!SpeedsOfOther("t:cassette", "t:rearmech"))
                {
                    TakeSpeeds("chain");
                }

                Words("ActuationFamily", "actuation");
                break;
            case "rearShifter" or "frontShifter":
                Words("ShiftSignal", "signal");
                ElectronicCable();
                HydraulicOfBrake();
                SpacingOfShifter();
                Words("ActuationFamily", "actuation");
                break;
            case "frontDerailleur":
                ReadFrontMount("mount", needTopic: false);
                ReadTeethOf("t:difference", "difference");
                if (!Values.ContainsKey("difference"))
                {
                    // The capacity of a front derailleur is what the rings differ by.
                    ReadTeethOf("t:capacity", "difference");
                }

                Words("ShiftSignal", "signal");
                ElectronicCable();
                TakeSpeeds("speeds");
                break;
            default:
                ReadSmallest();
                break;
        }
    }

    /// <summary>"Electronic, cable": a cable that pulls or a wire; the line does not say which.</summary>
    private void ElectronicCable()
    {
        if (Anywhere("m:electronic") >= 0 && Values.TryGetValue("signal", out LineFinding? signal) && signal.Key == "cable")
        {
            Several("signal", ["cable", "wired"], signal.First, signal.Last, "electronic shifting has no cable that pulls");
        }
    }

    /// <summary>"Cassette 11-speed": the one number of speeds stands right beside the name of another part, and the part itself is not named.</summary>
    private bool SpeedsOfOther(string other, string own)
    {
        int speeds = _items.FindIndex(i => i.Unit == "speed" && !i.Used);
        return speeds >= 0 && _items.FindLastIndex(i => i.Unit == "speed" && !i.Used) == speeds && Clause(speeds, other) && Anywhere(own) < 0 && Anywhere("t:chain") < 0;
    }

    /// <summary>"Hydraulisch gedämpft": of the cage.</summary>
    private static bool IsDamped(string word) =>
        word.StartsWith("gedam", StringComparison.Ordinal) || word.StartsWith("damp", StringComparison.Ordinal) || word.StartsWith("amort", StringComparison.Ordinal) || word.StartsWith("smorz", StringComparison.Ordinal) || word.StartsWith("gedemp", StringComparison.Ordinal) || word.StartsWith("demp", StringComparison.Ordinal) || word is "clutch" or "kupplung" or "cage" or "kafig";

    /// <summary>Hydraulic shifting; beside a word for a brake the hydraulics are of that.</summary>
    private void HydraulicOfBrake()
    {
        if (!Values.TryGetValue("signal", out LineFinding? signal) || signal.Key != "hydraulic")
        {
            return;
        }

        bool shifter = _slot == Slot.RearShifter || _slot == Slot.FrontShifter;
        bool alone = shifter && _items.Exists(i => i.Unit == "speed") && Clauses(_items[signal.First].Clause).All(i => i.Kind == SpecTokenKind.Sign || (i == _items[signal.First] && !i.IsFraction));
        if (signal.Last + 1 < _items.Count && IsDamped(_items[signal.Last + 1].Text))
        {
            Values.Remove("signal");
        }
        else if (alone)
        {
            Several("signal", [signal.Key], signal.First, signal.Last, "the hydraulics can be those of the brake");
        }
        else if (shifter && _items.Exists(i => i.Is("t:brake") || i.Is("t:lever") || i.Is("t:caliper") || i.Is("t:rotor") || i.Terms.Any(t => t.StartsWith("v:Brake", StringComparison.Ordinal))))
        {
            Several("signal", [signal.Key], signal.First, signal.Last, "the hydraulics can be those of the brake");
        }
    }

    /// <summary>"12-speed": the spacing of a shifter, where the number of speeds names one.</summary>
    private void SpacingOfShifter()
    {
        List<int> speeds = Speeds(out int first, out int last);
        if (_slot == Slot.RearShifter && speeds.Count == 1 && speeds[0] is 7 or 8 or 12 && Anywhere("m:hg") < 0 && Anywhere("m:eightspline") < 0)
        {
            Keep("spacing", speeds[0].ToString(System.Globalization.CultureInfo.InvariantCulture), first, last);
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
                GuideOnBracket();
                break;
            case "shock":
                ReadShock();
                break;
            case "frontTubelessValve" or "rearTubelessValve":
                Words("ValveStem", "valve");
                StemByPlace();
                RimsOfValve();
                ReadLengths("length");
                break;
            case "frontRimTape" or "rearRimTape":
                for (int i = 0; i + 2 < _items.Count; i++)
                {
                    if (Free(i) && Free(i + 2) && _items[i + 1].IsSign('-') && IsSeat(_items[i + 2].Value) && _items[i].Value is >= 8 and <= 60)
                    {
                        Length("width", i);
                        _items[i + 2].Used = true;
                    }
                }

                ReadLengths("width");
                break;
            case "upperBearing" or "lowerBearing":
                ReadBearings("size", "size");
                break;
            case "headsetCover":
                Words("CableWay", "cables");
                Words("CoverWay", "cables");
                break;
            case "preload":
                Words("SteererPreload", "kind");
                break;
            case "controls":
                Words("ControlClamp", "clamp");
                ReadOne("clamp", "t:clamp", "t:bar", "t:shifter", "t:lever", "");
                break;
            case "grips":
                ReadOne("bore", "t:grip", "t:bar", "t:clamp", "t:inner");
                break;
            case "shellAdapter":
                Words("ShellAdapterKind", "kind");
                break;
            case "dropper":
                Words("DropperRouting", "routing");
                break;
            case "rider":
                ReadRider();
                break;
        }
    }

    /// <summary>"Montage op trapas (bottom bracket)", "BB/ISCG05": the bracket said again beside its mount, or as the other one of two.</summary>
    private void GuideOnBracket()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (!_items[i].Is("t:bb") || Negated(i))
            {
                continue;
            }

            int other = i > 1 && (_items[i - 1].IsSign('/') || _items[i - 1].Is("m:or")) ? i - 2 : i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].Is("m:or")) ? i + 2 : -1;
            if (other >= 0 && Values.TryGetValue("mount", out LineFinding? one) && one.Key != "BB-mount" && one.First <= other && other <= one.Last)
            {
                Several("mount", ["BB-mount", one.Key], Math.Min(i, one.First), Math.Max(i, one.Last), "two mounts are named");
                return;
            }

            if (Values.TryGetValue("mount", out LineFinding? same) && same.Key == "BB-mount" && i > same.Last && i <= same.Last + 3)
            {
                Keep("mount", "BB-mount", i, i);
            }
        }

        string key = "";
        int at = -1;
        for (int i = 0; i < _items.Count && !Values.ContainsKey("mount"); i++)
        {
            string place = _items[i].Is("t:bb") ? "BB-mount" : _items[i].Is("t:seattube") || _items[i].Is("t:frontmech") ? "derailleur-mount" : "";
            if (place.Length == 0 || Negated(i) || !IsMountedOn(i) || (i + 1 < _items.Count && _items[i + 1].IsNumber))
            {
                continue;
            }

            if (at >= 0 && key != place)
            {
                Several("mount", [key, place], at, i, "two mounts are named");
                return;
            }

            (key, at) = (place, i);
        }

        if (at >= 0 && Doubts.Count == 0 && !Values.ContainsKey("mount"))
        {
            bool direct = at + 1 < _items.Count && (_items[at + 1].Is("v:DerailleurMount=direct-mount") || _items[at + 1].Is("v:DirectMountRing=3-bolt|8-bolt|own"));
            Keep("mount", key, at, direct ? at + 1 : at);
        }
    }

    /// <summary>"Sur boîtier de pédalier", "fissaggio al tubo piantone": a word for mounting, or for on what, right before the place.</summary>
    private bool IsMountedOn(int place)
    {
        for (int j = place - 1; j >= 0 && j >= place - 4 && _items[j].Clause == _items[place].Clause && !_items[j].IsNumber; j--)
        {
            if (_items[j].Text is "on" or "onto" or "to" or "around" or "round" or "am" or "an" or "auf" or "ans" or "sur" or "au" or "sul" or "sulla" or "su" or "al" or "alla" or "en" or "op" or "aan" or "om" or "sobre"
                or "mount" or "mounts" or "mounted" or "montage" or "montiert" or "fixation" or "fijacion" or "anclaje" or "montaje" or "attacco" or "fissaggio" or "montaggio" or "collare" or "bevestiging" or "befestigung" or "schelle" or "clamps" or "clamp" or "collier" or "klem")
            {
                return !Negated(j);
            }
        }

        return _items[place].Text is "umwerferaufnahme" or "umwerfersockel" or "anclaje" or "montaje" or "soporte" or "attacco" or "supporto" or "montaggio" or "fixation" or "montage" or "support" or "patte" or "bevestiging" || (place + 1 < _items.Count && _items[place + 1].Text is "mount" or "mounted" or "montage" or "montiert");
    }

    /// <summary>"For rims up to 50 mm deep": the depth of the rim that a valve is long enough for.</summary>
    private void RimsOfValve()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && (Clause(i, "t:rim") || TopicOf(i) is "t:depth") && (HasMark(i, "m:max") || TopicOf(i) is "t:depth") && !Clause(i, "t:valve"))
            {
                _items[i].Used = true;
            }
        }
    }

    private void ReadThruAxle()
    {
        ReadAxleThread("thread");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            // A length by its word; the hub beside it, 12x148, is no second one.
            if (Free(i) && _items[i].IsMillimetre && !_items[i].IsFraction && _items[i].Value is >= 80 and <= 270 && TopicOf(i) is "t:length" or "t:axlelength" && !JoinsClosely(i) && Link(i) is >= 0 and int said && _items[said].Text.Length > 1)
            {
                Length("length", i);
            }
        }

        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].Value is < 60 or > 300)
            {
                continue;
            }

            bool width = ((i > 0 && Links(_items[i - 1]) && _items[i - 1].Glued) || (i + 1 < _items.Count && Links(_items[i + 1]) && (_items[i + 1].Glued || _items[i + 1].IsSign('x'))) || (i > 0 && _items[i - 1].IsSign('x'))) && (IsHubWidth(_items[i].Value, true) || IsHubWidth(_items[i].Value, false));
            if (width && Values.ContainsKey("length"))
            {
                MarkAll(Math.Max(0, i - 2), Math.Min(_items.Count - 1, i + 2));
            }
            else if (width)
            {
                Several("length", [], i, i, "the figure can be the width of the hub or the length of the axle");
            }
            else if (TopicOf(i) is "" or "t:length" or "t:axlelength" or "t:axle" or "n:width" || (TopicOf(i) is "t:thread" or "t:axlethread" or "t:pitch" && _items[i].Unit == "mm" && !JoinsClosely(i)))
            {
                Length("length", i);
            }
        }
    }
}
