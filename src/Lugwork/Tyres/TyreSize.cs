using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>An ISO tyre size: section width, then the bead seat: "37-622".</summary>
/// <remarks>Width 18 to 132 mm, whole millimetres. The width is a class: the tyre may measure 3 mm more or less. The default is no size.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<TyreSize>))]
[TypeConverter(typeof(InterfaceTypeConverter<TyreSize>))]
public readonly record struct TyreSize : IInterfaceValue<TyreSize>, IUtf8SpanParsable<TyreSize>
{
    private readonly short _width;
    private readonly short _bead;

    internal TyreSize(int width, int bead)
    {
        _width = (short)width;
        _bead = (short)bead;
    }

    /// <summary>Nominal section width.</summary>
    public Length Width => Length.FromMillimeters(_width);

    /// <summary>Nominal section width, whole millimetres.</summary>
    public int WidthMillimetres => _width;

    /// <summary>The bead seat.</summary>
    /// <exception cref="InvalidOperationException">This is the default, which has none.</exception>
    public BeadSeat Bead => _bead == 0 ? throw new InvalidOperationException("a default has no bead seat") : BeadSeat.OfFitCode(_bead);

    /// <summary>Width and bead seat, "37-622"; with ISO in front, "ISO 28-700", where the number of the seat alone is a label.</summary>
    public string FitKey => FormattableString.Invariant($"{(_bead == BeadSeat.Label700 ? IsoMark.Written : "")}{_width}-{_bead}");

    /// <summary>The code: width times 1,000 plus bead seat, both in millimetres: 37622.</summary>
    public long FitCode => (_width * 1_000L) + _bead;

    /// <summary>Empty: sizes are made of two numbers, not listed.</summary>
    public static ImmutableArray<TyreSize> All => [];

    /// <inheritdoc/>
    public static string Called => "tyre size";

    /// <summary>Makes a size.</summary>
    /// <param name="widthMillimetres">Nominal section width, 18 to 132 mm.</param>
    /// <param name="bead">The bead seat.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is out of range.</exception>
    public static TyreSize Of(int widthMillimetres, BeadSeat bead)
    {
        ArgumentNullException.ThrowIfNull(bead);
        ArgumentOutOfRangeException.ThrowIfLessThan(widthMillimetres, 18);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(widthMillimetres, 132);
        return new(widthMillimetres, (int)bead.FitCode);
    }

    /// <inheritdoc/>
    public static TyreSize OfFitCode(long code)
    {
        long width = code / 1_000;
        return code > 0 && width is >= 18 and <= 132
            ? Of((int)width, BeadSeat.OfFitCode(code % 1_000))
            : throw new ArgumentOutOfRangeException(nameof(code), code, "no tyre size has this code");
    }

    /// <summary>
    /// Reads "37-622", "37x622", "622x37", the French "700x25C" and labels with one published ISO size, such as "28 x 1 5/8 x 1 3/8" or "650 x 42B".
    /// Labels that stand for several sizes give several readings; those that say the bead seat only, decimal ones among them, are refused with it.
    /// </summary>
    /// <param name="text">Any text.</param>
    public static TextReading<TyreSize> Read(ReadOnlySpan<char> text) =>
        TyreText.TryRead(text, out TyreSize size) ? TextReading<TyreSize>.Of(size) : TyreText.Explain(text);

    /// <summary>Reads a size out of UTF-8, by the same grammar.</summary>
    /// <param name="utf8Text">Any bytes.</param>
    public static TextReading<TyreSize> Read(ReadOnlySpan<byte> utf8Text) =>
        TyreText.TryRead(utf8Text, out TyreSize size) ? TextReading<TyreSize>.Of(size) : TyreText.Explain(utf8Text);

    /// <inheritdoc/>
    public static TyreSize Parse(ReadOnlySpan<char> s, IFormatProvider? provider) =>
        TyreText.TryRead(s, out TyreSize size) ? size : InterfaceText.Parse<TyreSize>(s);

    /// <inheritdoc/>
    public static TyreSize Parse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider) =>
        TyreText.TryRead(utf8Text, out TyreSize size) ? size : InterfaceText.Parse<TyreSize>(Encoding.UTF8.GetString(utf8Text));

    /// <inheritdoc/>
    public static TyreSize Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return Parse(s.AsSpan(), provider);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out TyreSize result) => TyreText.TryRead(s, out result);

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider, out TyreSize result) => TyreText.TryRead(utf8Text, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out TyreSize result) => TyreText.TryRead(s.AsSpan(), out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out TyreSize result) => TryParse(s, null, out result);

    /// <summary>The ISO size: "37-622".</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing; the section width in millimetres for "M", in inches for "I": "37 mm", "1.457 in".</summary>
    /// <param name="format">"G", "T", "M", "I", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, new Nanometres(_width * Nanometres.PerMillimetre), Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);
}
