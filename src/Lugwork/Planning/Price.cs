using System.Globalization;

namespace Lugwork.Planning;

/// <summary>A sum of money in one currency.</summary>
/// <remarks>
/// The amount has at most four places after the point, which is the finest minor unit of ISO 4217. One that is given lies within a thousand million to either side, so sums of prices are exact; a sum may be more.
/// It may be negative, such as what a sale brings. The default has no currency and is no price: <see cref="IsPrice"/> is false, and it is refused wherever a price is taken.
/// Two prices are equal where amount and currency are; 1.5 and 1.50 are the same amount.
/// </remarks>
public readonly record struct Price
{
    /// <summary>The greatest amount to either side, in units of the currency.</summary>
    public static decimal MostAmount => 1_000_000_000m;

    /// <summary>How many of the smallest steps that are kept make one of the currency.</summary>
    internal const long StepsPerUnit = 10_000;

    private readonly string? _currency;

    /// <summary>An amount in a currency.</summary>
    /// <param name="amount">In units of the currency, not in cents; at most four places after the point.</param>
    /// <param name="currency">Three capital letters as in ISO 4217: "EUR". The letters are checked, not the list of currencies.</param>
    /// <exception cref="ArgumentException">The currency is not three capital letters, or the amount has more than four places.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The amount is more than a thousand million to either side.</exception>
    public Price(decimal amount, string currency)
    {
        ArgumentNullException.ThrowIfNull(currency);
        if (currency.Length != 3 || currency.AsSpan().ContainsAnyExceptInRange('A', 'Z'))
        {
            throw new ArgumentException($"three capital letters such as EUR are expected, not \"{currency}\"", nameof(currency));
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(Math.Abs(amount), MostAmount, nameof(amount));
        if (decimal.Round(amount, 4) != amount)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"at most four places after the point are expected, not {amount}"), nameof(amount));
        }

        Amount = amount;
        _currency = currency;
    }

    // A sum of prices may be more than one price can be.
    private Price(string currency, long steps) => (Amount, _currency) = ((decimal)steps / StepsPerUnit, currency);

    /// <summary>In units of the currency.</summary>
    public decimal Amount { get; }

    /// <summary>Three letters of ISO 4217: "EUR"; empty for the default.</summary>
    public string Currency => _currency ?? "";

    /// <summary>It has a currency; false for the default alone.</summary>
    public bool IsPrice => _currency is not null;

    /// <summary>The amount in ten-thousandths, exact.</summary>
    internal long Steps => (long)(Amount * StepsPerUnit);

    /// <summary>The price of a number of ten-thousandths.</summary>
    internal static Price OfSteps(long steps, string currency) => new(currency, steps);

    /// <summary>"12.50 EUR", the same in every culture; empty for the default.</summary>
    public override string ToString() => IsPrice ? string.Create(CultureInfo.InvariantCulture, $"{Amount:0.00##} {_currency}") : "";

    /// <summary>The one currency of several prices; null where there is none. What has no price, such as a part that nobody asked about, is left out of the list.</summary>
    /// <param name="priced">What is priced, in words for the error, and its price.</param>
    /// <exception cref="ArgumentException">There are two currencies, or a default is among them; the message names what they stand on.</exception>
    internal static string? OneCurrency(IEnumerable<(string What, Price Price)> priced)
    {
        (string What, Price Price)? first = null;
        foreach ((string what, Price price) in priced)
        {
            if (!price.IsPrice)
            {
                throw new ArgumentException($"{what} has a price without a currency");
            }

            first ??= (what, price);
            if (first.Value.Price.Currency != price.Currency)
            {
                throw new ArgumentException($"prices in two currencies do not add up: {first.Value.What} in {first.Value.Price.Currency}, {what} in {price.Currency}");
            }
        }

        return first?.Price.Currency;
    }
}
