using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>Thread on a hub shell for a freewheel, a fixed sprocket or its lockring. Closed set, identity equality.</summary>
public sealed class HubShellThread : Standard<HubShellThread>, IInterfaceValue<HubShellThread>
{
    private readonly int _diameter;
    private readonly int _turnsPerInch;

    private HubShellThread(int code, string key, string name, Source source, int thousandths, int turnsPerInch, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _diameter = thousandths;
        _turnsPerInch = turnsPerInch;
    }

    /// <summary>All recent freewheels and hubs: 1.375 in x 24.</summary>
    public static HubShellThread Iso { get; } = new(1, "FW-ISO", "freewheel ISO 1.375 in x 24 tpi", Sources.Freewheels, 34_925, 24, "1.375x24", "1.375 in x 24 tpi", "ISO freewheel");

    /// <summary>Older British: 1.370 in x 24.</summary>
    public static HubShellThread British { get; } = new(2, "FW-BRIT", "freewheel British 1.370 in x 24 tpi", Sources.Freewheels, 34_798, 24, "1.370x24", "1.370 in x 24 tpi", "British freewheel", "English freewheel");

    /// <summary>Older Italian: 1.378 in or 35 mm x 24.</summary>
    public static HubShellThread Italian { get; } = new(3, "FW-ITAL", "freewheel Italian 35 mm x 24 tpi", Sources.Freewheels, 35_000, 24, "1.378x24", "1.378 in x 24 tpi", "35x24", "Italian freewheel");

    /// <summary>Old French: 34.7 x 1 mm; it binds or slips on the others.</summary>
    public static HubShellThread French { get; } = new(4, "FW-FR", "freewheel French 34.7 x 1 mm", Sources.Freewheels, 34_700, 0, "34.7x1", "34.7x1.0", "French freewheel");

    /// <summary>Small BMX hubs: 30 x 1 mm.</summary>
    public static HubShellThread SmallBmx { get; } = new(5, "FW-BMX", "freewheel small BMX 30 x 1 mm", Sources.Freewheels, 30_000, 0, "30x1", "30x1.0", "BMX freewheel");

    /// <summary>Fixed sprocket on a track hub: 1.37 in x 24, shorter than for a freewheel.</summary>
    public static HubShellThread FixedSprocket { get; } = new(6, "FIX-COG", "fixed sprocket 1.37 in x 24 tpi", Sources.Memory, 34_798, 24, "fixed cog", "track cog");

    /// <summary>Lockring of a track hub: 1.29 in x 24, left-hand.</summary>
    public static HubShellThread Lockring { get; } = new(7, "FIX-LOCK", "track lockring 1.29 in x 24 tpi left-hand", Sources.Memory, 32_766, 24, "1.29x24", "1.29 in x 24 tpi LH", "track lockring");

    /// <summary>Every thread.</summary>
    public static ImmutableArray<HubShellThread> All { get; } = [Iso, British, Italian, French, SmallBmx, FixedSprocket, Lockring];

    /// <inheritdoc/>
    public static string Called => "hub shell thread";

    /// <summary>Nominal outside diameter.</summary>
    public Length Diameter => Length.FromMillimeters(_diameter / 1000d);

    /// <summary>From turn to turn: 1 mm, or an inch over 24.</summary>
    public Length Pitch => Length.FromMillimeters((double)PitchMillimetres);

    /// <summary>Turns an inch as the trade says it; 0 for a metric thread.</summary>
    public int TurnsPerInch => _turnsPerInch;

    /// <summary>Only the lockring turns the other way.</summary>
    public bool IsLeftHand => this == Lockring;

    /// <summary>Old British and Italian freewheels are said to interchange with ISO ones; no source says it of another pair.</summary>
    /// <param name="other">Another thread.</param>
    /// <returns>Whether one is said to go on the other; a thread always goes on itself.</returns>
    public bool Interchanges(HubShellThread other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return this == other || (this == Iso && (other == British || other == Italian)) || (other == Iso && (this == British || this == Italian));
    }

    /// <summary>What measured dimensions of a hub shell's thread can be.</summary>
    /// <param name="outside">Outside of the thread; the kinds lie within 0.3 mm.</param>
    /// <param name="tenTurns">From crest to crest over ten turns: 10.58 or 10.0 mm.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is the default.</exception>
    public static Identification<HubShellThread> Identify(MeasuredLength? outside = null, MeasuredLength? tenTurns = null) => ThreadsByMeasure.Rows.Identify(outside, tenTurns);

    private decimal PitchMillimetres => _turnsPerInch == 0 ? 1m : 25.4m / _turnsPerInch;

    /// <inheritdoc/>
    public static HubShellThread OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name in any times sign; "1.37 x 24" is the old British freewheel and the fixed sprocket.</summary>
    /// <param name="text">Any text.</param>
    public static Reading<HubShellThread> Read(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        if (trimmed.Length > 60)
        {
            return Reading<HubShellThread>.Refused("a hub shell thread is shorter than this", 60);
        }

        string plain = trimmed.ToString().Replace('\u00D7', 'x').Replace('*', 'x').Replace(',', '.');
        return plain.Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant() is "1.37X24" or "1.370X24" or "1.37X24TPI" or "1.370X24TPI"
            ? Reading<HubShellThread>.Several([British, FixedSprocket], "a freewheel and a fixed sprocket share this thread form; the sprocket's is shorter")
            : ByName(plain);
    }

    private static class ThreadsByMeasure
    {
        public static readonly IdentificationTable<HubShellThread> Rows = Make();

        private static IdentificationTable<HubShellThread> Make()
        {
            ImmutableArray<DimensionRow<HubShellThread>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<HubShellThread>>();
            foreach (HubShellThread thread in All)
            {
                decimal thick = thread._diameter / 1000m;
                decimal ten = decimal.Round(10 * thread.PitchMillimetres, 4);
                rows.Add(new(thread, [(thick, thick), (ten, ten)], Tells(thread)));
            }

            return new(
                [new("outside", "caliper over the thread"), new("ten turns", "caliper from crest to crest over ten turns, or a thread gauge")],
                rows.ToImmutable(),
                t => t.FitKey);
        }

        private static string Tells(HubShellThread thread) =>
            thread == French ? "a gauge of 1 mm runs true; never mix it with the others"
            : thread == FixedSprocket ? "shorter, with a smaller left-hand thread for a lockring beside it"
            : thread == Lockring ? "left-hand, beside the thread for the sprocket"
            : thread == SmallBmx ? "for the smallest freewheels" : "old British and Italian freewheels are said to interchange with ISO ones";
    }
}
