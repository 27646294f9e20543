using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork;

/// <summary>A family of parts that the library answers by name instead of judging it. Closed set, identity equality.</summary>
/// <remarks>
/// Each name is read in every interface field of every part, with or without the part's own word behind it ("proprietary seatpost"),
/// and is then <see cref="KnownState.NotCovered"/> or <see cref="KnownState.FrameSpecific"/>: never a refusal, an unknown or a fit.
/// No name has a figure in it, and none is a spelling of an interface value: tests hold both.
/// </remarks>
[JsonConverter(typeof(InterfaceJsonConverter<OutsideFamily>))]
[TypeConverter(typeof(InterfaceTypeConverter<OutsideFamily>))]
public sealed class OutsideFamily : Standard<OutsideFamily>, IInterfaceValue<OutsideFamily>
{
    private OutsideFamily(int code, string key, string name, KnownState state, ImmutableArray<string> homes, params ImmutableArray<string> names)
        : base(code, key, name, Sources.CommonPractice, names)
    {
        State = state;
        Homes = homes;
    }

    /// <summary>A motor, at the cranks where nothing else is said, and the frame that is made for it.</summary>
    public static OutsideFamily Motor { get; } = new(1, "motor", "motor", KnownState.NotCovered, ["shell"], "motors", "motor mount", "motor mounts", "mid-drive", "mid-drive motor", "mid-motor", "central motor", "crank motor", "drive unit", "electric", "electric motor", "electric drive", "electrically assisted", "e-bike", "e-bike motor", "pedelec", "motor bracket", "motor interface");

    /// <summary>A motor in a hub.</summary>
    public static OutsideFamily HubMotor { get; } = new(2, "hub-motor", "hub motor", KnownState.NotCovered, ["hub"], "hub motors", "hub drive", "hub-drive motor", "motor hub", "motor wheel", "motor in the hub", "front motor", "rear motor", "geared hub motor", "direct-drive motor", "direct-drive hub motor", "electric hub");

    /// <summary>Bicycles that carry loads, on two wheels or three.</summary>
    public static OutsideFamily Cargo { get; } = new(3, "cargo", "cargo bicycle", KnownState.NotCovered, ["kind"], "cargo bikes", "cargo bicycles", "freight bicycle", "load bike", "longtail", "long john", "box bike", "front loader", "cargo trike", "cargo tricycle", "bakfiets");

    /// <summary>A gearbox at the cranks, and the frame that is made for it.</summary>
    public static OutsideFamily Gearbox { get; } = new(4, "gearbox", "gearbox mount", KnownState.NotCovered, ["shell"], "gear box", "gearboxes", "crank gearbox", "gearbox drive");

    /// <summary>A shaft instead of a chain.</summary>
    public static OutsideFamily ShaftDrive { get; } = new(5, "shaft-drive", "shaft drive", KnownState.NotCovered, [], "drive shaft", "shaft-driven", "cardan shaft", "cardan");

    /// <summary>What one maker keeps to itself, on whatever part.</summary>
    public static OutsideFamily Proprietary { get; } = new(6, "proprietary", "proprietary standard", KnownState.NotCovered, [], "non-standard", "maker-specific", "brand-specific", "manufacturer-specific", "maker's own", "manufacturer's own", "brand's own", "a maker's own", "its maker's own", "the maker's own", "own standard", "own system", "closed system");

    /// <summary>The frame maker's own part, whatever it is.</summary>
    public static OutsideFamily OwnPart { get; } = new(7, "own-part", "frame maker's own part", KnownState.FrameSpecific, [], "frame maker's own", "frame's own", "frame-maker-specific", "model-specific", "comes with the frame", "supplied with the frame", "only the frame maker's own");

    /// <summary>A post that is not round, or a mast that is part of the frame.</summary>
    public static OutsideFamily ShapedSeatpost { get; } = new(8, "shaped-seatpost", "shaped seatpost", KnownState.FrameSpecific, ["seatTube", "diameter"], "aero", "aero seatpost", "aero post", "aerodynamic seatpost", "D-shaped", "D-shaped seatpost", "D-shape", "seat mast", "seatmast", "integrated seat mast", "integrated seatpost", "integrated post", "integrated seat tube");

    /// <summary>Bar, stem and headset made for one frame.</summary>
    public static OutsideFamily OwnFrontEnd { get; } = new(9, "integrated-front-end", "integrated front end", KnownState.FrameSpecific, ["headTube", "code", "fixing"], "integrated cockpit", "integrated bar and stem", "integrated handlebar", "integrated stem", "integrated bar", "one-piece bar and stem", "one-piece cockpit", "one-piece bar", "aero front end", "aero cockpit", "own front end");

    /// <summary>Every family.</summary>
    public static ImmutableArray<OutsideFamily> All { get; } = [Motor, HubMotor, Cargo, Gearbox, ShaftDrive, Proprietary, OwnPart, ShapedSeatpost, OwnFrontEnd];

    /// <inheritdoc/>
    public static string Called => "family that is not judged";

    /// <summary><see cref="KnownState.NotCovered"/>, or <see cref="KnownState.FrameSpecific"/> where the frame maker has the part.</summary>
    public KnownState State { get; }

    /// <summary>The fields to which the name alone belongs in a short form, by key.</summary>
    internal ImmutableArray<string> Homes { get; }

    /// <inheritdoc/>
    public static OutsideFamily OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<OutsideFamily> Read(ReadOnlySpan<char> text) => ByName(text);
}
