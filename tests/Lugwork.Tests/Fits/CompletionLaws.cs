using FsCheck;
using FsCheck.Xunit;
using Lugwork.Drivetrain;

namespace Lugwork.Tests.Fits;

/// <summary>What an unknown does to a verdict, for every joint in the table.</summary>
public sealed class CompletionLaws
{
    public static TheoryData<string> Joints => [.. JointTable.All.Select(j => j.Id)];

    [Theory]
    [MemberData(nameof(Joints))]
    public void The_common_verdict_holds_for_each_joint_of_the_table(string id)
    {
        Joint joint = JointTable.All.Single(j => j.Id == id);
        for (int seed = 0; seed < 60; seed++)
        {
            Rows.Row row = Rows.Draw(joint, new Random(seed));
            HashSet<Verdict> all = Rows.Completions(row);
            Verdict expected = Rows.Expected(all);
            Assert.True(row.Common() == expected, $"{row}: {row.Common()} against {string.Join(',', all)}");
        }
    }

    [Theory]
    [MemberData(nameof(Joints))]
    public void Each_single_input_unknown_leaves_the_verdict_or_needs_measuring(string id)
    {
        Joint joint = JointTable.All.Single(j => j.Id == id);
        for (int seed = 0; seed < 400; seed++)
        {
            Rows.Row more = Rows.Draw(joint, new Random(seed));
            for (int i = 0; i < joint.Inputs.Length; i++)
            {
                // "Has none" is not among the values of an unknown.
                if (more.Inputs[i].State == KnownState.None)
                {
                    continue;
                }

                Candidates[] inputs = [.. more.Inputs];
                inputs[i] = default;
                Rows.Row less = more with { Inputs = inputs };
                Verdict known = more.Common();
                Verdict after = less.Common();
                Assert.True(Rows.MayRemain(known, after), $"{more}: {known}; {less}: {after}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Joints))]
    public void A_part_that_has_none_of_what_has_to_mate_never_fits(string id)
    {
        Joint joint = JointTable.All.Single(j => j.Id == id);
        for (int seed = 0; seed < 200; seed++)
        {
            Rows.Row row = Rows.Draw(joint, new Random(seed));

            // A limit may be none and then asks for nothing; the two that meet stand first and are no lengths.
            for (int i = 0; i < Math.Min(2, joint.Inputs.Length); i++)
            {
                if (!joint.Inputs[i].IsLength)
                {
                    Candidates[] inputs = [.. row.Inputs];
                    inputs[i] = Rows.None;
                    if (Beside(joint, i) is { } other)
                    {
                        inputs[other.Input] = new(KnownState.Value, other.Code, other.Code, null);
                    }

                    if (joint.Relation == RingRelations.OnArm && i == 1)
                    {
                        // The ring is held by a spider then: ring-on-spider judges it.
                        continue;
                    }

                    if (joint.Inputs[i] is { Slot: var place, Field: "largestRing" } && place == Slot.Crankset && joint.Id is "derailleur-capacity" or "ring-against-chainstay" or "ring-counted-with-crank")
                    {
                        // A bare crank: the ring that goes on it is judged by its own row, and where there is none ring-on-bare-crank asks.
                        continue;
                    }

                    if (joint.Relation == BeltRelations.ThroughRearTriangle && i == 0)
                    {
                        // A chain asks nothing of the rear triangle; a belt has to go through it.
                        inputs[1] = new(KnownState.Value, ChainSize.Belt.FitCode, ChainSize.Belt.FitCode, null);
                    }

                    Rows.Row less = row with { Inputs = inputs };
                    Assert.True(less.Common() > (IsBought(id, i) ? Verdict.Fits : Verdict.NeedsPart), $"{less}: {less.Common()}");
                }
            }
        }
    }

    /// <summary>A small piece of its own: none of it is not there yet, and is bought.</summary>
    private static bool IsBought(string joint, int input) =>
        (joint, input) is ("headset-on-crown", 0) or ("shock-hardware-in-frame", 1) or ("upper-shock-hardware-in-frame", 1) or ("shock-bush-in-eyelet", 1);

    /// <summary>Where none on one side may only mean that the part is held in another way: what the other side has then.</summary>
    private static (int Input, long Code)? Beside(Joint joint, int without) =>
        joint.Relation == RingRelations.OnSpider && without == 0 ? (2, BoltCircle.All[0].FitCode)
        : joint.Relation == RingRelations.OfCrankBesideChainstay && without == 1 ? (0, 40)
        : joint.Relation == RingRelations.OnArm && without == 0 ? (1, DirectMountRing.ThreeBolt.FitCode)
        : joint.Relation == ShiftRelations.WithSprockets && without == 1 ? (2, MakersWord.Refused.FitCode) // A lever without clicks fits by its maker's word alone.
        : joint.Relation == Lugwork.Tyres.TyreOnRim.Bead ? (3, Lugwork.Tyres.TyreHold.Clincher.FitCode)
        : joint.Relation == Lugwork.Tyres.TyreOnRim.Width ? (4, Lugwork.Tyres.TyreHold.Clincher.FitCode)
        : joint.Relation == GuideRelations.OnFrame && without == 1 ? (0, ChainGuideMount.Iscg.FitCode)
        : joint.Relation == Lugwork.Suspension.ShockRelations.UpperHardware ? (1 - without, Lugwork.Suspension.ShockHardware.All[0].FitCode)
        : null;

    [Fact]
    public void Parts_of_which_nothing_is_known_never_fit()
    {
        Build build = Build.From(new Frame());
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            build = build.With(Blank(slot), slot);
        }

        FitReport report = build.Check();
        Assert.True(report.IsComplete);
        Assert.Equal(JointTable.All.Where(j => !j.IsOnlyWhereLooked), report.Findings.Select(f => f.Joint!));
        Assert.All(report.Findings, f => Assert.Equal(Verdict.NeedsMeasuring, f.Verdict));
        Assert.Equal(Verdict.NeedsMeasuring, report.Verdict);
        Assert.All(report.Findings, f => Assert.NotEmpty(f.Measurements));
    }

    [Property(MaxTest = 1_500)]
    public bool An_unknown_has_the_common_verdict_of_its_completions(DoNotSize<int> seed)
    {
        Rows.Row row = Rows.Draw(new Random(seed.Item));
        HashSet<Verdict> all = Rows.Completions(row);
        return row.Common() == (Rows.Expected(all)) ? true : throw new InvalidOperationException($"{row}: {row.Common()} against {string.Join(',', all)}");
    }

    [Property(MaxTest = 10_000)]
    public bool Removing_knowledge_leaves_the_verdict_or_needs_measuring(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Rows.Row more = Rows.Draw(random);
        Candidates[] inputs = [.. more.Inputs];
        int at = random.Next(inputs.Length);
        inputs[at] = Rows.Loosen(inputs[at], more.Joint.Inputs[at], random);
        Rows.Row less = more with { Inputs = inputs };
        Verdict after = less.Common();
        return Rows.MayRemain(more.Common(), after) ? true : throw new InvalidOperationException($"{more}: {more.Common()}; {less}: {after}");
    }

    [Property(MaxTest = 5_000)]
    public bool Judging_is_total_and_never_leaves_a_pair_unjudged(DoNotSize<int> seed) => Rows.Draw(new Random(seed.Item)).Common() != Verdict.NotJudged;

    [Fact]
    public void Every_pair_of_two_closed_inputs_has_a_verdict_and_a_reason_that_can_be_worded()
    {
        foreach (Joint joint in JointTable.All.Where(j => j.Inputs.All(i => !i.IsLength)))
        {
            foreach (long a in joint.Inputs[0].Domain.Prepend(0))
            {
                foreach (long b in joint.Inputs.Length > 1 ? joint.Inputs[1].Domain.Prepend(0) : [0])
                {
                    long[] values = joint.Inputs.Length == 1 ? [a] : [a, b, .. joint.Inputs[2..].Select(i => i.Domain[0])];
                    Outcome outcome = joint.Relation.Judge(values);
                    Assert.NotEqual(Verdict.NotJudged, outcome.Verdict);
                    Assert.NotNull(outcome.Reason);
                    object[] shown = [.. values.Select(v => (object)v)];
                    Assert.DoesNotContain("{", string.Format(System.Globalization.CultureInfo.InvariantCulture, outcome.Reason.Template, shown), StringComparison.Ordinal);
                    Assert.True(outcome.Verdict != Verdict.NeedsPart || outcome.Bridge is not null, $"{joint} {a} {b}: a part is needed but none is named");
                }
            }
        }
    }

    [Fact]
    public void No_default_reads_as_a_fit()
    {
        Assert.Equal(Verdict.NotJudged, default(Fit).Verdict);
        Assert.Equal(Verdict.NotJudged, default(Outcome).Verdict);
        Assert.Equal(KnownState.Unknown, default(Known<Dimension>).State);
        Assert.Equal(Verdict.NeedsMeasuring, Verdicts.Worse(Verdict.NotJudged, Verdict.Fits));
        Assert.Throws<ArgumentException>(() => Known<Dimension>.Of(default));
        Assert.Throws<ArgumentException>(() => Known<Lugwork.Seating.SeatpostDiameter>.Of(default));
        Assert.Throws<ArgumentException>(() => Known<Lugwork.Tyres.TyreSize>.Of(default));
    }

    private static Part Blank(Slot slot) => PartForms.Of(slot).ReadProperties([], "", []);
}
