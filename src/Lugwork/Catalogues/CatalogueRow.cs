using System.Collections.Immutable;

namespace Lugwork.Catalogues;

/// <summary>One part of a catalogue.</summary>
/// <param name="Id">The shop's own number of it; any number, each once in a slot.</param>
/// <param name="Slot">Where it goes. A part with two places stands in both, with the same number where that is wanted.</param>
/// <param name="Part">The part. Its name and the words of its evidence are not kept.</param>
public sealed record CatalogueRow(long Id, Slot Slot, Part Part);

/// <summary>One part of a catalogue as text.</summary>
/// <param name="Id">The shop's own number of it.</param>
/// <param name="Slot">Key of the slot, such as "rearWheel".</param>
/// <param name="Text">The short form of the part, such as "rear 10x135, HG, six-bolt".</param>
public sealed record CatalogueLine(long Id, string Slot, string Text);

/// <summary>The place of a part in a catalogue.</summary>
/// <remarks>The default is no place: its slot is null.</remarks>
/// <param name="Slot">The slot.</param>
/// <param name="Id">The shop's own number.</param>
public readonly record struct CatalogueKey(Slot Slot, long Id);

/// <summary>A row that was skipped.</summary>
public sealed record CatalogueProblem
{
    internal CatalogueProblem(long row, long id, string reason)
    {
        Row = row;
        Id = id;
        Reason = reason;
    }

    /// <summary>Number of the row, from 0.</summary>
    public long Row { get; internal init; }

    /// <summary>Its number; 0 where the row was null.</summary>
    public long Id { get; internal init; }

    /// <summary>What is wrong with it.</summary>
    public string Reason { get; internal init; }

    /// <summary>"row 7 (id 12): there is no such slot".</summary>
    public override string ToString() => FormattableString.Invariant($"row {Row} (id {Id}): {Reason}");
}

/// <summary>What a change of a catalogue came to.</summary>
public sealed class CatalogueReport
{
    /// <summary>How many problems are kept one by one at most; <see cref="Skipped"/> counts all.</summary>
    public static int MostProblems => 1_000;

    internal CatalogueReport(int added, int replaced, int removed, long skipped, ImmutableArray<CatalogueProblem> problems)
    {
        Added = added;
        Replaced = replaced;
        Removed = removed;
        Skipped = skipped;
        Problems = problems;
    }

    /// <summary>How many parts were not there before.</summary>
    public int Added { get; }

    /// <summary>Parts whose number was there before.</summary>
    public int Replaced { get; }

    /// <summary>How many parts are gone.</summary>
    public int Removed { get; }

    /// <summary>How many rows were skipped.</summary>
    public long Skipped { get; }

    /// <summary>Why, in the order of the rows; of more than a thousand those that were found first. A number that comes twice is found last, when all rows are there.</summary>
    public ImmutableArray<CatalogueProblem> Problems { get; }

    /// <summary>"12 added, 3 replaced, 0 removed, 1 skipped".</summary>
    public override string ToString() => FormattableString.Invariant($"{Added} added, {Replaced} replaced, {Removed} removed, {Skipped} skipped");
}
