using System.Diagnostics;
using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>A process that is killed while it writes a snapshot leaves one that opens.</summary>
public sealed class KilledWriterTests
{
    [Fact]
    public void A_process_killed_during_the_write_leaves_a_whole_snapshot()
    {
        string folder = Directory.CreateTempSubdirectory("killed").FullName;
        try
        {
            string path = Path.Combine(folder, "shop.catalogue");
            Random random = new(9);
            int halfWritten = 0;
            for (int turn = 0; turn < 12; turn++)
            {
                using Process writer = OwnProcess.Start("save-until-killed", path);
                try
                {
                    Assert.Equal("saved", writer.StandardOutput.ReadLine());
                    Thread.Sleep(random.Next(1, 60));
                }
                finally
                {
                    writer.Kill();
                    writer.WaitForExit();
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
        }
    }
}
