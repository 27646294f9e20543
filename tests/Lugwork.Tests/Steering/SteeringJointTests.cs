using static Lugwork.Tests.Builds.Bench;

namespace Lugwork.Tests.Steering;

/// <summary>Headset, stem and bar: both sides of each boundary, an unknown on each side, and a trap.</summary>
public sealed class SteeringJointTests
{
    [Theory]
    [InlineData("44|56", "ZS44/28.6|ZS56/40", Verdict.Fits, Verdict.Fits)]
    [InlineData("44|44", "ZS44/28.6|EC44/40", Verdict.Fits, Verdict.Fits)]
    [InlineData("44|44", "ZS44/28.6|ZS56/40", Verdict.Fits, Verdict.DoesNotFit)]
    [InlineData("44|56", "EC34/28.6|ZS56/30", Verdict.DoesNotFit, Verdict.Fits)]
    [InlineData("IS41|IS41", "IS42/28.6|IS41/30", Verdict.DoesNotFit, Verdict.Fits)]
    [InlineData("IS42|IS52", "ZS44/28.6|EC44/40", Verdict.DoesNotFit, Verdict.DoesNotFit)]
    [InlineData("44|56", "IS42/28.6|IS52/40", Verdict.DoesNotFit, Verdict.DoesNotFit)]
    [InlineData("EC29|EC29", "EC30|EC30", Verdict.DoesNotFit, Verdict.DoesNotFit)]
    [InlineData("44.0 ± 0.1|44", "ZS44|EC44", Verdict.Fits, Verdict.Fits)]
    [InlineData("unknown|56", "ZS44|ZS56", Verdict.NeedsMeasuring, Verdict.Fits)]
    public void A_half_goes_in_the_bore_that_its_code_names(string tube, string headset, Verdict upper, Verdict lower)
    {
        (Slot, Part) part = (Slot.Headset, Headset.Read("code " + headset));
        Assert.Equal(upper, Judge("headset-upper-in-head-tube", "headTube " + tube, part).Verdict);
        Assert.Equal(lower, Judge("headset-lower-in-head-tube", "headTube " + tube, part).Verdict);
    }

    [Theory]
    [InlineData("steererShape tapered 1-1/8 to 1.5", "ZS44/28.6|ZS56/40", Verdict.Fits, Verdict.Fits)]
    [InlineData("steererShape straight 1-1/8", "ZS44/28.6|ZS56/40", Verdict.Fits, Verdict.NeedsPart)]
    [InlineData("steererShape straight 1.5", "ZS44/28.6|ZS56/40", Verdict.DoesNotFit, Verdict.Fits)]
    [InlineData("steererShape tapered 1-1/8 to 1.5", "EC34/28.6|EC34/30", Verdict.Fits, Verdict.DoesNotFit)]
    [InlineData("steererShape straight 1", "EC30/25.4|EC30/26", Verdict.Fits, Verdict.NeedsMeasuring)]
    [InlineData("steerer 1; crown seat 27", "EC30/25.4|EC30/26", Verdict.Fits, Verdict.DoesNotFit)]
    [InlineData("steerer 1; crown seat 26.4", "EC30/25.4|EC30/27", Verdict.Fits, Verdict.DoesNotFit)]
    [InlineData("steererShape tapered", "ZS44/28.6|ZS56/40", Verdict.NeedsMeasuring, Verdict.NeedsMeasuring)]
    [InlineData("steerer unknown", "ZS44|ZS56", Verdict.NeedsMeasuring, Verdict.NeedsMeasuring)]
    public void A_headset_takes_the_steerer_and_the_seat_that_its_code_names(string fork, string headset, Verdict steerer, Verdict crown)
    {
        (Slot, Part)[] parts = [(Slot.Fork, Fork.Read(fork)), (Slot.Headset, Headset.Read("code " + headset))];
        Assert.Equal(steerer, Judge("headset-on-steerer", "material steel", parts).Verdict);
        Assert.Equal(crown, Judge("headset-on-crown", "material steel", parts).Verdict);
    }

    [Theory]
    [InlineData("threadless", "1-1/8", "28.6 clamp", Verdict.Fits)]
    [InlineData("threadless", "1-1/8", "clamp-31.8", Verdict.DoesNotFit)]
    [InlineData("threadless", "1-1/8", "25.4 clamp", Verdict.DoesNotFit)]
    [InlineData("threadless", "1", "28.6 clamp", Verdict.NeedsMeasuring)]
    [InlineData("threaded", "1-1/8", "28.6 clamp", Verdict.Unsafe)]
    [InlineData("threaded", "1", "28.6 clamp", Verdict.Unsafe)]
    [InlineData("threaded", "1", "22.2 quill", Verdict.Fits)]
    [InlineData("threaded", "1", "25.4 quill", Verdict.DoesNotFit)]
    [InlineData("threaded", "1-1/8", "25.4 quill", Verdict.Fits)]
    [InlineData("threaded", "1-1/8", "fixing 25.4", Verdict.NeedsMeasuring)]
    [InlineData("threadless", "1", "22.2 quill", Verdict.Unsafe)]
    [InlineData("threadless", "1-1/8", "22.2 quill", Verdict.Unsafe)]
    [InlineData("threadless", "1", "25.4 quill", Verdict.DoesNotFit)]
    [InlineData("threaded", "1", "21.15 quill", Verdict.Unsafe)]
    [InlineData("threaded", "1-1/8", "22.2 quill", Verdict.Unsafe)]
    [InlineData("unknown", "1", "22.2 quill", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "1", "25.4 quill", Verdict.DoesNotFit)]
    [InlineData("unknown", "1-1/8", "28.6 clamp", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "1-1/8", "clamp-31.8", Verdict.DoesNotFit)]
    public void A_stem_follows_the_kind_of_steerer_before_its_size(string kind, string steerer, string stem, Verdict expected) =>
        Assert.Equal(expected, Judge("stem-on-steerer", "material steel", (Slot.Fork, Fork.Read($"steerer {steerer}; steerer kind {kind}")), (Slot.Stem, Stem.Read(stem))).Verdict);

    [Theory]
    [InlineData("31.8", "31.8", Verdict.Fits)]
    [InlineData("31.8", "31.7", Verdict.Fits)]
    [InlineData("31.8", "25.4", Verdict.NeedsPart)]
    [InlineData("31.8", "26.0", Verdict.NeedsPart)]
    [InlineData("31.8", "35", Verdict.DoesNotFit)]
    [InlineData("35", "31.8", Verdict.NeedsMeasuring)]
    [InlineData("35", "25.4", Verdict.DoesNotFit)]
    [InlineData("25.4", "26.0", Verdict.Unsafe)]
    [InlineData("26.0", "25.4", Verdict.Unsafe)]
    [InlineData("26.0", "25.8", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "25.4", Verdict.NeedsMeasuring)]
    [InlineData("31.8", "unknown", Verdict.NeedsMeasuring)]
    public void A_bar_goes_in_a_clamp_of_its_own_size_or_with_a_shim_that_is_sold(string stem, string bar, Verdict expected) =>
        Assert.Equal(expected, Judge("bar-in-stem", "material steel", (Slot.Stem, Stem.Read("bar " + stem)), (Slot.Handlebar, Handlebar.Read(bar))).Verdict);

    [Theory]
    [InlineData("threadless", "threadless", Verdict.Fits)]
    [InlineData("threaded", "threadless", Verdict.DoesNotFit)]
    [InlineData("threadless", "threaded", Verdict.DoesNotFit)]
    [InlineData("unknown", "threaded", Verdict.NeedsMeasuring)]
    public void Headset_and_steerer_are_of_one_kind(string fork, string headset, Verdict expected) =>
        Assert.Equal(expected, Judge("headset-kind", "material steel", (Slot.Fork, Fork.Read("steerer kind " + fork)), (Slot.Headset, Headset.Read("kind " + headset))).Verdict);

    [Theory]
    [InlineData("44|56", "tapered 1-1/8 to 1.5", Verdict.Fits, Verdict.Fits)]
    [InlineData("44|44", "tapered 1-1/8 to 1.5", Verdict.Fits, Verdict.Fits)]
    [InlineData("EC34|EC34", "tapered 1-1/8 to 1.5", Verdict.Fits, Verdict.DoesNotFit)]
    [InlineData("IS42|IS42", "tapered 1-1/8 to 1.5", Verdict.Fits, Verdict.DoesNotFit)]
    [InlineData("IS42|IS52", "straight 1-1/8", Verdict.Fits, Verdict.Fits)]
    [InlineData("IS42|IS42", "straight 1-1/8", Verdict.Fits, Verdict.NeedsMeasuring)]
    [InlineData("IS42|IS52", "tapered 1-1/8 to 1.5", Verdict.Fits, Verdict.Fits)]
    [InlineData("IS42|IS42", "tapered 1-1/8 to 1-1/4", Verdict.Fits, Verdict.DoesNotFit)]
    [InlineData("44|44", "tapered 1-1/8 to 1-3/8", Verdict.Fits, Verdict.NeedsMeasuring)]
    [InlineData("49|ZS62", "tapered 1-1/8 to 1.5", Verdict.NeedsMeasuring, Verdict.NeedsMeasuring)]
    [InlineData("56|56", "straight 1.5", Verdict.NeedsMeasuring, Verdict.Fits)]
    [InlineData("IS52|IS52", "straight 1.5", Verdict.NeedsMeasuring, Verdict.Fits)]
    [InlineData("44|44", "straight 1", Verdict.NeedsMeasuring, Verdict.NeedsMeasuring)]
    [InlineData("EC34|EC34", "straight 1-1/4", Verdict.DoesNotFit, Verdict.DoesNotFit)]
    [InlineData("44|56", "straight 1.5", Verdict.DoesNotFit, Verdict.Fits)]
    [InlineData("EC30|EC30", "straight 1-1/8", Verdict.DoesNotFit, Verdict.DoesNotFit)]
    [InlineData("EC34|EC34", "straight 1", Verdict.NeedsMeasuring, Verdict.NeedsMeasuring)]
    public void A_fork_that_no_headset_can_hold_is_refused_before_one_is_bought(string tube, string shape, Verdict upper, Verdict lower)
    {
        (Slot, Part) part = (Slot.Fork, Fork.Read("steerer shape " + shape));
        Assert.Equal(upper, Judge("steerer-through-head-tube", "head tube " + tube, part).Verdict);
        Assert.Equal(lower, Judge("fork-in-head-tube", "head tube " + tube, part).Verdict);
    }

    [Fact]
    public void Every_pair_that_the_codes_list_has_room_and_no_pair_without_room_is_listed() =>
        Assert.All(Lugwork.Steering.HeadTubeBore.All, bore =>
        {
            Assert.All(Lugwork.Steering.SteererSize.All.Where(bore.TakesUpper), s => Assert.True(bore.Room(s.Hundredths) > 250));
            Assert.All(Lugwork.Steering.CrownSeat.All.Where(bore.TakesLower), s => Assert.True(bore.Room(s.Hundredths) > 250));
        });

    [Theory]
    [InlineData("31.8", "35", "bar-too-large")]
    [InlineData("35", "25.4", "bar-too-small")]
    public void The_reason_says_which_is_too_large(string stem, string bar, string reason) =>
        Assert.Equal(reason, Judge("bar-in-stem", "material steel", (Slot.Stem, Stem.Read("bar " + stem)), (Slot.Handlebar, Handlebar.Read(bar))).ReasonId);

    [Theory]
    [InlineData("threadless", "1-1/8", "clamp-31.8", "stem-too-large")]
    [InlineData("threadless", "1-1/8", "25.4 clamp", "stem-too-small")]
    [InlineData("threaded", "1", "25.4 quill", "quill-too-large")]
    [InlineData("threaded", "1-1/8", "22.2 quill", "quill-too-small")]
    [InlineData("threadless", "1", "22.2 quill", "quill-in-threadless")]
    public void The_reason_of_a_stem_says_which_is_too_large(string kind, string steerer, string stem, string reason) =>
        Assert.Equal(reason, Judge("stem-on-steerer", "material steel", (Slot.Fork, Fork.Read($"steerer {steerer}; steerer kind {kind}")), (Slot.Stem, Stem.Read(stem))).ReasonId);
}
