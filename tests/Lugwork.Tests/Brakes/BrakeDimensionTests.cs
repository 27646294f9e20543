using Lugwork.Brakes;

namespace Lugwork.Tests.Brakes;

/// <summary>Dimensions of brakes, what tells neighbours apart and what to measure next.</summary>
public sealed class BrakeDimensionTests
{
    [Fact]
    public void Posts_are_found_by_their_spacing_and_the_height_ranks_them_without_ruling_a_neighbour_out()
    {
        Identification<BrakeMount> posts = BrakeMount.Identify(holeSpacing: MeasuredLength.OfMillimetres(74.1m));
        Assert.Equal([BrakeMount.Post140, BrakeMount.Post160, BrakeMount.Post180, BrakeMount.Post200, BrakeMount.Post203], posts.Candidates.Select(c => c.Value));
        Assert.Empty(posts.Next);
        Assert.Contains("the rotor printed on the frame or fork decides", posts.Candidates[0].TellsApart, StringComparison.Ordinal);

        Identification<BrakeMount> told = BrakeMount.Identify(MeasuredLength.OfMillimetres(74.1m), axleToPostFace: MeasuredLength.OfMillimetres(65m, 0.5m));
        Assert.Equal([BrakeMount.Post180, BrakeMount.Post200, BrakeMount.Post160], told.Candidates.Select(c => c.Value));
        Assert.All(told.Candidates, c => Assert.NotEmpty(c.TellsApart));
        Assert.Empty(told.Next);
    }

    [Fact]
    public void Old_posts_are_told_from_those_of_today()
    {
        Assert.Equal([BrakeMount.Post68], BrakeMount.Identify(MeasuredLength.OfMillimetres(68.6m)).Candidates.Select(c => c.Value));
        Assert.Equal([BrakeMount.Tab22], BrakeMount.Identify(MeasuredLength.OfMillimetres(22m)).Candidates.Select(c => c.Value));
        Assert.Empty(BrakeMount.Identify(MeasuredLength.OfMillimetres(71m)).Candidates);
    }

    [Fact]
    public void Front_and_rear_tabs_are_told_by_the_farther_hole()
    {
        Identification<BrakeMount> tabs = BrakeMount.Identify(MeasuredLength.OfMillimetres(51m));
        Assert.Equal([BrakeMount.InternationalStandardFront, BrakeMount.InternationalStandardRear, BrakeMount.InternationalStandardFrontDownhill], tabs.Candidates.Select(c => c.Value));
        Assert.StartsWith("axle to farther hole", tabs.Next, StringComparison.Ordinal);
        Assert.Equal(BrakeMount.InternationalStandardRear, BrakeMount.Identify(MeasuredLength.OfMillimetres(51m), MeasuredLength.OfMillimetres(79.3m)).Candidates[0].Value);
        Assert.Equal(BrakeMount.InternationalStandardFront, BrakeMount.Identify(MeasuredLength.OfMillimetres(51m), MeasuredLength.OfMillimetres(88m)).Candidates[0].Value);
    }

    [Fact]
    public void The_three_eight_inch_rotors_are_three()
    {
        foreach (long size in new long[] { 200, 203, 205 })
        {
            Identified<RotorSize> only = Assert.Single(RotorSize.Identify(MeasuredLength.OfMillimetres(size, 0.9m)).Candidates);
            Assert.Equal(size, only.Value.FitCode);
            Assert.Contains("203", only.TellsApart, StringComparison.Ordinal);
        }

        Assert.Equal([203L, 200L], RotorSize.Identify(MeasuredLength.OfMillimetres(202m, 2m)).Candidates.Select(c => c.Value.FitCode));
        Assert.Equal(203, RotorSize.Identify(MeasuredLength.OfMillimetres(203.2m, 0)).Candidates.Single().Value.FitCode);
    }

    [Fact]
    public void A_reach_is_offered_by_every_class_that_covers_it()
    {
        Assert.Equal(["medium-47-57", "long-55-73"], Keys(56m));
        Assert.Equal(["short-42-52", "medium-47-57"], Keys(52m));
        Assert.Equal(["short-39-49", "short-39-51"], Keys(39m));
        Assert.Empty(Keys(80m));

        static IEnumerable<string> Keys(decimal reading) => RimBrakeReach.Identify(MeasuredLength.OfMillimetres(reading)).Candidates.Select(c => c.Value.FitKey);
    }

    [Theory]
    [InlineData(46.9, Verdict.NeedsMeasuring)]
    [InlineData(46.8, Verdict.DoesNotFit)]
    [InlineData(47.1, Verdict.Fits)]
    [InlineData(47.0, Verdict.NeedsMeasuring)]
    [InlineData(56.9, Verdict.Fits)]
    [InlineData(57.1, Verdict.NeedsMeasuring)]
    [InlineData(57.2, Verdict.DoesNotFit)]
    public void At_the_end_of_a_reach_the_error_leaves_it_open(double reading, Verdict expected) =>
        Assert.Equal(expected, RimBrakeReach.Parse("47-57", null).Check(MeasuredLength.OfMillimetres((decimal)reading)).Verdict);

    [Theory]
    [InlineData(1.49, 0.0, "1.5", Verdict.Unsafe)]
    [InlineData(1.5, 0.0, "1.5", Verdict.Fits)]
    [InlineData(1.55, 0.1, "1.5", Verdict.NeedsMeasuring)]
    [InlineData(1.45, 0.1, "1.5", Verdict.Unsafe)]
    [InlineData(1.6, 0.1, "1.5", Verdict.Fits)]
    [InlineData(2.0, 0.0, null, Verdict.NeedsMeasuring)]
    public void A_rotor_under_its_mark_is_unsafe(double thickness, double error, string? marked, Verdict expected) =>
        Assert.Equal(expected, RotorThickness.Check(MeasuredLength.OfMillimetres((decimal)thickness, (decimal)error), marked is null ? null : Dimension.Parse(marked, null)).Verdict);

    [Fact]
    public void A_lockring_is_bounded_by_its_axle()
    {
        Assert.Equal(Verdict.Fits, Lockring.Internal.OnAxle(UnitsNet.Length.FromMillimeters(12)).Verdict);
        Assert.Equal(Verdict.DoesNotFit, Lockring.Internal.OnAxle(UnitsNet.Length.FromMillimeters(13)).Verdict);
        Assert.All([5, 12, 15, 20], a => Assert.Equal(Verdict.Fits, Lockring.External.OnAxle(UnitsNet.Length.FromMillimeters(a)).Verdict));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lockring.External.OnAxle(UnitsNet.Length.FromMillimeters(21)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lockring.Internal.OnAxle(UnitsNet.Length.FromMillimeters(4)));
    }

    [Fact]
    public void A_flat_mount_says_what_its_plate_gives()
    {
        Assert.Equal((140, 160), (BrakeMount.FlatFront140.NativeRotorMillimetres, BrakeMount.FlatFront140.PlateRotorMillimetres));
        Assert.Equal((160, 180), (BrakeMount.FlatRear160.NativeRotorMillimetres, BrakeMount.FlatRear160.PlateRotorMillimetres));
        Assert.Null(BrakeMount.Post160.PlateRotorMillimetres);
        Assert.All(BrakeMount.All.Where(m => m.Form == MountForm.Flat), m => Assert.Equal(SourceKind.Memory, m.HoleSpacingSource.Kind));
        Assert.Equal("", BrakeMount.Tab22.Bolt);
    }
}
