using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using Lugwork.Drawing;
using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.Tests.Drawing;

/// <summary>Drawings measured back from their SVG, against what went in.</summary>
public sealed class DrawingTests
{
    /// <summary>The SVG is written to a thousandth of a millimetre of the sheet: at 1:10 that is a hundredth of one of the thing.</summary>
    private static void Near(double expected, double measured) => Assert.InRange(measured, expected - 0.03, expected + 0.03);

    [Fact]
    public void The_head_tube_measures_what_frame_fork_and_headset_say()
    {
        SvgSheet sheet = new(Drawings.HeadTube(Subjects.Plain));
        Near(140, sheet.Measured("head tube"));
        Near(33.95, sheet.Measured("upper bore"));
        Near(34.05, sheet.Measured("upper cup"));
        Near(28.6, sheet.Measured("steerer"));
        Near(16, sheet.Measured("upper stack"));
        Near(12, sheet.Measured("lower stack"));
        Near(230, sheet.Measured("steerer, from the race seat"));
        Near(10, sheet.Boxes("headset")[0].Height);
        Assert.False(sheet.Has("cup larger than bore"));
    }

    [Fact]
    public void The_seatpost_measures_what_frame_and_post_say()
    {
        SvgSheet sheet = new(Drawings.Seatpost(Subjects.Plain));
        Near(27.2, sheet.Measured("seat tube bore"));
        Near(27.2, sheet.Measured("seatpost"));
        Near(110, sheet.Measured("insertion"));
        Near(75, sheet.Measured("mark, from the lower end"));
        Near(80, sheet.Measured("frame's least insertion"));
        Near(210, sheet.Measured("open depth"));
        (double _, double _, double width, double height) = Assert.Single(sheet.Boxes("seatpost"));
        Near(27.2, width);
        Near(350, height);
    }

    [Fact]
    public void The_bottom_bracket_measures_what_shell_and_spindle_say()
    {
        SvgSheet sheet = new(Drawings.BottomBracket(Subjects.Plain));
        Near(68, sheet.Measured("shell width"));
        Near(24, sheet.Measured("spindle"));
        Near(2.5, sheet.Measured("spacers under the drive-side cup"));
        Near(68, sheet.Measured("narrowest shell it is made for"));
        Near(73, sheet.Measured("widest shell it is made for"));
        Assert.All(sheet.Boxes("shell of the frame"), b => Near(68, b.Width));
        Assert.All(sheet.Boxes("spacers"), b => Near(2.5, b.Width));
    }

    [Fact]
    public void The_rear_hub_measures_what_frame_hub_and_crank_say()
    {
        SvgSheet sheet = new(Drawings.RearHub(Subjects.Plain));
        Near(135, sheet.Measured("hub over its ends"));
        Near(440, sheet.Measured("chainstay"));
        Near(46.9, sheet.Measured("line of the ring"));
        RearChainline rear = SprocketSpacing.Parse("9", null).InInnerGap(Dimension.OfMillimetres(135))!;
        Near(rear.Smallest.Millimeters, sheet.Measured("smallest sprocket"));
        Near(rear.Largest.Millimeters, sheet.Measured("largest sprocket"));

        // A sprocket of 32 teeth, cut flat: 12.7 / sin(180 / 32).
        Near(12.7 / Math.Sin(Math.PI / 32), sheet.Boxes("rear hub and sprockets").Max(b => b.Height));
        Assert.Equal(10, sheet.Boxes("rear hub and sprockets").Length);
    }

    [Fact]
    public void The_line_of_the_sprockets_is_drawn_where_it_was_measured()
    {
        Wheel wheel = (Wheel)Subjects.Plain[Slot.RearWheel]!;
        LineDrawing drawing = Drawings.RearHub(Subjects.Plain.OfFile(wheel with { CassetteChainline = Known<Dimension>.Of(Dimension.OfMillimetres(42)) }, Slot.RearWheel));
        SvgSheet sheet = new(drawing);
        Near(42, sheet.Measured("line of the cassette"));
        Assert.Contains("4.9 mm outside the middle of the sprockets, as measured", drawing.Description, StringComparison.Ordinal);
        double middle = sheet.Boxes("rear end of the frame").Average(b => b.X + (b.Width / 2));
        Near(42, sheet.Boxes("rear hub and sprockets").Where(b => b.Width < 2).Average(b => b.X + (b.Width / 2)) - middle);
    }

    [Fact]
    public void A_ring_in_its_own_place_is_drawn_on_a_bare_crank()
    {
        LineDrawing drawing = Drawings.RearHub(Subjects.Plain.With(Crankset.Read("rings 9; chainline gravel-1x-49.7")).With(Chainring.Read("teeth 32")));
        Assert.Contains("32 teeth", drawing.Description, StringComparison.Ordinal);
        Near(12.7 / Math.Sin(Math.PI / 32), new SvgSheet(drawing).Boxes("ring of the crank").Single().Height);
    }

    [Fact]
    public void A_tyre_that_was_measured_is_drawn_as_wide_as_it_is()
    {
        Tyre tyre = (Tyre)Subjects.Plain[Slot.RearTyre]!;
        Known<Dimension> Mm(int mm) => Known<Dimension>.Of(Dimension.OfMillimetres(mm));
        LineDrawing wide = Drawings.Tyre(Subjects.Plain.With(tyre with { MountedWidth = Mm(44), MountedRim = Mm(21) }, Slot.RearTyre), Slot.RearTyre, 60);
        SvgSheet sheet = new(wide);
        Near(44, sheet.Measured("tyre"));
        Near(8, sheet.Measured("room at the closer side"));
        Assert.True(sheet.Has("wider than the maker allows"));
        Assert.Contains("measured 2 mm wider than the maker allows", wide.Description, StringComparison.Ordinal);
        Assert.False(new SvgSheet(Drawings.Tyre(Subjects.Plain.With(tyre with { MountedWidth = Mm(41), MountedRim = Mm(21) }, Slot.RearTyre), Slot.RearTyre)).Has("wider than the maker allows"));

        // Of another rim it says nothing of this one.
        Assert.False(new SvgSheet(Drawings.Tyre(Subjects.Plain.With(tyre with { MountedWidth = Mm(44), MountedRim = Mm(30) }, Slot.RearTyre), Slot.RearTyre)).Has("wider than the maker allows"));
    }

    /// <summary>The adapter that is there is solid and has its own increment; on the wrong mount it is crossed.</summary>
    [Fact]
    public void The_adapter_that_is_there_is_drawn_and_not_the_one_to_buy()
    {
        Build bare = Build.From(Frame.Read("rear brake PM-180")).With(Rotor.Read("200; six-bolt"), Slot.RearRotor);
        LineDrawing wrong = Drawings.DiscBrake(bare.With(Caliper.Read("post; adapter +40"), Slot.RearCaliper), Slot.RearCaliper);
        Assert.Contains(new SvgSheet(wrong).Texts, t => t.StartsWith("X: ", StringComparison.Ordinal) && t.Contains("+40", StringComparison.Ordinal));
        Assert.Contains("rotor of 220 mm", wrong.Description, StringComparison.Ordinal);
        LineDrawing right = Drawings.DiscBrake(bare.With(Caliper.Read("post; adapter +20"), Slot.RearCaliper), Slot.RearCaliper);
        Assert.Contains(new SvgSheet(right).Texts, t => t == "C: adapter +20 mm");
        Assert.DoesNotContain(new SvgSheet(right).Texts, t => t.StartsWith("X: ", StringComparison.Ordinal));
        Assert.Single(new SvgSheet(right).Boxes("adapter"));

        // The line from its name ends on it, and not behind the rotor, whose hole covers what lies under it.
        foreach (SvgSheet sheet in new[] { new SvgSheet(right), new SvgSheet(Drawings.DiscBrake(Subjects.Measured, Slot.RearCaliper)), new SvgSheet(Drawings.DiscBrake(Subjects.Plain, Slot.FrontCaliper)) })
        {
            (double x, double _, double width, double _) = sheet.Boxes("adapter").Single();
            Assert.True(sheet.TextBoxes.Single(t => t.Text == "C: adapter +20 mm").Left > (x + width) * sheet.Scale);
        }

        LineDrawing toBuy = Drawings.DiscBrake(bare.With(Caliper.Read("post; adapter none"), Slot.RearCaliper), Slot.RearCaliper);
        Assert.Single(new SvgSheet(toBuy).Boxes("adapter"));
    }

    /// <summary>A flat-mount caliper never hangs in the air above a fork: there is always a plate between.</summary>
    [Theory]
    [InlineData("FM-front-140", 140, "C: plate, turned for 140")]
    [InlineData("FM-front-140", 160, "C: plate, turned for 160")]
    [InlineData("FM-front-160", 180, "C: plate, turned for 180")]
    [InlineData("FM-front-160", 200, "C: plate")]
    public void A_flat_mount_fork_has_its_plate_between(string mount, int rotor, string note)
    {
        SvgSheet sheet = new(Drawings.DiscBrake(Build.From(new Frame()).With(Fork.Read($"brake {mount}")).With(Rotor.Read($"{rotor}; six-bolt"), Slot.FrontRotor).With(Caliper.Read("flat"), Slot.FrontCaliper), Slot.FrontCaliper));
        Assert.Contains(note, sheet.Texts);
        (double _, double y, double _, double height) = Assert.Single(sheet.Boxes("plate of the flat mount"));
        Near(sheet.Boxes("caliper").Single().Y + sheet.Boxes("caliper").Single().Height, y);
        Near(sheet.Boxes("brake mount of the fork")[0].Y, y + height);
        Assert.False(new SvgSheet(Drawings.DiscBrake(Build.From(Frame.Read("rear brake FM-rear-160")).With(Rotor.Read("160; six-bolt"), Slot.RearRotor).With(Caliper.Read("flat"), Slot.RearCaliper), Slot.RearCaliper)).Has("plate of the flat mount"));
    }

    [Fact]
    public void One_sprocket_is_drawn_as_one_and_never_as_a_cassette()
    {
        Build track = Build.From(Frame.Read("rear R120; chainstay 400")).With(Wheel.Read("hub R120"), Slot.RearWheel).With(Cassette.Read("smallest sprocket 15; largest sprocket 15")).With(Crankset.Read("chainline track; largest ring 48"));
        LineDrawing unknown = Drawings.RearHub(track);
        Assert.Null(unknown.Dimensions.Single(d => d.Name == "line of the sprocket").Figure);
        Assert.DoesNotContain(unknown.Dimensions, d => d.Name == "middle of the sprockets");
        SvgSheet sheet = new(unknown);
        (double _, double _, double width, double height) = sheet.Boxes("rear hub and sprockets").MaxBy(b => b.Height);
        Near(2, width);
        Near(12.7 / Math.Sin(Math.PI / 15), height);
        Assert.False(sheet.Has("chain"));

        SvgSheet known = new(Drawings.RearHub(track.With(Wheel.Read("hub R120; sprocketChainline 41"), Slot.RearWheel)));
        Near(41, known.Measured("line of the sprocket"));
        Assert.True(known.Has("chain"));
    }

    [Fact]
    public void A_chainline_of_the_middle_of_two_rings_has_no_ring_on_it_and_no_angle()
    {
        Build build = Subjects.Plain.With(Crankset.Read("rings 9; largest ring 46; smallest ring 30; chainline gravel-2x"));
        LineDrawing two = Drawings.RearHub(build);
        SvgSheet sheet = new(two);
        double middle = sheet.Boxes("rear end of the frame").Average(b => b.X + (b.Width / 2));
        double[] rings = [.. sheet.Boxes("ring of the crank").Select(b => b.X + (b.Width / 2) - middle)];
        Assert.Equal(2, rings.Length);
        Assert.All(rings, r => Assert.True(Math.Abs(r - 46.9) > 2, $"{r}"));
        Near(46.9, rings.Average());
        Assert.True(sheet.Has("chainline"));
        Assert.DoesNotContain("steepest run", two.Description, StringComparison.Ordinal);
        Assert.Contains("how far apart is not known", two.Description, StringComparison.Ordinal);

        // Measured, the line is still that of the middle between two.
        LineDrawing measured = Drawings.RearHub(Subjects.Plain);
        Assert.Equal(2, new SvgSheet(measured).Boxes("ring of the crank").Length);
        Assert.DoesNotContain("steepest run", measured.Description, StringComparison.Ordinal);
        Near(46.9, new SvgSheet(measured).Measured("line of the ring"));

        LineDrawing one = Drawings.RearHub(Subjects.Plain.OfFile(Crankset.Read("rings 9; largest ring 40; smallest ring none; chainline gravel-1x-49.7; ring line 46.9"), Slot.Crankset));
        Assert.Single(new SvgSheet(one).Boxes("ring of the crank"));

        // A number there would be read as teeth.
        Assert.Matches("steepest run [0-9.]+ degrees, to the largest sprocket", one.Description);
        Assert.Matches("to the smallest sprocket", Drawings.RearHub(Subjects.Plain.OfFile(Crankset.Read("rings 9; largest ring 40; smallest ring none; chainline gravel-1x-49.7; ring line 40"), Slot.Crankset)).Description);
        Assert.Equal(3, new SvgSheet(Drawings.RearHub(Subjects.Plain.With(Crankset.Read("largest ring 48; smallest ring 28; chainline road-3x")))).Boxes("ring of the crank").Length);
    }

    [Fact]
    public void Spacers_are_asked_for_only_where_a_cup_stands_outside_the_shell()
    {
        foreach ((string shell, string bracket, bool has) in new[] { ("BSA 68", "shell BSA 68; takes 24", true), ("BSA 68", "shell BSA 68; takes square-JIS", false), ("PF121", "", false), ("T47 85.5", "", false), ("", "", true) })
        {
            LineDrawing drawing = Drawings.BottomBracket(Build.From(shell.Length == 0 ? new Frame() : Frame.Read($"shell {shell}")).With(bracket.Length == 0 ? new BottomBracket() : BottomBracket.Read(bracket)));
            Assert.Equal(has, drawing.Dimensions.Any(d => d.Name == "spacers under the drive-side cup"));
        }
    }

    [Fact]
    public void The_tyre_measures_what_label_rim_and_room_say()
    {
        SvgSheet sheet = new(Drawings.Tyre(Subjects.Plain, Slot.RearTyre, 60, 2, 360));
        Near(21, sheet.Measured("rim inside"));
        Near(22, sheet.Measured("depth of the rim at the valve"));
        Near(60, sheet.Measured("between the stays of the frame"));
        Near(42, sheet.Measured("largest tyre by the frame maker"));

        // 37 on a rim of 21: two millimetres under its measuring rim of 23.
        Near(36.2, sheet.Measured("tyre"));
        Near(30 - 2 - 18.1, sheet.Measured("room at the closer side"));
        Near(360 - 311 - 37, sheet.Measured("room above the tread"));
    }

    /// <summary>36.2 mm on its rim, 32 to 39.2 by its name; 6 mm are asked for, 4 of road bicycles: 48 mm leave 4.4 to 8 at each side, 43 mm 1.9 to 5.5, 39 mm less than 3.5.</summary>
    [Theory]
    [InlineData("kind touring; ", 60, "fits")]
    [InlineData("kind touring; ", 48, "needs measuring")]
    [InlineData("kind touring; ", 43, "does not fit")]
    [InlineData("kind road; ", 48, "fits")]
    [InlineData("kind road; ", 43, "needs measuring")]
    [InlineData("kind track; ", 39, "does not fit")]
    [InlineData("", 48, "needs measuring")]
    [InlineData("", 43, "needs measuring")]
    [InlineData("", 39, "does not fit")]
    public void The_room_that_was_measured_counts_in_the_word_at_the_head(string kind, int between, string word)
    {
        Build build = Build.From(Frame.Read($"{kind}largest tyre 42-622")).With(Wheel.Read("beadSeat 622; innerWidth 21; rimType TC"), Slot.RearWheel).With(Tyre.Read("37-622; folding"), Slot.RearTyre);
        Assert.Contains("Together: fits.", Drawings.Tyre(build, Slot.RearTyre).Description, StringComparison.Ordinal);
        string description = Drawings.Tyre(build, Slot.RearTyre, between).Description;
        Assert.Contains($"Together: {word}.", description, StringComparison.Ordinal);
        Assert.Contains("at the closer side", description, StringComparison.Ordinal);
    }

    /// <summary>A tyre that was measured is as wide as it is, whatever its name allows: 44 mm in 54 leave 5 at each side, where the name of 37 would leave more than the 6 that are asked for.</summary>
    [Theory]
    [InlineData("44", 54, "does not fit")]
    [InlineData("44", 56, "fits")]
    [InlineData("44 \u00B1 0.5", 56, "needs measuring")]
    [InlineData("34", 47, "fits")]
    public void The_room_beside_a_measured_tyre_goes_by_what_was_measured(string wide, int between, string word)
    {
        Build build = Build.From(Frame.Read("kind touring; largest tyre 50-622")).With(Wheel.Read("beadSeat 622; innerWidth 21; rimType TC"), Slot.RearWheel).With(Tyre.Read($"37-622; folding; mounted width {wide}; mounted on rim 21"), Slot.RearTyre);
        LineDrawing drawing = Drawings.Tyre(build, Slot.RearTyre, between);
        Assert.Contains($"Together: {word}.", drawing.Description, StringComparison.Ordinal);
        Assert.Contains("at the closer side, by the width as measured", drawing.Description, StringComparison.Ordinal);
        Assert.DoesNotContain("with the largest tyre of this name", drawing.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void The_brake_measures_what_mount_rotor_and_limit_say()
    {
        SvgSheet sheet = new(Drawings.DiscBrake(Subjects.Plain, Slot.RearCaliper));
        Near(160, sheet.Measured("rotor"));
        Near(140, sheet.Measured("rotor of the bare mount"));
        Near(180, sheet.Measured("largest rotor by the frame maker"));
        Near(51, sheet.Measured("holes of the mount"));
        Near(74.2, sheet.Measured("holes of the caliper"));
        Near(10, sheet.Measured("pads move out along the radius"));
        Near(80, Assert.Single(sheet.Radii("rotor")));
        Assert.True(sheet.Has("adapter"));
    }

    [Fact]
    public void The_frame_measures_what_its_geometry_says_before_and_after()
    {
        SvgSheet sheet = new(Drawings.Geometry(Subjects.Before, Subjects.After));
        foreach ((string when, Lugwork.Geometry.FrameGeometry frame) in new[] { ("before", Subjects.Before), ("after", Subjects.After) })
        {
            Near(frame.Reach.Millimeters, sheet.Measured($"reach {when}"));
            Near(frame.Stack.Millimeters, sheet.Measured($"stack {when}"));
            Near(frame.Wheelbase.Millimeters, sheet.Measured($"wheelbase {when}"));
            Near(frame.Trail.Millimeters, sheet.Measured($"trail {when}"));
            Near(frame.BottomBracketHeight.Millimeters, sheet.Measured($"bottom-bracket height {when}"));
            Near(frame.RearRadius.Millimeters, Assert.Single(sheet.Radii($"rear wheel {when}")));
        }

        Assert.Contains(sheet.Texts, t => t.StartsWith('+') || t.StartsWith('-'));
    }

    [Fact]
    public void A_bar_of_a_gear_is_as_long_as_its_way()
    {
        LineDrawing drawing = Drawings.Gears(Subjects.Gears);
        SvgSheet sheet = new(drawing);
        Assert.Equal(20, drawing.Dimensions.Length);

        // 46/11 x 2180 mm, 30/36 x 2180 mm, 30/15 x 2180 mm: at 1:100 a metre is a centimetre.
        Assert.InRange(sheet.Measured("46/11") / 1_000, 9.115, 9.118);
        Assert.InRange(sheet.Measured("30/36") / 1_000, 1.816, 1.818);
        Assert.InRange(sheet.Measured("30/15") / 1_000, 4.359, 4.361);
        Assert.Contains(sheet.Texts, t => t.Contains("nearly one gear", StringComparison.Ordinal));
    }

    /// <summary>Gears of a hub are counted, as its shifter counts them, and not named by their ratios.</summary>
    [Fact]
    public void A_gear_of_a_hub_has_its_number()
    {
        LineDrawing drawing = Drawings.Gears(GearTable.Of([42], [17], Length.FromMillimeters(2_100), InternalHub.Find("8")));
        Assert.Equal([.. Enumerable.Range(1, 8).Select(i => $"42/17, hub gear {i}")], drawing.Dimensions.Select(d => d.Name));
    }

    [Fact]
    public void A_point_of_an_offer_stands_where_price_and_mass_say()
    {
        LineDrawing drawing = Drawings.PriceAndMass(Subjects.Offers, "EUR");
        foreach ((string name, double figure) in new[] { ("1 price", 900), ("1 mass", 13.4), ("2 price", 1_450), ("2 mass", 11.2), ("4 price", 3_200), ("4 mass", 9.1) })
        {
            DrawnDimension dimension = drawing.Dimensions.Single(d => d.Name == name);
            Assert.Equal(figure, dimension.Figure!.Value, 6);
            Assert.Equal(figure, double.Hypot(dimension.To.X - dimension.From.X, dimension.To.Y - dimension.From.Y) * dimension.PerSheetMillimetre, 6);
        }

        // The third by price is heavier than the second: only the other three are on the line.
        SvgSheet sheet = new(drawing);
        Assert.Equal(3, sheet.Radii("offer that none beats").Length);
        Assert.Contains(sheet.Texts, t => t == "3: dear and heavy");
        Assert.Contains(sheet.Texts, t => t == "4*: dear and light");
    }

    [Fact]
    public void What_is_not_known_is_dashed_and_asked_for_and_has_no_figure()
    {
        foreach (LineDrawing drawing in Subjects.Of(Subjects.Unknown))
        {
            SvgSheet sheet = new(drawing);
            DrawnDimension[] open = [.. drawing.Dimensions.Where(d => d.Figure is null)];
            Assert.NotEmpty(open);
            Assert.All(open, d => Assert.True(sheet.IsOpen(d.Name), $"{drawing.Title}: {d.Name}"));
            Assert.All(open, d => Assert.Contains("? " + d.Name, drawing.Description, StringComparison.Ordinal));
            Assert.Contains("Not known and drawn dashed", drawing.Description, StringComparison.Ordinal);
            Assert.Contains(sheet.Texts, t => t.StartsWith("dashed: no figure is known", StringComparison.Ordinal));
        }

        LineDrawing post = Drawings.Seatpost(Build.From(Frame.Read("seat tube 27.2")));
        Assert.Equal(27.2, post.Dimensions.Single(d => d.Name == "seat tube bore").Figure);
        Assert.Null(post.Dimensions.Single(d => d.Name == "insertion").Figure);
        Assert.Contains("The build has no seatpost yet.", post.Description, StringComparison.Ordinal);
        Assert.Contains("Tape the post at the collar", post.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void One_of_several_is_no_figure_and_a_measured_length_says_its_error()
    {
        LineDrawing drawing = Drawings.Seatpost(Build.From(Frame.Read("seat tube 27 | 27.2; leastInsertion 80 ± 2")));
        DrawnDimension bore = drawing.Dimensions.Single(d => d.Name == "seat tube bore");
        Assert.Null(bore.Figure);
        Assert.Equal("27 or 27.2 mm", bore.Said);
        Assert.Equal("80 ± 2 mm (measured)", drawing.Dimensions.Single(d => d.Name == "frame's least insertion").Said);
    }

    [Fact]
    public void A_stack_that_nobody_measured_is_no_figure_though_its_code_has_a_usual_one()
    {
        DrawnDimension stack = Drawings.HeadTube(Subjects.Fat).Dimensions.Single(d => d.Name == "upper stack");
        Assert.Null(stack.Figure);
        Assert.Equal("usually 6 to 16 mm, from memory", stack.Said);
    }

    [Fact]
    public void What_does_not_go_together_is_crossed_where_it_meets_with_the_sentence_of_the_joint()
    {
        (LineDrawing Drawing, string Part, string Joint)[] clashes =
        [
            (Drawings.HeadTube(Subjects.Unfit), "cup larger than bore", "headset-upper-in-head-tube"),
            (Drawings.HeadTube(Subjects.Unfit), "steerer larger than bore", "steerer-through-head-tube"),
            (Drawings.Seatpost(Subjects.Unfit), "post larger than bore", "seatpost-in-seat-tube"),
            (Drawings.BottomBracket(Subjects.Unfit), "unit larger than shell", "bottom-bracket-in-shell"),
            (Drawings.BottomBracket(Subjects.Unfit), "spindle larger than bearings", "spindle-in-bottom-bracket"),
            (Drawings.RearHub(Subjects.Unfit), "hub wider than the rear end", "rear-wheel-in-frame"),
            (Drawings.Tyre(Subjects.Unfit, Slot.RearTyre), "bead and seat apart", "rear-tyre-bead-on-rim"),
            (Drawings.Tyre(Subjects.Unfit, Slot.RearTyre), "wider than the maker allows", "rear-tyre-in-frame"),
            (Drawings.Tyre(Subjects.Plain, Slot.RearTyre, 34), "tyre in the stay", ""),
            (Drawings.Tyre(Subjects.Plain, Slot.RearTyre, null, 0, 340), "tyre in the bridge", ""),
            (Drawings.DiscBrake(Subjects.Unfit, Slot.RearCaliper), "rotor above the limit", "rear-rotor-within-limit"),
        ];
        Fit[] fits = [.. Subjects.Unfit.Check().Findings];
        foreach ((LineDrawing drawing, string part, string joint) in clashes)
        {
            SvgSheet sheet = new(drawing);
            Assert.True(sheet.Has(part), $"{drawing.Title}: {part}");
            Assert.Contains(sheet.Texts, t => t.StartsWith("X: ", StringComparison.Ordinal));
            if (joint.Length > 0)
            {
                Fit fit = fits.Single(f => f.Joint!.Id == joint);
                Assert.True(fit.Verdict > Verdict.NeedsMeasuring, joint);
                Assert.Contains(fit.ToString(), drawing.Description, StringComparison.Ordinal);
            }
        }

        // 31.6 in 27.2: 2.2 mm on each side.
        Assert.All(new SvgSheet(Drawings.Seatpost(Subjects.Unfit)).Boxes("post larger than bore"), b => Near(2.2, b.Width));
        Assert.Contains("Together: unsafe.", Drawings.DiscBrake(Subjects.Unfit, Slot.RearCaliper).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void What_goes_together_has_no_cross()
    {
        foreach (LineDrawing drawing in Subjects.Of(Tests.Builds.Bench.WholeBicycle()).Concat(Drawings.All(Subjects.Plain)).Concat(Drawings.All(Subjects.Measured)))
        {
            SvgSheet sheet = new(drawing);
            Assert.DoesNotContain(sheet.All("rect"), r => ((string)r.Attribute("class")!).Contains("lw-fx", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_thin_tube_is_drawn_as_thin_as_it_is_stated_and_one_without_a_wall_is_said_to_be_wrong()
    {
        SvgSheet thin = new(Drawings.Seatpost(Build.From(Frame.Read("seat tube 30.9; seatTubeOutside 31.8"))));
        Near(31.8, thin.Measured("seat tube outside"));
        Near(30.9, thin.Measured("seat tube bore"));
        Assert.All(thin.Boxes("seat tube of the frame"), b => Near(0.45, b.Width));
        LineDrawing none = Drawings.Seatpost(Build.From(Frame.Read("seat tube 31.6; seatTubeOutside 28.6")));
        Near(28.6, new SvgSheet(none).Measured("seat tube outside"));
        Assert.Contains("one of both is wrong", none.Description, StringComparison.Ordinal);
        Assert.DoesNotContain("one of both is wrong", Drawings.Seatpost(Build.From(Frame.Read("seat tube 30.9; seatTubeOutside 31.8"))).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void An_insertion_mark_above_the_collar_and_a_post_that_is_too_deep_are_shown()
    {
        LineDrawing above = Drawings.Seatpost(Subjects.Unfit);
        Assert.Contains("the mark stands 20 mm above the collar", above.Description, StringComparison.Ordinal);
        Near(20, Assert.Single(new SvgSheet(above).Boxes("mark above the collar")).Height);
        Assert.Contains(new SvgSheet(above).Texts, t => t.StartsWith("X: mark above the collar", StringComparison.Ordinal));
        SvgSheet deep = new(Drawings.Seatpost(Build.From(Frame.Read("seat tube 27.2; mostInsertion 120")).With(Seatpost.Read("27.2 x 350; mark 75; insertion 150"))));
        Assert.True(deep.Has("post deeper than the tube is open"));
        Near(30, deep.Boxes("post deeper than the tube is open")[0].Height);
    }

    [Fact]
    public void Extremes_are_drawn_to_a_scale_that_lets_them_fit()
    {
        foreach (Build build in new[] { Subjects.Fat, Subjects.Folding, Subjects.ThirtySix })
        {
            foreach (LineDrawing drawing in Subjects.Of(build))
            {
                Assert.InRange(drawing.WidthMillimetres, 100, 330);
                Assert.InRange(drawing.HeightMillimetres, 60, 460);
            }
        }

        Near(127, new SvgSheet(Drawings.Tyre(Subjects.Fat, Slot.RearTyre)).Measured("largest tyre by the frame maker"));
        Near(35, new SvgSheet(Drawings.Tyre(Subjects.ThirtySix, Slot.RearTyre)).Measured("rim inside"));
        Near(580, new SvgSheet(Drawings.Seatpost(Subjects.Folding)).Measured("length of the post"));
        Near(76, new SvgSheet(Drawings.RearHub(Subjects.Fat)).Measured("chainline of the crank"));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"><rect onload='x'/>&amp;&lt;")]
    [InlineData("]]></svg><!-- -->")]
    [InlineData("\u0000\u0001\u001B[31m\r\n\tred\u0085\u009F")]
    [InlineData("\uD800lone\uDC00 \uFFFE\uFFFF")]
    [InlineData("\u202Ereversed\u202C \u2066isolated\u2069 \u200F\u061C")]
    [InlineData("\u05D0\u05D1\u05D2 \u0645\u0631\u062D\u0628\u0627 \U0001F6B2")]
    [InlineData("a\u0300\u0301\u0302\u0303\u0304\u0305\u0306\u0307")]
    public void A_hostile_name_is_text_and_nothing_else(string name)
    {
        Build build = Build.From(new Frame { Name = name }, name).With(new Seatpost { Name = name + string.Concat(Enumerable.Repeat(name, 400)) });
        LineDrawing drawing = Drawings.Seatpost(build);
        SvgSheet hostile = new(drawing);
        SvgSheet plain = new(Drawings.Seatpost(Build.From(new Frame { Name = "n" }, "n").With(new Seatpost { Name = "n" })));
        Assert.Equal(plain.Root.Descendants().Select(e => e.Name.LocalName).Distinct().Order(), hostile.Root.Descendants().Select(e => e.Name.LocalName).Distinct().Order());
        Assert.Equal(plain.Root.DescendantsAndSelf().SelectMany(e => e.Attributes()).Select(a => a.Name.LocalName).Distinct().Order(), hostile.Root.DescendantsAndSelf().SelectMany(e => e.Attributes()).Select(a => a.Name.LocalName).Distinct().Order());
        Assert.Empty(hostile.Collisions());
        Assert.Equal(hostile.Root.ToString(SaveOptions.DisableFormatting), drawing.ToSvg());
        Assert.DoesNotContain(drawing.ToSvg(), c => char.IsControl(c) || (c >= '\u202A' && c <= '\u202E') || (c >= '\u2066' && c <= '\u2069') || c is '\u200F' or '\u061C' or '\uFFFE' or '\uFFFF');
    }

    [Fact]
    public void A_hostile_name_of_an_offer_and_a_hostile_currency_are_text()
    {
        SvgSheet sheet = new(Drawings.PriceAndMass([("</text><script>x</script>", 1, 1), (new string('W', 5_000), 2, 0.5m)], "</desc>\u0007"));
        Assert.Empty(sheet.Collisions());
        Assert.Empty(sheet.All("script"));
    }

    [Fact]
    public void A_drawing_asks_for_nothing_from_outside_and_runs_nothing()
    {
        foreach (LineDrawing drawing in Subjects.All)
        {
            SvgSheet sheet = new(drawing);
            string[] names = [.. sheet.Root.DescendantsAndSelf().Select(e => e.Name.LocalName).Distinct().Order()];
            Assert.Subset(new HashSet<string>(["circle", "desc", "line", "path", "rect", "style", "svg", "text", "title"]), new HashSet<string>(names));
            Assert.DoesNotContain(sheet.Root.DescendantsAndSelf().SelectMany(e => e.Attributes()), a => a.Name.LocalName is "href" or "src" or "id" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || a.Value.Contains("url(", StringComparison.Ordinal));
            Assert.DoesNotContain("url(", sheet.All("style").Single().Value, StringComparison.Ordinal);
            Assert.DoesNotContain("@import", sheet.All("style").Single().Value, StringComparison.Ordinal);
            Assert.Equal("img", (string)sheet.Root.Attribute("role")!);
            Assert.Equal(drawing.Title, sheet.Title);
            Assert.Equal(drawing.Description, sheet.Description);
        }
    }

    [Fact]
    public void The_text_alternative_says_every_figure_that_a_reader_sees()
    {
        foreach (LineDrawing drawing in Subjects.All)
        {
            foreach (DrawnDimension dimension in drawing.Dimensions)
            {
                string said = dimension.Said == "?" ? "? " + dimension.Name : dimension.Said.Split(" EUR")[0].Split(" kg")[0];
                Assert.True(drawing.Description.Contains(said, StringComparison.Ordinal), $"{drawing.Title}: {dimension}");
            }

            Assert.EndsWith($"Scale {drawing.Scale}.", drawing.Description, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_tone_has_a_letter_and_a_pattern_beside_its_colour()
    {
        SvgSheet sheet = new(Drawings.Seatpost(Subjects.Plain));
        Assert.Contains("A: seat tube of the frame", sheet.Texts);
        Assert.Contains("B: seatpost", sheet.Texts);
        Assert.Contains(sheet.All("path"), p => (string?)p.Attribute("class") == "lw-h");
        string style = sheet.All("style").Single().Value;
        Assert.Contains("prefers-color-scheme:dark", style, StringComparison.Ordinal);
        Assert.Contains("@media print", style, StringComparison.Ordinal);
        Assert.Contains("currentColor", style, StringComparison.Ordinal);
    }

    [Fact]
    public void All_are_the_drawings_that_a_build_has_parts_for()
    {
        Assert.Equal(8, Drawings.All(Subjects.Plain).Length);
        Assert.Empty(Drawings.All(Build.From(Frame.Read("seat tube 27.2"))));
        Assert.Equal("Seatpost in the seat tube", Assert.Single(Drawings.All(Build.From(new Frame()).With(new Seatpost()))).Title);
    }

    [Fact]
    public void What_is_no_drawing_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Drawings.Tyre(Subjects.Plain, Slot.Seatpost));
        Assert.Throws<ArgumentException>(() => Drawings.DiscBrake(Subjects.Plain, Slot.RearRimBrake));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawings.Tyre(Subjects.Plain, Slot.RearTyre, 9.99m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawings.Tyre(Subjects.Plain, Slot.RearTyre, 60, 20.01m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawings.Tyre(Subjects.Plain, Slot.RearTyre, 60, 0, 601));
        Assert.Throws<ArgumentException>(() => Drawings.PriceAndMass([], "EUR"));
        Assert.Throws<ArgumentException>(() => Drawings.PriceAndMass([.. Enumerable.Repeat(("a", 1m, 1m), Drawings.MostOffers + 1)], "EUR"));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawings.PriceAndMass([("free", 0.009m, 1)], "EUR"));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawings.PriceAndMass([("nothing", 1, 0.0009m)], "EUR"));
        Assert.Throws<ArgumentNullException>(() => Drawings.HeadTube(null!));
    }

    [Theory]
    [InlineData(0, 3, "0")]
    [InlineData(-0.0004, 3, "0")]
    [InlineData(-0.0005, 3, "-0.001")]
    [InlineData(27.2, 3, "27.2")]
    [InlineData(100, 3, "100")]
    [InlineData(-1_005.05, 2, "-1005.05")]
    [InlineData(9.999, 2, "10")]
    [InlineData(0.05, 1, "0.1")]
    [InlineData(4.49, 0, "4")]
    [InlineData(123_456_789.125, 3, "123456789.125")]
    public void A_number_has_no_trailing_zeros(double number, int places, string text) => Assert.Equal(text, DraftText.Number(number, places));

    [Fact]
    public void A_text_wraps_at_words_keeps_units_and_ends_with_an_ellipsis()
    {
        Assert.Equal("one two|three|four", string.Join('|', DraftText.Wrap("one  two three\tfour", 11, 2.8, 9)));
        Assert.Equal("insertion|110 mm", string.Join('|', DraftText.Wrap("insertion 110 mm", 17, 2.8, 9)));
        Assert.EndsWith("\u2026", Assert.Single(DraftText.Wrap(new string('W', 500), 30, 2.8, 1)), StringComparison.Ordinal);
        Assert.Empty(DraftText.Wrap(" \u200B\u0007", 30, 2.8, 3));
        Assert.All(DraftText.Wrap(string.Concat(Enumerable.Repeat("Wide words and NARROW ones, ", 20)), 33, 2.8, 40), line => Assert.True(DraftText.Width(line, 2.8) <= 33, line));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [InlineData("fa-IR")]
    public void A_drawing_is_the_same_in_every_culture(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            string[] plain = [.. Subjects.All.Select(d => d.ToSvg() + d)];
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(plain, Subjects.All.Select(d => d.ToSvg() + d));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
