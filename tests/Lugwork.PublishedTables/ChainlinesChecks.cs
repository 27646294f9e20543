using Lugwork.Drivetrain;

namespace Lugwork.PublishedTables;

/// <summary>Chainlines, front-derailleur and guide mounts, indexing: published cases and worked examples, each with its source.</summary>
public sealed class ChainlinesChecks
{
    private const string TenSpeed = "Chainline (10-speed worked example); ti10x.blogspot.com";
    private const string Single = "Chainline for a single sprocket, worked example; LFGSS forum";
    private const string Maths = "Chainline math; MTBR forum";
    private const string Table = "Kettenlinienstandards (Tabelle); WikiPedalia";
    private const string HubGears = "Chainline and Overlocknut Distance on Bicycles with Internal-Gear Hubs; sheldonbrown.com";
    private const string Demystified = "Bottom Brackets Demystified; Off the Beaten Path";
    private const string RoadDisc = "Technical FAQ: chain lines on road disc brake bikes; Velo";
    private const string Frames = "Road and Gravel Drivetrains, Cranks and BB's; customframeforum.com";
    private const string Axle = "Selecting the right axle for your bike; a crank maker";
    private const string Help = "What is chainline; a chain-guide maker";
    private const string Radavist = "55mm Chainline; The Radavist";
    private const string Range = "Chain line: 49.25, 50.25, 52.25, 55.25 mm cranks; a parts maker";
    private const string Boost = "Mountain Hub Spacing: The 6-Millimeter Conundrum; a wheel maker";
    private const string SuperBoost = "Super Boost Plus 157; Enduro MTB";
    private const string FatHubs = "Decoding fatbike hub spacing and drivetrain; Bikerumor with a chainring maker";
    private const string FatFrames = "Understanding Drivetrain and Rear Tire Capacity; a frame maker";
    private const string Fronts = "Front Derailleurs; a frame and parts maker";
    private const string FrontCare = "Shifting correctly: adjust the front derailleur; Bike Magazin";
    private const string Spacings = "Derailleurs (direct-mount hole spacing); Hulk Bike";
    private const string Kinds = "Front derailleur types and mounts explained; BikeRadar";
    private const string Tabs = "ISCG glossary entry (in Japanese); jitetan.com";
    private const string Pull = "10 vs 11 speed cassette; hastiny.blogg.se";
    private const string Thick = "Podcast on thick-plate drivetrains (transcript copy); Pinkbike";
    private const string Uneven = "Science Behind the Magic: Drivetrain Compatibility; a shop";

    [Theory]
    [PrintedIn(TenSpeed)]
    [InlineData(61.2, "smallest")]
    [InlineData(25.65, "largest")]
    [InlineData(43.43, "middle")]
    public void Ten_speeds_between_130_mm_stand_as_worked(double millimetres, string which)
    {
        RearChainline worked = SprocketSpacing.Parse("10", null).InInnerGap(Dimension.OfMillimetres(130m), Dimension.OfMillimetres(3m))!;
        double told = (which == "smallest" ? worked.Smallest : which == "largest" ? worked.Largest : worked.Middle).Millimeters;
        Assert.True(Math.Abs(millimetres - told) < 0.006, TenSpeed);
    }

    [Theory]
    [InlineData(120, 17.5, 42.5, Single)]
    [InlineData(135, 12.5, 55, Maths)]
    public void One_sprocket_stands_as_worked(double gap, double end, double chainline, string source) =>
        Assert.True(Math.Abs(chainline - RearChainline.OfOneSprocketInInnerGap(Dimension.OfMillimetres((decimal)gap), Dimension.OfMillimetres((decimal)end)).Millimeters) < 1e-9, source);

    [Theory]
    [InlineData(42, 1, 120, HubGears)]
    [InlineData(43.5, 2, 130, Table)]
    [InlineData(43.5, 2, 130, Demystified)]
    [InlineData(44.7, 2, 142, RoadDisc)]
    [InlineData(45, 3, 130, Table)]
    [InlineData(45.5, 1, 142, Frames)]
    [InlineData(46, 1, 142, Axle)]
    [InlineData(46.9, 2, 142, Frames)]
    [InlineData(47.5, 3, 135, Table)]
    [InlineData(47.5, 1, 135, HubGears)]
    [InlineData(50, 3, 135, Help)]
    [InlineData(49, 1, 142, Radavist)]
    [InlineData(49.25, 1, 142, Range)]
    [InlineData(50.25, 1, 142, Range)]
    [InlineData(52, 1, 148, Boost)]
    [InlineData(52.25, 1, 148, Range)]
    [InlineData(54, 1, 135, HubGears)]
    [InlineData(58, 1, 135, HubGears)]
    [InlineData(55.25, 1, 148, Range)]
    [InlineData(56, 1, 157, SuperBoost)]
    [InlineData(64, 3, 135, FatHubs)]
    [InlineData(65, 3, 135, FatFrames)]
    public void A_chainline_and_its_rings_tell_the_rear_end_it_is_made_for(double chainline, int rings, int rear, string source)
    {
        Identification<FrontChainline> found = FrontChainline.Identify(MeasuredLength.OfMillimetres((decimal)chainline), rings);
        Assert.True(found.Candidates.Any(c => c.DeviationMillimetres == 0 && c.Value.RearEndsMillimetres.Contains(rear)), $"{source}: {string.Join(", ", found.Candidates)}");
    }

    [Theory]
    [InlineData("tube", 28.6, "band-28.6", Fronts)]
    [InlineData("tube", 31.8, "band-31.8", Fronts)]
    [InlineData("tube", 34.9, "band-34.9", FrontCare)]
    [InlineData("bolts", 42.7, "low-direct-S1", Spacings)]
    [InlineData("bolts", 22.1, "low-direct-S2", Spacings)]
    [InlineData("bolts", 22.1, "low-direct-S3", Spacings)]
    [InlineData("step", 5, "low-direct-S3", Spacings)]
    public void A_front_mount_is_told_by_its_printed_dimension(string where, double size, string key, string source)
    {
        MeasuredLength reading = MeasuredLength.OfMillimetres((decimal)size);
        Identification<FrontDerailleurMount> found = where == "tube" ? FrontDerailleurMount.Identify(tube: reading) : where == "bolts" ? FrontDerailleurMount.Identify(boltSpacing: reading) : FrontDerailleurMount.Identify(boltStep: reading);
        Assert.True(found.Candidates.Any(c => c.Value.FitKey == key && c.DeviationMillimetres == 0), source);
    }

    [Theory]
    [InlineData(59.24, "ISCG", Tabs)]
    [InlineData(73, "ISCG05", Tabs)]
    public void Guide_tabs_are_told_by_their_printed_circle(double circle, string key, string source) =>
        Assert.True(ChainGuideMount.Identify(MeasuredLength.OfMillimetres((decimal)circle)).Candidates is [var only] && only.Value.FitKey == key, source);

    [Theory]
    [PrintedIn(Kinds)]
    [InlineData("top pull", "top")]
    [InlineData("bottom pull", "bottom")]
    [InlineData("dual pull", "dual")]
    public void A_pull_is_read_as_printed(string text, string key) => Assert.True(FrontDerailleurCable.Parse(text, null).FitKey == key, Kinds);

    [Theory]
    [InlineData("D57", "road 10", "off-road 10", "10", Verdict.DoesNotFit, Pull)]
    [InlineData("D57 turned round", "off-road 10", "road 10", "10", Verdict.DoesNotFit, Pull)]
    [InlineData("D80", "road 11", "off-road 11", "11-wide", Verdict.DoesNotFit, Pull)]
    [InlineData("D58", "LG", "road 10", "LG-10", Verdict.DoesNotFit, Thick)]
    [InlineData("D58", "road 10", "road 10", "LG-10", Verdict.DoesNotFit, Thick)]
    [InlineData("D58 turned round", "off-road 11", "LG", "11-wide", Verdict.DoesNotFit, Thick)]
    [InlineData("no ratio printed", "road 11", "road 11", "11-close", Verdict.NeedsMeasuring, Pull)]
    [InlineData("no ratio printed", "uneven 10", "uneven 10", "10", Verdict.NeedsMeasuring, Uneven)]
    public void A_shifter_indexes_a_derailleur_as_published(string row, string shifter, string derailleur, string sprockets, Verdict expected, string source)
    {
        IndexingEstimate told = Indexing.Estimate(ActuationFamily.Parse(shifter, null), ActuationFamily.Parse(derailleur, null), SprocketSpacing.Parse(sprockets, null));
        Assert.True(expected == told.Check.Verdict, $"{row}, {source}: {told}");
    }
}
