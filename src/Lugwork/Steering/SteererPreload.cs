using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Steering;

/// <summary>What the top cap of a threadless headset pulls on. It sets the bearings and holds nothing afterwards. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<SteererPreload>))]
[TypeConverter(typeof(InterfaceTypeConverter<SteererPreload>))]
public sealed class SteererPreload : Standard<SteererPreload>, IInterfaceValue<SteererPreload>
{
    private SteererPreload(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Spring nut that bites into the wall: metal steerers only.</summary>
    public static SteererPreload StarNut { get; } = new(1, "star-nut", "star nut", Sources.ForkCutting, "star-fangled nut", "star nut insert");

    /// <summary>Plug that is spread inside the steerer and comes out again.</summary>
    public static SteererPreload Expander { get; } = new(2, "expander", "expander plug", Sources.ForkCutting, "plug", "compression plug", "expanding plug");

    /// <summary>Every one.</summary>
    public static ImmutableArray<SteererPreload> All { get; } = [StarNut, Expander];

    /// <inheritdoc/>
    public static string Called => "preload of the headset";

    /// <inheritdoc/>
    public static SteererPreload OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<SteererPreload> Read(ReadOnlySpan<char> text) => ByName(text);
}
