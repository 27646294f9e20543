using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.Tests.Drivetrain;

public sealed class ChainSumTests
{
    [Theory]
    [InlineData(112, 112, 112, 56)]
    [InlineData(112.0000001, 112, 112, 56)]
    [InlineData(112.01, 113, 114, 57)]
    [InlineData(113, 113, 114, 57)]
    [InlineData(0, 0, 0, 0)]
    public void A_chain_is_cut_to_full_links(double pitches, int whole, int even, int links)
    {
        ChainLength chain = ChainLength.OfPitches(pitches);
        Assert.Equal((whole, even, links), (chain.WholePitches, chain.EvenPitches, chain.FullLinks));
        Assert.Equal(even * 12.7, chain.Cut.Millimeters, 6);
    }

    [Fact]
    public void A_link_says_whether_it_is_one_pitch_or_two() => Assert.Equal(ChainLength.OfPitches(114), ChainLength.OfFullLinks(57));

    [Fact]
    public void Two_equal_sprockets_take_twice_the_distance_and_all_teeth_of_one() => Assert.Equal(100 + 18, ChainLoop.Exact(Length.FromMillimeters(635), 18, 18).Pitches, 9);

    [Fact]
    public void Sprockets_that_would_touch_and_chains_that_do_not_reach_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainLoop.Exact(Length.FromMillimeters(200), 52, 52));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainLoop.Exact(Length.FromMillimeters(5_001), 52, 52));
        Assert.ThrowsAny<ArgumentException>(() => ChainLoop.Exact(Length.FromMillimeters(double.NaN), 52, 52));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainLoop.CentreDistance(ChainLength.OfPitches(50), 52, 52));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainLoop.CentreDistanceByRollerChainFormula(default, 52, 11));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainLength.OfPitches(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainLength.OfPitches(3).Plus(-4));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainRule.BigBig(Length.FromMillimeters(430), 50, 34, 13));
    }

    [Fact]
    public void The_allowance_is_given_and_a_suspended_frame_is_taken_where_it_is_longest()
    {
        ChainLength rigid = ChainRule.BigBig(Length.FromMillimeters(435), 32, 52, ChainRule.GeneralAllowancePitches);
        ChainLength suspended = ChainRule.BigBig(Length.FromMillimeters(447), 32, 52, 2);
        Assert.Equal(114, rigid.EvenPitches);
        Assert.Equal(116, suspended.EvenPitches);
        Assert.Equal(suspended.Pitches, rigid.Plus(ChainLoop.PitchesForGrowth(Length.FromMillimeters(12))).Pitches, 1);
    }

    [Fact]
    public void Slots_tell_every_chain_and_where_the_axle_stands()
    {
        Are(SingleSpeedChain.ForSlots(Length.FromMillimeters(395), Length.FromMillimeters(415), 44, 16), 94);
        Are(SingleSpeedChain.ForSlots(Length.FromMillimeters(395), Length.FromMillimeters(415), 44, 16, withCrankedLink: true), 93, 94, 95);
        Assert.Empty(SingleSpeedChain.ForSlots(Length.FromMillimeters(399), Length.FromMillimeters(400), 44, 16));

        static void Are(IEnumerable<SingleSpeedChain> found, params int[] pitches)
        {
            Assert.Equal(pitches, found.Select(c => c.Pitches));
            Assert.All(found, c => Assert.Equal(c.Pitches, ChainLoop.Exact(c.CentreDistance, 44, 16).Pitches, 6));
            Assert.All(found, c => Assert.Equal(c.Pitches % 2 != 0, c.HasCrankedLink));
        }
    }

    [Fact]
    public void An_axle_that_cannot_move_leaves_slack_and_play()
    {
        SingleSpeedChain chain = SingleSpeedChain.ForFixedAxle(Length.FromMillimeters(401), 44, 16);
        double loop = ChainLoop.Exact(Length.FromMillimeters(401), 44, 16).Pitches;
        Assert.Equal(94, chain.Pitches);
        Assert.Equal((94 - loop) * 12.7, chain.Slack.Millimeters, 9);
        double run = Math.Sqrt((401 * 401) - Math.Pow(ChainLoop.Radius(44) - ChainLoop.Radius(16), 2));
        Assert.Equal((run + chain.Slack.Millimeters) / 2, Math.Sqrt(Math.Pow(run / 2, 2) + Math.Pow(chain.PlayFromEndToEnd.Millimeters / 2, 2)), 9);
        Assert.Equal(0, SingleSpeedChain.ForFixedAxle(Length.FromMillimeters(635), 18, 18).PlayFromEndToEnd.Millimeters, 6);
    }

    /// <summary>Slack s and free run L lift the middle by √(s (2L + s)) / 2; 10 mm is our own bound, no source.</summary>
    [Theory]
    [InlineData(635.0, Verdict.NeedsMeasuring)]
    [InlineData(634.9, Verdict.NeedsMeasuring)]
    [InlineData(634.8, Verdict.NeedsPart)]
    [InlineData(625.0, Verdict.NeedsPart)]
    public void More_rise_than_usual_where_nothing_moves_needs_a_tensioner(double centre, Verdict expected)
    {
        SingleSpeedChain chain = SingleSpeedChain.ForFixedAxle(Length.FromMillimeters(centre), 18, 18);
        Assert.Equal(expected, chain.Check.Verdict);
        Assert.Equal(expected == Verdict.NeedsPart, chain.Check.Remedy?.Contains("tensioner", StringComparison.Ordinal) == true);
        Assert.Equal(chain.PlayFromEndToEnd.Millimeters, 2 * chain.RiseAtMidRun.Millimeters, 9);
        Assert.Equal(expected == Verdict.NeedsMeasuring, chain.RiseAtMidRun <= SingleSpeedChain.UsualRise);
    }

    [Fact]
    public void Where_the_axle_moves_no_tensioner_is_asked_for() =>
        Assert.All(SingleSpeedChain.ForSlots(Length.FromMillimeters(402), Length.FromMillimeters(422), 42, 17), c => Assert.Equal(Verdict.Fits, c.Check.Verdict));

    [Theory]
    [InlineData(303.0, true)]
    [InlineData(304.1, true)]
    [InlineData(304.3, false)]
    public void A_chain_shorter_than_any_new_one_is_measured_again(double millimetres, bool again)
    {
        ChainWear wear = ChainWear.Of(ChainSize.For11, Length.FromMillimeters(millimetres), 24);
        Assert.Equal(again, wear.IsMismeasured);
        Assert.Equal(again, wear.IsWornOut is null);
        Assert.Equal(again, wear.ToString().Contains("shorter than new: measure again", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("11", 306.3, false)]
    [InlineData("11", 306.33, true)]
    [InlineData("12", 306.33, true)]
    [InlineData("10", 306.33, false)]
    [InlineData("10", 307.1, true)]
    [InlineData("1/8", 307.8, false)]
    [InlineData("1/8", 307.9, true)]
    public void Wear_is_judged_by_the_kind_of_chain(string chain, double millimetres, bool worn)
    {
        ChainWear wear = ChainWear.Of(ChainSize.Parse(chain, null), Length.FromMillimeters(millimetres), 24);
        Assert.Equal(worn, wear.IsWornOut);
        Assert.Equal(worn, wear.ToString().Contains(": worn out", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("11", 304.8, Verdict.Fits)]
    [InlineData("11", 306.0, Verdict.Fits)]
    [InlineData("11", 306.1, Verdict.NeedsMeasuring)]
    [InlineData("11", 306.3, Verdict.NeedsMeasuring)]
    [InlineData("11", 306.33, Verdict.DoesNotFit)]
    [InlineData("10", 306.33, Verdict.Fits)]
    [InlineData("11", 304.1, Verdict.NeedsMeasuring)]
    [InlineData("13", 304.8, Verdict.NeedsMeasuring)]
    [InlineData("13", 312, Verdict.NeedsMeasuring)]
    public void A_chain_may_go_on_only_where_a_ruler_tells_it(string chain, double millimetres, Verdict verdict)
    {
        SumCheck check = ChainWear.Of(ChainSize.Parse(chain, null), Length.FromMillimeters(millimetres), 24).Check;
        Assert.Equal(verdict, check.Verdict);
        Assert.Equal(verdict == Verdict.Fits, check.Remedy is null);
        Assert.Throws<ArgumentException>(() => ChainWear.Of(ChainSize.Belt, Length.FromMillimeters(millimetres), 24));
    }

    [Fact]
    public void A_chain_without_a_printed_limit_is_never_said_to_be_good()
    {
        ChainWear wear = ChainWear.Of(ChainSize.For13, Length.FromMillimeters(304.8), 24);
        Assert.Null(wear.IsWornOut);
        Assert.Null(ChainWear.LongestOver(ChainSize.Freight, 24));
        Assert.Contains("ask the chain's maker", wear.ToString(), StringComparison.Ordinal);
        Assert.Equal(306.324, ChainWear.LongestOver(ChainSize.For12, 24)!.Value.Millimeters, 6);
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainWear.Of(ChainSize.For12, Length.FromMillimeters(317.5), 23));
    }

    [Theory]
    [InlineData(38, 34, 11, 22, Verdict.DoesNotFit)]
    [InlineData(41, 34, 11, 22, Verdict.DoesNotFit)]
    [InlineData(42, 34, 11, 22, Verdict.Fits)]
    [InlineData(42, 33, 11, 22, Verdict.DoesNotFit)]
    [InlineData(42, 34, 13, 22, Verdict.DoesNotFit)]
    [InlineData(42, 34, 12, 20, Verdict.Fits)]
    [InlineData(42, 34, 12, 19, Verdict.DoesNotFit)]
    public void Every_limit_of_a_derailleur_counts(int capacity, int largest, int smallest, int front, Verdict verdict)
    {
        DerailleurLimits limits = new() { TotalCapacity = capacity, LargestSprocket = largest, SmallestSprocket = smallest, FrontDifference = front };
        Assert.Equal(verdict, limits.Check([44, 32, 24], [12, 34]).Verdict);
    }

    [Fact]
    public void An_unknown_limit_is_asked_for_and_never_fits()
    {
        DerailleurLimits limits = new() { TotalCapacity = 33 };
        SumCheck check = limits.Check([50, 34], [12, 25]);
        Assert.Equal(Verdict.NeedsMeasuring, check.Verdict);
        Assert.Contains("largest sprocket (25 there)", check.Sentence, StringComparison.Ordinal);
        Assert.Equal(4, limits.Spare([50, 34], [12, 25]));
        Assert.Equal(Verdict.DoesNotFit, limits.Check([50, 34], [12, 30]).Verdict);
        Assert.Equal(Verdict.Fits, new DerailleurLimits { TotalCapacity = 41, LargestSprocket = 51, SmallestSprocket = 10 }.Check([32], [10, 51]).Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, new DerailleurLimits().Check([32], [10, 51]).Verdict);
        Assert.Throws<ArgumentOutOfRangeException>(() => new DerailleurLimits { TotalCapacity = -1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => limits.Check([], [12, 25]));
    }

    [Theory]
    [InlineData(99.9, 98)]
    [InlineData(100, 100)]
    [InlineData(99.9999999, 100)]
    [InlineData(101.9, 100)]
    public void The_longest_chain_is_rounded_down(double pitches, int even) => Assert.Equal(even, ChainLength.OfPitches(pitches).EvenPitchesNotAbove);

    [Theory]
    [InlineData(39, Verdict.Fits, "cut to 112 pitches")]
    [InlineData(43, Verdict.Fits, "cut to 112 pitches, at most 114")]
    [InlineData(28, Verdict.DoesNotFit, "hangs slack")]
    [InlineData(null, Verdict.NeedsMeasuring, "35 teeth are needed")]
    public void Big_big_is_the_shortest_and_small_small_the_longest(int? capacity, Verdict expected, string told)
    {
        Length stay = Length.FromMillimeters(430);
        ChainSpan span = ChainSpan.Of(stay, stay, [50, 34], [11, 30], capacity, ChainRule.GeneralAllowancePitches);
        SumCheck check = span.Check();
        Assert.True(expected == check.Verdict, $"{check}; {span}");
        Assert.Contains(told, check.Sentence, StringComparison.Ordinal);
        Assert.Equal("chain-too-short", check.Cautions[0].Id);
        Assert.Equal(ChainRule.BigBig(stay, 50, 30, 2), span.Shortest);
        Assert.Equal(capacity is null, span.Longest is null);
        Assert.True(capacity is not { } teeth || Math.Abs(span.Longest!.Value.Pitches - ChainLoop.Exact(stay, 34, 11).Pitches - 2 - (teeth / 2.0)) < 1e-9);
    }

    [Fact]
    public void A_capacity_that_is_just_enough_is_tried_where_no_even_chain_lies_between()
    {
        Length stay = Length.FromMillimeters(430);
        ChainSpan span = ChainSpan.Of(stay, stay, [50, 34], [11, 30], 35, 2);
        Assert.Equal(span.Longest!.Value.EvenPitchesNotAbove < span.Shortest.EvenPitches ? Verdict.NeedsMeasuring : Verdict.Fits, span.Check().Verdict);
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainSpan.Of(stay, Length.FromMillimeters(431), [50, 34], [11, 30], 35, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainSpan.Of(stay, stay, [50, 34], [11, 30], -1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainSpan.Of(stay, stay, [], [11, 30], 35, 2));
        Assert.ThrowsAny<ArgumentException>(() => ChainSpan.Of(stay, Length.FromMillimeters(double.NaN), [50], [11, 30], 35, 2));
    }

    [Fact]
    public void A_suspended_frame_is_longest_for_the_one_end_and_shortest_for_the_other()
    {
        ChainSpan span = ChainSpan.Of(Length.FromMillimeters(451), Length.FromMillimeters(438), [32], [10, 51], 41, 2);
        Assert.Equal(ChainRule.BigBig(Length.FromMillimeters(451), 32, 51, 2), span.Shortest);
        Assert.Equal(ChainRule.SmallSmall(Length.FromMillimeters(438), 32, 10, 41, 2), span.Longest);
    }
}
