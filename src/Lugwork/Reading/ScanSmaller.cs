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
                Words("CablePull", "pull", i => !IsLengthOfCable(i));
                if (Values.TryGetValue("pull", out LineFinding? told) && told.Key == "short" && (Anywhere("v:BrakeType=direct-pull") is >= 0 and int other ? !Negated(other) : _items.Exists(o => o.Text is "long" or "lang" or "larga" or "largo" or "lungo")))
                {
                    Several("pull", ["short", "long"], told.First, told.Last, "the brake that is named is pulled by levers of another pull");
                }
                else if (!Values.ContainsKey("pull") && Anywhere("v:BrakeType=direct-pull") is >= 0 and int both && (Anywhere("v:BrakeType=cantilever") >= 0 || Anywhere("v:BrakeType=rim-caliper") >= 0))
                {
                    Several("pull", ["short", "long"], both, both, "the brakes that are named are pulled by levers of different pull");
                }
                else if (!Values.ContainsKey("pull") && Anywhere("v:BrakeType=direct-pull") < 0 && Anywhere("v:BrakeType=mini-direct-pull") < 0 && Anywhere("v:BrakeType=cantilever") is >= 0 and int canti && !IsOfFrameOrFluid(canti))
                {
                    // So has that of a cantilever the short one.
                    Keep("pull", "short", canti, canti);
                }
                else if (!Values.ContainsKey("pull") && Anywhere("v:BrakeType=direct-pull") is >= 0 and int linear && !IsOfFrameOrFluid(linear))
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
                ReadOne("size", "t:seatclamp", "t:clamp", "t:seattube", "t:inner", "t:tube", _items.Exists(i => i.Is("m:outside") || i is { IsNumber: true, Places: 1, Value: 28.6m or 30 or 31.8m or 34.9m or 36.4m or 38.6m }) ? "t:frame" : "t:seatclamp");
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
                Words("PedalSides", "sides", IsOfPedals);
                break;
            case "rearDerailleur":
                // "Direct mount, no hanger": the one says how, the other on what.
                bool bare = Anywhere("v:DerailleurMount=hangerless") is >= 0 and int hangerless && !Negated(hangerless) && !Joins(hangerless) && Anywhere("m:or") < 0;
                Words("DerailleurMount", "mount", i => !Clause(i, "t:frontmech") && !(bare && _items[i].Is("v:DerailleurMount=direct-mount")));
                Settle("mount");
                if (Values.TryGetValue("mount", out LineFinding? mount) && mount.Key == "direct-mount" && _items.FindIndex(i => i.Is("v:Hanger=UDH")) is >= 0 and int hanger)
                {
                    Several("mount", ["direct-mount", "hangerless"], Math.Min(mount.First, hanger), Math.Max(mount.Last, hanger), "on this hanger a direct mount is mostly one without a hanger");
                }

                ReadMountBolt();
                ReadTeethOf("t:capacity", "capacity");
                ReadTeethOf("t:largestsprocket", "largestSprocket");
                MostTeethOfCage();
                SprocketThatGoes();
                MostOfSprocket();
                Words("ShiftSignal", "signal", i => !Clause(i, "t:brake"));
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

                Words("ActuationFamily", "actuation", i => !IsOtherRatio(i));
                break;
            case "rearShifter" or "frontShifter":
                Words("ShiftSignal", "signal", i => !Clause(i, "t:brake"));
                ElectronicCable();
                HydraulicOfBrake();
                NumberSprockets();
                SpacingOfShifter();
                Words("ActuationFamily", "actuation", i => !IsOtherRatio(i));
                break;
            case "frontDerailleur":
                ReadFrontMount("mount", needTopic: false);
                ReadTeethOf("t:difference", "difference");
                if (!Values.ContainsKey("difference"))
                {
                    // The capacity of a front derailleur is what the rings differ by.
                    ReadTeethOf("t:capacity", "difference");
                    DifferenceByWord();
                }

                Words("ShiftSignal", "signal", i => !Clause(i, "t:brake"));
                ElectronicCable();
                HydraulicOfBrake();
                NumberSprockets();
                TakeSpeeds("speeds");
                break;
            default:
                ReadSmallest();
                break;
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
            if (Free(i) && _items[i].Unit is "teeth" or "" && TopicOf(i) == topic && _items[i].Value == decimal.Truncate(_items[i].Value) && !(Joins(i) && !PartsBySlash(i)))
            {
                _claimed[Link(i)] = true;
                Take(field, _items[i].Text, i, i);
            }
        }
    }

    /// <summary>"36T / total capacity 39T": a slash between blanks, with a word and no figure on its other side.</summary>
    private bool PartsBySlash(int i)
    {
        bool before = i > 0 && _items[i - 1].IsSign('/') && i > 1 && _items[i - 2].Kind == SpecTokenKind.Word;
        bool behind = i + 2 < _items.Count && _items[i + 1].IsSign('/') && !_items[i + 1].Glued && _items[i + 2].Kind == SpecTokenKind.Word;
        return (behind && !(i > 0 && Links(_items[i - 1]))) || (before && !_items[i].Glued && !(i + 1 < _items.Count && Links(_items[i + 1])));
    }

    /// <summary>M10 x 1, the bolt of a derailleur that hangs from a hanger.</summary>
    private void ReadMountBolt()
    {
        for (int i = 1; i < _items.Count; i++)
        {
            if (Free(i) && _items[i].Value == 10 && _items[i].Glued && _items[i - 1].Text == "m")
            {
                int last = Pair(i, out int second) && _items[second].Value == 1 ? second : i;
                int pitch = i + 1 < _items.Count && _items[i + 1].Text is "de" or "con" or "mit" or "with" or "avec" or "met" ? i + 3 : i + 2;
                last = last == i && Free(pitch) && _items[pitch] is { Value: 1, IsFraction: false, Unit: "" or "mm" } && _items[pitch - 1].Text is "passo" or "pas" or "paso" or "steigung" or "spoed" or "pitch" ? pitch : last;
                _items[i].Used |= last > i;
                Keep("mount", "M10-bolt", i - 1, last);
            }
        }
    }

    private void ReadSmallest()
    {
        switch (_slot.Key)
        {
            case "chainGuide":
                Words("ChainGuideMount", "mount", i => !IsOldGuide(i));
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
                Words("CoverWay", "cables", IsThroughHere);
                CoverByRouting();
                break;
            case "preload":
                Words("SteererPreload", "kind");
                break;
            case "controls":
                Words("ControlClamp", "clamp", IsOfControl);
                ReadOne("clamp", "t:clamp", "t:bar", "t:shifter", "t:lever", "");
                break;
            case "grips":
                ReadOne("bore", "t:grip", "t:bar", "t:clamp", "t:inner", "t:steerer", "t:tube");
                break;
            case "shellAdapter":
                Words("ShellAdapterKind", "kind", i => !Clause(i, "t:frame"));
                break;
            case "dropper":
                Words("DropperRouting", "routing", i => !IsInsideOther(i) && !IsHousing(i) && !IsOfState(i + 1) && !(IsOfState(i + 2) && _items[i + 1].Kind == SpecTokenKind.Word) && !IsBothWays(i));
                break;
            case "rider":
                ReadRider();
                if (Values.TryGetValue("mass", out LineFinding? mass) && Anywhere("m:anyload") is >= 0 and int load)
                {
                    Several("mass", [], Math.Min(load, mass.First), Math.Max(load, mass.Last), "what a part or a bicycle may carry is no mass of a rider");
                }

                break;
        }
    }

    /// <summary>"Zug innen verrostet": how the inside of a cable is.</summary>
    private bool IsOfState(int i) => IsStrange(i) && _items[i].Clause == _items[i - 1].Clause;

    /// <summary>"Innen und außen": the other way, joined to the first.</summary>
    private bool IsBothWays(int i) =>
        i + 2 < _items.Count && (_items[i + 1].Is("m:and") || _items[i + 1].IsSign('+') || _items[i + 1].IsSign('/')) && (_items[i + 2].Is("m:outside") || _items[i + 2].Is("m:inside") || WordLists.ScanSmallerIsBothWays.Contains(_items[i + 2].Text));

    /// <summary>"Gear ratio 1:1", "verhouding 1 op 1 olie": what goes round once for once, or is mixed so.</summary>
    private bool IsOtherRatio(int i) =>
        Clauses(_items[i].Clause).Any(o => o.Kind == SpecTokenKind.Word && WordLists.ScanSmallerIsOtherRatio.Contains(o.Text));

    /// <summary>"Funda externa negra", "gaine extérieure rouge": the housing by its colour or its length, and "Bremsleitung extern", another one's.</summary>
    private bool IsHousing(int i) =>
        Clauses(_items[i].Clause).Any(o => o.Is("t:brake") || WordLists.ScanSmallerIsHousing.Contains(o.Text)) ||
        (i + 1 < _items.Count && _items[i].IsFraction && _items[i].Text is "gaine" or "funda" or "guaina" or "externe" or "buitenkabel" && (_items[i + 1].Is("c:colour") || _items[i + 1].IsNumber || (_items[i + 1].Kind == SpecTokenKind.Word && _items[i + 1].Terms.IsEmpty && _items[i + 1].Text.Length > 3)))
        || (i > 0 && (_items[i - 1].Text.StartsWith("brems", StringComparison.Ordinal) || _items[i - 1].Text.StartsWith("remleid", StringComparison.Ordinal)));

    /// <summary>"Cable pull: long enough", "Seilzug: kurz abgelängt", "lang, 1.8 m", "largo / corto": the length of a cable, or two pulls.</summary>
    private bool IsLengthOfCable(int i)
    {
        int next = i + 1;
        return next < _items.Count && (WordLists.ScanSmallerLengthOfCable.Contains(_items[next].Text) || ((_items[next].IsSign('/') || _items[next].Kind == SpecTokenKind.Sign) && next + 1 < _items.Count && (_items[next + 1] is { IsNumber: true, Unit: "m" or "cm" or "mm" } || _items[next + 1].Text is "short" or "long" or "kurz" or "lang" or "corto" or "corta" or "largo" or "larga" or "lungo" or "lunga" or "court" or "courte" or "longue" or "kort" or "lange")));
    }

    /// <summary>"Cantilever boss", "V-brake, hydraulic": of the frame, or of a brake that no cable pulls.</summary>
    private bool IsOfFrameOrFluid(int i) =>
        (i + 1 < _items.Count && WordLists.ScanSmallerOfFrame.Contains(_items[i + 1].Text)) || _items.Exists(o => o.Text.StartsWith("hydr", StringComparison.Ordinal) || o.Text.StartsWith("hidr", StringComparison.Ordinal) || o.Text.StartsWith("idraul", StringComparison.Ordinal));

    /// <summary>"Cable inside the box": an article behind it, and not of the frame.</summary>
    private bool IsInsideOther(int i) =>
        i + 2 < _items.Count && _items[i + 1].Clause == _items[i].Clause && WordLists.ScanSmallerIsInsideOther.Contains(_items[i + 1].Text)
        && !(_items[i + 2].Is("t:frame") || _items[i + 2].Is("t:post") || _items[i + 2].Is("t:dropper") || _items[i + 2].Is("t:seattube"));

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
        if (!Values.ContainsKey("thread") && Doubts.Count == 0 && Anywhere("m:pinch") is >= 0 and int pinch)
        {
            int size = _items.FindIndex(o => o is { IsNumber: true, Used: false, Value: 20 });
            Keep("thread", "own", size < 0 ? pinch : Math.Min(size, pinch), size < 0 ? pinch : Math.Max(size, pinch));
        }

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
