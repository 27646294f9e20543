using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Planning;

/// <content>Under a cap, and the front of price and mass.</content>
public sealed partial class BuildChooser
{
    /// <summary>The cheapest build that fits and weighs no more than a cap; of equally cheap ones the lightest. The cap is of all parts and bridges, owned parts and frame too; what has no mass is not chosen.</summary>
    /// <param name="most">The most that it may weigh.</param>
    /// <param name="progress">Told the best so far and the bound, early and often.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <exception cref="ArgumentException">The mass of the frame is not known, or the cap is none.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceResult CheapestUnder(Mass most, IProgress<ChoiceProgress>? progress = null, CancellationToken cancellationToken = default) =>
        Capped(false, ChoicePrices.Milligrams(most, "the cap"), progress, cancellationToken);

    /// <summary>The lightest build that fits and costs no more than a cap; of equally light ones the cheapest.</summary>
    /// <param name="most">The most that it may cost, in the currency of the request.</param>
    /// <param name="progress">Told the best so far and the bound, early and often.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <exception cref="ArgumentException">The mass of the frame is not known, or the cap is in another currency.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceResult LightestUnder(Price most, IProgress<ChoiceProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        if (!most.IsPrice || (HasPrices && most.Currency != _currency))
        {
            throw new ArgumentException($"the cap is in {most.Currency}, the prices are in {_currency}", nameof(most));
        }

        return Capped(true, most.Steps, progress, cancellationToken);
    }

    /// <summary>
    /// The front of price and mass, from the cheapest build to the lightest: to each there is none that is cheaper and not heavier, or lighter and not dearer. The first, which is
    /// <see cref="ChoiceResult.Best"/> too, is the cheapest, and of equally cheap ones the lightest; the last of a whole front is the lightest. <see cref="ChoiceStatus.Optimal"/> where that is the whole
    /// front; a bound where there are more points than were asked for, and then those that are given are its first, each exact. Where not even the first is exact, the best that was found is given alone, as a bound.
    /// </summary>
    /// <param name="count">How many builds are given at most, 1 to 1,000.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <exception cref="ArgumentException">The mass of the frame is not known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is out of range.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceResult PriceMassFront(int count, CancellationToken cancellationToken = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, MostBuilds);
        ChoicePlan plan = PlanOf(true, cancellationToken);
        if (plan.Scaled is not { } scaled)
        {
            return None(plan);
        }

        ImmutableArray<ChosenBuild>.Builder builds = ImmutableArray.CreateBuilder<ChosenBuild>();
        long cap = scaled.Network.MostMass;
        while (true)
        {
            ChoiceCapped next = ChoiceCap.Of(scaled.Network, false, cap, null, cancellationToken);
            if (!next.IsPossible || builds.Count == count || !next.IsExact)
            {
                bool whole = !next.IsPossible;
                if (builds.Count == 0 && next.Chosen is { } found)
                {
                    builds.Add(Checked(plan, found, true));
                }

                return builds.Count == 0 && whole ? None(plan) : new()
                {
                    LeftOut = plan.LeftOut,
                    LargestClique = next.LargestClique,
                    LargestTable = next.LargestTable,
                    Status = whole ? ChoiceStatus.Optimal : ChoiceStatus.Bound,
                    Builds = builds.ToImmutable(),
                    Bound = builds.Count > 0 && cap < scaled.Network.MostMass ? builds[0].Price : PriceOf(next.Bound * scaled.PerPrice),
                };
            }

            builds.Add(Checked(plan, next.Chosen!, true));
            cap = scaled.Network.Cost(next.Chosen!).Mass - 1;
        }
    }

    private bool HasPrices => Request.Offers.Any(o => o.Price is not null) || !Request.Bridges.IsEmpty;

    private ChoiceResult Capped(bool light, long cap, IProgress<ChoiceProgress>? progress, CancellationToken cancellationToken)
    {
        ChoicePlan plan = PlanOf(true, cancellationToken);
        if (plan.Scaled is not { } scaled)
        {
            return None(plan);
        }

        void Tell(long best, long bound) => progress?.Report(light
            ? new() { Mass = Mass.FromMilligrams(best * scaled.PerMass), MassBound = Mass.FromMilligrams(bound * scaled.PerMass) }
            : new() { Price = PriceOf(best * scaled.PerPrice), PriceBound = PriceOf(bound * scaled.PerPrice) });

        // No sum is above all that there is, nor below nothing.
        long step = light ? scaled.PerPrice : scaled.PerMass;
        long steps = cap < 0 ? -1 : Math.Min(cap / step, light ? scaled.Network.MostPrice : scaled.Network.MostMass);
        ChoiceCapped found = ChoiceCap.Of(scaled.Network, light, steps, Tell, cancellationToken);
        if (found.LeastCapped is { } least)
        {
            return new()
            {
                Status = ChoiceStatus.CapTooLow,
                LeftOut = plan.LeftOut,
                Bound = light ? PriceOf(least * scaled.PerPrice) : null,
                MassBound = light ? null : Mass.FromMilligrams(least * scaled.PerMass),
                LargestClique = found.LargestClique,
                LargestTable = found.LargestTable,
            };
        }

        if (!found.IsPossible)
        {
            return None(plan);
        }

        ImmutableArray<ChosenBuild> builds = found.Chosen is null ? [] : [Checked(plan, found.Chosen, true)];
        if (builds is [var best] && found.IsExact)
        {
            Tell(light ? ChoicePrices.Milligrams(best.Mass!.Value, "it") / scaled.PerMass : best.Price.Steps / scaled.PerPrice, found.Bound);
        }

        return new()
        {
            LeftOut = plan.LeftOut,
            LargestClique = found.LargestClique,
            LargestTable = found.LargestTable,
            Status = found.IsExact ? ChoiceStatus.Optimal : ChoiceStatus.Bound,
            Builds = builds,
            Bound = light ? null : PriceOf(found.Bound * scaled.PerPrice),
            MassBound = light ? Mass.FromMilligrams(found.Bound * scaled.PerMass) : null,
        };
    }
}
