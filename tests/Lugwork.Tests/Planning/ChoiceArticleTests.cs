using System.Collections.Immutable;
using Lugwork.Planning;
using Lugwork.Tests.Builds;
using static Lugwork.Tests.Planning.ChoiceScenarioTests;

namespace Lugwork.Tests.Planning;

/// <summary>What is there once, what is one article over several slots, and what is left off.</summary>
public sealed class ChoiceArticleTests
{
    private static readonly Part Tyre = Bench.WholeBicycle()[Slot.FrontTyre]!;

    private static readonly Part Post = Bench.WholeBicycle()[Slot.Seatpost]!;

    private static readonly Part Dropper = Bench.WholeBicycle()[Slot.Dropper]!;

    private static ChoiceOffer Owned(string id, Slot slot, string? item) => new(id, slot, Tyre) { IsOwned = true, Item = item };

    [Fact]
    public void A_thing_that_is_there_once_is_taken_for_one_place()
    {
        ChoiceOffer[] bought = [Offer("new front", Slot.FrontTyre, Tyre, 30m), Offer("new rear", Slot.RearTyre, Tyre, 35m)];
        ChoiceRequest once = Finish([Owned("old", Slot.FrontTyre, "the tyre"), Owned("old", Slot.RearTyre, "the tyre"), .. bought]);

        // The old one behind and 30.00 in front, not the old one twice.
        ChosenBuild best = BuildChooser.Of(once).Cheapest().Best!;
        Assert.Equal((30m, "new front"), (best.Price.Amount, best.ToBuy.Single().Id));
        Assert.Equal(0m, BuildChooser.Of(Finish([Owned("old", Slot.FrontTyre, null), Owned("old", Slot.RearTyre, null), .. bought])).Cheapest().Best!.Price.Amount);

        // The same where it is on the bicycle already: it moves to the rear.
        Build build = Bench.WholeBicycle().Without(Slot.RearTyre);
        ChoiceRequest there = once with { Build = build, Offers = [Owned("old", Slot.RearTyre, "the tyre"), .. bought], Wishes = [.. once.Wishes.Where(w => w.Slot != Slot.FrontTyre)], OwnedItems = ImmutableDictionary<Slot, string>.Empty.Add(Slot.FrontTyre, "the tyre") };
        Assert.Equal(["new front"], BuildChooser.Of(there).Cheapest().Best!.ToBuy.Select(p => p.Id));

        // Alone it is not enough for two ends, and that is said.
        ChoiceConflict conflict = BuildChooser.Of(once with { Offers = [.. once.Offers.Where(o => o.IsOwned)] }).Conflict()!;
        Assert.Equal([Slot.FrontTyre, Slot.RearTyre], conflict.Required);
        Assert.Equal([Slot.FrontTyre, Slot.RearTyre], conflict.Ties.Single().Slots);
        Assert.Contains("there once", conflict.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_article_over_two_slots_is_taken_whole_or_not_at_all()
    {
        ChoiceOffer[] offers = [Offer("rigid", Slot.Seatpost, Post, 20m), Offer("dropper", Slot.Seatpost, Post, 150m) with { Article = "D" }, Offer("dropper", Slot.Dropper, Dropper, 0m) with { Article = "D" }];
        ChoiceRequest request = Finish(offers);
        Assert.Equal(20m, BuildChooser.Of(request).Cheapest().Best!.Price.Amount);
        ChoiceRequest wished = request with { Wishes = request.Wishes.Add(ChoiceWish.Filled(Slot.Dropper)) };
        ChosenBuild best = BuildChooser.Of(wished).Cheapest().Best!;
        Assert.Equal((150m, 2), (best.Price.Amount, best.ToBuy.Length));

        // Half of it without a price: none of it is taken, and both are named.
        ChoiceResult half = BuildChooser.Of(request with { Offers = [offers[0], offers[1], offers[2] with { Price = null }] }).Cheapest();
        Assert.Equal((20m, 2), (half.Best!.Price.Amount, half.LeftOut.Length));
    }

    /// <summary>The whole bicycle, of which some slots are not held.</summary>
    private static ChoiceRequest Whole(ChoiceOffer[] offers, params Slot[] free)
    {
        Build build = Bench.WholeBicycle();
        ChoiceWish[] others = [.. free.Where(s => offers.Any(o => o.Slot == s)).Select(s => ChoiceWish.That<Part>(s, $"another {s}", p => !ReferenceEquals(p, build[s])))];
        return new() { Build = build, Offers = [.. offers], Wishes = [.. Slot.All.Where(s => s != Slot.Frame && build[s] is not null && !free.Contains(s)).Select(ChoiceWish.Keep), .. others] };
    }

    [Fact]
    public void An_owned_dropper_goes_with_its_seatpost_and_is_named_among_what_is_left_off()
    {
        ChoiceRequest request = Whole([Offer("rigid", Slot.Seatpost, Post with { Name = "rigid" }, 20m)], Slot.Seatpost, Slot.Dropper);
        ChosenBuild best = BuildChooser.Of(request).Cheapest().Best!;
        Assert.Null(best.Build[Slot.Dropper]);
        Assert.Equal([Slot.Seatpost, Slot.Dropper], best.LeftOff.Select(o => o.Slot));
        Assert.EndsWith("left off: seatpost, dropper", best.ToString(), StringComparison.Ordinal);

        ChoiceConflict conflict = BuildChooser.Of(request with { Wishes = request.Wishes.Add(ChoiceWish.Keep(Slot.Dropper)) }).Conflict()!;
        Assert.Contains(conflict.Ties, t => t.Slots.SequenceEqual([Slot.Seatpost, Slot.Dropper]));

        // The post stays: its dropper is not taken out of it to please a frame without a hole.
        Part closed = request.Build.Frame;
        Assert.True(PartForms.Of(Slot.Frame).TrySet(closed, "dropperEntry", "no-hole", new Evidence(EvidenceKind.Stated, "no-hole"), out closed, out _));
        Build narrow = Slot.All.Where(s => s != Slot.Frame && request.Build[s] is not null).Aggregate(Build.From((Frame)closed), (b, s) => b.With(request.Build[s]!, s));
        ChoiceRequest kept = Whole([], Slot.Dropper) with { Build = narrow };
        Assert.Equal(ChoiceStatus.Impossible, BuildChooser.Of(kept).Cheapest().Status);
    }

    [Fact]
    public void Owned_controls_stay_as_long_as_one_of_their_levers_and_shifters()
    {
        Slot[] levers = [Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter];
        ChoiceOffer[] offers = [.. levers.Select(s => Offer($"new {s}", s, Bench.WholeBicycle()[s]! with { Name = "new" }, 10m))];
        ChosenBuild all = BuildChooser.Of(Whole(offers, [.. levers, Slot.Controls])).Cheapest().Best!;
        Assert.Null(all.Build[Slot.Controls]);
        ChosenBuild some = BuildChooser.Of(Whole(offers[1..], [.. levers[1..], Slot.Controls])).Cheapest().Best!;
        Assert.NotNull(some.Build[Slot.Controls]);
    }

    [Fact]
    public void A_swapped_seatpost_takes_the_dropper_along()
    {
        ChangePlan plan = BuildChooser.Of(new() { Build = Bench.WholeBicycle(), Offers = [] }).Changes(Slot.Seatpost, Post with { Name = "rigid" });
        Assert.Equal((ChoiceStatus.Optimal, 1), (plan.Status, plan.Fewest));
        Assert.Equal((Slot.Dropper, null), (plan.Changes.Single().Slot, plan.Changes.Single().After));

        // And one that is swapped by itself stands in the post that is there.
        Assert.Equal(0, BuildChooser.Of(new() { Build = Bench.WholeBicycle(), Offers = [] }).Changes(Slot.Dropper, Dropper with { Name = "another" }).Fewest);
    }

    [Fact]
    public void What_a_swap_takes_out_may_go_elsewhere()
    {
        ChoiceRequest request = new()
        {
            Build = Bench.WholeBicycle().Without(Slot.RearTyre),
            Offers = [Owned("old", Slot.RearTyre, "the tyre")],

            // A wish about the slot that is swapped does not count.
            Wishes = [ChoiceWish.Filled(Slot.RearTyre), ChoiceWish.Keep(Slot.FrontTyre), ChoiceWish.That<Part>(Slot.FrontTyre, "the old one", p => ReferenceEquals(p, Tyre))],
            OwnedItems = ImmutableDictionary<Slot, string>.Empty.Add(Slot.FrontTyre, "the tyre"),
        };
        ChangePlan plan = BuildChooser.Of(request).Changes(Slot.FrontTyre, Tyre with { Name = "new" });
        Assert.Equal((ChoiceStatus.Optimal, 1, 0m), (plan.Status, plan.Fewest, plan.Price!.Value.Amount));
        Assert.Equal((Slot.RearTyre, "old"), (plan.Changes.Single().Slot, plan.Changes.Single().After!.Id));
    }

    /// <summary>A crank takes one adapter or set of spacers to go across a shell, whether spacers are stated or not.</summary>
    [Fact]
    public void Spacers_under_the_cups_ask_for_no_part_that_the_crank_asks_for()
    {
        Joint across = JointTable.All.Single(j => j.Id == "crank-across-shell");
        int asked = 0;
        foreach (string shell in across.Inputs[0].Domain.Select(across.Inputs[0].Show))
        {
            foreach (string spindle in across.Inputs[1].Domain.Select(across.Inputs[1].Show))
            {
                foreach (string under in (string[])["unknown", "none", "5"])
                {
                    Build build = Build.From(Frame.Read($"shell {shell}")).With(Crankset.Read($"spindle {spindle}")).With(BottomBracket.Read($"driveSpacer {under}"));
                    Fit[] needs = [.. build.FitsOf(Slot.Crankset).Where(f => f.Verdict == Verdict.NeedsPart && (f.Joint == across || f.Joint!.Id.StartsWith("bottom-bracket-spacers", StringComparison.Ordinal)))];
                    asked += needs.Length;
                    Assert.True(needs.Length <= 1, $"{shell} with {spindle} and {under} is asked for by {string.Join(" and ", needs.Select(f => f.Joint!.Id))}");
                }
            }
        }

        Assert.True(asked >= 5, $"{asked} that need a part");
    }
}
