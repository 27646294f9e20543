using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>Cross section of a tubeless rim as published: wall, well and hump. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<RimProfile>))]
[TypeConverter(typeof(InterfaceTypeConverter<RimProfile>))]
public sealed class RimProfile : Standard<RimProfile>, IInterfaceValue<RimProfile>
{
    private readonly int _inner;
    private readonly int _wall;
    private readonly int _wallTolerance;
    private readonly int _wellLeast;
    private readonly int _wellMost;
    private readonly int _wellWidth;
    private readonly int _hump;

    private RimProfile(int code, string key, string name, Source source, int inner, int wall, int wallTolerance, int wellLeast, int wellMost, int wellWidth, int hump)
        : base(code, key, name, source)
    {
        _inner = inner;
        _wall = wall;
        _wallTolerance = wallTolerance;
        _wellLeast = wellLeast;
        _wellMost = wellMost;
        _wellWidth = wellWidth;
        _hump = hump;
    }

    /// <summary>622 mm rims by the 2019 handbook as a tyre maker quotes it; inner width at least 17 mm, best 19 to 21.</summary>
    public static RimProfile Tubeless2019 { get; } = new(1, "tubeless-2019", "tubeless 622, 2019", Sources.OptimalRim, 17, 5_500, 500, 2_600, 3_400, 7_000, 0);

    /// <summary>One maker's hooked road tubeless rim of 2017; its well is printed as a diameter and read here as a depth.</summary>
    public static RimProfile RoadTubeless2017 { get; } = new(2, "road-tubeless-2017", "road tubeless, 2017", Sources.RoadTubeless2017, 17, 5_200, 0, 4_500, 4_500, 0, 250);

    /// <summary>Both.</summary>
    public static ImmutableArray<RimProfile> All { get; } = [Tubeless2019, RoadTubeless2017];

    /// <inheritdoc/>
    public static string Called => "rim profile";

    /// <summary>Least inner width, 17 mm in both.</summary>
    public Length LeastInnerWidth => Length.FromMillimeters(_inner);

    /// <summary>Height of the wall over the bead seat.</summary>
    public Length WallHeight => Length.FromMillimeters(_wall / 1000d);

    /// <summary>How far the wall may be out to either side; null where the source does not say.</summary>
    public Length? WallTolerance => _wallTolerance == 0 ? null : Length.FromMillimeters(_wallTolerance / 1000d);

    /// <summary>Between what the well is deep.</summary>
    public LengthRange WellDepth => new(_wellLeast / 1000d, _wellMost / 1000d);

    /// <summary>Least width of the well; null where the source does not say.</summary>
    public Length? LeastWellWidth => _wellWidth == 0 ? null : Length.FromMillimeters(_wellWidth / 1000d);

    /// <summary>Height of the hump inside the bead seat; null where the source does not say.</summary>
    public Length? Hump => _hump == 0 ? null : Length.FromMillimeters(_hump / 1000d);

    /// <inheritdoc/>
    public static RimProfile OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<RimProfile> Read(ReadOnlySpan<char> text) => ByName(text);
}
