using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>How far a tyre on a rim may be inflated: never above the lowest limit of tyre, rim and, on a hookless rim, 5 bar. Immutable.</summary>
/// <remarks>Least ≤ p ≤ min(tyre, rim, 5 bar on a hookless rim), bar: the lower marking by "TBIS 4210-1:2018 (text of ISO 4210-1), clause 2.27", the rim by its tyre's width by "Tire size and pressure (PDF)", 5 bar by "Tubeless racing bike requirement". A missing limit is unknown, not unlimited; a missing least is unknown, not none. The pressure that a rim stands falls with the width of its tyre: ask its maker for the tyre at hand.</remarks>
public sealed class PressureLimits
{
    private const double Hookless = 5;

    private readonly double? _tyre;
    private readonly double? _rim;
    private readonly double? _least;
    private readonly RimType? _type;

    private PressureLimits(double? tyre, double? rim, RimType? type, double? least) => (_tyre, _rim, _type, _least) = (tyre, rim, type, least);

    /// <summary>The lowest limit that is known; one that is not known may be lower, see <see cref="IsComplete"/>. Null where none is known. A rim of unknown type counts as hookless.</summary>
    public Pressure? Most => Lowest is { } bars ? Pressure.FromBars(bars) : null;

    /// <summary>Which limit is the lowest: "tyre", "rim", "hookless rim"; empty where no limit is known.</summary>
    public string Binding => Lowest is not { } lowest ? "" : lowest >= _tyre ? "tyre" : lowest >= _rim ? "rim" : _type is null ? "hookless rim, which it may be" : "hookless rim";

    /// <summary>Limits of tyre and rim, the tyre's least and the type of the rim are all known.</summary>
    public bool IsComplete => _tyre is not null && _rim is not null && _type is not null && _least is not null;

    /// <summary>What the rule rests on.</summary>
    public static ImmutableArray<Source> Sources { get; } = [Lugwork.Sources.LowerMarking, Lugwork.Sources.PressureAndWidth, Lugwork.Sources.HooklessPressure];

    private bool MayBeHookless => _type is null || _type == RimType.Hookless;

    // The lowest limit that holds whatever is not known.
    private double Certain => Math.Min(Math.Min(_tyre ?? double.MaxValue, _rim ?? double.MaxValue), _type == RimType.Hookless ? Hookless : double.MaxValue);

    private double? Lowest
    {
        get
        {
            double lowest = Math.Min(Math.Min(_tyre ?? double.MaxValue, _rim ?? double.MaxValue), MayBeHookless ? Hookless : double.MaxValue);
            return lowest < double.MaxValue ? lowest : null;
        }
    }

    /// <summary>Puts the limits together.</summary>
    /// <param name="tyreMost">The most that is printed on the tyre, 0.2 to 20 bar; null where it is not known.</param>
    /// <param name="rimMost">The most that the rim's maker allows with this tyre, 0.2 to 20 bar; null where it is not known.</param>
    /// <param name="rim">How the rim holds the bead; null where it is not known.</param>
    /// <param name="tyreLeast">The least that is printed on the tyre, 0.2 to 20 bar; null where it is not known: it is then asked for. Where none is printed, <see cref="LeastByOlderStandard"/> has one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is out of range or no number.</exception>
    public static PressureLimits Of(Pressure? tyreMost, Pressure? rimMost, RimType? rim, Pressure? tyreLeast = null) =>
        new(Bars(tyreMost, nameof(tyreMost)), Bars(rimMost, nameof(rimMost)), rim, Bars(tyreLeast, nameof(tyreLeast)));

    /// <summary>Holds a pressure against the limits.</summary>
    /// <param name="pressure">0.2 to 20 bar.</param>
    /// <returns>Unsafe above a limit or below the tyre's least; needs measuring where a limit is not known, or the tyre's least is not; fits otherwise.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is out of range or no number.</exception>
    public SumCheck Check(Pressure pressure)
    {
        double bars = NumberRange.Bars(pressure, 0.2, 20);
        string told = string.Create(CultureInfo.InvariantCulture, $"{bars:0.0#} bar");
        SumCheck check = bars > Certain ? Says(Verdict.Unsafe, $"{told} is above {Shown(Certain)}, the limit of the {(Certain >= _tyre ? "tyre" : Certain >= _rim ? "rim" : "hookless rim")}")
            : bars < _least ? Says(Verdict.Unsafe, $"{told} is below the tyre's least, {Shown(_least)}", "a pressure between the limits; where there is none, another tyre or rim")
            : _tyre is null ? Says(Verdict.NeedsMeasuring, $"{told}, and the tyre's limit is not known", "read it off the side of the tyre")
            : bars > Hookless && _type is null ? Says(Verdict.NeedsMeasuring, $"{told} is above the {Shown(Hookless)} of hookless rims, and the rim may be one", "ask the rim's maker whether it is hookless")
            : _rim is null ? Says(Verdict.NeedsMeasuring, $"{told}, and the rim's limit is not known", "ask the rim's maker for this tyre width")
            : _least is null ? Says(Verdict.NeedsMeasuring, $"{told} is within {Shown(Lowest)}, and the tyre's least is not known", "read the least off the side of the tyre; where none is printed, the older standard gives one")
            : Says(Verdict.Fits, $"{told} is within {Shown(Lowest)}, the limit of the {Binding}", "");
        return check.Comparing(("pressure", bars, "bar"), ("tyre's limit", _tyre, "bar"), ("rim's limit", _rim, "bar"), ("limit of hookless rims", MayBeHookless ? Hookless : null, "bar"), ("tyre's least", _least, "bar"));
    }

    /// <summary>The lowest recommended pressure that an older edition of the tyre standard is reported to give: 3 bar up to 25 mm, 2 bar above on roads, 1.5 bar off them. The tyre's own marking comes first.</summary>
    /// <param name="tyreWidth">Nominal section width, 18 to 132 mm, in whole millimetres.</param>
    /// <param name="offRoad">For use off roads.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is out of range, no number or no whole millimetres.</exception>
    public static Pressure LeastByOlderStandard(Length tyreWidth, bool offRoad)
    {
        int width = NumberRange.Whole(tyreWidth, 18, 132);
        return Pressure.FromBars(offRoad ? 1.5 : width <= 25 ? 3 : 2);
    }

    /// <summary>Where the lowest recommended pressures come from.</summary>
    public static Source LeastSource => Lugwork.Sources.OlderIso5775;

    private static double? Bars(Pressure? pressure, string name) => pressure is { } given ? NumberRange.Bars(given, 0.2, 20, name) : null;

    private static SumCheck Says(Verdict verdict, string reason, string mend = "a lower pressure, and a tyre that carries the rider with it") =>
        new("tyre-pressure", verdict, reason, mend, Cautions.PressureLimit, Sources);

    private static string Shown(double? bars) => string.Create(CultureInfo.InvariantCulture, $"{bars:0.0#} bar");

    /// <summary>"at most 5.0 bar (hookless rim)", "at most 8.0 bar (tyre); the rim's limit is not known".</summary>
    public override string ToString()
    {
        string unknown = (_tyre, _rim) switch { (null, null) => "the limits of tyre and rim are not known", (null, _) => "the tyre's limit is not known", (_, null) => "the rim's limit is not known", _ => "" };
        return Lowest is not { } lowest ? unknown : unknown.Length == 0 ? $"at most {Shown(lowest)} ({Binding})" : $"at most {Shown(lowest)} ({Binding}); {unknown}";
    }
}
