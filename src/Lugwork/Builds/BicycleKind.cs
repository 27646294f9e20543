using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;

namespace Lugwork;

/// <summary>A kind of bicycle, by the slots that it requires. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<BicycleKind>))]
[TypeConverter(typeof(InterfaceTypeConverter<BicycleKind>))]
public sealed class BicycleKind : Standard<BicycleKind>, IInterfaceValue<BicycleKind>
{
    private BicycleKind(int code, string key, bool geared, params ImmutableArray<string> names)
        : base(code, key, key, Sources.CommonPractice, names)
    {
        IsGeared = geared;
    }

    /// <summary>Touring.</summary>
    public static BicycleKind Touring { get; } = new(1, "touring", true, "trekking");

    /// <summary>City and commuting.</summary>
    public static BicycleKind City { get; } = new(2, "city", true, "commuter", "hybrid");

    /// <summary>Road.</summary>
    public static BicycleKind Road { get; } = new(3, "road", true);

    /// <summary>Gravel and cyclo-cross.</summary>
    public static BicycleKind Gravel { get; } = new(4, "gravel", true, "cyclo-cross");

    /// <summary>Off-road with a suspension fork or rigid.</summary>
    public static BicycleKind Hardtail { get; } = new(5, "hardtail", true, "rigid off-road");

    /// <summary>Off-road with rear suspension.</summary>
    public static BicycleKind FullSuspension { get; } = new(6, "full-suspension", true);

    /// <summary>Track; no cassette.</summary>
    public static BicycleKind Track { get; } = new(7, "track", false, "fixed");

    /// <summary>One speed with a brake and a freewheel; no cassette.</summary>
    public static BicycleKind SingleSpeed { get; } = new(8, "single-speed", false);

    /// <summary>BMX: one sprocket, no derailleur.</summary>
    public static BicycleKind Bmx { get; } = new(9, "BMX", false);

    /// <summary>Fat: very wide tyres.</summary>
    public static BicycleKind Fat { get; } = new(10, "fat", true);

    /// <summary>Folding, or with small wheels.</summary>
    public static BicycleKind Folding { get; } = new(11, "folding", true, "small-wheel", "small wheel");

    /// <summary>Children's: one sprocket is enough; a derailleur is not asked for.</summary>
    public static BicycleKind Childrens { get; } = new(12, "children's", false, "child's", "kids", "kid's");

    /// <summary>Every kind.</summary>
    public static ImmutableArray<BicycleKind> All { get; } = [Touring, City, Road, Gravel, Hardtail, FullSuspension, Track, SingleSpeed, Bmx, Fat, Folding, Childrens];

    /// <inheritdoc/>
    public static string Called => "bicycle kind";

    /// <summary>It has a cassette.</summary>
    public bool IsGeared { get; }

    /// <inheritdoc/>
    public static BicycleKind OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<BicycleKind> Read(ReadOnlySpan<char> text) => ByName(text);

    /// <summary>
    /// The slots that this kind requires with this frame and fork: what a frame or fork is known to have no place for is not asked for,
    /// such as disc parts without a mount, a thru-axle where the slots are open, or a collar where the binder is part of the frame;
    /// nor a derailleur beside a rear hub that has one sprocket. A rim brake is asked for where a place for one is stated and no disc mount is,
    /// a lever wherever a brake is that one works, and neither beside a brake inside the hub, save the lever of a drum or roller brake. A shifter goes with a derailleur or a hub gear, not with a coaster hub of three lugs, which may have one speed; a shock with rear suspension;
    /// what is optional, such as nuts, a front derailleur or a chain guide, is never required.
    /// </summary>
    internal static ImmutableArray<Slot> Required(Frame frame, Fork? fork, Wheel? front, Wheel? rear) => Missing(frame, fork, front, rear, null);

    /// <summary>Those of the required slots that are empty among the parts; all of them where no parts are given. Nothing else is allocated.</summary>
    internal static ImmutableArray<Slot> Missing(Frame frame, Fork? fork, Wheel? front, Wheel? rear, IParts? parts)
    {
        bool geared = frame.Kind.State != KnownState.Value || frame.Kind.Value.IsGeared;
        bool derailleur = geared && !HasOneSprocket(rear);
        Brake atRear = BrakeAt(frame.RearBrakeMount, frame.RearBosses, frame.RearBrakeHole, rear);
        Brake atFront = fork is null
            ? BrakeAt(frame.RearBrakeMount, frame.RearBosses, frame.RearBrakeHole, front)
            : BrakeAt(fork.FrontBrakeMount, fork.FrontBosses, fork.FrontBrakeHole, front);
        ImmutableArray<Slot>.Builder? found = null;
        foreach (Slot slot in Slot.All)
        {
            bool required = !slot.IsOptional
                && (slot != Slot.Cassette || geared)
                && (slot != Slot.RearDerailleur || derailleur)
                && (slot != Slot.RearShifter || derailleur || (geared && HasHubGear(rear)))
                && (slot != Slot.Shock || HasRearSuspension(frame))
                && ((slot != Slot.RearRotor && slot != Slot.RearCaliper) || atRear == Brake.Disc)
                && ((slot != Slot.FrontRotor && slot != Slot.FrontCaliper) || atFront == Brake.Disc)
                && (slot != Slot.RearRimBrake || atRear == Brake.Rim)
                && (slot != Slot.FrontRimBrake || atFront == Brake.Rim)
                && (slot != Slot.RearBrakeLever || atRear is Brake.Disc or Brake.Rim or Brake.InHub)
                && (slot != Slot.FrontBrakeLever || atFront is Brake.Disc or Brake.Rim or Brake.InHub)
                && (slot != Slot.RearThruAxle || MayTakeThruAxle(frame.RearAxleThread, frame.RearEnd))
                && (slot != Slot.FrontThruAxle || fork is null || MayTakeThruAxle(fork.FrontAxleThread, fork.FrontEnd))
                && (slot != Slot.SeatClamp || (frame.SeatTubeOutside.State != KnownState.None && !frame.Binder.Is(SeatBinder.WeldedTabs)));
            if (required && parts?.At(slot) is null)
            {
                (found ??= ImmutableArray.CreateBuilder<Slot>()).Add(slot);
            }
        }

        return found?.ToImmutable() ?? [];
    }

    /// <summary>All of a fork that decides what is required: forks of one key require the same beside the same frame and wheels.</summary>
    internal static int KeyOf(Fork fork) =>
        (2 * (int)BrakeAt(fork.FrontBrakeMount, fork.FrontBosses, fork.FrontBrakeHole, null)) + (MayTakeThruAxle(fork.FrontAxleThread, fork.FrontEnd) ? 1 : 0);

    /// <summary>All of a wheel that decides what is required: wheels of one key require the same beside the same frame, fork and other wheel.</summary>
    internal static int KeyOf(Wheel wheel) =>
        (8 * (int)BrakeAt(default, default, default, wheel)) + (HasOneSprocket(wheel) ? 4 : 0) + (HasHubGear(wheel) ? 2 : 0);

    private enum Brake
    {
        None = 0,
        Disc,
        Rim,
        InHub,
        Coaster,
    }

    /// <summary>What brakes a wheel. A frame or fork of which nothing is said counts as made for a disc.</summary>
    private static Brake BrakeAt(Known<BrakeMount> mount, Known<BrakeBoss> bosses, Known<BrakeBolt> hole, Wheel? wheel)
    {
        if (wheel is { HubBrake.State: KnownState.Value })
        {
            return wheel.HubBrake.Value == BrakeType.Coaster ? Brake.Coaster : Brake.InHub;
        }

        bool stated = mount.State is not (KnownState.Unknown or KnownState.None);
        bool rim = bosses.State is KnownState.Value or KnownState.OneOf || hole.State is KnownState.Value or KnownState.OneOf;
        return stated ? Brake.Disc : rim ? Brake.Rim : mount.State == KnownState.Unknown ? Brake.Disc : Brake.None;
    }

    private static bool HasOneSprocket(Wheel? rear) => rear?.FreehubBody.Values is { IsEmpty: false } bodies && bodies.All(b => b.TakesOneSprocket);

    /// <summary>Every body that it can have is one of a hub gear, and it is no hub of three lugs with a coaster brake: of those most have one speed, and nothing to shift.</summary>
    private static bool HasHubGear(Wheel? rear) =>
        rear?.FreehubBody.Values is { IsEmpty: false } bodies && bodies.All(HubDrive.GearHub.Bodies.Contains)
        && !(rear.HubBrake.Values.Contains(BrakeType.Coaster) && bodies.All(HubDrive.CoasterHub.Bodies.Contains));

    /// <summary>The frame is made for a shock, or is of the kind that is, unless it is known to have no place for one.</summary>
    private static bool HasRearSuspension(Frame frame) =>
        !frame.Shock.Values.IsEmpty || (frame.Shock.State != KnownState.None && frame.Kind.State == KnownState.Value && frame.Kind.Value == BicycleKind.FullSuspension);

    private static bool MayTakeThruAxle(Known<AxleThread> thread, Known<HubStandard> end) =>
        thread.State != KnownState.None && (thread.State != KnownState.Unknown || end.Values.IsEmpty || end.Values.Any(e => e.TakesThruAxle));
}
