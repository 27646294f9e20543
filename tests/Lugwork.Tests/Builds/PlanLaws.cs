using FsCheck;
using FsCheck.Xunit;

namespace Lugwork.Tests.Builds;

/// <summary>The packed codes by which a build is judged say what its parts say, however the build came to be.</summary>
public sealed class PlanLaws
{
    [Property(MaxTest = 500)]
    public void A_build_is_judged_as_its_parts_are_one_joint_at_a_time(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = Bicycles.Any(random);
        for (int turns = random.Next(6); turns > 0; turns--)
        {
            Slot slot = Slot.All[1 + random.Next(Slot.All.Length - 1)];
            build = random.Next(3) == 0 ? build.Without(slot) : build.With(Bicycles.Part(slot, random), slot);
        }

        Fit[] fits = new Fit[JointTable.All.Length];
        int count = build.Judge(fits);
        Joint[] filled = [.. JointTable.All.Where(j => j.IsFilled(build))];
        Assert.Equal(filled, fits[..count].Select(f => f.Joint!));
        Assert.All(fits[..count], f => Assert.Equal(f.Joint!.Judge(build), f.Verdict));
    }

    [Property(MaxTest = 20_000)]
    public void A_relation_settles_as_it_judges(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Fits.Rows.Row row = Fits.Rows.Draw(random);
        long[] values = [.. row.Inputs.Select(i => i.State == KnownState.None ? 0 : i.Low)];
        if (row.Inputs.All(i => i.IsSettled))
        {
            Assert.Equal(row.Joint.Relation.Judge(values).Verdict, row.Joint.Relation.Settle(values));
        }
    }

    [Fact]
    public void Every_pair_of_a_closed_joint_is_judged_through_the_plan_as_by_its_relation()
    {
        int pairs = 0;
        foreach (Joint joint in JointTable.All.Where(j => j.Inputs.Length == 2 && j.Inputs.All(i => !i.IsLength && i.Family == 0)))
        {
            foreach ((string first, string second) in Keys(joint))
            {
                Build build = Joined(joint, first, second);
                Fit fit = build.Check().Findings.Single(f => f.Joint == joint);
                Assert.Equal(joint.Judge(build), fit.Verdict);
                pairs++;
            }
        }

        Assert.True(pairs > 1_000, $"{pairs} pairs");
    }

    [Property(MaxTest = 100)]
    public void Sizes_that_no_table_lists_are_never_taken_for_one_another(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        decimal[] sizes = [.. Enumerable.Range(0, 6).Select(_ => 26m + (random.Next(60) / 10m) + 0.03m)];
        foreach (decimal bore in sizes.Append(27.2m))
        {
            foreach (decimal post in sizes.Append(27.2m))
            {
                Build build = Build.From(Frame.Read(FormattableString.Invariant($"seat tube {bore}"))).With(Seatpost.Read(FormattableString.Invariant($"diameter {post}")));
                Assert.Equal(bore == post, build.Check().Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube").Verdict == Verdict.Fits);
            }
        }
    }

    private static IEnumerable<(string First, string Second)> Keys(Joint joint) =>
        from a in joint.Inputs[0].Domain.Take(40)
        from b in joint.Inputs[1].Domain.Take(40)
        select (joint.Inputs[0].Show(a), joint.Inputs[1].Show(b));

    private static Build Joined(Joint joint, string first, string second)
    {
        Build build = Build.From(new Frame());
        foreach (var slot in joint.Inputs.Zip([first, second]).GroupBy(p => p.First.Slot))
        {
            // Projected inputs have keys of another kind than their field; their parts are left unknown.
            List<SpecProblem> problems = [];
            Part part = PartForms.Of(slot.Key).ReadProperties(slot.Select(p => new KeyValuePair<string, string>(p.First.Field, p.Second)), "", problems);
            build = slot.Key == Slot.Frame ? Build.From((Frame)part).Refilled(build) : build.With(part, slot.Key);
        }

        return build;
    }
}

internal static class Refill
{
    /// <summary>The parts of another build on this frame.</summary>
    public static Build Refilled(this Build frame, Build from) =>
        Slot.All.Where(s => s != Slot.Frame && from[s] is not null).Aggregate(frame, (build, slot) => build.With(from[slot]!, slot));
}
