using Lugwork.Brakes;
using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.Tests.Builds;

/// <summary>Parts that are not new.</summary>
public sealed class ConditionTests
{
    private static Build With(Slot slot, string text)
    {
        Assert.True(PartForms.Of(slot).TryReadAny(text, out Part part, out var problems), string.Join(" | ", problems));
        return slot == Slot.Frame ? Build.From((Frame)part) : Build.From(Frame.Read("steel")).With(part, slot);
    }

    private static Fit Of(Build build, string id) => build.Check().Findings.Single(f => f.Joint!.Id == id);

    private static Slot Place(string key) => Slot.Find(key)!;

    [Theory]
    [InlineData("fork", "condition new", Verdict.Fits)]
    [InlineData("fork", "condition inspected", Verdict.Fits)]
    [InlineData("fork", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("fork", "condition used | inspected", Verdict.NeedsMeasuring)]
    [InlineData("fork", "condition worn", Verdict.Unsafe)]
    [InlineData("fork", "condition damaged", Verdict.Unsafe)]
    [InlineData("fork", "condition recalled", Verdict.Unsafe)]
    [InlineData("fork", "condition crashed; material carbon", Verdict.Unsafe)]
    [InlineData("fork", "condition crashed; material steel", Verdict.NeedsMeasuring)]
    [InlineData("fork", "condition crashed", Verdict.NeedsMeasuring)]
    [InlineData("frame", "condition crashed; material carbon", Verdict.Unsafe)]
    [InlineData("frame", "condition used; material carbon", Verdict.NeedsMeasuring)]
    [InlineData("handlebar", "condition crashed; material aluminium", Verdict.Unsafe)]
    [InlineData("handlebar", "condition crashed; material steel", Verdict.NeedsMeasuring)]
    [InlineData("stem", "condition crashed; material aluminium", Verdict.Unsafe)]
    [InlineData("seatpost", "27.2; condition crashed; material aluminium", Verdict.Unsafe)]
    [InlineData("crankset", "condition crashed; material aluminium", Verdict.NeedsMeasuring)]
    [InlineData("crankset", "condition damaged", Verdict.Unsafe)]
    [InlineData("crankset", "condition worn", Verdict.DoesNotFit)]
    [InlineData("crankset", "condition worn; material carbon", Verdict.DoesNotFit)]
    [InlineData("crankset", "condition crashed; material carbon", Verdict.Unsafe)]
    [InlineData("fork", "condition unknown", Verdict.NeedsMeasuring)]
    [InlineData("fork", "condition ?", Verdict.NeedsMeasuring)]
    [InlineData("fork", "condition not-known | inspected", Verdict.NeedsMeasuring)]
    [InlineData("fork", "condition crashed; material aluminium; steerer material carbon", Verdict.Unsafe)]
    [InlineData("fork", "condition crashed; material carbon; steerer material aluminium", Verdict.Unsafe)]
    [InlineData("fork", "condition crashed; material carbon; steerer material none", Verdict.Unsafe)]
    [InlineData("fork", "condition crashed; material aluminium; steerer material steel", Verdict.NeedsMeasuring)]
    [InlineData("fork", "condition crashed; material aluminium", Verdict.NeedsMeasuring)]
    [InlineData("fork", "condition used; material aluminium; steerer material carbon", Verdict.NeedsMeasuring)]
    [InlineData("controls", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("controls", "condition damaged", Verdict.Unsafe)]
    [InlineData("controls", "condition new", Verdict.Fits)]
    [InlineData("preload", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("rearRimTape", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("frontDerailleur", "condition unknown", Verdict.Fits)]
    [InlineData("dropper", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("dropper", "condition worn", Verdict.Unsafe)]
    [InlineData("dropper", "condition damaged", Verdict.Unsafe)]
    [InlineData("rearDerailleur", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("rearDerailleur", "condition unknown", Verdict.NeedsMeasuring)]
    [InlineData("rearDerailleur", "condition worn", Verdict.DoesNotFit)]
    [InlineData("frontInnerTube", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("rearInnerTube", "condition unknown", Verdict.NeedsMeasuring)]
    [InlineData("rearTubelessValve", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("shellAdapter", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("dropper", "condition inspected", Verdict.Fits)]
    [InlineData("frontWheel", "condition crashed; rim material carbon", Verdict.Unsafe)]
    [InlineData("pedals", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("frontBrakeLever", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("rearRimBrake", "condition damaged", Verdict.Unsafe)]
    [InlineData("headset", "condition worn", Verdict.DoesNotFit)]
    [InlineData("bottomBracket", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("cassette", "condition worn", Verdict.DoesNotFit)]
    [InlineData("chain", "condition used", Verdict.NeedsMeasuring)]
    [InlineData("frontDerailleur", "condition used", Verdict.Fits)]
    [InlineData("frontDerailleur", "condition damaged", Verdict.DoesNotFit)]
    [InlineData("rearDerailleur", "condition recalled", Verdict.Unsafe)]
    public void The_condition_of_a_part_is_judged_by_what_comes_of_it(string slot, string text, Verdict verdict)
    {
        Build build = With(Place(slot), text);
        Fit fit = build.Check().Findings.Single(f => f.Joint!.IsOfCondition);
        Assert.Equal(verdict, fit.Verdict);
        Assert.Equal(Place(slot), fit.Joint!.Slots.Single());
        Assert.Equal(text.Contains("steerer material carbon", StringComparison.Ordinal) && verdict == Verdict.Unsafe, fit.ReasonId == "condition-crashed-carbon-steerer");
        Assert.True(build.Check().Verdict >= verdict);
    }

    [Fact]
    public void A_condition_that_nobody_knows_is_said_and_kept()
    {
        Build build = BuildFile.Read("""{"parts": {"frame": {}, "fork": {"condition": "unknown"}, "stem": {}}}""");
        Assert.Equal(PartCondition.NotKnown, build[Slot.Fork]!.Condition.Value);
        Assert.Equal(KnownState.Unknown, build[Slot.Stem]!.Condition.State);
        Assert.Equal(Verdict.NeedsMeasuring, Of(build, "condition-of-fork").Verdict);
        Assert.DoesNotContain(build.Check().Findings, f => f.Joint!.Id == "condition-of-stem");
        Assert.Equal(Slot.Fork, build.ToInspect().Single().Slot);
        Assert.Equal(PartCondition.NotKnown, BuildFile.Read(BuildFile.Write(build))[Slot.Fork]!.Condition.Value);
    }

    [Theory]
    [InlineData("play")]
    [InlineData("new old stock")]
    public void What_may_be_either_is_no_condition(string text) => Assert.False(PartCondition.TryParse(text, null, out _));

    [Theory]
    [InlineData("saddle", "condition crashed", false)]
    [InlineData("frontTyre", "condition crashed", false)]
    [InlineData("fork", "condition crashed; material steel; steerer material steel", true)]
    public void Metal_is_spoken_of_where_it_is_stated(string slot, string text, bool metal) =>
        Assert.Equal(metal, With(Place(slot), text).Check().Findings.Single(f => f.Joint!.IsOfCondition).Sentence.Contains("metal", StringComparison.Ordinal));

    [Fact]
    public void Nothing_stated_is_not_a_used_part()
    {
        foreach (Slot slot in Slot.All)
        {
            Build build = With(slot, slot == Slot.Rider ? "82 kg" : slot == Slot.Seatpost ? "27.2" : "name");
            Assert.DoesNotContain(build.Check().Findings, f => f.Joint!.IsOfCondition);
            Assert.DoesNotContain(build.Check().NotLookedAt, j => j.IsOfCondition);
            Assert.Empty(build.ToInspect());
        }

        static Build With(Slot slot, string text) => slot == Slot.Frame ? Build.From(new Frame()) : PartForms.Of(slot).TryReadAny(text, out Part part, out _) ? Build.From(new Frame()).With(part, slot) : Build.From(new Frame()).With(part, slot);
    }

    [Fact]
    public void A_used_part_that_nobody_looked_at_says_what_to_look_at_wherever_joints_do()
    {
        Build build = With(Slot.Fork, "condition used; material carbon");
        FitReport report = build.Check();
        Assert.Equal(Verdict.NeedsMeasuring, report.Verdict);
        RankedMeasurement ask = report.ToMeasure.Single(m => m.What.Field == "condition");
        Assert.Equal("condition", Of(build, "condition-of-fork").Measurements.Single().Field);
        Assert.Equal((Slot.Fork, "condition"), (ask.What.Slot, ask.What.Field));
        Assert.Contains("crown", ask.What.How, StringComparison.Ordinal);
        InspectionPoint point = build.ToInspect().Single();
        Assert.Equal((Slot.Fork, ask.What.How), (point.Slot, point.What));
        Assert.NotEmpty(point.Sources);
        Assert.Contains("\"condition-of-fork\"", report.ToJson(), StringComparison.Ordinal);
        Assert.Contains("fork: Take it out", point.ToString(), StringComparison.Ordinal);
        NeedLine line = build.Needs().Of(Slot.Fork)!.Lines.First(l => l.Field == "condition");
        Assert.Equal(["new", "inspected"], line.Accepted);
        Assert.Equal((Verdict.NeedsMeasuring, Verdict.Unsafe), (line.Judge(PartCondition.Used.FitCode), line.Judge(PartCondition.Recalled.FitCode)));
        Assert.DoesNotContain(Build.From(new Frame()).Needs().Of(Slot.Fork)!.Lines, l => l.Joint.IsOfCondition);
    }

    [Fact]
    public void A_crashed_carbon_part_is_for_its_maker()
    {
        Fit fit = Of(With(Slot.Handlebar, "condition crashed; material carbon"), "condition-of-handlebar");
        Assert.Contains(fit.Cautions, c => c.Id == "carbon-crash" && c.Text.Contains("its maker", StringComparison.Ordinal));
        Assert.Contains("carbon", fit.Sentence, StringComparison.Ordinal);
        Assert.Contains(fit.Sources, s => s.Id == "CARBON-CRASH-MANUAL");
        FitReport waived = With(Slot.Handlebar, "condition crashed; material carbon").Waive("condition-of-handlebar", "it looks whole").Check();
        Assert.Equal(Verdict.Unsafe, waived.Verdict);
        Assert.Single(waived.Waived);
    }

    [Theory]
    [InlineData("frame", "material carbon; made 2012", true)]
    [InlineData("frame", "material steel; made 1984", false)]
    [InlineData("frame", "made 2012-03", true)]
    [InlineData("frame", "made unknown", false)]
    [InlineData("fork", "material steel; steerer material steel; made 2012", false)]
    [InlineData("fork", "material steel; steerer material aluminium; made 2012", true)]
    [InlineData("fork", "material steel; made 2012", true)]
    [InlineData("stem", "material titanium; made 2012", false)]
    [InlineData("stem", "material aluminium; made 2012", true)]
    [InlineData("handlebar", "material aluminium; made 2012", true)]
    [InlineData("seatpost", "material carbon; made 2012", true)]
    [InlineData("crankset", "material aluminium | steel; made 2012 | 2013", true)]
    public void A_stated_date_of_making_is_told_and_judged_by_nothing(string slot, string text, bool told)
    {
        Slot at = Slot.Find(slot)!;
        Build build = With(at, text);
        Build without = With(at, text.Split("made")[0] + "made unknown");
        Assert.Equal(told ? [at] : [], build.ToInspect().Select(p => p.Slot));
        Assert.All(build.ToInspect(), p => Assert.Contains("maker sets", p.What, StringComparison.Ordinal));
        Assert.All(build.ToInspect(), p => Assert.Contains("disagree", p.What, StringComparison.Ordinal));
        Assert.All(build.ToInspect(), p => Assert.NotEmpty(p.Sources));
        Assert.Equal(without.Check().Findings.Select(f => (f.Joint!.Id, f.Verdict)), build.Check().Findings.Select(f => (f.Joint!.Id, f.Verdict)));
        Assert.Equal(without.Check().Verdict, build.Check().Verdict);
        Assert.Equal(build[at], BuildFile.Read(BuildFile.Write(build))[at]);
    }

    [Fact]
    public void A_used_part_with_a_date_says_both()
    {
        InspectionPoint point = With(Slot.Stem, "condition used; material aluminium; made 2009-04").ToInspect().Single();
        Assert.Contains("cracks at clamp slots", point.What, StringComparison.Ordinal);
        Assert.Contains("Made 2009-04.", point.What, StringComparison.Ordinal);
        Assert.Equal(point.Sources.Distinct(), point.Sources);
    }

    [Fact]
    public void Only_used_and_crashed_parts_are_to_be_inspected_and_in_order()
    {
        Build build = With(Slot.Stem, "condition used").With(Handlebar.Read("condition inspected")).With(Chain.Read("9; condition used")).With(Fork.Read("condition crashed | inspected")).With(Saddle.Read("condition new"));
        Assert.Equal([Slot.Fork, Slot.Stem, Slot.Chain], build.ToInspect().Select(p => p.Slot));
    }

    [Theory]
    [InlineData("new", "new", "new", Verdict.Fits, "worn-alike")]
    [InlineData("new", "inspected", "new", Verdict.Fits, "new-chain-on-used-teeth")]
    [InlineData("new", "worn", "inspected", Verdict.DoesNotFit, "new-chain-on-worn-teeth")]
    [InlineData("new", "inspected", "worn", Verdict.DoesNotFit, "new-chain-on-worn-teeth")]
    [InlineData("worn", "inspected", "unknown", Verdict.NeedsMeasuring, "worn-together")]
    [InlineData("worn", "new", "new", Verdict.DoesNotFit, "worn-chain-on-new-teeth")]
    [InlineData("worn", "new", "inspected", Verdict.DoesNotFit, "worn-chain-on-new-teeth")]
    [InlineData("worn", "worn", "inspected", Verdict.DoesNotFit, "worn-chain-on-worn-teeth")]
    [InlineData("used", "worn", "inspected", Verdict.NeedsMeasuring, "chain-on-worn-teeth")]
    [InlineData("used", "inspected", "inspected", Verdict.Fits, "worn-alike")]
    [InlineData("inspected; over 24 pitches 307.086", "inspected", "inspected", Verdict.NeedsMeasuring, "worn-together")]
    [InlineData("inspected; over 24 pitches 307.085", "inspected", "inspected", Verdict.Fits, "worn-alike")]
    [InlineData("new; over 24 pitches 307.086", "new", "new", Verdict.DoesNotFit, "worn-chain-on-new-teeth")]
    [InlineData("inspected; over 24 pitches 320", "new", "new", Verdict.Fits, "worn-alike")]
    [InlineData("inspected; over 24 pitches 307 \u00B1 1", "new", "new", Verdict.NeedsMeasuring, "open")]
    [InlineData("inspected", "inspected", "unknown", Verdict.Fits, "worn-alike")]
    [InlineData("worn | inspected", "inspected", "unknown", Verdict.NeedsMeasuring, "open")]
    public void Chain_sprockets_and_rings_wear_as_a_set(string chain, string cassette, string rings, Verdict verdict, string reason)
    {
        Fit fit = Of(With(Slot.Chain, $"9; condition {chain}").With(Cassette.Read($"9-speed HG; condition {cassette}")).With(Crankset.Read($"condition {rings}")), "drive-worn-as-a-set");
        Assert.Equal((verdict, reason), (fit.Verdict, fit.ReasonId));
        Assert.Equal(reason == "new-chain-on-used-teeth" || verdict != Verdict.Fits, fit.Cautions.Any(c => c.Id == "chain-worn"));
    }

    [Theory]
    [InlineData("new", "worn", Verdict.DoesNotFit)]
    [InlineData("new", "new", Verdict.Fits)]
    [InlineData("worn", "new", Verdict.DoesNotFit)]
    [InlineData("worn", "used", Verdict.NeedsMeasuring)]
    public void A_ring_of_its_own_is_one_of_the_set(string chain, string ring, Verdict verdict)
    {
        Build build = With(Slot.Chain, $"9; condition {chain}").With(Cassette.Read("9-speed HG"));
        Assert.Equal(verdict, Of(build.With(Chainring.Read($"condition {ring}")), "drive-worn-with-chainring").Verdict);
        Assert.DoesNotContain(build.With(new Chainring()).Check().Findings, f => f.Joint!.Id == "drive-worn-with-chainring");
    }

    [Theory]
    [InlineData("9", "307.086", Verdict.DoesNotFit)]
    [InlineData("9", "307.08", Verdict.NeedsMeasuring)]
    [InlineData("9", "306.782", Verdict.NeedsMeasuring)]
    [InlineData("9", "306.781", Verdict.Fits)]
    [InlineData("11", "306.324", Verdict.DoesNotFit)]
    [InlineData("11", "306.0", Verdict.Fits)]
    [InlineData("1/8", "307.8", Verdict.NeedsMeasuring)]
    [InlineData("1/8", "307.848", Verdict.DoesNotFit)]
    [InlineData("13", "304.8", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "304.8", Verdict.NeedsMeasuring)]
    [InlineData("belt", "304.8", Verdict.NeedsMeasuring)]
    [InlineData("9", "304.19", Verdict.NeedsMeasuring)]
    [InlineData("9", "320", Verdict.NeedsMeasuring)]
    [InlineData("9", "305.5 \u00B1 0.3", Verdict.Fits)]
    [InlineData("9", "306.7 \u00B1 0.3", Verdict.NeedsMeasuring)]
    [InlineData("9", "none", Verdict.NeedsMeasuring)]
    public void A_chain_is_worn_out_by_its_length(string chain, string over, Verdict verdict)
    {
        Fit fit = Of(With(Slot.Chain, $"size {chain}; over 24 pitches {over}"), "chain-elongation");
        Assert.Equal(verdict, fit.Verdict);
        if (decimal.TryParse(over, System.Globalization.CultureInfo.InvariantCulture, out decimal mm) && mm < 313 && ChainSize.Find(chain) is { } size && size != ChainSize.Belt)
        {
            Assert.Equal(ChainWear.Of(size, Length.FromMillimeters((double)mm), 24).Check.Verdict, verdict);
        }
    }

    [Theory]
    [InlineData("1.5", "1.5", Verdict.Fits)]
    [InlineData("1.49", "1.5", Verdict.Unsafe)]
    [InlineData("1.79", "1.8", Verdict.Unsafe)]
    [InlineData("1.19", "1.0", Verdict.Unsafe)]
    [InlineData("1.19", "none", Verdict.Unsafe)]
    [InlineData("1.2", "1.0", Verdict.NeedsMeasuring)]
    [InlineData("0.9", "1.2", Verdict.Unsafe)]
    [InlineData("1.5 \u00B1 0.05", "1.5", Verdict.NeedsMeasuring)]
    [InlineData("1.7", "none", Verdict.NeedsMeasuring)]
    [InlineData("1.7", "1.19", Verdict.NeedsMeasuring)]
    [InlineData("1.7", "15", Verdict.NeedsMeasuring)]
    [InlineData("2.6", "1.5", Verdict.NeedsMeasuring)]
    public void A_rotor_below_its_mark_is_unsafe(string thickness, string mark, Verdict verdict)
    {
        Fit fit = Of(With(Slot.RearRotor, $"160; six-bolt; thickness {thickness}; least thickness {mark}"), "rear-rotor-wear");
        Assert.Equal(verdict, fit.Verdict);
        if (decimal.TryParse(thickness, System.Globalization.CultureInfo.InvariantCulture, out decimal mm) && decimal.TryParse(mark, System.Globalization.CultureInfo.InvariantCulture, out decimal least))
        {
            Assert.Equal(RotorThickness.Check(MeasuredLength.OfMillimetres(mm, 0), Dimension.OfMillimetres(least)).Verdict, verdict);
        }
    }

    [Theory]
    [InlineData("least thickness 1.5", false)]
    [InlineData("thickness 1.7", false)]
    [InlineData("thickness 1.7; least thickness 1.5", true)]
    [InlineData("thickness 1.2", true)]
    [InlineData("thickness 1.4", false)]
    [InlineData("thickness 1.19", true)]
    public void A_rotor_is_judged_once_it_was_measured_and_its_mark_read(string text, bool judged) =>
        Assert.Equal(judged, With(Slot.RearRotor, "160; six-bolt; " + text).Check().Findings.Any(f => f.Joint!.Id == "rear-rotor-wear"));

    /// <summary>One bound for one fact, with a caliper and without: below the least that is listed, and no mark that allows it.</summary>
    [Theory]
    [InlineData("thickness 1.3", Verdict.Unsafe)]
    [InlineData("thickness 1.3; least thickness none", Verdict.Unsafe)]
    [InlineData("thickness 1.3; least thickness 1.2", Verdict.Fits)]
    [InlineData("thickness 1.4", null)]
    public void A_thin_rotor_without_a_mark_is_seen_without_a_caliper(string text, Verdict? verdict)
    {
        Build build = With(Slot.RearRotor, "160; six-bolt; condition inspected; " + text);
        Assert.Equal(verdict, build.Check().Findings.Where(f => f.Joint!.Id == "rear-rotor-wear").Select(f => (Verdict?)f.Verdict).SingleOrDefault());
        Fit caliper = Of(build.With(Caliper.Read("post; thickest rotor 1.9; thinnest rotor none"), Slot.RearCaliper), "rear-rotor-thickness-in-caliper");
        Assert.True(verdict is null || (verdict == Verdict.Unsafe) == (caliper.Verdict == Verdict.Unsafe), caliper.ToString());
    }

    /// <summary>A rotor of a donor, with no caliper beside it.</summary>
    [Fact]
    public void A_rotor_below_what_any_is_marked_with_is_unsafe_whatever_is_marked()
    {
        Fit fit = Of(With(Slot.RearRotor, "160; six-bolt; thickness 0.9"), "rear-rotor-wear");
        Assert.Equal((Verdict.Unsafe, "rotor-below-any-mark"), (fit.Verdict, fit.ReasonId));
    }

    [Theory]
    [InlineData("0.9", "1.0", Verdict.Unsafe)]
    [InlineData("1.39", "2.3", Verdict.Unsafe)]
    [InlineData("1.39", "none", Verdict.Unsafe)]
    [InlineData("1.4", "1.0", Verdict.NeedsMeasuring)]
    [InlineData("1.39", "1.2", Verdict.Fits)]
    [InlineData("1.39", "1.19", Verdict.Unsafe)]
    [InlineData("1.39", "2.2", Verdict.Fits)]
    public void A_mark_that_no_rotor_has_settles_nothing_in_a_caliper(string thickness, string mark, Verdict verdict) =>
        Assert.Equal(verdict, Of(With(Slot.FrontRotor, $"160; thickness {thickness}; least thickness {mark}").With(Caliper.Read("post; thickest rotor 1.9; thinnest rotor none"), Slot.FrontCaliper), "front-rotor-thickness-in-caliper").Verdict);

    [Theory]
    [InlineData("", Verdict.NeedsMeasuring)]
    [InlineData("; least thickness 1.5", Verdict.Fits)]
    public void A_rotor_with_its_mark_read_is_no_longer_asked_about_in_its_caliper(string mark, Verdict verdict) =>
        Assert.Equal(verdict, Of(With(Slot.FrontRotor, "160; thickness 1.7" + mark).With(Caliper.Read("post; thickest rotor 1.9; thinnest rotor none"), Slot.FrontCaliper), "front-rotor-thickness-in-caliper").Verdict);

    [Theory]
    [InlineData("1.0", "aluminium", Verdict.Unsafe)]
    [InlineData("1.01", "aluminium", Verdict.NeedsMeasuring)]
    [InlineData("1.099", "aluminium", Verdict.NeedsMeasuring)]
    [InlineData("1.1", "aluminium", Verdict.Fits)]
    [InlineData("1.01", "none", Verdict.Fits)]
    [InlineData("1.0 \u00B1 0.1", "aluminium", Verdict.NeedsMeasuring)]
    [InlineData("1.5", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("1.5", "carbon", Verdict.NeedsMeasuring)]
    [InlineData("0.8", "none", Verdict.Fits)]
    [InlineData("5", "aluminium", Verdict.NeedsMeasuring)]
    public void A_rim_is_worn_out_by_its_wall(string wall, string track, Verdict verdict) =>
        Assert.Equal(verdict, Of(With(Slot.FrontWheel, $"rim wall {wall}; brake track {track}"), "front-rim-wear").Verdict);

    /// <summary>Under a rim brake the pads rub on something: on an aluminium rim on aluminium, and a rim without a word of its track is asked only where it may be of carbon.</summary>
    [Theory]
    [InlineData("0.9", "unknown", "aluminium", Verdict.Unsafe)]
    [InlineData("1.0", "none", "aluminium", Verdict.Unsafe)]
    [InlineData("1.05", "unknown", "aluminium", Verdict.NeedsMeasuring)]
    [InlineData("1.1", "unknown", "aluminium", Verdict.Fits)]
    [InlineData("5", "unknown", "aluminium", Verdict.NeedsMeasuring)]
    [InlineData("0.9", "unknown", "carbon", Verdict.NeedsMeasuring)]
    [InlineData("0.9", "unknown", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("0.9", "none", "carbon", Verdict.NeedsMeasuring)]
    [InlineData("0.9", "aluminium", "carbon", Verdict.Unsafe)]
    [InlineData("0.9", "aluminium", "unknown", Verdict.Unsafe)]
    [InlineData("1.5", "carbon", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("1.5", "aluminium", "unknown", Verdict.Fits)]
    public void A_rim_under_a_rim_brake_wears_whatever_is_said_of_its_track(string wall, string track, string material, Verdict verdict)
    {
        foreach ((Slot wheel, Slot brake, string end) in new[] { (Slot.FrontWheel, Slot.FrontRimBrake, "front"), (Slot.RearWheel, Slot.RearRimBrake, "rear") })
        {
            Build build = With(wheel, $"rim wall {wall}; brake track {track}; rim material {material}");
            Build braked = build.With(RimBrake.Read("road caliper"), brake);
            Assert.Equal(verdict, Of(braked, $"{end}-rim-wear-under-pads").Verdict);
            Assert.DoesNotContain(braked.Check().Findings, f => f.Joint!.Id == $"{end}-rim-wear");
            Assert.DoesNotContain(build.Check().Findings, f => f.Joint!.Id == $"{end}-rim-wear-under-pads");
        }
    }

    [Fact]
    public void Every_part_but_the_rider_has_a_condition_in_text_and_file()
    {
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Rider))
        {
            List<SpecProblem> problems = [];
            Part part = PartForms.Of(slot).ReadProperties([new("condition", "crashed")], "", problems);
            Assert.Empty(problems);
            Assert.Equal(PartCondition.Crashed, part.Condition.Value);
            Build build = slot == Slot.Frame ? Build.From((Frame)part) : Build.From(new Frame()).With(part, slot);
            Assert.Equal(PartCondition.Crashed, BuildFile.Read(BuildFile.Write(build))[slot]!.Condition.Value);
        }

        Assert.False(Rider.TryRead("82 kg; condition used", out _, out _));
    }

    [Fact]
    public void What_one_part_is_by_itself_is_no_key_that_another_accepts()
    {
        Build build = With(Slot.Fork, "condition used");
        Assert.DoesNotContain(FitKeys.Accepted(build, Slot.Fork, Verdict.Unsafe), k => k.Field == "condition");
        Assert.Contains(FitKeys.Of(build[Slot.Fork]!, Slot.Fork), k => k is { Field: "condition", Key: "used" });
        Assert.All(JointTable.All.Where(j => j.IsOfCondition), j => Assert.Empty(JointPairs.Of(j)));
    }
}
