using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>A process that is killed while it writes a snapshot leaves one that opens.</summary>
public sealed class KilledWriterTests
{
    private const int Turns = 6;

    [Fact]
    public async Task A_process_killed_during_the_write_leaves_a_whole_snapshot()
    {
        string folder = Directory.CreateTempSubdirectory("killed").FullName;
        string drawn = Directory.CreateTempSubdirectory("drawn").FullName;
        try
        {
            // Drawn once: each process opens what it writes.
            SnapshotWriter.Draw(drawn);
            string path = Path.Combine(folder, "shop.catalogue");
            Random random = new(9);
            int halfWritten = 0;
            for (int turn = 0; turn < Turns; turn++)
            {
                using (OwnProcess writer = OwnProcess.Start("save-until-killed", path, drawn))
                {
                    Assert.Equal("saved", await writer.Line());
                    Thread.Sleep(random.Next(1, 60));
                }

                PartCatalogue left = PartCatalogue.Open(path);
                Assert.Contains(left.View.Count, SnapshotWriter.Counts);
                halfWritten += Directory.GetFiles(folder).Any(f => f != path) ? 1 : 0;
            }

            // The kill met a write that was under way, or this test would have shown nothing.
            Assert.True(halfWritten > 0, "no write was met");

            // What killed writers left is cleared by the next that comes to its end.
            PartCatalogue.Open(path).Save(path);
            Assert.Equal([path], Directory.GetFiles(folder));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
            Directory.Delete(drawn, recursive: true);
        }
    }
}
