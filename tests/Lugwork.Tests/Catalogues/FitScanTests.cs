using Lugwork.Catalogues;

namespace Lugwork.Tests.Catalogues;

/// <summary>A scan says what a plain loop says.</summary>
public sealed class FitScanTests
{
    [Fact]
    public void It_counts_and_finds_what_a_plain_loop_does()
    {
        Random random = new(6);
        for (int turn = 0; turn < 2_000; turn++)
        {
            int length = random.Next(70);
            int[] codes = [.. Enumerable.Range(0, length).Select(_ => random.Next(1, 4))];
            int[] figures = [.. Enumerable.Range(0, length).Select(_ => random.Next(6) == 0 ? int.MaxValue : random.Next(78, 83))];
            (int code, int least, int most) = (random.Next(1, 4), random.Next(78, 83), random.Next(5) == 0 ? int.MaxValue : random.Next(77, 83));
            int[] plain = [.. Enumerable.Range(0, length).Where(i => codes[i] == code && figures[i] >= least && figures[i] <= most)];
            Assert.Equal(plain.Length, FitScan.Count(codes, figures, code, least, most));
            int[] places = new int[random.Next(length + 3)];
            int found = FitScan.Find(codes, figures, code, least, most, places);
            Assert.Equal(plain.Take(places.Length), places[..found]);
            Assert.All(places[found..], p => Assert.Equal(0, p));
        }
    }

    [Fact]
    public void Columns_of_two_lengths_are_refused()
    {
        Assert.Throws<ArgumentException>(() => FitScan.Count([1, 2], [1], 1, 1, 1));
        Assert.Throws<ArgumentException>(() => FitScan.Find([1], [1, 2], 1, 1, 1, new int[2]));
    }
}
