using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Tests.Fits;

/// <summary>A figure that is missing, a default or plainly misread never ends as a fit in any sum.</summary>
public sealed class MissingFigureTests
{
    private static readonly DropperSize Post = new() { Travel = DropperTravel.OfMillimetres(170), Stack = Of(55), TotalLength = Of(470), Actuator = Length.Zero };

    private static readonly SeatpostRoom Room = new() { RailHeight = Of(235), OpenDepth = Of(250), LeastInsertion = Of(80) };

    private static Dimension Of(decimal millimetres) => Dimension.OfMillimetres(millimetres);

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    [Fact]
    public void A_dropper_without_one_of_its_own_lengths_is_measured()
    {
        Assert.Equal(Verdict.Fits, Post.Check(Room.RailHeight, Room.OpenDepth, Room.LeastInsertion).Verdict);
        foreach (DropperSize lacking in (DropperSize[])[Post with { Travel = default }, Post with { Stack = default }, Post with { TotalLength = default }, Post with { Actuator = null }])
        {
            Assert.Equal(Verdict.NeedsMeasuring, lacking.Check(Room.RailHeight, Room.OpenDepth, Room.LeastInsertion).Verdict);
            Assert.Equal(Verdict.NeedsMeasuring, DropperFit.Of(lacking, Room, Mm(25), Mm(5)).Check.Verdict);
        }
    }

    [Fact]
    public void An_actuator_that_is_not_known_settles_nothing_but_a_refusal()
    {
        DropperSize post = Post with { Actuator = null };
        DropperFit fit = DropperFit.Of(post, Room, Mm(25), Mm(5));
        Assert.All((Length?[])[fit.ShimDown, fit.Travel, fit.Insertion, fit.Leftover, fit.LeftoverBelow], length => Assert.Null(length));
        Assert.Equal(Verdict.NeedsMeasuring, DropperFit.Of(post, Room with { RailHeight = Of(215), OpenDepth = Of(280) }, Mm(25), Mm(5)).Check.Verdict);
        Assert.Equal(Verdict.DoesNotFit, DropperFit.Of(post, Room with { RailHeight = Of(150) }, Mm(25), Mm(5)).Check.Verdict);
        Assert.Equal(Verdict.Unsafe, DropperFit.Of(post, Room with { RailHeight = Of(395) }, Mm(25), Mm(5)).Check.Verdict);
        Assert.Equal(Verdict.DoesNotFit, post.Check(Room.RailHeight, Of(230), Of(80)).Verdict);
        Assert.Null(post.OpenDepthAt(Room.RailHeight));
        Assert.Throws<ArgumentOutOfRangeException>(() => Post with { Actuator = Mm(201) });
    }

    [Theory]
    [InlineData(1_000, 40, Verdict.Fits)]
    [InlineData(1_001, 40, Verdict.NeedsMeasuring)]
    [InlineData(1_000, 39.9, Verdict.NeedsMeasuring)]
    [InlineData(0, 80, Verdict.NeedsMeasuring)]
    [InlineData(250, 0, Verdict.NeedsMeasuring)]
    public void A_depth_that_no_frame_has_and_a_least_that_no_post_has_are_measured_again(double open, double least, Verdict verdict)
    {
        SeatpostRoom room = new() { RailHeight = Of(235), OpenDepth = open == 0 ? default : Of((decimal)open), LeastInsertion = least == 0 ? default : Of((decimal)least) };
        Assert.Equal(verdict, room.Check(Of(400)).Verdict);
        Assert.Equal(verdict, DropperFit.Of(Post, room, Mm(25), Mm(5)).Check.Verdict);
        Assert.Equal(verdict, Post.Check(room.RailHeight, room.OpenDepth, room.LeastInsertion).Verdict);
    }

    [Fact]
    public void No_travel_is_named_without_the_stack()
    {
        Assert.Throws<ArgumentException>(() => DropperSize.LongestTravel(Of(235), default));
        Assert.Throws<ArgumentException>(() => DropperSize.LongestTravel(default, Of(55)));
        Assert.Throws<ArgumentException>(() => Room.LongestTravel(default));
        Assert.Throws<ArgumentException>(() => (Room with { RailHeight = default }).LongestTravel(Of(55)));
        Assert.Throws<ArgumentException>(() => Room.InsertionOf(default));
        Assert.Throws<ArgumentException>(() => (Room with { RailHeight = default }).InsertionOf(Of(350)));
        Assert.Throws<ArgumentException>(() => DropperFit.StackOf(Of(225), default));
    }

    [Theory]
    [InlineData(0, 40)]
    [InlineData(125, 0)]
    public void A_steerer_without_head_tube_or_stem_is_measured(int headTube, int stem)
    {
        SteererLength stack = SteererLength.OfMillimetres(headTube, 12, 14, 20, stem);
        Assert.Equal(Verdict.NeedsMeasuring, stack.Check(stack.Cut).Verdict);
        Assert.Throws<ArgumentOutOfRangeException>(() => SteererCut.SpacersBelowFor(default, Mm(200)));
    }

    [Fact]
    public void A_cut_is_no_fit_before_the_material_and_the_limits_of_carbon_are_known()
    {
        SteererLength stack = SteererLength.OfMillimetres(125, 12, 14, 20, 40);
        Assert.Equal(Verdict.Fits, SteererCut.Of(stack, Mm(265), Material.Aluminium).Check.Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, SteererCut.Of(stack, Mm(265)).Check.Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, SteererCut.Of(stack, Mm(265), Material.Carbon).Check.Verdict);
        Assert.Equal(Verdict.Fits, SteererCut.Of(stack, Mm(265), Material.Carbon, Mm(30)).Check.Verdict);
        Assert.Equal(Verdict.Unsafe, SteererCut.Of(stack, Mm(265), Material.Carbon, Mm(15)).Check.Verdict);
        Assert.Equal(Verdict.Unsafe, SteererCut.Of(stack with { SpacersBelow = Mm(60) }, Mm(265), Material.Carbon).Check.Verdict);
        Assert.Equal(Verdict.Unsafe, SteererCut.Of(stack, Mm(200), material: null).Check.Verdict);
    }

    [Fact]
    public void A_least_of_the_fork_maker_is_asked_for_and_a_misread_most_is_refused()
    {
        SteererSize steerer = SteererSize.Parse("28.6", null);
        Assert.Equal(Verdict.NeedsMeasuring, SteererSpacers.OnCarbon(steerer, Mm(0), Mm(40)).Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, SteererSpacers.OnCarbon(steerer, Mm(4.9), Mm(40)).Verdict);
        Assert.Equal(Verdict.Fits, SteererSpacers.OnCarbon(steerer, Mm(5), Mm(40)).Verdict);
        Assert.Equal(Verdict.Fits, SteererSpacers.OnCarbon(steerer, Mm(0), Mm(40), Mm(0)).Verdict);
        Assert.Equal(Verdict.NeedsPart, SteererSpacers.OnCarbon(steerer, Mm(9), Mm(40), Mm(10)).Verdict);
        Assert.Throws<ArgumentOutOfRangeException>(() => SteererSpacers.OnCarbon(steerer, Mm(45), Mm(4_000)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SteererSpacers.OnCarbon(steerer, Mm(5), Mm(40), Mm(41)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SteererSpacers.OnCarbon(steerer, Mm(5), Mm(40), Mm(-1)));
    }

    /// <summary>A narrow tyre is often printed with 5 bar and more as its least.</summary>
    [Theory]
    [InlineData(3.0)]
    [InlineData(6.0)]
    public void A_tyre_whose_least_is_not_known_fits_at_no_pressure(double bars)
    {
        Pressure most = Pressure.FromBars(8);
        Assert.Equal(Verdict.NeedsMeasuring, PressureLimits.Of(most, most, RimType.Crochet).Check(Pressure.FromBars(bars)).Verdict);
        Assert.Equal(Verdict.Fits, PressureLimits.Of(most, most, RimType.Crochet, Pressure.FromBars(bars)).Check(Pressure.FromBars(bars)).Verdict);
        Assert.False(PressureLimits.Of(most, most, RimType.Crochet).IsComplete);
    }

    [Fact]
    public void Room_around_a_tyre_on_a_rim_that_is_not_known_is_measured()
    {
        TyreSize size = TyreSize.Parse("40-622", null);
        Assert.Equal(Verdict.Fits, TyreClearance.EachSide(MountedTyre.OnRim(size, Mm(23)), Mm(70)).Check(ClearanceRule.Others).Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, TyreClearance.EachSide(MountedTyre.OnMeasuringRim(size), Mm(70)).Check(ClearanceRule.Others).Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, TyreClearance.Above(MountedTyre.OnMeasuringRim(size), Mm(400)).Check(ClearanceRule.Others).Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, TyreClearance.EachSide(MountedTyre.OnMeasuringRim(size), Mm(40)).Check(ClearanceRule.Others).Verdict);
    }

    [Theory]
    [InlineData(1.6, 0.15)] // 1.5 misread
    [InlineData(1.6, 1.19)]
    [InlineData(16.0, 1.5)] // 1.6 misread
    [InlineData(1.6, 15.0)]
    public void A_rotor_with_a_mark_or_a_reading_that_no_rotor_has_is_read_again(double thickness, double marked)
    {
        Assert.Equal(Verdict.NeedsMeasuring, RotorThickness.Check(MeasuredLength.OfMillimetres((decimal)thickness, 0.01m), Of((decimal)marked)).Verdict);
        Assert.Equal(Verdict.Fits, RotorThickness.Check(MeasuredLength.OfMillimetres(1.6m, 0.01m), Of(1.5m)).Verdict);
    }

    [Fact]
    public void A_frame_is_never_told_about_by_an_empty_list()
    {
        FrameGeometry frame = Geometry.Frames.Drawn;
        Assert.Equal(Verdict.Fits, Assert.Single(new FrameLimits().Check(frame, frame)).Verdict);
        FrameGeometry longer = frame.WithFork(Mm(551), frame.ForkOffset);
        Assert.Equal(["axle to crown", "head angle"], new FrameLimits { LongestFork = Mm(560), SlackestHeadAngle = Angle.FromDegrees(60) }.Check(frame, longer).Select(f => f.Figures[0].Name));
        Assert.All(new FrameLimits { LongestFork = Mm(560), SlackestHeadAngle = Angle.FromDegrees(60) }.Check(frame, longer), f => Assert.Equal(Verdict.Fits, f.Verdict));
    }

    [Fact]
    public void A_chain_on_an_axle_that_cannot_move_is_tried()
    {
        SingleSpeedChain tight = SingleSpeedChain.ForFixedAxle(Mm(635), 18, 18);
        Assert.Equal(0, tight.Slack.Millimeters, 6);
        Assert.Equal(Verdict.NeedsMeasuring, tight.Check.Verdict);
        Assert.Equal(Verdict.NeedsPart, SingleSpeedChain.ForFixedAxle(Mm(632), 18, 18).Check.Verdict);
    }

    [Fact]
    public void Sprockets_on_the_other_side_of_the_frame_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SprocketSpacing.Parse("12-speed", null).InInnerGap(Of(13.5m)));
}
