using Lugwork.Drivetrain;

namespace Lugwork.PublishedTables;

/// <summary>Chainrings and cranks: printed distances between holes put in as readings, rings that go or do not, each with its source.</summary>
/// <remarks>Two printed distances are slips and find nothing: 50.3 for five bolts on 86 (50.55 by arithmetic) and 53.3 for five on 92 (54.08).</remarks>
public sealed class BoltCirclesChecks
{
    private const string Help = "Understanding Chainring Measurements; Modern Bike help pages";
    private const string Mechanic = "How to determine the bolt circle diameter for a new chainring; The Cycle Mechanic";
    private const string Crib = "Bicycle Crank/Chainring Bolt Circle Diameter Crib Sheet; sheldonbrown.com";
    private const string Holes = "Understanding Chainring Bolt-hole Patterns; sheldonbrown.com";
    private const string Mounting = "Front chainring mounting standards; BikeGremlin";
    private const string Cranks = "Cranks (BCD and smallest ring); a frame and parts maker";
    private const string Offset = "Chainring sizing (110 offset-hole warning); dotbike blog";
    private const string Decoder = "Chainring decoder; trbike.blogspot.com";
    private const string Offsets = "Standard of the 28.99 mm spindle (in Italian); cicloblog.com";
    private const string Radavist = "55mm Chainline; The Radavist";
    private const string Wiki = "Crankset (crank lengths); an encyclopaedia's mirror";
    private const string Bicycling = "Considering changing your crankarm length; Bicycling copy";
    private const string Frames = "Road and Gravel Drivetrains, Cranks and BB's; customframeforum.com";

    [Theory]
    [InlineData(103.3, 4, "4x146", Help)]
    [InlineData(84.9, 4, "4x120", Help)]
    [InlineData(73.6, 4, "4x104", Help)]
    [InlineData(72.1, 4, "4x102", Help)]
    [InlineData(62.2, 4, "4x88", Help)]
    [InlineData(56.6, 4, "4x80", Help)]
    [InlineData(45.3, 4, "4x64", Help)]
    [InlineData(74.5, 3, "3x86", Help)]
    [InlineData(32.9, 5, "5x56", Mechanic)]
    [InlineData(55.3, 5, "5x94", Mechanic)]
    public void Neighbouring_holes_tell_the_circle_as_printed(double holes, int arms, string key, string source)
    {
        Identification<BoltCircle> found = BoltCircle.Identify(MeasuredLength.OfMillimetres((decimal)holes), arms: arms);
        Assert.True(found.Candidates[0].Value.FitKey == key, $"{source}: {key} is printed, found {found.Candidates[0]}");
    }

    [Theory]
    [InlineData(50.3, "5x86", Mechanic)]
    [InlineData(53.3, "5x92", Help)]
    public void A_printed_slip_finds_nothing(double holes, string key, string source) =>
        Assert.False(BoltCircle.Identify(MeasuredLength.OfMillimetres((decimal)holes), arms: 5).Candidates.Any(c => c.Value.FitKey == key), source);

    [Theory]
    [InlineData("130", 34, false, Crib)]
    [InlineData("130", 38, true, Crib)]
    [InlineData("144", 39, false, Crib)]
    [InlineData("144", 41, true, Crib)]
    [InlineData("135", 39, true, Crib)]
    [InlineData("5x110", 34, true, Cranks)]
    [InlineData("74", 24, true, Cranks)]
    [InlineData("74", 22, false, Cranks)]
    [InlineData("58", 20, true, Cranks)]
    public void A_ring_goes_on_a_circle_as_published(string circle, int teeth, bool goes, string source) =>
        Assert.True(goes == teeth >= BoltCircle.Parse(circle, null).SmallestRing, source);

    [Theory]
    [InlineData("110", "5x110", "4x110-uneven", Holes)]
    [InlineData("110", "5x110", "4x110-uneven", Mounting)]
    [InlineData("110", "5x110", "5x110-offset", Offset)]
    [InlineData("96", "4x96-even", "4x96-uneven", Holes)]
    public void One_number_that_means_several_circles_is_not_clear(string text, string one, string other, string source)
    {
        TextReading<BoltCircle> reading = BoltCircle.Read(text);
        Assert.False(reading.IsClear, source);
        Assert.Contains(reading.Values, v => v.FitKey == one);
        Assert.Contains(reading.Values, v => v.FitKey == other);
    }

    [Fact]
    [PrintedIn(Decoder)]
    public void Two_versions_of_a_direct_mount_are_two() =>
        Assert.True(DirectMountRing.Read("3-bolt").Values[0] != DirectMountRing.Read("8-bolt").Values[0] && !DirectMountRing.Read("direct mount").IsClear, Decoder);

    [Theory]
    [InlineData(6, 49, Offsets)]
    [InlineData(3, 52, Offsets)]
    [InlineData(0, 55, Radavist)]
    public void An_offset_gives_the_printed_chainline(double offset, double chainline, string source) =>
        Assert.True(Math.Abs(chainline - DirectMountRing.Chainline((decimal)offset).Millimeters) < 1e-9, source);

    [Theory]
    [InlineData("165", true, Wiki)]
    [InlineData("172.5", true, Wiki)]
    [InlineData("180 mm", true, Wiki)]
    [InlineData("130", true, Bicycling)]
    [InlineData("220", true, Bicycling)]
    [InlineData("17.5", false, Wiki)]
    public void A_crank_length_is_read_as_published(string text, bool good, string source) => Assert.True(good == CrankLength.TryParse(text, null, out _), source);

    [Theory]
    [InlineData(145, "road", Frames)]
    [InlineData(146, "road", Frames)]
    [InlineData(151, "gravel", Frames)]
    public void A_width_over_the_arms_is_of_the_printed_class(double millimetres, string key, string source) =>
        Assert.True(QFactorClass.WithinError((decimal)millimetres, 0.5m) is [var only] && only.FitKey == key, source);
}
