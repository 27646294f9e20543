namespace Lugwork.Tests.Measures;

/// <summary>A range as the documentation states it: both ends are taken, and what lies a thousandth outside is refused.</summary>
internal static class StatedRange
{
    public static void Holds(double least, double most, Action<double> use)
    {
        use(least);
        use(most);
        Assert.Throws<ArgumentOutOfRangeException>(() => use(least - 0.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => use(most + 0.001));
    }

    public static void HoldsWhole(int least, int most, Action<int> use)
    {
        use(least);
        use(most);
        Assert.Throws<ArgumentOutOfRangeException>(() => use(least - 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => use(most + 1));
    }
}
