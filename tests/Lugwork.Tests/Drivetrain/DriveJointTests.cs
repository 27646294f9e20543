using Lugwork.Drivetrain;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Shifting, rings, front derailleur, guide and screwed sprockets: both sides of each boundary, an unknown on each side, and a trap.</summary>
public sealed class DriveJointTests
{
    [Theory]
    [InlineData("body FW-thread; thread ISO", "freewheel; thread ISO", Verdict.Fits)]
    [InlineData("body FW-thread; thread ISO", "freewheel; thread Italian", Verdict.Fits)]
    [InlineData("body FW-thread; thread British", "freewheel; thread Italian", Verdict.NeedsMeasuring)]
    [InlineData("body FW-thread; thread ISO", "freewheel; thread French", Verdict.DoesNotFit)]
    [InlineData("body FW-thread; thread French", "freewheel; thread Italian", Verdict.Unsafe)]
    [InlineData("body FW-thread; thread BMX", "freewheel; thread ISO", Verdict.DoesNotFit)]
    [InlineData("body FW-thread; thread lockring", "freewheel; thread lockring", Verdict.DoesNotFit)]
    [InlineData("body FW-thread", "freewheel; thread ISO", Verdict.NeedsMeasuring)]
    [InlineData("body FW-thread; thread ISO", "freewheel", Verdict.NeedsMeasuring)]
    [InlineData("body FW-thread; thread none", "freewheel; thread ISO", Verdict.DoesNotFit)]
    [InlineData("body unknown; thread ISO", "freewheel; thread ISO", Verdict.Fits)]
    [InlineData("body unknown", "9-speed HG", Verdict.Fits)]
    [InlineData("body HG-M", "9-speed HG", Verdict.Fits)]
    [InlineData("body FW-thread; thread ISO", "fixed sprocket; thread ISO", Verdict.Unsafe)]
    [InlineData("body FW-thread", "fixed sprocket", Verdict.Unsafe)]
    [InlineData("body TRACK; thread track", "fixed sprocket; thread track; lockring lockring", Verdict.Fits)]
    [InlineData("body TRACK; thread track", "fixed sprocket; thread track; lockring none", Verdict.Unsafe)]
    [InlineData("body TRACK; thread track", "fixed sprocket; thread track", Verdict.NeedsMeasuring)]
    [InlineData("body TRACK; thread unknown", "fixed sprocket; lockring none", Verdict.Unsafe)]
    [InlineData("body TRACK; thread track", "fixed sprocket; thread ISO; lockring lockring", Verdict.NeedsMeasuring)]
    [InlineData("body TRACK; thread track", "fixed sprocket; lockring lockring", Verdict.NeedsMeasuring)]
    [InlineData("body FW-thread; thread ISO", "fixed sprocket; thread ISO; lockring lockring", Verdict.Unsafe)]
    [InlineData("body TRACK; thread ISO", "freewheel; thread ISO; lockring none", Verdict.Fits)]
    public void A_thread_matters_where_sprockets_are_screwed_on(string wheel, string sprockets, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("freewheel-on-hub-thread", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.Cassette, Cassette.Read("pattern " + sprockets))).Verdict);

    [Fact]
    public void A_thread_goes_on_itself_a_larger_one_of_another_pitch_is_unsafe_and_a_smaller_one_is_refused()
    {
        foreach (FreewheelThread hub in FreewheelThread.All.Where(t => !t.IsLeftHand))
        {
            foreach (FreewheelThread part in FreewheelThread.All.Where(t => !t.IsLeftHand))
            {
                Verdict verdict = ThreadOnHub.Threads(hub, part).Verdict;
                bool samePitch = hub.ThreadsPerInch == part.ThreadsPerInch;
                Assert.Equal(hub.Interchanges(part), verdict == Verdict.Fits);
                Assert.True(samePitch || hub == part || verdict >= Verdict.DoesNotFit, $"{part} on {hub}: {verdict}");
                Assert.Equal(!samePitch && part.Diameter > hub.Diameter && hub != FreewheelThread.Bmx, verdict == Verdict.Unsafe);
            }
        }
    }

    [Theory]
    [InlineData("body HG-tall", "9-speed HG", Verdict.NeedsMeasuring)]
    [InlineData("body HG-tall", "XD", Verdict.DoesNotFit)]
    [InlineData("body FW-thread", "fixed sprocket", Verdict.Unsafe)]
    [InlineData("body TRACK", "fixed sprocket", Verdict.Fits)]
    [InlineData("body HG-M", "fixed sprocket", Verdict.DoesNotFit)]
    [InlineData("body FW-thread", "freewheel", Verdict.Fits)]
    public void A_body_of_another_maker_and_a_fixed_sprocket_have_their_cells(string wheel, string sprockets, Verdict expected) =>
        Assert.Equal(expected, Bench.CassetteOn(wheel, "pattern " + sprockets));

    [Theory]
    [InlineData("5x130", "5x130", "38", Verdict.Fits)]
    [InlineData("5x130", "5x130", "37", Verdict.NeedsMeasuring)]
    [InlineData("5x130", "5x130", "36", Verdict.NeedsMeasuring)]
    [InlineData("5x130", "5x130", "35", Verdict.DoesNotFit)]
    [InlineData("5x110", "4x110-uneven", "40", Verdict.DoesNotFit)]
    [InlineData("5x110-offset", "5x110-offset", "40", Verdict.NeedsMeasuring)]
    [InlineData("110", "5x110", "40", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "5x110", "40", Verdict.NeedsMeasuring)]
    [InlineData("5x110", "unknown", "40", Verdict.NeedsMeasuring)]
    [InlineData("5x110", "5x110", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("none", "5x110", "40", Verdict.DoesNotFit)]
    [InlineData("none", "none", "32", Verdict.Fits)]
    public void A_ring_has_the_circle_of_its_spider_and_enough_teeth_for_it(string spider, string ring, string teeth, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("ring-on-spider", "material steel", (Slot.Crankset, Crankset.Read("bolt circle " + spider)), (Slot.Chainring, Chainring.Read($"bolt circle {ring}; teeth {teeth}"))).Verdict);

    [Theory]
    [InlineData("8-bolt", "8-bolt", Verdict.Fits)]
    [InlineData("8-bolt", "3-bolt", Verdict.DoesNotFit)]
    [InlineData("own", "own", Verdict.NeedsMeasuring)]
    [InlineData("own", "8-bolt", Verdict.DoesNotFit)]
    [InlineData("none", "8-bolt", Verdict.DoesNotFit)]
    [InlineData("8-bolt", "none", Verdict.Fits)]
    [InlineData("unknown", "8-bolt", Verdict.NeedsMeasuring)]
    [InlineData("8-bolt", "unknown", Verdict.NeedsMeasuring)]
    public void A_ring_on_the_arm_has_the_arms_interface(string arm, string ring, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("direct-mount-ring-on-arm", "material steel", (Slot.Crankset, Crankset.Read("direct mount " + arm)), (Slot.Chainring, Chainring.Read("direct mount " + ring))).Verdict);

    [Fact]
    public void A_ring_that_nothing_holds_is_refused() =>
        Assert.Equal("directMount", Assert.Single(Refused("bolt circle none; direct mount none")).Where);

    [Theory]
    [InlineData("38", "38", Verdict.Fits)]
    [InlineData("38", "39", Verdict.DoesNotFit)]
    [InlineData("none", "39", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "39", Verdict.NeedsMeasuring)]
    [InlineData("38", "unknown", Verdict.NeedsMeasuring)]
    public void A_ring_has_at_most_the_teeth_that_the_frame_maker_allows(string limit, string ring, Verdict expected)
    {
        Assert.Equal(expected, Bench.Judge("ring-against-chainstay", "largest ring " + limit, (Slot.Crankset, Crankset.Read("largest ring " + ring))).Verdict);
        Assert.Equal(expected, Bench.Judge("chainring-against-chainstay", "largest ring " + limit, (Slot.Chainring, Chainring.Read("teeth " + ring))).Verdict);
    }

    [Theory]
    [InlineData("31.8", "31.8", Verdict.Fits)]
    [InlineData("28.6", "31.8", Verdict.NeedsPart)]
    [InlineData("31.8", "28.6", Verdict.DoesNotFit)]
    [InlineData("31.8", "34.9", Verdict.NeedsMeasuring)]
    [InlineData("28.6", "34.9", Verdict.NeedsMeasuring)]
    [InlineData("34.9", "braze-on", Verdict.NeedsPart)]
    [InlineData("braze-on", "34.9", Verdict.DoesNotFit)]
    [InlineData("S2", "S3", Verdict.DoesNotFit)]
    [InlineData("S2", "braze-on", Verdict.DoesNotFit)]
    [InlineData("28.6", "E-type", Verdict.NeedsMeasuring)]
    [InlineData("none", "31.8", Verdict.DoesNotFit)]
    [InlineData("unknown", "31.8", Verdict.NeedsMeasuring)]
    [InlineData("31.8", "unknown", Verdict.NeedsMeasuring)]
    public void A_front_derailleur_goes_on_its_mount_or_on_a_shim_or_clamp_that_exists(string frame, string derailleur, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("front-derailleur-on-frame", "front derailleur " + frame, (Slot.FrontDerailleur, FrontDerailleur.Read("mount " + derailleur))).Verdict);

    [Theory]
    [InlineData("rings 11; chainline road-2x", "speeds 11; chainline road-2x", Verdict.Fits)]
    [InlineData("rings 11; chainline road-2x", "speeds 10; chainline road-2x", Verdict.NeedsMeasuring)]
    [InlineData("rings 11; chainline gravel-2x-wide", "speeds 11; chainline road-45", Verdict.DoesNotFit)] // 2.5 mm short
    [InlineData("rings 11; chainline gravel-2x", "speeds 11; chainline road-45", Verdict.NeedsMeasuring)] // 1.9 mm short
    [InlineData("rings 11; chainline road-2x", "speeds 11; chainline gravel-2x", Verdict.NeedsMeasuring)]
    [InlineData("rings 1/8; chainline track", "speeds 11; chainline road-2x", Verdict.DoesNotFit)]
    [InlineData("rings unknown; chainline road-2x", "speeds 11; chainline road-2x", Verdict.NeedsMeasuring)]
    [InlineData("rings 11; chainline road-2x", "speeds 11; chainline unknown", Verdict.NeedsMeasuring)]
    [InlineData("rings unknown; chainline gravel-2x", "speeds 11; chainline road-2x", Verdict.DoesNotFit)]
    public void A_front_derailleur_is_made_for_rings_and_chainline(string crank, string derailleur, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("front-derailleur-with-crank", "material steel", (Slot.Crankset, Crankset.Read(crank)), (Slot.FrontDerailleur, FrontDerailleur.Read(derailleur))).Verdict);

    [Theory]
    [InlineData("cable; pull R", "cable; pull R", Verdict.NeedsMeasuring)]
    [InlineData("cable; pull R; with derailleur none", "cable; pull R", Verdict.NeedsMeasuring)]
    [InlineData("cable; pull R; with derailleur allowed", "cable; pull R", Verdict.Fits)]
    [InlineData("cable; pull R; with derailleur refused", "cable; pull R", Verdict.DoesNotFit)]
    [InlineData("cable; pull R; with derailleur allowed", "cable; pull M10", Verdict.DoesNotFit)]
    [InlineData("cable; pull R; with derailleur allowed", "cable", Verdict.NeedsMeasuring)]
    [InlineData("cable; pull R11; with derailleur allowed", "cable; pull M11", Verdict.DoesNotFit)]
    [InlineData("cable; pull M10", "cable; pull M11", Verdict.NeedsMeasuring)]
    [InlineData("cable; pull LG; with derailleur allowed", "cable; pull R", Verdict.DoesNotFit)]
    [InlineData("cable; pull none; with derailleur allowed", "cable; pull none", Verdict.Fits)]
    [InlineData("cable; pull none", "cable; pull none", Verdict.NeedsMeasuring)]
    [InlineData("wireless; with derailleur allowed", "wireless", Verdict.Fits)]
    [InlineData("wireless", "wireless", Verdict.NeedsMeasuring)]
    [InlineData("wireless; with derailleur allowed", "wired", Verdict.DoesNotFit)]
    [InlineData("no-shifting; with derailleur allowed", "no-shifting", Verdict.DoesNotFit)]
    [InlineData("signal unknown; with derailleur allowed", "cable; pull R", Verdict.NeedsMeasuring)]
    public void A_shifter_fits_a_derailleur_by_the_makers_word_alone_and_never_against_published_figures(string shifter, string derailleur, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("shifter-with-derailleur", "material steel", (Slot.RearShifter, Shifter.Read(shifter)), (Slot.RearDerailleur, RearDerailleur.Read(derailleur))).Verdict);

    [Fact]
    public void Without_the_makers_word_no_two_families_fit()
    {
        long cable = ShiftSignal.Cable.FitCode;
        foreach (ActuationFamily shifter in ActuationFamily.All)
        {
            foreach (ActuationFamily derailleur in ActuationFamily.All)
            {
                foreach (long word in new[] { 0, MakersWord.Refused.FitCode })
                {
                    Assert.True(ShiftRelations.WithDerailleur.Judge([cable, cable, shifter.FitCode, derailleur.FitCode, word]).Verdict >= Verdict.NeedsMeasuring);
                }

                // What the estimate refuses on any sprockets, the joint refuses too.
                bool refused = SprocketSpacing.All.Where(s => s.Speeds > 4 && s.Source != Sources.ThickPlates).All(s => Indexing.Estimate(shifter, derailleur, s).Check.Verdict == Verdict.DoesNotFit);
                Assert.Equal(refused, ShiftRelations.WithDerailleur.Judge([cable, cable, shifter.FitCode, derailleur.FitCode, MakersWord.Allowed.FitCode]).Verdict == Verdict.DoesNotFit);
            }
        }
    }

    [Theory]
    [InlineData("spacing 9", "9-speed HG", Verdict.Fits)]
    [InlineData("spacing 9; with sprockets refused", "9-speed HG", Verdict.DoesNotFit)]
    [InlineData("spacing 9", "8-speed HG", Verdict.DoesNotFit)]
    [InlineData("spacing 7", "8-speed HG", Verdict.NeedsMeasuring)]
    [InlineData("spacing 7; with sprockets allowed", "8-speed HG", Verdict.Fits)]
    [InlineData("spacing 9; with sprockets allowed", "8-speed HG", Verdict.DoesNotFit)]
    [InlineData("spacing 9", "pattern HG-9; spacing LG-9", Verdict.DoesNotFit)]
    [InlineData("spacing LG-9", "pattern HG-9; spacing LG-9", Verdict.Fits)]
    [InlineData("spacing 8", "pattern HG-9; spacing 8", Verdict.NeedsMeasuring)]
    [InlineData("spacing 11-wide", "pattern HG-12-road", Verdict.NeedsMeasuring)]
    [InlineData("spacing 12; with sprockets allowed", "pattern XD", Verdict.NeedsMeasuring)]
    [InlineData("spacing unknown", "9-speed HG", Verdict.NeedsMeasuring)]
    [InlineData("spacing 9", "pattern unknown", Verdict.NeedsMeasuring)]
    [InlineData("spacing none", "9-speed HG", Verdict.NeedsMeasuring)]
    [InlineData("spacing none; with sprockets allowed", "9-speed HG", Verdict.Fits)]
    [InlineData("spacing none; with sprockets refused", "9-speed HG", Verdict.DoesNotFit)]
    [InlineData("spacing unknown; with sprockets allowed", "3-lug", Verdict.Fits)]
    [InlineData("spacing 8", "3-lug", Verdict.NeedsMeasuring)]
    [InlineData("spacing single", "9-speed HG", Verdict.DoesNotFit)]
    public void A_shifter_is_made_for_the_spacing_of_the_sprockets(string shifter, string cassette, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("shifter-with-cassette", "material steel", (Slot.RearShifter, Shifter.Read(shifter)), (Slot.Cassette, Cassette.Read(cassette))).Verdict);

    [Theory]
    [InlineData("cable; with derailleur allowed", "cable", Verdict.Fits)]
    [InlineData("cable", "cable", Verdict.NeedsMeasuring)]
    [InlineData("cable; with derailleur refused", "cable", Verdict.DoesNotFit)]
    [InlineData("cable; with derailleur allowed", "wireless", Verdict.DoesNotFit)]
    [InlineData("cable; with derailleur allowed", "signal unknown", Verdict.NeedsMeasuring)]
    public void A_front_shifter_fits_by_the_makers_word(string shifter, string derailleur, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("front-shifter-with-front-derailleur", "material steel", (Slot.FrontShifter, Shifter.Read(shifter)), (Slot.FrontDerailleur, FrontDerailleur.Read(derailleur))).Verdict);

    [Theory]
    [InlineData("BB-mount", "2.5", Verdict.Fits)]
    [InlineData("BB-mount", "2.499999", Verdict.NeedsMeasuring)]
    [InlineData("BB-mount", "none", Verdict.NeedsMeasuring)]
    [InlineData("BB-mount", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("ISCG05", "none", Verdict.Fits)]
    [InlineData("ISCG05", "unknown", Verdict.Fits)]
    [InlineData("mount unknown", "2.5", Verdict.Fits)]
    [InlineData("mount unknown", "none", Verdict.NeedsMeasuring)]
    public void A_plate_wants_the_place_of_a_spacer(string guide, string spacer, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("guide-on-bottom-bracket", "material steel", (Slot.ChainGuide, ChainGuide.Read(guide)), (Slot.BottomBracket, BottomBracket.Read("drive spacer " + spacer))).Verdict);

    [Theory]
    [InlineData("ISCG05", "guide tabs ISCG05", Verdict.Fits)]
    [InlineData("ISCG", "guide tabs ISCG05", Verdict.DoesNotFit)]
    [InlineData("ISCG", "guide tabs none", Verdict.DoesNotFit)]
    [InlineData("ISCG", "guide tabs unknown", Verdict.NeedsMeasuring)]
    [InlineData("mount unknown", "guide tabs ISCG05", Verdict.NeedsMeasuring)]
    [InlineData("BB-mount", "guide tabs none", Verdict.Fits)]
    [InlineData("derailleur-mount", "front derailleur none", Verdict.DoesNotFit)]
    [InlineData("derailleur-mount", "front derailleur 31.8", Verdict.NeedsMeasuring)]
    public void A_guide_goes_on_its_own_tabs(string guide, string frame, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("guide-on-tabs", frame, (Slot.ChainGuide, ChainGuide.Read("mount " + guide.Replace("mount ", "", StringComparison.Ordinal)))).Verdict);

    [Theory]
    [InlineData("9/16", Verdict.Fits)]
    [InlineData("9/16; sides pair", Verdict.Fits)]
    [InlineData("9/16; sides two-left", Verdict.Unsafe)]
    [InlineData("9/16; sides two-right", Verdict.Unsafe)]
    [InlineData("9/16; sides pair | two-left", Verdict.NeedsMeasuring)]
    [InlineData("1/2; sides two-left", Verdict.Unsafe)]
    public void Two_pedals_of_one_side_are_unsafe(string pedals, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("pedals-in-cranks", "material steel", (Slot.Crankset, Crankset.Read("pedals 9/16")), (Slot.Pedals, Pedals.Read(pedals))).Verdict);

    [Theory]
    [InlineData("42", 42)]
    [InlineData(" 42T ", 42)]
    [InlineData("42 teeth", 42)]
    [InlineData("8", 8)]
    [InlineData("80", 80)]
    public void Teeth_are_read(string text, int teeth) => Assert.Equal(teeth, ToothCount.Parse(text, null).Teeth);

    [Theory]
    [InlineData("7")]
    [InlineData("81")]
    [InlineData("42.5")]
    [InlineData("-42")]
    [InlineData("42 mm")]
    [InlineData("")]
    public void What_is_no_count_of_teeth_is_refused(string text) => Assert.False(ToothCount.TryParse(text, null, out _));

    [Theory]
    [InlineData("touring", "body IGH-own", true)]
    [InlineData("touring", "body hub gear", true)]
    [InlineData("touring", "body coaster hub", false)]
    [InlineData("touring", "body HG", true)]
    [InlineData("touring", "body unknown", true)]
    [InlineData("children's", "body HG", false)]
    [InlineData("BMX", "body BMX-driver", false)]
    [InlineData("single-speed", "body 3-lug", false)]
    public void A_shifter_goes_with_a_derailleur_or_a_hub_gear(string kind, string wheel, bool asked)
    {
        Build build = Build.From(Frame.Read(kind)).With(Wheel.Read(wheel), Slot.RearWheel);
        Assert.Equal(asked, build.Check().Missing.Contains(Slot.RearShifter));
        Assert.Equal(asked, build.Needs().Of(Slot.RearShifter) is not null);
    }

    [Theory]
    [InlineData("full-suspension", true)]
    [InlineData("full-suspension; shock 210x55", true)]
    [InlineData("full-suspension; shock none", false)]
    [InlineData("folding", false)]
    [InlineData("folding; shock 150x32", true)]
    [InlineData("material steel", false)]
    public void A_shock_goes_with_rear_suspension(string frame, bool asked) => Assert.Equal(asked, Build.From(Frame.Read(frame)).Check().Missing.Contains(Slot.Shock));

    [Fact]
    public void Front_shifting_guide_and_ring_are_never_required() =>
        Assert.Empty(Build.From(Frame.Read("full-suspension; front derailleur 31.8; guide tabs ISCG05")).Check().Missing.Intersect([Slot.FrontShifter, Slot.FrontDerailleur, Slot.ChainGuide, Slot.Chainring]));

    private static System.Collections.Immutable.ImmutableArray<SpecProblem> Refused(string ring)
    {
        Assert.False(Chainring.TryRead(ring, out _, out var problems));
        return problems;
    }
}
