using Google.OrTools.Sat;
using Lugwork.Planning;
using Lugwork.Tests.Planning;

namespace Lugwork.Oracles;

/// <summary>
/// A request as a model of CP-SAT, made from the joints and the parts alone: a variable for every part of every slot, a clause for every combination that a joint refuses, a price for every one
/// that needs a bridge. Nothing of the planner is used.
/// </summary>
internal sealed class SolverModel
{
    private readonly CpModel _model = new();
    private readonly ChoiceRequest _request;
    private readonly Dictionary<Slot, List<Choice>> _choices = [];
    private readonly bool _masses;
    private readonly List<(LinearExpr Term, long Price, long Mass)> _costs = [];

    private SolverModel(ChoiceRequest request, bool masses)
    {
        _request = request;
        _masses = masses;
    }

    /// <summary>One thing that a slot can hold.</summary>
    private sealed record Choice(Part? Part, ChoiceOffer? Offer, bool IsOwned, long Price, long Mass, BoolVar Chosen);

    /// <summary>What the solver found.</summary>
    /// <param name="Price">The least price in ten-thousandths; null where nothing fits.</param>
    /// <param name="Clauses">How many clauses and priced combinations the model has.</param>
    public sealed record Answer(long? Price, int Clauses);

    /// <summary>The least price.</summary>
    /// <param name="request">The request.</param>
    /// <param name="systemChecks">Joints over three slots or more count; else they are left out.</param>
    /// <param name="mostMass">A cap in milligrams; none where left out.</param>
    public static Answer Solve(ChoiceRequest request, bool systemChecks = true, long? mostMass = null)
    {
        SolverModel model = new(request, mostMass is not null);
        model.AddChoices();
        foreach (Joint joint in JointTable.All.Where(j => systemChecks || j.Slots.Length <= 2))
        {
            model.Add(joint);
        }

        model.AddRequired();
        model.AddArticles();
        return model.Solve(mostMass);
    }

    private void AddChoices()
    {
        foreach (Slot slot in Slot.All)
        {
            Part? owned = _request.Build[slot];
            bool kept = slot == Slot.Frame || _request.Wishes.Any(w => w.Slot == slot && w.Name == $"keep the {slot.Name}");
            List<(Part? Part, ChoiceOffer? Offer, bool IsOwned, long Price, long Mass)> all = [];
            if (owned is not null)
            {
                all.Add((owned, null, true, 0, Milligrams(_request.OwnedMasses.TryGetValue(slot, out UnitsNet.Mass mass) ? mass : null)));
            }

            if (slot == Slot.Rider)
            {
                all = owned is null ? [(null, null, false, 0, 0)] : all;
            }
            else if (!kept)
            {
                all.Add((null, null, false, 0, 0));
                all.AddRange(_request.Offers.Where(o => o.Slot == slot && (o.IsOwned || o.Price is not null) && (!_masses || o.Mass is not null))
                    .Select(o => ((Part?)o.Part, (ChoiceOffer?)o, false, o.IsOwned ? 0 : (long)(o.Price!.Value.Amount * 10_000), Milligrams(o.Mass))));
            }

            all.RemoveAll(c => _request.Wishes.Any(w => w.Slot == slot && (c.Part is null || !w.IsMetBy(c.Part))));
            _choices[slot] = [.. all.Select((c, i) => new Choice(c.Part, c.Offer, c.IsOwned, c.Price, c.Mass, _model.NewBoolVar($"{slot.Key}{i}")))];
            _model.AddExactlyOne(_choices[slot].Select(c => c.Chosen));
            foreach (Choice choice in _choices[slot])
            {
                _costs.Add((choice.Chosen, choice.Price, choice.Mass));
            }
        }
    }

    /// <summary>What is there once, articles over several slots, and owned parts that are one article.</summary>
    private void AddArticles()
    {
        (Slot Slot, Choice Choice)[] all = [.. _choices.SelectMany(p => p.Value.Select(c => (p.Key, c)))];
        foreach (IGrouping<string, Choice> item in all.Where(c => ItemOf(c.Slot, c.Choice) is not null).GroupBy(c => ItemOf(c.Slot, c.Choice)!, c => c.Choice))
        {
            _model.AddAtMostOne(item.Select(c => c.Chosen));
        }

        foreach (IGrouping<string, ChoiceOffer> article in _request.Offers.Where(o => o.Article is not null).GroupBy(o => o.Article!))
        {
            LinearExpr[] sums = [.. article.Select(o => o.Slot).Distinct().Select(s => LinearExpr.Sum(_choices[s].Where(c => c.Offer?.Article == article.Key).Select(c => c.Chosen)))];
            foreach (LinearExpr sum in sums.Skip(1))
            {
                _model.Add(sum == sums[0]);
            }
        }

        Tie(Slot.Dropper, Slot.Seatpost);
        Tie(Slot.Controls, Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter);
    }

    private string? ItemOf(Slot slot, Choice choice) => choice.IsOwned ? _request.OwnedItems.GetValueOrDefault(slot) : choice.Offer?.Item;

    private void Tie(Slot companion, params Slot[] hosts)
    {
        Slot[] there = [.. hosts.Where(h => _request.Build[h] is not null)];
        if (_request.Build[companion] is null || there.Length == 0)
        {
            return;
        }

        BoolVar[] Owned(Slot slot) => [.. _choices[slot].Where(c => c.Part is not null && ReferenceEquals(c.Part, _request.Build[slot])).Select(c => c.Chosen)];
        BoolVar[] companions = Owned(companion);
        foreach (BoolVar host in there.SelectMany(Owned))
        {
            _model.AddBoolOr(companions.Select(c => (ILiteral)c).Append(host.Not()));
        }

        foreach (BoolVar own in companions)
        {
            _model.AddBoolOr(there.SelectMany(Owned).Select(h => (ILiteral)h).Append(own.Not()));
        }
    }

    private static long Milligrams(UnitsNet.Mass? mass) => (long)Math.Round(mass?.Milligrams ?? 0);

    private int _clauses;

    /// <summary>Every combination of parts that a joint meets.</summary>
    private void Add(Joint joint)
    {
        int own = joint.Slots.Length;
        Slot[] slots = [.. joint.Slots, .. joint.GivesWay.Select(g => g.Slot).Where(s => _choices[s].Count > 0)];
        foreach ((Choice[] combination, Few parts) in Combinations(slots))
        {
            if (combination.Take(own).Any(c => c.Part is null) || !joint.IsFilled(parts))
            {
                continue;
            }

            Verdict verdict = joint.Judge(parts);
            if (verdict == Verdict.Fits)
            {
                continue;
            }

            if (verdict == Verdict.NeedsMeasuring && _request.AllowsMeasuring)
            {
                continue;
            }

            (long Price, long Mass)? needed = verdict == Verdict.NeedsPart ? BridgeSums.Of(joint, Account.Of(joint, parts, verdict), _request, _masses) : null;
            ILiteral[] chosen = [.. combination.Select(c => c.Chosen)];
            _clauses++;
            if (needed is not { } sum)
            {
                _model.AddBoolOr(chosen.Select(c => c.Not()));
                continue;
            }

            BoolVar priced = _model.NewBoolVar("");
            _model.AddBoolOr(chosen.Select(c => c.Not()).Append(priced));
            foreach (ILiteral one in chosen)
            {
                _model.AddImplication(priced, one);
            }

            _costs.Add((priced, sum.Price, sum.Mass));
        }
    }

    private void AddRequired()
    {
        foreach ((Choice[] combination, _) in Combinations([Slot.Fork, Slot.FrontWheel, Slot.RearWheel]))
        {
            foreach (Slot slot in BicycleKind.Required(_request.Build.Frame, combination[0].Part as Fork, combination[1].Part as Wheel, combination[2].Part as Wheel))
            {
                _model.AddBoolOr(combination.Select(c => c.Chosen.Not()).Concat(_choices[slot].Where(c => c.Part is not null).Select(c => (ILiteral)c.Chosen)));
            }
        }

        foreach ((Slot slot, List<Choice> choices) in _choices)
        {
            foreach (Choice choice in choices.Where(c => c.Part is not null && UnjudgedFields.Asked(new Few(new() { [slot] = c.Part })) is not null))
            {
                _model.AddBoolOr([choice.Chosen.Not()]);
            }
        }
    }

    private IEnumerable<(Choice[] Combination, Few Parts)> Combinations(Slot[] slots)
    {
        if (Array.Exists(slots, s => _choices[s].Count == 0))
        {
            yield break;
        }

        int[] at = new int[slots.Length];
        int place = 0;
        while (place >= 0)
        {
            Choice[] combination = [.. slots.Select((s, i) => _choices[s][at[i]])];
            yield return (combination, new(slots.Zip(combination).ToDictionary(p => p.First, p => p.Second.Part)));
            for (place = slots.Length - 1; place >= 0 && ++at[place] == _choices[slots[place]].Count; place--)
            {
                at[place] = 0;
            }
        }
    }

    private Answer Solve(long? mostMass)
    {
        if (mostMass is { } most)
        {
            _model.Add(LinearExpr.WeightedSum(_costs.Select(c => c.Term), _costs.Select(c => c.Mass)) <= most);
        }

        _model.Minimize(LinearExpr.WeightedSum(_costs.Select(c => c.Term), _costs.Select(c => c.Price)));
        CpSolver solver = new() { StringParameters = "num_workers:1,max_time_in_seconds:60" };
        CpSolverStatus status = solver.Solve(_model);
        return status switch
        {
            CpSolverStatus.Optimal => new((long)Math.Round(solver.ObjectiveValue), _clauses),
            CpSolverStatus.Infeasible => new(null, _clauses),
            _ => throw new InvalidOperationException($"the solver says {status}"),
        };
    }

    /// <summary>Some parts by slot.</summary>
    private sealed class Few(Dictionary<Slot, Part?> parts) : IParts
    {
        public Part? At(Slot slot) => parts.GetValueOrDefault(slot);

        public Joint JointAt(int number) => JointTable.All[number];

        public Account ToldAt(int number, Verdict verdict) => Account.Of(JointAt(number), this, verdict);
    }
}
