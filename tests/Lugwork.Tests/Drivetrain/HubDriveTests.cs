using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Hub gears, coaster hubs, hub brakes, dynamos and what carries a shift.</summary>
public sealed class HubDriveTests
{
    [Theory]
    [InlineData("internal gear hub", "IGH-3lug | IGH-own")]
    [InlineData("hub gear", "IGH-3lug | IGH-own")]
    [InlineData("coaster brake", "IGH-3lug | TRACK")]
    [InlineData("screw-on freewheel", "FW-thread")]
    [InlineData("fixed gear", "TRACK")]
    public void What_drives_a_hub_says_which_bodies_it_can_have(string text, string bodies) =>
        Assert.Equal(bodies, Wheel.Read("body " + text).FreehubBody.ToString());

    [Fact]
    public void Every_body_belongs_to_a_drive_and_gears_never_stand_beside_a_cassette_body()
    {
        Assert.Empty(FreehubBody.All.Except(HubDrive.All.SelectMany(d => d.Bodies)));
        Assert.All(HubDrive.All.Where(d => d.HasGearsInside), d => Assert.Empty(d.Bodies.Intersect(HubDrive.CassetteBody.Bodies)));
        Assert.Equal([HubDrive.GearHubWithCoaster, HubDrive.CoasterHub], HubDrive.All.Where(d => d.HasCoasterBrake));
    }

    [Theory]
    [InlineData("body IGH-3lug", "3-lug", Verdict.Fits)]
    [InlineData("body IGH-own", "3-lug", Verdict.DoesNotFit)]
    [InlineData("body IGH-own", "carrier", Verdict.NeedsMeasuring)]
    [InlineData("body IGH-3lug", "carrier", Verdict.DoesNotFit)]
    [InlineData("body hub gear", "3-lug", Verdict.NeedsMeasuring)]
    [InlineData("body hub gear", "hub-gear sprocket", Verdict.NeedsMeasuring)]
    [InlineData("body HG-M", "3-lug", Verdict.DoesNotFit)]
    [InlineData("body hub gear", "9-speed HG", Verdict.DoesNotFit)]
    public void A_hub_gear_takes_its_own_sprocket(string wheel, string sprocket, Verdict expected) =>
        Assert.Equal(expected, Bench.CassetteOn(wheel, "pattern " + sprocket));

    [Theory]
    [InlineData("body hub gear", false)]
    [InlineData("body coaster hub", false)]
    [InlineData("body HG", true)]
    [InlineData("body IGH-3lug | HG-M", true)]
    [InlineData("body unknown", true)]
    [InlineData("body proprietary", true)]
    public void A_hub_with_one_sprocket_needs_no_derailleur(string wheel, bool asked)
    {
        Build build = Build.From(Frame.Read("touring")).With(Wheel.Read(wheel), Slot.RearWheel);
        Assert.Equal(asked, build.Check().Missing.Contains(Slot.RearDerailleur));
        Assert.Equal(asked, build.Needs().Of(Slot.RearDerailleur) is not null);
        Assert.Contains(Slot.Cassette, build.Check().Missing);
    }

    [Fact]
    public void Hub_brakes_have_an_arm_and_no_mount()
    {
        BrakeType[] arms = [.. BrakeType.All.Where(b => b.HasReactionArm)];
        Assert.Equal([BrakeType.Drum, BrakeType.Roller, BrakeType.Coaster], arms);
        Assert.All(arms, b => Assert.NotEmpty(b.ArmSources));
        Assert.All(arms, b => Assert.Equal("reaction-arm", b.OfTheFrame!.Id));
        Assert.All(BrakeType.All.Except(arms), b => Assert.True(b.OfTheFrame is null && b.ArmSources.IsEmpty));
    }

    [Fact]
    public void A_dynamo_tells_volts_and_watts()
    {
        double volts = HubDynamo.Watt3.Voltage.Volts;
        double watts = (double)HubDynamo.Watt3.Power.Watts;
        Assert.Equal((6, 3), (volts, watts));
        Assert.Equal(3, HubDynamo.Read("dynamo hub").Values.Length);
        Assert.Same(HubDynamo.Watt6, HubDynamo.Parse("12 V 6 W", null));
        Assert.Equal([DynamoContact.ForkEnd], DynamoContact.All.Where(c => c.NeedsOwnFork));
    }

    [Fact]
    public void Only_radio_and_nothing_at_all_need_no_line_along_the_frame()
    {
        Assert.Equal([ShiftSignal.Wireless, ShiftSignal.Single], ShiftSignal.All.Where(s => !s.NeedsLine));
        Assert.Equal([ShiftSignal.Wired, ShiftSignal.Wireless], ShiftSignal.All.Where(s => s.NeedsBattery));
        Assert.Equal([ShiftSignal.Wired, ShiftSignal.Wireless], ShiftSignal.Read("electronic").Values);
        Assert.All(ShiftSignal.All, s => Assert.NotEmpty(s.OfTheFrame));
    }
}
