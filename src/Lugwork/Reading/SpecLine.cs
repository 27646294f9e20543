using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>What became of a line.</summary>
public enum SpecOutcome
{
    /// <summary>Nothing was read. The default.</summary>
    Refused = 0,

    /// <summary>It can be several things; none was accepted.</summary>
    Ambiguous,

    /// <summary>It was read, and nothing in it is in doubt.</summary>
    Read,
}

/// <summary>A line of a spec sheet, a shop's list or a message, read as typed values.</summary>
/// <remarks>
/// Any order, any case, decimal points and commas, inches and millimetres, six languages. It never guesses: where one thing in the line is in doubt,
/// the line gives no value, and says what it can be and why. The time is linear in the text, nothing is thrown for any text, and the culture of the process does not matter.
/// </remarks>
public sealed class SpecLine
{
    private SpecLine(Slot? slot, ImmutableArray<SpecValue> values, ImmutableArray<SpecDoubt> doubts, ImmutableArray<SpecSpan> leftovers)
    {
        Slot = slot;
        Values = values;
        Doubts = doubts;
        Leftovers = leftovers;
    }

    /// <summary>The part that it is about: the one given, or the one that the line names; null where it names none.</summary>
    public Slot? Slot { get; }

    /// <summary>What became of it.</summary>
    public SpecOutcome Outcome => !Values.IsEmpty ? SpecOutcome.Read : Doubts.Any(d => d.Kind == SpecDoubtKind.Ambiguous) ? SpecOutcome.Ambiguous : SpecOutcome.Refused;

    /// <summary>The values, where nothing is in doubt; otherwise empty.</summary>
    public ImmutableArray<SpecValue> Values { get; }

    /// <summary>What was not accepted, with its readings; empty where the line was read.</summary>
    public ImmutableArray<SpecDoubt> Doubts { get; }

    /// <summary>Pieces of the line from which nothing was read.</summary>
    public ImmutableArray<SpecSpan> Leftovers { get; }

    /// <summary>The first reason why it was not read; empty where it was.</summary>
    public string Reason => Doubts.IsEmpty ? "" : Doubts[0].Reason;

    /// <summary>Reads a line.</summary>
    /// <param name="hint">The part that it is about, where that is known.</param>
    /// <param name="text">Any text.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    public static SpecLine Read(Slot? hint, ReadOnlySpan<char> text, SpecVocabulary? vocabulary = null)
    {
        return PageText.Decode(text, out string plain, out int[] at) ? ReadSure(hint, plain, vocabulary).At(at, text) : ReadSure(hint, text, vocabulary);
    }

    /// <summary>What was read, unless the line says that it is of another thing, or hearsay.</summary>
    private static SpecLine ReadSure(Slot? hint, ReadOnlySpan<char> text, SpecVocabulary? vocabulary)
    {
        SpecLine line = ReadPlain(hint, text, vocabulary);
        if (line.Values.IsEmpty || OtherBike.Of(text, line.Values) is not { } span)
        {
            return line;
        }

        SpecDoubt doubt = new() { Kind = SpecDoubtKind.Ambiguous, Slot = line.Slot, Reason = "the words beside it speak of another part, or do not vouch for it", Span = span, Words = text[span.Start..span.End].ToString() };
        return new(line.Slot, [], [doubt], []);
    }

    private static SpecLine ReadPlain(Slot? hint, ReadOnlySpan<char> text, SpecVocabulary? vocabulary)
    {
        List<SpecItem> items = ItemCutter.Cut(text, vocabulary ?? SpecVocabulary.Default, out bool tooMuch);
        if (hint == Slot.Frame)
        {
            PlacedWords.MendFrame(items);
        }
        else if (hint is not null && (hint.Key.EndsWith("ThruAxle", StringComparison.Ordinal) || hint.Key.EndsWith("AxleNuts", StringComparison.Ordinal)))
        {
            PlacedWords.MendEnds(items);
        }
        else if (hint == Slot.Saddle || hint == Slot.Seatpost || hint == Slot.Dropper)
        {
            PlacedWords.MendSeat(items, hint == Slot.Saddle);
        }
        else if (hint == Slot.Fork || hint == Slot.Stem)
        {
            PlacedWords.MendSteering(items, hint == Slot.Stem);
        }

        if (tooMuch)
        {
            return new(hint, [], [Nothing(hint, text, SpecDoubtKind.Refused, "there are too many words or figures for one line")], Whole(text));
        }

        if (hint is null && SpecParts.Of(items) is { Count: > 1 } parts)
        {
            return OfParts(parts, text, vocabulary);
        }

        Slot? slot = hint ?? SlotFinder.Of(items);
        if (slot is null)
        {
            return new(null, [], [Nothing(null, text, SpecDoubtKind.NoPart, "the line names no part, or not which end it goes to")], Whole(text));
        }

        if (hint is not null && ForeignPart.IsOnly(hint, items, text))
        {
            return new(hint, [], [Nothing(hint, text, SpecDoubtKind.NothingNamed, "the line is about another part")], Whole(text));
        }

        if (NamedField.TryRead(slot, text, out SpecField? field, out FieldReading reading, out int from))
        {
            return OfField(slot, field!, reading, text, from);
        }

        LineScan scan = new(slot, items, guessed: hint is null);
        scan.Run();
        bool open = scan.Values.Count == 0 || scan.Doubts.Exists(d => d.Kind == LineDoubtKind.Several);
        if (open && hint is not null && !scan.Doubts.Exists(d => d.Kind is LineDoubtKind.Outside or LineDoubtKind.Conflict or LineDoubtKind.Broken) && NamedValue.TryRead(slot, text, out SpecField? named, out FieldReading value))
        {
            return OfField(slot, named!, value, text, 0);
        }

        if (scan.Values.Count == 0 && scan.Doubts.Count == 0 && hint is not null && ShortForm.TryRead(slot, text, out SpecField? worded, out FieldReading said))
        {
            return OfField(slot, worded!, said, text, 0);
        }

        return Told(slot, scan, items, text, hint is null);
    }

    /// <summary>Reads a line.</summary>
    /// <param name="hint">The part that it is about, where that is known.</param>
    /// <param name="text">Any text.</param>
    public static SpecLine Read(Slot? hint, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(hint, text.AsSpan());
    }

    /// <summary>Reads a line by the words of a vocabulary.</summary>
    /// <param name="hint">The part that it is about, where that is known.</param>
    /// <param name="text">Any text.</param>
    /// <param name="vocabulary">The words to read by.</param>
    public static SpecLine Read(Slot? hint, string text, SpecVocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(vocabulary);
        return Read(hint, text.AsSpan(), vocabulary);
    }

    /// <summary>The values and doubts in words, one a line.</summary>
    public override string ToString() => string.Join(Environment.NewLine, Values.Select(v => v.ToString()).Concat(Doubts.Select(d => d.ToString())));

    /// <summary>A row that is longer than rows may be.</summary>
    internal static SpecLine TooLong(Slot? slot, string text) =>
        new(slot, [], [new SpecDoubt { Kind = SpecDoubtKind.Refused, Slot = slot, Reason = "the row is too long", Span = new(0, text.Length), Words = text[..200] }], []);

    /// <summary>The same with its places in the text from which it was decoded.</summary>
    private SpecLine At(int[] at, ReadOnlySpan<char> text)
    {
        ImmutableArray<SpecValue>.Builder values = ImmutableArray.CreateBuilder<SpecValue>(Values.Length);
        foreach (SpecValue value in Values)
        {
            SpecSpan span = Place(value.Span, at);
            values.Add(value.At(span, text[span.Start..span.End].ToString()));
        }

        ImmutableArray<SpecDoubt>.Builder doubts = ImmutableArray.CreateBuilder<SpecDoubt>(Doubts.Length);
        foreach (SpecDoubt doubt in Doubts)
        {
            SpecSpan span = Place(doubt.Span, at);
            doubts.Add(doubt.At(span, text[span.Start..span.End].ToString()));
        }

        return new(Slot, values.ToImmutable(), doubts.ToImmutable(), [.. Leftovers.Select(l => Place(l, at))]);
    }

    private static SpecSpan Place(SpecSpan span, int[] at) => new(at[span.Start], at[span.End] - at[span.Start]);

    /// <summary>A line that names several parts, each in clauses of its own: each is read by itself, and a doubt in one is a doubt of the line.</summary>
    private static SpecLine OfParts(List<SpecPart> parts, ReadOnlySpan<char> text, SpecVocabulary? vocabulary)
    {
        ImmutableArray<SpecValue>.Builder values = ImmutableArray.CreateBuilder<SpecValue>();
        ImmutableArray<SpecDoubt>.Builder doubts = ImmutableArray.CreateBuilder<SpecDoubt>();
        ImmutableArray<SpecSpan>.Builder left = ImmutableArray.CreateBuilder<SpecSpan>();
        foreach (SpecPart part in parts)
        {
            SpecLine read = part.Field.Length > 0 ? OfWhole(part, text[part.Start..part.End]) : ReadPlain(part.Slot, text[part.Start..part.End], vocabulary);
            values.AddRange(read.Values.Select(v => v.At(new(v.Span.Start + part.Start, v.Span.Length), v.Words)));
            doubts.AddRange(read.Doubts.Where(d => d.Kind != SpecDoubtKind.NothingNamed).Select(d => d.At(new(d.Span.Start + part.Start, d.Span.Length), d.Words)));
            left.AddRange((read.Values.IsEmpty ? [new SpecSpan(0, part.End - part.Start)] : read.Leftovers).Select(l => new SpecSpan(l.Start + part.Start, l.Length)));
        }

        if (values.Count == 0 && doubts.Count == 0)
        {
            doubts.Add(Nothing(parts[0].Slot, text, SpecDoubtKind.NothingNamed, "no interface is named in it"));
        }

        return doubts.Count > 0 ? new(parts[0].Slot, [], doubts.ToImmutable(), []) : new(parts[0].Slot, values.ToImmutable(), [], left.ToImmutable());
    }

    /// <summary>A piece that is the value of one field and nothing more.</summary>
    private static SpecLine OfWhole(SpecPart part, ReadOnlySpan<char> text)
    {
        SpecField field = SpecFields.Of(part.Slot, part.Field);
        return OfField(part.Slot, field, field.Read(text[..(text.LastIndexOfAnyInRange('0', '9') + 1)].ToString()), text, 0);
    }

    private static SpecLine OfField(Slot slot, SpecField field, FieldReading reading, ReadOnlySpan<char> text, int from)
    {
        SpecSpan span = new(from, text.Length - from);
        return reading.Keys is [string key]
            ? new(slot, [Value(slot, field.Type, new LineFinding(field.Key, key, span.Start, span.End, ""), text, [])], [], [])
            : new(slot, [], [new SpecDoubt { Kind = reading.Keys.IsEmpty ? SpecDoubtKind.Refused : SpecDoubtKind.Ambiguous, Slot = slot, Field = field.Key, Readings = reading.Keys, Reason = reading.Reason, Span = span, Words = text[from..].ToString() }], []);
    }

    private static SpecLine Told(Slot slot, LineScan scan, List<SpecItem> items, ReadOnlySpan<char> text, bool bySlotOfLine)
    {
        Dictionary<string, SpecField> fields = SpecFields.Of(slot);
        if (scan.Doubts.Count == 0 && scan.Values.Count > 0)
        {
            ImmutableArray<SpecValue>.Builder values = ImmutableArray.CreateBuilder<SpecValue>(scan.Values.Count);
            Guesses guesses = new(items, scan.Values.Values);
            foreach (LineFinding finding in scan.Values.Values)
            {
                values.Add(Value(slot, fields[finding.Field].Type, finding, text, guesses.Of(finding, bySlotOfLine)));
            }

            return new(slot, values.ToImmutable(), [], LeftOver(items, text));
        }

        if (scan.Doubts.Count == 0)
        {
            return new(slot, [], [Nothing(slot, text, SpecDoubtKind.NothingNamed, "no interface is named in it")], Whole(text));
        }

        ImmutableArray<SpecDoubt>.Builder doubts = ImmutableArray.CreateBuilder<SpecDoubt>(scan.Doubts.Count);
        foreach (LineDoubt doubt in scan.Doubts)
        {
            doubts.Add(new SpecDoubt
            {
                Kind = doubt.Kind switch
                {
                    LineDoubtKind.Several => SpecDoubtKind.Ambiguous,
                    LineDoubtKind.Conflict => SpecDoubtKind.Contradiction,
                    LineDoubtKind.Outside => SpecDoubtKind.OutsideTheLibrary,
                    LineDoubtKind.Broken => SpecDoubtKind.BrokenFigure,
                    _ => SpecDoubtKind.Refused,
                },
                Slot = slot,
                Field = doubt.Field,
                Readings = doubt.Keys,
                Reason = doubt.Reason,
                Span = new(doubt.Start, doubt.End - doubt.Start),
                Words = text[doubt.Start..doubt.End].ToString(),
            });
        }

        return new(slot, [], doubts.ToImmutable(), []);
    }

    private static SpecValue Value(Slot slot, FieldType type, LineFinding finding, ReadOnlySpan<char> text, ImmutableArray<string> guessed) => new()
    {
        Slot = slot,
        Field = finding.Field,
        Type = type.Name,
        Key = finding.Key,
        Span = new(finding.Start, finding.End - finding.Start),
        Words = text[finding.Start..finding.End].ToString(),
        Assumed = finding.Assumed.Length > 0 ? [finding.Assumed, .. guessed] : guessed,
    };

    private static SpecDoubt Nothing(Slot? slot, ReadOnlySpan<char> text, SpecDoubtKind kind, string reason) =>
        new() { Kind = kind, Slot = slot, Reason = reason, Span = new(0, text.Length), Words = text.ToString() };

    private static ImmutableArray<SpecSpan> Whole(ReadOnlySpan<char> text) => text.IsWhiteSpace() ? [] : [new(0, text.Length)];

    /// <summary>The clauses in which no item was used.</summary>
    private static ImmutableArray<SpecSpan> LeftOver(List<SpecItem> items, ReadOnlySpan<char> text)
    {
        ImmutableArray<SpecSpan>.Builder left = ImmutableArray.CreateBuilder<SpecSpan>();
        for (int i = 0; i < items.Count;)
        {
            int start = -1;
            int end = -1;
            bool used = false;
            int clause = items[i].Clause;
            for (; i < items.Count && items[i].Clause == clause; i++)
            {
                if (items[i].Kind == SpecTokenKind.Sign)
                {
                    continue;
                }

                used |= items[i].Used;
                start = start < 0 ? items[i].Start : start;
                end = items[i].End;
            }

            if (!used && start >= 0)
            {
                left.Add(new(start, end - start));
            }
        }

        return left.ToImmutable();
    }
}
