using System.Collections.Immutable;

namespace Lugwork.Brakes;

/// <summary>Rotor, caliper and mount: rotor = native + increment, and never above the maker's limit.</summary>
internal static class BrakeRelations
{
    private static readonly Reason Direct = new("direct", "The caliper sits on {0} without an adapter for a {2} rotor.") { Sources = [Sources.MountAnswer] };

    private static readonly Reason AdapterSits = new("adapter-sits", "The caliper sits on {0} for a {2} rotor with the adapter that is there, {3}, which is made for this form of mount.") { Sources = [Sources.AdapterGuide, Sources.MountAnswer, Sources.Derived] };

    private static readonly Reason ForkPlate = new("fork-plate", "The plate that always sits between a flat-mount caliper and {0} gives a {2} rotor, one way up or the other.", Cautions.BrakeWork) { Sources = [Sources.FlatMountProblem] };

    private static readonly Reason CarrierHolds = new("carrier-holds-rotor", "A rotor with {1} on a hub with {0}, on the carrier that is stated: {2}.", Cautions.BrakeWork) { Sources = [Sources.SixBoltAndSplined] };

    private static readonly Reason InLimit = new("rotor-within-limit", "A {0} rotor is within the maker's largest of {1} mm.");

    private static readonly Reason OverLimit = new("rotor-above-limit", "A {0} rotor is above the largest that the maker allows, {1} mm: it can break the frame or fork.", Cautions.Rotor)
    {
        Mend = "a rotor within the limit",
    };

    private static readonly Reason SameFixing = new("same-fixing", "Rotor and hub are both {0}.");

    private static readonly Reason SplinedOnBolts = new("splined-on-bolts", "A rotor with {1} on a hub with {0}: the hub has no spline or thread to hold it.", Cautions.BrakeWork)
    {
        Mend = "a six-bolt rotor",
        Sources = [Sources.HubStandardsPage],
    };

    private static readonly Reason OtherFixing = new("other-fixing", "A rotor with {1} does not go on a hub with {0}.", Cautions.BrakeWork)
    {
        Mend = "a rotor with the hub's own fixing, or another hub where no rotor is made for it any more",
        Sources = [Sources.LockringArticle],
    };

    private static readonly Bridge Carrier = new()
    {
        Id = "six-bolt-rotor-on-center-lock",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = "Center Lock to six-bolt carrier with its bolts and a lockring that suits the axle",
        From = RotorFixing.SixBolt.FitCode,
        To = RotorFixing.CenterLock.FitCode,
        Caution = Cautions.BrakeWork,
        Sources = [Sources.SixBoltAndSplined],
    };

    /// <summary>Inputs: hub, rotor, carrier that is there (or not).</summary>
    public static Relation Fixing => OnHub.Relation;

    private static readonly SameKey PlainFixing = new(
        0, 1, SameFixing, (_, rotor) => rotor == RotorFixing.CenterLock.FitCode ? SplinedOnBolts : OtherFixing, [Carrier], RotorFixing.OldPattern.FitCode);

    private static readonly Reason NoLimit = new("rotor-limit-missing", "No largest rotor is printed; that is unknown, not unlimited. Ask the maker.", Cautions.Rotor);

    /// <summary>No largest rotor is known.</summary>
    public static Outcome RotorLimitMissing => new(Verdict.NeedsMeasuring, NoLimit);

    /// <summary>Inputs: rotor, largest rotor. Missing is unknown, not unlimited.</summary>
    public static Relation Limit { get; } = new AtMost(0, 1, InLimit, OverLimit, Verdict.Unsafe, RotorLimitMissing, needsLength: true);

    /// <summary>Inputs: mount, caliper, rotor (nanometres), adapter that is there (or not; may be left out), form of the mount that it is made for.</summary>
    public static Relation OnMount { get; } = new Computed(
        "rotor = size of the bare mount + step of the adapter, by the table or by the adapter that is there",
        WithWhatIsThere,
        () => BrakeAdapters.All,
        [Sources.MountAnswer, Sources.AdapterGuide, Sources.IsAdapters, Sources.FlatMountBuilder]);

    /// <summary>The inverse: the rotors (millimetres) that a mount takes with a caliper at no worse than a verdict.</summary>
    public static ImmutableArray<long> Accepts(BrakeMount mount, CaliperFoot caliper, Verdict worst)
    {
        IEnumerable<long> rotors = (mount, caliper) switch
        {
            _ when caliper == CaliperFoot.Post && mount.IsPost => Steps(mount.NativeRotorMillimetres, worst, fitsAtZero: true, BrakeAdapters.Posts.First(p => p.Native == mount.NativeRotorMillimetres).Increments),
            _ when caliper == CaliperFoot.Post && mount == BrakeMount.InternationalStandardRear => Steps(140, worst, false, BrakeAdapters.RearTabIncrements),
            _ when caliper == CaliperFoot.Post && mount == BrakeMount.InternationalStandardFront => Steps(160, worst, false, BrakeAdapters.FrontTabIncrements),
            _ when caliper == CaliperFoot.Flat && mount.IsFlat && mount.IsFront => [mount.NativeRotorMillimetres, mount.NativeRotorMillimetres + 20],
            _ when caliper == CaliperFoot.Flat && mount.IsFlat => Steps(mount.NativeRotorMillimetres, worst, true, [20]),
            _ when caliper == CaliperFoot.Flat && mount.IsPost => Steps(mount.NativeRotorMillimetres, worst, false, [20]),
            _ => [],
        };
        return [.. rotors.Where(r => RotorSize.All.Any(s => s.FitCode == r)).Distinct().Order()];
    }

    private static IEnumerable<long> Steps(long native, Verdict worst, bool fitsAtZero, int[] increments) =>
        (fitsAtZero ? [native] : Array.Empty<long>()).Concat(worst >= Verdict.NeedsPart ? increments.Select(i => native + i) : []);

    /// <summary>An adapter that is stated and adds up has not to be bought. It says how far it moves the caliper and not what it is bolted to, so that one for tabs, moved to posts with its caliper, is asked about. One that does not add up is refused where it meets the rotor.</summary>
    private static Outcome WithWhatIsThere(ReadOnlySpan<long> values)
    {
        Outcome bare = Judge(values);
        return bare.Verdict == Verdict.NeedsPart && values.Length > 3 && values[3] is not (0 or DiscRelations.NotThere)
            && (BrakeMount.OfFitCode(values[0]).NativeRotorMillimetres + AdapterIncrement.OfFitCode(values[3]).Millimetres) * Nanometres.PerMillimetre == values[2]
                ? OnItsMount(values)
                : bare;
    }

    /// <summary>A form of mount as a code of its own.</summary>
    public static long CodeOf(MountForm form) => (long)form + 1;

    private static Outcome OnItsMount(ReadOnlySpan<long> values) =>
        values.Length < 5 || values[4] is 0 or DiscRelations.NotThere ? new(Verdict.NeedsMeasuring, Misfits.AdapterThere)
        : values[4] == CodeOf(BrakeMount.OfFitCode(values[0]).Form) ? new(Verdict.Fits, AdapterSits)
        : new(Verdict.DoesNotFit, Misfits.AdapterOfOther);

    private static Outcome Judge(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0 || values[2] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        BrakeMount mount = BrakeMount.OfFitCode(values[0]);
        CaliperFoot caliper = CaliperFoot.OfFitCode(values[1]);
        long step = (values[2] / Nanometres.PerMillimetre) - mount.NativeRotorMillimetres;
        if (mount == BrakeMount.Post68 || mount == BrakeMount.Tab22)
        {
            return new(Verdict.DoesNotFit, Misfits.OldHoles);
        }

        if (mount == BrakeMount.InternationalStandardFrontDownhill)
        {
            return caliper == CaliperFoot.Post ? new(Verdict.NeedsMeasuring, Misfits.AskDownhill, BrakeAdapters.DownhillSpacers) : new(Verdict.NeedsMeasuring, Misfits.Ask);
        }

        if (caliper == CaliperFoot.Tabs)
        {
            return mount.IsPost && step == 20 ? new(Verdict.NeedsMeasuring, Misfits.AskWith, BrakeAdapters.ReverseAdapter) : new(Verdict.NeedsMeasuring, Misfits.Ask);
        }

        if (step < 0)
        {
            return new(Verdict.DoesNotFit, Misfits.TooSmall);
        }

        if (caliper == CaliperFoot.Post)
        {
            return mount.IsPost ? OnPosts(mount, step)
                : mount.IsFlat ? new(Verdict.NeedsMeasuring, Misfits.AskWith, BrakeAdapters.PostOnFlat)
                : Take(mount == BrakeMount.InternationalStandardRear ? BrakeAdapters.RearTabAdapters : BrakeAdapters.FrontTabAdapters, step);
        }

        if (mount.IsPost)
        {
            return step == 20 ? Take(BrakeAdapters.FlatOnPost, step, mount.NativeRotorMillimetres) : new(Verdict.DoesNotFit, Misfits.NoAdapter);
        }

        return mount.IsFlat ? OnFlat(mount, step) : new(Verdict.NeedsMeasuring, Misfits.Ask);
    }

    private static Outcome OnPosts(BrakeMount mount, long step)
    {
        if (step == 0)
        {
            return new(Verdict.Fits, Direct);
        }

        if (mount == BrakeMount.Post200 && step == 3)
        {
            return new(Verdict.NeedsMeasuring, Misfits.SmallStep, BrakeAdapters.ShimTo203);
        }

        return mount == BrakeMount.Post203 && step == 17 ? new(Verdict.NeedsMeasuring, Misfits.RareStep) : Take(BrakeAdapters.PostAdapters, step, mount.NativeRotorMillimetres);
    }

    private static Outcome OnFlat(BrakeMount mount, long step) => step switch
    {
        0 or 20 when mount.IsFront => new(Verdict.Fits, ForkPlate),
        0 => new(Verdict.Fits, Direct),
        20 => new(Verdict.NeedsPart, Misfits.WithAdapter, mount == BrakeMount.FlatRear140 ? BrakeAdapters.RearPlate140 : BrakeAdapters.RearPlate160),
        _ => new(Verdict.DoesNotFit, Misfits.NoAdapter),
    };

    private static Outcome Take(ImmutableArray<Bridge> adapters, long step, long? native = null)
    {
        foreach (Bridge adapter in adapters)
        {
            if (adapter.To - adapter.From == step && (native is null || adapter.From == native))
            {
                return new(Verdict.NeedsPart, Misfits.WithAdapter, adapter);
            }
        }

        return new(Verdict.DoesNotFit, Misfits.NoAdapter);
    }

    /// <summary>The same fixing, or a carrier: one that is stated to be there has not to be bought.</summary>
    private sealed class OnHub : Relation
    {
        public static OnHub Relation { get; } = new();

        public override string Kind => "the same fixing, a listed adapter, or the carrier that is there";

        public override ImmutableArray<Bridge> Bridges => PlainFixing.Bridges;

        public override Outcome Judge(ReadOnlySpan<long> values) =>
            values[0] == RotorFixing.CenterLock.FitCode && values[1] == RotorFixing.SixBolt.FitCode && values[2] is not (0 or DiscRelations.NotThere)
                ? new(Verdict.Fits, CarrierHolds)
                : PlainFixing.Judge(values);
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason WithAdapter = new("with-adapter", "On {0} a {2} rotor takes an adapter: [bridge].");

        public static readonly Reason AdapterThere = new("adapter-there", "On {0} a {2} rotor takes an adapter, and the one that is stated makes this size: {3}. Which mount it is made for is not stated: see that it is this one, and that it holds a caliper with {1} mounting.", Cautions.BrakeWork) { Sources = [Sources.AdapterGuide, Sources.MountAnswer, Sources.Derived], Asks = [4] };

        public static readonly Reason AdapterOfOther = new("adapter-of-another-mount", "The adapter that is there, {3}, is made for another form of mount than {0}: tabs take bolts across, posts in the plane of the rotor.", Cautions.BrakeWork)
        {
            Mend = "an adapter for this mount and this rotor",
            Sources = [Sources.AdapterGuide, Sources.MountAnswer],
        };

        public static readonly Reason TooSmall = new("rotor-too-small", "A {2} rotor is smaller than {0} allows: the caliper already sits too far out and no adapter is negative.", Cautions.BrakeWork)
        {
            Mend = "a rotor of the mount's own size or larger, within the maker's limit",
            Sources = [Sources.MountAnswer, Sources.AdapterGuide],
        };

        public static readonly Reason NoAdapter = new("no-adapter", "No adapter brings a caliper on {0} to a {2} rotor.", Cautions.BrakeWork)
        {
            Mend = "a rotor size that an adapter exists for",
            Sources = [Sources.AdapterGuide],
        };

        public static readonly Reason RareStep = new("rare-step", "From {0} to a {2} rotor is a step that only a rare part or a shim with longer bolts makes: ask the brake maker.", Cautions.BrakeWork)
        {
            Sources = [Sources.CommonPractice],
        };

        public static readonly Reason OldHoles = new("old-holes", "Holes of {0} are not 74 mm apart and cannot be drilled: no caliper of today goes on.", Cautions.BrakeWork)
        {
            Mend = "the caliper made for these holes, or a rim brake where there are bosses",
            Sources = [Sources.MountTechInfo],
        };

        public static readonly Reason Ask = new("ask-adapter", "A caliper with {1} mounting on {0}: adapters exist for some, not for all. Ask for one made for exactly this pair.", Cautions.BrakeWork)
        {
            Sources = [Sources.FlatMountBuilder, Sources.MountForum],
        };

        public static readonly Reason AskWith = Ask with { Id = "ask-adapter-named", Template = "A caliper with {1} mounting on {0}: perhaps [bridge]. Ask for one made for exactly this pair." };

        public static readonly Reason AskDownhill = Ask with { Id = "ask-downhill-tabs", Template = "{0} stands 5 mm further out than the usual tabs: [bridge]. Ask for one made for exactly this pair." };

        public static readonly Reason SmallStep = RareStep with { Id = "small-step", Template = "From {0} to a {2} rotor is 1.5 mm of radius: [bridge]. Ask the brake maker." };
    }
}
