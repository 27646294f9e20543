using FsCheck;
using FsCheck.Xunit;
using Lugwork.Planning;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Planning;

/// <summary>What holds for every request.</summary>
public sealed class ChoiceLaws
{
    private static ChoiceRequest Draw(int seed) => ChoiceBench.Draw(new Random(seed), slots: 8, offers: 6, hardness: 0);

    private static ChoiceRequest DrawAll(int seed) => ChoiceBench.DrawAll(new Random(seed), slots: 6, offers: 5, hardness: 0);

    /// <summary>All that is told of a build, judged anew.</summary>
    private static void Passes(ChoiceRequest request, ChosenBuild chosen)
    {
        Verdict worst = request.AllowsMeasuring ? Verdict.NeedsMeasuring : Verdict.NeedsPart;
        FitReport report = Slot.All.Where(s => s != Slot.Frame && chosen.Build[s] is not null).Aggregate(Build.From(chosen.Build.Frame), (b, s) => b.With(chosen.Build[s]!, s)).Check();
        Assert.True(report.IsComplete && report.Verdict != Verdict.NotJudged && report.Verdict <= worst, report.ToString());
        Assert.Same(request.Build.Frame, chosen.Build.Frame);
        Assert.Same(request.Build[Slot.Rider], chosen.Build[Slot.Rider]);
        Assert.Equal(request.Build.SmallPartsThere, chosen.Build.SmallPartsThere);
        Assert.Equal(Slot.All.Where(s => s != Slot.Rider && chosen.Build[s] is not null), chosen.Parts.Select(p => p.Slot).OrderBy(s => s.Number));
        Assert.All(chosen.Parts, p => Assert.Same(p.Part, chosen.Build[p.Slot]));
        Assert.Equal(chosen.Price.Amount, chosen.ToBuy.Sum(p => p.Price!.Value.Amount) + chosen.Bridges.Sum(b => b.Price?.Amount ?? 0));
        Assert.All(request.Wishes, w => Assert.True(w.Name.StartsWith("keep", StringComparison.Ordinal) ? ReferenceEquals(request.Build[w.Slot], chosen.Build[w.Slot]) : w.IsMetBy(chosen.Build[w.Slot]!)));
        Assert.Equal(Slot.All.Where(s => s != Slot.Frame && request.Build[s] is not null && !ReferenceEquals(request.Build[s], chosen.Build[s])), chosen.LeftOff.Select(o => o.Slot));
        string[] items = [.. chosen.Parts.Select(p => p.Item).OfType<string>()];
        Assert.Equal(items.Length, items.Distinct().Count());
    }

    [Property(MaxTest = 30)]
    public void Whatever_is_asked_the_build_passes_its_check_and_keeps_its_rider_and_notes(DoNotSize<int> seed)
    {
        ChoiceRequest request = DrawAll(seed.Item);
        BuildChooser chooser = BuildChooser.Of(request);
        ChoiceResult best = chooser.CheapestFew(5);
        ChoiceResult lightest = chooser.Lightest();
        Assert.All(best.Builds, b => Passes(request, b));
        Assert.All(lightest.Builds, b => Passes(request, b));
        if (lightest.Best is { } light)
        {
            UnitsNet.Mass cap = light.Mass!.Value + UnitsNet.Mass.FromGrams(150);
            ChosenBuild capped = chooser.CheapestUnder(cap).Best!;
            Passes(request, capped);
            Assert.True(capped.Mass!.Value.Milligrams <= cap.Milligrams + 0.5 && capped.Price.Amount >= best.Best!.Price.Amount);
            ChosenBuild under = chooser.LightestUnder(capped.Price).Best!;
            Passes(request, under);
            Assert.True(under.Price.Amount <= capped.Price.Amount && under.Mass!.Value.Milligrams <= capped.Mass!.Value.Milligrams + 0.5);
            Assert.All(chooser.PriceMassFront(4).Builds, b => Passes(request, b));
        }
    }

    /// <summary>Front and rear are two articles; at one end, or where there are no ends, a bridge that two joints asked for would be paid for twice.</summary>
    [Fact]
    public void One_bridge_is_asked_for_by_one_joint_of_an_end()
    {
        int asked = 0;
        for (int seed = 0; seed < 1_000; seed++)
        {
            Random random = new(seed);
            ChoiceBench bench = ChoiceBench.All[seed % ChoiceBench.All.Length];
            Build build = seed % 3 == 0 ? Bicycles.Any(random) : bench.Slots.Where(_ => random.Next(3) == 0).Aggregate(bench.Bicycle, (b, s) => b.With(Any(bench, s, random), s));
            // A tyre has a tube or a tubeless valve, and the sleeve in the rim's hole is for the one that is there.
            build = build[Slot.FrontInnerTube] is null ? build : build.Without(Slot.FrontTubelessValve);
            build = build[Slot.RearInnerTube] is null ? build : build.Without(Slot.RearTubelessValve);
            foreach (IGrouping<string, Fit> bridge in build.Check().Findings.Where(f => f.Verdict == Verdict.NeedsPart).SelectMany(f => f.Tell().Bridges.Select(b => (b.Id, Fit: f))).GroupBy(p => p.Id, p => p.Fit))
            {
                string[] ends = [.. bridge.Select(f => f.Joint!.Id.Split('-')[0]).Select(e => e is "front" or "rear" or "upper" ? e : e is "shock" ? "lower" : "")];
                Assert.True(ends.Distinct().Count() == ends.Length && (ends.Length == 1 || !ends.Contains("")), $"{bridge.Key}: {string.Join(", ", bridge.Select(f => f.Joint!.Id))}");
                asked++;
            }
        }

        Assert.True(asked >= 420, $"{asked} bridges");
    }

    private static Part Any(ChoiceBench bench, Slot slot, Random random)
    {
        Part[] all = [.. Enum.GetValues<ChoiceBench.Kind>().SelectMany(k => bench.Of(slot, k))];
        return all[random.Next(all.Length)];
    }

    /// <summary>The chooser checks its builds by itself; here they are put together and judged anew from what is told of them.</summary>
    [Property(MaxTest = 60)]
    public void A_chosen_build_is_complete_and_passes_its_check(DoNotSize<int> seed)
    {
        ChoiceRequest request = Draw(seed.Item);
        foreach (ChosenBuild chosen in BuildChooser.Of(request).CheapestFew(5).Builds)
        {
            Build anew = chosen.Parts.Where(p => p.Slot != Slot.Frame).Aggregate(request.Build[Slot.Rider] is { } rider ? Build.From(request.Build.Frame).With(rider) : Build.From(request.Build.Frame), (b, p) => b.With(p.Part, p.Slot));
            FitReport report = anew.Check();
            Assert.True(report.IsComplete && report.Verdict is Verdict.Fits or Verdict.NeedsPart, report.ToString());
            Assert.All(report.Findings, f => Assert.True(f.Verdict is Verdict.Fits or Verdict.NeedsPart));
            Assert.Equal(chosen.Price.Amount, chosen.ToBuy.Sum(p => p.Price!.Value.Amount) + chosen.Bridges.Sum(b => b.Price!.Value.Amount));
            Assert.All(request.Wishes, w => Assert.Same(request.Build[w.Slot], anew[w.Slot]));
        }
    }

    [Property(MaxTest = 20)]
    public void The_order_of_offers_moves_no_price_and_the_same_order_repeats_the_answer(DoNotSize<int> seed)
    {
        ChoiceRequest request = Draw(seed.Item);
        ChoiceOffer[] shuffled = [.. request.Offers];
        new Random(seed.Item).Shuffle(shuffled);
        ChoiceResult first = BuildChooser.Of(request).CheapestFew(4);
        ChoiceResult again = BuildChooser.Of(request).CheapestFew(4);
        ChoiceResult other = BuildChooser.Of(request with { Offers = [.. shuffled] }).CheapestFew(4);
        Assert.Equal(first.Builds.Select(b => b.Price), other.Builds.Select(b => b.Price));
        Assert.Equal(first.Builds.SelectMany(b => b.Parts).Select(p => p.Id), again.Builds.SelectMany(b => b.Parts).Select(p => p.Id));
    }

    [Property(MaxTest = 20)]
    public void An_offer_more_makes_it_no_dearer_and_a_wish_no_cheaper(DoNotSize<int> seed)
    {
        ChoiceRequest request = Draw(seed.Item);
        ChoiceRequest less = request with { Offers = [.. request.Offers.Where((_, i) => i % 6 != 5)] };
        ChosenBuild? all = BuildChooser.Of(request).Cheapest().Best;
        ChosenBuild? some = BuildChooser.Of(less).Cheapest().Best;
        Assert.True(some is null || all!.Price.Amount <= some.Price.Amount);
        if (all is not null)
        {
            ChoiceOffer bought = all.ToBuy[0];
            ChoiceWish another = ChoiceWish.That<Part>(bought.Slot, "another part", p => !ReferenceEquals(p, bought.Part));
            ChosenBuild? wished = BuildChooser.Of(request with { Wishes = request.Wishes.Add(another) }).Cheapest().Best;
            Assert.True(wished is null || wished.Price.Amount >= all.Price.Amount);
        }
    }

    /// <summary>The bound rises, the best falls, and they meet.</summary>
    [Property(MaxTest = 20)]
    public void The_progress_of_a_cap_closes_on_the_answer(DoNotSize<int> seed)
    {
        BuildChooser chooser = BuildChooser.Of(Draw(seed.Item));
        if (chooser.Lightest().Best is not { } lightest)
        {
            return;
        }

        Steps steps = new();
        ChoiceResult result = chooser.CheapestUnder(lightest.Mass!.Value + UnitsNet.Mass.FromGrams(200), steps);
        Assert.Equal(result.Best!.Price, steps.All[^1].Price);
        Assert.Equal(result.Bound, steps.All[^1].PriceBound);
        Assert.All(steps.All, s => Assert.True(s.PriceBound!.Value.Amount <= result.Best.Price.Amount && s.Price!.Value.Amount >= result.Best.Price.Amount));
        Assert.Equal(steps.All.OrderByDescending(s => s.Price!.Value.Amount).Select(s => s.Price), steps.All.Select(s => s.Price));
        Assert.Equal(result.Bound, result.Best.Price);
    }

    private sealed class Steps : IProgress<ChoiceProgress>
    {
        public List<ChoiceProgress> All { get; } = [];

        public void Report(ChoiceProgress value) => All.Add(value);
    }

    /// <summary>Forks and wheels of one key require the same slots beside any others.</summary>
    [Fact]
    public void What_is_required_follows_from_the_keys_of_fork_and_wheels()
    {
        foreach (ChoiceBench bench in ChoiceBench.All)
        {
            Frame frame = bench.Bicycle.Frame;
            Fork[] forks = [.. Parts(bench, Slot.Fork).Cast<Fork>()];
            Wheel[] wheels = [.. Parts(bench, Slot.FrontWheel).Concat(Parts(bench, Slot.RearWheel)).Cast<Wheel>()];
            Assert.All(forks.GroupBy(BicycleKind.KeyOf), g => Assert.Single(g.Select(f => string.Join(' ', wheels.Take(6).Select(w => string.Join(',', BicycleKind.Required(frame, f, w, w))))).Distinct()));
            Assert.All(wheels.GroupBy(BicycleKind.KeyOf), g => Assert.Single(g.Select(w => string.Join(' ', forks.Take(6).Select(f => string.Join(',', BicycleKind.Required(frame, f, w, wheels[0])) + string.Join(',', BicycleKind.Required(frame, f, wheels[0], w))))).Distinct()));
        }
    }

    private static IEnumerable<Part> Parts(ChoiceBench bench, Slot slot) => Enum.GetValues<ChoiceBench.Kind>().SelectMany(k => bench.Of(slot, k));
}
