namespace Lugwork.Catalogues;

/// <summary>A file that is no snapshot of a catalogue, a damaged one, or one that this version does not know. Nothing of it was taken.</summary>
public sealed class CatalogueFileException : FormatException
{
    internal CatalogueFileException(string what, long position)
        : base(FormattableString.Invariant($"{what} (at byte {position})"))
    {
        Reason = what;
        Position = position;
    }

    /// <summary>What is wrong.</summary>
    public string Reason { get; }

    /// <summary>Where in the file, bytes from 0.</summary>
    public long Position { get; }
}
