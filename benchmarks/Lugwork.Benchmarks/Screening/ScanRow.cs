using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Lugwork.Catalogues;

namespace Lugwork.Benchmarks.Screening;

/// <summary>Row 6: a code and a limit over two columns, against nothing but reading them.</summary>
internal sealed class ScanRow : IRow
{
    private const int Parts = 1_000_000;
    private const int Code = 27_200_000;
    private const int Least = 80_000_000;
    private const int Most = 110_000_000;

    private readonly int[] _codes = new int[Parts];
    private readonly int[] _figures = new int[Parts];
    private readonly int[] _places = new int[Parts];
    private double _bandwidth;

    public ScanRow()
    {
        Random random = new(6);
        for (int i = 0; i < Parts; i++)
        {
            _codes[i] = 25_000_000 + (random.Next(40) * 200_000);
            _figures[i] = random.Next(60, 130) * 1_000_000;
        }
    }

    public IReadOnlyList<Claim> Claims { get; } =
    [
        new("6", $"count {Parts:N0} parts by code and limit", "`Vector256` sum of the same bytes; 1.43x is 70 % of its bandwidth", 1 / 0.7, LimitKind.AtMostTimes, NoBytes: true),
        new("6", "the same, with the places of those that are met", "`Vector256` sum of the same bytes; 1.43x is 70 % of its bandwidth", 1 / 0.7, LimitKind.AtMostTimes, NoBytes: true),
    ];

    public string Note => FormattableString.Invariant($"Row 6: the sum read {_bandwidth:0.0} GB/s.");

    public void Prove()
    {
        int[] plain = [.. Enumerable.Range(0, Parts).Where(i => _codes[i] == Code && _figures[i] is >= Least and <= Most)];
        if (plain.Length < 1_000 || FitScan.Count(_codes, _figures, Code, Least, Most) != plain.Length
            || !_places.AsSpan(0, FitScan.Find(_codes, _figures, Code, Least, Most, _places)).SequenceEqual(plain))
        {
            throw new InvalidOperationException("the scan and the loop do not agree");
        }

        int sum = 0;
        for (int i = 0; i < Parts; i++)
        {
            sum = unchecked(sum + _codes[i] + _figures[i]);
        }

        if (Sum() != sum)
        {
            throw new InvalidOperationException("the sums do not agree");
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        int rounds = effort == Effort.Full ? 200 : 60;
        Run(rounds / 2);
        long before = GC.GetAllocatedBytesForCurrentThread();
        FitScan.Count(_codes, _figures, Code, Least, Most);
        FitScan.Find(_codes, _figures, Code, Least, Most, _places);
        long bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        double[] taken = Run(rounds);
        _bandwidth = 8.0 * Parts / taken[0];
        return [new(taken[1] / taken[0], bytes), new(taken[2] / taken[0], bytes)];
    }

    private double[] Run(int rounds) => Timing.InTurn(rounds, () => Timing.Of(() => Sum()), () => Timing.Of(() => FitScan.Count(_codes, _figures, Code, Least, Most)), () => Timing.Of(() => FitScan.Find(_codes, _figures, Code, Least, Most, _places)));

    private int Sum()
    {
        ref int codes = ref MemoryMarshal.GetArrayDataReference(_codes);
        ref int figures = ref MemoryMarshal.GetArrayDataReference(_figures);
        Vector256<int> one = Vector256<int>.Zero;
        Vector256<int> other = Vector256<int>.Zero;
        for (nuint at = 0; at < Parts; at += (nuint)Vector256<int>.Count)
        {
            one += Vector256.LoadUnsafe(ref codes, at);
            other += Vector256.LoadUnsafe(ref figures, at);
        }

        return Vector256.Sum(one + other);
    }
}
