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
        ReadSeatTubeSides();
        ReadSeatTube();
        ReadRotorLimit("largestRearRotor");
        ReadRingOfFrame();
        ReadHeadTubeSizes();
        ReadSteererOfFrame();
        ReadUpperLimits();
        Words("Hanger", "hanger", i => !Only(i, "Hanger") || Clause(i, "t:hanger") || _items[i].Is("v:Hanger=UDH") || _items[i].IsFraction);
        HangerMount();
        Words("ChainGuideMount", "guideTabs", i => _items[i].Is("v:ChainGuideMount=ISCG05") || _items[i].Is("v:ChainGuideMount=ISCG") || _items[i].Is("v:ChainGuideMount=ISCG|ISCG05"));
        Words("RearTriangle", "rearTriangle");
        Words("DropoutSlot", "rearSlot", i => _items[i].IsFraction || Clause(i, "t:spacing") || AloneInClause(i));
        Words("CrownType", "forkCrowns", i => _items[i].Text is not ("single" or "dual") || _items[i].IsFraction || Clause(i, "t:crown"));
        Words("CableWay", "headsetCables", i => _items[i].IsFraction && (Clause(i, "t:headset") || MentionsHeadset(i)));
        if (Values.TryGetValue("headsetCables", out LineFinding? cables) && cables.Key == "outside" && Anywhere("v:CableWay=outside") is >= 0 and int outside && outside < cables.First)
        {
            Values["headsetCables"] = cables with { Start = _items[outside].Start, First = outside };
        }

        Words("UseCategory", "use");
        Words("BrakeBolt", "rearBrakeHole", i => Clause(i, "t:brake"));
        Words("SeatBinder", "binder");
        Words("ShellFace", "shellFace");
        Words("DropperEntry", "dropperEntry");
        Words("FrameMaterial", "material", OfWhole);
        BarePost();
        OutsideOfLists();
    }

    /// <summary>A phrase of the cables that names the headset in itself.</summary>
    private bool MentionsHeadset(int i) => (_items[i].Is("v:CableWay=through") && _items[i].End - _items[i].Start > 15) || (_items[i].Is("v:CableWay=outside") && _items[i].Text is "not" or "nicht" or "pas" or "no" or "non" or "niet");

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
        ReadSteererLength();
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

        for (int j = Math.Max(0, i - 2); j < i; j++)
        {
            if (_items[j].Clause == _items[i].Clause && _items[j].Text is "tornillos" or "schrauben" or "bolts" or "screws" or "vis" or "viti" or "bouten" or "bulloni" or "boulons")
            {
                return false;
            }
        }

        string own = _slot == Slot.Frame ? "t:frame" : "t:post";
        if (i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && _items[i + 1].Text is "bolts" or "bolt" or "screws" or "hardware" or "schrauben")
        {
            return false;
        }

        if ((i > 0 && _items[i - 1].Is(own) && _items[i - 1].Clause == _items[i].Clause && (i + 1 >= _items.Count || _items[i + 1].Kind == SpecTokenKind.Sign)) || (i + 1 < _items.Count && _items[i + 1].Is(own) && _items[i + 1].Clause == _items[i].Clause))
        {
            return true;
        }
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
}
