using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>One slot that changes.</summary>
public sealed record SlotChange
{
    internal SlotChange(Slot slot, Part? before, ChoiceOffer? after)
    {
        Slot = slot;
        Before = before;
        After = after;
    }

    /// <summary>The slot.</summary>
    public Slot Slot { get; internal init; }

    /// <summary>What was in it; null where nothing was.</summary>
    public Part? Before { get; internal init; }

    /// <summary>What comes in its place; null where it stays empty.</summary>
    public ChoiceOffer? After { get; internal init; }

    /// <summary>"cassette: 9-speed cassette, then C-0017 (cassette, 45.00 EUR)".</summary>
    public override string ToString() => $"{Slot.Name}: {(Before is null ? "nothing" : Before.Name.Length > 0 ? Before.Name : $"the {Slot.Name}")}, then {(After is null ? "nothing" : After.ToString())}";
}

/// <summary>What else must change when a part is swapped: the fewest slots, of equally few the cheapest, of equally cheap the first.</summary>
public sealed class ChangePlan
{
    internal ChangePlan(ChoiceStatus status, Build? build, ImmutableArray<SlotChange> changes, ImmutableArray<ChosenBridge> bridges, Price? price, int fewest)
    {
        Status = status;
        Build = build;
        Changes = changes;
        Bridges = bridges;
        Price = price;
        Fewest = fewest;
    }

    /// <summary>Exact, a bound, or impossible with these offers.</summary>
    public ChoiceStatus Status { get; }

    /// <summary>The bicycle after the swap and all that follows; null where none was found.</summary>
    public Build? Build { get; }

    /// <summary>What follows, without the swap itself, in the order of slots.</summary>
    public ImmutableArray<SlotChange> Changes { get; }

    /// <summary>Bridges that joints need which the swap or a change touches.</summary>
    public ImmutableArray<ChosenBridge> Bridges { get; }

    /// <summary>What the changes and bridges cost, without the swapped part itself; null where none was found.</summary>
    public Price? Price { get; }

    /// <summary>How many slots have to change, proven: no fewer will do.</summary>
    public int Fewest { get; }

    /// <summary>The changes, a line each.</summary>
    public override string ToString() =>
        Status == ChoiceStatus.Impossible ? "With these offers nothing makes it fit."
        : Build is null ? $"Not found out; at least {Fewest} more slots change."
        : Changes.IsEmpty ? $"Nothing else has to change{Cost}." : $"{string.Join("\n", Changes)}{Cost}";

    private string Cost => Bridges.IsEmpty && Price is not { Amount: > 0 } ? "" : $" ({Price}{(Bridges.IsEmpty ? "" : $", with {string.Join(", ", Bridges.Select(b => b.Bridge.What))}")})";
}
