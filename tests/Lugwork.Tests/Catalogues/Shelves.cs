using Lugwork.Catalogues;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Catalogues;

/// <summary>Shelves of parts that nearly mate, and the plain way to ask them: each part in the build, judged joint by joint.</summary>
internal static class Shelves
{
    public static List<CatalogueRow> Rows(Random random, int count, Slot? slot = null)
    {
        List<CatalogueRow> rows = [];
        HashSet<(Slot, long)> used = [];
        while (rows.Count < count)
        {
            Slot here = slot ?? Slot.All[random.Next(Slot.All.Length)];
            long id = random.Next(4) == 0 ? random.NextInt64(long.MinValue, long.MaxValue) : random.Next(-50, 4 * count);
            if (used.Add((here, id)))
            {
                rows.Add(new(id, here, Part(here, random)));
            }
        }

        return rows;
    }

    // Parts whose figures stand at a boundary; drawing such a bicycle takes long.
    private static readonly Lazy<Build[]> Boundary = new(() =>
    {
        Random random = new(11);
        return [.. Enumerable.Range(0, 40).Select(_ => BoundaryBicycles.Draw(random))];
    });

    /// <summary>A part as a shop has it: one that says two things at once is no part of a catalogue.</summary>
    public static Part Part(Slot slot, Random random)
    {
        Part part;
        do
        {
            part = Any(slot, random);
        }
        while (PartForms.Of(slot).WrongOf(part) is not null);

        // What was read on a bicycle is on no shelf.
        return TakenWith.Alone(part, slot);
    }

    private static Part Any(Slot slot, Random random)
    {
        Part part = random.Next(6) == 0 && Boundary.Value[random.Next(Boundary.Value.Length)][slot] is { } figures ? figures
            : slot == Slot.Frame ? Bicycles.Frame(random) : Bicycles.Part(slot, random);
        part = random.Next(8) == 0 ? Outside(slot, part, random) : part;
        PartCondition[] conditions = [.. PartCondition.All];
        return slot == Slot.Rider || random.Next(3) > 0 ? part : part with { Condition = Known<PartCondition>.Of(conditions[random.Next(conditions.Length)]) };
    }

    /// <summary>The part with one of its fields, whichever, outside the library.</summary>
    private static Part Outside(Slot slot, Part part, Random random)
    {
        IPartForm form = PartForms.Of(slot);
        Candidates[] codes = new Candidates[form.OwnFields.Length];
        form.ReadCodes(part, codes);
        codes[random.Next(codes.Length)] = new(random.Next(4) == 0 ? KnownState.FrameSpecific : KnownState.NotCovered, 0, 0, null);
        return form.OfCodes(codes);
    }

    public static PartCatalogue Of(params IEnumerable<CatalogueRow> rows)
    {
        PartCatalogue catalogue = new();
        CatalogueReport report = catalogue.Load(rows);
        Assert.Empty(report.Problems);
        return catalogue;
    }

    /// <summary>The verdict that the build with a part gives of the joints of a slot; what of the part no joint reads and lies outside the library is asked about.</summary>
    public static Verdict Plain(Build with, Slot index, Slot aim, params Slot[] asked)
    {
        Verdict worst = Verdict.NotJudged;
        foreach (Fit fit in with.Check().Findings.Where(f => f.Joint!.Slots.Contains(aim) || f.Joint.Slots.All(s => s == index)))
        {
            worst = fit.Verdict > worst ? fit.Verdict : worst;
        }

        bool ask = asked.Any(s => UnjudgedFields.Asked(new PartAlone(s, with[s]!)) is not null);
        return ask && worst < Verdict.NeedsMeasuring ? Verdict.NeedsMeasuring : worst;
    }

    /// <summary>What the answer lists and counts, as text, so that two answers can be held beside each other.</summary>
    public static string Told(SlotFitting answer) =>
        $"{answer.Counts} fits {string.Join(",", answer.Fits.Ids)} part {string.Join(",", answer.NeedsPart.Ids)} open {string.Join(",", answer.Open.Select(p => $"{p.Id}{p.Verdict}"))} {answer.IsCapped}";

    /// <summary>The same said from plain verdicts.</summary>
    public static string Told(IEnumerable<(long Id, Verdict Verdict)> judged, Verdict worst, int most)
    {
        (long Id, Verdict Verdict)[] all = [.. judged.OrderBy(j => j.Id)];
        int Number(Verdict verdict) => verdict <= worst ? all.Count(j => j.Verdict == verdict) : 0;
        FitCounts counts = new(Number(Verdict.Fits), Number(Verdict.NeedsPart), Number(Verdict.NeedsMeasuring), all.Count(j => j.Verdict == Verdict.NotJudged), all.Count(j => j.Verdict > worst));
        (long Id, Verdict Verdict)[] open = worst < Verdict.NeedsMeasuring ? [] : [.. all.Where(j => j.Verdict is Verdict.NeedsMeasuring or Verdict.NotJudged)];
        long[] Ids(Verdict verdict) => [.. all.Where(j => j.Verdict == verdict && verdict <= worst).Select(j => j.Id)];
        bool capped = Ids(Verdict.Fits).Length > most || Ids(Verdict.NeedsPart).Length > most || open.Length > most;
        return $"{counts} fits {string.Join(",", Ids(Verdict.Fits).Take(most))} part {string.Join(",", Ids(Verdict.NeedsPart).Take(most))} open {string.Join(",", open.Take(most).Select(p => $"{p.Id}{p.Verdict}"))} {capped}";
    }
}
