using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>How a frame or fork carries a disc caliper. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<BrakeMount>))]
[TypeConverter(typeof(InterfaceTypeConverter<BrakeMount>))]
public sealed class BrakeMount : Standard<BrakeMount>, IInterfaceValue<BrakeMount>
{
    private BrakeMount(int code, string key, string name, int native, bool front, bool rear, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        NativeRotorMillimetres = native;
        IsFront = front;
        IsRear = rear;
    }

    /// <summary>International Standard tabs of a fork.</summary>
    public static BrakeMount InternationalStandardFront { get; } = new(1, "IS-front", "IS tabs, front", 160, true, false, Sources.MountAnswer, "IS front");

    /// <summary>International Standard tabs of a frame.</summary>
    public static BrakeMount InternationalStandardRear { get; } = new(2, "IS-rear", "IS tabs, rear", 140, false, true, Sources.MountAnswer, "IS rear");

    /// <summary>International Standard tabs set 5 mm further out, on some downhill forks.</summary>
    public static BrakeMount InternationalStandardFrontDownhill { get; } = new(3, "IS-front-DH", "IS tabs 5 mm out, downhill fork", 203, true, false, Sources.MountForum);

    /// <summary>Post mount for a 140 mm rotor.</summary>
    public static BrakeMount Post140 { get; } = new(4, "PM-140", "post mount 140", 140, true, true, Sources.MountAnswer, "post mount 5", "PM5");

    /// <summary>Post mount for a 160 mm rotor.</summary>
    public static BrakeMount Post160 { get; } = new(5, "PM-160", "post mount 160", 160, true, true, Sources.MountAnswer, "post mount 6", "PM6");

    /// <summary>Post mount for a 180 mm rotor.</summary>
    public static BrakeMount Post180 { get; } = new(6, "PM-180", "post mount 180", 180, true, true, Sources.AdapterGuide, "post mount 7", "PM7");

    /// <summary>Post mount for a 200 mm rotor.</summary>
    public static BrakeMount Post200 { get; } = new(7, "PM-200", "post mount 200", 200, true, true, Sources.MountAnswer);

    /// <summary>Post mount for a 203 mm rotor.</summary>
    public static BrakeMount Post203 { get; } = new(8, "PM-203", "post mount 203", 203, true, true, Sources.MountForum, "post mount 8", "PM8");

    /// <summary>Posts 68 mm apart, before 2000.</summary>
    public static BrakeMount Post68 { get; } = new(9, "PM-old", "posts 68 mm apart, before 2000", 160, true, true, Sources.MountTechInfo);

    /// <summary>Tabs 22 mm apart, about 1997 to 2000.</summary>
    public static BrakeMount Tab22 { get; } = new(10, "DM-22", "tabs 22 mm apart, about 1997 to 2000", 160, true, true, Sources.MountTechInfo);

    /// <summary>Flat mount of a fork, plate for 140 or 160.</summary>
    public static BrakeMount FlatFront140 { get; } = new(11, "FM-front-140", "flat mount fork 140/160", 140, true, false, Sources.FlatMountProblem);

    /// <summary>Flat mount of a fork, plate for 160 or 180.</summary>
    public static BrakeMount FlatFront160 { get; } = new(12, "FM-front-160", "flat mount fork 160/180", 160, true, false, Sources.FlatMountBuilder);

    /// <summary>Flat mount of a frame for 140, with a plate 160.</summary>
    public static BrakeMount FlatRear140 { get; } = new(13, "FM-rear-140", "flat mount frame 140", 140, false, true, Sources.FlatMountProblem);

    /// <summary>Flat mount of a frame for 160, with a plate 180.</summary>
    public static BrakeMount FlatRear160 { get; } = new(14, "FM-rear-160", "flat mount frame 160", 160, false, true, Sources.FlatMountBuilder);

    /// <summary>Every mount.</summary>
    public static ImmutableArray<BrakeMount> All { get; } =
    [
        InternationalStandardFront, InternationalStandardRear, InternationalStandardFrontDownhill, Post140, Post160, Post180, Post200, Post203, Post68, Tab22,
        FlatFront140, FlatFront160, FlatRear140, FlatRear160,
    ];

    /// <inheritdoc/>
    public static string Called => "brake mount";

    /// <summary>The rotor without a spacer, or with the smallest adapter where the mount always needs one; whole millimetres.</summary>
    public int NativeRotorMillimetres { get; }

    /// <summary>Found on forks.</summary>
    public bool IsFront { get; }

    /// <summary>Found on frames.</summary>
    public bool IsRear { get; }

    /// <summary>Tabs, posts or a flat face.</summary>
    public MountForm Form => BrakeMountGeometry.Of(this).Form;

    /// <summary>Middle to middle of the two holes or posts; of the caliper's holes at a flat mount, where no pitch in the fork is known. Posts are 74.2 mm apart and often said to be 74.</summary>
    public Length HoleSpacing => Hundredths(BrakeMountGeometry.Of(this).Spacing)!.Value;

    /// <summary>Where the hole spacing comes from; that of flat mount is from memory.</summary>
    public Source HoleSpacingSource => BrakeMountGeometry.Of(this).SpacingSource;

    /// <summary>Thread of the bolts: "M6", "M6x1", "M5"; empty where it is not known.</summary>
    public string Bolt => BrakeMountGeometry.Of(this).Bolt;

    /// <summary>Axle to the nearer hole of IS tabs, middle to middle; null where none is known. The front figure is derived from the rear one.</summary>
    public Length? AxleToNearHole => Hundredths(BrakeMountGeometry.Of(this).NearHole);

    /// <summary>Axle to the farther hole of IS tabs, middle to middle: the least that is printed or derived; null where none is known.</summary>
    public Length? AxleToFarHole => Hundredths(BrakeMountGeometry.Of(this).LeastFarHole);

    /// <summary>Where the distances from axle to hole come from; null where there are none. What is derived from them is marked at its property.</summary>
    public Source? AxleToHoleSource => AxleToFarHole is null ? null : Sources.BrazeOnDistances;

    /// <summary>Height of the post face above the axle, by the one maker's drawing that was read; other drawings differ. Null where there are no posts of today.</summary>
    public Length? AxleToPostFace => Hundredths(BrakeMountGeometry.Of(this).PostFace);

    /// <summary>Where the height of the post face comes from; null where there is none.</summary>
    public Source? AxleToPostFaceSource => AxleToPostFace is null ? null : Sources.FlatMountBuilder;

    /// <summary>Inner face of the rotor to the slot reference of a flat mount, along the axle; null where none is known. One maker allows 1 mm more inboard.</summary>
    public Length? RotorToSlot => Hundredths(BrakeMountGeometry.Of(this).RotorToSlot);

    /// <summary>Where the distance from rotor to slot comes from; null where there is none.</summary>
    public Source? RotorToSlotSource => RotorToSlot is null ? null : Sources.FlatMountClearing;

    /// <summary>The rotor that the plate of a flat mount gives beside its own, whole millimetres; null where the mount has no plate of its own.</summary>
    public int? PlateRotorMillimetres => BrakeMountGeometry.Of(this).WithPlate is > 0 and int plate ? plate : null;

    private static Length? Hundredths(int hundredths) => hundredths == 0 ? null : Length.FromMillimeters(hundredths / 100d);

    /// <summary>The mounts that readings can be. Rotors of one kind of mount are told by the second and third reading; 200 from 203 by none.</summary>
    /// <param name="holeSpacing">Middle to middle of the two holes or posts; of the caliper's holes at a flat mount.</param>
    /// <param name="axleToFarHole">Middle of the axle to the middle of the farther hole; IS tabs.</param>
    /// <param name="axleToPostFace">Height of the post face above the axle. One maker's drawing was read and others differ: it ranks the mounts and never rules out the next size of rotor.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public static Identification<BrakeMount> Identify(MeasuredLength? holeSpacing = null, MeasuredLength? axleToFarHole = null, MeasuredLength? axleToPostFace = null) =>
        BrakeMountGeometry.Identify(holeSpacing, axleToFarHole, axleToPostFace);

    internal bool IsPost => FitCode is >= 4 and <= 8;

    internal bool IsFlat => FitCode >= 11;

    /// <inheritdoc/>
    public static BrakeMount OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "IS", "post mount" and "flat mount" alone are several.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<BrakeMount> Read(ReadOnlySpan<char> text)
    {
        string word = Trim(text).ToString().ToUpperInvariant().Replace('-', ' ');
        ImmutableArray<BrakeMount> family = word switch
        {
            "IS" or "IS2000" or "IS 2000" or "INTERNATIONAL STANDARD" => [InternationalStandardFront, InternationalStandardRear],
            "PM" or "POST" or "POST MOUNT" => [Post140, Post160, Post180, Post200, Post203],
            "FM" or "FLAT" or "FLAT MOUNT" => [FlatFront140, FlatFront160, FlatRear140, FlatRear160],
            "FM 140" or "FLAT MOUNT 140" => [FlatFront140, FlatRear140],
            "FM 160" or "FLAT MOUNT 160" => [FlatFront160, FlatRear160],
            _ => [],
        };
        return family.IsEmpty ? ByName(text) : TextReading<BrakeMount>.Several(family, "say which end and, for posts and flat mount, the rotor it takes without an adapter");
    }
}
