using Lugwork.Catalogues;
using Lugwork.Tests.Fits;

namespace Lugwork.Tests.Catalogues;

/// <summary>What a part says as one row of numbers, and kinds found by such rows.</summary>
public sealed class PackedCodesTests
{
    public static TheoryData<string> Slots => [.. Slot.All.Select(s => s.Key)];

    /// <summary>Read together or field by field, a part says the same; in a batch that is filled twice too.</summary>
    [Theory]
    [MemberData(nameof(Slots))]
    public void Parts_read_together_say_what_each_field_says(string key)
    {
        Slot slot = Slot.Find(key)!;
        Random random = new(slot.Number);
        IPartForm form = PartForms.Of(slot);
        PartBatch batch = form.Batch();
        OtherCodes others = new();
        foreach (int count in new[] { 1, 40, 7 })
        {
            Part[] parts = [.. Enumerable.Range(0, count).Select(_ => Shelves.Part(slot, random))];
            batch.Clear();
            Array.ForEach(parts, batch.Put);
            batch.Read(others);
            for (int at = 0; at < count; at++)
            {
                for (int field = 0; field < batch.Width; field++)
                {
                    Candidates said = field < form.OwnFields.Length ? form.CodesOf(parts[at], form.OwnFields[field]) : default;
                    Assert.Equal(OtherCodesTests.Spelt(said), OtherCodesTests.Spelt(others[batch.CodesOf(at)[field]]));
                }
            }
        }
    }

    /// <summary>More rows than have room: what is found is the very kind, what was put in last is found, and few rows push none out.</summary>
    [Fact]
    public void A_recent_kind_is_the_kind_of_the_very_row()
    {
        const int Width = 8;
        Random random = new(5);
        long[][] rows = [.. Enumerable.Range(0, 9_000).Select(i => Enumerable.Range(0, Width).Select(field => field == 3 ? i : (long)random.Next(2)).ToArray())];
        RecentKinds recent = new(Width);
        int found = 0;
        for (int turn = 0; turn < 20_000; turn++)
        {
            int kind = random.Next(rows.Length);
            int known = recent.Find(rows[kind]);
            Assert.True(known < 0 || known == kind);
            found += known < 0 ? 0 : 1;
            if (known < 0)
            {
                recent.Put(rows[kind], kind);
                Assert.Equal(kind, recent.Find(rows[kind]));
            }
        }

        Assert.InRange(found, 1_000, 20_000);
        recent.Clear();
        Assert.All(rows, row => Assert.Equal(-1, recent.Find(row)));

        RecentKinds few = new(Width);
        for (int kind = 0; kind < 200; kind++)
        {
            few.Put(rows[kind], kind);
        }

        Assert.All(Enumerable.Range(0, 200), kind => Assert.Equal(kind, few.Find(rows[kind])));
    }

    /// <summary>More ranges than are remembered within one change, in no order, some numbers twice.</summary>
    [Fact]
    public void A_change_with_very_many_ranges_keeps_each_part_as_it_is()
    {
        const int Count = 70_000;
        Saddle Of(int i) => new() { Depth = Known<Dimension>.Measured(40 + (i / 10_000m), 0.1m) };
        Random random = new(9);
        int[] order = [.. Enumerable.Range(0, Count)];
        random.Shuffle(order);
        PartCatalogue catalogue = new();
        CatalogueReport report = catalogue.Load(order.Concat(order.Take(100)).Select(i => new CatalogueRow(i, Slot.Saddle, Of(i))));
        Assert.Equal((Count, 100L), (report.Added, report.Skipped));
        Assert.Equal(Enumerable.Range(Count, 100).Select(row => (long)row), report.Problems.Select(p => p.Row));
        Assert.Equal(order.Take(100).Select(i => (long)i), report.Problems.Select(p => p.Id));
        Assert.Equal(Count, catalogue.View.KindsOf(Slot.Saddle));
        foreach (int i in order.Take(5_000))
        {
            Assert.Equal(Of(i), catalogue.View.Find(Slot.Saddle, i));
        }
    }
}
