namespace Lugwork.Reading;

/// <summary>A field of the part in a slot, as spec text is read for it.</summary>
/// <param name="Slot">The part.</param>
/// <param name="Key">Key in a build file: "seatTube".</param>
/// <param name="Words">Words of the short form before its value.</param>
/// <param name="Type">Its interface type.</param>
internal sealed record SpecField(Slot Slot, string Key, string[] Words, FieldType Type)
{
    /// <summary>Reads one value; text that the type would take as unknown or none is refused.</summary>
    public FieldReading Read(string text) => text.Length > 200 ? new([], "the text is too long") : Type.Read(text);
}

/// <summary>The fields of every slot, made once.</summary>
internal static class SpecFields
{
    private static readonly Lazy<Dictionary<Slot, Dictionary<string, SpecField>>> All = new(Build);

    public static Dictionary<string, SpecField> Of(Slot slot)
    {
        ArgumentNullException.ThrowIfNull(slot);
        return All.Value[slot];
    }

    /// <summary>One field of a part by its key.</summary>
    /// <exception cref="ArgumentException">The part has no such field, or it is one that only sets others.</exception>
    public static SpecField Of(Slot slot, string field) =>
        Of(slot).TryGetValue(field ?? "", out SpecField? found) ? found : throw new ArgumentException($"a {slot} has no field {field}", nameof(field));

    private static Dictionary<Slot, Dictionary<string, SpecField>> Build()
    {
        Dictionary<Slot, Dictionary<string, SpecField>> all = [];
        foreach (Slot slot in Slot.All)
        {
            Dictionary<string, SpecField> fields = new(StringComparer.Ordinal);
            foreach (IPartField field in PartForms.Of(slot).Fields)
            {
                FieldType? type = field.Key == "steererShape" ? FieldType.Of<Steering.SteererShape>(null) : field.Type;
                if (type is not null && (field.Sets.IsEmpty || field.Key == "steererShape"))
                {
                    fields[field.Key] = new(slot, field.Key, [.. field.Words], type);
                }
            }

            all[slot] = fields;
        }

        return all;
    }
}
