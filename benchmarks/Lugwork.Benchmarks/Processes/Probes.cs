using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace Lugwork.Benchmarks.Processes;

/// <summary>In a process of its own: the first check, from before the library is touched until the verdict is there.</summary>
internal static class CheckProbe
{
    public static int Run()
    {
        long start = Stopwatch.GetTimestamp();
        bool fits = Check();
        return ProbeOutput.Write(start, fits);
    }

    // Apart, so that nothing of the library is loaded before the clock runs.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static bool Check() => Bicycles.Touring(27.2m).Check().Verdict == Verdict.Fits;
}

/// <summary>In a process of its own: the same values as quantities, and the same predicates.</summary>
internal static class UnitsProbe
{
    public static int Run()
    {
        long start = Stopwatch.GetTimestamp();
        bool fits = Check();
        return ProbeOutput.Write(start, fits);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static bool Check() => new UnitsBicycle(27.2).Fits();
}

/// <summary>What a probe says: nanoseconds, and 0 for a bicycle that fits.</summary>
internal static class ProbeOutput
{
    public static int Write(long start, bool fits)
    {
        long elapsed = (long)Stopwatch.GetElapsedTime(start).TotalNanoseconds;
        Console.Out.WriteLine(elapsed);
        return fits ? 0 : 1;
    }
}
