namespace Lugwork.Drivetrain;

/// <summary>Two gears that are nearly one.</summary>
public sealed record GearPair
{
    internal GearPair(Gear lower, Gear higher, double stepPercent)
    {
        Lower = lower;
        Higher = higher;
        StepPercent = stepPercent;
    }

    /// <summary>The lower gear.</summary>
    public Gear Lower { get; internal init; }

    /// <summary>The higher gear, or another with the same ratio.</summary>
    public Gear Higher { get; internal init; }

    /// <summary>How much higher it is, per cent.</summary>
    public double StepPercent { get; internal init; }

    /// <summary>"42/17 and 52/21: 0.23 %".</summary>
    public override string ToString() => FormattableString.Invariant($"{Lower} and {Higher}: {StepPercent:0.00} %");
}
