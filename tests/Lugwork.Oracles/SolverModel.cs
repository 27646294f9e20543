using Google.OrTools.Sat;
using Lugwork.Planning;

namespace Lugwork.Oracles;

/// <summary>
/// A request as a model of CP-SAT, made from the joints and the parts alone: a variable for every part of every slot, a clause for every combination that a joint refuses, a price for every one
/// that needs a bridge. Nothing of the planner is used.
/// </summary>
internal sealed class SolverModel
{
    private readonly CpModel _model = new();
    private readonly ChoiceRequest _request;
    private readonly Dictionary<Slot, List<(Part? Part, long Price, long Mass, BoolVar Chosen)>> _choices = [];
    private readonly Dictionary<string, ChoiceBridgePrice> _bridges;
    private readonly List<(LinearExpr Term, long Price, long Mass)> _costs = [];

    private SolverModel(ChoiceRequest request)
    {
        _request = request;
        _bridges = request.Bridges.ToDictionary(b => b.BridgeId);
    }

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
        SolverModel model = new(request);
        model.AddChoices();
        foreach (Joint joint in JointTable.All.Where(j => systemChecks || j.Slots.Length <= 2))
        {
            model.Add(joint);
        }

        model.AddRequired();
        return model.Solve(mostMass);
    }

    private void AddChoices()
    {
        foreach (Slot slot in Slot.All)
        {
            Part? owned = _request.Build[slot];
            bool kept = slot == Slot.Frame || _request.Wishes.Any(w => w.Slot == slot && w.Name == $"keep the {slot.Name}");
            List<(Part? Part, long Price, long Mass)> all = [];
            if (owned is not null)
            {
                all.Add((owned, 0, Milligrams(_request.OwnedMasses.TryGetValue(slot, out UnitsNet.Mass mass) ? mass : null)));
            }

            if (!kept)
            {
                all.Add((null, 0, 0));
                all.AddRange(_request.Offers.Where(o => o.Slot == slot && o.Price is not null).Select(o => ((Part?)o.Part, (long)(o.Price!.Value.Amount * 10_000), Milligrams(o.Mass))));
            }

            all.RemoveAll(c => c.Part is not null && _request.Wishes.Any(w => w.Slot == slot && !w.IsMetBy(c.Part)));
            _choices[slot] = [.. all.Select((c, i) => (c.Part, c.Price, c.Mass, _model.NewBoolVar($"{slot.Key}{i}")))];
            _model.AddExactlyOne(_choices[slot].Select(c => c.Chosen));
            foreach ((_, long price, long mass, BoolVar chosen) in _choices[slot])
            {
                _costs.Add((chosen, price, mass));
            }
        }
    }

    private static long Milligrams(UnitsNet.Mass? mass) => (long)Math.Round(mass?.Milligrams ?? 0);

    private int _clauses;

    /// <summary>Every combination of parts that a joint meets.</summary>
    private void Add(Joint joint)
    {
        Slot[] slots = [.. joint.Slots];
        foreach (((Part? Part, long, long, BoolVar Chosen)[] combination, Few parts) in Combinations(slots))
        {
            if (Array.Exists(combination, c => c.Part is null) || !joint.IsFilled(parts))
            {
                continue;
            }

            Verdict verdict = joint.Judge(parts);
            if (verdict == Verdict.Fits)
            {
                continue;
            }

            Bridge?[] needed = verdict == Verdict.NeedsPart ? [.. Account.Of(joint, parts, verdict).Remedies.Where(r => r.Kind is RemedyKind.BuyPart or RemedyKind.ShopWork).Select(r => r.Bridge)] : [null];
            ILiteral[] chosen = [.. combination.Select(c => c.Chosen)];
            _clauses++;
            if (Array.Exists(needed, b => b is null || !_bridges.ContainsKey(b.Id)))
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

            _costs.Add((priced, needed.Sum(b => (long)(_bridges[b!.Id].Price.Amount * 10_000)), needed.Sum(b => Milligrams(_bridges[b!.Id].Mass))));
        }
    }

    private void AddRequired()
    {
        foreach (((Part? Part, long, long, BoolVar Chosen)[] combination, _) in Combinations([Slot.Fork, Slot.FrontWheel, Slot.RearWheel]))
        {
            foreach (Slot slot in BicycleKind.Required(_request.Build.Frame, combination[0].Part as Fork, combination[1].Part as Wheel, combination[2].Part as Wheel))
            {
                _model.AddBoolOr(combination.Select(c => c.Chosen.Not()).Concat(_choices[slot].Where(c => c.Part is not null).Select(c => (ILiteral)c.Chosen)));
            }
        }

        foreach ((Slot slot, List<(Part? Part, long, long, BoolVar Chosen)> choices) in _choices)
        {
            foreach ((Part? part, _, _, BoolVar chosen) in choices.Where(c => c.Part is not null && UnjudgedFields.Asked(new Few(new() { [slot] = c.Part })) is not null))
            {
                _model.AddBoolOr([chosen.Not()]);
            }
        }
    }

    private IEnumerable<((Part? Part, long, long, BoolVar Chosen)[] Combination, Few Parts)> Combinations(Slot[] slots)
    {
        if (Array.Exists(slots, s => _choices[s].Count == 0))
        {
            yield break;
        }

        int[] at = new int[slots.Length];
        int place = 0;
        while (place >= 0)
        {
            (Part? Part, long, long, BoolVar Chosen)[] combination = [.. slots.Select((s, i) => _choices[s][at[i]])];
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
