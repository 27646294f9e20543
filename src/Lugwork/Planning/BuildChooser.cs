using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Planning;

/// <summary>
/// Chooses a complete build that fits from parts that can be had: every required slot filled, every joint and system check a fit, as it is or with a bridge that is paid for.
/// </summary>
/// <remarks>
/// Exact: the parts of a slot are collapsed to those that the joints can tell apart, and slots are eliminated one by one over their interfaces, system checks with them. Where a table would
/// grow too large the answer is a bound, and says so. What is unknown is never taken for a fit. Of equal choices the same request gives the same one: slots are decided one after the other, in an order
/// that the request makes, and in each the owned part comes first, an empty slot next, then the offers as they stand. A dropper goes with its seatpost and controls with their levers and shifters,
/// where the build has both. Every build that is given was checked.
/// </remarks>
public sealed partial class BuildChooser
{
    /// <summary>How many builds are given at once at most.</summary>
    public static int MostBuilds => 1_000;

    private const long MostSteps = 2_000_000;

    private readonly ChoicePrices _prices;
    private readonly ChoicePrices _weighedPrices;
    private readonly string _currency;
    private readonly Lock _gate = new();

    /// <summary>The most combinations that a rule's table may have: what has more is asked combination by combination.</summary>
    internal int MostTableCells { get; set; } = ChoiceReducer.MostCells;

    /// <summary>The code that ISO 4217 has for no currency: nothing in the request has a price.</summary>
    private const string NoCurrency = "XXX";

    // Made when first asked for: without masses, and with them.
    private ChoicePlan? _plain;
    private ChoicePlan? _weighed;

    private BuildChooser(ChoiceRequest request, string? currency)
    {
        // What was read with a part that may be exchanged is not known of what is chosen.
        Build asked = request.Offers.Select(o => o.Slot).Distinct().Aggregate(request.Build, (b, s) => b.ReadingsAside(s));
        Request = ReferenceEquals(asked, request.Build) ? request : request with { Build = asked };
        _prices = new(request.Bridges, request.Build.SmallPartsThere, request.AllowsUnpricedBridges, request.AllowsMeasuring, masses: false);
        _weighedPrices = new(request.Bridges, request.Build.SmallPartsThere, request.AllowsUnpricedBridges, request.AllowsMeasuring, masses: true);
        _currency = currency ?? NoCurrency;
    }

    /// <summary>What is chosen from.</summary>
    public ChoiceRequest Request { get; }

    /// <summary>Makes a chooser; the parts are read when something is first asked.</summary>
    /// <param name="request">What to choose from.</param>
    /// <exception cref="ArgumentException">Prices are in two currencies or negative, a bridge is priced twice, or a frame is offered; the message names what.</exception>
    public static BuildChooser Of(ChoiceRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (request.Offers.IsDefault || request.Bridges.IsDefault || request.Wishes.IsDefault)
        {
            throw new ArgumentException("offers, bridges and wishes are lists, empty ones where there are none", nameof(request));
        }

        string? currency = ChoiceEntries.Currency(request);
        ChoiceEntries.Of(request, false);
        return new(request, currency);
    }

    /// <summary>The cheapest build that fits.</summary>
    /// <param name="cancellationToken">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceResult Cheapest(CancellationToken cancellationToken = default) => CheapestFew(1, cancellationToken);

    /// <summary>The cheapest builds that fit, cheapest first. Two builds differ in at least one part.</summary>
    /// <param name="count">How many, 1 to 1,000.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is out of range.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceResult CheapestFew(int count, CancellationToken cancellationToken = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, MostBuilds);
        ChoicePlan plan = PlanOf(false, cancellationToken).For(count, cancellationToken);
        return plan.Network is null ? None(plan) : Ordered(plan, plan.Network, ChoiceWeights.Price, count, null, cancellationToken);
    }

    /// <summary>The lightest build that fits, at any price; of equally light ones the cheapest. Parts and bridges of unknown mass are not chosen.</summary>
    /// <param name="cancellationToken">Stops it.</param>
    /// <exception cref="ArgumentException">The mass of the frame is not known.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceResult Lightest(CancellationToken cancellationToken = default)
    {
        ChoicePlan plan = PlanOf(true, cancellationToken);
        if (plan.Scaled is not { } scaled)
        {
            return None(plan);
        }

        // A step of mass weighs more than all prices together, where that can be said in whole numbers.
        long most = scaled.Network.MostPrice;
        return (Int128)(most + 1) * (scaled.Network.MostMass + 1) < ChoiceEntry.Never / 2
            ? Ordered(plan, scaled.Network, new(1, most + 1), 1, bound => Mass.FromMilligrams(bound / (most + 1) * scaled.PerMass), cancellationToken)
            : Capped(true, long.MaxValue, null, cancellationToken);
    }

    /// <summary>The model and its network; the network is null where some slot has nothing left.</summary>
    internal sealed record ChoicePlan(ChoiceModel Model, ChoiceNetwork? Network)
    {
        // Of more builds than these most entries stay anyhow.
        private const int MostThinned = 50;

        private ChoiceNetwork? _one;

        /// <summary>What of the request was not looked at.</summary>
        public ImmutableArray<ChoiceOffer> LeftOut { get; init; } = [];

        /// <summary>The network in its own steps, where masses count.</summary>
        public (ChoiceNetwork Network, long PerPrice, long PerMass)? Scaled { get; init; }

        /// <summary>The plan with a network in which as many of the best builds are left.</summary>
        public ChoicePlan For(int builds, CancellationToken cancellationToken) =>
            Network is null || builds > MostThinned ? this
            : builds == 1 ? this with { Network = _one ??= ChoiceDominance.Thinned(Network, 1, cancellationToken) }
            : this with { Network = ChoiceDominance.Thinned(Network, builds, cancellationToken) };
    }

    internal ChoicePlan PlanOf(bool masses, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        lock (_gate)
        {
            return masses ? _weighed ??= Prepare(true, cancellationToken) : _plain ??= Prepare(false, cancellationToken);
        }
    }

    private ChoicePlan Prepare(bool masses, CancellationToken cancellationToken)
    {
        ChoiceEntries entries = ChoiceEntries.Of(Request, masses);
        ChoiceModel model = ChoiceModel.Of(Request.Build, entries.BySlot, Request.Wishes, masses ? _weighedPrices : _prices, null, cancellationToken);
        bool impossible = model.NumberOf(Slot.Frame) < 0 || Request.Wishes.Any(w => model.NumberOf(w.Slot) < 0);
        ChoiceNetwork? network = impossible ? null : ChoiceReducer.Of(model, masses, mostCells: MostTableCells, cancellationToken: cancellationToken);
        network = masses && network is not null ? ChoiceDominance.Thinned(network, 1, cancellationToken) : network;
        return new(model, network) { LeftOut = entries.LeftOut, Scaled = masses && network is not null ? ChoiceScale.Of(network) : null };
    }

    /// <summary>The best in their order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="network">Its network, or the same in other steps.</param>
    /// <param name="weights">What is to be least.</param>
    /// <param name="count">How many.</param>
    /// <param name="massOf">The mass that a bound stands for; null where it is a price.</param>
    /// <param name="cancellationToken">Stops it.</param>
    private ChoiceResult Ordered(ChoicePlan plan, ChoiceNetwork network, ChoiceWeights weights, int count, Func<long, Mass>? massOf, CancellationToken cancellationToken)
    {
        ChoiceElimination elimination = new(network, weights, cancellationToken);
        ChoiceSearch search = new(network, elimination, weights, cancellationToken);
        ImmutableArray<ChosenBuild>.Builder builds = ImmutableArray.CreateBuilder<ChosenBuild>();
        long least = elimination.Bound;
        while (builds.Count < count && search.Next(MostSteps) is { } next)
        {
            builds.Add(Checked(plan, next.Chosen, massOf is not null));
        }

        bool done = builds.Count == count || search.Bound >= ChoiceEntry.Never;
        bool none = done && builds.Count == 0;
        long bound = Math.Max(least, search.Bound >= ChoiceEntry.Never ? 0 : search.Bound);
        return new()
        {
            Status = none ? ChoiceStatus.Impossible : done ? ChoiceStatus.Optimal : ChoiceStatus.Bound,
            LeftOut = plan.LeftOut,
            LargestClique = elimination.LargestClique,
            LargestTable = elimination.LargestTable,
            Builds = builds.ToImmutable(),
            Bound = none || massOf is not null ? null : builds.Count > 0 ? builds[0].Price : PriceOf(bound),
            MassBound = none || massOf is null ? null : builds.Count > 0 ? builds[0].Mass : massOf(bound),
        };
    }

    private static ChoiceResult None(ChoicePlan plan) => new() { Status = ChoiceStatus.Impossible, LeftOut = plan.LeftOut };

    private Price PriceOf(long steps) => Price.OfSteps(steps, _currency);
}
