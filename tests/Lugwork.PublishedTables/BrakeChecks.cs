namespace Lugwork.PublishedTables;

/// <summary>Calipers, rotors and hubs, each case typed from the source beside it.</summary>
public sealed class BrakeChecks
{
    [Theory]
    [InlineData("Answer on IS and post mount; Bicycles Stack Exchange copy", "PM-180", "post", "160", Verdict.DoesNotFit, "no adapter is negative")]
    [InlineData("How to Choose the Right Disc Brake Adapter; Loam Goat", "PM-160", "post", "180", Verdict.NeedsPart, "+20 mm")]
    [InlineData("How to Choose the Right Disc Brake Adapter; Loam Goat", "PM-160", "post", "203", Verdict.NeedsPart, "+43 mm")]
    [InlineData("203 vs 200: the 3mm that might matter; Ti-Parts Titanium; 2025", "PM-160", "post", "200", Verdict.NeedsPart, "+40 mm")]
    [InlineData("203 vs 200: the 3mm that might matter; Ti-Parts Titanium; 2025", "PM-180", "post", "203", Verdict.NeedsPart, "+23 mm")]
    [InlineData("How to Choose the Right Disc Brake Adapter; Loam Goat", "PM-180", "post", "200", Verdict.NeedsPart, "+20 mm")]
    [InlineData("common practice, no source", "PM-200", "post", "203", Verdict.NeedsMeasuring, "shim with longer bolts")]
    [InlineData("derived: needs -3", "PM-203", "post", "200", Verdict.DoesNotFit, "negative")]
    [InlineData("derived: +17 is rare", "PM-203", "post", "220", Verdict.NeedsMeasuring, "rare part")]
    [InlineData("Rubber Side Down: Disc Brake Adapters; Art's Cyclery; 2014", "IS-rear", "post", "140", Verdict.NeedsPart, "140 mm rotor")]
    [InlineData("International Standard Brake Mounting IS Better; Essential Cycles", "IS-rear", "post", "183", Verdict.NeedsPart, "183 mm rotor")]
    [InlineData("Disc Brake Mounting Standards; Bikeman tech info", "PM-old", "post", "160", Verdict.DoesNotFit, "cannot be drilled")]
    [InlineData("IS and Postmount explained; MTB-News forum; 2008", "DM-22", "post", "160", Verdict.DoesNotFit, "cannot be drilled")]
    [InlineData("A flat mount disc caliper on a post mount frame? (press text, republished); 2022", "PM-140", "flat", "160", Verdict.NeedsPart, "13 mm must be free")]
    [InlineData("A flat mount disc caliper on a post mount frame? (press text, republished); 2022", "PM-160", "flat", "160", Verdict.DoesNotFit, "")]
    [InlineData("The problem with flat mount; peterverdone.com", "FM-rear-140", "post", "140", Verdict.NeedsMeasuring, "adapters exist for some")]
    [InlineData("The problem with flat mount; peterverdone.com", "FM-rear-160", "flat", "140", Verdict.DoesNotFit, "")]
    [InlineData("Disc brake mounting systems; peterverdone.com", "FM-rear-160", "flat", "180", Verdict.NeedsPart, "160 to 180")]
    [InlineData("Disc mounts, an explanation; BikeRadar forum; 2007", "PM-160", "IS", "160", Verdict.NeedsMeasuring, "")]
    public void A_rear_caliper_is_judged_as_published(string source, string mount, string caliper, string rotor, Verdict expected, string says)
    {
        Assert.NotEmpty(source);
        Case.Expect(expected, says, Case.Judge("rear-caliper-on-mount", $"rearBrake {mount}", (Slot.RearBrake, Caliper.Read($"mounting {caliper}")), (Slot.RearRotor, Rotor.Read($"size {rotor}"))));
    }

    [Theory]
    [InlineData("Answer on IS and post mount; Bicycles Stack Exchange copy", "IS-front", "post", "140", Verdict.DoesNotFit, "smaller")]
    [InlineData("Rubber Side Down: Disc Brake Adapters; Art's Cyclery; 2014", "IS-front", "post", "160", Verdict.NeedsPart, "160 mm rotor")]
    [InlineData("International Standard Brake Mounting IS Better; Essential Cycles", "IS-front", "post", "180", Verdict.NeedsPart, "180 mm rotor")]
    [InlineData("The problem with flat mount; peterverdone.com", "FM-front-160", "flat", "140", Verdict.DoesNotFit, "")]
    [InlineData("The problem with flat mount brakes; michaelhanslip.com; 2024", "FM-front-140", "flat", "160", Verdict.Fits, "one way up or the other")]
    [InlineData("Disc mounts, an explanation; BikeRadar forum; 2007", "IS-front-DH", "post", "203", Verdict.NeedsMeasuring, "")]
    public void A_front_caliper_is_judged_as_published(string source, string mount, string caliper, string rotor, Verdict expected, string says)
    {
        Assert.NotEmpty(source);
        Case.Expect(expected, says, Case.Judge("front-caliper-on-mount", "material steel", (Slot.Fork, Fork.Read($"frontBrake {mount}")), (Slot.FrontBrake, Caliper.Read($"mounting {caliper}")), (Slot.FrontRotor, Rotor.Read($"size {rotor}"))));
    }

    [Theory]
    [InlineData("6-bolt rotors and splined hubs; brainybiker.com", "center-lock", "six-bolt", Verdict.NeedsPart, "lockring that suits the axle")]
    [InlineData("Know Your Hub Standards; Pub Wheels", "six-bolt", "center-lock", Verdict.DoesNotFit, "six-bolt rotor")]
    [InlineData("Threaded #17: Centerlock rotor lockring things; Escape Collective; 2024", "four-bolt", "six-bolt", Verdict.DoesNotFit, "")]
    public void A_rotor_on_a_hub_is_judged_as_published(string source, string hub, string rotor, Verdict expected, string says)
    {
        Assert.NotEmpty(source);
        Case.Expect(expected, says, Case.Judge("rear-rotor-on-hub", "material steel", (Slot.RearWheel, Wheel.Read($"rotorFixing {hub}")), (Slot.RearRotor, Rotor.Read($"fixing {rotor}"))));
    }

    /// <summary>Common practice, no source: above a printed maximum is refused whatever the adapter sum says; a missing one is unknown.</summary>
    [Theory]
    [InlineData("160", "180", Verdict.Unsafe)]
    [InlineData("unknown", "140", Verdict.NeedsMeasuring)]
    public void A_makers_limit_comes_before_the_adapter_sum(string limit, string rotor, Verdict expected) =>
        Case.Expect(expected, "not unlimited", Case.Judge("rear-rotor-within-limit", $"rearBrake PM-160; largestRearRotor {limit}", (Slot.RearRotor, Rotor.Read(rotor))));
}
