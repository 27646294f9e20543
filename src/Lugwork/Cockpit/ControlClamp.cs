using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Cockpit;

/// <summary>What bar a brake lever or a shifter clamps. Closed set, identity equality.</summary>
/// <remarks>Only the bar at the control counts; a centre of 31.8 or 35 mm does not matter.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ControlClamp>))]
[TypeConverter(typeof(InterfaceTypeConverter<ControlClamp>))]
public sealed class ControlClamp : Standard<ControlClamp>, IInterfaceValue<ControlClamp>
{
    private ControlClamp(int code, string key, string name, Source source, GripDiameter bar, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Bar = bar;
    }

    /// <summary>Levers for drop bars.</summary>
    public static ControlClamp DropBar { get; } = new(1, "drop-bar-lever", "drop-bar lever (23.8)", Sources.LeverSeats, GripDiameter.Mm23Point8, "drop-bar control", "drop bar", "drop", "23.8", "15/16 in");

    /// <summary>Levers and shifters for flat bars, by cable or by fluid; they go on BMX bars as well.</summary>
    public static ControlClamp FlatBar { get; } = new(2, "flat-bar-control", "flat-bar lever or shifter (22.2)", Sources.PostSizesCanada, GripDiameter.Mm22Point2, "flat-bar lever", "flat-bar shifter", "flat bar", "flat", "BMX lever", "22.2", "7/8 in");

    /// <summary>Every one.</summary>
    public static ImmutableArray<ControlClamp> All { get; } = [DropBar, FlatBar];

    /// <inheritdoc/>
    public static string Called => "control clamp";

    /// <summary>The bar that it clamps.</summary>
    public GripDiameter Bar { get; }

    /// <inheritdoc/>
    public static ControlClamp OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key, a name or the diameter of the bar.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ControlClamp> Read(ReadOnlySpan<char> text) =>
        SizedText.Find<ControlClamp>(text, c => c.Bar.Hundredths) is { } sized ? TextReading<ControlClamp>.Of(sized) : ByName(text);
}
