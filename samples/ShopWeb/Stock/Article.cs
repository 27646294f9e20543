namespace ShopWeb.Stock;

/// <summary>Something on the shelf, by its article number.</summary>
internal sealed class Article
{
    /// <summary>The article number.</summary>
    public long Id { get; init; }

    /// <summary>What its interfaces are.</summary>
    public long SpecId { get; init; }

    public string Name { get; init; } = "";

    public long Cents { get; init; }

    public int Grams { get; init; }

    /// <summary>The delivery that it came with; 0 for the first stock.</summary>
    public long Delivery { get; init; }

    public decimal Price => Cents / 100m;
}
