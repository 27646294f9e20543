namespace Lugwork.Reading;

/// <summary>A line in the short form of a part: the key or a word of one field, a sign, and a value as the library writes it. So each canonical text reads back.</summary>
internal static class NamedField
{
    private const int Longest = 200;

    /// <summary>True where the line is one field by its key and the value is one; anything else is read as a line.</summary>
    public static bool TryRead(Slot slot, ReadOnlySpan<char> text, out SpecField? field, out FieldReading reading, out int from)
    {
        field = null;
        reading = default;
        from = 0;
        if (text.Length > Longest)
        {
            return false;
        }

        int sign = text.IndexOfAny(':', '=');
        if (sign <= 0)
        {
            return false;
        }

        ReadOnlySpan<char> name = text[..sign].Trim();
        from = sign + 1;
        while (from < text.Length && char.IsWhiteSpace(text[from]))
        {
            from++;
        }

        foreach (SpecField known in SpecFields.Of(slot).Values)
        {
            if (name.Equals(known.Key, StringComparison.OrdinalIgnoreCase) || name.Equals($"{slot.Key}.{known.Key}", StringComparison.OrdinalIgnoreCase))
            {
                field = known;
                reading = known.Read(text[from..].ToString());
                return reading.Keys.Length == 1;
            }
        }

        return false;
    }
}
