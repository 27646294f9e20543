using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines of a frame that look like ones that are read and say another thing, or nothing for certain.</summary>
public sealed class SpecLineRefusalFrameTests
{
    [Theory]
    [InlineData("dual crown forks forbidden")]
    [InlineData("Gabel Doppelbrücke untersagt")]
    [InlineData("Fourche double té interdite")]
    [InlineData("horquilla doble corona prohibida")]
    [InlineData("forcella doppia piastra vietata")]
    [InlineData("vork dubbele kroon verboden")]
    [InlineData("Rahmen: Doppelbrückengabel verboten")]
    [InlineData("Rahmen für Gabel Doppelbrücke verboten")]
    [InlineData("Frame: dual crown fork prohibited")]
    [InlineData("horquilla doble corona no permitida")]
    public void A_frame_that_forbids_two_crowns_allows_one(string text) =>
        Assert.Equal("forkCrowns=single", string.Join(' ', SpecLine.Read(Slot.Frame, text).Values.Select(v => $"{v.Field}={v.Key}")));

    [Theory]
    [InlineData("single crown fork not included")]
    [InlineData("dual crown fork not included")]
    [InlineData("Doppelbrückengabel nicht im Lieferumfang")]
    [InlineData("fourche double té non incluse")]
    [InlineData("forcella doppia piastra non inclusa")]
    [InlineData("horquilla de doble corona no incluida")]
    [InlineData("dubbele kroonvork niet inbegrepen")]
    [InlineData("dual crown fork sold separately")]
    public void A_fork_that_is_not_sold_with_it_says_nothing_of_crowns(string text) => Nothing(text);

    [Theory]
    [InlineData("hanger bolt not threaded in")]
    [InlineData("hanger thread stripped")]
    [InlineData("Schaltauge ohne Schraube")]
    [InlineData("no hanger included")]
    [InlineData("senza attacco cambio, attacco cambio M10x1")]
    [InlineData("26 tpi hanger 10 mm")]
    public void A_hanger_that_is_not_said_is_not_read(string text) => Nothing(text);

    [Theory]
    [InlineData("fork 160 mm")]
    [InlineData("fork max. 510 mm")]
    [InlineData("Gabel max. 180 mm Scheibe")]
    [InlineData("seatpost ≤ 31.6")]
    [InlineData("seat tube ≥ 27.2")]
    [InlineData("max rotor 7 in (203 mm)")]
    public void A_limit_of_another_thing_or_of_a_size_is_not_read(string text) => Nothing(text);

    [Theory]
    [InlineData("max load 120 kg")]
    [InlineData("charge maximale 120 kg")]
    [InlineData("carga máxima 120 kg")]
    [InlineData("carico massimo 120 kg")]
    [InlineData("maximale belasting 120 kg")]
    [InlineData("maximale Belastung 120 kg")]
    [InlineData("rider limit 300 lb")]
    public void A_load_of_which_it_is_not_said_whose_it_is_is_not_read(string text) => Nothing(text);

    [Theory]
    [InlineData("brake bolt 8 mm, nut outside")]
    [InlineData("brake bridge, recessed nut 1/4 in")]
    [InlineData("disc tabs 22 mm")]
    [InlineData("post mount 74 mm")]
    [InlineData("freno posteriore: IS2000 flat mount 140")]
    [InlineData("pattes verticales horizontales")]
    [InlineData("vertical or horizontal dropouts")]
    public void Two_kinds_or_a_size_of_no_kind_are_not_read(string text) => Nothing(text);

    [Theory]
    [InlineData("upper bearing IS42/IS52")]
    [InlineData("onderste lager ZS55/ZS56")]
    [InlineData("tapered head tube")]
    [InlineData("head tube reamed from 29.9 to 30.2")]
    [InlineData("head tube was reamed to 30.2")]
    [InlineData("reamed and faced head tube")]
    [InlineData("26 tpi 68 mm shell")]
    public void A_head_tube_or_a_shell_that_is_not_sure_is_not_read(string text) => Nothing(text);

    [Theory]
    [InlineData("bottle bosses: brazed-on")]
    [InlineData("binder: pinch bolt, brazed-on")]
    [InlineData("rack mounts, brazed on")]
    [InlineData("pump peg, brazed-on")]
    [InlineData("cantilever studs, brazed-on")]
    [InlineData("Schaltauge, Durchgangsloch für Schutzblech")]
    [InlineData("hanger, plain hole for a rack")]
    [InlineData("no hanger, hanger needed")]
    [InlineData("IS 51 mm, upper or lower")]
    [InlineData("Steuersatz IS 51 mm")]
    [InlineData("mid-size frame")]
    [InlineData("mid bmx 60")]
    [InlineData("spanner 15 mm")]
    [InlineData("Hinterbau 135, Spanner fehlt")]
    [InlineData("paso trasero 45 mm")]
    [InlineData("hueco trasero para rueda de 2.4")]
    [InlineData("crankset for PF92")]
    [InlineData("PF92 crankset")]
    [InlineData("PM for 203 rotor with adapter")]
    [InlineData("PM for price, 180 rotor fitted")]
    [InlineData("disc brake: 180 post mount adapter")]
    [InlineData("PM, 160 rotor smallest")]
    [InlineData("head tube 140 mm")]
    public void What_is_said_of_another_piece_or_only_half_said_is_not_read(string text) => Nothing(text);

    [Theory]
    [InlineData("filetage suisse ET français, 68")]
    [InlineData("rosca inglesa y francesa, 68")]
    [InlineData("Engelse en Franse draad, 68 mm")]
    [InlineData("filettatura inglese e francese, 68")]
    [InlineData("englisches und schweizer Gewinde 68 mm")]
    [InlineData("English thread, French too, 68")]
    [InlineData("27.2 - no seatpost")]
    public void Two_threads_or_a_label_that_is_denied_are_not_read(string text) => Nothing(text);

    [Theory]
    [InlineData("gravel/road frame, BSA 68")]
    [InlineData("not a track frame, BSA 68")]
    [InlineData("fits my old track frame, BSA 68")]
    [InlineData("track ends, BSA 68")]
    public void A_kind_that_is_not_sure_is_not_read(string text) => Assert.DoesNotContain(SpecLine.Read(Slot.Frame, text).Values, v => v.Field == "kind");

    private static void Nothing(string text) => Assert.Empty(SpecLine.Read(Slot.Frame, text).Values);
}
