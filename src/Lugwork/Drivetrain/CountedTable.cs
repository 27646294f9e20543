using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork.Drivetrain;

/// <summary>Things that are told by a count, arms or splines, beside their lengths.</summary>
internal static class CountedTable
{
    /// <summary>Only what has that count or whose count is not known; without a count, the count is what to look at first where it parts what is left.</summary>
    /// <exception cref="ArgumentException">No length was measured, or a reading is a default.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is below one.</exception>
    public static Identification<T> Identify<T>(ImmutableArray<MeasuredDimension> dimensions, ImmutableArray<DimensionRow<T>> rows, string counted, Func<T, int?> countOf, int? count, params ReadOnlySpan<MeasuredLength?> readings)
        where T : Standard<T>, IInterfaceValue<T>
    {
        ImmutableArray<DimensionRow<T>> left = rows;
        if (count is { } exactly)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(exactly, 1, nameof(count));
            left = [.. rows.Where(r => countOf(r.Value) is not { } own || own == exactly)];
        }

        Identification<T> found = new IdentificationTable<T>(dimensions, left, v => v.FitKey).Identify(readings);
        ImmutableArray<Identified<T>> once = [.. found.Candidates.DistinctBy(c => c.Value)];
        string byCount = count is null ? Parted(once, counted, countOf) : "";
        return new(once, byCount.Length > 0 ? byCount : found.Next);
    }

    private static string Parted<T>(ImmutableArray<Identified<T>> found, string counted, Func<T, int?> countOf)
        where T : Standard<T>, IInterfaceValue<T>
    {
        SortedDictionary<int, List<string>> groups = [];
        foreach (Identified<T> one in found)
        {
            if (countOf(one.Value) is { } own)
            {
                if (!groups.TryGetValue(own, out List<string>? names))
                {
                    groups.Add(own, names = []);
                }

                names.Add(one.Value.FitKey);
            }
        }

        return groups.Count < 2 ? "" : $"{counted}: {string.Join("; ", groups.Select(g => $"{g.Key.ToString(CultureInfo.InvariantCulture)} is {string.Join(" or ", g.Value)}"))}";
    }
}
