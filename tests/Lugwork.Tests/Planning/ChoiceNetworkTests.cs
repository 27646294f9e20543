using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>The elimination on bare numbers, with room for its tables and without.</summary>
public sealed class ChoiceNetworkTests
{
    [Fact]
    public void With_room_and_without_the_answer_is_that_of_brute_force_and_a_bound_is_never_above_it()
    {
        int bounds = 0;
        int loose = 0;
        int never = 0;
        for (int seed = 0; seed < 400; seed++)
        {
            ChoiceNetwork network = Draw(new Random(seed));
            long[] all = [.. All(network)];
            foreach ((long Cells, long Steps) limits in new[] { (1L << 20, 1L << 40), (3L, 1L << 40), (1L << 20, 12L), (2L, 6L) })
            {
                ChoiceElimination elimination = new(network, ChoiceWeights.Price, default, limits);
                Assert.True(all.Length == 0 ? elimination.Bound >= ChoiceEntry.Never || !elimination.IsExact : elimination.Bound <= all[0], $"seed {seed}");
                Assert.True(!elimination.IsExact || all.Length == 0 || elimination.Bound == all[0], $"seed {seed}");
                bounds += elimination.IsExact ? 0 : 1;
                loose += all.Length > 0 && elimination.Bound < all[0] ? 1 : 0;
                ChoiceSearch search = new(network, elimination, ChoiceWeights.Price, default);
                List<long> found = [];
                while (found.Count < 12 && search.Next(long.MaxValue) is { } next)
                {
                    Assert.Equal(network.Cost(next.Chosen).Price, next.Cost);
                    found.Add(next.Cost);
                }

                Assert.Equal(all.Take(12), found);
            }

            never += all.Length == 0 ? 1 : 0;
        }

        Assert.True(bounds >= 200 && loose >= 50 && never is >= 20 and <= 300, $"{bounds} bounds, {loose} loose, {never} without an answer");
    }

    [Fact]
    public void No_choice_through_a_state_goes_below_its_marginal_and_most_reach_it()
    {
        int all = 0;
        int reached = 0;
        for (int seed = 0; seed < 150; seed++)
        {
            ChoiceNetwork network = Draw(new Random(seed));
            ChoiceElimination elimination = new(network, ChoiceWeights.Price, default);
            if (elimination.Bound >= ChoiceEntry.Never)
            {
                continue;
            }

            ChoiceMarginals marginals = new(network, elimination, default);
            for (int variable = 0; variable < network.States.Length; variable++)
            {
                for (int state = 0; state < network.States[variable].Length; state++)
                {
                    long least = Choices(network).Where(c => c[variable].State == state).Select(c => network.Cost(c).Price).Where(p => p < ChoiceEntry.Never).DefaultIfEmpty(ChoiceEntry.Never).Min();
                    Assert.True(marginals.Of[variable][state] <= least, $"seed {seed}: {marginals.Of[variable][state]} for {least}");
                    all++;
                    reached += marginals.Of[variable][state] == least ? 1 : 0;
                }
            }
        }

        Assert.True(reached < all && reached > 0.95 * all, $"{reached} of {all}");
    }

    [Fact]
    public void The_size_that_is_told_is_that_of_the_joins_and_steps_count_at_every_place()
    {
        ChoiceNetwork network = new(
            [[.. Enumerable.Range(0, 10).Select(i => new ChoiceState([i], [0], [i]))], [new([0], [0], [0]), new([1], [0], [1])]],
            [new([0, 1], [[.. Enumerable.Range(0, 10)], [0, 1]], [10, 2], [.. Enumerable.Range(0, 20).Select(i => (long)(i * i % 7))], null)], [], 0, 0);
        ChoiceElimination whole = new(network, ChoiceWeights.Price, default);
        Assert.Equal((true, 2, 2L), (whole.IsExact, whole.LargestClique, whole.LargestTable));

        // Ten classes of one variable, and two of the other beside each.
        Assert.True(new ChoiceElimination(network, ChoiceWeights.Price, default, (1 << 20, 30)).IsExact);
        Assert.False(new ChoiceElimination(network, ChoiceWeights.Price, default, (1 << 20, 29)).IsExact);
    }

    /// <summary>Variables with a few states of one or two entries, and tables over two or three of them, some combinations of which do not go together.</summary>
    internal static ChoiceNetwork Draw(Random random)
    {
        int variables = random.Next(3, 6);
        ChoiceState[][] states = [.. Enumerable.Range(0, variables).Select(_ => Enumerable.Range(0, random.Next(1, 4)).Select(_ =>
        {
            long[] prices = [.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => (long)random.Next(20)).Order()];
            return new ChoiceState(prices, [.. prices.Select(_ => (long)random.Next(20))], [.. prices.Select((_, i) => i)]);
        }).ToArray())];
        List<ChoiceTable> tables = [];
        for (int i = random.Next(2, 7); i > 0; i--)
        {
            int[] scope = [.. Enumerable.Range(0, variables).OrderBy(_ => random.Next()).Take(random.Next(2, 4)).Order()];
            int[] sizes = [.. scope.Select(v => random.Next(1, states[v].Length + 1))];
            int[][] classOf = [.. scope.Select((v, n) => states[v].Select((_, s) => s % sizes[n]).ToArray())];
            long[] price = [.. Enumerable.Range(0, sizes.Aggregate(1, (a, b) => a * b)).Select(_ => random.Next(3) == 0 ? ChoiceEntry.Never : random.Next(10))];
            tables.Add(new(scope, classOf, sizes, price, null));
        }

        return new(states, tables, [], 7, 0);
    }

    internal static IEnumerable<(int State, int Rank)[]> Choices(ChoiceNetwork network)
    {
        IEnumerable<(int State, int Rank)[]> some = [[]];
        foreach (ChoiceState[] states in network.States)
        {
            some = some.SelectMany(c => states.SelectMany((s, n) => s.Price.Select((_, rank) => ((int State, int Rank)[])[.. c, (n, rank)])));
        }

        return some;
    }

    private static IEnumerable<long> All(ChoiceNetwork network) => Choices(network).Select(c => network.Cost(c).Price).Where(p => p < ChoiceEntry.Never).Order();
}
