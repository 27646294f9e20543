using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;

namespace Lugwork.PublishedTables;

/// <summary>Belts, hub gears, hub brakes, dynamos and wireless shifting: published cases, each with its source.</summary>
public sealed class BeltsAndHubsChecks
{
    private const string Workshop = "Gates belt conversion; massivebikes.com";
    private const string Split = "DIY Split Frame for Belt Drive; greenbirdbikeblog.blogspot.com";
    private const string Track = "Spot Brand Announces Gates Center Track Bikes Available Now; Twenty Nine Inches";
    private const string Flanged = "111 Tooth CDC Belt Black; bikeknack.com.au";
    private const string HubGears = "Alles ueber Nabenschaltungen (sprocket paragraph); WikiPedalia";
    private const string Coasters = "Bicycle Coaster Brakes; sheldonbrown.com";
    private const string Dynamos = "Hub dynamo; Wikipedia";
    private const string Connectors = "How To Set Up The Best Hub Dynamo System For USB Charging & Lights; cyclingabout.com";
    private const string Radio = "Frayed again; accidentalrandonneur.wordpress.com";
    private const string Wired = "Di2 11 speed on rim brake steel frame; The Paceline forum";
    private const string Practice = "common practice, no source";

    [Theory]
    [InlineData("rear triangle closed", "belt", Verdict.DoesNotFit, Workshop)]
    [InlineData("rear triangle closed", "belt", Verdict.DoesNotFit, Split)]
    [InlineData("rear triangle split seat stay", "belt", Verdict.Fits, Split)]
    [InlineData("rear triangle split drop-out", "belt", Verdict.Fits, Split)]
    [InlineData("rear triangle split chain stay", "belt", Verdict.Fits, Workshop)]
    [InlineData("rear triangle closed", "9", Verdict.Fits, Workshop)]
    [InlineData("rear triangle opens", "1/8", Verdict.Fits, Practice)]
    public void A_belt_goes_through_a_frame_that_opens(string frame, string chain, Verdict expected, string source) =>
        Published.Says(Build.From(Frame.Read(frame)).With(Chain.Read(chain)), "belt-through-rear-triangle", source, expected);

    [Theory]
    [InlineData("split seat stay", true, Split)]
    [InlineData("split chain stay", true, Workshop)]
    [InlineData("closed", false, Split)]
    public void A_frame_opens_where_a_joint_is_in_its_rear_triangle(string words, bool opens, string source) =>
        Assert.True(RearTriangle.Parse(words, null) == (opens ? RearTriangle.Opens : RearTriangle.Closed), source);

    [Theory]
    [InlineData("motor mount", KnownState.NotCovered, Practice)]
    [InlineData("cargo", KnownState.NotCovered, Practice)]
    [InlineData("frame maker's own", KnownState.FrameSpecific, Practice)]
    public void Families_of_other_trades_and_makers_own_parts_are_told_apart(string words, KnownState state, string source) =>
        Assert.True(OutsideFamily.Parse(words, null).State == state, source);

    [Theory]
    [InlineData("belt", "belt", Track)]
    [InlineData("belt", "belt", Flanged)]
    [InlineData("1/8", "belt", Flanged)]
    [InlineData("belt", "1/8", Flanged)]
    public void Belts_of_two_systems_do_not_mix_and_a_pitch_of_eleven_is_no_chains(string sprockets, string chain, string source) =>
        Published.SaysNothingMilder(Build.From(new Frame()).With(Cassette.Read("sprockets " + sprockets)).With(Chain.Read(chain)), "chain-on-cassette", source, sprockets == chain ? Verdict.NeedsMeasuring : Verdict.DoesNotFit);

    [Theory]
    [InlineData("D77", "IGH-own", "3-lug", Verdict.DoesNotFit, HubGears)]
    [InlineData("same", "IGH-3lug", "3-lug", Verdict.Fits, HubGears)]
    public void A_hub_gear_takes_the_sprocket_of_its_driver(string row, string body, string sprocket, Verdict expected, string source) =>
        Published.Says(Build.From(new Frame()).With(Wheel.Read("body " + body), Slot.RearWheel).With(Cassette.Read("pattern " + sprocket)), "cassette-on-freehub-body", $"{row}, {source}", expected);

    [Theory]
    [InlineData("coaster brake", true, false, Coasters)]
    [InlineData("IGH coaster", true, true, Coasters)]
    [InlineData("internal gear hub", false, true, HubGears)]
    public void A_coaster_brake_stands_alone_or_with_gears(string text, bool coaster, bool gears, string source)
    {
        HubDrive drive = HubDrive.Parse(text, null);
        Assert.True((drive.HasCoasterBrake, drive.HasGearsInside) == (coaster, gears), source);
    }

    [Fact]
    [PrintedIn(Coasters)]
    public void A_coaster_brake_has_no_cable() => Assert.True(BrakeType.Parse("back-pedal brake", null).IsWithoutCable, Coasters);

    [Theory]
    [InlineData("6 V 3 W", 6, 3, Dynamos)]
    [InlineData("12 V 6 W", 12, 6, Dynamos)]
    public void A_dynamo_gives_what_is_printed(string text, double volts, double watts, string source)
    {
        HubDynamo dynamo = HubDynamo.Parse(text, null);
        double v = dynamo.Voltage.Volts;
        double w = (double)dynamo.Power.Watts;
        Assert.True((v, w) == (volts, watts), source);
    }

    [Fact]
    [PrintedIn(Connectors)]
    public void A_contact_in_the_fork_end_wants_a_fork_made_for_it() =>
        Assert.True(DynamoContact.Parse("contact drop-out", null).NeedsOwnFork, Connectors);

    [Fact]
    [PrintedIn(Radio)]
    [PrintedIn(Wired)]
    public void Radio_needs_no_line_and_a_battery_at_each_end()
    {
        ShiftSignal radio = ShiftSignal.Parse("wireless", null);
        Assert.True(!radio.NeedsLine && radio.NeedsBattery, Radio);
        Assert.True(ShiftSignal.Parse("wired", null).NeedsLine, Wired);
    }
}
