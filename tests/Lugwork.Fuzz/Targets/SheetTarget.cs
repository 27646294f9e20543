using Lugwork.Reading;

namespace Lugwork.Fuzz;

/// <summary>Spec sheets: of the part in the first line, or of a whole bicycle.</summary>
internal sealed class SheetTarget : TextTarget
{
    public override string Name => "sheets";

    public override int MostBytes => 4_000;

    public override IEnumerable<byte[]> Seeds => FuzzSeeds.Of(Name).Concat(FuzzSeeds.In("samples", "SpecToNeeds", "sheets").Where(f => f.Length < 4_000));

    public override IEnumerable<byte[]> Words => Slot.All.Select(s => s.Key + "\n").Concat(FuzzWords.OfSheets).Concat(["\n", "\r\n", "\n\n", "Frame\n", "Fork\n", "<table><tr><td>", "</tr>", "# "]).Select(Bytes);

    public override void Run(string text)
    {
        (Slot? slot, string rest) = WithSlot(text);
        SpecSheet sheet = slot is null ? SpecSheet.ReadComplete(rest) : slot == Slot.FrontWheel ? SpecSheet.ReadWheel(rest) : SpecSheet.Read(slot, rest);
        foreach (SpecValue value in sheet.Values)
        {
            Law.Holds(value.Span.Start >= 0 && value.Span.Length >= 0 && value.Span.End <= rest.Length, "a value stands in the sheet", value.ToString());
            Law.Holds(sheet.Of(value.Slot) is not null, "a value of a sheet is of a part", value.ToString());
        }

        Law.Holds(sheet.Doubts.All(d => d.Reason.Length > 0 && d.Span.Start >= 0 && d.Span.End <= rest.Length), "a doubt stands in the sheet and has a reason", rest);
        Law.Holds(!SaysSomething(rest) || !sheet.Values.IsEmpty || !sheet.Conflicts.IsEmpty || !sheet.Doubts.IsEmpty || !sheet.Leftovers.IsEmpty, "a sheet drops nothing", rest);
        Build build = Build.From(sheet.Frame);
        foreach (Slot read in sheet.Slots)
        {
            PartTarget.Whole(read, sheet.Of(read)!, rest);
            build = read == Slot.Frame ? build : build.With(sheet.Of(read)!, read);
        }

        BuildTarget.Whole(build);
        foreach (SpecValue value in sheet.Values)
        {
            Law.Holds(PartForms.Of(value.Slot).TextOf(sheet.Of(value.Slot)!, value.Field) is { } said && said != "unknown", "an accepted value of a sheet is in its part", value.ToString());
        }
    }

    /// <summary>Whether a letter or digit stands outside of tags and entities.</summary>
    private static bool SaysSomething(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '<' && text.IndexOf('>', i) is > 0 and int end)
            {
                i = end;
            }
            else if (text[i] == '&' && text.IndexOf(';', i) is > 0 and int semicolon)
            {
                i = semicolon;
            }
            else if (char.IsLetterOrDigit(text[i]))
            {
                return true;
            }
        }

        return false;
    }
}
