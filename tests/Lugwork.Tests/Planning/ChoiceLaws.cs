using FsCheck;
using FsCheck.Xunit;
using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>What holds for every request.</summary>
public sealed class ChoiceLaws
{
    private static ChoiceRequest Draw(int seed) => ChoiceBench.Draw(new Random(seed), slots: 8, offers: 6, hardness: 0);

    /// <summary>The chooser checks its builds by itself; here they are put together and judged anew from what is told of them.</summary>
    [Property(MaxTest = 60)]
    public void A_chosen_build_is_complete_and_passes_its_check(DoNotSize<int> seed)
    {
        ChoiceRequest request = Draw(seed.Item);
        foreach (ChosenBuild chosen in BuildChooser.Of(request).Best(5).Builds)
        {
            Build anew = chosen.Parts.Where(p => p.Slot != Slot.Frame).Aggregate(request.Build[Slot.Rider] is { } rider ? Build.From(request.Build.Frame).With(rider) : Build.From(request.Build.Frame), (b, p) => b.With(p.Part, p.Slot));
            FitReport report = anew.Check();
            Assert.True(report.IsComplete && report.Verdict is Verdict.Fits or Verdict.NeedsPart, report.ToString());
            Assert.All(report.Fits, f => Assert.True(f.Verdict is Verdict.Fits or Verdict.NeedsPart));
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
        ChoiceResult first = BuildChooser.Of(request).Best(4);
        ChoiceResult again = BuildChooser.Of(request).Best(4);
        ChoiceResult other = BuildChooser.Of(request with { Offers = [.. shuffled] }).Best(4);
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
