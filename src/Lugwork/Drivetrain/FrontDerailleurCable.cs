using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>From where the cable of a front derailleur comes. The frame's cable routing decides. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<FrontDerailleurCable>))]
[TypeConverter(typeof(InterfaceTypeConverter<FrontDerailleurCable>))]
public sealed class FrontDerailleurCable : Standard<FrontDerailleurCable>, IInterfaceValue<FrontDerailleurCable>
{
    private FrontDerailleurCable(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>From above.</summary>
    public static FrontDerailleurCable Top { get; } = new(1, "top", "top pull", Sources.FrontDerailleurTypes, "top-pull");

    /// <summary>From below.</summary>
    public static FrontDerailleurCable Bottom { get; } = new(2, "bottom", "bottom pull", Sources.FrontDerailleurTypes, "bottom-pull", "down pull");

    /// <summary>From above or below.</summary>
    public static FrontDerailleurCable Dual { get; } = new(3, "dual", "dual pull", Sources.FrontDerailleurTypes, "dual-pull", "top or bottom");

    /// <summary>Every one.</summary>
    public static ImmutableArray<FrontDerailleurCable> All { get; } = [Top, Bottom, Dual];

    /// <inheritdoc/>
    public static string Called => "front-derailleur pull";

    /// <inheritdoc/>
    public static FrontDerailleurCable OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<FrontDerailleurCable> Read(ReadOnlySpan<char> text) => ByName(text);
}
