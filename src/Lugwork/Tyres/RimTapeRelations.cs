using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Tape in the bed of a rim.</summary>
internal static class RimTapeRelations
{
    private static readonly Reason Covers = new("tape-covers", "A tape {0} mm wide covers holes of {1} mm in a bed {2} mm wide.") { Sources = [Sources.Iso5775Part2Extract] };

    private static readonly Reason ClosedBed = new("bed-is-closed", "The bed of the rim has no hole that a tape would have to cover.") { Sources = [Sources.Iso5775Part2Extract] };

    private static readonly Reason Missing = new("tape-missing", "The bed of the rim has holes of {1} mm and there is no tape.", Cautions.RimTape)
    {
        Mend = "a rim tape wider than the widest hole and no wider than the bed",
        Sources = [Sources.Iso5775Part2Extract],
    };

    private static readonly Reason TooNarrow = new("tape-too-narrow", "A tape {0} mm wide does not reach over both edges of a hole of {1} mm.", Cautions.RimTape)
    {
        Mend = "a rim tape wider than the widest hole and no wider than the bed",
        Sources = [Sources.Iso5775Part2Extract],
    };

    private static readonly Reason Wide = new("tape-wider-than-bed", "A tape {0} mm wide climbs the walls of a bed {2} mm wide. Tubeless tape may, where its maker says how far; a strip for a tube must not lie under the beads.", Cautions.RimTape)
    {
        Mend = "a tape no wider than the bed, or the width that the tape's maker names for this rim",
        Sources = [Sources.Iso5775Part2Extract, Sources.CommonPractice],
    };

    /// <summary>Inputs: width of the tape, widest hole of the bed, inner width.</summary>
    public static Relation InBed { get; } = new TapeRelation();

    private static readonly Reason Scant = new("tape-scant", "A tape {0} mm wide over holes of {1} mm: a millimetre of shift opens a hole, and a tubeless rim has to be covered from wall to wall.", Cautions.RimTape)
    {
        Mend = "a tape at least 2 mm wider than the widest hole; for tubeless the width that the tape's maker names for this rim",
        Sources = [Sources.CommonPractice, Sources.Iso5775Part2Extract],
    };

    private sealed class TapeRelation : Relation, ICutsLengths
    {
        // A millimetre over each edge of the hole; common practice, no source.
        private const long BothEdges = 2 * Nanometres.PerMillimetre;

        public override string Kind => "wider than the hole by 2 mm, no wider than the bed";

        public override ImmutableArray<Source> RestsOn => [Sources.Iso5775Part2Extract, Sources.CommonPractice];

        public ImmutableArray<long> Cuts => [];

        public ImmutableArray<long> Gaps { get; } = [BothEdges, -BothEdges];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long tape, long hole, long inner) = (values[0], values[1], values[2]);
            return tape == 0 ? (hole == 0 ? new(Verdict.Fits, ClosedBed) : new(Verdict.DoesNotFit, Missing))
                : tape <= hole ? new(Verdict.DoesNotFit, TooNarrow)
                : inner != 0 && tape > inner ? new(Verdict.NeedsMeasuring, Wide)
                : hole != 0 && tape < hole + BothEdges ? new(Verdict.NeedsMeasuring, Scant)
                : new(Verdict.Fits, hole == 0 ? ClosedBed : Covers);
        }
    }
}
