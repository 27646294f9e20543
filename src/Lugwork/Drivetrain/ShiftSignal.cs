using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>What carries a shift from lever to derailleur or hub, and what it needs of the frame. Closed set, identity equality.</summary>
/// <remarks>Lever and derailleur of two signals never work together; within one the maker's system decides, see <see cref="ActuationFamily"/> for cables.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ShiftSignal>))]
[TypeConverter(typeof(InterfaceTypeConverter<ShiftSignal>))]
public sealed class ShiftSignal : Standard<ShiftSignal>, IInterfaceValue<ShiftSignal>
{
    private ShiftSignal(int code, string key, string name, Source source, bool line, bool battery, string frame, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        NeedsLine = line;
        NeedsBattery = battery;
        OfTheFrame = frame;
    }

    /// <summary>A cable in housing.</summary>
    public static ShiftSignal Cable { get; } = new(1, "cable", "cable", Sources.HydraulicShift, true, false, "stops or guides for cable and housing, outside or inside", "mechanical", "cables", "mechanical shifting");

    /// <summary>An electric wire.</summary>
    public static ShiftSignal Wired { get; } = new(2, "wired", "wired electronic", Sources.WiredShift, true, true, "holes or clips for a wire, and a place for battery and junction; ask the frame maker before a hole is drilled", "electronic wired", "wired electric", "wired shifting");

    /// <summary>Radio: lever and derailleur have a battery each.</summary>
    public static ShiftSignal Wireless { get; } = new(3, "wireless", "wireless electronic", Sources.WirelessShift, false, true, "nothing for shifting; open cable holes are plugged", "electronic wireless", "radio", "wireless shifting");

    /// <summary>Fluid in a hose.</summary>
    public static ShiftSignal Hydraulic { get; } = new(4, "hydraulic", "hydraulic", Sources.HydraulicShift, true, false, "guides or holes that pass a hose", "hydro", "hydraulic shifting");

    /// <summary>Nothing to shift.</summary>
    public static ShiftSignal Single { get; } = new(5, "no-shifting", "no shifting", Sources.CommonPractice, false, false, "nothing", "single-speed", "single speed", "fixed");

    /// <summary>Every one.</summary>
    public static ImmutableArray<ShiftSignal> All { get; } = [Cable, Wired, Wireless, Hydraulic, Single];

    /// <inheritdoc/>
    public static string Called => "shift signal";

    /// <summary>A cable, wire or hose runs along or through the frame.</summary>
    public bool NeedsLine { get; }

    /// <summary>It works only with a charged battery.</summary>
    public bool NeedsBattery { get; }

    /// <summary>What the frame must have for it.</summary>
    public string OfTheFrame { get; }

    /// <inheritdoc/>
    public static ShiftSignal OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "electronic" alone is wired or wireless.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ShiftSignal> Read(ReadOnlySpan<char> text) =>
        Trim(text).Equals("electronic", StringComparison.OrdinalIgnoreCase) || Trim(text).Equals("electronic shifting", StringComparison.OrdinalIgnoreCase)
            ? TextReading<ShiftSignal>.Several([Wired, Wireless], "say whether a wire joins lever and derailleur")
            : ByName(text);
}
