using System.Collections.Immutable;

namespace Lugwork.Drawing;

/// <summary>The scales of drawings: the usual steps of 1, 2 and 5, and 1:2.5 and 1:4.</summary>
internal static class DraftScale
{
    private static readonly ImmutableArray<double> Steps = [10, 5, 2, 1, 0.5, 0.4, 0.25, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001];

    /// <summary>The largest scale at which a size goes into a room; the smallest where none does.</summary>
    public static double For(double width, double height, double mostWidth, double mostHeight)
    {
        foreach (double step in Steps)
        {
            if (width * step <= mostWidth && height * step <= mostHeight)
            {
                return step;
            }
        }

        return Steps[^1];
    }

    /// <summary>"1:2", "5:1".</summary>
    public static string InWords(double scale) => scale >= 1 ? $"{DraftText.Number(scale)}:1" : $"1:{DraftText.Number(1 / scale)}";
}
