namespace Lugwork.Planning;

/// <summary>Something to buy or to have done before a part of the donor goes.</summary>
/// <param name="Joint">The joint that asks for it.</param>
/// <param name="Remedy">What to buy or have done.</param>
/// <param name="Class">About what it costs; the basis is <see cref="CostClassTable.Basis"/>.</param>
public sealed record CarriedBridge(Joint Joint, Remedy Remedy, CostClass Class)
{
    /// <summary>"seatpost shim 26.8 to 27.2 (cheap)".</summary>
    public override string ToString() => $"{Remedy.What} ({CostClassTable.InWords(Class)})";
}
