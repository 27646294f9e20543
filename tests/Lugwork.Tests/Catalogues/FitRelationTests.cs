using System.Collections.Immutable;
using System.Text.Json;
using FsCheck;
using FsCheck.Xunit;
using Lugwork.Catalogues;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Catalogues;

/// <summary>The two relations, joined in memory as a database would, beside the joints themselves.</summary>
public sealed class FitRelationTests
{
    [Fact]
    public void A_post_and_a_frame_meet_by_their_key()
    {
        ImmutableArray<PartFitRow> post = FitRelations.OfPart(7, Seatpost.Read("27.2"), Slot.Seatpost);
        Assert.Equal(new PartFitRow(7, "seatpost", "", "any", 0, 0), post[0]);
        Assert.Contains(new PartFitRow(7, "seatpost", "seatpost-in-seat-tube", "seatpost-in-seat-tube=27.2", 0, 0), post);
        ImmutableArray<FrameNeedRow> frame = FitRelations.NeedsOf(1, Build.From(Frame.Read("seatTube 27.2")), Slot.Seatpost);
        Assert.Contains(new FrameNeedRow(1, "seatpost", "seatpost-in-seat-tube", "seatpost-in-seat-tube=27.2", 0, 0, ""), frame);
        FrameNeedRow shim = frame.Single(r => r.Key == "seatpost-in-seat-tube=26.8");
        Assert.Contains("shim", shim.Bridge, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(frame, r => r.Key == "seatpost-in-seat-tube=31.6");
    }

    [Fact]
    public void Rows_are_read_back_as_they_were_written()
    {
        ImmutableArray<PartFitRow> parts = [.. FitRelations.OfPart(7, Seatpost.Read("27.2"), Slot.Seatpost), .. FitRelations.OfPart(8, Rotor.Read("160; six-bolt"), Slot.RearRotor)];
        ImmutableArray<FrameNeedRow> needs = FitRelations.NeedsOf(1, Build.From(Frame.Read("seatTube 27.2; largest rear rotor 180")), Verdict.NeedsMeasuring);
        Assert.Contains(parts, r => r.LimitMax > 0);
        Assert.Contains(needs, r => r.Bridge.Length > 0 && r.LimitMax > 0);
        Assert.Equal(parts, JsonSerializer.Deserialize<PartFitRow[]>(JsonSerializer.Serialize(parts)));
        Assert.Equal(needs, JsonSerializer.Deserialize<FrameNeedRow[]>(JsonSerializer.Serialize(needs)));
    }

    /// <summary>A frame of which two bores are possible takes another shim in each: the row names both, and neither as the one.</summary>
    [Fact]
    public void Where_it_depends_on_what_is_not_known_every_way_is_named()
    {
        static string Takes(string bore, string post) => FitRelations.NeedsOf(1, Build.From(Frame.Read($"seatTube {bore}")), Slot.Seatpost)
            .Single(r => r.JointId == "seatpost-in-seat-tube" && r.Key == $"seatpost-in-seat-tube={post}").Bridge;
        string narrow = Takes("28.6", "27.2");
        string wide = Takes("31.6", "27.2");
        Assert.Contains("shim", narrow, StringComparison.Ordinal);
        Assert.NotEqual(narrow, wide);
        Assert.Equal($"one of these, as it measures: {narrow}; or {wide}", Takes("28.6 | 31.6", "27.2"));
    }

    [Fact]
    public void A_limit_is_a_range_in_nanometres()
    {
        ImmutableArray<FrameNeedRow> needs = FitRelations.NeedsOf(1, Build.From(Frame.Read("largest rear rotor 180")), Slot.RearRotor);
        FrameNeedRow limit = needs.Single(r => r.JointId == "rear-rotor-within-limit" && r.Key.EndsWith(":figure", StringComparison.Ordinal));
        Assert.Equal((1L, 180_000_000L), (limit.LimitMin, limit.LimitMax));
        PartFitRow rotor = FitRelations.OfPart(2, Rotor.Read("160; six-bolt"), Slot.RearRotor).Single(r => r.JointId == "rear-rotor-within-limit");
        Assert.Equal(("rear-rotor-within-limit:figure", 160_000_000L, 160_000_000L), (rotor.Key, rotor.LimitMin, rotor.LimitMax));
        Assert.False(Met(FitRelations.OfPart(2, Rotor.Read("203; six-bolt"), Slot.RearRotor), needs, "rear-rotor-within-limit"));
    }

    [Fact]
    public void What_is_to_be_said_of_a_part_by_itself_stands_in_its_first_row()
    {
        string First(Part part, Slot slot) => FitRelations.OfPart(1, part, slot)[0].Key;
        Assert.Equal(FitRelations.AnyPart, First(Seatpost.Read("27.2; condition new"), Slot.Seatpost));
        Assert.Equal(FitRelations.RefusedPart, First(Seatpost.Read("27.2; condition recalled"), Slot.Seatpost));
        Assert.Equal(FitRelations.AskedPart, First(Wheel.Read("body hub-motor"), Slot.FrontWheel));
        string[] Needed(Verdict worst) => [.. FitRelations.NeedsOf(1, Build.From(Frame.Read("seatTube 27.2")), Slot.Seatpost, worst).Where(n => n.JointId.Length == 0).Select(n => n.Key)];
        Assert.Equal([FitRelations.AnyPart], Needed(Verdict.Fits));
        Assert.Equal([FitRelations.AnyPart, FitRelations.NeedsBuyingPart], Needed(Verdict.NeedsPart));
        Assert.Equal([FitRelations.AnyPart, FitRelations.NeedsBuyingPart, FitRelations.AskedPart], Needed(Verdict.NeedsMeasuring));
    }

    /// <summary>The row says of every part what the check of a build says of its own joints.</summary>
    [Property(MaxTest = 60)]
    public void The_first_row_is_what_the_check_says_of_the_part_alone(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            Part part = Shelves.Part(slot, random);
            FitReport report = Build.From(new Frame()).With(part, slot).Check();
            Verdict plain = report.Findings.Where(f => f.Joint!.Slots.All(s => s == slot) && f.Joint.GivesWay.IsEmpty).Select(f => f.Verdict).DefaultIfEmpty(Verdict.NotJudged).Max();
            plain = plain < Verdict.NeedsMeasuring && PartAlone.IsAskedAbout(slot, part) ? Verdict.NeedsMeasuring : plain;
            string key = plain switch
            {
                Verdict.NotJudged or Verdict.Fits => FitRelations.AnyPart,
                Verdict.NeedsPart => FitRelations.NeedsBuyingPart,
                Verdict.NeedsMeasuring => FitRelations.AskedPart,
                _ => FitRelations.RefusedPart,
            };
            Assert.Equal(key, FitRelations.OfPart(1, part, slot)[0].Key);
        }
    }

    [Fact]
    public void What_two_figures_decide_together_is_named()
    {
        ImmutableArray<Joint> joints = FitRelations.DecidedByCheck(Slot.RearTyre);
        Assert.Contains(joints, j => j.Id == "rear-tyre-in-frame");
        Assert.DoesNotContain(FitRelations.DecidedByCheck(Slot.Seatpost), j => j.Id == "seatpost-in-seat-tube");
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            string[] rows = [.. FitRelations.OfPart(1, Shelves.Part(slot, new Random(3)), slot).Select(r => r.JointId).Where(j => j.Length > 0).Distinct()];
            Assert.Equal(JointTable.All.Where(j => j.Slots.Contains(slot)).Select(j => j.Id).Order(StringComparer.Ordinal), rows.Concat(FitRelations.DecidedByCheck(slot).Select(j => j.Id)).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Wrong_questions_are_refused()
    {
        Assert.Throws<ArgumentException>(() => FitRelations.OfPart(1, Saddle.Read("rails 7x9"), Slot.Seatpost));
        Assert.Throws<ArgumentException>(() => FitRelations.NeedsOf(1, Build.From(new Frame()), Slot.Frame));
        Assert.Throws<ArgumentOutOfRangeException>(() => FitRelations.NeedsOf(1, Build.From(new Frame()), Verdict.Unsafe));
    }

    [Property(MaxTest = 60)]
    public void A_joint_is_met_by_what_it_accepts_and_by_nothing_else_that_is_known(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = random.Next(4) == 0 ? Build.From(Bicycles.Frame(random)) : Bicycles.Any(random);
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            Hold(build, Shelves.Part(slot, random), slot, (Verdict)random.Next(1, 4));
        }
    }

    [Property(MaxTest = 60)]
    public void The_same_holds_where_figures_stand_at_the_limit(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = BoundaryBicycles.Draw(random);
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame && build[s] is not null))
        {
            Hold(build, build[slot]!, slot, (Verdict)random.Next(1, 4));
        }
    }

    [Property(MaxTest = 25)]
    public void The_join_misses_no_part_that_the_catalogue_finds(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = Bicycles.Any(random);
        Slot slot = Slot.All[random.Next(1, Slot.All.Length)];
        List<CatalogueRow> rows = Shelves.Rows(random, 60, slot);
        SlotFitting found = Shelves.Of(rows).View.Fitting(build, slot, 1_000);
        ImmutableArray<FrameNeedRow> needs = FitRelations.NeedsOf(1, build, slot);
        HashSet<long> joined = [.. rows.Where(r => Joined(FitRelations.OfPart(r.Id, r.Part, slot), needs)).Select(r => r.Id)];
        Assert.All(found.Fits.Concat(found.NeedsPart), p => Assert.Contains(p.Id, joined));
    }

    /// <summary>One slot of one build, joint by joint.</summary>
    private static void Hold(Build build, Part part, Slot slot, Verdict worst)
    {
        ImmutableArray<PartFitRow> rows = FitRelations.OfPart(1, part, slot);
        ImmutableArray<FrameNeedRow> needs = FitRelations.NeedsOf(1, build, slot, worst);
        Dictionary<string, Verdict> judged = build.With(part, slot).Check().Findings.Where(f => f.Joint!.Slots.Contains(slot)).ToDictionary(f => f.Joint!.Id, f => f.Verdict);
        HashSet<string> byCheck = [.. FitRelations.DecidedByCheck(slot).Select(j => j.Id)];
        foreach (Joint joint in JointTable.All.Where(j => j.Slots.Contains(slot) && !byCheck.Contains(j.Id)))
        {
            bool asked = needs.Any(n => n.JointId == joint.Id);
            if (!asked)
            {
                Assert.False(judged.ContainsKey(joint.Id), $"{joint} is judged and not asked");
                continue;
            }

            Verdict? verdict = judged.TryGetValue(joint.Id, out Verdict said) ? said : null;
            FrameNeedRow[] met = [.. needs.Where(n => n.JointId == joint.Id && rows.Any(r => Meets(r, n)))];
            bool right = verdict is null || verdict <= worst;
            if (right)
            {
                Assert.True(met.Length > 0, $"{joint} says {verdict} of {part} and no row of it is met:\n{string.Join('\n', needs.Where(n => n.JointId == joint.Id).Take(20))}\n{string.Join('\n', rows.Where(r => r.JointId == joint.Id))}");
            }

            // One row, one figure, and no row that leaves it to the check: then the join says what the joint says.
            PartFitRow[] own = [.. rows.Where(r => r.JointId == joint.Id)];
            if (own.Length == 1 && own[0].LimitMin == own[0].LimitMax && !met.Any(m => m.Bridge == FitRelations.Check))
            {
                Assert.True(right == met.Length > 0, $"{joint} says {verdict} and is met by {string.Join(" and ", met.Select(m => m.ToString()))}");
                Assert.All(met, m => Assert.Equal(verdict == Verdict.NeedsMeasuring, m.Bridge == FitRelations.Measure));
                Assert.All(met, m => Assert.Equal(verdict is null or Verdict.Fits, m.Bridge.Length == 0));
            }
        }
    }

    private static bool Joined(ImmutableArray<PartFitRow> part, ImmutableArray<FrameNeedRow> needs) =>
        needs.GroupBy(n => n.JointId).All(asked => asked.Any(n => part.Any(r => Meets(r, n))));

    private static bool Met(ImmutableArray<PartFitRow> part, ImmutableArray<FrameNeedRow> needs, string joint) =>
        needs.Any(n => n.JointId == joint && part.Any(r => Meets(r, n)));

    private static bool Meets(PartFitRow part, FrameNeedRow need) =>
        part.SlotKey == need.SlotKey && part.Key == need.Key && part.LimitMin <= need.LimitMax && part.LimitMax >= need.LimitMin;
}
