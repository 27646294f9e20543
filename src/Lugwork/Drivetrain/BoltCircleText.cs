using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>What bolt circles are called: "5x110", "104 BCD", "4-arm 96 uneven".</summary>
internal static class BoltCircleText
{
    private const int Longest = 60;

    private const int MostArms = 8;

    private const string Expected = "a diameter in millimetres with or without the number of arms is expected, such as 104, 5x110 or 4-arm 96 uneven";

    public static TextReading<BoltCircle> Read(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty || text.Length > Longest)
        {
            return TextReading<BoltCircle>.Refused(text.IsEmpty ? "the text is empty" : Expected);
        }

        TextCursor cursor = new(text);
        long diameter = 0;
        long arms = 0;
        string spacing = "";
        bool negative = TextCursor.IsNegative(text);
        while (!cursor.AtEnd && !negative)
        {
            int at = cursor.Position;
            if (cursor.TryNumber(out long nanometres))
            {
                bool small = nanometres <= MostArms * Nanometres.PerMillimetre;
                if (nanometres % Nanometres.PerMillimetre != 0 || (small ? arms : diameter) != 0)
                {
                    return TextReading<BoltCircle>.Refused(Expected, at);
                }

                (arms, diameter) = small ? (nanometres / Nanometres.PerMillimetre, diameter) : (arms, nanometres / Nanometres.PerMillimetre);
            }
            else if (!cursor.TryTimes() && !IsPadding(cursor.Word(), ref spacing))
            {
                return TextReading<BoltCircle>.Refused(Expected, at);
            }

            cursor.SkipBlanks();
        }

        return diameter == 0 ? TextReading<BoltCircle>.Refused(Expected) : Told(arms, diameter, spacing);
    }

    private static TextReading<BoltCircle> Told(long arms, long diameter, string spacing)
    {
        ImmutableArray<BoltCircle>.Builder found = ImmutableArray.CreateBuilder<BoltCircle>();
        foreach (BoltCircle circle in BoltCircle.All)
        {
            // Five arms with one hole out of line are called so only by those who know.
            bool offset = !circle.IsEven && circle.Arms == 5;
            bool said = spacing switch
            {
                "" => !offset || arms == 0,
                "even" => circle.IsEven,
                "offset" => offset,
                _ => !circle.IsEven,
            };
            if (said && circle.Millimetres == diameter && (arms == 0 || circle.Arms == arms))
            {
                found.Add(circle);
            }
        }

        return found.Count switch
        {
            0 => TextReading<BoltCircle>.Refused("no such bolt circle is listed"),
            1 => TextReading<BoltCircle>.Of(found[0]),
            _ => TextReading<BoltCircle>.Several(found.ToImmutable(), "several circles have this diameter: count the arms, and see whether neighbouring holes are equally far apart"),
        };
    }

    private static bool IsPadding(ReadOnlySpan<char> word, ref string spacing)
    {
        string said = Says(word, "uneven") || Says(word, "asymmetric") ? "uneven" : Says(word, "even") ? "even" : Says(word, "offset") ? "offset" : "";
        if (said.Length > 0)
        {
            bool free = spacing.Length == 0 || spacing == said;
            spacing = said;
            return free;
        }

        return (word.Length == 1 && (TextCursor.IsDash(word[0]) || word[0] is ',' or '/'))
            || Says(word, "mm") || Says(word, "bcd") || Says(word, "pcd") || Says(word, "arm") || Says(word, "arms") || Says(word, "bolt") || Says(word, "bolts") || Says(word, "circle") || Says(word, "hole") || Says(word, "holes");
    }

    private static bool Says(ReadOnlySpan<char> word, string meant) => word.Equals(meant, StringComparison.OrdinalIgnoreCase);
}
