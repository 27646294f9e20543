namespace Lugwork.Reading;

/// <summary>A line of a complete bicycle that is about a part of both ends: "Tyres: 37-622 front and rear", "Bremsscheiben v/h 160 mm".</summary>
internal static class BothEnds
{
    /// <summary>The parts of both ends, and the line without the words for them; null where it is about one end, or about a part that there is once.</summary>
    public static (SheetLine Line, Slot Front, Slot Rear)? Of(SheetLine line, SpecVocabulary vocabulary)
    {
        List<SpecItem> items = ItemCutter.Cut(line.Text, vocabulary);
        int front = items.FindIndex(i => i.Is("m:front") && !LineScan.IsPart(i));
        int rear = items.FindIndex(i => i.Is("m:rear") && !LineScan.IsPart(i));
        if (front < 0 || rear < 0 || Math.Abs(front - rear) > 2 || !Joined(items, Math.Min(front, rear), Math.Max(front, rear)) || items.Count(i => i.Is("m:front") || i.Is("m:rear")) != 2)
        {
            return null;
        }

        (Slot Front, Slot Rear)? ends = null;
        foreach (SpecItem item in items.Where(LineScan.IsPart))
        {
            (Slot Front, Slot Rear)? named = SlotFinder.EndsOf(item, items);
            if (named is null || (ends is not null && ends != named))
            {
                return null;
            }

            ends = named;
        }

        if ((ends ?? (items.Exists(LineScan.IsPart) ? null : SlotFinder.BrakeOf(items))) is not { } pair)
        {
            return null;
        }

        char[] text = line.Text.ToCharArray();
        for (int i = Math.Min(front, rear); i <= Math.Max(front, rear); i++)
        {
            text.AsSpan(items[i].Start, items[i].End - items[i].Start).Fill(' ');
        }

        return (line with { Text = new string(text) }, pair.Front, pair.Rear);
    }

    /// <summary>Nothing but "and" or a sign stands between the two words.</summary>
    private static bool Joined(List<SpecItem> items, int first, int last) =>
        last == first + 2 && (items[first + 1].Is("m:and") || items[first + 1].Kind == SpecTokenKind.Sign);
}
