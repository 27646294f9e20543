using UnitsNet;

namespace Lugwork.Planning;

/// <summary>How far a choice under a cap has come: the best so far, and what none goes below. The two meet when it is done.</summary>
public sealed class ChoiceProgress
{
    internal ChoiceProgress()
    {
    }

    /// <summary>The price of the best so far, where the price is to be least.</summary>
    public Price? Price { get; internal init; }

    /// <summary>No choice under the cap costs less.</summary>
    public Price? PriceBound { get; internal init; }

    /// <summary>The mass of the best so far, where the mass is to be least.</summary>
    public Mass? Mass { get; internal init; }

    /// <summary>No choice under the cap weighs less.</summary>
    public Mass? MassBound { get; internal init; }
}
