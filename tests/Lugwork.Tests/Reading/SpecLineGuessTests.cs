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

    [Fact]
    public void A_guess_stands_in_the_part_as_one()
    {
        Frame frame = SpecSheet.ReadFrame("Bottom brakcet: BSA 73\nSeatpost: 27.2 mm").Frame;
        Assert.Equal(EvidenceKind.Assumed, frame.Shell.Evidence!.Kind);
        Assert.Equal("BSA-73", frame.Shell.Value.FitKey);
        Assert.Equal(EvidenceKind.Stated, frame.SeatTubeBore.Evidence!.Kind);
    }
}
