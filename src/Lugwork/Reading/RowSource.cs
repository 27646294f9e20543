namespace Lugwork.Reading;

/// <summary>Takes rows from a source a chunk at a time. A source that blocks is waited for only until the reading is cancelled.</summary>
internal sealed class RowSource(IEnumerator<SpecRow> rows, int chunk)
{
    private readonly List<SpecRow> _rows = new(chunk);

    private Task? _taking;

    /// <summary>The source gave its last row.</summary>
    public bool AtEnd { get; private set; }

    /// <summary>The next rows, a chunk at most; the list is used again.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public List<SpecRow> Next(CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        _rows.Clear();
        if (!cancellationToken.CanBeCanceled)
        {
            Take(cancellationToken);
            return _rows;
        }

        _taking = Task.Run(() => Take(cancellationToken), CancellationToken.None);
        _taking.WaitAsync(cancellationToken).GetAwaiter().GetResult();
        _taking = null;
        return _rows;
    }

    /// <summary>Ends with the source; one that is still at work is disposed when it comes back.</summary>
    public void Release()
    {
        if (_taking is { IsCompleted: false } taking)
        {
            _ = taking.ContinueWith(
                done =>
                {
                    _ = done.Exception;
                    rows.Dispose();
                },
                CancellationToken.None,
                TaskContinuationOptions.None,
                TaskScheduler.Default);
        }
        else
        {
            rows.Dispose();
        }
    }

    private void Take(CancellationToken cancellationToken)
    {
        while (_rows.Count < chunk)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (!rows.MoveNext())
            {
                AtEnd = true;
                return;
            }

            _rows.Add(rows.Current);
        }
    }
}
