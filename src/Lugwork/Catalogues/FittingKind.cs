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
    public FittingPart First => new(_fitting, _fitting.Index.PlacesOf(_kind)[0]);

    /// <summary>The numbers of its parts, in order.</summary>
    public ImmutableArray<long> Ids
    {
        get
        {
            long[] ids = new long[Count];
            CopyIds(ids);
            return ImmutableArray.Create(ids);
        }
    }

    /// <summary>Writes the numbers of its parts, in order, to where a caller has room for them.</summary>
    /// <param name="into">Room for <see cref="Count"/> numbers at least.</param>
    /// <exception cref="ArgumentException">There is less room.</exception>
    public void CopyIds(Span<long> into)
    {
        ReadOnlySpan<int> places = _fitting.Index.PlacesOf(_kind);
        if (into.Length < places.Length)
        {
            throw new ArgumentException($"room for {into.Length} numbers, of which there are {places.Length}", nameof(into));
        }

        ReadOnlySpan<long> ids = _fitting.Index.Ids;
        for (int i = 0; i < places.Length; i++)
        {
            into[i] = ids[places[i]];
        }
    }

    /// <summary>"12 parts such as 3: fits".</summary>
    public override string ToString() => FormattableString.Invariant($"{Count} parts such as {First}");
}
