using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Lugwork.Steering;

/// <summary>A headset code: the upper half, then the lower: "ZS44/28.6|ZS56/40".</summary>
/// <remarks>The halves are independent of each other. The default is no code: it is written "?", which is refused when read.</remarks>
public readonly record struct HeadsetPair : ISpanParsable<HeadsetPair>, IUtf8SpanParsable<HeadsetPair>, ISpanFormattable
{
    internal const string Called = "headset code";

    internal HeadsetPair(HeadsetHalf upper, HeadsetHalf lower)
    {
        Upper = upper;
        Lower = lower;
    }

    /// <summary>The upper end; its second number is the steerer.</summary>
    public HeadsetHalf Upper { get; }

    /// <summary>The lower end; its second number is the crown race seat.</summary>
    public HeadsetHalf Lower { get; }

    /// <summary>Puts two halves together.</summary>
    /// <param name="upper">The upper half.</param>
    /// <param name="lower">The lower half.</param>
    /// <exception cref="ArgumentException">One of them is the default, which is no half.</exception>
    public static HeadsetPair Of(HeadsetHalf upper, HeadsetHalf lower) =>
        upper == default || lower == default
            ? throw new ArgumentException("a default is no half of a headset code", upper == default ? nameof(upper) : nameof(lower))
            : new(upper, lower);

    /// <summary>
    /// Reads two halves in any case with a bar, a letter I, a semicolon, comma, dash, blank or slash between them: "EC34/28.6|EC34/30",
    /// "ZS44 - ZS56", "EC34/EC34". A slash before a digit is the half's own. One half alone is refused.
    /// </summary>
    /// <param name="text">Any text.</param>
    /// <returns>The code, or the reason and the character from which on the text was refused.</returns>
    public static TextReading<HeadsetPair> Read(ReadOnlySpan<char> text) =>
        HeadsetText.TryRead(text, out HeadsetPair pair) ? TextReading<HeadsetPair>.Of(pair) : TextReading<HeadsetPair>.Refused(HeadsetText.WhyNoPair(text));

    /// <summary>Reads two halves out of UTF-8, by the same grammar.</summary>
    /// <param name="utf8Text">Any bytes.</param>
    /// <returns>The code, or the reason and the byte from which on the text was refused.</returns>
    public static TextReading<HeadsetPair> Read(ReadOnlySpan<byte> utf8Text) =>
        HeadsetText.TryRead(utf8Text, out HeadsetPair pair) ? TextReading<HeadsetPair>.Of(pair) : TextReading<HeadsetPair>.Refused(HeadsetText.WhyNoPair(utf8Text));

    /// <inheritdoc/>
    public static HeadsetPair Parse(ReadOnlySpan<char> s, IFormatProvider? provider) =>
        HeadsetText.TryRead(s, out HeadsetPair pair) ? pair : throw InterfaceText.Unreadable(s, Called, HeadsetText.WhyNoPair(s));

    /// <inheritdoc/>
    public static HeadsetPair Parse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider) =>
        HeadsetText.TryRead(utf8Text, out HeadsetPair pair) ? pair : throw InterfaceText.Unreadable(utf8Text, Called, HeadsetText.WhyNoPair(utf8Text));

    /// <inheritdoc/>
    public static HeadsetPair Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return Parse(s.AsSpan(), provider);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out HeadsetPair result) => HeadsetText.TryRead(s, out result);

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider, out HeadsetPair result) => HeadsetText.TryRead(utf8Text, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out HeadsetPair result) => HeadsetText.TryRead(s.AsSpan(), out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out HeadsetPair result) => TryParse(s, null, out result);

    /// <summary>Both halves with a bar between: "ZS44/28.6|ZS56/40".</summary>
    public override string ToString()
    {
        Span<char> room = stackalloc char[2 * InterfaceText.MostCode];
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
            : destination.TryWrite(CultureInfo.InvariantCulture, $"{Upper}|{Lower}", out charsWritten);
        charsWritten = room ? charsWritten : 0;
        return room;
    }
}
