using Lugwork.Catalogues;

namespace Lugwork.Benchmarks.Screening;

/// <summary>Rows 14b and 15: what the index takes of memory, and how building and asking grow with the parts.</summary>
internal sealed class IndexSizeRow : IRow
{
    private static readonly int[] Sizes = [10_000, 100_000, 1_000_000];

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
        double[] built = Timing.InTurn(3, [.. _rows.Select(rows => (Func<double>)(() => Timing.Of(() => ScreeningShop.Catalogue(rows))))]);
        CatalogueView[] views = [.. _rows.Select(rows => ScreeningShop.Catalogue(rows).View)];
        double[] asked = Timing.InTurn(effort == Effort.Full ? 15 : 5, [.. views.Select(view => (Func<double>)(() => Timing.Of(() => Ask(view))))]);
        views = [];
        long before = GC.GetTotalMemory(forceFullCollection: true);
        PartCatalogue catalogue = ScreeningShop.Catalogue(_rows[2]);
        long held = GC.GetTotalMemory(forceFullCollection: true) - before;
        GC.KeepAlive(catalogue);
        return [new(held / (double)_rows[2].Length), new(built[1] / built[0]), new(built[2] / built[0]), new(asked[1] / asked[0]), new(asked[2] / asked[0])];
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
