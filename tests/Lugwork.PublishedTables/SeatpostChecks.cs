namespace Lugwork.PublishedTables;

/// <summary>Seatposts, each case typed from the source beside it.</summary>
public sealed class SeatpostChecks
{
    [Theory]
    [InlineData("Seatpost diameter sizes (standards); BikeGremlin; 2018", "27.0", "27.2", Verdict.DoesNotFit, "Never ream")]
    [InlineData("Seatpost diameter sizes (standards); BikeGremlin; 2018 (27.0 slips in 27.2)", "27.2", "27.0", Verdict.DoesNotFit, "loose")]
    [InlineData("derived: wall (30.9 - 27.2) / 2", "30.9", "27.2", Verdict.NeedsPart, "wall 1.85 mm")]
    [InlineData("derived: wall (31.6 - 30.9) / 2", "31.6", "30.9", Verdict.NeedsPart, "wall 0.35 mm")]
    [InlineData("derived: wall (34.9 - 27.2) / 2", "34.9", "27.2", Verdict.NeedsPart, "wall 3.85 mm")]
    [InlineData("derived: a shim never makes a hole larger", "27.2", "30.9", Verdict.DoesNotFit, "nothing makes a hole larger")]
    [InlineData("derived: a shim never makes a hole larger", "31.6", "34.9", Verdict.DoesNotFit, "")]
    [InlineData("Still mountain bike-less; centerlinerule.blogspot.com; 2017 (a post stamped 27.0 measured 27.16 to 27.30)", "27.2", "27.0 | 27.2", Verdict.NeedsMeasuring, "seatpost diameter")]
    [InlineData("Seatpost diameter sizes (standards); BikeGremlin; 2018 (27.18 measured means 27.2)", "27.2", "27.18 ± 0.05", Verdict.Fits, "")]
    [InlineData("Moving the seat post; Minnesota MTB (a post is about 0.1 mm smaller than its bore)", "27.3 ± 0.05", "27.2", Verdict.Fits, "")]
    public void A_post_in_a_tube_is_judged_as_published(string source, string bore, string post, Verdict expected, string says)
    {
        Assert.NotEmpty(source);
        Case.Expect(expected, says, Case.Judge("seatpost-in-seat-tube", $"seatTube {bore}", (Slot.Seatpost, Seatpost.Read($"diameter {post}"))));
    }

    /// <summary>Operation Manual 2015, pp. 94-95; a bicycle maker: the frame's minimum governs where it is larger than the post's mark.</summary>
    [Theory]
    [InlineData("100", "75", "90", Verdict.Unsafe)]
    [InlineData("100", "75", "100", Verdict.Fits)]
    [InlineData("70", "90", "80", Verdict.Unsafe)]
    public void The_larger_of_two_minimums_governs(string frame, string mark, string depth, Verdict expected) =>
        Case.Expect(expected, "", Case.Judge("seatpost-insertion", $"leastInsertion {frame}; mostInsertion 250", (Slot.Seatpost, Seatpost.Read($"27.2; mark {mark}; insertion {depth}"))));
}
