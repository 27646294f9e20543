using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>A spec sheet, read line by line into parts: what was read with its words, what contradicts itself, what is in doubt, and what is left over.</summary>
/// <remarks>
/// Plain text, bullets, "key: value", "key=value", tab-separated columns and lists of pairs are read; tags of HTML are stripped, no more.
/// A field that the sheet says twice alike is one value; said differently it is a conflict, and the part does not have it. Nothing is dropped:
/// each line ends as values, doubts or leftovers. Text beyond 1,000,000 characters is refused.
/// </remarks>
public sealed class SpecSheet
{
    /// <summary>The longest sheet that is read, characters.</summary>
    public static int MostCharacters => 1_000_000;

    private readonly Dictionary<Slot, Part> _parts;

    internal SpecSheet(ImmutableArray<SpecValue> values, ImmutableArray<SpecConflict> conflicts, ImmutableArray<SpecDoubt> doubts, ImmutableArray<string> leftovers, Dictionary<Slot, Part> parts)
    {
        Values = values;
        Conflicts = conflicts;
        Doubts = doubts;
        Leftovers = leftovers;
        _parts = parts;
    }

    /// <summary>Every value that was accepted, each field once, in the order of the sheet. Spans count in the whole text.</summary>
    public ImmutableArray<SpecValue> Values { get; }

    /// <summary>Fields for which the sheet says different values.</summary>
    public ImmutableArray<SpecConflict> Conflicts { get; }

    /// <summary>What can be several things or was refused, with the reason.</summary>
    public ImmutableArray<SpecDoubt> Doubts { get; }

    /// <summary>Pieces of text from which nothing was read.</summary>
    public ImmutableArray<string> Leftovers { get; }

    /// <summary>The slots of which something was read.</summary>
    public ImmutableArray<Slot> Slots => [.. _parts.Keys.OrderBy(s => s.Number)];

    /// <summary>The frame as far as it was read; one of which nothing is known where nothing was.</summary>
    public Frame Frame => (Frame)(Of(Slot.Frame) ?? new Frame());

    /// <summary>The part in a slot as far as it was read; null where nothing was.</summary>
    /// <param name="slot">The slot.</param>
    public Part? Of(Slot slot)
    {
        ArgumentNullException.ThrowIfNull(slot);
        return _parts.GetValueOrDefault(slot);
    }

    /// <summary>Reads the sheet of a frame.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    public static SpecSheet ReadFrame(string text, SpecVocabulary? vocabulary = null) => Read(Slot.Frame, text, vocabulary);

    /// <summary>Reads the sheet of a fork.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    public static SpecSheet ReadFork(string text, SpecVocabulary? vocabulary = null) => Read(Slot.Fork, text, vocabulary);

    /// <summary>Reads the sheet of a wheel; front or rear is what the sheet says.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    public static SpecSheet ReadWheel(string text, SpecVocabulary? vocabulary = null)
    {
        SheetReader reader = new(vocabulary ?? SpecVocabulary.Default);
        List<SheetLine> lines = reader.LinesOf(text);
        return reader.Read(lines, reader.WheelOf(lines), complete: false);
    }

    /// <summary>Reads the sheet of one part.</summary>
    /// <param name="slot">The part.</param>
    /// <param name="text">Any text.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    public static SpecSheet Read(Slot slot, string text, SpecVocabulary? vocabulary = null)
    {
        ArgumentNullException.ThrowIfNull(slot);
        SheetReader reader = new(vocabulary ?? SpecVocabulary.Default);
        return reader.Read(reader.LinesOf(text), slot, complete: false);
    }

    /// <summary>Reads the sheet of a complete bicycle into all slots; each line goes to the part that it names.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    public static SpecSheet ReadComplete(string text, SpecVocabulary? vocabulary = null)
    {
        SheetReader reader = new(vocabulary ?? SpecVocabulary.Default);
        return reader.Read(reader.LinesOf(text), null, complete: true);
    }

    /// <summary>Reads pairs of key and value, such as a shop's attributes. Spans count in the lines "key: value" joined by line ends.</summary>
    /// <param name="slot">The part; null for a complete bicycle.</param>
    /// <param name="attributes">The pairs, in any order.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    public static SpecSheet ReadAttributes(Slot? slot, IEnumerable<KeyValuePair<string, string>> attributes, SpecVocabulary? vocabulary = null)
    {
        ArgumentNullException.ThrowIfNull(attributes);
        string text = string.Join('\n', attributes.Select(a => $"{OneLine(a.Key)}: {OneLine(a.Value)}"));
        return slot is null ? ReadComplete(text, vocabulary) : Read(slot, text, vocabulary);
    }

    /// <summary>Values, conflicts, doubts and leftovers in words, one a line.</summary>
    public override string ToString() => string.Join(Environment.NewLine,
        Values.Select(v => v.ToString())
            .Concat(Conflicts.Select(c => "conflict: " + c))
            .Concat(Doubts.Select(d => "doubt: " + d))
            .Concat(Leftovers.Select(l => "left over: " + l)));

    private static string OneLine(string? text) => (text ?? "").Replace('\n', ' ').Replace('\r', ' ');
}
