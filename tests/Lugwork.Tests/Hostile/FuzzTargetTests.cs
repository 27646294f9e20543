using Lugwork.Fuzz;

namespace Lugwork.Tests.Hostile;

/// <summary>The laws of the fuzzed targets hold of all seeds, among them what a run once found.</summary>
public sealed class FuzzTargetTests
{
    public static TheoryData<string> Targets => [.. FuzzTargets.All.Select(t => t.Name)];

    [Theory]
    [MemberData(nameof(Targets))]
    public void The_laws_hold_of_every_seed(string target)
    {
        FuzzTarget laws = FuzzTargets.All.Single(t => t.Name == target);
        int seeds = 0;
        foreach (byte[] seed in laws.Seeds)
        {
            laws.Run(seed);
            seeds++;
        }

        Assert.True(seeds >= 2, $"{target} has {seeds} seeds");
        Assert.NotEmpty(laws.Words);
    }

    /// <summary>A law that cannot break would find nothing.</summary>
    [Fact]
    public void A_broken_law_is_told() =>
        Assert.Equal("one: 'a' is not 'b'", Assert.Throws<LawBrokenException>(() => Law.Holds(false, "one", "'a' is not 'b'")).Message);
}
