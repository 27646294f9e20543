using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>Takes the parts of a donor one after the other.</summary>
internal sealed class CarrySteps
{
    private readonly Build _donor;
    private readonly Build _onto;
    private readonly CarryStep?[] _steps = new CarryStep?[Slot.All.Length];
    private Build _moved;

    private CarrySteps(Build donor, Build onto) => (_donor, _onto, _moved) = (donor, onto, onto);

    public static CarryOver Run(Build donor, Build onto, CancellationToken cancel)
    {
        CarrySteps steps = new(donor, onto);
        foreach (Slot slot in Slot.All)
        {
            cancel.ThrowIfCancellationRequested();
            if (slot != Slot.Frame && slot != Slot.Rider && donor[slot] is { } part)
            {
                steps._steps[slot.Number] = steps.Home(part, slot);
            }
        }

        // What no bicycle has to have waits for what it meets, such as a shifter for its derailleur.
        for (bool again = true; again;)
        {
            again = false;
            foreach (CarryStep idle in steps._steps.OfType<CarryStep>().Where(s => s.IsIdle))
            {
                cancel.ThrowIfCancellationRequested();
                CarryStep anew = steps.Home(idle.Part, idle.From);
                steps._steps[idle.From.Number] = anew;
                again |= anew.Plan == CarryPlan.Moves;
            }
        }

        foreach (Slot slot in Slot.All)
        {
            cancel.ThrowIfCancellationRequested();
            if (steps._steps[slot.Number] is { Plan: not CarryPlan.Moves } step)
            {
                steps._steps[slot.Number] = steps.Elsewhere(step);
            }
        }

        Build moved = steps._moved;
        return new(donor, onto, moved, [.. steps._steps.OfType<CarryStep>().Select(s => s.Told(moved, onto))]);
    }

    /// <summary>To the place that it has on the donor.</summary>
    private CarryStep Home(Part part, Slot slot)
    {
        CarryJudgement alone = CarryJudgement.Of(_onto.With(part, slot), slot);
        ImmutableArray<CarryPlace> places = [Place(alone), .. part.Places.Where(p => p != slot).Select(p => Place(CarryJudgement.Of(_onto.With(part, p), p)))];
        CarryStep Step(CarryPlan plan, CarryJudgement judged) => new(part, slot, plan, judged, places);
        if (_onto[slot] is not null)
        {
            return Step(CarryPlan.Spare, alone);
        }

        if (!IsAsked(slot))
        {
            return Step(CarryPlan.NotAsked, alone);
        }

        if (alone.IsRefused)
        {
            return Step(CarryPlan.Stays, alone);
        }

        CarryJudgement together = CarryJudgement.Of(_moved.With(part, slot), slot);
        return IsIdle(together) ? Step(CarryPlan.Stays, together) with { IsIdle = true } : Step(Take(part, together), together);
    }

    /// <summary>To another place that is empty, only where it fits there.</summary>
    private CarryStep Elsewhere(CarryStep step)
    {
        foreach (CarryPlace place in step.Places.Skip(1).Where(p => p.Verdict is Verdict.Fits or Verdict.NeedsPart && _moved[p.Slot] is null && IsAsked(p.Slot)))
        {
            CarryJudgement together = CarryJudgement.Of(_moved.With(step.Part, place.Slot), place.Slot);
            if (together.Goes)
            {
                return step with { Plan = Take(step.Part, together), Judged = together, IsIdle = false };
            }
        }

        return step;
    }

    private CarryPlan Take(Part part, CarryJudgement judged)
    {
        if (judged.IsRefused)
        {
            return CarryPlan.Stays;
        }

        _moved = _moved.With(part, judged.Slot);
        return CarryPlan.Moves;
    }

    private bool IsAsked(Slot slot) => slot.IsOptional || CarryNeeds.Required(_moved).Contains(slot);

    /// <summary>What no bicycle has to have goes only with what it meets; a dropper is its seatpost.</summary>
    private bool IsIdle(CarryJudgement judged) =>
        judged.Slot.IsOptional && (judged.Verdict == Verdict.NotJudged || (judged.Slot == Slot.Dropper && _moved[Slot.Seatpost] != _donor[Slot.Seatpost]));

    private static CarryPlace Place(CarryJudgement judged) => new(judged.Slot, judged.Verdict, judged.Fits.IsEmpty ? default : judged.Fits.MaxBy(f => f.Verdict));
}

/// <summary>One part, as far as it was taken.</summary>
internal sealed record CarryStep(Part Part, Slot From, CarryPlan Plan, CarryJudgement Judged, ImmutableArray<CarryPlace> Places)
{
    /// <summary>It stays only because nothing that it meets is there yet.</summary>
    public bool IsIdle { get; init; }

    public CarriedPart Told(Build moved, Build onto)
    {
        bool[] required = new bool[Slot.All.Length];
        foreach (Slot slot in CarryNeeds.Required(moved))
        {
            required[slot.Number] = true;
        }

        Slot[] met = [.. JointTable.All.Where(j => !j.IsOnlyWhereLooked && j.Slots.Contains(Judged.Slot)).SelectMany(j => j.Slots).Distinct().Where(s => s != Judged.Slot).OrderBy(s => s.Number)];
        return new(Part, From, Plan, Judged, Places)
        {
            Together = Plan != CarryPlan.Moves ? [] : [.. met.Where(s => moved[s] is not null && onto[s] is null)],
            Follows = [.. met.Where(s => moved[s] is null && required[s.Number])],
        };
    }
}

/// <summary>What a bicycle asks for.</summary>
internal static class CarryNeeds
{
    public static ImmutableArray<Slot> Required(Build build) =>
        BicycleKind.Required(build.Frame, build[Slot.Fork] as Fork, build[Slot.FrontWheel] as Wheel, build[Slot.RearWheel] as Wheel);
}
