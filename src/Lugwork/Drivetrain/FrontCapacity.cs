using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>Usual capacity of a front derailleur: teeth of the largest ring less those of the smallest. Closed set, identity equality.</summary>
/// <remarks>What is usual for a class, no limit of fit: the derailleur's own figure decides.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<FrontCapacity>))]
[TypeConverter(typeof(InterfaceTypeConverter<FrontCapacity>))]
public sealed class FrontCapacity : Standard<FrontCapacity>, IInterfaceValue<FrontCapacity>
{
    private FrontCapacity(int code, string key, string name, int teeth, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Teeth = teeth;
    }

    /// <summary>Two rings, 14 teeth.</summary>
    public static FrontCapacity Double { get; } = new(1, "double-14", "double, 14 teeth", 14, Sources.DerailleurCapacity, "double", "14", "14T", "14 teeth");

    /// <summary>Two road rings, 16 teeth; from memory.</summary>
    public static FrontCapacity RoadDouble { get; } = new(2, "road-double-16", "road double, 16 teeth", 16, Sources.Memory, "road double", "16", "16T", "16 teeth");

    /// <summary>Three rings, 22 teeth.</summary>
    public static FrontCapacity Triple { get; } = new(3, "triple-22", "triple, 22 teeth", 22, Sources.DerailleurCapacity, "triple", "22", "22T", "22 teeth");

    /// <summary>Every one.</summary>
    public static ImmutableArray<FrontCapacity> All { get; } = [Double, RoadDouble, Triple];

    /// <inheritdoc/>
    public static string Called => "front-derailleur capacity";

    /// <summary>Teeth between the largest and the smallest ring.</summary>
    public int Teeth { get; }

    /// <inheritdoc/>
    public static FrontCapacity OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<FrontCapacity> Read(ReadOnlySpan<char> text) => ByName(text);
}
