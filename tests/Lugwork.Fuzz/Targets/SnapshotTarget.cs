using System.Buffers.Binary;
using System.Security.Cryptography;
using Lugwork.Catalogues;

namespace Lugwork.Fuzz;

/// <summary>Snapshots of a catalogue: the first byte 0 takes the rest as it is; any other as the contents of sections, two bytes of length before each, with the checksums made right, so that what reads the content has to refuse it.</summary>
internal sealed class SnapshotTarget : FuzzTarget
{
    public override string Name => "snapshot";

    public override int MostBytes => 6_000;

    public override IEnumerable<byte[]> Seeds
    {
        get
        {
            byte[] empty = Written(new PartCatalogue().View);
            yield return [0, .. empty];
            foreach (Build build in BuildTarget.Builds)
            {
                PartCatalogue catalogue = new();
                catalogue.Load(Slot.All.Where(s => build[s] is not null).SelectMany(s => new CatalogueRow[] { new(s.Number, s, build[s]!), new(-5, s, build[s]!) }));
                byte[] whole = Written(catalogue.View);
                yield return [0, .. whole];
                yield return Contents(whole);
            }
        }
    }

    public override IEnumerable<byte[]> Words => Slot.All.Select(s => s.Key).Concat(Slot.All.SelectMany(s => PartForms.Of(s).OwnFields)).Distinct().Select(k => (byte[])[(byte)k.Length, .. Bytes(k)])
        .Concat([[0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0x01], [0x80, 0x00], [0xFF, 0xFF, 0x03], [0xFF, 0xFF, 0xFF, 0xFF, 0x0F]]);

    public override void Run(byte[] input)
    {
        if (input.Length == 0)
        {
            return;
        }

        byte[] file = input[0] == 0 ? input[1..] : MadeRight(input.AsSpan(1));
        long before = GC.GetAllocatedBytesForCurrentThread();
        PartCatalogue? read = Opened(file);
        long room = GC.GetAllocatedBytesForCurrentThread() - before;
        Law.Holds(room < 20_000_000, "no room is made for what is not there", $"{room} bytes for a file of {file.Length}");
        if (read is null)
        {
            return;
        }

        byte[] written = Written(read.View);
        PartCatalogue back = Read(written);
        Law.Holds(back.View.Count == read.View.Count, "a snapshot keeps its parts", $"{back.View.Count} of {read.View.Count}");
        Law.Holds(written.AsSpan().SequenceEqual(Written(back.View)), "a snapshot is written the same again");
        foreach (Slot slot in read.View.Slots)
        {
            foreach (long id in read.View.IndexOf(slot)!.Ids)
            {
                Part? part = read.View.Find(slot, id);
                Law.Holds(part is not null && part == back.View.Find(slot, id), "a snapshot has the same parts again", $"{slot.Key} {id}");
                PartTarget.Whole(slot, part!, slot.Key);
            }
        }
    }

    /// <summary>The catalogue; null where the file is refused with place and reason.</summary>
    private static PartCatalogue? Opened(byte[] file)
    {
        try
        {
            return Read(file);
        }
        catch (CatalogueFileException e)
        {
            Law.Holds(e.Position >= 0 && e.Position <= file.Length && e.Reason.Length > 0, "a snapshot is refused with place and reason", e.Message);
            return null;
        }
    }

    private static PartCatalogue Read(byte[] file)
    {
        using MemoryStream stream = new(file);
        return CatalogueFile.Read(stream, CancellationToken.None);
    }

    private static byte[] Written(CatalogueView view)
    {
        using MemoryStream stream = new();
        CatalogueFile.Write(view, stream, CancellationToken.None);
        return stream.ToArray();
    }

    private static byte[] Contents(byte[] whole)
    {
        List<byte> contents = [1];
        for (int at = CatalogueFile.HeaderBytes; at < whole.Length;)
        {
            int size = (int)BinaryPrimitives.ReadUInt64LittleEndian(whole.AsSpan(at));
            contents.AddRange([(byte)size, (byte)(size >> 8)]);
            contents.AddRange(whole.AsSpan(at + sizeof(ulong), size));
            at += sizeof(ulong) + size + SHA256.HashSizeInBytes;
        }

        return [.. contents];
    }

    private static byte[] MadeRight(ReadOnlySpan<byte> contents)
    {
        List<byte> file = [.. "LUGCAT"u8, 0x1A, 0x0A, .. new byte[16], .. new byte[SHA256.HashSizeInBytes]];
        byte[] sum = new byte[SHA256.HashSizeInBytes];
        uint sections = 0;
        while (contents.Length >= 2)
        {
            int size = Math.Min(BinaryPrimitives.ReadUInt16LittleEndian(contents), contents.Length - 2);
            byte[] section = [.. BitConverter.GetBytes((ulong)size), .. contents.Slice(2, size)];
            sum = CatalogueFile.Sum(sum, section);
            file.AddRange([.. section, .. sum]);
            contents = contents[(2 + size)..];
            sections++;
        }

        byte[] bytes = [.. file];
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(8), CatalogueFile.Format);
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(12), sections);
        BinaryPrimitives.WriteUInt64LittleEndian(bytes.AsSpan(16), (ulong)bytes.Length);
        SHA256.HashData(bytes.AsSpan(0, 24), bytes.AsSpan(24, SHA256.HashSizeInBytes));
        return bytes;
    }
}
