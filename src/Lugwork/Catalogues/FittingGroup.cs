namespace Lugwork.Catalogues;

/// <summary>Parts of a slot that say the same in every field, with their one verdict and their numbers where the catalogue has them: nothing is copied. The default is none.</summary>
/// <remarks>It belongs to one state of the catalogue, and keeps that state in memory as long as the group or its numbers are held. It never changes.</remarks>
public readonly struct FittingGroup : IEquatable<FittingGroup>
{
    private readonly SlotIndex? _index;
    private readonly int _kind;

    internal FittingGroup(SlotIndex index, int kind, Verdict verdict)
    {
        _index = index;
        _kind = kind;
        Verdict = verdict;
    }

    /// <summary>The verdict of each of its parts, as <see cref="FittingPart.Verdict"/> has it; not judged for a default.</summary>
    public Verdict Verdict { get; }

    /// <summary>How many parts there are of it; at least one, and none for a default.</summary>
    public int Count => _index?.CountOf(_kind) ?? 0;

    /// <summary>The shop's numbers of its parts, each once, in ascending order. They are the catalogue's own and are only to be read.</summary>
    public ReadOnlyMemory<long> Ids => _index?.IdsOf(_kind) ?? default;

    /// <summary>A part of it as the catalogue keeps it, without its name; null for a default.</summary>
    public Part? Part => _index?.Table.PartOf(_kind);

    /// <summary>"12 parts such as 3: fits".</summary>
    public override string ToString() => Count == 0 ? "no parts" : FormattableString.Invariant($"{Count} parts such as {Ids.Span[0]}: {Verdicts.InWords(Verdict)}");

    /// <inheritdoc/>
    public bool Equals(FittingGroup other) => ReferenceEquals(_index, other._index) && _kind == other._kind && Verdict == other.Verdict;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is FittingGroup other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_index, _kind, Verdict);

    /// <summary>The same parts of the same state of a catalogue, with the same verdict.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator ==(FittingGroup left, FittingGroup right) => left.Equals(right);

    /// <summary>Other parts, another state or another verdict.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator !=(FittingGroup left, FittingGroup right) => !left.Equals(right);
}
