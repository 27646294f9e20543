using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Words cut short stand for the whole word, with a point and without. Common practice, no source.</summary>
public sealed class ShortWordTests
{
    [Fact]
    public void Every_short_form_is_of_a_known_word_and_of_one_alone()
    {
        string[] shorts = [.. ShortWords.Rows.SelectMany(r => r.Short.Split(' '))];

        Assert.Equal(shorts.Length, shorts.Distinct().Count());
        Assert.All(ShortWords.Rows, r => Assert.True(SpecVocabulary.Default.Tree.Knows(r.Word), r.Word));
        Assert.All(shorts, s => Assert.False(SpecVocabulary.Default.Tree.Knows(s), s));
    }

    [Theory]
    [InlineData("front rotor", "DISCO DEL;160mm;6 TORN;acero", "fixing=six-bolt size=160")]
    [InlineData("handlebar", "Lenker, Lenkerkl. 35,0 mm", "clamp=35")]
    [InlineData("frame", "Einbaubr. hinten 135 mm Schnellspan.", "rear=R135-QR")]
    [InlineData("fork", "Forc. con perno passan. 15x110", "front=F110-15B")]
    [InlineData("seatpost", "Sattelstz. 27,2 x 350", "diameter=27.2 length=350")]
    [InlineData("rear derailleur", "Schaltw. mit Seilz.", "signal=cable")]
    public void A_short_form_says_what_the_word_says(string slot, string text, string expected)
    {
        SpecLine line = SpecLine.Read(Slot.All.Single(s => s.Name == slot), text);

        Assert.Equal(expected, string.Join(' ', line.Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)));
    }
}
