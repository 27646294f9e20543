using Lugwork;

namespace ShopWeb;

/// <summary>What can be set, in configuration under "Shop".</summary>
internal sealed class ShopOptions
{
    /// <summary>The seed of the invented stock; another seed needs an empty database.</summary>
    public int Seed { get; set; } = 2_711;

    /// <summary>Most requests of one address in a minute.</summary>
    public int RequestsPerMinute { get; set; } = 600;

    /// <summary>Most requests that are worked on at the same time; some more wait.</summary>
    public int AtOnce { get; set; } = 32;

    /// <summary>Largest body that is read, bytes.</summary>
    public int MostBytes { get; set; } = 256_000;

    /// <summary>How often an invented delivery comes; zero for never.</summary>
    public TimeSpan DeliverEvery { get; set; }

    /// <summary>The kind of frame that the first page shows, by its key: an interface value out of configuration.</summary>
    public BicycleKind FirstKind { get; set; } = BicycleKind.Gravel;
}
