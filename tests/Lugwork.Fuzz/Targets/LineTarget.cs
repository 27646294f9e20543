using Lugwork.Reading;

namespace Lugwork.Fuzz;

/// <summary>Lines of specification, with the part they are about in the line before, or none.</summary>
internal sealed class LineTarget : TextTarget
{
    public override string Name => "lines";

    public override int MostBytes => 400;

    public override IEnumerable<byte[]> Seeds => FuzzSeeds.Of(Name).SelectMany(f => System.Text.Encoding.UTF8.GetString(f).Split('\n', StringSplitOptions.RemoveEmptyEntries)).Select(l => Bytes(l.Replace(" > ", "\n", StringComparison.Ordinal)));

    public override IEnumerable<byte[]> Words => Slot.All.Select(s => s.Key + "\n").Concat(FuzzWords.OfSheets).Select(Bytes);

    public override void Run(string text)
    {
        (Slot? slot, string line) = WithSlot(text);
        SpecLine read = SpecLine.Read(slot, line);
        Law.Holds(read.Values.IsEmpty == (read.Outcome != SpecOutcome.Read) && (read.Values.IsEmpty || read.Doubts.IsEmpty), "a line gives values or doubts", line);
        Law.Holds(!read.Values.IsEmpty || !read.Doubts.IsEmpty, "a line that gives no value says why", line);
        Law.Holds(slot is null || read.Slot == slot, "a line is about the part that was given", line);
        foreach (SpecValue value in read.Values)
        {
            Within(value.Span, line, "a value");
            Law.Same(line.Substring(value.Span.Start, value.Span.Length), value.Words, "a value has its words");
            SpecLine again = SpecLine.Read(value.Slot, $"{value.Field}: {value.Key}");
            Law.Holds(again.Values is [{ } same] && same.Field == value.Field && same.Key == value.Key, "a value of a line reads back", $"{value}: {again}");
        }

        foreach (SpecDoubt doubt in read.Doubts)
        {
            Within(doubt.Span, line, "a doubt");
            Law.Holds(doubt.Reason.Length > 0, "a doubt has a reason", line);
        }

        foreach (SpecSpan left in read.Leftovers)
        {
            Within(left, line, "what is left over");
        }

        Law.Holds(read.ToString().Length > 0, "a line says what became of it", line);
    }

    private static void Within(SpecSpan span, string line, string what) =>
        Law.Holds(span.Start >= 0 && span.Length >= 0 && span.End <= line.Length, $"{what} stands in the line", $"{span} in '{line}'");
}
