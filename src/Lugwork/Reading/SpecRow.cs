using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>A row of a shop's list.</summary>
/// <param name="Slot">The part, where the list says it.</param>
/// <param name="Text">The text of the row.</param>
/// <param name="Id">The row's own number or name, given back with the result; may be empty.</param>
public readonly record struct SpecRow(Slot? Slot, string Text, string Id = "");

/// <summary>A row that was read.</summary>
/// <param name="Number">Number of the row, from 0.</param>
/// <param name="Row">The row.</param>
/// <param name="Line">What became of it.</param>
public readonly record struct SpecRowResult(long Number, SpecRow Row, SpecLine Line);

/// <summary>How far a bulk reading is.</summary>
/// <param name="Rows">Rows that were read, so far.</param>
/// <param name="Read">Of them, those with values.</param>
/// <param name="Ambiguous">Of them, those that can be several things.</param>
/// <param name="Refused">Of them, those of which nothing was taken.</param>
public readonly record struct SpecProgress(long Rows, long Read, long Ambiguous, long Refused);

/// <summary>Why rows were not read, and how many.</summary>
/// <param name="Kind">The kind of doubt.</param>
/// <param name="Field">Slot and field, "frame.rear"; only the slot, or empty, where no field is named.</param>
/// <param name="Rows">How many rows had it as their first doubt.</param>
public sealed record SpecReason(SpecDoubtKind Kind, string Field, long Rows);

/// <summary>What a bulk reading came to, so that a list can be cleaned.</summary>
/// <param name="Total">The rows.</param>
/// <param name="Reasons">Why rows were not read, the most frequent first.</param>
public sealed record SpecSummary(SpecProgress Total, ImmutableArray<SpecReason> Reasons)
{
    /// <summary>The counts and the reasons, one a line.</summary>
    public override string ToString() => string.Join(Environment.NewLine,
        Reasons.Select(r => FormattableString.Invariant($"  {r.Rows} {r.Kind}{(r.Field.Length > 0 ? " " + r.Field : "")}"))
            .Prepend(FormattableString.Invariant($"{Total.Rows} rows: {Total.Read} read, {Total.Ambiguous} ambiguous, {Total.Refused} refused")));
}
