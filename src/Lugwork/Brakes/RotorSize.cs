using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>Outside diameter of a disc rotor. Closed set, identity equality.</summary>
public sealed class RotorSize : Standard<RotorSize>, IInterfaceValue<RotorSize>
{
    private RotorSize(int millimetres, Source source)
        : base(millimetres, FormattableString.Invariant($"{millimetres}"), FormattableString.Invariant($"{millimetres} mm"), source, FormattableString.Invariant($"{millimetres}mm"))
    {
    }

    /// <summary>Every size of the trade, smallest first. 203 is 8 in (203.2 mm) rounded; 200 is the metric size.</summary>
    public static ImmutableArray<RotorSize> All { get; } =
    [
        new(140, Sources.AdaptersPage), new(160, Sources.AdaptersPage), new(180, Sources.AdapterGuide), new(183, Sources.IsAdapters),
        new(185, Sources.Memory), new(200, Sources.AdapterGuide), new(203, Sources.AdapterGuide), new(205, Sources.Memory),
        new(220, Sources.AdapterGuide), new(223, Sources.Memory),
    ];

    /// <inheritdoc/>
    public static string Called => "rotor size";

    /// <summary>The nominal diameter.</summary>
    public Length Diameter => Length.FromMillimeters((double)FitCode);

    internal override Nanometres? MainLength => new(FitCode * Nanometres.PerMillimetre);

    /// <summary>What a reading of a rotor can be.</summary>
    /// <param name="diameter">Diameter through the centre; a rule is out by 1 mm.</param>
    /// <returns>Every one that the reading allows, the likeliest first.</returns>
    /// <exception cref="ArgumentException">The reading is a default.</exception>
    public static Identification<RotorSize> Identify(MeasuredLength diameter) => SizedIdentification.Of<RotorSize>(
        new("diameter", "rule across the rotor through the centre"),
        diameter,
        r => (r.FitCode, r.FitCode),
        r => r.FitCode,
        r => r.FitCode is 200 or 203 ? "200 and 203 are two sizes: adapters differ by 3 mm" : "");

    /// <inheritdoc/>
    public static RotorSize OfFitCode(long code) => ByCode(code);

    /// <summary>The rotors within the error of a measured one.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<RotorSize> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(r => Math.Abs(r.FitCode - millimetres) <= error)];

    /// <inheritdoc/>
    public static Reading<RotorSize> Read(ReadOnlySpan<char> text) => ByName(text);

    internal static long Exact(RotorSize size) => size.FitCode * Nanometres.PerMillimetre;
}
