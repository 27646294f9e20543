using System.Runtime.CompilerServices;

namespace Lugwork.Reading;

/// <summary>Reads rows in bulk: in parallel, in bounded memory, with progress, and cancelled within 100 ms.</summary>
/// <remarks>
/// Rows are taken in chunks, so that what is held does not grow with their number; results come in the order of the rows. One bad row never stops the rest. A row beyond <see cref="MostCharacters"/> is refused.
/// A source that blocks is given up when cancelled: where the reading can be cancelled, its rows are taken on a thread of the pool, one chunk at a time.
/// </remarks>
public static class SpecReader
{
    /// <summary>The longest row that is read, characters.</summary>
    public static int MostCharacters => 20_000;

    private const int Chunk = 512;

    /// <summary>Reads every row.</summary>
    /// <param name="rows">The rows; taken as they are needed.</param>
    /// <param name="each">Told each result, in order, on the calling thread; may be left out.</param>
    /// <param name="progress">Told after each chunk of rows.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    /// <param name="cancellationToken">Ends the reading.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static SpecSummary Read(IEnumerable<SpecRow> rows, Action<SpecRowResult>? each = null, IProgress<SpecProgress>? progress = null, SpecVocabulary? vocabulary = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(rows);
        RowCount count = new();
        RowSource source = new(rows.GetEnumerator(), Chunk);
        try
        {
            List<SpecRow> chunk;
            do
            {
                chunk = source.Next(cancellationToken);
                Whole(chunk, count, each, progress, vocabulary, cancellationToken);
            }
            while (!source.AtEnd);
        }
        finally
        {
            source.Release();
        }

        return count.Summary();
    }

    /// <summary>Reads every row of a stream of rows.</summary>
    /// <param name="rows">The rows; taken as they are needed. Waiting for one is given up when cancelled.</param>
    /// <param name="each">Told each result, in order; may be left out.</param>
    /// <param name="progress">Told after each chunk of rows.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    /// <param name="cancellationToken">Ends the reading.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static async Task<SpecSummary> ReadAsync(IAsyncEnumerable<SpecRow> rows, Action<SpecRowResult>? each = null, IProgress<SpecProgress>? progress = null, SpecVocabulary? vocabulary = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(rows);
        RowCount count = new();
        List<SpecRow> chunk = new(Chunk);
        IAsyncEnumerator<SpecRow> source = rows.GetAsyncEnumerator(cancellationToken);
        Task<bool>? waiting = null;
        try
        {
            while (true)
            {
                cancellationToken.ThrowIfCancellationRequested();
                ValueTask<bool> next = source.MoveNextAsync();
                bool more;
                if (next.IsCompletedSuccessfully)
                {
                    more = next.Result;
                }
                else
                {
                    // A source that does not look at the token itself is not waited for.
                    waiting = next.AsTask();
                    more = await waiting.WaitAsync(cancellationToken).ConfigureAwait(false);
                    waiting = null;
                }

                if (!more)
                {
                    break;
                }

                chunk.Add(source.Current);
                if (chunk.Count == Chunk)
                {
                    Whole(chunk, count, each, progress, vocabulary, cancellationToken);
                }
            }
        }
        finally
        {
            await Released(source, waiting).ConfigureAwait(false);
        }

        Whole(chunk, count, each, progress, vocabulary, cancellationToken);
        return count.Summary();
    }

    /// <summary>Disposes the source; one that is still at work is disposed when it comes back.</summary>
    private static ValueTask Released(IAsyncEnumerator<SpecRow> source, Task<bool>? waiting)
    {
        if (waiting is null || waiting.IsCompleted)
        {
            return source.DisposeAsync();
        }

        _ = waiting.ContinueWith(
            async done =>
            {
                _ = done.Exception;
                await source.DisposeAsync().ConfigureAwait(false);
            },
            CancellationToken.None,
            TaskContinuationOptions.None,
            TaskScheduler.Default);
        return ValueTask.CompletedTask;
    }

    /// <summary>The lines of a text as rows, taken one by one; a line is cut where it is longer than a row may be, so that it is refused and not held.</summary>
    /// <param name="text">The text.</param>
    /// <param name="slot">The part that all lines are about, where that is known.</param>
    /// <param name="cancellationToken">Ends the reading.</param>
    public static async IAsyncEnumerable<SpecRow> ReadLinesAsync(TextReader text, Slot? slot = null, [EnumeratorCancellation] CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        char[] buffer = new char[4096];
        System.Text.StringBuilder line = new();
        while (true)
        {
            int length = await text.ReadAsync(buffer.AsMemory(), cancellationToken).ConfigureAwait(false);
            if (length == 0)
            {
                break;
            }

            for (int i = 0; i < length; i++)
            {
                if (buffer[i] == '\n')
                {
                    yield return new(slot, Taken(line));
                }
                else if (line.Length <= MostCharacters + 1)
                {
                    line.Append(buffer[i]);
                }
            }
        }

        if (line.Length > 0)
        {
            yield return new(slot, Taken(line));
        }
    }

    private static string Taken(System.Text.StringBuilder line)
    {
        string text = line.ToString().TrimEnd('\r');
        line.Clear();
        return text;
    }

    private static void Whole(List<SpecRow> chunk, RowCount count, Action<SpecRowResult>? each, IProgress<SpecProgress>? progress, SpecVocabulary? vocabulary, CancellationToken cancellationToken)
    {
        if (chunk.Count == 0)
        {
            return;
        }

        SpecLine[] lines = new SpecLine[chunk.Count];
        try
        {
            if (cancellationToken.CanBeCanceled)
            {
                // The rows in hand come to their end, but are not waited for: the first of a process wait for the words and the compiler.
                Task.Run(Together, cancellationToken).WaitAsync(cancellationToken).GetAwaiter().GetResult();
            }
            else
            {
                Together();
            }
        }
        catch (OperationCanceledException)
        {
            cancellationToken.ThrowIfCancellationRequested();
            throw;
        }

        for (int i = 0; i < lines.Length; i++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            long number = count.Add(lines[i]);
            each?.Invoke(new(number, chunk[i], lines[i]));
        }

        chunk.Clear();
        progress?.Report(count.Progress);

        void Together() => Parallel.For(0, lines.Length, new ParallelOptions { CancellationToken = cancellationToken, MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
        {
            string text = chunk[i].Text ?? "";
            lines[i] = text.Length > MostCharacters ? SpecLine.TooLong(chunk[i].Slot, text) : SpecLine.Read(chunk[i].Slot, text.AsSpan(), vocabulary);
        });
    }

    /// <summary>Counts by outcome and by reason; there are only so many reasons.</summary>
    private sealed class RowCount
    {
        private readonly Dictionary<(SpecDoubtKind Kind, string Field), long> _reasons = [];

        public SpecProgress Progress { get; private set; }

        public long Add(SpecLine line)
        {
            SpecProgress before = Progress;
            SpecOutcome outcome = line.Outcome;
            Progress = new(before.Rows + 1, before.Read + (outcome == SpecOutcome.Read ? 1 : 0), before.Ambiguous + (outcome == SpecOutcome.Ambiguous ? 1 : 0), before.Refused + (outcome == SpecOutcome.Refused ? 1 : 0));
            if (line.Doubts is [SpecDoubt first, ..])
            {
                (SpecDoubtKind, string) key = (first.Kind, first.Slot is null ? "" : first.Field.Length > 0 ? $"{first.Slot.Key}.{first.Field}" : first.Slot.Key);
                _reasons[key] = _reasons.GetValueOrDefault(key) + 1;
            }

            return before.Rows;
        }

        public SpecSummary Summary() => new(Progress, [.. _reasons
            .Select(r => new SpecReason(r.Key.Kind, r.Key.Field, r.Value))
            .OrderByDescending(r => r.Rows).ThenBy(r => r.Kind).ThenBy(r => r.Field, StringComparer.Ordinal)]);
    }
}
