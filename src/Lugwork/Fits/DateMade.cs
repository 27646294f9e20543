using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Serialization;

namespace Lugwork;

/// <summary>When a part was made: a year, or a year with its month.</summary>
/// <remarks>
/// From 1860 to 2100, a range that no page prints: it only keeps out what is no year of a bicycle part. No joint reads it, and no age is
/// a verdict by itself: <c>Build.ToInspect()</c> tells it beside what there is to look at. Read as "2014", "2014-05", "05/2014" or
/// "2014/05"; a year of two digits is refused. The default is no date: it is refused wherever a value is asked for.
/// </remarks>
[JsonConverter(typeof(InterfaceJsonConverter<DateMade>))]
[TypeConverter(typeof(InterfaceTypeConverter<DateMade>))]
public readonly record struct DateMade : IInterfaceValue<DateMade>
{
    private const int Earliest = 1860;
    private const int Latest = 2100;
    private const int Months = 12;
    private const int PerYear = 100;
    private const string Expected = "a year such as 2014, or year and month such as 2014-05, is expected";

    private readonly int _code;

    private DateMade(int code) => _code = code;

    /// <summary>The year; 0 for the default.</summary>
    public int Year => _code / PerYear;

    /// <summary>The month, 1 to 12; null where the year alone is known.</summary>
    public int? Month => _code % PerYear == 0 ? null : _code % PerYear;

    /// <inheritdoc/>
    public string FitKey => _code == 0 ? InterfaceText.NoValue
        : Month is { } month ? string.Create(CultureInfo.InvariantCulture, $"{Year}-{month:00}")
        : Year.ToString(CultureInfo.InvariantCulture);

    /// <summary>Year times 100, and the month where it is known.</summary>
    public long FitCode => _code;

    /// <summary>Empty: any month may be one.</summary>
    public static ImmutableArray<DateMade> All => [];

    /// <inheritdoc/>
    public static string Called => "date of making";

    /// <summary>Makes a date.</summary>
    /// <param name="year">The year, 1860 to 2100.</param>
    /// <param name="month">The month, 1 to 12; null where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static DateMade Of(int year, int? month = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(year, Earliest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(year, Latest);
        if (month is < 1 or > Months)
        {
            throw new ArgumentOutOfRangeException(nameof(month), month, "a month is 1 to 12");
        }

        return new((year * PerYear) + (month ?? 0));
    }

    /// <inheritdoc/>
    public static DateMade OfFitCode(long code) =>
        code / PerYear is >= Earliest and <= Latest && code % PerYear <= Months ? new((int)code) : throw new ArgumentOutOfRangeException(nameof(code), code, "no date has this code");

    /// <inheritdoc/>
    public static TextReading<DateMade> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        ReadOnlySpan<char> first = Digits(ref cursor);
        cursor.SkipBlanks();
        bool slash = !cursor.AtEnd && cursor.Rest[0] == '/';
        bool split = slash || cursor.TryDash();
        cursor.Position += slash ? 1 : 0;
        ReadOnlySpan<char> second = split ? Digits(ref cursor) : [];
        cursor.SkipBlanks();
        bool turned = slash && first.Length <= 2;
        ReadOnlySpan<char> year = turned ? second : first;
        ReadOnlySpan<char> month = turned ? first : second;
        return !cursor.AtEnd || year.Length != 4 || (split && month.Length is not (1 or 2)) ? TextReading<DateMade>.Refused(Expected, cursor.Position)
            : Figure(year) is < Earliest or > Latest ? TextReading<DateMade>.Refused("the year is from 1860 to 2100")
            : split && Figure(month) is < 1 or > Months ? TextReading<DateMade>.Refused("the month is from 1 to 12")
            : TextReading<DateMade>.Of(new((Figure(year) * PerYear) + Figure(month)));
    }

    /// <inheritdoc/>
    public static DateMade Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<DateMade>(s);

    /// <inheritdoc/>
    public static DateMade Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<DateMade>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out DateMade result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out DateMade result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out DateMade result) => TryParse(s, null, out result);

    /// <summary>"2014", or "2014-05" with the month.</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing: "2014-05".</summary>
    /// <param name="format">"G", "T", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, null, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);

    private static ReadOnlySpan<char> Digits(ref TextCursor cursor)
    {
        cursor.SkipBlanks();
        ReadOnlySpan<char> rest = cursor.Rest;
        int length = 0;
        while (length < rest.Length && char.IsAsciiDigit(rest[length]))
        {
            length++;
        }

        cursor.Position += length;
        return rest[..length];
    }

    private static int Figure(ReadOnlySpan<char> digits)
    {
        int figure = 0;
        foreach (char digit in digits)
        {
            figure = (figure * 10) + (digit - '0');
        }

        return figure;
    }
}
