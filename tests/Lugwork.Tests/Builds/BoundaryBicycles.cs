using System.Globalization;

namespace Lugwork.Tests.Builds;

/// <summary>Bicycles whose figures stand at the boundary of several checks at once, and the smallest one that still shows something.</summary>
internal static class BoundaryBicycles
{
    /// <summary>Slot and field of every figure that is moved, with the least and the most it is drawn from.</summary>
    private static readonly (Slot Slot, string Field, int Least, int Most)[] Figures =
    [
        (Slot.Frame, "chainstay", 400, 450), (Slot.Frame, "headTubeLength", 100, 170), (Slot.Frame, "seatTubeLength", 420, 560), (Slot.Frame, "mostInsertion", 150, 260), (Slot.Frame, "leastInsertion", 60, 100),
        (Slot.Frame, "shortestFork", 370, 400), (Slot.Frame, "downTubeDrop", 1, 9), (Slot.Frame, "smallestOuterRing", 44, 53), (Slot.Frame, "frontCentre", 560, 640), (Slot.Frame, "bottomBracketDrop", 55, 80),
        (Slot.Frame, "designAxleToCrown", 375, 400), (Slot.Frame, "headAngle", 70, 73), (Slot.Frame, "wheelbase", 980, 1030), (Slot.Frame, "slackestHeadAngle", 69, 72), (Slot.Frame, "steepestHeadAngle", 71, 74),
        (Slot.Fork, "steererLength", 170, 240), (Slot.Fork, "axleToCrown", 370, 410), (Slot.Fork, "knobRise", 1, 15),
        (Slot.Headset, "upperStack", 8, 20), (Slot.Headset, "lowerStack", 4, 15), (Slot.Stem, "clampHeight", 36, 42), (Slot.Stem, "spacersBelow", 2, 40), (Slot.Stem, "spacersAbove", 2, 10),
        (Slot.Rider, "saddleHeight", 640, 800), (Slot.Saddle, "depth", 35, 55), (Slot.Seatpost, "length", 250, 420), (Slot.Seatpost, "mark", 60, 100),
        (Slot.Crankset, "largestRing", 40, 53), (Slot.Crankset, "smallestRing", 30, 39), (Slot.Crankset, "measuredChainline", 40, 48), (Slot.Crankset, "crankLength", 160, 180), (Slot.RearWheel, "sprocketChainline", 40, 48),
        (Slot.Cassette, "smallestSprocket", 10, 12), (Slot.Cassette, "largestSprocket", 25, 36), (Slot.RearDerailleur, "capacity", 28, 42), (Slot.RearDerailleur, "largestSprocket", 28, 36), (Slot.Chain, "pitches", 100, 120),
        (Slot.Frame, "standover", 740, 820), (Slot.Rider, "inseam", 740, 850), (Slot.Dropper, "travel", 80, 200), (Slot.Dropper, "stack", 40, 70),
        (Slot.Pedals, "height", 10, 25), (Slot.Pedals, "reach", 90, 105), (Slot.Crankset, "qFactor", 140, 180), (Slot.Fork, "largestFrontRotor", 150, 210), (Slot.FrontWheel, "innerWidth", 17, 30),
        (Slot.FrontRotor, "thickness", 1, 2), (Slot.FrontRotor, "leastThickness", 1, 2), (Slot.FrontWheel, "rimWall", 1, 2),
    ];

    private static readonly Slot[] Used = [Slot.Fork, Slot.Headset, Slot.Stem, Slot.Saddle, Slot.Seatpost, Slot.Crankset, Slot.RearWheel, Slot.Cassette, Slot.RearDerailleur, Slot.Chain, Slot.FrontRotor];

    private static readonly string[] States = ["new", "inspected", "used", "worn", "damaged", "crashed", "recalled", "not-known"];

    private static readonly string[] Tyres = ["35-622", "37-622", "40-622", "42-622", "45-622"];

    private static readonly string[] Rotors = ["140", "160", "180", "200", "203"];

    public static Build Draw(Random random)
    {
        Dictionary<Slot, List<KeyValuePair<string, string>>> fields = [];
        foreach ((Slot slot, string field, int least, int most) in Figures)
        {
            if (!fields.TryGetValue(slot, out List<KeyValuePair<string, string>>? own))
            {
                fields[slot] = own = [];
            }

            if (random.Next(25) != 0)
            {
                own.Add(new(field, field is "thickness" or "leastThickness" or "rimWall" ? (least + (random.Next(10) / 10m)).ToString(CultureInfo.InvariantCulture) : random.Next(least, most + 1).ToString(CultureInfo.InvariantCulture)));
            }
        }

        foreach (Slot slot in Used)
        {
            if (random.Next(3) != 0)
            {
                fields[slot].Add(new("condition", States[random.Next(States.Length)]));
            }
        }

        fields[Slot.Fork].Add(new("material", random.Next(2) == 0 ? "carbon" : "aluminium"));
        fields[Slot.Fork].Add(new("steererMaterial", random.Next(2) == 0 ? "carbon" : "steel"));
        fields[Slot.Stem].Add(new("material", random.Next(2) == 0 ? "carbon" : "aluminium"));
        fields[Slot.Chain].Add(new("size", random.Next(2) == 0 ? "11" : "9"));
        fields[Slot.Chain].Add(new("over24Pitches", (304.8m + (random.Next(0, 4) * 0.762m) + (random.Next(-1, 2) * 0.000001m)).ToString(CultureInfo.InvariantCulture)));
        fields[Slot.FrontWheel].Add(new("brakeTrack", "aluminium"));
        fields[Slot.FrontTyre] = [new("size", Tyres[random.Next(Tyres.Length)])];
        fields[Slot.RearTyre] = [new("size", Tyres[random.Next(Tyres.Length)])];
        fields[Slot.Fork].Add(new("travel", "none"));
        fields[Slot.Fork].Add(new("largestFrontTyre", Tyres[random.Next(Tyres.Length)]));
        fields[Slot.Frame].Add(new("largestRearTyre", Tyres[random.Next(Tyres.Length)]));
        fields[Slot.FrontRotor].Add(new("size", Rotors[random.Next(Rotors.Length)]));
        fields[Slot.Seatpost].Add(new("diameter", "27.2"));
        Build build = Of(fields.ToDictionary(p => p.Key, p => (IEnumerable<KeyValuePair<string, string>>)p.Value));

        // Several figures are moved to where some sheet says that a fit begins or ends.
        for (int turn = 0; turn < 6; turn++)
        {
            build = Moved(build, random);
        }

        return build;
    }

    /// <summary>A figure of one part moved to the edge that the needs sheet gives for it, or just beside.</summary>
    private static Build Moved(Build build, Random random)
    {
        Slot[] filled = [.. Slot.All.Where(s => s != Slot.Frame && build[s] is not null)];
        Slot slot = filled[random.Next(filled.Length)];
        NeedLine[] lines = [.. Lines(build, slot).Where(l => l.Least is not null || l.Most is not null)];
        if (lines.Length == 0)
        {
            return build;
        }

        NeedLine line = lines[random.Next(lines.Length)];
        Dimension edge = (random.Next(2) == 0 ? line.Least ?? line.Most : line.Most ?? line.Least)!.Value;
        long code = edge.FitCode + random.Next(-1, 2);
        string text = line.Field == "pitches" ? (code / 12_700_000).ToString(CultureInfo.InvariantCulture) : (code / 1_000_000m).ToString(CultureInfo.InvariantCulture);
        return PartForms.Of(slot).TrySet(build[slot]!, line.Field, text, new Evidence(EvidenceKind.Measured, text), out Part moved, out _) ? build.With(moved, slot) : build;
    }

    /// <summary>What the sheet of the bicycle without a part says of it, where it can say all: the parts beside it are settled.</summary>
    public static IEnumerable<NeedLine> Lines(Build build, Slot slot) =>
        JointTable.All.Where(j => j.Slots.Contains(slot) && j.IsFilled(build) && j.Inputs.All(i => i.Slot == slot || i.Read(build[i.Slot]!).IsSettled))
            .SelectMany(j => j.Inputs.Where(i => i.Slot == slot && !i.IsReadWhenBuilt).Select(i => NeedLine.Of(j, i, build.Without(slot))));

    /// <summary>The first joint of which check and sheet say two things; null where they agree.</summary>
    public static string? Disagreement(Build build)
    {
        FitReport report = build.Check();
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame && build[s] is not null))
        {
            foreach (NeedLine line in Lines(build, slot))
            {
                Candidates own = line.Input.Read(build[slot]!);
                if (own.State != KnownState.Value)
                {
                    continue;
                }

                Verdict judged = report.Findings.Single(f => f.Joint == line.Joint).Verdict;
                Verdict sheet = line.Judge(own.Low);

                // Of a part with one figure in the joint the sheet says all; of one with several, what holds whatever the others are.
                bool alone = line.Joint.Inputs.Count(i => i.Slot == slot) == 1;
                bool twin = line.Joint.Inputs.Any(i => i != line.Input && i.Slot == slot && i.Field == line.Field);

                // Of a field that says a second thing too the sheet tells the best that it can be.
                bool agree = twin ? sheet <= judged || sheet == Verdict.NeedsMeasuring
                    : line.Input.IsLength ? alone ? (judged == Verdict.Fits) == (sheet == Verdict.Fits) : judged != Verdict.Fits || sheet == Verdict.Fits
                    : alone ? judged == sheet
                    : sheet == Verdict.NeedsMeasuring || Fits.Rows.MayRemain(judged, sheet);
                if (!agree)
                {
                    return $"{line.Joint} {slot}.{line.Field}: the check says {judged}, the sheet {sheet}";
                }
            }
        }

        return null;
    }

    /// <summary>The smallest bicycle that still shows it: no part and no field can be taken away.</summary>
    public static Build Shrunk(Build build, Func<Build, bool> shows)
    {
        bool smaller = true;
        while (smaller)
        {
            smaller = false;
            foreach (Build less in Less(build))
            {
                if (shows(less))
                {
                    build = less;
                    smaller = true;
                    break;
                }
            }
        }

        return build;
    }

    private static IEnumerable<Build> Less(Build build)
    {
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame && build[s] is not null))
        {
            yield return build.Without(slot);
        }

        foreach (Slot slot in Slot.All.Where(s => build[s] is not null))
        {
            KeyValuePair<string, string>[] fields = [.. PartForms.Of(slot).Write(build[slot]!)];
            for (int i = 0; i < fields.Length; i++)
            {
                Dictionary<Slot, IEnumerable<KeyValuePair<string, string>>> all = Slot.All.Where(s => build[s] is not null).ToDictionary(s => s, s => PartForms.Of(s).Write(build[s]!));
                all[slot] = fields.Where((_, at) => at != i);
                yield return Of(all);
            }
        }
    }

    private static Build Of(Dictionary<Slot, IEnumerable<KeyValuePair<string, string>>> fields)
    {
        List<SpecProblem> problems = [];
        Build build = Build.From((Frame)PartForms.Frame.ReadProperties(fields.GetValueOrDefault(Slot.Frame) ?? [], "", problems));
        foreach ((Slot slot, IEnumerable<KeyValuePair<string, string>> own) in fields.Where(p => p.Key != Slot.Frame))
        {
            build = build.With(PartForms.Of(slot).ReadProperties(own, "", problems), slot);
        }

        return build;
    }
}
