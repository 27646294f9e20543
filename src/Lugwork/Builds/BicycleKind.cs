using System.Collections.Immutable;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>A kind of bicycle, by the slots that it requires. Closed set, identity equality.</summary>
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

    /// <summary>Every kind.</summary>
    public static ImmutableArray<BicycleKind> All { get; } = [Touring, City, Road, Gravel, Hardtail, FullSuspension, Track, SingleSpeed];

    /// <inheritdoc/>
    public static string Called => "bicycle kind";

    /// <summary>It has a cassette.</summary>
    public bool IsGeared { get; }

    /// <inheritdoc/>
    public static BicycleKind OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static Reading<BicycleKind> Read(ReadOnlySpan<char> text) => ByName(text);

    /// <summary>
    /// The slots that this kind requires with this frame and fork: what a frame or fork is known to have no place for is not asked for,
    /// such as disc parts without a mount, a thru-axle where the slots are open, or a collar where the binder is part of the frame;
    /// nor a derailleur beside a rear hub that has one sprocket.
    /// </summary>
    internal static ImmutableArray<Slot> Required(Frame frame, Fork? fork, Wheel? rear)
    {
        bool geared = frame.Kind.State != KnownState.Value || frame.Kind.Value.IsGeared;
        bool rearDisc = frame.RearBrakeMount.State != KnownState.None;
        bool frontDisc = fork is null ? rearDisc : fork.FrontBrakeMount.State != KnownState.None;
        return
        [
            .. Slot.All
                .Where(slot => !slot.IsOptional)
                .Where(slot => (slot != Slot.Cassette && slot != Slot.RearDerailleur) || geared)
                .Where(slot => slot != Slot.RearDerailleur || !HasOneSprocket(rear))
                .Where(slot => (slot != Slot.RearRotor && slot != Slot.RearBrake) || rearDisc)
                .Where(slot => (slot != Slot.FrontRotor && slot != Slot.FrontBrake) || frontDisc)
                .Where(slot => slot != Slot.RearAxle || MayTakeThruAxle(frame.RearAxleThread, frame.RearEnd))
                .Where(slot => slot != Slot.FrontAxle || fork is null || MayTakeThruAxle(fork.FrontAxleThread, fork.FrontEnd))
                .Where(slot => slot != Slot.SeatClamp || frame.SeatTubeOutside.State != KnownState.None),
        ];
    }

    private static bool HasOneSprocket(Wheel? rear) => rear?.Body.Values is { IsEmpty: false } bodies && bodies.All(b => b.TakesOneSprocket);

    private static bool MayTakeThruAxle(Known<AxleThread> thread, Known<HubStandard> end) =>
        thread.State != KnownState.None && (thread.State != KnownState.Unknown || end.Values.IsEmpty || end.Values.Any(e => e.TakesThruAxle));
}
