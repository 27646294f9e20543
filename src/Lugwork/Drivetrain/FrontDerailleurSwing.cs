using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>Which way a front derailleur is built about its clamp or bolts. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<FrontDerailleurSwing>))]
[TypeConverter(typeof(InterfaceTypeConverter<FrontDerailleurSwing>))]
public sealed class FrontDerailleurSwing : Standard<FrontDerailleurSwing>, IInterfaceValue<FrontDerailleurSwing>
{
    private FrontDerailleurSwing(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>What the trade calls top swing.</summary>
    public static FrontDerailleurSwing Top { get; } = new(1, "top-swing", "top swing", Sources.FrontDerailleurTypes, "top", "top swing derailleur");

    /// <summary>What the trade calls bottom swing.</summary>
    public static FrontDerailleurSwing Bottom { get; } = new(2, "bottom-swing", "bottom swing", Sources.FrontDerailleurTypes, "bottom", "down swing", "bottom swing derailleur");

    /// <summary>What the trade calls side swing.</summary>
    public static FrontDerailleurSwing Side { get; } = new(3, "side-swing", "side swing", Sources.FrontDerailleurTypes, "side");

    /// <summary>Every one.</summary>
    public static ImmutableArray<FrontDerailleurSwing> All { get; } = [Top, Bottom, Side];

    /// <inheritdoc/>
    public static string Called => "front-derailleur swing";

    /// <inheritdoc/>
    public static FrontDerailleurSwing OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<FrontDerailleurSwing> Read(ReadOnlySpan<char> text) => ByName(text);
}
