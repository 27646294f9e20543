using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Neighbours of what front ends, wheels and brakes are read by, which say less or something else: no value is accepted.</summary>
public sealed class SpecLineRefusalFrontTests
{
    [Theory]
    [InlineData("front tyre", "rim 622x25")]
    [InlineData("front tyre", "Felge 622x19")]
    [InlineData("rear tyre", "jante 584x30")]
    [InlineData("rear tyre", "llanta 622x21")]
    [InlineData("front tyre", "cerchio 559x19")]
    [InlineData("front tyre", "velg 622x23")]
    [InlineData("front tyre", "rim 622x25, internal")]
    [InlineData("front tubeless valve", "stem 31.8 mm")]
    [InlineData("front tubeless valve", "stem 35 mm")]
    [InlineData("rear tubeless valve", "stem 28.6")]
    [InlineData("front inner tube", "stem 31.8 mm")]
    [InlineData("rear inner tube", "26\", stem 25.4 mm")]
    public void A_rim_is_no_tyre_and_a_clamp_no_valve(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);

    [Theory]
    [InlineData("stem", "Ø 22,2 mm")]
    [InlineData("handlebar", "Ø 23,8")]
    [InlineData("handlebar", "22.2 mm")]
    [InlineData("handlebar", "Ø22,2")]
    [InlineData("stem", "quill 22 mm")]
    [InlineData("stem", "potence à plongeur 22 mm")]
    [InlineData("stem", "attacco a cannotto 22")]
    [InlineData("stem", "31.8, 40 mm")]
    [InlineData("handlebar", "31.8 ook 35")]
    public void A_figure_of_several_places_is_of_none(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);

    [Theory]
    [InlineData("headset", "con rosca, sin rosca")]
    [InlineData("headset", "con filetto / senza filetto")]
    [InlineData("headset", "threaded, not threadless? unknown")]
    [InlineData("frame", "157 x 12, keine Ahnung ob DH")]
    [InlineData("frame", "rear 12x157, no idea if it is DH")]
    [InlineData("frame", "arrière 157x12, je ne sais pas si DH")]
    [InlineData("fork", "no lawyer lips, lips kept")]
    [InlineData("fork", "lips filed? not sure")]
    [InlineData("fork", "steerer 25 mm")]
    [InlineData("fork", "brake tabs 22 mm wide")]
    [InlineData("fork", "Tretlager 68 mm, Posts auseinander")]
    [InlineData("fork", "posts 74 mm apart")]
    [InlineData("fork", "conico 31,8 / 28,6")]
    [InlineData("fork", "flat mount, 140/180")]
    [InlineData("fork", "tasseaux cantilever ou U-brake")]
    [InlineData("fork", "pivot 210 ou 220 mm")]
    [InlineData("fork", "spacers 40 mm")]
    [InlineData("fork", "min. 10 mm spacers")]
    [InlineData("headset", "réducteur 28,6 / 25,4")]
    [InlineData("headset", "ZS44 to EC44 adapter")]
    [InlineData("frame", "fork max 120 or 140 mm")]
    [InlineData("frame", "alter französischer Rahmen, Tretlager 68 mm")]
    [InlineData("frame", "vieux cadre français boîtier 68 mm")]
    [InlineData("frame", "Frans frame, trapas 68 mm")]
    [InlineData("frame", "telaio svizzero, scatola 68 mm")]
    [InlineData("frame", "fork 100 mm max tyre 50")]
    [InlineData("frame", "disc brake, bottle bosses 68 mm apart")]
    [InlineData("frame", "9 mm skewer, 130 wide, right?")]
    [InlineData("fork", "titanium or steel steerer")]
    public void What_a_front_end_leaves_open_stays_open(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);

    [Theory]
    [InlineData("front brake lever", "Hebel für V-Brake und Cantilever")]
    [InlineData("front brake lever", "lever for V-brakes or cantis")]
    [InlineData("rear brake lever", "levier commutable V-brake / cantilever")]
    [InlineData("front rim brake", "Zangenbremse mit langen Schenkeln")]
    [InlineData("front rim brake", "caliper, long reach, no mm given")]
    [InlineData("rear rim brake", "reach 47-57 or 57-73")]
    [InlineData("front rim brake", "1/4\" bolt")]
    [InlineData("front rim brake", "bolt 8 mm, nut outside, recessed")]
    [InlineData("rear wheel", "carbon rim, alloy brake track or carbon")]
    [InlineData("rear wheel", "brake track: no carbon")]
    [InlineData("rear wheel", "1.370 x 24")]
    [InlineData("rear wheel", "English thread 1.370x24, track")]
    [InlineData("front rotor", "4 or 5 bolts")]
    [InlineData("front thru-axle", "12 mm axle, pitch 1.0 or 1.5")]
    [InlineData("rear axle nuts", "3/8\" 24 or 26 Gang")]
    [InlineData("rear brake caliper", "hydraulic or hybrid disc")]
    [InlineData("rear wheel", "rim 24 mm, height unknown")]
    [InlineData("front wheel", "hub ends fixed or swappable")]
    [InlineData("fork", "20x110 kein Boost-Rad")]
    [InlineData("rear wheel", "el agujero es para Presta, 8,5 mm")]
    [InlineData("rear wheel", "núcleo corto HG, singlespeed")]
    [InlineData("rear wheel", "135 entre tuercas")]
    [InlineData("fork", "15x110, no Boost")]
    [InlineData("frame", "12x148 sin Boost")]
    [InlineData("rear wheel", "Cassette HG 10v")]
    [InlineData("rear wheel", "mit 2 Kassetten HG 8-fach und 9-fach")]
    [InlineData("rear wheel", "HG 11-speed cassettes don't fit")]
    [InlineData("rear wheel", "BMX-Nabe, 9er Achse, Driver")]
    [InlineData("rear tyre", "tube lek, plakken, 28-622")]
    [InlineData("front tyre", "28-Zoll-Mantel 47-406")]
    [InlineData("front inner tube", "camera da 26 28/32-451")]
    public void What_a_wheel_or_a_brake_leaves_open_stays_open(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);

    [Theory]
    [InlineData("front inner tube", "700C, stem 35 mm", "valveLength")]
    [InlineData("front rotor", "4-arm spider, 160", "fixing")]
    [InlineData("front thru-axle", "pinch bolts not supplied, M15x1.5", "length")]
    [InlineData("fork", "QR 9x100 (kein Boost 15x110)", "steererKind")]
    [InlineData("rear tyre", "pneu 40-584, sans la chambre", "bead")]
    [InlineData("rear tyre", "40-584, senza la camera d'aria", "bead")]
    [InlineData("front tyre", "tyre for a folder, 47-406", "bead")]
    [InlineData("rear tyre", "tubes 28-622 niet om te lijmen", "hold")]
    [InlineData("fork", "serrage à vis, 15x110 boost", "steererKind")]
    [InlineData("fork", "serraggio a vite, 15x110 boost", "steererKind")]
    [InlineData("rear wheel", "disc, 4 bolts included, 12x142", "rotorFixing")]
    [InlineData("front rotor", "160, with 5 bolts", "fixing")]
    [InlineData("front wheel", "hub flange high 60 mm, 15x110 boost", "rimDepth")]
    public void A_word_of_another_thing_gives_its_field_nothing(string slot, string text, string field)
    {
        SpecLine line = SpecLine.Read(Slot.All.Single(s => s.Name == slot), text);
        Assert.DoesNotContain(line.Values, v => v.Field == field);
        Assert.Single(line.Values);
    }
}
