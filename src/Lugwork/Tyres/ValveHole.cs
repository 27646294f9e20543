using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>Hole that a rim has for the valve. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<ValveHole>))]
[TypeConverter(typeof(InterfaceTypeConverter<ValveHole>))]
public sealed class ValveHole : Standard<ValveHole>, IInterfaceValue<ValveHole>
{
    private readonly int _nominal;
    private readonly int _least;

    private ValveHole(int code, string key, string name, Source source, int nominal, int least, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _nominal = nominal;
        _least = least;
    }

    /// <summary>For a 6 mm stem: 6.5 mm; another page drills 6.4 mm (1/4 in).</summary>
    public static ValveHole Narrow { get; } = new(1, "6.5", "6.5 mm, Presta", Sources.WheelDataSheet, 6_500, 6_400, "6.5 mm", "6.4", "1/4 in", "Presta", "Sclaverand", "French", "FV", "PV");

    /// <summary>For an 8 mm stem: 8.5 mm; another page drills 8.3 mm (21/64 in).</summary>
    public static ValveHole Wide { get; } = new(2, "8.5", "8.5 mm, Schrader or Dunlop", Sources.RimTable, 8_500, 8_300, "8.5 mm", "8.3", "21/64 in", "Schrader", "American", "AV", "Dunlop", "Woods", "DV");

    /// <summary>Both.</summary>
    public static ImmutableArray<ValveHole> All { get; } = [Narrow, Wide];

    /// <inheritdoc/>
    public static string Called => "valve hole";

    /// <summary>Its diameter as rim data print it.</summary>
    public Length Diameter => Length.FromMillimeters(_nominal / 1000d);

    internal override Nanometres? MainLength => new(_nominal * (Nanometres.PerMillimetre / 1_000));

    /// <summary>The smallest that a page drills for this valve.</summary>
    public Length SmallestDrilled => Length.FromMillimeters(_least / 1000d);

    /// <summary>Where the smallest comes from.</summary>
    public static Source SmallestDrilledSource => Sources.ValveDrilling;

    /// <summary>The stems that stand in it without help.</summary>
    public ImmutableArray<ValveStem> Stems => this == Narrow ? [ValveStem.Presta] : [ValveStem.Schrader, ValveStem.Dunlop];

    /// <summary>The hole that a measured diameter can be.</summary>
    /// <param name="diameter">Inside of the hole; the published ones are 6.4 to 6.5 and 8.3 to 8.5 mm.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<ValveHole> Identify(MeasuredLength diameter) => HolesByMeasure.Rows.Identify(diameter);

    /// <inheritdoc/>
    public static ValveHole OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a diameter or the name of a valve.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ValveHole> Read(ReadOnlySpan<char> text) =>
        Same(Trim(text), "SV") ? TextReading<ValveHole>.Several([Narrow, Wide], "some packets mean Sclaverand by it, others Schrader valve")
        : SizedText.Find<ValveHole>(text, h => h._nominal / 10) is { } sized ? TextReading<ValveHole>.Of(sized) : ByName(ValveStem.WithoutValve(text));

    private static class HolesByMeasure
    {
        public static readonly IdentificationTable<ValveHole> Rows = new(
            [new("hole", "inside caliper in the outer wall of the rim, across the smallest place")],
            [
                new(Narrow, [(6.4m, 6.5m)], "an 8 mm stem does not enter"),
                new(Wide, [(8.3m, 8.5m)], "a 6 mm stem rattles; it needs a collar"),
            ],
            h => h.TradeName);
    }
}
