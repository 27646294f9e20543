namespace Lugwork.Catalogues;

/// <summary>The parts of a slot with a change put in: two lists in order become one.</summary>
internal sealed class SlotMerge
{
    /// <param name="before">The parts that are there; null where none is.</param>
    /// <param name="ids">Numbers of those that come or go, in order. Nobody else writes to the arrays.</param>
    /// <param name="kinds">Their kinds, or <see cref="PendingParts.Gone"/>.</param>
    public SlotMerge(SlotIndex? before, long[] ids, int[] kinds)
    {
        if (before is null)
        {
            // Nothing is taken out of a slot without parts: all that comes is new.
            (Ids, Kinds, Added) = (ids, kinds, ids.Length);
            return;
        }

        ReadOnlySpan<long> oldIds = before.Ids;
        ReadOnlySpan<int> oldKinds = before.Kinds;
        long[] allIds = new long[Room(oldIds.Length, ids.Length)];
        int[] allKinds = new int[allIds.Length];
        int count = 0;
        int old = 0;
        for (int next = 0; next <= ids.Length; next++)
        {
            for (; old < oldIds.Length && (next == ids.Length || oldIds[old] < ids[next]); old++)
            {
                (allIds[count], allKinds[count]) = (oldIds[old], oldKinds[old]);
                count++;
            }

            if (next == ids.Length)
            {
                break;
            }

            bool there = old < oldIds.Length && oldIds[old] == ids[next];
            old += there ? 1 : 0;
            if (kinds[next] >= 0)
            {
                (allIds[count], allKinds[count]) = (ids[next], kinds[next]);
                count++;
            }

            Added += !there && kinds[next] >= 0 ? 1 : 0;
            Replaced += there && kinds[next] >= 0 ? 1 : 0;
            Removed += there && kinds[next] < 0 ? 1 : 0;
        }

        Ids = count == allIds.Length ? allIds : allIds[..count];
        Kinds = count == allKinds.Length ? allKinds : allKinds[..count];
    }

    /// <summary>Room for the parts that are there and those that come.</summary>
    /// <exception cref="InvalidOperationException">A catalogue does not hold as many.</exception>
    public static int Room(int there, int more) => there <= Array.MaxLength - more ? there + more : throw new InvalidOperationException($"a catalogue holds {Array.MaxLength} parts and no more");

    public long[] Ids { get; }

    public int[] Kinds { get; }

    public int Added { get; }

    public int Replaced { get; }

    public int Removed { get; }
}
