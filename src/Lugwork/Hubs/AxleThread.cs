using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>Thread of a thru-axle and of the end that it screws into. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<AxleThread>))]
[TypeConverter(typeof(InterfaceTypeConverter<AxleThread>))]
public sealed class AxleThread : Standard<AxleThread>, IInterfaceValue<AxleThread>
{
    private AxleThread(int code, string key, string name, Source source, int diameter, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Diameter = diameter;
    }

    /// <summary>Rear ends that follow the universal hanger.</summary>
    public static AxleThread M12Pitch1 { get; } = new(1, "M12x1.0", "M12 x 1.0", Sources.UniversalHangerMaker, 12, "12x1.0", "M12x1", "12x1", "M12 P1.0");

    /// <summary>Common, front and rear.</summary>
    public static AxleThread M12Pitch1Point5 { get; } = new(2, "M12x1.5", "M12 x 1.5", Sources.ThruAxleHelp, 12, "12x1.5", "M12 P1.5");

    /// <summary>Rear, older off-road families.</summary>
    public static AxleThread M12Pitch1Point75 { get; } = new(3, "M12x1.75", "M12 x 1.75", Sources.ThruAxleHelp, 12, "12x1.75", "M12 P1.75");

    /// <summary>Common, front.</summary>
    public static AxleThread M15Pitch1Point5 { get; } = new(4, "M15x1.5", "M15 x 1.5", Sources.ThruAxleHelp, 15, "15x1.5", "M15 P1.5");

    /// <summary>Many 20 mm axles; the name says nothing.</summary>
    public static AxleThread Own { get; } = new(5, "own", "maker-own thread or pinch bolts", Sources.Memory, 0, "maker-own", "pinch", "20 mm own");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<AxleThread> All { get; } =
    [
        M12Pitch1, M12Pitch1Point5, M12Pitch1Point75, M15Pitch1Point5, Own,
    ];

    /// <inheritdoc/>
    public static string Called => "axle thread";

    /// <summary>Nominal diameter, whole millimetres; 0 for a maker's own.</summary>
    internal int Diameter { get; }

    internal override Nanometres? MainLength => Diameter == 0 ? null : new(Diameter * Nanometres.PerMillimetre);

    /// <summary>Nominal diameter; null for a maker's own. The thread of an M12 axle measures 11.85 to 11.95 mm.</summary>
    public Length? NominalDiameter => Diameter == 0 ? null : Length.FromMillimeters(Diameter);

    /// <summary>From turn to turn; null for a maker's own.</summary>
    public Length? Pitch => PitchHundredths == 0 ? null : Length.FromMillimeters(PitchHundredths / 100d);

    /// <summary>How long the thread is, 12.7 mm, where the universal hanger prescribes it; null elsewhere: it is the frame maker's figure.</summary>
    public Length? ThreadLength => this == M12Pitch1 ? Length.FromMillimeters(12.7) : null;

    /// <summary>What measured dimensions of a thru-axle can be. A maker's own thread is never ruled out and comes last.</summary>
    /// <param name="outside">Outside of the thread; it measures up to 0.25 mm under its name (thread tolerance, from memory).</param>
    /// <param name="fiveTurns">From crest to crest over five turns: 5, 7.5 or 8.75 mm.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is the default.</exception>
    public static Identification<AxleThread> Identify(MeasuredLength? outside = null, MeasuredLength? fiveTurns = null) => ThreadsByMeasure.Rows.Identify(outside, fiveTurns);

    private int PitchHundredths => FitCode switch
    {
        1 => 100,
        2 or 4 => 150,
        3 => 175,
        _ => 0,
    };

    /// <inheritdoc/>
    public static AxleThread OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name in any times sign; "M12" alone is any pitch of that diameter.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<AxleThread> Read(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        if (trimmed.Equals("M12", StringComparison.OrdinalIgnoreCase))
        {
            return TextReading<AxleThread>.Several([M12Pitch1, M12Pitch1Point5, M12Pitch1Point75], "the pitch is missing: 1.0, 1.5 or 1.75 mm a turn");
        }

        return trimmed.Length > 40
            ? TextReading<AxleThread>.Refused("an axle thread is shorter than this", 40)
            : ByName(InchText.MetricThread(trimmed.ToString().Replace('\u00D7', 'x').Replace('*', 'x').Replace(',', '.')));
    }

    private static class ThreadsByMeasure
    {
        public static readonly IdentificationTable<AxleThread> Rows = Make();

        private static IdentificationTable<AxleThread> Make()
        {
            ImmutableArray<DimensionRow<AxleThread>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<AxleThread>>();
            foreach (AxleThread thread in All)
            {
                decimal five = thread.PitchHundredths / 20m;
                rows.Add(thread == Own
                    ? new(thread, [null, null], "compare it with the axle that the maker sells; 20 mm axles mostly are such")
                    : new(thread, [ThreadCrests.Of(thread.Diameter), (five, five)], "a thread gauge", thread.Diameter));
            }

            return new(
                [new("outside", "caliper over the thread"), new("five turns", "caliper from crest to crest over five turns; a thread gauge is surer")],
                rows.ToImmutable(),
                t => t.FitKey);
        }
    }
}
