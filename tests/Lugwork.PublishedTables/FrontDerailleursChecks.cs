using Lugwork.Drivetrain;
using static Lugwork.PublishedTables.Identified;

namespace Lugwork.PublishedTables;

/// <summary>How front derailleurs are built and how many teeth they span, as pages print them.</summary>
public sealed class FrontDerailleursChecks
{
    private const string Kinds = "Front derailleur types and mounts explained; BikeRadar";
    private const string Differences = "Differences Between Top and Bottom Swing Derailleurs; ifocus.life";
    private const string Capacity = "Capacity of the rear derailleur; defietssite.nl";
    private const string Wrap = "Chain-wrap capacity note; Velogear";
    private const string Total = "Total capacity glossary entry; jitetan.com";

    [Theory]
    [InlineData("top swing", "top-swing", Kinds)]
    [InlineData("Bottom-Swing", "bottom-swing", Kinds)]
    [InlineData("side swing", "side-swing", Kinds)]
    [InlineData("top swing derailleur", "top-swing", Differences)]
    [InlineData("bottom swing derailleur", "bottom-swing", Differences)]
    public void A_swing_is_read_as_printed(string words, string key, string source) => Reads<FrontDerailleurSwing>(source, key, words);

    [Theory]
    [InlineData("double", 53, 39, true, Wrap)]
    [InlineData("double", 44, 24, false, Total)]
    [InlineData("triple", 44, 24, true, Total)]
    [InlineData("double", 50, 34, false, Total)]
    [InlineData("triple", 50, 28, true, Capacity)]
    [InlineData("triple", 50, 27, false, Capacity)]
    public void Rings_lie_within_the_printed_usual_capacity_or_not(string kind, int large, int small, bool within, string source) =>
        Assert.True(within == large - small <= FrontCapacity.Parse(kind, null).Teeth, source);
}
