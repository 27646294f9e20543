using Lugwork.Tyres;

namespace Lugwork.PublishedTables;

/// <summary>Tyres on rims, bead seat and width: published cases, each with its source.</summary>
/// <remarks>
/// Where the 2006 and the 2022 tables differ, crochet rims are judged by the older one (it was made for them) and tubeless crochet
/// rims by the newer. A refusal on a hookless rim is unsafe, not merely a misfit: the tyre can blow off.
/// 25-622 on 23 mm hookless (E47) is refused until the 2023 table is read; the gap of 5 mm is not met.
/// </remarks>
public sealed class TyresOnRimsChecks
{
    private const string SizeNames = "Groessenbezeichnung; Schwalbe";
    private const string SizingSystems = "Tire Sizing Systems; sheldonbrown.com";
    private const string SizeGuide = "A guide to cycle tyre sizes; Cycling UK";
    private const string SizeTable = "ETRTO (ISO 5775), workshop table; Wiklou, L'Atelier du velo, Lyon";
    private const string French = "Quelle taille pour mes pneus velo; lecyclo.com";
    private const string FrenchPost = "700A / 700B / 700 rim diameters; Classic Rendezvous list archive";
    private const string InchNames = "Schwinn tire sizes, AKA 1 3/4 does not = 1.75; The Classic and Antique Bicycle Exchange";
    private const string SizePage = "Tyre and Wheel Sizes; Bikefix";
    private const string Matrix2006 = "Zulaessige Kombinationen von Reifen und Felgen nach ETRTO, Stand 2006; de.rec.fahrrad wiki";
    private const string Ranges2022 = "Compatibilite pneu / roues (Norme ETRTO 2022); Axoreo";
    private const string Ratio = "Bike tire width v rim width; megalos.rs copy";
    private const string Iso2023 = "In conversation about hookless rims; road.cc";
    private const string Divided = "Industry divided over new tyre rim-size regulations; Cycling Weekly";
    private const string Statement = "Tire compatibility statement; a hub and wheel maker";
    private const string Part2 = "BS ISO 5775-2:2015, clause extract; ulstandardspdf.com";
    private const string Iso5775 = "ISO 5775; Wikipedia";
    private const string RimChart = "Recommended tire size chart; a rim maker";

    [Theory]
    [InlineData("E01", SizeNames, "47-622", 622, Verdict.Fits)]
    [InlineData("E02", SizingSystems, "40-635", 622, Verdict.DoesNotFit)]
    [InlineData("E03", SizingSystems, "40-622", 622, Verdict.Fits)]
    [InlineData("E04", SizeGuide, "32-622", 630, Verdict.DoesNotFit)]
    [InlineData("E05", SizeGuide, "25-630", 622, Verdict.DoesNotFit)]
    [InlineData("E07", InchNames, "47-559", 571, Verdict.DoesNotFit)]
    [InlineData("E08", SizeGuide, "40-559", 584, Verdict.DoesNotFit)]
    [InlineData("E10, read as either", InchNames, "37-590 | 37-597", 590, Verdict.NeedsMeasuring)]
    [InlineData("E11", InchNames, "32-597", 597, Verdict.Fits)]
    [InlineData("E13", SizeNames, "42-584", 559, Verdict.DoesNotFit)]
    [InlineData("E14", French, "42-584", 571, Verdict.DoesNotFit)]
    [InlineData("E15", InchNames, "47-571", 571, Verdict.Fits)]
    [InlineData("E16", SizeTable, "57-584", 584, Verdict.Fits)]
    [InlineData("E17", SizeNames, "57-622", 622, Verdict.Fits)]
    [InlineData("E18", French, "40-587", 584, Verdict.DoesNotFit)]
    [InlineData("E19", FrenchPost, "40-635", 622, Verdict.DoesNotFit)]
    [InlineData("E20", FrenchPost, "35-642", 622, Verdict.DoesNotFit)]
    [InlineData("E21", SizePage, "28-541", 540, Verdict.Fits)]
    [InlineData("E24", SizingSystems, "47-507", 540, Verdict.DoesNotFit)]
    [InlineData("E25, read as either", SizeTable, "47-406 | 28-451", 406, Verdict.NeedsMeasuring)]
    public void A_bead_sits_on_the_rim_as_published(string row, string source, string tyre, int rim, Verdict expected)
    {
        Build build = Build.From(Frame.Read("material steel"))
            .With(Wheel.Read($"beadSeat {rim}"), Slot.FrontWheel).With(Tyre.Read($"size {tyre}"), Slot.FrontTyre)
            .With(Wheel.Read($"beadSeat {rim}"), Slot.RearWheel).With(Tyre.Read($"size {tyre}"), Slot.RearTyre);

        AssertFit(build, "front-tyre-bead-on-rim", row, source, expected);
        AssertFit(build, "rear-tyre-bead-on-rim", row, source, expected);
    }

    [Fact]
    [PrintedIn(SizePage)]
    public void A_541_tyre_on_a_540_rim_carries_a_caution()
    {
        // E21: Tyre and Wheel Sizes; Bikefix: said to interchange, one millimetre apart.
        Build build = Build.From(Frame.Read("material steel")).With(Wheel.Read("beadSeat 540"), Slot.RearWheel).With(Tyre.Read("28-541"), Slot.RearTyre);

        Assert.NotEmpty(AssertFit(build, "rear-tyre-bead-on-rim", "E21", SizePage, Verdict.Fits).Cautions);
    }

    [Theory]
    [InlineData("E37", Ranges2022, "62-622", "tubeless", "TC", "25", Verdict.Fits)]
    [InlineData("E37", Matrix2006, "62-622", "folding", "C", "25", Verdict.Fits)]
    [InlineData("E38", Ranges2022, "62-622", "tubeless", "TC", "17", Verdict.DoesNotFit)]
    [InlineData("E38", Matrix2006, "62-622", "folding", "C", "17", Verdict.DoesNotFit)]
    [InlineData("E39", Ranges2022, "62-622", "tubeless", "TC", "19", Verdict.Fits)]
    [InlineData("E39", Matrix2006, "62-622", "folding", "C", "19", Verdict.Fits)]
    [InlineData("E40", Matrix2006, "50-622", "wired", "C", "17", Verdict.Fits)]
    [InlineData("E41", Matrix2006, "25-622", "folding", "C", "19", Verdict.DoesNotFit)]
    [InlineData("E42", Ranges2022, "25-622", "folding", "TC", "19", Verdict.Fits)]
    [InlineData("E43", Ranges2022, "28-622", "folding", "TC", "21", Verdict.Fits)]
    [InlineData("E43", Matrix2006, "28-622", "folding", "C", "21", Verdict.DoesNotFit)]
    [InlineData("E44", Iso2023, "28-622", "tubeless", "TSS", "25", Verdict.Unsafe)]
    [InlineData("E45", Iso2023, "29-622", "tubeless", "TSS", "25", Verdict.Fits)]
    [InlineData("E46", Statement, "25-622", "tubeless", "TSS", "25", Verdict.Unsafe)]
    [InlineData("E47", Ranges2022, "25-622", "tubeless", "TSS", "23", Verdict.Unsafe)]
    [InlineData("E48", Divided, "28-622", "tubeless", "TSS", "23", Verdict.Fits)]
    [InlineData("E48, a gap of 4 mm", Divided, "27-622", "tubeless", "TSS", "23", Verdict.Unsafe)]
    [InlineData("E51", Statement, "40-622", "wired", "TSS", "25", Verdict.Unsafe)]
    [InlineData("E51", Statement, "40-622", "folding", "TSS", "25", Verdict.Unsafe)]
    [InlineData("E52", Statement, "40-622", "tubeless", "TSS", "25", Verdict.Fits)]
    [InlineData("E53", Part2, "37-622", "folding", "SS", "19", Verdict.DoesNotFit)]
    [InlineData("E54", Iso5775, "40-622", "tubeless", "SS", "25", Verdict.DoesNotFit)]
    [InlineData("E54", Iso5775, "40-622", "tubeless", "TSS", "23", Verdict.Fits)]
    [InlineData("E55", Iso5775, "37-622", "wired", "HB", "19", Verdict.DoesNotFit)]
    [InlineData("E55", Iso5775, "37-622", "wired", "C", "19", Verdict.Fits)]
    [InlineData("E57", RimChart, "23-622", "folding", "TC", "24", Verdict.DoesNotFit)]
    [InlineData("E57", RimChart, "23-622", "folding", "C", "24", Verdict.DoesNotFit)]
    [InlineData("E57", RimChart, "23-622", "tubeless", "TSS", "24", Verdict.Unsafe)]
    public void A_width_goes_on_the_rim_as_published(string row, string source, string tyre, string bead, string type, string inner, Verdict expected) =>
        AssertFit(OnRim(tyre, bead, type, inner, source), "rear-tyre-width-on-rim", row, source, expected);

    [Theory]
    [InlineData("E39", Ratio, "62-622", "tubeless", "TC", "19", "wide-tyre")]
    [InlineData("E40", Ratio, "50-622", "wired", "C", "17", "wide-tyre")]
    [InlineData("E45", Divided, "29-622", "tubeless", "TSS", "25", "hookless")]
    [InlineData("E48", Divided, "28-622", "tubeless", "TSS", "23", "hookless")]
    public void A_fit_at_the_edge_carries_its_caution(string row, string source, string tyre, string bead, string type, string inner, string caution)
    {
        Fit fit = AssertFit(OnRim(tyre, bead, type, inner, source), "rear-tyre-width-on-rim", row, source, Verdict.Fits);

        Assert.Contains(fit.Cautions, c => c.Id == caution);
    }

    private static Build OnRim(string tyre, string bead, string type, string inner, string source) =>
        Build.From(Frame.Read("material steel"))
            .With(Wheel.Read($"rimType {Published.Key<RimType>(type, source)}; innerWidth {inner}; beadSeat 622"), Slot.RearWheel)
            .With(Tyre.Read($"size {tyre}; bead {Published.Key<TyreBead>(bead, source)}"), Slot.RearTyre);

    private static Fit AssertFit(Build build, string joint, string row, string source, Verdict expected)
    {
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == joint);
        Assert.True(expected == fit.Verdict, $"{row} ({source}): {expected} is published, judged: {fit}");
        return fit;
    }
}
