using Lugwork.Brakes;
using UnitsNet;

namespace Lugwork.Tests.Brakes;

/// <summary>Mounts, calipers, rotors, reaches, bosses and bolts by their dimensions, taken from what the values say of themselves.</summary>
public sealed class BrakeMeasuringLaws
{
    [Fact]
    public void A_mount_is_told_by_its_holes_and_heights() => Measuring.Holds(
        BrakeMount.All,
        m => [[Exact(m.HoleSpacing), Exact(m.AxleToFarHole), m == BrakeMount.Post203 ? null : Exact(m.AxleToPostFace)]],
        r => BrakeMount.Identify(r[0], r[1], r[2]));

    [Fact]
    public void Posts_for_200_and_203_stay_together_because_drawings_differ_by_more()
    {
        decimal face = Exact(BrakeMount.Post203.AxleToPostFace)!.Value;
        foreach (decimal off in new[] { -8.7m, -4.1m, 0m, 4.1m, 8.7m })
        {
            Identification<BrakeMount> found = BrakeMount.Identify(axleToPostFace: MeasuredLength.OfMillimetres(face + off));
            Assert.Contains(BrakeMount.Post203, found.Candidates.Select(c => c.Value));
        }

        Identification<BrakeMount> exact = BrakeMount.Identify(MeasuredLength.OfMillimetres(74m, 0), axleToPostFace: MeasuredLength.OfMillimetres(face, 0));
        Assert.Equal([BrakeMount.Post200, BrakeMount.Post203], exact.Candidates.Take(2).Select(c => c.Value));
        Assert.All(exact.Candidates.Take(2), c => Assert.Contains("1.5 mm of radius", c.TellsApart, StringComparison.Ordinal));
    }

    [Fact]
    public void A_caliper_is_told_by_its_holes() => Measuring.Holds(CaliperFoot.All, f => [[Exact(f.HoleSpacing)]], r => CaliperFoot.Identify(r[0]!.Value));

    [Fact]
    public void A_rotor_is_told_by_its_outside() => Measuring.Holds(RotorSize.All, s => [[Exact(s.Diameter)]], r => RotorSize.Identify(r[0]!.Value));

    [Fact]
    public void A_thickness_family_is_told_by_the_unworn_rotor()
    {
        foreach (RotorThickness family in RotorThickness.All)
        {
            foreach (Length unworn in new[] { family.New, family.MostNew })
            {
                Identified<RotorThickness> own = RotorThickness.Identify(MeasuredLength.OfMillimetres(Exact(unworn)!.Value, 0)).Candidates.Single(c => c.Value == family);
                Assert.Equal(0, own.DeviationMillimetres);
            }
        }
    }

    [Fact]
    public void A_reach_holds_at_both_its_ends_and_not_beyond()
    {
        foreach (RimBrakeReach reach in RimBrakeReach.All)
        {
            decimal least = Exact(reach.Least)!.Value;
            decimal most = Exact(reach.Most)!.Value;
            foreach (decimal error in new[] { 0m, 0.1m, 1m })
            {
                Assert.Contains(reach, Found(least - error, error));
                Assert.Contains(reach, Found(most + error, error));
                Assert.DoesNotContain(reach, Found(least - error - 0.01m, error));
                Assert.DoesNotContain(reach, Found(most + error + 0.01m, error));
                Assert.Equal(Verdict.DoesNotFit, reach.Check(MeasuredLength.OfMillimetres(least - error - 0.01m, error)).Verdict);
                Assert.Equal(Verdict.DoesNotFit, reach.Check(MeasuredLength.OfMillimetres(most + error + 0.01m, error)).Verdict);
            }
        }

        static IEnumerable<RimBrakeReach> Found(decimal reading, decimal error) => RimBrakeReach.Identify(MeasuredLength.OfMillimetres(reading, error)).Candidates.Select(c => c.Value);
    }

    [Fact]
    public void Bosses_are_told_by_their_distance_from_the_axle() => Measuring.Holds(
        BrakeBoss.All.Where(b => b.IsBelowRim),
        b => [[Exact(b.ToAxle), Exact(b.Spacing)], [Exact(b.ToAxle), Exact(b.LeastUsualSpacing)], [Exact(b.ToAxle), Exact(b.MostUsualSpacing)]],
        r => BrakeBoss.Identify(r[0], r[1]));

    [Fact]
    public void A_bolt_is_told_by_its_thread_and_the_hole_behind_it() => Measuring.Holds(
        BrakeBolt.All,
        b => [[Exact(b.Diameter), Exact(b.Counterbore ?? b.Diameter)]],
        r => BrakeBolt.Identify(r[0], r[1]));

    [Fact]
    public void A_default_or_nothing_is_no_reading()
    {
        Assert.Throws<ArgumentException>(() => BrakeMount.Identify());
        Assert.Throws<ArgumentException>(() => RotorSize.Identify(default));
        Assert.Throws<ArgumentException>(() => BrakeBoss.Identify(default(MeasuredLength)));
        Assert.Throws<ArgumentException>(() => BrakeBolt.Identify(null, default(MeasuredLength)));
        Assert.Throws<ArgumentException>(() => RimBrakeReach.All[0].Check(default));
        Assert.Throws<ArgumentException>(() => RotorThickness.Check(default, null));
    }

    private static decimal? Exact(Length? length)
    {
        double? millimetres = length?.Millimeters;
        return millimetres is { } mm ? (decimal)mm : null;
    }
}
