namespace Lugwork.Reading;

/// <summary>The piece of a line that is about one part.</summary>
/// <param name="Slot">The part.</param>
/// <param name="Start">First character.</param>
/// <param name="End">Behind the last character.</param>
/// <param name="Field">The field that the piece is the value of; empty where it is to be read.</param>
internal sealed record SpecPart(Slot Slot, int Start, int End, string Field = "");

/// <summary>Parts a line of which nothing is known into the pieces that name a part each: "fork 15x110, frame 12x148".</summary>
internal static class SpecParts
{
    /// <summary>More parts than this stand on no line.</summary>
    private const int MostParts = 20;

    /// <summary>In a longer clause no word that joins two parts is looked for.</summary>
    private const int LongestPiece = 60;

    /// <summary>The pieces; empty where the line is about one part, or where it is not sure what a piece is about.</summary>
    public static List<SpecPart> Of(List<SpecItem> items)
    {
        List<SpecPart> parts = [];
        HashSet<Slot> slots = [];
        for (int first = 0; first < items.Count;)
        {
            int last = first;
            while (last + 1 < items.Count && items[last + 1].Clause == items[first].Clause)
            {
                last++;
            }

            last = JoinedPart(items, first, last);
            int start = first;
            while (start < last && items[start].Kind == SpecTokenKind.Sign)
            {
                start++;
            }

            // A piece starts with the name of its part, and has a figure or another word that says something of it.
            List<SpecItem> clause = items.GetRange(start, last - start + 1);
            bool named = Heads(clause) || PartsTogether.EndsInPart(clause) || PartsTogether.EndsBehindSize(clause);
            if (PartsTogether.BarWithStem(clause) is >= 0 and int both && slots.Add(Slot.Handlebar) && slots.Add(Slot.Stem))
            {
                parts.Add(new(Slot.Handlebar, clause[both].Start, clause[both].End, "clamp"));
                parts.Add(new(Slot.Stem, clause[both].Start, clause[both].End, "bar"));
                first = last + 1;
                continue;
            }

            if (parts.Count > 0 && parts[^1].Field.Length > 0 && !named && (clause.Exists(i => i.IsNumber) || Doubtful(clause, named, parts[^1].Slot)))
            {
                return [];
            }

            if (parts.Count > 0 && parts[^1].Slot == Slot.Stem && IsBarOfStem(clause) && IsOpenStem(items, first, parts[^1].Start))
            {
                parts[^1] = parts[^1] with { End = items[last].End };
            }
            else if (parts.Count > 0 && parts[^1].Slot == Slot.Crankset && named && SlotFinder.Of(clause) == Slot.Chainring && !clause.Exists(i => i.Is("m:or") || i.Is("m:not") || i.Is("m:max") || i.Is("m:and") || i.Terms.Any(t => t.StartsWith("d:", StringComparison.Ordinal))))
            {
                // "Crankset, cottered, chainring 46T": the ring that is on it.
                parts[^1] = parts[^1] with { End = items[last].End };
            }
            else if (named && SlotFinder.Of(clause) is { } slot && (parts.Count == 0 || parts[^1].Slot != slot))
            {
                // "Frame: shell ..., seatpost ...": what goes into a frame, fork or wheel is said of it.
                if (!slots.Add(slot) || parts.Count == MostParts || parts.Exists(p => !IsTwin(p.Slot, slot) && TakesIt(p.Slot, clause)))
                {
                    return [];
                }

                parts.Add(new(slot, items[start].Start, items[last].End));
            }
            else if (parts.Count > 0 && PartsTogether.OtherEnd(clause, parts[^1].Slot) is { } twin && slots.Add(twin))
            {
                parts.Add(new(twin, items[start].Start, items[last].End));
            }
            else if (parts.Count == 0 || Doubtful(clause, named, parts[^1].Slot))
            {
                return [];
            }
            else if (parts[^1].Field.Length == 0)
            {
                parts[^1] = parts[^1] with { End = items[last].End };
            }

            first = last + 1 < items.Count && items[last + 1].Clause == items[last].Clause ? last + 2 : last + 1;
        }

        PartsTogether.StemOfBar(parts, items);
        return parts;
    }

    /// <summary>"Zadelpen 31,6 x 350 en zadelklem 34,9": a word that joins two pieces, each of which starts with another part and says something of it, parts them. The last item of the piece that starts at the first.</summary>
    private static int JoinedPart(List<SpecItem> items, int first, int last)
    {
        for (int i = first + 2; i < last && last - first <= LongestPiece; i++)
        {
            bool joins = WordLists.SpecPartsJoinedPart.Contains(items[i].Text) && !items[i].IsFraction;
            if (joins && HeadsOrEnds(items.GetRange(first, i - first)) && HeadsOrEnds(items.GetRange(i + 1, last - i))
                && SlotFinder.Of(items.GetRange(first, i - first)) is { } one && SlotFinder.Of(items.GetRange(i + 1, last - i)) is { } other && one != other)
            {
                return i - 1;
            }
        }

        return last;
    }

    /// <summary>"Serraggio piega 31,8", "cintre 25,0 mm": behind a stem, a bar of which nothing but the diameter is said is the one that the stem clamps.</summary>
    private static bool IsBarOfStem(List<SpecItem> clause)
    {
        int figures = 0;
        bool bar = false;
        foreach (SpecItem item in clause)
        {
            bool of = item.Is("t:bar") || item.Is("t:clamp") || item.Is("m:outside") || item.Kind == SpecTokenKind.Sign || WordLists.SpecPartsIsBarOfStem.Contains(item.Text);
            bool size = item is { IsNumber: true, Unit: "" or "mm", IsFraction: false, Value: 25 or 25.4m or 25.8m or 26 or 31.7m or 31.8m or 35 };
            if (!of && !size)
            {
                return false;
            }

            bar |= item.Is("t:bar");
            figures += size ? 1 : 0;
        }

        return bar && figures == 1;
    }

    /// <summary>What was said of the stem is how it goes to the fork, and not yet the bar.</summary>
    private static bool IsOpenStem(List<SpecItem> items, int end, int start)
    {
        bool foot = false;
        for (int i = end - 1; i >= 0 && items[i].Start >= start && i >= end - LongestPiece; i--)
        {
            if (items[i] is { IsNumber: true, IsFraction: false, Unit: "" or "mm", Value: 25 or 25.8m or 26 or 31.7m or 31.8m or 35 })
            {
                return false;
            }

            foot |= items[i].Is("m:quill") || items[i].Is("m:threadless") || items[i].Is("t:steerer") || items[i] is { IsNumber: true, Value: 22 or 22.2m or 21.15m or 28.6m or 1.125m };
        }

        return foot;
    }

    private static bool TakesIt(Slot slot, List<SpecItem> clause) =>
        (slot == Slot.RearWheel && clause.Exists(SlotFinder.IsCassetteOfBody)) ||
        (slot == Slot.Frame || slot == Slot.Fork || slot == Slot.FrontWheel || slot == Slot.RearWheel) && clause.Exists(i => LineScan.IsPart(i) && LineScan.IsMate(i, NamedParts.Of(slot).Mates));

    private static bool HeadsOrEnds(List<SpecItem> clause) => Heads(clause) || PartsTogether.EndsBehindSize(clause);

    /// <summary>The clause starts with the name of a part, behind its end at most, and says something of it.</summary>
    private static bool Heads(List<SpecItem> clause)
    {
        int at = 0;
        while (at < clause.Count && !LineScan.IsPart(clause[at]) && (clause[at].Is("m:front") || clause[at].Is("m:rear") || (at < 2 && IsLead(clause[at]))))
        {
            at++;
        }

        if (at + 1 < clause.Count && clause[at] is { IsNumber: true, Unit: "speed" })
        {
            // "10-fach-Schaltwerk", "a 9sp HG cassette".
            at += clause[at + 1].IsSign('-') && clause[at + 1].Glued ? 2 : 1;
            at += at + 1 < clause.Count && (clause[at].Is("m:hg") || clause[at].Terms.Any(t => t.StartsWith("v:FreehubBody=", StringComparison.Ordinal))) && !LineScan.IsPart(clause[at]) ? 1 : 0;
        }

        return at < clause.Count && (LineScan.IsPart(clause[at]) || SlotFinder.IsCassetteOfBody(clause[at])) && clause.Exists(i => i.IsNumber || (!i.Terms.IsEmpty && i.Terms[0][0] == 'v'));
    }

    /// <summary>A small word before the name of a part: an article, or that it is there too or for sale.</summary>
    private static bool IsLead(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && !item.Is("m:not") && WordLists.SpecPartsIsLead.Contains(item.Text);

    /// <summary>What joins or parts pieces in another way than by their order: the line is read as a whole.</summary>
    private static bool Doubtful(List<SpecItem> clause, bool named, Slot part) =>
        named || clause.Exists(i => i.Is("m:or") || i.Is("m:not") || i.Is("m:adapt") || i.Is("d:hedge") || i.Is("d:condition") || i.Is("d:option") || i.Is("d:extra") || i.Is("d:past") || i.Is("d:thing") || i.Is("m:cups") || (i.Is("m:front") && !IsOfEnd(part, front: true)) || (i.Is("m:rear") && !IsOfEnd(part, front: false)));

    /// <summary>"Frame: ..., rear 12x148": the end that the part itself has.</summary>
    private static bool IsOfEnd(Slot part, bool front) => front ? part == Slot.Fork || part.Key.StartsWith("front", StringComparison.Ordinal) : part == Slot.Frame || part.Key.StartsWith("rear", StringComparison.Ordinal);

    /// <summary>The same part of the other end.</summary>
    private static bool IsTwin(Slot one, Slot other) => one != other && PartForms.Of(one).Kind == PartForms.Of(other).Kind;
}
