using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>What is chosen, against every choice one by one.</summary>
public sealed class ChoiceBruteForceTests
{
    private const int Instances = 120;

    private static ChoiceRequest Draw(int seed) => ChoiceBench.Draw(new Random(seed), slots: 5, offers: 4, hardness: seed % 2 == 0 ? 0 : 12);

    [Fact]
    public void The_cheapest_and_the_ten_best_are_those_of_brute_force()
    {
        int impossible = 0;
        int bridged = 0;
        int several = 0;
        for (int seed = 0; seed < Instances; seed++)
        {
            ChoiceRequest request = Draw(seed);
            List<(long Price, long Mass, Build Build)> all = BruteForce.All(request);
            ChoiceResult result = BuildChooser.Of(request).Best(10);
            Assert.True(result.Status == (all.Count == 0 ? ChoiceStatus.Impossible : ChoiceStatus.Optimal), $"seed {seed}: {result.Status}, {all.Count} fit");
            Assert.Equal(all.Take(10).Select(a => a.Price), result.Builds.Select(b => b.Price.Steps));
            Assert.Equal(result.Builds.Length, result.Builds.Select(b => string.Join(',', b.Parts.Select(p => p.Id))).Distinct().Count());
            impossible += all.Count == 0 ? 1 : 0;
            bridged += result.Best?.Bridges.Length > 0 ? 1 : 0;
            several += all.Count > 10 ? 1 : 0;
        }

        Assert.True(impossible >= 10 && bridged >= 30 && several >= 30, $"{impossible} impossible, {bridged} bridged, {several} with more than ten");
    }
}
