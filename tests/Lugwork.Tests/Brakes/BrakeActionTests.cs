using Lugwork.Brakes;

namespace Lugwork.Tests.Brakes;

/// <summary>Lever against brake, fluid against fluid, brake against bosses: total, and no milder than what is known.</summary>
public sealed class BrakeActionTests
{
    [Fact]
    public void Every_pair_has_a_verdict_with_a_reason_that_can_be_worded()
    {
        Check(BrakeActionRelations.LeverAndBrake, CablePull.All.Select(p => p.FitCode), BrakeType.All.Select(t => t.FitCode));
        Check(BrakeActionRelations.Fluid, BrakeFluid.All.Select(f => f.FitCode), BrakeFluid.All.Select(f => f.FitCode));
        Check(BrakeActionRelations.BrakeOnBosses, BrakeBoss.All.Select(b => b.FitCode), BrakeType.All.Select(t => t.FitCode));

        static void Check(Relation relation, IEnumerable<long> rows, IEnumerable<long> columns)
        {
            foreach (long row in rows)
            {
                foreach (long column in columns)
                {
                    Outcome outcome = relation.Judge([row, column]);
                    Assert.NotEqual(Verdict.NotJudged, outcome.Verdict);
                    Assert.DoesNotContain("{", string.Format(System.Globalization.CultureInfo.InvariantCulture, outcome.Reason!.Template, "a", "b"), StringComparison.Ordinal);
                    Assert.All(outcome.Reason.Sources, s => Assert.Contains(s, Sources.All));
                }

                Assert.Equal(Verdict.DoesNotFit, relation.Judge([row, 0]).Verdict);
            }
        }
    }

    [Fact]
    public void What_no_page_says_is_never_a_fit()
    {
        Assert.All(BrakeType.All.Where(t => t != BrakeType.RoadCableDisc), t => Assert.True(BrakeActionRelations.LeverAndBrake.Judge([CablePull.NewerRoad.FitCode, t.FitCode]).Verdict >= Verdict.NeedsMeasuring));
        Assert.All([BrakeType.Drum, BrakeType.CableHydraulicDisc, BrakeType.CentrePull, BrakeType.RollerCam], t => Assert.All(
            CablePull.All, p => Assert.Equal(Verdict.NeedsMeasuring, BrakeActionRelations.LeverAndBrake.Judge([p.FitCode, t.FitCode]).Verdict)));
    }

    [Fact]
    public void A_newer_road_lever_is_no_long_pull_lever() =>
        Assert.Equal(Verdict.Unsafe, BrakeActionRelations.LeverAndBrake.Judge([CablePull.NewerRoad.FitCode, BrakeType.DirectPull.FitCode]).Verdict);

    [Fact]
    public void Only_a_brake_with_two_arms_goes_on_bosses() =>
        Assert.All(
            BrakeType.All.Where(t => t.Place is not (BrakePlace.BossesBelowRim or BrakePlace.BossesAboveRim)),
            t => Assert.All(BrakeBoss.All, b => Assert.Equal(Verdict.DoesNotFit, BrakeActionRelations.BrakeOnBosses.Judge([b.FitCode, t.FitCode]).Verdict)));

    [Fact]
    public void An_adapter_gives_a_rotor_that_the_mount_takes()
    {
        foreach (BrakeMount mount in BrakeMount.All.Where(m => m.Form == MountForm.Posts && m != BrakeMount.Post68))
        {
            foreach (AdapterIncrement step in AdapterIncrement.All)
            {
                RotorSize? rotor = step.RotorOn(mount);
                Assert.Equal(rotor is null ? null : (long?)(mount.NativeRotorMillimetres + step.Millimetres), rotor?.FitCode);
                double half = step.AlongRadius.Millimeters;
                Assert.Equal(step.Millimetres / 2.0, half);
            }
        }
    }
}
