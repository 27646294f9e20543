using Lugwork.Hubs;
using Lugwork.Tyres;

namespace Lugwork.Tests.Tyres;

/// <summary>Codes and keys stand in other people's databases: a new row is added at the end of a list here, none is ever changed.</summary>
public sealed class WheelCodesTests
{
    [Fact]
    public void HubFamily_is_frozen() => Frozen<HubFamily>(
        "1 F070|2 F074|3 F9x|4 F100|5 F100N|6 F110B|7 F110-20|8 F110RB|9 F135fat|10 F142fat|11 F150fat|12 R110|13 R114|14 R116|15 R120",
        "16 R126|17 R129|18 R130|19 R135|20 Rtandem|21 R148|22 R150|23 R157W|24 R170|25 R190");

    [Fact]
    public void HubAttachment_is_frozen() => Frozen<HubAttachment>(
        "1 QR|2 nuts|3 bolts|4 thru-bolt|5 thru-axle|6 own");

    [Fact]
    public void RotorPlace_is_frozen() => Frozen<RotorPlace>(
        "1 none|2 front-100|3 front-boost|4 front-pre-boost|5 front-road-boost|6 fat-front-type|7 fat-rear-type|8 own|9 rear-135|10 rear-148",
        "11 rear-road-boost|12 rear-150|13 rear-offset");

    [Fact]
    public void HubAxleThread_is_frozen() => Frozen<HubAxleThread>(
        "1 M9x1|2 M10x1|3 5/16x24|4 5/16x26|5 3/8x24|6 3/8x26|7 M14x1");

    [Fact]
    public void HubShellThread_is_frozen() => Frozen<HubShellThread>(
        "1 FW-ISO|2 FW-BRIT|3 FW-ITAL|4 FW-FR|5 FW-BMX|6 FIX-COG|7 FIX-LOCK");

    [Fact]
    public void ValveHole_is_frozen() => Frozen<ValveHole>(
        "1 6.5|2 8.5");

    [Fact]
    public void ValveStem_is_frozen() => Frozen<ValveStem>(
        "1 presta|2 schrader|3 dunlop");

    [Fact]
    public void RimProfile_is_frozen() => Frozen<RimProfile>(
        "1 tubeless-2019|2 road-tubeless-2017");

    [Fact]
    public void WidthEdition_is_frozen() => Frozen<WidthEdition>(
        "1 before-2006|2 etrto-2006|3 etrto-2022|4 wheel-maker|5 tyre-maker|6 etrto-2023|7 iso-2023");

    [Fact]
    public void TyreLabel_is_frozen() => Frozen<TyreLabel>(
        "1 29 x decimal|2 29 x 2.0|3 28 x decimal|4 28 x 1.40|5 27.5 x decimal|6 26 x decimal|7 26 x 1.25 old|8 26 x 1.375|9 26 x 1.4",
        "10 26 x 1.50|11 26 x 1.75|12 26 x 1.85|13 26 x 1.95|14 26 x 2.00|15 26 x 2.125|16 26 x 2.2|17 26 x 2.3|18 26 x 2.35|19 26 x 2.8",
        "20 24 x decimal|21 24 x 1.75|22 22 x 1.75|23 22 x 2.125|24 20 x decimal|25 20 x 1.75|26 20 x 2.125|27 18 x 1.5|28 18 x decimal",
        "29 16 x 1.50|30 16 x 1.75|31 16 x 2.00|32 16 x 1.35|33 14 x 1.75|34 12 1/2 x 1.75|35 12 x 2.00|36 12 x 1.95|37 28 x 1 1/2",
        "38 28 x 1 1/2 F.13|39 28 x 1 5/8 x 1 3/8|40 28 x 1 3/8 x 1 5/8|41 28 x 1 5/8 x 1 1/8|42 28 x 1 1/4 x 1 5/8|43 28 x 1 3/4 x 1 1/4",
        "44 28 x 7/8|45 28 x 1|46 28 x 1 3/8|47 28 x 1 1/4|48 27 x any|49 27 x 1 1/4|50 27 x 1 3/8|51 26 x 1|52 26 x 1 3/4|53 26 x 1 1/2",
        "54 26 x 1 3/8 E.A.3|55 26 x 1 3/8 S-6|56 26 x 1 1/4|57 24 x 1 3/8 E.5|58 24 x 1 3/8 S-5|59 24 x 1 1/4|60 24 x 1 1/8|61 24 x 1",
        "62 20 x 1 1/8|63 20 x 1 1/4|64 20 x 1 3/8|65 20 x 1 3/4|66 18 x 1 3/8|67 18 x 1|68 17 x 1 1/4|69 16 x 1 3/8|70 16 x 1 1/4",
        "71 16 x 1 3/4|72 14 x 1 3/8|73 14 x 1 1/2|74 12 1/2 x 2 1/4|75 12 1/2 x 2 1/4 (300 x 55A)|76 12 1/2 x 1 3/8 x 1 1/4|77 12 x 1 1/4",
        "78 11 x 1 3/4|79 10 x 2|80 10 x 1 5/8|81 8 1/2 x 2|82 8 x 1 1/4|83 8 x 2|84 200 x 50|85 7 x 1 3/4|86 36 x 2 1/4|87 700|88 700A",
        "89 700 x 28A|90 700B|91 700 x 28B|92 700 x 38B|93 700C|94 700 x 18C|95 700 x 20C|96 700 x 23C|97 700 x 25C|98 700 x 28C",
        "99 700 x 32C|100 700 x 35C|101 700 x 38C|102 700 x 40C|103 700 x 42C|104 700 x 45C|105 700 x 47C|106 700 x 50C|107 700D|108 650A",
        "109 650 x 35A|110 650 x 38A|111 650B|112 650 x 38B|113 650 x 42B|114 650C|115 650 x 23C|116 650 x 20C|117 650 x 45C|118 650 x 45",
        "119 600A|120 600 x 38B|121 550A|122 500A|123 500 x 45|124 450A|125 400A|126 400 x 38B|127 350A|128 350 x 38B|129 350 x 35A",
        "130 330 x 65|131 320 x 57|132 300 x 32A|133 300 x 55A");

    [Fact]
    public void A_rim_size_keeps_its_code_and_key()
    {
        Assert.Equal(2_006_220_190L, RimSize.Parse("622x19C", null).FitCode);
        Assert.Equal(5_590_210L, RimSize.Parse("559x21", null).FitCode);
        Assert.Equal("559x30.5TSS", RimSize.OfFitCode(4_005_590_305L).FitKey);
        Assert.Equal([270L, 321, 372, 422], BeadedEdgeSeat.All.Select(s => s.FitCode));
        Assert.Equal("HB 270", BeadedEdgeSeat.Mm270.FitKey);
    }

    private static void Frozen<T>(params string[] lines)
        where T : Standard<T>, IInterfaceValue<T> =>
        Assert.Equal(string.Join('|', lines).Split('|').Order(StringComparer.Ordinal), T.All.Select(m => $"{m.FitCode} {m.FitKey}").Order(StringComparer.Ordinal));
}
