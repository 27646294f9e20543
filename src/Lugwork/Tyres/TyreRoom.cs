using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Tyre in frame or fork, against the largest that the maker allows.</summary>
internal static class TyreRoom
{
    private static readonly Reason Room = new("tyre-within-limit", "{0} tyre where the maker allows up to {1}.", Cautions.TyreRoom) { Sources = [Sources.WidthTolerance, Sources.WheelsManual] };

    private static readonly Reason TooWide = new("tyre-above-limit", "{0} tyre is wider than the largest that the maker allows, {1}: it may touch.", Cautions.TyreRoom)
    {
        Mend = "a tyre within the maker's limit",
        Sources = [Sources.WidthTolerance, Sources.WheelsManual],
    };

    private static readonly Reason NoLimit = new("tyre-limit-missing", "No largest tyre is printed; that is unknown, not unlimited. Measure the narrowest gap.", Cautions.TyreRoom)
    {
        Sources = [Sources.WheelsManual, Sources.WheelRegulation],
    };

    private static readonly Reason OtherWheel = new("other-wheel-size", "{0} tyre where the maker's limit, {1}, is for another wheel size: room, brakes and height of the crank change. Ask the maker.", Cautions.TyreRoom)
    {
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason LargerWheel = new("larger-wheel-in-fork", "{0} tyre is larger outside than the largest that the fork's maker allows, {1}: it may meet the crown at full travel and stop the wheel.", Cautions.TyreRoom)
    {
        Mend = "a tyre within the maker's limit, or a fork for this wheel size",
        Sources = [Sources.LargeFrontTyre, Sources.WheelsManual],
    };

    private static readonly Reason NoSize = new("tyre-without-iso-size", "The tyre has no ISO size, as tubulars have none: measure it when it is mounted, and the narrowest gap.", Cautions.TyreRoom) { Sources = [Sources.Iso5775Part1Sample, Sources.WheelsManual] };

    /// <summary>Inputs: tyre width, largest width, tyre's bead seat, bead seat of the largest.</summary>
    public static Relation InFrame { get; } = new Computed("at most, within one wheel size", v => Judge(v, OtherWheel), [], [Sources.WidthTolerance, Sources.WheelsManual, Sources.WheelRegulation]);

    /// <summary>Code of a fork without travel.</summary>
    public const long Rigid = 2;

    /// <summary>Code of a fork with travel.</summary>
    public const long Telescopic = 1;

    /// <summary>The same at a fork, fifth input whether it has travel: a tyre of another wheel size that is larger outside may meet the crown at full travel.</summary>
    public static Relation InFork { get; } = new Computed("at most, within one wheel size; never larger outside", v => Judge(v, OtherWheel, v[4] == Rigid ? null : LargerWheel), [], [Sources.WidthTolerance, Sources.WheelsManual, Sources.WheelRegulation, Sources.LargeFrontTyre]);

    /// <summary>The inverse: the widest tyre of a wheel size that surely goes where the maker allows this; 0 where nothing is sure.</summary>
    public static long Accepts(long largestWidth, long largestSeat, long seat) => seat == largestSeat ? largestWidth : 0;

    /// <summary>Outer diameter as the two numbers of the size give it: seat and twice the width; nanometres.</summary>
    private static long Outside(long width, long seat) => (seat * Nanometres.PerMillimetre) + (2 * width);

    private static Outcome Judge(ReadOnlySpan<long> values, Reason otherWheel, Reason? larger = null) =>
        values[0] == 0 || values[2] == 0 ? new(Verdict.NeedsMeasuring, NoSize)
        : values[1] == 0 || values[3] == 0 ? new(Verdict.NeedsMeasuring, NoLimit)
        : values[2] != values[3] ? larger is not null && Outside(values[0], values[2]) > Outside(values[1], values[3]) ? new(Verdict.Unsafe, larger) : new(Verdict.NeedsMeasuring, otherWheel)
        : values[0] <= values[1] ? new(Verdict.Fits, Room) : new(Verdict.DoesNotFit, TooWide);

    private static readonly Reason GrownInside = new("grown-within-limit", "{0} on a rim {1} mm wide inside stays within the largest that the maker allows, {2}.") { Sources = [Sources.MeasuringRims, Sources.WidthTolerance] };

    private static readonly Reason GrownMaybe = new("grown-near-limit", "{0} on a rim {1} mm wide inside grows beyond its label, maybe beyond the largest that the maker allows, {2}: measure it when it is mounted.", Cautions.TyreRoom)
    {
        Mend = "a narrower tyre, or a narrower rim",
        Sources = [Sources.MeasuringRims, Sources.WidthTolerance],
    };

    private static readonly Reason GrownOut = new("grown-above-limit", "{0} on a rim {1} mm wide inside grows beyond the largest that the maker allows, {2}, by more than tyres differ from their label.", Cautions.TyreRoom)
    {
        Mend = "a narrower tyre, or a narrower rim",
        Sources = [Sources.MeasuringRims, Sources.WidthTolerance],
    };

    private static readonly Reason OtherWheelGrown = OtherWheel with { Template = "{0} where the maker's limit, {2}, is for another wheel size: ask the maker, and measure the mounted tyre." };

    private static readonly Reason TooWideGrown = TooWide with { Template = "{0} is wider than the largest that the maker allows, {2}, on any rim." };

    /// <summary>A tyre may measure this much less or more than its label: arithmetic refuses only beyond it, and a tyre that grows fits only this far within.</summary>
    private const long Tolerance = 3 * Nanometres.PerMillimetre;

    /// <summary>From which width, millimetres, a tyre is measured on which rim, millimetres inside.</summary>
    private static readonly (int From, int Rim)[] MeasuringRims =
        [(18, 15), (22, 17), (25, 19), (29, 21), (35, 23), (47, 25), (58, 30), (66, 35), (72, 45), (84, 76), (114, 94)];

    /// <summary>
    /// Inputs: tyre width, inner rim width, largest width, tyre's bead seat, bead seat of the largest. On a rim wider than the one on which
    /// it is measured a tyre grows by 0.4 to 1.0 mm for each millimetre.
    /// </summary>
    public static Relation Grown { get; } = new GrownTyre();

    /// <summary>The inverse: the widest rim on which a tyre surely stays within the limit, nanometres; 0 where its label is above it.</summary>
    public static long WidestRim(long width, long largest) => width > largest ? 0 : MeasuringRim(width) + Math.Max(0, largest - width - Tolerance);

    private static long MeasuringRim(long width)
    {
        long rim = MeasuringRims[0].Rim;
        foreach ((int from, int inner) in MeasuringRims)
        {
            rim = width >= from * Nanometres.PerMillimetre ? inner : rim;
        }

        return rim * Nanometres.PerMillimetre;
    }

    private sealed class GrownTyre : Relation, ICutsByOthers
    {
        public override string Kind => "arithmetic: growth on a rim wider than the measuring rim, within one wheel size";

        public override ImmutableArray<Source> RestsOn => [Sources.MeasuringRims, Sources.WidthTolerance];

        /// <summary>The rims at which a known tyre perhaps or surely leaves a known limit.</summary>
        public IEnumerable<long> CutsFor(int input, CandidateRow row, ImmutableArray<JointInput> inputs)
        {
            long[] widths = row[0].Codes ?? [row[0].Low];
            long[] limits = row[2].Codes ?? [row[2].Low];
            foreach (long width in input == 1 ? widths : [])
            {
                foreach (long limit in limits)
                {
                    yield return MeasuringRim(width);
                    yield return WidestRim(width, limit);
                    yield return MeasuringRim(width) + ((limit + Tolerance - width) * 5 / 2);
                }
            }
        }

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long width, long inner, long largest) = (values[0], values[1], values[2]);
            if (width == 0 || values[3] == 0)
            {
                return new(Verdict.NeedsMeasuring, NoSize);
            }

            if (inner == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            if (largest == 0 || values[4] == 0)
            {
                return new(Verdict.NeedsMeasuring, NoLimit);
            }

            if (values[3] != values[4])
            {
                return new(Verdict.NeedsMeasuring, OtherWheelGrown);
            }

            if (width > largest)
            {
                return new(Verdict.DoesNotFit, TooWideGrown);
            }

            long grows = Math.Max(0, inner - MeasuringRim(width));
            return grows == 0 || width + grows + Tolerance <= largest ? new(Verdict.Fits, GrownInside)
                : width + (grows * 2 / 5) - Tolerance <= largest ? new(Verdict.NeedsMeasuring, GrownMaybe)
                : new(Verdict.DoesNotFit, GrownOut);
        }
    }
}
