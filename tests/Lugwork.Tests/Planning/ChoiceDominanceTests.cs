using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>What is left when entries that others beat are dropped, on bare numbers.</summary>
public sealed class ChoiceDominanceTests
{
    private static (long Price, long Mass)[] All(ChoiceNetwork? network) => network is null ? []
        : [.. ChoiceNetworkTests.Choices(network).Select(network.Cost).Where(c => c.Price < ChoiceEntry.Never).Order()];

    private static List<(long Price, long Mass)> Front((long Price, long Mass)[] all)
    {
        List<(long Price, long Mass)> front = [];
        foreach ((long price, long mass) in all)
        {
            if (front.Count == 0 || mass < front[^1].Mass)
            {
                front.Add((price, mass));
            }
        }

        return front;
    }

    [Fact]
    public void As_many_of_the_best_as_are_asked_for_and_the_whole_front_are_left()
    {
        int fewer = 0;
        int none = 0;
        for (int seed = 0; seed < 300; seed++)
        {
            ChoiceNetwork network = ChoiceCapTests.Draw(new Random(seed), late: seed % 3 == 0);
            (long Price, long Mass)[] all = All(network);
            foreach (int builds in new[] { 1, 2, 6 })
            {
                (long Price, long Mass)[] left = All(ChoiceDominance.Thinned(network, builds, default));
                Assert.Equal(all.Take(builds).Select(a => a.Price), left.Take(builds).Select(a => a.Price));
                Assert.Equal(Front(all), Front(left));
                fewer += left.Length < all.Length ? 1 : 0;
            }

            none += all.Length == 0 ? 1 : 0;
        }

        Assert.True(fewer >= 150 && none >= 3, $"{fewer} with fewer left, {none} without an answer");
    }
}
