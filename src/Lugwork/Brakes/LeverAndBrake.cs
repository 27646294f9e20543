using System.Globalization;

namespace Lugwork.Brakes;

/// <summary>A cable lever against a brake: how much of the cable that the brake wants the lever pulls, and what comes of it. Immutable.</summary>
/// <remarks>Cable share = pull of the lever / pull that the brake wants, by class (short 1, long about 2); the force at the brake goes the other way round. Classes, not millimetres: makers' figures differ within one. No unit; the classes by "Brake Lever Compatibility".</remarks>
public sealed class LeverAndBrake
{
    private LeverAndBrake(decimal? cable, SumCheck check)
    {
        CableShare = cable;
        Check = check;
    }

    /// <summary>Ratio of the cable that the lever pulls to the cable that the brake wants: about 0.5, 1 or 2; null where either is not known.</summary>
    public decimal? CableShare { get; }

    /// <summary>Ratio of the force at the brake, for the same hand force, to that with a lever of its own class: the inverse of the cable share; null where it is not known.</summary>
    public decimal? ForceShare => 1 / CableShare;

    /// <summary>What comes of it; the same relation as the joint of a build.</summary>
    public SumCheck Check { get; }

    /// <summary>Compares a lever with a brake.</summary>
    /// <param name="lever">The lever's class of pull.</param>
    /// <param name="brake">The kind of brake.</param>
    public static LeverAndBrake Of(CablePull lever, BrakeType brake)
    {
        ArgumentNullException.ThrowIfNull(lever);
        ArgumentNullException.ThrowIfNull(brake);
        Outcome outcome = BrakeActionRelations.LeverAndBrake.Judge([lever.FitCode, brake.FitCode]);
        Reason reason = outcome.Reason!;
        string told = string.Format(CultureInfo.InvariantCulture, reason.Template, lever.TradeName, brake.TradeName);
        return new(brake.IsWithoutCable ? null : lever.TimesShort / brake.Pull?.TimesShort, new SumCheck("lever-and-brake", outcome.Verdict, told, reason.Mend, reason.Caution ?? Cautions.BrakeWork, reason.Sources)
            .Comparing(("cable of the lever", (double?)lever.TimesShort, ""), ("cable that the brake wants", (double?)brake.Pull?.TimesShort, "")));
    }

    /// <summary>"unsafe: direct-pull brake wants about twice the cable ...".</summary>
    public override string ToString() => Check.ToString();
}
