using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork;

/// <summary>A mass that a bicycle carries, or that a maker allows on a part. Whole grams.</summary>
/// <remarks>
/// Above zero and at most 500 kg, a range that no page prints: it is wide on purpose and only keeps out what is no load. Text and
/// quantities are rounded to the gram. A bare number is kilograms; pounds and stone need their unit. The default is no load: it is
/// refused wherever a value is asked for.
/// </remarks>
[JsonConverter(typeof(InterfaceJsonConverter<Load>))]
[TypeConverter(typeof(InterfaceTypeConverter<Load>))]
public readonly record struct Load : IInterfaceValue<Load>, IComparable<Load>
{
    internal const long MostGrams = 500_000;
    private const long GramsPerKilogram = 1_000;
    private const decimal GramsPerPound = 453.59237m;
    private const int PoundsPerStone = 14;
    private const string Range = "a load is above 0 and at most 500 kg";

    private readonly int _grams;

    private Load(long grams) => _grams = (int)grams;

    /// <summary>The load as a quantity.</summary>
    public Mass Mass => Mass.FromGrams(_grams);

    /// <summary>The load in whole grams; 0 for the default.</summary>
    public int Grams => _grams;

    /// <summary>The load in kilograms, exact.</summary>
    public decimal Kilograms => _grams / (decimal)GramsPerKilogram;

    /// <inheritdoc/>
    public string FitKey => Written(_grams);

    /// <summary>Whole grams.</summary>
    public long FitCode => _grams;

    /// <summary>Empty: a load has no nominal sizes.</summary>
    public static ImmutableArray<Load> All => [];

    /// <inheritdoc/>
    public static string Called => "load";

    /// <inheritdoc/>
    public static bool IsPlainMass => true;

    /// <summary>Makes a load from kilograms.</summary>
    /// <param name="kilograms">Above zero, at most 500; rounded to the gram.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, or less than half a gram.</exception>
    public static Load OfKilograms(decimal kilograms)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(kilograms, 0.001m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(kilograms, 500m);
        return new(Whole(kilograms * GramsPerKilogram));
    }

    /// <summary>Makes a load from a quantity.</summary>
    /// <param name="mass">At least 1 g, at most 500 kg; rounded to the gram.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or not a number.</exception>
    public static Load Of(Mass mass)
    {
        double kilograms = mass.Kilograms;
        if (!(kilograms >= 0.001 && kilograms <= 500))
        {
            throw new ArgumentOutOfRangeException(nameof(mass), kilograms, Range);
        }

        return OfKilograms((decimal)kilograms);
    }

    /// <inheritdoc/>
    public static Load OfFitCode(long code) =>
        code is > 0 and <= MostGrams ? new(code) : throw new ArgumentOutOfRangeException(nameof(code), code, Range);

    /// <inheritdoc/>
    public static TextReading<Load> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (!TryFigure(ref cursor, out decimal figure, out bool thousands))
        {
            return TextReading<Load>.Refused("a mass is expected, such as 120 kg, 265 lb or 18 st 13 lb", cursor.Position);
        }

        cursor.SkipBlanks();
        int unitAt = cursor.Position;
        ReadOnlySpan<char> unit = Unit(ref cursor);
        decimal grams;
        if (unit.IsEmpty || Says(unit, "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"))
        {
            grams = figure * GramsPerKilogram;
        }
        else if (Says(unit, "lb", "lbs", "pound", "pounds"))
        {
            grams = figure * GramsPerPound;
            if (thousands && figure >= 1 && grams * 1_000 <= MostGrams)
            {
                return TextReading<Load>.Refused("the comma may part thousands: write a point, or the figure without it");
            }
        }
        else if (Says(unit, "st", "stone", "stones"))
        {
            decimal pounds = 0;
            if (!cursor.AtEnd)
            {
                int poundsAt = cursor.Position;
                if (!TryFigure(ref cursor, out pounds, out _) || !Says(Unit(ref cursor), "lb", "lbs", "pound", "pounds") || pounds >= PoundsPerStone)
                {
                    return TextReading<Load>.Refused("less than 14 lb may follow the stone, with their unit", poundsAt);
                }
            }

            grams = ((figure * PoundsPerStone) + pounds) * GramsPerPound;
        }
        else
        {
            return TextReading<Load>.Refused("only kg, lb or st may follow the number", unitAt);
        }

        if (!cursor.AtEnd)
        {
            return TextReading<Load>.Refused("nothing may follow the unit: say one mass", cursor.Position);
        }

        return grams <= MostGrams && Whole(grams) is > 0 and long whole ? TextReading<Load>.Of(new(whole)) : TextReading<Load>.Refused(Range);
    }

    /// <inheritdoc/>
    public static Load Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<Load>(s);

    /// <inheritdoc/>
    public static Load Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<Load>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out Load result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out Load result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out Load result) => TryParse(s, null, out result);

    /// <summary>Kilograms with their unit: "82.5 kg".</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing: "82.5 kg".</summary>
    /// <param name="format">"G", "T", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, null, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);

    /// <summary>Any number of grams as kilograms; no load, as the default is, has no text that is read.</summary>
    internal static string Written(long grams) =>
        grams <= 0 ? InterfaceText.NoValue : (grams / (decimal)GramsPerKilogram).ToString("0.###", CultureInfo.InvariantCulture) + " kg";

    private static long Whole(decimal grams) => (long)decimal.Round(grams, 0, MidpointRounding.AwayFromZero);

    /// <summary>A number, and whether a comma before three digits, which may part thousands, is in it.</summary>
    private static bool TryFigure(ref TextCursor cursor, out decimal figure, out bool thousands)
    {
        cursor.SkipBlanks();
        ReadOnlySpan<char> rest = cursor.Rest;
        int start = cursor.Position;
        bool read = cursor.TryNumber(out long millionths);
        figure = millionths / 1_000_000m;
        ReadOnlySpan<char> digits = rest[..(cursor.Position - start)];
        thousands = digits.IndexOf(',') is > 0 and int comma && digits.Length - comma == 4;
        return read;
    }

    /// <summary>The letters that stand here, with one point behind them that belongs to a short form.</summary>
    private static ReadOnlySpan<char> Unit(ref TextCursor cursor)
    {
        cursor.SkipBlanks();
        ReadOnlySpan<char> rest = cursor.Rest;
        int length = 0;
        while (length < rest.Length && char.IsAsciiLetter(rest[length]))
        {
            length++;
        }

        cursor.Position += length > 0 && length < rest.Length && rest[length] == '.' ? length + 1 : length;
        cursor.SkipBlanks();
        return rest[..length];
    }

    private static bool Says(ReadOnlySpan<char> unit, params ReadOnlySpan<string> names)
    {
        foreach (string name in names)
        {
            if (unit.Equals(name, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>By the mass; the default, which is none, comes first.</summary>
    /// <param name="other">Another.</param>
    public int CompareTo(Load other) => _grams.CompareTo(other._grams);

    /// <summary>The left mass is smaller than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator <(Load left, Load right) => left._grams < right._grams;

    /// <summary>The left mass is not larger than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator <=(Load left, Load right) => left._grams <= right._grams;

    /// <summary>The left mass is larger than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator >(Load left, Load right) => left._grams > right._grams;

    /// <summary>The left mass is not smaller than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator >=(Load left, Load right) => left._grams >= right._grams;
}
