using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>What a chain is made for. Closed set, identity equality.</summary>
public sealed class ChainSize : Standard<ChainSize>, IInterfaceValue<ChainSize>
{
    private ChainSize(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>One speed, 3.175 mm inside.</summary>
    public static ChainSize Eighth { get; } = new(1, "1/8", "1/8 in chain", Sources.ChainWidths, "1/8 in", "single 1/8");

    /// <summary>2.38 mm inside; about 7.0 to 7.8 mm outside.</summary>
    public static ChainSize To8 { get; } = new(2, "5-8", "chain for 5 to 8 speeds (3/32 in)", Sources.ChainWidths, "3/32", "3/32 in", "8-speed", "7-speed", "6-speed", "5-speed", "8", "7", "6", "5");

    /// <summary>9 speeds, 2.18 mm inside.</summary>
    public static ChainSize For9 { get; } = new(3, "9", "9-speed chain", Sources.ChainWidths, "9-speed", "9 speed", "9s");

    /// <summary>10 speeds, 2.18 mm inside.</summary>
    public static ChainSize For10 { get; } = new(4, "10", "10-speed chain", Sources.ChainWidths, "10-speed", "10 speed", "10s");

    /// <summary>11 speeds, 2.18 mm inside.</summary>
    public static ChainSize For11 { get; } = new(5, "11", "11-speed chain", Sources.ChainWidths, "11-speed", "11 speed", "11s");

    /// <summary>12 speeds, 2.18 mm inside.</summary>
    public static ChainSize For12 { get; } = new(6, "12", "12-speed chain", Sources.ChainWidths, "12-speed", "12 speed", "12s");

    /// <summary>13 speeds, 2.18 mm inside.</summary>
    public static ChainSize For13 { get; } = new(7, "13", "13-speed chain", Sources.ChainWidths, "13-speed", "13 speed", "13s");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<ChainSize> All { get; } =
    [
        Eighth, To8, For9, For10, For11, For12, For13,
    ];

    /// <inheritdoc/>
    public static string Called => "chain size";

    /// <summary>The chains whose printed width over the rivets is within the error of a measured one, 0.1 mm of wear and maker's difference included.</summary>
    /// <param name="millimetres">What was measured over the rivets, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<ChainSize> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(c => c != Eighth && Over(c) is var (least, most) && millimetres + error >= least - 0.1m && millimetres - error <= most + 0.1m)];

    // Bicycle chain explained (width tables), the printed widths over the rivets; the wide one is known from memory alone and is never read from a caliper.
    private static (decimal Least, decimal Most) Over(ChainSize chain) =>
        chain == To8 ? (7.0m, 7.8m) : chain == For9 ? (6.5m, 6.7m) : chain == For10 ? (5.84m, 6.2m) : chain == For11 ? (5.46m, 5.74m) : chain == For12 ? (5.15m, 5.25m) : (4.9m, 4.9m);

    /// <inheritdoc/>
    public static ChainSize OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static Reading<ChainSize> Read(ReadOnlySpan<char> text) => ByName(SizedText.WithoutInchMark(text));
}
