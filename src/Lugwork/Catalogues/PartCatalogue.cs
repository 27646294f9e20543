namespace Lugwork.Catalogues;

/// <summary>
/// Parts of a shop, up to millions, kept by what they say: parts that say the same in every field are one kind, and a question judges
/// each kind once. Any number of threads may read while one changes it: a reader holds a <see cref="View"/>, which never changes.
/// </summary>
/// <remarks>
/// A part takes twenty bytes (its number, its kind, and its number once more beside the others of its kind), a kind a byte or two for each field and for
/// each joint. A change is applied whole or not at all; changes from several threads wait for each other. Frames are parts too, in the
/// slot of the frame, so that the frames that take a new part can be asked for. A catalogue holds up to two thousand million parts of all
/// slots; a change that would bring more is refused with an <see cref="InvalidOperationException"/>, and nothing is changed. Rows are read while the change holds its turn: rows that come slowly keep other changes waiting, and rows that change the same
/// catalogue while they are read would wait for themselves.
/// </remarks>
#pragma warning disable CA1001 // Nobody asks for the wait handle of its semaphore, so that there is nothing to dispose of.
public sealed class PartCatalogue
#pragma warning restore CA1001
{
    private readonly SemaphoreSlim _changing = new(1, 1);
    private readonly SlotTable?[] _tables = new SlotTable?[Slot.All.Length];
    private CatalogueView _view = CatalogueView.Empty;

    /// <summary>An empty catalogue.</summary>
    public PartCatalogue()
    {
    }

    internal PartCatalogue(SlotTable?[] tables, CatalogueView view)
    {
        tables.CopyTo(_tables, 0);
        _view = view;
    }

    /// <summary>The catalogue as it is now. A view stays as it is whatever is changed afterwards; ask all questions of one answer to one view.</summary>
    public CatalogueView View => Volatile.Read(ref _view);

    /// <summary>Bytes of memory that the catalogue takes, as near as can be told from outside.</summary>
    public long MemoryBytes => View.Memory + _tables.Sum(t => t?.Memory ?? 0);

    /// <summary>Adds parts, and replaces those whose number the slot has. Rows are read once, one after the other, and not kept.</summary>
    /// <param name="rows">The parts. A row that is null, has no slot or part, a part that does not go there, or a number that an earlier row of the slot has, is skipped and reported.</param>
    /// <param name="cancellationToken">Ends it with nothing changed.</param>
    /// <returns>What came of it.</returns>
    /// <exception cref="OperationCanceledException">It was cancelled; nothing is changed. So it is where the rows themselves throw.</exception>
    public CatalogueReport Load(IEnumerable<CatalogueRow> rows, CancellationToken cancellationToken = default) => Change(rows, [], cancellationToken);

    /// <summary>The same of rows that come in time. No thread waits: neither for a row nor for the turn of another change. Readers go on, other changes wait.</summary>
    /// <param name="rows">The parts.</param>
    /// <param name="cancellationToken">Ends it with nothing changed.</param>
    /// <exception cref="OperationCanceledException">It was cancelled; nothing is changed.</exception>
    public Task<CatalogueReport> LoadAsync(IAsyncEnumerable<CatalogueRow> rows, CancellationToken cancellationToken = default) => ChangeAsync(rows, [], cancellationToken);

    /// <summary>Adds parts that are given as text; text that cannot be read is skipped and reported with its reason.</summary>
    /// <param name="lines">The parts.</param>
    /// <param name="cancellationToken">Ends it with nothing changed.</param>
    /// <exception cref="OperationCanceledException">It was cancelled; nothing is changed.</exception>
    public CatalogueReport LoadLines(IEnumerable<CatalogueLine> lines, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return Change(draft =>
        {
            foreach (CatalogueLine line in lines)
            {
                cancellationToken.ThrowIfCancellationRequested();
                draft.Put(line);
            }
        }, cancellationToken);
    }

    /// <summary>The same of lines that come in time, such as those of a file or an upload. No thread waits; readers go on, other changes wait.</summary>
    /// <param name="lines">The parts.</param>
    /// <param name="cancellationToken">Ends it with nothing changed.</param>
    /// <exception cref="OperationCanceledException">It was cancelled; nothing is changed.</exception>
    public Task<CatalogueReport> LoadLinesAsync(IAsyncEnumerable<CatalogueLine> lines, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return ChangeAsync(
            async draft =>
            {
                await foreach (CatalogueLine line in lines.WithCancellation(cancellationToken).ConfigureAwait(false))
                {
                    draft.Put(line);
                }
            },
            cancellationToken);
    }

    /// <summary>Takes parts out and puts parts in, in one step: no reader sees the one without the other.</summary>
    /// <param name="rows">Parts to add or replace.</param>
    /// <param name="gone">Parts to take out first; one that is not there is no problem.</param>
    /// <param name="cancellationToken">Ends it with nothing changed.</param>
    /// <exception cref="OperationCanceledException">It was cancelled; nothing is changed.</exception>
    public CatalogueReport Change(IEnumerable<CatalogueRow> rows, IEnumerable<CatalogueKey> gone, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(gone);
        return Change(draft =>
        {
            foreach (CatalogueKey key in gone)
            {
                cancellationToken.ThrowIfCancellationRequested();
                draft.Remove(key);
            }

            foreach (CatalogueRow row in rows)
            {
                cancellationToken.ThrowIfCancellationRequested();
                draft.Put(row);
            }
        }, cancellationToken);
    }

    /// <summary>The same of rows that come in time. No thread waits: neither for a row nor for the turn of another change. Readers go on, other changes wait.</summary>
    /// <param name="rows">Parts to add or replace.</param>
    /// <param name="gone">Parts to take out first; one that is not there is no problem.</param>
    /// <param name="cancellationToken">Ends it with nothing changed.</param>
    /// <exception cref="OperationCanceledException">It was cancelled; nothing is changed.</exception>
    public Task<CatalogueReport> ChangeAsync(IAsyncEnumerable<CatalogueRow> rows, IEnumerable<CatalogueKey> gone, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(gone);
        return ChangeAsync(
            async draft =>
            {
                foreach (CatalogueKey key in gone)
                {
                    cancellationToken.ThrowIfCancellationRequested();
                    draft.Remove(key);
                }

                await foreach (CatalogueRow row in rows.WithCancellation(cancellationToken).ConfigureAwait(false))
                {
                    draft.Put(row);
                }
            },
            cancellationToken);
    }

    /// <summary>Takes parts out of a slot; one that is not there is no problem.</summary>
    /// <param name="slot">The slot.</param>
    /// <param name="ids">Their numbers.</param>
    /// <returns>How many were there.</returns>
    public int Remove(Slot slot, params IEnumerable<long> ids)
    {
        ArgumentNullException.ThrowIfNull(slot);
        ArgumentNullException.ThrowIfNull(ids);
        return Change([], ids.Select(id => new CatalogueKey(slot, id))).Removed;
    }

    /// <summary>Writes a snapshot of the view of this moment beside the old one and moves it into place: a writer that is killed leaves the old file, and the next that comes to its end clears what it left.</summary>
    /// <remarks>Two writers of one file at once do no harm to it: it is the snapshot of the one or of the other, and one of them may end with an <see cref="IOException"/>.</remarks>
    /// <param name="path">The file; one that is there is replaced.</param>
    /// <param name="cancellationToken">Ends it; the old file stays.</param>
    /// <exception cref="IOException">It cannot be written; the old file stays.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; the old file stays.</exception>
    public void Save(string path, CancellationToken cancellationToken = default) => CatalogueFile.Save(View, path, cancellationToken);

    /// <summary>Reads a snapshot. Every part is judged anew by this version of the library.</summary>
    /// <param name="path">The file.</param>
    /// <param name="cancellationToken">Ends it.</param>
    /// <exception cref="CatalogueFileException">It is no snapshot, damaged, or of a kind that this version does not know; with what and where.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read, or is a folder.</exception>
    public static PartCatalogue Open(string path, CancellationToken cancellationToken = default) => CatalogueFile.Open(path, cancellationToken);

    private CatalogueReport Change(Action<CatalogueDraft> change, CancellationToken cancellationToken)
    {
        _changing.Wait(cancellationToken);
        CatalogueDraft draft = new(_tables, View);
        try
        {
            change(draft);
            return Show(draft);
        }
        finally
        {
            End(draft);
        }
    }

    private async Task<CatalogueReport> ChangeAsync(Func<CatalogueDraft, Task> change, CancellationToken cancellationToken)
    {
        await _changing.WaitAsync(cancellationToken).ConfigureAwait(false);
        CatalogueDraft draft = new(_tables, View);
        try
        {
            await change(draft).ConfigureAwait(false);
            cancellationToken.ThrowIfCancellationRequested();
            return Show(draft);
        }
        finally
        {
            End(draft);
        }
    }

    private void End(CatalogueDraft draft)
    {
        try
        {
            draft.GiveUp();
        }
        finally
        {
            _changing.Release();
        }
    }

    private CatalogueReport Show(CatalogueDraft draft)
    {
        CatalogueView next = draft.Finish(out CatalogueReport report);
        Volatile.Write(ref _view, next);
        return report;
    }
}
