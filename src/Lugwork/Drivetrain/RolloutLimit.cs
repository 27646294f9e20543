using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>The longest development that a class of young riders may race with.</summary>
/// <remarks>
/// Rules change: one governing body's limits changed on 1 March 2025, and those of its two youngest classes were dropped. What is listed here is what was printed
/// before; the governing body's present text decides, and at the start a roll-out of the bicycle, not a sum. Limits of 5.10 to 7.93 m by "Gear Restrictions for Youth and Junior riders",
/// the change by "Changes in gear restrictions for youth riders".
/// </remarks>
public sealed class RolloutLimit
{
    // How much a rolled wheel may differ from a sum: our own bound, no source.
    private const double Uncertain = 0.01;

    private readonly double _longest;

    private RolloutLimit(string name, double longest, bool isPresentRule, Source? source)
    {
        Name = name;
        _longest = longest;
        IsPresentRule = isPresentRule;
        Source = source;
    }

    /// <summary>Limits of one governing body for road racing as they were printed until February 2025, youngest class first.</summary>
    public static ImmutableArray<RolloutLimit> PrintedUntilFebruary2025 { get; } =
    [
        new("youth E, under 8", 5_100, false, Sources.YouthLimits),
        new("youth D, under 10", 5_400, false, Sources.YouthLimits),
        new("youth C, under 12", 6_050, false, Sources.YouthLimits),
        new("youth B, under 14", 6_450, false, Sources.YouthLimits),
        new("youth A, under 16", 6_930, false, Sources.YouthLimits),
        new("junior, under 18", 7_930, false, Sources.YouthLimits),
    ];

    /// <summary>Where it is said that the limits have changed.</summary>
    public static Source ChangedBy => Sources.YouthLimitsChanged;

    /// <summary>Class of riders.</summary>
    public string Name { get; }

    /// <summary>Longest development.</summary>
    public Length Longest => Length.FromMillimeters(_longest);

    /// <summary>The limit was given as the rule in force; a printed one is not.</summary>
    public bool IsPresentRule { get; }

    /// <summary>Where the limit comes from; null for one that was given.</summary>
    public Source? Source { get; }

    /// <summary>A limit from the text that is in force.</summary>
    /// <param name="name">Class of riders.</param>
    /// <param name="longest">Longest development, 1 to 20 m.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static RolloutLimit Of(string name, Length longest)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new(name, Given.Millimetres(longest, 1_000, 20_000, nameof(longest)), true, null);
    }

    /// <summary>Judges the highest gear of a bicycle by its sum: Development = G x C against <see cref="Longest"/>.</summary>
    /// <param name="highest">The highest gear that the shifter can reach.</param>
    /// <param name="rolledCircumference">Way of the wheel for one turn, rolled out under load, 300 to 5,000 mm.</param>
    /// <returns>Needs measuring within 1 % of the limit to either side (our own bound, no source), as the tyre decides, and by every limit that is not given as the rule in force; does not fit above it; fits below.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public SumCheck Check(Gear highest, Length rolledCircumference)
    {
        ArgumentNullException.ThrowIfNull(highest);
        double development = highest.Development(rolledCircumference).Millimeters;
        double share = (development / _longest) - 1;
        bool isNear = Math.Abs(share) <= Uncertain;
        Verdict verdict = !IsPresentRule || isNear ? Verdict.NeedsMeasuring : share > 0 ? Verdict.DoesNotFit : Verdict.Fits;
        string told = FormattableString.Invariant($"{highest} rolls {development / 1_000:0.000} m, {(development > _longest ? "above" : "within")} the {_longest / 1_000:0.00##} m of {Name}")
            + (isNear ? "; so near it the tyre decides: roll it out" : "") + (IsPresentRule ? "" : "; limits have changed since it was printed: ask for the rule in force");
        string mend = !IsPresentRule ? "the governing body's rule in force, and a roll-out of the bicycle" : verdict == Verdict.DoesNotFit ? "a smaller ring, or a larger smallest sprocket" : isNear ? "a roll-out of the bicycle" : "";
        return new SumCheck("rollout-limit", verdict, told, mend, Cautions.RollOut, Source is { } printed ? [printed, Sources.YouthLimitsChanged, Sources.GearInchesPage] : [Sources.GearInchesPage])
            .Comparing(("development", development, "mm"), ("limit", _longest, "mm"));
    }

    /// <summary>"youth A, under 16: 6.93 m".</summary>
    public override string ToString() => FormattableString.Invariant($"{Name}: {_longest / 1_000:0.00##} m");
}
