using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Cockpit;

/// <summary>What a frame carries along its tubes for cables and hoses; one that carries nothing says "none". Closed set, identity equality.</summary>
/// <remarks>Common practice, no source. It says nothing of the headset, where <see cref="Steering.CableWay"/> does, and nothing of the fork.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<CableGuide>))]
[TypeConverter(typeof(InterfaceTypeConverter<CableGuide>))]
public sealed class CableGuide : Standard<CableGuide>, IInterfaceValue<CableGuide>
{
    private CableGuide(int code, string key, string name, params ImmutableArray<string> names)
        : base(code, key, name, Sources.CommonPractice, names)
    {
    }

    /// <summary>Stops: housing ends in them and the bare cable runs between; a hose or a housing in one piece does not stay in them by itself.</summary>
    public static CableGuide Stops { get; } = new(1, "stops", "cable stops", "stop", "housing stops", "cable stop");

    /// <summary>Guides that hold a housing in one piece or a hose all along.</summary>
    public static CableGuide FullLength { get; } = new(2, "full-length", "guides for full-length housing", "full-length guides", "guides for full-length housing and hoses", "hose guides");

    /// <summary>Threaded eyes or seats for clips, which are bought.</summary>
    public static CableGuide Clips { get; } = new(3, "clips", "seats for clips", "clip", "bosses for clips", "clip-on guides");

    /// <summary>The frame leads them inside its tubes.</summary>
    public static CableGuide Inside { get; } = new(4, "inside", "inside the tubes", "internal", "inside the frame", "through the frame");

    /// <summary>Every one.</summary>
    public static ImmutableArray<CableGuide> All { get; } = [Stops, FullLength, Clips, Inside];

    /// <inheritdoc/>
    public static string Called => "cable guides of the frame";

    /// <inheritdoc/>
    public static CableGuide OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<CableGuide> Read(ReadOnlySpan<char> text) => ByName(text);
}
