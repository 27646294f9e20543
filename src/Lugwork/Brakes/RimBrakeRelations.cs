using System.Collections.Immutable;

namespace Lugwork.Brakes;

/// <summary>A rim brake against hole, bosses, rim and pads.</summary>
internal static class RimBrakeRelations
{
    /// <summary>Code of a brake that two bosses hold, where one with a centre bolt has its reach or its bolt.</summary>
    public const long OnBosses = 100;

    /// <summary>Code of a frame or fork that is known to have no bosses, or no brake hole.</summary>
    public const long NoPlace = 101;

    private const long CentreBolt = (long)BrakePlace.CentreBolt + 1;
    private const long BelowRim = (long)BrakePlace.BossesBelowRim + 1;
    private const long AboveRim = (long)BrakePlace.BossesAboveRim + 1;

    // The published refusal is 622 against 584; for less than their difference no page says how far pads can be moved.
    private const long TooFarMillimetres = 38;

    private static readonly Reason ByBolt = new("held-by-bolt", "The brake is held by a bolt: the bosses do not matter.") { Sources = [Sources.Derived] };

    private static readonly Reason ByBosses = new("held-by-bosses", "The brake is held by bosses: hole and reach do not matter.") { Sources = [Sources.Derived] };

    private static readonly Reason NoBosses = new("no-bosses", "{1} wants bosses, and there are none.", Cautions.BrakeWork)
    {
        Mend = "a brake for the brake hole, where there is one",
        Sources = [Sources.BrazedOnBrakes],
    };

    private static readonly Reason NoHole = new("no-brake-hole", "The brake is held by a bolt, and there is no hole for it.", Cautions.BrakeHole)
    {
        Mend = "a brake for the bosses, where there are such",
        Sources = [Sources.ReachShop],
    };

    private static readonly Reason SameBolt = new("same-bolt", "A brake with {1} in a hole for {0}.", Cautions.BrakeWork) { Sources = [Sources.ReachShop] };

    private static readonly Reason OtherBolt = new("other-bolt", "A brake with {1} where the hole is for {0}: a recessed nut needs a wider hole from behind, a plain one a shoulder, an inch bolt a wider hole. Measure the hole from both sides.", Cautions.BrakeHole)
    {
        Mend = "a bolt for this hole from the brake's maker",
        Sources = [Sources.ReachShop, Sources.Memory],
    };

    private static readonly Reason BossesForRim = new("bosses-for-rim", "{0} for a rim of bead seat {1}.") { Sources = [Sources.BrazeOnDistances] };

    private static readonly Reason NearRim = new("bosses-for-another-rim", "{0} with a rim of bead seat {1}: the pads meet the rim only if their slots allow half the difference. Measure the travel of the pads in the arms.", Cautions.BrakeWork)
    {
        Sources = [Sources.BrazeOnDistances, Sources.Derived],
    };

    private static readonly Reason FarRim = new("rim-too-far-from-bosses", "{0} with a rim of bead seat {1}: the rim stands 19 mm or more from where the pads are.", Cautions.BrakeWork)
    {
        Mend = "a wheel of the bosses' own bead seat, or a brake that its maker sells for this difference",
        Sources = [Sources.BrazeOnDistances, Sources.Derived],
    };

    private static readonly Reason NoKnownPlace = new("place-of-bosses-not-known", "For which rim {0} stand is not published: measure from boss to rim and compare with the brake maker's figures.", Cautions.BrakeWork)
    {
        Sources = [Sources.BrazedOnBrakes],
    };

    private static readonly Reason Reaches = new("reaches", "The rim is {0} mm from the brake hole; this brake has {1}.") { Sources = [Sources.ReachPitfalls, Sources.ReachMeasuring] };

    private static readonly Reason TooLong = new("reach-too-long", "The rim is {0} mm from the brake hole, less than the shortest setting of {1}: the pads do not come up to the track.", Cautions.BrakeWork)
    {
        Mend = "a brake with less reach",
        Sources = [Sources.ReachPitfalls, Sources.ReachMeasuring],
    };

    private static readonly Reason TooShort = new("reach-too-short", "The rim is {0} mm from the brake hole, more than the longest setting of {1}: the pads meet the tyre.", Cautions.BrakeWork)
    {
        Mend = "a brake with more reach",
        Sources = [Sources.ReachPitfalls, Sources.ReachMeasuring],
    };

    private const string ByHalf = "The {0} mm were read with a rim of bead seat {2}; with {3} the reach changes by half the difference";

    private static readonly Reason OtherWheelReaches = new("reaches-with-another-wheel", ByHalf + " and stays within {1}, 1 mm or more from either end.", Cautions.BrakeWork) { Sources = [Sources.Derived, Sources.ReachPitfalls] };

    private static readonly Reason OtherWheelNear = new("reach-of-another-wheel", ByHalf + " and comes within 1 mm of an end of {1}: rims differ by as much. Measure again with this wheel in place.", Cautions.BrakeWork)
    {
        Sources = [Sources.Derived, Sources.ReachPitfalls],
    };

    private static readonly Reason OtherWheelOut = new("reach-missed-with-another-wheel", ByHalf + " and is outside {1}.", Cautions.BrakeWork)
    {
        Mend = "a brake whose reach is the figure and half the difference of the bead seats, or a wheel of the size that the frame is made for",
        Sources = [Sources.Derived, Sources.ReachPitfalls],
    };

    private static readonly Reason About = new("reach-only-about", "The rim is {0} mm from the brake hole; of {1} only an approximate reach is published. Measure the brake from its shortest to its longest setting.", Cautions.BrakeWork)
    {
        Sources = [Sources.ReachPitfalls],
    };

    private static readonly Reason UsualSpacing = new("usual-spacing", "Bosses {0} mm apart are within the usual 75 to 85 mm.") { Sources = [Sources.BrazeOnDistances, Sources.CantileverSpacing] };

    private static readonly Reason UnusualSpacing = new("unusual-spacing", "Bosses {0} mm apart are outside the usual 75 to 85 mm: the arms may stand too far in or out for the rim. Try them on.", Cautions.BrakeWork)
    {
        Sources = [Sources.BrazeOnDistances, Sources.CantileverSpacing],
    };

    private static readonly Reason NoSpacing = new("no-spacing-published", "No spacing of bosses above the rim is published: try the arms on.", Cautions.BrakeWork) { Sources = [Sources.BrazedOnBrakes] };

    private static readonly Reason PadsOfTrack = new("pads-of-track", "{1} on {0}; the rim maker's own list of pads comes first.", Cautions.RimPads) { Sources = [Sources.CarbonRimPads] };

    private static readonly Reason NoTrack = new("no-brake-track", "The rim has no brake track for {1}: nothing brakes, and the rim is ground through.", Cautions.RimPads)
    {
        Mend = "a rim with a brake track, or a disc brake where there is a mount",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason PadsBurn = new("aluminium-pads-on-carbon", "{1} on {0}: the rim overheats, its resin softens and rim or tube fails.", Cautions.RimPads)
    {
        Mend = "the pads that the rim's maker names",
        Sources = [Sources.CarbonRimPads],
    };

    private static readonly Reason PadsWear = new("carbon-pads-on-aluminium", "{1} on {0}: they wear out quickly, and the chips they pick up ruin the carbon rim that they go on next.", Cautions.RimPads)
    {
        Mend = "pads for aluminium rims",
        Sources = [Sources.CarbonRimPads],
    };

    /// <summary>Inputs: bosses of frame or fork (or none of them), brake type.</summary>
    public static Relation OnBossesOfFrame { get; } = new Matrix(0, 1, HeldByBosses, [], [Sources.BrazedOnBrakes, Sources.BrakesBlog]);

    /// <summary>Inputs: brake hole (or none), bolt of the brake (or that bosses hold it).</summary>
    public static Relation BoltInHole { get; } = new Matrix(0, 1, HeldByBolt, [], [Sources.ReachShop]);

    /// <summary>Inputs: bosses (or none), bead seat of the rim, place of the brake.</summary>
    public static Relation BossesWithRim { get; } = new Computed("arithmetic on the published places of bosses", AtRim, [], [Sources.BrazeOnDistances, Sources.Derived]);

    /// <summary>Inputs: brake hole to rim, reach (or that bosses hold it), bead seat that the figure was read with, bead seat of the wheel.</summary>
    public static Relation Reach { get; } = new ReachRelation();

    /// <summary>Inputs: boss to boss, place of the brake.</summary>
    public static Relation ArmsOnSpacing { get; } = new SpacingRelation();

    /// <summary>Inputs: brake track of the rim, pads.</summary>
    public static Relation PadsOnRim { get; } = new PadsRelation();

    /// <summary>The inverse of the reach: the distances (whole millimetres) at which a class meets the rim; none where only about one figure is published.</summary>
    public static (int Least, int Most)? Accepts(RimBrakeReach reach) => reach.LeastMillimetres == reach.MostMillimetres ? null : (reach.LeastMillimetres, reach.MostMillimetres);

    private static Outcome HeldByBosses(long bosses, long type) =>
        BrakeType.OfFitCode(type).Place == BrakePlace.CentreBolt ? new(Verdict.Fits, ByBolt)
        : bosses == NoPlace ? new(Verdict.DoesNotFit, NoBosses)
        : BrakeActionRelations.BrakeOnBosses.Judge([bosses, type]);

    private static Outcome HeldByBolt(long hole, long bolt) =>
        bolt == OnBosses ? new(Verdict.Fits, ByBosses)
        : hole == NoPlace ? new(Verdict.DoesNotFit, NoHole)
        : hole == bolt ? new(Verdict.Fits, SameBolt)
        : new(Verdict.NeedsMeasuring, OtherBolt);

    private static Outcome AtRim(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0 || values[2] is not (CentreBolt or BelowRim or AboveRim))
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        if (values[2] == CentreBolt)
        {
            return new(Verdict.Fits, ByBolt);
        }

        if (values[0] == NoPlace)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        int made = BrakeBoss.OfFitCode(values[0]).BeadSeatMillimetres;
        return made == 0 ? new(Verdict.NeedsMeasuring, NoKnownPlace)
            : made == values[1] ? new(Verdict.Fits, BossesForRim)
            : Math.Abs(made - values[1]) < TooFarMillimetres ? new(Verdict.NeedsMeasuring, NearRim)
            : new(Verdict.DoesNotFit, FarRim);
    }

    private sealed class ReachRelation : Relation, ICutsLengths, ICutsByOthers
    {
        /// <summary>How far a figure that was worked out has to stay within the ends; our own bound, no source.</summary>
        private const long Margin = Nanometres.PerMillimetre;

        private static readonly Lazy<ImmutableArray<long>> Ends = new(AllEnds);

        public override string Kind => "within the reach of the brake; read with another wheel, by half the difference of the bead seats";

        public override ImmutableArray<Source> RestsOn => [Sources.ReachPitfalls, Sources.ReachMeasuring, Sources.Derived];

        public ImmutableArray<long> Cuts => Ends.Value;

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            if (values[1] == 0 || values[3] == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            if (values[1] == OnBosses)
            {
                return new(Verdict.Fits, ByBosses);
            }

            if (values[0] == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            if (Accepts(RimBrakeReach.OfFitCode(values[1])) is not var (least, most))
            {
                return new(Verdict.NeedsMeasuring, About);
            }

            if (values[2] == 0)
            {
                return new(Verdict.NeedsMeasuring, OtherWheelNear);
            }

            if (values[2] != values[3])
            {
                long reach = values[0] + Moves(values[2], values[3]);
                (long low, long high) = (least * Nanometres.PerMillimetre, most * Nanometres.PerMillimetre);
                return reach < low - Margin || reach > high + Margin ? new(Verdict.DoesNotFit, OtherWheelOut)
                    : reach < low + Margin || reach > high - Margin ? new(Verdict.NeedsMeasuring, OtherWheelNear)
                    : new(Verdict.Fits, OtherWheelReaches);
            }

            return values[0] < least * Nanometres.PerMillimetre ? new(Verdict.DoesNotFit, TooLong)
                : values[0] > most * Nanometres.PerMillimetre ? new(Verdict.DoesNotFit, TooShort)
                : new(Verdict.Fits, Reaches);
        }

        /// <summary>The figures at which the ends are met with another wheel; of a wheel that is not known, with the smallest and the largest.</summary>
        public IEnumerable<long> CutsFor(int input, CandidateRow row, ImmutableArray<JointInput> inputs)
        {
            foreach (long read in Wheels(row[2], inputs[2]))
            {
                foreach (long wheel in Wheels(row[3], inputs[3]))
                {
                    foreach (long end in read == 0 || wheel == 0 || read == wheel ? [] : AllEnds())
                    {
                        yield return end - Moves(read, wheel) - Margin;
                        yield return end - Moves(read, wheel) + Margin;
                    }
                }
            }
        }

        private static long[] Wheels(in Candidates known, JointInput input) =>
            known.Codes ?? (known.IsSettled ? [known.Low] : [input.Domain.Min(), input.Domain.Max()]);

        /// <summary>A smaller wheel leaves its track further from the hole: by half the difference of the bead seats, which are whole millimetres.</summary>
        private static long Moves(long read, long wheel) => (read - wheel) * (Nanometres.PerMillimetre / 2);

        private static ImmutableArray<long> AllEnds()
        {
            ImmutableArray<long>.Builder ends = ImmutableArray.CreateBuilder<long>();
            foreach (RimBrakeReach reach in RimBrakeReach.All)
            {
                ends.Add(reach.LeastMillimetres * Nanometres.PerMillimetre);
                ends.Add(reach.MostMillimetres * Nanometres.PerMillimetre);
            }

            return ends.ToImmutable();
        }
    }

    private sealed class SpacingRelation : Relation, ICutsLengths
    {
        private const long Least = 75 * Nanometres.PerMillimetre;
        private const long Most = 85 * Nanometres.PerMillimetre;

        public override string Kind => "within the usual spacing";

        public override ImmutableArray<Source> RestsOn => [Sources.BrazeOnDistances, Sources.CantileverSpacing];

        public ImmutableArray<long> Cuts => [Least, Most];

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values) => values[1] switch
        {
            CentreBolt => new(Verdict.Fits, ByBolt),
            BelowRim or AboveRim when values[0] == 0 => new(Verdict.DoesNotFit, Reasons.NothingToMate),
            BelowRim => values[0] is >= Least and <= Most ? new(Verdict.Fits, UsualSpacing) : new(Verdict.NeedsMeasuring, UnusualSpacing),
            AboveRim => new(Verdict.NeedsMeasuring, NoSpacing),
            _ => new(Verdict.DoesNotFit, Reasons.NothingToMate),
        };
    }

    private sealed class PadsRelation : Relation
    {
        public override string Kind => "from the table of pairs; a rim without a brake track is unsafe";

        public override ImmutableArray<Source> RestsOn => [Sources.CarbonRimPads, Sources.CommonPractice];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            if (values[1] == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            if (values[0] == 0)
            {
                return new(Verdict.Unsafe, NoTrack);
            }

            bool carbonTrack = BrakeTrack.OfFitCode(values[0]) == BrakeTrack.Carbon;
            bool carbonPads = RimPads.OfFitCode(values[1]) == RimPads.ForCarbon;
            return carbonTrack == carbonPads ? new(Verdict.Fits, PadsOfTrack)
                : carbonTrack ? new(Verdict.Unsafe, PadsBurn)
                : new(Verdict.DoesNotFit, PadsWear);
        }
    }
}
