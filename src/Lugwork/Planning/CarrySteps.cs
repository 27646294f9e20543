using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>Takes the parts of a donor one after the other.</summary>
internal sealed class CarrySteps
{
    private readonly Build _donor;
    private readonly Build _onto;
    private readonly CarryStep?[] _steps = new CarryStep?[Slot.All.Length];
    private Build _moved;

    // What was read on the donor is not known of the new bicycle.
    private CarrySteps(Build donor, Build onto) => (_donor, _onto, _moved) = (donor.WithoutReadings(), onto, onto);

    public static CarryOver Run(Build donor, Build onto, CancellationToken cancellationToken)
    {
        // The limits of the new bicycle are those under its rider, who is the donor's where no other is named.
        Build ridden = onto[Slot.Rider] is null && donor[Slot.Rider] is { } rider ? onto.With(rider, Slot.Rider) : onto;
        CarrySteps steps = new(donor, ridden);
        foreach (Slot slot in Slot.All)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (slot != Slot.Frame && slot != Slot.Rider && steps._donor[slot] is { } part && OneArticle.HostsOf(slot, donor).IsEmpty)
            {
                steps.Set(steps.Home(part, slot));
            }
        }

        // What no bicycle has to have waits for what it meets, such as a shifter for its derailleur; and what went elsewhere may be it.
        for (bool again = true; again;)
        {
            while (steps.Again(cancellationToken))
            {
            }

            again = false;
            foreach (Slot slot in Slot.All)
            {
                cancellationToken.ThrowIfCancellationRequested();
                if (steps._steps[slot.Number] is { Plan: not CarryDecision.Moves } step)
                {
                    steps._steps[slot.Number] = steps.Elsewhere(step);
                    again |= steps._steps[slot.Number]!.Plan == CarryDecision.Moves;
                }
            }
        }

        foreach ((Slot companion, ImmutableArray<Slot> _) in OneArticle.All)
        {
            if (!OneArticle.HostsOf(companion, donor).IsEmpty)
            {
                steps._steps[companion.Number] = steps.Along(companion);
            }
        }

        Build moved = steps.WithSmallParts();
        return new(donor, ridden, moved, [.. steps._steps.OfType<CarryStep>().Select(s => s.Told(moved, ridden))]);
    }

    private void Set(CarryStep step) => _steps[step.From.Number] = step;

    /// <summary>Tries those again that met nothing.</summary>
    private bool Again(CancellationToken cancellationToken)
    {
        bool again = false;
        foreach (CarryStep idle in _steps.OfType<CarryStep>().Where(s => s.IsIdle).ToArray())
        {
            cancellationToken.ThrowIfCancellationRequested();
            CarryStep anew = Home(idle.Part, idle.From);
            Set(anew);
            again |= anew.Plan == CarryDecision.Moves;
        }

        return again;
    }

    /// <summary>The donor's part that is one article with the part of a slot, where the new build has none in its place.</summary>
    private Slot? Companion(Slot host) => OneArticle.CompanionOf(host) is { } companion && _donor[companion] is not null && _onto[companion] is null ? companion : null;

    /// <summary>A part on a build, judged with what it is one article with.</summary>
    private CarryJudgement Judge(Build build, Part part, Slot slot)
    {
        Build with = build.With(part, slot);
        if (Companion(slot) is not { } companion)
        {
            return CarryJudgement.Of(with, slot);
        }

        with = with.With(_donor[companion]!, companion);
        return CarryJudgement.Of(with, slot).With(CarryJudgement.Of(with, companion));
    }

    /// <summary>To the place that it has on the donor.</summary>
    private CarryStep Home(Part part, Slot slot)
    {
        CarryJudgement alone = Judge(_onto, part, slot);
        ImmutableArray<CarryPlace> places = [Place(alone), .. part.Places.Where(p => p != slot).Select(p => Place(CarryJudgement.Of(_onto.With(part, p), p)))];
        CarryStep Step(CarryDecision plan, CarryJudgement judged) => new(part, slot, plan, judged, places);
        if (_onto[slot] is not null)
        {
            return Step(CarryDecision.Spare, alone);
        }

        if (!IsAsked(slot))
        {
            return Step(CarryDecision.NotAsked, alone);
        }

        if (alone.IsRefused || IsApart(slot))
        {
            return Step(CarryDecision.Stays, alone);
        }

        CarryJudgement together = Judge(_moved, part, slot);
        return together.Slot.IsOptional && together.Verdict == Verdict.NotJudged ? Step(CarryDecision.Stays, together) with { IsIdle = true } : Step(Take(part, together), together);
    }

    /// <summary>To another place that is empty, only where it fits there.</summary>
    private CarryStep Elsewhere(CarryStep step)
    {
        foreach (CarryPlace place in step.Places.Skip(1).Where(p => p.Verdict is Verdict.Fits or Verdict.NeedsPart && _moved[p.Slot] is null && IsAsked(p.Slot)))
        {
            CarryJudgement together = Judge(_moved, step.Part, place.Slot);
            if (together.Goes)
            {
                return step with { Plan = Take(step.Part, together), Judged = together, IsIdle = false };
            }
        }

        return step;
    }

    /// <summary>What is one article with parts that moved moves; else it stays with them.</summary>
    private CarryStep Along(Slot companion)
    {
        Part part = _donor[companion]!;
        bool moves = ReferenceEquals(_moved[companion], part) && _onto[companion] is null;
        CarryJudgement alone = CarryJudgement.Of(_onto.With(part, companion), companion);
        CarryStep? host = moves ? null : OneArticle.HostsOf(companion, _donor).Select(h => _steps[h.Number]).OfType<CarryStep>().MaxBy(s => s.Judged.Verdict);
        CarryJudgement judged = moves ? CarryJudgement.Of(_moved, companion) : host is null ? alone : alone.With(host.Judged);
        return new(part, companion, moves ? CarryDecision.Moves : _onto[companion] is not null || host is { Plan: CarryDecision.Spare } ? CarryDecision.Spare : CarryDecision.Stays, judged, [Place(alone)]);
    }

    private CarryDecision Take(Part part, CarryJudgement judged)
    {
        if (judged.IsRefused)
        {
            return CarryDecision.Stays;
        }

        Slot? companion = Companion(judged.Slot);
        _moved = _moved.With(part, judged.Slot);
        _moved = companion is not null ? _moved.With(_donor[companion]!, companion) : _moved;

        // What was measured on the part and cut moves with it.
        Slot from = Slot.All.First(s => ReferenceEquals(_donor[s], part));
        _moved = _moved.Bringing(_donor.AsBuilt.Where(v => v.Slot == from || v.Slot == companion).Select(v => v.Slot == from ? v with { Slot = judged.Slot } : v));
        return CarryDecision.Moves;
    }

    /// <summary>Shims and adapters of the donor that a part which moved still asks for.</summary>
    private Build WithSmallParts()
    {
        Build moved = _moved;
        foreach (string id in _donor.SmallPartsThere)
        {
            bool went = id.IndexOf(':', StringComparison.Ordinal) is > 0 and int colon && Waiver.JointOf(id[..colon]) is { } joint
                && joint.Slots.Any(s => s != Slot.Frame && _donor[s] is { } part && ReferenceEquals(_moved[s], part));
            moved = went && moved.SmallParts().FirstOrDefault(p => p.Id == id) is { } asked && _donor.HasSmallPart(id, asked.What) ? moved.WithSmallPart(id) : moved;
        }

        return moved;
    }

    private bool IsAsked(Slot slot) => slot.IsOptional || CarryNeeds.Required(_moved).Contains(slot);

    /// <summary>A dropper of which the seatpost is not described does not go into another one.</summary>
    private bool IsApart(Slot slot) => OneArticle.All.Any(a => a.Companion == slot && a.Companion == Slot.Dropper && a.Hosts.Any(h => _moved[h] is not null));

    private static CarryPlace Place(CarryJudgement judged) => new(judged.Slot, judged.Verdict, judged.Findings.IsEmpty ? default : judged.Findings.MaxBy(f => f.Verdict));
}

/// <summary>One part, as far as it was taken.</summary>
internal sealed record CarryStep(Part Part, Slot From, CarryDecision Plan, CarryJudgement Judged, ImmutableArray<CarryPlace> Places)
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
            Together = Plan != CarryDecision.Moves ? [] : [.. met.Where(s => moved[s] is not null && onto[s] is null)],
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
