using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Hubs;

/// <summary>What keeps a wheel in open fork ends when its skewer comes loose. "none" means the same as missing. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<RetentionLips>))]
[TypeConverter(typeof(InterfaceTypeConverter<RetentionLips>))]
public sealed class RetentionLips : Standard<RetentionLips>, IInterfaceValue<RetentionLips>
{
    private RetentionLips(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>The lips are as the maker left them.</summary>
    public static RetentionLips Kept { get; } = new(1, "kept", "retention lips in place", Sources.OpenEndsGlossary, "lips", "present");

    /// <summary>The lips were filed off, or the ends never had any.</summary>
    public static RetentionLips Missing { get; } = new(2, "missing", "no retention lips", Sources.OpenEndsGlossary, "filed off", "no lips");

    /// <summary>Every one.</summary>
    public static ImmutableArray<RetentionLips> All { get; } = [Kept, Missing];

    /// <inheritdoc/>
    public static string Called => "retention lips";

    /// <inheritdoc/>
    public static RetentionLips OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<RetentionLips> Read(ReadOnlySpan<char> text) => ByName(text);
}
