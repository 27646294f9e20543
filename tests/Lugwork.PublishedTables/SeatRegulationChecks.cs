namespace Lugwork.PublishedTables;

/// <summary>Insertion marks by 16 CFR 1512.15, Requirements for seat, US Code of Federal Regulations: the mark stands at least two diameters above the lowest point of the post.</summary>
public sealed class SeatRegulationChecks
{
    [Theory]
    [PrintedIn("16 CFR 1512.15 Requirements for seat; US Code of Federal Regulations")]
    [InlineData("27.2", "54.4")]
    [InlineData("30.9", "61.8")]
    [InlineData("31.6", "63.2")]
    public void A_post_at_its_mark_of_two_diameters_passes_and_a_tenth_less_is_unsafe(string diameter, string mark)
    {
        Assert.Equal(Verdict.Fits, Judge(diameter, mark, decimal.Parse(mark, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(Verdict.Unsafe, Judge(diameter, mark, decimal.Parse(mark, System.Globalization.CultureInfo.InvariantCulture) - 0.1m));
    }

    private static Verdict Judge(string diameter, string mark, decimal insertion) =>
        Build.From(Frame.Read($"seatTube {diameter}; leastInsertion none; mostInsertion none"))
            .With(Seatpost.Read(FormattableString.Invariant($"diameter {diameter}; mark {mark}; insertion {insertion}")))
            .Check().Findings.Single(f => f.Joint!.Id == "seatpost-insertion").Verdict;
}
