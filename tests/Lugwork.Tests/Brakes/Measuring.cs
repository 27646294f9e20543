namespace Lugwork.Tests.Brakes;

/// <summary>What identifying by measuring has to keep to, whatever is measured.</summary>
internal static class Measuring
{
    private static readonly decimal[] Errors = [0m, 0.02m, 0.1m, 0.5m];

    /// <summary>Exact dimensions put the value first; a reading that is out by no more than its error never drops it.</summary>
    /// <param name="values">What can be identified.</param>
    /// <param name="exact">Its dimensions, null where it has none; several sets where a dimension is a range.</param>
    /// <param name="identify">Readings in the order of the dimensions.</param>
    public static void Holds<T>(IEnumerable<T> values, Func<T, IEnumerable<decimal?[]>> exact, Func<MeasuredLength?[], Identification<T>> identify)
    {
        int held = 0;
        foreach (T value in values)
        {
            foreach (decimal?[] dimensions in exact(value))
            {
                Assert.Contains(dimensions, d => d is not null);
                IsFirst(value, dimensions, identify, other => exact(other).Any(d => Agrees(d, dimensions)));
                for (int subset = 1; subset < 1 << dimensions.Length; subset++)
                {
                    IsNeverDropped(value, dimensions, subset, identify);
                }

                held++;
            }
        }

        Assert.True(held > 1, "nothing was tried");
    }

    /// <summary>No reading of the dimensions that the one has can part them.</summary>
    private static bool Agrees(decimal?[] other, decimal?[] own) => own.Zip(other).All(p => p.First is null || p.First == p.Second);

    private static void IsFirst<T>(T value, decimal?[] dimensions, Func<MeasuredLength?[], Identification<T>> identify, Func<T, bool> same)
    {
        Identification<T> found = identify([.. dimensions.Select(d => Read(d, 0))]);
        Identified<T> first = found.Candidates[0];
        Assert.True(Equals(first.Value, value) || same(first.Value), $"{value} was measured exactly and {first.Value} stands first");
        Assert.Equal(0, first.DeviationMillimetres);
        Assert.Equal(found.Candidates.Select(c => c.DeviationMillimetres).Order(), found.Candidates.Select(c => c.DeviationMillimetres));
    }

    private static void IsNeverDropped<T>(T value, decimal?[] dimensions, int subset, Func<MeasuredLength?[], Identification<T>> identify)
    {
        foreach (decimal error in Errors)
        {
            foreach (decimal off in new[] { -error, 0, error })
            {
                MeasuredLength?[] readings = [.. dimensions.Select((d, i) => (subset & (1 << i)) == 0 ? null : Read(d + off, error))];
                if (readings.Any(r => r is not null))
                {
                    Assert.True(identify(readings).Candidates.Any(c => Equals(c.Value, value)), $"{value} was dropped: {string.Join(", ", readings)}");
                }
            }
        }
    }

    private static MeasuredLength? Read(decimal? millimetres, decimal error) => millimetres is { } read ? MeasuredLength.OfMillimetres(read, error) : null;
}
