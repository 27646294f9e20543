using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>Outside diameter of a disc rotor. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<RotorSize>))]
[TypeConverter(typeof(InterfaceTypeConverter<RotorSize>))]
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

    /// <inheritdoc/>
    public static RotorSize OfFitCode(long code) => ByCode(code);

    /// <summary>The rotors within the error of a measured one.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<RotorSize> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(r => Math.Abs(r.FitCode - millimetres) <= error)];

    /// <summary>The rotors that a reading over the outside can be. A caliper tells 200, 203 and 205 apart; an adapter for one of them puts the pads 1.5 mm off on the next.</summary>
    /// <param name="diameter">Across the outside, over the middle.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<RotorSize> Identify(MeasuredLength diameter) => RotorSizeMeasures.Table.Identify(diameter);

    /// <inheritdoc/>
    public static TextReading<RotorSize> Read(ReadOnlySpan<char> text) =>
        text.Length <= InchText.MostLetters && Same(InchText.Plain(Trim(text)), "8 in") ? TextReading<RotorSize>.Several([OfFitCode(203), OfFitCode(200)], "8 in is 203.2 mm, and the metric size beside it is 200: say the millimetres") : ByName(text);

    internal static long Exact(RotorSize size) => size.FitCode * Nanometres.PerMillimetre;

    private static class RotorSizeMeasures
    {
        public static IdentificationTable<RotorSize> Table { get; } = new([new("diameter", "across the outside, over the middle")], Rows(), size => size.FitKey);

        private static ImmutableArray<DimensionRow<RotorSize>> Rows()
        {
            DimensionRow<RotorSize>[] rows = new DimensionRow<RotorSize>[All.Length];
            for (int i = 0; i < rows.Length; i++)
            {
                long size = All[i].FitCode;

                // 203 is 8 in, which is 203.2 mm.
                rows[i] = new(All[i], [(size, size == 203 ? 203.2m : size)], size switch
                {
                    180 or 183 or 185 => "180, 183 and 185 are three sizes, 1.5 and 1 mm of radius apart",
                    200 or 203 or 205 => "200, 203 (8 in) and 205 are three sizes, 1.5 and 1 mm of radius apart",
                    220 or 223 => "220 and 223 are two sizes, 1.5 mm of radius apart",
                    _ => "",
                });
            }

            return ImmutableArray.Create(rows);
        }
    }
}
