using Lugwork.Planning;
using Lugwork.Tests.Planning;

namespace Lugwork.Benchmarks.Planning;

/// <summary>Shop lists of any length for whole bicycles that fit: 20 open slots, parts with a field or two changed.</summary>
internal static class Shops
{
    public const int Slots = 20;

    public static int Bicycles => ChoiceBench.All.Length;

    public static ChoiceRequest Draw(int bicycle, int offers, int seed)
    {
        ChoiceBench bench = ChoiceBench.All[bicycle];
        Random random = new(seed);
        Slot[] slots = [.. bench.Slots.Where(s => !s.IsOptional).OrderBy(_ => random.Next()).Take(Slots)];
        Build build = slots.Aggregate(bench.Bicycle, (b, s) => b.Without(s));
        List<ChoiceOffer> list = [];
        foreach (Slot slot in slots)
        {
            Part[] pool = [.. Enum.GetValues<ChoiceBench.Kind>().SelectMany(k => bench.Of(slot, k))];
            for (int i = 0; i < offers; i++)
            {
                Part part = pool[random.Next(pool.Length)];
                KeyValuePair<string, string>[] fields = [.. PartForms.Of(slot).Write(pool[random.Next(pool.Length)]).Where(f => f.Key != "name")];
                if (fields.Length > 0 && random.Next(2) == 0)
                {
                    KeyValuePair<string, string> field = fields[random.Next(fields.Length)];
                    part = PartForms.Of(slot).TrySet(part, field.Key, field.Value, new Evidence(EvidenceKind.Stated, field.Value), out Part mixed, out _) ? mixed : part;
                }

                list.Add(new($"{slot.Key}-{i}", slot, part) { Price = new(random.Next(500, 20_000) / 100m, "EUR"), Mass = UnitsNet.Mass.FromGrams(random.Next(20, 900)) });
            }
        }

        return new()
        {
            Build = build,
            Offers = [.. list],
            Bridges = [.. JointTable.All.SelectMany(j => j.Relation.Bridges).Select(b => b.Id).Distinct().Select(id => new ChoiceBridgePrice(id, new(random.Next(1, 15), "EUR")) { Mass = UnitsNet.Mass.FromGrams(random.Next(0, 40)) })],
            Wishes = [.. Slot.All.Where(s => s != Slot.Frame && build[s] is not null).Select(ChoiceWish.Keep)],
            OwnedMasses = System.Collections.Immutable.ImmutableDictionary.CreateRange(Slot.All.Where(s => build[s] is not null).Select(s => KeyValuePair.Create(s, UnitsNet.Mass.FromGrams(100)))),
        };
    }

    /// <summary>The reduced model, as both sides get it: collapsed, and without what is beaten.</summary>
    public static ChoiceNetwork Network(ChoiceRequest request, bool systemChecks, bool masses, int builds = 1)
    {
        ChoiceModel model = BuildChooser.Of(request).PlanOf(masses, default).Model;
        bool[] rules = [.. model.Rules.Select(r => systemChecks || r is not ChoiceJointRule { Joint.IsSystemCheck: true })];
        ChoiceNetwork? network = ChoiceReducer.Of(model, masses, rules);
        network = network is null ? null : ChoiceDominance.Thinned(network, builds, default);
        return network is null ? throw new InvalidOperationException("nothing fits together") : masses ? ChoiceScale.Of(network).Network : network;
    }
}
