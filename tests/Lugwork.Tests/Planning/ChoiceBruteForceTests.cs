using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>What is chosen, against every choice one by one.</summary>
public sealed class ChoiceBruteForceTests
{
    /// <summary>Every second one with all that a request can say.</summary>
    private static ChoiceRequest Draw(int seed, int slots = 5, int offers = 3) =>
        seed % 4 < 2 ? ChoiceBench.Draw(new Random(seed), slots, offers, hardness: seed % 2 == 0 ? 0 : 12) : ChoiceBench.DrawAll(new Random(seed), slots - 1, offers, hardness: seed % 2 == 0 ? 0 : 6);

    [Fact]
    public void The_cheapest_and_the_ten_best_are_those_of_brute_force()
    {
        int impossible = 0;
        int bridged = 0;
        int several = 0;
        for (int seed = 0; seed < 90; seed++)
        {
            ChoiceRequest request = Draw(seed);
            List<(long Price, long Mass, Build Build)> all = BruteForce.All(request);
            ChoiceResult result = BuildChooser.Of(request).CheapestFew(10);
            Assert.True(result.Status == (all.Count == 0 ? ChoiceStatus.Impossible : ChoiceStatus.Optimal), $"seed {seed}: {result.Status}, {all.Count} fit");
            Assert.Equal(all.Take(10).Select(a => a.Price), result.Builds.Select(b => b.Price.Steps));
            Assert.Equal(result.Builds.Length, result.Builds.Select(b => string.Join(',', b.Parts.Select(p => p.Id))).Distinct().Count());
            impossible += all.Count == 0 ? 1 : 0;
            bridged += result.Best?.Bridges.Length > 0 ? 1 : 0;
            several += all.Count > 10 ? 1 : 0;
        }

        Assert.True(impossible >= 10 && bridged >= 20 && several >= 10, $"{impossible} impossible, {bridged} bridged, {several} with more than ten");
    }

    [Fact]
    public void The_front_and_both_caps_are_those_of_brute_force()
    {
        int points = 0;
        for (int seed = 200; seed < 240; seed++)
        {
            ChoiceRequest request = Draw(seed);
            List<(long Price, long Mass, Build Build)> all = BruteForce.All(request, masses: true);
            BuildChooser chooser = BuildChooser.Of(request);
            List<(long Price, long Mass)> front = [];
            foreach ((long price, long mass, _) in all.OrderBy(a => a.Price).ThenBy(a => a.Mass))
            {
                if (front.Count == 0 || mass < front[^1].Mass)
                {
                    front.Add((price, mass));
                }
            }

            Assert.Equal(front, chooser.PriceMassFront(100).Builds.Select(Sums));
            Assert.Equal(front.Take(1), chooser.PriceMassFront(1).Builds.Select(Sums));
            points += front.Count;
            foreach ((long price, long mass) in front)
            {
                Assert.Equal((price, mass), Sums(chooser.CheapestUnder(UnitsNet.Mass.FromMilligrams(mass)).Best!));
                Assert.Equal((price, mass), Sums(chooser.LightestUnder(Price.OfSteps(price, "EUR")).Best!));
            }

            if (front.Count > 0)
            {
                ChoiceResult heavy = chooser.CheapestUnder(UnitsNet.Mass.FromMilligrams(front[^1].Mass - 1));
                Assert.Equal((ChoiceStatus.CapTooLow, (double)front[^1].Mass), (heavy.Status, Math.Round(heavy.MassBound!.Value.Milligrams)));
                ChoiceResult dear = chooser.LightestUnder(Price.OfSteps(front[0].Price - 1, "EUR"));
                Assert.Equal((ChoiceStatus.CapTooLow, front[0].Price), (dear.Status, dear.Bound!.Value.Steps));
                Assert.Equal(front[^1], Sums(chooser.Lightest().Best!));
            }
        }

        Assert.True(points >= 60, $"{points} points");
    }

    private static (long Price, long Mass) Sums(ChosenBuild build) => (build.Price.Steps, (long)Math.Round(build.Mass!.Value.Milligrams));

    [Fact]
    public void A_reason_cannot_be_met_and_nothing_of_it_can_be_left_out()
    {
        int found = 0;
        HashSet<int> sizes = [];
        for (int seed = 400; found < 25; seed++)
        {
            ChoiceRequest request = ChoiceBench.Draw(new Random(seed), 5, 3, 20);
            if (BuildChooser.Of(request).Conflict() is not { } conflict)
            {
                Assert.NotNull(BuildChooser.Of(request).Cheapest().Best);
                continue;
            }

            found++;
            Assert.True(conflict.IsSmallest);
            Assert.False(BruteReason.CanBeMet(request, conflict.Joints, conflict.Wishes, conflict.Required), $"seed {seed}: {conflict}");
            Assert.All(conflict.Joints, j => Assert.True(BruteReason.CanBeMet(request, conflict.Joints.Remove(j), conflict.Wishes, conflict.Required), $"seed {seed}: {j} is idle in {conflict}"));
            Assert.All(conflict.Wishes, w => Assert.True(BruteReason.CanBeMet(request, conflict.Joints, conflict.Wishes.Remove(w), conflict.Required), $"seed {seed}: {w} is idle in {conflict}"));
            Assert.All(conflict.Required, s => Assert.True(BruteReason.CanBeMet(request, conflict.Joints, conflict.Wishes, conflict.Required.Remove(s)), $"seed {seed}: {s} is idle in {conflict}"));
            sizes.Add(conflict.Joints.Length + conflict.Wishes.Length + conflict.Required.Length);
        }

        Assert.True(sizes.Count >= 3, string.Join(", ", sizes));
    }

    [Fact]
    public void What_follows_a_swap_is_what_brute_force_finds()
    {
        Dictionary<int, int> counts = [];
        for (int seed = 0; seed < 90; seed++)
        {
            Random random = new(seed);
            ChoiceRequest drawn = ChoiceBench.Draw(random, 5, 3, 6);
            Slot[] open = [.. drawn.Offers.Select(o => o.Slot).Distinct()];
            Slot[] kept = [.. Slot.All.Where(s => s != Slot.Frame && drawn.Build[s] is not null && random.Next(8) == 0).Take(2)];
            Build build = open.Where(_ => random.Next(6) != 0).Aggregate(Build.From(drawn.Build.Frame), (b, s) => b.With(drawn.Offers.First(o => o.Slot == s).Part, s));
            ChoiceRequest request = drawn with { Build = kept.Aggregate(build, (b, s) => b.With(drawn.Build[s]!, s)), Wishes = [] };
            Slot slot = open[random.Next(open.Length)];
            Part part = request.Offers.Last(o => o.Slot == slot).Part;
            ChangePlan plan = BuildChooser.Of(request).Changes(slot, part);
            (int Count, decimal Price)? best = BruteChange.Best(request, slot, part);
            Assert.Equal(best is null ? ChoiceStatus.Impossible : ChoiceStatus.Optimal, plan.Status);
            Assert.True(best is null || best.Value == (plan.Fewest, plan.Price!.Value.Amount), $"seed {seed}: {best} against {plan} for {plan.Price}, {string.Join(" and ", plan.Bridges)}");
            int count = best?.Count ?? -1;
            counts[count] = counts.GetValueOrDefault(count) + 1;
        }

        Assert.True(counts.Keys.Intersect([-1, 0, 1, 2]).Count() == 4, string.Join(", ", counts));
    }
}
