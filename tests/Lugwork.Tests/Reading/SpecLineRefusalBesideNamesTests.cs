using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines in which a name or a figure of a frame, a fork or a stem stands beside a word that gives it another meaning: a comparison, a spindle, a wish, work that is still to be done, a part in the box.</summary>
public sealed class SpecLineRefusalBesideNamesTests
{
    [Theory]
    [InlineData("27.2 post. Better than my old track frame. BSA 68")]
    [InlineData("ex cadre de piste, BSA 68, 130 mm")]
    [InlineData("will swap against a track frame, BSA 73, 31.6 post")]
    [InlineData("unlike a road frame: BSA 73, 12x148")]
    [InlineData("Cross frame, 130 mm, same as road frame")]
    [InlineData("Kinder Rahmen nicht, Jugendrad: BSA 68")]
    [InlineData("telaio bambino escluso, BSA 68")]
    [InlineData("road frame builder, BSA 68")]
    public void A_frame_that_is_compared_or_denied_is_no_kind(string text) => Without("frame", text, "kind");

    [Theory]
    [InlineData("frame", "bb 107 spindle square", "shell")]
    [InlineData("frame", "bb 104.5 spindle", "shell")]
    [InlineData("frame", "bb axle 107", "shell")]
    [InlineData("frame", "BB 121 mm", "shell")]
    [InlineData("bottom bracket", "BB 121 mm JIS", "family")]
    [InlineData("bottom bracket", "bb 107", "family")]
    [InlineData("frame", "mid size bmx frame, US shell", "shell")]
    [InlineData("frame", "BBright, Direktversion oder Pressfit", "shell")]
    [InlineData("frame", "BBright, directe verzending", "shell")]
    public void A_spindle_or_a_size_of_bicycle_is_no_shell(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("frame", "Umwerferband 31,8 mit Hülse für 28,6", "frontDerailleurMount")]
    [InlineData("frame", "Umwerfersockel angelötet gewesen, jetzt entfernt", "frontDerailleurMount")]
    [InlineData("frame", "Strebe am Ausfallende teilbar gewünscht", "rearTriangle")]
    [InlineData("frame", "hauban ouvrable à la patte impossible", "rearTriangle")]
    [InlineData("frame", "BSA 73 gewünscht", "shell")]
    [InlineData("frame", "BSA 68 gewesen", "shell")]
    [InlineData("frame", "tabs for i.s. on fork", "rearBrake")]
    [InlineData("frame", "Schaltauge, glatte Bohrung der Befestigung", "hanger")]
    public void What_is_wished_past_or_of_another_end_is_none_of_the_frame(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("fork", "crown needs to be cut for 26.4 race", "crownSeat")]
    [InlineData("fork", "1\" fork, 26.4 race too small for the crown", "crownSeat")]
    [InlineData("fork", "fourche couronne usinée 33 mm de large, pivot 1 1/8", "crownSeat")]
    [InlineData("fork", "tête de fourche tournée pour jante 30 mm", "crownSeat")]
    [InlineData("fork", "forcella testa tornita larga 33 mm, 1 1/8", "crownSeat")]
    [InlineData("fork", "steerer 1 1/8 with external threads for low rider", "steererKind")]
    [InlineData("fork", "1 1/8 thread headset not for this fork", "steererKind")]
    [InlineData("stem", "grips on the bar included 22.2, stem 1 1/8", "bar")]
    [InlineData("stem", "grips 22.2, stem 1 1/8", "bar")]
    [InlineData("stem", "1 1/8 (25.4) quill", "fixing")]
    [InlineData("fork", "steerer 1 1/8 carbon crown", "steererMaterial")]
    [InlineData("fork", "steerer 1 1/8 carbon legs", "steererMaterial")]
    [InlineData("rear shock", "bolts 8x30 top mount, 190x45", "upperHardware")]
    [InlineData("rear shock", "untere Befestigung Schraube 8x30, Buchsen 22x8 oben", "lowerHardware")]
    [InlineData("frame", "lower mount bolt M8x40", "lowerShockHardware")]
    [InlineData("seatpost", "for frame 27.2 too loose", "diameter")]
    public void What_is_of_another_place_is_none_of_fork_or_stem(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("frame", "cadre de piste, BSA 68, 120 mm", "kind")]
    [InlineData("frame", "BB107", "shell")]
    [InlineData("frame", "BBright, Direktversion", "shell")]
    [InlineData("frame", "Umwerferband 31,8", "frontDerailleurMount")]
    [InlineData("fork", "crown turned to 33 mm for the race", "crownSeat")]
    [InlineData("fork", "canotto 1 1/8 carbonio", "steererMaterial")]
    [InlineData("rear shock", "lower mount 40 x 8, 190x45", "lowerHardware")]
    [InlineData("stem", "grips a 1 1/8 steerer, bar 31.8", "fixing")]
    public void What_is_said_plainly_is_still_read(string slot, string text, string field) => Assert.Contains(field, Fields(slot, text));

    private static void Without(string slot, string text, string field) => Assert.DoesNotContain(field, Fields(slot, text));

    private static IEnumerable<string> Fields(string slot, string text) =>
        SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => v.Field);
}
