using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Planning;

/// <summary>A bridge that a chosen build needs.</summary>
public sealed record ChosenBridge
{
    internal ChosenBridge(Joint joint, Bridge bridge, Price? price)
    {
        Joint = joint;
        Bridge = bridge;
        Price = price;
    }

    /// <summary>The joint that needs it.</summary>
    public Joint Joint { get; internal init; }

    /// <summary>What has to be bought or done.</summary>
    public Bridge Bridge { get; internal init; }

    /// <summary>What it costs; null where that is not known and was allowed to be, zero where it is there already.</summary>
    public Price? Price { get; internal init; }

    /// <summary>"Seatpost in seat tube: shim 27.2 to 30.9 (9.00 EUR)".</summary>
    public override string ToString() => $"{Joint.Name}: {Bridge.What} ({(Price is { } price ? price.ToString() : "no price")})";
}

/// <summary>A complete build that fits, with what it costs.</summary>
public sealed class ChosenBuild
{
    internal ChosenBuild(Build build, ImmutableArray<ChoiceOffer> parts, ImmutableArray<ChosenBridge> bridges, ImmutableArray<ChoiceOffer> leftOff, Price price, Mass? mass, FitReport report)
    {
        Build = build;
        Parts = parts;
        Bridges = bridges;
        LeftOff = leftOff;
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

    /// <summary>Owned parts of the bicycle of the request that do not stand in this build: something else does, or they were in the way.</summary>
    public ImmutableArray<ChoiceOffer> LeftOff { get; }

    /// <summary>All of it together: parts that are bought, and bridges. Small parts that no joint asks for, such as bolts, cables, tubes and valves, are not in it: a cost sheet has them.</summary>
    public Price Price { get; }

    /// <summary><see cref="Price"/> is the least it can be: a bridge has no price, or a joint that needs measuring may take one.</summary>
    public bool IsAtLeast => Bridges.Any(b => b.Price is null) || MayTakeMore;

    /// <summary>Parts and bridges together, where masses counted; where it is open which of several bridges, the heaviest. Null where masses did not count.</summary>
    public Mass? Mass { get; }

    /// <summary><see cref="Mass"/> is the least it can be: a joint that needs measuring may take a bridge.</summary>
    public bool IsMassAtLeast => Mass is not null && MayTakeMore;

    /// <summary>The check of the build.</summary>
    public FitReport Report { get; }

    private bool MayTakeMore => Report.Findings.Any(f => f.Verdict == Verdict.NeedsMeasuring && f.Remedies.Any(r => r.Kind == RemedyKind.IfMeasured && r.Bridge is not null));

    /// <summary>One line: price, mass, how much is bought, and what owned parts are left off.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{(IsAtLeast ? "at least " : "")}{Price}{(Mass is { } mass ? string.Create(CultureInfo.InvariantCulture, $", {(IsMassAtLeast ? "at least " : "")}{mass.Grams:0} g") : "")}: {ToBuy.Length} parts to buy, {Bridges.Length} shim{(Bridges.Length == 1 ? "" : "s")} or adapter{(Bridges.Length == 1 ? "" : "s")}, {Parts.Length - ToBuy.Length} owned{(LeftOff.IsEmpty ? "" : $"; left off: {string.Join(", ", LeftOff.Select(o => o.Slot.Name))}")}");
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

    /// <summary>Something fits together, and nothing that does is under the cap; the bound of what was capped says how low it can be.</summary>
    CapTooLow,
}

/// <summary>What choosing came to.</summary>
public sealed class ChoiceResult
{
    internal ChoiceResult()
    {
    }

    /// <summary>How sure it is.</summary>
    public ChoiceStatus Status { get; internal init; }

    /// <summary>The best first; one, or as many as were asked for and exist.</summary>
    public ImmutableArray<ChosenBuild> Builds { get; internal init; } = [];

    /// <summary>The best; null where there is none.</summary>
    public ChosenBuild? Best => Builds is [var best, ..] ? best : null;

    /// <summary>Proven: no choice costs less. Null where nothing fits, or where masses were to be least; where a cap of the price was too low, no choice at all costs less.</summary>
    public Price? Bound { get; internal init; }

    /// <summary>Proven: no choice weighs less. Null unless masses were to be least; where a cap of the mass was too low, no choice at all weighs less.</summary>
    public Mass? MassBound { get; internal init; }

    /// <summary>Offers and owned parts that were not looked at: without a price, without a mass where masses count, or with something outside the library.</summary>
    public ImmutableArray<ChoiceOffer> LeftOut { get; internal init; } = [];

    /// <summary>How many slots had to be looked at together at most.</summary>
    internal int LargestClique { get; init; }

    /// <summary>How many combinations the largest table held.</summary>
    internal long LargestTable { get; init; }

    /// <summary>Status and best in one line.</summary>
    public override string ToString() => Status switch
    {
        ChoiceStatus.Impossible => $"nothing fits together{(LeftOut.IsEmpty ? "" : string.Create(CultureInfo.InvariantCulture, $"; {LeftOut.Length} not looked at, for want of a price, a mass or a word in the library"))}",
        ChoiceStatus.CapTooLow => $"nothing that fits is under the cap: none {(Bound is { } least ? $"costs less than {least}" : string.Create(CultureInfo.InvariantCulture, $"weighs less than {MassBound?.Grams ?? 0:0.###} g"))}",
        ChoiceStatus.Bound => string.Create(CultureInfo.InvariantCulture, $"a bound of {(Bound is { } price ? price.ToString() : $"{MassBound?.Grams ?? 0} g")}; best found: {(Best is { } best ? best.ToString() : "none")}"),
        _ => Best!.ToString(),
    };
}
