namespace Lugwork.Tyres;

/// <summary>Tyre in frame or fork, against the largest that the maker allows.</summary>
internal static class TyreRoom
{
    private static readonly Reason Room = new("tyre-within-limit", "{0} tyre where the maker allows up to {1}.") { Sources = [Sources.WidthTolerance, Sources.WheelsManual] };

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

    /// <summary>Inputs: tyre width, largest width, tyre's bead seat, bead seat of the largest.</summary>
    public static Relation InFrame { get; } = new Computed("at most, within one wheel size", Judge, [], [Sources.WidthTolerance, Sources.WheelsManual, Sources.WheelRegulation]);

    /// <summary>The inverse: the widest tyre of a wheel size that surely goes where the maker allows this; 0 where nothing is sure.</summary>
    public static long Accepts(long largestWidth, long largestSeat, long seat) => seat == largestSeat ? largestWidth : 0;

    private static Outcome Judge(ReadOnlySpan<long> values) =>
        values[0] == 0 || values[2] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
        : values[1] == 0 || values[3] == 0 ? new(Verdict.NeedsMeasuring, NoLimit)
        : values[2] != values[3] ? new(Verdict.NeedsMeasuring, OtherWheel)
        : values[0] <= values[1] ? new(Verdict.Fits, Room) : new(Verdict.DoesNotFit, TooWide);
}
