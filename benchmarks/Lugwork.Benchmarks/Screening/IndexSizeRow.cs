using Lugwork.Catalogues;

namespace Lugwork.Benchmarks.Screening;

/// <summary>Rows 14b and 15: what the index takes of memory, and how building and asking grow with the parts.</summary>
internal sealed class IndexSizeRow : IRow
{
    private static readonly int[] Sizes = [10_000, 100_000, 1_000_000];
    private static readonly int[] Rounds = [9, 3, 1];

    private CatalogueRow[][] _rows = [];
    private Build[] _builds = [];

    public IReadOnlyList<Claim> Claims { get; } =
    [
        new("14b", "index of 1,000,000 parts, bytes a part", "none; by the collector", 64, LimitKind.AtMostBytes),
        new("15", "index of 10 times the parts (100,000)", "itself with 10,000", 10, LimitKind.AtMostTimes),
        new("15", "index of 100 times the parts (1,000,000)", "itself with 10,000", 100, LimitKind.AtMostTimes),
        new("15", "screening 10 times the parts (100,000), all ids", "itself with 10,000", 10, LimitKind.AtMostTimes),
        new("15", "screening 100 times the parts (1,000,000), all ids", "itself with 10,000", 100, LimitKind.AtMostTimes),
    ];

    public void Prove()
    {
        _rows = [.. Sizes.Select(s => ScreeningShop.Shared.Rows(s).ToArray())];
        _builds = [.. ScreeningShop.Shared.Frames.Take(10).Select(f => Build.From(f))];
        foreach (CatalogueRow[] rows in _rows)
        {
            CatalogueView view = ScreeningShop.Catalogue(rows).View;
            if (view.Count != rows.Length || Ask(view) == 0)
            {
                throw new InvalidOperationException("not all parts are there, or none fits");
            }
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        // What takes longest is built once a repeat; what takes no time as often as it needs for a steady median.
        double[] built = new double[Sizes.Length];
        PartCatalogue[] catalogues = new PartCatalogue[Sizes.Length];
        long held = 0;
        for (int size = 0; size < Sizes.Length; size++)
        {
            long before = GC.GetTotalMemory(forceFullCollection: true);
            built[size] = Timing.InTurn(Rounds[size], () => Timing.Of(() => catalogues[size] = ScreeningShop.Catalogue(_rows[size])))[0];
            held = GC.GetTotalMemory(forceFullCollection: true) - before;
        }

        double[] asked = Timing.InTurn(effort == Effort.Full ? 15 : 5, [.. catalogues.Select(c => (Func<double>)(() => Timing.Of(() => Ask(c.View))))]);
        return [new(held / (double)Sizes[^1]), new(built[1] / built[0]), new(built[2] / built[0]), new(asked[1] / asked[0]), new(asked[2] / asked[0])];
    }

    private long Ask(CatalogueView view)
    {
        long found = 0;
        foreach (Build build in _builds)
        {
            foreach (Slot slot in ScreeningShop.Shared.Slots)
            {
                SlotFitting answer = view.Fitting(build, slot, int.MaxValue, Verdict.NeedsPart);
                found += answer.Fits.Ids.Length + answer.NeedsPart.Ids.Length;
            }
        }

        return found;
    }
}
