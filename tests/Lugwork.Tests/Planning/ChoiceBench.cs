using System.Globalization;
using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>Requests made from whole bicycles that fit: offers are their parts with a field or two changed, so that they nearly go together, some of them by a bridge, some but for a system check.</summary>
internal sealed class ChoiceBench
{
    private static readonly string[] Files = ["01-hardtail-trail", "04-full-suspension-trail", "08-road-rim-steel", "11-road-disc-wired", "14-gravel-single-ring", "17-touring-cantilever", "27-mixed-wheels-by-design"];

    private static readonly Lazy<ChoiceBench[]> Made = new(() => [.. Files.Select(f => new ChoiceBench(BuildFile.Read(File.ReadAllText(Path.Combine(Root(), "tests", "Lugwork.Tests", "Builds", "Whole", f + ".json")))))]);

    private readonly Dictionary<Slot, List<Part>[]> _changed = [];

    private ChoiceBench(Build bicycle)
    {
        Bicycle = bicycle;
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame && s != Slot.Rider && bicycle[s] is not null))
        {
            _changed[slot] = [[bicycle[slot]!], [], [], []];
            foreach (Part part in Changed(bicycle, slot))
            {
                _changed[slot][(int)KindOf(bicycle.With(part, slot))].Add(part);
            }
        }
    }

    /// <summary>What a changed part makes of the bicycle that it came from.</summary>
    public enum Kind
    {
        Fits,
        Bridged,
        SystemOnly,
        Bad,
    }

    /// <summary>A bicycle that fits, as it is or with bridges.</summary>
    public Build Bicycle { get; }

    public static ChoiceBench[] All => Made.Value;

    public IEnumerable<Slot> Slots => _changed.Keys;

    /// <summary>Parts of one slot by what they make of the bicycle.</summary>
    public IReadOnlyList<Part> Of(Slot slot, Kind kind) => _changed[slot][(int)kind];

    /// <summary>A request over some slots: the bicycle keeps the rest of its parts.</summary>
    public static ChoiceRequest Draw(Random random, int slots, int offers, int hardness)
    {
        ChoiceBench bench = All[random.Next(All.Length)];
        Slot[] open = bench.Pick(random, slots);
        Build build = open.Aggregate(bench.Bicycle, (b, s) => b.Without(s));
        List<ChoiceOffer> list = [];
        foreach (Slot slot in open)
        {
            for (int i = 0; i < offers; i++)
            {
                Kind kind = bench.Draw(random, slot, i == 0 ? hardness : 3 + (hardness / 6));
                Part part = bench.Of(slot, kind)[random.Next(bench.Of(slot, kind).Count)];
                if (random.Next(4) == 0)
                {
                    part = bench.Mixed(random, slot, part);
                }

                int price = kind switch { Kind.Fits => random.Next(30, 90), Kind.Bridged => random.Next(5, 60), Kind.SystemOnly => random.Next(1, 40), _ => random.Next(1, 70) };
                list.Add(new($"{slot.Key}-{i}", slot, part) { Price = new(price, "EUR"), Mass = UnitsNet.Mass.FromGrams(random.Next(20, 400)) });
            }
        }

        return new()
        {
            Build = build,
            Offers = [.. list],
            Bridges = [.. JointTable.All.SelectMany(j => j.Relation.Bridges).Select(b => b.Id).Distinct().Where(_ => random.Next(12) != 0).Select(id => new ChoiceBridgePrice(id, new(random.Next(1, 15), "EUR")) { Mass = UnitsNet.Mass.FromGrams(random.Next(0, 30)) })],
            Wishes = [.. Slot.All.Where(s => s != Slot.Frame && build[s] is not null).Select(ChoiceWish.Keep)],
            OwnedMasses = System.Collections.Immutable.ImmutableDictionary.CreateRange(Slot.All.Where(s => s != Slot.Rider && build[s] is not null).Select(s => KeyValuePair.Create(s, UnitsNet.Mass.FromGrams(100)))),
        };
    }

    /// <summary>Neighbours of one slot first, so that joints and checks lie between open slots.</summary>
    private Slot[] Pick(Random random, int count)
    {
        Slot[] all = [.. Slots];
        List<Slot> picked = [all[random.Next(all.Length)]];
        while (picked.Count < Math.Min(count, all.Length))
        {
            Slot[] near = [.. JointTable.All.Where(j => j.Slots.Any(picked.Contains) && j.IsFilled(Bicycle)).SelectMany(j => j.Slots).Where(s => _changed.ContainsKey(s) && !picked.Contains(s))];
            Slot[] from = near.Length > 0 && random.Next(8) != 0 ? near : [.. all.Where(s => !picked.Contains(s))];
            picked.Add(from[random.Next(from.Length)]);
        }

        return [.. picked.OrderBy(s => s.Number)];
    }

    private Kind Draw(Random random, Slot slot, int hardness)
    {
        Kind kind = random.Next(10 + hardness) switch { < 3 => Kind.Fits, < 6 => Kind.Bridged, < 9 => Kind.SystemOnly, _ => Kind.Bad };
        return Of(slot, kind).Count > 0 ? kind : Kind.Fits;
    }

    /// <summary>A part with one field of another of the same slot.</summary>
    private Part Mixed(Random random, Slot slot, Part part)
    {
        Kind kind = (Kind)random.Next(4);
        if (Of(slot, kind).Count == 0)
        {
            return part;
        }

        KeyValuePair<string, string>[] fields = [.. PartForms.Of(slot).Write(Of(slot, kind)[random.Next(Of(slot, kind).Count)]).Where(f => f.Key != "name")];
        if (fields.Length == 0)
        {
            return part;
        }

        KeyValuePair<string, string> field = fields[random.Next(fields.Length)];
        return PartForms.Of(slot).TrySet(part, field.Key, field.Value, new Evidence(EvidenceKind.Stated, field.Value), out Part mixed, out _) ? mixed : part;
    }

    private static Kind KindOf(Build build)
    {
        FitReport report = build.Check();
        return !report.IsComplete ? Kind.Bad
            : report.Verdict == Verdict.Fits ? Kind.Fits
            : report.Verdict == Verdict.NeedsPart ? Kind.Bridged
            : report.Fits.All(f => f.Verdict <= Verdict.NeedsPart || f.Joint!.Slots.Length > 2) ? Kind.SystemOnly : Kind.Bad;
    }

    /// <summary>The part of a slot with one field changed: to what the same field is elsewhere, to values of the joints' domains, or by some millimetres.</summary>
    private static IEnumerable<Part> Changed(Build bicycle, Slot slot)
    {
        Part part = bicycle[slot]!;
        foreach (KeyValuePair<string, string> field in PartForms.Of(slot).Write(part).Where(f => f.Key != "name"))
        {
            HashSet<string> texts = [];
            foreach (JointInput input in JointTable.All.SelectMany(j => j.Inputs).Where(i => i.Slot == slot && i.Field == field.Key))
            {
                texts.UnionWith(input.Domain.Where((_, n) => input.Domain.Length <= 12 || n % (input.Domain.Length / 12) == 0).Select(c => input.Show(c)));
            }

            if (decimal.TryParse(field.Value, NumberStyles.Number, CultureInfo.InvariantCulture, out decimal figure))
            {
                texts.UnionWith(new[] { -40m, -10m, -3m, -1m, -0.4m, 0.4m, 1m, 3m, 10m, 40m }.Select(by => figure + by).Where(f => f > 0).Select(f => f.ToString(CultureInfo.InvariantCulture)));
            }

            texts.Remove(field.Value);
            if (slot.Number % 3 == 0)
            {
                texts.Add("unknown");
            }

            foreach (string text in texts.Order(StringComparer.Ordinal))
            {
                if (PartForms.Of(slot).TrySet(part, field.Key, text, new Evidence(EvidenceKind.Stated, text), out Part changed, out _))
                {
                    yield return changed;
                }
            }
        }
    }

    private static string Root()
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "Lugwork.slnx")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new DirectoryNotFoundException("Lugwork.slnx is in no folder above the tests");
    }
}
