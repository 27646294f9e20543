using System.Globalization;
using Lugwork.Reading;

namespace Lugwork.Benchmarks.Bulk;

/// <summary>A shop's rows in one pass: time against a peer of expressions, and how much more is held at the end of the pass than early in it.</summary>
internal sealed class BulkRow : IRow
{
    private const int Rows = 1_000_000;

    private const int Chunk = 512;

    private double _rowsASecond;

    public IReadOnlyList<Claim> Claims { get; } =
    [
        new("16", $"read {Rows:N0} shop rows in one pass, each with its words, doubts and reasons", "five source-generated regexes that read these rows alone", 20, LimitKind.AtMostTimes),
        new("16", $"more held at the end of {Rows:N0} rows than after a tenth of them", "none", 4, LimitKind.UnderMegabytes),
    ];

    public string Note => string.Create(CultureInfo.InvariantCulture, $"Row 16: {_rowsASecond:N0} rows a second in the last pass.");

    public void Prove()
    {
        int number = 0;
        SpecReader.Read(ShopRows.Make(Rows / 10), result =>
        {
            (string Key, string? Length)? expected = RegexRows.Read(result.Row);
            string? main = result.Line.Values.FirstOrDefault(v => v.Field is "diameter" or "size" or "clamp")?.Key;
            string? length = result.Line.Values.FirstOrDefault(v => v.Field == "length")?.Key;
            if (expected is null || main != expected.Value.Key || length != expected.Value.Length)
            {
                throw new InvalidOperationException($"row {number}, {result.Row.Slot} '{result.Row.Text}': {expected} and {result.Line}");
            }

            number++;
        });
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        int read = 0;
        long early = 0;
        long late = 0;
        double library = Timing.Of(() => SpecReader.Read(ShopRows.Make(Rows), result =>
        {
            read += result.Line.Outcome == SpecOutcome.Read ? 1 : 0;
            if (result.Number == Rows / 10)
            {
                early = GC.GetTotalMemory(forceFullCollection: true);
            }
            else if (result.Number == Rows - 1)
            {
                late = GC.GetTotalMemory(forceFullCollection: true);
            }
        }));
        _rowsASecond = Rows / (library / 1e9);
        double peer = Timing.Of(() => Peer());
        return read == Rows
            ? [new(library / peer), new(Math.Max(0, late - early) / 1e6)]
            : throw new InvalidOperationException($"only {read} of {Rows} rows were read");
    }

    /// <summary>The peer in the same chunks, as parallel as the reader.</summary>
    private static int Peer()
    {
        int read = 0;
        foreach (SpecRow[] chunk in ShopRows.Make(Rows).Chunk(Chunk))
        {
            (string Key, string? Length)?[] results = new (string, string?)?[chunk.Length];
            Parallel.For(0, chunk.Length, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, i => results[i] = RegexRows.Read(chunk[i]));
            read += results.Count(r => r is not null);
        }

        return read;
    }
}
