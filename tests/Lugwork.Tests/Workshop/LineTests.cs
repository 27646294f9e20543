using Lugwork.Geometry;
using Lugwork.Tests.Builds;
using UnitsNet;

namespace Lugwork.Tests.Workshop;

/// <summary>Hoses and housing from the points of a frame: estimates that say they are, along the bar that is there, and none where the way is not known.</summary>
public sealed class LineTests
{
    private static readonly FrameGeometry Frame = new FrameChart { Reach = Length.FromMillimeters(400), HeadAngle = Angle.FromDegrees(70), SeatAngle = Angle.FromDegrees(73), Chainstay = Length.FromMillimeters(435), BottomBracketDrop = Length.FromMillimeters(60), HeadTube = Length.FromMillimeters(120), LowerStack = Length.FromMillimeters(10), AxleToCrown = Length.FromMillimeters(450), ForkOffset = Length.FromMillimeters(45), RearRadius = Length.FromMillimeters(345), FrontRadius = Length.FromMillimeters(345) }.ToGeometry();

    private static readonly double Down = Math.Sqrt(Math.Pow(Frame.HeadTubeBottom.X.Millimeters, 2) + Math.Pow(Frame.HeadTubeBottom.Y.Millimeters, 2));

    private static Build With(string bar, string frame = "material steel") => Build.From(Lugwork.Frame.Read(frame)).With(Handlebar.Read(bar)).With(BrakeLever.Read("fluid mineral"), Slot.FrontBrakeLever).With(BrakeLever.Read("fluid mineral"), Slot.RearBrakeLever);

    private static WorkFigure Line(Build build, string step, string id) => build.WorkPlan(Frame).Find(step)!.Figures.Single(f => f.Id == id);

    private static double Rounded(double path) => Math.Ceiling((path + 200) / 10) * 10;

    [Theory]
    [InlineData("width 740; grip 22.2", 370)]
    [InlineData("width 420; grip 23.8", 330)]
    public void A_hose_runs_along_the_bar_the_tubes_and_the_fork_or_stay(string bar, double along)
    {
        Build build = With(bar);
        WorkFigure front = Line(build, "connect-front-brake", "front-brake-line");
        WorkFigure rear = Line(build, "connect-rear-brake", "rear-brake-line");
        Assert.Equal(Rounded(along + 120 + Frame.LowerStack.Millimeters + Frame.AxleToCrown.Millimeters), front.Value);
        Assert.Equal(Rounded(along + Down + 435), rear.Value);
        Assert.All(new[] { front, rear }, f => Assert.True(f.Words.Contains("an estimate to buy by", StringComparison.Ordinal) && f.Words.Contains("200 mm of our own", StringComparison.Ordinal) && f.Words.Contains("not known are stem", StringComparison.Ordinal), f.Words));
        Assert.Equal(along == 330, front.Words.Contains("120 mm of our own along the bend", StringComparison.Ordinal));
        Assert.Equal(along == 330, front.Words.Contains("reach of the bar", StringComparison.Ordinal));
        Assert.False(build.WorkPlan().Find("connect-front-brake")!.Figures.Single(f => f.Id == "front-brake-line").IsKnown);
    }

    [Theory]
    [InlineData("width 740", "whether the bar is a drop bar or a flat one")]
    [InlineData("grip 22.2", "the width of the bar")]
    [InlineData("grip 23.8", "the width of the bar")]
    public void Without_the_kind_or_the_width_of_the_bar_nothing_is_estimated_and_it_says_so(string bar, string lacking)
    {
        WorkFigure front = Line(With(bar), "connect-front-brake", "front-brake-line");
        Assert.False(front.IsKnown);
        Assert.Contains($"for an estimate {lacking}", front.Lacking);
        Assert.Contains("measured along the path", front.Lacking[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_length_that_is_stated_stands_as_it_is_and_shift_lines_are_estimated_like_hoses()
    {
        Build build = With("width 420; grip 23.8").With(Shifter.Read("cable; housing length 1803"), Slot.RearShifter).With(Shifter.Read("cable"), Slot.FrontShifter);
        Assert.Equal(1803, Line(build, "connect-shifters", "shift-line").Value);
        Assert.Empty(Line(build, "connect-shifters", "shift-line").Words);
        Assert.Equal(Rounded(330 + Down), Line(build, "connect-shifters", "front-shift-line").Value);
        Assert.Equal(Rounded(330 + Down + 435), Line(build.With(Shifter.Read("cable"), Slot.RearShifter), "connect-shifters", "shift-line").Value);
    }

    private static readonly FrameGeometry Unangled = new FrameChart { Reach = Length.FromMillimeters(400), HeadAngle = Angle.FromDegrees(70), Chainstay = Length.FromMillimeters(435), BottomBracketDrop = Length.FromMillimeters(60), HeadTube = Length.FromMillimeters(120), LowerStack = Length.FromMillimeters(10), AxleToCrown = Length.FromMillimeters(450), ForkOffset = Length.FromMillimeters(45), RearRadius = Length.FromMillimeters(345), FrontRadius = Length.FromMillimeters(345) }.ToGeometry();

    /// <summary>Top of a seat tube of 500 mm at 73 degrees, worked out by hand: 146.2 mm behind and 478.2 mm above the bottom bracket.</summary>
    private static (double TopTube, double Stay) Outside()
    {
        (double x, double y) = (-146.186, 478.152);
        double topTube = Math.Sqrt(Math.Pow(Frame.HeadTubeTop.X.Millimeters - x, 2) + Math.Pow(Frame.HeadTubeTop.Y.Millimeters - y, 2));
        (double axleX, double axleY) = (-Math.Sqrt((435 * 435) - (60 * 60)), 60);
        return (topTube, Math.Sqrt(Math.Pow(axleX - x, 2) + Math.Pow(axleY - y, 2)));
    }

    private static Build Rim(string end, string frame = "material steel; seat tube length 500") => Build.From(Lugwork.Frame.Read(frame)).With(Handlebar.Read("width 740; grip 22.2")).With(BrakeLever.Read("pull long"), end == "front" ? Slot.FrontBrakeLever : Slot.RearBrakeLever).With(RimBrake.Read("type cantilever"), end == "front" ? Slot.FrontRimBrake : Slot.RearRimBrake);

    [Fact]
    public void The_line_of_a_rim_brake_ends_at_the_crown_in_front_and_at_the_rim_behind()
    {
        Assert.Equal(Rounded(370 + 120 + Frame.LowerStack.Millimeters), Line(Rim("front"), "connect-front-brake", "front-brake-line").Value);
        WorkFigure rear = Line(Rim("rear").With(Wheel.Read("beadSeat 622"), Slot.RearWheel), "connect-rear-brake", "rear-brake-line");
        Assert.Equal(Rounded(370 + Outside().TopTube + Outside().Stay - 311), rear.Value);
        Assert.Contains("tubes are taken as straight", rear.Words, StringComparison.Ordinal);
        Assert.Equal(rear.Value, Line(Rim("rear").With(Tyre.Read("37-622"), Slot.RearTyre), "connect-rear-brake", "rear-brake-line").Value);
        Assert.NotEqual(rear.Value, Line(Rim("rear").With(Wheel.Read("beadSeat 406"), Slot.RearWheel), "connect-rear-brake", "rear-brake-line").Value);
    }

    [Fact]
    public void The_line_of_a_rear_rim_brake_says_what_it_lacks()
    {
        Assert.Equal(["for an estimate the length of the seat tube", "for an estimate the bead seat of the rear wheel"], Line(Rim("rear", "material steel"), "connect-rear-brake", "rear-brake-line").Lacking[1..]);
        WorkFigure line = Rim("rear").With(Wheel.Read("beadSeat 622"), Slot.RearWheel).WorkPlan(Unangled).Find("connect-rear-brake")!.Figures.Single(f => f.Id == "rear-brake-line");
        Assert.Equal(["for an estimate the seat angle of the chart"], line.Lacking[1..]);
    }

    [Theory]
    [InlineData("external; travel 120; stack 60", null)]
    [InlineData("external; stack 60", "for an estimate the travel of the dropper")]
    [InlineData("external; travel 120", "for an estimate the stack of the dropper, since the line may end at its head")]
    [InlineData("travel 120; stack 60", "for an estimate whether it runs inside the frame or outside")]
    public void The_housing_of_a_dropper_outside_runs_along_the_top_tube_and_up_the_post(string dropper, string? lacks)
    {
        Build build = With("width 740; grip 22.2", "material steel; seat tube length 500").With(Dropper.Read(dropper)).With(Seatpost.Read("27.2; insertion 120"));
        WorkFigure line = Line(build, "fit-dropper-line", "dropper-line");
        Assert.Equal(lacks is null ? Rounded(370 + Outside().TopTube + 120 + 60) : null, line.Value);
        Assert.Equal(lacks is null ? [] : new[] { lacks }, line.Lacking.Skip(1));
        Assert.True(lacks is not null || line.Words.Contains("tubes are taken as straight", StringComparison.Ordinal));
    }

    [Fact]
    public void The_housing_of_a_dropper_that_is_cut_stands_in_the_build()
    {
        Build build = With("width 740; grip 22.2", "material steel; seat tube length 440").With(Dropper.Read("internal")).With(Seatpost.Read("27.2"));
        Build built = WorkRecord.For(build.WorkPlan(Frame)).Measured("fit-dropper-line", "dropper-line", Length.FromMillimeters(1480)).AsBuilt();
        Assert.Equal((Slot.Dropper, "housingLength", "1480", AsBuiltKind.Cut), built.AsBuilt.Select(v => (v.Slot, v.Field, v.Value, v.Kind)).Single());
        Assert.Equal(1480, Line(built, "fit-dropper-line", "dropper-line").Value);
        Assert.Empty(Line(built, "fit-dropper-line", "dropper-line").Words);
        Assert.Equal(1480, Line(build.With(Dropper.Read("internal; housing length 1480")), "route-lines", "dropper-line").Value);
    }

    [Theory]
    [InlineData("internal", "seat tube length 440", "27.2; insertion 120", 320.0)]
    [InlineData("internal", "seat tube length 440", "27.2", 440.0)]
    [InlineData("internal", "seat tube length 440", "27.2; insertion 460", 440.0)]
    [InlineData("internal", "", "27.2; insertion 120", null)]
    [InlineData("", "seat tube length 440", "27.2; insertion 120", null)]
    public void The_housing_of_a_dropper_goes_down_and_up_again_to_the_end_of_the_post(string routing, string tube, string post, double? up)
    {
        Build build = With("width 740; grip 22.2", $"material steel; {tube}").With(routing.Length == 0 ? Dropper.Read("travel 150") : Dropper.Read(routing)).With(Seatpost.Read(post));
        WorkFigure line = Line(build, "fit-dropper-line", "dropper-line");
        Assert.Equal(up is { } way ? Rounded(370 + Down + way) : null, line.Value);
        Assert.Equal(up is null, !line.IsKnown);
        Assert.Equal(up == 440, line.Words.Contains("the whole seat tube", StringComparison.Ordinal));
        Assert.Equal(up is { } far ? Rounded(330 + Down + far) : null, Line(build.With(Handlebar.Read("width 420; grip 23.8")), "fit-dropper-line", "dropper-line").Value);
        Assert.Null(build.With(Dropper.Read("wireless")).WorkPlan(Frame).Find("fit-dropper-line")!.Figures.FirstOrDefault(f => f.Id == "dropper-line"));
    }

    [Fact]
    public void An_estimate_is_answered_with_what_was_cut()
    {
        WorkPlan plan = With("width 420; grip 23.8").WorkPlan(Frame);
        Build built = WorkRecord.For(plan).Measured("connect-rear-brake", "rear-brake-line", Length.FromMillimeters(1655)).AsBuilt();
        Assert.Equal(1655, ((BrakeLever)built[Slot.RearBrakeLever]!).HoseLength.Value.Millimetres);
        Assert.Empty(Line(built, "connect-rear-brake", "rear-brake-line").Words);
    }
}
