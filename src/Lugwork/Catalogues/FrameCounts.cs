using System.Collections.Immutable;

namespace Lugwork.Catalogues;

/// <summary>How many parts of each slot every bare frame of a catalogue takes. Belongs to one state of the catalogue and never changes.</summary>
/// <remarks>For a frame and slot it says what <see cref="CatalogueView.CountsFor"/> says of a build of that frame alone.</remarks>
public sealed class FrameCounts
{
    private readonly SlotIndex? _frames;
    private readonly FrameScreen?[] _screens;

    internal FrameCounts(SlotIndex? frames, FrameScreen?[] screens)
    {
        _frames = frames;
        _screens = screens;
    }

    /// <summary>How many frames there are.</summary>
    public int Count => _frames?.Count ?? 0;

    /// <summary>The numbers of the frames, in order.</summary>
    public ImmutableArray<long> Ids => _frames is null ? [] : ImmutableArray.Create(_frames.Ids);

    /// <summary>The slots of which there are parts, in the order of a build sheet, that of the frame left out.</summary>
    public ImmutableArray<Slot> Slots => [.. Slot.All.Where(s => _screens[s.Number] is not null)];

    /// <summary>The counts of one slot for one frame; null where there is no such frame, or no part of the slot.</summary>
    /// <param name="id">The number of the frame.</param>
    /// <param name="slot">A slot.</param>
    public FitCounts? Of(long id, Slot slot)
    {
        ArgumentNullException.ThrowIfNull(slot);
        return _frames?.Find(id) is >= 0 and int place ? _screens[slot.Number]?.Of(_frames.Kinds[place]) : null;
    }
}
