using System.Collections.Immutable;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Tyres;

namespace Lugwork;

/// <summary>What the joints of brakes and hubs ask of the parts.</summary>
internal static partial class JointInputs
{
    private const string LeverMeasure = "Read the lever or its maker's list; or rule how far the cable moves while the lever is pulled through: about twice as far is long pull.";
    private const string FluidMeasure = "Read the cap of the reservoir; never guess by colour.";
    private const string TypeMeasure = "Look where it is held: one bolt through crown or bridge, two bosses below the rim, or two above it.";
    private const string RingMeasure = "Look at the ring: notches inside (cassette tool) or outside (tool of an external cup).";
    private const string HoleToRim = "Wheel in place: rule from the middle of the brake hole straight down to the middle of the rim's track, to 0.5 mm.";
    private const string HoleMeasure = "Caliper in the hole from both sides, to 0.1 mm: about 8 mm from behind takes a recessed nut.";
    private const string BossMeasure = "Rule from the middle of a boss to the middle of the axle: 283 mm for 622, 265 for 584, 254 for 559.";
    private const string BossToBoss = "Rule from middle to middle of the two bosses, to 0.5 mm.";
    private const string MakersAxle = "Ask the frame or fork maker, or rule the axle that came with it from under the head to the tip, to 0.5 mm.";

    public static readonly JointInput RearStay = Input<Frame, Dimension>(Slot.Frame, "rearStayThickness", "stay at the flat mount", p => p.RearStayThickness, "Caliper over the stay at the bolt holes, to 0.1 mm.", Lengths);

    /// <summary>Known to have none counts as a value of its own: the joint says what it means.</summary>
    public static JointInput PullOf(Slot slot) => WithNone<BrakeLever, CablePull>(slot, "pull", "cable pull of the lever", p => p.PullOrFluid, BrakeActionRelations.ByFluid, "fluid", LeverMeasure);

    public static JointInput FluidOfLever(Slot slot) => WithNone<BrakeLever, BrakeFluid>(slot, "fluid", "fluid of the lever", p => p.FluidOrPull, BrakeActionRelations.ByCable, "cable", FluidMeasure);

    public static JointInput FluidOfCaliper(Slot slot) => WithNone<Caliper, BrakeFluid>(slot, "fluid", "fluid of the caliper", p => p.FluidOrType, BrakeActionRelations.ByCable, "cable", FluidMeasure);

    public static JointInput TypeOfCaliper(Slot slot) => Input<Caliper, BrakeType>(slot, "type", "caliper type", p => p.TypeOrFluid, "Look what enters it: a hose or a cable; for a cable read its maker's list of levers.", where: t => t.Place == BrakePlace.DiscMount);

    public static JointInput TypeOf(Slot slot) => Input<RimBrake, BrakeType>(slot, "type", "rim brake", p => p.Type, TypeMeasure, where: t => t.IsRimBrake);

    public static JointInput PlaceOf(Slot slot) => Projected<RimBrake, BrakeType>(
        slot, "type", "what holds the rim brake", p => p.Type, t => (long)t.Place + 1, () => [1, 2, 3], TypeMeasure, family: 0, show: c => c switch { 1 => "centre bolt", 2 => "bosses below the rim", 3 => "bosses above the rim", _ => "not a rim brake" });

    public static JointInput ReachOf(Slot slot) => WithNone<RimBrake, RimBrakeReach>(
        slot, "reach", "reach of the rim brake", p => p.ReachOnBolt, RimBrakeRelations.OnBosses, "held by bosses", "Rule from the centre bolt to the middle of the pad, at the top and at the bottom of its slot, to 0.5 mm.");

    public static JointInput BoltOf(Slot slot) => WithNone<RimBrake, BrakeBolt>(slot, "bolt", "bolt of the rim brake", p => p.BoltOrBosses, RimBrakeRelations.OnBosses, "held by bosses", "Look at the nut: outside, or a long one with a hex socket; caliper over the thread.");

    public static JointInput PadsOf(Slot slot) => Input<RimBrake, RimPads>(slot, "pads", "pads of the rim brake", p => p.Pads, "Read the pads or their maker's list.");

    public static JointInput TrackOf(Slot slot) => Input<Wheel, BrakeTrack>(slot, "brakeTrack", "brake track of the rim", p => p.BrakeTrack, "Look at the flanks: bright turned metal, bare carbon, or paint and decals, which is no track.");

    public static JointInput Bosses(Slot slot) => slot == Slot.Frame
        ? WithNone<Frame, BrakeBoss>(slot, "rearBosses", "rear bosses", p => p.RearBosses, RimBrakeRelations.NoPlace, "none", BossMeasure)
        : WithNone<Fork, BrakeBoss>(slot, "frontBosses", "front bosses", p => p.FrontBosses, RimBrakeRelations.NoPlace, "none", BossMeasure);

    public static JointInput Hole(Slot slot) => slot == Slot.Frame
        ? WithNone<Frame, BrakeBolt>(slot, "rearBrakeHole", "rear brake hole", p => p.RearBrakeHole, RimBrakeRelations.NoPlace, "none", HoleMeasure)
        : WithNone<Fork, BrakeBolt>(slot, "frontBrakeHole", "front brake hole", p => p.FrontBrakeHole, RimBrakeRelations.NoPlace, "none", HoleMeasure);

    public static JointInput BoltToRim(Slot slot) => slot == Slot.Frame
        ? Input<Frame, Dimension>(slot, "rearBoltToRim", "rear brake hole to rim", p => p.RearBoltToRim, HoleToRim, Lengths)
        : Input<Fork, Dimension>(slot, "frontBoltToRim", "front brake hole to rim", p => p.FrontBoltToRim, HoleToRim, Lengths);

    public static JointInput BoltToRimOf(Slot slot) => slot == Slot.Frame
        ? Input<Frame, BeadSeat>(slot, "rearBoltToRimOf", "wheel of that figure", p => p.RearBoltToRimOf, "Read the ISO number on the rim that was in place.")
        : Input<Fork, BeadSeat>(slot, "frontBoltToRimOf", "wheel of that figure", p => p.FrontBoltToRimOf, "Read the ISO number on the rim that was in place.");

    public static JointInput BossSpacing(Slot slot) => slot == Slot.Frame
        ? Input<Frame, Dimension>(slot, "rearBossSpacing", "rear boss spacing", p => p.RearBossSpacing, BossToBoss, Lengths)
        : Input<Fork, Dimension>(slot, "frontBossSpacing", "front boss spacing", p => p.FrontBossSpacing, BossToBoss, Lengths);

    public static JointInput RingOf(Slot slot) => WithNone<Rotor, Lockring>(slot, "lockring", "lockring", p => p.Lockring, DiscRelations.NotThere, "none", RingMeasure);

    /// <summary>The brake inside the hub; known to have none counts as a value of its own.</summary>
    public static JointInput HubBrakeOf(Slot slot) => WithNone<Wheel, BrakeType>(
        slot, "hubBrake", "brake of the hub", p => p.HubBrake, HubBrakeRelations.NoBrake, "none", "Look for an arm from the hub to fork blade or chain stay, and whether a cable goes to it.", t => t.Place == BrakePlace.Hub);

    /// <summary>A carrier that is there; where none is stated the rotor needs one, and whether there is one is asked elsewhere.</summary>
    public static JointInput CarrierThere(Slot slot) => There(CarrierOf(slot));

    /// <summary>An adapter that is there; where none is stated it has to be bought.</summary>
    public static JointInput AdapterThere(Slot slot) => There(AdapterOf(slot));

    /// <summary>The form of the mount that the adapter is made for; nobody has to say it, and where the caliper meets the mount it is asked.</summary>
    public static JointInput AdapterMadeFor(Slot slot) => new OwnInput<Caliper, BrakeMount>(slot, "adapterOn", "mount that the adapter is made for", p => p.AdapterOn, "Read its marking, or look at its foot: two plain holes across for tabs, two bolts in the plane of the rotor for posts.")
    {
        Reads = p => p.AdapterOn is { State: not (KnownState.Unknown or KnownState.None) } known ? known.ToCandidates(m => BrakeRelations.CodeOf(m.Form)) : new Candidates(KnownState.Value, DiscRelations.NotThere, DiscRelations.NotThere, null),
        Lists = () => [DiscRelations.NotThere],
        Shows = code => code == DiscRelations.NotThere ? "not stated" : ((MountForm)(code - 1)).ToString(),
        Tells = known => known.State is KnownState.Unknown or KnownState.None ? "not stated" : known.InTradeWords(),
    };

    private static PieceThere There(JointInput piece) => new PieceThere(piece);

    public static JointInput CarrierOf(Slot slot) => WithNone<Rotor, RotorCarrier>(slot, "carrier", "carrier", p => p.Carrier, DiscRelations.NotThere, "none", "Look at the carrier: bolts or pins hold the rotor.");

    public static JointInput ThicknessOf(Slot slot) => Input<Rotor, Dimension>(slot, "thickness", "rotor thickness", p => p.Thickness, "Micrometer on the track at its thinnest place, to 0.01 mm.", Lengths);

    public static JointInput Thickest(Slot slot) => Input<Caliper, Dimension>(slot, "thickestRotor", "thickest rotor of the caliper", p => p.ThickestRotor, "The caliper maker's figure; do not guess.", Lengths);

    public static JointInput Thinnest(Slot slot) => Input<Caliper, Dimension>(slot, "thinnestRotor", "thinnest rotor of the caliper", p => p.ThinnestRotor, "The caliper maker's figure; \"none\" if the maker prints none.", Lengths);

    public static JointInput StayBolt(Slot slot) => Input<Caliper, Dimension>(slot, "boltLength", "bolt of the flat mount", p => p.BoltLength, "Rule the bolt from under the head to its tip, to 0.5 mm.", Lengths);

    /// <summary>The thickest axle that the hub comes with, micrometres.</summary>
    public static JointInput AxleThrough(Slot slot) => Projected<Wheel, HubStandard>(
        slot, "hub", "axle of the hub", p => Here(p.Hub, slot == Slot.RearWheel), ThickestAxle, () => AxlesOf(slot == Slot.RearWheel), "Caliper over the axle or in its bore, to 0.1 mm.", family: 0, show: c => c == DiscRelations.OwnAxle ? "maker's own axle" : FormattableString.Invariant($"{c / 1000m:0.##} mm"));

    /// <summary>O.L.D. of an end; 1 nanometre where it is the maker's own.</summary>
    public static JointInput OldOf(Slot slot) => slot == Slot.Frame
        ? Projected<Frame, HubStandard>(slot, "rear", "width of the rear end", p => Here(p.RearEnd, true), Old, () => OldsOf(true), "Rule over the end caps of the wheel, to 0.5 mm.")
        : Projected<Fork, HubStandard>(slot, "front", "width of the fork end", p => Here(p.FrontEnd, false), Old, () => OldsOf(false), "Rule over the end caps of the wheel, to 0.5 mm.");

    public static JointInput AxleLengthAsked(Slot slot) => slot == Slot.Frame
        ? Input<Frame, Dimension>(slot, "rearAxleLength", "length of the rear axle by the frame maker", p => p.RearAxleLength, MakersAxle, Lengths)
        : Input<Fork, Dimension>(slot, "frontAxleLength", "length of the front axle by the fork maker", p => p.FrontAxleLength, MakersAxle, Lengths);

    public static JointInput LengthOfAxle(Slot slot) => Input<ThruAxle, Dimension>(slot, "length", "length of the thru-axle", p => p.Length, "Rule from under the head to the tip, to 0.5 mm.", Lengths);

    public static JointInput Lips => Input<Fork, RetentionLips>(Slot.Fork, "frontLips", "retention lips", p => p.FrontLips, "Look at the outside of the fork ends: a raised rim or tabs round the slot, not filed away.");

    public static JointInput AxleThreadOf(Slot slot) => Input<Wheel, HubAxleThread>(slot, "axleThread", "thread of the hub axle", p => p.AxleThread, "Thread gauge on the axle: 24 or 26 turns an inch, or 1 mm a turn.");

    public static JointInput NutThread(Slot slot) => Input<AxleNuts, HubAxleThread>(slot, "thread", "thread of the nuts", p => p.Thread, "Try the nut by hand over the whole thread; a gauge in the nut tells 24 from 26 turns an inch.");

    public static JointInput GearsInside => Projected<Wheel, FreehubBody>(
        Slot.RearWheel, "body", "drive of the hub", p => p.FreehubBody, b => b == FreehubBody.ThreeLug || b == FreehubBody.HubGearOwn ? EndRelations.GearHub : EndRelations.PlainDrive, () => [EndRelations.PlainDrive, EndRelations.GearHub], "Look whether a shift cable or rod goes into the hub.", family: 0, show: c => c == EndRelations.GearHub ? "gears inside" : "no gears inside");

    public static JointInput RearSlotOf => WithNone<Frame, DropoutSlot>(Slot.Frame, "rearDropout", "slot of the rear end", p => p.RearDropout, EndRelations.ClosedEnds, "closed ends", "Look at the drop-outs: slots along the chain, up and down, or closed holes.");

    public static JointInput WashersOf => Input<Wheel, DropoutSlot>(Slot.RearWheel, "washers", "washers of the hub gear", p => p.Washers, "Read the mark on the washer in the hub maker's list: each is made for one angle of slot.");

    private static long ThickestAxle(HubStandard hub)
    {
        long thickest = DiscRelations.OwnAxle;
        foreach (int axle in hub.Axles)
        {
            thickest = Math.Max(thickest, axle);
        }

        return thickest;
    }

    private static long Old(HubStandard hub) => Math.Max(1, hub.OldMicrometres * (Nanometres.PerMillimetre / 1_000));

    private static ImmutableArray<long> AxlesOf(bool rear) => Each(rear, ThickestAxle);

    private static ImmutableArray<long> OldsOf(bool rear) => Each(rear, Old);

    private static ImmutableArray<long> Each(bool rear, Func<HubStandard, long> from)
    {
        List<long> codes = [];
        foreach (HubStandard hub in HubStandard.All)
        {
            if (hub.IsRear == rear && !codes.Contains(from(hub)))
            {
                codes.Add(from(hub));
            }
        }

        return [.. codes];
    }

    /// <summary>Of several readings those that can be at this end; all of them where none can.</summary>
    private static Known<HubStandard> Here(Known<HubStandard> known, bool rear)
    {
        if (known.State != KnownState.OneOf)
        {
            return known;
        }

        ImmutableArray<HubStandard> here = Narrowed(known, rear);
        return here.IsEmpty ? known : Known<HubStandard>.OneOf(here, known.Evidence);
    }

    // Apart from the settled path, so that its closure is not made there.
    private static ImmutableArray<HubStandard> Narrowed(Known<HubStandard> known, bool rear) => [.. known.Values.Where(h => h.IsRear == rear)];

    private static OrNoneInput<TPart, T> WithNone<TPart, T>(Slot slot, string field, string called, Func<TPart, Known<T>> get, long none, string word, string measure, Func<T, bool>? where = null)
        where TPart : Part
        where T : IInterfaceValue<T> => new OrNoneInput<TPart, T>(slot, field, called, get, none, word, measure) { Where = where, IsLength = false };
}
