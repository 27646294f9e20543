using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tests.Builds;
using Lugwork.Workshop;
using UnitsNet;

namespace Lugwork.Tests.Workshop;

/// <summary>Figures of a plan are those of the sums, and say what they lack where an input is missing.</summary>
public sealed class FigureTests
{
    private const string Stacked = "kind road; material steel; head tube ZS44|ZS56; head tube length 140; chainstay 410; seat tube length 520; seatTube 27.2; leastInsertion 90; mostInsertion 230; rearBrake PM-160; largestRearRotor 180";

    private static readonly Build Known = Build.From(Frame.Read(Stacked))
        .With(Fork.Read("steerer shape straight 1-1/8; steerer kind threadless; steererMaterial steel; crowns single; steererLength 300"))
        .With(Headset.Read("upper ZS44/28.6; lower ZS56/40; threadless; upper stack 12; lower stack 10"))
        .With(Stem.Read("28.6 clamp; bar 31.8; clamp height 40; spacers below 15; spacers above 5"))
        .With(Crankset.Read("spindle 24-road; largest ring 46; smallest ring 30"))
        .With(Cassette.Read("9-speed HG; smallest sprocket 11; largest sprocket 34"))
        .With(RearDerailleur.Read("M10 bolt; chain 9; capacity 39; chain allowance 2"))
        .With(Chain.Read("9-speed"))
        .With(Seatpost.Read("27.2 x 350; mark 100"))
        .With(Saddle.Read("7 mm round; depth 45"))
        .With(Caliper.Read("post"), Slot.RearCaliper)
        .With(Rotor.Read("180; six-bolt; thickness 1.8"), Slot.RearRotor)
        .With(Rider.Read("82 kg; saddle height 740"));

    private static readonly WorkPlan Plan = Known.WorkPlan();

    [Fact]
    public void The_steerer_is_cut_where_the_sum_says()
    {
        SteererLength stack = SteererLength.OfMillimetres(140, 10, 12, 15, 40, 5);
        SteererCut cut = SteererCut.Of(stack, Length.FromMillimeters(300), Material.Aluminium);
        Same(219, Of("cut-steerer", "steerer-cut"));
        Same(stack.Cut.Millimeters, Of("cut-steerer", "steerer-cut"));
        Same(stack.Shortest.Millimeters, Of("cut-steerer", "steerer-shortest"));
        Same(cut.Off.Millimeters, Of("cut-steerer", "steerer-off"));
        Same(cut.GapUnderCap.Millimeters, Of("cut-steerer", "gap-after-cut"));
    }

    [Fact]
    public void For_any_stack_gears_and_post_the_figures_are_those_of_the_sums()
    {
        Random random = new(9);
        for (int i = 0; i < 60; i++)
        {
            int Of(int least, int most) => random.Next(least, most + 1);
            (int head, int below, int above, int upper, int lower, int clamp) = (Of(80, 220), Of(0, 40), Of(0, 10), Of(2, 20), Of(1, 15), Of(30, 50));
            (int stay, int ring, int inner, int small, int large, int capacity) = (Of(390, 470), Of(40, 53), Of(22, 39), Of(10, 12), Of(25, 52), Of(30, 60));
            (int saddle, int tube, int depth, int post) = (Of(700, 800), Of(420, 560), Of(35, 55), Of(300, 450));
            WorkPlan plan = Build.From(Frame.Read($"kind road; material steel; head tube length {head}; chainstay {stay}; seat tube length {tube}; seatTube 27.2"))
                .With(Fork.Read("steerer kind threadless; steererMaterial steel; crowns single; steererLength 350"))
                .With(Headset.Read($"threadless; upper stack {upper}; lower stack {lower}"))
                .With(Stem.Read($"28.6 clamp; clamp height {clamp}; spacers below {(below == 0 ? "none" : below)}; spacers above {(above == 0 ? "none" : above)}"))
                .With(Crankset.Read($"largest ring {ring}; smallest ring {inner}")).With(Cassette.Read($"9-speed HG; smallest sprocket {small}; largest sprocket {large}"))
                .With(RearDerailleur.Read($"M10 bolt; chain 9; capacity {capacity}; chain allowance 2")).With(Chain.Read("9-speed"))
                .With(Seatpost.Read($"27.2 x {post}")).With(Saddle.Read($"7 mm round; depth {depth}")).With(Rider.Read($"82 kg; saddle height {saddle}")).WorkPlan();
            WorkFigure In(string step, string id) => plan.Find(step)!.Figures.Single(f => f.Id == id);
            SteererLength stack = SteererLength.OfMillimetres(head, lower, upper, below, clamp, above);
            Same(stack.Cut.Millimeters, In("cut-steerer", "steerer-cut"));
            Same(SteererCut.Of(stack, Length.FromMillimeters(350), Material.Aluminium).Off.Millimeters, In("cut-steerer", "steerer-off"));
            Same(ChainRule.BigBig(Length.FromMillimeters(stay), ring, large, 2).EvenPitches, In("fit-chain", "chain-pitches"));
            Same(ChainRule.SmallSmall(Length.FromMillimeters(stay), inner, small, capacity, 2).EvenPitchesNotAbove, In("fit-chain", "chain-most"));
            Same(post - (saddle - tube - depth), In("fit-seatpost", "post-insertion"));
        }
    }

    [Fact]
    public void The_chain_is_as_long_as_the_rule_says()
    {
        Same(ChainRule.BigBig(Length.FromMillimeters(410), 46, 34, 2).EvenPitches, Of("fit-chain", "chain-pitches"));
        Same(ChainRule.SmallSmall(Length.FromMillimeters(410), 30, 11, 39, 2).EvenPitchesNotAbove, Of("fit-chain", "chain-most"));
    }

    [Fact]
    public void The_post_sits_as_deep_as_the_sum_says()
    {
        SeatpostRoom room = new() { RailHeight = Dimension.OfMillimetres(740 - 520 - 45), OpenDepth = Dimension.OfMillimetres(230), LeastInsertion = Dimension.OfMillimetres(100) };
        Same(room.InsertionOf(Dimension.OfMillimetres(350)).Millimeters, Of("fit-seatpost", "post-insertion"));
        Same(100, Of("fit-seatpost", "post-mark"));
        Same(90, Of("fit-seatpost", "frame-least"));
        Same(54.4, Of("fit-seatpost", "two-diameters"));
    }

    [Theory]
    [InlineData("27.2 x 350; insertion 130", "82 kg; saddle height 740", 175.0)]
    [InlineData("27.2 x 350; insertion 130", "82 kg", 130.0)]
    [InlineData("27.2 x 350", "82 kg", null)]
    public void Without_the_riders_height_the_post_sits_as_deep_as_it_is_stated(string post, string rider, double? deep)
    {
        WorkFigure found = Known.With(Seatpost.Read(post)).With(Rider.Read(rider)).WorkPlan().Find("fit-seatpost")!.Figures.Single(f => f.Id == "post-insertion");
        Assert.Equal(deep, found.Value);
        Assert.Equal(deep == 130, found.Name.Contains("as it is stated", StringComparison.Ordinal));
    }

    [Fact]
    public void The_adapter_is_the_one_that_the_choice_names_and_the_pads_move_half_the_growth()
    {
        AdapterChoice choice = AdapterChoice.Of(BrakeMount.Post160, CaliperFoot.Post, RotorSize.Parse("180", null), RotorSize.Parse("180", null));
        Assert.Equal(choice.Adapter, Of("mount-rear-caliper", "brake-adapter").Words);
        Same(choice.Increment!.AlongRadius.Millimeters, Of("mount-rear-caliper", "rotor-offset"));
    }

    [Theory]
    [InlineData("head tube length 140; ", "", "cut-steerer", "steerer-cut", "the length of the head tube")]
    [InlineData("chainstay 410; ", "", "fit-chain", "chain-pitches", "the length of the chainstay")]
    [InlineData("seat tube length 520; ", "", "fit-seatpost", "post-insertion", "the length of the seat tube")]
    [InlineData("rearBrake PM-160; ", "", "mount-rear-caliper", "brake-adapter", "the mount of frame or fork")]
    [InlineData("chainstay 410", "chainstay 90", "fit-chain", "chain-pitches", "figures that go together: those stated do not")]
    public void A_figure_without_its_input_says_what_it_lacks(string was, string now, string step, string figure, string lacking)
    {
        Build build = Known.With(Frame.Read(Stacked.Replace(was, now, StringComparison.Ordinal)), Slot.Frame);
        WorkFigure found = build.WorkPlan().Find(step)!.Figures.Single(f => f.Id == figure);
        Assert.False(found.IsKnown);
        Assert.Null(found.Value);
        Assert.Equal([lacking], found.Lacking);
        Assert.Contains("lacking", found.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_measured_input_gives_the_middle_and_its_error()
    {
        Build build = Known.With(Frame.Read(Stacked.Replace("head tube length 140", "head tube length 140 ± 1", StringComparison.Ordinal)), Slot.Frame);
        WorkFigure cut = build.WorkPlan().Find("cut-steerer")!.Figures.Single(f => f.Id == "steerer-cut");
        Same(219, cut);
        Assert.Equal(1, cut.Doubt);
        Assert.Equal("where the steerer is cut, from the seat of the crown race: 219 mm (± 1 by what was measured)", cut.ToString());
    }

    [Fact]
    public void Of_hoses_the_plan_says_that_the_way_is_not_known() =>
        Assert.False(Build.From(Frame.Read("material steel")).With(BrakeLever.Read("fluid mineral"), Slot.FrontBrakeLever).WorkPlan().Find("connect-front-brake")!.Figures.Single(f => f.Id == "front-brake-line").IsKnown);

    private static WorkFigure Of(string step, string figure) => Plan.Find(step)!.Figures.Single(f => f.Id == figure);

    private static void Same(double expected, WorkFigure figure)
    {
        double value = figure.Value ?? double.NaN;
        Assert.True(Math.Abs(expected - value) < 1e-6, $"{figure}, expected {expected}");
    }
}
