using System.Globalization;
using Lugwork.Tyres;

namespace Lugwork.PublishedTables;

/// <summary>Labels of the trade: the rims that pages say they are for, and rollouts that show it.</summary>
/// <remarks>
/// Left out: CatEye prints 1545 mm for 20 x 1 1/8, which leaves 20 mm for a tyre of 28 on 451; the list by ISO size has 1618 for it.
/// Rollouts are checked to 7 mm of tyre height: they tell rims apart that lie 14 mm or more from each other.
/// </remarks>
public sealed class LabelsOnRimsChecks
{
    private const string SizeNames = "Groessenbezeichnung; Schwalbe";
    private const string SizeGuide = "A guide to cycle tyre sizes; Cycling UK";
    private const string InchNames = "Schwinn tire sizes, AKA 1 3/4 does not = 1.75; The Classic and Antique Bicycle Exchange";
    private const string Utility = "Vintage utility bike tires: 26 inch; The Bike Shed";
    private const string French = "Quelle taille pour mes pneus velo; lecyclo.com";
    private const string FrenchPost = "700A / 700B / 700 rim diameters; Classic Rendezvous list archive";
    private const string Order = "Bandenmaten en hun aanduiding; tilburgfietsen.nl";
    private const string Systems = "Tire Sizing Systems; sheldonbrown.com";
    private const string Sixteen = "Reifengroessenverwirrung; raederwerft blog";
    private const string Wiki = "ETRTO (ISO 5775), workshop table; Wiklou, L'Atelier du velo, Lyon";
    private const string Chart = "Cycle Tyre Sizes, cross reference chart; dotbike.com";
    private const string Explained = "Tyre sizes explained; cyclinglabs.net";
    private const string Carrier = "A guide to tyre sizes; Dagworth and District Gentlemen's Cycling Society";
    private const string Maker = "The skinny (and fat) on tire sizes; Michelin Bicycle";
    private const string Rollout = "Tire size chart; CatEye";
    private const string Sensor = "Wheel size list in a cycling-sensor profile, for 28-451; Nordic Semiconductor";
    private const string Radius = "Cyclecomputer calibration, radius table; sheldonbrown.com";

    [Theory]
    [InlineData("28 x 1.40", "622", SizeNames)]
    [InlineData("28 x 1 5/8 x 1 3/8", "622", SizeNames)]
    [InlineData("28 x 1 3/8 x 1 5/8", "622", Order)]
    [InlineData("28 x 1 1/4 x 1 5/8", "622", SizeGuide)]
    [InlineData("27 x 1 1/4", "630", SizeGuide)]
    [InlineData("27 x 1 3/8 US", "630", Explained)]
    [InlineData("26 x 1 3/8 S-6", "597", InchNames)]
    [InlineData("26 x 1 1/4", "597", Utility)]
    [InlineData("26 x 1 3/8 E.A.3", "590", Utility)]
    [InlineData("26 x 1.375", "599", Utility)]
    [InlineData("E10: 26 x 1 3/8", "590 597", InchNames)]
    [InlineData("E12: 26 x 1.25", "599 559", Utility)]
    [InlineData("650A", "590", French)]
    [InlineData("650B", "584", French)]
    [InlineData("650 C", "571", French)]
    [InlineData("700A", "642", FrenchPost)]
    [InlineData("700B", "635", FrenchPost)]
    [InlineData("700C", "622", French)]
    [InlineData("16 x 1.50", "305", Sixteen)]
    [InlineData("16 x 1 1/4", "349", Sixteen)]
    [InlineData("E28: 16 x 1.35", "", Sixteen)]
    [InlineData("E30: 12 1/2 x 2 1/4", "203 239", Chart)]
    [InlineData("E31: 14 x 1 3/8", "298 288", Chart)]
    [InlineData("E80: 500A", "440 438", Wiki)]
    [InlineData("E22: 24 x 1 1/8", "540 520", Systems)]
    [InlineData("E23: 24 x 1 3/8", "540 547", Systems)]
    [InlineData("E79: 26 x 2 x 1 3/4", "", Carrier)]
    public void A_label_is_for_the_rims_that_are_published_and_no_other(string label, string seats, string source) =>
        Assert.True(seats == string.Join(' ', BeadSeat.Read(After(label)).Values), $"{source}: {label} is {seats}, read: {string.Join(' ', BeadSeat.Read(After(label)).Values)}");

    [Theory]
    [InlineData("E25: 20", "406 419 428 432 438 440 451", Wiki)]
    [InlineData("E27: 16", "305 317 330 335 337 340 349", Sixteen)]
    [InlineData("E29: 18", "355 387 390 400", Wiki)]
    [InlineData("E32: 22", "457 484 489 490 498 501", Wiki)]
    [InlineData("E01: 28", "622 635", SizeNames)]
    public void An_inch_size_alone_stands_for_all_its_rims(string text, string seats, string source)
    {
        string[] read = [.. BeadSeat.Read(After(text)).Values.Select(s => s.FitKey)];
        Assert.All(seats.Split(' '), seat => Assert.Contains(seat, read));
        Assert.False(BeadSeat.TryParse(After(text), null, out _), source);
    }

    [Theory]
    [InlineData("E34: 26 x 1.75", "26 x 1 3/4", InchNames)]
    [InlineData("E08: 26 x 1.5", "26 x 1 1/2", SizeGuide)]
    [InlineData("E09: 26 x 1.375", "26 x 1 3/8", Utility)]
    public void A_fraction_and_its_decimal_share_no_rim(string label, string other, string source) =>
        Assert.False(TyreLabel.Read(After(label)).Values.SelectMany(l => l.Seats).Intersect(TyreLabel.Read(other).Values.SelectMany(l => l.Seats)).Any(), source);

    /// <summary>E33: the two orders of a three-part label are one size. E35: the ISO width counts, not the label's 2.8 in.</summary>
    [Fact]
    [PrintedIn(Order)]
    [PrintedIn(Maker)]
    public void The_iso_number_counts()
    {
        Assert.True(TyreSize.Parse("28 x 1 5/8 x 1 3/8", null) == TyreSize.Parse("28 x 1 3/8 x 1 5/8", null), Order);
        Assert.True(TyreLabel.Parse("26 x 2.8", null).Sizes.Single().WidthMillimetres == 62, Maker);
        Assert.False(TyreSize.TryParse("26 x 2.8", null, out _));
    }

    /// <summary>What the wheel rolls, less the rim that the label is read as, leaves a tyre about as high as the label is wide.</summary>
    [Theory]
    [InlineData("14 x 1.75", 1055, 47, Rollout)]
    [InlineData("16 x 1 3/8", 1300, 37, Rollout)]
    [InlineData("18 x 1.75", 1350, 44, Rollout)]
    [InlineData("20 x 1.75", 1515, 44, Rollout)]
    [InlineData("20 x 1 1/8", 1618, 28, Sensor)]
    [InlineData("24 x 1", 1753, 25, Rollout)]
    [InlineData("24 x 1.75", 1890, 44, Rollout)]
    [InlineData("24 x 1 1/4", 1905, 32, Rollout)]
    [InlineData("26 x 1.50", 2010, 38, Rollout)]
    [InlineData("26 x 1 1/2", 2100, 40, Rollout)]
    [InlineData("650 x 23C", 1944, 23, Rollout)]
    [InlineData("650 x 35A", 2090, 35, Rollout)]
    [InlineData("27 x 1 1/8", 2155, 28, Rollout)]
    [InlineData("27.5 x 2.25", 2182, 57, Rollout)]
    [InlineData("29 x 2.3", 2326, 58, Rollout)]
    [InlineData("700 x 32C", 2155, 32, Rollout)]
    [InlineData("17 x 1 1/4", 1326, 32, Radius)]
    [InlineData("20 x 1 1/4", 1615, 32, Radius)]
    [InlineData("26 x 2.125", 2073, 54, Radius)]
    [InlineData("27 x 1", 2136, 25, Radius)]
    public void The_published_rollout_agrees_with_the_rim(string label, int rollout, int width, string source)
    {
        double[] heights = [.. TyreLabel.Read(label).Values.Single().Seats.Select(s => ((rollout / Math.PI) - s.Diameter.Millimeters) / 2)];
        Assert.True(heights.Any(h => Math.Abs(h - width) <= 7), $"{source}: {label} rolls {rollout} mm, which leaves {string.Join(", ", heights.Select(h => h.ToString("0", CultureInfo.InvariantCulture)))} mm");
    }

    private static string After(string labelled) => labelled[(labelled.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim();
}
