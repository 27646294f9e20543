using FsCheck;
using FsCheck.Xunit;

namespace Lugwork.Tests.Builds;

/// <summary>What holds for every build.</summary>
public sealed class BuildLaws
{
    [Property(MaxTest = 300)]
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

    [Property(MaxTest = 700)]
    public bool The_reports_verdict_is_its_worst(DoNotSize<int> seed)
    {
        FitReport report = Bicycles.Any(new Random(seed.Item)).Check();
        Verdict worst = report.Findings.Select(f => f.Verdict).DefaultIfEmpty(Verdict.NeedsMeasuring).Max();
        return report.Verdict == (report.IsComplete || worst >= Verdict.NeedsPart ? worst : Verdict.NeedsPart);
    }

    [Property(MaxTest = 700)]
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
            Assert.Empty(report.Findings);
        }
    }

    [Theory]
    [InlineData("rearBrake IS", true)]
    [InlineData("rearBrake PM-160 | PM-180", true)]
    [InlineData("rearBrake unknown", true)]
    [InlineData("material steel", true)]
    [InlineData("rearBrake none", false)]
    public void Disc_parts_are_missing_unless_the_frame_is_known_to_have_no_mount(string frame, bool disc)
    {
        FitReport report = Build.From(Frame.Read(frame)).Check();
        foreach (Slot slot in new[] { Slot.RearRotor, Slot.RearCaliper, Slot.FrontRotor, Slot.FrontCaliper })
        {
            Assert.Equal(disc, report.Missing.Contains(slot));
            Assert.Equal(disc, report.Build.Needs().Of(slot) is not null);
        }
    }

    [Property(MaxTest = 400)]
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

            Verdict judged = report.Findings.Single(f => f.Joint == line.Joint).Verdict;
            Verdict sheet = line.Judge(known.Low);
            bool agree = input.IsLength ? (judged == Verdict.Fits) == (sheet == Verdict.Fits) : judged == sheet;
            if (!agree)
            {
                throw new InvalidOperationException($"{line.Joint}: judged {judged}, the sheet says {sheet} for {input.Show(known.Low)}");
            }
        }

        return true;
    }

    [Property(MaxTest = 15)]
    public void Every_key_of_the_sheet_is_judged_as_the_sheet_says(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = Bicycles.Any(random);
        foreach ((Slot slot, NeedLine line) in build.Needs().SelectMany(n => n.Lines.Select(l => (n.Slot, l))))
        {
            Joint joint = line.Joint;
            (int at, CandidateRow row) = Row(line, slot, build);
            if (joint.Inputs[at].IsLength)
            {
                continue;
            }

            int[] own = [.. Enumerable.Range(0, joint.Inputs.Length).Where(i => i != at && joint.Inputs[i].Slot == slot)];
            foreach (long code in joint.Inputs[at].Domain)
            {
                Verdict sheet = line.Judge(code);
                row[at] = Exact(code);
                int twin = joint.Inputs.IndexOf(joint.Inputs.FirstOrDefault(i => i != line.Input && i.Slot == slot && i.Field == line.Field)!);
                if (twin >= 0)
                {
                    // A width and a bead seat are one field: the sheet tells the best that a size of this width can be.
                    Assert.Equal(
                        joint.Inputs[twin].Domain.Min(c =>
                        {
                            CandidateRow whole = row;
                            whole[twin] = Exact(c);
                            return joint.Common(whole);
                        }),
                        sheet);
                    continue;
                }

                Assert.Equal(joint.Common(row), sheet);

                // What the sheet settles holds whatever the rest of the part is.
                for (int turns = 0; turns < 3 && sheet != Verdict.NeedsMeasuring; turns++)
                {
                    CandidateRow whole = row;
                    foreach (int i in own)
                    {
                        whole[i] = Exact(joint.Inputs[i].IsLength ? 1 + random.Next(300_000_000) : joint.Inputs[i].Domain[random.Next(joint.Inputs[i].Domain.Length)]);
                    }

                    Assert.True(Fits.Rows.MayRemain(joint.Common(whole), sheet), $"{joint}: the sheet says {sheet}, the part {joint.Common(whole)}");
                }
            }
        }
    }

    [Property(MaxTest = 80)]
    public void A_length_satisfies_the_sheet_exactly_when_some_part_of_that_length_fits(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = Bicycles.Any(random);
        build = build.With(build.Frame with { LeastInsertion = Limit(random), MostInsertion = Limit(random) });
        foreach ((Slot slot, NeedLine line) in build.Needs().SelectMany(n => n.Lines.Select(l => (n.Slot, l))))
        {
            Joint joint = line.Joint;
            (int at, CandidateRow row) = Row(line, slot, build);
            bool said = Enumerable.Range(0, joint.Inputs.Length).All(i => joint.Inputs[i].Slot == slot || row[i].IsSettled);
            if (!joint.Inputs[at].IsLength || !said)
            {
                continue;
            }

            IEnumerable<long> edges = new[] { line.Least, line.Most }.OfType<Dimension>().Select(d => d.FitCode);
            for (int i = 0; i < joint.Inputs.Length; i++)
            {
                edges = row[i].State == KnownState.Value ? edges.Append(row[i].Low) : edges;
            }

            foreach (long code in edges.SelectMany(e => new[] { e - 1, e, e + 1 }).Append(1).Where(c => c > 0).Distinct())
            {
                Assert.True(SomeFits(joint, slot, at, row, code) == (line.Judge(code) == Verdict.Fits), $"{line} says {line.Judge(code)} of {code} nm");
            }

            // What no length can be is none: zero is also what a default is.
            Assert.All([0, -1, long.MinValue, 100_000_000_001, long.MaxValue], code => Assert.Equal(Verdict.NeedsMeasuring, line.Judge(code)));
        }
    }

    private static List<long> Settled(Joint joint, CandidateRow row)
    {
        List<long> known = [];
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            if (row[i].State == KnownState.Value)
            {
                known.Add(row[i].Low);
            }
        }

        return known;
    }

    private static Known<Dimension> Limit(Random random) =>
        random.Next(4) == 0 ? Known<Dimension>.None : Known<Dimension>.Of(Dimension.OfMillimetres(new[] { 1m, 54.4m, 75.5m, 80m, 210m, 300m }[random.Next(6)]));

    private static bool SomeFits(Joint joint, Slot slot, int at, CandidateRow row, long code)
    {
        row[at] = Exact(code);
        List<CandidateRow> rows = [row];
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            if (i != at && joint.Inputs[i].Slot == slot && !joint.Inputs[i].IsReadWhenBuilt)
            {
                int input = i;
                long[] values = joint.Inputs[i].IsLength ? [1, code, .. Settled(joint, row)] : [.. joint.Inputs[i].Domain];
                rows = [.. rows.SelectMany(r => values.Select(v =>
                {
                    CandidateRow next = r;
                    next[input] = Exact(v);
                    return next;
                }))];
            }
        }

        return rows.Exists(r => joint.Common(r) == Verdict.Fits);
    }

    private static (int At, CandidateRow Row) Row(NeedLine line, Slot slot, Build build)
    {
        Joint joint = line.Joint;
        CandidateRow row = default;
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            row[i] = joint.Inputs[i].Slot != slot && build[joint.Inputs[i].Slot] is { } part ? joint.Inputs[i].Read(part)
                : joint.Inputs[i].IsReadWhenBuilt ? new Candidates(KnownState.None, 0, 0, null) : default;
        }

        return (joint.Inputs.IndexOf(line.Input), row);
    }

    private static Candidates Exact(long code) => new(KnownState.Value, code, code, null);

    [Property(MaxTest = 80)]
    public void A_sentence_has_no_place_left_open(DoNotSize<int> seed)
    {
        FitReport report = Bicycles.Any(new Random(seed.Item)).Check();
        foreach (string text in report.Findings.SelectMany(f => f.Remedies.Select(r => r.What).Append(f.ToString())).Append(report.ToString()))
        {
            Assert.False(text.Contains('{', StringComparison.Ordinal) || text.Contains('}', StringComparison.Ordinal) || text.Contains("[bridge]", StringComparison.Ordinal), text);
            Assert.DoesNotContain("  ", text, StringComparison.Ordinal);
        }

        foreach (Fit fit in report.Findings)
        {
            bool chooses = fit.Verdict == Verdict.NeedsPart && fit.Remedies.Any(r => r.What.StartsWith("one of these", StringComparison.Ordinal));
            Assert.Equal(fit.Verdict == Verdict.NeedsMeasuring || chooses, !fit.Measurements.IsEmpty);
            Assert.NotEmpty(fit.Sources);
            Assert.True(fit.Verdict != Verdict.NeedsPart || !fit.Remedies.IsEmpty, fit.ToString());
        }
    }

    [Property(MaxTest = 150)]
    public bool Taking_a_part_out_and_putting_it_back_changes_nothing(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = Bicycles.Any(random);
        Slot slot = Slot.All[1 + random.Next(Slot.All.Length - 1)];
        Build without = build.Without(slot);
        bool quiet = without.Check().Findings.All(f => !f.Joint!.Slots.Contains(slot));
        return quiet && (build[slot] is not { } part || Told(without.With(part, slot)).SequenceEqual(Told(build)));
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
                Verdict judged = build.With(post).Check().Findings.Single(f => f.Joint == line.Joint).Verdict;
                Assert.Equal(judged == Verdict.Fits, line.Judge(code) == Verdict.Fits);
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

    [Property(MaxTest = 150)]
    public bool A_build_file_reads_back_to_the_same_judgement(DoNotSize<int> seed)
    {
        Build build = Bicycles.Any(new Random(seed.Item));
        Build back = BuildFile.Read(BuildFile.Write(build));
        return Told(build).SequenceEqual(Told(back)) && BuildFile.Write(back) == BuildFile.Write(build);
    }

    private static IEnumerable<string> Told(Build build) => build.Check().Findings.Select(f => f.ToString());
}
