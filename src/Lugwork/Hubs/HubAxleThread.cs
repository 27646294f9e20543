using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>Thread of a hollow or solid hub axle, on which cones, locknuts and nuts turn. Closed set, identity equality.</summary>
/// <remarks>24, 26 turns an inch and 1 mm look alike and cross-thread: a gauge tells them, or a caliper over ten turns, never over one.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<HubAxleThread>))]
[TypeConverter(typeof(InterfaceTypeConverter<HubAxleThread>))]
public sealed class HubAxleThread : Standard<HubAxleThread>, IInterfaceValue<HubAxleThread>
{
    private readonly int _diameter;
    private readonly int _turnsPerInch;

    private HubAxleThread(int code, string key, string name, Source source, int nanometresThick, int turnsPerInch, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _diameter = nanometresThick;
        _turnsPerInch = turnsPerInch;
    }

    /// <summary>Front, hollow for a skewer and solid.</summary>
    public static HubAxleThread M9 { get; } = new(1, "M9x1", "9 mm x 1.0", Sources.AxleNut, 9_000_000, 0, "9x1", "9x1.0", "M9x1.0", "M9", "9 mm");

    /// <summary>Rear, hollow for a skewer and solid; track.</summary>
    public static HubAxleThread M10 { get; } = new(2, "M10x1", "10 mm x 1.0", Sources.AxleNut, 10_000_000, 0, "10x1", "10x1.0", "M10x1.0", "M10", "10 mm");

    /// <summary>Front, solid; also some hub gears.</summary>
    public static HubAxleThread In5Over16By24 { get; } = new(3, "5/16x24", "5/16 in x 24 tpi", Sources.AxleNut, 7_937_500, 24, "5/16 x 24", "5/16 in x 24", "5/16\" x 24");

    /// <summary>Front, solid; also some hub gears.</summary>
    public static HubAxleThread In5Over16By26 { get; } = new(4, "5/16x26", "5/16 in x 26 tpi", Sources.AxleNut, 7_937_500, 26, "5/16 x 26", "5/16 in x 26", "5/16\" x 26");

    /// <summary>Rear, solid, older.</summary>
    public static HubAxleThread In3Over8By24 { get; } = new(5, "3/8x24", "3/8 in x 24 tpi", Sources.AxleNut, 9_525_000, 24, "3/8 x 24", "3/8 in x 24", "3/8\" x 24");

    /// <summary>Rear, solid: BMX and many hub gears.</summary>
    public static HubAxleThread In3Over8By26 { get; } = new(6, "3/8x26", "3/8 in x 26 tpi", Sources.AxleNut, 9_525_000, 26, "3/8 x 26", "3/8 in x 26", "3/8\" x 26");

    /// <summary>BMX freestyle, rear; the pitch is from memory.</summary>
    public static HubAxleThread M14 { get; } = new(7, "M14x1", "14 mm x 1.0", Sources.Memory, 14_000_000, 0, "14x1", "14x1.0", "M14x1.0", "M14", "14 mm");

    /// <summary>Every thread.</summary>
    public static ImmutableArray<HubAxleThread> All { get; } = [M9, M10, In5Over16By24, In5Over16By26, In3Over8By24, In3Over8By26, M14];

    /// <inheritdoc/>
    public static string Called => "hub axle thread";

    /// <summary>Nominal outside diameter.</summary>
    public Length Diameter => new Nanometres(_diameter).ToLength();

    internal override Nanometres? MainLength => new(_diameter);

    /// <summary>From turn to turn: 1 mm, or an inch over 24 or 26.</summary>
    public Length Pitch => Length.FromMillimeters((double)PitchMillimetres);

    /// <summary>Turns an inch as the trade says it; 0 for a metric thread.</summary>
    public int ThreadsPerInch => _turnsPerInch;

    /// <summary>What measured dimensions of an axle or nut can be.</summary>
    /// <param name="outside">Outside of the thread; it measures up to 0.25 mm under its name (thread tolerance, from memory).</param>
    /// <param name="tenTurns">From crest to crest over ten turns: 10.0, 10.58 or 9.77 mm.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is the default.</exception>
    public static Identification<HubAxleThread> Identify(MeasuredLength? outside = null, MeasuredLength? tenTurns = null) => ThreadsByMeasure.Rows.Identify(outside, tenTurns);

    private decimal PitchMillimetres => _turnsPerInch == 0 ? 1m : 25.4m / _turnsPerInch;

    /// <inheritdoc/>
    public static HubAxleThread OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name in any times sign; "3/8" alone, of an inch or not, is both pitches.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<HubAxleThread> Read(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        if (trimmed.Length > 40)
        {
            return TextReading<HubAxleThread>.Refused("a hub axle thread is shorter than this", 40);
        }

        string plain = trimmed.ToString().Replace('\u00D7', 'x').Replace('*', 'x').Replace(',', '.').Replace('\u2033', '"');
        string bare = InchText.Plain(plain).TrimEnd();
        return bare switch
        {
            "3/8" => TextReading<HubAxleThread>.Several([In3Over8By26, In3Over8By24], "the pitch is missing: 24 or 26 turns an inch; use a thread gauge"),
            "5/16" => TextReading<HubAxleThread>.Several([In5Over16By26, In5Over16By24], "the pitch is missing: 24 or 26 turns an inch; use a thread gauge"),
            _ => ByName(plain) is { Values.IsEmpty: false } read ? read : ByName(InchText.MetricThread(plain)),
        };
    }

    private static class ThreadsByMeasure
    {
        public static readonly IdentificationTable<HubAxleThread> Rows = Make();

        private static IdentificationTable<HubAxleThread> Make()
        {
            ImmutableArray<DimensionRow<HubAxleThread>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<HubAxleThread>>();
            foreach (HubAxleThread thread in All)
            {
                decimal thick = new Nanometres(thread._diameter).Millimetres;
                decimal ten = decimal.Round(10 * thread.PitchMillimetres, 4);
                string tells = thread._turnsPerInch == 0 ? "a metric gauge of 1 mm" : FormattableString.Invariant($"a gauge of {thread._turnsPerInch} turns an inch");
                rows.Add(new(thread, [ThreadCrests.Of(thick), (ten, ten)], tells, thick));
            }

            return new(
                [new("outside", "caliper over the thread"), new("ten turns", "caliper from crest to crest over ten turns; a thread gauge is surer")],
                rows.ToImmutable(),
                t => t.FitKey);
        }
    }
}
