using System.Globalization;
using Lugwork.Tyres;

namespace Lugwork.PublishedTables;

/// <summary>Rims and valve holes known only by measuring: what the published sizes make of the readings.</summary>
public sealed class MeasuredRimsChecks
{
    private const string Etrto2019 = "The optimal rim for tubeless road racing tyres (quotes ETRTO 2019); Schwalbe";
    private const string LabelSum = "tiresize page, how labels build the rim diameter; suganoya.net";
    private const string Japan = "JIS D 9421:2009 Bicycles, Rims; Japanese Standards Association";
    private const string Systems = "Tire Sizing Systems; sheldonbrown.com";
    private const string Bikefix = "Tyre and Wheel Sizes; Bikefix";
    private const string SizeGuide = "A guide to cycle tyre sizes; Cycling UK";
    private const string FrenchPost = "700A / 700B / 700 rim diameters; Classic Rendezvous list archive";
    private const string Utility = "Vintage utility bike tires: 26 inch; The Bike Shed";
    private const string Drilling = "Presta? No problem; Urbanus Magnus blog";
    private const string RimTable = "Felge, rim table with valve holes; Radreise-Wiki";
    private const string DataSheet = "Spoke and Wheel, a wheelset's data sheet; GitHub wiki";
    private const string Article = "Presta valve; thedailyomnivore.net";
    private const string Dutch = "Bandenmaten; fietssite.jouwweb.nl";

    [Theory]
    [InlineData("621.95", "0", "622", Etrto2019)]
    [InlineData("621.5", "0", "622", Etrto2019)]
    [InlineData("622.4", "0", "622", Etrto2019)]
    [InlineData("558.8", "0", "559", LabelSum)]
    [InlineData("622", "4", "622", Systems)]
    [InlineData("626", "4", "622 630", SizeGuide)]
    [InlineData("632", "4", "630 635", SizeGuide)]
    [InlineData("587", "4", "584 587 590", FrenchPost)]
    [InlineData("587", "1", "587", FrenchPost)]
    [InlineData("598", "2", "597 599", Utility)]
    [InlineData("594", "4", "590 597", Utility)]
    [InlineData("540.5", "0.6", "540 541", Bikefix)]
    [InlineData("787", "1", "787", Dutch)]
    public void A_rim_is_told_by_its_diameter(string diameter, string error, string seats, string source)
    {
        Identification<BeadSeat> found = BeadSeat.Identify(Reading(diameter, error));
        Assert.True(
            seats.Split(' ', StringSplitOptions.RemoveEmptyEntries).SequenceEqual(found.Candidates.Select(c => c.Value.FitKey).Order(StringComparer.Ordinal)),
            $"{source}: {seats} is published, found: {string.Join(' ', found.Candidates.Select(c => c.Value))}");
    }

    [Theory]
    [InlineData("847.9", "HB 270", Japan)]
    [InlineData("1007.5", "HB 321", Japan)]
    [InlineData("1167.1", "HB 372", Japan)]
    [InlineData("1326.7", "HB 422", Japan)]
    public void A_hooked_bead_rim_is_told_by_the_printed_circumference(string round, string seat, string source) =>
        Assert.True(BeadedEdgeSeat.Identify(circumference: Reading(round, "0.2")).Candidates.Single().Value.FitKey == seat, source);

    [Theory]
    [InlineData("1954", "622", Etrto2019)]
    [InlineData("1755.5", "559", LabelSum)]
    public void A_tape_round_the_seat_tells_the_rim(string round, string seat, string source) =>
        Assert.True(BeadSeat.Identify(circumference: Reading(round, "2")).Candidates.Single().Value.FitKey == seat, source);

    [Theory]
    [InlineData("6.35", "Presta", Drilling)]
    [InlineData("6.4", "Presta", Drilling)]
    [InlineData("6.5", "Presta", DataSheet)]
    [InlineData("8.33", "Schrader", Drilling)]
    [InlineData("8.5", "Schrader", RimTable)]
    [InlineData("8.5", "Dunlop", Article)]
    public void A_valve_hole_is_told_by_its_diameter(string hole, string stem, string source) =>
        Assert.True(ValveHole.Identify(Reading(hole, "0.1")).Candidates.Single().Value.Stems.Contains(ValveStem.Parse(stem, null)), source);

    /// <summary>Presta valve; thedailyomnivore.net: a stem of 8 mm does not enter the narrow hole, one of 6 mm enters both.</summary>
    [Fact]
    [PrintedIn(Article)]
    public void A_thick_stem_does_not_enter_the_narrow_hole()
    {
        Assert.True(ValveStem.Schrader.Diameter!.Value.Millimeters > ValveHole.Narrow.Diameter.Millimeters);
        Assert.All(ValveHole.All, h => Assert.True(ValveStem.Presta.Diameter!.Value.Millimeters < h.SmallestDrilled.Millimeters));
        Assert.Same(ValveStem.Schrader.Hole, ValveStem.Dunlop.Hole);
    }

    private static MeasuredLength Reading(string millimetres, string error) =>
        MeasuredLength.OfMillimetres(decimal.Parse(millimetres, CultureInfo.InvariantCulture), decimal.Parse(error, CultureInfo.InvariantCulture));
}
