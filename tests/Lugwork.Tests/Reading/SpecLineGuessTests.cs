using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>A word with a slip of the pen is read where it can be one word only, and the value says what was guessed.</summary>
public sealed class SpecLineGuessTests
{
    [Theory]
    [InlineData("front tubeless valve", "Preesta Ventil, 60 mm", "valve", "'Preesta' is read as 'presta'")]
    [InlineData("front tubeless valve", "Preesta Ventil, 60 mm", "length", "")]
    [InlineData("rear rotor", "center lok, 160mm", "fixing", "'lok' is read as 'lock'")]
    [InlineData("rear rotor", "center lok, 160mm", "size", "")]
    [InlineData("frame", "hinterachsee 12x148, sattelstütze 31.6", "rear", "'hinterachsee' is read as 'hinterachse'")]
    [InlineData("frame", "hinterachsee 12x148, sattelstütze 31.6", "seatTube", "")]
    [InlineData("frame", "bottom brakcet BSA 73", "shell", "'brakcet' is read as 'bracket'")]
    [InlineData("frame", "rear axle 12x148", "rear", "")]
    [InlineData(null, "Hinterrrad 12x148 Boost", "hub", "'Hinterrrad' is read as 'hinterrad'")]
    public void A_value_says_what_was_guessed_for_it(string? slot, string text, string field, string guess)
    {
        SpecValue value = Assert.Single(SpecLine.Read(slot is null ? null : Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);
        Assert.Equal(guess, string.Join("; ", value.Assumed));
        Assert.Equal(guess.Length > 0 ? SpecConfidence.Assumed : SpecConfidence.Stated, value.Confidence);
    }

    [Theory]
    [InlineData("front rotor", "203mm, 6 botls", "fixing=six-bolt size=203")]
    [InlineData("chain", "12 fahc", "size=12")]
    [InlineData("chain", "Kettte 11-fahc, 116 Glieder", "size=11")]
    [InlineData("frame", "zit buis 27,2 mm", "seatTube=27.2")]
    [InlineData("rear wheel", "mozzo posteriore, sganciorapido 126 mm", "hub=R126")]
    [InlineData("frame", "raer axel 142x12", "rear=R142-12")]
    [InlineData("rear derailleur", "10 \u2013 FACH, Seilzug", "chain=10 signal=cable")]
    [InlineData("frame", "Hinten: 12x148 \u25AA Tretlager: BSA 73 \u25AA Sattelst.: 31,6", "rear=R148-12 seatTube=31.6 shell=BSA-73")]
    [InlineData("front rotor", "SCHEIBE \u2300203mm \u2013 6 Schr.", "fixing=six-bolt size=203")]
    [InlineData("rear wheel", "buje 157\u00D712 Super Boost \u2022 32 aguj.", "hub=R157-12W hubHoles=32")]
    [InlineData("frame", "SEAT TUBE (inner) \u230031,6 mm", "seatTube=31.6")]
    [InlineData("frame", "seat tube (inner \u2300) 26,8 mm", "seatTube=26.8")]
    [InlineData("fork", "Federweg \u2013 160mm | Einbauh\u00F6he (Achse\u2192Krone) \u2013 567mm", "axleToCrown=567 travel=160")]
    [InlineData("frame", "U.D.H. (patte)", "hanger=UDH")]
    [InlineData("frame", "disco tras. \u2264 160mm", "largestRearRotor=160")]
    public void What_is_misspelt_or_cut_short_is_read(string slot, string text, string values) =>
        Assert.Equal(values, string.Join(" ", SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)));

    [Theory]
    [InlineData("crankset", "10 bars 130")]
    [InlineData("frame", "not raer axel 12x148")]
    [InlineData("frame", "12 stcuk")]
    [InlineData("seatpost", "diameter \u2264 27.2")]
    [InlineData("cassette", "\u2264 11-speed")]
    [InlineData("fork", "travel \u2264 140")]
    [InlineData("chain", "12 forti")]
    public void What_can_be_another_word_is_left(string slot, string text) => Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);

    [Fact]
    public void A_guess_stands_in_the_part_as_one()
    {
        Frame frame = SpecSheet.ReadFrame("Bottom brakcet: BSA 73\nSeatpost: 27.2 mm").Frame;
        Assert.Equal(EvidenceKind.Assumed, frame.Shell.Evidence!.Kind);
        Assert.Equal("BSA-73", frame.Shell.Value.FitKey);
        Assert.Equal(EvidenceKind.Stated, frame.SeatTubeBore.Evidence!.Kind);
    }
}
