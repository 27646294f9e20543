using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>A slot in which another part may mend what cannot be met: the rest of the bicycle can be met beside it.</summary>
public sealed class ChoiceRemedy
{
    internal ChoiceRemedy(Slot slot, Need? need, ChoiceOffer? nearest, ImmutableArray<Joint> fails)
    {
        Slot = slot;
        Need = need;
        Nearest = nearest;
        Fails = fails;
    }

    /// <summary>The slot.</summary>
    public Slot Slot { get; internal init; }

    /// <summary>What the joints of the conflict ask of the part, beside a choice of the other parts that fits; null where this kind of bicycle does not require the slot.</summary>
    public Need? Need { get; internal init; }

    /// <summary>The offer that comes nearest, priced or not, beside the other parts that suit it best; null where none is on offer.</summary>
    public ChoiceOffer? Nearest { get; internal init; }

    /// <summary>The joints that the nearest offer does not meet there.</summary>
    public ImmutableArray<Joint> Fails { get; internal init; }

    /// <summary>What the bicycle lacks with the nearest offer: slots that it makes required and that nothing fills.</summary>
    public ImmutableArray<Slot> Lacks { get; init; } = [];

    /// <summary>The wishes that it does not meet.</summary>
    public ImmutableArray<ChoiceWish> Unmet { get; init; } = [];

    /// <summary>Something of it is outside the library, so that nothing can be said of a bicycle with it.</summary>
    public bool IsOutside { get; init; }

    internal int Failures => Fails.Length + Lacks.Length + Unmet.Length + (IsOutside ? 1 : 0);

    /// <summary>One line.</summary>
    public override string ToString() => $"another {Slot.Name}: {Said()}{(Need is null ? "" : $"; needed: {Need}")}";

    private string Said()
    {
        if (Nearest is null)
        {
            return "none is on offer";
        }

        string[] wrong =
        [
            .. Fails.IsEmpty ? Array.Empty<string>() : [$"fails {string.Join(", ", Fails.Select(j => j.Name))}"],
            .. Lacks.IsEmpty ? Array.Empty<string>() : [$"lacks a {string.Join(", a ", Lacks)}"],
            .. Unmet.IsEmpty ? Array.Empty<string>() : [$"is not {string.Join(", ", Unmet.Select(w => $"\"{w}\""))}"],
            .. IsOutside ? ["has something that is outside the library"] : Array.Empty<string>(),
            .. Nearest.Price is null && !Nearest.IsOwned ? ["has no price"] : Array.Empty<string>(),
        ];
        return Failures > 0 ? $"{Nearest} comes nearest and {string.Join(", and ", wrong)}" : $"{Nearest} would fit{(wrong.Length > 0 ? $", and {wrong[0]}" : "")}";
    }
}

/// <summary>Slots in which not every combination of articles can stand.</summary>
public sealed class ChoiceTie
{
    internal ChoiceTie(ImmutableArray<Slot> slots, string why)
    {
        Slots = slots;
        Why = why;
    }

    /// <summary>The slots.</summary>
    public ImmutableArray<Slot> Slots { get; internal init; }

    /// <summary>Why, in words.</summary>
    public string Why { get; internal init; }

    /// <summary>Why.</summary>
    public override string ToString() => Why;
}

/// <summary>Why nothing fits together: joints, wishes and required slots that cannot all be met.</summary>
public sealed class ChoiceConflict
{
    internal ChoiceConflict()
    {
    }

    /// <summary>The joints that cannot be met together, in the order of the joint table.</summary>
    public ImmutableArray<Joint> Joints { get; internal init; } = [];

    /// <summary>The wishes among them.</summary>
    public ImmutableArray<ChoiceWish> Wishes { get; internal init; } = [];

    /// <summary>Slots that have to be filled and are part of the reason.</summary>
    public ImmutableArray<Slot> Required { get; internal init; } = [];

    /// <summary>What is there once, or is one article over several slots, and is part of the reason.</summary>
    public ImmutableArray<ChoiceTie> Ties { get; internal init; } = [];

    /// <summary>Every slot that takes part.</summary>
    public ImmutableArray<Slot> Slots => [.. Joints.SelectMany(j => j.Slots).Concat(Wishes.Select(w => w.Slot)).Concat(Required).Concat(Ties.SelectMany(t => t.Slots)).Distinct().OrderBy(s => s.Number)];

    /// <summary>Proven: no smaller set of joints, wishes, ties and slots is a reason, and none of this one can be left out. Else it is a reason of which nothing could be left out in the time that each try has; a smaller one may exist.</summary>
    public bool IsSmallest { get; internal init; }

    /// <summary>It could not be found out whether anything fits together: nothing is said of why.</summary>
    public bool IsOpen { get; internal init; }

    /// <summary>Offers and owned parts for the slots that take part that were not looked at: without a price, or with something outside the library.</summary>
    public ImmutableArray<ChoiceOffer> LeftOut { get; internal init; } = [];

    /// <summary>Slots in which one other part may mend it, those first whose nearest offer fails least.</summary>
    public ImmutableArray<ChoiceRemedy> Remedies { get; internal init; } = [];

    /// <summary>The reason in some lines.</summary>
    public override string ToString()
    {
        if (IsOpen)
        {
            return "Whether anything fits together could not be found out.";
        }

        string[] what = [.. Joints.Select(j => j.Name), .. Wishes.Select(w => $"\"{w.Name}\""), .. Required.Select(s => $"a {s.Name} is required"), .. Ties.Select(t => t.Why)];
        string text = what.Length == 0 ? "The frame is of a kind outside the library, so nothing is known to fit it." : $"Cannot be met{(what.Length > 1 ? " together" : "")}: {string.Join("; ", what)}.";
        return Remedies.IsEmpty ? text : $"{text}\nPossible remedy: {string.Join("\nor ", Remedies)}";
    }
}
