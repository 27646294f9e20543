using Lugwork.Hubs;

namespace Lugwork.Tests.Hubs;

/// <summary>What holds for telling hubs and their threads by measuring.</summary>
public sealed class HubIdentificationLaws
{
    private static readonly decimal[] Errors = [0m, 0.02m, 0.1m, 0.3m, 1m];

    /// <summary>How far the crests of a real thread may lie below its name.</summary>
    private static readonly decimal[] Below = [0m, 0.1m, 0.2m, 0.25m];

    [Fact]
    public void Exact_dimensions_give_the_hub_first_or_among_its_equals()
    {
        foreach (HubStandard hub in HubStandard.All.Where(h => h.OldMicrometres > 0 && h.Sizes.IsEmpty))
        {
            foreach (int axle in hub.Axles)
            {
                Identification<HubStandard> found = HubStandard.Identify(
                    Exactly(hub.OverLocknut), hub.GapMicrometres > 0 ? Exactly(hub.InnerGap) : null, MeasuredLength.OfMillimetres(axle / 1000m, 0), hub.EndCap is { } cap ? Exactly(cap) : null, hub.IsRear);
                Identified<HubStandard> own = Assert.Single(found.Candidates, c => c.Value == hub);
                Assert.Equal(found.Candidates[0].DeviationMillimetres, own.DeviationMillimetres);
            }
        }
    }

    [Fact]
    public void A_reading_within_its_error_never_drops_the_hub()
    {
        foreach (HubStandard hub in HubStandard.All.Where(h => h.OldMicrometres > 0 && h.Sizes.IsEmpty))
        {
            foreach (decimal error in Errors)
            {
                foreach (decimal off in new[] { -error, -error / 2, 0, error / 2, error })
                {
                    MeasuredLength width = MeasuredLength.OfMillimetres((hub.OldMicrometres / 1000m) + off, error);
                    MeasuredLength axle = MeasuredLength.OfMillimetres((hub.Axles[0] / 1000m) - off, error);
                    Assert.Contains(HubStandard.Identify(overLocknut: width, axle: axle).Candidates, c => c.Value == hub);
                    if (hub.GapMicrometres > 0)
                    {
                        MeasuredLength gap = MeasuredLength.OfMillimetres((hub.GapMicrometres / 1000m) + off, error);
                        Assert.Contains(HubStandard.Identify(innerGap: gap, isRear: hub.IsRear).Candidates, c => c.Value == hub);
                    }
                }
            }
        }
    }

    [Fact]
    public void Each_candidate_is_named_once_and_they_come_nearest_first()
    {
        for (decimal width = 68; width < 200; width += 0.5m)
        {
            Identification<HubStandard> found = HubStandard.Identify(overLocknut: MeasuredLength.OfMillimetres(width, 1.5m));
            Assert.Equal(found.Candidates.Length, found.Candidates.DistinctBy(c => c.Value).Count());
            Assert.Equal(found.Candidates.Select(c => c.DeviationMillimetres).Order(), found.Candidates.Select(c => c.DeviationMillimetres));
            Assert.True(found.Next.Length == 0 || found.Candidates.Length > 1);
        }
    }

    [Fact]
    public void Front_and_rear_share_out_what_both_together_give()
    {
        foreach (decimal width in new[] { 100m, 110m, 135m, 142m, 150m })
        {
            MeasuredLength reading = MeasuredLength.OfMillimetres(width, 0.2m);
            IEnumerable<HubStandard> parts = HubStandard.Identify(reading, isRear: false).Candidates.Concat(HubStandard.Identify(reading, isRear: true).Candidates).Select(c => c.Value);
            Assert.Equal(HubStandard.Identify(reading).Candidates.Select(c => c.FitCode()).Order(), parts.Select(p => p.FitCode).Order());
            Assert.All(HubStandard.Identify(reading, isRear: false).Candidates, c => Assert.False(c.Value.IsRear));
        }
    }

    [Fact]
    public void Threads_are_first_by_their_exact_dimensions_and_never_dropped_within_the_error()
    {
        foreach (decimal error in Errors)
        {
            foreach (decimal off in new[] { -error, 0, error })
            {
                foreach (HubAxleThread thread in HubAxleThread.All)
                {
                    MeasuredLength ten = MeasuredLength.OfMillimetres(decimal.Round((decimal)thread.Pitch.Millimeters * 10, 4) + off, error);
                    foreach (decimal below in Below)
                    {
                        Kept(thread, HubAxleThread.Identify(Off(thread.Diameter, off - below, error), ten), off);
                    }
                }

                foreach (AxleThread thread in AxleThread.All.Where(t => t != AxleThread.Own))
                {
                    MeasuredLength five = MeasuredLength.OfMillimetres(((decimal)thread.Pitch!.Value.Millimeters * 5) + off, error);
                    foreach (decimal below in Below)
                    {
                        Kept(thread, AxleThread.Identify(Off(thread.NominalDiameter!.Value, off - below, error), five), off);
                    }
                }
            }
        }
    }

    [Theory]
    [InlineData("9.85", "10", "M10x1")]
    [InlineData("9.4", "9.77", "3/8x26")]
    [InlineData("7.8", null, "5/16x24 5/16x26")]
    [InlineData("13.8", null, "M14x1")]
    public void The_crests_of_an_axle_lie_below_its_name(string outside, string? turns, string threads)
    {
        Identification<HubAxleThread> found = HubAxleThread.Identify(Reading(outside), turns is null ? null : Reading(turns));
        Assert.Equal(threads, string.Join(' ', found.Candidates.Select(c => c.Value)));
        Assert.Equal(threads.Contains(' ', StringComparison.Ordinal), found.Next.StartsWith("ten turns ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_crests_of_a_thru_axle_lie_below_its_name()
    {
        Assert.Equal([AxleThread.M15Pitch1Point5, AxleThread.Own], AxleThread.Identify(Reading("14.8"), Reading("7.5")).Candidates.Select(c => c.Value));
        Assert.StartsWith("five turns ", AxleThread.Identify(Reading("11.8")).Next, StringComparison.Ordinal);
    }

    [Fact]
    public void A_makers_own_thread_is_never_ruled_out_and_comes_last()
    {
        Identification<AxleThread> found = AxleThread.Identify(MeasuredLength.OfMillimetres(11.9m), MeasuredLength.OfMillimetres(7.5m));
        Assert.Equal([AxleThread.M12Pitch1Point5, AxleThread.Own], found.Candidates.Select(c => c.Value));
        Assert.Same(AxleThread.Own, Assert.Single(AxleThread.Identify(MeasuredLength.OfMillimetres(19.8m)).Candidates).Value);
    }

    [Fact]
    public void Without_a_reading_nothing_is_identified()
    {
        Assert.Throws<ArgumentException>(() => HubStandard.Identify());
        Assert.Throws<ArgumentException>(() => HubStandard.Identify(default(MeasuredLength)));
        Assert.Throws<ArgumentException>(() => AxleThread.Identify());
        Assert.Throws<ArgumentException>(() => HubAxleThread.Identify());
        Assert.Empty(HubStandard.Identify(overLocknut: MeasuredLength.OfMillimetres(250)).Candidates);
    }

    private static void Kept<T>(T value, Identification<T> found, decimal off)
    {
        Identified<T> own = Assert.Single(found.Candidates, c => Equals(c.Value, value));
        Assert.True(off != 0 || own.DeviationMillimetres == found.Candidates[0].DeviationMillimetres, $"{value} is not among the nearest");
    }

    private static MeasuredLength Reading(string millimetres) => MeasuredLength.OfMillimetres(decimal.Parse(millimetres, System.Globalization.CultureInfo.InvariantCulture));

    private static MeasuredLength Exactly(UnitsNet.Length length) => Off(length, 0, 0);

    private static MeasuredLength Off(UnitsNet.Length length, decimal off, decimal error)
    {
        double millimetres = length.Millimeters;
        return MeasuredLength.OfMillimetres(decimal.Round((decimal)millimetres, 4) + off, error);
    }
}

file static class Codes
{
    public static long FitCode(this Identified<HubStandard> candidate) => candidate.Value.FitCode;
}
