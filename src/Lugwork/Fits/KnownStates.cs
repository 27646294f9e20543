namespace Lugwork;

/// <summary>The two states that lie outside what the library judges, and their words.</summary>
internal static class KnownStates
{
    public const string FrameSpecific = "frame-specific";

    public const string NotCovered = "not covered";

    /// <summary>Neither known nor unknown: no value of the library stands for it.</summary>
    public static bool IsOutside(this KnownState state) => state is KnownState.FrameSpecific or KnownState.NotCovered;

    /// <summary>The state that a text says, in any case, with blanks or dashes between the words; null where it says neither.</summary>
    public static KnownState? Read(ReadOnlySpan<char> text) =>
        Says(text, "framespecific") ? KnownState.FrameSpecific : Says(text, "notcovered") ? KnownState.NotCovered : null;

    /// <summary>The canonical words.</summary>
    public static string InWords(KnownState state) => state == KnownState.NotCovered ? NotCovered : FrameSpecific;

    /// <summary>What it means for a joint.</summary>
    public static Reason Reason(KnownState state) => state == KnownState.NotCovered ? Reasons.NotCovered : Reasons.FrameSpecific;

    /// <summary>What is to be done instead of measuring.</summary>
    public static string Ask(KnownState state) => state == KnownState.NotCovered
        ? "Ask its maker what goes with it: no measurement settles what is outside this library."
        : "Ask the frame maker for the frame's own part: no measurement makes another one fit.";

    private static bool Says(ReadOnlySpan<char> text, string letters)
    {
        int at = 0;
        foreach (char c in text)
        {
            if (TextCursor.IsBlank(c) || TextCursor.IsDash(c) || c == '_')
            {
                continue;
            }

            if (at == letters.Length || char.ToLowerInvariant(c) != letters[at])
            {
                return false;
            }

            at++;
        }

        return at == letters.Length;
    }
}
