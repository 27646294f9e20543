using System.Collections.Immutable;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
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
}

/// <summary>Small parts, from the parts of a build; those that bridge a joint come from its remedies.</summary>
internal static class SmallPartTable
{
    private static readonly ImmutableArray<Source> Practice = [Sources.CommonPractice];

    public static ImmutableArray<SmallPartRule> All { get; } =
    [
        new("front-axle", "fork with a threaded end", b => b[Slot.Fork] is Fork { FrontAxleThread.State: KnownState.Value } fork ? Axle("front", fork.FrontAxleThread, fork.FrontAxleLength) : null, Slot.FrontAxle, Sources.ThruAxleHelp),
        new("rear-axle", "frame with a threaded end", b => b.Frame.ThreadOfRearEnd is { State: KnownState.Value } thread ? Axle("rear", thread, b.Frame.RearAxleLength) : null, Slot.RearAxle, Sources.ThruAxleHelp),
        new("front-axle-nuts", "solid front axle", b => Nuts(b[Slot.FrontWheel]), Slot.FrontNuts, Sources.AxleNut),
        new("rear-axle-nuts", "solid rear axle", b => Nuts(b[Slot.RearWheel]), Slot.RearNuts, Sources.AxleNut),
        new("preload", "threadless steerer", Preload, Slot.Preload, Sources.ForkCutting, Sources.StarNutSetting),
        new("crown-race", "headset without a crown race", b => b[Slot.Headset] is Headset { CrownRace.State: KnownState.None } && b[Slot.Fork] is Fork fork ? $"crown race for a seat of {fork.CrownSeat.InTradeWords()}" : null, null, Sources.HeadsetChart),
        new("front-rotor-bolts", "front rotor with six holes", b => Bolts(b[Slot.FrontRotor]), null, Sources.SixBoltAndSplined) { AskedBy = ["front-rotor-on-hub"] },
        new("rear-rotor-bolts", "rear rotor with six holes", b => Bolts(b[Slot.RearRotor]), null, Sources.SixBoltAndSplined) { AskedBy = ["rear-rotor-on-hub"] },
        new("front-rotor-lockring", "front rotor on splines, without a lockring", b => Ring(b[Slot.FrontRotor]), null, Sources.SixBoltAndSplined) { AskedBy = ["front-lockring-on-hub-axle"] },
        new("rear-rotor-lockring", "rear rotor on splines, without a lockring", b => Ring(b[Slot.RearRotor]), null, Sources.SixBoltAndSplined) { AskedBy = ["rear-lockring-on-hub-axle"] },
        new("front-caliper-bolts", "front caliper", b => Held(b[Slot.FrontBrake]), null, Sources.CommonPractice),
        new("rear-caliper-bolts", "rear caliper", b => Held(b[Slot.RearBrake]), null, Sources.CommonPractice),
        new("front-tube", "front clincher without a tubeless bead", b => Tube(b[Slot.FrontTyre], b[Slot.FrontWheel]), Slot.FrontTube, Sources.CommonPractice),
        new("rear-tube", "rear clincher without a tubeless bead", b => Tube(b[Slot.RearTyre], b[Slot.RearWheel]), Slot.RearTube, Sources.CommonPractice),
        new("front-valve", "front tubeless tyre", b => Valve(b[Slot.FrontTyre], b[Slot.FrontTube], b[Slot.FrontWheel]), Slot.FrontValve, Sources.ValveArticle),
        new("rear-valve", "rear tubeless tyre", b => Valve(b[Slot.RearTyre], b[Slot.RearTube], b[Slot.RearWheel]), Slot.RearValve, Sources.ValveArticle),
        new("front-rim-tape", "front rim with a bed to be covered", b => Tape(b[Slot.FrontTyre], b[Slot.FrontWheel]), Slot.FrontRimTape, Sources.CommonPractice),
        new("rear-rim-tape", "rear rim with a bed to be covered", b => Tape(b[Slot.RearTyre], b[Slot.RearWheel]), Slot.RearRimTape, Sources.CommonPractice),
        new("front-sealant", "front tubeless tyre", b => IsTubeless(b[Slot.FrontTyre]) && b[Slot.FrontTube] is null ? "sealant, as the tyre's maker says for its size" : null, null, Sources.CommonPractice),
        new("rear-sealant", "rear tubeless tyre", b => IsTubeless(b[Slot.RearTyre]) && b[Slot.RearTube] is null ? "sealant, as the tyre's maker says for its size" : null, null, Sources.CommonPractice),
        new("front-brake-cable", "front lever that pulls a cable", b => BrakeCable(b[Slot.FrontLever]), null, Sources.CommonPractice),
        new("rear-brake-cable", "rear lever that pulls a cable", b => BrakeCable(b[Slot.RearLever]), null, Sources.CommonPractice),
        new("front-hose-ends", "front lever with fluid", b => Hose(b[Slot.FrontLever]), null, Sources.FluidGuide),
        new("rear-hose-ends", "rear lever with fluid", b => Hose(b[Slot.RearLever]), null, Sources.FluidGuide),
        new("rear-shift-cable", "rear shifter with a cable", b => ShiftCable(b[Slot.Shifter]), null, Sources.CommonPractice),
        new("front-shift-cable", "front shifter with a cable", b => ShiftCable(b[Slot.FrontShifter]), null, Sources.CommonPractice),
        new("dropper-cable", "dropper worked by a cable", b => b[Slot.Dropper] is Dropper { Routing.State: KnownState.Value } dropper && dropper.Routing.Value != DropperRouting.Wireless ? "remote, cable, housing and ends for the dropper" : null, null, Sources.CommonPractice),
        new("quick-link", "chain", b => b[Slot.Chain] is Chain { Size.State: KnownState.Value } chain && chain.Size.Value != ChainSize.Belt ? $"joining link for {chain.Size.InTradeWords()}" : null, null, Sources.ChainWidths),
        new("cassette-lockring", "cassette on splines", b => b[Slot.Cassette] is Cassette { Pattern.State: KnownState.Value } cassette && !ThreadOnHub.IsScrewed(cassette.Pattern.Value.FitCode) ? "lockring of the cassette, if it is not sold with it" : null, null, Sources.CommonPractice),
        new("bar-tape", "drop bar", b => IsDrop(b[Slot.Handlebar]) ? "bar tape and end plugs" : null, null, Sources.BarAndStemTable),
        new("grips", "flat bar", b => b[Slot.Handlebar] is Handlebar { Grip.State: KnownState.Value } bar && !IsDrop(bar) ? $"grips for {bar.Grip.InTradeWords()}" : null, Slot.Grips, Sources.BarAndStemTable),
        new("grease", "threads and pressed or clamped metal", b => Slot.All.Any(s => s != Slot.Frame && s != Slot.Rider && b[s] is not null) ? "grease for threads, posts and bearings of metal" : null, null, Sources.CommonPractice),
        new("carbon-paste", "clamped carbon", b => b.Frame.Material.IsCarbon() || (b[Slot.Seatpost] is Seatpost post && post.Material.IsCarbon()) || (b[Slot.Fork] is Fork fork && fork.SteererMaterial.IsCarbon()) || (b[Slot.Stem] is Stem stem && stem.Material.IsCarbon()) || (b[Slot.Handlebar] is Handlebar bar && bar.Material.IsCarbon()) ? "assembly paste for carbon: no grease where carbon is clamped" : null, null, Sources.CommonPractice),
        new("threadlock", "bolts that hold a brake", b => b[Slot.FrontRotor] is not null || b[Slot.RearRotor] is not null || b[Slot.FrontBrake] is not null || b[Slot.RearBrake] is not null ? "threadlock of medium strength, where bolts are not coated" : null, null, Sources.CommonPractice),
    ];

    public static ImmutableArray<SmallPart> Of(Build build)
    {
        ImmutableArray<SmallPart>.Builder needed = ImmutableArray.CreateBuilder<SmallPart>();
        Fit[] asking = [.. build.Check().Fits.Where(f => f.Verdict == Verdict.NeedsPart)];
        foreach (Fit fit in asking)
        {
            foreach (Remedy remedy in fit.Remedies.Where(r => r.Kind == RemedyKind.BuyPart).DistinctBy(IdOf))
            {
                needed.Add(new($"{fit.Joint!.Id}:{IdOf(remedy)}", remedy.What, fit.Joint.Name, null, remedy.Bridge?.Sources ?? Practice));
            }
        }

        foreach (SmallPartRule rule in All)
        {
            if ((rule.Slot is null || build[rule.Slot] is null) && !Array.Exists(asking, f => rule.AskedBy.Contains(f.Joint!.Id)) && rule.What(build) is { } what)
            {
                needed.Add(new(rule.Id, what, rule.Because, rule.Slot, rule.Sources));
            }
        }

        return [.. needed.Where(p => !build.SmallPartsThere.Contains(p.Id))];
    }

    /// <summary>A small part of the list is what a joint may ask for once it is measured.</summary>
    public static bool IsAsked(Joint joint, IEnumerable<SmallPart> listed) => listed.Any(p => All.Any(r => r.Id == p.Id && r.AskedBy.Contains(joint.Id)));

    /// <summary>An id that a build can hold.</summary>
    public static bool IsId(string id) => All.Any(r => r.Id == id) || (id.IndexOf(':', StringComparison.Ordinal) is > 0 and int colon && Waiver.JointOf(id[..colon]) is { } joint && (id[(colon + 1)..] == Choice || joint.Relation.Bridges.Any(b => b.Id == id[(colon + 1)..])));

    private const string Choice = "choice";

    private static string IdOf(Remedy remedy) => remedy.Bridge?.Id ?? Choice;

    private static string Axle(string end, Known<AxleThread> thread, Known<Dimension> length) =>
        $"{end} thru-axle {thread.InTradeWords()}, {(length.State == KnownState.Value ? $"{length.Value.FitKey} mm under the head" : "of the length that its maker names")}";

    private static string? Nuts(Part? wheel) => wheel is Wheel { AxleThread.State: KnownState.Value } solid ? $"two axle nuts {solid.AxleThread.InTradeWords()}" : null;

    private static string? Preload(Build build) => build[Slot.Fork] is not Fork { SteererKind.State: KnownState.Value } fork || fork.SteererKind.Value != SteererKind.Threadless ? null
        : fork.SteererMaterial.IsCarbon() ? "expander for a carbon steerer, with cap and bolt"
        : fork.SteererMaterial.State == KnownState.Value ? "star nut, with cap and bolt"
        : "star nut, or an expander if the steerer is carbon; with cap and bolt";

    private static string? Bolts(Part? rotor) => rotor is Rotor { Fixing.State: KnownState.Value, Carrier.State: not KnownState.Value } disc && disc.Fixing.Value == RotorFixing.SixBolt ? "six rotor bolts" : null;

    private static string? Ring(Part? rotor) => rotor is Rotor { Fixing.State: KnownState.Value, Lockring.State: not KnownState.Value } disc && disc.Fixing.Value == RotorFixing.CenterLock ? "lockring for the rotor, its tool interface as the axle leaves room" : null;

    private static string? Held(Part? caliper) => caliper is not Caliper { Mounting.State: KnownState.Value } brake ? null
        : brake.Mounting.Value == CaliperFoot.Flat && brake.BoltLength.State == KnownState.Value ? $"two flat-mount bolts of {brake.BoltLength.Value.FitKey} mm"
        : $"two bolts for a caliper with {brake.Mounting.InTradeWords()}, of the length of mount and adapter";

    private static bool IsTubeless(Part? tyre) => tyre is Tyre { Bead.State: KnownState.Value } clincher && clincher.Bead.Value == TyreBead.Tubeless;

    private static string? Tube(Part? tyre, Part? wheel) =>
        tyre is Tyre { Bead.State: KnownState.Value, Size.State: KnownState.Value } clincher && !IsTubeless(tyre) && HoldsClincher(clincher)
            ? $"inner tube for {clincher.Size.InTradeWords()}{(wheel is Wheel { ValveHole.State: KnownState.Value } rim ? $", valve for {rim.ValveHole.InTradeWords()}" : "")}"
            : null;

    private static bool HoldsClincher(Tyre tyre) => tyre.HoldOrSize is { State: KnownState.Value } hold && hold.Value == TyreHold.Clincher;

    private static string? Valve(Part? tyre, Part? tube, Part? wheel) => !IsTubeless(tyre) || tube is not null ? null
        : wheel is Wheel { RimDepth.State: KnownState.Value } rim ? $"tubeless valve, longer than a rim of {rim.RimDepth.Value.FitKey} mm"
        : "tubeless valve, longer than the rim is deep";

    private static string? Tape(Part? tyre, Part? wheel) => wheel is not Wheel { BedHole.State: not KnownState.None } rim || tyre is not Tyre clincher || !HoldsClincher(clincher) ? null
        : $"{(IsTubeless(tyre) ? "tubeless tape" : "rim tape")}{(rim.InnerWidth.State == KnownState.Value ? $" for {rim.InnerWidth.Value.FitKey} mm inside" : "")}";

    private static string? BrakeCable(Part? lever) => lever is BrakeLever { PullOrFluid.State: KnownState.Value } ? "brake cable, housing, ferrules and end cap" : null;

    private static string? Hose(Part? lever) => lever is BrakeLever { FluidOrPull.State: KnownState.Value } filled ? $"hose with insert and olive, and {filled.FluidOrPull.InTradeWords()} to bleed" : null;

    private static string? ShiftCable(Part? shifter) => shifter is Shifter { Signal.State: KnownState.Value } lever && lever.Signal.Value == ShiftSignal.Cable ? "shift cable, housing, ferrules and end cap" : null;

    private static bool IsDrop(Part? bar) => bar is Handlebar { Grip.State: KnownState.Value } drop && drop.Grip.Value != Cockpit.GripDiameter.Mm22Point2;

    private static bool IsCarbon(this Known<FrameMaterial> material) => material.State == KnownState.Value && material.Value == FrameMaterial.Carbon;
}
