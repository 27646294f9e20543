using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>Outside diameter of a steerer at the top, where headset and stem meet it. Closed set, identity equality.</summary>
/// <remarks>A tapered steerer is told by its top here and by its crown-race seat.</remarks>
public sealed class SteererSize : Standard<SteererSize>, IInterfaceValue<SteererSize>
{
    private SteererSize(int code, string key, string name, Source source, int hundredths, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Hundredths = hundredths;
    }

    /// <summary>Old American 7/8 in.</summary>
    public static SteererSize Mm23Point8 { get; } = new(1, "23.8", "7/8 in steerer (23.8)", Sources.StemSizes, 2380, "7/8 in", "7/8");

    /// <summary>French.</summary>
    public static SteererSize Mm25 { get; } = new(2, "25", "French steerer (25.0)", Sources.Memory, 2500, "25.0", "French");

    /// <summary>1 in.</summary>
    public static SteererSize Mm25Point4 { get; } = new(3, "25.4", "1 in steerer (25.4)", Sources.HeadsetArticle, 2540, "1 in", "1 inch", "1");

    /// <summary>1-1/8 in; also the top of most tapered steerers.</summary>
    public static SteererSize Mm28Point6 { get; } = new(4, "28.6", "1-1/8 in steerer (28.6)", Sources.HeadsetArticle, 2860, "1-1/8 in", "1-1/8", "1 1/8");

    /// <summary>1-1/4 in.</summary>
    public static SteererSize Mm31Point8 { get; } = new(5, "31.8", "1-1/4 in steerer (31.8)", Sources.HeadsetArticle, 3180, "1-1/4 in", "1-1/4");

    /// <summary>1.5 in, straight.</summary>
    public static SteererSize Mm38Point1 { get; } = new(6, "38.1", "1.5 in steerer (38.1)", Sources.HeadsetArticle, 3810, "1.5 in", "1.5", "1-1/2 in", "1-1/2");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<SteererSize> All { get; } =
    [
        Mm23Point8, Mm25, Mm25Point4, Mm28Point6, Mm31Point8, Mm38Point1,
    ];

    /// <inheritdoc/>
    public static string Called => "steerer size";

    /// <summary>The ones within the error of a measured size.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<SteererSize> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(s => s.Hundredths / 100m >= millimetres - error && s.Hundredths / 100m <= millimetres + error)];

    /// <summary>The outside diameter.</summary>
    public Length Diameter => Length.FromMillimeters(Hundredths / 100d);

    internal int Hundredths { get; }

    internal override Nanometres? MainLength => new(Hundredths * (Nanometres.PerMillimetre / 100));

    /// <summary>What a steerer reading can be.</summary>
    /// <param name="diameter">Outside diameter at the top.</param>
    /// <returns>Every one that the reading allows, the likeliest first.</returns>
    /// <exception cref="ArgumentException">The reading is a default.</exception>
    public static Identification<SteererSize> Identify(MeasuredLength diameter) => SizedIdentification.Of<SteererSize>(
        new("outside diameter", "caliper at the top of the steerer"),
        diameter,
        s => (s.Hundredths / 100m, s.Hundredths / 100m),
        s => s.Hundredths / 100m,
        _ => "");

    /// <inheritdoc/>
    public static SteererSize OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a size in millimetres, with a decimal comma and a unit if need be, or a name.</summary>
    /// <param name="text">Any text.</param>
    public static Reading<SteererSize> Read(ReadOnlySpan<char> text) =>
        SizedText.Find<SteererSize>(text, s => s.Hundredths) is { } sized ? Reading<SteererSize>.Of(sized) : ByName(SizedText.WithoutInchMark(text));
}
