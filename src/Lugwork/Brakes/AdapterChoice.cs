using System.Globalization;

namespace Lugwork.Brakes;

/// <summary>Which adapter a mount takes for a rotor, out of those that exist. Immutable.</summary>
/// <remarks>Rotor = the mount's own + increment. It asks the same relations as the joints of a build: nothing is computed for a gap that no adapter is made for. No adapter is named for a rotor above the limit. Diameters in mm; the increments by "How to Choose the Right Disc Brake Adapter", and each row names its own source.</remarks>
public sealed class AdapterChoice
{
    private AdapterChoice(AdapterIncrement? increment, string adapter, SumCheck onMount, SumCheck limit)
    {
        Increment = increment;
        Adapter = adapter;
        OnMount = onMount;
        Limit = limit;
    }

    /// <summary>How much larger a rotor the adapter asks for; null where none is needed, none is made, the adapter changes the way of mounting and not the size, or the rotor is above the limit.</summary>
    public AdapterIncrement? Increment { get; }

    /// <summary>The adapter, to buy; empty where none is needed, none is made, it has to be looked at first, or the rotor is above the limit.</summary>
    public string Adapter { get; }

    /// <summary>The caliper on the mount with this rotor.</summary>
    public SumCheck OnMount { get; }

    /// <summary>The rotor against the largest that the maker of frame or fork allows; a missing figure needs measuring.</summary>
    public SumCheck Limit { get; }

    /// <summary>The worse of the two.</summary>
    public Verdict Verdict => Verdicts.Worse(OnMount.Verdict, Limit.Verdict);

    /// <summary>Chooses the adapter.</summary>
    /// <param name="mount">The mount of the frame or fork.</param>
    /// <param name="caliper">How the caliper is held.</param>
    /// <param name="rotor">The rotor.</param>
    /// <param name="largestRotor">The largest that the maker of frame or fork allows; null where it is not known.</param>
    public static AdapterChoice Of(BrakeMount mount, CaliperFoot caliper, RotorSize rotor, RotorSize? largestRotor)
    {
        ArgumentNullException.ThrowIfNull(mount);
        ArgumentNullException.ThrowIfNull(caliper);
        ArgumentNullException.ThrowIfNull(rotor);
        Outcome on = BrakeRelations.OnMount.Judge([mount.FitCode, caliper.FitCode, RotorSize.Exact(rotor)]);
        Outcome limit = largestRotor is null ? BrakeRelations.RotorLimitMissing : BrakeRelations.Limit.Judge([RotorSize.Exact(rotor), RotorSize.Exact(largestRotor)]);
        SumCheck held = Told("rotor-limit", limit, string.Format(CultureInfo.InvariantCulture, limit.Reason!.Template, rotor.TradeName, largestRotor?.FitKey), null)
            .Comparing(("rotor", rotor.FitCode, "mm"), ("largest rotor", largestRotor?.FitCode, "mm"));
        if (limit.Verdict == Verdict.Unsafe && on.Bridge is { } withheld)
        {
            return new(null, "", new("brake-adapter", on.Verdict, $"The rotor is above the limit: no adapter is named for {mount.TradeName}.", "a rotor within the maker's largest", withheld.Caution, withheld.Sources), held);
        }

        string told = on.Bridge?.What ?? "";
        string adapter = on.Verdict == Verdict.NeedsPart ? told : "";
        return new(
            on is { Verdict: Verdict.NeedsPart, Bridge: { } bridge } ? Step(bridge.To - bridge.From) : null,
            adapter,
            Told("brake-adapter", on, string.Format(CultureInfo.InvariantCulture, on.Reason!.Template, mount.TradeName, caliper.TradeName, rotor.TradeName).Replace("[bridge]", told, StringComparison.Ordinal), on.Bridge).Comparing(("rotor", rotor.FitCode, "mm"), ("mount's own rotor", mount.NativeRotorMillimetres, "mm")),
            held);
    }

    private static SumCheck Told(string id, Outcome outcome, string reason, Bridge? bridge) =>
        new(id, outcome.Verdict, reason, bridge?.What ?? outcome.Reason!.Mend, bridge?.Caution ?? outcome.Reason!.Caution, bridge?.Sources ?? (outcome.Reason!.Sources.IsEmpty ? [Sources.CommonPractice] : outcome.Reason.Sources));

    private static AdapterIncrement? Step(long millimetres)
    {
        foreach (AdapterIncrement step in AdapterIncrement.All)
        {
            if (step.Millimetres == millimetres)
            {
                return step;
            }
        }

        return null;
    }

    /// <summary>"needs a part: On post mount 160 a 180 mm rotor takes an adapter: ...".</summary>
    public override string ToString() => Limit.Verdict >= OnMount.Verdict ? $"{Limit} {OnMount.Sentence}" : OnMount.ToString();
}
