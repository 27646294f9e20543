using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Steering;

/// <summary>How a headset's bearing sits in the head tube. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<HeadsetStyle>))]
[TypeConverter(typeof(InterfaceTypeConverter<HeadsetStyle>))]
public sealed class HeadsetStyle : Standard<HeadsetStyle>, IInterfaceValue<HeadsetStyle>
{
    private HeadsetStyle(int code, string key, string name)
        : base(code, key, name, Sources.HeadsetCodeNote)
    {
    }

    /// <summary>EC: a pressed cup with the bearing outside the head tube.</summary>
    public static HeadsetStyle ExternalCup { get; } = new(1, "EC", "external cup");

    /// <summary>ZS: a pressed cup with the bearing inside the head tube, flush with its end.</summary>
    public static HeadsetStyle ZeroStack { get; } = new(2, "ZS", "zero stack");

    /// <summary>IS: no cup, the bearing drops into a seat in the frame.</summary>
    public static HeadsetStyle Integrated { get; } = new(3, "IS", "integrated");

    /// <summary>Every style.</summary>
    public static ImmutableArray<HeadsetStyle> All { get; } = [ExternalCup, ZeroStack, Integrated];

    /// <inheritdoc/>
    public static string Called => "headset style";

    /// <inheritdoc/>
    public static HeadsetStyle OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<HeadsetStyle> Read(ReadOnlySpan<char> text) => ByName(text);
}
