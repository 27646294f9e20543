using System.Collections.Immutable;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>Figures of wear against their limits.</summary>
internal static class WearRelations
{
    /// <summary>Inputs: length over 24 pitches, size of the chain. The limits are those of <see cref="ChainWear"/>.</summary>
    public static Relation Chain { get; } = new ChainRelation();

    /// <summary>Inputs: thickness, least that is marked. The bounds are those of <see cref="RotorThickness"/>.</summary>
    public static Relation Rotor { get; } = new RotorRelation();

    /// <summary>Inputs: wall of the rim, brake track. At and below 1.0 mm an aluminium track is worn out; no page gives carbon a figure.</summary>
    public static Relation RimWall { get; } = new RimRelation(underPads: false);

    /// <summary>Inputs: wall of the rim, brake track, material of the rim, rim brake on it; the last is not judged, but without it no pad rubs. Pads on an aluminium rim rub on aluminium, whatever is said of the track.</summary>
    public static Relation RimWallUnderPads { get; } = new RimRelation(underPads: true);

    private sealed class ChainRelation : Relation, ICutsLengths
    {
        private static readonly Reason NoPins = new("belt-has-no-pins", "A belt has no pins to measure over: its maker says when it is worn.") { Sources = [Sources.ChainWearLimits] };

        private static readonly Reason Again = new("chain-mismeasured", "{0} mm over 24 pitches is no chain, new or worn (our own bounds, no source): measure again, pulled straight, and count the pitches.") { Sources = [Sources.ChainWearRuler] };

        private static readonly Reason NoLimit = new("chain-wear-no-limit", "{0} mm over 24 pitches: no limit is printed for {1}; ask the chain's maker.") { Sources = [Sources.ChainWearLimits] };

        private static readonly Reason Worn = new("chain-worn-out", "{0} mm over 24 pitches ({1}), 304.8 mm when new: worn out.") { Mend = "a new chain; try it on the old sprockets and rings, which may be worn too", Sources = [Sources.ChainWearLimits, Sources.ChainWearShop] };

        private static readonly Reason Near = new("chain-near-its-limit", "{0} mm over 24 pitches ({1}) is within 0.3 mm of worn out, which a ruler does not tell (our own bound, no source).") { Sources = [Sources.ChainWearLimits, Sources.ChainWearRuler] };

        private static readonly Reason Good = new("chain-not-worn", "{0} mm over 24 pitches ({1}), 304.8 mm when new: not worn out.") { Sources = [Sources.ChainWearLimits, Sources.ChainWearShop] };

        public override string Kind => "length over 24 pitches below the limit of wear";

        public override ImmutableArray<Source> RestsOn => [Sources.ChainWearLimits, Sources.ChainWearShop, Sources.ChainWearRuler];

        public ImmutableArray<long> Cuts { get; } = AllCuts();

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            if (values[0] == 0 || values[1] == 0)
            {
                return new(Verdict.NeedsMeasuring, Again);
            }

            ChainSize chain = ChainSize.OfFitCode(values[1]);
            return chain == ChainSize.Belt ? new(Verdict.NeedsMeasuring, NoPins)
                : values[0] < ChainWear.ShortestOver24 || values[0] > ChainWear.LongestOver24 ? new(Verdict.NeedsMeasuring, Again)
                : ChainWear.WornOver24(chain) is not { } worn ? new(Verdict.NeedsMeasuring, NoLimit)
                : values[0] >= worn ? new(Verdict.DoesNotFit, Worn)
                : values[0] > worn - ChainWear.RulerOver24 ? new(Verdict.NeedsMeasuring, Near)
                : new(Verdict.Fits, Good);
        }

        private static ImmutableArray<long> AllCuts()
        {
            SortedSet<long> cuts = [ChainWear.ShortestOver24, ChainWear.LongestOver24];
            foreach (ChainSize chain in ChainSize.All)
            {
                if (ChainWear.WornOver24(chain) is { } worn)
                {
                    cuts.Add(worn);
                    cuts.Add(worn - ChainWear.RulerOver24);
                }
            }

            return [.. cuts];
        }
    }

    private sealed class RotorRelation : Relation, ICutsLengths
    {
        private static readonly Reason NoMark = new("rotor-mark-missing", "No least thickness that a rotor has is marked: {1} (1.2 to 2.2 mm is our own bound, no source). Read the rotor, or ask its maker.") { Sources = [Sources.RotorFaq] };

        private static readonly Reason Misread = new("rotor-misread", "No rotor is {0} mm thick (2.5 mm is our own bound, no source): measure again.") { Sources = [Sources.RotorFaq] };

        private static readonly Reason BelowAll = new("rotor-below-any-mark", "The rotor is {0} mm thick. The listed marks are 1.4 to 1.8 mm, and no rotor is marked with less than 1.2 mm (our own bound): without a mark that allows it, worn out.") { Mend = "a new rotor", Sources = [Sources.RotorFaq] };

        private static readonly Reason Below = new("rotor-below-its-mark", "The rotor is {0} mm thick, below the {1} mm that is marked on it.") { Mend = "a new rotor", Sources = [Sources.RotorFaq, Sources.WornRotors] };

        private static readonly Reason Above = new("rotor-above-its-mark", "The rotor is {0} mm thick; it may wear to {1} mm.") { Sources = [Sources.RotorFaq, Sources.WornRotors] };

        public override string Kind => "thickness at least what is marked on the rotor";

        public override ImmutableArray<Source> RestsOn => [Sources.RotorFaq, Sources.WornRotors];

        public ImmutableArray<long> Cuts { get; } = [RotorThickness.LeastMarkNanometres, RotorThickness.LeastListedNanometres, RotorThickness.MostMarkNanometres, RotorThickness.MostNanometres];

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values) =>
            values[0] > 0 && values[0] < (values[1] == 0 ? RotorThickness.LeastListedNanometres : RotorThickness.LeastMarkNanometres) ? new(Verdict.Unsafe, BelowAll)
            : values[1] < RotorThickness.LeastMarkNanometres || values[1] > RotorThickness.MostMarkNanometres ? new(Verdict.NeedsMeasuring, NoMark)
            : values[0] == 0 || values[0] > RotorThickness.MostNanometres ? new(Verdict.NeedsMeasuring, Misread)
            : values[0] < values[1] ? new(Verdict.Unsafe, Below)
            : new(Verdict.Fits, Above);
    }

    private sealed class RimRelation(bool underPads) : Relation, ICutsLengths
    {
        private const long WornOut = 1_000_000;

        // The tool reads to 0.1 mm. Our own bound, no source.
        private const long Told = 1_100_000;

        // No new wall is printed; a brake track of more than this was measured at the hook or over both walls. Our own bound, no source.
        private const long Thickest = 4_000_000;

        private static readonly Reason NoTrack = new("rim-without-track", "No pad rubs on this rim: its wall does not wear.") { Sources = [Sources.CommonPractice] };

        private static readonly Reason Misread = new("rim-wall-misread", "A wall of {0} mm was not measured at the brake track alone (4 mm is our own bound, no source).") { Sources = [Sources.RimWall] };

        private static readonly Reason CarbonTrack = new("rim-wall-carbon", "The wall is {0} mm: no page gives a figure for {1}; the rim maker's wear mark decides.") { Sources = [Sources.RimWall] };

        private static readonly Reason Thin = new("rim-wall-worn", "The wall is {0} mm, 1.0 mm or less: worn out. Walls have broken at about 0.7 mm, with a bang.") { Mend = "a new rim", Sources = [Sources.RimWall, Sources.RimWallBreaks] };

        private static readonly Reason AlmostThin = new("rim-wall-near-its-limit", "The wall is {0} mm, less than 0.1 mm above worn out, which a caliper does not tell (0.1 mm is our own bound, no source): measure again at several places, or read the wear mark.") { Sources = [Sources.RimWall] };

        private static readonly Reason Thick = new("rim-wall-left", "The wall is {0} mm; it is worn out at 1.0 mm.") { Sources = [Sources.RimWall, Sources.RimWallBreaks] };

        private static readonly Reason NoTrackUnderPads = new("rim-wall-pads-without-track", "The wall is {0} mm, and a rim brake stands over a rim that is stated without a track: look what its pads rub on.") { Sources = [Sources.RimWall] };

        public override string Kind => underPads ? "wall of the rim above 1.0 mm under the pads of a rim brake" : "wall of the rim above 1.0 mm where pads rub on aluminium";

        public override ImmutableArray<Source> RestsOn => [Sources.RimWall, Sources.RimWallBreaks];

        public ImmutableArray<long> Cuts { get; } = [WornOut, Told, Thickest];

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            bool aluminium = underPads && values[2] == Material.Aluminium.FitCode;
            return values[1] == ConditionRelations.NotSaid && !underPads ? new(Verdict.Fits, NoTrack)
                : values[0] == 0 || values[0] > Thickest || (values[1] == 0 && !aluminium) ? new(Verdict.NeedsMeasuring, Misread)
                : aluminium ? OfWall(values[0])
                : values[1] == ConditionRelations.NotSaid ? new(Verdict.NeedsMeasuring, NoTrackUnderPads)
                : values[1] == BrakeTrack.Carbon.FitCode ? new(Verdict.NeedsMeasuring, CarbonTrack)
                : OfWall(values[0]);
        }

        private static Outcome OfWall(long wall) =>
            wall <= WornOut ? new(Verdict.Unsafe, Thin)
            : wall < Told ? new(Verdict.NeedsMeasuring, AlmostThin)
            : new(Verdict.Fits, Thick);
    }
}
