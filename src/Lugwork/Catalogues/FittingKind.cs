using System.Collections.Immutable;

namespace Lugwork.Catalogues;

/// <summary>Parts of an answer that say the same in every field, and so have one verdict and one reason.</summary>
public sealed class FittingKind
{
    private readonly SlotFitting _fitting;
    private readonly int _kind;

    internal FittingKind(SlotFitting fitting, int kind)
    {
        _fitting = fitting;
        _kind = kind;
    }

    /// <summary>How many parts there are of it; at least one.</summary>
    public int Count => _fitting.Index.CountOf(_kind);

    /// <summary>The part of it with the least number: what is told of this one holds for all.</summary>
    public FittingPart First => new(_fitting, _fitting.Index.FirstOf(_kind));

    /// <summary>The numbers of its parts, in order.</summary>
    public ImmutableArray<long> Ids => ImmutableArray.Create(_fitting.Index.IdsOf(_kind).Span);

    /// <summary>Writes the numbers of its parts, in order, to where a caller has room for them.</summary>
    /// <param name="into">Room for <see cref="Count"/> numbers at least.</param>
    /// <exception cref="ArgumentException">There is less room.</exception>
    public void CopyIds(Span<long> into)
    {
        ReadOnlySpan<long> ids = _fitting.Index.IdsOf(_kind).Span;
        if (into.Length < ids.Length)
        {
            throw new ArgumentException($"room for {into.Length} numbers, of which there are {ids.Length}", nameof(into));
        }

        ids.CopyTo(into);
    }

    /// <summary>"12 parts such as 3: fits".</summary>
    public override string ToString() => FormattableString.Invariant($"{Count} parts such as {First}");
}
