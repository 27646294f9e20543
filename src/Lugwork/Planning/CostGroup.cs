using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>The lines of one kind and their sums.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Lines">Its lines, in the order of the sheet.</param>
/// <param name="Cost">Their cost; below 0 for a resale.</param>
/// <param name="Mass">What they add to the bicycle's mass.</param>
public sealed record CostGroup(CostKind Kind, ImmutableArray<CostLine> Lines, CostRange Cost, MassRange Mass)
{
    /// <summary>"small parts: at least 12.50 EUR, 3 lines".</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{CostKinds.InWords(Kind)}: {Cost}, {Lines.Length} line{(Lines.Length == 1 ? "" : "s")}");
}
