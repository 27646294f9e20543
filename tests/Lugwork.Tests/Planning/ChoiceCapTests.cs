using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>The least under a cap on bare numbers: with room for tables and without, with masses of bridges, and with rules that are asked late.</summary>
public sealed class ChoiceCapTests
{
    private static readonly (long Cells, long Steps)[] Limits = [(1L << 20, 1L << 40), (3, 1L << 40), (1L << 20, 12), (2, 6)];

    /// <summary>A rule made of a table, asked combination by combination.</summary>
    private sealed class Asked : ChoiceRule
    {
        private readonly ChoiceTable _table;

        public Asked(ChoiceTable table)
            : base(table.Scope)
        {
            _table = table;
            table.ClassOf.CopyTo(ClassOf, 0);
            table.Sizes.CopyTo(Classes, 0);
        }

        public override (long Price, long Mass) Most => (_table.Price.Where(p => p < ChoiceEntry.Never).DefaultIfEmpty().Max(), _table.Mass!.Where(m => m < ChoiceEntry.Never).DefaultIfEmpty().Max());

        protected override (long Price, long Mass) Judge(ReadOnlySpan<int> classes)
        {
            int at = 0;
            for (int i = 0; i < classes.Length; i++)
            {
                at = (at * _table.Sizes[i]) + classes[i];
            }

            return (_table.Price[at], _table.Mass![at]);
        }
    }

    /// <summary>A drawn network of which the tables have masses, with one of them asked late or not.</summary>
    internal static ChoiceNetwork Draw(Random random, bool late)
    {
        ChoiceNetwork drawn = ChoiceNetworkTests.Draw(random);

        // Small numbers, of which many are equal, and variables that meet in no table.
        int by = random.Next(2) == 0 ? 1 : 5;
        ChoiceState[][] states = [.. drawn.States.Select(own => own.Select(s => new ChoiceState([.. s.Price.Select(p => p / by)], [.. s.Mass.Select(m => m / by)], s.Entry)).ToArray())];
        int count = random.Next(3) == 0 ? 2 : drawn.Tables.Count;
        ChoiceTable[] tables = [.. drawn.Tables.Take(count).Select(t => new ChoiceTable(t.Scope, t.ClassOf, t.Sizes, t.Price, [.. t.Price.Select(p => p >= ChoiceEntry.Never ? p : random.Next(8))]))];
        return new(states, [.. late ? tables[1..] : tables], late ? [new(new Asked(tables[0]), tables[0].ClassOf)] : [], 7, 3);
    }

    private static (long Least, long Capped)[] All(ChoiceNetwork network, bool light) =>
        [.. ChoiceNetworkTests.Choices(network).Select(network.Cost).Where(c => c.Price < ChoiceEntry.Never).Select(c => Label(c, light)).Order()];

    private static (long Least, long Capped) Label((long Price, long Mass) cost, bool light) => light ? (cost.Mass, cost.Price) : (cost.Price, cost.Mass);

    private static long[] Caps((long Least, long Capped)[] all) =>
        all.Length == 0 ? [0] : [all.Min(a => a.Capped) - 1, all.Min(a => a.Capped), all[0].Capped - 1, all[0].Capped, all[all.Length / 2].Capped, all.Max(a => a.Capped)];

    [Fact]
    public void With_room_and_without_and_asked_late_the_answer_is_that_of_brute_force()
    {
        int found = 0;
        int low = 0;
        int never = 0;
        for (int seed = 0; seed < 240; seed++)
        {
            bool light = seed % 2 == 0;
            ChoiceNetwork network = Draw(new Random(seed), late: seed % 3 == 0);
            (long Least, long Capped)[] all = All(network, light);
            foreach (long cap in Caps(all).Distinct())
            {
                (long Least, long Capped)[] under = [.. all.Where(a => a.Capped <= cap)];
                ChoiceCapped result = ChoiceCap.Of(network, light, cap, null, default, Limits[seed / 2 % Limits.Length]);
                never += all.Length == 0 ? 1 : 0;
                Assert.Equal(under.Length > 0, result.IsPossible);
                Assert.Equal(under.Length > 0 || all.Length == 0 ? null : all.Min(a => a.Capped), result.LeastCapped);
                if (under.Length > 0)
                {
                    // Of equals the one with less of what is capped.
                    Assert.True(result.IsExact && result.Bound == under[0].Least && Label(network.Cost(result.Chosen!), light) == under[0], $"seed {seed}, cap {cap}: {result}");
                    found++;
                }

                low += result.LeastCapped is null ? 0 : 1;
            }
        }

        Assert.True(found >= 300 && low >= 80 && never >= 3, $"{found} found, {low} under no cap, {never} without an answer");
    }

    [Fact]
    public void A_bound_is_rounded_up_to_the_next_step_and_no_further() =>
        Assert.Equal([0, 0, 1, 1, 2, 2], new[] { (-4L, 3L), (0, 3), (1, 3), (3, 3), (4, 3), (6, 3) }.Select(v => ChoiceCap.Up(v.Item1, v.Item2)));

    /// <summary>The lists alone, without the tries before them, which find the answer of small networks by themselves.</summary>
    [Fact]
    public void The_lists_of_labels_find_what_brute_force_finds_and_nothing_above_their_ceilings()
    {
        int found = 0;
        int ended = 0;
        for (int seed = 0; seed < 240; seed++)
        {
            bool light = seed % 2 == 0;
            ChoiceNetwork network = Draw(new Random(seed), late: false);
            (long Least, long Capped)[] all = All(network, light);
            (long ofLeast, long ofCapped) = (seed / 2 % 4) switch { 0 => (1, 0), 1 => (1, 1), 2 => (3, 2), _ => (0, 1) };
            ChoiceWeights Weights(long least, long capped) => light ? new(capped, least) : new(least, capped);
            foreach (long cap in Caps(all).Distinct())
            {
                (long Least, long Capped)[] under = [.. all.Where(a => a.Capped <= cap)];
                if (under.Length == 0)
                {
                    continue;
                }

                // Ceilings that just reach the answer, and where the least alone is weighed one that lies a step below it.
                foreach (long below in ofCapped == 0 ? (long[])[0, 1] : [0])
                {
                    long most = (ofLeast * under[0].Least) + (ofCapped * cap) - below;
                    ChoiceElimination both = new(network, Weights(ofLeast, ofCapped), default);
                    int[] order = [.. both.Buckets.Select(b => b.Variable)];
                    ChoiceElimination capped = new(network, Weights(0, 1), default, null, order);
                    ChoiceElimination least = new(network, Weights(1, 0), default, null, order);
                    ChoiceLabelPass pass = new(network, light, [Ceiling(both, Weights(ofLeast, ofCapped), most), Ceiling(capped, Weights(0, 1), cap), Ceiling(least, Weights(1, 0), under[0].Least - below)], default);
                    ChoiceCeiling Ceiling(ChoiceElimination elimination, ChoiceWeights weights, long upTo) => new(weights, upTo, elimination, new(network, elimination, default));
                    (int State, int Rank)[]? chosen = pass.Least(cap, out bool gaveUp);
                    Assert.False(gaveUp);
                    Assert.True(below == 0 ? chosen is not null && Label(network.Cost(chosen), light) == under[0] : chosen is null, $"seed {seed}, cap {cap}, {below} below");
                    found += chosen is null ? 0 : 1;
                    ended += network.Tables.Count <= 2 ? 1 : 0;
                }
            }
        }

        Assert.True(found >= 300 && ended >= 100, $"{found} found, {ended} in parts that meet in no table");
    }

    [Fact]
    public void No_choice_is_dearer_or_heavier_than_the_most_that_is_told_and_some_are_close_to_it()
    {
        int close = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            ChoiceNetwork network = Draw(new Random(seed), late: seed % 2 == 0);
            (long Price, long Mass)[] all = [.. ChoiceNetworkTests.Choices(network).Select(network.Cost).Where(c => c.Price < ChoiceEntry.Never)];
            Assert.True(all.All(a => a.Price <= network.MostPrice && a.Mass <= network.MostMass), $"seed {seed}");
            close += all.Any(a => a.Mass == network.MostMass) ? 1 : 0;
        }

        Assert.True(close >= 5, $"{close} reach it");
    }

    [Fact]
    public void Where_the_steps_do_not_suffice_it_is_a_bound_and_what_is_given_is_under_the_cap()
    {
        int bounds = 0;
        int exact = 0;
        int given = 0;
        for (int seed = 0; seed < 240; seed++)
        {
            bool light = seed % 2 == 0;
            ChoiceNetwork network = Draw(new Random(seed), late: seed % 3 == 0);
            (long Least, long Capped)[] all = All(network, light);
            foreach (long cap in Caps(all).Distinct())
            {
                ChoiceCapped result = ChoiceCap.Of(network, light, cap, null, default, Limits[seed / 2 % Limits.Length], steps: 4 + (seed % 12));
                if (all.Length == 0 || all.All(a => a.Capped > cap))
                {
                    Assert.True(result.Chosen is null && !result.IsExact, $"seed {seed}, cap {cap}: {result}");
                    continue;
                }

                long least = all.First(a => a.Capped <= cap).Least;
                Assert.True(result.IsPossible && result.LeastCapped is null && result.Bound <= least, $"seed {seed}, cap {cap}: {result}");
                Assert.True(!result.IsExact || result.Bound == least, $"seed {seed}, cap {cap}: {result}");
                if (result.Chosen is { } chosen)
                {
                    (long ours, long capped) = Label(network.Cost(chosen), light);
                    Assert.True(capped <= cap && ours >= least && (!result.IsExact || ours == least), $"seed {seed}, cap {cap}: {result}");
                    given++;
                }

                bounds += result.IsExact ? 0 : 1;
                exact += result.IsExact ? 1 : 0;
            }
        }

        Assert.True(bounds >= 60 && exact >= 40 && given >= 60, $"{bounds} bounds, {exact} exact, {given} given");
    }
}
