using System.Runtime.CompilerServices;
using Lugwork.Catalogues;
using Lugwork.Tests.Builds;

namespace Lugwork.Benchmarks.Screening;

/// <summary>A part for a database in its best form: all that it is to the joints of a bare frame as one key, and its one figure.</summary>
internal readonly record struct FlatPart(long Id, int Slot, int Key, long Figure);

/// <summary>A key that a frame accepts for a slot, and the range of the figure.</summary>
internal readonly record struct FlatNeed(int Frame, int Slot, int Key, long Least, long Most);

/// <summary>
/// Frames and parts from a seed, in the nineteen slots in which one key and one range of each joint with the frame decide. What the rows leave to the check (a part that
/// may be one of several, a size that no table has) is left out, so that a join gives the very answer of the joints.
/// </summary>
internal sealed class ScreeningShop
{
    public const int SlotCount = 19;

    private const int KindsASlot = 240;
    private const int SampleFrames = 60;

    private static readonly Lazy<ScreeningShop> Only = new(() => new());

    private readonly List<Dictionary<string, int>> _keys = [];
    private readonly List<Joint[]> _joints = [];

    private ScreeningShop()
    {
        Random random = new(20_26);
        FieldPool frames = new(Slot.Frame, random);
        Frames = [.. Enumerable.Range(0, 12_000).Select(_ => (Frame)frames.Draw(random, unknownOneIn: 0))];
        List<(Slot Slot, Part[] Kinds, Joint[] Joints)> slots = [];
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            Joint[] joints = [.. JointTable.All.Where(j => j.Slots.Contains(slot) && j.Slots.All(s => s == slot || s == Slot.Frame) && !j.IsOfCondition)];
            if (joints.Any(j => j.Slots.Length == 2) && Exact(slot, joints, random) is { Length: > 1 } kinds)
            {
                slots.Add((slot, kinds, joints));
            }
        }

        slots = [.. slots.OrderByDescending(s => s.Joints.Length).ThenByDescending(s => s.Kinds.Length).Take(SlotCount)];
        if (slots.Count < SlotCount)
        {
            throw new InvalidOperationException($"only {slots.Count} slots: {string.Join(", ", slots.Select(s => s.Slot))}");
        }

        Slots = [.. slots.Select(s => s.Slot)];
        Kinds = [.. slots.Select(s => s.Kinds)];
        foreach ((Slot slot, Part[] kinds, Joint[] joints) in slots)
        {
            _joints.Add(joints);
            _keys.Add([]);
        }
    }

    public static ScreeningShop Shared => Only.Value;

    public Slot[] Slots { get; }

    public Part[][] Kinds { get; }

    public Frame[] Frames { get; }

    /// <summary>So many parts, each slot in turn; the number of a part is its place.</summary>
    public IEnumerable<CatalogueRow> Rows(int count)
    {
        Random random = new(3);
        for (int i = 0; i < count; i++)
        {
            int slot = i % Slots.Length;
            yield return new(i, Slots[slot], Kinds[slot][random.Next(Kinds[slot].Length)]);
        }
    }

    public static PartCatalogue Catalogue(IEnumerable<CatalogueRow> rows)
    {
        PartCatalogue catalogue = new();
        CatalogueReport report = catalogue.Load(rows);
        return report.Skipped == 0 ? catalogue : throw new InvalidOperationException(report.Problems[0].ToString());
    }

    /// <summary>The rows of part_fit of the joints of a bare frame, as the library writes them.</summary>
    public IEnumerable<PartFitRow> FitRows(IEnumerable<CatalogueRow> rows)
    {
        Dictionary<(Part, Slot), PartFitRow[]> known = new(ByReference.Instance);
        foreach (CatalogueRow row in rows)
        {
            int slot = Array.IndexOf(Slots, row.Slot);
            if (!known.TryGetValue((row.Part, row.Slot), out PartFitRow[]? own))
            {
                known[(row.Part, row.Slot)] = own = [.. FitRelations.OfPart(0, row.Part, row.Slot).Where(r => r.JointId.Length == 0 || _joints[slot].Any(j => j.Id == r.JointId))];
            }

            foreach (PartFitRow one in own)
            {
                yield return one with { PartId = row.Id };
            }
        }
    }

    public FlatPart[] Flat(IEnumerable<CatalogueRow> rows)
    {
        Dictionary<(Part, Slot), FlatPart> known = new(ByReference.Instance);
        List<FlatPart> flat = [];
        foreach (CatalogueRow row in rows)
        {
            if (!known.TryGetValue((row.Part, row.Slot), out FlatPart one))
            {
                int slot = Array.IndexOf(Slots, row.Slot);
                (string key, long figure) = Key(FitRelations.OfPart(0, row.Part, row.Slot), _joints[slot]);
                if (!_keys[slot].TryGetValue(key, out int number))
                {
                    _keys[slot].Add(key, number = _keys[slot].Count);
                }

                known[(row.Part, row.Slot)] = one = new(0, slot, number, figure);
            }

            flat.Add(one with { Id = row.Id });
        }

        return [.. flat];
    }

    /// <summary>Which of the keys that occur each frame accepts. Call it after <see cref="Flat"/>.</summary>
    public FlatNeed[] Needs(int frames)
    {
        List<FlatNeed> needs = [];
        Dictionary<(int, string), List<(int Key, long Least, long Most)>> known = [];
        for (int frame = 0; frame < frames; frame++)
        {
            for (int slot = 0; slot < Slots.Length; slot++)
            {
                string said = string.Join('|', _joints[slot].SelectMany(j => j.Inputs).Where(i => i.Slot == Slot.Frame).Select(i => i.Read(Frames[frame])).Select(c => $"{c.State} {c.Low} {c.High}"));
                if (!known.TryGetValue((slot, said), out List<(int Key, long Least, long Most)>? accepted))
                {
                    known[(slot, said)] = accepted = Accepted(frame, slot);
                }

                needs.AddRange(accepted.Select(a => new FlatNeed(frame, slot, a.Key, a.Least, a.Most)));
            }
        }

        return [.. needs];
    }

    private List<(int Key, long Least, long Most)> Accepted(int frame, int slot)
    {
        ILookup<string, FrameNeedRow> rows = FitRelations.NeedsOf(frame, Build.From(Frames[frame]), Slots[slot], Verdict.NeedsPart).ToLookup(r => r.Key);
        HashSet<string> asked = [.. rows.SelectMany(r => r).Select(r => r.JointId)];
        List<(int, long, long)> accepted = [];
        foreach ((string key, int number) in _keys[slot])
        {
            List<(long Least, long Most)> ranges = [(0, 0)];
            foreach (string one in key.Split('\n'))
            {
                string[] part = one.Split('@');
                if (!asked.Contains(JointOf(part[0])))
                {
                    continue;
                }

                if (part is [_, "axis"])
                {
                    ranges = [.. rows[part[0]].Select(r => (r.LimitMin, r.LimitMax))];
                }
                else if (!rows[part[0]].Any(r => part.Length == 1 || (long.Parse(part[1], System.Globalization.CultureInfo.InvariantCulture) is var at && at >= r.LimitMin && at <= r.LimitMax)))
                {
                    ranges = [];
                }

                if (ranges.Count == 0)
                {
                    break;
                }
            }

            // A key with a figure that this frame does not ask about is met whatever the figure is.
            bool free = key.Contains("@axis", StringComparison.Ordinal) && ranges is [(0, 0)];
            accepted.AddRange(ranges.Select(r => free ? (number, 0L, FitRelations.NoLimit) : (number, r.Least, r.Most)));
        }

        return accepted;
    }

    private static string JointOf(string key) => key.StartsWith(FitRelations.AnyPart, StringComparison.Ordinal) && key.AsSpan().IndexOfAny(':', '=') is < 0 or 3 ? "" : key[..key.AsSpan().IndexOfAny(':', '=')];

    /// <summary>All keys of a part as one; its first figure is the figure, another stands in the key.</summary>
    private static (string Key, long Figure) Key(IEnumerable<PartFitRow> rows, Joint[] joints)
    {
        long figure = 0;
        bool has = false;
        List<string> keys = [];
        foreach (PartFitRow row in rows.Where(r => r.JointId.Length == 0 || joints.Any(j => j.Id == r.JointId)))
        {
            if (!row.Key.EndsWith(":figure", StringComparison.Ordinal))
            {
                keys.Add(row.Key);
            }
            else if (!has)
            {
                (has, figure) = (true, row.LimitMin);
                keys.Add($"{row.Key}@axis");
            }
            else
            {
                keys.Add(FormattableString.Invariant($"{row.Key}@{row.LimitMin}"));
            }
        }

        return (string.Join('\n', keys), figure);
    }

    /// <summary>Kinds of parts of which the rows say what the joints say, for some frames; the proof of each row holds it for all.</summary>
    private Part[] Exact(Slot slot, Joint[] joints, Random random)
    {
        FieldPool pool = new(slot, random);
        Part[] kinds = [.. Enumerable.Range(0, KindsASlot).Select(_ => pool.Draw(random, unknownOneIn: 8)).Distinct()];
        (Build Build, FrameNeedRow[] Needs)[] frames = [.. Frames.Take(SampleFrames).Select(f => (Build.From(f), FitRelations.NeedsOf(0, Build.From(f), slot, Verdict.NeedsPart).ToArray()))];
        bool[] met = new bool[kinds.Length];
        PartCatalogue catalogue = Catalogue(kinds.Select((k, i) => new CatalogueRow(i, slot, k)));
        HashSet<int> wrong = [];
        PartFitRow[][] rows = [.. kinds.Select(k => FitRelations.OfPart(0, k, slot).Where(r => r.JointId.Length == 0 || joints.Any(j => j.Id == r.JointId)).ToArray())];
        wrong.UnionWith(Enumerable.Range(0, kinds.Length).Where(k => rows[k].GroupBy(r => r.JointId).Any(g => g.Count() > 1) || rows[k].Any(r => r.LimitMin != r.LimitMax)));
        foreach ((Build build, FrameNeedRow[] needs) in frames)
        {
            SlotFitting answer = catalogue.View.Fitting(build, slot, int.MaxValue, Verdict.NeedsPart);
            HashSet<long> fits = [.. answer.Fits.Ids, .. answer.NeedsPart.Ids];
            ILookup<string, FrameNeedRow> asked = needs.ToLookup(n => n.JointId);
            for (int kind = 0; kind < kinds.Length; kind++)
            {
                bool joined = asked.All(joint => joint.Any(n => rows[kind].Any(r => r.Key == n.Key && r.LimitMin >= n.LimitMin && r.LimitMin <= n.LimitMax)));
                met[kind] |= joined;
                if (joined != fits.Contains(kind))
                {
                    wrong.Add(kind);
                }
            }
        }

        return met.Any(m => m) ? [.. kinds.Where((_, k) => !wrong.Contains(k))] : [];
    }

    private sealed class ByReference : IEqualityComparer<(Part Part, Slot Slot)>
    {
        public static ByReference Instance { get; } = new();

        public bool Equals((Part Part, Slot Slot) x, (Part Part, Slot Slot) y) => ReferenceEquals(x.Part, y.Part) && x.Slot == y.Slot;

        public int GetHashCode((Part Part, Slot Slot) of) => RuntimeHelpers.GetHashCode(of.Part);
    }
}
