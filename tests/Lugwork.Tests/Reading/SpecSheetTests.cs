using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

public sealed class SpecSheetTests
{
    [Fact]
    public void A_sheet_becomes_a_frame_and_each_value_shows_its_words()
    {
        const string Text = "Hinterachse: 12 \u00D7 148 mm Boost\nSattelst\u00FCtzma\u00DF: 31,6 mm\nFarbe: Graphit";
        SpecSheet sheet = SpecSheet.ReadFrame(Text);
        Assert.Equal("R148-12", sheet.Frame.RearEnd.Value.FitKey);
        Assert.Equal("31.6", sheet.Frame.SeatTubeBore.Value.FitKey);
        Assert.Equal(["Farbe: Graphit"], sheet.Leftovers);
        Assert.All(sheet.Values, v => Assert.Equal(v.Words, Text.Substring(v.Span.Start, v.Span.Length)));
    }

    [Fact]
    public void Contradicting_lines_are_a_conflict_and_neither_is_accepted()
    {
        SpecSheet sheet = SpecSheet.ReadFrame("Seatpost: 27.2 mm\nSeat post: 31.6 mm\nBB: BSA 68\nBottom bracket: BSA 68 mm");
        SpecConflict conflict = Assert.Single(sheet.Conflicts);
        Assert.Equal(["27.2", "31.6"], conflict.Values.Select(v => v.Key));
        Assert.Equal(KnownState.Unknown, sheet.Frame.SeatTubeBore.State);
        Assert.Equal("BSA-68", sheet.Frame.Shell.Value.FitKey);
    }

    [Fact]
    public void Tags_are_stripped_and_spans_stay_those_of_the_original()
    {
        const string Text = "<table><tr><td>Seatpost</td><td>27,2&nbsp;mm</td></tr><tr><td>Colour</td><td>sand</td></tr></table>";
        SpecSheet sheet = SpecSheet.ReadFrame(Text);
        SpecValue value = Assert.Single(sheet.Values);
        Assert.Equal(("seatTube", "27.2"), (value.Field, value.Key));
        Assert.StartsWith("27,2&nbsp;", Text[value.Span.Start..], StringComparison.Ordinal);
        Assert.Contains("sand", Assert.Single(sheet.Leftovers), StringComparison.Ordinal);
    }

    /// <summary>What another field of the part excludes is not taken: the part can be written and read back.</summary>
    [Theory]
    [InlineData("Hanger: UDH\nRear axle thread: M12x1.5", "rearAxleThread")]
    [InlineData("HangerUDH12x1.5", "rearAxleThread")]
    public void What_another_field_excludes_is_not_taken(string text, string field)
    {
        SpecSheet sheet = SpecSheet.ReadFrame(text);
        Assert.DoesNotContain(sheet.Values, v => v.Field == field);
        Assert.Contains(sheet.Doubts, d => d.Kind == SpecDoubtKind.Contradiction && d.Field == field && d.Words.Length > 0);
        Assert.Equal(KnownState.Unknown, sheet.Frame.RearAxleThread.State);
        Assert.Equal(sheet.Frame.ToString(), Frame.Read(sheet.Frame.ToString()).ToString());
    }

    [Fact]
    public void What_a_part_cannot_be_is_a_doubt()
    {
        SpecSheet sheet = SpecSheet.ReadFrame("hanger: UDH\nrear axle thread M12 x 1.5");
        Assert.Contains(sheet.Doubts, d => d.Kind == SpecDoubtKind.Contradiction && d.Field == "rearAxleThread");
    }

    [Fact]
    public void Attributes_are_read_as_lines()
    {
        SpecSheet sheet = SpecSheet.ReadAttributes(Slot.RearWheel, [new("hub", "12x142"), new("freehub", "XDR"), new("sku", "INV-1")]);
        Assert.Equal("R142-12", ((Wheel)sheet.Of(Slot.RearWheel)!).Hub.Value.FitKey);
        Assert.Equal(2, sheet.Values.Length);
    }

    [Fact]
    public void A_sheet_that_is_too_long_is_refused()
    {
        SpecSheet sheet = SpecSheet.ReadFrame(new string('a', SpecSheet.MostCharacters + 1));
        Assert.Equal(SpecDoubtKind.Refused, Assert.Single(sheet.Doubts).Kind);
    }

    [Fact]
    public void What_is_outside_the_library_is_said_so()
    {
        SpecSheet sheet = SpecSheet.ReadFrame("Tretlager: Motoraufnahme\nSeatpost: 27.2");
        Assert.Equal(SpecDoubtKind.OutsideTheLibrary, Assert.Single(sheet.Doubts).Kind);
        Assert.Single(sheet.Values);
    }

    /// <summary>The reasoning of a joint says which value the sheet did not say in so many words.</summary>
    [Fact]
    public void What_was_taken_for_granted_is_so_in_the_part_too()
    {
        Frame frame = SpecSheet.ReadFrame("Bottom bracket: Italian\nSeatpost: 27.2 mm").Frame;
        Assert.Equal(new Evidence(EvidenceKind.Assumed, "Italian"), frame.Shell.Evidence);
        Assert.Equal(EvidenceKind.Stated, frame.SeatTubeBore.Evidence!.Kind);
        Assert.Equal("Italian-70", frame.Shell.Value.FitKey);
        Assert.Equal(EvidenceKind.Stated, SpecSheet.ReadFrame("Bottom bracket: Italian\nBB shell: Italian 70 mm").Frame.Shell.Evidence!.Kind);
    }
}
