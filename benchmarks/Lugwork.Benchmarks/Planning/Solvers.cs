using Google.OrTools.LinearSolver;
using Google.OrTools.Sat;
using Lugwork.Planning;
using LinearExpr = Google.OrTools.Sat.LinearExpr;

namespace Lugwork.Benchmarks.Planning;

/// <summary>The peers: a reduced model as a whole-number program, each table in its lifted form, which is the tightest that a solver can get.</summary>
internal static class Solvers
{
    /// <summary>Which peers of a list are there, for the note of a row.</summary>
    public static string There(params string[] names)
    {
        string[] missing = [.. names.Where(n => n != "CP-SAT" && !IsThere(n))];
        return $"peers that ran: {string.Join(", ", names.Except(missing))}{(missing.Length == 0 ? "" : $"; not there: {string.Join(", ", missing)}")}";
    }

    /// <summary>Whether a peer is there.</summary>
    public static bool IsThere(string name)
    {
        using Solver? solver = Solver.CreateSolver(name);
        return solver is not null;
    }

    /// <summary>The least price by CP-SAT; null where nothing goes together under the cap.</summary>
    public static long? CpSat(ChoiceNetwork network, long? mostMass = null)
    {
        CpModel model = new();
        List<(BoolVar Variable, long Price, long Mass)> costs = [];
        BoolVar[][] states = [.. network.States.Select(own => own.Select(state =>
        {
            BoolVar[] entries = [.. state.Price.Select((price, i) => Cost(model.NewBoolVar(""), price, state.Mass[i]))];
            BoolVar any = model.NewBoolVar("");
            model.Add(LinearExpr.Sum(entries) == any);
            return any;
        }).ToArray())];

        BoolVar Cost(BoolVar variable, long price, long mass)
        {
            costs.Add((variable, price, mass));
            return variable;
        }

        foreach (BoolVar[] own in states)
        {
            model.AddExactlyOne(own);
        }

        foreach (ChoiceTable table in network.Tables)
        {
            List<BoolVar>[][] byClass = [.. table.Sizes.Select(size => Enumerable.Range(0, size).Select(_ => new List<BoolVar>()).ToArray())];
            foreach ((int[] classes, long price, long mass) in Cells(table))
            {
                BoolVar cell = Cost(model.NewBoolVar(""), price, mass);
                for (int place = 0; place < classes.Length; place++)
                {
                    byClass[place][classes[place]].Add(cell);
                }
            }

            for (int place = 0; place < byClass.Length; place++)
            {
                // What goes with nothing in this table is not chosen.
                model.Add(LinearExpr.Sum(states[table.Scope[place]].Where((_, s) => table.ClassOf[place][s] < 0)) == 0);
                for (int number = 0; number < byClass[place].Length; number++)
                {
                    model.Add(LinearExpr.Sum(byClass[place][number]) == LinearExpr.Sum(states[table.Scope[place]].Where((_, s) => table.ClassOf[place][s] == number)));
                }
            }
        }

        if (mostMass is { } most)
        {
            model.Add(LinearExpr.WeightedSum(costs.Select(c => c.Variable), costs.Select(c => c.Mass)) <= most - network.Mass);
        }

        model.Minimize(LinearExpr.WeightedSum(costs.Select(c => c.Variable), costs.Select(c => c.Price)));
        CpSolver solver = new() { StringParameters = "num_workers:2" };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => network.Price + (long)Math.Round(solver.ObjectiveValue),
            CpSolverStatus.Infeasible => null,
            CpSolverStatus status => throw new InvalidOperationException($"CP-SAT says {status}"),
        };
    }

    /// <summary>The least price by SCIP or HiGHS.</summary>
    /// <param name="name">Which of them; it has to be there.</param>
    /// <param name="network">What is chosen from.</param>
    /// <param name="mostMass">The cap; none where left out.</param>
    /// <param name="milliseconds">What it may take; as long as it likes where left out.</param>
    /// <returns>Whether it ended with a proven optimum, and that.</returns>
    public static (bool Ended, long? Least) Mip(string name, ChoiceNetwork network, long? mostMass = null, long? milliseconds = null)
    {
        using Solver solver = Solver.CreateSolver(name) ?? throw new InvalidOperationException($"{name} is not there");
        if (milliseconds is { } limit)
        {
            solver.SetTimeLimit(limit);
        }

        Objective objective = solver.Objective();
        objective.SetMinimization();
        Google.OrTools.LinearSolver.Constraint? cap = mostMass is { } most ? solver.MakeConstraint(double.NegativeInfinity, most - network.Mass) : null;

        Variable Cost(Variable variable, long price, long mass)
        {
            objective.SetCoefficient(variable, price);
            cap?.SetCoefficient(variable, mass);
            return variable;
        }

        Variable[][][] entries = [.. network.States.Select(own => own.Select(state => state.Price.Select((price, i) => Cost(solver.MakeBoolVar(""), price, state.Mass[i])).ToArray()).ToArray())];
        foreach (Variable[][] own in entries)
        {
            Google.OrTools.LinearSolver.Constraint one = solver.MakeConstraint(1, 1);
            foreach (Variable entry in own.SelectMany(e => e))
            {
                one.SetCoefficient(entry, 1);
            }
        }

        foreach (ChoiceTable table in network.Tables)
        {
            Google.OrTools.LinearSolver.Constraint[][] byClass = [.. table.Sizes.Select(size => Enumerable.Range(0, size).Select(_ => solver.MakeConstraint(0, 0)).ToArray())];
            for (int place = 0; place < byClass.Length; place++)
            {
                for (int state = 0; state < table.ClassOf[place].Length; state++)
                {
                    foreach (Variable entry in entries[table.Scope[place]][state])
                    {
                        if (table.ClassOf[place][state] < 0)
                        {
                            entry.SetUb(0);
                        }
                        else
                        {
                            byClass[place][table.ClassOf[place][state]].SetCoefficient(entry, -1);
                        }
                    }
                }
            }

            foreach ((int[] classes, long price, long mass) in Cells(table))
            {
                Variable cell = Cost(solver.MakeNumVar(0, 1, ""), price, mass);
                for (int place = 0; place < classes.Length; place++)
                {
                    byClass[place][classes[place]].SetCoefficient(cell, 1);
                }
            }
        }

        // By default these stop within a ten-thousandth of the optimum.
        using MPSolverParameters exact = new();
        exact.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        return solver.Solve(exact) == Solver.ResultStatus.OPTIMAL ? (true, network.Price + (long)Math.Round(objective.Value())) : (false, null);
    }

    private static IEnumerable<(int[] Classes, long Price, long Mass)> Cells(ChoiceTable table)
    {
        for (int cell = 0; cell < table.Price.Length; cell++)
        {
            if (table.Price[cell] >= ChoiceEntry.Never)
            {
                continue;
            }

            int[] classes = new int[table.Sizes.Length];
            int rest = cell;
            for (int place = classes.Length - 1; place >= 0; place--)
            {
                classes[place] = rest % table.Sizes[place];
                rest /= table.Sizes[place];
            }

            yield return (classes, table.Price[cell], table.Mass?[cell] ?? 0);
        }
    }
}
