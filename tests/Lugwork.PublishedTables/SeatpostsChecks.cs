namespace Lugwork.PublishedTables;

/// <summary>Seatposts in seat tubes, shims and insertion: published cases, each with its source.</summary>
/// <remarks>
/// Judged otherwise than printed: 27.0 in 27.2 stands twice, as a fit with a 0.1 mm shim (arithmetic) and as "slips, the shim is a
/// stopgap only" (published). The published row is the one to trust.
/// </remarks>
public sealed class SeatpostsChecks
{
    private const string Derived = "arithmetic on the published diameters";
    private const string PostSizes = "Seatpost diameter sizes (standards); BikeGremlin";
    private const string Measured = "Still mountain bike-less; centerlinerule.blogspot.com";
    private const string FrameManual = "Operation Manual 2015, pp. 94-95; GT Bicycles";
    private const string LeastInsertion = "Minimum seatpost insertion length; BikeGremlin";
    private const string Regulation = "16 CFR 1512.15 Requirements for seat; US Code of Federal Regulations";
    private const string Dropper = "Choosing a dropper: ride height and insertion; dirtlifebike.com";

    [Theory]
    [PrintedIn(Derived)]
    [InlineData("22.2", "25.4", "1.6")]
    [InlineData("25.0", "27.2", "1.1")]
    [InlineData("25.4", "27.2", "0.9")]
    [InlineData("25.4", "28.6", "1.6")]
    [InlineData("26.0", "27.2", "0.6")]
    [InlineData("26.8", "27.2", "0.2")]
    [InlineData("27.2", "28.6", "0.7")]
    [InlineData("27.2", "30.0", "1.4")]
    [InlineData("27.2", "30.9", "1.85")]
    [InlineData("27.2", "31.6", "2.2")]
    [InlineData("27.2", "31.8", "2.3")]
    [InlineData("30.0", "30.9", "0.45")]
    [InlineData("30.9", "31.6", "0.35")]
    [InlineData("30.9", "33.9", "1.5")]
    [InlineData("30.9", "34.9", "2")]
    [InlineData("31.6", "34.9", "1.65")]
    [InlineData("31.6", "33.9", "1.15")]
    [InlineData("27.2", "34.9", "3.85")]
    [InlineData("25.4", "31.6", "3.1")]
    public void A_shim_of_the_published_wall_is_named(string post, string bore, string wall) =>
        AssertFit(InBore(post, bore), "seatpost-in-seat-tube", Derived, Verdict.NeedsPart, $"wall {wall} mm");

    [Theory]
    [InlineData("27.2", "27.0", PostSizes)]
    [InlineData("27.0", "27.2", PostSizes)]
    [InlineData("30.9", "27.2", Derived)]
    [InlineData("31.6", "30.9", Derived)]
    [InlineData("34.9", "31.6", Derived)]
    [InlineData("27.2", "26.8", Derived)]
    public void A_post_of_another_size_does_not_fit(string post, string bore, string source) =>
        AssertFit(InBore(post, bore), "seatpost-in-seat-tube", source, Verdict.DoesNotFit, "a seatpost of the seat tube's own size");

    [Theory]
    [InlineData("27.0 | 27.2", "27.2", Measured)]
    [InlineData("27.0 | 27.2", "27.0", Measured)]
    public void A_stamp_against_the_caliper_leaves_it_open(string post, string bore, string source) =>
        AssertFit(InBore(post, bore), "seatpost-in-seat-tube", source, Verdict.NeedsMeasuring, "");

    [Theory]
    [InlineData("own line met, frame asks more", FrameManual, "75", "100", "none", "75", Verdict.Unsafe)]
    [InlineData("frame met, own line not", FrameManual, "100", "75", "none", "90", Verdict.Unsafe)]
    [InlineData("both met", FrameManual, "75", "100", "none", "100", Verdict.Fits)]
    [InlineData("tall stub, top tube at 100, 25 below it asked", LeastInsertion, "90", "125", "none", "90", Verdict.Unsafe)]
    [InlineData("tall stub, deep enough", LeastInsertion, "90", "125", "none", "125", Verdict.Fits)]
    [InlineData("deeper than the tube is open", Dropper, "100", "100", "200", "250", Verdict.DoesNotFit)]
    [InlineData("frame's figure not known", FrameManual, "75", "unknown", "none", "75", Verdict.NeedsMeasuring)]
    public void The_deeper_of_both_marks_governs(string row, string source, string mark, string least, string most, string insertion, Verdict expected) =>
        AssertFit(Sits("27.2", mark, least, most, insertion), "seatpost-insertion", $"{row}, {source}", expected, "");

    [Theory]
    [InlineData("obstructed above the post's mark", FrameManual, "100", "none", "80", Verdict.DoesNotFit)]
    [InlineData("obstructed above the frame's figure", Dropper, "75", "100", "80", Verdict.DoesNotFit)]
    [InlineData("room for both", FrameManual, "75", "100", "150", Verdict.Fits)]
    public void An_obstructed_seat_tube_limits_the_post(string row, string source, string mark, string least, string most, Verdict expected) =>
        AssertFit(Sits("27.2", mark, least, most, "unknown"), "seatpost-room-in-seat-tube", $"{row}, {source}", expected, "");

    [Theory]
    [PrintedIn(Regulation)]
    [InlineData("27.2", "54.4", "54.4", Verdict.Fits)]
    [InlineData("27.2", "35", "35", Verdict.Unsafe)]
    [InlineData("27.2", "54.3", "54.3", Verdict.Unsafe)]
    [InlineData("31.6", "60", "60", Verdict.Unsafe)]
    public void A_post_cut_until_its_mark_is_under_two_diameters_is_unsafe_at_that_mark(string post, string mark, string insertion, Verdict expected) =>
        AssertFit(Sits(post, mark, "none", "none", insertion), "seatpost-insertion", Regulation, expected, "");

    private static Build InBore(string post, string bore) =>
        Build.From(Frame.Read($"seatTube {bore}")).With(Seatpost.Read($"diameter {post}"));

    private static Build Sits(string post, string mark, string least, string most, string insertion) =>
        Build.From(Frame.Read($"seatTube {post}; leastInsertion {least}; mostInsertion {most}"))
            .With(Seatpost.Read($"diameter {post}; mark {mark}; insertion {insertion}"));

    private static void AssertFit(Build build, string joint, string source, Verdict expected, string remedy)
    {
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == joint);
        Assert.True(expected == fit.Verdict, $"{source}: {expected} is published, judged: {fit}");
        Assert.Contains(remedy, string.Join(" | ", fit.Remedies), StringComparison.Ordinal);
    }
}
