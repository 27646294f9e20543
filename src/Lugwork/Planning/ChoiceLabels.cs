namespace Lugwork.Planning;

/// <summary>Two sums, of which less is better of both: what is to be least, and what is capped.</summary>
internal readonly record struct ChoiceLabel(long Least, long Capped);

/// <summary>Labels of which none is beaten in both sums by another.</summary>
internal static class ChoiceLabels
{
    /// <summary>Sorts them, the least first, and drops those that are beaten or repeated.</summary>
    public static void Clear(List<ChoiceLabel> labels)
    {
        labels.Sort(static (a, b) => a.Least != b.Least ? a.Least.CompareTo(b.Least) : a.Capped.CompareTo(b.Capped));
        long lowest = long.MaxValue;
        int kept = 0;
        for (int i = 0; i < labels.Count; i++)
        {
            if (labels[i].Capped < lowest)
            {
                lowest = labels[i].Capped;
                labels[kept++] = labels[i];
            }
        }

        labels.RemoveRange(kept, labels.Count - kept);
    }
}
