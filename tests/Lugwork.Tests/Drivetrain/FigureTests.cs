using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Figures that the tables give, as quantities.</summary>
public sealed class FigureTests
{
    [Fact]
    public void A_bolt_circle_has_a_chord_only_where_it_is_even()
    {
        Assert.Equal(73.539, BoltCircle.Parse("104", null).AdjacentHoles!.Value.Millimeters, 3);
        Assert.Null(BoltCircle.Parse("4x110", null).AdjacentHoles);
        Assert.All(BoltCircle.All, c => Assert.Equal(c.IsEven, c.AdjacentHoles is not null));
        Assert.All(BoltCircle.All, c => Assert.Equal(c.SmallestRing is null, c.SmallestRingSource is null));
    }

    [Fact]
    public void Every_smallest_ring_clears_its_bolts()
    {
        Assert.All(BoltCircle.All.Where(c => c.SmallestRing is not null), c => Assert.InRange(c.RootOver(c.SmallestRing!.Value).Millimeters, 13.8, 26.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltCircle.All[0].RootOver(9));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltCircle.All[0].RootOver(81));
    }

    [Fact]
    public void The_stack_is_pitches_and_one_sprocket()
    {
        Assert.All(SprocketSpacing.All.Where(s => s.Sprocket is not null && s.Spacer is not null && s.LeastMicrometres == s.MostMicrometres), s =>
        {
            Assert.Equal(s.Sprocket!.Value.Millimeters + s.Spacer!.Value.Millimeters, s.MostPitch!.Value.Millimeters, 9);
            Assert.Equal((s.Speeds * s.Sprocket.Value.Millimeters) + ((s.Speeds - 1) * s.Spacer.Value.Millimeters), s.Stack!.Value.Millimeters, 9);
        });
        Assert.Null(SprocketSpacing.Parse("10-8-spline", null).Stack);
        Assert.Null(SprocketSpacing.Parse("LG-9", null).MostPitch);
        Assert.False(SprocketSpacing.Parse("11-8-spline", null).HasEqualSteps);
    }

    [Fact]
    public void A_rear_chainline_moves_with_half_of_the_gap_and_all_of_the_end()
    {
        foreach (SprocketSpacing spacing in SprocketSpacing.All.Where(s => s.Stack is not null))
        {
            RearChainline narrow = spacing.InInnerGap(Dimension.OfMillimetres(130m))!;
            RearChainline wide = spacing.InInnerGap(Dimension.OfMillimetres(136m), Dimension.OfMillimetres(3.5m))!;
            Assert.Equal(2.5, wide.Smallest.Millimeters - narrow.Smallest.Millimeters, 9);
            Assert.Equal(2.5, wide.Middle.Millimeters - narrow.Middle.Millimeters, 9);
            Assert.Equal(spacing.FirstToLast!.Value.Millimeters, narrow.Smallest.Millimeters - narrow.Largest.Millimeters, 9);
        }

        Assert.Null(SprocketSpacing.Parse("LG-9", null).InInnerGap(Dimension.OfMillimetres(135m)));
        Assert.Equal(Length.FromMillimeters(2), RearChainline.Error);
        Assert.Equal("61.2 to 25.65 mm, middle 43.425", SprocketSpacing.Parse("10", null).InInnerGap(Dimension.OfMillimetres(130m))!.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => SprocketSpacing.All[5].InInnerGap(default));
        Assert.Throws<ArgumentOutOfRangeException>(() => RearChainline.OfOneSprocketInInnerGap(Dimension.OfMillimetres(120m), Dimension.OfMillimetres(60m)));
    }

    [Fact]
    public void Bodies_of_one_family_differ_by_the_spacer()
    {
        Assert.Equal(1.85, FreehubBody.HgLong.LeastLength!.Value.Millimeters - FreehubBody.HgMedium.LeastLength!.Value.Millimeters, 9);
        Assert.Equal(4.4, FreehubBody.EightSpline.LeastLength!.Value.Millimeters - FreehubBody.N3w.LeastLength!.Value.Millimeters, 9);
        Assert.Null(FreehubBody.Xd.LeastLength);
        Assert.All(FreehubBody.All, b => Assert.Equal(b.LeastLength is null, b.LengthSource is null));
        Assert.All(FreehubBody.All, b => Assert.True(b.FewestTeeth <= b.UsualFewestTeeth));
    }

    [Fact]
    public void A_cassette_starts_no_lower_than_a_body_under_it_allows() => Assert.All(CassettePattern.All, cassette =>
        Assert.All(FreehubBody.All.Where(b => CassetteOnBody.Table.Judge([b.FitCode, cassette.FitCode]).Verdict == Verdict.Fits), b => Assert.True(cassette.FewestTeeth >= b.FewestTeeth, $"{cassette} on {b}")));

    [Fact]
    public void Wide_chains_go_with_no_derailleur_and_no_cassette()
    {
        foreach (SprocketClass sprockets in SprocketClass.All)
        {
            Verdict said = ChainRelations.OnSprockets.Judge([sprockets.FitCode, ChainSize.Freight.FitCode]).Verdict;
            bool one = sprockets == SprocketClass.Eighth || sprockets == SprocketClass.Single332;
            Assert.Equal(one ? Verdict.NeedsMeasuring : Verdict.DoesNotFit, said);
            Assert.Equal(said, ChainRelations.OnRings.Judge([sprockets.FitCode, ChainSize.Freight.FitCode]).Verdict);
        }

        Assert.All(ChainSize.All, c => Assert.Equal(Verdict.DoesNotFit, ChainRelations.ThroughDerailleur.Judge([c.FitCode, ChainSize.Freight.FitCode]).Verdict));
        Assert.Empty(ChainSize.WithinError(9m, 0.1m));
    }

    [Fact]
    public void Shell_figures_are_there_with_their_sources()
    {
        Assert.Equal(33.6, ShellFamily.Bsa.LeastBore!.Value.Millimeters, 9);
        Assert.Equal(34.9, ShellFamily.Bsa.MostCup!.Value.Millimeters, 9);
        Assert.Same(Sources.Memory, ShellFamily.T47.BoreSource);
        Assert.All(ShellFamily.All, f => Assert.Equal(f.LeastBore is null, f.BoreSource is null));
        Assert.All(ShellFamily.All, f => Assert.Equal(f.IsThreaded, f.Pitch is not null));
        Assert.All(SpindleSeat.All, s => Assert.Equal(s.LeastOutside is null, s.OutsideSource is null));
        Assert.Same(Sources.Memory, SpindleSeat.TenSpline.OutsideSource);
        Assert.All(RearChainline.Sources.AddRange(DirectMountRing.ChainlineSources), s => Assert.Contains(s, Sources.All));
        Assert.All(FrontChainline.All, c => Assert.Equal(c.Source == Sources.Derived, c.DerivedFrom is not null));
        Assert.All(Shell.All, s => Assert.True(s.LeastWidth <= s.Width && s.Width <= s.MostWidth));
        Assert.Equal(BearingPlace.Outboard, Shell.Parse("T47-68", null).Bearings);
        Assert.Equal(BearingPlace.Inside, Shell.Parse("T47-85.5", null).Bearings);
        Assert.Equal(BearingPlace.OutboardOnDriveSide, Shell.Parse("T47A-77", null).Bearings);
    }

    [Fact]
    public void A_recess_is_counted_by_the_name_of_the_sum()
    {
        SprocketSpacing twelve = SprocketSpacing.Parse("12-speed", null);
        RearChainline inner = twelve.InInnerGap(Dimension.OfMillimetres(141m))!;
        Assert.Equal(inner.Smallest.Millimeters, twelve.InRecessedEnds(Dimension.OfMillimetres(148m), UnitsNet.Length.FromMillimeters(3.5))!.Smallest.Millimeters, 9);
        Assert.Equal(inner.Smallest.Millimeters, twelve.InRecessedEnds(Dimension.OfMillimetres(141m), UnitsNet.Length.Zero)!.Smallest.Millimeters, 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => twelve.InRecessedEnds(Dimension.OfMillimetres(148m), UnitsNet.Length.FromMillimeters(10.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => twelve.InRecessedEnds(default, UnitsNet.Length.FromMillimeters(3.5)));
    }
}
