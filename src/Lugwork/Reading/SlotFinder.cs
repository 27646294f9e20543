namespace Lugwork.Reading;

/// <summary>Finds the part that a line is about by its first word for one, and the end that it goes to.</summary>
internal static class SlotFinder
{
    public static Slot? Of(List<SpecItem> items)
    {
        bool front = false;
        bool rear = false;
        bool upper = false;
        bool lower = false;
        for (int i = 0; i < items.Count; i++)
        {
            SpecItem item = items[i];

            // "Voor" is Dutch for "front" and for "for": before a figure it is the latter, or not sure.
            front |= item.Is("m:front") && (!(item.Text == "voor" && i + 1 < items.Count && items[i + 1].IsNumber) || IsFrontOfTyres(items, i));
            rear |= item.Is("m:rear");
            upper |= item.Is("m:upper");
            lower |= item.Is("m:lower");
        }

        // "Attacco: 31,8 mm": the Italian stem, a mount everywhere but at the head of a line.
        if (items.Count > 1 && items[0].Text == "attacco" && items[0].Terms.IsEmpty && items[1].IsSign(':'))
        {
            return Slot.Stem;
        }

        // "Cintre de course, 25,8": a bar, by words that say on a lever what it clamps to.
        if (items.Count > 1 && items[0].Is("v:ControlClamp=drop-bar-lever") && items[0].Text is "cintre" or "cintres" or "guidon" or "rennlenker" or "manillar" or "manubrio" or "piega" or "stuur")
        {
            return Slot.Handlebar;
        }

        bool nuts = items.Exists(i => i.Is("t:nuts"));
        foreach (SpecItem item in items)
        {
            foreach (string term in item.Terms)
            {
                if ((term == "t:axle" && nuts) || (term == "t:rails" && !items.Exists(i => i.Is("t:saddle"))))
                {
                    continue;
                }

                // How the cable of a dropper runs is told of it alone.
                if (term == "t:dropper" && !items.Exists(i => i.IsNumber) && items.Exists(i => i.Terms.Any(t => t.StartsWith("v:DropperRouting=", StringComparison.Ordinal))))
                {
                    return Slot.Dropper;
                }

                if (term == "t:bb" && IsOpenPedalier(item, items))
                {
                    return null;
                }

                if (Named(term) is { } slot)
                {
                    return slot;
                }

                if (term == "t:shifter" && front == rear && HandOf(items) is { } hand)
                {
                    return hand;
                }

                (Slot Front, Slot Rear)? pair = Ends(term);
                if (pair is { } ends)
                {
                    return front == rear ? null : front ? ends.Front : ends.Rear;
                }

                if (term == "t:brake" && front != rear && Brake(items) is { } brake)
                {
                    return front ? brake.Front : brake.Rear;
                }

                if (term == "t:bearing")
                {
                    return upper == lower ? null : upper ? Slot.UpperBearing : Slot.LowerBearing;
                }
            }
        }

        return ByWords(items, front, rear);
    }

    /// <summary>"Banden: voor 40-622": behind the word for tyres and a colon, before a size that no tyre is for.</summary>
    private static bool IsFrontOfTyres(List<SpecItem> items, int i) =>
        i > 1 && i + 3 < items.Count && items[i - 1].IsSign(':') && items[i - 2].Is("t:tyre") && items[i + 2].IsSign('-') && items[i + 3] is { IsNumber: true, Value: >= 200 };

    /// <summary>"Pédalier carré", "pédalier 24 mm": in French the cranks or what they turn in, so that the word alone names neither. A shell, its width or a Spanish word settles it; a heading alone is left as it is.</summary>
    private static bool IsOpenPedalier(SpecItem item, List<SpecItem> items) =>
        item.Text == "pedalier" && !item.IsFraction
        && items.Exists(i => i.IsNumber || i.Terms.Any(t => t.StartsWith("v:SpindleSeat=", StringComparison.Ordinal)))
        && !items.Exists(i => i.Text is "cuadrado" or "cuadradillo" or "eje" or "caja" or "rosca" || i is { IsNumber: true, Value: 68 or 70 or 71 or 73 or 83 or 86 or 86.5m or 89.5m or 92 } || i.Terms.Any(t => t.StartsWith("v:ShellFamily=", StringComparison.Ordinal) || t.StartsWith("v:Shell=", StringComparison.Ordinal)));

    /// <summary>The brakes that a line without the name of a part is about, by their kind.</summary>
    public static (Slot Front, Slot Rear)? BrakeOf(List<SpecItem> items) => Brake(items);

    /// <summary>The parts of both ends that a word names; null for a part that there is once, and for wheels, which differ.</summary>
    public static (Slot Front, Slot Rear)? EndsOf(SpecItem item, List<SpecItem> items)
    {
        foreach (string term in item.Terms)
        {
            if (term is "t:tyre" or "t:tube" or "t:rotor" or "t:caliper" or "t:lever")
            {
                return Ends(term);
            }

            if (term == "t:brake")
            {
                return Brake(items);
            }
        }

        return null;
    }

    /// <summary>A line that names no part by its name: a brake by its kind, an axle by its thread, what only one part has.</summary>
    private static Slot? ByWords(List<SpecItem> items, bool front, bool rear)
    {
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i].Is("t:hanger"))
            {
                return Slot.Frame;
            }

            if (items[i].Terms.Any(t => t.StartsWith("v:SteererPreload=", StringComparison.Ordinal)) && items.Count <= 6)
            {
                return Slot.Preload;
            }

            if (items[i].Terms.Any(t => t.StartsWith("v:CrownType=", StringComparison.Ordinal)) && items[i].IsFraction)
            {
                return Slot.Fork;
            }

            bool thread = items[i] is { IsNumber: true, Glued: true, Value: 12 or 15 } && i > 0 && items[i - 1].Text == "m";
            if (thread && front != rear && items.Exists(o => o.Is("m:thru")))
            {
                return front ? Slot.FrontThruAxle : Slot.RearThruAxle;
            }
        }

        if (IsRiderSpeaking(items))
        {
            return Slot.Rider;
        }

        if (items.Exists(IsCassetteOfBody))
        {
            return Slot.Cassette;
        }

        if (items.Exists(IsShapedBar) && items.Exists(i => i is { IsNumber: true, Value: 25.4m or 26 or 31.7m or 31.8m or 35 }) && !items.Exists(i => i.Is("t:shifter") || i.Is("t:lever")))
        {
            return Slot.Handlebar;
        }

        return front != rear && Brake(items) is { } brake ? front ? brake.Front : brake.Rear : null;
    }

    /// <summary>"Right shifter": the rear gears are shifted by the right hand, the front ones by the left.</summary>
    private static Slot? HandOf(List<SpecItem> items)
    {
        bool right = items.Exists(i => WordLists.SlotFinderHandOf.Contains(i.Text));
        bool left = items.Exists(i => WordLists.SlotFinderHandOf2.Contains(i.Text));
        return right == left ? null : right ? Slot.RearShifter : Slot.FrontShifter;
    }

    /// <summary>"I weigh 82 kg", "ich wiege 95 Kilo": who speaks rides.</summary>
    private static bool IsRiderSpeaking(List<SpecItem> items) =>
        items.Count is > 2 and < 10 && items[0].Text is "i" or "ich" or "je" or "ik" or "yo" or "io" && items[1].Text is "weigh" or "wiege" or "pese" or "weeg" or "peso" && items.Exists(i => i.Unit is "kg" or "lb");

    /// <summary>"Cassette XD": a cassette by the body that it goes on.</summary>
    internal static bool IsCassetteOfBody(SpecItem item) =>
        item.Text is "cassette" or "cassettes" or "kassette" or "kassetten" or "casete" or "cassetta" && item.IsFraction && item.Terms.Any(t => t.StartsWith("v:FreehubBody=", StringComparison.Ordinal));

    /// <summary>"Drop bar", "cintre route": a bar by its shape.</summary>
    private static bool IsShapedBar(SpecItem item) => item.IsFraction && item.Terms.Any(t => t.StartsWith("v:ControlClamp=", StringComparison.Ordinal));

    /// <summary>A brake that its kind puts on the rim or on a disc; the mount of a frame says none.</summary>
    private static (Slot Front, Slot Rear)? Brake(List<SpecItem> items)
    {
        foreach (SpecItem item in items)
        {
            foreach (string term in item.Terms)
            {
                if (term.StartsWith("v:BrakeType=disc", StringComparison.Ordinal))
                {
                    return (Slot.FrontCaliper, Slot.RearCaliper);
                }

                if (term is "v:BrakeType=cantilever" or "v:BrakeType=direct-pull" or "v:BrakeType=rim-caliper" or "v:BrakeType=centre-pull" or "v:BrakeType=u-brake" or "v:BrakeType=mini-direct-pull")
                {
                    return (Slot.FrontRimBrake, Slot.RearRimBrake);
                }
            }
        }

        // "Rem voor: hydraulisch, flat mount": a fluid, or a mount beside the word for one, is of a disc.
        bool fluid = items.Exists(i => i.Is("v:BrakeFluid=mineral-oil") || i.Is("v:BrakeFluid=glycol-ether") || (i.Kind == SpecTokenKind.Word && i.Text.StartsWith("hydraul", StringComparison.Ordinal)) || i.Text is "hidraulico" or "idraulico");
        bool foot = items.Exists(i => i.Is("m:pm") || i.Is("m:fm"));
        if (fluid && (foot || items.Exists(i => i.Is("t:brake") || i.Is("t:caliper"))))
        {
            return (Slot.FrontCaliper, Slot.RearCaliper);
        }

        return null;
    }

    private static Slot? Named(string term) => term switch
    {
        "t:frame" => Slot.Frame,
        "t:fork" => Slot.Fork,
        "t:cassette" => Slot.Cassette,
        "t:chain" => Slot.Chain,
        "t:chainring" => Slot.Chainring,
        "t:crank" => Slot.Crankset,
        "t:bb" => Slot.BottomBracket,
        "t:pedal" => Slot.Pedals,
        "t:rearmech" => Slot.RearDerailleur,
        "t:frontmech" => Slot.FrontDerailleur,
        "t:headset" => Slot.Headset,
        "t:stem" => Slot.Stem,
        "t:bar" => Slot.Handlebar,
        "t:grip" => Slot.Grips,
        "t:seatclamp" => Slot.SeatClamp,
        "t:post" => Slot.Seatpost,
        "t:saddle" => Slot.Saddle,
        "t:shock" => Slot.Shock,
        "t:guidetabs" => Slot.ChainGuide,
        "t:dropper" => Slot.Seatpost,
        "t:rider" => Slot.Rider,
        "m:quill" => Slot.Stem,
        _ => null,
    };

    private static (Slot Front, Slot Rear)? Ends(string term) => term switch
    {
        "t:wheel" or "t:hub" or "t:rim" => (Slot.FrontWheel, Slot.RearWheel),
        "t:tyre" => (Slot.FrontTyre, Slot.RearTyre),
        "t:tube" => (Slot.FrontInnerTube, Slot.RearInnerTube),
        "t:rotor" => (Slot.FrontRotor, Slot.RearRotor),
        "t:caliper" => (Slot.FrontCaliper, Slot.RearCaliper),
        "t:lever" => (Slot.FrontBrakeLever, Slot.RearBrakeLever),
        "t:shifter" => (Slot.FrontShifter, Slot.RearShifter),
        "t:rimtape" => (Slot.FrontRimTape, Slot.RearRimTape),
        "t:nuts" => (Slot.FrontAxleNuts, Slot.RearAxleNuts),
        "t:axle" => (Slot.FrontThruAxle, Slot.RearThruAxle),
        "t:tubelessvalve" => (Slot.FrontTubelessValve, Slot.RearTubelessValve),
        _ => null,
    };
}
