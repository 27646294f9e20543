using Lugwork.Brakes;

namespace Lugwork.Tests.Brakes;

/// <summary>Laws of a change of rotor, over every pair of the sets.</summary>
public sealed class RotorChangeLaws
{
    [Fact]
    public void There_and_back_is_nowhere_and_two_steps_are_one()
    {
        foreach (RotorSize a in RotorSize.All)
        {
            foreach (RotorSize b in RotorSize.All)
            {
                RotorChange there = RotorChange.Of(a, b);
                RotorChange back = RotorChange.Of(b, a);
                Assert.Equal(0, (there.AlongRadius + back.AlongRadius).Millimeters, 1e-9);
                Assert.Equal(0, (there.SquareToPosts + back.SquareToPosts).Millimeters, 1e-9);
                Assert.Equal(0, (there.AlongPosts + back.AlongPosts).Millimeters, 1e-9);
                Assert.Equal(1, there.TorqueRatio * back.TorqueRatio, 1e-9);
                Assert.Equal(Math.Pow(there.AlongRadius.Millimeters, 2), Math.Pow(there.SquareToPosts.Millimeters, 2) + Math.Pow(there.AlongPosts.Millimeters, 2), 6);
                Assert.Equal(b.FitCode > a.FitCode, there.AlongRadius.Millimeters > 0);
                foreach (RotorSize c in RotorSize.All)
                {
                    Assert.Equal(RotorChange.Of(a, c).AlongRadius.Millimeters, (there.AlongRadius + RotorChange.Of(b, c).AlongRadius).Millimeters, 1e-9);
                }
            }
        }
    }

    [Fact]
    public void A_choice_says_what_the_joint_says_and_an_increment_leads_to_its_rotor()
    {
        foreach (BrakeMount mount in BrakeMount.All)
        {
            foreach (CaliperFoot caliper in CaliperFoot.All)
            {
                foreach (RotorSize rotor in RotorSize.All)
                {
                    AdapterChoice choice = AdapterChoice.Of(mount, caliper, rotor, rotor);
                    Verdict joint = BrakeRelations.OnMount.Judge([mount.FitCode, caliper.FitCode, rotor.FitCode * 1_000_000]).Verdict;
                    Assert.Equal(joint, choice.OnMount.Verdict);
                    Assert.Equal(Verdict.Fits, choice.Limit.Verdict);
                    Assert.Equal(joint == Verdict.NeedsPart, choice.Adapter.Length > 0);
                    Assert.Equal(joint == Verdict.NeedsPart, choice.Increment is not null);
                    Assert.True(choice.Increment is null || choice.Increment.RotorOn(mount) == rotor, choice.ToString());
                    Assert.True(AdapterChoice.Of(mount, caliper, rotor, null).Verdict >= Verdict.NeedsMeasuring);
                }
            }
        }
    }

    [Fact]
    public void A_rotor_above_the_limit_is_unsafe_whatever_the_adapter()
    {
        foreach (RotorSize largest in RotorSize.All)
        {
            foreach (RotorSize rotor in RotorSize.All)
            {
                Verdict verdict = AdapterChoice.Of(BrakeMount.Post160, CaliperFoot.Post, rotor, largest).Verdict;
                Assert.Equal(rotor.FitCode > largest.FitCode, verdict == Verdict.Unsafe);
            }
        }
    }

    [Fact]
    public void Where_the_cable_share_is_not_one_nothing_fits()
    {
        foreach (CablePull lever in CablePull.All)
        {
            foreach (BrakeType brake in BrakeType.All)
            {
                LeverAndBrake pair = LeverAndBrake.Of(lever, brake);
                bool listedInMillimetres = lever == CablePull.NewerRoad && brake == BrakeType.RoadCableDisc;
                Assert.True(pair.Check.Verdict != Verdict.Fits || pair.CableShare == 1 || listedInMillimetres, pair.ToString());
                Assert.True(pair.CableShare is null || pair.CableShare * pair.ForceShare == 1);
            }
        }
    }
}
