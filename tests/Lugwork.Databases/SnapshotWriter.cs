using System.Diagnostics;
using Lugwork.Catalogues;
using Lugwork.Tests.Catalogues;

namespace Lugwork.Databases;

/// <summary>A process that writes one of two snapshots over the other until it is killed.</summary>
internal static class SnapshotWriter
{
    /// <summary>How many parts each of the two has: whole, a snapshot has the one or the other.</summary>
    public static int[] Counts { get; } = [40_000, 60_000];

    /// <summary>Puts both into a folder.</summary>
    public static void Draw(string folder)
    {
        List<CatalogueRow> drawn = Shelves.Rows(new Random(1), 200);
        foreach (int count in Counts)
        {
            Shelves.Of(Enumerable.Range(0, count).Select(i => drawn[i % drawn.Count] with { Id = i })).Save(Drawn(folder, count));
        }
    }

    public static int Run(string path, string folder)
    {
        PartCatalogue[] shops = [.. Counts.Select(count => PartCatalogue.Open(Drawn(folder, count)))];
        Stopwatch clock = Stopwatch.StartNew();

        // Nobody is left to kill it where the tests themselves were ended.
        for (int turn = 0; clock.Elapsed < TimeSpan.FromMinutes(1); turn++)
        {
            shops[turn % 2].Save(path);
            if (turn == 0)
            {
                Console.Out.WriteLine("saved");
                Console.Out.Flush();
            }
        }

        return 1;
    }

    private static string Drawn(string folder, int count) => Path.Combine(folder, $"{count}.catalogue");
}
