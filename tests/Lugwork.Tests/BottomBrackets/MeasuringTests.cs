using Lugwork.BottomBrackets;

namespace Lugwork.Tests.BottomBrackets;

/// <summary>Shells, spindles and pedals told by measuring: what a workshop meets.</summary>
public sealed class MeasuringTests
{
    [Fact]
    public void A_bore_of_41_mm_is_any_width_of_that_bore_and_the_width_decides()
    {
        Identification<Shell> found = Shell.Identify(bore: Mm(41m));

        Assert.Equal(["PF41-86.5", "PF41-89.5", "PF41-92", "PF41-104.5", "PF41-107", "PF41-121", "PF41-132", "Mid-73", "Mid-68", "threaded-insert-82.5"], Keys(found));
        Assert.StartsWith("width (caliper across the faces, cups out): 68 mm is Mid-68; 73 mm is Mid-73; 82.5 mm is threaded-insert-82.5; 86 to 86.5 mm is PF41-86.5;", found.Next, StringComparison.Ordinal);
        Assert.Contains("91.5 to 92 mm is PF41-92", found.Next, StringComparison.Ordinal);
        Assert.Equal(["PF41-86.5"], Keys(Shell.Identify(Mm(41m), Mm(86.5m))));
        Assert.Equal(["PF41-92"], Keys(Shell.Identify(Mm(41m), Mm(92m))));
        Assert.Equal("", Shell.Identify(Mm(41m), Mm(92m)).Next);
    }

    [Fact]
    public void French_measures_like_BSA_and_the_pitch_decides()
    {
        Identification<Shell> found = Shell.Identify(Mm(33.7m), Mm(68m));

        Assert.Equal(["BSA-68", "French-68", "Swiss-68"], Keys(found));
        Assert.Equal("ten threads (thread gauge or caliper over ten crests): 10 mm is French-68 or Swiss-68; 10.583 mm is BSA-68", found.Next);
        Assert.Equal(["BSA-68"], Keys(Shell.Identify(Mm(33.7m), Mm(68m), 24m)));

        Identification<Shell> metric = Shell.Identify(Mm(33.7m), Mm(68m), 25.4m);
        Assert.Equal(["French-68", "Swiss-68"], Keys(metric));
        Assert.Equal("hand of the thread of the drive cup: left-hand is Swiss-68; right-hand is French-68", metric.Next);
        Assert.Contains("drive cup right-hand", metric.Candidates[0].TellsApart, StringComparison.Ordinal);
    }

    [Fact]
    public void Three_pitches_are_told_apart_by_their_count()
    {
        Assert.Equal(["BSA-68", "BSA-73", "BSA-83", "BSA-100", "BSA-120"], Keys(Shell.Identify(Mm(33.8m), threadsPerInch: 24m)).SkipLast(1));
        Assert.Equal(["26tpi-71", "26tpi-76"], Keys(Shell.Identify(Mm(33.8m), threadsPerInch: 26m)).SkipLast(1));
        Assert.Equal(["French-68", "Swiss-68"], Keys(Shell.Identify(Mm(33.8m), threadsPerInch: 25m)).SkipLast(1));
    }

    [Fact]
    public void What_no_caliper_tells_is_looked_at()
    {
        Assert.Equal("look for a thread inside: a plain one is PF30-68; a tapped shell is T47-68", Shell.Identify(Mm(46m), Mm(68m)).Next);
        Assert.Equal("middle of the shell against the middle of the frame: centred is BB30-73; off centre is BB30A-73", Shell.Identify(Mm(41.96m), Mm(73m)).Next);
    }

    [Theory]
    [InlineData(34.7, 70, "Italian-70")]
    [InlineData(46, 61, "OSBB-61")]
    [InlineData(51.3, 68, "American-68")]
    [InlineData(37, 90, "BB90-90")]
    [InlineData(37, 68, "Spanish-68")]
    [InlineData(41.2, 73, "Mid-73")]
    [InlineData(45, 70, "Thompson-70")]
    [InlineData(46, 77, "T47A-77")]
    public void Bore_and_width_tell_a_shell(double bore, double width, string first) =>
        Assert.Equal(first, Shell.Identify(Mm((decimal)bore), Mm((decimal)width)).Candidates[0].Value.FitKey);

    [Fact]
    public void A_shell_of_several_bores_is_one_candidate()
    {
        string[] all = [.. Keys(Shell.Identify(width: Mm(68m)))];
        Assert.Equal(all.Distinct(), all);
        Assert.Contains("Thompson-68", all);
    }

    [Fact]
    public void A_round_spindle_is_no_square_one_and_its_other_side_decides()
    {
        Identification<SpindleSeat> found = SpindleSeat.Identify(driveSide: Mm(24m));

        Assert.Equal(["24", "24/22", "BMX-24"], Keys(found).Take(3));
        Assert.DoesNotContain("square-JIS", Keys(found));
        Assert.Equal("diameter on the other side (caliper where the bearing sits): 22 mm is 24/22; 24 mm is 24 or BMX-24", found.Next);
        Assert.Equal("24/22", SpindleSeat.Identify(Mm(24m), Mm(22m)).Candidates[0].Value.FitKey);
    }

    [Fact]
    public void Splines_are_told_by_their_length()
    {
        Identification<SpindleSeat> found = SpindleSeat.Identify(driveSide: Mm(22m));
        Assert.Contains("8-spline-short", Keys(found));
        Assert.Equal(["8-spline-short", "10-spline"], Keys(SpindleSeat.Identify(splineLength: Mm(5m))));
        Assert.Equal(["8-spline-long", "10-spline"], Keys(SpindleSeat.Identify(splineWidth: Mm(2.8m))));
    }

    [Fact]
    public void The_tips_of_two_tapers_overlap_in_print()
    {
        Assert.Equal(["square-JIS", "square-ISO"], Keys(SpindleSeat.Identify(acrossFlats: Mm(12.7m))));
        Assert.Equal(["square-JIS"], Keys(SpindleSeat.Identify(acrossFlats: Mm(12.7m, 0.02m))));
        Assert.Equal(["square-ISO"], Keys(SpindleSeat.Identify(acrossFlats: Mm(12.5m, 0.05m))));
    }

    [Fact]
    public void A_pedal_is_told_by_three_tenths_of_a_millimetre()
    {
        Assert.Equal(["9/16x20"], Keys(PedalThread.Identify(Mm(14.25m))));
        Assert.Equal(["14x1.25"], Keys(PedalThread.Identify(Mm(13.9m))));
        Assert.Equal(["9/16x20", "14x1.25"], Keys(PedalThread.Identify(Mm(14.1m, 0.2m))));
        Assert.Equal(["9/16x20", "14x1.25"], Keys(PedalThread.Identify(Mm(14.1m))));
        Assert.Equal(["9/16x20"], Keys(PedalThread.Identify(Mm(14.15m))));
        Assert.Equal(["1/2x20"], Keys(PedalThread.Identify(Mm(12.5m))));
        Assert.Empty(PedalThread.Identify(Mm(13m)).Candidates);
    }

    [Fact]
    public void Nothing_measured_and_nonsense_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Shell.Identify());
        Assert.Throws<ArgumentException>(() => Shell.Identify(default(MeasuredLength)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shell.Identify(Mm(33.7m), threadsPerInch: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shell.Identify(Mm(33.7m), threadsPerInch: 101));
        Assert.Throws<ArgumentException>(() => SpindleSeat.Identify());
        Assert.Throws<ArgumentException>(() => PedalThread.Identify(default));
    }

    private static MeasuredLength Mm(decimal millimetres, decimal error = 0.1m) => MeasuredLength.OfMillimetres(millimetres, error);

    private static IEnumerable<string> Keys<T>(Identification<T> found)
        where T : Standard<T>, IInterfaceValue<T> => found.Candidates.Select(c => c.Value.FitKey);
}
