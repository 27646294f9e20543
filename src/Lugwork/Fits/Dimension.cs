using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork;

/// <summary>A plain length that is judged against a limit, such as an insertion depth or an inner rim width. Exact to the nanometre.</summary>
/// <remarks>Above zero and at most 100,000 mm. The default is no dimension: it is refused wherever a value is asked for.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<Dimension>))]
[TypeConverter(typeof(InterfaceTypeConverter<Dimension>))]
public readonly record struct Dimension : IInterfaceValue<Dimension>, IComparable<Dimension>
{
    private readonly Nanometres _length;

    private Dimension(Nanometres length) => _length = length;

    /// <summary>The length as a quantity.</summary>
    public Length Length => _length.ToLength();

    /// <summary>The length in millimetres, exact.</summary>
    public decimal Millimetres => _length.Millimetres;

    /// <inheritdoc/>
    public string FitKey => _length.ToString();

    /// <summary>Whole nanometres.</summary>
    public long FitCode => _length.Value;

    /// <summary>Empty: a plain length has no nominal sizes.</summary>
    public static ImmutableArray<Dimension> All => [];

    /// <inheritdoc/>
    public static string Called => "length";

    /// <inheritdoc/>
    public static bool IsPlainLength => true;

    /// <summary>Makes a dimension from millimetres.</summary>
    /// <param name="millimetres">Above zero, at most 100,000; rounded to the nanometre.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static Dimension OfMillimetres(decimal millimetres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(millimetres, 0.000001m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(millimetres, 100_000m);
        return new(Nanometres.OfMillimetres(millimetres));
    }

    /// <summary>Makes a dimension from a quantity.</summary>
    /// <param name="length">Above zero, at most 100 m; rounded to the nanometre.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or not a number.</exception>
    public static Dimension Of(Length length)
    {
        double millimetres = length.Millimeters;
        if (!(millimetres > 0 && millimetres <= 100_000))
        {
            throw new ArgumentOutOfRangeException(nameof(length), millimetres, "a dimension is above 0 and at most 100,000 mm");
        }

        return OfMillimetres((decimal)millimetres);
    }

    /// <inheritdoc/>
    public static Dimension OfFitCode(long code) =>
        code > 0 ? new(new Nanometres(code)) : throw new ArgumentOutOfRangeException(nameof(code), code, "a length is above zero");

    /// <inheritdoc/>
    public static TextReading<Dimension> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (!cursor.TryNumber(out long nanometres))
        {
            return TextReading<Dimension>.Refused("a number of millimetres is expected", cursor.Position);
        }

        cursor.SkipMillimetres();
        if (!cursor.AtEnd)
        {
            return TextReading<Dimension>.Refused("only millimetres may follow the number", cursor.Position);
        }

        return nanometres is > 0 and <= 100_000L * Nanometres.PerMillimetre
            ? TextReading<Dimension>.Of(new(new Nanometres(nanometres)))
            : TextReading<Dimension>.Refused("a length is above 0 and at most 100,000 mm");
    }

    /// <inheritdoc/>
    public static Dimension Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<Dimension>(s);

    /// <inheritdoc/>
    public static Dimension Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<Dimension>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out Dimension result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out Dimension result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out Dimension result) => TryParse(s, null, out result);

    /// <summary>Millimetres without unit: "80".</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing; the length in millimetres for "M", in inches for "I": "27.2 mm", "1.071 in".</summary>
    /// <param name="format">"G", "T", "M", "I", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, _length, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);

    /// <summary>By the length; the default, which is none, comes first.</summary>
    /// <param name="other">Another.</param>
    public int CompareTo(Dimension other) => _length.Value.CompareTo(other._length.Value);

    /// <summary>The left length is smaller than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator <(Dimension left, Dimension right) => left._length.Value < right._length.Value;

    /// <summary>The left length is not larger than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator <=(Dimension left, Dimension right) => left._length.Value <= right._length.Value;

    /// <summary>The left length is larger than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator >(Dimension left, Dimension right) => left._length.Value > right._length.Value;

    /// <summary>The left length is not smaller than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator >=(Dimension left, Dimension right) => left._length.Value >= right._length.Value;
}
