using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>The lines of one kind and their sums.</summary>
public sealed class CostGroup
{
    internal CostGroup(CostKind kind, ImmutableArray<CostLine> lines, CostRange cost, MassRange mass)
    {
        Kind = kind;
        Lines = lines;
        Cost = cost;
        Mass = mass;
    }

    /// <summary>The kind.</summary>
    public CostKind Kind { get; internal init; }

    /// <summary>Its lines, in the order of the sheet.</summary>
    public ImmutableArray<CostLine> Lines { get; internal init; }

    /// <summary>Their cost; below 0 for a resale.</summary>
    public CostRange Cost { get; internal init; }

    /// <summary>What they add to the bicycle's mass.</summary>
    public MassRange Mass { get; internal init; }

    /// <summary>"small parts: at least 12.50 EUR, 3 lines".</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{CostKinds.InWords(Kind)}: {Cost}, {Lines.Length} line{(Lines.Length == 1 ? "" : "s")}");
}
