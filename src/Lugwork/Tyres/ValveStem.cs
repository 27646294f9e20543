using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>Valve of a tube or of a tubeless rim. Closed set, identity equality.</summary>
/// <remarks>"SV" is printed for Sclaverand, which is Presta, and for Schrader valve: it is never read as one of them.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ValveStem>))]
[TypeConverter(typeof(InterfaceTypeConverter<ValveStem>))]
public sealed class ValveStem : Standard<ValveStem>, IInterfaceValue<ValveStem>
{
    private readonly int _thick;

    private ValveStem(int code, string key, string name, int thick, params ImmutableArray<string> names)
        : base(code, key, name, Sources.ValveArticle, names)
    {
        _thick = thick;
    }

    /// <summary>Presta: 6 mm.</summary>
    public static ValveStem Presta { get; } = new(1, "presta", "Presta", 6, "Sclaverand", "French", "FV", "PV");

    /// <summary>Schrader: 8 mm.</summary>
    public static ValveStem Schrader { get; } = new(2, "schrader", "Schrader", 8, "American", "car", "auto", "AV");

    /// <summary>Dunlop: in the hole of Schrader.</summary>
    public static ValveStem Dunlop { get; } = new(3, "dunlop", "Dunlop", 0, "Woods", "English", "DV", "Blitz", "Dunlop/Woods", "Woods/Dunlop");

    /// <summary>Every valve.</summary>
    public static ImmutableArray<ValveStem> All { get; } = [Presta, Schrader, Dunlop];

    /// <inheritdoc/>
    public static string Called => "valve";

    /// <summary>Thickness of the stem; null for Dunlop, of which the source gives the hole only.</summary>
    public Length? Diameter => _thick == 0 ? null : Length.FromMillimeters(_thick);

    /// <summary>The hole that it is made for.</summary>
    public ValveHole Hole => this == Presta ? ValveHole.Narrow : ValveHole.Wide;

    /// <inheritdoc/>
    public static ValveStem OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<ValveStem> Read(ReadOnlySpan<char> text) =>
        Same(Trim(text), "SV") ? TextReading<ValveStem>.Several([Presta, Schrader], "some packets mean Sclaverand by it, others Schrader valve") : ByName(WithoutValve(text));

    /// <summary>"Presta valve" and "Prestaventil" are "Presta".</summary>
    internal static ReadOnlySpan<char> WithoutValve(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> name = Trim(text);
        foreach (string word in new[] { "valve", "ventil" })
        {
            if (name.Length > word.Length && name.EndsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                return name[..^word.Length];
            }
        }

        return name;
    }
}
