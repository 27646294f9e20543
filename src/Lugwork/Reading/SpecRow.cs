using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>A row of a shop's list.</summary>
/// <remarks>The default has no text: it is null, and no row.</remarks>
/// <param name="Slot">The part, where the list says it.</param>
/// <param name="Text">The text of the row.</param>
/// <param name="Id">The row's own number or name, given back with the result; may be empty.</param>
public readonly record struct SpecRow(Slot? Slot, string Text, string Id = "");

/// <summary>A row that was read.</summary>
/// <remarks>The default is no row: what became of it is null, and so is the text of its row.</remarks>
public readonly record struct SpecRowResult
{
    internal SpecRowResult(long number, SpecRow row, SpecLine line)
    {
        Number = number;
        Row = row;
        Line = line;
    }

    /// <summary>Number of the row, from 0.</summary>
    public long Number { get; internal init; }

    /// <summary>The row.</summary>
    public SpecRow Row { get; internal init; }

    /// <summary>What became of it.</summary>
    public SpecLine Line { get; internal init; }
}

/// <summary>How far a bulk reading is.</summary>
public readonly record struct SpecProgress
{
    internal SpecProgress(long rows, long read, long ambiguous, long refused)
    {
        Rows = rows;
        Read = read;
        Ambiguous = ambiguous;
        Refused = refused;
    }

    /// <summary>How many rows were read, so far.</summary>
    public long Rows { get; internal init; }

    /// <summary>How many of them gave values.</summary>
    public long Read { get; internal init; }

    /// <summary>How many of them can be several things.</summary>
    public long Ambiguous { get; internal init; }

    /// <summary>Of how many of them nothing was taken.</summary>
    public long Refused { get; internal init; }
}

/// <summary>Why rows were not read, and how many.</summary>
public sealed record SpecReason
{
    internal SpecReason(SpecDoubtKind kind, string field, long rows)
    {
        Kind = kind;
        Field = field;
        Rows = rows;
    }

    /// <summary>The kind of doubt.</summary>
    public SpecDoubtKind Kind { get; internal init; }

    /// <summary>Slot and field, "frame.rear"; only the slot, or empty, where no field is named.</summary>
    public string Field { get; internal init; }

    /// <summary>How many rows had it as their first doubt.</summary>
    public long Rows { get; internal init; }
}

/// <summary>What a bulk reading came to, so that a list can be cleaned.</summary>
public sealed class SpecSummary
{
    internal SpecSummary(SpecProgress total, ImmutableArray<SpecReason> reasons)
    {
        Total = total;
        Reasons = reasons;
    }

    /// <summary>The rows.</summary>
    public SpecProgress Total { get; internal init; }

    /// <summary>Why rows were not read, the most frequent first.</summary>
    public ImmutableArray<SpecReason> Reasons { get; internal init; }

    /// <summary>The counts and the reasons, one a line.</summary>
    public override string ToString() => string.Join(Environment.NewLine,
        Reasons.Select(r => FormattableString.Invariant($"  {r.Rows} {r.Kind}{(r.Field.Length > 0 ? " " + r.Field : "")}"))
            .Prepend(FormattableString.Invariant($"{Total.Rows} rows: {Total.Read} read, {Total.Ambiguous} ambiguous, {Total.Refused} refused")));
}
