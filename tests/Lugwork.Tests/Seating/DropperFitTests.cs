using FsCheck;
using FsCheck.Xunit;
using Lugwork.Drivetrain;
using Lugwork.Seating;
using UnitsNet;

namespace Lugwork.Tests.Seating;

/// <summary>Posts and droppers in the room that frame and rider leave; rules of thumb.</summary>
public sealed class DropperFitTests
{
    private static Dimension Of(decimal millimetres) => Dimension.OfMillimetres(millimetres);

    private static SeatpostRoom Room(decimal rails, decimal open, decimal least = 80) => new() { RailHeight = Of(rails), OpenDepth = Of(open), LeastInsertion = Of(least) };

    private static DropperSize Post(decimal travel, decimal stack, decimal length, decimal actuator = 0) =>
        new() { Travel = DropperTravel.OfMillimetres(travel), Stack = Of(stack), TotalLength = Of(length), Actuator = Length.FromMillimeters((double)actuator) };

    [Theory]
    [InlineData(225, 250, null, Verdict.Fits, 0)] // 170 and 55: the lip on the collar
    [InlineData(235, 250, null, Verdict.Fits, 0)]
    [InlineData(224, 250, null, Verdict.NeedsMeasuring, 1)]
    [InlineData(215, 260, 10.0, Verdict.NeedsPart, 10)]
    [InlineData(214, 260, 10.0, Verdict.DoesNotFit, 11)]
    [InlineData(235, 225, 10.0, Verdict.NeedsPart, 10)] // 470 less 235 is 235: ten too deep for the tube
    [InlineData(235, 224, 10.0, Verdict.DoesNotFit, 11)]
    [InlineData(395, 225, null, Verdict.Unsafe, 0)]
    public void A_dropper_of_170(double rails, double open, double? shim, Verdict verdict, double asked)
    {
        DropperFit fit = DropperFit.Of(Post(170, 55, 470), Room((decimal)rails, (decimal)open), shim is { } most ? Length.FromMillimeters(most) : null, Length.Zero);
        Assert.Equal(verdict, fit.Check.Verdict);
        Assert.Equal(asked, fit.ShimDown!.Value.Millimeters, 1e-8);
        Assert.Equal(170 - asked, fit.Travel!.Value.Millimeters, 1e-8);
        Assert.Equal(470 - asked - rails, fit.Insertion!.Value.Millimeters, 1e-8);
        Assert.Equal(rails - 55 - (170 - asked), fit.Leftover!.Value.Millimeters, 1e-8);
        Assert.Equal(open - (470 - asked - rails), fit.LeftoverBelow!.Value.Millimeters, 1e-8);
    }

    [Theory]
    [InlineData(209, 80, 20.0, 5.0, Verdict.NeedsPart, 20)] // 16 asked
    [InlineData(209, 80, 16.0, 5.0, Verdict.DoesNotFit, 20)]
    [InlineData(209, 80, 20.0, 0.0, Verdict.NeedsPart, 16)]
    [InlineData(209, 80, 20.0, null, Verdict.NeedsMeasuring, 16)]
    [InlineData(209, 80, 15.0, null, Verdict.DoesNotFit, 16)]
    [InlineData(209, 243, 20.0, 5.0, Verdict.Unsafe, 20)] // 245 deep with 16 away, 241 with 20
    [InlineData(225, 80, 20.0, null, Verdict.Fits, 0)]
    public void A_shim_comes_in_steps(double rails, double least, double most, double? step, Verdict verdict, double shimmed)
    {
        DropperFit fit = DropperFit.Of(Post(170, 55, 470), Room((decimal)rails, 280, (decimal)least), Length.FromMillimeters(most), step is { } known ? Length.FromMillimeters(known) : null);
        Assert.Equal(verdict, fit.Check.Verdict);
        Assert.Equal(shimmed, fit.ShimDown!.Value.Millimeters, 1e-8);
        Assert.Equal(470 - shimmed - rails, fit.Insertion!.Value.Millimeters, 1e-8);
    }

    /// <summary>Which of the two asks for more is named; where both ask for as much, the rider. A shim of the whole travel leaves no dropper.</summary>
    [Theory]
    [InlineData(215, 260, "for the rider")]
    [InlineData(235, 225, "for the depth of the seat tube")]
    [InlineData(215, 245, "for the rider")]
    public void It_is_told_whether_rider_or_tube_asks(double rails, double open, string why)
    {
        DropperFit fit = DropperFit.Of(Post(170, 55, 470), Room((decimal)rails, (decimal)open), Length.FromMillimeters(10), Length.Zero);
        Assert.Equal(Verdict.NeedsPart, fit.Check.Verdict);
        Assert.Contains(why, fit.Check.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shim_of_the_whole_travel_leaves_no_dropper()
    {
        DropperFit fit = DropperFit.Of(Post(30, 55, 470), Room(55, 470), Length.FromMillimeters(30), Length.Zero);
        Assert.Equal(30, fit.ShimDown!.Value.Millimeters, 1e-8);
        Assert.Equal(Verdict.DoesNotFit, fit.Check.Verdict);
        Assert.Contains("which is its whole travel", fit.Check.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_post_too_high_rests_on_the_frame_makers_manual_too()
    {
        SumCheck high = Post(170, 55, 470).Check(Of(395), Of(250), Of(80));
        Assert.Equal(Verdict.Unsafe, high.Verdict);
        Assert.Contains(high.Sources, s => s.Id == Lugwork.Sources.FrameManual.Id);
        Assert.DoesNotContain(Post(170, 55, 470).Check(Of(235), Of(250), Of(80)).Sources, s => s.Id == Lugwork.Sources.FrameManual.Id);
    }

    [Fact]
    public void What_is_not_known_is_no_zero()
    {
        DropperFit fit = DropperFit.Of(Post(150, 55, 440), new() { RailHeight = default, OpenDepth = Of(200), LeastInsertion = Of(80) });
        Assert.All((Length?[])[fit.ShimDown, fit.Travel, fit.Insertion, fit.Leftover, fit.LeftoverBelow], length => Assert.Null(length));
    }

    [Fact]
    public void What_is_left_over_above_and_below()
    {
        DropperFit fit = DropperFit.Of(Post(150, 55, 440, 25), Room(220, 260));
        Assert.Equal(15, fit.Leftover!.Value.Millimeters, 1e-8);
        Assert.Equal(15, fit.LeftoverBelow!.Value.Millimeters, 1e-8);
        Assert.Equal(165, Room(220, 260).LongestTravel(Of(55)).Millimeters, 1e-8);
        Assert.Equal(Verdict.NeedsMeasuring, DropperFit.Of(Post(150, 55, 440), new() { RailHeight = default, OpenDepth = Of(200), LeastInsertion = Of(80) }).Check.Verdict);
    }

    /// <summary>Without a shim both ways of judging a dropper say the same, and the shim it asks for is the least that does.</summary>
    [Property(MaxTest = 2_000)]
    public void The_shim_is_the_least_that_makes_it_fit(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        SeatpostRoom room = Room(random.Next(120, 320), random.Next(120, 320), random.Next(60, 120));
        (int travel, int stack, int length, int actuator) = (random.Next(100, 240), random.Next(40, 70), random.Next(320, 560), random.Next(0, 2) * 25);
        DropperFit fit = DropperFit.Of(Post(travel, stack, length, actuator), room, Length.FromMillimeters(400), Length.Zero);
        decimal shim = (decimal)fit.ShimDown!.Value.Millimeters;
        if (shim == 0)
        {
            Verdict other = Post(travel, stack, length, actuator).Check(room.RailHeight, room.OpenDepth, room.LeastInsertion).Verdict;
            Assert.Equal(other, fit.Check.Verdict);
        }
        else if (fit.Check.Verdict == Verdict.NeedsPart && travel - shim >= 30)
        {
            Assert.Equal(Verdict.Fits, Post(travel - shim, stack, length - shim, actuator).Check(room.RailHeight, room.OpenDepth, room.LeastInsertion).Verdict);
            Assert.NotEqual(Verdict.Fits, Post(travel - shim + 1, stack, length - shim + 1, actuator).Check(room.RailHeight, room.OpenDepth, room.LeastInsertion).Verdict);
        }
    }

    [Theory]
    [InlineData(300, Verdict.Fits)]
    [InlineData(280, Verdict.Fits)]
    [InlineData(279.9, Verdict.Unsafe)]
    [InlineData(400, Verdict.Fits)]
    [InlineData(400.1, Verdict.DoesNotFit)]
    public void A_rigid_post(double length, Verdict verdict) => Assert.Equal(verdict, Room(200, 200).Check(Of((decimal)length)).Verdict);

    [Fact]
    public void Saddle_height_and_rails_invert()
    {
        Length rails = SaddleHeight.RailsAboveCollar(Length.FromMillimeters(735), Length.FromMillimeters(440), Length.FromMillimeters(45));
        Assert.Equal(250, rails.Millimeters, 1e-8);
        Assert.Equal(735, SaddleHeight.Of(rails, Length.FromInches(440 / 25.4), Length.FromMillimeters(45)).Millimeters, 1e-8);
        Assert.Throws<ArgumentOutOfRangeException>(() => SaddleHeight.RailsAboveCollar(Length.FromMillimeters(1_201), Length.FromMillimeters(440), Length.FromMillimeters(45)));
        Assert.Throws<ArgumentOutOfRangeException>(() => DropperFit.StackOf(Of(100), DropperTravel.OfMillimetres(100)));
    }

    [Fact]
    public void Rules_of_thumb_are_a_range_with_sources_and_a_caution()
    {
        RuleOfThumb saddle = SaddleHeightRule.Range(Length.FromCentimeters(80), Length.FromMillimeters(170));
        Assert.Equal(699.9, saddle.Least.Millimeters, 1e-6);
        Assert.Equal(706.4, saddle.Most.Millimeters, 1e-6);
        Assert.Contains(Sources.Memory, saddle.Sources);
        Assert.Contains("rules of thumb", saddle.ToString(), StringComparison.Ordinal);
        Assert.Equal("body-rules", RuleOfThumb.Caution.Id);
        RuleOfThumb crank = CrankLengthRule.Range(Length.FromInches(29));
        Assert.Equal(158.92, crank.Least.Millimeters, 1e-6);
        Assert.Equal(165, crank.Most.Millimeters, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => CrankLengthRule.Range(Length.FromMillimeters(399)));
    }

    [Fact]
    public void A_rule_is_not_asked_beyond_what_is_printed()
    {
        Assert.Equal(150, CrankLengthRule.Proportion.For(CrankLengthRule.Proportion.LeastInseam).Millimeters, 6);
        Assert.Equal(200, CrankLengthRule.Proportion.For(CrankLengthRule.Proportion.MostInseam).Millimeters, 6);
        Assert.Throws<ArgumentOutOfRangeException>(() => CrankLengthRule.Proportion.For(Length.FromMillimeters(690)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CrankLengthRule.Proportion.For(Length.FromMillimeters(930)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CrankLengthRule.Steps.For(Length.FromInches(28.9)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CrankLengthRule.Steps.For(Length.FromInches(33.1)));
        Assert.Equal(175, CrankLengthRule.Steps.For(Length.FromInches(33)).Millimeters, 6);
        RuleOfThumb tall = CrankLengthRule.Range(Length.FromInches(35));
        Assert.Equal((191.8, 191.8), (Math.Round(tall.Least.Millimeters, 6), Math.Round(tall.Most.Millimeters, 6)));
        Assert.Equal("crank length about 191.8 mm by one rule of thumb, no other is printed for it", tall.ToString());
        Assert.Equal([Sources.CrankFormula, Sources.CrankFormulaRange], tall.Sources);
        foreach (SaddleHeightRule rule in SaddleHeightRule.All)
        {
            Assert.True(rule.For(rule.LeastInput) < rule.For(rule.MostInput));
            Assert.Throws<ArgumentOutOfRangeException>(() => rule.For(rule.LeastInput - Length.FromMillimeters(1)));
            Assert.Throws<ArgumentOutOfRangeException>(() => rule.For(rule.MostInput + Length.FromMillimeters(1)));
        }
    }
}
