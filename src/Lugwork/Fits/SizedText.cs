namespace Lugwork;

/// <summary>A size of a closed set as people write it: with a decimal comma, trailing zeros, millimetres or an inch mark.</summary>
internal static class SizedText
{
    /// <summary>A number, of millimetres or plain, and nothing else.</summary>
    public static bool IsLength(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (!cursor.TryNumber(out _))
        {
            return false;
        }

        cursor.SkipMillimetres();
        return cursor.AtEnd;
    }

    /// <summary>The member of that size; null where the text is no number of millimetres, or no member has it.</summary>
    public static T? Find<T>(ReadOnlySpan<char> text, Func<T, int> hundredths)
        where T : class, IInterfaceValue<T>
    {
        TextCursor cursor = new(text);
        if (!cursor.TryNumber(out long nanometres))
        {
            return null;
        }

        cursor.SkipMillimetres();
        if (!cursor.AtEnd)
        {
            return null;
        }

        foreach (T member in T.All)
        {
            if (hundredths(member) * (Nanometres.PerMillimetre / 100) == nanometres)
            {
                return member;
            }
        }

        return null;
    }
}
