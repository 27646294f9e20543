using System.Globalization;
using Lugwork.Hubs;

namespace Lugwork.PublishedTables;

/// <summary>Hubs, ends and threads known only by a caliper: what the published sizes make of the readings.</summary>
public sealed class MeasuredHubsChecks
{
    private const string AxleGuide = "A guide to mountain bike axle standards; BikeRadar";
    private const string New20 = "Really, a 'new' 20x110mm axle standard; BikeRadar";
    private const string Boost148 = "Tech Talk: Boost 148 explained; Art's Cyclery";
    private const string Trail157 = "Our take on 157TRAIL aka Superboost axle widths; Knolly Bikes";
    private const string Super157 = "Super Boost Plus 157 rear axle standard; Enduro MTB";
    private const string SixMm = "Mountain Hub Spacing: The 6-Millimeter Conundrum; a wheel maker";
    private const string Measuring = "Axle and hub standards, cassette compatibility and rotor mounting; Dandy Horse";
    private const string EndCapForum = "Rotor alignment and a 100 mm hub with 3.5 mm end caps; CycleChat forum";
    private const string EndCaps = "What are Torque Caps?; NOBL Wheels";
    private const string Trials = "Rear hubs / Front hubs; trial-bikes.com";
    private const string GearHubs = "Chainline and Overlocknut Distance on Bicycles with Internal-Gear Hubs; sheldonbrown.com";
    private const string Wheels = "Information & Advice: Bicycle Wheels; Moruya Bicycles";
    private const string Carrier = "Splined sprocket carrier, workshop handbook; Rohloff";
    private const string Fat = "Understanding Drivetrain & Rear Tire Capacity; Salsa Cycles";
    private const string AxleNut = "Axle nut; wrenchfu.com";
    private const string AxleBlog = "How To Identify Your Bike Wheel Axle; hotvehs.com";
    private const string BmxQuiz = "BMX freestyle rear hub O.L.D., quiz answer; appmatch.jp";
    private const string AxleMaker = "Bicycle Thru-Axle Measuring Guide; Ti-Parts Titanium";
    private const string Help = "How to Measure a Bicycle Thru-Axle; Modern Bike help pages";
    private const string Universal = "What is the UDH; BikeRadar";
    private const string Freewheels = "Traditional Thread-on Freewheels; sheldonbrown.com";

    [Theory]
    [InlineData("135.0", "", true, "R142-12", Boost148)]
    [InlineData("134.8", "12", true, "R142-12 R135-12", Boost148)]
    [InlineData("141.2", "12", true, "R148-12 R148-12RB", SixMm)]
    [InlineData("150.1", "12", true, "R157-12DH R157-12W R150-12", Trail157)]
    [InlineData("170.0", "", true, "R177-12 R170-QR", Carrier)]
    [InlineData("189.8", "", true, "R197-12 R190-QR", Carrier)]
    public void The_gap_between_recessed_ends_means_the_hub_that_is_7_mm_wider(string gap, string axle, bool rear, string among, string source) =>
        Among(HubStandard.Identify(innerGap: Reading(gap, 0.3m), axle: axle.Length == 0 ? null : Reading(axle), isRear: rear), among, source);

    [Theory]
    [InlineData("142.1", "12", "R142-12", AxleGuide)]
    [InlineData("148", "12", "R148-12 R148-12RB", AxleGuide)]
    [InlineData("157", "12", "R157-12DH R157-12W", Super157)]
    [InlineData("141", "10", "R141-QR", Measuring)]
    [InlineData("130.05", "10", "R130", Wheels)]
    [InlineData("126", "10", "R126", Wheels)]
    [InlineData("120", "9.5", "R120-3/8", Wheels)]
    [InlineData("116", "10", "R116", Trials)]
    [InlineData("129", "10", "R129", Trials)]
    [InlineData("114", "9.5", "R114", GearHubs)]
    [InlineData("110", "14", "R110-14", BmxQuiz)]
    [InlineData("110", "9.53", "R110-3/8", GearHubs)]
    [InlineData("177", "12", "R177-12", Carrier)]
    [InlineData("197", "11.9", "R197-12", Carrier)]
    [InlineData("190", "10", "R190-QR", Carrier)]
    [InlineData("135", "10", "R135-QR R135-10 R135-OFF", Fat)]
    public void A_rear_hub_is_told_by_width_and_axle(string width, string axle, string hubs, string source) =>
        Exactly(HubStandard.Identify(overLocknut: Reading(width, 0.2m), axle: Reading(axle), isRear: true), hubs, source);

    [Theory]
    [InlineData("100", "12", "", "F100-12", EndCapForum)]
    [InlineData("100", "15", "", "F100-15", AxleGuide)]
    [InlineData("100", "", "19", "F100-12 F100-QR9 F100-TB9 F100-N9 F100-N-5/16 F100-N-3/8", EndCapForum)]
    [InlineData("100", "15", "21", "F100-15", EndCapForum)]
    [InlineData("110", "15", "21", "F110-15B", EndCaps)]
    [InlineData("110", "15", "31", "F110-15B-31", EndCaps)]
    [InlineData("110", "20", "", "F110-20 F110-20B", New20)]
    [InlineData("110", "12", "", "F110-12RB", Measuring)]
    [InlineData("70", "9", "", "F070", Trials)]
    public void A_front_hub_is_told_by_width_axle_and_end_caps(string width, string axle, string cap, string hubs, string source) =>
        Exactly(HubStandard.Identify(Reading(width, 0.2m), axle: axle.Length == 0 ? null : Reading(axle), endCap: cap.Length == 0 ? null : Reading(cap), isRear: false), hubs, source);

    /// <summary>20x110 before Boost and of Boost measure the same: the rotor stands 5 mm apart.</summary>
    [Fact]
    [PrintedIn(New20)]
    public void Two_hubs_of_20x110_are_parted_by_the_rotor_only()
    {
        Identification<HubStandard> found = HubStandard.Identify(Reading("110", 0.2m), axle: Reading("20"));
        Assert.Equal(2, found.Candidates.Length);
        Assert.True(found.Candidates.All(c => c.TellsApart.Contains("5 mm", StringComparison.Ordinal)), New20);
        Assert.Empty(found.Next);
    }

    [Theory]
    [InlineData("11.85", "142", "R142-12", AxleMaker)]
    [InlineData("11.95", "142", "R142-12", AxleMaker)]
    [InlineData("11.8", "142", "", AxleMaker)]
    public void A_thread_just_under_12_mm_is_a_12_mm_axle(string axle, string width, string hub, string source) =>
        Exactly(HubStandard.Identify(Reading(width), axle: Reading(axle, 0.01m)), hub, source);

    [Theory]
    [InlineData("11.9", "7.5", "M12x1.5 own", AxleMaker)]
    [InlineData("11.85", "5", "M12x1.0 own", Universal)]
    [InlineData("11.95", "8.75", "M12x1.75 own", Help)]
    [InlineData("14.95", "7.5", "M15x1.5 own", Help)]
    [InlineData("11.9", "", "M12x1.0 M12x1.5 M12x1.75 own", AxleMaker)]
    public void A_thru_axle_is_told_by_its_pitch(string outside, string turns, string threads, string source) =>
        Exactly(AxleThread.Identify(Reading(outside), turns.Length == 0 ? null : Reading(turns)), threads, source);

    [Theory]
    [InlineData("9.5", "", "3/8x24 3/8x26", AxleNut)]
    [InlineData("9.5", "9.77", "3/8x26", AxleNut)]
    [InlineData("9.5", "10.58", "3/8x24", AxleNut)]
    [InlineData("8", "", "5/16x24 5/16x26", AxleBlog)]
    [InlineData("9", "", "M9x1", AxleNut)]
    [InlineData("10", "", "M10x1", AxleNut)]
    [InlineData("14", "", "M14x1", AxleBlog)]
    public void A_solid_axle_is_told_by_thickness_and_a_gauge(string outside, string turns, string threads, string source) =>
        Exactly(HubAxleThread.Identify(Reading(outside), turns.Length == 0 ? null : Reading(turns)), threads, source);

    private static void Exactly<T>(Identification<T> found, string keys, string source) =>
        Assert.True(
            keys.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order().SequenceEqual(found.Candidates.Select(c => $"{c.Value}").Order()),
            $"{source}: {keys} is published, found: {string.Join(' ', found.Candidates.Select(c => c.Value))}");

    private static void Among<T>(Identification<T> found, string keys, string source) =>
        Assert.All(keys.Split(' '), key => Assert.True(found.Candidates.Any(c => $"{c.Value}" == key), $"{source}: {key} is published, found: {string.Join(' ', found.Candidates.Select(c => c.Value))}"));

    private static MeasuredLength Reading(string millimetres, decimal error = 0.1m) => MeasuredLength.OfMillimetres(decimal.Parse(millimetres, CultureInfo.InvariantCulture), error);
}
