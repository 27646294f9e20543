using System.Buffers;
using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Security.Cryptography;

namespace Lugwork.Catalogues;

/// <summary>
/// The snapshot of a catalogue. Eight bytes "LUGCAT", 1A, 0A; the format (2), four bytes; the number of sections, four bytes; the length of the
/// whole file, eight bytes; SHA-256 of these. Then for each slot that has parts a section: its length, eight bytes; its content; SHA-256 of
/// the SHA-256 of the section before (32 zeros before the first) and of both: a section of another snapshot is found out like a damaged one. Numbers of fixed width have the least byte first; those inside a section have seven bits a byte, the least first.
/// </summary>
/// <remarks>
/// A section: key of the slot; its fields by key, and for each the values that occur, numbered from 1: state of knowledge, then the fit
/// codes that go with it (one; several, each as what it is above the one before; least and width of a range; the family outside the
/// library or 0). Then the kinds of parts: the number of a value for each field, 0 for unknown. Then the parts in the order of their
/// numbers: what the number is above the one before (the first as it is, two's complement), and the number of the kind from 0. Nothing of a
/// judgement is stored.
/// </remarks>
internal static class CatalogueFile
{
    public const int Format = 2;

    public const int HeaderBytes = 24 + SHA256.HashSizeInBytes;

    private const int LengthBytes = sizeof(ulong);

    // The name of a snapshot that is being written: that of the file, a word of its own, and this.
    private const string Unfinished = ".new";

    private static readonly SearchValues<char> RandomSigns = SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789");

    private static ReadOnlySpan<byte> Magic => [(byte)'L', (byte)'U', (byte)'G', (byte)'C', (byte)'A', (byte)'T', 0x1A, 0x0A];

    public static void Save(CatalogueView view, string path, CancellationToken cancellationToken)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        string next = $"{path}.{Path.GetRandomFileName()}{Unfinished}";
        try
        {
            using (FileStream stream = new(next, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                Write(view, stream, cancellationToken);
                stream.Flush(flushToDisk: true);
            }

            cancellationToken.ThrowIfCancellationRequested();
            File.Move(next, path, overwrite: true);
        }
        catch
        {
            Clear(next);
            throw;
        }

        ClearLeft(Path.GetFullPath(path));
    }

    /// <summary>Takes away what killed writers left behind: it would fill the disk in the end.</summary>
    private static void ClearLeft(string path)
    {
        try
        {
            foreach (string left in Directory.GetFiles(Path.GetDirectoryName(path)!))
            {
                if (IsUnfinished(left, path))
                {
                    Clear(left);
                }
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Whoever may write a file need not be allowed to list its folder; the snapshot is in place.
        }
    }

    /// <summary>A name as it is given above, of eight signs, a dot and three; a shop's own "x.old.new" or "x.frames" is none.</summary>
    private static bool IsUnfinished(string file, string path)
    {
        if (file.Length != path.Length + 13 + Unfinished.Length || !file.StartsWith(path + ".", StringComparison.Ordinal) || !file.EndsWith(Unfinished, StringComparison.Ordinal))
        {
            return false;
        }

        ReadOnlySpan<char> name = file.AsSpan(path.Length + 1, 12);
        return name[8] == '.' && !name[..8].ContainsAnyExcept(RandomSigns) && !name[9..].ContainsAnyExcept(RandomSigns);
    }

    /// <summary>Takes a file away that nobody is writing; one that cannot be taken away stays, and hides no other failure.</summary>
    private static void Clear(string path)
    {
        try
        {
            using FileStream only = new(path, FileMode.Open, FileAccess.ReadWrite, FileShare.Delete);
            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Somebody is writing it, or it is gone already.
        }
    }

    public static PartCatalogue Open(string path, CancellationToken cancellationToken)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete);
        return Read(stream, cancellationToken);
    }

    /// <summary>Writes a snapshot into a stream that can be set back: section by section, and the head, which holds the length, last.</summary>
    public static void Write(CatalogueView view, Stream stream, CancellationToken cancellationToken)
    {
        long start = stream.Position;
        byte[] header = new byte[HeaderBytes];
        stream.Write(header);
        uint sections = 0;
        byte[] sum = new byte[SHA256.HashSizeInBytes];
        foreach (SlotIndex index in view.Indexes.OfType<SlotIndex>())
        {
            cancellationToken.ThrowIfCancellationRequested();
            ByteWriter section = Section(index, cancellationToken);
            sum = Sum(sum, section.Written);
            stream.Write(section.Written);
            stream.Write(sum);
            sections++;
        }

        long end = stream.Position;
        Magic.CopyTo(header);
        BinaryPrimitives.WriteUInt32LittleEndian(header.AsSpan(8), Format);
        BinaryPrimitives.WriteUInt32LittleEndian(header.AsSpan(12), sections);
        ByteWriter.Fixed(header.AsSpan(16), (ulong)(end - start));
        SHA256.HashData(header.AsSpan(0, 24), header.AsSpan(24));
        stream.Position = start;
        stream.Write(header);
        stream.Position = end;
    }

    /// <summary>The checksum of a section, its length in front, behind the section with another one.</summary>
    public static byte[] Sum(ReadOnlySpan<byte> before, ReadOnlySpan<byte> section)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(before);
        hash.AppendData(section);
        return hash.GetHashAndReset();
    }

    /// <summary>Reads a snapshot from a stream that tells its length.</summary>
    public static PartCatalogue Read(Stream stream, CancellationToken cancellationToken)
    {
        long length = stream.Length;
        byte[] header = Take(stream, HeaderBytes, 0, length, "it is too short for a snapshot of a catalogue");
        if (!header.AsSpan().StartsWith(Magic))
        {
            throw new CatalogueFileException("it is no snapshot of a catalogue", 0);
        }

        if (BinaryPrimitives.ReadUInt32LittleEndian(header.AsSpan(8)) is not Format and uint format)
        {
            throw new CatalogueFileException($"it has format {format}, this version reads format {Format}", 8);
        }

        if (!SHA256.HashData(header.AsSpan(0, 24)).AsSpan().SequenceEqual(header.AsSpan(24)))
        {
            throw new CatalogueFileException("the head is damaged: its checksum is another", 24);
        }

        ulong stated = BinaryPrimitives.ReadUInt64LittleEndian(header.AsSpan(16));
        if (stated != (ulong)length)
        {
            throw new CatalogueFileException($"it has {length} bytes and should have {stated}", 16);
        }

        SlotTable?[] tables = new SlotTable?[Slot.All.Length];
        SlotIndex?[] indexes = new SlotIndex?[Slot.All.Length];
        long at = HeaderBytes;
        byte[] sum = new byte[SHA256.HashSizeInBytes];
        for (uint section = BinaryPrimitives.ReadUInt32LittleEndian(header.AsSpan(12)); section > 0; section--)
        {
            cancellationToken.ThrowIfCancellationRequested();
            at = ReadSection(stream, at, length, ref sum, tables, indexes, cancellationToken);
        }

        return at == length
            ? new(tables, new(ImmutableArray.Create(indexes), 1))
            : throw new CatalogueFileException("something stands behind the last section", at);
    }

    private static long ReadSection(Stream stream, long at, long length, ref byte[] last, SlotTable?[] tables, SlotIndex?[] indexes, CancellationToken cancellationToken)
    {
        byte[] before = Take(stream, LengthBytes, at, length, "a section is missing");
        ulong size = BinaryPrimitives.ReadUInt64LittleEndian(before);
        long left = length - at - LengthBytes - SHA256.HashSizeInBytes;
        if (left < 0 || size > (ulong)left || size > (ulong)Array.MaxLength - LengthBytes)
        {
            throw new CatalogueFileException($"a section says that it has {size} bytes, of which {Math.Max(0, left)} are there", at);
        }

        byte[] section = new byte[LengthBytes + (int)size];
        before.CopyTo(section, 0);
        stream.ReadExactly(section.AsSpan(LengthBytes));
        byte[] sum = Take(stream, SHA256.HashSizeInBytes, at + section.Length, length, "a checksum is missing");
        if (!Sum(last, section).AsSpan().SequenceEqual(sum))
        {
            throw new CatalogueFileException($"the section of {section.Length} bytes is damaged, or of another snapshot: its checksum is another", at);
        }

        last = sum;

        ByteReader reader = new(section.AsSpan(LengthBytes), at + LengthBytes);
        SlotIndex index = SlotSection.Read(ref reader, out SlotTable table, cancellationToken);
        if (reader.Left > 0)
        {
            throw reader.Wrong("something stands behind the parts");
        }

        if (indexes[index.Slot.Number] is not null)
        {
            throw new CatalogueFileException($"the {index.Slot} comes twice", at);
        }

        tables[index.Slot.Number] = table;
        indexes[index.Slot.Number] = index;
        return at + section.Length + SHA256.HashSizeInBytes;
    }

    private static ByteWriter Section(SlotIndex index, CancellationToken cancellationToken)
    {
        ByteWriter writer = new();
        for (int i = 0; i < LengthBytes; i++)
        {
            writer.Byte(0);
        }

        SlotSection.Write(writer, index, cancellationToken);
        writer.Put(0, (ulong)(writer.Length - LengthBytes));
        return writer;
    }

    private static byte[] Take(Stream stream, int count, long at, long length, string missing)
    {
        if (length - at < count)
        {
            throw new CatalogueFileException(missing, at);
        }

        byte[] bytes = new byte[count];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
