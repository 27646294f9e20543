namespace Lugwork.Tests.Builds;

/// <summary>The path that a catalogue takes.</summary>
public sealed class JudgeTests
{
    [Fact]
    public void Judging_a_known_build_allocates_nothing()
    {
        Build build = Known();
        Fit[] fits = new Fit[JointTable.All.Length];
        build.Judge(fits);
        build.Judge(fits);

        long before = GC.GetAllocatedBytesForCurrentThread();
        int count = build.Judge(fits);
        long after = GC.GetAllocatedBytesForCurrentThread();

        Assert.Equal(JointTable.All.Length - Bench.NotInTheWholeBicycle.Length, count);
        Assert.Equal(Bench.NotInTheWholeBicycle, JointTable.All.Where(j => !j.IsFilled(build)).Select(j => j.Id).Order(StringComparer.Ordinal));
        foreach (Joint joint in JointTable.All)
        {
            joint.Judge(build);
            long mark = GC.GetAllocatedBytesForCurrentThread();
            joint.Judge(build);
            Assert.True(GC.GetAllocatedBytesForCurrentThread() == mark, $"{joint} allocates");
        }

        Assert.Equal(0, after - before);
    }

    [Fact]
    public void Too_little_room_is_an_error_that_says_how_much_is_needed()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Known().Judge(new Fit[3]));
        Assert.Contains($"{JointTable.All.Length} judgements", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_joint_of_the_known_build_fits() =>
        Assert.All(Known().Check().Findings, f => Assert.Equal(Verdict.Fits, f.Verdict));

    private static Build Known() => Bench.WholeBicycle();

    /// <summary>What stands on no sheet is judged where someone has looked, and is no part of a report where nobody has.</summary>
    [Theory]
    [InlineData("binder-on-post", "seatTube 27.2", "27.2 x 350", "27.2 x 350; binder gap none")]
    [InlineData("post-material-in-binder", "seatTube 27.2", "27.2 x 350", "27.2 x 350; material carbon")]
    public void What_only_a_look_tells_is_judged_where_someone_has_looked(string joint, string frame, string unseen, string seen)
    {
        Assert.True(JointTable.All.Single(j => j.Id == joint).IsOnlyWhereLooked);
        Assert.DoesNotContain(Build.From(Frame.Read(frame)).With(Seatpost.Read(unseen)).Check().Findings, f => f.Joint!.Id == joint);
        Fit fit = Build.From(Frame.Read(frame)).OfFile(Seatpost.Read(seen), Slot.Seatpost).Check().Findings.Single(f => f.Joint!.Id == joint);
        Assert.NotEqual(Verdict.Fits, fit.Verdict);
    }
}
