using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <content>Why nothing fits.</content>
public sealed partial class BuildChooser
{
    /// <summary>Why nothing fits together; null where something does. Masses and caps do not count here.</summary>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChoiceConflict? Conflict(CancellationToken cancellation = default)
    {
        ChoiceModel model = PlanOf(false, cancellation).Model;
        if (model.NumberOf(Slot.Frame) < 0)
        {
            return new([], [], [], [], [], true);
        }

        lock (_gate)
        {
            ChoiceReason reasons = new(model, cancellation);
            if (reasons.Find() is not { } found)
            {
                return null;
            }

            int rules = model.Rules.Count;
            ImmutableArray<Joint> joints = [.. found.Reason.Where(n => n < rules).Select(n => model.Rules[n]).OfType<ChoiceJointRule>().Select(r => r.Joint)];
            ImmutableArray<Slot> required = [.. found.Reason.Where(n => n < rules).Select(n => model.Rules[n]).OfType<ChoiceNeedRule>().Select(r => r.Slot)];
            ImmutableArray<ChoiceWish> wishes = [.. found.Reason.Where(n => n >= rules).Select(n => model.Wishes[n - rules].Wish)];
            Slot[] slots = [.. joints.SelectMany(j => j.Slots).Concat(required).Concat(wishes.Select(w => w.Slot)).Where(s => s != Slot.Frame && s != Slot.Rider).Distinct().OrderBy(s => s.Number)];
            ImmutableArray<ChoiceOffer> leftOut = [.. Request.Offers.Where(o => slots.Contains(o.Slot) && !model.Entries[model.NumberOf(o.Slot)].Exists(e => ReferenceEquals(e.Offer, o)))];
            ImmutableArray<ChoiceMend> mends = [.. slots.Select(s => MendOf(s, joints, model, reasons)).OfType<ChoiceMend>().OrderBy(m => m.Nearest is null ? int.MaxValue : m.Fails.Length)];
            return new(joints, wishes, required, leftOut, mends, found.IsSmallest);
        }
    }

    /// <summary>Whether another part in a slot would do, whatever it is: then what it has to be, and the offer that comes nearest.</summary>
    private ChoiceMend? MendOf(Slot slot, ImmutableArray<Joint> joints, ChoiceModel model, ChoiceReason reasons)
    {
        int number = model.NumberOf(slot);
        bool[] active = [.. model.Rules.Select(r => !r.Scope.Contains(number)), .. model.Wishes.Select(w => w.Slot != number)];
        if (reasons.Meet(active, out _) is not { } groups)
        {
            return null;
        }

        Build rest = Request.Build;
        for (int other = 0; other < groups.Length; other++)
        {
            Slot own = model.Slots[other];
            Part? part = other == number ? null : model.Groups[other][groups[other]].Part;
            rest = own == Slot.Frame || ReferenceEquals(part, rest[own]) ? rest : part is null ? rest.Without(own) : rest.With(part, own);
        }

        ChoiceOffer? nearest = null;
        ImmutableArray<Joint> fails = [];
        foreach (ChoiceOffer offer in Request.Offers)
        {
            if (offer.Slot != slot)
            {
                continue;
            }

            Build tried = rest.With(offer.Part, slot);
            ImmutableArray<Joint> own = [.. tried.Check().Fits.Where(f => f.Joint!.Slots.Contains(slot) && !IsMet(f.Joint, tried)).Select(f => f.Joint!)];
            if (nearest is null || own.Length < fails.Length)
            {
                (nearest, fails) = (offer, own);
            }
        }

        Need? need = rest.Needs().Of(slot);
        return new(slot, need is null ? null : need with { Lines = [.. need.Lines.Where(l => joints.Contains(l.Joint))] }, nearest, fails);
    }

    private bool IsMet(Joint joint, Build build)
    {
        CandidateRow row = default;
        return joint.TryRead(build, ref row) && _prices.Of(joint, row).Price < ChoiceEntry.Never;
    }
}
