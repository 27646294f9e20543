using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Lugwork.Catalogues;

/// <summary>A catalogue as it was at one time. Never changes; safe for any number of threads.</summary>
public sealed class CatalogueView
{
    internal CatalogueView(ImmutableArray<SlotIndex?> indexes, long version)
    {
        Indexes = indexes;
        Version = version;
    }

    internal static CatalogueView Empty { get; } = new([.. Slot.All.Select(_ => (SlotIndex?)null)], 0);

    internal ImmutableArray<SlotIndex?> Indexes { get; }

    internal long Memory => Indexes.Sum(i => i?.Memory ?? 0);

    /// <summary>How many changes the catalogue took before, empty ones too; 1 for one that was just opened from a snapshot. It tells two views of one catalogue apart, and nothing about another one.</summary>
    public long Version { get; }

    /// <summary>How many parts there are, in all slots.</summary>
    public int Count => Indexes.Sum(i => i?.Count ?? 0);

    /// <summary>The slots of which there are parts, in the order of a build sheet.</summary>
    public ImmutableArray<Slot> Slots => [.. Slot.All.Where(s => IndexOf(s) is not null)];

    /// <summary>How many parts there are of a slot.</summary>
    /// <param name="slot">Any slot.</param>
    public int CountOf(Slot slot) => IndexOf(slot)?.Count ?? 0;

    /// <summary>How many different parts there are of a slot: those that say the same in every field count once, and are judged once.</summary>
    /// <param name="slot">Any slot.</param>
    public int KindsOf(Slot slot) => IndexOf(slot)?.Live ?? 0;

    /// <summary>The part with a number; null where there is none. It has no name, what was read of it is stated, and what was read on a bicycle with other parts, such as the room before the toes, is not kept.</summary>
    /// <param name="slot">Its slot.</param>
    /// <param name="id">Its number.</param>
    public Part? Find(Slot slot, long id) =>
        IndexOf(slot) is { } index && index.Find(id) is >= 0 and int place ? index.Table.PartOf(index.Kinds[place]) : null;

    /// <summary>The parts that go into a slot of a build. What the build has in that slot does not count.</summary>
    /// <remarks>The verdict of a part is the worst of all joints and checks of the slot that a build with this part would judge; something of the part that no joint reads and that is outside the library makes it at least needs measuring.</remarks>
    /// <param name="build">The build.</param>
    /// <param name="slot">The slot; that of the frame too, with the other parts of the build.</param>
    /// <param name="most">How many parts of each list are given at most; 0 for counts alone.</param>
    /// <param name="worst">The worst verdict to list and to tell apart.</param>
    /// <param name="cancellationToken">Ends it.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="most"/> is negative, or <paramref name="worst"/> is not one of fits, needs part and needs measuring.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public SlotFitting Fitting(Build build, Slot slot, int most, Verdict worst = Verdict.NeedsMeasuring, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(slot);
        Build asked = build.ReadingsAside(slot);
        return Ask(slot, slot, s => s == slot ? null : asked[s], part => With(asked, slot, part), most, worst, cancellationToken);
    }

    /// <summary>The parts that go into a slot of a bare frame, down to those that need measuring.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="slot">Any slot; in that of the frame nothing is judged but a frame's own condition.</param>
    /// <param name="most">How many parts of each list are given at most; 0 for counts alone.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="most"/> is negative.</exception>
    public SlotFitting Fitting(Frame frame, Slot slot, int most) => Fitting(Build.From(frame), slot, most);

    /// <summary>The parts that go into a slot of a build, all of them, by kind and without a copy: the verdict of each kind and its numbers where the catalogue has them.</summary>
    /// <remarks>Verdicts and parts are those of <see cref="Fitting(Build, Slot, int, Verdict, CancellationToken)"/>, whose lists have them in the order of their numbers instead. The best verdict comes first; not judged ones last, with those that need measuring.</remarks>
    /// <param name="build">The build. What it has in that slot does not count.</param>
    /// <param name="slot">The slot; that of the frame too, with the other parts of the build.</param>
    /// <param name="worst">The worst verdict to hand out. Parts that are not judged are there where it is needs measuring.</param>
    /// <param name="cancellationToken">Ends it.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="worst"/> is not one of fits, needs part and needs measuring.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public ImmutableArray<FittingGroup> FittingGroups(Build build, Slot slot, Verdict worst = Verdict.NeedsMeasuring, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(slot);
        Check(worst);
        if (IndexOf(slot) is not { } index)
        {
            return [];
        }

        Build asked = build.ReadingsAside(slot);
        byte[] verdicts = new SlotJudge(index, slot, s => s == slot ? null : asked[s], worst).Judge(cancellationToken);
        int[] kinds = index.Ranked(verdicts, worst);
        FittingGroup[] groups = new FittingGroup[kinds.Length];
        for (int i = 0; i < kinds.Length; i++)
        {
            groups[i] = new(index, kinds[i], (Verdict)verdicts[kinds[i]]);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(groups);
    }

    /// <summary>The parts that go into a slot of a bare frame, by kind and without a copy, down to those that need measuring.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="slot">Any slot; in that of the frame nothing is judged but a frame's own condition.</param>
    public ImmutableArray<FittingGroup> FittingGroups(Frame frame, Slot slot) => FittingGroups(Build.From(frame), slot);

    /// <summary>How many parts go into every slot of a build of which there are parts, that of the frame left out.</summary>
    /// <param name="build">The build.</param>
    /// <param name="cancellationToken">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public ImmutableDictionary<Slot, FitCounts> CountsFor(Build build, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(build);
        return Slots.Where(s => s != Slot.Frame).ToImmutableDictionary(s => s, s => Fitting(build, s, 0, Verdict.NeedsMeasuring, cancellationToken).Counts);
    }

    /// <summary>How many parts go into every slot of each frame of the catalogue, all frames at once: what frames and parts say alike is judged once.</summary>
    /// <param name="threads">The number of threads that may work on it at most, the calling one counted; one where left out, so that a server keeps its others.</param>
    /// <param name="cancellationToken">Ends it.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="threads"/> is below one.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public FrameCounts CountsOfFrames(int threads = 1, CancellationToken cancellationToken = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        FrameScreen?[] screens = new FrameScreen?[Slot.All.Length];
        if (IndexOf(Slot.Frame) is not { } frames)
        {
            return new(null, screens);
        }

        FrameAnswers answers = new(frames, threads, cancellationToken);

        // What takes longest is begun first, and each thread takes the next when it has ended one.
        Slot[] slots = [.. Slots.Where(s => s != Slot.Frame).OrderByDescending(answers.AnswersTo)];
        int next = -1;
        Parallel.For(0, Math.Min(threads, slots.Length), new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellationToken }, _ =>
        {
            for (int at = Interlocked.Increment(ref next); at < slots.Length; at = Interlocked.Increment(ref next))
            {
                screens[slots[at].Number] = new(answers, IndexOf(slots[at])!, cancellationToken: cancellationToken);
            }
        });
        return new(frames, screens);
    }

    /// <summary>The frames of the catalogue that take a new part: the joints and checks of its slot between the bare frame and this part.</summary>
    /// <remarks>What is to be said of a frame alone counts as what is to be said of a part does in <see cref="Fitting(Build, Slot, int, Verdict, CancellationToken)"/>: a frame that is recalled, or out of a crash, is no frame that the part fits.</remarks>
    /// <param name="part">The part.</param>
    /// <param name="slot">One of its places, not the frame's.</param>
    /// <param name="most">How many frames of each list are given at most.</param>
    /// <param name="worst">The worst verdict to list and to tell apart.</param>
    /// <param name="cancellationToken">Ends it.</param>
    /// <exception cref="ArgumentException">The part does not go to this slot.</exception>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="Fitting(Build, Slot, int, Verdict, CancellationToken)"/>.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public SlotFitting FramesFor(Part part, Slot slot, int most, Verdict worst = Verdict.NeedsMeasuring, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(slot);
        if (slot == Slot.Frame || !part.Places.Contains(slot))
        {
            throw new ArgumentException($"a {part.GetType().Name} goes to {string.Join(" or ", part.Places)}; frames are sought for another part than a frame", nameof(slot));
        }

        Part alone = TakenWith.Alone(part, slot);
        return Ask(Slot.Frame, slot, s => s == slot ? alone : null, frame => Build.From((Frame)frame).With(alone, slot), most, worst, cancellationToken);
    }

    internal SlotIndex? IndexOf(Slot slot)
    {
        ArgumentNullException.ThrowIfNull(slot);
        return Indexes[slot.Number];
    }

    private SlotFitting Ask(Slot slot, Slot aim, Func<Slot, Part?> beside, Func<Part, Build> with, int most, Verdict worst, CancellationToken cancellationToken)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(most);
        Check(worst);
        SlotIndex? index = IndexOf(slot);
        byte[] verdicts = index is null ? [] : new SlotJudge(index, aim, beside, worst).Judge(cancellationToken);
        return new(index, slot, aim, verdicts, worst, most, with);
    }

    private static void Check(Verdict worst)
    {
        if (worst is not (Verdict.Fits or Verdict.NeedsPart or Verdict.NeedsMeasuring))
        {
            throw new ArgumentOutOfRangeException(nameof(worst), worst, "fits, needs part or needs measuring");
        }
    }

    private static Build With(Build build, Slot slot, Part part)
    {
        if (slot != Slot.Frame)
        {
            return build.With(part, slot);
        }

        Build other = Build.From((Frame)part, build.Name);
        foreach (Slot filled in Slot.All)
        {
            other = filled != Slot.Frame && build[filled] is { } kept ? other.With(kept, filled) : other;
        }

        return other;
    }
}
