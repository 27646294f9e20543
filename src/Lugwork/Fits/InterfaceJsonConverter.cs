using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Lugwork;

/// <summary>An interface value in JSON: its key, as text or as the key of an object. Every interface value names it, so that nothing has to be registered.</summary>
/// <remarks>
/// Reading is as tolerant as <see cref="IInterfaceValue{TSelf}.Read"/>, takes a bare number as its text (27.2), and refuses what is ambiguous with its readings.
/// Null is no value: a property that may be without one is nullable. The default of a value is not written, since it would not read back.
/// </remarks>
/// <typeparam name="T">The value's type.</typeparam>
public sealed class InterfaceJsonConverter<T> : JsonConverter<T>
    where T : IInterfaceValue<T>
{
    /// <summary>Longer text is no interface value in any spelling; bytes of UTF-8.</summary>
    private const int MostBytes = 4_000;

    /// <summary>Reads a value.</summary>
    /// <param name="reader">At a text or a number.</param>
    /// <param name="typeToConvert">Not used.</param>
    /// <param name="options">Not used.</param>
    /// <exception cref="JsonException">It is neither text nor number, or not one value; with what was expected.</exception>
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.TokenType switch
    {
        JsonTokenType.String or JsonTokenType.Number => Value(ref reader),
        var other => throw new JsonException($"A {T.Called} is text, not {Named(other)}."),
    };

    /// <summary>Writes the key.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="value">The value.</param>
    /// <param name="options">Not used.</param>
    /// <exception cref="JsonException">It is a default, which is no value.</exception>
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStringValue(Key(value));
    }

    /// <summary>Reads a value that is the key of an object.</summary>
    /// <param name="reader">At the name of a property.</param>
    /// <param name="typeToConvert">Not used.</param>
    /// <param name="options">Not used.</param>
    /// <exception cref="JsonException">It is not one value; with what was expected.</exception>
    public override T ReadAsPropertyName(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Value(ref reader);

    /// <summary>Writes the key as the name of a property.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="value">The value.</param>
    /// <param name="options">Not used.</param>
    /// <exception cref="JsonException">It is a default, which is no value.</exception>
    public override void WriteAsPropertyName(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WritePropertyName(Key(value));
    }

    private static T Value(ref Utf8JsonReader reader)
    {
        long length = reader.HasValueSequence ? reader.ValueSequence.Length : reader.ValueSpan.Length;
        if (length > MostBytes)
        {
            throw new JsonException($"The text is too long for a {T.Called}.");
        }

        string text = Text(ref reader);
        TextReading<T> reading = T.Read(text);
        return reading.IsClear ? reading.Values[0] : throw new JsonException(InterfaceText.Problem(text, reading));
    }

    private static string Text(ref Utf8JsonReader reader)
    {
        if (reader.TokenType == JsonTokenType.Number)
        {
            return Encoding.UTF8.GetString(reader.HasValueSequence ? reader.ValueSequence.ToArray() : reader.ValueSpan);
        }

        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException e)
        {
            throw new JsonException("The text holds half of a character.", e);
        }
    }

    private static string Key(T value) => value is { FitCode: > 0 } ? value.FitKey : throw new JsonException($"A default is not a {T.Called}.");

    private static string Named(JsonTokenType token) => token switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.Null => "null",
        _ => "true or false",
    };
}
