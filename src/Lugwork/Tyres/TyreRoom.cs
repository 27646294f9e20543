using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Tyre in frame or fork, against the largest that the maker allows.</summary>
internal static class TyreRoom
{
    private static readonly Reason Room = new("tyre-within-limit", "{0} tyre where the maker allows up to {1}.", Cautions.TyreRoom) { Sources = [Sources.WidthTolerance, Sources.WheelsManual] };

    internal static readonly Reason TooWide = new("tyre-above-limit", "{0} tyre is wider than the largest that the maker allows, {1}: it may touch.", Cautions.TyreRoom)
    {
        Mend = "a tyre within the maker's limit",
        Sources = [Sources.WidthTolerance, Sources.WheelsManual],
    };

    internal static readonly Reason NoLimit = new("tyre-limit-missing", "No largest tyre is printed; that is unknown, not unlimited. Measure the narrowest gap.", Cautions.TyreRoom)
    {
        Sources = [Sources.WheelsManual, Sources.WheelRegulation],
    };

    internal static readonly Reason OtherWheel = new("other-wheel-size", "{0} tyre where the maker's limit, {1}, is for another wheel size: room, brakes and height of the crank change. Ask the maker.", Cautions.TyreRoom)
    {
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason LargerWheel = new("larger-wheel-in-fork", "{0} tyre is larger outside than the largest that the fork's maker allows, {1}: it may meet the crown at full travel and stop the wheel.", Cautions.TyreRoom)
    {
        Mend = "a tyre within the maker's limit, or a fork for this wheel size",
        Sources = [Sources.LargeFrontTyre, Sources.WheelsManual],
    };

    internal static readonly Reason NoSize = new("tyre-without-iso-size", "The tyre has no ISO size, as tubulars have none: measure it when it is mounted, and the narrowest gap.", Cautions.TyreRoom) { Sources = [Sources.Iso5775Part1Sample, Sources.WheelsManual] };

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

    /// <summary>
    /// Inputs: tyre width, inner rim width, largest width, tyre's bead seat, bead seat of the largest, width as it was measured and the rim on which it was. On a rim wider
    /// than the one on which it is measured a tyre grows by 0.4 to 1.0 mm for each millimetre; from a width that was measured it is reckoned the same way.
    /// </summary>
    public static Relation Grown { get; } = new GrownTyre();

    /// <summary>The inverse: the widest rim on which a tyre surely stays within the limit, nanometres; 0 where its label is above it.</summary>
    public static long WidestRim(long width, long largest) => width > largest ? 0 : GrownTyre.MeasuringRim(width) + Math.Max(0, largest - width - GrownTyre.Tolerance);
}
