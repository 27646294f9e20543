namespace Lugwork;

/// <summary>
/// Parts of one type that are read together, field by field: one call leads to the reading of a field of all of them, and what is asked
/// of each is one getter that the processor sees coming. What a part says is one row of packed codes, <see cref="OtherCodes"/>.
/// </summary>
internal abstract class PartBatch(int fields)
{
    private Part[] _parts = new Part[4];
    private long[] _codes = [];

    /// <summary>How many numbers a part is: rows are as long as four sums side by side want them.</summary>
    public int Width { get; } = (fields + 3) & ~3;

    public int Count { get; private set; }

    public Part this[int at] => _parts[at];

    protected ReadOnlySpan<Part> Parts => _parts.AsSpan(0, Count);

    /// <summary>What each field of a part is, once all were read; behind the last field 0.</summary>
    public Span<long> CodesOf(int at) => _codes.AsSpan(at * Width, Width);

    /// <summary>Puts a part behind the others. It is of the type of the form.</summary>
    public void Put(Part part)
    {
        if (Count == _parts.Length)
        {
            Array.Resize(ref _parts, 2 * Count);
        }

        _parts[Count++] = part;
    }

    /// <summary>Reads every field of all that were put in.</summary>
    /// <param name="others">Numbers what is no single value.</param>
    /// <exception cref="InvalidCastException">One is of another type.</exception>
    public void Read(OtherCodes others)
    {
        if (_codes.Length < Count * Width)
        {
            _codes = new long[_parts.Length * Width];
        }

        if (Count > 0)
        {
            Pack(_codes, others);
        }
    }

    public void Clear() => Count = 0;

    protected abstract void Pack(Span<long> into, OtherCodes others);
}

/// <summary>The same of one type.</summary>
internal sealed class PartBatch<TPart>(PartField<TPart>[] own) : PartBatch(own.Length)
    where TPart : Part
{
    private TPart[] _typed = [];

    protected override void Pack(Span<long> into, OtherCodes others)
    {
        ReadOnlySpan<Part> parts = Parts;
        if (_typed.Length < parts.Length)
        {
            _typed = new TPart[parts.Length];
        }

        for (int at = 0; at < parts.Length; at++)
        {
            _typed[at] = (TPart)parts[at];
        }

        for (int field = 0; field < own.Length; field++)
        {
            own[field].Packs!(_typed.AsSpan(0, parts.Length), into[field..], Width, others);
        }
    }
}
