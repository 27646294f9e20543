using System.Globalization;
using Lugwork.Planning;
using Lugwork.Tests.Planning;

namespace Lugwork.Oracles;

/// <summary>What is chosen, against CP-SAT on requests made of real parts, with real joints, system checks and bridges.</summary>
public sealed class ChoiceOracleTests(ITestOutputHelper output)
{
    private const int Instances = 320;

    /// <summary>Two of five with all that a request can say.</summary>
    private static ChoiceRequest Draw(int seed) => seed % 5 < 2
        ? ChoiceBench.DrawAll(new Random(seed), slots: 4 + (seed % 6), offers: 3 + (seed % 3), hardness: 0)
        : ChoiceBench.Draw(new Random(seed), slots: 5 + (seed % 7), offers: 4 + (seed % 3), hardness: seed % 3 == 0 ? 54 : 0);

    [Fact]
    public void The_cheapest_build_costs_what_the_solver_finds()
    {
        int bridged = 0;
        int impossible = 0;
        int system = 0;
        int owned = 0;
        int twice = 0;
        int clique = 0;
        long table = 0;
        for (int seed = 0; seed < Instances; seed++)
        {
            ChoiceRequest request = Draw(seed);
            ChoiceResult result = BuildChooser.Of(request).Cheapest();
            SolverModel.Answer answer = SolverModel.Solve(request);
            Assert.True(result.Status != ChoiceStatus.Bound && result.Best?.Price.Steps == answer.Price, $"seed {seed}: {result}, the solver says {answer.Price}");
            bridged += result.Best?.Bridges.Length > 0 ? 1 : 0;
            impossible += answer.Price is null ? 1 : 0;
            system += SolverModel.Solve(request, systemChecks: false).Price != answer.Price ? 1 : 0;
            owned += result.Best?.Parts.Any(p => p.IsOwned && p.Slot != Slot.Frame && !request.Wishes.Any(w => w.Slot == p.Slot)) == true ? 1 : 0;
            twice += result.Best?.Bridges.GroupBy(b => b.Bridge.Id).Any(g => g.Count() > 1) == true ? 1 : 0;
            clique = Math.Max(clique, result.LargestClique);
            table = Math.Max(table, result.LargestTable);
        }

        string shares = string.Create(CultureInfo.InvariantCulture, $"{bridged} with a bridge in the optimum, {impossible} impossible, {system} decided by a system check, {owned} with an owned part that could have gone, {twice} with one bridge twice");
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Instances} instances: {shares}; largest clique {clique}, largest table {table}"));
        Assert.True(bridged * 2 >= Instances && impossible * 5 >= Instances && system * 5 >= Instances && owned * 10 >= Instances && twice > 0, shares);
    }

    [Fact]
    public void The_cheapest_build_under_a_mass_cap_costs_what_the_solver_finds()
    {
        int capped = 0;
        int binding = 0;
        for (int seed = 1_000; capped < 60; seed++)
        {
            ChoiceRequest request = Draw(seed);
            BuildChooser chooser = BuildChooser.Of(request);
            if (chooser.Lightest().Best is not { } lightest || chooser.Cheapest().Best is not { } cheapest)
            {
                continue;
            }

            long least = (long)Math.Round(lightest.Mass!.Value.Milligrams);
            long cap = least + (100_000 * new Random(seed).Next(-1, 8));
            ChoiceResult result = chooser.CheapestUnder(UnitsNet.Mass.FromMilligrams(cap));
            SolverModel.Answer answer = SolverModel.Solve(request, mostMass: cap);
            Assert.True(result.Status != ChoiceStatus.Bound && result.Best?.Price.Steps == answer.Price, $"seed {seed}: {result}, the solver says {answer.Price}");
            capped++;
            binding += answer.Price > cheapest.Price.Steps ? 1 : 0;
        }

        output.WriteLine($"{capped} caps, of which {binding} made it dearer");
        Assert.True(binding >= 20, $"{binding} of {capped} caps made it dearer");
    }
}
