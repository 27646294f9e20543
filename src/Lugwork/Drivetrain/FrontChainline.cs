using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Chainline of a crankset by its use: from the middle plane of the frame to one ring, to the middle between two, or to the middle one of three. Closed set, identity equality.</summary>
/// <remarks>Pages differ: one prints 52 for the 14-speed hub gear, and 56.5 is remembered beside the printed 56 of wide 157 rear ends. A figure alone settles no fit: rings within 3 mm of the middle of the cassette work best, and road rings with wider rear ends stand 2.5 mm inside of it.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<FrontChainline>))]
[TypeConverter(typeof(InterfaceTypeConverter<FrontChainline>))]
public sealed class FrontChainline : Standard<FrontChainline>, IInterfaceValue<FrontChainline>
{
    private FrontChainline(int code, string key, string name, (int Least, int Most) rings, (decimal Least, decimal Most) millimetres, ImmutableArray<int> rear, Source source)
        : base(code, key, name, source)
    {
        LeastRings = rings.Least;
        MostRings = rings.Most;
        Range = millimetres;
        RearEndsMillimetres = rear;
    }

    /// <summary>Every chainline, by use from road to fat, in the order of the table.</summary>
    public static ImmutableArray<FrontChainline> All { get; } =
    [
        new(1, "track", "track, fixed and older single-speed", (1, 1), (40.5m, 42m), [120], Sources.GearHubChainline),
        new(2, "road-2x", "road double, 8- to 11-speed", (2, 2), (43.5m, 43.5m), [130, 135, 142], Sources.ChainlineTable),
        new(3, "road-2x-44.5", "road double, 12-speed, 44.5 mm", (2, 2), (44.5m, 44.5m), [142], Sources.ChainlineNotes),
        new(4, "road-2x-44.7", "road double, 43.5 moved out by 1.2 mm", (2, 2), (44.7m, 44.7m), [130, 142], Sources.Derived),
        new(5, "road-45", "road double or single, 12-speed, 45 mm", (1, 2), (45m, 45m), [142], Sources.CrankTable),
        new(6, "road-3x", "road triple, middle ring", (3, 3), (45m, 45m), [130], Sources.ChainlineTable),
        new(7, "gravel-1x13", "gravel single, 13-speed", (1, 1), (45.5m, 45.5m), [142], Sources.CrankTable),
        new(8, "offset-axle", "aftermarket offset axle", (1, 2), (46m, 46m), [142], Sources.OffsetAxle),
        new(9, "gravel-2x", "gravel double, 46.9 mm", (2, 2), (46.9m, 46.9m), [142], Sources.CrankTable),
        new(10, "gravel-2x-wide", "gravel double, wide, 47.5 mm", (2, 2), (47.5m, 47.5m), [142], Sources.CrankTable),
        new(11, "off-road-3x-slim", "off-road triple, slim seat tube, middle ring", (3, 3), (47.5m, 47.5m), [135], Sources.ChainlineTable),
        new(12, "single-47.5", "single-speed hub, 47.5 mm", (1, 1), (47.5m, 47.5m), [130, 135], Sources.GearHubChainline),
        new(13, "off-road", "off-road in general", (1, 3), (49m, 51m), [135, 142], Sources.ChainlineHelp),
        new(14, "off-road-1x-49", "off-road single, 49 mm", (1, 1), (49m, 49.25m), [135, 142], Sources.Chainline55),
        new(15, "gravel-1x-49.7", "gravel single, 49.7 mm", (1, 1), (49.7m, 49.7m), [142], Sources.CrankTable),
        new(16, "off-road-3x", "off-road triple, oversize seat tube, middle ring", (3, 3), (50m, 50m), [135], Sources.ChainlineTable),
        new(17, "off-road-1x-50.25", "off-road single, 50.25 mm", (1, 1), (50.25m, 50.25m), [135, 142], Sources.ChainlineRange),
        new(18, "off-road-1x-52", "off-road single, Boost, 52 mm", (1, 1), (51m, 53m), [141, 148], Sources.Chainline55),
        new(19, "single-52", "single-speed in the outer ring's place, 52 mm", (1, 1), (52m, 52m), [135], Sources.GearHubChainline),
        new(20, "hub-gear-54", "14-speed hub gear, 54 mm", (1, 1), (54m, 54m), [135], Sources.GearHubChainline),
        new(21, "off-road-1x-55", "off-road single, wide or hangerless, 55 mm", (1, 1), (55m, 55.25m), [148], Sources.Chainline55),
        new(22, "off-road-1x-56", "off-road single, 157 wide-flange, 56 mm", (1, 1), (56m, 56m), [157], Sources.SuperBoostPress),
        new(23, "fat-offset-135", "fat, 100 mm shell, offset 135", (1, 3), (64m, 65m), [135], Sources.FatHubSpacing),
        new(24, "fat-170", "fat, 100 mm shell, 170 or 177", (1, 1), (66.5m, 66.5m), [170, 177], Sources.Memory),
        new(25, "fat-190", "fat, 120 mm shell, 190 or 197", (1, 1), (76m, 76m), [190, 197], Sources.Memory),
        new(26, "road-2x-48.8", "road double, older, wider, 48.8 mm", (2, 2), (48.8m, 48.8m), [135], Sources.Memory),
        new(27, "hub-gear-58", "14-speed hub gear with 13 teeth, 58 mm", (1, 1), (58m, 58m), [135], Sources.GearHubChainline),
    ];

    internal static FrontChainline OffRoad55 => All[20];

    internal static FrontChainline FatOffset => All[22];

    /// <inheritdoc/>
    public static string Called => "front chainline";

    /// <summary>How many rings such a crankset has at least.</summary>
    public int LeastRings { get; }

    /// <summary>How many rings such a crankset has at most.</summary>
    public int MostRings { get; }

    /// <summary>Smallest printed chainline.</summary>
    public Length Least => Length.FromMillimeters((double)Range.Least);

    /// <summary>Largest printed chainline; equal to the smallest where one figure is printed.</summary>
    public Length Most => Length.FromMillimeters((double)Range.Most);

    /// <summary>Widths of rear hubs with which it is sold, whole millimetres over the locknuts.</summary>
    public ImmutableArray<int> RearEndsMillimetres { get; }

    /// <summary>The page whose figures a derived chainline is made of; null where the chainline itself is printed or remembered.</summary>
    public Source? DerivedFrom => Source == Sources.Derived ? Sources.ChainlineRoadDisc : null;

    internal (decimal Least, decimal Most) Range { get; }

    /// <inheritdoc/>
    public static FrontChainline OfFitCode(long code) => ByCode(code);

    /// <summary>What a measured chainline can be, likeliest first; the uses of one figure are told apart by rings and rear end.</summary>
    /// <param name="chainline">From the middle of the seat tube to the ring, half of the tube added; with two rings to the middle between them, with three to the middle one.</param>
    /// <param name="rings">Number of rings.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of rings is below one.</exception>
    public static Identification<FrontChainline> Identify(MeasuredLength chainline, int? rings = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rings ?? 1, 1, nameof(rings));
        ImmutableArray<DimensionRow<FrontChainline>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<FrontChainline>>();
        foreach (FrontChainline row in All)
        {
            if (rings is not { } count || (count >= row.LeastRings && count <= row.MostRings))
            {
                rows.Add(new(row, [row.Range], $"{(row.LeastRings == row.MostRings ? $"{row.LeastRings}" : $"{row.LeastRings} to {row.MostRings}")} rings, with {string.Join(", ", row.RearEndsMillimetres)} mm behind"));
            }
        }

        return new IdentificationTable<FrontChainline>([new("chainline", "ruler from the middle of the seat tube")], rows.ToImmutable(), c => c.FitKey).Identify(chainline);
    }

    /// <summary>Reads a key or a name, or a figure in millimetres; every use with that figure is a reading.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<FrontChainline> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (Find(text) is not null || !cursor.TryNumber(out long nanometres))
        {
            return ByName(text);
        }

        cursor.SkipMillimetres();
        decimal millimetres = new Nanometres(nanometres).Millimetres;
        ImmutableArray<FrontChainline> found = cursor.AtEnd ? [.. All.Where(c => millimetres >= c.Range.Least && millimetres <= c.Range.Most)] : [];
        return found.Length switch
        {
            0 => ByName(text),
            1 => TextReading<FrontChainline>.Of(found[0]),
            _ => TextReading<FrontChainline>.Several(found, "several uses have this chainline: say road, gravel, off-road or hub gear, and how many rings"),
        };
    }
}
