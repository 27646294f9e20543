using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>How much longer a chain has become, and whether it is worn out.</summary>
/// <remarks>
/// Longer by e = 100 (s / (n p) - 1), per cent, s over the pins of n pitches p = 12.7 mm; 24 pitches of a new chain are 304.8 mm, "Measuring chain wear". Gauges that push rollers apart add the play of the rollers and read more.
/// Limits are rules that tool and component makers print, quoted second hand: 0.5 % for 11 and 12 speeds, 0.75 % for 10 and fewer, 1 % for one speed. One family
/// of 12 speeds with large rollers has 0.8 % and a gauge of its own, "When to replace a bike chain (quotes tool and component makers)". The chain maker's figure comes first.
/// </remarks>
public sealed class ChainWear
{
    private readonly double _percent;

    // 0.6 mm on a foot: more than a ruler is out by.
    private const double ShorterThanAny = -0.2;

    // 0.3 mm on a foot.
    private const double RulerDoubt = 0.1;

    private ChainWear(ChainSize chain, double percent) => (Chain, _percent) = (chain, percent);

    /// <summary>What the limits rest on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.ChainWearLimits, Lugwork.Sources.ChainWearShop, Lugwork.Sources.ChainWearRuler];

    /// <summary>The chain.</summary>
    public ChainSize Chain { get; }

    /// <summary>How much longer it is than new, per cent.</summary>
    public double Percent => _percent;

    /// <summary>Limit for this chain, per cent; null where none is printed: 13 speeds, freight chains.</summary>
    public double? LimitPercent => LimitOf(Chain);

    /// <summary>No chain is so much shorter than new, more than 0.2 % (our own bound, no source): miscounted, slack or not pulled straight. Measure again.</summary>
    public bool IsMismeasured => _percent < ShorterThanAny;

    /// <summary>At or above the limit; null where there is none, or where it has to be measured again.</summary>
    public bool? IsWornOut => !IsMismeasured && LimitPercent is { } limit ? _percent >= limit - 1e-9 : null;

    /// <summary>What comes of it: does not fit any more at or above the limit; needs measuring where there is no limit, where the reading is none that a chain has, and less than 0.1 % below the limit, which a ruler does not tell (our own bound, no source); else fits.</summary>
    public SumCheck Check
    {
        get
        {
            bool isNear = LimitPercent - _percent < RulerDoubt;
            Verdict verdict = IsWornOut is not { } worn ? Verdict.NeedsMeasuring : worn ? Verdict.DoesNotFit : isNear ? Verdict.NeedsMeasuring : Verdict.Fits;
            string mend = verdict switch { Verdict.Fits => "", Verdict.DoesNotFit => "a new chain; try it on the old sprockets and rings, which may be worn too", _ => LimitPercent is null ? "the limit of the chain's maker" : "the chain again, pulled straight, over as many pitches as the ruler has" };
            return new SumCheck("chain-wear", verdict, verdict == Verdict.NeedsMeasuring && isNear && !IsMismeasured ? $"{this}, nearer than a ruler tells" : ToString(), mend, Cautions.ChainWorn, Sources)
                .Comparing(("longer", _percent, "%"), ("limit", LimitPercent, "%"));
        }
    }

    /// <summary>How long the measured pins may at most stand apart, for a number of pitches; null where there is no limit.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="pitches">Pitches between the pins, 2 to 200; 24 are a foot.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static Length? LongestOver(ChainSize chain, int pitches)
    {
        ArgumentNullException.ThrowIfNull(chain);
        double fresh = Given.Number(pitches, 2, 200, nameof(pitches)) * Given.PitchMillimetres;
        return LimitOf(chain) is { } limit ? Length.FromMillimeters(fresh * (1 + (limit / 100))) : null;
    }

    /// <summary>Wear by a length over pins.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="overPins">From pin to pin under tension, 1 % shorter to 3 % longer than new.</param>
    /// <param name="pitches">Pitches between the pins, 2 to 200; 24 are a foot.</param>
    /// <exception cref="ArgumentException">A belt, which has no pins.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, as where pitches were counted wrongly.</exception>
    public static ChainWear Of(ChainSize chain, Length overPins, int pitches)
    {
        ArgumentNullException.ThrowIfNull(chain);
        if (chain == ChainSize.Belt)
        {
            throw new ArgumentException("a belt has no pins", nameof(chain));
        }

        double fresh = Given.Number(pitches, 2, 200, nameof(pitches)) * Given.PitchMillimetres;
        return new(chain, 100 * ((Given.Millimetres(overPins, fresh * 0.99, fresh * 1.03, nameof(overPins)) / fresh) - 1));
    }

    /// <summary>"0.52 % longer: worn out, the limit is 0.5 %".</summary>
    public override string ToString() => IsMismeasured ? FormattableString.Invariant($"{-_percent:0.00} % shorter than new: measure again (more than 0.2 % is no chain, our own bound, no source)") : LimitPercent is { } limit
        ? FormattableString.Invariant($"{_percent:0.00} % longer: {(IsWornOut == true ? "worn out" : "not worn out")}, the limit is {limit} %")
        : FormattableString.Invariant($"{_percent:0.00} % longer: no limit is known, ask the chain's maker");

    /// <summary>What no chain is below, in nanometres over 24 pitches: 0.2 % shorter than new.</summary>
    internal const long ShortestOver24 = NewOver24 / 1_000 * 998;

    /// <summary>What no chain is above: 3 % longer than new.</summary>
    internal const long LongestOver24 = NewOver24 / 100 * 103;

    /// <summary>What a ruler does not tell: 0.1 % of 24 pitches.</summary>
    internal const long RulerOver24 = NewOver24 / 1_000;

    private const long NewOver24 = 304_800_000;

    /// <summary>Nanometres over 24 pitches at which a chain is worn out; null where no limit is printed.</summary>
    internal static long? WornOver24(ChainSize chain) => LimitOf(chain) is { } limit ? NewOver24 + (NewOver24 / 10_000 * (long)(limit * 100)) : null;

    private static double? LimitOf(ChainSize chain) =>
        chain == ChainSize.Eighth ? 1 : chain == ChainSize.To8 || chain == ChainSize.For9 || chain == ChainSize.For10 ? 0.75 : chain == ChainSize.For11 || chain == ChainSize.For12 ? 0.5 : null;
}
