using System.ComponentModel.DataAnnotations;
using Lugwork;

namespace ShopWeb;

/// <summary>What can be set, in configuration under "Shop".</summary>
internal sealed class ShopOptions
{
    /// <summary>The seed of the invented stock; another seed needs an empty database.</summary>
    public int Seed { get; set; } = 2_711;

    /// <summary>Most requests of one caller in a minute: of one address, or of one network of 64 bits where addresses are of version 6.</summary>
    [Range(1, int.MaxValue)]
    public int RequestsPerMinute { get; set; } = 600;

    /// <summary>Most requests that are worked on at the same time.</summary>
    [Range(1, 10_000)]
    public int AtOnce { get; set; } = 32;

    /// <summary>Most requests that wait for a place; one more is told that the shop is busy.</summary>
    [Range(0, 100_000)]
    public int MayWait { get; set; } = 640;

    /// <summary>How long an answer may take, until its last byte is taken. One that was not begun is told that the shop is busy; one that was is cut off, and its connection broken.</summary>
    [Range(typeof(TimeSpan), "00:00:00.1", "01:00:00")]
    public TimeSpan AnswerWithin { get; set; } = TimeSpan.FromSeconds(20);

    /// <summary>Largest body that is read, bytes.</summary>
    [Range(1_000, 100_000_000)]
    public int MostBytes { get; set; } = 256_000;

    /// <summary>How often an invented delivery comes; zero for never.</summary>
    public TimeSpan DeliverEvery { get; set; }

    /// <summary>The kind of frame that the first page shows, by its key: an interface value out of configuration.</summary>
    public BicycleKind FirstKind { get; set; } = BicycleKind.Gravel;
}
