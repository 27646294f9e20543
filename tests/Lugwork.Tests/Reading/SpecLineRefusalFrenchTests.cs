using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>French lines that look like ones that are read and say another thing, or not enough.</summary>
public sealed class SpecLineRefusalFrenchTests
{
    [Theory]
    [InlineData("corps XD fourni en option")]
    [InlineData("corps XD vendu séparément")]
    [InlineData("corps XD non fourni")]
    [InlineData("corps XDR fourni, corps Micro Spline fourni")]
    [InlineData("cassette XD fournie")]
    [InlineData("moyeu cannelé")]
    [InlineData("corps cannelé")]
    public void A_body_beside_the_wheel_is_none_of_it(string text) => Without("rear wheel", text, "body", "rotorFixing");

    [Theory]
    [InlineData("plateau 104")]
    [InlineData("plateau 42 max")]
    [InlineData("plateau max 42")]
    [InlineData("pas de plateau 42")]
    [InlineData("pour plateau 42")]
    [InlineData("protège-plateau 42")]
    [InlineData("vis de plateau 32")]
    [InlineData("ligne de chaîne plateau 49")]
    [InlineData("denture 11-42")]
    [InlineData("nombre de dents 42 ou 44")]
    public void A_figure_near_a_ring_is_no_count_of_its_teeth(string text) => Without("chainring", text, "teeth");

    [Theory]
    [InlineData("manivelles 104")]
    [InlineData("manivelles 175 ou 170")]
    [InlineData("manivelles de 170 à 175")]
    [InlineData("pas de manivelles 170")]
    [InlineData("manivelles max 170")]
    public void A_choice_of_cranks_has_no_length(string text) => Without("crankset", text, "crankLength");

    [Theory]
    [InlineData("potence 31,8 x 90 mm")]
    [InlineData("pour potence à plongeur 22,2")]
    [InlineData("avec potence 31,8")]
    [InlineData("potence de 90 mm")]
    [InlineData("serrage potence 5 Nm")]
    [InlineData("non oversize 31,8")]
    public void A_stem_is_no_clamp_of_a_bar(string text) => Without("handlebar", text, "clamp");

    [Theory]
    [InlineData("frame", "selle TS 143 mm", "seatTube")]
    [InlineData("frame", "fourreau 27,2", "seatTube")]
    [InlineData("frame", "passage de plateau : non communiqué", "largestRing")]
    [InlineData("frame", "PTAC remorque 40 kg", "systemLimit")]
    [InlineData("rear derailleur", "petit pignon jusqu'à 11", "largestSprocket")]
    [InlineData("front inner tube", "petite valve ou grosse valve", "valve")]
    public void A_word_of_another_thing_gives_nothing(string slot, string text, string field) => Without(slot, text, field);

    [Fact]
    public void A_bead_that_is_shortened_leaves_the_size_of_its_tyre() =>
        Assert.Equal(["size=28-622"], Told("front tyre", "pneu 28-622 TS"));

    private static string[] Told(string slot, string text) =>
        [.. SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}")];

    private static void Without(string slot, string text, params string[] fields) =>
        Assert.DoesNotContain(Told(slot, text), v => fields.Contains(v[..v.IndexOf('=')]));
}
