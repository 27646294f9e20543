using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>A family of rotors by thickness: new, and the least at which it may still be ridden. Closed set, identity equality.</summary>
/// <remarks>The families are numbered as they were published, without their makers: a rotor carries its own least thickness, and that one rules. Thickness t ≥ t least, mm, by "Technical FAQ on rotors" and "Rear disc below 1.5mm minimum".</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<RotorThickness>))]
[TypeConverter(typeof(InterfaceTypeConverter<RotorThickness>))]
public sealed class RotorThickness : Standard<RotorThickness>, IInterfaceValue<RotorThickness>
{
    private const decimal LeastMark = 1.2m;
    private const decimal MostMark = 2.2m;
    private const decimal MostThickness = 2.5m;

    internal const long LeastMarkNanometres = (long)(LeastMark * Nanometres.PerMillimetre);
    /// <summary>The least of the marks that are listed: thinner, and with no mark that says it may be, a rotor is worn out.</summary>
    internal const long LeastListedNanometres = 1_400_000;

    internal const long MostMarkNanometres = (long)(MostMark * Nanometres.PerMillimetre);
    internal const long MostNanometres = (long)(MostThickness * Nanometres.PerMillimetre);

    private readonly int _least;
    private readonly int _new;
    private readonly int _worn;

    private RotorThickness(int code, string key, string name, int least, int most, int worn, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _least = least;
        _new = most;
        _worn = worn;
    }

    /// <summary>Every family, in the order of the table.</summary>
    public static ImmutableArray<RotorThickness> All { get; } =
    [
        new(1, "a", "2.0 mm, least 1.8", 200, 200, 180, Sources.RotorFaq),
        new(2, "b-floating", "1.6 mm, least 1.4, floating 140 and 160", 160, 160, 140, Sources.RotorFaq),
        new(3, "b", "1.8 mm, least 1.5", 180, 180, 150, Sources.RotorFaq),
        new(4, "c", "1.75 to 1.78 mm, least 1.52", 175, 178, 152, Sources.RotorFaq),
        new(5, "d", "1.8 mm, least 1.5 engraved", 180, 180, 150, Sources.WornRotors),
        new(6, "d-heavy", "1.96 mm, least 1.5 engraved, 203 for e-bikes", 196, 196, 150, Sources.WornRotors),
        new(7, "e-heavy", "2.0 mm, least as marked, 220 for e-bikes", 200, 200, 0, Sources.WornRotors),
        new(8, "extra-thick", "2.2 to 2.3 mm, least as marked", 220, 230, 0, Sources.CommonPractice),
    ];

    /// <inheritdoc/>
    public static string Called => "rotor thickness family";

    /// <summary>Thickness when new, the least that is said.</summary>
    public Length New => Length.FromMillimeters(_least / 100d);

    /// <summary>Thickness when new, the most that is said.</summary>
    public Length MostNew => Length.FromMillimeters(_new / 100d);

    /// <summary>The least thickness at which it may still be ridden; null where it is only said to be marked on the rotor. Rotors of the first family were once marked 1.7.</summary>
    public Length? Least => _worn == 0 ? null : Length.FromMillimeters(_worn / 100d);

    /// <summary>The families whose new rotors have the thickness that was read. Wear makes a rotor thinner: the mark on the rotor rules.</summary>
    /// <param name="unworn">At a place that the pads do not touch.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<RotorThickness> Identify(MeasuredLength unworn) => RotorThicknessMeasures.Table.Identify(unworn);

    /// <summary>Whether a rotor may still be ridden: unsafe below the least thickness, and below 1.2 mm whatever is marked, also where the error of the reading alone keeps it above; needs measuring where none is marked, and where mark or reading is none that a rotor has: a mark outside 1.2 to 2.2 mm or a rotor thicker than 2.5 mm was read wrongly (our own bounds, no source; the listed marks are 1.4 to 1.8 mm, the listed rotors up to 2.3 mm).</summary>
    /// <param name="thickness">The thinnest place of the track, by micrometer or caliper.</param>
    /// <param name="marked">The least thickness marked on the rotor; null where none can be read.</param>
    /// <exception cref="ArgumentException">The reading is a default.</exception>
    public static SumCheck Check(MeasuredLength thickness, Dimension? marked)
    {
        if (thickness.Millimetres == 0)
        {
            throw new ArgumentException("a default is no reading", nameof(thickness));
        }

        if (thickness.Millimetres < LeastMark)
        {
            return new SumCheck("rotor-wear", Verdict.Unsafe, FormattableString.Invariant($"the rotor is {thickness}, thinner than any least that rotors are marked with (1.2 mm is our own bound, no source)"), "a new rotor", Cautions.BrakeWork, [])
                .Comparing(("thickness", (double)thickness.Millimetres, "mm"), ("error", (double)thickness.ErrorMillimetres, "mm"));
        }

        if (marked is not { FitCode: > 0 } least || least.Millimetres is < LeastMark or > MostMark || thickness.Millimetres - thickness.ErrorMillimetres > MostThickness)
        {
            string why = marked is not { FitCode: > 0 } known ? "no least thickness is marked on the rotor"
                : known.Millimetres is < LeastMark or > MostMark ? FormattableString.Invariant($"a mark of {known.Millimetres:0.##} mm is none that a rotor has (1.2 to 2.2 mm is our own bound, no source)")
                : FormattableString.Invariant($"no rotor is {thickness.Millimetres:0.##} mm thick (2.5 mm is our own bound, no source)");
            return new SumCheck("rotor-wear", Verdict.NeedsMeasuring, why, "the mark on the rotor, or its maker's figure, read again", Cautions.BrakeWork, []).Comparing(("thickness", (double)thickness.Millimetres, "mm"));
        }

        Verdict verdict = thickness.Millimetres < least.Millimetres ? Verdict.Unsafe
            : thickness.Millimetres - thickness.ErrorMillimetres < least.Millimetres ? Verdict.NeedsMeasuring
            : Verdict.Fits;
        string remedy = verdict switch { Verdict.Unsafe => "a new rotor", Verdict.Fits => "", _ => "the thinnest place by micrometer" };
        return new SumCheck("rotor-wear", verdict, FormattableString.Invariant($"the rotor is {thickness}, {least.Millimetres:0.##} mm is marked as its least"), remedy, Cautions.BrakeWork, [])
            .Comparing(("thickness", (double)thickness.Millimetres, "mm"), ("error", (double)thickness.ErrorMillimetres, "mm"), ("least", (double)least.Millimetres, "mm"));
    }

    /// <inheritdoc/>
    public static RotorThickness OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<RotorThickness> Read(ReadOnlySpan<char> text) =>
        ByName(text) is { Values.IsEmpty: false } read ? read : SizedText.IsLength(text) ? TextReading<RotorThickness>.Refused("a family is expected, such as a or b-floating; a figure in millimetres is measured, not read") : ByName(text);

    private static class RotorThicknessMeasures
    {
        public static IdentificationTable<RotorThickness> Table { get; } = new([new("unworn thickness", "caliper at a place that the pads do not touch")], Rows(), family => family.FitKey);

        private static ImmutableArray<DimensionRow<RotorThickness>> Rows()
        {
            DimensionRow<RotorThickness>[] rows = new DimensionRow<RotorThickness>[All.Length];
            for (int i = 0; i < rows.Length; i++)
            {
                RotorThickness family = All[i];
                rows[i] = new(family, [(family._least / 100m, family._new / 100m)], family._worn == 0 ? "its least thickness is marked on the rotor only" : $"may wear to {FormattableString.Invariant($"{family._worn / 100m:0.##}")} mm");
            }

            return ImmutableArray.Create(rows);
        }
    }
}
