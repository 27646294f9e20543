namespace Lugwork.Reading;

/// <summary>"148 op 12", "12 auf 142": the word for "on" between two figures that one part has together. Between two that are like each other it leads from one size to another: "van 140 op 160".</summary>
internal static class TimesByPlace
{
    /// <summary>How far a word for travel may stand from the figures, in tokens.</summary>
    private const int Near = 10;

    /// <summary>Whether the word joins the figure before it to the one behind it.</summary>
    /// <param name="tokens">All tokens of the line; those before <paramref name="kept"/> are settled.</param>
    /// <param name="at">The word.</param>
    /// <param name="kept">Behind the last token that is settled.</param>
    public static bool Joins(List<SpecToken> tokens, int at, int kept)
    {
        int before = kept - 1;
        before -= before > 0 && IsUnit(tokens[before]) ? 1 : 0;
        if (before < 0 || at + 1 >= tokens.Count || !tokens[before].IsNumber || !tokens[at + 1].IsNumber || tokens[before].IsBroken || tokens[at + 1].IsBroken)
        {
            return false;
        }

        (decimal large, decimal small) = (Math.Max(tokens[before].Value, tokens[at + 1].Value), Math.Min(tokens[before].Value, tokens[at + 1].Value));
        int behind = at + 2 < tokens.Count && IsUnit(tokens[at + 2]) ? at + 3 : at + 2;
        bool cut = behind < tokens.Count && WordLists.TimesByPlaceJoins.Contains(tokens[behind].Text);
        bool from = before > 0 && tokens[before - 1].Text is "von" or "from";
        bool date = behind < tokens.Count && WordLists.TimesByPlaceJoins2.Contains(tokens[behind].Text);
        // "12 op 100 mm veerweg": as much travel as the width of a hub.
        return !cut && !from && !date && !(large is 100 or (>= 120 and <= 160) && IsTravel(tokens, before, at)) && (IsHub(large, small) || IsShock(large, small) || IsHardware(large, small) || IsPost(large, small) || IsRails(large, small));
    }

    /// <summary>A word for travel stands near.</summary>
    private static bool IsTravel(List<SpecToken> tokens, int before, int at)
    {
        for (int i = Math.Max(0, before - Near); i < tokens.Count && i <= at + Near; i++)
        {
            if (tokens[i].Text is "veerweg" or "federweg" or "travel")
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsUnit(SpecToken token) => token.Text is "mm" or "zoll" or "inch" or "duim" || token.Is('"');

    private static bool IsHub(decimal width, decimal axle) => width is >= 90 and <= 200 && axle is 5 or 9 or 10 or 12 or 15 or 20;

    private static bool IsShock(decimal length, decimal stroke) => (length is >= 140 and <= 280 && stroke is >= 25 and <= 85) || (length is >= 5 and <= 11 && stroke is >= 1 and <= 3.5m && length / stroke > 2);

    private static bool IsHardware(decimal width, decimal bolt) => width is >= 12 and <= 60 && bolt is 6 or 8 or 10 && width / bolt > 1.4m;

    private static bool IsPost(decimal length, decimal diameter) => length is >= 200 and <= 550 && length % 5 == 0 && diameter is > 21 and < 37 and not (25.4m or 28.6m);

    private static bool IsRails(decimal high, decimal wide) => wide is 7 or 8 && high is > 8 and <= 10;
}
