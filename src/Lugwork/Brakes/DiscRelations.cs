using System.Collections.Immutable;

namespace Lugwork.Brakes;

/// <summary>Rotor, lockring and carrier on a hub, rotor in a caliper, bolts of a flat mount, pads.</summary>
internal static class DiscRelations
{
    /// <summary>Code of a hub whose axle is the maker's own.</summary>
    public const long OwnAxle = 1;

    /// <summary>Code of a rotor without lockring or carrier: an unknown one may be missing.</summary>
    public const long NotThere = 101;

    private const long Protrusion = 13 * Nanometres.PerMillimetre;

    private static readonly Reason NoRing = new("no-ring-asked", "A rotor with bolts, or a hub without splines, asks for no lockring.") { Sources = [Sources.SixBoltAndSplined] };

    private static readonly Reason RingTurns = new("ring-can-be-turned", "{2} on a hub with an axle of {0}; see that it clears the fork leg or stay.") { Sources = [Sources.LockringExchange] };

    private static readonly Reason RingComes = new("ring-comes-with-carrier", "A rotor with {3} on splines, and no carrier is there: the carrier that it takes is bought with a lockring that suits the axle.") { IsNote = true, Sources = [Sources.SixBoltAndSplined] };

    private static readonly Reason NoCarrier = new("no-carrier-asked", "Rotor and hub meet without a carrier.") { Sources = [Sources.SixBoltAndSplined] };

    private static readonly Reason CarrierComes = new("carrier-to-come", "A six-bolt rotor on splines, and no carrier is there yet: the one that is bought has its own lockring.") { Sources = [Sources.SixBoltAndSplined] };

    private static readonly Reason CarrierClear = new("carrier-clears-ring", "{2} under {3}.") { Sources = [Sources.SplinedRotorNotes] };

    private static readonly Reason Thick = new("rotor-thickness-allowed", "A rotor {0} mm thick is within what the caliper is made for.") { Sources = [Sources.RotorFaq] };

    private static readonly Reason TooThick = new("rotor-too-thick", "A rotor {0} mm thick in a caliper made for at most {1} mm: the pads may drag. The caliper maker says whether it may.", Cautions.BrakeWork)
    {
        Sources = [Sources.RotorFaq],
    };

    private static readonly Reason TooThin = new("rotor-too-thin", "A rotor {0} mm thick in a caliper made for at least {2} mm: the pistons come out further than they are made for. The caliper maker says whether it may.", Cautions.BrakeWork)
    {
        Sources = [Sources.Memory],
    };

    private static readonly Reason WornOut = new("rotor-worn-out", "A rotor {0} mm thick is thinner than any least that rotors are marked with, 1.4 to 1.8 mm: worn out.", Cautions.BrakeWork)
    {
        Mend = "a new rotor",
        Sources = [Sources.RotorFaq],
    };

    private static readonly Reason MaybeWorn = new("rotor-maybe-worn", "A rotor {0} mm thick may be at its least, which makers mark at 1.4 to 1.8 mm: read the mark on the rotor.", Cautions.BrakeWork)
    {
        Mend = "a new rotor where it is at its mark",
        Sources = [Sources.RotorFaq],
    };

    private static readonly Reason NoThickest = new("rotor-thickness-missing", "The caliper maker prints no thickest rotor; that is unknown, not unlimited.", Cautions.BrakeWork) { Sources = [Sources.RotorFaq] };

    private static readonly Reason NotFlat = new("no-flat-mount", "No bolt of the caliper goes through the stay.") { Sources = [Sources.FlatMountBolts] };

    private static readonly Reason BoltRight = new("flat-mount-bolt-right", "A bolt {3} mm long comes about 13 mm through a stay {2} mm thick.") { Sources = [Sources.FlatMountBolts, Sources.FlatMountThinStay] };

    private static readonly Bridge InnerRing = Ring("lockring-internal", "a lockring with internal notches", Lockring.Internal);

    private static readonly Bridge OuterRing = Ring("lockring-external", "a lockring with external notches", Lockring.External);

    private static readonly Bridge CarrierWithRing = new()
    {
        Id = "carrier-with-lockring",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsMeasuring,
        What = "a Center Lock to six-bolt carrier sold with its lockring",
        From = RotorFixing.SixBolt.FitCode,
        To = RotorFixing.CenterLock.FitCode,
        Caution = Cautions.BrakeWork,
        Sources = [Sources.SixBoltAndSplined, Sources.SplinedRotorNotes],
    };

    /// <summary>Inputs: thickest axle of the hub (micrometres, or its maker's own), rotor fixing of the hub, lockring, rotor fixing of the rotor, carrier. A carrier that is still to be bought comes with its ring, and that it is bought is asked where the rotor meets the hub.</summary>
    public static Relation LockringOnAxle { get; } = new Computed("axle within what the ring's tool passes over", OnAxle, [InnerRing, OuterRing], [Sources.LockringExchange]);

    /// <summary>Inputs: rotor fixing of the hub, of the rotor, carrier, lockring. Where there is no carrier it is asked for where the rotor meets the hub, and not once more here.</summary>
    public static Relation CarrierUnderRing { get; } = new Computed("from the table of pairs", UnderRing, [CarrierWithRing], [Sources.SplinedRotorNotes]);

    /// <summary>Inputs: thickness of the rotor, thickest and thinnest that the caliper is made for, least that is marked on the rotor. No thinnest asks for nothing; no thickest is unknown; with a mark the rotor's own row says whether it is worn.</summary>
    public static Relation Thickness { get; } = new ThicknessRelation();

    /// <summary>Inputs: mount of the frame, caliper mounting, thickness of the stay, length of the bolt, rotor (nanometres).</summary>
    public static Relation BoltInStay { get; } = new BoltRelation();

    private static Outcome OnAxle(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        if (values[1] != RotorFixing.CenterLock.FitCode)
        {
            return new(Verdict.Fits, NoRing);
        }

        if (values[3] == RotorFixing.SixBolt.FitCode && (values[4] is 0 or NotThere))
        {
            return new(Verdict.Fits, RingComes);
        }

        if (values[2] is 0 or NotThere)
        {
            return new(Verdict.NeedsPart, Misfits.RingMissing, values[0] != OwnAxle && values[0] <= Lockring.Internal.LargestAxleMillimetres * 1_000L ? InnerRing : OuterRing);
        }

        return values[0] == OwnAxle ? new(Verdict.NeedsMeasuring, Misfits.RingOwn)
            : values[0] <= Lockring.OfFitCode(values[2]).LargestAxleMillimetres * 1_000L ? new(Verdict.Fits, RingTurns)
            : new(Verdict.DoesNotFit, Misfits.RingBlocked);
    }

    private static Outcome UnderRing(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        if (values[0] != RotorFixing.CenterLock.FitCode || values[1] != RotorFixing.SixBolt.FitCode)
        {
            return new(Verdict.Fits, NoCarrier);
        }

        return values[2] is 0 or NotThere ? new(Verdict.Fits, CarrierComes)
            : values[2] == RotorCarrier.Pins.FitCode && values[3] != Lockring.Internal.FitCode ? new(Verdict.NeedsMeasuring, Misfits.PinsFoul, CarrierWithRing)
            : new(Verdict.Fits, CarrierClear);
    }

    /// <summary>Between what the caliper is made for, and never a rotor that may be worn: makers print a least of 1.4 to 1.8 mm.</summary>
    private sealed class ThicknessRelation : Relation, ICutsLengths
    {
        private const long LowestLeast = RotorThickness.LeastListedNanometres;

        private const long HighestLeast = 1_800_000;

        public override string Kind => "between the caliper's thinnest and thickest rotor, and not below the least that rotors are marked with";

        public override ImmutableArray<Source> RestsOn => [Sources.RotorFaq];

        public ImmutableArray<long> Cuts { get; } = [LowestLeast, HighestLeast, RotorThickness.LeastMarkNanometres, RotorThickness.MostMarkNanometres];

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values) =>
            values[0] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : values[0] < LowestLeast && !IsMark(values[3]) ? new(Verdict.Unsafe, WornOut)
            : values[1] == 0 ? new(Verdict.NeedsMeasuring, NoThickest)
            : values[0] > values[1] ? new(Verdict.NeedsMeasuring, TooThick)
            : values[0] < values[2] ? new(Verdict.NeedsMeasuring, TooThin)
            : values[0] < HighestLeast && !IsMark(values[3]) ? new(Verdict.NeedsMeasuring, MaybeWorn)
            : new(Verdict.Fits, Thick);

        /// <summary>A mark that a rotor can have; another was read wrongly, and counts as none.</summary>
        private static bool IsMark(long mark) => mark is >= RotorThickness.LeastMarkNanometres and <= RotorThickness.MostMarkNanometres;
    }

    private static Bridge Ring(string id, string what, Lockring ring) => new()
    {
        Id = id,
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = what,
        From = 0,
        To = ring.FitCode,
        Caution = Cautions.BrakeWork,
        Sources = [Sources.LockringExchange],
    };

    /// <summary>The bolt that a stay of a thickness wants; the inverse of the relation.</summary>
    public static long Bolt(long stay) => stay + Protrusion;

    /// <summary>The pages say "about 13 mm"; a millimetre either way is our own bound.</summary>
    private const long About = Nanometres.PerMillimetre;

    private sealed class BoltRelation : Relation, ICutsByOthers
    {
        private static readonly Bridge Missing = new()
        {
            Id = "flat-mount-bolts",
            Kind = BridgeKind.Adapter,
            Result = Verdict.NeedsPart,
            What = "two flat-mount bolts of the length that the brake's maker lists for the stay",
            Caution = Cautions.FlatMountBolts,
            Sources = [Sources.FlatMountBolts, Sources.FlatMountThinStay],
        };

        private static readonly Reason BoltMissing = new("flat-mount-bolts-missing", "The caliper comes without bolts, and a stay {2} mm thick takes [bridge].", Cautions.FlatMountBolts) { Sources = [Sources.FlatMountBolts, Sources.FlatMountThinStay] };

        public override string Kind => "arithmetic: bolt = thickness of the stay + about 13 mm";

        public override ImmutableArray<Bridge> Bridges => [Missing];

        public override ImmutableArray<Source> RestsOn => [Sources.FlatMountBolts, Sources.FlatMountThinStay, Sources.FlatMountBuilder];

        public IEnumerable<long> CutsFor(int input, CandidateRow row, ImmutableArray<JointInput> inputs)
        {
            int other = input == 2 ? 3 : 2;
            long step = input == 2 ? -Protrusion : Protrusion;
            IEnumerable<long> at = row[other].State is KnownState.Value or KnownState.Measured
                ? [row[other].Low + step, row[other].High + step]
                : row[other].Codes is { } codes ? codes.Select(c => c + step)
                : [Protrusion + 1];
            return at.SelectMany(a => new[] { a - About, a, a + About });
        }

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            if (values[0] == 0 || values[1] == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            if (!BrakeMount.OfFitCode(values[0]).IsFlat || CaliperFoot.OfFitCode(values[1]) != CaliperFoot.Flat)
            {
                return new(Verdict.Fits, NotFlat);
            }

            return values[2] == 0 || values[4] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
                : values[3] == 0 ? new(Verdict.NeedsPart, BoltMissing, Missing)
                : values[4] > BrakeMount.OfFitCode(values[0]).NativeRotorMillimetres * Nanometres.PerMillimetre ? new(Verdict.NeedsMeasuring, Misfits.PlateBolts)
                : values[3] > Bolt(values[2]) + About ? new(Verdict.Unsafe, Misfits.BoltTooLong)
                : values[3] >= Bolt(values[2]) - About ? new(Verdict.Fits, BoltRight)
                : values[3] <= values[2] ? new(Verdict.DoesNotFit, Misfits.BoltTooShort)
                : new(Verdict.NeedsMeasuring, Misfits.BoltShort);
        }
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason RingBlocked = new("ring-cannot-be-turned", "{2} on a hub with an axle of {0}: its tool does not pass over the axle.", Cautions.BrakeWork)
        {
            Mend = "a lockring with external notches",
            Sources = [Sources.LockringExchange, Sources.SplinedRotorNotes],
        };

        public static readonly Reason RingMissing = new("ring-missing", "A rotor on splines is held by a lockring, and there is none: it takes [bridge].", Cautions.BrakeWork) { Sources = [Sources.SixBoltAndSplined] };

        public static readonly Reason RingOwn = new("ring-on-own-axle", "{2} on a maker's own axle: see whether its tool passes.", Cautions.BrakeWork) { Sources = [Sources.LockringExchange] };

        public static readonly Reason PinsFoul = new("pins-may-foul-ring", "{2} under {3}: the heads of the pins may foul the ring. See that it seats all round, or take [bridge].", Cautions.BrakeWork)
        {
            Sources = [Sources.SplinedRotorNotes],
        };

        public static readonly Reason BoltTooLong = new("flat-mount-bolt-too-long", "A bolt {3} mm long comes more than 14 mm through a stay {2} mm thick: it bottoms in the caliper's blind hole and holds nothing.", Cautions.FlatMountBolts)
        {
            Mend = "the bolts, and spacers where the shortest is too long, that the brake's maker lists for this thickness: about 13 mm longer than the stay is thick",
            Sources = [Sources.FlatMountBolts, Sources.FlatMountThinStay],
        };

        public static readonly Reason BoltTooShort = new("flat-mount-bolt-too-short", "A bolt {3} mm long does not come through a stay {2} mm thick.", Cautions.FlatMountBolts)
        {
            Mend = "the bolts, and spacers where the shortest is too long, that the brake's maker lists for this thickness: about 13 mm longer than the stay is thick",
            Sources = [Sources.FlatMountBolts],
        };

        public static readonly Reason BoltShort = new("flat-mount-bolt-short", "A bolt {3} mm long comes less than 13 mm through a stay {2} mm thick: whether enough thread holds is for the brake's maker to say.", Cautions.FlatMountBolts)
        {
            Sources = [Sources.FlatMountBolts, Sources.FlatMountThinStay],
        };

        public static readonly Reason PlateBolts = new("bolts-of-the-plate", "A {4} rotor on {0} stands on a plate: its bolts are another length than 13 mm more than the stay is thick. Take the bolts that the brake's maker lists for plate and stay.", Cautions.FlatMountBolts)
        {
            Sources = [Sources.FlatMountBuilder, Sources.FlatMountBolts],
        };
    }
}
