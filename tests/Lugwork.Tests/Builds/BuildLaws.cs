using FsCheck;
using FsCheck.Xunit;

namespace Lugwork.Tests.Builds;

/// <summary>What holds for every build.</summary>
public sealed class BuildLaws
{
    [Property(MaxTest = 1_000)]
    public bool The_order_of_parts_never_matters(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = Bicycles.Any(random);
        Build turned = Build.From(build.Frame);
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame && build[s] is not null).OrderBy(_ => random.Next()))
        {
            turned = turned.With(build[slot]!, slot);
        }

        return Told(build).SequenceEqual(Told(turned)) && build.Check().Verdict == turned.Check().Verdict;
    }

    [Property(MaxTest = 2_000)]
    public bool The_reports_verdict_is_its_worst(DoNotSize<int> seed)
    {
        FitReport report = Bicycles.Any(new Random(seed.Item)).Check();
        Verdict worst = report.Fits.Select(f => f.Verdict).DefaultIfEmpty(Verdict.NeedsMeasuring).Max();
        return report.Verdict == (report.IsComplete || worst >= Verdict.NeedsPart ? worst : Verdict.NeedsPart);
    }

    [Property(MaxTest = 2_000)]
    public bool A_build_with_an_empty_slot_never_fits(DoNotSize<int> seed)
    {
        FitReport report = Bicycles.Any(new Random(seed.Item)).Check();
        return report.IsComplete || report.Verdict != Verdict.Fits;
    }

    [Fact]
    public void An_empty_build_never_fits()
    {
        foreach (string frame in new[] { "material steel", "kind single-speed; rearBrake none", "rear 12x142; seatTube 27.2" })
        {
            FitReport report = Build.From(Frame.Read(frame)).Check();
            Assert.Equal(Verdict.NeedsMeasuring, report.Verdict);
            Assert.False(report.IsComplete);
            Assert.Empty(report.Fits);
        }
    }

    [Property(MaxTest = 1_500)]
    public bool A_part_fits_exactly_when_it_satisfies_the_needs_sheet(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = Bicycles.Any(random);
        Slot slot = Slot.All[1 + random.Next(Slot.All.Length - 1)];
        Part part = Bicycles.Part(slot, random);
        Build with = build.With(part, slot);
        FitReport report = with.Check();
        foreach (NeedLine line in build.Needs().Of(slot)?.Lines ?? [])
        {
            JointInput input = line.Joint.Inputs.First(i => i.Slot == slot);
            Candidates known = input.Read(part);
            bool alone = line.Joint.Inputs.Count(i => i.Slot == slot) == 1;
            if (!alone || known.State != KnownState.Value || !line.Joint.IsFilled(with))
            {
                continue;
            }

            Verdict judged = report.Fits.Single(f => f.Joint == line.Joint).Verdict;
            Verdict sheet = line.For(known.Low);
            bool agree = input.IsLength ? (judged == Verdict.Fits) == (sheet == Verdict.Fits) : judged == sheet;
            if (!agree)
            {
                throw new InvalidOperationException($"{line.Joint}: judged {judged}, the sheet says {sheet} for {input.Show(known.Low)}");
            }
        }

        return true;
    }

    [Theory]
    [InlineData("80", "210")]
    [InlineData("75.5", "75.5")]
    [InlineData("none", "210")]
    [InlineData("80", "none")]
    public void Insertion_satisfies_the_sheet_exactly_up_to_its_limits(string least, string most)
    {
        Build build = Build.From(Frame.Read($"leastInsertion {least}; mostInsertion {most}"));
        NeedLine line = build.Needs().Of(Slot.Seatpost)!.Lines.Single(l => l.Joint.Id == "seatpost-insertion");
        foreach (long edge in new[] { line.Least, line.Most }.OfType<Dimension>().Select(d => d.FitCode).DefaultIfEmpty(1_000_000))
        {
            for (long code = edge - 1; code <= edge + 1; code++)
            {
                Seatpost post = Seatpost.Read("21.15; mark none") with { Insertion = Known<Dimension>.Of(Dimension.OfFitCode(code)) };
                Verdict judged = build.With(post).Check().Fits.Single(f => f.Joint == line.Joint).Verdict;
                Assert.Equal(judged == Verdict.Fits, line.For(code) == Verdict.Fits);
            }
        }
    }

    [Fact]
    public void The_offered_bridge_makes_the_joint_fit()
    {
        int bridged = 0;
        foreach (Joint joint in JointTable.All.Where(j => j.Relation is SameKey && j.Inputs.All(i => !i.IsLength)))
        {
            foreach (long seat in joint.Inputs[0].Domain)
            {
                foreach (long part in joint.Inputs[1].Domain)
                {
                    long[] values = [seat, part, .. joint.Inputs[2..].Select(i => i.Domain[0])];
                    Outcome outcome = joint.Relation.Judge(values);
                    if (outcome.Bridge is null)
                    {
                        continue;
                    }

                    bridged++;
                    Assert.Equal(part, outcome.Bridge.From);
                    Assert.Equal(seat, (outcome.Second ?? outcome.Bridge).To);
                    Assert.True(outcome.Second is null || outcome.Second.From == outcome.Bridge.To);
                    Assert.Equal(Verdict.Fits, joint.Relation.Judge([seat, (outcome.Second ?? outcome.Bridge).To, .. values[2..]]).Verdict);
                }
            }
        }

        Assert.True(bridged > 60, $"only {bridged} bridged pairs");
    }

    [Fact]
    public void A_mounts_rotors_by_arithmetic_are_the_ones_its_inverse_accepts()
    {
        foreach (Lugwork.Brakes.BrakeMount mount in Lugwork.Brakes.BrakeMount.All)
        {
            foreach (Lugwork.Brakes.CaliperFoot caliper in Lugwork.Brakes.CaliperFoot.All)
            {
                foreach (Verdict worst in new[] { Verdict.Fits, Verdict.NeedsPart })
                {
                    long[] judged =
                    [
                        .. Lugwork.Brakes.RotorSize.All.Where(r => Lugwork.Brakes.BrakeRelations.OnMount.Judge([mount.FitCode, caliper.FitCode, Lugwork.Brakes.RotorSize.Exact(r)]).Verdict <= worst).Select(r => r.FitCode),
                    ];
                    Assert.Equal(judged, Lugwork.Brakes.BrakeRelations.Accepts(mount, caliper, worst));
                }
            }
        }
    }

    [Property(MaxTest = 500)]
    public bool A_build_file_reads_back_to_the_same_judgement(DoNotSize<int> seed)
    {
        Build build = Bicycles.Any(new Random(seed.Item));
        Build back = BuildFile.Read(BuildFile.Write(build));
        return Told(build).SequenceEqual(Told(back)) && BuildFile.Write(back) == BuildFile.Write(build);
    }

    private static IEnumerable<string> Told(Build build) => build.Check().Fits.Select(f => f.ToString());
}
