using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Reads the lines of a sheet, puts like with like and builds the parts.</summary>
internal sealed class SheetReader(SpecVocabulary vocabulary)
{
    private readonly List<SpecValue> _values = [];
    private readonly List<SpecDoubt> _doubts = [];
    private readonly List<string> _leftovers = [];
    private string _text = "";

    public List<SheetLine> LinesOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > SpecSheet.MostCharacters)
        {
            _doubts.Add(new SpecDoubt { Kind = SpecDoubtKind.Refused, Reason = $"a sheet has at most {SpecSheet.MostCharacters} characters", Span = new(0, text.Length), Words = text[..100] });
            return [];
        }

        _text = text;
        return SheetText.Lines(text);
    }

    /// <summary>The end of the wheel that the sheet says first.</summary>
    public Slot? WheelOf(List<SheetLine> lines)
    {
        foreach (SheetLine line in lines)
        {
            List<SpecItem> items = ItemCutter.Cut(line.Text, vocabulary);
            bool front = items.Exists(i => i.Is("m:front"));
            bool rear = items.Exists(i => i.Is("m:rear"));
            if (front != rear)
            {
                return front ? Slot.FrontWheel : Slot.RearWheel;
            }
        }

        // A hub that only one end has, or a freehub.
        bool asFront = SaysHub(lines, Slot.FrontWheel);
        bool asRear = SaysHub(lines, Slot.RearWheel);
        return asFront == asRear ? null : asFront ? Slot.FrontWheel : Slot.RearWheel;
    }

    private bool SaysHub(List<SheetLine> lines, Slot slot) =>
        lines.Exists(l => SpecLine.Read(slot, l.Text.AsSpan(), vocabulary).Values.Any(v => v.Field == "hub" || (v.Field is "body" or "thread" && slot == Slot.RearWheel)));

    public SpecSheet Read(List<SheetLine> lines, Slot? slot, bool complete)
    {
        Slot? section = null;
        foreach (SheetLine line in lines)
        {
            if (complete && IsHeading(line.Text, out Slot? under))
            {
                section = under;
            }

            if (complete && BothEnds.Of(line, vocabulary) is { } both)
            {
                ReadLine(both.Line, both.Front, line.Text);
                int left = _leftovers.Count;
                ReadLine(both.Line, both.Rear, line.Text);
                _leftovers.RemoveRange(left, _leftovers.Count - left);
                continue;
            }

            ReadLine(line, !complete ? slot : NamesParts(line.Text) ? null : SlotOf(line.Text) ?? section);
        }

        return Joined();
    }

    /// <summary>"Stem 31.8 mm, 1-1/8. Handlebar 31.8 mm": several parts in a line without a heading, each in clauses of its own.</summary>
    private bool NamesParts(string line) => line.AsSpan().IndexOfAny(':', '\t', '=') < 0 && SpecParts.Of(ItemCutter.Cut(line, vocabulary)).Count > 1;

    /// <summary>The part that the head of a line names: what stands before its colon, tab or sign of equality, or the line.</summary>
    private Slot? SlotOf(string line)
    {
        int sign = line.AsSpan().IndexOfAny(':', '\t', '=');
        List<SpecItem> items = ItemCutter.Cut(line, vocabulary);
        Slot? slot = (sign > 0 ? SlotFinder.Of(ItemCutter.Cut(line.AsSpan(0, sign), vocabulary)) : null) ?? SlotFinder.Of(items);

        // "Pedalier" is a word for both: with teeth it is the cranks.
        return slot == Slot.BottomBracket && (items.Exists(i => i.Unit == "teeth") || NamesRings(items)) ? Slot.Crankset : slot;
    }

    /// <summary>50/34: the teeth of two rings.</summary>
    private static bool NamesRings(List<SpecItem> items)
    {
        for (int i = 0; i + 2 < items.Count; i++)
        {
            if (items[i] is { IsNumber: true, Unit: "", Value: >= 34 and <= 60 } && (items[i + 1].IsSign('/') || items[i + 1].IsSign('-')) && items[i + 2] is { IsNumber: true, Unit: "", Value: >= 20 and <= 46 } && items[i].Value - items[i + 2].Value >= 8)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A heading names one part and says nothing of it; the lines under it that name none are about that part.</summary>
    private bool IsHeading(string line, out Slot? slot)
    {
        slot = null;
        List<SpecItem> items = ItemCutter.Cut(line, vocabulary);
        int words = items.Count(i => i.Kind == SpecTokenKind.Word);
        bool heading = words is > 0 and <= 4 && !items.Exists(i => i.IsNumber || (i.Kind == SpecTokenKind.Sign && i != items[^1] && !i.IsSign('*') && !i.IsSign('#') && !i.IsSign('-') && !i.IsSign('=') && !i.IsSign('[') && !i.IsSign('&')));
        if (heading && items.TrueForAll(i => i.Kind == SpecTokenKind.Sign || LineScan.IsPart(i) || i.Is("m:front") || i.Is("m:rear") || i.Terms.IsEmpty))
        {
            slot = items.Exists(i => i.Kind == SpecTokenKind.Word && i.Terms.IsEmpty) ? null : SlotFinder.Of(items);
        }

        return heading;
    }

    private void ReadLine(SheetLine line, Slot? slot, string? whole = null)
    {
        SpecLine read = SpecLine.Read(slot, line.Text.AsSpan(), vocabulary);
        foreach (SpecValue value in read.Values.IsEmpty ? ClearOf(line.Text, slot, read) : read.Values)
        {
            _values.Add(value.At(Place(line, value.Span), (whole ?? line.Text).Substring(value.Span.Start, value.Span.Length)));
        }

        bool nothing = true;
        foreach (SpecDoubt doubt in read.Doubts)
        {
            if (doubt.Kind is SpecDoubtKind.NothingNamed or SpecDoubtKind.NoPart)
            {
                continue;
            }

            nothing = false;
            _doubts.Add(doubt.At(Place(line, doubt.Span), doubt.Words));
        }

        if (read.Values.IsEmpty && nothing)
        {
            _leftovers.Add(Original(line));
            return;
        }

        foreach (SpecSpan left in read.Leftovers)
        {
            _leftovers.Add(line.Text.Substring(left.Start, left.Length));
        }
    }

    /// <summary>
    /// "Frame: steel, rear 12x142, BSA": a line of a sheet lists many things, and a doubt about one of them is none about the others.
    /// What is read where the clauses in doubt are blank; nothing where the doubt is about the line, or where the same field is read elsewhere in it.
    /// </summary>
    private ImmutableArray<SpecValue> ClearOf(string text, Slot? slot, SpecLine read)
    {
        if (slot is null || read.Doubts.IsEmpty || !read.Doubts.All(d => d.Field.Length > 0 && d.Kind is SpecDoubtKind.Ambiguous or SpecDoubtKind.Refused))
        {
            return [];
        }

        List<SpecItem> items = ItemCutter.Cut(text, vocabulary);
        HashSet<int> doubtful = [.. items.Where(i => i.Kind != SpecTokenKind.Sign && read.Doubts.Any(d => i.Start < d.Span.End && d.Span.Start < i.End)).Select(i => i.Clause)];
        char[] clear = text.ToCharArray();
        foreach (SpecItem item in items)
        {
            if (doubtful.Contains(item.Clause))
            {
                clear.AsSpan(item.Start, item.End - item.Start).Fill(' ');
            }
        }

        SpecLine rest = SpecLine.Read(slot, clear, vocabulary);
        return rest.Values.Any(v => read.Doubts.Any(d => d.Field == v.Field)) ? [] : rest.Values;
    }

    /// <summary>The line as it stands in the sheet; without tags where it has some.</summary>
    private string Original(SheetLine line)
    {
        string original = line.At.Length == 0 ? line.Text : _text[line.At[0]..(line.At[^1] + 1)];
        return original.Contains('<', StringComparison.Ordinal) ? line.Text : original;
    }

    private static SpecSpan Place(SheetLine line, SpecSpan span)
    {
        if (span.Length == 0 || span.End > line.At.Length)
        {
            return span;
        }

        int start = line.At[span.Start];
        return new(start, line.At[span.End - 1] + 1 - start);
    }

    private SpecSheet Joined()
    {
        List<SpecValue> accepted = [];
        List<SpecConflict> conflicts = [];
        foreach (IGrouping<(Slot Slot, string Field), SpecValue> said in _values.GroupBy(v => (v.Slot, v.Field)))
        {
            SpecValue[] different = [.. said.DistinctBy(v => v.Key)];
            if (different.Length == 1)
            {
                // Said once in so many words and once by what is usual, it is said.
                accepted.Add(said.FirstOrDefault(v => v.Assumed.IsEmpty) ?? different[0]);
            }
            else
            {
                conflicts.Add(new(said.Key.Slot, said.Key.Field, [.. different]));
            }
        }

        Dictionary<Slot, Part> parts = [];
        foreach (IGrouping<Slot, SpecValue> said in accepted.GroupBy(v => v.Slot).ToArray())
        {
            IPartForm form = PartForms.Of(said.Key);
            List<SpecValue> own = [.. said];
            for (bool isWhole = false; !isWhole;)
            {
                List<SpecProblem> problems = [];
                parts[said.Key] = form.ReadProperties(own.Select(v => new KeyValuePair<string, string>(v.Field, v.Key)), said.Key.Key, problems);

                // What another field excludes is in doubt and not taken, so that the part is one that can be.
                isWhole = true;
                foreach (SpecProblem problem in problems)
                {
                    string field = problem.Where[(problem.Where.LastIndexOf('.') + 1)..];
                    SpecValue? refused = own.Find(v => v.Field == field);
                    _doubts.Add(new SpecDoubt { Kind = SpecDoubtKind.Contradiction, Slot = said.Key, Field = field, Reason = problem.Reason, Span = refused?.Span ?? default, Words = refused?.Words ?? "" });
                    if (refused is not null)
                    {
                        own.Remove(refused);
                        accepted.Remove(refused);
                        isWhole = false;
                    }
                }
            }

            foreach (SpecValue value in own.Where(v => !v.Assumed.IsEmpty))
            {
                parts[said.Key] = form.TrySet(parts[said.Key], value.Field, value.Key, new(EvidenceKind.Assumed, value.Words), out Part marked, out _) ? marked : parts[said.Key];
            }
        }

        return new([.. accepted], [.. conflicts], [.. _doubts], [.. _leftovers.Where(l => l.Trim().Length > 0)], parts);
    }
}
