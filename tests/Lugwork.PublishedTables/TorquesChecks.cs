using System.Globalization;
using Lugwork.Workshop;

namespace Lugwork.PublishedTables;

/// <summary>Torque rows against the page that prints each figure, in its own unit; where pages disagree both are held, and the row says so.</summary>
public sealed class TorquesChecks
{
    private const string Cargo = "Owner's manual, appendix C, p. 77; Yuba";
    private const string Owners = "Owner's manual 236.17.0, recommended torque settings, p. 51; Centurion";
    private const string Makers = "Torque Specifications (frame maker's list); Village Cycle Center";
    private const string Shop = "Torque Table; Dedham Bike";
    private const string Guide = "User Guide 2002, p. 24; Gary Fisher";
    private const string Disc = "Service instructions, mechanical disc brake (SI-8E80A); the brake maker";
    private const string Rotor = "Service instructions, mechanical disc brake and six-bolt rotor (BR-M416-A / SM-RT51); the brake maker";
    private const string Hydraulic = "Hydraulic caliper brake installation and hose length changes; Park Tool";
    private const string Carbon = "Torque specs and settings (quotes a frame maker's manual); bikesnbites.com";
    private const string Bolts = "Torque specs: proper bolt tightening; bikemaintenancepros.com";
    private const string Cap = "Proper torque spec for stem top-cap screw (forum); Weight Weenies";
    private const string Axle = "Overtightened hex thru-axles (in Japanese); The Trail Store";
    private const string Pinch = "Crank pinch bolt note; gist.github.com";
    private const string Tools = "Why do we use torque wrenches (quotes a derailleur's printed torque); tools-sets.com";

    [Theory]
    [InlineData("stem-on-steerer-old", 13.6, 16.3, Cargo), InlineData("bar-binder-old", 19.7, 29.4, Cargo), InlineData("quill-wedge", 19.7, 29.4, Cargo), InlineData("headset-locknut", 14.7, 16.9, Cargo)]
    [InlineData("saddle-binder", 19.7, 39.2, Cargo), InlineData("crank-bolt", 34.5, 44.2, Cargo), InlineData("ring-bolts-aluminium", 5, 9.9, Cargo), InlineData("ring-bolts-steel", 7.9, 10.7, Cargo)]
    [InlineData("pedal", 34.7, 39.5, Cargo), InlineData("front-derailleur-cable", 5, 6.8, Cargo)]
    [InlineData("crank-square-taper", 35, 50, Owners), InlineData("crank-8-spline", 35, 50, Owners), InlineData("crank-10-spline", 31, 34, Owners), InlineData("crank-stepped", 48, 54, Owners), InlineData("crank-pinch-bolts", 12, 15, Owners)]
    [InlineData("ring-bolts-aluminium", 8, 11, Owners), InlineData("ring-bolts-steel", 12, 14, Owners), InlineData("bracket-square-taper", 49, 69, Owners), InlineData("bracket-8-spline", 50, 70, Owners), InlineData("bracket-outboard", 35, 50, Owners), InlineData("bracket-outboard-stepped", 34, 41, Owners)]
    [InlineData("cassette-lockring", 29, 49, Owners), InlineData("cassette-lockring", 40, 40, Owners), InlineData("lever-clamp", 6, 8, Owners), InlineData("lever-clamp", 5, 7, Owners), InlineData("shifter-clamp", 2.5, 5, Owners), InlineData("rear-derailleur", 8, 10, Owners)]
    [InlineData("rear-derailleur-cable", 4, 7, Owners), InlineData("pulley-bolt", 3, 4, Owners), InlineData("front-derailleur-band", 5, 7, Owners), InlineData("quick-release", 5, 7.5, Owners), InlineData("axle-nut", 30, 45, Owners)]
    [InlineData("crank-pinch-bolts", 12, 15, Makers), InlineData("crank-30", 47, 54, Makers), InlineData("ring-bolts-aluminium", 8, 9, Makers), InlineData("ring-bolts-steel", 12, 14, Makers), InlineData("bracket-cups", 32.9, 40.7, Makers), InlineData("bracket-eccentric", 8.5, 11.3, Makers)]
    [InlineData("cassette-lockring", 30, 50, Makers), InlineData("rotor-lockring", 40.2, 40.2, Makers), InlineData("rotor-bolts", 5, 6.2, Makers), InlineData("caliper-bolts", 11.3, 12.4, Makers), InlineData("adapter-bolts-m5", 6.8, 7.3, Makers)]
    [InlineData("rim-caliper-rear", 7.9, 9.6, Makers), InlineData("rim-caliper-front", 6, 7, Makers), InlineData("brake-arm-bolt", 7.9, 9.6, Makers), InlineData("pad-linear-pull", 7.9, 9, Makers), InlineData("pad-rim-caliper", 4.5, 6.8, Makers), InlineData("brake-cable", 5.7, 7.9, Makers)]
    [InlineData("rear-derailleur", 7.9, 9.6, Makers), InlineData("front-derailleur-band", 2.8, 4, Makers), InlineData("front-derailleur-braze-on", 4.9, 7, Makers)]
    [InlineData("rotor-bolts", 5, 6.2, Shop), InlineData("caliper-bolts", 11.3, 12.4, Shop), InlineData("adapter-bolts-m5", 6.8, 7.3, Shop), InlineData("crank-square-taper", 39.5, 49.2, Shop), InlineData("crank-pinch-bolts", 12, 15, Shop), InlineData("rotor-lockring", 40.2, 40.2, Shop)]
    [InlineData("seat-binder-metal", 9.6, 14.1, Guide), InlineData("saddle-clamp-nuts", 20.3, 24.9, Guide), InlineData("saddle-clamp-one-bolt", 17, 28.3, Guide), InlineData("saddle-clamp-two-bolts", 9.6, 14.1, Guide)]
    [InlineData("caliper-bolts", 6, 8, Disc), InlineData("caliper-body-bolts", 6, 8, Disc), InlineData("rotor-bolts", 2, 4, Rotor), InlineData("caliper-bolts", 7.9, 9, Hydraulic), InlineData("caliper-body-bolts", 4.5, 6.8, Hydraulic)]
    [InlineData("stem-on-steerer", 4, 5, Carbon), InlineData("top-cap", 1, 2, Carbon), InlineData("seat-collar-carbon", 4, 4, Carbon), InlineData("seat-collar-carbon", 6, 6, Carbon), InlineData("seat-collar-carbon", 8, 8, Carbon), InlineData("bottle-cage", 2, 2, Carbon), InlineData("hanger-bolts", 1, 1, Carbon)]
    [InlineData("stem-faceplate", 4, 6, Bolts), InlineData("stem-on-steerer", 5, 7, Bolts), InlineData("top-cap", 1, 2, Bolts), InlineData("thru-axle-front", 12, 15, Bolts), InlineData("thru-axle-rear", 12, 18, Bolts), InlineData("caliper-bolts", 6, 8, Bolts), InlineData("rotor-bolts", 4, 6, Bolts), InlineData("rotor-lockring", 40, 40, Bolts)]
    [InlineData("top-cap", 0.6, 1.7, Cap), InlineData("top-cap", 2.8, 4, Cap), InlineData("expander-plug", 6, 6, Cap), InlineData("thru-axle-front", 9, 9, Axle), InlineData("crank-pinch-bolts", 12, 14, Pinch), InlineData("rear-derailleur", 10, 12, Tools)]
    [InlineData("bracket-outboard", 32.9, 40.7, Makers), InlineData("bracket-outboard", 32.9, 40.7, Shop), InlineData("bracket-cups", 32.9, 40.7, Shop), InlineData("stem-on-carbon-steerer", 5, 7, Bolts), InlineData("stem-on-carbon-steerer", 4, 5, Carbon)]
    [InlineData("crank-square-taper", 34.5, 44.2, Cargo), InlineData("crank-8-spline", 34.5, 44.2, Cargo), InlineData("crank-8-spline", 39.5, 49.2, Shop), InlineData("crank-bolt", 39.5, 49.2, Shop)]
    public void A_row_holds_what_its_page_prints(string row, double least, double most, string source)
    {
        TorqueRange[] of = [.. TorqueTable.Find(row)!.Ranges.Where(r => source.StartsWith(r.Source.Title, StringComparison.Ordinal))];
        Assert.True(of.Any(r => Near(r.Least.NewtonMeters, least) && Near(r.Most.NewtonMeters, most)), $"{row}: {least} to {most} N m by {source}, held: {string.Join("; ", of.Select(r => r.ToString()))}");
    }

    [Theory]
    [InlineData("rotor-bolts", 18, 35, 2, 4, Rotor)]
    [InlineData("caliper-bolts", 70, 80, 7.9, 9, Hydraulic)]
    [InlineData("caliper-body-bolts", 40, 60, 4.5, 6.8, Hydraulic)]
    [InlineData("top-cap", 5, 15, 0.6, 1.7, Cap)]
    public void Inch_pounds_are_printed_beside(string row, int leastPounds, int mostPounds, double least, double most, string source)
    {
        TorqueRange range = TorqueTable.Find(row)!.Ranges.Single(r => source.StartsWith(r.Source.Title, StringComparison.Ordinal) && Near(r.Least.NewtonMeters, least) && Near(r.Most.NewtonMeters, most));
        string[] said = range.ToString(TorqueScale.InchPounds).Split(' ');

        // Pages round to a whole inch-pound, or the newton metres to a tenth.
        Assert.InRange(double.Parse(said[0], CultureInfo.InvariantCulture), leastPounds - 1, leastPounds + 1);
        Assert.InRange(double.Parse(said[2], CultureInfo.InvariantCulture), mostPounds - 1, mostPounds + 1);
    }

    [Fact]
    [PrintedIn(Guide)]
    public void The_slip_of_80_inch_pounds_is_told_and_not_copied_as_a_conversion()
    {
        TorqueFigure row = TorqueTable.Find("saddle-clamp-two-bolts")!;
        Assert.Contains("80 in\u00B7lbf is 9.0 N m", row.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("80 ", row.Ranges[0].ToString(TorqueScale.InchPounds), StringComparison.Ordinal);
    }

    [Fact]
    [PrintedIn(Disc)]
    public void Beside_8_newton_metres_the_page_prints_69_inch_pounds_which_are_less()
    {
        string said = TorqueTable.Find("caliper-bolts")!.Ranges.Single(r => Disc.StartsWith(r.Source.Title, StringComparison.Ordinal)).ToString(TorqueScale.InchPounds);
        Assert.Equal("53.1 to 70.8 in\u00B7lbf", said);
    }

    [Theory]
    [InlineData("rotor-bolts", TorqueAgreement.Overlap, Rotor)]
    [InlineData("caliper-bolts", TorqueAgreement.Apart, Disc)]
    [InlineData("front-derailleur-band", TorqueAgreement.Apart, Makers)]
    [InlineData("ring-bolts-steel", TorqueAgreement.Apart, Cargo)]
    [InlineData("rear-derailleur", TorqueAgreement.Overlap, Tools)]
    [InlineData("seat-collar-carbon", TorqueAgreement.NonePrinted, Carbon)]
    [InlineData("rotor-lockring", TorqueAgreement.Same, Makers)]
    [InlineData("cassette-lockring", TorqueAgreement.Overlap, Owners)]
    [InlineData("crank-pinch-bolts", TorqueAgreement.Overlap, Pinch)]
    [InlineData("front-derailleur-cable", TorqueAgreement.OneSource, Cargo)]
    public void Pages_that_disagree_are_shown_to(string row, TorqueAgreement expected, string source)
    {
        TorqueFigure figure = TorqueTable.Find(row)!;
        Assert.True(expected == figure.Agreement, $"{source}: {figure}");
        Assert.Equal(expected == TorqueAgreement.Apart, figure.ToString().Contains("contradict each other", StringComparison.Ordinal));
    }

    private static bool Near(double one, double other) => Math.Abs(one - other) < 1e-9;
}
