using System.Globalization;
using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>Requests made from whole bicycles that fit: offers are their parts with a field or two changed, so that they nearly go together, some of them by a bridge, some but for a system check.</summary>
internal sealed class ChoiceBench
{
    private static readonly string[] Files = ["01-hardtail-trail", "04-full-suspension-trail", "08-road-rim-steel", "11-road-disc-wired", "14-gravel-single-ring", "17-touring-cantilever", "27-mixed-wheels-by-design"];

    private static readonly Lazy<ChoiceBench[]> Made = new(() => [.. Files.Select(f => new ChoiceBench(Stated(File.ReadAllText(Path.Combine(Root(), "tests", "Lugwork.Tests", "Builds", "Whole", f + ".json")))))]);

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

    /// <summary>As a shop has the parts: what was read on the bicycle is on none of them, and what was cut or measured is stated.</summary>
    private static Build Stated(string file)
    {
        System.Text.Json.Nodes.JsonObject json = System.Text.Json.Nodes.JsonNode.Parse(file)!.AsObject();
        json.Remove("asBuilt");
        return BuildFile.Read(json.ToJsonString()).WithoutReadings();
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
    public static ChoiceRequest Draw(Random random, int slots, int offers, int hardness) => Draw(random, slots, offers, hardness, []);

    private static ChoiceRequest Draw(Random random, int slots, int offers, int hardness, Slot[] first)
    {
        ChoiceBench bench = All[random.Next(All.Length)];
        Slot[] open = bench.Pick(random, slots, [.. first.Where(bench._changed.ContainsKey)]);
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

                int price = kind switch { Kind.Fits => random.Next(30, 90), Kind.Bridged => random.Next(1, 30), Kind.SystemOnly => random.Next(1, 40), _ => random.Next(1, 70) };
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

    private static readonly (Slot Front, Slot Rear)[] Ends = [(Slot.FrontRotor, Slot.RearRotor), (Slot.FrontTyre, Slot.RearTyre), (Slot.FrontCaliper, Slot.RearCaliper), (Slot.FrontBrakeLever, Slot.RearBrakeLever), (Slot.FrontThruAxle, Slot.RearThruAxle)];

    /// <summary>
    /// The same with all else that a request can say: owned parts that may go, offers without a price or owned, wishes over values, things that are there once, articles over two slots, small parts that are
    /// there, joints that may need measuring, bridges that may have no price, and at times both rotors on carriers, which are two of one bridge.
    /// </summary>
    public static ChoiceRequest DrawAll(Random random, int slots, int offers, int hardness)
    {
        ChoiceRequest drawn = Draw(random, slots, offers, hardness, random.Next(3) == 0 ? [Slot.FrontRotor, Slot.RearRotor] : []);
        List<ChoiceOffer> list = [.. drawn.Offers];
        Slot[] open = [.. list.Select(o => o.Slot).Distinct()];
        Build build = drawn.Build;
        System.Collections.Immutable.ImmutableDictionary<Slot, UnitsNet.Mass> masses = drawn.OwnedMasses;
        System.Collections.Immutable.ImmutableDictionary<Slot, string> items = [];
        foreach (Slot slot in open.Where(_ => random.Next(3) == 0))
        {
            ChoiceOffer owned = list.Last(o => o.Slot == slot);
            list.Remove(owned);
            build = build.With(owned.Part, slot);
            masses = masses.SetItem(slot, owned.Mass!.Value);
        }

        foreach ((Slot front, Slot rear) in Ends.Where(e => open.Contains(e.Front) && open.Contains(e.Rear)))
        {
            if (front == Slot.FrontRotor && random.Next(2) == 0)
            {
                Part rotor = OnCarrier(list.Find(o => o.Slot == front)?.Part ?? build[front]!, front);
                build = Splined(Splined(build, Slot.FrontWheel), Slot.RearWheel);
                list.Add(new("carried front", front, rotor) { Price = new(random.Next(1, 9), "EUR"), Mass = UnitsNet.Mass.FromGrams(120) });
                list.Add(new("carried rear", rear, rotor) { Price = new(random.Next(1, 9), "EUR"), Mass = UnitsNet.Mass.FromGrams(120) });
            }
            else if (build[front] is { } there && random.Next(2) == 0)
            {
                items = items.Add(front, "the one");
                list.Add(new("the one", rear, there) { IsOwned = true, Item = "the one", Mass = masses[front] });
            }
            else if (list.FindIndex(o => o.Slot == front && o.Price is not null) is >= 0 and int at && random.Next(2) == 0)
            {
                list[at] = list[at] with { Item = "once" };
                list.Add(new("once", rear, list[at].Part) { Price = list[at].Price, Item = "once", Mass = list[at].Mass });
            }
        }

        if (open.Length > 1 && random.Next(4) == 0)
        {
            foreach (Slot slot in open.OrderBy(_ => random.Next()).Take(2))
            {
                int at = list.FindIndex(o => o.Slot == slot && o.Item is null);
                list[at < 0 ? 0 : at] = list[at < 0 ? 0 : at] with { Article = "whole" };
            }
        }

        for (int i = 0; i < list.Count; i++)
        {
            list[i] = random.Next(10) switch { 0 => list[i] with { Price = null }, 1 => list[i] with { IsOwned = true }, _ => list[i] };
        }

        List<ChoiceWish> wishes = [.. drawn.Wishes.Where(_ => random.Next(20) != 0)];
        if (random.Next(2) == 0)
        {
            Slot slot = open[random.Next(open.Length)];
            ChoiceOffer[] of = [.. list.Where(o => o.Slot == slot)];
            KeyValuePair<string, string>[] fields = of.Length == 0 ? [] : [.. PartForms.Of(slot).Write(of[random.Next(of.Length)].Part).Where(f => f.Key != "name")];
            if (fields.Length > 0)
            {
                KeyValuePair<string, string> wished = fields[random.Next(fields.Length)];
                wishes.Add(ChoiceWish.That<Part>(slot, $"{wished.Key} {wished.Value}", p => PartForms.Of(slot).TextOf(p, wished.Key) == wished.Value));
            }
        }

        if (random.Next(3) == 0)
        {
            build = JointTable.All.SelectMany(j => j.Relation.Bridges.Where(b => b.Kind != BridgeKind.ShopWork).Select(b => $"{j.Id}:{b.Id}")).Distinct().Where(_ => random.Next(8) == 0).Aggregate(build, (b, id) => b.WithSmallPart(id));
        }

        bool measuring = random.Next(4) == 0;
        return drawn with
        {
            Build = measuring && build[Slot.Rider] is null && random.Next(2) == 0 ? build.With(Rider.Read("70 kg"), Slot.Rider) : build,
            Offers = [.. list],
            Wishes = [.. wishes],
            OwnedMasses = masses,
            OwnedItems = items,
            AllowsMeasuring = measuring,
            AllowsUnpricedBridges = random.Next(5) == 0,
        };
    }

    private static Build Splined(Build build, Slot wheel) =>
        build[wheel] is { } part && PartForms.Of(wheel).TrySet(part, "rotorFixing", "center-lock", new Evidence(EvidenceKind.Stated, "center-lock"), out Part splined, out _) ? build.With(splined, wheel) : build;

    private static Part OnCarrier(Part rotor, Slot slot)
    {
        foreach ((string field, string text) in new[] { ("fixing", "six-bolt"), ("carrier", "none"), ("lockring", "none") })
        {
            PartForms.Of(slot).TrySet(rotor, field, text, new Evidence(EvidenceKind.Stated, text), out rotor, out _);
        }

        return rotor;
    }

    /// <summary>Neighbours of one slot first, so that joints and checks lie between open slots.</summary>
    private Slot[] Pick(Random random, int count, Slot[] first)
    {
        Slot[] all = [.. Slots];
        List<Slot> picked = first.Length > 0 ? [.. first] : [all[random.Next(all.Length)]];
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
            : report.Findings.All(f => f.Verdict <= Verdict.NeedsPart || f.Joint!.Slots.Length > 2) ? Kind.SystemOnly : Kind.Bad;
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
