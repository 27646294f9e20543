using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>The reducers in a shock's eyelet: width between the frame's faces, and the bolt through them: "22.2x8".</summary>
/// <remarks>Width 10 to 80 mm, bolt 5 to 12 mm, to a hundredth. They belong to the frame, not to the shock. The default is no hardware: it is written "?", which is refused when read.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ShockHardware>))]
[TypeConverter(typeof(InterfaceTypeConverter<ShockHardware>))]
public readonly record struct ShockHardware : IInterfaceValue<ShockHardware>
{
    private const long CodeStep = 10_000;
    private const int LeastWidth = 1_000;
    private const int MostWidth = 8_000;
    private const int LeastBolt = 500;
    private const int MostBolt = 1_200;

    // Hundredths of a millimetre.
    private readonly int _width;
    private readonly int _bolt;

    private ShockHardware(int width, int bolt) => (_width, _bolt) = (width, bolt);

    /// <summary>The usual ones: the eighteen of the metric system (six widths, three bolts), then those before it.</summary>
    public static ImmutableArray<ShockHardware> All { get; } = Usual();

    /// <inheritdoc/>
    public static string Called => "shock hardware";

    /// <summary>Width between the frame's faces.</summary>
    public Length Width => Length.FromMillimeters(_width / 100d);

    /// <summary>Diameter of the bolt.</summary>
    public Length Bolt => Length.FromMillimeters(_bolt / 100d);

    /// <summary>Width, millimetres, exact.</summary>
    public decimal WidthMillimetres => _width / 100m;

    /// <summary>Bolt, millimetres, exact.</summary>
    public decimal BoltMillimetres => _bolt / 100m;

    /// <summary>One of the eighteen of the metric system.</summary>
    public bool IsMetric => _width is 1500 or 2000 or 2500 or 3000 or 3500 or 4000 && _bolt is 600 or 800 or 1000;

    /// <summary>Where the size comes from; null for one that no row has.</summary>
    public Source? Source =>
        IsMetric ? Sources.MetricShockLaunch
        : this == new ShockHardware(2220, 800) ? Sources.ShockSizeList
        : _width is 2180 && _bolt is 600 or 800 ? Sources.MetricShockLaunch
        : All.Contains(this) ? Sources.Memory : null;

    /// <inheritdoc/>
    public string FitKey => this == default ? InterfaceText.NoValue : string.Create(CultureInfo.InvariantCulture, $"{WidthMillimetres:0.##}x{BoltMillimetres:0.##}");

    /// <summary>Width and bolt in hundredths of a millimetre, packed.</summary>
    public long FitCode => (_width * CodeStep) + _bolt;

    /// <summary>Makes one from width and bolt.</summary>
    /// <param name="width">10 to 80 mm, to a hundredth.</param>
    /// <param name="bolt">5 to 12 mm, to a hundredth.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static ShockHardware OfMillimetres(decimal width, decimal bolt)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, LeastWidth / 100m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(width, MostWidth / 100m);
        ArgumentOutOfRangeException.ThrowIfLessThan(bolt, LeastBolt / 100m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(bolt, MostBolt / 100m);
        return new((int)decimal.Round(width * 100), (int)decimal.Round(bolt * 100));
    }

    /// <summary>What hardware can be, of the usual ones, from what it measures.</summary>
    /// <param name="width">Over the reducers, or between the frame's faces.</param>
    /// <param name="bolt">Outside diameter of the bolt.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<ShockHardware> Identify(MeasuredLength? width = null, MeasuredLength? bolt = null) =>
        ShockHardwareDimensions.Table.Identify(width, bolt);

    /// <inheritdoc/>
    public static ShockHardware OfFitCode(long code)
    {
        (long width, long bolt) = Math.DivRem(code, CodeStep);
        return code > 0 && width is >= LeastWidth and <= MostWidth && bolt is >= LeastBolt and <= MostBolt
            ? new((int)width, (int)bolt)
            : throw new ArgumentOutOfRangeException(nameof(code), code, "no shock hardware has this code");
    }

    /// <summary>Reads width and bolt, in either order: "22.2 x 8", "M8 x 22.2 mm".</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ShockHardware> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (TextCursor.IsNegative(text) || !Number(ref cursor, out long first) || !cursor.TryTimes() || !Number(ref cursor, out long second) || !cursor.AtEnd)
        {
            return TextReading<ShockHardware>.Refused("width and bolt in millimetres are expected, such as 22.2x8", Math.Min(cursor.Position, text.Length));
        }

        (long bolt, long width) = first < second ? (first, second) : (second, first);
        const long Hundredth = Nanometres.PerMillimetre / 100;
        return width % Hundredth == 0 && bolt % Hundredth == 0 && width / Hundredth is >= LeastWidth and <= MostWidth && bolt / Hundredth is >= LeastBolt and <= MostBolt && width != bolt
            ? TextReading<ShockHardware>.Of(new((int)(width / Hundredth), (int)(bolt / Hundredth)))
            : TextReading<ShockHardware>.Refused("the width is 10 to 80 mm and the bolt 5 to 12 mm, to a hundredth");
    }

    /// <inheritdoc/>
    public static ShockHardware Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<ShockHardware>(s);

    /// <inheritdoc/>
    public static ShockHardware Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<ShockHardware>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out ShockHardware result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out ShockHardware result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out ShockHardware result) => TryParse(s, null, out result);

    /// <summary>Width and bolt: "22.2x8".</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing; there is no one main length.</summary>
    /// <param name="format">"G", "T", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, null, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);

    private static bool Number(ref TextCursor cursor, out long nanometres)
    {
        cursor.SkipBlanks();
        if (!cursor.AtEnd && cursor.Rest[0] is 'M' or 'm')
        {
            cursor.Position++;
        }

        bool read = cursor.TryNumber(out nanometres);
        cursor.SkipMillimetres();
        return read;
    }

    private static ImmutableArray<ShockHardware> Usual()
    {
        ImmutableArray<ShockHardware>.Builder usual = ImmutableArray.CreateBuilder<ShockHardware>();
        foreach (int width in (ReadOnlySpan<int>)[1500, 2000, 2500, 3000, 3500, 4000])
        {
            usual.Add(new(width, 600));
            usual.Add(new(width, 800));
            usual.Add(new(width, 1000));
        }

        foreach (int width in (ReadOnlySpan<int>)[2180, 2220, 2400, 2540, 4600, 5400])
        {
            usual.Add(new(width, 600));
            usual.Add(new(width, 800));
        }

        return usual.ToImmutable();
    }

    /// <summary>Made when something is first identified.</summary>
    private static class ShockHardwareDimensions
    {
        public static readonly IdentificationTable<ShockHardware> Table = new(
            [
                new("width", "caliper over both reducers in the eyelet, or between the frame's faces, to 0.05 mm"),
                new("bolt", "outside caliper on the bolt"),
            ],
            Rows(),
            h => h.FitKey);

        private static ImmutableArray<DimensionRow<ShockHardware>> Rows()
        {
            ImmutableArray<DimensionRow<ShockHardware>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<ShockHardware>>(All.Length);
            foreach (ShockHardware hardware in All)
            {
                string apart = hardware._width switch
                {
                    2180 => "21.8 and 22.2 mm are both sold and easily confused",
                    2220 => "22.2 and 21.8 mm are both sold and easily confused",
                    _ => "",
                };
                rows.Add(new(hardware, [(hardware.WidthMillimetres, hardware.WidthMillimetres), (hardware.BoltMillimetres, hardware.BoltMillimetres)], apart));
            }

            return rows.MoveToImmutable();
        }
    }
}
