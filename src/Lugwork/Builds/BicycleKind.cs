using System.Collections.Immutable;

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

    /// <summary>The slots that this kind requires with this frame and fork: disc parts only where there is, or may be, a disc mount.</summary>
    internal static ImmutableArray<Slot> Required(Frame frame, Fork? fork)
    {
        bool geared = frame.Kind.State != KnownState.Value || frame.Kind.Value.IsGeared;
        bool rearDisc = frame.RearBrakeMount.State != KnownState.None;
        bool frontDisc = fork is null ? rearDisc : fork.FrontBrakeMount.State != KnownState.None;
        return
        [
            .. Slot.All.Where(slot =>
                slot != Slot.Cassette || geared)
            .Where(slot => (slot != Slot.RearRotor && slot != Slot.RearBrake) || rearDisc)
            .Where(slot => (slot != Slot.FrontRotor && slot != Slot.FrontBrake) || frontDisc),
        ];
    }
}
