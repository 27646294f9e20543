namespace Lugwork;

/// <summary>Text that says that a property lies outside what the library judges: one of the two states, or the name of a family.</summary>
internal static class OutsideText
{
    private const int Longest = 80;

    /// <summary>Words for the part that may follow a name: "proprietary seatpost", "cargo bike", "motor mount".</summary>
    private static readonly string[] PartWords =
    [
        "mount", "mounting", "seatpost", "post", "headset", "stem", "bar", "handlebar", "cockpit", "axle", "hub", "wheel", "brake", "caliper",
        "hanger", "dropout", "rotor", "disc", "cassette", "sprocket", "freehub", "body", "driver", "frame", "fork", "bike", "bicycle", "part", "parts",
        "size", "standard", "fit", "fitting", "system", "interface", "shell", "thread", "clamp", "collar", "crank", "crankset", "spindle", "pedal", "pedals",
        "chain", "ring", "rings", "derailleur", "saddle", "rail", "rails", "tyre", "tire", "rim", "bracket", "bottom", "tube", "head", "seat", "bore",
        "design", "type", "unit", "end", "ends", "steerer", "race", "cup", "bearing", "material", "diameter", "width", "length", "shape", "drive", "kind", "family",
    ];

    /// <summary>What the text says; null where it says nothing of the kind. Text with a figure in it never does.</summary>
    public static Outside? Read(ReadOnlySpan<char> text)
    {
        text = text.Trim();
        if (text.IsEmpty || text.Length > Longest || text.ContainsAnyInRange('0', '9') || text.Contains('|'))
        {
            return null;
        }

        string rest = Plain(text);
        while (rest.Length > 0)
        {
            if (KnownStates.Read(rest) is { } state)
            {
                return new(state, null);
            }

            if (OutsideFamily.Find(rest) is { } family)
            {
                return new(family.State, family);
            }

            int gap = rest.LastIndexOf(' ');
            if (gap <= 0 || Array.IndexOf(PartWords, rest[(gap + 1)..].ToLowerInvariant()) < 0)
            {
                return null;
            }

            rest = rest[..gap].TrimEnd();
        }

        return null;
    }

    /// <summary>Dashes, underlines and odd blanks as blanks, and one kind of apostrophe.</summary>
    private static string Plain(ReadOnlySpan<char> text)
    {
        char[] plain = text.ToArray();
        for (int i = 0; i < plain.Length; i++)
        {
            char c = plain[i];
            plain[i] = c == '\u2019' ? '\'' : c == '_' || TextCursor.IsDash(c) || TextCursor.IsBlank(c) ? ' ' : c;
        }

        return new string(plain).Trim();
    }
}

/// <summary>A state outside what the library judges, and the family where one was named.</summary>
internal readonly record struct Outside(KnownState State, OutsideFamily? Family)
{
    /// <summary>A property that is so, by these words.</summary>
    public Known<T> Of<T>(string words)
        where T : IInterfaceValue<T> => Known<T>.Outside(State, new Evidence(EvidenceKind.Stated, words), Family);

    /// <summary>The family that candidates name; null where they name none.</summary>
    public static OutsideFamily? FamilyOf(in Candidates candidates) =>
        candidates.IsOutside && candidates.Low > 0 ? OutsideFamily.OfFitCode(candidates.Low) : null;
}
