using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Planning;

/// <content>Under a cap, and the front of price and mass.</content>
public sealed partial class BuildChooser
{
    /// <summary>The cheapest build that fits and weighs no more than a cap; of equally cheap ones the lightest. The cap is of all parts and bridges, owned parts and frame too.</summary>
    /// <param name="most">The most that it may weigh.</param>
    /// <param name="progress">Told the best so far and the bound, early and often.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">The mass of the frame is not known, or the cap is none.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceResult CheapestUnder(Mass most, IProgress<ChoiceProgress>? progress = null, CancellationToken cancellation = default) =>
        Capped(false, ChoicePrices.Milligrams(most, "the cap"), progress, cancellation);

    /// <summary>The lightest build that fits and costs no more than a cap; of equally light ones the cheapest.</summary>
    /// <param name="most">The most that it may cost, in the currency of the request.</param>
    /// <param name="progress">Told the best so far and the bound, early and often.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">The mass of the frame is not known, or the cap is in another currency.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceResult LightestUnder(Price most, IProgress<ChoiceProgress>? progress = null, CancellationToken cancellation = default)
    {
        if (!most.IsPrice || (HasPrices && most.Currency != _currency))
        {
            throw new ArgumentException($"the cap is in {most.Currency}, the prices are in {_currency}", nameof(most));
        }

        return Capped(true, most.Steps, progress, cancellation);
    }

    /// <summary>
    /// The front of price and mass, from the cheapest build to the lightest: to each there is none that is cheaper and not heavier, or lighter and not dearer. <see cref="ChoiceStatus.Optimal"/>
    /// where that is the whole front; a bound where there are more points than were asked for, and then those that are given are its first, each exact.
    /// </summary>
    /// <param name="most">The most builds, 1 to 1,000.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">The mass of the frame is not known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is out of range.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceResult Front(int most, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(most, MostBuilds);
        ChoicePlan plan = PlanOf(true, cancellation);
        if (plan.Scaled is not { } scaled)
        {
            return None(0, 0);
        }

        ImmutableArray<ChosenBuild>.Builder builds = ImmutableArray.CreateBuilder<ChosenBuild>();
        long cap = scaled.Network.MostMass;
        while (true)
        {
            ChoiceCapped next = ChoiceCap.Of(scaled.Network, false, cap, null, cancellation);
            if (!next.IsPossible || builds.Count == most || !next.IsExact)
            {
                bool whole = !next.IsPossible;
                return builds.Count == 0 && whole ? None(0, 0)
                    : new(whole ? ChoiceStatus.Optimal : ChoiceStatus.Bound, builds.ToImmutable(), builds.Count > 0 ? builds[0].Price : PriceOf(next.Bound * scaled.PerPrice), null, 0, 0);
            }

            builds.Add(Checked(plan, next.Chosen!, true));
            cap = scaled.Network.Cost(next.Chosen!).Mass - 1;
        }
    }

    private bool HasPrices => Request.Offers.Any(o => o.Price is not null) || !Request.Bridges.IsEmpty;

    private ChoiceResult Capped(bool light, long cap, IProgress<ChoiceProgress>? progress, CancellationToken cancellation)
    {
        ChoicePlan plan = PlanOf(true, cancellation);
        if (plan.Scaled is not { } scaled || cap < 0)
        {
            return None(0, 0);
        }

        void Tell(long best, long bound) => progress?.Report(light
            ? new() { Mass = Mass.FromMilligrams(best * scaled.PerMass), MassBound = Mass.FromMilligrams(bound * scaled.PerMass) }
            : new() { Price = PriceOf(best * scaled.PerPrice), PriceBound = PriceOf(bound * scaled.PerPrice) });

        ChoiceCapped found = ChoiceCap.Of(scaled.Network, light, cap / (light ? scaled.PerPrice : scaled.PerMass), Tell, cancellation);
        if (!found.IsPossible)
        {
            return None(0, 0);
        }

        ImmutableArray<ChosenBuild> builds = found.Chosen is null ? [] : [Checked(plan, found.Chosen, true)];
        if (builds is [var best] && found.IsExact)
        {
            Tell(light ? ChoicePrices.Milligrams(best.Mass!.Value, "it") / scaled.PerMass : best.Price.Steps / scaled.PerPrice, found.Bound);
        }

        return new(
            found.IsExact ? ChoiceStatus.Optimal : ChoiceStatus.Bound, builds,
            light ? null : PriceOf(found.Bound * scaled.PerPrice), light ? Mass.FromMilligrams(found.Bound * scaled.PerMass) : null, 0, 0);
    }
}
