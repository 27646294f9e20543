using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <content>Why nothing fits.</content>
public sealed partial class BuildChooser
{
    /// <summary>Why nothing fits together; null where something does. Masses and caps do not count here. Where it could not be found out, an answer that says so (<see cref="ChoiceConflict.IsOpen"/>).</summary>
    /// <param name="cancellationToken">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceConflict? Conflict(CancellationToken cancellationToken = default)
    {
        ChoicePlan plan = PlanOf(false, cancellationToken);
        ChoiceModel model = plan.Model;
        if (model.NumberOf(Slot.Frame) < 0)
        {
            return new() { IsSmallest = true };
        }

        lock (_gate)
        {
            ChoiceReason reasons = new(model, ReasonSteps, cancellationToken);
            if (reasons.Find(out bool isOpen) is not { } found)
            {
                return isOpen ? new() { IsOpen = true } : null;
            }

            int rules = model.Rules.Count;
            ChoiceRule[] broken = [.. found.Reason.Where(n => n < rules).Select(n => model.Rules[n])];
            ImmutableArray<Joint> joints = [.. broken.OfType<ChoiceJointRule>().Select(r => r.Joint)];
            ImmutableArray<Slot> required = [.. broken.OfType<ChoiceNeedRule>().Select(r => r.Slot)];
            ImmutableArray<ChoiceTie> ties = [.. broken.OfType<ChoiceEntryRule>().Select(r => new ChoiceTie([.. r.Scope.Select(n => model.Slots[n])], r.Why))];
            ImmutableArray<ChoiceWish> wishes = [.. found.Reason.Where(n => n >= rules).Select(n => model.Wishes[n - rules].Wish)];
            Slot[] slots = [.. joints.SelectMany(j => j.Slots).Concat(required).Concat(ties.SelectMany(t => t.Slots)).Concat(wishes.Select(w => w.Slot)).Where(s => s != Slot.Frame && s != Slot.Rider).Distinct().OrderBy(s => s.Number)];
            return new()
            {
                Joints = joints,
                Wishes = wishes,
                Required = required,
                Ties = ties,
                LeftOut = [.. plan.LeftOut.Where(o => slots.Contains(o.Slot))],
                Remedies = [.. slots.Select(s => MendOf(s, joints, model, reasons, cancellationToken)).OfType<ChoiceRemedy>().OrderBy(m => m.Nearest is null ? int.MaxValue : m.Failures)],
                IsSmallest = found.IsSmallest,
            };
        }
    }

    /// <summary>How many steps each try of a conflict may take.</summary>
    internal long ReasonSteps { get; set; } = 100_000;

    /// <summary>Whether another part in a slot may do, whatever it is: then what it has to be, and the offer that comes nearest beside the rest that suits it best.</summary>
    private ChoiceRemedy? MendOf(Slot slot, ImmutableArray<Joint> joints, ChoiceModel model, ChoiceReason reasons, CancellationToken cancellationToken)
    {
        int number = model.NumberOf(slot);

        // The rest has to be met by itself; what its neighbours ask of the part, and what the part asks of the bicycle, is left open.
        bool[] active = [.. model.Rules.Select(r => r is ChoiceNeedRule need ? need.Slot != slot : !r.Scope.Contains(number)), .. model.Wishes.Select(w => w.Slot != number)];
        if (reasons.Meet(active, out _) is not { } groups)
        {
            return null;
        }

        Part?[] parts = [.. groups.Select((g, other) => model.Groups[other][g].Part)];
        ChoiceOffer? nearest = null;
        if (Nearest(slot, cancellationToken) is { } found)
        {
            (nearest, parts) = found;
        }

        Build rest = Request.Build;
        for (int other = 0; other < parts.Length; other++)
        {
            Slot own = model.Slots[other];
            Part? part = other == number ? null : parts[other];
            rest = own == Slot.Frame || ReferenceEquals(part, rest[own]) ? rest : part is null ? rest.Without(own) : rest.With(part, own);
        }

        Need? need = rest.Needs().Of(slot);
        need = need is null ? null : new(need.Slot, need.IsFilled, [.. need.Lines.Where(l => joints.Contains(l.Joint))]);
        if (nearest is null)
        {
            return new(slot, need, null, []);
        }

        Build tried = rest.With(nearest.Part, slot);
        FitReport report = tried.Check();
        return new(slot, need, nearest, [.. report.Findings.Where(f => f.Joint!.Slots.Contains(slot) && !IsMet(f.Joint, tried)).Select(f => f.Joint!)])
        {
            Lacks = report.Missing,
            Unmet = [.. Request.Wishes.Where(w => w.Slot == slot && !IsMet(w, nearest.Part))],
            IsOutside = !ChoiceEntries.IsJudged(slot, nearest.Part),
        };
    }

    /// <summary>The offer for a slot of which the least is not met, whatever its price, with the best rest beside it; null where there is none or it could not be found out.</summary>
    private (ChoiceOffer Offer, Part?[] Parts)? Nearest(Slot slot, CancellationToken cancellationToken)
    {
        IReadOnlyList<ChoiceEntry>[] entries = [.. ChoiceEntries.Of(Request, false).BySlot.Select(list => (IReadOnlyList<ChoiceEntry>)[.. list.Select(e => e with { Price = 0 })])];
        entries[slot.Number] = [.. Request.Offers.Where(o => o.Slot == slot).Select(o => new ChoiceEntry(o, Request.Wishes.Count(w => w.Slot == slot && !IsMet(w, o.Part)) + (ChoiceEntries.IsJudged(slot, o.Part) ? 0 : 1), 0))];
        if (entries[slot.Number].Count == 0)
        {
            return null;
        }

        ChoiceModel model = ChoiceModel.Of(Request.Build, entries, [.. Request.Wishes.Where(w => w.Slot != slot)], _prices, null, cancellationToken);
        model.Count(model.NumberOf(slot));
        if (ChoiceReducer.Of(model, false, cancellationToken: cancellationToken) is not { } network)
        {
            return null;
        }

        ChoiceSearch search = new(network, new(network, ChoiceWeights.Price, cancellationToken), ChoiceWeights.Price, cancellationToken);
        if (search.Next(ReasonSteps) is not { } best)
        {
            return null;
        }

        ChoiceEntry[] chosen = [.. best.Chosen.Select((c, own) => model.Entries[own][network.States[own][c.State].Entry[c.Rank]])];
        return (chosen[model.NumberOf(slot)].Offer!, [.. chosen.Select(c => c.Part)]);
    }

    private bool IsMet(ChoiceWish wish, Part part) => wish.Keeps ? ReferenceEquals(part, Request.Build[wish.Slot]) : wish.IsMetBy(part);

    private bool IsMet(Joint joint, Build build)
    {
        CandidateRow row = default;
        return joint.TryRead(build, ref row) && _prices.Of(joint, row).Price < ChoiceEntry.Never;
    }
}
