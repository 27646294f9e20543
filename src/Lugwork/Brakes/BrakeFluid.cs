using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Brakes;

/// <summary>The family of a hydraulic brake's fluid. The two are never mixed: seals swell and fail. Closed set, identity equality.</summary>
/// <remarks>The family is no grade: some mineral-oil brakes need a thin oil, and the brake's maker says which. "DOT 5" is in no row and is refused.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<BrakeFluid>))]
[TypeConverter(typeof(InterfaceTypeConverter<BrakeFluid>))]
public sealed class BrakeFluid : Standard<BrakeFluid>, IInterfaceValue<BrakeFluid>
{
    private BrakeFluid(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Glycol ether: DOT 4 and DOT 5.1.</summary>
    public static BrakeFluid GlycolEther { get; } = new(1, "glycol-ether", "DOT 4 / 5.1", Sources.FluidGuide, "DOT 4", "DOT 5.1", "DOT", "DOT 4/5.1", "glycol");

    /// <summary>Mineral oil.</summary>
    public static BrakeFluid MineralOil { get; } = new(2, "mineral-oil", "mineral oil", Sources.FluidGuide, "mineral");

    /// <summary>Both.</summary>
    public static ImmutableArray<BrakeFluid> All { get; } = [GlycolEther, MineralOil];

    /// <inheritdoc/>
    public static string Called => "brake fluid";

    /// <inheritdoc/>
    public static BrakeFluid OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<BrakeFluid> Read(ReadOnlySpan<char> text) => ByName(text);
}
