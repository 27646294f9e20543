using System.Globalization;
using Lugwork.Oracles;
using Lugwork.Planning;
using Lugwork.Tests.Planning;

namespace Lugwork.Benchmarks.Planning;

/// <summary>The cheapest build out of 20 slots with 5,000 offers each, against the best of three solvers on the same reduced model.</summary>
internal sealed class ChoosingRow(bool systemChecks) : IRow
{
    private const int Offers = 5_000;
    private const int Instances = 220;

    private static readonly string[] Others = ["SCIP", "HIGHS"];

    private ChoiceNetwork[] _networks = [];
    private int _clique;
    private long _table;
    private string _proven = "";

    public IReadOnlyList<Claim> Claims { get; } =
    [
        systemChecks
            ? new("10b", "the same with system checks in the choice", "best of CP-SAT, SCIP and HiGHS on the same reduced model", 10, LimitKind.AtLeastFaster)
            : new("10", $"cheapest build, {Shops.Slots} slots x {Offers:N0} offers, bridges priced, from the reduced model", "best of CP-SAT, SCIP and HiGHS on the same reduced model", 100, LimitKind.AtLeastFaster),
    ];

    public string Note => string.Create(CultureInfo.InvariantCulture, $"Row {(systemChecks ? "10b" : "10")}: {(systemChecks ? $"largest clique {_clique} slots, largest table {_table} combinations; " : "")}{_proven}; {Solvers.There("CP-SAT", "SCIP", "HIGHS")}.");

    public void Prove()
    {
        int impossible = 0;
        for (int seed = 0; seed < Instances; seed++)
        {
            ChoiceRequest request = ChoiceBench.Draw(new Random(seed), 8, 5, seed % 3 == 0 ? 54 : 0);
            long? library = Least(request);
            long? solver = SolverModel.Solve(request, systemChecks).Price;
            impossible += solver is null ? 1 : 0;
            Same(library ?? -1, solver ?? -1, $"request {seed}");
        }

        _proven = $"{Instances} requests equal to a model of CP-SAT from the joints, {impossible} of them impossible";
        ChoiceRequest[] shops = [.. Enumerable.Range(0, Shops.Bicycles).Select(b => Shops.Draw(b, Offers, b))];
        _networks = [.. shops.Select(s => Shops.Network(s, systemChecks, masses: false))];
        foreach (ChoiceNetwork network in _networks)
        {
            long least = Library(network);
            Same(least, Solvers.CpSat(network) ?? -1, "CP-SAT");
            foreach (string solver in Others.Where(Solvers.IsThere))
            {
                Same(least, Solvers.Mip(solver, network).Least ?? -1, solver);
            }
        }
    }

    /// <summary>The least price of a request, with joints of two slots alone where system checks are left out; null where nothing fits.</summary>
    private long? Least(ChoiceRequest request)
    {
        ChoiceModel model = BuildChooser.Of(request).PlanOf(false, default).Model;
        bool[] rules = [.. model.Rules.Select(r => systemChecks || r is not ChoiceJointRule joint || joint.Joint.Slots.Length <= 2)];
        ChoiceNetwork? network = ChoiceReducer.Of(model, false, rules) is { } whole ? ChoiceDominance.Thinned(whole, 1, default) : null;
        ChoiceElimination? elimination = network is null ? null : new(network, ChoiceWeights.Price, default);
        return elimination is null || elimination.Bound >= ChoiceEntry.Never ? null : Library(network!);
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        double[] ratios = [.. _networks.Select(network =>
        {
            double[] library = Timing.InTurn(9, () => Timing.Of(() => Library(network)));
            double[] peers = Timing.InTurn(1,
                [() => Timing.Of(() => Solvers.CpSat(network)), .. Others.Where(Solvers.IsThere).Select(solver => (Func<double>)(() => Timing.Of(() => Solvers.Mip(solver, network))))]);
            return peers.Min() / library[0];
        })];
        Array.Sort(ratios);
        return [new(ratios[ratios.Length / 2])];
    }

    private long Library(ChoiceNetwork network)
    {
        ChoiceElimination elimination = new(network, ChoiceWeights.Price, default);
        _clique = Math.Max(_clique, elimination.LargestClique);
        _table = Math.Max(_table, elimination.LargestTable);
        return new ChoiceSearch(network, elimination, ChoiceWeights.Price, default).Next(1_000_000)!.Value.Cost;
    }

    private static void Same(long library, long peer, string what)
    {
        if (library != peer)
        {
            throw new InvalidOperationException($"{what}: the library says {library}, the peer {peer}");
        }
    }
}
