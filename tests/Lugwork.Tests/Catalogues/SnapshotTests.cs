using System.Buffers.Binary;
using Lugwork.Catalogues;
using Lugwork.Seating;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Catalogues;

/// <summary>A snapshot reads back whole or is refused with what and where.</summary>
public sealed class SnapshotTests
{
    private static byte[] Bytes(CatalogueView view)
    {
        using MemoryStream stream = new();
        CatalogueFile.Write(view, stream, CancellationToken.None);
        return stream.ToArray();
    }

    private static PartCatalogue Read(byte[] bytes)
    {
        using MemoryStream stream = new(bytes);
        return CatalogueFile.Read(stream, CancellationToken.None);
    }

    private static PartCatalogue Small() => Shelves.Of(
        [new(-5, Slot.Seatpost, Seatpost.Read("diameter 27.2 | 27.4")), new(7, Slot.Seatpost, Seatpost.Read("30.9; mark 75 ± 1")), new(8, Slot.Saddle, Saddle.Read("rails 7-round"))]);

    [Fact]
    public void It_reads_back_to_the_same_answers()
    {
        Random random = new(20_261);
        PartCatalogue catalogue = Shelves.Of(Shelves.Rows(random, 600));
        catalogue.Remove(Slot.Fork, catalogue.View.IndexOf(Slot.Fork)!.Ids[0]);
        CatalogueView back = Read(Bytes(catalogue.View)).View;
        Assert.Equal(catalogue.View.Slots.AsEnumerable(), back.Slots);
        for (int i = 0; i < 10; i++)
        {
            Build build = Bicycles.Any(random);
            foreach (Slot slot in catalogue.View.Slots)
            {
                Assert.Equal(Shelves.Told(catalogue.View.Fitting(build, slot, 99)), Shelves.Told(back.Fitting(build, slot, 99)));
            }
        }

        foreach (Slot slot in back.Slots)
        {
            foreach (long id in catalogue.View.IndexOf(slot)!.Ids)
            {
                Assert.Equal(catalogue.View.Find(slot, id), back.Find(slot, id));
            }
        }

        Assert.Equal(Bytes(back), Bytes(Read(Bytes(back)).View));
    }

    [Fact]
    public void An_empty_catalogue_and_the_ends_of_all_numbers_read_back()
    {
        Assert.Equal(0, Read(Bytes(new PartCatalogue().View)).View.Count);
        CatalogueView view = Read(Bytes(Shelves.Of([new(long.MinValue, Slot.Saddle, Saddle.Read("rails 7-round")), new(long.MaxValue, Slot.Saddle, Saddle.Read("rails 7x9")), new(0, Slot.Saddle, Saddle.Read("rails 7x9"))]).View)).View;
        Assert.Equal(Saddle.Read("rails 7-round"), view.Find(Slot.Saddle, long.MinValue));
        Assert.Equal(Saddle.Read("rails 7x9"), view.Find(Slot.Saddle, long.MaxValue));
    }

    [Fact]
    public void A_catalogue_that_was_read_can_be_changed()
    {
        PartCatalogue catalogue = Read(Bytes(Small().View));
        catalogue.Load([new(9, Slot.Seatpost, Seatpost.Read("diameter 27.2 | 27.4")), new(10, Slot.Chain, Chain.Read("size 9"))]);
        Assert.Equal(2, catalogue.View.KindsOf(Slot.Seatpost));
        Assert.Equal(5, catalogue.View.Count);
    }

    [Fact]
    public void Every_byte_is_covered()
    {
        byte[] good = Bytes(Small().View);
        for (int at = 0; at < good.Length; at++)
        {
            foreach (int bit in new[] { 1, 128 })
            {
                byte[] bad = [.. good];
                bad[at] ^= (byte)bit;
                CatalogueFileException refused = Assert.Throws<CatalogueFileException>(() => Read(bad));
                Assert.InRange(refused.Position, 0, good.Length);
                Assert.NotEmpty(refused.Reason);
            }
        }
    }

    [Fact]
    public void A_snapshot_of_another_length_is_refused()
    {
        byte[] good = Bytes(Small().View);
        for (int length = 0; length < good.Length; length++)
        {
            Assert.Throws<CatalogueFileException>(() => Read(good[..length]));
        }

        Assert.Throws<CatalogueFileException>(() => Read([.. good, 0]));
    }

    [Fact]
    public void Something_else_and_a_later_format_are_called_so()
    {
        CatalogueFileException other = Assert.Throws<CatalogueFileException>(() => Read(new byte[500]));
        Assert.Equal(("it is no snapshot of a catalogue", 0L), (other.Reason, other.Position));
        byte[] later = Bytes(Small().View);
        later[8] = CatalogueFile.Format + 1;
        Assert.Contains($"format {CatalogueFile.Format + 1}", Assert.Throws<CatalogueFileException>(() => Read(later)).Message, StringComparison.Ordinal);
    }

    /// <summary>Both are whole, of one length and of the same slots: only the sums tell that they do not belong together.</summary>
    [Fact]
    public void A_section_of_another_snapshot_is_found_out()
    {
        PartCatalogue Shop(string post, string saddle) => Shelves.Of([new(1, Slot.Seatpost, Seatpost.Read(post)), new(1, Slot.Saddle, Saddle.Read(saddle))]);
        byte[] one = Bytes(Shop("27.2", "rails 7-round").View);
        byte[] other = Bytes(Shop("27.4", "rails 7x9").View);
        Assert.Equal(one.Length, other.Length);
        foreach ((int start, int size) in Sections(one))
        {
            byte[] mixed = [.. one];
            other.AsSpan(start, 8 + size + 32).CopyTo(mixed.AsSpan(start));
            Assert.Contains("of another snapshot", Assert.Throws<CatalogueFileException>(() => Read(mixed)).Message, StringComparison.Ordinal);
        }
    }

    /// <summary>With the checksums made right again, so that what reads the content has to refuse it.</summary>
    [Fact]
    public void Content_that_was_made_up_is_refused_or_read_and_never_anything_else() => MadeUp(Small(), 20_000, 1, 3);

    /// <summary>The same of every slot with parts of every state: none, only the frame maker's, outside the library, several, measured, loads, angles, dates.</summary>
    [Fact]
    public void Content_of_every_kind_that_was_made_up_is_too()
    {
        PartCatalogue all = Shelves.Of(Slot.All.SelectMany(s => Shelves.Rows(new Random(s.Number), 8, s)));
        Assert.Equal(Slot.All.Length, all.View.Slots.Length);
        MadeUp(all, 3_000, 1, all.View.Count);
    }

    private static void MadeUp(PartCatalogue catalogue, int turns, int least, int most)
    {
        byte[] good = Bytes(catalogue.View);
        (int Start, int Size)[] sections = Sections(good);
        Random random = new(5);
        int refused = 0;
        for (int turn = 0; turn < turns; turn++)
        {
            byte[] bad = [.. good];
            (int start, int size) = sections[random.Next(sections.Length)];
            for (int changes = random.Next(1, 4); changes > 0; changes--)
            {
                bad[start + 8 + random.Next(size)] = (byte)(random.Next(3) == 0 ? 255 : random.Next(256));
            }

            byte[] sum = new byte[32];
            foreach ((int from, int length) in sections)
            {
                sum = CatalogueFile.Sum(sum, bad.AsSpan(from, 8 + length));
                sum.CopyTo(bad, from + 8 + length);
            }

            try
            {
                Assert.InRange(Read(bad).View.Count, least, most);
            }
            catch (CatalogueFileException)
            {
                refused++;
            }
        }

        Assert.InRange(refused, turns / 5, turns - 1);
    }

    /// <summary>Where each section starts, and the bytes of its content.</summary>
    private static (int Start, int Size)[] Sections(byte[] bytes)
    {
        List<(int, int)> sections = [];
        for (int at = CatalogueFile.HeaderBytes; at < bytes.Length;)
        {
            int size = (int)BinaryPrimitives.ReadUInt64LittleEndian(bytes.AsSpan(at));
            sections.Add((at, size));
            at += 8 + size + 32;
        }

        return [.. sections];
    }

    [Fact]
    public void A_length_that_is_not_there_is_refused_before_room_is_made_for_it()
    {
        byte[] bad = Bytes(Small().View);
        BinaryPrimitives.WriteUInt64LittleEndian(bad.AsSpan(CatalogueFile.HeaderBytes), 1UL << 40);
        Assert.Contains("1099511627776", Assert.Throws<CatalogueFileException>(() => Read(bad)).Message, StringComparison.Ordinal);

        ByteWriter writer = new();
        writer.Text("seatpost");
        writer.Number(uint.MaxValue);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Throws<CatalogueFileException>(() => Section(writer));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 200_000);
    }

    [Theory]
    [InlineData("saddlepost", "diameter", 27_200_000, "knows no slot 'saddlepost'")]
    [InlineData("seatpost", "colour", 27_200_000, "knows no field 'colour'")]
    [InlineData("saddle", "rails", 999_999, "the field 'rails' of a saddle")]
    public void What_a_later_library_wrote_is_refused_by_name(string slot, string field, long code, string reason)
    {
        ByteWriter writer = new();
        writer.Text(slot);
        writer.Number(1);
        writer.Text(field);
        writer.Number(1);
        writer.Candidates(new(KnownState.Value, code, code, null));
        writer.Number(1);
        writer.Number(1);
        writer.Number(1);
        writer.Number(7);
        writer.Number(0);
        Assert.Contains(reason, Assert.Throws<CatalogueFileException>(() => Section(writer)).Message, StringComparison.Ordinal);
    }

    private static void Section(ByteWriter writer)
    {
        ByteReader reader = new(writer.Written, 0);
        SlotSection.Read(ref reader, out _, CancellationToken.None);
    }

    [Fact]
    public void A_field_that_the_file_does_not_have_is_unknown()
    {
        ByteWriter writer = new();
        writer.Text("saddle");
        foreach (ulong number in new ulong[] { 0, 1, 1, 7, 0 })
        {
            writer.Number(number);
        }

        ByteReader reader = new(writer.Written, 0);
        SlotIndex index = SlotSection.Read(ref reader, out _, CancellationToken.None);
        Assert.Equal(new Saddle(), index.Table.PartOf(index.Kinds[index.Find(7)]));
    }

    [Fact]
    public void The_fields_may_stand_in_another_order()
    {
        ByteWriter writer = new();
        writer.Text("seatpost");
        writer.Number(2);
        foreach ((string key, long code) in new[] { ("mark", 75_000_000L), ("diameter", SeatpostDiameter.Parse("27.2", null).FitCode) })
        {
            writer.Text(key);
            writer.Number(1);
            writer.Candidates(new(KnownState.Value, code, code, null));
        }

        foreach (ulong number in new ulong[] { 1, 1, 1, 1, 7, 0 })
        {
            writer.Number(number);
        }

        ByteReader reader = new(writer.Written, 0);
        SlotIndex index = SlotSection.Read(ref reader, out _, CancellationToken.None);
        Assert.Equal(Seatpost.Read("27.2; mark 75"), index.Table.PartOf(index.Kinds[index.Find(7)]));
    }

    [Fact]
    public void A_writer_that_is_stopped_leaves_the_old_file()
    {
        string folder = Directory.CreateTempSubdirectory("catalogue").FullName;
        try
        {
            string path = Path.Combine(folder, "shop.catalogue");
            Small().Save(path);
            byte[] old = File.ReadAllBytes(path);
            using CancellationTokenSource stopped = new();
            stopped.Cancel();
            Assert.Throws<OperationCanceledException>(() => Shelves.Of(Shelves.Rows(new Random(1), 50)).Save(path, stopped.Token));
            Assert.Equal(old, File.ReadAllBytes(path));
            Assert.Equal([path], Directory.GetFiles(folder));

            // What a killed writer leaves beside it is in nobody's way.
            File.WriteAllBytes($"{path}.{Path.GetRandomFileName()}.new", old[..40]);

            // Files of the shop's own keep standing, and so does what another catalogue has not finished.
            string[] others = [path + ".old.new", path + ".two-weeks-ol.new", $"{path}.frames.{Path.GetRandomFileName()}.new"];
            Assert.All(others, o => File.WriteAllText(o, "mine"));
            Small().Save(path);
            Assert.Equal(others.Append(path).Order(StringComparer.Ordinal), Directory.GetFiles(folder).Order(StringComparer.Ordinal));
            Assert.Equal(3, PartCatalogue.Open(path).View.Count);
            File.WriteAllBytes(path, old[..^1]);
            Assert.Throws<CatalogueFileException>(() => PartCatalogue.Open(path));
            Assert.Throws<FileNotFoundException>(() => PartCatalogue.Open(path + ".none"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
