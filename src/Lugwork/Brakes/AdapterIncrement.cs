using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>How much larger a rotor an adapter asks for, by which adapters are named: "+20". Never its thickness. Closed set, identity equality.</summary>
/// <remarks>On IS tabs every caliper needs an adapter: "+0" is the one for the tabs' own rotor. An increment is a difference of diameters; the pads move half of it along the radius.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<AdapterIncrement>))]
[TypeConverter(typeof(InterfaceTypeConverter<AdapterIncrement>))]
public sealed class AdapterIncrement : Standard<AdapterIncrement>, IInterfaceValue<AdapterIncrement>
{
    private AdapterIncrement(int code, int millimetres)
        : base(code, FormattableString.Invariant($"+{millimetres}"), FormattableString.Invariant($"adapter +{millimetres} mm"), Sources.AdapterGuide, FormattableString.Invariant($"{millimetres}"))
    {
        Millimetres = millimetres;
    }

    /// <summary>Every step that a table of adapters has, smallest first.</summary>
    public static ImmutableArray<AdapterIncrement> All { get; } =
    [
        new(1, 0), new(2, 20), new(3, 23), new(4, 40), new(5, 43), new(6, 60), new(7, 63), new(8, 80),
    ];

    /// <inheritdoc/>
    public static string Called => "brake adapter increment";

    /// <summary>Growth of the rotor's diameter, whole millimetres.</summary>
    public int Millimetres { get; }

    /// <summary>Growth of the rotor's diameter.</summary>
    public Length Growth => Length.FromMillimeters(Millimetres);

    /// <summary>How far the pads move out along the radius: half the growth of the rotor.</summary>
    public Length AlongRadius => Length.FromMillimeters(Millimetres / 2d);

    /// <summary>The rotor that this step makes of a mount's own; null where no rotor of the trade has that diameter.</summary>
    /// <param name="mount">The mount.</param>
    public RotorSize? RotorOn(BrakeMount mount)
    {
        ArgumentNullException.ThrowIfNull(mount);
        foreach (RotorSize size in RotorSize.All)
        {
            if (size.FitCode == mount.NativeRotorMillimetres + Millimetres)
            {
                return size;
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public static AdapterIncrement OfFitCode(long code) => ByCode(code);

    /// <summary>Reads "+20", "20" or "+20 mm"; there is no negative adapter.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<AdapterIncrement> Read(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        ReadOnlySpan<char> number = trimmed.StartsWith("+") ? trimmed[1..] : trimmed;
        if (TextCursor.IsNegative(number))
        {
            return TextReading<AdapterIncrement>.Refused("no adapter brings a caliper closer to the axle");
        }

        return SizedText.Find<AdapterIncrement>(number, a => a.Millimetres * 100) is { } sized ? TextReading<AdapterIncrement>.Of(sized) : ByName(text);
    }
}
