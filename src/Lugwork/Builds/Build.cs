using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Lugwork;

/// <summary>A bicycle as far as it is put together: a frame and parts in slots. Immutable; every change makes another build.</summary>
public sealed partial class Build : IParts
{
    private readonly Part?[] _parts;
    private readonly sbyte[] _cells;
    private readonly BuildNotes _notes;

    // The list of judgements without their verdicts, laid out when the build is first judged. Two threads lay out the same.
    private Fit[]? _blank;

    // What was told of each joint; null until something is told.
    private Account?[]? _told;

    private Build(Part?[] parts, string name, sbyte[] cells, BuildNotes notes)
    {
        _parts = parts;
        _notes = notes;
        Name = name;
        _cells = cells;
    }

    private Build(Part?[] parts, string name, sbyte[] cells, Slot changed, BuildNotes notes)
        : this(parts, name, cells, notes) => JudgePlan.Whole.Pack(this, changed, cells);

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

    /// <summary>The part in a slot as what it is; null where the slot is empty.</summary>
    /// <typeparam name="T">The kind of part that goes there.</typeparam>
    /// <param name="slot">Any slot.</param>
    /// <exception cref="InvalidCastException">Another kind of part is there.</exception>
    public T? Part<T>(Slot slot)
        where T : Part => (T?)this[slot];

    /// <summary>"gravel bicycle: frame, fork, rear wheel", the slots that are filled; "build" where it has no name. Check and needs are asked for by themselves.</summary>
    public override string ToString() => $"{(Name.Length > 0 ? Name : "build")}: {string.Join(", ", Slot.All.Where(s => this[s] is not null))}";

    /// <summary>Starts with a bare frame.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="name">The owner's name for the build.</param>
    public static Build From(Frame frame, string name = "")
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(name);
        Part?[] parts = new Part?[Slot.All.Length];
        parts[Slot.Frame.Number] = TakenWith.Alone(frame, Slot.Frame);
        return new(parts, name, NoCells(), Slot.Frame, BuildNotes.None);
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
    /// <remarks>What the part states of a reading that is taken with other parts, such as the room before the toes or the gap of the binder, was read on some other bicycle, or on nobody knows which: it is set aside, and listed with <see cref="OldReadings"/>. What was read on this one is said by <see cref="WithMeasured"/>, or stands in its file.</remarks>
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

        return TakenWith.HasReading(part, slot) ? WithoutForeign(part, slot) : Put(part, slot, _notes.Beside(slot, part));
    }

    /// <summary>What was read on another bicycle is not known of this one.</summary>
    private Build WithoutForeign(Part part, Slot slot)
    {
        Part own = part;
        List<AsBuiltValue> foreign = [];
        foreach (string field in TakenWith.ReadOn(part, slot))
        {
            string text = PartForms.Of(slot).TextOf(part, field)!;
            if (_notes.TakenOf(slot, field)?.Value != text)
            {
                own = TakenWith.Unset(own, slot, field);
                foreign.Add(new(slot, field, text, AsBuiltKind.Measured, "unknown", "", null));
            }
        }

        return Put(own, slot, foreign.Aggregate(_notes.Beside(slot, own), (n, v) => n.WithOld(v)));
    }

    /// <summary>The same with a part as the file of this very bicycle has it: what it states was read here.</summary>
    internal Build OfFile(Part part, Slot slot) => Put(part, slot, _notes.Beside(slot, part));

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

        return Put(null, slot, _notes.Beside(slot, null));
    }

    /// <summary>Judges every joint whose slots are filled; what is unknown is completed on the way. Nothing is allocated where all is known, save the list that a build lays out when it is first judged.</summary>
    /// <param name="fits">Room for the judgements; <see cref="JointTable.All"/>'s length is always enough.</param>
    /// <returns>How many were written.</returns>
    /// <exception cref="ArgumentException">There is not enough room.</exception>
    public int Judge(Span<Fit> fits)
    {
        Fit[] blank = _blank ??= JudgePlan.Blank(this, _cells);
        if (fits.Length < blank.Length)
        {
            throw new ArgumentException($"room for {JudgePlan.Whole.Joints} judgements is needed", nameof(fits));
        }

        blank.CopyTo(fits);
        JudgePlan.Whole.Judge(this, _cells, fits[..blank.Length]);
        return blank.Length;
    }

    /// <summary>Of <see cref="Check"/> the joints that one slot takes part in, without judging the others.</summary>
    internal ImmutableArray<Fit> FitsOf(Slot slot) => [.. JudgePlan.Whole.Judge(this, _cells, slot)];

    /// <summary>Of <see cref="Check"/> one joint, by its number in <see cref="JointTable.All"/>; null where it is not judged.</summary>
    internal Fit? FitAt(int joint)
    {
        Verdict verdict = JudgePlan.Whole.Judge(this, _cells, joint);
        return verdict == Verdict.NotJudged ? null : new Fit(this, joint, verdict);
    }

    /// <summary>Judges the whole build.</summary>
    public FitReport Check()
    {
        Fit[] fits = JudgePlan.Blank(this, _cells);
        JudgePlan.Whole.Judge(this, _cells, fits);
        ImmutableArray<Slot> missing = BicycleKind.Missing(Frame, this[Slot.Fork] as Fork, this[Slot.FrontWheel] as Wheel, this[Slot.RearWheel] as Wheel, this);
        return new FitReport(this, ImmutableCollectionsMarshal.AsImmutableArray(fits), missing);
    }

    /// <summary>What the build needs beside its main parts and does not have: what bridges its joints, and what holds, seals, joins and moves the parts it has. A joint that needs a part still says so when that part is there: it is there because the joint needs it.</summary>
    public ImmutableArray<SmallPart> SmallParts() => SmallPartTable.Of(this);

    /// <summary>What to look at on the parts that are stated to be used, of unknown condition or from a crash, before they are called inspected; in the order of slots. A part of which no condition is stated is not listed, save where its date of making is: then its age alone is told, which is no verdict.</summary>
    public ImmutableArray<InspectionPoint> ToInspect() => InspectionTable.Of(this);

    /// <summary>Ids of the small parts that are there, in order; those that have lapsed too.</summary>
    public ImmutableArray<string> SmallPartsThere => [.. _notes.SmallParts.Keys];

    /// <summary>The same with a small part that is there: as the parts ask for it now. Where another part asks for another size or kind of it, it is listed again; said of what nothing asks for, it stands for nothing later. A bridge whose id names the article itself is there whatever changes.</summary>
    /// <param name="id">Id of a small part, as <see cref="SmallPart.Id"/> gives it.</param>
    /// <exception cref="ArgumentException">No small part has this id.</exception>
    public Build WithSmallPart(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return SmallPartTable.IsId(id) ? WithSmallParts([id]) : throw new ArgumentException($"no small part has the id {id}", nameof(id));
    }

    /// <summary>The same of several, each of which is an id.</summary>
    internal Build WithSmallParts(IReadOnlyCollection<string> ids)
    {
        if (ids.Count == 0)
        {
            return this;
        }

        Dictionary<string, string> asked = SmallPartTable.Asked(this);
        return Noting(_notes with { SmallParts = _notes.SmallParts.SetItems(ids.Select(id => new KeyValuePair<string, string>(id, asked.GetValueOrDefault(id, "")))) });
    }

    /// <summary>The small part is there and is what is asked for; what names an article by its row is that article.</summary>
    internal bool HasSmallPart(string id, string what) => _notes.SmallParts.TryGetValue(id, out string? said) && (SmallPartTable.Covers(said, what) || SmallPartTable.NamesArticle(id));

    /// <summary>Ids of those that are what is asked for now, and of those that nothing asked for and nothing asks for: what a file keeps.</summary>
    internal ImmutableArray<string> SmallPartsThatHold()
    {
        if (_notes.SmallParts.IsEmpty)
        {
            return [];
        }

        Dictionary<string, string> asked = SmallPartTable.Asked(this);
        return [.. _notes.SmallParts.Keys.Where(id => HasSmallPart(id, asked.GetValueOrDefault(id, "")))];
    }

    /// <summary>The same without a small part; nothing changes where it is not there.</summary>
    /// <param name="id">Its id.</param>
    public Build WithoutSmallPart(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Noting(_notes with { SmallParts = _notes.SmallParts.Remove(id) });
    }

    /// <summary>Findings that were accepted, in order of their joints' ids; those that have lapsed too.</summary>
    public ImmutableArray<Waiver> Waivers => _notes.Waivers;

    /// <summary>Accepts what a joint or check finds, for the parts as they are now; an earlier waiver of the same joint goes. Verdict and exit code stay.</summary>
    /// <param name="jointId">Id of the joint.</param>
    /// <param name="reason">Why, 1 to 500 characters.</param>
    /// <exception cref="ArgumentException">No joint has this id, it finds nothing here, or the reason is empty or too long.</exception>
    public Build Waive(string jointId, string reason)
    {
        ArgumentNullException.ThrowIfNull(jointId);
        ArgumentNullException.ThrowIfNull(reason);
        if (reason.Trim().Length is 0 or > Waiver.ReasonLimit)
        {
            throw new ArgumentException($"a reason of 1 to {Waiver.MostReason} characters is expected", nameof(reason));
        }

        Joint joint = Waiver.JointOf(jointId) ?? throw new ArgumentException($"no joint has the id {jointId}", nameof(jointId));
        if (!joint.IsFilled(this) || joint.Judge(this) is Verdict.Fits or Verdict.NotJudged)
        {
            throw new ArgumentException($"{jointId} finds nothing in this build that could be accepted", nameof(jointId));
        }

        return Waived(new(jointId, reason.Trim(), Waiver.PartsOf(joint, this)));
    }

    /// <summary>Takes a waiver back; nothing changes where there is none.</summary>
    /// <param name="jointId">Id of the joint.</param>
    public Build WithoutWaiver(string jointId)
    {
        ArgumentNullException.ThrowIfNull(jointId);
        return Noting(_notes with { Waivers = _notes.Waivers.RemoveAll(w => w.JointId == jointId) });
    }

    /// <summary>The same with a waiver as it was written down; whether it still holds is found when the build is checked.</summary>
    internal Build Waived(Waiver waiver) =>
        Noting(_notes with { Waivers = [.. _notes.Waivers.Where(w => w.JointId != waiver.JointId).Append(waiver).OrderBy(w => w.JointId, StringComparer.Ordinal)] });

    private Build Noting(BuildNotes notes) => new(_parts, Name, _cells, notes);

    /// <summary>What every slot of this bicycle has to be, as far as the parts it has say.</summary>
    public NeedsSheet Needs() => NeedsSheet.Of(this);

    private static sbyte[] NoCells()
    {
        sbyte[] cells = new sbyte[JudgePlan.Whole.Joints];
        Array.Fill(cells, PlanLine.Empty);
        return cells;
    }

    Part? IParts.At(Slot slot) => _parts[slot.Number];

    Joint IParts.JointAt(int number) => JudgePlan.Whole.JointAt(number);

    Account IParts.ToldAt(int number, Verdict verdict)
    {
        // Two threads may tell the same twice; either account is good.
        Account?[] told = _told ?? Interlocked.CompareExchange(ref _told, new Account?[JudgePlan.Whole.Joints], null) ?? _told!;
        return told[number] is { } kept && kept.Verdict == verdict ? kept : told[number] = Account.Of(JudgePlan.Whole.JointAt(number), this, verdict);
    }
}
