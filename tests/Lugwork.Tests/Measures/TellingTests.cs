using Lugwork.Brakes;
using Lugwork.Hubs;
using Lugwork.Steering;
using Lugwork.Suspension;

namespace Lugwork.Tests.Measures;

/// <summary>What tells one candidate from the next, and the ends of what a reading allows.</summary>
public sealed class TellingTests
{
    private static MeasuredLength Mm(decimal millimetres, decimal error = 0) => MeasuredLength.OfMillimetres(millimetres, error);

    /// <summary>A metric axle has 1 mm a turn; English hub axles have 24 or 26 turns an inch (facts of the trade).</summary>
    [Fact]
    public void A_gauge_tells_axles_of_one_thickness()
    {
        Identification<HubAxleThread> tens = HubAxleThread.Identify(outside: Mm(9.9m, 0.1m));
        Assert.Contains(tens.Candidates, c => c.TellsApart == "a metric gauge of 1 mm");
        Assert.All(tens.Candidates.Where(c => c.Value.FitKey.Contains('/', StringComparison.Ordinal)), c => Assert.Matches("a gauge of [0-9]+ turns an inch", c.TellsApart));
    }

    [Fact]
    public void A_shock_of_inches_is_named_so()
    {
        foreach (ShockSize size in ShockSize.All.Where(s => s.Mount == ShockMount.Eyelet))
        {
            string tells = ShockSize.Identify(Mm((decimal)size.EyeToEye.Millimeters), Mm((decimal)size.Stroke.Millimeters)).Candidates.First(c => c.Value == size).TellsApart;
            Assert.Equal(size.IsMetric, !tells.Contains("named", StringComparison.Ordinal));
        }
    }

    /// <summary>A bore of 34.0 to 34.1 mm read with an error that just reaches it.</summary>
    [Fact]
    public void A_bore_at_the_end_of_the_error_is_a_candidate()
    {
        foreach (HeadTubeBore bore in HeadTubeBore.All.Where(b => b != HeadTubeBore.Zs62))
        {
            decimal least = (decimal)bore.Least.Millimeters;
            Assert.Contains(bore, HeadTubeBore.WithinError(least - 0.5m, 0.5m));
            Assert.DoesNotContain(bore, HeadTubeBore.WithinError(least - 0.5m, 0.49m));
        }
    }

    /// <summary>Bosses stand 80 mm apart, 75 to 85 as a rule (common practice, no source of our own for the ends).</summary>
    [Fact]
    public void Bosses_have_their_usual_spacing()
    {
        Assert.Equal(75, BrakeBoss.Cantilever622.LeastUsualSpacing!.Value.Millimeters);
        Assert.Equal(80, BrakeBoss.Cantilever622.Spacing!.Value.Millimeters);
        Assert.Equal(85, BrakeBoss.Cantilever622.MostUsualSpacing!.Value.Millimeters);
        Assert.Null(BrakeBoss.UBrake.LeastUsualSpacing);
    }
}
