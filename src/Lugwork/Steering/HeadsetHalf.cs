using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>One end of a headset code: style, bore of the head tube, and what it takes: "ZS44/28.6".</summary>
/// <remarks>
/// The numbers are the trade's names, which round: 40 stands for a 39.8 mm seat, 34 for a 33.95 mm bore. The second number is the steerer
/// in an upper half and the crown race seat in a lower one; it may be unknown and is never assumed. Bore 20 to 70 mm, second number 20 to
/// 50 mm. The default is no half: it has no style and is written "?", which is refused when read.
/// </remarks>
public readonly record struct HeadsetHalf : ISpanParsable<HeadsetHalf>, IUtf8SpanParsable<HeadsetHalf>, ISpanFormattable
{
    internal const string Called = "half of a headset code";

    private const int NumberBits = 30;
    private const ulong NumberMask = (1UL << NumberBits) - 1;

    // Style, bore and second number from the top, nanometres; a second number of 0 is unknown.
    private readonly ulong _packed;

    internal HeadsetHalf(int style, int bore, int second) => _packed = ((ulong)style << (2 * NumberBits)) | ((ulong)bore << NumberBits) | (uint)second;

    /// <summary>How the bearing sits in the head tube.</summary>
    /// <exception cref="InvalidOperationException">This is the default, which has none.</exception>
    public HeadsetStyle Style => _packed == 0 ? throw new InvalidOperationException("a default has no style") : HeadsetStyle.OfFitCode((long)(_packed >> (2 * NumberBits)));

    /// <summary>Bore of the head tube as the code names it.</summary>
    public Length Bore => BoreExact.ToLength();

    /// <summary>Bore of the head tube as the code names it, millimetres.</summary>
    public decimal BoreMillimetres => BoreExact.Millimetres;

    /// <summary>Steerer (upper half) or crown race seat (lower half) as the code names it; null where the code does not say.</summary>
    public Length? Second => SecondExact.Value == 0 ? null : SecondExact.ToLength();

    /// <summary>Steerer or crown race seat, millimetres; null where the code does not say.</summary>
    public decimal? SecondMillimetres => SecondExact.Value == 0 ? null : SecondExact.Millimetres;

    private Nanometres BoreExact => new((long)((_packed >> NumberBits) & NumberMask));

    private Nanometres SecondExact => new((long)(_packed & NumberMask));

    /// <summary>Makes a half.</summary>
    /// <param name="style">How the bearing sits.</param>
    /// <param name="bore">Bore of the head tube, 20 to 70 mm, to the nanometre.</param>
    /// <param name="second">Steerer or crown race seat, 20 to 50 mm; null where it is unknown.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is out of range.</exception>
    public static HeadsetHalf OfMillimetres(HeadsetStyle style, decimal bore, decimal? second = null)
    {
        ArgumentNullException.ThrowIfNull(style);
        ArgumentOutOfRangeException.ThrowIfLessThan(bore, 20);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(bore, 70);
        if (second is not { } given)
        {
            return new((int)style.FitCode, (int)Nanometres.OfMillimetres(bore).Value, 0);
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(given, 20, nameof(second));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(given, 50, nameof(second));
        return new((int)style.FitCode, (int)Nanometres.OfMillimetres(bore).Value, (int)Nanometres.OfMillimetres(given).Value);
    }

    /// <summary>Reads one half in any case: "EC34", "zs44/28.6", "IS 52 / 40".</summary>
    /// <param name="text">Any text.</param>
    /// <returns>The half, or the reason and the character from which on the text was refused.</returns>
    public static TextReading<HeadsetHalf> Read(ReadOnlySpan<char> text) =>
        HeadsetText.TryRead(text, out HeadsetHalf half) ? TextReading<HeadsetHalf>.Of(half) : TextReading<HeadsetHalf>.Refused(HeadsetText.WhyNoHalf(text));

    /// <summary>Reads one half out of UTF-8, by the same grammar.</summary>
    /// <param name="utf8Text">Any bytes.</param>
    /// <returns>The half, or the reason and the byte from which on the text was refused.</returns>
    public static TextReading<HeadsetHalf> Read(ReadOnlySpan<byte> utf8Text) =>
        HeadsetText.TryRead(utf8Text, out HeadsetHalf half) ? TextReading<HeadsetHalf>.Of(half) : TextReading<HeadsetHalf>.Refused(HeadsetText.WhyNoHalf(utf8Text));

    /// <inheritdoc/>
    public static HeadsetHalf Parse(ReadOnlySpan<char> s, IFormatProvider? provider) =>
        HeadsetText.TryRead(s, out HeadsetHalf half) ? half : throw InterfaceText.Unreadable(s, Called, HeadsetText.WhyNoHalf(s));

    /// <inheritdoc/>
    public static HeadsetHalf Parse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider) =>
        HeadsetText.TryRead(utf8Text, out HeadsetHalf half) ? half : throw InterfaceText.Unreadable(utf8Text, Called, HeadsetText.WhyNoHalf(utf8Text));

    /// <inheritdoc/>
    public static HeadsetHalf Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return Parse(s.AsSpan(), provider);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out HeadsetHalf result) => HeadsetText.TryRead(s, out result);

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider, out HeadsetHalf result) => HeadsetText.TryRead(utf8Text, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out HeadsetHalf result) => HeadsetText.TryRead(s.AsSpan(), out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out HeadsetHalf result) => TryParse(s, null, out result);

    /// <summary>The code, upper case: "ZS44/28.6", or "EC34" where the second number is unknown.</summary>
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

        bool room = this == default ? InterfaceText.TryFormat(InterfaceText.NoValue, destination, out charsWritten)
            : SecondExact.Value == 0 ? destination.TryWrite(CultureInfo.InvariantCulture, $"{Style.FitKey}{BoreMillimetres:0.######}", out charsWritten)
            : destination.TryWrite(CultureInfo.InvariantCulture, $"{Style.FitKey}{BoreMillimetres:0.######}/{SecondExact.Millimetres:0.######}", out charsWritten);
        charsWritten = room ? charsWritten : 0;
        return room;
    }
}
