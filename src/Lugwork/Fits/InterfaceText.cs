using System.Diagnostics.CodeAnalysis;

namespace Lugwork;

/// <summary>What every interface value does the same way with text.</summary>
internal static class InterfaceText
{
    public static T Parse<T>(ReadOnlySpan<char> text)
        where T : IInterfaceValue<T>
    {
        Reading<T> reading = T.Read(text);
        return reading.IsClear ? reading.Values[0] : throw new FormatException(Problem(text, reading));
    }

    public static bool TryParse<T>(ReadOnlySpan<char> text, [MaybeNullWhen(false)] out T value)
        where T : IInterfaceValue<T>
    {
        Reading<T> reading = T.Read(text);
        value = reading.IsClear ? reading.Values[0] : default;
        return reading.IsClear;
    }

    public static bool TryFormat(string text, Span<char> destination, out int written)
    {
        bool room = text.TryCopyTo(destination);
        written = room ? text.Length : 0;
        return room;
    }

    public static string Problem<T>(ReadOnlySpan<char> text, Reading<T> reading)
        where T : IInterfaceValue<T>
    {
        string shown = text.Length > 60 ? string.Concat(text[..60], "...") : text.ToString();
        string readings = reading.Values.Length > 1 ? $" It could be {string.Join(", ", Array.ConvertAll([.. reading.Values], v => v.FitKey))}." : "";
        return $"'{shown}' is not a {T.Called}: {reading.Reason} (position {reading.Position}).{readings}";
    }
}
