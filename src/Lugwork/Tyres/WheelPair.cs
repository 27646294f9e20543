namespace Lugwork.Tyres;

/// <summary>Two wheels of one bicycle.</summary>
internal static class WheelPair
{
    private static readonly Reason Same = new("wheels-alike", "{0} in front and {1} behind.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason Meant = new("wheels-mixed-as-designed", "{0} in front and {1} behind, as the frame is designed.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason Mixed = new("wheels-mixed", "{0} in front and {1} behind, and the frame is not known to be designed for this pair (its own: front {2}, rear {3}): steering, height of the pedals and room change. Ask the frame's maker.", Cautions.TyreRoom)
    {
        Mend = "wheels of one size, or the frame maker's word for the mixed pair",
        Sources = [Sources.CommonPractice],
    };

    /// <summary>Inputs: seat of the front rim, of the rear rim, the seats that the frame is designed for (none where its maker says nothing).</summary>
    public static Relation OnFrame { get; } = new Computed("wheels alike, or the pair of the frame's design", Judge, [], [Sources.CommonPractice]);

    private static Outcome Judge(System.ReadOnlySpan<long> values) =>
        values[0] == 0 || values[1] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
        : values[2] == 0 && values[3] == 0 && values[0] == values[1] ? new(Verdict.Fits, Same)
        : (values[2] == 0 || values[2] == values[0]) && (values[3] == 0 || values[3] == values[1]) && (values[0] == values[1] || (values[2] != 0 && values[3] != 0)) ? new(Verdict.Fits, Meant)
        : new(Verdict.NeedsMeasuring, Mixed);
}
