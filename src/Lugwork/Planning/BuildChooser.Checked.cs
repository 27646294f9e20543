using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Planning;

/// <content>From numbers back to parts, and the check that nothing leaves without.</content>
public sealed partial class BuildChooser
{
    private ChosenBuild Checked(ChoicePlan plan, (int State, int Rank)[] chosen, bool masses)
    {
        ChoiceModel model = plan.Model;
        ChoiceNetwork network = plan.Network!;
        Build build = Request.Build;
        ImmutableArray<ChoiceOffer>.Builder parts = ImmutableArray.CreateBuilder<ChoiceOffer>();
        (long Price, long Mass) told = network.Cost(chosen);
        (long Price, long Mass) found = default;
        for (int slot = 0; slot < chosen.Length; slot++)
        {
            ChoiceState state = network.States[slot][chosen[slot].State];
            ChoiceEntry entry = model.Entries[slot][state.Entry[chosen[slot].Rank]];
            Slot own = model.Slots[slot];
            found = (found.Price + entry.Price, found.Mass + entry.Mass);
            if (entry.Offer is { } offer)
            {
                if (own != Slot.Rider)
                {
                    parts.Add(offer);
                }

                build = ReferenceEquals(build[own], offer.Part) ? build : build.With(offer.Part, own);
            }
            else if (build[own] is not null)
            {
                build = build.Without(own);
            }
        }

        FitReport report = build.Check();
        ChoicePrices prices = masses ? _weighedPrices : _prices;
        ImmutableArray<ChosenBridge> bridges = [.. ChosenBridges(build, report.Findings, prices)];
        foreach (Fit fit in report.Findings.Where(f => f.Verdict == Verdict.NeedsPart))
        {
            (long price, long mass) = prices.Of(fit.Joint!, Row(fit.Joint!, build));
            found = (found.Price + price, found.Mass + mass);
        }

        Verdict worst = Request.AllowsMeasuring ? Verdict.NeedsMeasuring : Verdict.NeedsPart;
        if (!report.IsComplete || report.Verdict > worst || report.Verdict == Verdict.NotJudged || told.Price != found.Price || (masses && told.Mass != found.Mass))
        {
            throw new InvalidOperationException($"A fault of the library: a chosen build does not pass its check, or costs {found} where {told} was reckoned. {report}");
        }

        ImmutableArray<ChoiceOffer> leftOff = [.. Slot.All.Where(s => s != Slot.Frame && Request.Build[s] is { } part && !ReferenceEquals(part, build[s])).Select(s => ChoiceEntries.Owned(Request, s)!)];
        return new(build, parts.ToImmutable(), bridges, leftOff, PriceOf(found.Price), masses ? Mass.FromMilligrams(found.Mass) : null, report);
    }

    private static CandidateRow Row(Joint joint, Build build)
    {
        CandidateRow row = default;
        joint.TryRead(build, ref row);
        return row;
    }

    private IEnumerable<ChosenBridge> ChosenBridges(Build build, IEnumerable<Fit> fits, ChoicePrices prices)
    {
        foreach (Fit fit in fits)
        {
            if (fit.Verdict == Verdict.NeedsPart)
            {
                foreach (Bridge bridge in prices.BridgesOf(fit.Joint!, Row(fit.Joint!, build)))
                {
                    yield return new(fit.Joint!, bridge, prices.IsPriced(fit.Joint!, bridge) ? PriceOf(prices.Of(fit.Joint!, bridge).Price) : null);
                }
            }
        }
    }
}
