using System.Globalization;

namespace Lugwork.Planning;

/// <summary>What is known of a sum of money: exactly, between two sums, at least, at most, or nothing at all.</summary>
/// <remarks>
/// Exact decimals, never rounded: a range is added end by end, and an end that is not known stays so. The default is the price of which nothing is known. As the price of a line an unknown
/// lower end is 0, for nothing is sold below that; as a total it is unknown, for leftovers may bring more.
/// </remarks>
public readonly record struct CostRange
{
    private readonly string? _currency;

    private CostRange(decimal? least, decimal? most, string currency) => (Least, Most, _currency) = (least, most, currency.Length > 0 ? currency : null);

    /// <summary>Nothing is known; also the default.</summary>
    public static CostRange Unknown => default;

    /// <summary>The least that it is, in units of the currency; null where nothing is known below.</summary>
    public decimal? Least { get; }

    /// <summary>The most that it is, in units of the currency; null where nothing is known above.</summary>
    public decimal? Most { get; }

    /// <summary>Three letters of ISO 4217; empty where no price is known.</summary>
    public string Currency => _currency ?? "";

    /// <summary>Both ends are known and the same.</summary>
    public bool IsExact => Least is { } least && Most == least;

    /// <summary>An exact price.</summary>
    /// <param name="price">The price.</param>
    /// <exception cref="ArgumentException">It is a default and no price.</exception>
    public static CostRange Of(Price price) => new(Taken(price).Amount, price.Amount, price.Currency);

    /// <summary>A price that is one or the other or between.</summary>
    /// <param name="least">The least.</param>
    /// <param name="most">The most, in the same currency and not below.</param>
    /// <exception cref="ArgumentException">One is a default, the currencies differ, or the most is below the least.</exception>
    public static CostRange Between(Price least, Price most)
    {
        if (Taken(least).Currency != Taken(most).Currency)
        {
            throw new ArgumentException($"a range in two currencies, {least} to {most}", nameof(most));
        }

        return least.Amount <= most.Amount ? new(least.Amount, most.Amount, least.Currency) : throw new ArgumentException($"a range from {least} down to {most}", nameof(most));
    }

    /// <summary>A price of which the least is known.</summary>
    /// <param name="least">The least.</param>
    /// <exception cref="ArgumentException">It is a default and no price.</exception>
    public static CostRange AtLeast(Price least) => new(Taken(least).Amount, null, least.Currency);

    /// <summary>A price of which the most is known.</summary>
    /// <param name="most">The most.</param>
    /// <exception cref="ArgumentException">It is a default and no price.</exception>
    public static CostRange AtMost(Price most) => new(null, Taken(most).Amount, most.Currency);

    /// <summary>An exact price; the same as <see cref="Of"/>.</summary>
    /// <param name="price">The price.</param>
    public static implicit operator CostRange(Price price) => Of(price);

    /// <summary>An exact price; the same as <see cref="Of"/>.</summary>
    /// <param name="price">The price.</param>
    public static CostRange FromPrice(Price price) => Of(price);

    /// <summary>Whether a sum lies in the range.</summary>
    /// <param name="price">A sum in the same currency.</param>
    public bool Holds(Price price) => (Currency.Length == 0 || Currency == price.Currency) && (Least is not { } least || price.Amount >= least) && (Most is not { } most || price.Amount <= most);

    /// <summary>"12.50 EUR", "10.00 to 15.00 EUR", "at least 10.00 EUR", "at most 15.00 EUR", "unknown"; exact, the same in every culture.</summary>
    public override string ToString() => (Least, Most) switch
    {
        (null, null) => "unknown",
        ({ } least, null) => $"at least {Written(least)}",
        (null, { } most) => $"at most {Written(most)}",
        ({ } least, { } most) when least == most => Written(least),
        ({ } least, _) => string.Create(CultureInfo.InvariantCulture, $"{least:0.00##} to {Written(Most!.Value)}"),
    };

    internal static CostRange Nothing(string currency) => new(0, 0, currency);

    internal static CostRange Ends(decimal? least, decimal? most, string currency) => new(least, most, currency);

    /// <summary>As a price of a line: never below nothing.</summary>
    internal CostRange AsPrice() => new(Least ?? 0, Most, Currency);

    internal CostRange Times(int count) => new(Least * count, Most * count, Currency);

    internal CostRange Negated() => new(-Most, -Least, Currency);

    /// <summary>Currencies were checked before.</summary>
    internal CostRange Plus(CostRange other) => new(Least + other.Least, Most + other.Most, Currency.Length > 0 ? Currency : other.Currency);

    private string Written(decimal amount) => string.Create(CultureInfo.InvariantCulture, $"{amount:0.00##} {Currency}").TrimEnd();

    private static Price Taken(Price price) => price.IsPrice ? price : throw new ArgumentException("a price has a currency", nameof(price));
}
