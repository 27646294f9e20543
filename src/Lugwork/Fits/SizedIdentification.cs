using System.Collections.Immutable;

namespace Lugwork;

/// <summary>Telling a size by one measured diameter or width.</summary>
internal static class SizedIdentification
{
    /// <summary>What a reading can be, by the range that each member measures.</summary>
    /// <param name="dimension">What is measured, and how.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="range">The range that a member measures, millimetres; null where it is never told by a reading.</param>
    /// <param name="nominal">The name size of a member, millimetres.</param>
    /// <param name="tellsApart">What tells a member from its neighbours; may be empty.</param>
    public static Identification<T> Of<T>(MeasuredDimension dimension, MeasuredLength reading, Func<T, (decimal Least, decimal Most)?> range, Func<T, decimal> nominal, Func<T, string> tellsApart)
        where T : IInterfaceValue<T>
    {
        ImmutableArray<DimensionRow<T>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<T>>(T.All.Length);
        foreach (T member in T.All)
        {
            if (range(member) is { } measured)
            {
                rows.Add(new(member, [measured], tellsApart(member), nominal(member)));
            }
        }

        return new IdentificationTable<T>([dimension], rows.ToImmutable(), v => v.FitKey).Identify(reading);
    }
}
