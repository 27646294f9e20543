using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Planning;

/// <summary>A bridge that a chosen build needs.</summary>
/// <param name="Joint">The joint that needs it.</param>
/// <param name="Bridge">What has to be bought or done.</param>
/// <param name="Price">What it costs; null where that is not known and was allowed to be, zero where it is there already.</param>
public sealed record ChosenBridge(Joint Joint, Bridge Bridge, Price? Price)
{
    /// <summary>"Seatpost in seat tube: shim 27.2 to 30.9 (9.00 EUR)".</summary>
    public override string ToString() => $"{Joint.Name}: {Bridge.What} ({(Price is { } price ? price.ToString() : "no price")})";
}

/// <summary>A complete build that fits, with what it costs.</summary>
public sealed class ChosenBuild
{
    internal ChosenBuild(Build build, ImmutableArray<ChoiceOffer> parts, ImmutableArray<ChosenBridge> bridges, Price price, Mass? mass, FitReport report)
    {
        Build = build;
        Parts = parts;
        Bridges = bridges;
        Price = price;
        Mass = mass;
        Report = report;
    }

    /// <summary>The build; its check was made before it was given.</summary>
    public Build Build { get; }

    /// <summary>What stands in its slots, owned parts too, in the order of slots.</summary>
    public ImmutableArray<ChoiceOffer> Parts { get; }

    /// <summary>What is to be bought.</summary>
    public ImmutableArray<ChoiceOffer> ToBuy => [.. Parts.Where(p => !p.IsOwned)];

    /// <summary>The bridges that its joints need. Where it is open which of several, the dearest: a measurement may make it cheaper.</summary>
    public ImmutableArray<ChosenBridge> Bridges { get; }

    /// <summary>All of it together: parts that are bought, and bridges.</summary>
    public Price Price { get; }

    /// <summary>A bridge has no price, so that <see cref="Price"/> is the least it can be.</summary>
    public bool IsAtLeast => Bridges.Any(b => b.Price is null);

    /// <summary>Parts and bridges together, where masses counted; bridges of unknown mass count as nothing. Null where masses did not count.</summary>
    public Mass? Mass { get; }

    /// <summary>The check of the build.</summary>
    public FitReport Report { get; }

    /// <summary>One line: price, mass, how much is bought.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{(IsAtLeast ? "at least " : "")}{Price}{(Mass is { } mass ? string.Create(CultureInfo.InvariantCulture, $", {mass.Grams:0} g") : "")}: {ToBuy.Length} parts to buy, {Bridges.Length} bridges, {Parts.Length - ToBuy.Length} owned");
}

/// <summary>How sure a choice is.</summary>
public enum ChoiceStatus
{
    /// <summary>Nothing in the request fits together.</summary>
    Impossible = 0,

    /// <summary>A bound: the best that was found, and what no choice goes below. The best may be missing, and then it is not known whether there is one.</summary>
    Bound,

    /// <summary>Exact: no choice is better.</summary>
    Optimal,
}

/// <summary>What choosing came to.</summary>
public sealed class ChoiceResult
{
    internal ChoiceResult(ChoiceStatus status, ImmutableArray<ChosenBuild> builds, Price? bound, Mass? massBound, int clique, long table)
    {
        Status = status;
        Builds = builds;
        Bound = bound;
        MassBound = massBound;
        LargestClique = clique;
        LargestTable = table;
    }

    /// <summary>How sure it is.</summary>
    public ChoiceStatus Status { get; }

    /// <summary>The best first; one, or as many as were asked for and exist.</summary>
    public ImmutableArray<ChosenBuild> Builds { get; }

    /// <summary>The best; null where there is none.</summary>
    public ChosenBuild? Best => Builds is [var best, ..] ? best : null;

    /// <summary>Proven: no choice costs less. Null where nothing fits, or where masses were to be least.</summary>
    public Price? Bound { get; }

    /// <summary>Proven: no choice weighs less. Null unless masses were to be least.</summary>
    public Mass? MassBound { get; }

    /// <summary>How many slots had to be looked at together at most.</summary>
    public int LargestClique { get; }

    /// <summary>How many combinations the largest table held.</summary>
    public long LargestTable { get; }

    /// <summary>Status and best in one line.</summary>
    public override string ToString() => Status switch
    {
        ChoiceStatus.Impossible => "nothing fits together",
        ChoiceStatus.Bound => string.Create(CultureInfo.InvariantCulture, $"a bound of {(Bound is { } price ? price.ToString() : $"{MassBound?.Grams ?? 0} g")}; best found: {(Best is { } best ? best.ToString() : "none")}"),
        _ => Best!.ToString(),
    };
}
