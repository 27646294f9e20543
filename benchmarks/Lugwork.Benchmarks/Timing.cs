using System.Diagnostics;

namespace Lugwork.Benchmarks;

/// <summary>Candidates in turn, so that a slow spell of the machine meets all of them, and medians.</summary>
internal static class Timing
{
    /// <summary>The median of each candidate over some rounds.</summary>
    /// <param name="rounds">How many rounds.</param>
    /// <param name="candidates">Each gives the nanoseconds it took.</param>
    public static double[] InTurn(int rounds, params Func<double>[] candidates)
    {
        double[][] taken = [.. candidates.Select(_ => new double[rounds])];
        for (int round = 0; round < rounds; round++)
        {
            for (int i = 0; i < candidates.Length; i++)
            {
                taken[i][round] = candidates[i]();
            }
        }

        return [.. taken.Select(Median)];
    }

    /// <summary>Nanoseconds that an act takes.</summary>
    public static double Of(Action act)
    {
        long start = Stopwatch.GetTimestamp();
        act();
        return Stopwatch.GetElapsedTime(start).TotalNanoseconds;
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        int middle = values.Length / 2;
        return values.Length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
    }
}
