using Lugwork.Workshop;
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

    /// <summary>Found by fuzzing: a name that is half of a character, in a file that is broken besides.</summary>
    [Theory]
    [InlineData("{\"\\uD80a\":")]
    [InlineData("{\"\\uD80a\": 1, \"parts\": [1]}")]
    public void A_name_that_is_half_of_a_character_is_refused(string text)
    {
        Assert.False(BuildFile.TryRead(text, out _, out System.Collections.Immutable.ImmutableArray<SpecProblem> problems));
        Assert.NotEmpty(problems);
        Assert.False(WorkRecordFile.TryRead(text, Build.From(Frame.Read("seat tube 27.2")).WorkPlan(), out _, out problems));
        Assert.NotEmpty(problems);
    }
}
