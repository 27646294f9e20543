using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>A ring on the crank, and beside the chainstay.</summary>
internal static class RingRelations
{
    // Single makers went one or two teeth under the usual smallest ring.
    private const int FewerThanUsual = 2;

    private static readonly Reason SameCircle = new("same-circle", "A ring of {1} teeth with bolt circle {2} on a spider of {0}.") { Sources = [Sources.BoltCircles, Sources.RingMeasuring] };

    private static readonly Reason NotOnSpider = new("not-on-the-spider", "The ring sits on the arm itself, not on the spider; that is judged apart.") { Sources = [Sources.RingDecoder] };

    private static readonly Reason SameMount = new("same-direct-mount", "A ring with {1} on an arm with {0}.") { Sources = [Sources.RingDecoder] };

    private static readonly Reason NotOnArm = new("not-on-the-arm", "The ring is bolted to a spider, not to the arm itself; that is judged apart.") { Sources = [Sources.RingDecoder] };

    private static readonly Reason Clears = new("ring-within-limit", "{0} teeth, and the frame maker allows {1}.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason MeetsStay = new("ring-above-limit", "{0} teeth are more than the {1} that the frame maker allows: ring or chain meets the chainstay.", Cautions.RingRoom)
    {
        Mend = "a ring of at most the frame maker's figure",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason NoLimit = new("no-ring-limit", "{0} teeth, and the frame maker prints no largest ring: try the ring with the crank on, and look for room at the chainstay.", Cautions.RingRoom) { Sources = [Sources.CommonPractice] };

    /// <summary>Inputs: bolt circle of the crank, teeth of the ring, bolt circle of the ring.</summary>
    public static Relation OnSpider { get; } = new TellingRelation("the same bolt circle, and at least the smallest ring of the circle", Spider);

    /// <summary>Inputs: direct mount of the crank, of the ring.</summary>
    public static Relation OnArm { get; } = new TellingRelation("the same mount, where the ring sits on the arm itself", Arm);

    private static readonly Reason RingCounted = new("ring-counted", "The ring of {1} teeth is one of those that chain, derailleur and gears are counted with.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason RingNotCounted = new("ring-not-counted", "The crank is stated with {0} and {2} teeth, and the ring beside it has {1}: chain, derailleur and gears are counted with the rings that the crank is stated with. State there what is on it.", Cautions.ChainTooShort)
    {
        Mend = "the teeth of the ring that goes on, as the crank's own",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason OnBareCrank = new("ring-on-bare-crank", "The crank is stated without rings of its own: chain and derailleur are counted with the ring that goes on it, whatever its teeth: {1}.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason SecondOnBareCrank = new("second-ring-on-bare-crank", "The crank is stated without its largest ring, and may have a smaller one beside the ring of {1} teeth (smallest ring: {2}). State on the crank what is on it: chain, derailleur and gears are counted with all rings.", Cautions.ChainTooShort)
    {
        Mend = "the teeth of the rings that go on, as the crank's own",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason NoRing = new("crank-without-ring", "The crank is stated without a ring, and no ring is there: put in the ring that goes on it, or state its teeth as the crank's own; chain and derailleur are counted with them.", Cautions.ChainTooShort) { Sources = [Sources.CommonPractice] };

    private static readonly Reason WithRing = new("crank-with-ring", "The crank is stated with a ring of {0} teeth.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason RingApart = new("crank-bare", "The crank is stated without a ring: the one that goes on it is held against the chainstay by its own teeth.") { Sources = [Sources.CommonPractice] };

    /// <summary>Inputs: largest ring of the crank, teeth of the ring in its own place, smallest ring of the crank (none with one).</summary>
    public static Relation Counted { get; } = new TellingRelation(
        "one of the rings that the crank is stated with, or the ring of a bare crank",
        v => v[1] == 0 ? new(Verdict.NeedsMeasuring, RingNotCounted)
            : v[0] == 0 ? v[2] == 0 ? new(Verdict.Fits, OnBareCrank) : new(Verdict.NeedsMeasuring, SecondOnBareCrank)
            : v[1] == v[0] || v[1] == v[2] ? new(Verdict.Fits, RingCounted) : new(Verdict.NeedsMeasuring, RingNotCounted));

    /// <summary>Input: largest ring of the crank. Of a bare one with no ring beside it nothing is known that a chain goes round.</summary>
    public static Relation HasRing { get; } = new TellingRelation("a ring, the crank's own or beside it", v => v[0] == 0 ? new(Verdict.NeedsMeasuring, NoRing) : new(Verdict.Fits, WithRing));

    /// <summary>Inputs: largest ring of the crank, the frame maker's most. A bare crank has nothing there: its ring is held against the same figure.</summary>
    public static Relation OfCrankBesideChainstay { get; } = new TellingRelation("at most, where the crank has a ring", v => v[0] == 0 ? new(Verdict.Fits, RingApart) : BesideChainstay!.Judge(v));

    /// <summary>Inputs: teeth of the largest ring, the frame maker's most.</summary>
    public static Relation BesideChainstay { get; } = new AtMost(0, 1, Clears, MeetsStay, Verdict.DoesNotFit, new(Verdict.NeedsMeasuring, NoLimit), needsLength: true);

    private static Outcome Spider(ReadOnlySpan<long> values)
    {
        (long spider, long teeth, long ring) = (values[0], values[1], values[2]);
        if (teeth == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        if (ring == 0)
        {
            return new(Verdict.Fits, NotOnSpider);
        }

        if (spider != ring)
        {
            return new(Verdict.DoesNotFit, Misfits.OtherCircle);
        }

        return BoltCircle.OfFitCode(spider).SmallestRing is not { } least ? new(Verdict.NeedsMeasuring, Misfits.NoSmallest)
            : teeth >= least ? new(Verdict.Fits, SameCircle)
            : teeth >= least - FewerThanUsual ? new(Verdict.NeedsMeasuring, Misfits.BelowUsual)
            : new(Verdict.DoesNotFit, Misfits.TooSmall);
    }

    private static Outcome Arm(ReadOnlySpan<long> values)
    {
        (long arm, long ring) = (values[0], values[1]);
        return ring == 0 ? new(Verdict.Fits, NotOnArm)
            : arm != ring ? new(Verdict.DoesNotFit, Misfits.OtherMount)
            : arm == DirectMountRing.Own.FitCode ? new(Verdict.NeedsMeasuring, Misfits.OwnSplines)
            : new(Verdict.Fits, SameMount);
    }

    /// <summary>Keys and counts, no lengths: told whole by its function.</summary>
    private sealed class TellingRelation(string kind, TellingRelation.Teller tell) : Relation
    {
        public delegate Outcome Teller(ReadOnlySpan<long> values);

        public override string Kind => kind;

        public override Outcome Judge(ReadOnlySpan<long> values) => tell(values);
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason OtherCircle = new("other-circle", "A ring with bolt circle {2} on a spider of {0}: number of arms, diameter and spacing of the holes must all be the same.")
        {
            Mend = "a ring for the spider's own circle, or another spider or crank",
            Sources = [Sources.BoltCircles, Sources.BoltHolePatterns, Sources.OffsetHole],
        };

        public static readonly Reason TooSmall = new("ring-too-small", "A ring of {1} teeth is too small for the bolt circle {0}: its bolts would stand in the chain.")
        {
            Mend = "a crank or spider with a smaller circle, or a larger ring",
            Sources = [Sources.BoltCircles, Sources.CrankPage],
        };

        public static readonly Reason BelowUsual = new("ring-below-usual", "A ring of {1} teeth on the bolt circle {0}: the usual smallest is larger, single makers went a tooth or two lower. Ask the ring's maker.") { Sources = [Sources.CrankPage, Sources.BoltCircles] };

        public static readonly Reason NoSmallest = new("smallest-ring-unknown", "A ring of {1} teeth on the bolt circle {0}: no smallest ring is known for it. Ask the ring's maker.") { Sources = [Sources.OffsetHole] };

        public static readonly Reason OwnSplines = new("own-splines", "A ring with {1} on an arm with {0}: splines of one maker are not another's. Compare the names on both, or ask the ring's maker.") { Sources = [Sources.RingDecoder] };

        public static readonly Reason OtherMount = new("other-direct-mount", "A ring with {1} does not go on an arm with {0}: they are two interfaces.")
        {
            Mend = "a ring for the arm's own interface",
            Sources = [Sources.RingDecoder],
        };
    }
}
