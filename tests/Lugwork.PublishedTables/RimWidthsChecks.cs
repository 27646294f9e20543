using Lugwork.Tyres;

namespace Lugwork.PublishedTables;

/// <summary>Rim designations and widths: what pages outside the tables say of them.</summary>
public sealed class RimWidthsChecks
{
    private const string Extract = "BS ISO 5775-2:2015, clause extract; ulstandardspdf.com";
    private const string Hallway = "Felgen fuer Reifen, die viel tragen muessen; Fahrradzukunft 2/2006";
    private const string Trade = "from memory, the form of the trade";
    private const string Techniktips = "Techniktips: Reifen und Felgen (after DIN 7800); tandem-fahren.de";
    private const string RimChart = "Recommended tire size chart; a rim maker";
    private const string Older = "ISO 5775, older copy of the encyclopaedia article";
    private const string Statement = "Tire compatibility statement; a hub and wheel maker";
    private const string Wide = "Rim and Tire Standards; Rene Herse Cycles";
    private const string Profile2017 = "Mavic s'impose dans le tubeless (in French); Le Cycle";
    private const string Profile2019 = "The optimal rim for tubeless road racing tyres (quotes ETRTO 2019); Schwalbe";
    private const string Grown = "Why are tires sometimes narrower than their listed size?; a tyre maker's help centre";

    [Theory]
    [InlineData("SS 400x20", "400", 20.0, "SS", Extract)]
    [InlineData("559x21C", "559", 21.0, "C", Hallway)]
    [InlineData("559x21", "559", 21.0, "", Hallway)]
    [InlineData("622 x 19 TC", "622", 19.0, "TC", Trade)]
    [InlineData("19-622", "622", 19.0, "", Trade)]
    public void A_designation_is_read_as_diameter_then_width(string text, string seat, double inner, string type, string source)
    {
        RimSize size = RimSize.Parse(text, null);
        Assert.True((size.Bead.FitKey, size.InnerWidth.Millimeters, size.Type?.FitKey ?? "") == (seat, inner, type), $"{source}: {text} is read as {size}");
    }

    /// <summary>E59: three ways to write one rim; the letters are missing in one.</summary>
    [Fact]
    [PrintedIn(Trade)]
    public void One_rim_in_three_writings_has_one_seat_and_width() =>
        Assert.Single(new[] { "622 x 19C", "19-622", "622 x 19 TC" }.Select(t => (RimSize.Parse(t, null).Bead, RimSize.Parse(t, null).InnerWidthMillimetres)).Distinct());

    /// <summary>Another page prints the first three rows of the same draft standard.</summary>
    [Theory]
    [PrintedIn(Techniktips)]
    [InlineData(13, "18 20 23 25")]
    [InlineData(15, "23 25 28 32")]
    [InlineData(17, "25 28 32 35 37")]
    public void The_cells_before_2006_are_those_of_another_page(int rim, string tyres)
    {
        int[] listed = [18, 20, 23, 25, 28, 32, 35, 37, 40, 44, 47, 50, 54, 57, 60, 62];
        Assert.True(tyres == string.Join(' ', listed.Where(t => WidthCells2006.Of(rim, t) == WidthCell.Before2006)), Techniktips);
    }

    /// <summary>No edition allows a tyre that is not wider than the rim is inside; 23 mm on 24 mm is ruled out by name.</summary>
    [Fact]
    [PrintedIn(RimChart)]
    public void No_range_holds_a_tyre_as_narrow_as_its_rim()
    {
        Assert.All(TyreWidthRange.All.Where(r => r.Least is not null), r => Assert.True(r.Least!.Value.Millimeters > r.InnerWidth.Millimeters, RimChart));
        Assert.DoesNotContain(TyreWidthRange.All, r => r.InnerWidth.Millimeters >= 24 && r.Holds(23));
    }

    /// <summary>The old ratio: 0.65 of the tyre below 30 mm, 0.55 from there. The rims of 2020 are as wide or wider for narrow tyres.</summary>
    [Theory]
    [PrintedIn(Older)]
    [InlineData(23)]
    [InlineData(25)]
    [InlineData(28)]
    [InlineData(32)]
    [InlineData(37)]
    public void Narrow_tyres_are_measured_on_wider_rims_than_by_the_older_rule(int tyre) =>
        Assert.True(MeasuringRim.For(tyre).InnerWidth.Millimeters >= tyre * (tyre < 30 ? 0.65 : 0.55), Older);

    /// <summary>A 40 mm tyre was 45 mm on a 25 mm rim: 2 mm over the measuring rim and 3 mm of tolerance.</summary>
    [Fact]
    [PrintedIn(Grown)]
    public void The_worst_case_of_a_40_mm_tyre_is_what_a_maker_measured() =>
        Assert.True(40 + 3 + (25 - MeasuringRim.For(40).InnerWidth.Millimeters) == 45, Grown);

    /// <summary>73 psi is printed for the limit of 5 bar.</summary>
    [Fact]
    [PrintedIn(Statement)]
    public void The_hookless_pressure_is_the_makers_in_psi() => Assert.True(Math.Round(HooklessMinimum.MostPressure.PoundsForcePerSquareInch) is 72 or 73, Statement);

    /// <summary>The statement and the 2006 table contradict at 27 mm; both stand, with their editions.</summary>
    [Fact]
    [PrintedIn(Wide)]
    public void A_contradiction_stays_visible()
    {
        Assert.True(TyreWidthRange.Of(WidthEdition.Parse("a tyre maker's statement", null), 27)!.Holds(38), Wide);
        Assert.False(TyreWidthRange.Of(WidthEdition.Parse("ETRTO 2006", null), 27)!.Holds(38), Wide);
        Assert.False(WidthEdition.TyreMaker.IsLimit);
    }

    /// <summary>One maker's rim of 2017 against the profile of 2019 that a tyre maker quotes: the wall is within it, the well, if a depth is meant, is not.</summary>
    [Fact]
    [PrintedIn(Profile2017)]
    [PrintedIn(Profile2019)]
    public void A_rim_of_2017_has_the_wall_of_the_later_profile_and_another_well()
    {
        RimProfile later = RimProfile.Parse("tubeless 622, 2019", null);
        RimProfile earlier = RimProfile.Parse("road tubeless, 2017", null);
        Assert.True(Math.Abs(earlier.WallHeight.Millimeters - later.WallHeight.Millimeters) <= later.WallTolerance!.Value.Millimeters, Profile2017);
        Assert.True(earlier.LeastInnerWidth.Millimeters >= later.LeastInnerWidth.Millimeters, Profile2019);
        Assert.False(earlier.WellDepth.Least.Millimeters <= later.WellDepth.Most.Millimeters, Profile2017);
    }
}
