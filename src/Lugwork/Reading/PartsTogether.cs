namespace Lugwork.Reading;

/// <summary>Parts of which a line says one thing together, or the second of which it names by its end alone: "bar and stem both 31.8", "front tyre 40-622, rear 42-622".</summary>
internal static class PartsTogether
{
    /// <summary>The figure of a piece that says of a bar and a stem together how thick the one is and the other clamps; -1 where it says anything else.</summary>
    public static int BarWithStem(List<SpecItem> clause)
    {
        int figure = -1;
        bool bar = false;
        bool stem = false;
        bool joined = false;
        for (int i = 0; i < clause.Count; i++)
        {
            SpecItem item = clause[i];
            if (item.IsNumber && (figure >= 0 || !IsClamp(item) || item.IsFraction))
            {
                return -1;
            }

            bool names = LineScan.IsPart(item);
            if ((names && !item.Is("t:bar") && !item.Is("t:stem")) || Changes(item))
            {
                return -1;
            }

            figure = item.IsNumber ? i : figure;
            joined |= IsAnd(item) && i > 0 && i + 1 < clause.Count && bar != stem && figure < 0;
            bar |= item.Is("t:bar");
            stem |= item.Is("t:stem");
        }

        return bar && stem && joined ? figure : -1;
    }

    /// <summary>A stem of which nothing but one figure is said, the same as that of the bar beside it, clamps that bar.</summary>
    public static void StemOfBar(List<SpecPart> parts, List<SpecItem> items)
    {
        int bar = parts.FindIndex(p => p.Slot == Slot.Handlebar && p.Field.Length == 0);
        int stem = parts.FindIndex(p => p.Slot == Slot.Stem && p.Field.Length == 0);
        if (bar < 0 || stem < 0)
        {
            return;
        }

        SpecItem? figure = null;
        foreach (SpecItem item in items)
        {
            if (item.Start < parts[stem].Start || item.Start >= parts[stem].End)
            {
                continue;
            }

            bool plain = item.Is("t:stem") || item.Kind == SpecTokenKind.Sign || (item.Kind == SpecTokenKind.Word && (item.Terms.IsEmpty || item.Is("m:and") || item.Is("c:colour")));
            if (item.IsNumber && (figure is not null || !IsClamp(item) || item.Value is 25.4m))
            {
                return;
            }

            if (!item.IsNumber && !plain)
            {
                return;
            }

            figure = item.IsNumber ? item : figure;
        }

        if (figure is not null && items.Exists(i => i.Start >= parts[bar].Start && i.Start < parts[bar].End && i.IsNumber && i.Value == figure.Value && !i.IsFraction && i.Unit == figure.Unit))
        {
            parts[stem] = new(Slot.Stem, figure.Start, figure.End, "bar");
        }
    }

    /// <summary>"..., hinten 42-622": the part of the other end, where the piece names an end and no part, and has figures or words of a value. Null where it is anything else.</summary>
    public static Slot? OtherEnd(List<SpecItem> clause, Slot before)
    {
        bool front = before.Key.StartsWith("front", StringComparison.Ordinal);
        if ((!front && !before.Key.StartsWith("rear", StringComparison.Ordinal)) || before == Slot.FrontWheel || before == Slot.RearWheel)
        {
            return null;
        }

        string key = (front ? "rear" : "front") + before.Key[(front ? 5 : 4)..];
        bool own = false;
        foreach (SpecItem item in clause)
        {
            if (item.Is(front ? "m:front" : "m:rear") || LineScan.IsPart(item) || Changes(item))
            {
                return null;
            }

            own |= item.Is(front ? "m:rear" : "m:front");
        }

        return own && clause.Exists(i => i.IsNumber) && Slot.Find(key) is { } other && PartForms.Of(other).Kind == PartForms.Of(before).Kind ? other : null;
    }

    /// <summary>"Vorne 40-622 Reifen": the end, what is said, and the part behind it.</summary>
    public static bool EndsInPart(List<SpecItem> clause) =>
        clause.Count is > 2 and < 12 && (clause[0].Is("m:front") || clause[0].Is("m:rear")) && !LineScan.IsPart(clause[0]) && clause.Exists(i => i.IsNumber)
        && clause.FindAll(LineScan.IsPart) is [{ } part] && part.Is("t:tyre") && !clause.Exists(Changes);

    /// <summary>"31.6 x 400 seatpost", "34.9 Sattelklemme": nothing but the size, and the post or the collar behind it.</summary>
    public static bool EndsBehindSize(List<SpecItem> clause) =>
        clause.Count is > 1 and < 7 && clause[0].IsNumber && (clause[^1].Is("t:post") || clause[^1].Is("t:seatclamp"))
        && clause.FindIndex(i => !(i.IsNumber && i.IsMillimetre) && !i.IsSign('x') && !i.IsSign('-')) == clause.Count - 1;

    private static bool Changes(SpecItem item) =>
        item.Is("m:or") || item.Is("m:not") || item.Is("m:adapt") || item.Is("m:max") || item.Is("m:min") || item.Is("t:steerer") || item.Is("m:quill") || item.Terms.Any(t => t.StartsWith("d:", StringComparison.Ordinal));

    private static bool IsClamp(SpecItem item) => item is { IsFraction: false, Unit: "" or "mm", Value: 25.4m or 25.8m or 26 or 31.7m or 31.8m or 35 };

    private static bool IsAnd(SpecItem item) => WordLists.PartsTogetherIsAnd.Contains(item.Text);
}
