using FsCheck;
using FsCheck.Xunit;
using Lugwork.Catalogues;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Catalogues;

/// <summary>Parts by kind, handed out where they stand, are the parts of the lists.</summary>
public sealed class FittingGroupTests
{
    [Property(MaxTest = 40)]
    public void Groups_hold_the_numbers_and_verdicts_of_the_lists(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = random.Next(2) == 0 ? Build.From(Bicycles.Frame(random)) : Bicycles.Any(random);
        CatalogueView view = Shelves.Of(Doubled(Shelves.Rows(random, 150), random)).View;
        Verdict worst = (Verdict)random.Next(1, 4);
        foreach (Slot slot in Slot.All)
        {
            SlotFitting lists = view.Fitting(build, slot, int.MaxValue, worst);
            FittingGroup[] groups = [.. view.FittingGroups(build, slot, worst)];
            Assert.Equal(
                lists.Fits.Concat(lists.NeedsPart).Concat(lists.Open).Select(p => (p.Id, p.Verdict)).Order(),
                groups.SelectMany(g => g.Ids.ToArray().Select(id => (id, g.Verdict))).Order());
            Assert.Equal(groups.Select(g => g.Verdict), groups.Select(g => g.Verdict).OrderBy(v => v == Verdict.NotJudged).ThenBy(v => v));
            Assert.Equal(lists.Kinds.Select(k => (k.Count, k.First.Id, k.First.Verdict)), groups.Select(g => (g.Count, g.Ids.Span[0], g.Verdict)));
            Assert.All(groups, g =>
            {
                long[] ids = g.Ids.ToArray();
                Assert.Equal(ids.Distinct().Order(), ids);
                Assert.Equal(g.Count, ids.Length);
                Assert.All(ids, id => Assert.Equal(g.Part, view.Find(slot, id)));
            });
        }
    }

    [Fact]
    public void A_group_stays_as_it_is_when_the_catalogue_changes()
    {
        Seatpost post = Seatpost.Read("27.2");
        PartCatalogue catalogue = Shelves.Of([new CatalogueRow(9, Slot.Seatpost, post), new CatalogueRow(-4, Slot.Seatpost, post), new CatalogueRow(5, Slot.Seatpost, Seatpost.Read("31.6"))]);
        Frame frame = Frame.Read("seat tube 27.2");
        FittingGroup before = Assert.Single(catalogue.View.FittingGroups(frame, Slot.Seatpost), g => g.Ids.Length == 2);
        catalogue.Change([new CatalogueRow(7, Slot.Seatpost, post)], [new CatalogueKey(Slot.Seatpost, 9)]);
        Assert.Equal([-4, 9], before.Ids.ToArray());
        FittingGroup after = Assert.Single(catalogue.View.FittingGroups(frame, Slot.Seatpost), g => g.Ids.Length == 2);
        Assert.Equal([-4, 7], after.Ids.ToArray());
        Assert.NotEqual(before, after);
        Assert.True(after == catalogue.View.FittingGroups(frame, Slot.Seatpost).Single(g => g.Ids.Length == 2));
        Assert.Equal($"2 parts such as -4: {Verdicts.InWords(after.Verdict)}", after.ToString());
    }

    [Fact]
    public void Nothing_is_handed_out_where_there_is_nothing()
    {
        CatalogueView view = Shelves.Of([new CatalogueRow(1, Slot.Seatpost, Seatpost.Read("31.6"))]).View;
        Frame frame = Frame.Read("seat tube 27.2");
        Assert.Empty(view.FittingGroups(frame, Slot.Saddle));
        Assert.Empty(view.FittingGroups(Build.From(frame), Slot.Seatpost, Verdict.Fits));
        Assert.Throws<ArgumentOutOfRangeException>(() => view.FittingGroups(Build.From(frame), Slot.Seatpost, Verdict.DoesNotFit));
        FittingGroup none = default;
        Assert.Equal((0, true, Verdict.NotJudged, "no parts"), (none.Count, none.Ids.IsEmpty, none.Verdict, none.ToString()));
        Assert.Null(none.Part);
    }

    /// <summary>A kind that came lately is not held against itself again; one that came from a snapshot never was.</summary>
    [Fact]
    public void A_part_that_contradicts_itself_is_skipped_each_time_though_a_snapshot_holds_its_like()
    {
        Seatpost good = Seatpost.Read("27.2; length 300");
        Seatpost bad = good with { Mark = Known.Of(Dimension.OfMillimetres(310)) };
        CatalogueRow[] rows = [.. Enumerable.Range(10, 3).Select(i => new CatalogueRow(i, Slot.Seatpost, bad)), new(13, Slot.Seatpost, good), new(14, Slot.Seatpost, bad)];
        CatalogueReport report = new PartCatalogue().Load(rows);
        Assert.Equal((1, 4L), (report.Added, report.Skipped));

        SlotTable table = new(Slot.Seatpost);
        int kind = new KindReader(table).Add(bad);
        SlotIndex index = new(Slot.Seatpost, table.View(), [1], [kind]);
        using MemoryStream stream = new();
        CatalogueFile.Write(new([.. Slot.All.Select(s => s == Slot.Seatpost ? index : null)], 1), stream, CancellationToken.None);
        stream.Position = 0;
        PartCatalogue read = CatalogueFile.Read(stream, CancellationToken.None);
        Assert.Equal(1, read.View.Count);
        report = read.Load(rows);
        Assert.Equal((1, 4L), (report.Added, report.Skipped));
    }

    /// <summary>The same parts under other numbers too: a kind of many parts.</summary>
    private static List<CatalogueRow> Doubled(List<CatalogueRow> rows, Random random) =>
        [.. rows.Concat(rows.Where(_ => random.Next(2) == 0).Select(r => r with { Id = r.Id ^ (1L << 40) })).DistinctBy(r => (r.Slot, r.Id)).OrderBy(_ => random.Next())];
}
