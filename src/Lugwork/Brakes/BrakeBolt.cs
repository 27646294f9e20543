using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>How the centre bolt of a rim-brake caliper is held. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<BrakeBolt>))]
[TypeConverter(typeof(InterfaceTypeConverter<BrakeBolt>))]
public sealed class BrakeBolt : Standard<BrakeBolt>, IInterfaceValue<BrakeBolt>
{
    private BrakeBolt(int code, string key, string name, int micrometres, bool recessed, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Micrometres = micrometres;
        IsRecessed = recessed;
    }

    /// <summary>6 mm bolt with a nut behind the bridge or crown.</summary>
    public static BrakeBolt Nutted6 { get; } = new(1, "nutted-6", "6 mm bolt, nut outside", 6_000, false, Sources.ReachShop, "nutted 6 mm");

    /// <summary>1/4 in bolt with a nut behind the bridge or crown.</summary>
    public static BrakeBolt NuttedQuarterInch { get; } = new(2, "nutted-1/4", "1/4 in bolt, nut outside", 6_350, false, Sources.ReachShop, "nutted 1/4 in", "nutted 1/4\"");

    /// <summary>6 mm bolt in a long nut that sinks into the bridge or crown from behind.</summary>
    public static BrakeBolt Recessed6 { get; } = new(3, "recessed-6", "6 mm bolt, recessed nut", 6_000, true, Sources.ReachShop, "recessed", "recessed nut", "M6 recessed", "allen nut", "sleeve nut");

    /// <summary>Every kind.</summary>
    public static ImmutableArray<BrakeBolt> All { get; } = [Nutted6, NuttedQuarterInch, Recessed6];

    /// <inheritdoc/>
    public static string Called => "brake bolt";

    /// <summary>Diameter of the bolt.</summary>
    public Length Diameter => Length.FromMillimeters(Micrometres / 1_000d);

    internal override Nanometres? MainLength => new(Micrometres * (Nanometres.PerMillimetre / 1_000));

    /// <summary>The nut sinks in: the hole must be wider from behind.</summary>
    public bool IsRecessed { get; }

    /// <summary>The hole that a recessed nut needs from behind, from memory; null for a nut outside.</summary>
    public Length? Counterbore => IsRecessed ? Length.FromMillimeters(8) : null;

    private int Micrometres { get; }

    /// <summary>The bolts that readings can be; the hole from behind tells a recessed nut.</summary>
    /// <param name="bolt">Diameter of the bolt.</param>
    /// <param name="holeBehind">Diameter of the hole from behind.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public static Identification<BrakeBolt> Identify(MeasuredLength? bolt = null, MeasuredLength? holeBehind = null) => BrakeBoltMeasures.Table.Identify(bolt, holeBehind);

    /// <inheritdoc/>
    public static BrakeBolt OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "nutted" alone is two bolts.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<BrakeBolt> Read(ReadOnlySpan<char> text) =>
        Trim(text).Equals("nutted", StringComparison.OrdinalIgnoreCase)
            ? TextReading<BrakeBolt>.Several([Nutted6, NuttedQuarterInch], "say whether the bolt is 6 mm or 1/4 in")
            : Same(Trim(text), "M6") || Same(Trim(text), "6 mm") ? TextReading<BrakeBolt>.Several([Nutted6, Recessed6], "say whether a plain nut or one inside the bridge or crown holds it")
            : ByName(text);

    private static class BrakeBoltMeasures
    {
        public static IdentificationTable<BrakeBolt> Table { get; } = new(
            [
                new("bolt", "caliper over the thread of the centre bolt"),
                new("hole behind", "caliper in the hole of bridge or crown, from behind"),
            ],
            [
                new(Nutted6, [(6m, 6m), (6m, 6m)], "plain nut behind the bridge or crown"),
                new(NuttedQuarterInch, [(6.35m, 6.35m), (6.35m, 6.35m)], "plain nut behind the bridge or crown, inch thread"),
                new(Recessed6, [(6m, 6m), (8m, 8m)], "long nut with a hex socket inside the bridge or crown"),
            ],
            bolt => bolt.FitKey);
    }
}
