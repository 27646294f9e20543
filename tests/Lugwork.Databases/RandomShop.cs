using System.Collections.Concurrent;
using Lugwork.Catalogues;
using Lugwork.Tests.Builds;
using Lugwork.Tests.Catalogues;

namespace Lugwork.Databases;

/// <summary>A candidate: a part for a slot of a frame.</summary>
internal readonly record struct Candidate(long Frame, string Slot, long Part);

/// <summary>
/// A shop from a seed: parts that nearly mate, half-known ones, ones that may be one of several, and bicycles whose figures stand at, just
/// below and just above a limit. Its two relations, and the answers by the plain join in memory and by the index.
/// </summary>
internal sealed class RandomShop
{
    private const Verdict Worst = Verdict.NeedsMeasuring;

    private static readonly ConcurrentDictionary<int, Lazy<RandomShop>> Shops = new();

    private RandomShop(int seed)
    {
        Random random = new(seed);
        Builds = [.. Enumerable.Range(0, 12).Select(i => (i % 4) switch
        {
            0 => Build.From(Bicycles.Frame(random)),
            1 => Bicycles.Any(random),
            _ => BoundaryBicycles.Draw(random),
        })];
        Parts = Shelves.Rows(random, 500);
        HashSet<(Slot, long)> used = [.. Parts.Select(p => (p.Slot, p.Id))];
        for (int frame = 0; frame < Builds.Length; frame++)
        {
            foreach (Slot slot in Slot.All.Where(s => Builds[frame][s] is { } own && PartForms.Of(s).WrongOf(own) is null && used.Add((s, 1_000_000 + frame))))
            {
                Parts.Add(new(1_000_000 + frame, slot, Builds[frame][slot]!));
            }
        }

        Parts.RemoveAll(p => p.Slot == Slot.Frame);
        PartRows = [.. Parts.SelectMany(p => FitRelations.OfPart(p.Id, p.Part, p.Slot))];
        NeedRows = [.. Builds.SelectMany((b, frame) => FitRelations.NeedsOf(frame, b, Worst))];
    }

    /// <summary>The shop of a seed, drawn once: it is never changed.</summary>
    public static RandomShop Of(int seed) => Shops.GetOrAdd(seed, s => new(() => new(s))).Value;

    public Build[] Builds { get; }

    public List<CatalogueRow> Parts { get; }

    public PartFitRow[] PartRows { get; }

    public FrameNeedRow[] NeedRows { get; }

    /// <summary>The join as the relations define it, in memory.</summary>
    public HashSet<Candidate> Joined => field ??= Join();

    private HashSet<Candidate> Join()
    {
        ILookup<(string, string), PartFitRow> rows = PartRows.ToLookup(r => (r.SlotKey, r.Key));
        HashSet<Candidate> joined = [];
        foreach (IGrouping<(long FrameId, string Slot), FrameNeedRow> asked in NeedRows.GroupBy(n => (n.FrameId, n.SlotKey)))
        {
            int joints = asked.Select(n => n.JointId).Distinct().Count();
            joined.UnionWith(asked
                .SelectMany(n => rows[(n.SlotKey, n.Key)].Where(p => p.LimitMin <= n.LimitMax && p.LimitMax >= n.LimitMin).Select(p => (p.PartId, n.JointId)))
                .Distinct().GroupBy(met => met.PartId).Where(met => met.Count() == joints)
                .Select(met => new Candidate(asked.Key.FrameId, asked.Key.Slot, met.Key)));
        }

        return joined;
    }

    /// <summary>Those of some candidates that the check confirms, each with its verdict.</summary>
    public HashSet<(Candidate, Verdict)> Confirmed(IEnumerable<Candidate> candidates)
    {
        Dictionary<(string, long), CatalogueRow> parts = Parts.ToDictionary(p => (p.Slot.Key, p.Id));
        HashSet<(Candidate, Verdict)> confirmed = [];
        foreach (Candidate candidate in candidates)
        {
            CatalogueRow row = parts[(candidate.Slot, candidate.Part)];
            Verdict verdict = Shelves.Plain(Builds[candidate.Frame].With(row.Part, row.Slot), row.Slot, row.Slot, row.Slot);
            if (verdict <= Worst)
            {
                confirmed.Add((candidate, verdict));
            }
        }

        return confirmed;
    }

    /// <summary>What the index lists, with verdicts.</summary>
    public HashSet<(Candidate, Verdict)> Indexed()
    {
        CatalogueView view = Shelves.Of(Parts).View;
        return [.. Builds.SelectMany((build, frame) => view.Slots.SelectMany(slot =>
        {
            SlotFitting answer = view.Fitting(build, slot, int.MaxValue, Worst);
            return answer.Fits.Concat(answer.NeedsPart).Concat(answer.Open).Select(p => (new Candidate(frame, slot.Key, p.Id), p.Verdict));
        }))];
    }
}
