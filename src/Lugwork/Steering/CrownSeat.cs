using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>Seat of the crown race at the foot of a steerer, and the race that goes on it. Closed set, identity equality.</summary>
/// <remarks>A seat measures up to 0.15 mm above its name: that is the press fit.</remarks>
public sealed class CrownSeat : Standard<CrownSeat>, IInterfaceValue<CrownSeat>
{
    private CrownSeat(int code, string key, string name, Source source, int hundredths, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Hundredths = hundredths;
    }

    /// <summary>1 in ISO and Italian.</summary>
    public static CrownSeat Mm26Point4 { get; } = new(1, "26.4", "26.4 mm seat (1 in ISO)", Sources.OneInchHeadsets, 2640, "26", "26.40");

    /// <summary>French.</summary>
    public static CrownSeat Mm26Point5 { get; } = new(2, "26.5", "26.5 mm seat (French)", Sources.Memory, 2650);

    /// <summary>1 in JIS.</summary>
    public static CrownSeat Mm27 { get; } = new(3, "27", "27.0 mm seat (1 in JIS)", Sources.OneInchHeadsets, 2700, "27.0");

    /// <summary>1-1/8 in straight.</summary>
    public static CrownSeat Mm30 { get; } = new(4, "30", "30.0 mm seat (1-1/8 in)", Sources.StraightSteerer, 3000, "30.0");

    /// <summary>1-1/4 in.</summary>
    public static CrownSeat Mm33 { get; } = new(5, "33", "33.0 mm seat (1-1/4 in)", Sources.CrownRaceGuide, 3300, "33.0");

    /// <summary>1-3/8 in.</summary>
    public static CrownSeat Mm37 { get; } = new(6, "37", "37.0 mm seat (1-3/8 in)", Sources.ForkCutting, 3700, "37.0");

    /// <summary>1.5 in; codes round it to 40.</summary>
    public static CrownSeat Mm39Point8 { get; } = new(7, "39.8", "39.8 mm seat (1.5 in, coded 40)", Sources.HeadsetChart, 3980, "40", "40.0");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<CrownSeat> All { get; } =
    [
        Mm26Point4, Mm26Point5, Mm27, Mm30, Mm33, Mm37, Mm39Point8,
    ];

    /// <inheritdoc/>
    public static string Called => "crown-race seat";

    /// <summary>The ones within the error of a measured size.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<CrownSeat> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(s => s.Hundredths / 100m >= millimetres - error - 0.15m && s.Hundredths / 100m <= millimetres + error)];

    /// <summary>The nominal diameter.</summary>
    public Length Diameter => Length.FromMillimeters(Hundredths / 100d);

    internal int Hundredths { get; }

    internal override Nanometres? MainLength => new(Hundredths * (Nanometres.PerMillimetre / 100));

    /// <summary>What a reading of the seat can be; a seat measures up to 0.15 mm above its name.</summary>
    /// <param name="diameter">Outside diameter of the seat, race off.</param>
    /// <returns>Every one that the reading allows, the likeliest first.</returns>
    /// <exception cref="ArgumentException">The reading is a default.</exception>
    public static Identification<CrownSeat> Identify(MeasuredLength diameter) => SizedIdentification.Of<CrownSeat>(
        new("seat diameter", "caliper on the turned seat just above the crown"),
        diameter,
        s => (s.Hundredths / 100m, s.Hundredths / 100m + 0.15m),
        s => s.Hundredths / 100m,
        s => s == Mm26Point4 || s == Mm26Point5 ? "26.4 is ISO on a 25.4 steerer, 26.5 French on a 25.0 one: measure the steerer" : "");

    /// <inheritdoc/>
    public static CrownSeat OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a size in millimetres, with a decimal comma and a unit if need be, or a name.</summary>
    /// <param name="text">Any text.</param>
    public static Reading<CrownSeat> Read(ReadOnlySpan<char> text) =>
        SizedText.Find<CrownSeat>(text, s => s.Hundredths) is { } sized ? Reading<CrownSeat>.Of(sized) : ByName(SizedText.WithoutInchMark(text));
}
