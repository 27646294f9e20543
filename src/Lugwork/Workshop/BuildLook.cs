using Lugwork.Brakes;
using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork;

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

    /// <summary>It is known to be just that.</summary>
    public static bool Is<T>(this Known<T> known, T value)
        where T : class, IInterfaceValue<T> => known.State == KnownState.Value && ReferenceEquals(known.Value, value);

    /// <summary>It is not known to be something else.</summary>
    public static bool MayBe<T>(this Known<T> known, T value)
        where T : class, IInterfaceValue<T> => known.State == KnownState.Unknown || known.Values.Contains(value);

    public static T? As<T>(this Build build, Slot slot)
        where T : Part => build[slot] as T;

    /// <summary>Carbon, metal, or null where it is not known which.</summary>
    public static bool? IsOfCarbon(this Known<FrameMaterial> material) =>
        material.State == KnownState.Value ? material.Value == FrameMaterial.Carbon
        : material.State == KnownState.OneOf && !material.Values.Contains(FrameMaterial.Carbon) ? false : null;

    public static bool? IsCarbonFrame(this Build build) => build.Frame.Material.IsOfCarbon();

    public static bool? IsCarbonSteerer(this Build build) => (build.As<Fork>(Slot.Fork)?.SteererMaterial ?? default).IsOfCarbon();

    public static bool? IsCarbonPost(this Build build) => (build.As<Seatpost>(Slot.Seatpost)?.Material ?? default).IsOfCarbon();

    /// <summary>Carbon at the collar, frame or post; null where one of them is not known and neither is known to be carbon.</summary>
    public static bool? HasCarbonSeat(this Build build) => build.IsCarbonFrame() | build.IsCarbonPost();

    /// <summary>A part that is clamped is carbon, or may be.</summary>
    public static bool MayHaveCarbon(this Build build) =>
        build.IsCarbonFrame() != false || (build.Has(Slot.Fork) && build.IsCarbonSteerer() != false) || (build.Has(Slot.Seatpost) && build.IsCarbonPost() != false);

    public static bool IsThreaded(this Build build) =>
        build.As<Fork>(Slot.Fork)?.SteererKind.Is(SteererKind.Threaded) == true || build.As<Headset>(Slot.Headset)?.Kind.Is(SteererKind.Threaded) == true || build.HasQuill();

    public static bool HasQuill(this Build build) => build.As<Stem>(Slot.Stem)?.Foot is { State: KnownState.Value } foot && foot.Value.IsQuill;

    /// <summary>A cup of this headset is pressed, or may be.</summary>
    public static bool HasPressedCup(this Build build) => build.As<Headset>(Slot.Headset) is { } headset && (IsPressed(headset.UpperCup) || IsPressed(headset.LowerCup));

    private static bool IsPressed(Known<HeadsetCup> cup) => cup.State != KnownState.Value || cup.Value.Style != HeadsetStyle.Integrated;

    /// <summary>Threaded, pressed, or null where it is not known.</summary>
    public static bool? IsShellThreaded(this Build build) => build.As<BottomBracket>(Slot.BottomBracket)?.Family is { State: KnownState.Value } family ? family.Value.IsThreaded : build.Frame.Shell is { State: KnownState.Value } shell ? shell.Value.Family.IsThreaded : null;

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
        build.As<Shifter>(Slot.Shifter)?.Signal.MayBe(ShiftSignal.Cable) == true || build.As<Shifter>(Slot.FrontShifter)?.Signal.MayBe(ShiftSignal.Cable) == true;

    public static bool IsTubeless(this Build build, Slot tyre) => build.As<Tyre>(tyre)?.Bead.Is(TyreBead.Tubeless) == true;

    public static bool IsTubular(this Build build, Slot tyre) => build.As<Tyre>(tyre)?.HoldOrSize.Is(TyreHold.Tubular) == true;

    public static bool IsBelt(this Build build) => build.As<Chain>(Slot.Chain)?.Size is { State: KnownState.Value } size && size.Value == ChainSize.Belt;

    public static bool HasDropperLine(this Build build) => build.As<Dropper>(Slot.Dropper) is { } dropper && !dropper.Routing.Is(DropperRouting.Wireless);

    /// <summary>A brake sits in the hub of this end, or one of those stated for it does.</summary>
    public static bool HasHubBrake(this Build build, WheelEnd end) => build.As<Wheel>(end.Wheel)?.HubBrake.Values.Any(t => t.HasReactionArm) == true;

    /// <summary>Nothing takes the chain up but the wheel in its slots, an eccentric shell or a tensioner.</summary>
    public static bool HasFixedChain(this Build build) => build.Has(Slot.Chain) && !build.Has(Slot.RearDerailleur);

    /// <summary>The derailleur is known to go round the axle, without a hanger.</summary>
    public static bool IsHangerless(this Build build) => build.As<RearDerailleur>(Slot.RearDerailleur)?.Mount.Is(DerailleurMount.Hangerless) == true;

    /// <summary>The gears are in the rear hub.</summary>
    public static bool HasHubGear(this Build build) => build.As<Wheel>(Slot.RearWheel)?.Body.Values is { IsEmpty: false } bodies && bodies.All(HubDrive.GearHub.Bodies.Contains);

    /// <summary>The rear wheel moves on a shock.</summary>
    public static bool HasRearTravel(this Build build) => build.Has(Slot.Shock) || !build.Frame.Shock.Values.IsEmpty;

    /// <summary>What holds the wheel: an axle or nuts that are in the build, else the one fastening of a known hub; null where it is not known.</summary>
    public static HubAttachment? HeldBy(this Build build, WheelEnd end) =>
        build.Has(end.Axle) ? HubAttachment.ThruAxle
        : build.Has(end.Nuts) ? HubAttachment.Nuts
        : build.As<Wheel>(end.Wheel)?.Hub is { State: KnownState.Value } hub && hub.Value.Attachments is [{ } only] ? only : null;

    /// <summary>Lines go through the headset, by frame or cover.</summary>
    public static bool RunsThroughHeadset(this Build build) => build.Frame.HeadsetCables.Is(CableWay.Through) || build.As<HeadsetCover>(Slot.HeadsetCover)?.Cables.Is(CableWay.Through) == true;

    public static bool HasLines(this Build build) =>
        build.HasAny(Slot.FrontLever, Slot.RearLever) || build.NeedsLine(Slot.Shifter) || build.NeedsLine(Slot.FrontShifter) || build.HasDropperLine();

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
