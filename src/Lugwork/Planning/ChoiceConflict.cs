using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>A slot in which another part would mend what cannot be met.</summary>
/// <param name="Slot">The slot.</param>
/// <param name="Need">What the joints of the conflict ask of the part, beside a choice of the other parts that fits; null where this kind of bicycle does not require the slot.</param>
/// <param name="Nearest">The offer that comes nearest; null where none is on offer.</param>
/// <param name="Fails">The joints that the nearest offer does not meet there; empty where it is only without a price, or not what was wished.</param>
public sealed record ChoiceMend(Slot Slot, Need? Need, ChoiceOffer? Nearest, ImmutableArray<Joint> Fails)
{
    /// <summary>One line.</summary>
    public override string ToString() =>
        $"another {Slot.Name}: {(Nearest is null ? "none is on offer" : Fails.IsEmpty ? $"{Nearest} would fit, and has no price or is not what was wished" : $"{Nearest} comes nearest and fails {string.Join(", ", Fails.Select(j => j.Name))}")}{(Need is null ? "" : $"; needed: {Need}")}";
}

/// <summary>Why nothing fits together: joints, wishes and required slots that cannot all be met, and none of which can be left out of the reason.</summary>
public sealed class ChoiceConflict
{
    internal ChoiceConflict(ImmutableArray<Joint> joints, ImmutableArray<ChoiceWish> wishes, ImmutableArray<Slot> required, ImmutableArray<ChoiceOffer> leftOut, ImmutableArray<ChoiceMend> mends, bool isSmallest)
    {
        Joints = joints;
        Wishes = wishes;
        Required = required;
        LeftOut = leftOut;
        Mends = mends;
        IsSmallest = isSmallest;
    }

    /// <summary>The joints that cannot be met together, in the order of the joint table.</summary>
    public ImmutableArray<Joint> Joints { get; }

    /// <summary>The wishes among them.</summary>
    public ImmutableArray<ChoiceWish> Wishes { get; }

    /// <summary>Slots that have to be filled and are part of the reason.</summary>
    public ImmutableArray<Slot> Required { get; }

    /// <summary>Every slot that takes part.</summary>
    public ImmutableArray<Slot> Slots => [.. Joints.SelectMany(j => j.Slots).Concat(Wishes.Select(w => w.Slot)).Concat(Required).Distinct().OrderBy(s => s.Number)];

    /// <summary>Proven: no smaller set of joints, wishes and slots is a reason. Else none of them can be left out, and a smaller set of others may exist.</summary>
    public bool IsSmallest { get; }

    /// <summary>Offers for the slots that take part that were not looked at: without a price, or with something outside the library.</summary>
    public ImmutableArray<ChoiceOffer> LeftOut { get; }

    /// <summary>Slots in which one other part would mend it, those first whose nearest offer fails least.</summary>
    public ImmutableArray<ChoiceMend> Mends { get; }

    /// <summary>The reason in some lines.</summary>
    public override string ToString()
    {
        string[] what = [.. Joints.Select(j => j.Name), .. Wishes.Select(w => $"\"{w.Name}\""), .. Required.Select(s => $"a {s.Name} is required")];
        string text = what.Length == 0 ? "The frame is of a kind outside the library, so nothing is known to fit it." : $"Cannot be met{(what.Length > 1 ? " together" : "")}: {string.Join("; ", what)}.";
        return Mends.IsEmpty ? text : $"{text}\nWould mend it: {string.Join("\nor ", Mends)}";
    }
}
