using System.Collections.Immutable;
using System.ComponentModel;
using System.Globalization;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>Size of a rear shock: how it is mounted, eye to eye, and stroke. Closed set, identity equality.</summary>
/// <remarks>
/// Metric sizes step by 20 mm in length, and a trunnion shock is 25 mm shorter than the eyelet shock of the same stroke. Inch sizes are
/// printed in rounded millimetres, not always the same ones. The frame maker's figure is the only one that counts.
/// </remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ShockSize>))]
[TypeConverter(typeof(InterfaceTypeConverter<ShockSize>))]
public sealed class ShockSize : Standard<ShockSize>, IInterfaceValue<ShockSize>
{
    private readonly int _eyeInches;
    private readonly int _strokeInches;

    private ShockSize(int code, string key, string name, Source source, ShockMount mount, int eye, int stroke, int eyeThousandths, int strokeThousandths)
        : base(code, key, name, source)
    {
        Mount = mount;
        Eye = eye;
        Shaft = stroke;
        _eyeInches = eyeThousandths;
        _strokeInches = strokeThousandths;
    }

    /// <summary>Every size, in the order of the table: metric with eyelets, metric with a trunnion, inch.</summary>
    public static ImmutableArray<ShockSize> All { get; } =
    [
        Metric(1, ShockMount.Eyelet, 16500, 3500, Sources.Memory),
        Metric(2, ShockMount.Eyelet, 16500, 3750, Sources.Memory),
        Metric(3, ShockMount.Eyelet, 16500, 4000, Sources.Memory),
        Metric(4, ShockMount.Eyelet, 19000, 3750, Sources.Memory),
        Metric(5, ShockMount.Eyelet, 19000, 4000, Sources.InlineShockSizes),
        Metric(6, ShockMount.Eyelet, 19000, 4250, Sources.InlineShockSizes),
        Metric(7, ShockMount.Eyelet, 19000, 4500, Sources.ShockSizeList),
        Metric(8, ShockMount.Eyelet, 21000, 5000, Sources.ShockSizeList),
        Metric(9, ShockMount.Eyelet, 21000, 5250, Sources.ShockSizeList),
        Metric(10, ShockMount.Eyelet, 21000, 5500, Sources.ShockSizeList),
        Metric(11, ShockMount.Eyelet, 23000, 5750, Sources.ShockSizeList),
        Metric(12, ShockMount.Eyelet, 23000, 6000, Sources.ShockSizeList),
        Metric(13, ShockMount.Eyelet, 23000, 6250, Sources.ShockSizeList),
        Metric(14, ShockMount.Eyelet, 23000, 6500, Sources.ShockSizeList),
        Metric(15, ShockMount.Eyelet, 25000, 6750, Sources.ShockSizeList),
        Metric(16, ShockMount.Eyelet, 25000, 7000, Sources.ShockSizeList),
        Metric(17, ShockMount.Eyelet, 25000, 7250, Sources.ShockSizeList),
        Metric(18, ShockMount.Eyelet, 25000, 7500, Sources.ShockSizeList),
        Metric(19, ShockMount.Trunnion, 14500, 3500, Sources.Memory),
        Metric(20, ShockMount.Trunnion, 16500, 3750, Sources.Memory),
        Metric(21, ShockMount.Trunnion, 16500, 4000, Sources.InlineShockSizes),
        Metric(22, ShockMount.Trunnion, 16500, 4250, Sources.InlineShockSizes),
        Metric(23, ShockMount.Trunnion, 16500, 4500, Sources.ShockSizeList),
        Metric(24, ShockMount.Trunnion, 18500, 5000, Sources.ShockSizeList),
        Metric(25, ShockMount.Trunnion, 18500, 5250, Sources.ShockSizeList),
        Metric(26, ShockMount.Trunnion, 18500, 5500, Sources.ShockSizeList),
        Metric(27, ShockMount.Trunnion, 20500, 5750, Sources.ShockSizeList),
        Metric(28, ShockMount.Trunnion, 20500, 6000, Sources.ShockSizeList),
        Metric(29, ShockMount.Trunnion, 20500, 6250, Sources.ShockSizeList),
        Metric(30, ShockMount.Trunnion, 20500, 6500, Sources.ShockSizeList),
        Metric(31, ShockMount.Trunnion, 22500, 6750, Sources.ShockSizeList),
        Metric(32, ShockMount.Trunnion, 22500, 7000, Sources.ShockSizeList),
        Metric(33, ShockMount.Trunnion, 22500, 7250, Sources.ShockSizeList),
        Metric(34, ShockMount.Trunnion, 22500, 7500, Sources.ShockSizeList),
        Inch(35, 15000, 3200, 5900, 1250, Sources.Memory),
        Inch(36, 15200, 3200, 6000, 1250, Sources.Memory),
        Inch(37, 16500, 3800, 6500, 1500, Sources.Memory),
        Inch(38, 18400, 4400, 7250, 1750, Sources.Memory),
        Inch(39, 19050, 5100, 7500, 2000, Sources.ShockSizeList),
        Inch(40, 20000, 5100, 7875, 2000, Sources.ShockOptions),
        Inch(41, 20000, 5700, 7875, 2250, Sources.ShockSizeList),
        Inch(42, 20300, 5100, 8000, 2000, Sources.Memory),
        Inch(43, 21600, 5700, 8500, 2250, Sources.Memory),
        Inch(44, 21600, 6350, 8500, 2500, Sources.ShockOptions),
        Inch(45, 22200, 6350, 8750, 2500, Sources.Memory),
        Inch(46, 22200, 7000, 8750, 2750, Sources.ShockOptions),
        Inch(47, 22900, 7000, 9000, 2750, Sources.Memory),
        Inch(48, 24100, 7600, 9500, 3000, Sources.ShockOptions),
        Inch(49, 26700, 8900, 10500, 3500, Sources.ShockOptions),
    ];

    /// <inheritdoc/>
    public static string Called => "shock size";

    /// <summary>How the upper end is held.</summary>
    public ShockMount Mount { get; }

    /// <summary>Of the metric system of 2016; otherwise named in inches.</summary>
    public bool IsMetric => _eyeInches == 0;

    /// <summary>Length between the centres of its two fixings, as printed in millimetres.</summary>
    public Length EyeToEye => Length.FromMillimeters(Eye / 100d);

    /// <summary>Travel of the shaft, as printed in millimetres.</summary>
    public Length Stroke => Length.FromMillimeters(Shaft / 100d);

    /// <summary>The name in inches, "7.875 x 2.25 in"; empty for a metric size.</summary>
    public string InchName => IsMetric ? "" : InInches(_eyeInches, _strokeInches);

    /// <summary>Eye to eye, hundredths of a millimetre.</summary>
    internal int Eye { get; }

    /// <summary>Stroke, hundredths of a millimetre.</summary>
    internal int Shaft { get; }

    /// <summary>Lengths that are printed for it, millimetres.</summary>
    internal (decimal Least, decimal Most) EyeRange => Range(Eye, _eyeInches, FitCode == 39 ? 190 : 0);

    /// <summary>Strokes that are printed for it, millimetres.</summary>
    internal (decimal Least, decimal Most) StrokeRange => Range(Shaft, _strokeInches, FitCode switch
    {
        39 or 40 => 50,
        44 => 63,
        49 => 90,
        _ => 0,
    });

    /// <summary>It carries this name in thousandths of an inch.</summary>
    internal bool IsNamed(long eyeThousandths, long strokeThousandths) => !IsMetric && _eyeInches == eyeThousandths && _strokeInches == strokeThousandths;

    /// <summary>What a shock can be, from what it measures. A stroke can be shortened by a spacer inside, which a caliper does not show.</summary>
    /// <param name="eyeToEye">Between the centres of the two fixings, without air or spring load.</param>
    /// <param name="stroke">Travel of the shaft, full length to fully in.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<ShockSize> Identify(MeasuredLength? eyeToEye = null, MeasuredLength? stroke = null) =>
        ShockSizeDimensions.Table.Identify(eyeToEye, stroke);

    /// <inheritdoc/>
    public static ShockSize OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a size in millimetres or inches, the mount before or behind it: "210x55", "trunnion 185 x 55", "7.875 x 2.25 in". Without a mount, sizes that both mounts have are kept as two readings.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ShockSize> Read(ReadOnlySpan<char> text) => Find(text) is { } named ? TextReading<ShockSize>.Of(named) : ShockSizeText.Read(text) ?? ByName(text);

    private static ShockSize Metric(int code, ShockMount mount, int eye, int stroke, Source source)
    {
        string size = string.Create(CultureInfo.InvariantCulture, $"{eye / 100m:0.#}x{stroke / 100m:0.#}");
        return new(code, $"{mount.FitKey}-{size}", string.Create(CultureInfo.InvariantCulture, $"{mount.FitKey} {eye / 100m:0.#} x {stroke / 100m:0.#} mm"), source, mount, eye, stroke, 0, 0);
    }

    private static ShockSize Inch(int code, int eye, int stroke, int eyeThousandths, int strokeThousandths, Source source)
    {
        string size = string.Create(CultureInfo.InvariantCulture, $"{eye / 100m:0.#}x{stroke / 100m:0.#}");
        return new(code, $"eyelet-{size}", $"{InInches(eyeThousandths, strokeThousandths)} ({size} mm)", source, ShockMount.Eyelet, eye, stroke, eyeThousandths, strokeThousandths);
    }

    private static string InInches(int eye, int stroke) => string.Create(CultureInfo.InvariantCulture, $"{eye / 1000m:0.###} x {stroke / 1000m:0.###} in");

    private static (decimal Least, decimal Most) Range(int hundredths, int thousandths, decimal alsoPrinted)
    {
        decimal nominal = hundredths / 100m;
        decimal exact = thousandths == 0 ? nominal : thousandths * 0.0254m;
        decimal also = alsoPrinted == 0 ? nominal : alsoPrinted;
        return (Math.Min(Math.Min(nominal, exact), also), Math.Max(Math.Max(nominal, exact), also));
    }

    /// <summary>Made when something is first identified.</summary>
    private static class ShockSizeDimensions
    {
        public static readonly IdentificationTable<ShockSize> Table = new(
            [
                new("eye to eye", "caliper or rule between the centres of the two fixings, shock without load"),
                new("stroke", "caliper on the shaft from seal to stop, shock without load"),
            ],
            Rows(),
            s => s.FitKey);

        private static ImmutableArray<DimensionRow<ShockSize>> Rows()
        {
            ImmutableArray<DimensionRow<ShockSize>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<ShockSize>>(All.Length);
            foreach (ShockSize size in All)
            {
                rows.Add(new(size, [size.EyeRange, size.StrokeRange], size.Mount == ShockMount.Trunnion ? "two screws into the sides of the body at the top" : size.IsMetric ? "an eyelet at both ends" : $"an eyelet at both ends; named {size.InchName}"));
            }

            return rows.MoveToImmutable();
        }
    }
}
