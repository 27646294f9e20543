namespace Lugwork.Reading;

/// <summary>A line in the short form of a part by the words of a field instead of its key: "boss spacing 80 mm", "stay thickness: 20 mm".</summary>
/// <remarks>It is asked only where nothing else was read, and the whole line has to be the words and one value.</remarks>
internal static class ShortForm
{
    private const int Longest = 80;

    /// <summary>Figures of geometry and the like, which a line of a sheet names without meaning an interface.</summary>
    private static readonly HashSet<string> Left = new(StringComparer.Ordinal)
    {
        "chainstay", "headTubeLength", "seatTubeLength", "frontCentre", "bottomBracketDrop", "standover", "downTubeDrop", "crankLength", "qFactor", "width", "depth", "height", "reach", "saddleHeight", "inseam", "hoseLength", "housingLength",
        "travel", "stack", "clampHeight", "spacersBelow", "spacersAbove", "mostSpacers", "knobRise", "rearHoseSide", "frontBrakeHand", "hand", "chainline", "measuredChainline", "sprocketChainline", "cassetteChainline", "mountedWidth", "mountedRim", "toeClearance", "groundHeight", "smallestRing", "smallestSprocket", "upperStack", "lowerStack", "condition", "kind",
    };

    public static bool TryRead(Slot slot, ReadOnlySpan<char> text, out SpecField? field, out FieldReading reading)
    {
        field = null;
        reading = default;
        if (text.Length > Longest)
        {
            return false;
        }

        string line = SpecFold.Line(text);
        foreach (SpecField known in SpecFields.Of(slot).Values)
        {
            foreach (string words in known.Words)
            {
                int behind = Left.Contains(known.Key) ? -1 : Behind(line, words);
                if (behind < 0 || known.Read(line[behind..]) is not { Keys.Length: 1 } read)
                {
                    continue;
                }

                if (field is not null && field != known)
                {
                    return false;
                }

                (field, reading) = (known, read);
            }
        }

        return field is not null && IsLikely(slot, field, reading.Keys[0]);
    }

    /// <summary>A length has to be one that such a thing has.</summary>
    private static bool IsLikely(Slot slot, SpecField field, string key)
    {
        if (field.Type.Name != nameof(Dimension) || !decimal.TryParse(key.Split(' ')[0], System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out decimal value))
        {
            return true;
        }

        (decimal least, decimal most) = TopicFields.Range(slot, field.Key);
        return value >= least && value <= most;
    }

    /// <summary>Where the value starts behind the words, a colon or sign of equality, and blanks; -1 where the line does not start with the words.</summary>
    private static int Behind(ReadOnlySpan<char> text, string words)
    {
        int at = 0;
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        if (!text[at..].StartsWith(words, StringComparison.OrdinalIgnoreCase) || at + words.Length >= text.Length || char.IsLetterOrDigit(text[at + words.Length]))
        {
            return -1;
        }

        at += words.Length;
        while (at < text.Length && (char.IsWhiteSpace(text[at]) || text[at] is ':' or '='))
        {
            at++;
        }

        return at < text.Length ? at : -1;
    }
}
