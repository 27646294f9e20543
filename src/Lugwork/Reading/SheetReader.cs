using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Reads the lines of a sheet, puts like with like and builds the parts.</summary>
internal sealed class SheetReader(SpecVocabulary vocabulary)
{
    private readonly List<SpecValue> _values = [];
    private readonly List<SpecDoubt> _doubts = [];
    private readonly List<string> _leftovers = [];

    public List<SheetLine> LinesOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > SpecSheet.MostCharacters)
        {
            _doubts.Add(new SpecDoubt { Kind = SpecDoubtKind.Refused, Reason = $"a sheet has at most {SpecSheet.MostCharacters} characters", Span = new(0, text.Length), Words = text[..100] });
            return [];
        }

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

        return null;
    }

    public SpecSheet Read(List<SheetLine> lines, Slot? slot, bool complete)
    {
        foreach (SheetLine line in lines)
        {
            ReadLine(line, complete ? SlotOf(line.Text) : slot);
        }

        return Joined();
    }

    /// <summary>The part that the head of a line names: what stands before its colon, tab or sign of equality, or the line.</summary>
    private Slot? SlotOf(string line)
    {
        int sign = line.AsSpan().IndexOfAny(':', '\t', '=');
        List<SpecItem> items = ItemCutter.Cut(line, vocabulary);
        Slot? slot = (sign > 0 ? SlotFinder.Of(ItemCutter.Cut(line.AsSpan(0, sign), vocabulary)) : null) ?? SlotFinder.Of(items);

        // "Pedalier" is a word for both: with teeth it is the cranks.
        return slot == Slot.BottomBracket && items.Exists(i => i.Unit == "teeth") ? Slot.Crankset : slot;
    }

    private void ReadLine(SheetLine line, Slot? slot)
    {
        SpecLine read = SpecLine.Read(slot, line.Text.AsSpan(), vocabulary);
        foreach (SpecValue value in read.Values)
        {
            _values.Add(value with { Span = Place(line, value.Span) });
        }

        bool nothing = true;
        foreach (SpecDoubt doubt in read.Doubts)
        {
            if (doubt.Kind is SpecDoubtKind.NothingNamed or SpecDoubtKind.NoPart)
            {
                continue;
            }

            nothing = false;
            _doubts.Add(doubt with { Span = Place(line, doubt.Span) });
        }

        if (read.Values.IsEmpty && nothing)
        {
            _leftovers.Add(line.Text);
            return;
        }

        foreach (SpecSpan left in read.Leftovers)
        {
            _leftovers.Add(line.Text.Substring(left.Start, left.Length));
        }
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
                accepted.Add(different[0]);
            }
            else
            {
                conflicts.Add(new(said.Key.Slot, said.Key.Field, [.. different]));
            }
        }

        Dictionary<Slot, Part> parts = [];
        foreach (IGrouping<Slot, SpecValue> said in accepted.GroupBy(v => v.Slot))
        {
            List<SpecProblem> problems = [];
            parts[said.Key] = PartForms.Of(said.Key).ReadProperties(said.Select(v => new KeyValuePair<string, string>(v.Field, v.Key)), said.Key.Key, problems);
            foreach (SpecProblem problem in problems)
            {
                _doubts.Add(new SpecDoubt { Kind = SpecDoubtKind.Contradiction, Slot = said.Key, Field = problem.Where[(problem.Where.LastIndexOf('.') + 1)..], Reason = problem.Reason, Span = default, Words = "" });
            }
        }

        return new([.. accepted], [.. conflicts], [.. _doubts], [.. _leftovers.Where(l => l.Trim().Length > 0)], parts);
    }
}
