using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork;

/// <summary>What a bicycle or a part is made to be ridden on: conditions 1 to 5 of ASTM F2043. Closed set, identity equality.</summary>
/// <remarks>
/// Each condition takes in those below it, as the source says of 2 to 5 one by one, so a part for a higher one goes on a bicycle that is
/// used in a lower one. Condition 0 is for children's bicycles and in no order with these: it is refused. The numbers changed their meaning
/// between editions: condition 2 of the year 2000 lets no tyre leave the ground. The maker's own words come before the number.
/// </remarks>
[JsonConverter(typeof(InterfaceJsonConverter<UseCategory>))]
[TypeConverter(typeof(InterfaceTypeConverter<UseCategory>))]
public sealed class UseCategory : Standard<UseCategory>, IInterfaceValue<UseCategory>
{
    private readonly int _drop;

    private UseCategory(int code, string tradeName, string covers, int drop, params ImmutableArray<string> names)
        : base(code, $"condition-{code}", tradeName, Sources.UseCategories, names)
    {
        Covers = covers;
        _drop = drop;
    }

    /// <summary>Paved surfaces; the tyres stay on the ground.</summary>
    public static UseCategory Condition1 { get; } = new(1, "condition 1, paved surfaces", "ordinary paved surfaces on which the tyres keep to the ground", 0, "1", "category 1", "ASTM 1", "ASTM condition 1", "ASTM category 1");

    /// <summary>Condition 1, and unpaved and gravel roads and easy trails; drops to 15 cm.</summary>
    public static UseCategory Condition2 { get; } = new(2, "condition 2, gravel and easy trails", "condition 1, and unpaved and gravel roads and trails without steep gradients; a tyre may leave uneven ground, drops to 15 cm", 150, "2", "category 2", "ASTM 2", "ASTM condition 2", "ASTM category 2");

    /// <summary>Conditions 1 and 2, and rough and technical trails; jumps and drops below 61 cm.</summary>
    public static UseCategory Condition3 { get; } = new(3, "condition 3, rough trails", "conditions 1 and 2, and rough roads, rough trails and unimproved ground that ask for skill; jumps and drops below 61 cm", 610, "3", "category 3", "ASTM 3", "ASTM condition 3", "ASTM category 3");

    /// <summary>Conditions 1 to 3, and descents of rough trails below 40 km/h; jumps below 122 cm.</summary>
    public static UseCategory Condition4 { get; } = new(4, "condition 4, rough descents", "conditions 1 to 3, and descents of rough trails at less than 40 km/h; jumps below 122 cm", 1_220, "4", "category 4", "ASTM 4", "ASTM condition 4", "ASTM category 4");

    /// <summary>Conditions 1 to 4, and extreme jumps and fast descents of rough trails.</summary>
    public static UseCategory Condition5 { get; } = new(5, "condition 5, extreme riding", "conditions 1 to 4, and extreme jumps, and descents of rough trails faster than 40 km/h", 0, "5", "category 5", "ASTM 5", "ASTM condition 5", "ASTM category 5");

    /// <summary>Every one, the mildest first.</summary>
    public static ImmutableArray<UseCategory> All { get; } = [Condition1, Condition2, Condition3, Condition4, Condition5];

    /// <inheritdoc/>
    public static string Called => "category of use";

    /// <summary>What it covers, for a person.</summary>
    public string Covers { get; }

    /// <summary>The greatest drop or jump that the source names; null for condition 1, in which the tyres stay on the ground, and for condition 5, for which none is printed.</summary>
    public Length? GreatestDrop => _drop == 0 ? null : Length.FromMillimeters(_drop);

    /// <summary>A part for this category may be used in another one: the same, or one that this takes in.</summary>
    /// <param name="use">What the bicycle is used for.</param>
    public bool TakesIn(UseCategory use)
    {
        ArgumentNullException.ThrowIfNull(use);
        return use.FitCode <= FitCode;
    }

    /// <inheritdoc/>
    public static UseCategory OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<UseCategory> Read(ReadOnlySpan<char> text) => ByName(text);
}
