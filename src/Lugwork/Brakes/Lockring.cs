using System.Collections.Immutable;
using System.ComponentModel;
using System.Globalization;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>The ring that holds a splined rotor. Closed set, identity equality.</summary>
/// <remarks>Its tool has to pass over the axle: up to 12 mm for internal notches, 20 mm for external ones, "Interchangeability of splined-rotor lockrings".</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<Lockring>))]
[TypeConverter(typeof(InterfaceTypeConverter<Lockring>))]
public sealed class Lockring : Standard<Lockring>, IInterfaceValue<Lockring>
{
    private Lockring(int code, string key, string name, int bore, int outside, int axle, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        BoreHundredths = bore;
        OutsideHundredths = outside;
        LargestAxleMillimetres = axle;
    }

    /// <summary>Notches inside, turned with the cassette tool.</summary>
    public static Lockring Internal { get; } = new(1, "internal", "lockring with internal notches", 2150, 3800, 12, Sources.LockringExchange, "inner", "internal notches", "inner notches");

    /// <summary>Sixteen notches outside, turned with the tool of an external bottom-bracket cup of the 44 mm class.</summary>
    public static Lockring External { get; } = new(2, "external", "lockring with external notches", 0, 0, 20, Sources.LockringExchange, "outer", "external notches", "outer notches");

    /// <summary>Both.</summary>
    public static ImmutableArray<Lockring> All { get; } = [Internal, External];

    /// <inheritdoc/>
    public static string Called => "rotor lockring";

    /// <summary>Hole through the ring, about; null where it is not known.</summary>
    public Length? Bore => BoreHundredths == 0 ? null : Length.FromMillimeters(BoreHundredths / 100d);

    /// <summary>Outside diameter, about; null where it is not known. The outer ring is turned by a tool of the 44 mm class.</summary>
    public Length? Outside => OutsideHundredths == 0 ? null : Length.FromMillimeters(OutsideHundredths / 100d);

    /// <summary>The thickest axle at which its tool passes, whole millimetres. The outer ring goes on thin axles too, where the fork leg leaves room.</summary>
    public int LargestAxleMillimetres { get; }

    private int BoreHundredths { get; }

    private int OutsideHundredths { get; }

    /// <summary>Whether the ring can be turned on a hub with this axle: axle ≤ <see cref="LargestAxleMillimetres"/>. No axle above 20 mm is known here.</summary>
    /// <param name="axle">Diameter of the axle, 5 to 20 mm: 5 or 9 for a quick release, 12, 15, 20.</param>
    /// <returns>Fits up to the thickest axle over which its tool passes, does not fit above.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or no number.</exception>
    public SumCheck OnAxle(Length axle)
    {
        double thick = (double)NumberRange.Exact(axle, 5, 20).Millimetres;
        bool passes = thick <= LargestAxleMillimetres;
        return new SumCheck("lockring-on-axle", passes ? Verdict.Fits : Verdict.DoesNotFit, string.Create(CultureInfo.InvariantCulture, $"the tool of a {TradeName} passes over an axle of up to {LargestAxleMillimetres} mm, this one is {thick:0.##} mm{(this == External ? "; see that the end leaves room for the ring" : "")}"), passes ? "" : External.TradeName, Cautions.BrakeWork, [Source])
            .Comparing(("axle", thick, "mm"), ("thickest axle", LargestAxleMillimetres, "mm"));
    }

    /// <inheritdoc/>
    public static Lockring OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<Lockring> Read(ReadOnlySpan<char> text) => ByName(text);
}
