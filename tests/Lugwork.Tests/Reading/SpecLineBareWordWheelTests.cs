using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines whose words also name something else: a rib, a cut-off piece, a bolt of any part. The field is left open.</summary>
public sealed class SpecLineBareWordWheelTests
{
    [Theory]
    [InlineData("Schaft 1 1/8, gekürzt um 140 mm")]
    [InlineData("steerer shortened 150 mm, 1-1/8")]
    [InlineData("coupé de 150 mm, pivot 1-1/8")]
    [InlineData("cortado 150 mm, dirección 1-1/8")]
    [InlineData("steerer 1-1/8 cut for 180 mm head tube")]
    [InlineData("cut to fit a 150 mm head tube, 1-1/8")]
    [InlineData("Steerer 1 1/8, can be cut to 175 mm")]
    [InlineData("Schaft 1 1/8, muss auf 175 mm gekürzt werden")]
    [InlineData("Steerer 1 1/8; hose cut to 175 mm")]
    public void What_was_cut_off_is_not_what_is_left(string text) => Without("fork", text, "steererLength");

    [Theory]
    [InlineData("steerer 25 mm shorter, french bike")]
    [InlineData("French fork, steerer 25 mm above the crown")]
    [InlineData("100x15, steerer 23.8 mm internal")]
    public void A_length_along_a_steerer_is_no_diameter(string text) => Without("fork", text, "steerer");

    [Theory]
    [InlineData("alette di raffreddamento pastiglie")]
    [InlineData("topes de dirección")]
    [InlineData("ergots, garde-boue")]
    [InlineData("lipjes van de afdichting")]
    [InlineData("safety tabs on the hub washers")]
    [InlineData("senza denti, senza graffi")]
    [InlineData("sin topes de goma")]
    public void A_rib_or_a_stop_is_no_lip(string text) => Without("fork", text, "frontLips");

    [Theory]
    [InlineData("not convertible to tubeless", "ends")]
    [InlineData("no convertible a tubeless, 100x15", "ends")]
    [InlineData("nicht umrüstbar auf Tubeless, 100x15", "ends")]
    [InlineData("ends fixed with locknuts", "ends")]
    [InlineData("SS rim eyelets", "rimType")]
    [InlineData("rim type SS (stainless spokes)", "rimType")]
    [InlineData("gerade Flanken, Felge 622x19", "rimType")]
    [InlineData("flancs droits et blancs, 622x17", "rimType")]
    [InlineData("braking surface is carbon free", "brakeTrack")]
    [InlineData("disc brake, 4 spokes broken, 5 bolts", "rotorFixing")]
    [InlineData("Rotor 160, rim height 40, 5 bolts", "rotorFixing")]
    [InlineData("hole for presta drilled out to schrader", "valveHole")]
    [InlineData("1.37x24 british made freewheel", "thread")]
    [InlineData("fixed cog 1.37 x 24 english thread", "thread")]
    [InlineData("1.37 x 24 thread, engelse draad, doortrap", "thread")]
    public void A_word_of_another_part_says_nothing_of_a_wheel(string text, string field) => Without("front wheel", text, field);

    [Theory]
    [InlineData("180 mm, 5 Schrauben")]
    [InlineData("160, 4 bolts to be bought")]
    [InlineData("180, 4 agujeros de ventilación")]
    [InlineData("160 mm disc, 4 holes per arm")]
    [InlineData("4-Loch Design, 160 mm")]
    public void A_count_of_screws_is_no_pattern(string text) => Without("front rotor", text, "fixing");

    [Theory]
    [InlineData("front tyre", "mit Kevlareinlage gegen Pannen, 37-622", "bead")]
    [InlineData("front tyre", "Aramideinlage unter der Lauffläche, 28-622", "bead")]
    [InlineData("front tyre", "glue on patches, folding", "hold")]
    [InlineData("front tyre", "Reifen zum Kleben der Flicken", "hold")]
    [InlineData("rear tyre", "Reflexstreifen zum Aufkleben, 28-622", "hold")]
    [InlineData("rear tyre", "28-622, pegatinas para pegar", "hold")]
    [InlineData("front tyre", "25-622 nicht zum Kleben", "hold")]
    [InlineData("rear tyre", "20 inch folder tyre 47-406", "bead")]
    [InlineData("rear rim brake", "V-Brake, nicht carbongeeignet", "pads")]
    [InlineData("front inner tube", "28/47-622, Presta, 48 g", "valveLength")]
    [InlineData("front inner tube", "28/47-622, Presta, 60 psi", "valveLength")]
    [InlineData("rear wheel", "29\" or 27.5\" rim, inner width 30", "beadSeat")]
    [InlineData("rear wheel", "28\" rim, inner width 19", "beadSeat")]
    [InlineData("rear wheel", "not 29 inch, inner width 30", "beadSeat")]
    [InlineData("rear wheel", "650B, 28 holes in the disc", "rimHoles")]
    [InlineData("rear wheel", "Felge 622, 25C", "rimType")]
    [InlineData("rear wheel", "max 110 kg without rider and bags", "loadLimit")]
    [InlineData("rear rotor", "160 mm, st 1.8 mm min", "thickness")]
    [InlineData("front tubeless valve", "American design, 44 mm", "valve")]
    [InlineData("front tubeless valve", "français, notice en", "valve")]
    [InlineData("front tubeless valve", "fits french and american rims", "valve")]
    [InlineData("front inner tube", "stem 31.8 mm, presta", "valveLength")]
    public void A_layer_a_glue_and_a_country_are_no_kind(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("front rim brake", "jantes carbone déconseillées", "pads")]
    [InlineData("front rim brake", "jante carbone possible avec patins spéciaux", "pads")]
    [InlineData("front rim brake", "barrel nut of the cable clamp, M6", "bolt")]
    [InlineData("front rim brake", "hex nut outside for the cable anchor", "bolt")]
    [InlineData("front rim brake", "tirage direct, mais étrier", "type=direct-pull")]
    [InlineData("fork", "brake hole: nut outside, axle 1/4 in thread", "frontBrakeHole=nutted-1/4")]
    [InlineData("front brake caliper", "half hydraulic oil left", "type=disc-cable-hydraulic")]
    [InlineData("front brake caliper", "disque hybride (acier/alu)", "type=disc-cable-hydraulic")]
    public void A_word_of_another_part_says_nothing_of_a_brake(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("half hydraulic, PM 160")]
    [InlineData("frein hybride hydraulique")]
    [InlineData("hybrid disc, hydraulic")]
    public void Half_hydraulic_is_not_full(string text) => Without("front brake caliper", text, "type");

    private static void Without(string slot, string text, string field) =>
        Assert.DoesNotContain(Told(slot, text), v => v.StartsWith(field.Contains('=', StringComparison.Ordinal) ? field : field + "=", StringComparison.Ordinal));

    private static string[] Told(string slot, string text) =>
        [.. SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)];
}
