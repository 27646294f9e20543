using System.Collections.Immutable;

namespace Lugwork.Seating;

/// <summary>The binder on the post, and a dropper's cable into the frame.</summary>
internal static class BinderRelations
{
    /// <summary>Inputs: bore, post, gap between the ears.</summary>
    public static Relation OnPost { get; } = new Ears();

    private static readonly Reason ComesIn = new("dropper-comes-in", "A dropper that is {1} in a frame with an {0}.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason NeedsNoHole = new("dropper-needs-no-hole", "A dropper that is {1} needs no hole in the frame.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason NoWayIn = new("dropper-has-no-way-in", "A dropper that is {1} needs a hole for its cable, and the frame has none. Never drill one.")
    {
        Mend = "a dropper that is routed outside, or a wireless one",
        Sources = [Sources.CommonPractice],
    };

    /// <summary>Inputs: frame, dropper.</summary>
    public static Relation Dropper { get; } = new Matrix(0, 1, DropperCell, [], [Sources.CommonPractice]);

    private static Outcome DropperCell(long entry, long routing) =>
        routing != DropperRouting.Internal.FitCode ? new(Verdict.Fits, NeedsNoHole)
        : entry == DropperEntry.Hole.FitCode ? new(Verdict.Fits, ComesIn)
        : new(Verdict.DoesNotFit, NoWayIn);

    private static readonly Reason CollarHolds = new("tube-takes-collar", "The seat tube is held by a {0}.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason EarsAreTheBinder = new("ears-are-the-binder", "This seat tube has {0}: they are the binder, and no collar goes over them. What they take is a bolt.")
    {
        Mend = "the binder bolt of the ears, and no collar",
        Sources = [Sources.CarbonPostCracks, Sources.CommonPractice],
    };

    /// <summary>Inputs: binder of the frame, collar.</summary>
    public static Relation TakesCollar { get; } = new Matrix(0, 1, CollarCell, [], [Sources.CarbonPostCracks, Sources.CommonPractice]);

    private static Outcome CollarCell(long binder, long collar) =>
        binder == SeatBinder.WeldedTabs.FitCode ? new(Verdict.DoesNotFit, EarsAreTheBinder) : new(Verdict.Fits, CollarHolds);

    private sealed class Ears : Relation, ICutsLengths
    {
        // Below this a binder on a thinner post is as good as closed; common practice, no source.
        private const long Open = Nanometres.PerMillimetre;

        private static readonly Reason Closes = new("binder-closes", "A {1} mm post is no thinner than a seat tube for {0} mm: the ears of the binder do not meet on it.") { Sources = [Sources.SlipFitColumn] };

        private static readonly Reason StaysOpen = new("ears-stay-open", "A {1} mm post in a seat tube for {0} mm leaves {2} mm between the ears of the binder.") { Sources = [Sources.CommonPractice] };

        private static readonly Reason Look = new("look-at-the-ears", "A {1} mm post is thinner than a seat tube for {0} mm: with the post, or its shim, held tight, look that the ears of the binder stay at least 1 mm apart.", Cautions.BinderEars)
        {
            Mend = "a post of the seat tube's own size",
            Sources = [Sources.BinderReport, Sources.CommonPractice],
        };

        private static readonly Reason Meet = new("ears-meet", "The ears of the binder meet before a {1} mm post is tight in a seat tube for {0} mm: it clamps nothing.", Cautions.BinderEars)
        {
            Mend = "measure post and bore, and take a post of the right size",
            Sources = [Sources.BinderReport],
        };

        public override string Kind => "open where the post is tight";

        public override ImmutableArray<Source> RestsOn => [Sources.BinderReport, Sources.SlipFitColumn, Sources.CommonPractice];

        public ImmutableArray<long> Cuts { get; } = [Open];

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long bore, long post, long gap) = (values[0], values[1], values[2]);
            return bore == 0 || post == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
                : gap == 0 ? new(Verdict.Unsafe, Meet)
                : post >= bore ? new(Verdict.Fits, Closes)
                : gap >= Open ? new(Verdict.Fits, StaysOpen)
                : new(Verdict.NeedsMeasuring, Look);
        }
    }
}
