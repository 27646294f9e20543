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
            joint.TryJudge(build, out _);
            Assert.True(GC.GetAllocatedBytesForCurrentThread() == mark, $"{joint} allocates");
        }

        Assert.Equal(0, after - before);
    }

    [Fact]
    public void Too_little_room_is_an_error_that_says_how_much_is_needed()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Known().Judge(new Fit[3]));
        Assert.Contains("16 judgements", refused.Message, StringComparison.Ordinal);
    }

    private static Build Known() => Build.From(Frame.Read("rear 12x142; material carbon; seatTube 27.2; leastInsertion 80; mostInsertion 210; rearBrake PM-160; largestRearRotor 180"))
        .With(Fork.Read("front 12x100; brake PM-160; largest rotor 180"))
        .With(Wheel.Read("hub F100-12; ends swappable; six-bolt; beadSeat 622; innerWidth 21; rimType TC"), Slot.FrontWheel)
        .With(Wheel.Read("hub R142-12; ends swappable; body HG-M; six-bolt; beadSeat 622; innerWidth 21; rimType TC"), Slot.RearWheel)
        .With(Tyre.Read("40-622; folding"), Slot.FrontTyre)
        .With(Tyre.Read("40-622; folding"), Slot.RearTyre)
        .With(Cassette.Read("9-speed HG"))
        .With(Rotor.Read("160; six-bolt"), Slot.FrontRotor)
        .With(Rotor.Read("180; six-bolt"), Slot.RearRotor)
        .With(Caliper.Read("post"), Slot.FrontBrake)
        .With(Caliper.Read("post"), Slot.RearBrake)
        .With(Seatpost.Read("27.2 x 350; mark 75; insertion 110"));
}
