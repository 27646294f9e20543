namespace Lugwork.Planning;

/// <summary>Something to buy or to have done before a part of the donor goes.</summary>
public sealed record CarriedBridge
{
    internal CarriedBridge(Joint joint, Remedy remedy, CostClass priceClass)
    {
        Joint = joint;
        Remedy = remedy;
        Class = priceClass;
    }

    /// <summary>The joint that asks for it.</summary>
    public Joint Joint { get; internal init; }

    /// <summary>What to buy or have done.</summary>
    public Remedy Remedy { get; internal init; }

    /// <summary>About what it costs; the basis is <see cref="CostClassTable.Basis"/>.</summary>
    public CostClass Class { get; internal init; }

    /// <summary>"seatpost shim 26.8 to 27.2 (cheap)".</summary>
    public override string ToString() => $"{Remedy.What} ({CostClassTable.InWords(Class)})";
}
