using System.Collections.Immutable;

namespace Lugwork;

/// <summary>The short form of a part in any slot: one line of text, for a column of a database or an address of a page.</summary>
public static class PartText
{
    /// <summary>Reads the short form of what goes into a slot.</summary>
    /// <param name="slot">The slot; it says what kind of part the text is of.</param>
    /// <param name="text">"key value" pieces with semicolons between: "hub R142-12; body HG-L".</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Part Read(Slot slot, string text) =>
        TryRead(slot, text, out Part part, out ImmutableArray<SpecProblem> problems) ? part : throw new SpecException(problems);

    /// <summary>Reads the short form of what goes into a slot; problems as data.</summary>
    /// <param name="slot">The slot.</param>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(Slot slot, string text, out Part part, out ImmutableArray<SpecProblem> problems)
    {
        ArgumentNullException.ThrowIfNull(slot);
        ArgumentNullException.ThrowIfNull(text);
        return PartForms.Of(slot).TryReadAny(text, out part, out problems);
    }

    /// <summary>Writes a part in its short form: every field of which something is known, by its key. Reads back to the same part without its name; what is known from which words is not kept. Empty where nothing is known.</summary>
    /// <param name="slot">The slot it goes into.</param>
    /// <param name="part">The part.</param>
    /// <exception cref="ArgumentException">The part does not go to this slot.</exception>
    public static string Write(Slot slot, Part part)
    {
        ArgumentNullException.ThrowIfNull(slot);
        ArgumentNullException.ThrowIfNull(part);
        if (!part.Places.Contains(slot))
        {
            throw new ArgumentException($"a {part.GetType().Name} goes to {string.Join(" or ", part.Places)}, not to {slot}", nameof(slot));
        }

        return Written(part, slot);
    }

    /// <summary>The same of a part in the first of its places: they all have one form.</summary>
    internal static string Written(Part part) => Written(part, part.Places[0]);

    private static string Written(Part part, Slot slot) => string.Join("; ", PartForms.Of(slot).Write(part).Where(f => f.Key != "name").Select(f => $"{f.Key} {f.Value}"));
}
