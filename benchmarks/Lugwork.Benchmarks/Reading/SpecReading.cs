using System.Globalization;
using System.Runtime.CompilerServices;
using BenchmarkDotNet.Attributes;

namespace Lugwork.Benchmarks.Reading;

/// <summary>One kind of spec line for a generic harness, so that the loops call the readers directly.</summary>
public interface ISpecKind
{
    internal static abstract SpecLines Make();

    internal static abstract bool Library(ReadOnlySpan<char> line);

    internal static abstract bool Expression(string line);

    /// <summary>Null where library, expression and bare numbers mean the same value; otherwise what they say.</summary>
    internal static abstract string? Differs(string line, ReadOnlySpan<double> numbers);
}

/// <summary>What a row has to know of the candidates beside their times.</summary>
internal interface ICandidates
{
    /// <summary>Throws where the candidates do not give the same answers.</summary>
    void Prove();

    /// <summary>Bytes that the library allocates for all lines, read and refused; exact, by the thread's own count.</summary>
    (long Reading, long Refusing) Bytes();

    /// <summary>Medians of passes in turn.</summary>
    /// <param name="rounds">How many rounds.</param>
    SpecTimes InTurn(int rounds);
}

/// <summary>Nanoseconds: of a pass over all lines by each candidate, and of one exception.</summary>
internal readonly record struct SpecTimes(double Library, double Numbers, double Expression, double Refusing, double Throwing);

/// <summary>The candidates of one kind of spec line. Their loops are compiled at once, so that no repeat meets half a compiler. The library, the bare numbers in the same text, an expression with groups, refusing, and an exception.</summary>
/// <typeparam name="TKind">The kind.</typeparam>
public abstract class SpecReading<TKind> : ICandidates
    where TKind : struct, ISpecKind
{
    private static readonly Lazy<(SpecLines Good, SpecLines Bad)> Lines = new(MakeAndProve);

    private const int Throws = 1_000;

    private SpecLines _lines = null!;
    private SpecLines _bad = null!;

    /// <summary>Takes the lines, which are proven when they are made.</summary>
    [GlobalSetup]
    public void Take() => (_lines, _bad) = Lines.Value;

    /// <summary>Proves, and lets the compiler finish with what all candidates call.</summary>
    void ICandidates.Prove()
    {
        Take();
        for (int round = 0; round < 4; round++)
        {
            for (int pass = 0; pass < 10; pass++)
            {
                _ = Library() + Numbers() + Refusing() + Throwing();
            }

            _ = Expression();
            Thread.Sleep(150);
        }
    }

    (long Reading, long Refusing) ICandidates.Bytes()
    {
        long start = GC.GetAllocatedBytesForCurrentThread();
        _ = Library();
        long between = GC.GetAllocatedBytesForCurrentThread();
        _ = Refusing();
        return (between - start, GC.GetAllocatedBytesForCurrentThread() - between);
    }

    SpecTimes ICandidates.InTurn(int rounds)
    {
        double[] medians = Timing.InTurn(
            rounds,
            () => Timing.Of(() => Library()),
            () => Timing.Of(() => Numbers()),
            () => Timing.Of(() => Expression()),
            () => Timing.Of(() => Refusing()),
            () => Timing.Of(() => ThrowMany()) / Throws);
        return new(medians[0], medians[1], medians[2], medians[3], medians[4]);
    }

    /// <summary>Every line through the library.</summary>
    [Benchmark]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Library() => Library(_lines);

    /// <summary>Only the numbers of every line, found beforehand.</summary>
    [Benchmark]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Numbers()
    {
        double sum = 0;
        for (int i = 0; i < _lines.Numbers; i++)
        {
            sum += double.Parse(_lines.Number(i), CultureInfo.InvariantCulture);
        }

        return sum;
    }

    /// <summary>Every line through the expression.</summary>
    [Benchmark]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Expression()
    {
        int read = 0;
        foreach (string text in _lines.Texts)
        {
            read += TKind.Expression(text) ? 1 : 0;
        }

        return read;
    }

    /// <summary>Every spoilt line through the library.</summary>
    [Benchmark]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Refusing() => Library(_bad);

    /// <summary>One exception, thrown one call down, as a parser does, and caught.</summary>
    [Benchmark]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Throwing()
    {
        try
        {
            return Throw();
        }
        catch (FormatException e)
        {
            return e.Message.Length;
        }
    }

    private void ThrowMany()
    {
        for (int i = 0; i < Throws; i++)
        {
            _ = Throwing();
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int Throw() => throw new FormatException("no size");

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static int Library(SpecLines lines)
    {
        int read = 0;
        for (int i = 0; i < lines.Length; i++)
        {
            read += TKind.Library(lines.Line(i)) ? 1 : 0;
        }

        return read;
    }

    private static (SpecLines Good, SpecLines Bad) MakeAndProve()
    {
        SpecLines lines = TKind.Make();
        SpecLines bad = lines.Spoilt();
        Span<double> numbers = stackalloc double[8];
        for (int i = 0; i < lines.Length; i++)
        {
            int count = 0;
            for (int n = lines.FirstNumber[i]; n < lines.FirstNumber[i + 1]; n++)
            {
                numbers[count++] = double.Parse(lines.Number(n), CultureInfo.InvariantCulture);
            }

            string line = lines.Texts[i];
            if (TKind.Differs(line, numbers[..count]) is { } said)
            {
                throw new InvalidOperationException($"the candidates do not agree on '{line}': {said}");
            }

            if (TKind.Library(bad.Line(i)) || TKind.Expression(bad.Texts[i]))
            {
                throw new InvalidOperationException($"'{bad.Texts[i]}' was to be refused");
            }
        }

        return (lines, bad);
    }
}
