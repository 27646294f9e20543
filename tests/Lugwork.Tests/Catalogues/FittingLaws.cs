using FsCheck;
using FsCheck.Xunit;
using Lugwork.Catalogues;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Catalogues;

/// <summary>What a catalogue answers is what each part in the build is judged, joint by joint.</summary>
public sealed class FittingLaws
{
    [Property(MaxTest = 60)]
    public void The_answer_is_that_of_every_part_in_the_build(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = random.Next(4) == 0 ? Build.From(Bicycles.Frame(random)) : Bicycles.Any(random);
        List<CatalogueRow> rows = Shelves.Rows(random, 120);
        CatalogueView view = Shelves.Of(rows).View;
        Verdict worst = (Verdict)random.Next(1, 4);
        int most = random.Next(3) == 0 ? random.Next(4) : 1_000;
        foreach (Slot slot in Slot.All)
        {
            string plain = Shelves.Told(rows.Where(r => r.Slot == slot).Select(r => (r.Id, Shelves.Plain(With(build, r), slot, slot, slot))), worst, most);
            SlotFitting answer = view.Fitting(build, slot, most, worst);
            Assert.Equal(plain, Shelves.Told(answer));
            SlotFitting all = view.Fitting(build, slot, int.MaxValue, worst);
            Assert.Equal(all.Fits.Concat(all.NeedsPart).Concat(all.Open).Select(p => (p.Id, p.Verdict)).Order(), answer.Kinds.SelectMany(k => k.Ids.Select(id => (id, k.First.Verdict))).Order());
            Assert.All(answer.Kinds, k =>
            {
                Assert.Equal((k.Count, k.Ids[0]), (k.Ids.Length, k.First.Id));
                Assert.Equal(k.Ids.Order(), k.Ids.AsEnumerable());
            });
            foreach (FittingPart part in answer.Fits.Concat(answer.NeedsPart).Concat(answer.Open).Take(3))
            {
                Assert.Equal(part.Verdict, Shelves.Plain(With(build, new(part.Id, slot, part.Part!)), slot, slot, slot));
                Assert.Equal(part.Findings.Select(f => f.Verdict).DefaultIfEmpty(Verdict.NotJudged).Max(), part.Findings.IsEmpty ? Verdict.NotJudged : With(build, rows.Single(r => r.Slot == slot && r.Id == part.Id)).Check().Findings.Where(f => f.Joint!.Slots.Contains(slot)).Max(f => f.Verdict));
            }
        }
    }

    [Property(MaxTest = 20)]
    public void The_frames_for_a_part_are_those_that_take_it(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        List<CatalogueRow> rows = Shelves.Rows(random, 60, Slot.Frame);
        CatalogueView view = Shelves.Of(rows).View;
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            Part part = Shelves.Part(slot, random);
            string plain = Shelves.Told(rows.Select(r => (r.Id, Shelves.Plain(Build.From((Frame)r.Part).With(part, slot), Slot.Frame, slot, Slot.Frame, slot))), Verdict.NeedsMeasuring, 1_000);
            Assert.Equal(plain, Shelves.Told(view.FramesFor(part, slot, 1_000)));
        }
    }

    [Property(MaxTest = 20)]
    public void The_counts_of_all_frames_are_those_of_each(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        CatalogueView view = Shelves.Of(Shelves.Rows(random, 30, Slot.Frame).Concat(Shelves.Rows(random, 200).Where(r => r.Slot != Slot.Frame))).View;
        FrameCounts counts = view.CountsOfFrames();
        Assert.Equal(30, counts.Count);
        Assert.Equal(view.Slots.Where(s => s != Slot.Frame), counts.Slots);
        foreach (long id in counts.Ids)
        {
            foreach ((Slot slot, FitCounts one) in view.CountsFor(Build.From((Frame)view.Find(Slot.Frame, id)!)))
            {
                Assert.Equal(one, counts.Of(id, slot));
            }
        }

        // Neither several threads nor looking at a few parts and frames at a time changes a count.
        FrameCounts together = view.CountsOfFrames(3);
        SlotIndex frames = view.IndexOf(Slot.Frame)!;
        FrameAnswers answers = new(frames, 1, TestContext.Current.CancellationToken);
        foreach (Slot slot in counts.Slots)
        {
            FrameScreen some = new(answers, view.IndexOf(slot)!, 3, 7, TestContext.Current.CancellationToken);
            Assert.All(counts.Ids, id => Assert.Equal((counts.Of(id, slot), counts.Of(id, slot)), (together.Of(id, slot), some.Of(frames.Kinds[frames.Find(id)]))));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => view.CountsOfFrames(0));
        using CancellationTokenSource ended = new();
        ended.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => view.CountsOfFrames(2, ended.Token));

        Assert.Null(counts.Of(long.MaxValue, Slot.Seatpost));
        Assert.Null(counts.Of(counts.Ids[0], Slot.Frame));
        Assert.Equal(0, Shelves.Of(Shelves.Rows(random, 5, Slot.Seatpost)).View.CountsOfFrames().Count);
    }

    [Property(MaxTest = 30)]
    public void Neither_the_order_of_rows_nor_the_way_to_a_catalogue_changes_an_answer(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        List<CatalogueRow> rows = Shelves.Rows(random, 200);
        Build build = Bicycles.Any(random);
        PartCatalogue straight = Shelves.Of(rows);

        PartCatalogue winding = new();
        List<CatalogueRow> others = [.. rows.Select(r => r with { Part = Shelves.Part(r.Slot, random) })];
        foreach (CatalogueRow[] some in others.Concat(Shelves.Rows(random, 100).Where(o => !rows.Any(r => r.Slot == o.Slot && r.Id == o.Id))).OrderBy(_ => random.Next()).DistinctBy(r => (r.Slot, r.Id)).Chunk(37))
        {
            winding.Load(some);
        }

        CatalogueKey[] gone = [.. winding.View.Slots.SelectMany(s => winding.View.IndexOf(s)!.Ids.ToArray().Select(id => new CatalogueKey(s, id))).Where(k => random.Next(2) == 0 || !rows.Any(r => r.Slot == k.Slot && r.Id == k.Id))];
        winding.Change(rows.OrderBy(_ => random.Next()), gone);
        Assert.Equal(straight.View.Count, winding.View.Count);
        foreach (Slot slot in straight.View.Slots)
        {
            Assert.Equal(straight.View.KindsOf(slot), winding.View.KindsOf(slot));
            Assert.Equal(Shelves.Told(straight.View.Fitting(build, slot, 50)), Shelves.Told(winding.View.Fitting(build, slot, 50)));
        }
    }

    [Property(MaxTest = 200)]
    public void A_part_comes_back_as_it_was_put_in(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        foreach (Slot slot in Slot.All)
        {
            Part part = Shelves.Part(slot, random);
            Assert.Equal(part with { Name = "" }, Shelves.Of([new CatalogueRow(7, slot, part with { Name = "a name" })]).View.Find(slot, 7));
        }
    }

    [Fact]
    public void Every_part_of_the_whole_bicycles_comes_back_and_is_found_again()
    {
        string folder = Path.Combine(BuildFileTests.Root(), "tests", "Lugwork.Tests", "Builds", "Whole");
        Build[] builds = [.. Directory.GetFiles(folder, "*.json").Where(f => char.IsAsciiDigit(Path.GetFileName(f)[0])).Order(StringComparer.Ordinal).Select(f => BuildFile.Read(File.ReadAllText(f)).WithoutReadings())];
        Assert.Equal(30, builds.Length);
        CatalogueView view = Shelves.Of(builds.SelectMany((b, i) => Slot.All.Where(s => b[s] is not null).Select(s => new CatalogueRow(i, s, b[s]!)))).View;
        for (int i = 0; i < builds.Length; i++)
        {
            foreach (Slot slot in Slot.All.Where(s => builds[i][s] is not null))
            {
                Assert.Equal(builds[i][slot]! with { Name = "" }, view.Find(slot, i));
                // What was read with the part that is there says nothing of another one.
                Verdict plain = Shelves.Plain(slot == Slot.Frame ? builds[i] : builds[i].ReadingsAside(slot).With(builds[i][slot]! with { Name = "" }, slot), slot, slot, slot);
                SlotFitting answer = view.Fitting(builds[i], slot, 100);
                FittingPart[] own = [.. answer.Fits.Concat(answer.NeedsPart).Concat(answer.Open).Where(p => p.Id == i)];
                Assert.True((plain <= Verdict.NeedsMeasuring) == own.Any(p => p.Verdict == plain), $"{i} {slot.Key}: {plain}, listed {string.Join(", ", own.Select(p => p.Verdict))}");
            }
        }
    }

    private static Build With(Build build, CatalogueRow row)
    {
        if (row.Slot != Slot.Frame)
        {
            return build.With(row.Part, row.Slot);
        }

        return Slot.All.Where(s => s != Slot.Frame && build[s] is not null).Aggregate(Build.From((Frame)row.Part), (b, s) => b.With(build[s]!, s));
    }
}
