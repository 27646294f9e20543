using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>What drives a rear hub, with the brake that may be inside it. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<HubDrive>))]
[TypeConverter(typeof(InterfaceTypeConverter<HubDrive>))]
public sealed class HubDrive : Standard<HubDrive>, IInterfaceValue<HubDrive>
{
    private HubDrive(int code, string key, string name, Source source, bool gears, bool coaster, ImmutableArray<FreehubBody> bodies, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        HasGearsInside = gears;
        HasCoasterBrake = coaster;
        Bodies = bodies;
    }

    /// <summary>Splines with a ratchet under a cassette.</summary>
    public static HubDrive CassetteBody { get; } = new(
        1, "freehub", "freehub for a cassette", Sources.FreehubTypes, false, false,
        [
            FreehubBody.Symmetric, FreehubBody.HgShort, FreehubBody.HgMedium, FreehubBody.HgTenOnly, FreehubBody.HgLong, FreehubBody.Hg12Road, FreehubBody.MicroSpline,
            FreehubBody.Xd, FreehubBody.Xdr, FreehubBody.EightSplineOld, FreehubBody.EightSpline, FreehubBody.N3w, FreehubBody.SingleSpeed, FreehubBody.HgTall,
        ],
        "cassette hub", "freehub body");

    /// <summary>A thread for a screwed freewheel, which has the ratchet.</summary>
    public static HubDrive ScrewedFreewheel { get; } = new(2, "freewheel", "screwed freewheel", Sources.Freewheels, false, false, [FreehubBody.FreewheelThread], "screw-on freewheel", "threaded freewheel", "freewheel hub");

    /// <summary>A sprocket that always turns with the wheel.</summary>
    public static HubDrive FixedSprocket { get; } = new(3, "fixed", "fixed sprocket", Sources.Memory, false, false, [FreehubBody.Track], "fixed gear", "fixed wheel", "track hub");

    /// <summary>One sprocket and its ratchet in one piece.</summary>
    public static HubDrive Driver { get; } = new(4, "driver", "single-sprocket driver", Sources.Memory, false, false, [FreehubBody.BmxDriver], "one-piece driver", "BMX cassette driver");

    /// <summary>Gears inside the hub, one sprocket outside.</summary>
    public static HubDrive GearHub { get; } = new(5, "gear-hub", "internal-gear hub", Sources.HubGearPage, true, false, [FreehubBody.ThreeLug, FreehubBody.HubGearOwn], "internal gear", "internal gear hub", "internally geared hub", "hub gear", "hub gears", "IGH");

    /// <summary>Gears and a coaster brake inside the hub.</summary>
    public static HubDrive GearHubWithCoaster { get; } = new(6, "gear-hub-coaster", "internal-gear hub with coaster brake", Sources.CoasterBrakes, true, true, [FreehubBody.ThreeLug, FreehubBody.HubGearOwn], "internal gear hub with back-pedal brake", "hub gear with coaster brake", "IGH coaster");

    /// <summary>A coaster brake and one speed inside the hub. The older ones have a thread for their sprocket.</summary>
    public static HubDrive CoasterHub { get; } = new(7, "coaster", "coaster-brake hub", Sources.CoasterBrakes, false, true, [FreehubBody.ThreeLug, FreehubBody.Track], "coaster hub", "coaster brake", "back-pedal hub", "back-pedal brake hub");

    /// <summary>Every one.</summary>
    public static ImmutableArray<HubDrive> All { get; } = [CassetteBody, ScrewedFreewheel, FixedSprocket, Driver, GearHub, GearHubWithCoaster, CoasterHub];

    /// <inheritdoc/>
    public static string Called => "hub drive";

    /// <summary>Gears are shifted inside the hub, so no rear derailleur is needed for them.</summary>
    public bool HasGearsInside { get; }

    /// <summary>It brakes by pedalling back: its arm has to be held by the frame, see <c>BrakeType.Coaster</c>.</summary>
    public bool HasCoasterBrake { get; }

    /// <summary>What its sprockets sit on: the bodies that it can have.</summary>
    public ImmutableArray<FreehubBody> Bodies { get; }

    /// <inheritdoc/>
    public static HubDrive OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<HubDrive> Read(ReadOnlySpan<char> text) => ByName(text);
}
