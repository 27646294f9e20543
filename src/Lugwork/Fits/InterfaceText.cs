using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace Lugwork;

/// <summary>What every interface value does the same way with text.</summary>
internal static class InterfaceText
{
    /// <summary>What the default of a value that is no value is written as; no reader takes it.</summary>
    public const string NoValue = "?";

    /// <summary>Room for one code of letters and two lengths to the nanometre.</summary>
    public const int MostCode = 32;

    private const int MostShown = 60;

    public static T Parse<T>(ReadOnlySpan<char> text)
        where T : IInterfaceValue<T>
    {
        TextReading<T> reading = T.Read(text);
        return reading.IsClear ? reading.Values[0] : throw new FormatException(Problem(text, reading));
    }

    public static bool TryParse<T>(ReadOnlySpan<char> text, [MaybeNullWhen(false)] out T value)
        where T : IInterfaceValue<T>
    {
        TextReading<T> reading = T.Read(text);
        value = reading.IsClear ? reading.Values[0] : default;
        return reading.IsClear;
    }

    /// <summary>The text of a value in one of the formats: G key, T trade name, M millimetres and I inches of its main length.</summary>
    /// <exception cref="FormatException">Another format, or M or I of a value without a main length.</exception>
    public static string Format(string? format, string key, string tradeName, Nanometres? main, string called) => format switch
    {
        null or "" or "G" => key,
        "T" => tradeName,
        "M" when main is { } length => length + " mm",
        "I" when main is { } length => length.InInches() + " in",
        _ => throw NoFormat(format, called, main is not null),
    };

    /// <summary>The refusal of a format, with the formats that there are.</summary>
    public static FormatException NoFormat(ReadOnlySpan<char> format, string called, bool hasLength) => new(hasLength
        ? $"'{Shown(format)}' is not a format of {called}; use G (key), T (trade name), M (millimetres) or I (inches)."
        : $"'{Shown(format)}' is not a format of {called}{(format is "M" or "I" ? ", which has no one main length" : "")}; use G (key) or T (trade name).");

    public static bool TryFormat(string text, Span<char> destination, out int written)
    {
        bool room = text.TryCopyTo(destination);
        written = room ? text.Length : 0;
        return room;
    }

    public static string Problem<T>(ReadOnlySpan<char> text, TextReading<T> reading)
        where T : IInterfaceValue<T>
    {
        string readings = reading.Values.Length > 1 ? $" It could be {string.Join(", ", ListedValues.Keys(reading.Values))}." : "";
        return $"'{Shown(text)}' is not a {T.Called}: {reading.Reason} (position {reading.Position}).{readings}";
    }

    public static FormatException Unreadable(ReadOnlySpan<char> text, string called, Slip slip) =>
        new($"'{Shown(text)}' is not a {called}: {slip.Reason} (position {slip.Position}).");

    public static FormatException Unreadable(ReadOnlySpan<byte> utf8Text, string called, Slip slip) =>
        Unreadable(Encoding.UTF8.GetString(utf8Text[..Math.Min(utf8Text.Length, 4 * MostShown)]), called, slip);

    private static string Shown(ReadOnlySpan<char> text) => text.Length > MostShown ? string.Concat(text[..MostShown], "...") : text.ToString();
}
