using System.Globalization;
using Lugwork.Catalogues;

namespace Lugwork.Tests.Catalogues;

/// <summary>Readers while a writer changes the catalogue.</summary>
public sealed class ConcurrentCatalogueTests
{
    /// <summary>Every change swaps all posts for as many of one other length: a torn view would show two lengths, or another number.</summary>
    [Fact]
    public async Task Readers_see_whole_states_only()
    {
        const int Posts = 400;
        PartCatalogue catalogue = new();
        catalogue.Load(Round(0, Posts));
        Frame frame = Frame.Read("seatTube 27.2; mostInsertion 200");
        using CancellationTokenSource done = new();
        Task<int>[] readers = [.. Enumerable.Range(0, 3).Select(_ => Task.Run(() =>
        {
            int seen = 0;
            long version = 0;
            while (!done.IsCancellationRequested || seen == 0)
            {
                CatalogueView view = catalogue.View;
                Assert.True(view.Version >= version, "a view came before one that was seen");
                version = view.Version;
                SlotFitting answer = view.Fitting(frame, Slot.Seatpost, Posts);
                Assert.Equal(Posts, answer.Counts.Total);
                Assert.Equal(Posts, view.CountOf(Slot.Seatpost));
                string[] lengths = [.. answer.Fits.Concat(answer.NeedsPart).Concat(answer.Open).Select(p => ((Seatpost)p.Part!).Length.ToString()).Distinct()];
                Assert.Single(lengths);
                Assert.Equal(Shelves.Told(answer), Shelves.Told(view.Fitting(frame, Slot.Seatpost, Posts)));
                seen++;
            }

            return seen;
        }))];
        for (int round = 1; round <= 150; round++)
        {
            CatalogueRow[] next = [.. Round(round, Posts)];
            CatalogueKey[] gone = [.. Round(round - 1, Posts).Select(r => new CatalogueKey(r.Slot, r.Id))];
            Assert.Equal(0, catalogue.Change(next, gone).Skipped);
            if (round % 10 == 0)
            {
                // One that is given up in the middle shows nothing either.
                Assert.Throws<InvalidOperationException>(() => catalogue.Load(Broken(round)));
            }
        }

        await done.CancelAsync();
        Assert.All(await Task.WhenAll(readers), seen => Assert.True(seen > 0));
    }

    [Fact]
    public async Task Writers_wait_for_each_other_and_none_is_lost()
    {
        PartCatalogue catalogue = new();
        await Task.WhenAll(Enumerable.Range(0, 8).Select(writer => Task.Run(() =>
        {
            for (int i = 0; i < 25; i++)
            {
                catalogue.Load([new((writer * 100) + i, Slot.Seatpost, Seatpost.Read($"27.2; length {200 + i}"))]);
            }
        })));
        Assert.Equal(200, catalogue.View.Count);
        Assert.Equal(25, catalogue.View.KindsOf(Slot.Seatpost));
        Assert.Equal(200, catalogue.View.Version);
        Assert.All(Enumerable.Range(0, 200), i => Assert.Equal(Seatpost.Read($"27.2; length {200 + (i % 25)}"), catalogue.View.Find(Slot.Seatpost, (i / 25 * 100) + (i % 25))));
    }

    /// <summary>Front and rear rotor are always changed together, while others read, count, look for frames, and save.</summary>
    [Fact]
    public async Task A_change_over_two_slots_is_seen_and_saved_whole()
    {
        PartCatalogue catalogue = new();
        catalogue.Load([.. Pair(0), new(1, Slot.Frame, Frame.Read("largest rear rotor 180"))]);
        string path = Path.GetTempFileName();
        using CancellationTokenSource done = new();
        Task<int> reader = Task.Run(() => Again(() => Whole(catalogue.View), done.Token));
        Task<int> saver = Task.Run(() => Again(() =>
        {
            catalogue.Save(path);
            Whole(PartCatalogue.Open(path).View);
        }, done.Token));
        for (int round = 1; round <= 200; round++)
        {
            if (round % 3 == 0)
            {
                await catalogue.LoadAsync(Pair(round).ToAsyncEnumerable());
            }
            else
            {
                catalogue.Change(Pair(round), [new(Slot.FrontRotor, 1), new(Slot.RearRotor, 1)]);
            }
        }

        await done.CancelAsync();
        Assert.All(await Task.WhenAll(reader, saver), seen => Assert.True(seen > 0));
        File.Delete(path);
    }

    private static int Again(Action act, CancellationToken done)
    {
        int times = 0;
        for (; !done.IsCancellationRequested || times == 0; times++)
        {
            act();
        }

        return times;
    }

    private static void Whole(CatalogueView view)
    {
        Part rear = view.Find(Slot.RearRotor, 1)!;
        Assert.Equal(view.Find(Slot.FrontRotor, 1), rear);
        Assert.Equal(3, view.Count);
        Assert.Equal(1, view.FramesFor(rear, Slot.RearRotor, 5).Counts.Total);
        Assert.Equal(view.CountsFor(Build.From((Frame)view.Find(Slot.Frame, 1)!))[Slot.RearRotor], view.CountsOfFrames().Of(1, Slot.RearRotor));
    }

    private static CatalogueRow[] Pair(int round)
    {
        Rotor rotor = Rotor.Read(string.Create(CultureInfo.InvariantCulture, $"160; thickness {(100 + (round % 100)) / 100m:0.00}"));
        return [new(1, Slot.FrontRotor, rotor), new(1, Slot.RearRotor, rotor)];
    }

    private static IEnumerable<CatalogueRow> Round(int round, int posts) =>
        Enumerable.Range(0, posts).Select(i => new CatalogueRow((round % 2 * 1_000) + i, Slot.Seatpost, Seatpost.Read($"{(i % 3 == 0 ? "27.2" : i % 3 == 1 ? "26.8" : "material steel")}; length {300 + round}; mark {60 + (i % 7)}")));

    private static IEnumerable<CatalogueRow> Broken(int round)
    {
        for (int i = 0; i < 50; i++)
        {
            yield return new(i, Slot.Seatpost, Seatpost.Read($"31.6; length {5_000 + round + i}"));
        }

        throw new InvalidOperationException("broken off");
    }
}
