using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;

namespace Lugwork;

/// <summary>One row: when a small part is needed and what it is then.</summary>
/// <param name="Id">Permanent id.</param>
/// <param name="Because">What asks for it.</param>
/// <param name="What">What to buy; null where the parts do not ask for it.</param>
/// <param name="Slot">The slot that holds such a part: filled, nothing is needed.</param>
/// <param name="Sources">What it rests on.</param>
internal sealed record SmallPartRule(string Id, string Because, Func<Build, string?> What, Slot? Slot, params ImmutableArray<Source> Sources)
{
    /// <summary>Joints that ask for the same thing: where one of them needs a part, that part is it.</summary>
    public ImmutableArray<string> AskedBy { get; init; } = [];

    /// <summary>The bridge of a joint that is this very part, as joint and bridge: it stands on the list under the id of the row, in the row's words.</summary>
    public string Bridges { get; init; } = "";
}

/// <summary>Small parts, from the parts of a build; those that bridge a joint come from its remedies.</summary>
internal static class SmallPartTable
{
    private static readonly ImmutableArray<Source> Practice = [Sources.CommonPractice];

    private static readonly WheelEnd Front = new(Slot.FrontTyre, Slot.FrontInnerTube, Slot.FrontTubelessValve, Slot.FrontWheel);

    private static readonly WheelEnd Rear = new(Slot.RearTyre, Slot.RearInnerTube, Slot.RearTubelessValve, Slot.RearWheel);

    public static ImmutableArray<SmallPartRule> Rules { get; } =
    [
        new("front-axle", "fork with a threaded end", b => b[Slot.Fork] is Fork { FrontAxleThread.Values.IsEmpty: false } fork ? Axle("front", fork.FrontAxleThread, fork.FrontAxleLength) : null, Slot.FrontThruAxle, Sources.ThruAxleHelp),
        new("rear-axle", "frame with a threaded end", b => b.Frame.ThreadOfRearEnd is { Values.IsEmpty: false } thread ? Axle("rear", thread, b.Frame.RearAxleLength) : null, Slot.RearThruAxle, Sources.ThruAxleHelp),
        new("front-axle-nuts", "solid front axle", b => Nuts(b[Slot.FrontWheel]), Slot.FrontAxleNuts, Sources.AxleNut),
        new("rear-axle-nuts", "solid rear axle", b => Nuts(b[Slot.RearWheel]), Slot.RearAxleNuts, Sources.AxleNut),
        new("front-skewer", "front quick-release hub in open ends", b => b[Slot.Fork] is Fork fork ? Skewer(b, Slot.FrontWheel, Slot.FrontAxleNuts, fork.FrontEnd) : null, null, Sources.AxleGuide),
        new("rear-skewer", "rear quick-release hub in open ends", b => Skewer(b, Slot.RearWheel, Slot.RearAxleNuts, b.Frame.RearEnd), null, Sources.AxleGuide),
        new("headset-spacers", "steerer, head tube, headset and stem", Spacers, null, Sources.SteererRequirement, Sources.SteererGap),
        new("headset-cover", "cables through the headset", b => b.Frame.HeadsetCables.Says(CableWay.Through) ? "cover, ring and spacers of the headset for cables inside: one system, from the frame's or the headset's maker" : null, Slot.HeadsetCover, Sources.CableHeadsets),
        new("frame-inserts", "cables or hoses inside the frame", Inserts, null, Sources.CableHeadsets, Sources.CommonPractice),
        new("preload", "steerer", Preload, Slot.Preload, Sources.ForkCutting, Sources.StarNutSetting),
        new("crown-race", "headset without a crown race", Race, null, Sources.HeadsetChart) { Bridges = "headset-on-crown:crown-race-for-seat" },
        new("bottom-bracket-spacers", "crank, shell and bottom bracket", BracketSpacers, null, Sources.SpacerPost, Sources.SpacerUpgrades, Sources.SpacerChart24) { AskedBy = ["bottom-bracket-spacers", "bottom-bracket-spacers-with-guide", "bottom-bracket-spacers-with-front-derailleur"] },
        new("front-rotor-bolts", "front rotor with six holes", b => Bolts(b[Slot.FrontRotor]), null, Sources.SixBoltAndSplined) { AskedBy = ["front-rotor-on-hub"] },
        new("rear-rotor-bolts", "rear rotor with six holes", b => Bolts(b[Slot.RearRotor]), null, Sources.SixBoltAndSplined) { AskedBy = ["rear-rotor-on-hub"] },
        new("front-rotor-lockring", "front rotor on splines, without a lockring", b => Ring(b, Slot.FrontRotor, Slot.FrontWheel), null, Sources.SixBoltAndSplined, Sources.LockringExchange) { AskedBy = ["front-lockring-on-hub-axle"] },
        new("rear-rotor-lockring", "rear rotor on splines, without a lockring", b => Ring(b, Slot.RearRotor, Slot.RearWheel), null, Sources.SixBoltAndSplined, Sources.LockringExchange) { AskedBy = ["rear-lockring-on-hub-axle"] },
        new("front-caliper-bolts", "front caliper", b => Held(b, Slot.FrontCaliper), null, Sources.CommonPractice),
        new("rear-caliper-bolts", "rear caliper", b => Held(b, Slot.RearCaliper), null, Sources.CommonPractice, Sources.FlatMountBolts) { Bridges = "flat-mount-bolt-in-stay:flat-mount-bolts" },
        new("front-tube", "front clincher", b => Tube(b, Front), Slot.FrontInnerTube, Sources.CommonPractice),
        new("rear-tube", "rear clincher", b => Tube(b, Rear), Slot.RearInnerTube, Sources.CommonPractice),
        new("front-valve", "front tubeless tyre on a tubeless rim", b => Valve(b, Front), Slot.FrontTubelessValve, Sources.ValveArticle),
        new("rear-valve", "rear tubeless tyre on a tubeless rim", b => Valve(b, Rear), Slot.RearTubelessValve, Sources.ValveArticle),
        new("front-rim-tape", "front rim with a bed to be covered", b => Tape(b, Front), Slot.FrontRimTape, Sources.CommonPractice),
        new("rear-rim-tape", "rear rim with a bed to be covered", b => Tape(b, Rear), Slot.RearRimTape, Sources.CommonPractice),
        new("front-sealant", "front tubeless tyre on a tubeless rim", b => IsTubeless(b, Front) == true ? "sealant, as the tyre's maker says for its size" : null, null, Sources.CommonPractice),
        new("rear-sealant", "rear tubeless tyre on a tubeless rim", b => IsTubeless(b, Rear) == true ? "sealant, as the tyre's maker says for its size" : null, null, Sources.CommonPractice),
        new("front-tubular-cement", "front tubular tyre", b => Cement(b[Slot.FrontTyre]), null, Sources.CommonPractice),
        new("rear-tubular-cement", "rear tubular tyre", b => Cement(b[Slot.RearTyre]), null, Sources.CommonPractice),
        new("front-rim-brake-fittings", "front rim brake on bosses", b => Fittings(b[Slot.FrontRimBrake], "fork"), null, Sources.BrazedOnBrakes, Sources.CommonPractice),
        new("rear-rim-brake-fittings", "rear rim brake on bosses", b => Fittings(b[Slot.RearRimBrake], "frame"), null, Sources.BrazedOnBrakes, Sources.CommonPractice),
        new("front-brake-cable", "front lever", b => BrakeCable(b[Slot.FrontBrakeLever]), null, Sources.CommonPractice),
        new("rear-brake-cable", "rear lever", b => BrakeCable(b[Slot.RearBrakeLever]), null, Sources.CommonPractice),
        new("front-hose-ends", "front lever with fluid", b => Hose(b[Slot.FrontBrakeLever]), null, Sources.FluidGuide),
        new("rear-hose-ends", "rear lever with fluid", b => Hose(b[Slot.RearBrakeLever]), null, Sources.FluidGuide),
        new("rear-shift-cable", "rear shifter with a cable", b => ShiftCable(b[Slot.RearShifter]), null, Sources.CommonPractice),
        new("front-shift-cable", "front shifter with a cable", b => ShiftCable(b[Slot.FrontShifter]), null, Sources.CommonPractice),
        new("dropper-cable", "dropper worked by a cable", b => DropperCable(b[Slot.Dropper]), null, Sources.CommonPractice),
        new("cable-guides", "cables and hoses along the frame", Guides, null, Sources.CommonPractice),
        new("quick-link", "chain", b => Link(b[Slot.Chain]), null, Sources.ChainWidths),
        new("cassette-lockring", "cassette on splines", b => CassetteRing(b[Slot.Cassette]), null, Sources.CommonPractice),
        new("sprocket-lockring", "fixed sprocket without its lockring", b => SprocketRing(b[Slot.Cassette]), null, Sources.Freewheels),
        new("bar-tape", "drop bar", b => IsDrop(b[Slot.Handlebar]) == true ? "bar tape and end plugs" : null, null, Sources.BarAndStemTable),
        new("grips", "handlebar", b => Grips(b[Slot.Handlebar]), Slot.Grips, Sources.BarAndStemTable),
        new("grease", "threads and pressed or clamped metal", b => Slot.All.Any(s => s != Slot.Frame && s != Slot.Rider && b[s] is not null) ? "grease for threads, posts and bearings of metal" : null, null, Sources.CommonPractice),
        new("carbon-paste", "clamped carbon", Paste, null, Sources.CommonPractice),
        new("threadlock", "bolts that hold a brake", b => b[Slot.FrontRotor] is not null || b[Slot.RearRotor] is not null || b[Slot.FrontCaliper] is not null || b[Slot.RearCaliper] is not null ? "threadlock of medium strength, where bolts are not coated" : null, null, Sources.CommonPractice),
    ];

    /// <summary>What the parts ask for and is not there as they ask for it.</summary>
    public static ImmutableArray<SmallPart> Of(Build build) => [.. All(build).Where(p => !build.HasSmallPart(p.Id, p.What))];

    /// <summary>What the parts ask for, whatever is there: what it is by its id.</summary>
    public static Dictionary<string, string> Asked(Build build) => All(build).ToDictionary(p => p.Id, p => p.What, StringComparer.Ordinal);

    /// <summary>The id is that of a joint and a row of its bridges: the article itself, and not a kind of which the size follows from the parts.</summary>
    public static bool NamesArticle(string id) => id.IndexOf(':', StringComparison.Ordinal) is > 0 and int colon && id[(colon + 1)..] != Choice;

    private static ImmutableArray<SmallPart> All(Build build)
    {
        ImmutableArray<SmallPart>.Builder needed = ImmutableArray.CreateBuilder<SmallPart>();
        Fit[] asking = [.. build.Check().Findings.Where(f => f.Verdict == Verdict.NeedsPart)];
        foreach (Fit fit in asking)
        {
            foreach (Remedy remedy in fit.Remedies.Where(r => r.Kind == RemedyKind.BuyPart).DistinctBy(IdOf))
            {
                string id = $"{fit.Joint!.Id}:{IdOf(remedy)}";
                if (Rules.Any(r => r.Bridges == id && r.What(build) is not null))
                {
                    continue;
                }

                needed.Add(new(id, remedy.What, fit.Joint.Name, null, remedy.Bridge?.Sources ?? Practice));
            }
        }

        foreach (SmallPartRule rule in Rules)
        {
            if ((rule.Slot is null || build[rule.Slot] is null) && !Array.Exists(asking, f => rule.AskedBy.Contains(f.Joint!.Id)) && rule.What(build) is { } what)
            {
                needed.Add(new(rule.Id, what, rule.Because, rule.Slot, rule.Sources));
            }
        }

        return needed.ToImmutable();
    }

    /// <summary>A small part of the list is what a joint may ask for once it is measured.</summary>
    public static bool IsAsked(Joint joint, IEnumerable<SmallPart> listed) => listed.Any(p => Rules.Any(r => r.Id == p.Id && r.AskedBy.Contains(joint.Id)) || BringsRing(p.Id, joint.Id));

    /// <summary>The carrier between six holes and splines is one article with its lockring: what rotor and hub ask for is not asked for again by the rows of carrier and lockring.</summary>
    private static bool BringsRing(string id, string joint) => Brings("front", id, joint) || Brings("rear", id, joint);

    private static bool Brings(string end, string id, string joint) =>
        id.StartsWith(end + "-rotor-on-hub:", StringComparison.Ordinal) && (joint == end + "-carrier-with-lockring" || joint == end + "-lockring-on-hub-axle");

    /// <summary>An id that a build can hold.</summary>
    public static bool IsId(string id) => Rules.Any(r => r.Id == id) || (id.IndexOf(':', StringComparison.Ordinal) is > 0 and int colon && Waiver.JointOf(id[..colon]) is { } joint && (id[(colon + 1)..] == Choice || joint.Relation.Bridges.Any(b => b.Id == id[(colon + 1)..])));

    private const string Choice = "choice";

    private static string IdOf(Remedy remedy) => remedy.Bridge?.Id ?? Choice;

    private static string Axle(string end, Known<AxleThread> thread, Known<Dimension> length) =>
        $"{end} thru-axle {thread.InTradeWords()}, {(length.State == KnownState.Value ? $"{length.Value.FitKey} mm under the head" : "of the length that its maker names")}";

    private static string? Nuts(Part? wheel) => wheel is Wheel { AxleThread.State: KnownState.Value } solid ? $"two axle nuts {solid.AxleThread.InTradeWords()}" : null;

    private static string? Preload(Build build) => build[Slot.Fork] is not Fork fork || fork.SteererKind.State is not (KnownState.Value or KnownState.Unknown) || fork.SteererKind.Says(SteererKind.Threaded) ? null
        : fork.SteererKind.State == KnownState.Unknown ? $"star nut or expander, with cap and bolt, if the steerer has no thread: {NotSaid}"
        : fork.SteererMaterial.IsCarbon() ? "expander for a carbon steerer, with cap and bolt"
        : fork.SteererMaterial.State == KnownState.Value ? "star nut, with cap and bolt"
        : "star nut, or an expander if the steerer is carbon; with cap and bolt";

    private static string? Bolts(Part? rotor) => rotor is not Rotor { Carrier.State: not KnownState.Value } disc ? null
        : disc.Fixing.May(RotorFixing.SixBolt) switch { true => "six rotor bolts", null => $"six rotor bolts, if it is held by six: {NotSaid}", _ => null };

    /// <summary>A headset is sold with its race, or without.</summary>
    private static string? Race(Build build) => build[Slot.Headset] is not Headset headset || build[Slot.Fork] is not Fork fork ? null
        : headset.CrownRace.State switch
        {
            KnownState.None => RaceFor(fork),
            KnownState.Unknown => $"{RaceFor(fork)}, if the headset comes without: {NotSaid}",
            _ => null,
        };

    private static string RaceFor(Fork fork) => fork.CrownSeat.State == KnownState.Unknown ? "crown race for the seat of the fork" : $"crown race for a seat of {fork.CrownSeat.InTradeWords()}";

    private static string? DropperCable(Part? post) => IsCabled(post) switch
    {
        true => "cable, housing and ends for the dropper, and its remote if it is not there",
        null => $"cable, housing and ends for the dropper, unless it is wireless: {NotSaid}",
        _ => null,
    };

    private static string? CassetteRing(Part? part) => part is not Cassette cassette || (cassette.Pattern.Values is { IsEmpty: false } all && !all.Any(TakesLockring)) || cassette.Pattern.State == KnownState.None ? null
        : cassette.Pattern.Values is { IsEmpty: false } patterns && patterns.All(TakesLockring) ? "lockring of the cassette, if it is not sold with it"
        : $"lockring of the cassette, if it takes one and is not sold with it: {NotSaid} what it sits on";

    private static string? Paste(Build build)
    {
        // Carbon is named where it is: a part of which nobody says what it is made of asks for no paste by itself.
        static bool? Said(Known<Material> material) => material.State == KnownState.Unknown ? false : material.May(Material.Carbon);
        bool?[] carbon =
        [
            Said(build.Frame.Material),
            build[Slot.Seatpost] is Seatpost post ? Said(post.Material) : false,
            build[Slot.Fork] is Fork fork ? Said(fork.SteererMaterial) : false,
            build[Slot.Stem] is Stem stem ? Said(stem.Material) : false,
            build[Slot.Handlebar] is Handlebar bar ? Said(bar.Material) : false,
        ];
        return carbon.Contains(true) ? "assembly paste for carbon: no grease where carbon is clamped"
            : carbon.Contains(null) ? $"assembly paste, if something that is clamped is of carbon: {NotSaid} of all"
            : null;
    }

    /// <summary>Whether it is this value; null where nothing is said, or where it is one of several.</summary>
    private static bool? May<T>(this Known<T> known, T value)
        where T : IInterfaceValue<T>
    {
        if (known.State == KnownState.Unknown)
        {
            return null;
        }

        bool any = known.Values.Any(v => v.FitCode == value.FitCode);
        return any && known.Values.Length > 1 ? null : any;
    }

    /// <summary>The ring by the axle that its tool has to pass over.</summary>
    private static string? Ring(Build build, Slot rotor, Slot wheel)
    {
        if (build[rotor] is not Rotor { Lockring.State: not KnownState.Value } disc || disc.Fixing.May(RotorFixing.CenterLock) == false)
        {
            return null;
        }

        return disc.Fixing.May(RotorFixing.CenterLock) is null ? $"lockring for the rotor, if it sits on splines: {NotSaid}"
            : build[wheel] is not Wheel { Hub.State: KnownState.Value } hub || hub.Hub.Value.Axles.IsEmpty ? "lockring for the rotor, its tool interface as the axle leaves room"
            : hub.Hub.Value.Axles.Max() <= Lockring.Internal.LargestAxleMillimetres * 1_000 ? $"{Lockring.Internal.TradeName} for the rotor, turned with the cassette tool; one with external notches goes too where the end leaves room"
            : $"{Lockring.External.TradeName} for the rotor: the tool of internal ones does not pass over this axle";
    }

    /// <summary>Both the hub and the ends are made for a skewer, the axle is not said to be solid, and no nuts are there to hold it.</summary>
    private static string? Skewer(Build build, Slot wheel, Slot nuts, Known<HubStandard> end) =>
        build[nuts] is null && build[wheel] is Wheel { Hub.State: KnownState.Value, AxleThread.State: not KnownState.Value } hub && end.State == KnownState.Value && TakesSkewer(hub.Hub.Value) && TakesSkewer(end.Value)
            ? $"quick-release skewer for {hub.Hub.InTradeWords()}{(hub.AxleThread.State == KnownState.None || hub.Hub.Value.Attachments.All(a => a == HubAttachment.QuickRelease) ? "" : ", if the axle is hollow")}"
            : null;

    private static bool TakesSkewer(HubStandard standard) => standard.Attachments.Contains(HubAttachment.QuickRelease);

    /// <summary>What the sum of the steerer asks for where the spacers on one side of the stem are not stated. Those that are stated are there; where both are, the gap under the cap is judged and asks by itself.</summary>
    private static string? Spacers(Build build)
    {
        if (build[Slot.Stem] is not Stem stem || build[Slot.Fork] is not Fork fork || fork.SteererKind.Says(SteererKind.Threaded) || fork.CrownsByTravel.Says(CrownType.Dual))
        {
            return null;
        }

        long? below = Said(stem.SpacersBelow);
        long? above = Said(stem.SpacersAbove);
        if ((below is null || above is null) && Said(fork.SteererLength) is { } steerer && steerer > 0 && Said(build.Frame.HeadTubeLength) is { } tube && Said(stem.ClampHeight) is { } clamp
            && build[Slot.Headset] is Headset headset && Said(headset.LowerStackOrOpen) is { } lower && Said(headset.UpperStackOrOpen) is { } upper)
        {
            long left = steerer - tube - clamp - lower - upper;
            long more = left + (long)(SteererLength.LeastGap * Nanometres.PerMillimetre) - (below ?? 0) - (above ?? 0);
            if (more > 0)
            {
                return $"headset spacers{(fork.Steerer.State == KnownState.Value ? $" for {fork.Steerer.InTradeWords()}" : "")}: at least {InMillimetres(more)} mm{((below ?? 0) + (above ?? 0) > 0 ? " more than there are" : "")}, of all not more than {InMillimetres(left + (long)(SteererLength.MostGap * Nanometres.PerMillimetre))} mm below the stem, or the steerer cut shorter{(fork.CrownsByTravel.Says(CrownType.Single) ? "" : $", if the fork has one crown: {NotSaid} how many")}";
            }
        }

        return null;
    }

    /// <summary>The spacers under the cups, by the table of cranks and shells, where nobody said what stands there; a plate that is in the build stands for one.</summary>
    private static string? BracketSpacers(Build build)
    {
        if (build.Frame.Shell is not { State: KnownState.Value } shell || build[Slot.Crankset] is not Crankset { Spindle.State: KnownState.Value } crank
            || build[Slot.BottomBracket] is BottomBracket { DriveSpacer.State: not KnownState.Unknown })
        {
            return null;
        }

        Outcome across = SpindleAcrossShell.Table.Judge([shell.Value.FitCode, crank.Spindle.Value.FitCode]);
        bool plate = build[Slot.ChainGuide] is ChainGuide { Mount.State: KnownState.Value } guide && JointInputs.HasGuidePlate(guide);
        plate |= build[Slot.FrontDerailleur] is FrontDerailleur { Mount.State: KnownState.Value } derailleur && JointInputs.HasDerailleurPlate(derailleur);
        return across.Verdict != Verdict.Fits ? null : across.Reason!.Id switch
        {
            SpindleAcrossShell.OneSpacer => plate ? null : $"one 2.5 mm bottom-bracket spacer for the drive side, {IfNotWith}",
            SpindleAcrossShell.Spaced => $"the bottom-bracket spacers of the crank maker's chart, {IfNotWith}",
            _ => null,
        };
    }

    private const string IfNotWith = "if they are not sold with it";

    private static long? Said(Known<Dimension> length) => length.State switch { KnownState.Value => length.Value.FitCode, KnownState.None => 0, _ => null };

    private static string InMillimetres(long nanometres) => new Nanometres(nanometres).ToString();

    /// <summary>What holds a run at the holes by which it goes into the frame and comes out.</summary>
    private static string? Inserts(Build build) =>
        (build.Frame.HeadsetCables.Says(CableWay.Through) && (HasRun(build[Slot.FrontBrakeLever]) || HasRun(build[Slot.RearBrakeLever]) || ShiftCable(build[Slot.RearShifter]) is not null || ShiftCable(build[Slot.FrontShifter]) is not null))
        || (build.Frame.DropperEntry.Says(DropperEntry.Hole) && build[Slot.Dropper] is Dropper dropper && dropper.Routing.May(DropperRouting.Internal) != false)
            ? "inserts for the holes of the frame by which cables and hoses go in and out, of the frame's maker, and a liner where they would rattle"
            : null;

    /// <summary>
    /// What holds the lines along the frame. Of a frame of which nobody says what it carries nothing is listed: most carry what their lines need. Where they go through the headset they run inside.
    /// Common practice, no source.
    /// </summary>
    private static string? Guides(Build build)
    {
        Known<CableGuide> carried = build.Frame.CableGuides;
        if (build.Frame.HeadsetCables.Says(CableWay.Through) || carried.State is not (KnownState.None or KnownState.Value or KnownState.OneOf))
        {
            return null;
        }

        bool nothing = carried.State == KnownState.None;
        List<string> lines = [];
        bool sure = false;
        Part? lever = build[Slot.RearBrakeLever];
        Take(HasRun(lever), IsPulled(lever) ? false : Hose(lever) is not null ? true : null, "the rear brake");
        Take(ShiftCable(build[Slot.RearShifter]) is not null, false, "the rear derailleur");
        Take(ShiftCable(build[Slot.FrontShifter]) is not null, false, "the front derailleur");
        Take(build[Slot.Dropper] is Dropper { Routing.Values.IsEmpty: false } post && post.Routing.May(DropperRouting.External) != false, true, "the dropper");
        return lines.Count == 0 ? null
            : $"{(nothing ? "clamps or stick-on guides" : carried.Says(CableGuide.Clips) ? "clips for the seats of the frame" : "clips")} for the line of {string.Join(" and ", lines)} along the frame, one set{(sure ? "" : $", if nothing holds it there: {NotSaid}")}";

        void Take(bool runs, bool? inOnePiece, string line)
        {
            if (runs && (nothing ? true : Common(carried.Values, g => g == CableGuide.Clips ? true : g == CableGuide.Stops ? inOnePiece : false)) is not false and var needed)
            {
                lines.Add(line);
                sure |= needed == true;
            }
        }
    }

    /// <summary>What all values say alike; null where they differ or one of them leaves it open.</summary>
    private static bool? Common(ImmutableArray<CableGuide> carried, Func<CableGuide, bool?> asks)
    {
        bool? first = asks(carried[0]);
        foreach (CableGuide guide in carried.AsSpan()[1..])
        {
            first = asks(guide) == first ? first : null;
        }

        return first;
    }

    private static bool HasRun(Part? lever) => BrakeCable(lever) is not null || Hose(lever) is not null;

    private static bool? IsCabled(Part? post) => post is not Dropper dropper || dropper.Routing.State == KnownState.None ? false : !dropper.Routing.May(DropperRouting.Wireless);

    private static bool Says<T>(this Known<T> known, T value)
        where T : IInterfaceValue<T> => known.State == KnownState.Value && known.Value.FitCode == value.FitCode;

    /// <summary>The bolts of a flat mount whose length is stated are there; behind they go where they do not suit the stay, and the stay says how long they are.</summary>
    private static string? Held(Build build, Slot slot)
    {
        if (build[slot] is not Caliper { Mounting.State: not KnownState.None } brake)
        {
            return null;
        }

        if (brake.Mounting.State != KnownState.Value)
        {
            return brake.BoltLength.State == KnownState.Value ? null : $"two bolts for the caliper, of the length that mount and adapter ask for: {NotSaid} how it is held";
        }

        if (brake.Mounting.Value != CaliperFoot.Flat)
        {
            return $"two bolts for a caliper with {brake.Mounting.InTradeWords()}, of the length of mount and adapter";
        }

        if (slot == Slot.FrontCaliper)
        {
            return brake.BoltLength.State == KnownState.Value ? null : "two flat-mount bolts, of the length of the plate under the caliper";
        }

        Joint bolts = Waiver.JointOf("flat-mount-bolt-in-stay")!;
        if (brake.BoltLength.State == KnownState.Value && (!bolts.IsFilled(build) || bolts.Judge(build) is Verdict.Fits or Verdict.NeedsMeasuring))
        {
            return null;
        }

        bool plain = build[Slot.RearRotor] is Rotor { Size.State: KnownState.Value } rotor && build.Frame.RearBrakeMount is { State: KnownState.Value } mount
            && mount.Value.IsFlat && rotor.Size.Value.FitCode == mount.Value.NativeRotorMillimetres;
        return plain && build.Frame.RearStayThickness is { State: KnownState.Value } stay
            ? $"two flat-mount bolts of about {InMillimetres(DiscRelations.Bolt(stay.Value.FitCode))} mm, for a stay {stay.Value.FitKey} mm thick"
            : "two flat-mount bolts, as long as the stay is thick and about 13 mm more; with a plate as its maker says";
    }

    /// <summary>The slots of one wheel and of what holds its air.</summary>
    private sealed record WheelEnd(Slot Tyre, Slot Tube, Slot Valve, Slot Wheel);

    /// <summary>Null where the bead is not known, or one of several of which some are made for it.</summary>
    private static bool? HasTubelessBead(Part? tyre) => tyre is not Tyre clincher || clincher.Bead.State == KnownState.None ? false
        : clincher.Bead.Values is not { IsEmpty: false } beads ? null
        : beads.All(b => b == TyreBead.Tubeless) ? true
        : beads.Any(b => b == TyreBead.Tubeless) ? null
        : false;

    /// <summary>Whether the wheel runs without a tube: bead and rim have to be made for it. Null where bead or rim is not known and nothing that is there says it; beside a tubeless valve a tube is the spare.</summary>
    private static bool? IsTubeless(Build build, WheelEnd end) =>
        (build[end.Tube] is not null && build[end.Valve] is null) || IsTubelessRim(build[end.Wheel]) == false ? false
        : HasTubelessBead(build[end.Tyre]) switch
        {
            true => IsTubelessRim(build[end.Wheel]) ?? (build[end.Valve] is not null ? true : null),
            bool bead => bead,
            null => build[end.Valve] is not null && IsTubelessRim(build[end.Wheel]) == true ? true : null,
        };

    private static bool? IsTubelessRim(Part? wheel) => wheel is not Wheel { RimType.Values: { IsEmpty: false } types } ? null
        : types.All(IsTubelessType) ? true
        : types.Any(IsTubelessType) ? null
        : false;

    private static bool IsTubelessType(RimType type) => type == RimType.Hookless || type == RimType.TubelessCrochet;

    private static string? Tube(Build build, WheelEnd end)
    {
        bool? tubeless = IsTubeless(build, end);
        if (build[end.Tyre] is not Tyre { Bead.State: not KnownState.None } tyre || !HoldsClincher(tyre) || tubeless == true)
        {
            return null;
        }

        Wheel? rim = build[end.Wheel] as Wheel;
        string size = tyre.Size.State == KnownState.Value ? tyre.Size.InTradeWords() : "the size of the tyre";
        string hole = rim is { ValveHole.State: KnownState.Value } ? $", valve for {rim.ValveHole.InTradeWords()}" : "";
        string length = rim is { RimDepth.State: KnownState.Value } ? $", valve of at least {ValveFor(rim)} mm" : "";
        string choice = tubeless is not null ? ""
            : HasTubelessBead(tyre) is null ? "; or, with a tyre marked tubeless on a rim marked TC or TSS, a tubeless valve, tape and sealant: read tyre and rim"
            : "; or, on a rim marked TC or TSS, a tubeless valve, tape and sealant: read the rim";
        return $"inner tube for {size}{hole}{length}{choice}";
    }

    /// <summary>The least length of a valve that a pump takes hold of.</summary>
    private static string ValveFor(Wheel rim) => InMillimetres(rim.RimDepth.Value.FitCode + ValveRelations.Pump);

    private static bool HoldsClincher(Tyre tyre) => tyre.HoldOrSize is { State: KnownState.Value } hold && hold.Value == TyreHold.Clincher;

    private static string? Valve(Build build, WheelEnd end) => IsTubeless(build, end) != true ? null
        : build[end.Wheel] is Wheel { RimDepth.State: KnownState.Value } rim ? $"tubeless valve of at least {ValveFor(rim)} mm, for a rim {rim.RimDepth.Value.FitKey} mm deep"
        : "tubeless valve, longer than the rim is deep";

    private static string? Tape(Build build, WheelEnd end) => build[end.Wheel] is not Wheel { BedHole.State: not KnownState.None } rim || build[end.Tyre] is not Tyre clincher || !HoldsClincher(clincher) ? null
        : $"{(IsTubeless(build, end) switch { true => "tubeless tape", false => "rim tape", null => "rim tape, or tubeless tape without a tube" })}{(rim.InnerWidth.State == KnownState.Value ? $" for {rim.InnerWidth.Value.FitKey} mm inside" : "")}";

    /// <summary>No lockring is put on what is screwed on, held by a snap ring or the hub's own carrier, or screws itself on.</summary>
    private static bool TakesLockring(CassettePattern pattern) =>
        !ThreadOnHub.IsScrewed(pattern.FitCode) && pattern != CassettePattern.Xd && pattern != CassettePattern.Xdr && pattern != CassettePattern.ThreeLug && pattern != CassettePattern.HubGearOwn;

    private static string? Cement(Part? tyre) => tyre is Tyre { HoldOrSize.State: KnownState.Value } stuck && stuck.HoldOrSize.Value == TyreHold.Tubular ? "rim cement, or tape for tubulars" : null;

    /// <summary>What joins the cable to the arms: a straddle cable pulls both up, a bent pipe leads it to one of them.</summary>
    private static string? Fittings(Part? brake, string on) => brake is not RimBrake { Type.State: KnownState.Value } arms ? null
        : arms.Type.Value == BrakeType.Cantilever || arms.Type.Value == BrakeType.CentrePull || arms.Type.Value == BrakeType.UBrake ? $"straddle cable with its carrier, if it is not sold with the brake, and a stop for the housing above the tyre where the {on} has none"
        : arms.Type.Value == BrakeType.DirectPull || arms.Type.Value == BrakeType.MiniDirectPull ? "bent cable pipe with its boot, if it is not sold with the brake"
        : null;

    /// <summary>The ring with the left-hand thread that keeps a fixed sprocket from unscrewing.</summary>
    private static string? SprocketRing(Part? cassette) => cassette is not Cassette { Pattern.State: KnownState.Value } fixedOn || fixedOn.Pattern.Value != CassettePattern.FixedSprocket ? null
        : fixedOn.Lockring.State == KnownState.None ? "left-hand lockring for the fixed sprocket, in the thread of the hub"
        : fixedOn.Lockring.State == KnownState.Unknown ? "left-hand lockring for the fixed sprocket, in the thread of the hub, if it is not there"
        : null;

    private static string? BrakeCable(Part? lever) => lever is not BrakeLever worked ? null
        : IsPulled(lever) ? worked.HoseLength.IsThere() ? "brake cable, ferrules and end cap" : "brake cable, housing, ferrules and end cap"
        : worked is { PullOrFluid.State: KnownState.Unknown, FluidOrPull.State: KnownState.Unknown } ? $"brake cable, housing, ferrules and end cap; or a hose with its ends, and fluid: {NotSaid} what the lever works"
        : null;

    private static bool IsPulled(Part? lever) => lever is BrakeLever { PullOrFluid.Values.IsEmpty: false };

    private static string? Hose(Part? lever) => lever is not BrakeLever filled ? null
        : filled.FluidOrPull.State == KnownState.Value ? $"{(filled.HoseLength.IsThere() ? "" : "hose with ")}insert and olive, and {filled.FluidOrPull.InTradeWords()} to bleed"
        : filled.FluidOrPull.State == KnownState.OneOf || filled is { Pull.State: KnownState.None, Fluid.State: KnownState.Unknown } ? $"{(filled.HoseLength.IsThere() ? "" : "hose with ")}insert and olive, and the fluid that the cap of the lever names: {NotSaid} which"
        : null;

    private static string? ShiftCable(Part? shifter)
    {
        if (shifter is not Shifter lever || lever.Signal.State == KnownState.None || lever.Signal.May(ShiftSignal.Cable) == false)
        {
            return null;
        }

        string cable = lever.HousingLength.IsThere() ? "shift cable, ferrules and end cap" : "shift cable, housing, ferrules and end cap";
        return lever.Signal.May(ShiftSignal.Cable) == true ? cable : $"{cable}, if it shifts by cable: {NotSaid}";
    }

    /// <summary>A hose or a housing of which the length is stated is there.</summary>
    private static bool IsThere(this Known<Dimension> length) => length.State is KnownState.Value or KnownState.Measured or KnownState.OneOf;

    /// <summary>A chain of one of several widths takes a link of its own width too: only a belt takes none.</summary>
    private static string? Link(Part? chain) => chain is not Chain joined ? null
        : joined.Size.Values is { IsEmpty: false } sizes ? sizes.Contains(ChainSize.Belt) ? null : $"joining link for {joined.Size.InTradeWords()}"
        : joined.Size.State == KnownState.Unknown ? $"joining link as wide as the chain, unless it is a belt: {NotSaid} for how many sprockets it is made" : null;

    /// <summary>Where the bar's end is not known, its ends are covered one way or the other.</summary>
    private static string? Grips(Part? bar) => bar is not Handlebar held || IsDrop(bar) == true ? null
        : IsDrop(bar) == false ? $"grips for {held.Grip.InTradeWords()}"
        : held.Grip.State is KnownState.Unknown or KnownState.OneOf ? $"grips, or bar tape and end plugs: {NotSaid} how thick the bar is where it is held" : null;

    private const string NotSaid = "it is not said";

    private static bool? IsDrop(Part? bar) => bar is not Handlebar { Grip.Values: { IsEmpty: false } ends } ? null
        : ends.All(e => e != Cockpit.GripDiameter.Mm22Point2) ? true
        : ends.All(e => e == Cockpit.GripDiameter.Mm22Point2) ? false
        : null;

    /// <summary>What was bought in other words is this too: the same, or more, since a hose came with its ends before it was cut.</summary>
    public static bool Covers(string said, string what) => said == what || said.EndsWith(" " + what, StringComparison.Ordinal) || what.Split(", ").All(said.Split(", ").Contains);

    private static bool IsCarbon(this Known<Material> material) => material.State == KnownState.Value && material.Value == Material.Carbon;
}
