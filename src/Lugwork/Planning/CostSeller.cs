namespace Lugwork.Planning;

/// <summary>Someone who sends parts, with what he asks for it.</summary>
/// <param name="Name">His name, as it stands on the lines.</param>
/// <param name="Postage">What one order costs to send; a default is unknown.</param>
/// <param name="FreeFrom">The sum of goods, before postage, from which he sends free of charge: the sum itself is enough. Null where he never does.</param>
public sealed record CostSeller(string Name, CostRange Postage, Price? FreeFrom = null)
{
    /// <summary>"shop A: 5.90 EUR, free from 60.00 EUR".</summary>
    public override string ToString() => $"{Name}: {Postage}{(FreeFrom is { } free ? $", free from {free}" : "")}";

    internal CostSeller Checked() =>
        string.IsNullOrWhiteSpace(Name) ? throw new ArgumentException("a seller has a name")
        : Postage.Least < 0 || Postage.Most < 0 ? throw new ArgumentException($"{Name}: postage is not below 0")
        : FreeFrom is { IsPrice: false } or { Amount: < 0 } ? throw new ArgumentException($"{Name}: the free sum is a price and not below 0")
        : this;
}
