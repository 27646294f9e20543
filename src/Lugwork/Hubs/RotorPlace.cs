using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>Where a hub carries its rotor, seen from the middle of the frame or fork. Closed set, identity equality.</summary>
/// <remarks>This separates hubs of one width: a 20x110 hub of before Boost and one of Boost stand 5 mm apart at the rotor.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<RotorPlace>))]
[TypeConverter(typeof(InterfaceTypeConverter<RotorPlace>))]
public sealed class RotorPlace : Standard<RotorPlace>, IInterfaceValue<RotorPlace>
{
    private readonly int? _out;

    private RotorPlace(int code, string key, string name, Source source, int? micrometresOut = null, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _out = micrometresOut;
    }

    /// <summary>The hub has no seat for a rotor.</summary>
    public static RotorPlace None { get; } = new(1, "none", "no rotor", Sources.WheelAdvice);

    /// <summary>Front, 100 mm: what other front hubs are compared with.</summary>
    public static RotorPlace Front100 { get; } = new(2, "front-100", "front, as on 100 mm hubs", Sources.AxleGuide, 0);

    /// <summary>Front Boost: 5 mm further out than on 100 mm hubs.</summary>
    public static RotorPlace FrontBoost { get; } = new(3, "front-boost", "front, Boost", Sources.Axle20Article, 5_000);

    /// <summary>20x110 of before Boost: 5 mm further in than front Boost.</summary>
    public static RotorPlace FrontPreBoost { get; } = new(4, "front-pre-boost", "front, 20x110 of before Boost", Sources.Axle20Article);

    /// <summary>Front road Boost: not promised to stand where the off-road one does.</summary>
    public static RotorPlace FrontRoadBoost { get; } = new(5, "front-road-boost", "front, road Boost", Sources.WheelBuilderAxles);

    /// <summary>Fat front hub with the rotor where a front fork has its caliper.</summary>
    public static RotorPlace FatFrontType { get; } = new(6, "fat-front-type", "fat front hub, front-type rotor", Sources.Memory);

    /// <summary>Fat front hub with the rotor where a rear frame has its caliper.</summary>
    public static RotorPlace FatRearType { get; } = new(7, "fat-rear-type", "fat front hub, rear-type rotor", Sources.Memory);

    /// <summary>The maker of the fork says where.</summary>
    public static RotorPlace Own { get; } = new(8, "own", "maker-own", Sources.Memory);

    /// <summary>Rear, 135 and 142 mm: what other rear hubs are compared with.</summary>
    public static RotorPlace Rear135 { get; } = new(9, "rear-135", "rear, as on 135 and 142 mm hubs", Sources.Boost148Explained, 0);

    /// <summary>Rear, 141 and 148 mm: 3 mm further out.</summary>
    public static RotorPlace Rear148 { get; } = new(10, "rear-148", "rear, as on 141 and 148 mm hubs", Sources.SixMillimetre, 3_000);

    /// <summary>Rear road Boost: not promised to stand where the off-road one does.</summary>
    public static RotorPlace RearRoadBoost { get; } = new(11, "rear-road-boost", "rear, road Boost", Sources.WheelBuilderAxles);

    /// <summary>Rear, 150 and 157 mm: 7.5 mm further out, by the sum of the widths.</summary>
    public static RotorPlace Rear150 { get; } = new(12, "rear-150", "rear, as on 150 and 157 mm hubs", Sources.Derived, 7_500);

    /// <summary>Rear end that is offset as a whole: the rotor moves with it.</summary>
    public static RotorPlace RearOffset { get; } = new(13, "rear-offset", "rear, moved with an offset rear end", Sources.FatRearEnds);

    /// <summary>Every one.</summary>
    public static ImmutableArray<RotorPlace> All { get; } =
    [
        None, Front100, FrontBoost, FrontPreBoost, FrontRoadBoost, FatFrontType, FatRearType, Own,
        Rear135, Rear148, RearRoadBoost, Rear150, RearOffset,
    ];

    /// <inheritdoc/>
    public static string Called => "rotor place";

    /// <summary>How much further out than on a 100 mm front or a 135 mm rear hub; null where no source says.</summary>
    public Length? FromDatum => _out is { } micrometres ? Length.FromMillimeters(micrometres / 1000d) : null;

    /// <inheritdoc/>
    public static RotorPlace OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<RotorPlace> Read(ReadOnlySpan<char> text) => ByName(text);
}
