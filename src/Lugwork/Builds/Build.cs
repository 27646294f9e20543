using System.Collections.Immutable;

namespace Lugwork;

/// <summary>A bicycle as far as it is put together: a frame and parts in slots. Immutable; every change makes another build.</summary>
public sealed class Build : IParts
{
    private readonly Part?[] _parts;
    private readonly long[] _codes;
    private readonly int[] _cells;
    private readonly Fit[] _blank;

    private Build(Part?[] parts, string name, long[] codes, int[] cells, Slot changed)
    {
        _parts = parts;
        Name = name;
        _codes = codes;
        _cells = cells;
        JudgePlan.Whole.Pack(this, changed, codes, cells);
        _blank = JudgePlan.Blank(this, cells);
    }

    /// <summary>The owner's name for it; may be empty.</summary>
    public string Name { get; }

    /// <summary>The frame.</summary>
    public Frame Frame => (Frame)_parts[Slot.Frame.Number]!;

    /// <summary>The part in a slot; null where it is empty.</summary>
    /// <param name="slot">Any slot.</param>
    public Part? this[Slot slot]
    {
        get
        {
            ArgumentNullException.ThrowIfNull(slot);
            return _parts[slot.Number];
        }
    }

    /// <summary>Starts with a bare frame.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="name">The owner's name for the build.</param>
    public static Build From(Frame frame, string name = "")
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(name);
        Part?[] parts = new Part?[Slot.All.Length];
        parts[Slot.Frame.Number] = frame;
        return new(parts, name, new long[JudgePlan.Whole.Codes], NoCells(), Slot.Frame);
    }

    /// <summary>Adds or replaces a part that has only one place.</summary>
    /// <param name="part">The part.</param>
    /// <exception cref="ArgumentException">It has two places; name the slot.</exception>
    public Build With(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Places is [var only]
            ? With(part, only)
            : throw new ArgumentException($"a {part.GetType().Name} can go to {string.Join(" or ", part.Places)}: name the slot", nameof(part));
    }

    /// <summary>Adds or replaces a part in a slot.</summary>
    /// <param name="part">The part.</param>
    /// <param name="slot">One of its places.</param>
    /// <exception cref="ArgumentException">The part does not go to this slot.</exception>
    public Build With(Part part, Slot slot)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(slot);
        if (!part.Places.Contains(slot))
        {
            throw new ArgumentException($"a {part.GetType().Name} goes to {string.Join(" or ", part.Places)}, not to {slot}", nameof(slot));
        }

        Part?[] parts = [.. _parts];
        parts[slot.Number] = part;
        return new(parts, Name, [.. _codes], [.. _cells], slot);
    }

    /// <summary>Takes the part out of a slot; the frame stays.</summary>
    /// <param name="slot">Any slot but the frame's.</param>
    /// <exception cref="ArgumentException">The frame cannot be taken out.</exception>
    public Build Without(Slot slot)
    {
        ArgumentNullException.ThrowIfNull(slot);
        if (slot == Slot.Frame)
        {
            throw new ArgumentException("a build always has its frame", nameof(slot));
        }

        Part?[] parts = [.. _parts];
        parts[slot.Number] = null;
        return new(parts, Name, [.. _codes], [.. _cells], slot);
    }

    /// <summary>Judges every joint whose slots are filled, without allocating where all is known; what is unknown is completed on the way.</summary>
    /// <param name="fits">Room for the judgements; <see cref="JointTable.All"/>'s length is always enough.</param>
    /// <returns>How many were written.</returns>
    /// <exception cref="ArgumentException">There is not enough room.</exception>
    public int Judge(Span<Fit> fits) => JudgePlan.Whole.Judge(this, _codes, _cells, _blank, fits);

    /// <summary>Judges the whole build.</summary>
    public FitReport Check()
    {
        Fit[] fits = new Fit[JointTable.All.Length];
        int count = Judge(fits);
        ImmutableArray<Slot> missing = [.. BicycleKind.Required(Frame, this[Slot.Fork] as Fork, this[Slot.FrontWheel] as Wheel, this[Slot.RearWheel] as Wheel).Where(s => this[s] is null)];
        return new FitReport(this, [.. fits.AsSpan(0, count)], missing);
    }

    /// <summary>What every slot of this bicycle has to be, as far as the parts it has say.</summary>
    public NeedsSheet Needs() => NeedsSheet.Of(this);

    private static int[] NoCells()
    {
        int[] cells = new int[JudgePlan.Whole.Joints];
        Array.Fill(cells, PlanLine.Empty);
        return cells;
    }

    Part? IParts.At(Slot slot) => _parts[slot.Number];

    Joint IParts.JointAt(int number) => JudgePlan.Whole.JointAt(number);
}
