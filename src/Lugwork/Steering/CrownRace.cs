using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>The crown race of a lower half, named by the seat that it is pressed on. Closed set, identity equality.</summary>
/// <remarks>Same codes as the seat. A race measures up to 0.15 mm under its name: that is the press fit.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<CrownRace>))]
[TypeConverter(typeof(InterfaceTypeConverter<CrownRace>))]
public sealed class CrownRace : Standard<CrownRace>, IInterfaceValue<CrownRace>
{
    private CrownRace(int code, string key, string name, Source source, int hundredths, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Hundredths = hundredths;
    }

    /// <summary>1 in ISO and Italian.</summary>
    public static CrownRace Mm26Point4 { get; } = new(1, "26.4", "26.4 mm race (1 in ISO)", Sources.OneInchHeadsets, 2640, "26", "26.40");

    /// <summary>French.</summary>
    public static CrownRace Mm26Point5 { get; } = new(2, "26.5", "26.5 mm race (French)", Sources.Memory, 2650);

    /// <summary>1 in JIS.</summary>
    public static CrownRace Mm27 { get; } = new(3, "27", "27.0 mm race (1 in JIS)", Sources.OneInchHeadsets, 2700, "27.0");

    /// <summary>1-1/8 in.</summary>
    public static CrownRace Mm30 { get; } = new(4, "30", "30.0 mm race (1-1/8 in)", Sources.StraightSteerer, 3000, "30.0");

    /// <summary>1-1/4 in.</summary>
    public static CrownRace Mm33 { get; } = new(5, "33", "33.0 mm race (1-1/4 in)", Sources.CrownRaceGuide, 3300, "33.0");

    /// <summary>1-3/8 in.</summary>
    public static CrownRace Mm37 { get; } = new(6, "37", "37.0 mm race (1-3/8 in)", Sources.ForkCutting, 3700, "37.0");

    /// <summary>1.5 in; codes round it to 40.</summary>
    public static CrownRace Mm39Point8 { get; } = new(7, "39.8", "39.8 mm race (1.5 in, coded 40)", Sources.HeadsetChart, 3980, "40", "40.0");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<CrownRace> All { get; } =
    [
        Mm26Point4, Mm26Point5, Mm27, Mm30, Mm33, Mm37, Mm39Point8,
    ];

    /// <inheritdoc/>
    public static string Called => "crown race";

    /// <summary>The ones within the error of a measured size.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<CrownRace> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(s => s.Hundredths / 100m >= millimetres - error - 0.05m && s.Hundredths / 100m <= millimetres + error + 0.15m)];

    /// <summary>The nominal diameter.</summary>
    public Length Diameter => Length.FromMillimeters(Hundredths / 100d);

    /// <summary>Smallest that one was found to measure, or the nominal size where none was measured.</summary>
    public Length Least => Length.FromMillimeters(CrownFigures.Race(FitCode).Least / 100d);

    /// <summary>Largest that one was found to measure, or the nominal size where none was measured.</summary>
    public Length Most => Length.FromMillimeters(CrownFigures.Race(FitCode).Most / 100d);

    /// <summary>What smallest and largest rest on; null where only the nominal size is known.</summary>
    public Source? MeasuredSource => CrownFigures.Race(FitCode).Source;

    internal int Hundredths { get; }

    internal override Nanometres? MainLength => new(Hundredths * (Nanometres.PerMillimetre / 100));

    /// <summary>What a crown race can be, from what it measures.</summary>
    /// <param name="diameter">Inside diameter of the race.</param>
    /// <param name="steerer">Outside diameter of the steerer just above the race.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<CrownRace> Identify(MeasuredLength? diameter = null, MeasuredLength? steerer = null) =>
        CrownRaceDimensions.Table.Identify(diameter, steerer);

    /// <inheritdoc/>
    public static CrownRace OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a size in millimetres, with a decimal comma and a unit if need be, or a name; 40 and 26 are what codes make of 39.8 and 26.4.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<CrownRace> Read(ReadOnlySpan<char> text) =>
        (SizedText.Find<CrownRace>(text, s => s.Hundredths) ?? SizedText.Find<CrownRace>(text, s => s == Mm39Point8 ? 4000 : s == Mm26Point4 ? 2600 : -1)) is { } sized ? TextReading<CrownRace>.Of(sized) : ByName(text);

    /// <summary>Made when something is first identified.</summary>
    private static class CrownRaceDimensions
    {
        public static readonly IdentificationTable<CrownRace> Table = new(
            [
                new("diameter", "inside caliper in the race, off the fork, two directions, to 0.02 mm"),
                new("steerer", "outside caliper on the steerer just above the crown"),
            ],
            Rows(),
            c => c.TradeName);

        // 26.5 first: it lies inside what 26.4 was found to measure.
        private static ImmutableArray<DimensionRow<CrownRace>> Rows()
        {
            ImmutableArray<DimensionRow<CrownRace>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<CrownRace>>(All.Length);
            Add(rows, Mm26Point5);
            foreach (CrownRace one in All)
            {
                if (one != Mm26Point5)
                {
                    Add(rows, one);
                }
            }

            return rows.MoveToImmutable();
        }

        private static void Add(ImmutableArray<DimensionRow<CrownRace>>.Builder rows, CrownRace one)
        {
            CrownFigures figures = CrownFigures.Race(one.FitCode);
            decimal steerer = CrownFigures.Steerer(one.FitCode);
            rows.Add(new(one, [(figures.Least / 100m, figures.Most / 100m), (steerer, steerer)], CrownFigures.TellsApart(one.FitCode)));
        }
    }
}
