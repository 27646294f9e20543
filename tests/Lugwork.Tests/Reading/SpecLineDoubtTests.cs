using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>What takes the certainty out of a line, and what is only said of something else.</summary>
public sealed class SpecLineDoubtTests
{
    [Theory]
    [InlineData("frame", "rear maybe 12x148")]
    [InlineData("frame", "seatpost ca. 27,2 mm")]
    [InlineData("frame", "12x148 Boost, or similar")]
    [InlineData("frame", "tija 27,2 (a confirmar)")]
    [InlineData("frame", "rear 12x148 ?")]
    [InlineData("frame", "seatpost ~27.2")]
    public void A_hedge_makes_it_ambiguous(string slot, string text) => Unread(slot, text);

    [Theory]
    [InlineData("frame", "up to 12x148")]
    [InlineData("seatpost", "max 31.6")]
    [InlineData("chain", "max 9-speed")]
    [InlineData("rider", "under 80 kg")]
    public void A_limit_is_no_size(string slot, string text) => Unread(slot, text);

    [Theory]
    [InlineData("frame", "tyre 40-622")]
    [InlineData("frame", "Rear rotor: 180 mm")]
    [InlineData("frame", "Fork: 130 mm travel")]
    [InlineData("fork", "rotor 180 mm")]
    public void What_is_fitted_is_no_limit(string slot, string text) => Unread(slot, text);

    [Theory]
    [InlineData("frame", "UDH: no")]
    [InlineData("frame", "Hanger: UDH nein")]
    [InlineData("fork", "lips: no")]
    [InlineData("frame", "12x148, not Boost")]
    [InlineData("rear tyre", "37-622, not 37-559, 37-622 no")]
    [InlineData("rear shock", "205x65 no trunnion")]
    public void A_denial_of_what_is_said_makes_it_ambiguous(string slot, string text) => Unread(slot, text);

    [Theory]
    [InlineData("seatpost", "30.9 mm not 31.6", "diameter=30.9")]
    [InlineData("frame", "reggisella: non 31,6 ma 27,2", "seatTube=27.2")]
    [InlineData("frame", "kein UDH, Schaltauge M10x1", "hanger=M10x1")]
    [InlineData("frame", "ab 2021 12x148, vorher 12x142", "rear=R148-12")]
    [InlineData("rear tyre", "40-622, not 40-584 or 40-559", "size=40-622")]
    [InlineData("fork", "steerer straight, 1-1/8", "steererShape=straight-1-1/8")]
    [InlineData("fork", "straight blades, 1-1/8 steerer", "steerer=28.6")]
    [InlineData("front brake lever", "mineral oil only, no DOT", "fluid=mineral-oil")]
    [InlineData("frame", "Rear end 142 x 12, sold w/o axle", "rear=R142-12")]
    public void What_is_denied_is_taken_out(string slot, string text, string values) => Read(slot, text, values);

    [Theory]
    [InlineData("frame", "seatpost 27.2 with shim")]
    [InlineData("frame", "rear 12x142, convertible to 135 QR")]
    [InlineData("headset", "ZS44 to EC44 adapter")]
    [InlineData("handlebar", "31.8 clamp, shim to 25.4")]
    [InlineData("seatpost", "31.6 (reducer included)")]
    [InlineData("seatpost", "27.2 mm with shim to 30.9, 350 mm")]
    [InlineData("frame", "seat tube ID 27.2 / OD 31.8 with shim")]
    public void An_adapter_beside_a_size_makes_it_ambiguous(string slot, string text) => Unread(slot, text);

    [Theory]
    [InlineData("frame", "PM160, Adapter auf 180 liegt bei", "rearBrake=PM-160")]
    [InlineData("rear wheel", "HG 11-speed road freehub; XDR optional", "body=HG-L")]
    [InlineData("rear wheel", "XDR body (takes XD cassettes with a 1.85 mm spacer)", "body=XDR")]
    [InlineData("chain", "12-speed, for cassettes 10-51", "size=12")]
    [InlineData("rear tyre", "AV 37-622, AR 42-622", "size=42-622")]
    public void An_extra_another_part_and_the_other_end_are_taken_out(string slot, string text, string values) => Read(slot, text, values);

    [Theory]
    [InlineData("frame", "fork 15x110, PM 180")]
    [InlineData("frame", "Front brake: PM 180")]
    [InlineData("stem", "light mount for 31.8 bar")]
    [InlineData("rear tyre", "front tyre 37-622")]
    [InlineData("upper headset bearing", "lower 40x52x7 45/45")]
    public void A_line_of_another_part_gives_nothing(string slot, string text) => Unread(slot, text);

    [Theory]
    [InlineData("- | bell for handlebar 31.8")]
    [InlineData("- | chain tool 11-speed")]
    [InlineData("- | mudguard for rear tyre 37-622")]
    [InlineData("- | binnenband voor 28/47-622 presta 40 mm")]
    public void A_thing_that_is_no_part_gives_nothing(string line) => Assert.Empty(SpecLine.Read(null, line[4..]).Values);

    [Theory]
    [InlineData("frame", "rear 12x1 48")]
    [InlineData("frame", "seatpost 27 2")]
    [InlineData("frame", "seatpost 28.6.2019")]
    [InlineData("frame", "rear 12x148x2")]
    [InlineData("rear tyre", "art 37-622-01")]
    [InlineData("rear tyre", "29 x 2.25 (57-559)")]
    [InlineData("frame", "rear 12x148kg")]
    [InlineData("frame", "seatpost 27.2 \u20AC")]
    [InlineData("seatpost", "27\u00B2")]
    [InlineData("seatpost", "272 mm")]
    [InlineData("frame", "Einbaubreite 142 bis 148 mm Steckachse 12")]
    public void A_figure_that_is_not_accounted_for_makes_it_ambiguous(string slot, string text) => Unread(slot, text);

    [Theory]
    [InlineData("seatpost", "27.2 x 350, setback 20 mm, 230 g, 2019", "diameter=27.2 length=350")]
    [InlineData("rear tyre", "37-622, 67 tpi, 3.5-5 bar, 600 g", "size=37-622")]
    [InlineData("frame", "rear 12x142, front 12x100", "rear=R142-12")]
    [InlineData("rear rotor", "160 mm / 6.3 in, 6-bolt", "fixing=six-bolt size=160")]
    public void A_figure_without_an_interface_changes_nothing(string slot, string text, string values) => Read(slot, text, values);

    /// <summary>Units that go without saying may be said.</summary>
    [Theory]
    [InlineData("frame", "12x148", "12 mm x 148 mm")]
    [InlineData("seatpost", "27.2 x 350", "27.2 mm x 350 mm")]
    [InlineData("seatpost", "27.2 x 350", "2.72 cm x 35 cm")]
    [InlineData("frame", "BSA 73", "BSA 73mm")]
    [InlineData("frame", "seatpost 31.6", "seatpost 31.6 millimetres")]
    [InlineData("rear shock", "210x55", "210 mm x 55 mm")]
    [InlineData("front rotor", "180 six bolt", "18 cm six bolt")]
    [InlineData("seat clamp", "34.9", "34.9mm")]
    [InlineData("pedals", "9/16", "9/16 in")]
    [InlineData("fork", "steerer 1-1/8", "steerer 1-1/8 Zoll")]
    public void A_unit_never_changes_a_value(string slot, string bare, string withUnits)
    {
        string said = Told(slot, bare);
        Assert.NotEmpty(said);
        Assert.Equal(said, Told(slot, withUnits));
    }

    private static void Unread(string slot, string text) => Assert.Equal("", Told(slot, text));

    private static void Read(string slot, string text, string values) => Assert.Equal(values, Told(slot, text));

    private static string Told(string slot, string text) =>
        string.Join(" ", SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal));
}
