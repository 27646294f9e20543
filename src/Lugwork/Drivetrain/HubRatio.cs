namespace Lugwork.Drivetrain;

/// <summary>Turns of the wheel for one turn of the sprocket, inside a hub: an exact fraction of tooth counts, in lowest terms.</summary>
/// <remarks>Both numbers are 1 to 1,000,000. The default is direct drive, 1/1.</remarks>
public readonly record struct HubRatio
{
    private readonly int _over;

    private readonly int _under;

    /// <summary>Makes a ratio of two whole numbers.</summary>
    /// <param name="over">Number of turns of the wheel, 1 to 1,000,000.</param>
    /// <param name="under">Number of turns of the sprocket, 1 to 1,000,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public HubRatio(int over, int under)
    {
        int first = (int)Given.Number(over, 1, 1_000_000, nameof(over));
        int second = (int)Given.Number(under, 1, 1_000_000, nameof(under));
        int common = first;
        for (int rest = second; rest != 0;)
        {
            (common, rest) = (rest, common % rest);
        }

        (_over, _under) = ((first / common) - 1, (second / common) - 1);
    }

    /// <summary>Number of turns of the wheel, in lowest terms.</summary>
    public int Over => _over + 1;

    /// <summary>Number of turns of the sprocket, in lowest terms.</summary>
    public int Under => _under + 1;

    /// <summary>The wheel turns with the sprocket.</summary>
    public bool IsDirect => Over == Under;

    /// <summary>The ratio as a number: below 1 for a low gear.</summary>
    public double Value => (double)Over / Under;

    /// <summary>"31/24", "1/1".</summary>
    public override string ToString() => FormattableString.Invariant($"{Over}/{Under}");
}
