using Lugwork.Brakes;

namespace Lugwork.PublishedTables;

/// <summary>Rotors, adapters and lockrings: published figures and cases, each with its source.</summary>
public sealed class RotorsMeasuredChecks
{
    private const string TwoSizes = "203 vs 200: the 3mm that might matter; Ti-Parts Titanium";
    private const string AdapterGuide = "How to Choose the Right Disc Brake Adapter; Loam Goat";
    private const string IsBetter = "International Standard Brake Mounting IS Better; Essential Cycles";
    private const string Washers = "Interchangeability of 200mm and 203mm rotors; brainybiker.com";
    private const string Faq = "Technical FAQ on rotors; VeloNews 2011";
    private const string Worn = "Rear disc below 1.5mm minimum; EMTB Forums";
    private const string Rings = "Interchangeability of splined-rotor lockrings; brainybiker.com";
    private const string Carrier = "Splined rotor adapter notes; nomulabworkshop.com";
    private const string MakersSheet = "Service Instructions BR-M416-A (mechanical disc brake); the brake maker";

    [Theory]
    [InlineData(TwoSizes, 203.2, "203")]
    [InlineData(TwoSizes, 200, "200")]
    [InlineData(IsBetter, 183, "183")]
    [InlineData(AdapterGuide, 220, "220")]
    [InlineData(AdapterGuide, 180, "180")]
    public void A_rotor_is_told_by_its_outside(string source, double diameter, string expected) =>
        Assert.True(expected == RotorSize.Identify(MeasuredLength.OfMillimetres((decimal)diameter)).Candidates.Single().Value.FitKey, source);

    [Theory]
    [PrintedIn(AdapterGuide)]
    [InlineData("PM-160", "+20", 180)]
    [InlineData("PM-160", "+40", 200)]
    [InlineData("PM-160", "+43", 203)]
    [InlineData("PM-180", "+23", 203)]
    [InlineData("PM-180", "+40", 220)]
    [InlineData("PM-140", "+20", 160)]
    public void An_increment_is_added_to_the_mounts_own_rotor_and_the_joint_agrees(string mount, string step, int rotor)
    {
        RotorSize made = AdapterIncrement.Parse(step, null).RotorOn(BrakeMount.Parse(mount, null))!;
        Assert.True(made.FitCode == rotor, AdapterGuide);
        Published.Says(
            Build.From(Frame.Read($"rearBrake {mount}")).With(Caliper.Read("post"), Slot.RearCaliper).With(Rotor.Read($"size {made}"), Slot.RearRotor),
            "rear-caliper-on-mount", AdapterGuide, Verdict.NeedsPart, step);
    }

    [Theory]
    [InlineData(AdapterGuide, "+20", 10)]
    [InlineData(TwoSizes, "+23", 11.5)]
    [InlineData(TwoSizes, "+43", 21.5)]
    public void The_pads_move_half_the_step_along_the_radius(string source, string step, double expected)
    {
        double radius = AdapterIncrement.Parse(step, null).AlongRadius.Millimeters;
        Assert.True(Math.Abs(radius - expected) < 1e-9, source);
    }

    [Fact]
    [PrintedIn(Washers)]
    public void Between_200_and_203_the_pads_differ_by_what_washers_make_up()
    {
        double off = AdapterIncrement.Parse("+43", null).AlongRadius.Millimeters - AdapterIncrement.Parse("+40", null).AlongRadius.Millimeters;
        Assert.True(Math.Abs(off - 1.5) < 1e-9, Washers);
    }

    [Theory]
    [InlineData(Worn, 1.35, 0.02, "1.5", Verdict.Unsafe)]
    [InlineData(Worn, 1.96, 0.02, "1.5", Verdict.Fits)]
    [InlineData(Faq, 1.75, 0.02, "1.52", Verdict.Fits)]
    [InlineData(Faq, 1.5, 0.02, "1.52", Verdict.Unsafe)]
    [InlineData(Faq, 1.7, 0.02, "1.8", Verdict.Unsafe)]
    [InlineData(Faq, 1.7, 0.02, "1.7", Verdict.NeedsMeasuring)]
    [InlineData(Faq, 1.45, 0.1, "1.4", Verdict.NeedsMeasuring)]
    public void A_rotor_is_worn_by_its_own_mark(string source, double thickness, double error, string marked, Verdict expected) =>
        Assert.True(expected == RotorThickness.Check(MeasuredLength.OfMillimetres((decimal)thickness, (decimal)error), Dimension.Parse(marked, null)).Verdict, source);

    [Theory]
    [InlineData(Worn, 2.0)]
    [InlineData(Worn, 1.8)]
    public void A_least_that_is_only_marked_is_asked_for(string source, double thickness) =>
        Assert.True(RotorThickness.Check(MeasuredLength.OfMillimetres((decimal)thickness), null).Verdict == Verdict.NeedsMeasuring, source);

    [Theory]
    [InlineData(Faq, 2.0, "a, e-heavy")]
    [InlineData(Faq, 1.6, "b-floating")]
    [InlineData(Faq, 1.8, "b, d")]
    [InlineData(Faq, 1.77, "c")]
    [InlineData(Worn, 1.96, "d-heavy")]
    public void An_unworn_rotor_is_of_these_families(string source, double unworn, string expected) =>
        Assert.True(expected == string.Join(", ", RotorThickness.Identify(MeasuredLength.OfMillimetres((decimal)unworn, 0.01m)).Candidates.Select(c => c.Value.FitKey)), source);

    [Theory]
    [InlineData("B27", Rings, "internal", 15, Verdict.DoesNotFit)]
    [InlineData("B27, 20 mm", Carrier, "internal", 20, Verdict.DoesNotFit)]
    [InlineData("B28", Rings, "external", 12, Verdict.Fits)]
    [InlineData("external on 15", Carrier, "external", 15, Verdict.Fits)]
    [InlineData("external on 20", Carrier, "external", 20, Verdict.Fits)]
    [InlineData("internal on 12", Rings, "internal", 12, Verdict.Fits)]
    [InlineData("internal on a quick release", Rings, "internal", 9, Verdict.Fits)]
    public void A_lockring_goes_on_an_axle_as_published(string row, string source, string ring, int axle, Verdict expected) =>
        Assert.True(expected == Lockring.Parse(ring, null).OnAxle(UnitsNet.Length.FromMillimeters(axle)).Verdict, $"{row}, {source}");

}
