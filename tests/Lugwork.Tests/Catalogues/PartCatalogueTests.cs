using Lugwork.Catalogues;

namespace Lugwork.Tests.Catalogues;

/// <summary>A small shop: what it asks of its catalogue, and what happens to its rows.</summary>
public sealed class PartCatalogueTests
{
    private static readonly CatalogueLine[] Shop =
    [
        new(1, "seatpost", "27.2; mark 75; insertion 110"),
        new(2, "seatpost", "26.8; mark 75; insertion 110"),
        new(3, "seatpost", "31.6; mark 75; insertion 110"),
        new(4, "seatpost", "mark 75; insertion 110"),
        new(5, "seatpost", "27.2; length 350; mark 75; insertion 110"),
        new(10, "frame", "seatTube 27.2; material steel; leastInsertion 80; mostInsertion 210"),
        new(11, "frame", "seatTube 31.6; leastInsertion 80; mostInsertion 210"),
        new(12, "frame", "material steel; leastInsertion 80; mostInsertion 210"),
        new(20, "rearWheel", "rear 10x135; ends swappable"),
        new(21, "rearWheel", "rear 12x142"),
        new(30, "pedals", "thread 9/16"),
    ];

    private static Frame Bored(string bore) => Frame.Read($"seatTube {bore}; leastInsertion 80; mostInsertion 210");

    private static Seatpost Post(string size) => Seatpost.Read($"{size}; mark 75; insertion 110");

    private static PartCatalogue Loaded()
    {
        PartCatalogue catalogue = new();
        Assert.Equal(0, catalogue.LoadLines(Shop).Skipped);
        return catalogue;
    }

    [Fact]
    public void A_change_that_changes_nothing_copies_nothing()
    {
        PartCatalogue catalogue = Shelves.Of([new(1, Slot.Saddle, Saddle.Read("rails 7x9"))]);
        SlotIndex? before = catalogue.View.IndexOf(Slot.Saddle);
        Assert.Equal(0, catalogue.Remove(Slot.Saddle, 2, 3));
        Assert.Same(before, catalogue.View.IndexOf(Slot.Saddle));
        Assert.Equal(1, catalogue.Remove(Slot.Saddle, 2, 1));
        Assert.Null(catalogue.View.IndexOf(Slot.Saddle));
    }

    [Fact]
    public void Parts_that_fit_need_a_part_or_are_open_stand_apart()
    {
        SlotFitting posts = Loaded().View.Fitting(Bored("27.2"), Slot.Seatpost, 10);
        Assert.Equal([1, 5], posts.Fits.Select(p => p.Id));
        Assert.Equal([2], posts.NeedsPart.Select(p => p.Id));
        Assert.Equal([4], posts.Open.Select(p => p.Id));
        Assert.Equal(new FitCounts(2, 1, 1, 0, 1), posts.Counts);
        Assert.Equal("seatpost: 2 fit, 1 need a part, 1 open, 1 worse", posts.ToString());
        Assert.False(posts.IsCapped);
    }

    [Fact]
    public void A_part_that_needs_another_says_which()
    {
        FittingPart post = Assert.Single(Loaded().View.Fitting(Bored("27.2"), Slot.Seatpost, 10).NeedsPart);
        Fit told = Build.From(Bored("27.2")).With(Post("26.8")).Check().Findings.Single(f => f.Verdict == Verdict.NeedsPart);
        Assert.Equal(told.Remedies.AsEnumerable(), post.Needs);
        Assert.Contains("shim", post.Needs[0].What, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(Post("26.8"), post.Part);
    }

    [Fact]
    public void What_meets_nothing_yet_is_open_and_said_to_be_not_judged()
    {
        SlotFitting pedals = Loaded().View.Fitting(Bored("27.2"), Slot.Pedals, 10);
        FittingPart only = Assert.Single(pedals.Open);
        Assert.Equal(Verdict.NotJudged, only.Verdict);
        Assert.Equal(1, pedals.Counts.NotJudged);
        Assert.Equal(0, pedals.Counts.Fits);
    }

    [Fact]
    public void Frames_are_found_for_a_new_part()
    {
        SlotFitting frames = Loaded().View.FramesFor(Post("27.2"), Slot.Seatpost, 10);
        Assert.Equal(Slot.Frame, frames.Slot);
        Assert.Equal([10], frames.Fits.Select(p => p.Id));
        Assert.Equal([11], frames.NeedsPart.Select(p => p.Id));
        Assert.Equal([12], frames.Open.Select(p => p.Id));
        Assert.Equal([11], Loaded().View.FramesFor(Post("31.6"), Slot.Seatpost, 10, Verdict.Fits).Fits.Select(p => p.Id));
        Assert.Contains(frames.Fits[0].Findings, f => f.Joint!.Id == "seatpost-in-seat-tube");
    }

    [Fact]
    public void A_frame_is_found_for_the_parts_of_a_build()
    {
        Build build = Build.From(Bored("25.4")).With(Post("31.6"));
        Assert.Equal([11], Loaded().View.Fitting(build, Slot.Frame, 10).Fits.Select(p => p.Id));
    }

    [Fact]
    public void An_open_part_says_how_it_stands_so_far()
    {
        PartCatalogue catalogue = Shelves.Of([new(1, Slot.Seatpost, Seatpost.Read("27.2")), new(2, Slot.Seatpost, Seatpost.Read("26.8"))]);
        SlotFitting posts = catalogue.View.Fitting(Frame.Read("seatTube 27.2"), Slot.Seatpost, 10);
        Assert.Empty(posts.Fits);
        Assert.Equal([Verdict.Fits, Verdict.NeedsPart], posts.Open.Select(p => p.SoFar));
    }

    [Fact]
    public void What_the_build_has_in_the_slot_does_not_count()
    {
        Build build = Build.From(Bored("27.2")).With(Post("31.6"));
        Assert.Equal([1, 5], Loaded().View.Fitting(build, Slot.Seatpost, 10).Fits.Select(p => p.Id));
    }

    [Fact]
    public void Lists_are_capped_and_counts_are_not()
    {
        CatalogueView view = Loaded().View;
        SlotFitting one = view.Fitting(Bored("27.2"), Slot.Seatpost, 1);
        Assert.Equal([1], one.Fits.Select(p => p.Id));
        Assert.True(one.IsCapped);
        SlotFitting none = view.Fitting(Bored("27.2"), Slot.Seatpost, 0);
        Assert.Empty(none.Fits);
        Assert.Equal(2, none.Counts.Fits);
        Assert.Equal(none.Counts, view.CountsFor(Build.From(Bored("27.2")))[Slot.Seatpost]);
    }

    [Fact]
    public void The_worst_verdict_to_list_is_the_askers()
    {
        SlotFitting plain = Loaded().View.Fitting(Build.From(Bored("27.2")), Slot.Seatpost, 10, Verdict.Fits);
        Assert.Empty(plain.NeedsPart);
        Assert.Empty(plain.Open);
        Assert.Equal(new FitCounts(2, 0, 0, 0, 3), plain.Counts);
        SlotFitting bridged = Loaded().View.Fitting(Build.From(Bored("27.2")), Slot.Seatpost, 10, Verdict.NeedsPart);
        Assert.Equal([2], bridged.NeedsPart.Select(p => p.Id));
        Assert.Empty(bridged.Open);
        foreach (Verdict wrong in new[] { Verdict.NotJudged, Verdict.DoesNotFit, Verdict.Unsafe, (Verdict)9 })
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => Loaded().View.Fitting(Build.From(Bored("27.2")), Slot.Seatpost, 10, wrong));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => Loaded().View.Fitting(Bored("27.2"), Slot.Seatpost, -1));
    }

    [Fact]
    public void Bad_rows_are_skipped_and_reported_and_the_good_ones_stay()
    {
        PartCatalogue catalogue = new();
        CatalogueReport report = catalogue.LoadLines(
        [
            new(1, "seatpost", "27.2"),
            new(2, "saddlepost", "27.2"),
            new(3, "seatpost", "diameter plenty"),
            null!,
            new(4, "seatpost", null!),
            new(1, "seatpost", "31.6"),
            new(1, "frame", "seatTube 27.2"),
        ]);
        Assert.Equal([1L, 2, 3, 4, 5], report.Problems.Select(p => p.Row));
        Assert.Equal(5, report.Skipped);
        Assert.Equal(2, report.Added);
        Assert.Contains("no such slot", report.Problems[0].Reason, StringComparison.Ordinal);
        Assert.Contains("diameter", report.Problems[1].Reason, StringComparison.Ordinal);
        Assert.Equal("row 5 (id 1): an earlier row of this slot has the same number", report.Problems[4].ToString());
        Assert.Equal(Seatpost.Read("27.2"), catalogue.View.Find(Slot.Seatpost, 1));
        Assert.Equal(2, catalogue.View.Count);

        CatalogueReport rows = catalogue.Load([new(9, Slot.Seatpost, Saddle.Read("rails 7-round")), new(9, Slot.Saddle, null!), new(9, null!, Saddle.Read("rails 7-round"))]);
        Assert.Equal(3, rows.Skipped);
        Assert.Contains("not to seatpost", rows.Problems[0].Reason, StringComparison.Ordinal);
        Assert.Equal(2, catalogue.View.Count);
    }

    [Fact]
    public void Problems_are_counted_when_they_are_too_many_to_keep()
    {
        CatalogueReport report = new PartCatalogue().LoadLines(Enumerable.Range(0, 2_500).Select(i => new CatalogueLine(i, "nowhere", "27.2")));
        Assert.Equal(2_500, report.Skipped);
        Assert.Equal(CatalogueReport.MostProblems, report.Problems.Length);
    }

    [Fact]
    public void A_part_is_replaced_by_its_number_and_taken_out()
    {
        PartCatalogue catalogue = Loaded();
        CatalogueView before = catalogue.View;
        CatalogueReport report = catalogue.Load([new(3, Slot.Seatpost, Post("27.2"))]);
        Assert.Equal("0 added, 1 replaced, 0 removed, 0 skipped", report.ToString());
        Assert.Equal([1, 3, 5], catalogue.View.Fitting(Bored("27.2"), Slot.Seatpost, 10).Fits.Select(p => p.Id));
        Assert.Equal(2, catalogue.Remove(Slot.Seatpost, 1, 5, 77));
        Assert.Equal([3], catalogue.View.Fitting(Bored("27.2"), Slot.Seatpost, 10).Fits.Select(p => p.Id));
        Assert.Null(catalogue.View.Find(Slot.Seatpost, 1));
        Assert.Equal([1, 5], before.Fitting(Bored("27.2"), Slot.Seatpost, 10).Fits.Select(p => p.Id));
        Assert.Equal(11, before.Count);
        Assert.Equal(4, catalogue.Remove(Slot.RearWheel, 20, 21) + catalogue.Remove(Slot.Seatpost, 3, 2));
        Assert.DoesNotContain(Slot.RearWheel, catalogue.View.Slots);
    }

    [Fact]
    public void What_goes_and_comes_in_one_change_is_put_in()
    {
        PartCatalogue catalogue = Loaded();
        CatalogueReport report = catalogue.Change([new(1, Slot.Seatpost, Post("31.6"))], [new(Slot.Seatpost, 1), new(Slot.Seatpost, 2), new(Slot.Fork, 5)]);
        Assert.Equal("0 added, 1 replaced, 1 removed, 0 skipped", report.ToString());
        Assert.Equal(Post("31.6"), catalogue.View.Find(Slot.Seatpost, 1));
        Assert.Null(catalogue.View.Find(Slot.Seatpost, 2));
    }

    [Fact]
    public void A_change_that_breaks_off_changes_nothing()
    {
        PartCatalogue catalogue = Loaded();
        CatalogueView before = catalogue.View;
        string fits = Shelves.Told(before.Fitting(Bored("27.2"), Slot.Seatpost, 99));
        Assert.Throws<InvalidOperationException>(() => catalogue.Load(Breaking()));
        Assert.Same(before, catalogue.View);

        using CancellationTokenSource source = new();
        Assert.Throws<OperationCanceledException>(() => catalogue.Load(Cancelling(source), source.Token));
        Assert.Same(before, catalogue.View);
        Assert.Throws<OperationCanceledException>(() => before.Fitting(Build.From(Bored("27.2")), Slot.Seatpost, 99, cancellationToken: source.Token));

        // What was given up is not mixed into what comes after, nor into what was there.
        Assert.Equal(1, catalogue.Load([new(101, Slot.Seatpost, Post("30.9; length 401"))]).Added);
        Assert.Equal(Post("30.9; length 401"), catalogue.View.Find(Slot.Seatpost, 101));
        Assert.Equal(6, catalogue.View.IndexOf(Slot.Seatpost)!.Table.Count);
        Assert.Equal(fits, Shelves.Told(before.Fitting(Bored("27.2"), Slot.Seatpost, 99)));
        Assert.Equal([101], catalogue.View.Fitting(Bored("30.9"), Slot.Seatpost, 9).Fits.Select(p => p.Id));
    }

    private static IEnumerable<CatalogueRow> Breaking()
    {
        yield return new(1, Slot.Seatpost, Post("30.9; length 400"));
        yield return new(100, Slot.Seatpost, Post("31.8; length 401"));
        throw new InvalidOperationException("the file of the shop ends here");
    }

    private static IEnumerable<CatalogueRow> Cancelling(CancellationTokenSource source)
    {
        yield return new(1, Slot.Seatpost, Post("30.9; length 402"));
        source.Cancel();
        yield return new(2, Slot.Seatpost, Post("30.9; length 403"));
    }

    [Fact]
    public async Task Rows_may_come_in_time()
    {
        PartCatalogue catalogue = new();
        CatalogueReport report = await catalogue.LoadAsync(Coming(3));
        Assert.Equal(3, report.Added);
        Assert.Equal(3, catalogue.View.CountOf(Slot.Seatpost));
        await Assert.ThrowsAsync<InvalidOperationException>(() => catalogue.LoadAsync(Coming(4)));
        Assert.Equal(3, catalogue.View.CountOf(Slot.Seatpost));
        Assert.Equal(1, catalogue.Load([new(99, Slot.Seatpost, Seatpost.Read("27.2"))]).Added);
    }

    [Fact]
    public async Task Lines_and_changes_may_come_in_time_and_a_slow_one_keeps_no_thread()
    {
        PartCatalogue catalogue = new();
        CatalogueReport report = await catalogue.LoadLinesAsync(new CatalogueLine[] { new(1, "seatpost", "27.2"), new(2, "seatpost", "no post"), new(3, "saddle", "rails 7-round") }.ToAsyncEnumerable());
        Assert.Equal("2 added, 0 replaced, 0 removed, 1 skipped", report.ToString());
        TaskCompletionSource comes = new();
        async IAsyncEnumerable<CatalogueRow> Slow()
        {
            await comes.Task;
            yield return new(4, Slot.Seatpost, Seatpost.Read("27.2"));
        }

        Task<CatalogueReport> slow = catalogue.ChangeAsync(Slow(), [new(Slot.Saddle, 3)]);
        Task<CatalogueReport> next = catalogue.LoadAsync(Coming(3));
        Assert.False(slow.IsCompleted || next.IsCompleted);
        Assert.Equal(2, catalogue.View.Count);
        comes.SetResult();
        Assert.Equal("1 added, 0 replaced, 1 removed, 0 skipped", (await slow).ToString());
        Assert.Equal("2 added, 1 replaced, 0 removed, 0 skipped", (await next).ToString());
        Assert.Equal(0, catalogue.View.CountOf(Slot.Saddle));
    }

    [Fact]
    public void A_part_that_contradicts_itself_is_reported_however_it_comes()
    {
        PartCatalogue catalogue = new();
        Seatpost wrong = Seatpost.Read("27.2; mark 90") with { Length = Known<Dimension>.Of(Dimension.OfMillimetres(80)) };
        CatalogueReport report = catalogue.Load([new(1, Slot.Seatpost, wrong), new(2, Slot.Seatpost, Seatpost.Read("27.2"))]);
        Assert.Equal("1 added, 0 replaced, 0 removed, 1 skipped", report.ToString());
        CatalogueProblem problem = Assert.Single(report.Problems);
        CatalogueProblem same = Assert.Single(catalogue.LoadLines([new(1, "seatpost", "27.2; mark 90; length 80")]).Problems);
        Assert.Equal((1, same.Reason), (problem.Id, problem.Reason));
        Assert.Null(catalogue.View.Find(Slot.Seatpost, 1));
    }

    [Fact]
    public void More_parts_than_a_catalogue_holds_are_refused_in_words()
    {
        Assert.Equal(Array.MaxLength, SlotMerge.Room(Array.MaxLength - 1, 1));
        Assert.Contains("holds", Assert.Throws<InvalidOperationException>(() => SlotMerge.Room(Array.MaxLength - 1, 2)).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => SlotMerge.Room(Array.MaxLength, int.MaxValue));
    }

    private static async IAsyncEnumerable<CatalogueRow> Coming(int count)
    {
        for (int i = 0; i < count; i++)
        {
            await Task.Yield();
            yield return i < 3 ? new(i, Slot.Seatpost, Seatpost.Read("27.2")) : throw new InvalidOperationException("the line broke");
        }
    }

    [Fact]
    public void Parts_that_say_the_same_are_one_kind_and_kinds_of_parts_that_are_gone_do_not_pile_up()
    {
        PartCatalogue catalogue = new();
        catalogue.Load(Enumerable.Range(0, 500).Select(i => new CatalogueRow(i, Slot.Seatpost, Seatpost.Read("27.2") with { Name = $"number {i}" })));
        Assert.Equal(1, catalogue.View.KindsOf(Slot.Seatpost));
        for (int round = 0; round < 20; round++)
        {
            catalogue.Load(Enumerable.Range(0, 500).Select(i => new CatalogueRow(i, Slot.Seatpost, Seatpost.Read($"27.2; length {200 + i + (500 * round)}"))));
        }

        Assert.Equal(500, catalogue.View.KindsOf(Slot.Seatpost));
        Assert.InRange(catalogue.View.IndexOf(Slot.Seatpost)!.Table.Count, 500, 2_000);
        Assert.Equal(Seatpost.Read("27.2; length 9701"), catalogue.View.Find(Slot.Seatpost, 1));
    }

    [Fact]
    public void A_part_with_something_outside_the_library_never_fits()
    {
        PartCatalogue catalogue = Shelves.Of([new(1, Slot.FrontWheel, Wheel.Read("hub F100-QR9; body hub-motor")), new(2, Slot.FrontWheel, Wheel.Read("hub F100-QR9"))]);
        Build build = Build.From(Frame.Read("material steel")).With(Fork.Read("front F100-QR9"));
        SlotFitting wheels = catalogue.View.Fitting(build, Slot.FrontWheel, 9);
        Assert.Equal([2], wheels.Fits.Select(p => p.Id));
        Assert.Equal([1], wheels.Open.Select(p => p.Id));
        Assert.Equal((Verdict.NeedsMeasuring, Verdict.NeedsMeasuring), (wheels.Open[0].Verdict, wheels.Open[0].SoFar));
        Assert.Contains("body", Assert.Single(wheels.Open[0].ToAsk).ToString(), StringComparison.OrdinalIgnoreCase);
        Assert.Empty(wheels.Fits[0].ToAsk);
    }

    /// <summary>A frame that is not to be ridden is none that a part fits, however well the part mates.</summary>
    [Theory]
    [InlineData("", Verdict.Fits)]
    [InlineData("; condition new", Verdict.Fits)]
    [InlineData("; condition recalled", Verdict.Unsafe)]
    [InlineData("; condition crashed", Verdict.Unsafe)]
    [InlineData("; condition unknown", Verdict.NeedsMeasuring)]
    public void What_is_said_of_a_frame_alone_counts_where_frames_are_sought(string condition, Verdict verdict)
    {
        PartCatalogue frames = Shelves.Of([new(1, Slot.Frame, Frame.Read("material carbon; seatTubeOutside 31.8" + condition))]);
        SlotFitting found = frames.View.FramesFor(SeatClamp.Read("31.8; condition new"), Slot.SeatClamp, 9);
        FitCounts counts = found.Counts;
        Assert.Equal(verdict, counts.Fits == 1 ? Verdict.Fits : counts.NeedsMeasuring == 1 ? Verdict.NeedsMeasuring : counts.Worse == 1 ? Verdict.Unsafe : Verdict.NotJudged);
    }
}
