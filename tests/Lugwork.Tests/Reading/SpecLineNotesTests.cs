using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Larger figures as words, notes beside a size, named lengths, and bodies that are told by what they do.</summary>
public sealed class SpecLineNotesTests
{
    [Theory]
    [InlineData("frame", "rear end one thirty-five mm, quick release", "rear=R135-QR")]
    [InlineData("frame", "post size twenty-seven point two", "seatTube=27.2")]
    [InlineData("fork", "Federweg hundertzwanzig Millimeter", "travel=120")]
    [InlineData("frame", "écartement arrière cent trente-cinq mm, blocage rapide", "rear=R135-QR")]
    [InlineData("seatpost", "tija de treinta y uno coma seis", "diameter=31.6")]
    [InlineData("front rotor", "centottanta mm, sei fori", "fixing=six-bolt size=180")]
    [InlineData("rear tyre", "fifty-five by 584 mm", "size=55-584")]
    [InlineData("fork", "pivot droit, un pouce 1/8", "steererShape=straight-1-1/8")]
    public void A_larger_figure_may_be_written_as_words(string slot, string text, string values) => Assert.Equal(values, Told(slot, text));

    [Theory]
    [InlineData("rear wheel", "body is XDR, 1.85 mm longer than XD", "body=XDR")]
    [InlineData("frame", "pre-142 thru-axle: 12x135", "rear=R135-12")]
    [InlineData("frame", "seat tube bore 31.6, shim down to 27.2 included", "seatTube=31.6")]
    [InlineData("seatpost", "27.2 mm, sleeve for frames of 31.6", "diameter=27.2")]
    [InlineData("rider", "205 lb without kit", "mass=92.986 kg")]
    [InlineData("seatpost", "not for riders above 100 kg", "riderLimit=100 kg")]
    [InlineData("rear wheel", "body: [x] HG 11 road  [ ] XDR  [ ] N3W", "body=HG-L")]
    [InlineData("front derailleur", "Schellenmaß 28,6 mm, Zug von unten", "mount=band-28.6")]
    public void A_note_beside_a_size_changes_nothing(string slot, string text, string values) => Assert.Equal(values, Told(slot, text));

    [Theory]
    [InlineData("frame", "27.2 post, shim to 31.6")]
    [InlineData("frame", "seat tube bore 27.2, sleeve to 31.6")]
    [InlineData("seatpost", "31.6, sleeve for frames of 27.2")]
    [InlineData("rear wheel", "body: [ ] HG 11 road  [ ] XDR")]
    [InlineData("rear wheel", "XD (no)")]
    [InlineData("crankset", "chainline 52 mm")]
    public void A_note_that_can_change_the_size_leaves_it_in_doubt(string slot, string text) => Assert.Equal("", Told(slot, text));

    [Theory]
    [InlineData("frame", "chainstays 430 mm", "chainstay=430")]
    [InlineData("frame", "Steuerrohrlänge 140 mm", "headTubeLength=140")]
    [InlineData("crankset", "bielas, largo 165 mm", "crankLength=165")]
    [InlineData("crankset", "Q-Faktor 168 mm", "qFactor=168")]
    [InlineData("fork", "steerer left at 18.5 cm", "steererLength=185")]
    [InlineData("crankset", "off-road 1x, chainline 49 mm", "chainline=off-road-1x-49")]
    [InlineData("frame", "fits tyres up to 45 mm on 622 rims", "largestRearTyre=45-622")]
    public void A_named_length_is_read_where_the_line_says_nothing_else(string slot, string text, string values) => Assert.Equal(values, Told(slot, text));

    /// <summary>What a frame carries for its lines is read where it is named, in six languages; one bare word of it is not.</summary>
    [Theory]
    [InlineData("brazed-on cable stops", "cableGuides=stops")]
    [InlineData("guides for full-length housing", "cableGuides=full-length")]
    [InlineData("bosses for cable clips", "cableGuides=clips")]
    [InlineData("Zuganschläge am Unterrohr", "cableGuides=stops")]
    [InlineData("butées de gaine", "cableGuides=stops")]
    [InlineData("topes de funda", "cableGuides=stops")]
    [InlineData("fermaguaina", "cableGuides=stops")]
    [InlineData("kabelstops", "cableGuides=stops")]
    [InlineData("stops", "")]
    [InlineData("inside", "")]
    public void The_guides_of_a_frame_are_read_where_they_are_named(string text, string values) => Assert.Equal(values, Told("frame", text));

    [Theory]
    [InlineData("rear wheel", "Bahnnabe mit Konterringgewinde", "body=TRACK")]
    [InlineData("rear wheel", "hub is threaded for a screw-on freewheel", "body=FW-thread")]
    [InlineData("rear wheel", "36,75 mm langer HG-Freilaufkörper", "body=HG-L")]
    [InlineData("rear wheel", "buje BMX con driver de una pieza", "body=BMX-driver")]
    [InlineData("rear wheel", "kurzer Singlespeed-Freilaufkörper, nur ein Ritzel", "body=SS-short")]
    [InlineData("rear wheel", "8-spline freehub, 9- to 12-speed", "body=C9-12")]
    [InlineData("rear wheel", "HG freehub", "")]
    public void A_body_may_be_told_by_what_it_does(string slot, string text, string values) => Assert.Equal(values, Told(slot, text));

    private static string Told(string slot, string text) =>
        string.Join(" ", SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal));
}
