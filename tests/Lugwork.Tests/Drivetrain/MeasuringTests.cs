using Lugwork.Drivetrain;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Bolt circles, bodies, threads, chains, mounts and chainlines told by measuring: what a workshop meets.</summary>
public sealed class MeasuringTests
{
    [Theory]
    [InlineData(103.2, "4x146")]
    [InlineData(84.9, "4x120")]
    [InlineData(79.2, "4x112")]
    [InlineData(73.5, "4x104")]
    [InlineData(72.1, "4x102")]
    [InlineData(67.9, "4x96-even")]
    [InlineData(62.2, "4x88")]
    [InlineData(56.6, "4x80")]
    [InlineData(45.3, "4x64")]
    public void Four_bolts_are_told_by_the_distance_of_neighbouring_holes(double holes, string first)
    {
        Identification<BoltCircle> found = BoltCircle.Identify(Mm((decimal)holes), arms: 4);

        Assert.Equal([first, "4x110-uneven", "4x96-uneven"], Keys(found));
    }

    [Fact]
    public void The_diameter_rules_the_uneven_circles_out()
    {
        Assert.Equal(["4x104"], Keys(BoltCircle.Identify(Mm(73.5m), Mm(104m), 4)));
        Assert.Equal(["4x110-uneven"], Keys(BoltCircle.Identify(diameter: Mm(110m), arms: 4)));
    }

    [Fact]
    public void Neighbours_of_another_number_of_arms_are_told_by_counting()
    {
        Identification<BoltCircle> found = BoltCircle.Identify(Mm(79.28m));

        Assert.Equal(["5x135", "4x112"], Keys(found).Take(2));
        Assert.StartsWith("number of arms: 4 is 4x112 or ", found.Next, StringComparison.Ordinal);
        Assert.Contains("; 5 is 5x135", found.Next, StringComparison.Ordinal);
        Assert.Equal("number of arms: 3 is 3x86; 5 is 5x86", BoltCircle.Identify(diameter: Mm(86m)).Next);
    }

    [Fact]
    public void A_body_of_35_mm_is_the_usual_one_or_the_ten_speed_one()
    {
        Identification<FreehubBody> found = FreehubBody.Identify(Mm(35m), 9);
        Assert.Equal(["HG-M", "HG-10only"], Keys(found).Take(2));
        Assert.DoesNotContain("N3W", Keys(found));
        Assert.Equal("HG-L", Keys(FreehubBody.Identify(Mm(36.75m))).First());
        Assert.Equal(["C9-12"], Keys(FreehubBody.Identify(Mm(38m), 8)).Take(1));
        Assert.Equal(["HG-L2"], Keys(FreehubBody.Identify(Mm(37.6m), 18)).Where(k => k.StartsWith("HG", StringComparison.Ordinal)));
        Identification<FreehubBody> seven = FreehubBody.Identify(Mm(31m));
        Assert.Equal(["HG-S", "C8-old"], Keys(seven).Take(2));
        Assert.StartsWith("number of splines: ", seven.Next, StringComparison.Ordinal);
    }

    [Fact]
    public void French_and_ISO_freewheels_are_told_by_the_pitch()
    {
        Identification<FreewheelThread> found = FreewheelThread.Identify(Mm(34.8m, 0.15m));

        Assert.Contains("34.7x1", Keys(found));
        Assert.StartsWith("ten threads (thread gauge or caliper over ten crests): 10 mm is 34.7x1; 10.583 mm is ", found.Next, StringComparison.Ordinal);
        Assert.Equal(["34.7x1"], Keys(FreewheelThread.Identify(Mm(34.8m, 0.15m), 25.4m)));
        Assert.Equal(["lockring-1.29x24"], Keys(FreewheelThread.Identify(Mm(32.8m))));
        Assert.Equal(["British-1.370x24", "track-1.37x24", "1.375x24", "1.378x24"], Keys(FreewheelThread.Identify(Mm(34.8m), 24m)));
        Assert.Contains("1.375x24", Keys(FreewheelThread.Identify(Mm(34.8m))));
    }

    [Theory]
    [InlineData(7.1, null, "5-8")]
    [InlineData(6.6, null, "9")]
    [InlineData(5.9, null, "10")]
    [InlineData(5.6, null, "11")]
    [InlineData(5.2, null, "12")]
    [InlineData(4.9, null, "13")]
    [InlineData(9.0, null, "1/8")]
    [InlineData(null, 3.2, "1/8")]
    [InlineData(null, 4.0, "5/32")]
    [InlineData(10.0, 4.0, "5/32")]
    public void A_chain_is_told_over_the_rivets_or_inside(double? rivets, double? inner, string first) =>
        Assert.Equal(first, ChainSize.Identify(rivets is { } r ? Mm((decimal)r) : null, inner is { } i ? Mm((decimal)i) : null).Candidates[0].Value.FitKey);

    [Fact]
    public void The_inside_alone_leaves_five_chains_to_the_rivets()
    {
        Identification<ChainSize> found = ChainSize.Identify(innerWidth: Mm(2.18m, 0.05m));
        Assert.Equal(["9", "10", "11", "12", "13"], Keys(found));
        Assert.StartsWith("over the rivets", found.Next, StringComparison.Ordinal);
    }

    [Fact]
    public void Low_direct_mounts_are_told_by_the_bolts_and_a_step()
    {
        Assert.Equal(["low-direct-S1"], Keys(FrontDerailleurMount.Identify(boltSpacing: Mm(42.7m))));
        Identification<FrontDerailleurMount> found = FrontDerailleurMount.Identify(boltSpacing: Mm(22.1m));
        Assert.Equal(["low-direct-S2", "low-direct-S3"], Keys(found));
        Assert.Contains("0 to 0.5 mm is low-direct-S2; 5 mm is low-direct-S3", found.Next, StringComparison.Ordinal);
        Assert.Equal(["band-31.8"], Keys(FrontDerailleurMount.Identify(tube: Mm(31.75m))));
        Assert.Empty(FrontDerailleurMount.Identify(tube: Mm(30.2m)).Candidates);
    }

    [Fact]
    public void Guide_tabs_are_14_mm_apart()
    {
        Assert.Equal(["ISCG"], Keys(ChainGuideMount.Identify(Mm(59m, 0.5m))));
        Assert.Equal(["ISCG05"], Keys(ChainGuideMount.Identify(Mm(73m, 0.5m))));
    }

    [Fact]
    public void A_chainline_is_told_by_its_figure_and_its_rings()
    {
        Assert.Equal(["road-2x"], Keys(FrontChainline.Identify(Mm(43.5m, 0.5m), 2)));
        Assert.Equal(["off-road-1x-52", "single-52"], Keys(FrontChainline.Identify(Mm(52m), 1)));
        Assert.Contains("148", FrontChainline.Identify(Mm(52m), 1).Candidates[0].TellsApart, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => FrontChainline.Identify(Mm(52m), 0));
    }

    [Fact]
    public void Nothing_measured_and_nonsense_are_refused()
    {
        Assert.Throws<ArgumentException>(() => BoltCircle.Identify(arms: 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltCircle.Identify(Mm(73.5m), arms: 0));
        Assert.Throws<ArgumentException>(() => FreehubBody.Identify(default, 9));
        Assert.Throws<ArgumentException>(() => ChainSize.Identify());
        Assert.Throws<ArgumentException>(() => FrontDerailleurMount.Identify());
        Assert.Throws<ArgumentException>(() => FreewheelThread.Identify());
    }

    private static MeasuredLength Mm(decimal millimetres, decimal error = 0.1m) => MeasuredLength.OfMillimetres(millimetres, error);

    private static IEnumerable<string> Keys<T>(Identification<T> found)
        where T : Standard<T>, IInterfaceValue<T> => found.Candidates.Select(c => c.Value.FitKey);
}
