using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines that name a value and do not say that the part has it: a field of such a line is left open, or the line is ambiguous.</summary>
public sealed class SpecLineRefusalTests
{
    [Theory]
    [InlineData("dual crown forks forbidden")]
    [InlineData("Gabel Doppelbrücke untersagt")]
    [InlineData("Fourche double té interdite")]
    [InlineData("Fourche double té exclue")]
    [InlineData("horquilla doble corona prohibida")]
    [InlineData("forcella doppia piastra vietata")]
    [InlineData("vork dubbele kroon verboden")]
    [InlineData("Fork: dual crown at own risk")]
    [InlineData("Rahmen: Doppelbrückengabel verboten")]
    [InlineData("Rahmen für Gabel Doppelbrücke verboten")]
    [InlineData("Frame: dual crown fork prohibited")]
    [InlineData("Frame for fork: dual crown voids warranty")]
    [InlineData("Bike came with dual crown fork")]
    [InlineData("Fork single crown max, dual crown breaks frame")]
    [InlineData("Fork in picture: dual crown")]
    [InlineData("Gabel Doppelbrücke auf eigene Gefahr")]
    [InlineData("Fourche double té déconseillée")]
    [InlineData("horquilla doble corona no permitida")]
    [InlineData("forcella doppia piastra: decade la garanzia")]
    [InlineData("vork dubbele kroon: garantie vervalt")]
    public void A_fork_that_is_forbidden_is_not_allowed(string text) => Without("frame", text, "forkCrowns");

    [Theory]
    [InlineData("rear wheel", "12x148, XD forbidden", "body")]
    [InlineData("frame", "Rear 12x148 prohibited", "rear")]
    [InlineData("front rotor", "180 untersagt", "size")]
    [InlineData("frame", "seatpost 27.2 interdite", "seatTube")]
    public void What_is_forbidden_is_doubtful_in_every_field(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("seat tube measured with 27.2 post: loose")]
    [InlineData("Seat tube: 27.2 post measured, does not slide in")]
    [InlineData("Seat tube, measured: post 27.2 too thin")]
    [InlineData("Sitzrohr gemessen mit 26.8er Stütze: zu locker")]
    [InlineData("tube de selle mesuré 26,8 avec tige qui flotte")]
    [InlineData("zadelbuis gemeten met pen 27.2: los")]
    [InlineData("tubo sillín medido con tija 27,2: baila")]
    [InlineData("tubo sella misurato con reggisella 27,2: balla")]
    [InlineData("Seat tube measured over 27.2")]
    [InlineData("seat tube 27.2 measured inside shim")]
    public void A_post_that_was_tried_is_no_bore(string text) => Without("frame", text, "seatTube");

    [Theory]
    [InlineData("Seat tube 31.8 buiten gebruik")]
    [InlineData("Seat tube 31.8 out of use")]
    public void A_tube_out_of_use_has_no_size(string text) => Assert.Empty(Told("frame", text));

    [Theory]
    [InlineData("head tube 1.5, steerer 1 1/8")]
    [InlineData("headtube 1.5 straight steerer 1 1/8")]
    [InlineData("Head tube 1.5, fork 1 1/8")]
    [InlineData("Steuerrohr 1.5, Gabelschaft 1 1/8")]
    [InlineData("Tube de direction 1.5, pivot 1 1/8")]
    [InlineData("tubo de dirección 1.5, tubo de horquilla 1 1/8")]
    [InlineData("tubo sterzo 1.5, cannotto 1 1/8")]
    [InlineData("balhoofdbuis 1.5, vorkbuis 1 1/8")]
    [InlineData("for 1.5 head tube, steerer 1 1/8")]
    [InlineData("Fork 1 1/8, fits 1.5 head tube with reducer")]
    public void A_head_tube_is_no_end_of_a_taper(string text)
    {
        string[] told = Told("fork", text);
        Assert.DoesNotContain(told, v => v.StartsWith("steererShape=tapered", StringComparison.Ordinal) || v is "steerer=38.1");
    }

    [Theory]
    [InlineData("Sattelstütze 27.2, kostet 300")]
    [InlineData("27.2 seatpost, RRP 300")]
    [InlineData("27.2 seatpost, paid 400")]
    [InlineData("27.2 seatpost, asking 300")]
    [InlineData("27.2 seatpost, 300 posted")]
    [InlineData("Tige de selle 27.2, coûte 300")]
    [InlineData("Zadelpen 27.2, kost 300")]
    [InlineData("27.2 Stütze, VB 250")]
    [InlineData("27.2 Stütze, NP 300")]
    [InlineData("Seatpost 31.6 HUF 400")]
    [InlineData("Seatpost 30.9 shorter than 350")]
    [InlineData("Seatpost 30.9 longer than 350")]
    [InlineData("Sattelstütze 27.2, kürzer als 350")]
    [InlineData("Seatpost 27.2 (item 350)")]
    [InlineData("Seatpost 27.2 code 350")]
    [InlineData("Seatpost 27.2 lot 300")]
    [InlineData("Seatpost 27.2 #350")]
    [InlineData("27.2 no. 350")]
    [InlineData("Reggisella 27.2 taglia telaio 260")]
    [InlineData("27.2 post / 400 reviews")]
    [InlineData("Seatpost 27.2 (frame takes 300 max)")]
    [InlineData("Zadelpen 27.2 van 400 naar 300")]
    [InlineData("27.2 - 350 out of stock - 300")]
    [InlineData("31,6er | 350 | 400 lieferbar")]
    [InlineData("Seatpost 31.6, cut from 400")]
    [InlineData("Seatpost 27.2, for 300 or so")]
    public void A_price_or_a_number_is_no_length_of_a_post(string text) => Without("seatpost", text, "length");

    [Theory]
    [InlineData("27.2 | 350", "diameter=27.2 length=350")]
    [InlineData("27.2 x 350", "diameter=27.2 length=350")]
    [InlineData("Seatpost 31.6, 300", "diameter=31.6 length=300")]
    [InlineData("27.2-350", "diameter=27.2 length=350")]
    public void Two_bare_figures_are_diameter_and_length(string text, string values) =>
        Assert.Equal(values, string.Join(" ", Told("seatpost", text)));

    [Theory]
    [InlineData("ZS44 (28.6) lower, EC44 (40) upper")]
    [InlineData("ZS44 (40) upper")]
    [InlineData("ZS44 (30) upper only")]
    [InlineData("ZS44/40 upper")]
    [InlineData("ZS44-30 upper")]
    [InlineData("upper EC44/40, lower ZS44/28.6")]
    [InlineData("oben EC44 40, unten ZS44 28.6")]
    [InlineData("IS41 30 upper")]
    public void A_cup_of_which_half_and_size_do_not_agree_gives_nothing(string text) => Assert.Empty(Told("headset", text));

    [Theory]
    [InlineData("cable stops removed")]
    [InlineData("cable stops missing")]
    [InlineData("cable stops ground off")]
    [InlineData("cable stops not brazed on")]
    [InlineData("Zuganschläge entfernt")]
    [InlineData("butées de gaine absentes")]
    [InlineData("topes de cable eliminados")]
    [InlineData("fermaguaina assenti")]
    [InlineData("kabelstops verwijderd")]
    [InlineData("cable stops for front derailleur only")]
    [InlineData("braze-on cable stops, front derailleur only")]
    [InlineData("no cable stops")]
    public void Guides_that_are_gone_are_none(string text) => Without("frame", text, "cableGuides");

    [Theory]
    [InlineData("Rotor << 180")]
    [InlineData("Rotor <<180")]
    [InlineData("Rotor >>160")]
    [InlineData("Rotor >> 160")]
    [InlineData("Rotor ~~160")]
    [InlineData("Rotor ~160")]
    public void A_sign_of_comparison_said_twice_still_compares(string text) => Without("front rotor", text, "size");

    [Theory]
    [InlineData("crankset", "Interasse 130 mm pedali", "boltCircle")]
    [InlineData("crankset", "entraxe pédales 150 mm", "boltCircle")]
    [InlineData("crankset", "Entraxe des manivelles 144", "boltCircle")]
    [InlineData("crankset", "chainring 46/30 not included", "largestRing")]
    [InlineData("crankset", "Crank 46T removed", "largestRing")]
    [InlineData("stem", "Potencia de rosca 22.2 no incluida", "fixing")]
    [InlineData("frame", "Sitzstrebe teilbar nachrüstbar", "rearTriangle")]
    [InlineData("frame", "split seat stay welded shut", "rearTriangle")]
    [InlineData("fork", "Gabelschaft 200 mm, ungekürzt 300", "steererLength")]
    [InlineData("fork", "Steerer 200 mm, uncut 300", "steererLength")]
    public void What_the_part_has_no_longer_or_not_yet_is_no_value(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("handlebar", "22.2mm (grip diameter)", "clamp")]
    [InlineData("handlebar", "22,2 mm (Griffe)", "clamp")]
    [InlineData("handlebar", "handvatdiameter 22.2", "clamp")]
    [InlineData("frame", "collier 34,9 mm (FD mount)", "seatTubeOutside")]
    [InlineData("frame", "front mech - clamp 31.8", "seatTubeOutside")]
    [InlineData("frame", "deragliatore anteriore (clamp 31.8)", "seatTubeOutside")]
    [InlineData("frame", "IS disc and max fork travel 150 mm", "largestRearRotor")]
    [InlineData("crankset", "corone (34/50)", "largestRing=34")]
    [InlineData("fork", "1 1/8 > 1 1/2 \u00A325 ono", "steerer")]
    public void A_figure_is_of_the_name_beside_it_and_of_no_other(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("frame", "27.2 (not the seatpost)")]
    [InlineData("frame", "31.6 (seatpost was replaced)")]
    [InlineData("frame", "31.6 (seatpost or dropper)")]
    [InlineData("frame", "seatpost (27.2 or 31.6)")]
    [InlineData("frame", "seatpost - 27.2 / 31.6")]
    [InlineData("frame", "31.8 mm (handlebar)")]
    [InlineData("frame", "100 mm (front hub)")]
    [InlineData("frame", "180 mm (steerer)")]
    [InlineData("frame", "rear brake - 160 or 180")]
    [InlineData("fork", "180 mm (rear rotor)")]
    [InlineData("fork", "12x142 (rear wheel)")]
    [InlineData("stem", "25.4 (clamp)")]
    public void A_bracket_or_a_dash_makes_nothing_sure(string slot, string text) => Assert.Empty(Told(slot, text));

    [Theory]
    [InlineData("rear tyre", "25-622 / 700x28C")]
    [InlineData("rear tyre", "25-622 / 28-622")]
    [InlineData("crankset", "BCD 104/64")]
    [InlineData("crankset", "52/3")]
    [InlineData("rear wheel", "for 12x142 or 12x148 frames")]
    [InlineData("rear wheel", "not for 12x142 frames")]
    [InlineData("rear wheel", "for 15x110 forks")]
    [InlineData("rear axle nuts", "3/8-26 or 5/16-26")]
    [InlineData("stem", "shaft 25.4")]
    [InlineData("chainring", "chain 11-speed")]
    [InlineData("frame", "canti bosses for 700C or 650B")]
    [InlineData("frame", "canti bosses, 700x32C tyres")]
    [InlineData("frame", "approx. 27.2 mm seatpost")]
    [InlineData("frame", "ca. 250 g, seatpost ca. 27.2")]
    public void What_a_short_way_of_writing_leaves_open_stays_open(string slot, string text) => Assert.Empty(Told(slot, text));

    [Theory]
    [InlineData("pédalier carré JIS")]
    [InlineData("pédalier carré JIS, pédales 9/16\"")]
    [InlineData("pédalier carré ISO, chaîne 11 vitesses")]
    [InlineData("pédalier triple carré JIS")]
    [InlineData("pédalier 24 mm route")]
    [InlineData("pédalier axe 30 mm")]
    [InlineData("pédalier carré JIS, entraxe 110")]
    public void The_French_pedalier_is_the_cranks_or_what_they_turn_in(string text) => Assert.Empty(SpecLine.Read(null, text).Values);

    [Theory]
    [InlineData("frame", "no derailleur hanger included", "hanger")]
    [InlineData("frame", "without derailleur hanger bolt", "hanger")]
    [InlineData("frame", "spare derailleur hanger not included", "hanger")]
    [InlineData("frame", "24 tpi shell, 71 mm", "shell")]
    [InlineData("frame", "steerer 26 tpi, shell 71", "shell")]
    [InlineData("frame", "seat tube (27.2) → 30.9", "seatTube")]
    [InlineData("frame", "ST 27.2", "seatTube")]
    [InlineData("frame", "ISCG 05 tabs, 34T max, cassette", "largestRing")]
    [InlineData("frame", "ISCG05, 36T max rear", "largestRing")]
    [InlineData("frame", "ISCG05, 32T min", "largestRing")]
    [InlineData("frame", "ISCG05, Ritzel max 51T", "largestRing")]
    [InlineData("frame", "dadi 3/8\"", "rear")]
    [InlineData("headset", "EC34 upper", "lowerCup")]
    [InlineData("headset", "1\" thread or threadless", "kind")]
    [InlineData("headset", "Gewinde M6", "kind")]
    [InlineData("rear wheel", "flip flop hub, track 1.37x24 lockring", "thread")]
    [InlineData("rear wheel", "cassette lockring, thread 1.37x24", "thread")]
    [InlineData("rear wheel", "track 1.37x24 with lockring, other side freewheel", "thread")]
    [InlineData("crankset", "axle 110 x 5", "boltCircle")]
    [InlineData("crankset", "direct, 8 bolts included", "directMount")]
    [InlineData("fork", "axle 25 mm, crown race 26.5", "steerer")]
    [InlineData("rear brake caliper", "mech disc", "type")]
    public void A_neighbour_of_what_is_read_is_not_read(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("seatpost 27.2 or seat clamp 31.8")]
    [InlineData("seatpost 27.2 and maybe seat clamp 31.8")]
    [InlineData("seatpost 27.2 and seatpost 31.6")]
    [InlineData("seatpost 27.2 and 31.6")]
    [InlineData("seatpost and seat clamp 31.8")]
    [InlineData("fork and frame 12x148")]
    public void A_word_that_joins_parts_gives_none_the_figure_of_another(string text) => Assert.Empty(SpecLine.Read(null, text).Values);

    private static void Without(string slot, string text, string field) =>
        Assert.DoesNotContain(Told(slot, text), v => v.StartsWith(field.Contains('=', StringComparison.Ordinal) ? field : field + "=", StringComparison.Ordinal));

    private static string[] Told(string slot, string text) =>
        [.. SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)];
}
