using Lugwork.Brakes;
using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork.Workshop;

/// <summary>What the steps ask of a build.</summary>
internal static class BuildLook
{
    public static bool Has(this Build build, Slot slot) => build[slot] is not null;

    public static bool HasAny(this Build build, params ReadOnlySpan<Slot> slots)
    {
        foreach (Slot slot in slots)
        {
            if (build[slot] is not null)
            {
                return true;
            }
        }

        return false;
    }

    public static T? As<T>(this Build build, Slot slot)
        where T : Part => build[slot] as T;

    /// <summary>Carbon, metal, or null where it is not known which.</summary>
    public static bool? IsOfCarbon(this Known<Material> material) =>
        material.State == KnownState.Value ? material.Value == Material.Carbon
        : material.State == KnownState.OneOf && !material.Values.Contains(Material.Carbon) ? false : null;

    public static bool? IsCarbonFrame(this Build build) => build.Frame.Material.IsOfCarbon();

    public static bool? IsCarbonSteerer(this Build build) => (build.As<Fork>(Slot.Fork)?.SteererMaterial ?? default).IsOfCarbon();

    /// <summary>The handlebar itself is carbon; null where it is not known, or there is none yet.</summary>
    public static bool? IsCarbonBar(this Build build) => (build.As<Handlebar>(Slot.Handlebar)?.Material ?? default).IsOfCarbon();

    public static bool? IsCarbonPost(this Build build) => (build.As<Seatpost>(Slot.Seatpost)?.Material ?? default).IsOfCarbon();

    /// <summary>Carbon at the collar, frame or post; null where one of them is not known and neither is known to be carbon.</summary>
    public static bool? HasCarbonSeat(this Build build) => build.IsCarbonFrame() | build.IsCarbonPost();

    /// <summary>Bar or stem is carbon; null where one of them is not known and neither is known to be carbon.</summary>
    public static bool? HasCarbonBar(this Build build) =>
        build.IsCarbonBar() | (build.As<Stem>(Slot.Stem)?.Material ?? default).IsOfCarbon();

    /// <summary>A part that is clamped is carbon, or may be.</summary>
    public static bool MayHaveCarbon(this Build build) =>
        build.IsCarbonFrame() != false || (build.Has(Slot.Fork) && build.IsCarbonSteerer() != false) || (build.Has(Slot.Seatpost) && build.IsCarbonPost() != false)
        || (build.HasAny(Slot.Handlebar, Slot.Stem) && build.HasCarbonBar() != false);

    /// <summary>The steerer is threaded, threadless, or null where neither fork, headset nor stem says it. The fork is asked first.</summary>
    public static bool? IsThreaded(this Build build) =>
        Common(build.As<Fork>(Slot.Fork)?.SteererKind ?? default, k => k == SteererKind.Threaded)
        ?? Common(build.As<Headset>(Slot.Headset)?.Kind ?? default, k => k == SteererKind.Threaded)
        ?? Common(build.As<Stem>(Slot.Stem)?.Fixing ?? default, f => f.IsQuill);

    /// <summary>The stem is a quill, a clamp, or null where it is not known which; false where there is none.</summary>
    public static bool? HasQuill(this Build build) => build.As<Stem>(Slot.Stem) is { } stem ? Common(stem.Fixing, f => f.IsQuill) : false;

    /// <summary>What all that a value can be have in common; null where they differ, or nothing is known.</summary>
    public static bool? Common<T>(Known<T> known, Func<T, bool> has)
        where T : class, IInterfaceValue<T> =>
        known.Values is not { IsEmpty: false } values ? null : values.All(has) ? true : values.Any(has) ? null : false;

    /// <summary>A cup of this headset is pressed, or may be.</summary>
    public static bool HasPressedCup(this Build build) => build.As<Headset>(Slot.Headset) is { } headset && (IsPressed(headset.UpperCup) || IsPressed(headset.LowerCup));

    private static bool IsPressed(Known<HeadsetCup> cup) => cup.State != KnownState.Value || cup.Value.Style != HeadsetStyle.Integrated;

    /// <summary>What the bottom bracket goes into, shell or adapter, is threaded, pressed, or null where it is not known. The shell says nothing of what an adapter takes.</summary>
    public static bool? IsShellThreaded(this Build build) =>
        build.As<BottomBracket>(Slot.BottomBracket)?.Family is { State: KnownState.Value } family ? family.Value.IsThreaded : build.Has(Slot.ShellAdapter) ? null : build.IsFrameThreaded();

    /// <summary>The shell of the frame itself has a thread, a plain bore, or null where the frame does not say.</summary>
    public static bool? IsFrameThreaded(this Build build) => Common(build.Frame.Shell, s => s.Family.IsThreaded);

    /// <summary>The lever holds fluid, pulls a cable, or null where it is not known which.</summary>
    public static bool? IsFluid(this Build build, Slot lever) => build.As<BrakeLever>(lever) is not { } held ? null
        : held.FluidOrPull.State is KnownState.Value or KnownState.OneOf ? true
        : held.FluidOrPull.State == KnownState.None || held.PullOrFluid.State is KnownState.Value or KnownState.OneOf ? false
        : held.PullOrFluid.State == KnownState.None ? true : null;

    /// <summary>The one fluid that lever and caliper are both known to take; null otherwise.</summary>
    public static BrakeFluid? FluidOf(this Build build, WheelEnd end) =>
        build.As<BrakeLever>(end.Lever)?.FluidOrPull is { State: KnownState.Value } fluid && build.As<Caliper>(end.Caliper)?.FluidOrType.Is(fluid.Value) == true ? fluid.Value : null;

    /// <summary>The shifter is known to need no line at all, wireless or none.</summary>
    public static bool NeedsLine(this Build build, Slot shifter) => build.As<Shifter>(shifter) is { } lever && !(lever.Signal.State == KnownState.Value && !lever.Signal.Value.NeedsLine);

    public static bool ShiftsByCable(this Build build) =>
        build.As<Shifter>(Slot.RearShifter)?.Signal.MayBe(ShiftSignal.Cable) == true || build.As<Shifter>(Slot.FrontShifter)?.Signal.MayBe(ShiftSignal.Cable) == true;

    /// <summary>A line of this build is a cable, or may be.</summary>
    public static bool PullsCables(this Build build) =>
        build.ShiftsByCable() || build.HasDropperLine() || (build.Has(Slot.FrontBrakeLever) && build.IsFluid(Slot.FrontBrakeLever) != true) || (build.Has(Slot.RearBrakeLever) && build.IsFluid(Slot.RearBrakeLever) != true);

    public static bool ShiftsByAir(this Build build) =>
        build.As<Shifter>(Slot.RearShifter)?.Signal.Is(ShiftSignal.Wireless) == true || build.As<Shifter>(Slot.FrontShifter)?.Signal.Is(ShiftSignal.Wireless) == true;

    public static bool IsTubeless(this Build build, Slot tyre) => build.As<Tyre>(tyre)?.Bead.Is(TyreBead.Tubeless) == true;

    /// <summary>The tube goes into the tyre: beside a tubeless tyre and its valve it is the spare.</summary>
    public static bool RidesOnTube(this Build build, WheelEnd end) => build.Has(end.Tube) && !(build.IsTubeless(end.Tyre) && build.Has(end.Valve));

    public static bool IsTubular(this Build build, Slot tyre) => build.As<Tyre>(tyre)?.HoldOrSize.Is(TyreHold.Tubular) == true;

    public static bool IsBelt(this Build build) => build.As<Chain>(Slot.Chain)?.Size is { State: KnownState.Value } size && size.Value == ChainSize.Belt;

    public static bool HasDropperLine(this Build build) => build.As<Dropper>(Slot.Dropper) is { } dropper && !dropper.Routing.Is(DropperRouting.Wireless);

    /// <summary>The line of a dropper runs through the frame to the foot of the post, outside to its head or collar, or null where it is not known which.</summary>
    public static bool? IsDropperInside(this Build build) => Common(build.As<Dropper>(Slot.Dropper)?.Routing ?? default, r => r == DropperRouting.Internal);

    /// <summary>Two crowns hold the fork, one does, or null where neither its maker nor its travel or brake hole tells which. A threaded steerer or a quill has one, if nobody says otherwise (common practice, no source).</summary>
    public static bool? HasTwoCrowns(this Build build) => build.As<Fork>(Slot.Fork) is not { } fork || (fork.CrownsByTravel.State == KnownState.Unknown && build.IsThreaded() == true) ? false
        : Common(fork.CrownsByTravel, c => c == Suspension.CrownType.Dual);

    /// <summary>The derailleur hangs on a claw of its own, since the end has no hanger.</summary>
    public static bool HangsOnClaw(this Build build) => build.Has(Slot.RearDerailleur) && build.IsHangerless() == false && build.Frame.Hanger.Is(Hanger.NoHanger);

    /// <summary>A brake sits in the hub of this end, or one of those stated for it does; null where the hub does not say and nothing else brakes this end.</summary>
    public static bool? HasHubBrake(this Build build, WheelEnd end) =>
        build.As<Wheel>(end.Wheel)?.HubBrake is not { } brake ? false
        : !brake.Values.IsEmpty ? brake.Values.Any(t => t.HasReactionArm)
        : brake.State == KnownState.None || build.HasAny(end.Lever, end.Caliper, end.RimBrake, end.Rotor) || build.MountOf(end).State == KnownState.Value ? false : null;

    public static Known<BrakeMount> MountOf(this Build build, WheelEnd end) => end.IsFront ? build.As<Fork>(Slot.Fork)?.FrontBrakeMount ?? default : build.Frame.RearBrakeMount;

    /// <summary>Nothing takes the chain up but the wheel in its slots, an eccentric shell or a tensioner; null where a derailleur may still come, so that nothing is cut or set as if it never did.</summary>
    public static bool? HasFixedChain(this Build build) =>
        !build.Has(Slot.Chain) || build.Has(Slot.RearDerailleur) ? false
        : build.IsBelt() || build.HasOneSprocket() ? true
        : build.HasSeveralSprockets() ? null
        : Common(build.Frame.Kind, k => k == BicycleKind.Track || k == BicycleKind.SingleSpeed || k == BicycleKind.Bmx) == true ? true : null;

    private static bool HasOneSprocket(this Build build) =>
        Common(build.As<Wheel>(Slot.RearWheel)?.FreehubBody ?? default, b => b.TakesOneSprocket) == true
        || Common(build.As<Cassette>(Slot.Cassette)?.Pattern ?? default, IsOne) == true
        || build.As<Cassette>(Slot.Cassette)?.SpacingOrPattern.Is(SprocketSpacing.Single) == true;

    private static bool HasSeveralSprockets(this Build build) => Common(build.As<Cassette>(Slot.Cassette)?.Pattern ?? default, p => p.FewestSpeeds > 1) == true;

    private static bool IsOne(CassettePattern pattern) => pattern == CassettePattern.ThreeLug || pattern == CassettePattern.HubGearOwn || pattern == CassettePattern.FixedSprocket;

    /// <summary>The derailleur goes round the axle, hangs on a hanger, or null where it is not known which.</summary>
    public static bool? IsHangerless(this Build build) => Common(build.As<RearDerailleur>(Slot.RearDerailleur)?.Mount ?? default, m => m == DerailleurMount.Hangerless);

    /// <summary>The gears are in the rear hub; null for a body of three lugs alone, which a coaster hub of one speed has too, where no shifter says more.</summary>
    public static bool? HasHubGear(this Build build) =>
        build.As<Wheel>(Slot.RearWheel)?.FreehubBody.Values is not { IsEmpty: false } bodies || !bodies.All(HubDrive.GearHub.Bodies.Contains) ? false
        : bodies.Contains(FreehubBody.HubGearOwn) || (build.As<Shifter>(Slot.RearShifter) is { } shifter && !shifter.Signal.Is(ShiftSignal.Single) && !build.Has(Slot.RearDerailleur)) ? true : null;

    /// <summary>The rear wheel moves on a shock, stands still, or null where it is not known. By the shock; else by the kind of bicycle, where frames of that kind are sold with or without one alone. Common practice, no source.</summary>
    public static bool? HasRearTravel(this Build build) =>
        build.Has(Slot.Shock) || !build.Frame.Shock.Values.IsEmpty ? true
        : build.Frame.Shock.State == KnownState.None ? false
        : Common(build.Frame.Kind, k => k == BicycleKind.FullSuspension) == true ? true
        : Common(build.Frame.Kind, IsRigidBehind) == true ? false : null;

    private static bool IsRigidBehind(BicycleKind kind) =>
        kind == BicycleKind.Touring || kind == BicycleKind.Road || kind == BicycleKind.Gravel || kind == BicycleKind.Hardtail || kind == BicycleKind.Track || kind == BicycleKind.SingleSpeed || kind == BicycleKind.Bmx;

    /// <summary>How the slots of the rear end run: true along the chain, so that the wheel tensions it, false up and down or closed, null where it is not known.</summary>
    public static bool? WheelTensions(this Build build) => build.Frame.RearDropout.State == KnownState.None ? false : Common(build.Frame.RearDropout, s => s == DropoutSlot.Horizontal);

    /// <summary>What holds the wheel: an axle or nuts that are in the build, else the one fastening of a known hub; null where it is not known.</summary>
    public static HubAttachment? HeldBy(this Build build, WheelEnd end) =>
        build.Has(end.Axle) ? HubAttachment.ThruAxle
        : build.Has(end.Nuts) ? HubAttachment.Nuts
        : build.As<Wheel>(end.Wheel)?.Hub is { State: KnownState.Value } hub && hub.Value.Attachments is [{ } only] ? only : null;

    /// <summary>Lines go through the headset, by frame or cover.</summary>
    public static bool RunsThroughHeadset(this Build build) => build.Frame.HeadsetCables.Is(CableWay.Through) || build.As<HeadsetCover>(Slot.HeadsetCover)?.Cables.Is(CableWay.Through) == true;

    public static bool HasLines(this Build build) =>
        build.HasAny(Slot.FrontBrakeLever, Slot.RearBrakeLever) || build.NeedsLine(Slot.RearShifter) || build.NeedsLine(Slot.FrontShifter) || build.HasDropperLine();

    public static bool Takes(this Build build, params ReadOnlySpan<SpindleSeat> seats)
    {
        Known<Spindle> spindle = build.As<Crankset>(Slot.Crankset)?.Spindle ?? default;
        foreach (SpindleSeat seat in seats)
        {
            if (spindle.State == KnownState.Value && spindle.Value.Seat == seat)
            {
                return true;
            }
        }

        return false;
    }
}
