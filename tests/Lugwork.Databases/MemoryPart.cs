using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>A process of its own that says what a catalogue of like parts takes: by the collector, and by its own word.</summary>
internal static class MemoryPart
{
    public const int Parts = 1_000_000;

    public static int Run()
    {
        Seatpost post = Seatpost.Read("27.2");
        Load(1_000, post);
        long before = GC.GetTotalMemory(forceFullCollection: true);
        PartCatalogue catalogue = Load(Parts, post);
        long held = GC.GetTotalMemory(forceFullCollection: true) - before;
        Console.Write(FormattableString.Invariant($"{held} {catalogue.MemoryBytes}"));
        GC.KeepAlive(catalogue);
        return 0;
    }

    private static PartCatalogue Load(int parts, Part part)
    {
        PartCatalogue catalogue = new();
        catalogue.Load(Enumerable.Range(0, parts).Select(i => new CatalogueRow(i, Slot.Seatpost, part)));
        return catalogue;
    }
}
