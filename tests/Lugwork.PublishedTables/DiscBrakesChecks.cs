using Lugwork.Brakes;

namespace Lugwork.PublishedTables;

/// <summary>Disc calipers, rotors, adapters and limits: published cases, each with its source.</summary>
/// <remarks>
/// Judged otherwise than printed: one IS adapter serves both ends (B12, B13: "fits"), but a caliper never sits on IS tabs without
/// one, so the joint needs that part. A wrong adapter (B05, B06) is no part of a build; that the right one is named is checked instead.
/// </remarks>
public sealed class DiscBrakesChecks
{
    private const string MountAnswer = "Answer on IS and post mount; Bicycles Stack Exchange copy";
    private const string AdapterGuide = "How to Choose the Right Disc Brake Adapter; Loam Goat";
    private const string Derived = "arithmetic on the published rotor sizes";
    private const string TwoSizes = "203 vs 200: the 3mm that might matter; Ti-Parts Titanium";
    private const string Practice = "common practice, no source";
    private const string MountForum = "Disc mounts, an explanation; BikeRadar forum";
    private const string IsBetter = "International Standard Brake Mounting IS Better; Essential Cycles";
    private const string FlatOnPost = "A flat mount disc caliper on a post mount frame?; CyclingTips copy";
    private const string FlatProblem = "The problem with flat mount; peterverdone.com";
    private const string FlatBrakes = "The problem with flat mount brakes; michaelhanslip.com";
    private const string MountInfo = "Disc Brake Mounting Standards; Bikeman tech info";
    private const string OldMounts = "IS and Postmount explained; MTB-News forum";
    private const string SixOnSplined = "6-bolt rotors and splined hubs; brainybiker.com";
    private const string RotorAdapter = "Splined rotor adapter notes; nomulabworkshop.com";
    private const string HubStandards = "Know Your Hub Standards; Pub Wheels";

    [Theory]
    [InlineData("B01", AdapterGuide, "PM-180", "post", 160, Verdict.DoesNotFit, "")]
    [InlineData("B02", AdapterGuide, "PM-160", "post", 180, Verdict.NeedsPart, "+20")]
    [InlineData("B03", AdapterGuide, "PM-160", "post", 203, Verdict.NeedsPart, "+43")]
    [InlineData("B04", Derived, "PM-160", "post", 200, Verdict.NeedsPart, "+40")]
    [InlineData("B07", Derived, "PM-180", "post", 203, Verdict.NeedsPart, "+23")]
    [InlineData("B08", Derived, "PM-180", "post", 200, Verdict.NeedsPart, "+20")]
    [InlineData("B09", Practice, "PM-200", "post", 203, Verdict.NeedsMeasuring, "")]
    [InlineData("B10", Derived, "PM-203", "post", 200, Verdict.DoesNotFit, "")]
    [InlineData("B11", Derived, "PM-203", "post", 220, Verdict.NeedsMeasuring, "")]
    [InlineData("B11, its remedy", Derived, "PM-203", "post", 223, Verdict.NeedsPart, "+20")]
    [InlineData("B13", MountForum, "IS-rear", "post", 140, Verdict.NeedsPart, "140")]
    [InlineData("B17", FlatOnPost, "PM-160", "flat", 180, Verdict.NeedsPart, "13 mm must be free")]
    [InlineData("B17, rotor not grown", FlatOnPost, "PM-160", "flat", 160, Verdict.DoesNotFit, "")]
    [InlineData("B18", FlatProblem, "FM-rear-140", "post", 160, Verdict.NeedsMeasuring, "")]
    [InlineData("B18, other variant", FlatProblem, "FM-rear-160", "post", 160, Verdict.NeedsMeasuring, "")]
    [InlineData("B21", FlatProblem, "FM-rear-160", "flat", 140, Verdict.DoesNotFit, "")]
    [InlineData("B23", MountInfo, "PM-old", "post", 160, Verdict.DoesNotFit, "")]
    [InlineData("B23, 22 mm", OldMounts, "DM-22", "post", 160, Verdict.DoesNotFit, "")]
    public void A_rear_caliper_and_rotor_sit_on_the_mount_as_published(string row, string source, string mount, string caliper, int rotor, Verdict expected, string remedy) =>
        AssertFit(Rear(mount, caliper, rotor), "rear-caliper-on-mount", row, source, expected, remedy);

    [Theory]
    [InlineData("B01", MountAnswer, "PM-180", "post", 160, Verdict.DoesNotFit, "")]
    [InlineData("B12", MountAnswer, "IS-front", "post", 180, Verdict.NeedsPart, "180")]
    [InlineData("B12, smallest", IsBetter, "IS-front", "post", 160, Verdict.NeedsPart, "160")]
    [InlineData("B14", MountAnswer, "IS-front", "post", 140, Verdict.DoesNotFit, "")]
    [InlineData("B16", MountForum, "PM-160", "IS", 180, Verdict.NeedsMeasuring, "")]
    [InlineData("B19", FlatProblem, "FM-front-160", "flat", 140, Verdict.DoesNotFit, "")]
    [InlineData("B20", FlatBrakes, "FM-front-140", "flat", 160, Verdict.Fits, "")]
    [InlineData("B24", MountForum, "IS-front-DH", "post", 203, Verdict.NeedsMeasuring, "")]
    public void A_front_caliper_and_rotor_sit_on_the_mount_as_published(string row, string source, string mount, string caliper, int rotor, Verdict expected, string remedy)
    {
        Build build = Build.From(Frame.Read("material steel")).With(Fork.Read($"brake {mount}"))
            .With(Caliper.Read(caliper), Slot.FrontCaliper).With(Rotor.Read($"size {rotor}"), Slot.FrontRotor);

        AssertFit(build, "front-caliper-on-mount", row, source, expected, remedy);
    }

    [Theory]
    [InlineData("B05", TwoSizes, 200, "+40", "+43")]
    [InlineData("B06", TwoSizes, 203, "+43", "+40")]
    public void The_adapter_of_the_other_eight_inch_size_is_never_named(string row, string source, int rotor, string right, string wrong)
    {
        Fit fit = AssertFit(Rear("PM-160", "post", rotor), "rear-caliper-on-mount", row, source, Verdict.NeedsPart, right);

        Assert.DoesNotContain(wrong, string.Join(" | ", fit.Remedies), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("B25", SixOnSplined, "center-lock", "six-bolt", Verdict.NeedsPart, "carrier")]
    [InlineData("B25, lockring", RotorAdapter, "center-lock", "six-bolt", Verdict.NeedsPart, "lockring that suits the axle")]
    [InlineData("B26", HubStandards, "six-bolt", "center-lock", Verdict.DoesNotFit, "six-bolt rotor")]
    [InlineData("H52", Derived, "none", "six-bolt", Verdict.DoesNotFit, "")]
    [InlineData("H52, splined", Derived, "none", "center-lock", Verdict.DoesNotFit, "")]
    public void A_rotor_goes_on_a_hub_as_published(string row, string source, string hub, string rotor, Verdict expected, string remedy)
    {
        (hub, rotor) = (Published.Key<RotorFixing>(hub, source), Published.Key<RotorFixing>(rotor, source));
        Build build = Build.From(Frame.Read("material steel"))
            .With(Wheel.Read($"rotorFixing {hub}"), Slot.RearWheel).With(Rotor.Read($"fixing {rotor}"), Slot.RearRotor)
            .With(Wheel.Read($"rotorFixing {hub}"), Slot.FrontWheel).With(Rotor.Read($"fixing {rotor}"), Slot.FrontRotor);

        AssertFit(build, "rear-rotor-on-hub", row, source, expected, remedy);
        AssertFit(build, "front-rotor-on-hub", row, source, expected, remedy);
    }

    [Theory]
    [InlineData("B32", Practice, 203, "180", Verdict.Unsafe)]
    [InlineData("B32, 3 mm above", Practice, 203, "200", Verdict.Unsafe)]
    [InlineData("B32, at the limit", Practice, 180, "180", Verdict.Fits)]
    [InlineData("B32, not known", Practice, 160, "unknown", Verdict.NeedsMeasuring)]
    [InlineData("B32, not printed", Practice, 160, "none", Verdict.NeedsMeasuring)]
    public void The_makers_largest_rotor_stands_whatever_the_adapter_sum_says(string row, string source, int rotor, string largest, Verdict expected)
    {
        Build build = Build.From(Frame.Read($"largestRearRotor {largest}; rearBrake PM-160")).With(Fork.Read($"largestFrontRotor {largest}; brake PM-160"))
            .With(Caliper.Read("post"), Slot.RearCaliper).With(Rotor.Read($"size {rotor}"), Slot.RearRotor).With(Rotor.Read($"size {rotor}"), Slot.FrontRotor);

        AssertFit(build, "rear-rotor-within-limit", row, source, expected, "");
        AssertFit(build, "front-rotor-within-limit", row, source, expected, "");
        Assert.True(build.Check().Verdict >= expected, row);
    }

    private static Build Rear(string mount, string caliper, int rotor) =>
        Build.From(Frame.Read($"rearBrake {mount}")).With(Caliper.Read(caliper), Slot.RearCaliper).With(Rotor.Read($"size {rotor}"), Slot.RearRotor);

    private static Fit AssertFit(Build build, string joint, string row, string source, Verdict expected, string remedy)
    {
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == joint);
        Assert.True(expected == fit.Verdict, $"{row} ({source}): {expected} is published, judged: {fit}");
        Assert.Contains(remedy, string.Join(" | ", fit.Remedies), StringComparison.Ordinal);
        return fit;
    }
}
