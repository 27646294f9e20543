using Lugwork.Catalogues;

namespace Lugwork.Benchmarks.Screening;

/// <summary>Row 8: the index from a million parts, against the appender with the rows that those parts have in part_fit. What turns parts into rows is not in the peer's time.</summary>
internal sealed class LoadRow : IRow
{
    private const int Parts = 1_000_000;

    // Enough turns that the code of both sides is compiled to the end before the clock runs, as row 18 has it.
    private const int WarmTurns = 40;
    private const int WarmParts = 20_000;

    private const string Table = "CREATE OR REPLACE TABLE part_fit (part_id BIGINT NOT NULL, slot VARCHAR NOT NULL, joint VARCHAR NOT NULL, key VARCHAR NOT NULL, limit_min BIGINT NOT NULL, limit_max BIGINT NOT NULL)";

    private CatalogueRow[] _rows = [];
    private PartFitRow[] _fits = [];

    public IReadOnlyList<Claim> Claims { get; } = [new("8", $"build the index from {Parts:N0} parts", "DuckDB appender load of their rows of part_fit, those of a bare frame's joints alone", 4, LimitKind.AtLeastFaster)];

    public string Note => FormattableString.Invariant($"Row 8: {_fits.Length / (double)Parts:0.0} rows a part.");

    public void Prove()
    {
        _rows = [.. ScreeningShop.Shared.Rows(Parts)];
        _fits = [.. ScreeningShop.Shared.FitRows(_rows)];
        using Duck duck = new();
        duck.Run(Table);
        duck.Put("part_fit", _fits);
        if (duck.Read("SELECT COUNT(*) FROM part_fit")[0][0] != _fits.Length || ScreeningShop.Catalogue(_rows).View.Count != Parts)
        {
            throw new InvalidOperationException("not all parts are there");
        }

        CatalogueRow[] few = _rows[..WarmParts];
        PartFitRow[] fits = [.. ScreeningShop.Shared.FitRows(few)];
        for (int turn = 0; turn < WarmTurns; turn++)
        {
            duck.Run(Table);
            duck.Put("part_fit", fits);
            _ = ScreeningShop.Catalogue(few);
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        using Duck duck = new();
        double[] taken = Timing.InTurn(
            effort == Effort.Full ? 3 : 1,
            () => Timing.Of(() => ScreeningShop.Catalogue(_rows)),
            () =>
            {
                duck.Run(Table);
                return Timing.Of(() => duck.Put("part_fit", _fits));
            });
        return [new(taken[1] / taken[0])];
    }
}
