namespace Lugwork;

/// <summary>Threads to the inch as a length over ten threads, so that pitches can be told apart like any other measured length.</summary>
internal static class ThreadCount
{
    private const decimal TenInches = 254m;

    /// <summary>A count with a gauge is right to half a thread in an inch.</summary>
    private const decimal HalfThread = 0.5m;

    /// <summary>Ten threads, millimetres, and how far the count may put them out.</summary>
    /// <param name="threadsPerInch">4 to 100; 25.4 is a pitch of 1 mm.</param>
    public static (decimal Millimetres, decimal Error) OverTen(decimal threadsPerInch)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threadsPerInch, 4m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(threadsPerInch, 100m);
        decimal ten = TenInches / threadsPerInch;
        return (decimal.Round(ten, 6), decimal.Round(ten - (TenInches / (threadsPerInch + HalfThread)), 6));
    }

    /// <summary>Ten threads of a pitch in micrometres, millimetres.</summary>
    public static decimal OverTen(int micrometres) => micrometres / 100m;
}
