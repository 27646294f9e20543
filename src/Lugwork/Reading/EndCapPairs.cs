namespace Lugwork.Reading;

/// <summary>End caps for two axles, "end caps supplied: QR 135 and 12x142": both go, so they can be changed, and neither is the one axle of the hub.</summary>
internal static class EndCapPairs
{
    private const int Reach = 10;

    public static void Mend(List<SpecItem> items)
    {
        for (int i = 0; i < items.Count; i++)
        {
            if (!items[i].Is("m:endcaps"))
            {
                continue;
            }

            bool denied = (i > 0 && IsDenied(items[i - 1])) || (i > 1 && IsDenied(items[i - 2]));
            int to = Math.Min(items.Count, i + 1 + Reach);
            (int release, int through, int and, int last) = (-1, -1, -1, -1);
            for (int j = i + 1; j < to; j++)
            {
                SpecItem item = items[j];
                if (IsDenied(item) || item.Is("m:or") || item.IsSign(';') || item.IsSign('.'))
                {
                    break;
                }

                if (item.Is("m:qr"))
                {
                    release = j;
                    last = Math.Max(last, j + 1 < to && items[j + 1] is { IsNumber: true, Value: 100 or 130 or 135 } ? j + 1 : j);
                }
                else if (item is { IsNumber: true, Value: 12 or 15 } && j + 2 < items.Count && items[j + 1].IsSign('x') && items[j + 2].IsNumber)
                {
                    through = j;
                    last = Math.Max(last, j + 2);
                    j += 2;
                }

                and = item.IsSign('+') || item.IsSign('&') || item.Text is "and" or "und" or "et" or "y" or "e" or "en" or "plus" ? j : and;
            }

            if (release > i && through > i && and > Math.Min(release, through) && and < Math.Max(release, through))
            {
                Say(items, i, last, denied);
            }
        }
    }

    private static bool IsDenied(SpecItem item) => item.Is("m:not") || item.Is("m:pas") || item.Is("d:gone") || WordLists.EndCapPairsIsDenied.Contains(item.Text);

    private static void Say(List<SpecItem> items, int caps, int last, bool denied)
    {
        for (int j = caps; j <= last; j++)
        {
            SpecItem item = items[j];
            if (item.IsNumber)
            {
                item.Unit = "other";
            }
            else if (item.Kind == SpecTokenKind.Word)
            {
                items[j] = new() { Kind = SpecTokenKind.Word, Text = j == caps ? item.Text : "", Start = item.Start, End = item.End, Glued = item.Glued, Clause = item.Clause, Terms = [j == caps && !denied ? "v:HubEnds=swappable" : "m:nothing"] };
            }
        }
    }
}
