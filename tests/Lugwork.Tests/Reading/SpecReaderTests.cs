using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

public sealed class SpecReaderTests
{
    [Fact]
    public void Results_come_in_the_order_of_the_rows_and_the_summary_counts_them()
    {
        List<SpecRowResult> results = [];
        SpecSummary summary = SpecReader.Read(Rows(5_000), results.Add);
        Assert.Equal(5_000, summary.Total.Rows);
        Assert.Equal(Enumerable.Range(0, 5_000).Select(i => (long)i), results.Select(r => r.Number));
        Assert.All(results, r => Assert.Equal(r.Row.Id, r.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(1_250, summary.Total.Refused);
        Assert.Equal(1_250, summary.Total.Ambiguous);
        Assert.Equal(2_500, summary.Total.Read);
        Assert.Equal(summary.Total.Ambiguous + summary.Total.Refused, summary.Reasons.Sum(r => r.Rows));
        Assert.Contains(summary.Reasons, r => r is { Kind: SpecDoubtKind.Ambiguous, Field: "frame.rear" });
    }

    [Fact]
    public void A_bad_row_never_stops_the_rest()
    {
        SpecRow[] rows = [new(Slot.Frame, "12x148"), new(Slot.Frame, null!), new(Slot.Frame, "\uD800\uDFFF\0"), new(Slot.Frame, new string('1', 50_000)), new(Slot.Seatpost, "27.2 x 350")];
        SpecSummary summary = SpecReader.Read(rows);
        Assert.Equal((5, 2, 3), (summary.Total.Rows, summary.Total.Read, summary.Total.Refused));
    }

    [Fact]
    public void It_holds_no_more_rows_than_a_chunk()
    {
        long taken = 0;
        long most = 0;
        long told = 0;
        IEnumerable<SpecRow> Counted()
        {
            foreach (SpecRow row in Rows(20_000))
            {
                taken++;
                most = Math.Max(most, taken - told);
                yield return row;
            }
        }

        SpecReader.Read(Counted(), _ => told++);
        Assert.InRange(most, 1, 600);
    }

    [Fact]
    public void Cancelling_ends_it_within_the_rows_in_hand()
    {
        using CancellationTokenSource source = new();
        int reports = 0;
        int after = 0;
        IEnumerable<SpecRow> Counted()
        {
            foreach (SpecRow row in Endless())
            {
                after += source.IsCancellationRequested ? 1 : 0;
                yield return row;
            }
        }

        Assert.Throws<OperationCanceledException>(() => SpecReader.Read(Counted(), progress: new Told(_ =>
        {
            if (++reports == 3)
            {
                source.Cancel();
            }
        }), cancellationToken: source.Token));
        Assert.InRange(after, 0, 1);
    }

    [Fact]
    public async Task A_source_that_blocks_is_given_up_when_cancelled()
    {
        using CancellationTokenSource cancel = new();
        using ManualResetEventSlim release = new();
        using ManualResetEventSlim blocked = new();
        IEnumerable<SpecRow> Slow()
        {
            yield return new(Slot.Frame, "Rear axle 12x148 mm");
            blocked.Set();
            release.Wait(TimeSpan.FromMinutes(1), CancellationToken.None);
            yield return new(Slot.Frame, "Rear axle 12x148 mm");
        }

        Task reading = Task.Run(() => SpecReader.Read(Slow(), cancellationToken: cancel.Token), TestContext.Current.CancellationToken);
        blocked.Wait(TestContext.Current.CancellationToken);
        await cancel.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => reading.WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken));
        Assert.False(release.IsSet);
        release.Set();
    }

    [Fact]
    public async Task A_stream_that_does_not_look_at_the_token_is_given_up_too()
    {
        using CancellationTokenSource cancel = new();
        TaskCompletionSource never = new();
        TaskCompletionSource asked = new();
        async IAsyncEnumerable<SpecRow> Slow()
        {
            yield return new(Slot.Frame, "Rear axle 12x148 mm");
            asked.SetResult();
            await never.Task;
        }

        Task reading = SpecReader.ReadAsync(Slow(), cancellationToken: cancel.Token);
        await asked.Task.WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken);
        await cancel.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => reading.WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken));
        Assert.False(never.Task.IsCompleted);
        never.SetResult();
    }

    [Fact]
    public void The_longest_row_takes_less_than_the_time_that_cancelling_may_take()
    {
        string row = string.Concat(Enumerable.Repeat("Rear axle 12x148 mm, BSA 73, seatpost 31,6 mm, post mount 180; ", 400))[..SpecReader.MostCharacters];
        TimeSpan best = TimeSpan.MaxValue;
        for (int i = 0; i < 60 && best > TimeSpan.FromMilliseconds(100); i++)
        {
            long start = System.Diagnostics.Stopwatch.GetTimestamp();
            SpecLine.Read(Slot.Frame, row);
            TimeSpan took = System.Diagnostics.Stopwatch.GetElapsedTime(start);
            best = took < best ? took : best;
        }

        Assert.InRange(best, TimeSpan.Zero, TimeSpan.FromMilliseconds(100));
    }

    [Fact]
    public void What_a_source_throws_comes_out_as_it_is()
    {
        static IEnumerable<SpecRow> Broken()
        {
            yield return new(Slot.Frame, "Rear axle 12x148 mm");
            throw new InvalidDataException("broken");
        }

        using CancellationTokenSource cancel = new();
        Assert.Throws<InvalidDataException>(() => SpecReader.Read(Broken(), cancellationToken: cancel.Token));
        Assert.Throws<InvalidDataException>(() => SpecReader.Read(Broken()));
    }

    [Fact]
    public async Task Lines_of_a_text_are_rows_and_progress_only_grows()
    {
        string text = string.Join('\n', Enumerable.Repeat("Seatpost 27.2 mm\r\n31.6 or 30.9", 1_000));
        List<SpecProgress> seen = [];
        using StringReader reader = new(text);
        SpecSummary summary = await SpecReader.ReadAsync(SpecReader.ReadLinesAsync(reader, Slot.Frame), progress: new Told(seen.Add));
        Assert.Equal((2_000, 1_000), (summary.Total.Rows, summary.Total.Read));
        Assert.True(seen.Zip(seen.Skip(1)).All(p => p.First.Rows < p.Second.Rows));
        Assert.Equal(summary.Total, seen[^1]);
    }

    private static IEnumerable<SpecRow> Rows(int count)
    {
        for (int i = 0; i < count; i++)
        {
            yield return new(Slot.Frame, (i % 4) switch { 0 => "Rear axle 12x148 mm", 1 => "BSA 73 mm shell", 2 => "rear spacing 135 mm", _ => "colour: red" }, i.ToString(System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    private static IEnumerable<SpecRow> Endless()
    {
        while (true)
        {
            yield return new(Slot.Frame, "Rear axle 12x148 mm, BSA 73, seatpost 31,6 mm, post mount 180");
        }
    }

    private sealed class Told(Action<SpecProgress> each) : IProgress<SpecProgress>
    {
        public void Report(SpecProgress value) => each(value);
    }
}
