using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using UnitsNet;

namespace Lugwork.Planning;

/// <summary>A bicycle that is put together beside a complete one.</summary>
public sealed class CostComparison
{
    internal CostComparison(CostSheet ours, Price complete, Build? theirs, MassRange mass)
    {
        string currency = Price.OneCurrency([.. CostSheet.WithPrice(ours).Take(1), ("the complete bicycle", complete)])!;
        (Ours, Complete, CompleteMass) = (ours, complete, mass);
        Difference = ours.Total.Plus(CostRange.Nothing(currency)).Plus(CostRange.Of(complete).Negated());
        Differs = theirs is null || ours.Build is null ? [] : [.. Slot.All.Where(s => s != Slot.Rider).Select(s => CostDifference.Of(s, ours.Build[s], theirs[s])).OfType<CostDifference>()];
    }

    /// <summary>The sheet of ours.</summary>
    public CostSheet Ours { get; }

    /// <summary>The price of the complete bicycle.</summary>
    public Price Complete { get; }

    /// <summary>The mass of the complete bicycle.</summary>
    public MassRange CompleteMass { get; }

    /// <summary>Ours less the complete one: below 0 where ours costs less.</summary>
    public CostRange Difference { get; }

    /// <summary>The least by which ours weighs more, below 0 where it may weigh less; null where nothing is known below.</summary>
    public Mass? LeastMassMore => CompleteMass.MostGrams is { } most ? Mass.FromGrams((double)(Ours.Mass.LeastGrams - most)) : null;

    /// <summary>The most by which ours weighs more, below 0 where it weighs less for certain; null where nothing is known above.</summary>
    public Mass? MostMassMore => Ours.Mass.MostGrams is { } most ? Mass.FromGrams((double)(most - CompleteMass.LeastGrams)) : null;

    /// <summary>The slots in which the two differ, in the order of a build sheet: what the difference buys. Empty where one of the two is not described.</summary>
    public ImmutableArray<CostDifference> Differs { get; }

    /// <summary>"Ours costs 887.00 EUR, the complete bicycle 1299.00 EUR: 412.00 EUR less.", with the slots that differ.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        text.Append("Ours costs ").Append(Ours.Total).Append(", the complete bicycle ").Append(Complete).Append(": ").Append(Said()).Append('.');
        if (!Differs.IsEmpty)
        {
            text.AppendLine().Append(CultureInfo.InvariantCulture, $"What the difference buys, {Differs.Length} slot{(Differs.Length == 1 ? "" : "s")}:");
            foreach (CostDifference difference in Differs)
            {
                text.AppendLine().Append("  ").Append(difference);
            }
        }

        return text.ToString();
    }

    private string Said()
    {
        string currency = Complete.Currency;
        string Plain(decimal amount) => string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(amount):0.00##} {currency} {(amount < 0 ? "less" : "more")}");
        return (Difference.Least, Difference.Most) switch
        {
            (null, null) => "by how much they differ is not known",
            (0, 0) => "as much",
            ({ } least, { } most) when least == most => Plain(least),
            ({ } least, null) => least < 0 ? $"at most {Plain(least)}" : $"at least {Plain(least)}",
            (null, { } most) => most < 0 ? $"at least {Plain(most)}" : $"at most {Plain(most)}",
            ({ } least, { } most) when most <= 0 => string.Create(CultureInfo.InvariantCulture, $"{-most:0.00##} to {Plain(least)}"),
            ({ } least, { } most) when least >= 0 => string.Create(CultureInfo.InvariantCulture, $"{least:0.00##} to {Plain(most)}"),
            ({ } least, { } most) => $"between {Plain(least)} and {Plain(most)}",
        };
    }
}
