using System.Globalization;
using Lugwork.Planning;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Planning;

/// <summary>Prices, and what a request refuses.</summary>
public sealed class ChoicePriceTests
{
    private static readonly Seatpost Post = Seatpost.Read("27.2 x 350");

    [Fact]
    public void A_price_is_an_exact_amount_in_a_currency()
    {
        Assert.Equal("12.50 EUR", new Price(12.5m, "EUR").ToString());
        Assert.Equal("0.0625 KWD", new Price(0.0625m, "KWD").ToString());
        Assert.Equal(new Price(1.5m, "EUR"), new Price(1.50m, "EUR"));
        Assert.NotEqual(new Price(1.5m, "EUR"), new Price(1.5m, "CHF"));
        Assert.False(default(Price).IsPrice);
        Assert.Equal("", default(Price).ToString());
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        Assert.Equal("-1234.50 CHF", new Price(-1_234.5m, "CHF").ToString());
    }

    [Theory]
    [InlineData(1.0, "eur")]
    [InlineData(1.0, "EURO")]
    [InlineData(1.0, "E1R")]
    [InlineData(1.0, "")]
    [InlineData(0.00001, "EUR")]
    public void What_is_no_price_is_refused(double amount, string currency) => Assert.Throws<ArgumentException>(() => new Price((decimal)amount, currency));

    [Fact]
    public void A_price_beyond_a_thousand_million_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => new Price(Price.MostAmount + 1, "EUR"));

    [Fact]
    public void Two_currencies_are_an_error_that_names_both()
    {
        ChoiceRequest request = new() { Build = Bench.WholeBicycle(), Offers = [new("A-1", Slot.Seatpost, Post) { Price = new(1, "EUR") }, new("B-2", Slot.Seatpost, Post) { Price = new(1, "CHF") }] };
        string said = Assert.Throws<ArgumentException>(() => BuildChooser.Of(request)).Message;
        Assert.Contains("A-1 in EUR", said, StringComparison.Ordinal);
        Assert.Contains("B-2 in CHF", said, StringComparison.Ordinal);
        string bridged = Assert.Throws<ArgumentException>(() => BuildChooser.Of(request with { Offers = [request.Offers[0]], Bridges = [new("lockring-internal", new(1, "CHF"))] })).Message;
        Assert.Contains("lockring-internal", bridged, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_request_is_refused_with_its_name()
    {
        ChoiceRequest request = new() { Build = Bench.WholeBicycle(), Offers = [] };
        Assert.Throws<ArgumentException>(() => new ChoiceOffer("A", Slot.Saddle, Post));
        Assert.Throws<ArgumentException>(() => new ChoiceOffer(" ", Slot.Seatpost, Post));
        Assert.Contains("A-1", Assert.Throws<ArgumentException>(() => BuildChooser.Of(request with { Offers = [new("A-1", Slot.Seatpost, Post) { Price = new(-1, "EUR") }] })).Message, StringComparison.Ordinal);
        Assert.Contains("F-1", Assert.Throws<ArgumentException>(() => BuildChooser.Of(request with { Offers = [new("F-1", Slot.Frame, request.Build.Frame) { Price = new(1, "EUR") }] })).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => BuildChooser.Of(request with { Bridges = [new("x", new(1, "EUR")), new("x", new(2, "EUR"))] }));
        Assert.Throws<ArgumentException>(() => BuildChooser.Of(request).Lightest());
        Assert.Throws<ArgumentOutOfRangeException>(() => BuildChooser.Of(request).CheapestFew(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BuildChooser.Of(request).PriceMassFront(1_001));
        ChoiceRequest priced = request with { Offers = [new("A-1", Slot.Seatpost, Post) { Price = new(1, "EUR") }] };
        Assert.Throws<ArgumentException>(() => BuildChooser.Of(priced).LightestUnder(new Price(1, "CHF")));
    }

    [Fact]
    public void A_stopped_choice_says_so()
    {
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        BuildChooser chooser = BuildChooser.Of(new() { Build = Bench.WholeBicycle(), Offers = [] });
        Assert.Throws<OperationCanceledException>(() => chooser.Cheapest(stopped.Token));
        Assert.Throws<OperationCanceledException>(() => chooser.Conflict(stopped.Token));
        Assert.Throws<OperationCanceledException>(() => chooser.Changes(Slot.Seatpost, Post, stopped.Token));
        Assert.Equal(0, chooser.Cheapest().Best!.Price.Amount);
    }
}
