using System.Collections.Immutable;
using Lugwork.Planning;
using Lugwork.Tests.Builds;
using UnitsNet;
using static Lugwork.Tests.Planning.ChoiceScenarioTests;

namespace Lugwork.Tests.Planning;

/// <summary>Unknown masses and prices, large sums, order, and what is said where nothing is found.</summary>
public sealed class ChoiceEdgeTests
{
    private const string Shim = "seatpost-shim-26.8-to-27.2";

    private static ChoiceRequest Weighed(Mass? shim)
    {
        ChoiceRequest request = Finish([Post("27.2", 49.90m) with { Mass = Mass.FromGrams(250) }, Post("26.8", 31.50m) with { Mass = Mass.FromGrams(240) }, Post("27.2", 10m)], (Shim, 12m));
        return request with
        {
            Bridges = [.. request.Bridges.Select(b => b with { Mass = shim })],
            OwnedMasses = ImmutableDictionary.CreateRange(Slot.All.Where(s => s != Slot.Rider && request.Build[s] is not null).Select(s => KeyValuePair.Create(s, Mass.FromGrams(100)))),
        };
    }

    [Fact]
    public void Under_a_cap_of_the_mass_nothing_of_unknown_mass_is_taken()
    {
        double owned = Weighed(null).OwnedMasses.Count * 100d;
        ChoiceResult unknown = BuildChooser.Of(Weighed(null)).CheapestUnder(Mass.FromKilograms(100));
        Assert.Equal((49.90m, owned + 250), (unknown.Best!.Price.Amount, unknown.Best.Mass!.Value.Grams));
        Assert.Equal([10m], unknown.LeftOut.Select(o => o.Price!.Value.Amount));

        // 31.50 and 12.00 for a shim of 15 g: 43.50, 255 g; a gram below, the other post.
        BuildChooser known = BuildChooser.Of(Weighed(Mass.FromGrams(15)));
        Assert.Equal((43.50m, owned + 255), (known.CheapestUnder(Mass.FromGrams(owned + 255)).Best!.Price.Amount, known.CheapestUnder(Mass.FromGrams(owned + 255)).Best!.Mass!.Value.Grams));
        Assert.Equal(49.90m, known.CheapestUnder(Mass.FromGrams(owned + 254)).Best!.Price.Amount);

        // One that is there costs nothing, and weighs what it weighs.
        ChoiceRequest there = Weighed(Mass.FromGrams(15));
        ChosenBuild held = BuildChooser.Of(there with { Build = there.Build.WithSmallPart($"seatpost-in-seat-tube:{Shim}") }).CheapestUnder(Mass.FromKilograms(100)).Best!;
        Assert.Equal((31.50m, owned + 255), (held.Price.Amount, held.Mass!.Value.Grams));
    }

    [Fact]
    public void A_cap_that_is_too_low_says_how_low_it_can_be()
    {
        double owned = Weighed(null).OwnedMasses.Count * 100d;
        ChoiceResult heavy = BuildChooser.Of(Weighed(null)).CheapestUnder(Mass.FromGrams(owned + 249));
        Assert.Equal((ChoiceStatus.CapTooLow, owned + 250, null), (heavy.Status, heavy.MassBound!.Value.Grams, heavy.Best));
        Assert.Contains("none weighs less than", heavy.ToString(), StringComparison.Ordinal);
        ChoiceResult dear = BuildChooser.Of(Weighed(null)).LightestUnder(Euro(49.89m));
        Assert.Equal((ChoiceStatus.CapTooLow, 49.90m), (dear.Status, dear.Bound!.Value.Amount));
        Assert.Contains("none costs less than 49.90 EUR", dear.ToString(), StringComparison.Ordinal);
        Assert.Equal(ChoiceStatus.CapTooLow, BuildChooser.Of(Weighed(null)).LightestUnder(Euro(-1m)).Status);

        // Where masses are missing, nothing fits together, and what was not looked at is named.
        ChoiceRequest request = Weighed(null);
        ChoiceResult none = BuildChooser.Of(request with { Offers = [request.Offers[2]] }).CheapestUnder(Mass.FromKilograms(100));
        Assert.Equal((ChoiceStatus.Impossible, 1), (none.Status, none.LeftOut.Length));
        Assert.Contains("1 not looked at", none.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_measurement_may_ask_for_a_bridge_the_price_is_at_least()
    {
        ChoiceRequest request = Finish([Offer("no figure", Slot.Seatpost, Changed(Slot.Seatpost, ("diameter", "unknown")), 10m)]) with { AllowsMeasuring = true };
        ChosenBuild open = BuildChooser.Of(request).Cheapest().Best!;
        Assert.Equal((10m, true, Verdict.NeedsMeasuring), (open.Price.Amount, open.IsAtLeast, open.Report.Verdict));
        Assert.StartsWith("at least 10.00 EUR", open.ToString(), StringComparison.Ordinal);
        Assert.False(BuildChooser.Of(Finish([Post("27.2", 10m)]) with { AllowsMeasuring = true }).Cheapest().Best is { IsAtLeast: true });
    }

    [Fact]
    public void What_is_outside_the_library_is_not_taken_even_where_measuring_is_allowed_and_is_named()
    {
        ChoiceRequest request = Finish([Offer("own washers", Slot.FrontWheel, Changed(Slot.FrontWheel, ("sprocketChainline", "proprietary")), 60m)]) with { AllowsMeasuring = true };
        ChoiceResult wheel = BuildChooser.Of(request).Cheapest();
        Assert.Equal((ChoiceStatus.Impossible, "own washers"), (wheel.Status, wheel.LeftOut.Single().Id));

        Assert.True(PartForms.Of(Slot.Frame).TrySet(request.Build.Frame, "kind", "proprietary", new Evidence(EvidenceKind.Stated, "proprietary"), out Part odd, out _));
        ChoiceResult frame = BuildChooser.Of(new() { Build = Build.From((Frame)odd), Offers = [], AllowsMeasuring = true }).Cheapest();
        Assert.Equal((ChoiceStatus.Impossible, Slot.Frame), (frame.Status, frame.LeftOut.Single().Slot));
    }

    [Fact]
    public void What_is_one_article_with_another_part_needs_no_mass_of_its_own()
    {
        Build build = Bench.WholeBicycle();
        Slot[] without = [Slot.Rider, Slot.Dropper, Slot.Controls];
        ChoiceRequest request = new()
        {
            Build = build,
            Offers = [],
            Wishes = [ChoiceWish.Keep(Slot.Dropper), ChoiceWish.Keep(Slot.Controls)],
            OwnedMasses = ImmutableDictionary.CreateRange(Slot.All.Where(s => !without.Contains(s) && build[s] is not null).Select(s => KeyValuePair.Create(s, Mass.FromGrams(100)))),
        };
        Assert.Equal(ChoiceStatus.Optimal, BuildChooser.Of(request).Lightest().Status);
    }

    [Fact]
    public void Half_a_gram_is_lighter()
    {
        ChoiceRequest request = Weighed(Mass.FromGrams(15)) with { Offers = [Post("27.2", 10m) with { Mass = Mass.FromGrams(250) }, Post("27.2", 11m) with { Mass = Mass.FromGrams(249.5) }] };
        Assert.Equal(11m, BuildChooser.Of(request).Lightest().Best!.Price.Amount);
    }

    [Fact]
    public void Every_wish_counts_where_two_are_about_one_slot()
    {
        ChoiceRequest request = Finish([Post("27.2", 5m), Post("27.2", 6m), Post("27.2", 7m)]);
        ChoiceWish first = ChoiceWish.That<Part>(Slot.Seatpost, "not the cheapest", p => !ReferenceEquals(p, request.Offers[0].Part));
        ChoiceWish second = ChoiceWish.That<Part>(Slot.Seatpost, "nor the next", p => !ReferenceEquals(p, request.Offers[1].Part));
        Assert.Equal(6m, BuildChooser.Of(request with { Wishes = [first] }).Cheapest().Best!.Price.Amount);
        Assert.Equal(7m, BuildChooser.Of(request with { Wishes = [first, second] }).Cheapest().Best!.Price.Amount);
    }

    [Fact]
    public void A_sum_may_be_more_than_one_price_can_be()
    {
        ChoiceRequest request = Finish([Post("27.2", 900_000_000m), Offer("saddle", Slot.Saddle, Bench.WholeBicycle()[Slot.Saddle]!, 900_000_000m)]);
        Assert.Equal(1_800_000_000m, BuildChooser.Of(request).Cheapest().Best!.Price.Amount);
    }

    [Fact]
    public void What_could_not_be_found_out_is_no_fit()
    {
        BuildChooser chooser = BuildChooser.Of(Finish([Post("27.2", 10m)]));
        Assert.Null(chooser.Conflict());
        chooser.ReasonSteps = 0;
        ChoiceConflict open = chooser.Conflict()!;
        Assert.True(open.IsOpen && open.Joints.IsEmpty);
        Assert.Contains("could not be found out", open.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_try_takes_too_many_steps_nothing_of_a_reason_is_left_out_for_it()
    {
        BuildChooser chooser = BuildChooser.Of(Finish([Post("30.9", 5m), Post("31.6", 6m)]));
        chooser.ReasonSteps = 1;
        ChoiceConflict conflict = chooser.Conflict()!;
        Assert.Equal((false, false), (conflict.IsOpen, conflict.IsSmallest));
        Assert.Equal(["seatpost-in-seat-tube"], conflict.Joints.Select(j => j.Id));
        Assert.Equal([Slot.Seatpost], conflict.Required);
    }

    [Fact]
    public void An_offer_that_fits_comes_nearer_than_one_of_which_something_is_outside()
    {
        // Neither is taken: of the first nobody can say whether it fits, the second has no price.
        ChoiceRequest request = Finish([Offer("own washers", Slot.FrontWheel, Changed(Slot.FrontWheel, ("sprocketChainline", "proprietary")), 60m), new("no price", Slot.FrontWheel, Changed(Slot.FrontWheel))]);
        ChoiceRemedy wheel = BuildChooser.Of(request).Conflict()!.Remedies.Single(m => m.Slot == Slot.FrontWheel);
        Assert.Equal(("no price", false), (wheel.Nearest!.Id, wheel.IsOutside));
    }

    [Theory]
    [InlineData(12, 30, 24, 10, "seatpost-shim-25.4-to-27.2")]
    [InlineData(24, 10, 12, 30, Shim)]
    [InlineData(12, 10, 24, 30, "seatpost-shim-25.4-to-27.2")]
    public void Where_it_is_open_which_bridge_the_dearest_and_the_heaviest_are_enough_for_each(int thin, int thinGrams, int thick, int thickGrams, string dearest)
    {
        ChoiceRequest weighed = Weighed(null);
        Seatpost either = (Seatpost)weighed.Offers[1].Part;
        either = either with { Diameter = Known<Lugwork.Seating.SeatpostDiameter>.OneOf([either.Diameter.Value!, ((Seatpost)Post("25.4", 1m).Part).Diameter.Value!]) };
        ChoiceRequest request = weighed with
        {
            Offers = [new("26.8 or 25.4", Slot.Seatpost, either) { Price = Euro(20m), Mass = Mass.FromGrams(200) }],
            Bridges = [new(Shim, Euro(thin)) { Mass = Mass.FromGrams(thinGrams) }, new("seatpost-shim-25.4-to-27.2", Euro(thick)) { Mass = Mass.FromGrams(thickGrams) }],
        };

        // The shim at 24.00 is enough where it is the other one, and so are 30 g.
        ChosenBuild best = BuildChooser.Of(request).CheapestUnder(Mass.FromKilograms(100)).Best!;
        Assert.Equal((44m, (request.OwnedMasses.Count * 100d) + 230, dearest), (best.Price.Amount, Math.Round(best.Mass!.Value.Grams, 3), best.Bridges.Single().Bridge.Id));
    }

    [Fact]
    public void Forks_that_read_alike_are_told_apart_where_one_of_them_is_not_asked()
    {
        // A threaded steerer is held by its locknut: no gap under a cap is asked of it.
        Joint joint = JointTable.All.Single(j => j.Id == "gap-under-cap");
        Slot[] slots = [Slot.Fork, Slot.Frame, Slot.Stem, Slot.Headset];
        ChoiceJointRule rule = new(joint, [0, 1, 2, 3], slots, new([], [], false, false, false));
        int[] classes = [.. new[] { "threadless", "threaded", "threadless" }.Select(kind => rule.Of(0, Fork.Read($"steerer kind {kind}; steerer length 190"), false))];
        Assert.Equal((true, true), (classes[0] == classes[2], classes[0] != classes[1]));
    }

    [Fact]
    public void Of_equal_entries_in_a_slot_the_first_comes_first()
    {
        // Entries 0 (20) and 2 (10) of one state, 1 (10) of another.
        ChoiceNetwork network = new([[new([10, 20], [0, 0], [2, 0]), new([10], [0], [1])]], [], [], 0, 0);
        Assert.Null(Search().Next(100, ceiling: 10));
        Assert.Equal(10, Search().Next(100, ceiling: 11)!.Value.Cost);
        ChoiceSearch search = Search();
        List<int> order = [];
        while (search.Next(100) is { } next)
        {
            order.Add(network.States[0][next.Chosen[0].State].Entry[next.Chosen[0].Rank]);
        }

        Assert.Equal([1, 2, 0], order);

        ChoiceSearch Search() => new(network, new(network, ChoiceWeights.Price, default), ChoiceWeights.Price, default);
    }

    /// <summary>Costs that are asked late.</summary>
    private sealed class Late : ChoiceRule
    {
        public Late()
            : base([0])
        {
            ClassOf[0] = [0, 1];
            Classes[0] = 2;
        }

        public override (long Price, long Mass) Most => (1_000, 0);

        protected override (long Price, long Mass) Judge(ReadOnlySpan<int> classes) => (classes[0] == 0 ? 1_000 : 0, 0);
    }

    [Fact]
    public void One_change_less_is_better_whatever_a_late_rule_costs()
    {
        ChoiceNetwork network = new([[new([0], [0], [0]), new([10], [1], [1])]], [], [new(new Late(), [[0, 1]])], 0, 0);
        Assert.Equal(0, BuildChooser.Fewest(network, default, out long _)![0].State);
        Assert.Equal((1, 1), (ChoiceScale.Of(network).PerPrice, ChoiceScale.Of(network).PerMass));
    }

    [Fact]
    public void The_fewest_changes_are_found_or_told_as_a_bound_at_prices_of_any_size()
    {
        int found = 0;
        for (int seed = 0; seed < 150; seed++)
        {
            ChoiceNetwork small = ChoiceNetworkTests.Draw(new Random(seed));
            const long Unit = 100_000_000_000_003;
            ChoiceNetwork network = new(
                [.. small.States.Select(states => states.Select(s => new ChoiceState([.. s.Price.Select(p => (p * Unit) + 1)], [.. s.Mass.Select(m => m % 2)], s.Entry)).ToArray())],
                [.. small.Tables.Select(t => new ChoiceTable(t.Scope, t.ClassOf, t.Sizes, [.. t.Price.Select(p => p >= ChoiceEntry.Never ? p : p * Unit)], null))], [], 0, 0);
            (long Mass, long Price)[] all = [.. ChoiceNetworkTests.Choices(network).Select(network.Cost).Where(c => c.Price < ChoiceEntry.Never).Select(c => (c.Mass, c.Price)).Order()];
            (int State, int Rank)[]? chosen = BuildChooser.Fewest(network, default, out long bound);
            Assert.Equal(all.Length == 0, chosen is null && bound >= ChoiceEntry.Never);

            // Where the steps do not suffice, no more than there are.
            ChoiceNetwork plain = new([.. small.States.Select(states => states.Select(s => new ChoiceState(s.Price, [.. s.Mass.Select(m => m % 2)], s.Entry)).ToArray())], small.Tables, [], 0, 0);
            Assert.Null(BuildChooser.Fewest(plain, default, out long least, steps: 1));
            Assert.Equal(all.Length == 0 ? ChoiceEntry.Never : all[0].Mass, least);

            // What is too large to be weighed in one number is a bound of the changes, and never a wrong choice.
            Assert.True(chosen is null || all[0] == (network.Cost(chosen).Mass, network.Cost(chosen).Price));
            Assert.True(all.Length == 0 || chosen is not null || bound == all[0].Mass, $"seed {seed}: {bound}");
            found += all.Length > 0 ? 1 : 0;
        }

        Assert.True(found >= 50, $"{found} found");
    }
}
