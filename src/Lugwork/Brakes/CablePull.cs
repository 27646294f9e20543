using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Brakes;

/// <summary>How much cable a lever pulls, and how much a brake wants. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<CablePull>))]
[TypeConverter(typeof(InterfaceTypeConverter<CablePull>))]
public sealed class CablePull : Standard<CablePull>, IInterfaceValue<CablePull>
{
    private CablePull(int code, string key, string name, decimal? times, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        TimesShort = times;
    }

    /// <summary>Road calipers, cantilevers, U-brakes, mini direct-pull, road cable discs.</summary>
    public static CablePull Short { get; } = new(1, "short", "short pull", 1m, Sources.LeverPull, "standard pull", "standard");

    /// <summary>Direct-pull brakes and most off-road cable discs: about twice the cable of short pull at half the force.</summary>
    public static CablePull Long { get; } = new(2, "long", "long pull", 2m, Sources.DirectPullArticle, "linear pull");

    /// <summary>The newest road levers with cables under the tape: slightly more than short, and not long.</summary>
    public static CablePull NewerRoad { get; } = new(3, "newer-road", "newer road pull", null, Sources.Memory, "super short", "super short pull");

    /// <summary>Every class.</summary>
    public static ImmutableArray<CablePull> All { get; } = [Short, Long, NewerRoad];

    /// <inheritdoc/>
    public static string Called => "cable pull";

    /// <summary>Ratio of the cable pulled to short pull: 1, about 2; null where no figure is known.</summary>
    public decimal? TimesShort { get; }

    /// <inheritdoc/>
    public static CablePull OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<CablePull> Read(ReadOnlySpan<char> text) => ByName(text);
}
