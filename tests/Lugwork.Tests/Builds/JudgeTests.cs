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

        Assert.Equal(JointTable.All.Length, count);
        foreach (Joint joint in JointTable.All)
        {
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
        Assert.All(Known().Check().Fits, f => Assert.Equal(Verdict.Fits, f.Verdict));

    private static Build Known() => Bench.WholeBicycle();
}
