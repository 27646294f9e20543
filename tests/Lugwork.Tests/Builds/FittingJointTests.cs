using static Lugwork.Tests.Builds.Bench;

namespace Lugwork.Tests.Builds;

/// <summary>Axle, hanger, chain, collar, rails, cranks: both sides, an unknown on each side, and a trap.</summary>
public sealed class FittingJointTests
{
    [Theory]
    [InlineData("M12x1.0", "M12x1.0", Verdict.Fits)]
    [InlineData("M12x1.0", "M12x1.5", Verdict.Unsafe)]
    [InlineData("M12x1.5", "M12x1.75", Verdict.Unsafe)]
    [InlineData("M12x1.5", "M15x1.5", Verdict.DoesNotFit)]
    [InlineData("own", "own", Verdict.NeedsMeasuring)]
    [InlineData("M12", "M12x1.5", Verdict.NeedsMeasuring)]
    [InlineData("none", "M12x1.5", Verdict.DoesNotFit)]
    [InlineData("unknown", "M12x1.5", Verdict.NeedsMeasuring)]
    [InlineData("M12x1.5", "unknown", Verdict.NeedsMeasuring)]
    public void An_axle_has_the_pitch_of_its_end(string end, string axle, Verdict expected)
    {
        Assert.Equal(expected, Judge("rear-axle-in-frame", $"rear axle thread {end}", (Slot.RearThruAxle, ThruAxle.Read("thread " + axle))).Verdict);
        Assert.Equal(expected, Judge("front-axle-in-fork", "material steel", (Slot.Fork, Fork.Read($"front axle thread {end}")), (Slot.FrontThruAxle, ThruAxle.Read("thread " + axle))).Verdict);
    }

    [Theory]
    [InlineData("M10x1", "M10 bolt", Verdict.Fits)]
    [InlineData("UDH", "M10 bolt", Verdict.Fits)]
    [InlineData("UDH", "hangerless", Verdict.Fits)]
    [InlineData("M10x1", "hangerless", Verdict.DoesNotFit)]
    [InlineData("M10x1", "direct mount", Verdict.NeedsPart)]
    [InlineData("direct mount", "direct mount", Verdict.Fits)]
    [InlineData("direct mount", "M10 bolt", Verdict.DoesNotFit)]
    [InlineData("plain", "M10 bolt", Verdict.NeedsMeasuring)]
    [InlineData("no hanger", "M10 bolt", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "M10 bolt", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "hangerless", Verdict.NeedsMeasuring)]
    [InlineData("M10x1", "unknown", Verdict.NeedsMeasuring)]
    public void A_derailleur_hangs_on_what_it_was_made_for(string hanger, string mount, Verdict expected) =>
        Assert.Equal(expected, Judge("derailleur-on-hanger", $"hanger {hanger}", (Slot.RearDerailleur, RearDerailleur.Read("mount " + mount))).Verdict);

    [Theory]
    [InlineData("pattern HG-9", "9", Verdict.Fits)]
    [InlineData("pattern HG-8", "9", Verdict.Fits)]
    [InlineData("pattern HG-9", "8", Verdict.DoesNotFit)]
    [InlineData("pattern HG-9", "1/8", Verdict.DoesNotFit)]
    [InlineData("pattern 10-speed HG", "10", Verdict.Fits)]
    [InlineData("pattern XD", "12", Verdict.NeedsMeasuring)]
    [InlineData("pattern XD; sprockets 12", "12", Verdict.Fits)]
    [InlineData("pattern XD", "8", Verdict.DoesNotFit)]
    [InlineData("pattern freewheel", "8", Verdict.NeedsMeasuring)]
    [InlineData("pattern HG-9", "unknown", Verdict.NeedsMeasuring)]
    public void A_chain_follows_the_speeds_that_the_cassette_states_or_its_pattern_means(string cassette, string chain, Verdict expected) =>
        Assert.Equal(expected, Judge("chain-on-cassette", "material steel", (Slot.Cassette, Cassette.Read(cassette)), (Slot.Chain, Chain.Read("size " + chain))).Verdict);

    [Theory]
    [InlineData("31.8", "31.8", Verdict.Fits)]
    [InlineData("31.8", "34.9", Verdict.DoesNotFit)]
    [InlineData("34.9", "31.8", Verdict.DoesNotFit)]
    [InlineData("34.9", "35.0", Verdict.Fits)]
    [InlineData("31.8 ± 0.1", "31.8", Verdict.Fits)]
    [InlineData("none", "31.8", Verdict.DoesNotFit)]
    [InlineData("unknown", "31.8", Verdict.NeedsMeasuring)]
    public void A_collar_follows_the_outside_of_the_tube(string tube, string collar, Verdict expected) =>
        Assert.Equal(expected, Judge("seat-clamp-on-seat-tube", $"seat tube outside {tube}", (Slot.SeatClamp, SeatClamp.Read(collar))).Verdict);

    [Theory]
    [InlineData("7-round", "7-round", Verdict.Fits)]
    [InlineData("7-round", "7x9", Verdict.DoesNotFit)]
    [InlineData("7x9", "7x9", Verdict.Fits)]
    [InlineData("7x9", "7x9.6", Verdict.NeedsMeasuring)]
    [InlineData("7x9", "7x10", Verdict.DoesNotFit)]
    [InlineData("pivotal", "7-round", Verdict.DoesNotFit)]
    [InlineData("unknown", "7-round", Verdict.NeedsMeasuring)]
    public void Rails_go_in_jaws_of_their_own_shape(string head, string rails, Verdict expected) =>
        Assert.Equal(expected, Judge("saddle-on-seatpost", "material steel", (Slot.Seatpost, Seatpost.Read("railClamp " + head)), (Slot.Saddle, Saddle.Read("rails " + rails))).Verdict);

    [Theory]
    [InlineData("BSA 68", "BSA 68", "bottom-bracket-in-shell", Verdict.Fits)]
    [InlineData("Italian 70", "BSA 68", "bottom-bracket-in-shell", Verdict.DoesNotFit)]
    [InlineData("BSA 68", "BSA 68-73", "bottom-bracket-width", Verdict.Fits)]
    [InlineData("BSA 83", "BSA 68-73", "bottom-bracket-width", Verdict.DoesNotFit)]
    [InlineData("T47 86.5", "T47 85.5", "bottom-bracket-width", Verdict.NeedsMeasuring)]
    [InlineData("BSA", "BSA 68-73", "bottom-bracket-width", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "BSA 68", "bottom-bracket-in-shell", Verdict.NeedsMeasuring)]
    public void A_bottom_bracket_has_the_thread_and_a_width_of_the_shell(string shell, string bracket, string joint, Verdict expected) =>
        Assert.Equal(expected, Judge(joint, $"shell {shell}", (Slot.BottomBracket, BottomBracket.Read("shell " + bracket))).Verdict);

    [Theory]
    [InlineData("9/16", "9/16", Verdict.Fits)]
    [InlineData("French", "9/16", Verdict.Unsafe)]
    [InlineData("1/2", "9/16", Verdict.DoesNotFit)]
    [InlineData("unknown", "9/16", Verdict.NeedsMeasuring)]
    public void Pedals_have_the_thread_of_the_crank(string crank, string pedals, Verdict expected) =>
        Assert.Equal(expected, Judge("pedals-in-cranks", "material steel", (Slot.Crankset, Crankset.Read("pedals " + crank)), (Slot.Pedals, Pedals.Read(pedals))).Verdict);

    [Theory]
    [InlineData("rear 12x142", true)]
    [InlineData("rear unknown", true)]
    [InlineData("rear 135 QR", false)]
    [InlineData("rear 12x142; rear axle thread none", false)]
    [InlineData("rear 135 QR; rear axle thread M12x1.0", true)]
    public void A_thru_axle_is_asked_for_where_the_end_may_take_one(string frame, bool asked) =>
        Assert.Equal(asked, Build.From(Frame.Read(frame)).Check().Missing.Contains(Slot.RearThruAxle));

    [Theory]
    [InlineData("steerer shape straight 1-1/8", "28.6", "30")]
    [InlineData("steerer shape straight 1 1/8 inch", "28.6", "30")]
    [InlineData("steerer shape tapered 1-1/8\" to 1-1/2\"", "28.6", "39.8")]
    [InlineData("steerer shape straight 1", "25.4", "26.4 | 27")]
    [InlineData("steerer shape tapered", "28.6 | 31.8", "33 | 37 | 39.8")]
    public void The_shape_of_a_steerer_says_its_top_and_its_seat(string text, string steerer, string seat)
    {
        Fork fork = Fork.Read(text);
        Assert.Equal((steerer, seat), (fork.Steerer.ToString(), fork.CrownSeat.ToString()));
    }

    [Theory]
    [InlineData("shell BSA 68-73", "BSA", "68", "73")]
    [InlineData("shell BSA 68/73", "BSA", "68", "73")]
    [InlineData("shell BB86", "PF41", "86.5", "86.5")]
    [InlineData("shell T47 85.5", "T47", "85.5", "85.5")]
    public void The_shell_of_a_bottom_bracket_says_family_and_widths(string text, string family, string least, string most)
    {
        BottomBracket bracket = BottomBracket.Read(text);
        Assert.Equal((family, least, most), (bracket.Family.ToString(), bracket.NarrowestShell.ToString(), bracket.WidestShell.ToString()));
    }

    [Theory]
    [InlineData("shell BSA 73-68")]
    [InlineData("shell wide")]
    [InlineData("shell BSA 68; family Italian")]
    public void A_shell_that_says_nothing_or_twice_is_refused(string text) => Assert.False(BottomBracket.TryRead(text, out _, out _));

    [Theory]
    [InlineData("12x142", "M12x1.5", Verdict.Fits)]
    [InlineData("12x142", "M15x1.5", Verdict.DoesNotFit)]
    [InlineData("135 QR", "M12x1.5", Verdict.DoesNotFit)]
    [InlineData("12x142", "own", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "M12x1.5", Verdict.NeedsMeasuring)]
    public void An_axle_has_the_diameter_of_its_end_whatever_thread_is_stated(string end, string axle, Verdict expected) =>
        Assert.Equal(expected, Judge("rear-axle-diameter", $"rear {end}; rear axle thread {axle}", (Slot.RearThruAxle, ThruAxle.Read("thread " + axle))).Verdict);

    [Theory]
    [InlineData("31.8", "28.6", "collar-too-small")]
    [InlineData("31.8", "34.9", "collar-too-large")]
    public void The_reason_of_a_collar_says_which_is_too_large(string tube, string collar, string reason) =>
        Assert.Equal(reason, Judge("seat-clamp-on-seat-tube", $"seat tube outside {tube}", (Slot.SeatClamp, SeatClamp.Read(collar))).ReasonId);

    [Theory]
    [InlineData("7-round", "7x9.6", "oval-in-round")]
    [InlineData("7-round", "8-round", "rails-too-thick")]
    [InlineData("7x9", "7x10", "rails-too-thick")]
    public void The_reason_of_rails_says_what_happens_to_them(string head, string rails, string reason) =>
        Assert.Equal(reason, Judge("saddle-on-seatpost", "material steel", (Slot.Seatpost, Seatpost.Read("railClamp " + head)), (Slot.Saddle, Saddle.Read("rails " + rails))).ReasonId);

    [Fact]
    public void A_wide_unit_in_a_narrower_shell_of_its_family_needs_the_makers_spacers() =>
        Assert.Equal(Verdict.NeedsMeasuring, Judge("bottom-bracket-width", "shell BB89.5", (Slot.BottomBracket, BottomBracket.Read("shell BB92"))).Verdict);

    [Theory]
    [InlineData("family BSA; narrowest shell 73; widest shell 68")]
    [InlineData("takes 24.0 ± 0.05")]
    public void A_turned_range_or_a_caliper_where_only_a_name_tells_is_refused(string text) => Assert.False(BottomBracket.TryRead(text, out _, out _));
}
