using System.Text.Json;
using System.Text.Json.Serialization;

namespace Lugwork;

/// <summary>A slot in JSON: its key, as text or as the key of an object. <see cref="Slot"/> names it, so that nothing has to be registered.</summary>
public sealed class SlotJsonConverter : JsonConverter<Slot>
{
    /// <summary>Reads a key, case ignored.</summary>
    /// <param name="reader">At a text.</param>
    /// <param name="typeToConvert">Not used.</param>
    /// <param name="options">Not used.</param>
    /// <exception cref="JsonException">It is no text, or there is no such slot.</exception>
    public override Slot Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String ? Named(ref reader) : throw new JsonException("A slot is text.");

    /// <summary>Writes the key.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="value">The slot.</param>
    /// <param name="options">Not used.</param>
    public override void Write(Utf8JsonWriter writer, Slot value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(value);
        writer.WriteStringValue(value.Key);
    }

    /// <summary>Reads a slot that is the key of an object.</summary>
    /// <param name="reader">At the name of a property.</param>
    /// <param name="typeToConvert">Not used.</param>
    /// <param name="options">Not used.</param>
    /// <exception cref="JsonException">There is no such slot.</exception>
    public override Slot ReadAsPropertyName(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Named(ref reader);

    /// <summary>Writes the key as the name of a property.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="value">The slot.</param>
    /// <param name="options">Not used.</param>
    public override void WriteAsPropertyName(Utf8JsonWriter writer, Slot value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(value);
        writer.WritePropertyName(value.Key);
    }

    private static Slot Named(ref Utf8JsonReader reader)
    {
        string? text;
        try
        {
            text = reader.GetString();
        }
        catch (InvalidOperationException e)
        {
            throw new JsonException("The text holds half of a character.", e);
        }

        return Slot.Find(text) ?? throw new JsonException(Slot.NoSlot(text));
    }
}
