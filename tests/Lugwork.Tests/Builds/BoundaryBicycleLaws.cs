using FsCheck;
using FsCheck.Xunit;

namespace Lugwork.Tests.Builds;

/// <summary>Check and needs sheet on bicycles at the boundary of several checks at once.</summary>
public sealed class BoundaryBicycleLaws
{
    [Property(MaxTest = 60)]
    public void Check_and_needs_sheet_agree_at_the_boundary_of_several_checks(DoNotSize<int> seed)
    {
        Build build = BoundaryBicycles.Draw(new Random(seed.Item));
        if (BoundaryBicycles.Disagreement(build) is not null)
        {
            Build smallest = BoundaryBicycles.Shrunk(build, b => BoundaryBicycles.Disagreement(b) is not null);
            Assert.Fail($"{BoundaryBicycles.Disagreement(smallest)}\n{BuildFile.Write(smallest)}");
        }
    }

    /// <summary>The law is aimed: its bicycles are judged by many checks, some of which are met and some missed by a hair.</summary>
    [Fact]
    public void The_bicycles_stand_at_boundaries()
    {
        HashSet<string> fit = [];
        HashSet<string> not = [];
        for (int seed = 0; seed < 40; seed++)
        {
            Build build = BoundaryBicycles.Draw(new Random(seed));
            foreach (Fit judged in build.Check().Findings.Where(f => f.Joint!.Inputs.All(i => i.Read(build[i.Slot]!).IsSettled)))
            {
                _ = judged.Verdict == Verdict.Fits ? fit.Add(judged.Joint!.Id) : not.Add(judged.Joint!.Id);
            }
        }

        string[] both = [.. fit.Intersect(not)];
        Assert.True(both.Length >= 24, string.Join(", ", both));
        string[] ofCondition = [.. both.Where(id => JointTable.All.Single(j => j.Id == id).IsOfCondition)];
        Assert.True(ofCondition.Length >= 8, string.Join(", ", ofCondition));
        Assert.Contains("chain-elongation", ofCondition);
        Assert.All(new[] { "head-angle-not-too-slack", "dropper-at-saddle-height", "standover-with-fork", "pedal-ground-clearance", "front-rotor-within-limit", "front-tyre-in-fork", "front-tyre-on-its-rim-in-fork", "toe-clearance" }, id => Assert.Contains(id, both));
    }

    /// <summary>A law that is false on purpose, and the smallest bicycle that breaks it.</summary>
    [Fact]
    public void A_disagreement_is_shrunk_to_the_smallest_bicycle()
    {
        static bool Short(Build build) => build.Check().Findings.Any(f => f.Joint!.Id == "steerer-reaches-stem" && f.Verdict == Verdict.Unsafe);
        Build build = Enumerable.Range(0, 200).Select(seed => BoundaryBicycles.Draw(new Random(seed))).First(Short);
        Build smallest = BoundaryBicycles.Shrunk(build, Short);
        Assert.Equal([Slot.Frame, Slot.Fork, Slot.Headset, Slot.Stem], Slot.All.Where(s => smallest[s] is not null));
        Assert.All(Slot.All.Where(s => smallest[s] is not null), s => Assert.True(PartForms.Of(s).Write(smallest[s]!).Count() <= 2, BuildFile.Write(smallest)));
        Assert.Equal(["travel", "steererLength"], PartForms.Fork.Write(smallest[Slot.Fork]!).Select(p => p.Key));
        Assert.Equal(["headTubeLength"], PartForms.Frame.Write(smallest.Frame).Select(p => p.Key));
    }
}
