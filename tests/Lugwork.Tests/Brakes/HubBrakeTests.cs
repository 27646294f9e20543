using Lugwork.Brakes;
using static Lugwork.Tests.Builds.Bench;

namespace Lugwork.Tests.Brakes;

/// <summary>Brakes inside the hub, calipers in which a cable presses fluid, and a rotor on its stated carrier.</summary>
public sealed class HubBrakeTests
{
    [Theory]
    [InlineData("pull short", "roller", Verdict.Fits)]
    [InlineData("pull long", "roller", Verdict.Unsafe)]
    [InlineData("pull short", "drum", Verdict.NeedsMeasuring)]
    [InlineData("pull newer-road", "roller", Verdict.NeedsMeasuring)]
    [InlineData("fluid DOT", "roller", Verdict.DoesNotFit)]
    [InlineData("fluid DOT", "drum", Verdict.DoesNotFit)]
    [InlineData("pull short", "coaster", Verdict.Fits)]
    [InlineData("pull long", "none", Verdict.Fits)]
    [InlineData("pull unknown", "roller", Verdict.NeedsMeasuring)]
    public void A_lever_is_judged_with_the_brake_of_the_hub(string lever, string brake, Verdict expected)
    {
        Fit rear = Judge("rear-lever-with-hub-brake", "material steel", (Slot.RearBrakeLever, BrakeLever.Read(lever)), (Slot.RearWheel, Wheel.Read($"hubBrake {brake}")));
        Fit front = Judge("front-lever-with-hub-brake", "material steel", (Slot.FrontBrakeLever, BrakeLever.Read(lever)), (Slot.FrontWheel, Wheel.Read($"hubBrake {brake}")));
        Assert.Equal((expected, expected), (rear.Verdict, front.Verdict));
        Assert.True(expected != Verdict.Fits || brake == "none" != rear.Cautions.Contains(Cautions.ReactionArm));
    }

    [Theory]
    [InlineData("steel", "coaster", Verdict.Fits, true)]
    [InlineData("aluminium", "roller", Verdict.Fits, true)]
    [InlineData("steel", "drum", Verdict.Fits, true)]
    [InlineData("carbon", "roller", Verdict.NeedsMeasuring, true)]
    [InlineData("unknown", "coaster", Verdict.NeedsMeasuring, true)]
    [InlineData("carbon", "none", Verdict.Fits, false)]
    public void The_arm_of_a_hub_brake_is_reported(string material, string brake, Verdict expected, bool cautioned)
    {
        Fit fit = Judge("hub-brake-arm-on-frame", $"material {material}", (Slot.RearWheel, Wheel.Read($"hubBrake {brake}")));
        Assert.Equal((expected, cautioned), (fit.Verdict, fit.Cautions.Contains(Cautions.ReactionArm)));
    }

    [Fact]
    public void Where_nobody_said_that_the_hub_has_a_brake_no_joint_asks() =>
        Assert.DoesNotContain(
            Build.From(Frame.Read("material steel")).With(Wheel.Read("hub R135-QR"), Slot.RearWheel).With(BrakeLever.Read("pull short"), Slot.RearBrakeLever).Check().Findings,
            f => f.Joint!.Id is "rear-lever-with-hub-brake" or "hub-brake-arm-on-frame");

    [Theory]
    [InlineData("pull short", Verdict.NeedsMeasuring, Verdict.Fits)]
    [InlineData("pull long", Verdict.NeedsMeasuring, Verdict.Fits)]
    [InlineData("fluid mineral oil", Verdict.DoesNotFit, Verdict.DoesNotFit)]
    public void A_caliper_in_which_a_cable_presses_fluid_wants_a_lever_with_a_cable(string lever, Verdict pull, Verdict fluid)
    {
        Caliper caliper = Caliper.Read("post; type disc-cable-hydraulic; fluid mineral oil");
        Assert.Equal(pull, Judge("front-lever-with-disc-brake", "material steel", (Slot.FrontBrakeLever, BrakeLever.Read(lever)), (Slot.FrontCaliper, caliper)).Verdict);
        Assert.Equal(fluid, Judge("front-lever-fluid-with-caliper", "material steel", (Slot.FrontBrakeLever, BrakeLever.Read(lever)), (Slot.FrontCaliper, caliper)).Verdict);
    }

    [Theory]
    [InlineData("pull newer-road", "type disc-cable-road", Verdict.Fits)]
    [InlineData("pull newer-road", "type disc-cable-off-road", Verdict.DoesNotFit)]
    public void A_newer_road_lever_works_a_road_cable_disc(string lever, string caliper, Verdict expected) =>
        Assert.Equal(expected, Judge("front-lever-with-disc-brake", "material steel", (Slot.FrontBrakeLever, BrakeLever.Read(lever)), (Slot.FrontCaliper, Caliper.Read(caliper))).Verdict);

    [Theory]
    [InlineData("center-lock", "six-bolt; carrier bolts", Verdict.Fits)]
    [InlineData("center-lock", "six-bolt; carrier none", Verdict.NeedsPart)]
    [InlineData("center-lock", "six-bolt", Verdict.NeedsPart)]
    [InlineData("six-bolt", "six-bolt; carrier none", Verdict.Fits)]
    [InlineData("six-bolt", "center-lock; carrier bolts", Verdict.DoesNotFit)]
    [InlineData("none", "six-bolt; carrier bolts", Verdict.DoesNotFit)]
    public void A_rotor_on_the_carrier_that_is_stated_needs_none(string hub, string rotor, Verdict expected) =>
        Assert.Equal(expected, Fixing($"rotorFixing {hub}", $"160; {rotor}"));

    [Theory]
    [InlineData("9", "9", Verdict.Fits)]
    [InlineData("1/8", "9", Verdict.DoesNotFit)]
    [InlineData("unknown", "9", Verdict.NeedsMeasuring)]
    [InlineData("9", "belt", Verdict.DoesNotFit)]
    public void A_chain_is_judged_with_a_separate_chainring(string ring, string chain, Verdict expected) =>
        Assert.Equal(expected, Judge("chain-on-chainring", "material steel", (Slot.Chainring, Chainring.Read($"speeds {ring}")), (Slot.Chain, Chain.Read(chain))).Verdict);
}
