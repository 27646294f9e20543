using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Suspension;

/// <summary>How many crowns hold a suspension fork's stanchions. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<CrownType>))]
[TypeConverter(typeof(InterfaceTypeConverter<CrownType>))]
public sealed class CrownType : Standard<CrownType>, IInterfaceValue<CrownType>
{
    private CrownType(int code, string key, string name, params ImmutableArray<string> names)
        : base(code, key, name, Sources.CommonPractice, names)
    {
    }

    /// <summary>One crown, below the head tube.</summary>
    public static CrownType Single { get; } = new(1, "single", "single crown", "one crown");

    /// <summary>Two crowns, below and above the head tube: only for frames whose maker allows it.</summary>
    public static CrownType Dual { get; } = new(2, "dual", "dual crown", "double crown", "two crowns", "double clamp", "triple clamp", "triple crown");

    /// <summary>Every one.</summary>
    public static ImmutableArray<CrownType> All { get; } = [Single, Dual];

    /// <inheritdoc/>
    public static string Called => "crown type";

    /// <inheritdoc/>
    public static CrownType OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<CrownType> Read(ReadOnlySpan<char> text) => ByName(text);
}
