using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>What the maker of one part says of another in its list of what goes together. Closed set, identity equality.</summary>
/// <remarks>"None" means that the maker says nothing of the pair. A maker's word never makes milder what published figures refuse.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<MakersWord>))]
[TypeConverter(typeof(InterfaceTypeConverter<MakersWord>))]
public sealed class MakersWord : Standard<MakersWord>, IInterfaceValue<MakersWord>
{
    private MakersWord(int code, string key, string name, params ImmutableArray<string> names)
        : base(code, key, name, Sources.CommonPractice, names)
    {
    }

    /// <summary>The maker's list names the two together.</summary>
    public static MakersWord Allowed { get; } = new(1, "allowed", "allowed by the maker", "listed", "named together");

    /// <summary>The maker rules the pair out.</summary>
    public static MakersWord Refused { get; } = new(2, "refused", "ruled out by the maker", "ruled out", "not allowed");

    /// <summary>Every one.</summary>
    public static ImmutableArray<MakersWord> All { get; } = [Allowed, Refused];

    /// <inheritdoc/>
    public static string Called => "maker's word";

    /// <inheritdoc/>
    public static MakersWord OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<MakersWord> Read(ReadOnlySpan<char> text) => ByName(text);
}
