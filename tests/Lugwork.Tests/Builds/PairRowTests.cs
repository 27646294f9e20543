using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.Tests.Builds;

/// <summary>Front beside rear, hands, and the line of the chain: both sides of each boundary and an unknown.</summary>
public sealed class PairRowTests
{
    private static FitReport Check(string frame, params (Slot Slot, string Text)[] parts)
    {
        Build build = Build.From(Frame.Read(frame));
        foreach ((Slot slot, string text) in parts)
        {
            Assert.True(PartForms.Of(slot).TryReadAny(text, out Part part, out var problems), string.Join(" | ", problems));
            build = build.OfFile(part, slot);
        }

        return build.Check();
    }

    private static Fit Of(FitReport report, string check) => report.Findings.Single(f => f.Joint!.Id == check);

    [Theory]
    [InlineData("off-road-1x-52", "R148-12", "12", 425, "ring of")]
    [InlineData("off-road-1x-52", "R148-12", "12", 250, "ring of")]
    [InlineData("road-2x", "R130", "10", 405, "middle of the rings")]
    [InlineData("road-2x", "R130", "10", 200, "middle of the rings")]
    public void The_angle_of_the_chain_is_told_and_is_the_study_s(string chainline, string hub, string spacing, int chainstay, string from)
    {
        SprocketSpacing sprockets = SprocketSpacing.All.First(s => s.FitKey == spacing || s.FitKey.StartsWith(spacing + "-", StringComparison.Ordinal));
        Fit fit = Of(Check($"chainstay {chainstay}", (Slot.Crankset, "chainline " + chainline), (Slot.RearWheel, "hub " + hub), (Slot.Cassette, "spacing " + sprockets.FitKey)), "chain-angle");
        Assert.Equal(Verdict.Fits, fit.Verdict);

        FrontChainline front = FrontChainline.Parse(chainline, null);
        decimal gap = Lugwork.Hubs.HubStandard.Parse(hub, null).GapMicrometres / 1000m;
        ChainlineStudy study = ChainlineStudy.Of([Length.FromMillimeters((double)((front.Range.Least + front.Range.Most) / 2))], sprockets.InInnerGap(Dimension.OfMillimetres(gap))!, Length.FromMillimeters(chainstay));
        Assert.Contains(FormattableString.Invariant($"at {study.Worst.Degrees:0.0} degrees"), fit.Sentence, StringComparison.Ordinal);
        Assert.Contains(from, fit.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void The_angle_of_a_measured_chainstay_is_told_from_to()
    {
        Fit fit = Of(Check("chainstay 300 \u00B1 100", (Slot.Crankset, "chainline off-road-1x-52"), (Slot.RearWheel, "hub R148-12"), (Slot.Cassette, "spacing 9")), "chain-angle");
        Assert.Matches(@"runs at \d\.\d to \d\.\d degrees", fit.Sentence);
    }

    [Theory]
    [InlineData("", "chainline road-2x", "hub R130", "spacing 9")]
    [InlineData("chainstay 405", "rings 9", "hub R130", "spacing 9")]
    [InlineData("chainstay 405", "chainline road-2x", "hub R130", "smallest sprocket 11")]
    public void The_angle_is_asked_for_only_where_all_of_it_is_stated(string frame, string crank, string wheel, string cassette) =>
        Assert.DoesNotContain(Check(frame.Length == 0 ? "steel" : frame, (Slot.Crankset, crank), (Slot.RearWheel, wheel), (Slot.Cassette, cassette)).Findings, f => f.Joint!.Id == "chain-angle");

    [Theory]
    [InlineData("ring line 44", "42", Verdict.Fits)]
    [InlineData("ring line 44.1", "42", Verdict.NeedsMeasuring)]
    [InlineData("ring line 40", "42", Verdict.Fits)]
    [InlineData("ring line 48", "42", Verdict.NeedsMeasuring)]
    [InlineData("ring line 48.1", "42", Verdict.DoesNotFit)]
    [InlineData("ring line 35.9", "42", Verdict.DoesNotFit)]
    [InlineData("ring line 43.5 \u00B1 1", "42", Verdict.NeedsMeasuring)]
    [InlineData("ring line unknown", "42", Verdict.NeedsMeasuring)]
    [InlineData("chainline track", "42", Verdict.Fits)]
    [InlineData("chainline road-2x", "42", Verdict.NeedsMeasuring)]
    [InlineData("ring line none", "42", Verdict.DoesNotFit)]
    public void One_ring_and_one_sprocket_stand_in_line(string crank, string sprocket, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check("steel", (Slot.Crankset, crank), (Slot.RearWheel, "sprocket line " + sprocket)), "single-chainline").Verdict);

    [Fact]
    public void The_needs_sheet_says_from_where_to_where_the_ring_may_stand()
    {
        NeedLine line = Build.From(new Frame()).With(Wheel.Read("sprocket line 42"), Slot.RearWheel).Needs().Of(Slot.Crankset)!.Lines.Single(l => l.Joint.Id == "single-chainline");
        Assert.Equal((40m, 44m), (line.Least!.Value.Millimetres, line.Most!.Value.Millimetres));
    }

    [Theory]
    [InlineData("52", "52", Verdict.Fits)]
    [InlineData("52", "51", Verdict.NeedsMeasuring)]
    [InlineData("none", "51", Verdict.NeedsMeasuring)]
    [InlineData("52", "unknown", Verdict.NeedsMeasuring)]
    public void A_tab_is_made_for_rings_from_one_size_up(string tab, string ring, Verdict verdict)
    {
        Fit fit = Of(Check($"smallest outer ring {tab}", (Slot.Crankset, $"largest ring {ring}"), (Slot.FrontDerailleur, "speeds 9")), "front-derailleur-tab");
        Assert.Equal(verdict, fit.Verdict);
        Assert.DoesNotContain("none teeth", fit.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(Check($"smallest outer ring {tab}", (Slot.Crankset, $"largest ring {ring}")).Findings, f => f.Joint!.Id == "front-derailleur-tab");
    }

    [Theory]
    [InlineData("BSA 73", "73", Verdict.Fits)]
    [InlineData("BSA 83", "73", Verdict.NeedsMeasuring)]
    [InlineData("BSA 73", "68", Verdict.Fits)]
    [InlineData("BSA 73", "83", Verdict.DoesNotFit)]
    [InlineData("BSA 73", "83 \u00B1 0.5", Verdict.NeedsMeasuring)]
    [InlineData("BSA 68", "73", Verdict.Fits)]
    [InlineData("BSA 68", "68 | 73", Verdict.Fits)]
    [InlineData("BSA 73", "68 | 73", Verdict.Fits)]
    [InlineData("BSA 68", "86.5", Verdict.Fits)]
    [InlineData("BB86", "68", Verdict.Fits)]
    [InlineData("BB92", "73", Verdict.Fits)]
    [InlineData("Italian 70", "68", Verdict.Fits)]
    [InlineData("unknown", "73", Verdict.NeedsMeasuring)]
    [InlineData("BSA 73", "unknown", null)]
    public void A_crank_goes_across_the_shell_that_it_is_made_for(string shell, string crank, Verdict? verdict) =>
        Assert.Equal(verdict, Check($"shell {shell}", (Slot.Crankset, $"shell width {crank}")).Findings.FirstOrDefault(f => f.Joint!.Id == "crank-for-shell").Joint is null ? null : Of(Check($"shell {shell}", (Slot.Crankset, $"shell width {crank}")), "crank-for-shell").Verdict);

    [Theory]
    [InlineData("left", "right", Verdict.Fits)]
    [InlineData("right", "right", Verdict.DoesNotFit)]
    [InlineData("left", "left", Verdict.DoesNotFit)]
    [InlineData("either", "either", Verdict.Fits)]
    [InlineData("either", "left", Verdict.Fits)]
    [InlineData("left | right", "right", Verdict.NeedsMeasuring)]
    public void There_is_a_lever_for_each_hand(string front, string rear, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check("steel", (Slot.FrontBrakeLever, $"hand {front}"), (Slot.RearBrakeLever, $"hand {rear}")), "levers-one-each-side").Verdict);

    [Theory]
    [InlineData("left", "left", Verdict.Fits)]
    [InlineData("left", "right", Verdict.DoesNotFit)]
    [InlineData("either", "right", Verdict.Fits)]
    [InlineData("right", "either", Verdict.Fits)]
    [InlineData("left | right", "right", Verdict.NeedsMeasuring)]
    public void The_front_brake_is_in_the_hand_that_the_rider_uses(string lever, string rider, Verdict verdict)
    {
        Fit fit = Of(Check("steel", (Slot.FrontBrakeLever, $"hand {lever}"), (Slot.Rider, $"front brake hand {rider}")), "front-brake-hand");
        Assert.Equal(verdict, fit.Verdict);
        Assert.Equal(verdict != Verdict.Fits, fit.Cautions.Any(c => c.Id == "brake-hands"));
    }

    [Theory]
    [InlineData("either", "right", "right", Verdict.DoesNotFit)]
    [InlineData("either", "left", "right", Verdict.Fits)]
    [InlineData("either", "left", "left", Verdict.DoesNotFit)]
    [InlineData("either", "either", "right", Verdict.Fits)]
    [InlineData("either", "right", "either", Verdict.Fits)]
    [InlineData("right", "either", "right", Verdict.Fits)]
    [InlineData("either", "left | right", "right", Verdict.NeedsMeasuring)]
    public void A_lever_for_either_hand_goes_to_the_side_that_is_left(string front, string rear, string rider, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check("steel", (Slot.FrontBrakeLever, $"hand {front}"), (Slot.RearBrakeLever, $"hand {rear}"), (Slot.Rider, $"front brake hand {rider}")), "brake-hands-together").Verdict);

    [Theory]
    [InlineData("left", "right", Verdict.Fits)]
    [InlineData("right", "right", Verdict.NeedsMeasuring)]
    [InlineData("either", "right", Verdict.Fits)]
    public void The_rear_hose_sweeps_across_to_the_other_side(string port, string lever, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check($"rear hose side {port}", (Slot.RearBrakeLever, $"hand {lever}")), "rear-hose-side").Verdict);

    /// <summary>A lever that goes on either side goes to the hand that the front brake leaves.</summary>
    [Theory]
    [InlineData("left", "either", "front brake hand right", Verdict.NeedsMeasuring)]
    [InlineData("right", "either", "front brake hand right", Verdict.Fits)]
    [InlineData("right", "either", "front brake hand left", Verdict.NeedsMeasuring)]
    [InlineData("left", "either", "front brake hand left", Verdict.Fits)]
    [InlineData("left", "either", "82 kg", Verdict.NeedsMeasuring)]
    [InlineData("either", "either", "82 kg", Verdict.Fits)]
    [InlineData("left", "either", "front brake hand either", Verdict.Fits)]
    [InlineData("left", "right", "front brake hand left", Verdict.Fits)]
    [InlineData("left", "right", "82 kg", Verdict.Fits)]
    public void The_rider_s_hand_says_where_a_lever_for_either_side_sits(string port, string lever, string rider, Verdict verdict)
    {
        Fit fit = Of(Check($"rear hose side {port}", (Slot.RearBrakeLever, $"hand {lever}"), (Slot.Rider, rider)), "rear-hose-side-of-rider");
        Assert.Equal(verdict, fit.Verdict);
        Assert.Equal(rider == "82 kg" && verdict == Verdict.NeedsMeasuring, fit.Measurements.Any(m => m.Field == "frontBrakeHand"));
    }

    [Fact]
    public void Without_a_port_or_a_stated_lever_the_rider_s_hand_says_nothing_of_the_hose()
    {
        Assert.DoesNotContain(Check("steel", (Slot.RearBrakeLever, "hand either"), (Slot.Rider, "front brake hand left")).Findings, f => f.Joint!.Id == "rear-hose-side-of-rider");
        Assert.DoesNotContain(Check("rear hose side left", (Slot.RearBrakeLever, "pull short"), (Slot.Rider, "front brake hand left")).Findings, f => f.Joint!.Id == "rear-hose-side-of-rider");
    }

    [Fact]
    public void Of_hands_nothing_is_said_until_both_are_stated()
    {
        FitReport report = Check("rear hose side left", (Slot.FrontBrakeLever, "hand left"), (Slot.RearBrakeLever, "pull short"), (Slot.Rider, "82 kg"));
        Assert.DoesNotContain(report.Findings, f => f.Joint!.Id is "levers-one-each-side" or "front-brake-hand" or "rear-hose-side");
        Assert.DoesNotContain(report.NotLookedAt, j => j.Id is "levers-one-each-side" or "front-brake-hand" or "rear-hose-side");
    }

    [Theory]
    [InlineData("six-bolt", "six-bolt", "rotor-fixings-alike")]
    [InlineData("six-bolt", "center-lock", "rotor-fixings-differ")]
    [InlineData("none", "center-lock", "rotor-fixings-differ")]
    public void Two_kinds_of_rotor_fixing_are_a_note_and_no_refusal(string front, string rear, string reason)
    {
        Fit fit = Of(Check("steel", (Slot.FrontWheel, $"rotor fixing {front}"), (Slot.RearWheel, $"rotor fixing {rear}")), "rotor-fixings-front-and-rear");
        Assert.Equal((Verdict.Fits, reason), (fit.Verdict, fit.ReasonId));
    }

    [Theory]
    [InlineData("37-622", "37-622", "tyres-front-and-rear")]
    [InlineData("37-622", "46-622", "tyres-front-and-rear")]
    [InlineData("37-622", "47-622", "rear-tyre-wider")]
    [InlineData("47-622", "28-622", "tyres-front-and-rear")]
    public void A_much_wider_rear_tyre_is_a_note_and_no_refusal(string front, string rear, string reason)
    {
        Fit fit = Of(Check("steel", (Slot.FrontTyre, front), (Slot.RearTyre, rear)), "tyres-front-and-rear");
        Assert.Equal((Verdict.Fits, reason), (fit.Verdict, fit.ReasonId));
    }

    [Theory]
    [InlineData("hold tubular", "hold tubular")]
    [InlineData("28-622", "hold tubular")]
    public void Tubulars_without_a_size_are_not_refused_for_it(string front, string rear) =>
        Assert.Equal(Verdict.NeedsMeasuring, Of(Check("steel", (Slot.FrontTyre, front), (Slot.RearTyre, rear)), "tyres-front-and-rear").Verdict);

    [Theory]
    [InlineData("+20", "none", Verdict.Fits)]
    [InlineData("+20", "+20", Verdict.DoesNotFit)]
    [InlineData("unknown", "+20", Verdict.DoesNotFit)]
    public void Adapters_are_never_stacked(string first, string second, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check("steel", (Slot.RearCaliper, $"post; adapter {first}; second adapter {second}")), "rear-adapters-stacked").Verdict);

    [Theory]
    [InlineData("7", "10", "none", Verdict.Fits)]
    [InlineData("7.1", "10", "none", Verdict.NeedsMeasuring)]
    [InlineData("7", "10", "3", Verdict.NeedsMeasuring)]
    [InlineData("7", "10", "3.1", Verdict.DoesNotFit)]
    [InlineData("none", "10", "7", Verdict.Fits)]
    [InlineData("7", "unknown", "5", Verdict.NeedsMeasuring)]
    public void The_crown_swings_under_the_down_tube(string knobs, string stack, string tube, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check($"down tube drop {tube}", (Slot.Fork, $"knob rise {knobs}"), (Slot.Headset, $"lower stack {stack}")), "crown-under-down-tube").Verdict);

    /// <summary>The speeds run through the drivetrain by joints of two: no row of its own is wanted.</summary>
    [Theory]
    [InlineData(Slots.Chain, "8", "chain-on-cassette chain-on-rings chain-through-derailleur")]
    [InlineData(Slots.Cassette, "11-speed HG", "chain-on-cassette")]
    [InlineData(Slots.Crankset, "rings 12", "chain-on-rings")]
    [InlineData(Slots.Derailleur, "M10 bolt; chain 12", "chain-through-derailleur")]
    [InlineData(Slots.Shifter, "cable; spacing 9", "shifter-with-cassette")]
    public void Another_number_of_speeds_anywhere_in_the_drive_is_seen(string slot, string other, string joints)
    {
        Build even = Build.From(Frame.Read("hanger M10x1")).With(Chain.Read("11")).With(Cassette.Read("11-speed HG; spacing 11-wide")).With(Crankset.Read("rings 11")).With(RearDerailleur.Read("M10 bolt; chain 11")).With(Shifter.Read("cable; spacing 11-wide"), Slot.RearShifter);
        string[] seen = joints.Split(' ');
        Assert.All(even.Check().Findings.Where(f => seen.Contains(f.Joint!.Id)), f => Assert.Equal(Verdict.Fits, f.Verdict));
        if (slot == Slots.Cassette)
        {
            even = even.With(Chain.Read("9"));
        }
        else
        {
            Assert.True(PartForms.Of(Slot.Find(slot)!).TryReadAny(other, out Part part, out _));
            even = even.With(part, Slot.Find(slot)!);
        }

        Assert.All(seen, id => Assert.NotEqual(Verdict.Fits, Of(even.Check(), id).Verdict));
    }

    private static class Slots
    {
        public const string Chain = "chain";
        public const string Cassette = "cassette";
        public const string Crankset = "crankset";
        public const string Derailleur = "rearDerailleur";
        public const string Shifter = "rearShifter";
    }
}
