using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>Axle diameter and width over locknuts as a spec sheet states them: "12x142".</summary>
/// <remarks>
/// Two lengths only, exact to the nanometre: several hub standards can share them (<see cref="HubStandard"/> tells them apart).
/// The axle is 5 to 25 mm, the width 60 to 250 mm, so the order in a text does not matter. The default is no size: it has no lengths
/// and is written "?", which is refused when read.
/// </remarks>
public readonly record struct AxleSize : ISpanParsable<AxleSize>, IUtf8SpanParsable<AxleSize>, ISpanFormattable
{
    internal const string Called = "axle size";

    private readonly int _axle;
    private readonly int _width;

    internal AxleSize(int axle, int width)
    {
        _axle = axle;
        _width = width;
    }

    /// <summary>Diameter of the axle.</summary>
    public Length Axle => new Nanometres(_axle).ToLength();

    /// <summary>Width over locknuts or end caps.</summary>
    public Length Width => new Nanometres(_width).ToLength();

    /// <summary>Diameter of the axle, millimetres, exact.</summary>
    public decimal AxleMillimetres => new Nanometres(_axle).Millimetres;

    /// <summary>Width over locknuts or end caps, millimetres, exact.</summary>
    public decimal WidthMillimetres => new Nanometres(_width).Millimetres;

    /// <summary>Makes a size.</summary>
    /// <param name="axle">Diameter of the axle, 5 to 25 mm, to the nanometre.</param>
    /// <param name="width">Width over locknuts, 60 to 250 mm, to the nanometre.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is out of range.</exception>
    public static AxleSize OfMillimetres(decimal axle, decimal width)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(axle, 5);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(axle, 25);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 60);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(width, 250);
        return new((int)Nanometres.OfMillimetres(axle).Value, (int)Nanometres.OfMillimetres(width).Value);
    }

    /// <summary>
    /// Reads axle and width in either order: "12x142", "142 × 12 mm", "3/8 in x 110". Decimal point or comma; a fraction is of an inch,
    /// with 2, 4, 8, 16, 32 or 64 below the line.
    /// </summary>
    /// <param name="text">Any text.</param>
    /// <returns>The size, or the reason and the character from which on the text was refused.</returns>
    public static TextReading<AxleSize> Read(ReadOnlySpan<char> text) =>
        AxleText.TryRead(text, out AxleSize size) ? TextReading<AxleSize>.Of(size) : TextReading<AxleSize>.Refused(AxleText.Why(text));

    /// <summary>Reads axle and width out of UTF-8, by the same grammar.</summary>
    /// <param name="utf8Text">Any bytes.</param>
    /// <returns>The size, or the reason and the byte from which on the text was refused.</returns>
    public static TextReading<AxleSize> Read(ReadOnlySpan<byte> utf8Text) =>
        AxleText.TryRead(utf8Text, out AxleSize size) ? TextReading<AxleSize>.Of(size) : TextReading<AxleSize>.Refused(AxleText.Why(utf8Text));

    /// <inheritdoc/>
    public static AxleSize Parse(ReadOnlySpan<char> s, IFormatProvider? provider) =>
        AxleText.TryRead(s, out AxleSize size) ? size : throw InterfaceText.Unreadable(s, Called, AxleText.Why(s));

    /// <inheritdoc/>
    public static AxleSize Parse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider) =>
        AxleText.TryRead(utf8Text, out AxleSize size) ? size : throw InterfaceText.Unreadable(utf8Text, Called, AxleText.Why(utf8Text));

    /// <inheritdoc/>
    public static AxleSize Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return Parse(s.AsSpan(), provider);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out AxleSize result) => AxleText.TryRead(s, out result);

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider, out AxleSize result) => AxleText.TryRead(utf8Text, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out AxleSize result) => AxleText.TryRead(s.AsSpan(), out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out AxleSize result) => TryParse(s, null, out result);

    /// <summary>The axle, an x and the width, millimetres: "12x142".</summary>
    public override string ToString()
    {
        Span<char> room = stackalloc char[InterfaceText.MostCode];
        return TryFormat(room, out int written, default, null) ? room[..written].ToString() : InterfaceText.NoValue;
    }

    /// <summary>The text of <see cref="ToString()"/>.</summary>
    /// <param name="format">"G", "T", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format: there is no one main length.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        format is null or "" or "G" or "T" ? ToString() : throw InterfaceText.NoFormat(format, Called, hasLength: false);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null)
    {
        if (format is not ("" or "G" or "T"))
        {
            throw InterfaceText.NoFormat(format, Called, hasLength: false);
        }

        bool room = this == default
            ? InterfaceText.TryFormat(InterfaceText.NoValue, destination, out charsWritten)
            : destination.TryWrite(CultureInfo.InvariantCulture, $"{AxleMillimetres:0.######}x{WidthMillimetres:0.######}", out charsWritten);
        charsWritten = room ? charsWritten : 0;
        return room;
    }
}
