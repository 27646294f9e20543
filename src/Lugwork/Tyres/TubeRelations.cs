using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Inner tube in tyre: bead seat and width.</summary>
internal static class TubeRelations
{
    // Tubes are sold for pairs of seats as far apart as 622 and 635; past that one is plainly too long or too short.
    private const long Near = 13;

    private static readonly Reason SameSeat = new("tube-of-the-seat", "The tube is made for {1} or {2}, the tyre is {0}.") { Sources = [Sources.TubeMismatch, Sources.CommonPractice] };

    private static readonly Reason InRange = new("tube-width", "The tube is made for tyres from {1} to {2} mm; the tyre is {0}.") { Sources = [Sources.CommonPractice] };

    /// <summary>Inputs: bead seat of the tyre, bead seat of the tube, its other bead seat.</summary>
    public static Relation Seat { get; } = new Computed("same seat as one of two, or near it", JudgeSeat, [], [Sources.TubeMismatch, Sources.CommonPractice]);

    /// <summary>Inputs: width of the tyre, narrowest and widest tyre of the tube.</summary>
    public static Relation Width { get; } = new Computed("within the limits", JudgeWidth, [], [Sources.CommonPractice]);

    private static Outcome JudgeSeat(ReadOnlySpan<long> values)
    {
        (long tyre, long one, long other) = (values[0], values[1], values[2]);
        if (tyre == 0 || one == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        long away = other == 0 ? Math.Abs(tyre - one) : Math.Min(Math.Abs(tyre - one), Math.Abs(tyre - other));
        return away == 0 ? new(Verdict.Fits, SameSeat) : away <= Near ? new(Verdict.NeedsMeasuring, Misfits.NearSeat) : new(Verdict.DoesNotFit, Misfits.OtherSeat);
    }

    private static Outcome JudgeWidth(ReadOnlySpan<long> values)
    {
        (long tyre, long narrowest, long widest) = (values[0], values[1], values[2]);
        return tyre == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : narrowest != 0 && tyre < narrowest ? new(Verdict.DoesNotFit, Misfits.TooWide)
            : widest != 0 && tyre > widest ? new(Verdict.DoesNotFit, Misfits.TooNarrow)
            : new(Verdict.Fits, InRange);
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason NearSeat = new("tube-of-a-near-seat", "The tube is made for {1} or {2}, the tyre is {0}: near enough that some tubes serve for both. Look whether its maker names this seat too.", Cautions.TubeCare)
        {
            Mend = "a tube that names the tyre's bead seat",
            Sources = [Sources.CommonPractice],
        };

        public static readonly Reason OtherSeat = new("tube-of-another-seat", "The tube is made for {1} or {2}, the tyre is {0}: it is too long and folds, or too short and is stretched.", Cautions.TubeCare)
        {
            Mend = "a tube that names the tyre's bead seat",
            Sources = [Sources.TubeMismatch],
        };

        public static readonly Reason TooWide = new("tube-too-wide", "The tube is made for tyres from {1} mm; in one of {0} it folds.", Cautions.TubeCare)
        {
            Mend = "a tube with the tyre's width in its range",
            Sources = [Sources.CommonPractice],
        };

        public static readonly Reason TooNarrow = new("tube-too-narrow", "The tube is made for tyres up to {2} mm; in one of {0} it is stretched thin.", Cautions.TubeCare)
        {
            Mend = "a tube with the tyre's width in its range",
            Sources = [Sources.CommonPractice],
        };
    }
}
