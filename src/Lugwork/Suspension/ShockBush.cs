using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>The bush pressed into a shock's eyelet, by the diameter that the hardware turns in. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<ShockBush>))]
[TypeConverter(typeof(InterfaceTypeConverter<ShockBush>))]
public sealed class ShockBush : Standard<ShockBush>, IInterfaceValue<ShockBush>
{
    private readonly int _eyelet;
    private readonly int _length;

    private ShockBush(int code, string key, string name, int inside, int least, int most, int eyelet, int length, params ImmutableArray<string> names)
        : base(code, key, name, Sources.EyeletBushings, names)
    {
        Inside = inside;
        LeastInside = least;
        MostInside = most;
        _eyelet = eyelet;
        _length = length;
    }

    /// <summary>Of three makers: 12.6 to 12.75 mm inside, in an eyelet of about 15.0 mm.</summary>
    public static ShockBush Mm12Point7 { get; } = new(1, "12.7", "12.7 mm bush", 1270, 1260, 1275, 1500, 1275, "1/2 in", "12.7 mm");

    /// <summary>Of a fourth maker: 12 mm inside, in an eyelet of 14.0 mm.</summary>
    public static ShockBush Mm12 { get; } = new(2, "12", "12.0 mm bush", 1200, 1200, 1200, 1400, 1200, "12.0", "12 mm");

    /// <summary>Every one.</summary>
    public static ImmutableArray<ShockBush> All { get; } = [Mm12Point7, Mm12];

    /// <inheritdoc/>
    public static string Called => "shock bush";

    /// <summary>Inside diameter, in which the hardware turns.</summary>
    public Length InsideDiameter => Length.FromMillimeters(Inside / 100d);

    /// <summary>Bore of the bare eyelet, about.</summary>
    public Length EyeletBore => Length.FromMillimeters(_eyelet / 100d);

    /// <summary>Length of the bush.</summary>
    public Length BushLength => Length.FromMillimeters(_length / 100d);

    /// <summary>What eyelet bore and bush length rest on.</summary>
    public static Source EyeletSource => Sources.ShockDetails;

    internal int Inside { get; }

    internal int LeastInside { get; }

    internal int MostInside { get; }

    /// <summary>What a bush can be, from what it measures.</summary>
    /// <param name="inside">Inside diameter of the bush.</param>
    /// <param name="eyelet">Bore of the eyelet, bush out.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<ShockBush> Identify(MeasuredLength? inside = null, MeasuredLength? eyelet = null) =>
        ShockBushDimensions.Table.Identify(inside, eyelet);

    /// <inheritdoc/>
    public static ShockBush OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a size in millimetres, with a decimal comma and a unit if need be, or a name.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ShockBush> Read(ReadOnlySpan<char> text) =>
        SizedText.Find<ShockBush>(text, b => b.Inside) is { } sized ? TextReading<ShockBush>.Of(sized) : ByName(text);

    /// <summary>Made when something is first identified.</summary>
    private static class ShockBushDimensions
    {
        public static readonly IdentificationTable<ShockBush> Table = new(
            [new("inside", "inside caliper in the bush, hardware out"), new("eyelet", "inside caliper in the eyelet, bush out")], Rows(), b => b.TradeName);

        private static ImmutableArray<DimensionRow<ShockBush>> Rows()
        {
            ImmutableArray<DimensionRow<ShockBush>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<ShockBush>>(All.Length);
            foreach (ShockBush bush in All)
            {
                rows.Add(new(bush, [(bush.LeastInside / 100m, bush.MostInside / 100m), (bush._eyelet / 100m, (bush._eyelet / 100m) + (bush == Mm12Point7 ? 0.2m : 0))]));
            }

            return rows.MoveToImmutable();
        }
    }
}
