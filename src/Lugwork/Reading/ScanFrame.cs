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
        ReadTyreLimitApart("largestRearTyre");
        ReadHub("rear", rear: true);
        ReadShell("shell");
        MeasuredBore();
        ReadFrontMount("frontDerailleurMount", needTopic: true);
        ReadBosses("rearBosses");
        SeatTubeBothSides();
        ReadSeatTubeSides();
        ReadSeatTube();
        PostByLetters();
        InsertionByLimit("leastInsertion", 250, "m:min", "m:max");
        InsertionByLimit("mostInsertion", 450, "m:max", "m:min");
        InsertionByVerb();
        ReadRotorLimit("largestRearRotor");
        ReadRingOfFrame();
        ReadHeadTubeSizes();
        ReadSteererOfFrame();
        ReadUpperLimits();
        Words("Hanger", "hanger", i => !IsHangerInDoubt(i) && !(_items[i].Is("v:Hanger=direct-mount") && Clause(i, "t:frontmech")) && (!Only(i, "Hanger") || Clause(i, "t:hanger") || _items[i].Is("v:Hanger=UDH") || _items[i].IsFraction));
        HangerMount();
        Words("ChainGuideMount", "chainGuideTabs", i => _items[i].Is("v:ChainGuideMount=ISCG05") || _items[i].Is("v:ChainGuideMount=ISCG") || _items[i].Is("v:ChainGuideMount=ISCG|ISCG05"));
        Words("RearTriangle", "rearTriangle", i => !OpensToOneSide(i));
        Words("DropoutSlot", "rearDropout", i => !IsTubeAcross(i) && (_items[i].IsFraction || Clause(i, "t:spacing") || AloneInClause(i) || IsBesideSlot(i)));
        Words("CrownType", "forkCrowns", i => CrownSaid(i) && (_items[i] is not { Text: "una" } || Anywhere("t:travel") >= 0) && IsPlainAround(i) && !ComesWithIt());
        Words("CrownsAllowed", "forkCrowns", i => IsPlainAround(i) && !ComesWithIt());
        ForkByLimit();
        Words("CableWay", "headsetCables", i => _items[i].IsFraction && (Clause(i, "t:headset") || _items[i].Is("m:headsetcables") || MentionsHeadset(i)));
        if (Values.TryGetValue("headsetCables", out LineFinding? cables) && cables.Key == "outside" && Anywhere("v:CableWay=outside") is >= 0 and int outside && outside < cables.First)
        {
            Values["headsetCables"] = cables with { Start = _items[outside].Start, First = outside };
        }

        ReadUse();
        Words("BrakeBolt", "rearBrakeHole", i => Clause(i, "t:brake") || Anywhere("t:brake") >= 0);
        NutOfBolt("rearBrakeHole");
        Words("SeatBinder", "binder");
        Words("ShellFace", "shellFace", i => IsOfShell(i) && !(i > 0 && _items[i - 1].Text is "be"));
        Words("DropperEntry", "dropperEntry", i => !Mentions(i, OfClosedHole));
        Words("CableGuide", "cableGuides", i => !SaysOnly() && !Clause(i, "t:frontmech"));
        Words("Material", "material", OfWhole);
        BarePost();
        SeatTubeToldLoosely();
        OutsideOfLists();
    }

    /// <summary>"Punteras que se abren hacia atrás": slots that open to one side, and no stay that parts.</summary>
    private bool OpensToOneSide(int i) =>
        (i + 1 < _items.Count && WordLists.ScanFrameNotNeeded.Contains(_items[i + 1].Text)) ||
        i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && _items[i].Terms.Any(t => t == "v:RearTriangle=opens")
        && (_items[i + 1].Is("m:rear") || (_items[i + 1].Is("m:front") && _items[i + 1].Text != "voor") || WordLists.ScanFrameOpensToOneSide.Contains(_items[i + 1].Text));

    /// <summary>A word that says one or two of anything counts only beside a crown.</summary>
    private bool CrownSaid(int i) => _items[i].IsFraction || Clause(i, "t:crown") || !WordLists.ScanFrameCrownSaid.Contains(_items[i].Text) || (i > 0 && _items[i - 1].Is("t:fork") && _items[i - 1].Clause == _items[i].Clause);

    /// <summary>A phrase of the cables that names the headset in itself.</summary>
    private bool MentionsHeadset(int i) => (_items[i].Is("v:CableWay=through") && _items[i].End - _items[i].Start > 15) || (_items[i].Is("v:CableWay=outside") && _items[i].Text is "not" or "nicht" or "pas" or "no" or "non" or "niet");

    private void ReadFork()
    {
        ReadMount("frontBrake", rear: false);
        ReadAxleThread("frontAxleThread");
        ReadIso("largestFrontTyre", label: i => TopicOf(i) is "t:tyre");
        ReadTyreLimitApart("largestFrontTyre");
        TravelByStroke();
        TravelBehindStroke();
        TravelBySize();
        if (StrokeOrHub() is >= 0 and int stroke)
        {
            Refuse("front", stroke, stroke, "the word is the travel in German and a hub in English", LineDoubtKind.Conflict);
            return;
        }

        ReadHub("front", rear: false);
        ReadBosses("frontBosses");
        ReadRotorLimit("largestFrontRotor");
        ReadCrownSeat();
        ReadSteerer();
        SteererByDiameter();
        ReadSteererLength();
        Words("CrownType", "crowns", CrownSaid);
        Words("RetentionLips", "frontLips");
        if (Values.TryGetValue("frontLips", out LineFinding? lips) && FindMark(lips.First, "m:removed", 0) is >= 0 and int removed)
        {
            (int first, int last) = (Math.Min(lips.First, removed), Math.Max(lips.Last, removed));
            Values["frontLips"] = lips with { Key = "missing", Start = _items[first].Start, End = _items[last].End, First = first, Last = last };
        }

        ReadUse();
        Words("BrakeBolt", "frontBrakeHole", i => Clause(i, "t:brake") || Anywhere("t:brake") >= 0);
        NutOfBolt("frontBrakeHole");
        Words("Material", "steererMaterial", i => !IsOfCrownBehind(i) && (Clause(i, "t:steerermaterial") || Beside(i, "t:steerer") || Beside(i, "t:headtube") || IsOfSteererSaid(i) || IsOfSteererAlone(i) || IsBehindSteererSize(i)));
        SteererLengthBeside();
        Contradicted();
    }

    /// <summary>"Stuurbuis is van carbon", "der Schaft ist aus Alu", "pivot: en acier", and "tubo de carbono", which of a fork is the steerer.</summary>
    private bool IsOfSteererSaid(int i)
    {
        int j = i - 1;
        while (j >= 0 && j >= i - 4 && (_items[j].IsSign(',') || _items[j].IsSign(':') || _items[j].Is("m:nothing") || WordLists.ScanFrameIsOfSteererSaid.Contains(_items[j].Text)))
        {
            j--;
        }

        return j >= 0 && (_items[j].Is("t:steerer") || (_slot == Slot.Fork && _items[j].Text is "tubo" && Anywhere("t:steerer") < 0));
    }

    /// <summary>"Steerer tapered, 1 1/8 to 1.5, carbon": a material in a clause of its own (threaded or not, beside it), in a line about a steerer and nothing else.</summary>
    private bool IsOfSteererAlone(int i)
    {
        // A bare "cromo" is chrome as often as steel.
        int steerer = _slot == Slot.Fork && _items[i] is not { Text: "cromo", IsFraction: false } ? Anywhere("t:steerer") : -1;
        if (steerer < 0 || steerer > i || _items[i].Clause - _items[steerer].Clause > 2)
        {
            return false;
        }

        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item != _items[i] && (item.IsNumber || (item.Kind == SpecTokenKind.Word && item.Text.Length > 3 && !item.Is("m:threaded") && !item.Is("m:threadless"))))
            {
                return false;
            }
        }

        return !_items.Exists(o => (o.IsTopic && !o.Is("t:steerer") && !o.Is("n:cut") && !o.Is("t:length")) || (o.Kind == SpecTokenKind.Word && o.Terms.IsEmpty && o.Text.Length > 4));
    }

    /// <summary>"Canotto conico 1 1/8 - 1 1/2 in carbonio": right behind the size of the steerer that the clause is about.</summary>
    private bool IsBehindSteererSize(int i)
    {
        int size = i > 1 && _items[i - 1].Text is "in" or "de" or "en" or "aus" or "van" or "of" ? i - 2 : i - 1;
        LineFinding? steerer = Values.GetValueOrDefault("steererShape") ?? Values.GetValueOrDefault("steerer");
        return _slot == Slot.Fork && steerer?.Last == size && Clause(steerer.First, "t:steerer") && !(i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && _items[i + 1].IsTopic);
    }

    /// <summary>"Steerer 1 1/8, carbon crown", "carbon legs": in these languages of what stands behind the word.</summary>
    private bool IsOfCrownBehind(int i) =>
        _slot == Slot.Fork && i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && (_items[i + 1].Is("t:crown") || _items[i + 1].Text is "legs" or "blades" or "beine" or "scheiden" or "poten")
        && !(i + 2 < _items.Count && _items[i + 2].Is("t:steerer"));

    /// <summary>"No travel" beside a travel.</summary>
    private void Contradicted()
    {
        if (_denied.Exists(d => d.Is("t:travel")))
        {
            // "Ohne Federweg, Federweg 120 mm": what was taken out is the length itself.
            int other = Enumerable.Range(0, _items.Count).FirstOrDefault(j => Free(j) && TopicOf(j) == "t:travel", -1);
            if (other >= 0 && IsBareDenial("t:travel"))
            {
                Refuse("travel", other, other, "the line says that there is none, and a figure", LineDoubtKind.Conflict);
                return;
            }
        }

        for (int i = 0; i + 1 < _items.Count; i++)
        {
            bool none = (_items[i].Is("t:travel") && _items[i + 1].Is("m:not")) || (_items[i].Is("m:not") && _items[i + 1].Is("t:travel"));
            if (none)
            {
                for (int j = 0; j < _items.Count; j++)
                {
                    if (Free(j) && TopicOf(j) == "t:travel" && (Link(j) != i || _items[j].Clause != _items[i].Clause))
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
}
