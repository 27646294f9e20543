namespace Lugwork.Drivetrain;

/// <summary>Two gears that are nearly one.</summary>
/// <param name="Lower">The lower gear.</param>
/// <param name="Higher">The higher gear, or another with the same ratio.</param>
/// <param name="StepPercent">How much higher it is, per cent.</param>
public sealed record GearPair(Gear Lower, Gear Higher, double StepPercent)
{
    /// <summary>"42/17 and 52/21: 0.23 %".</summary>
    public override string ToString() => FormattableString.Invariant($"{Lower} and {Higher}: {StepPercent:0.00} %");
}
