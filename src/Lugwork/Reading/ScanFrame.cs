namespace Lugwork.Reading;

/// <summary>Frames and forks.</summary>
internal sealed partial class LineScan
{
    private void ReadFrame()
    {
        ReadCups();
        ReadMount("rearBrake", rear: true);
        ReadAxleThread("rearAxleThread");
        ReadHangerThread();
        ReadShockOfFrame();
        ReadIso("largestRearTyre", label: i => TopicOf(i) is "t:tyre");
        ReadHub("rear", rear: true);
        ReadShell("shell");
        ReadFrontMount("frontMount", needTopic: true);
        ReadBosses("rearBosses");
        ReadSeatTube();
        ReadRotorLimit("largestRearRotor");
        ReadRingOfFrame();
        ReadSteererOfFrame();
        ReadUpperLimits();
        Words("Hanger", "hanger", i => !Only(i, "Hanger") || Clause(i, "t:hanger") || _items[i].Is("v:Hanger=UDH") || _items[i].IsFraction);
        HangerMount();
        Words("ChainGuideMount", "guideTabs", i => _items[i].Is("v:ChainGuideMount=ISCG05") || _items[i].Is("v:ChainGuideMount=ISCG") || _items[i].Is("v:ChainGuideMount=ISCG|ISCG05"));
        Words("RearTriangle", "rearTriangle");
        Words("DropoutSlot", "rearSlot", i => _items[i].IsFraction || Clause(i, "t:spacing") || AloneInClause(i));
        Words("CrownType", "forkCrowns", i => _items[i].Text is not ("single" or "dual") || _items[i].IsFraction || Clause(i, "t:crown"));
        Words("CableWay", "headsetCables", i => _items[i].IsFraction && (Clause(i, "t:headset") || MentionsHeadset(i)));
        Words("UseCategory", "use");
        Words("BrakeBolt", "rearBrakeHole", i => Clause(i, "t:brake"));
        Words("SeatBinder", "binder");
        Words("ShellFace", "shellFace");
        Words("DropperEntry", "dropperEntry");
        Words("FrameMaterial", "material", OfWhole);
        OutsideOfLists();
    }

    /// <summary>A phrase of the cables that names the headset in itself.</summary>
    private bool MentionsHeadset(int i) => _items[i].Is("v:CableWay=through") && _items[i].End - _items[i].Start > 15;

    private void ReadFork()
    {
        ReadMount("frontBrake", rear: false);
        ReadAxleThread("frontAxleThread");
        ReadIso("largestFrontTyre", label: i => TopicOf(i) is "t:tyre");
        ReadHub("front", rear: false);
        ReadBosses("frontBosses");
        ReadRotorLimit("largestFrontRotor");
        ReadCrownSeat();
        ReadSteerer();
        Words("CrownType", "crowns", i => _items[i].Text is not ("single" or "dual") || _items[i].IsFraction || Clause(i, "t:crown"));
        Words("RetentionLips", "frontLips");
        if (Values.TryGetValue("frontLips", out LineFinding? lips) && FindMark(lips.First, "m:removed", 0) is >= 0 and int removed)
        {
            (int first, int last) = (Math.Min(lips.First, removed), Math.Max(lips.Last, removed));
            Values["frontLips"] = lips with { Key = "missing", Start = _items[first].Start, End = _items[last].End, First = first, Last = last };
        }

        Words("UseCategory", "use");
        Words("BrakeBolt", "frontBrakeHole", i => Clause(i, "t:brake"));
        Words("FrameMaterial", "steererMaterial", i => Clause(i, "t:steerermaterial") || Beside(i, "t:steerer"));
        Contradicted();
    }

    /// <summary>"No travel" beside a travel.</summary>
    private void Contradicted()
    {
        for (int i = 0; i + 1 < _items.Count; i++)
        {
            bool none = (_items[i].Is("t:travel") && _items[i + 1].Is("m:not")) || (_items[i].Is("m:not") && _items[i + 1].Is("t:travel"));
            if (none)
            {
                for (int j = 0; j < _items.Count; j++)
                {
                    if (Free(j) && TopicOf(j) == "t:travel" && Link(j) != i)
                    {
                        Refuse("travel", j, j, "the line says that there is none, and a figure", LineDoubtKind.Conflict);
                        return;
                    }
                }
            }
        }
    }

    /// <summary>A topic stands in the clause of an item.</summary>
    private bool Clause(int i, string topic)
    {
        for (int j = Math.Max(0, i - Reach); j < _items.Count && j <= i + Reach; j++)
        {
            if (_items[j].Clause == _items[i].Clause && _items[j].Is(topic))
            {
                return true;
            }
        }

        return false;
    }

    private bool Beside(int i, string topic)
    {
        for (int j = Math.Max(0, i - 2); j < _items.Count && j <= i + 2; j++)
        {
            if (j != i && _items[j].Clause == _items[i].Clause && _items[j].Is(topic))
            {
                return true;
            }
        }

        return false;
    }

    private bool Only(int i, string type)
    {
        foreach (string term in _items[i].Terms)
        {
            if (!term.StartsWith("v:" + type, StringComparison.Ordinal))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A material of the part itself, not of another part that is named beside it.</summary>
    private bool OfWhole(int i)
    {
        if (Clause(i, "n:colour"))
        {
            return false;
        }

        string own = _slot == Slot.Frame ? "t:frame" : "t:post";
        for (int j = Math.Max(0, i - 4); j < _items.Count && j <= i + 3; j++)
        {
            if (j != i && _items[j].Clause == _items[i].Clause && _items[j].IsTopic && TopicIn(_items[j]) is string topic && topic != own && topic != "t:material" && topic != "t:kind" && (j < i || j <= i + 2)
                && !(topic == "t:dropper" && _slot == Slot.Seatpost) && !(topic is "t:length" or "n:weight"))
            {
                return false;
            }
        }

        return i + 1 >= _items.Count || _items[i + 1].Kind != SpecTokenKind.Word || _items[i + 1].Clause != _items[i].Clause || _items[i + 1].Terms.Length > 0 || _items[i + 1].Text.Length < 4 || Clause(i, own) || Clause(i, "t:material");
    }

    /// <summary>A word that is not known stands in its clause.</summary>
    private bool HasUnknownWord(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.Kind == SpecTokenKind.Word && item.Terms.IsEmpty)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>No other word stands in its clause.</summary>
    private bool AloneInClause(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.Kind == SpecTokenKind.Word && item != _items[i] && !item.Is("t:frame") && !item.Is("m:rear"))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>M10 x 1 is the thread of a hanger on a frame.</summary>
    private void ReadHangerThread()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool metric = i > 0 && _items[i - 1].Text == "m" && _items[i].Glued;
            bool hanger = Clause(i, "t:hanger") || Clause(i, "t:rearmech");
            if (Pair(i, out int second) && _items[i].Value == 10 && _items[second].Value is 1 or 26 && (metric || hanger))
            {
                Take("hanger", $"{(_items[second].Value == 1 ? "M" : "")}10x{_items[second].Text}", metric ? i - 1 : i, second);
            }
            else if (Free(i) && metric && _items[i].Value == 10 && hanger)
            {
                Take("hanger", "M10", i - 1, i);
            }
        }
    }

    /// <summary>"Direct mount" of a hanger, and nothing else that is mounted so.</summary>
    private void HangerMount()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i].Is("v:DerailleurMount=direct-mount") && Clause(i, "t:hanger") && !Clause(i, "t:frontmech") && !Negated(i))
            {
                Keep("hanger", "direct-mount", i, i);
            }
        }
    }

    private void ReadSeatTube()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].Value is < 15 or > 60)
            {
                continue;
            }

            string topic = TopicOf(i);
            if (topic is not ("t:seattube" or "t:post" or "t:dropper"))
            {
                continue;
            }

            bool outside = HasMark(i, "m:outside");
            bool inside = HasMark(i, "m:inside") || FindMark(i, "m:inside", 1) >= 0 || topic is not "t:seattube";
            FieldReading clamp = _fields["seatTubeOutside"].Read(_items[i].Text);
            _claimed[Link(i)] = true;
            if (outside)
            {
                Take("seatTubeOutside", _items[i].Text, i, i);
            }
            else if (inside || clamp.Keys.Length != 1)
            {
                Take("seatTube", _items[i].Text, i, i);
            }
            else
            {
                Several("seatTube", [_items[i].Text], i, i, "the figure can be the bore or the outside of the seat tube");
            }
        }
    }

    /// <summary>The figure of a rotor limit: beside a word for rotors, or "up to" behind the brake mount.</summary>
    private void ReadRotorLimit(string field)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].Value is < 120 or > 250)
            {
                continue;
            }

            string topic = TopicOf(i);
            bool rotor = topic is "t:rotor" || Clause(i, "t:rotor");
            bool mount = FindMark(i, "m:pm", 1) >= 0 || FindMark(i, "m:fm", 1) >= 0 || FindMark(i, "m:is", 1) >= 0;
            if (HasMark(i, "m:max") && (topic is "t:brake" or "t:rotor" || rotor || (topic.Length == 0 && mount)))
            {
                Length(field, i);
            }
        }
    }

    private void ReadRingOfFrame()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && TopicOf(i) is "t:chainring" && HasMark(i, "m:max") && _items[i].Unit is "teeth" or "" && _items[i].Value is > 7 and < 81)
            {
                Take("largestRing", _items[i].Text, i, i);
            }
        }
    }

    /// <summary>A size of the steerer is no bore of a frame: several head tubes take it.</summary>
    private void ReadSteererOfFrame()
    {
        if (Values.ContainsKey("headTubeUpper") || Values.ContainsKey("headTubeLower"))
        {
            return;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            bool inch = Free(i) && (_items[i].IsFraction || _items[i].IsInch) && _items[i].Value is >= 1 and < 2;
            bool topic = Clause(i, "t:headtube") || Clause(i, "t:headset") || Clause(i, "t:steerer");
            if ((inch && (TopicOf(i) is "t:headtube" or "t:headset" or "t:steerer" || topic)) || (_items[i].Is("m:tapered") && topic))
            {
                Several("headTubeUpper", ["44", "IS41", "IS42"], i, i, "a size of the steerer is no bore: several head tubes take it");
                return;
            }
        }
    }

    /// <summary>Words for limits of the frame that are said by one word and a figure elsewhere.</summary>
    private void ReadUpperLimits()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && TopicOf(i) is "t:travel" && _items[i].IsMillimetre && (Clause(i, "t:shock") || HasMark(i, "m:rear")) && !Clause(i, "t:fork"))
            {
                _items[i].Used = true;
            }
        }
    }

    /// <summary>Bare figures of a frame say nothing by themselves: they are left over.</summary>
    private void OutsideOfLists()
    {
        if (Values.Count > 0 || Doubts.Count > 0)
        {
            return;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i].IsMillimetre && Link(i) < 0 && _fields["seatTube"].Read(_items[i].Text).Keys is [string key] && _items[i].Value is > 20 and < 36)
            {
                Several("seatTube", [key], i, i, "the figure is common on several places, and the line does not say of what");
                return;
            }
        }
    }
}
