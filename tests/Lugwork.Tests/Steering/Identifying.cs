namespace Lugwork.Tests.Steering;

/// <summary>What holds for identifying by measuring, whatever is identified.</summary>
internal static class Identifying
{
    private static readonly decimal[] Errors = [0, 0.02m, 0.1m, 0.5m];

    public delegate Identification<T> Identify<T>(MeasuredLength?[] readings);

    /// <summary>Exact dimensions give the value first, or behind values of exactly the same dimensions; a reading within its error never drops it.</summary>
    /// <returns>How many readings were tried.</returns>
    public static int Holds<T>(IReadOnlyList<T> all, Func<T, decimal?[]> dimensions, Identify<T> identify)
        where T : notnull
    {
        int tried = 0;
        foreach (T value in all)
        {
            decimal?[] exact = dimensions(value);
            foreach (decimal error in Errors)
            {
                Identification<T> found = identify(Read(exact, 0, error, ~0));
                Assert.NotEmpty(found.Candidates);
                foreach (Identified<T> candidate in found.Candidates)
                {
                    if (candidate.Value.Equals(value))
                    {
                        break;
                    }

                    Assert.True(exact.SequenceEqual(dimensions(candidate.Value)), $"{value} measured exactly, {candidate.Value} comes before it");
                }

                Assert.Contains(found.Candidates, c => c.Value.Equals(value));
                for (int subset = 1; subset < 1 << exact.Length; subset++)
                {
                    if (Enumerable.Range(0, exact.Length).All(i => (subset & (1 << i)) == 0 || exact[i] is null))
                    {
                        continue;
                    }

                    foreach (int side in new[] { -1, 0, 1 })
                    {
                        Identification<T> near = identify(Read(exact, side * error, error, subset));
                        Assert.True(near.Candidates.Any(c => c.Value.Equals(value)), $"{value} read {side * error} mm out with an error of {error} mm is dropped");
                        Assert.True(near.Candidates.Select(c => c.DeviationMillimetres).SequenceEqual(near.Candidates.Select(c => c.DeviationMillimetres).Order()), $"{value}: not ranked by deviation");
                        tried++;
                    }
                }
            }
        }

        return tried;
    }

    public static MeasuredLength Mm(double millimetres, double error = 0.1) => MeasuredLength.OfMillimetres((decimal)millimetres, (decimal)error);

    /// <summary>"44|49": what was found, the likeliest first.</summary>
    public static string Keys<T>(Identification<T> found)
        where T : IInterfaceValue<T> => string.Join('|', found.Candidates.Select(c => c.Value.FitKey));

    private static MeasuredLength?[] Read(decimal?[] exact, decimal away, decimal error, int subset) =>
        [.. exact.Select((e, i) => (subset & (1 << i)) != 0 && e is { } size ? MeasuredLength.OfMillimetres(size + away, error) : (MeasuredLength?)null)];
}
