namespace Lugwork.PublishedTables;

/// <summary>Collars round seat tubes and saddle rails in post heads: published cases, each with its source.</summary>
/// <remarks>Everything about rails is from memory: only like in like is a fit.</remarks>
public sealed class SeatFittingsChecks
{
    private const string Shop = "Clamps; Compulsion Cycles";
    private const string Arithmetic = "arithmetic on the published diameters";
    private const string Memory = "from memory";

    [Theory]
    [InlineData("seatTubeOutside 25.4", "25.4", Verdict.Fits, Shop)]
    [InlineData("seatTubeOutside 28.6", "28.6", Verdict.Fits, Shop)]
    [InlineData("seatTubeOutside 31.8", "31.8", Verdict.Fits, Shop)]
    [InlineData("seatTubeOutside 34.9", "34.9", Verdict.Fits, Memory)]
    [InlineData("seatTube 25.4; seatTubeOutside 28.6", "25.4", Verdict.DoesNotFit, Shop)]
    [InlineData("seatTube 27.2; seatTubeOutside 31.8", "28.6", Verdict.DoesNotFit, Shop)]
    [InlineData("seatTube 27.2; seatTubeOutside 28.6", "31.8", Verdict.DoesNotFit, Shop)]
    [InlineData("seatTube 31.6; seatTubeOutside 36.4", "34.9", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("seatTubeOutside 30.0", "31.8", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("seatTube 27.2", "31.8", Verdict.NeedsMeasuring, Shop)]
    [InlineData("seatTube 31.6", "34.9", Verdict.NeedsMeasuring, Memory)]
    [InlineData("seatTubeOutside 31.7 ± 0.1", "31.8", Verdict.Fits, Shop)]
    [InlineData("seatTubeOutside 38.8 ± 0.3", "38.6", Verdict.NeedsMeasuring, Memory)]
    public void A_collar_goes_round_a_seat_tube_as_published(string frame, string collar, Verdict expected, string source) =>
        Published.Says(Build.From(Frame.Read(frame)).With(SeatClamp.Read($"size {collar}"), Slot.SeatClamp), "seat-clamp-on-seat-tube", source, expected);

    [Theory]
    [PrintedIn(Shop)]
    [InlineData("27.2")]
    [InlineData("30.9")]
    [InlineData("31.6")]
    public void A_collar_named_by_its_post_is_refused(string post) =>
        Assert.False(SeatClamp.TryRead($"size {post}", out _, out _), $"{Shop}: a clamp is named by the tube that it goes round, {post} is a post");

    [Theory]
    [InlineData("7-round", "7-round", Verdict.Fits, Memory)]
    [InlineData("7x9", "7x9", Verdict.Fits, Memory)]
    [InlineData("7-round", "7x9", Verdict.DoesNotFit, Memory)]
    [InlineData("7x9", "7x9.6", Verdict.NeedsMeasuring, Memory)]
    [InlineData("7x10", "7x9.6", Verdict.NeedsMeasuring, Memory)]
    [InlineData("7x9", "7x9.3", Verdict.NeedsMeasuring, Memory)]
    [InlineData("7-round", "I-beam", Verdict.DoesNotFit, Memory)]
    [InlineData("7x9", "I-beam", Verdict.DoesNotFit, Memory)]
    [InlineData("7-round", "pivotal", Verdict.DoesNotFit, Memory)]
    [InlineData("pivotal", "7-round", Verdict.DoesNotFit, Memory)]
    [InlineData("I-beam", "pivotal", Verdict.DoesNotFit, Memory)]
    [InlineData("unknown", "7x9", Verdict.NeedsMeasuring, Memory)]
    public void Rails_go_in_a_head_as_remembered(string head, string rails, Verdict expected, string source) =>
        Published.Says(With(head, rails), "saddle-on-seatpost", source, expected);

    [Theory]
    [PrintedIn(Memory)]
    [InlineData("7-round", "8-round")]
    [InlineData("7-round", "7x10")]
    [InlineData("7x9", "7x10")]
    [InlineData("7x9", "7-round")]
    [InlineData("8-round", "7-round")]
    public void Other_rails_are_no_fit_from_memory(string head, string rails) =>
        Published.SaysNothingMilder(With(head, rails), "saddle-on-seatpost", Memory, Verdict.NeedsMeasuring);

    private static Build With(string head, string rails) =>
        Build.From(Frame.Read("seatTube 27.2")).With(Seatpost.Read($"27.2; rail clamp {head}"), Slot.Seatpost).With(Saddle.Read($"rails {rails}"), Slot.Saddle);
}
