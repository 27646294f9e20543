using System.Text;
using System.Text.Json;

namespace Lugwork.Fuzz;

/// <summary>What holds of a type for any text.</summary>
internal abstract class ValueLaws
{
    /// <summary>The name of the type.</summary>
    public abstract string Called { get; }

    /// <summary>Texts of its values.</summary>
    public virtual IEnumerable<string> Texts => [];

    public abstract void Hold(string text);

    /// <summary>The same on the paths that throw and are slow: once for each text, of one type.</summary>
    public virtual void HoldOfAllPaths(string text, IFormatProvider culture)
    {
    }
}

/// <summary>What holds of all types: what is written reads back, and all ways to read agree.</summary>
internal sealed class TextLaws<T> : ValueLaws
    where T : ISpanParsable<T>, ISpanFormattable
{
    public override string Called => typeof(T).Name;

    public override void Hold(string text)
    {
        if (T.TryParse(text.AsSpan(), null, out T? value))
        {
            string written = value.ToString("G", null);
            Law.Holds(T.TryParse(written.AsSpan(), null, out T? back) && value.Equals(back), $"{Called} reads back", $"'{text}' is written '{written}'");
            Law.Same(written, value.ToString()!, $"{Called} is written by the plain format");
        }
        else
        {
            Law.Holds(EqualityComparer<T>.Default.Equals(value, default), $"{Called} refused is the default", text);
        }
    }

    public override void HoldOfAllPaths(string text, IFormatProvider culture)
    {
        bool good = T.TryParse(text.AsSpan(), null, out T? value);
        Law.Holds(FromText(text, culture, out T? same) == good && EqualityComparer<T>.Default.Equals(value, same), $"{Called} from text as from a span", text);
        T? parsed = default;
        bool took = true;
        try
        {
            parsed = T.Parse(text.AsSpan(), culture);
        }
        catch (FormatException e)
        {
            took = false;
            Law.Holds(e.Message.Length is > 0 and < 2_000, $"{Called} refuses in short words", e.Message);
        }

        Law.Holds(took == good && EqualityComparer<T>.Default.Equals(value, parsed), $"{Called} parses what it tries", text);
    }

    private static bool FromText(string text, IFormatProvider culture, out T? value) => Plain<T>(text, culture, out value);

    private static bool Plain<TValue>(string text, IFormatProvider culture, out TValue? value)
        where TValue : IParsable<TValue> => TValue.TryParse(text, culture, out value);
}

/// <summary>What holds of interface values: key, code, doubt, and what is known of one.</summary>
internal sealed class InterfaceLaws<T> : ValueLaws
    where T : IInterfaceValue<T>
{
    public override string Called => typeof(T).Name;

    private static readonly bool IsInNoPart = T.All.Any(v => v.FitKey is "none" or "unknown");

    public override IEnumerable<string> Texts => T.All.SelectMany(v => new[] { v.FitKey, v.ToString("T", null) });

    public override void Hold(string text)
    {
        TextReading<T> reading = T.Read(text);
        Law.Holds(reading.Position >= 0 && reading.Position <= text.Length, $"{Called} points into the text", $"{reading.Position} of {text.Length}");
        if (T.TryParse(text.AsSpan(), null, out T? value))
        {
            Law.Holds(reading.IsClear && reading.Values[0].Equals(value), $"{Called} is read as it is tried", text);
            Law.Holds(value.FitCode > 0 && T.OfFitCode(value.FitCode).Equals(value), $"{Called} comes back from its code", $"'{text}': {value.FitCode}");
            Law.Holds(T.TryParse(value.FitKey.AsSpan(), null, out T? back) && value.Equals(back), $"{Called} comes back from its key", $"'{text}': {value.FitKey}");
            Law.Holds(T.Read(value.ToString("T", null)).Values.Contains(value), $"{Called} is among the readings of its trade name", text);
        }
        else
        {
            Law.Holds(reading.Values.Length != 1 && reading.Reason.Length > 0, $"{Called} says why not", text);
        }

        // A type with a value that is called none or unknown is in no part.
        if (IsInNoPart)
        {
            return;
        }

        if (KnownText.TryRead(text, null, out Known<T> known, out int position, out string reason))
        {
            string written = known.ToString();
            Law.Holds(KnownText.TryRead(written, null, out Known<T> again, out _, out string why) && again == known, $"what is known of {Called} reads back", $"'{text}' is written '{written}': {why}");
            Law.Holds(Known<T>.OfCandidates(known.ToCandidates()) == known, $"what is known of {Called} comes back from its codes", $"'{text}' is '{written}'");
        }
        else
        {
            Law.Holds(position >= 0 && position <= text.Length && reason.Length > 0, $"what is known of {Called} is refused with place and reason", $"'{text}': {position}, {reason}");
        }
    }

    public override void HoldOfAllPaths(string text, IFormatProvider culture)
    {
        bool good = T.TryParse(text.AsSpan(), null, out T? value);
        T? read = default;
        bool took = true;
        try
        {
            read = JsonSerializer.Deserialize<T>(JsonSerializer.Serialize(text));
        }
        catch (JsonException)
        {
            took = false;
        }

        // Half characters are written as the sign for none.
        Law.Holds(took == good || text.Any(char.IsSurrogate), $"{Called} in JSON is taken as in text", text);
        Law.Holds(!took || !good || value!.Equals(read), $"{Called} in JSON is the same as in text", text);
        Law.Holds(!took || JsonSerializer.Deserialize<T>(JsonSerializer.Serialize(read))!.Equals(read), $"{Called} reads back from JSON", text);
    }
}

/// <summary>What holds of types that are read out of bytes.</summary>
internal sealed class Utf8Laws<T> : ValueLaws
    where T : ISpanParsable<T>, IUtf8SpanParsable<T>
{
    public override string Called => typeof(T).Name;

    public override void Hold(string text)
    {
        bool good = T.TryParse(text.AsSpan(), null, out T? value);
        bool fromBytes = T.TryParse(Encoding.UTF8.GetBytes(text), null, out T? other);
        Law.Holds(good == fromBytes && EqualityComparer<T>.Default.Equals(value, other), $"{Called} from bytes as from text", text);
    }
}
