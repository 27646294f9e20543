namespace Lugwork.PublishedTables;

/// <summary>Tyres on rims, each case typed from the source beside it.</summary>
public sealed class TyreChecks
{
    [Theory]
    [InlineData("Groessenbezeichnung (size designation); Schwalbe", "622", "37-622", Verdict.Fits)]
    [InlineData("Tire Sizing Systems; sheldonbrown.com (28 x 1 1/2 is 635)", "622", "40-635", Verdict.DoesNotFit)]
    [InlineData("A guide to cycle tyre sizes; Cycling UK", "630", "32-622", Verdict.DoesNotFit)]
    [InlineData("A guide to cycle tyre sizes; Cycling UK", "622", "25-630", Verdict.DoesNotFit)]
    [InlineData("Schwinn tire sizes; The Classic and Antique Bicycle Exchange", "571", "44-559", Verdict.DoesNotFit)]
    [InlineData("A guide to cycle tyre sizes; Cycling UK", "584", "40-559", Verdict.DoesNotFit)]
    [InlineData("Groessenbezeichnung (size designation); Schwalbe", "559", "57-584", Verdict.DoesNotFit)]
    [InlineData("Quelle taille pour mes pneus velo; lecyclo.com (650B on 650C)", "571", "40-584", Verdict.DoesNotFit)]
    [InlineData("Quelle taille pour mes pneus velo; lecyclo.com (700D on 650B)", "584", "37-587", Verdict.DoesNotFit)]
    [InlineData("700A / 700B / 700 rim diameters; Classic Rendezvous list archive; 2010", "622", "37-642", Verdict.DoesNotFit)]
    [InlineData("Tyre and Wheel Sizes; Bikefix (540 and 541 interchange)", "540", "37-541", Verdict.Fits)]
    [InlineData("Tire Sizing Systems; sheldonbrown.com (24 x 1 3/8 against 24 x 1.75)", "540", "44-507", Verdict.DoesNotFit)]
    [InlineData("ETRTO (ISO 5775), workshop wiki table; L'Atelier du velo (27.5 in is 650B)", "584", "57-584", Verdict.Fits)]
    public void A_bead_seat_is_judged_as_published(string source, string rim, string tyre, Verdict expected)
    {
        Assert.NotEmpty(source);
        Assert.Equal(expected, Case.Judge("rear-tyre-bead-on-rim", "material steel", (Slot.RearWheel, Wheel.Read($"beadSeat {rim}")), (Slot.RearTyre, Tyre.Read(tyre))).Verdict);
    }

    [Theory]
    [InlineData("Norme ETRTO 2022; distributor support page of a wheel maker", "TC", "25", "62-622", "tubeless", Verdict.Fits, "")]
    [InlineData("Zulaessige Kombinationen von Reifen und Felgen nach ETRTO, Stand 2006; de.rec.fahrrad wiki", "C", "25", "62-622", "wired", Verdict.Fits, "")]
    [InlineData("Norme ETRTO 2022; distributor support page of a wheel maker", "TC", "17", "62-622", "tubeless", Verdict.DoesNotFit, "2022")]
    [InlineData("Stand 2006; de.rec.fahrrad wiki", "C", "17", "62-622", "wired", Verdict.DoesNotFit, "2006")]
    [InlineData("Norme ETRTO 2022; at the limit of 63", "TC", "19", "62-622", "tubeless", Verdict.Fits, "more than twice as wide")]
    [InlineData("Stand 2006; at the limit", "C", "17", "50-622", "wired", Verdict.Fits, "more than twice as wide")]
    [InlineData("Stand 2006; 19C starts at 28", "C", "19", "25-622", "wired", Verdict.DoesNotFit, "2006")]
    [InlineData("Norme ETRTO 2022; 22 to 63", "TC", "19", "25-622", "folding", Verdict.Fits, "")]
    [InlineData("Norme ETRTO 2022; 25 to 65", "TC", "21", "28-622", "folding", Verdict.Fits, "")]
    [InlineData("Stand 2006; 21C starts at 35", "C", "21", "28-622", "wired", Verdict.DoesNotFit, "2006")]
    [InlineData("Hookless rims and ISO mid-2023; road.cc; 2024", "TSS", "25", "28-622", "tubeless", Verdict.Unsafe, "at least 29 mm")]
    [InlineData("Tire compatibility statement; a hub and wheel maker; 2023", "TSS", "25", "29-622", "tubeless", Verdict.Fits, "maker's minimum width")]
    [InlineData("Tire compatibility statement; a hub and wheel maker; 2023", "TSS", "25", "25-622", "tubeless", Verdict.Unsafe, "blow off")]
    [InlineData("Industry divided over new tyre rim-size regulations; Cycling Weekly; 2023", "TSS", "23", "25-622", "tubeless", Verdict.Unsafe, "")]
    [InlineData("Industry divided over new tyre rim-size regulations; Cycling Weekly; 2023 (5 mm gap)", "TSS", "23", "28-622", "tubeless", Verdict.Fits, "Hookless")]
    [InlineData("Tire compatibility statement; a hub and wheel maker; 2023", "TSS", "21", "32-622", "folding", Verdict.Unsafe, "tubeless-ready")]
    [InlineData("BS ISO 5775-2:2015 scope and clause extract", "SS", "20", "37-622", "folding", Verdict.DoesNotFit, "rigid wired")]
    [InlineData("BS ISO 5775-2:2015 scope and clause extract", "HB", "20", "37-622", "wired", Verdict.DoesNotFit, "beaded-edge")]
    [InlineData("Recommended tire size chart; a rim maker; c. 2014", "TC", "24", "23-622", "folding", Verdict.DoesNotFit, "")]
    [InlineData("Techniktips: Reifen und Felgen; tandem-fahren.de (13C: 18 to 25)", "C", "13", "25-622", "wired", Verdict.Fits, "")]
    [InlineData("Techniktips: Reifen und Felgen; tandem-fahren.de (13C: 18 to 25)", "C", "13", "28-622", "wired", Verdict.DoesNotFit, "")]
    [InlineData("Techniktips: Reifen und Felgen; tandem-fahren.de (15C: 23 to 32)", "C", "15", "20-622", "wired", Verdict.DoesNotFit, "")]
    [InlineData("Techniktips: Reifen und Felgen; tandem-fahren.de (15C: 23 to 32)", "C", "15", "32-622", "wired", Verdict.Fits, "")]
    public void A_tyre_width_is_judged_as_published(string source, string type, string inner, string tyre, string bead, Verdict expected, string says)
    {
        Assert.NotEmpty(source);
        Case.Expect(expected, says, Case.Judge("rear-tyre-width-on-rim", "material steel", (Slot.RearWheel, Wheel.Read($"rimType {type}; innerWidth {inner}")), (Slot.RearTyre, Tyre.Read($"size {tyre}; bead {bead}"))));
    }

    /// <summary>ETRTO (ISO 5775), workshop wiki table; L'Atelier du velo: labels and ISO widths.</summary>
    [Theory]
    [InlineData("700 x 23C", "23-622")]
    [InlineData("700x35c", "35-622 37-622")]
    [InlineData("700 × 28C", "28-622 30-622")]
    [InlineData("622 x 37", "37-622")]
    public void A_label_is_read_as_the_sizes_that_carry_it(string label, string sizes) =>
        Assert.Equal(sizes, string.Join(' ', Lugwork.Tyres.TyreSize.Read(label).Values));
}
