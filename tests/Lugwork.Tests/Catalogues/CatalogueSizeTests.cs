using Lugwork.Catalogues;

namespace Lugwork.Tests.Catalogues;

/// <summary>What a part takes of memory.</summary>
public sealed class CatalogueSizeTests
{
    /// <summary>Drawn at random in every field, so that hardly two wheels or frames are alike: no shop is as motley.</summary>
    [Fact]
    public void A_part_takes_at_most_64_bytes_even_where_hardly_two_are_alike()
    {
        Random random = new(64);
        PartCatalogue catalogue = new();
        CatalogueReport report = catalogue.Load(Enumerable.Range(0, 100_000).Select(i =>
        {
            Slot slot = Slot.All[i % Slot.All.Length];
            return new CatalogueRow(i, slot, Shelves.Part(slot, random));
        }));
        Assert.Equal(100_000, report.Added);
        Assert.True(catalogue.View.KindsOf(Slot.RearWheel) > 1_000);
        Assert.InRange(catalogue.MemoryBytes / (double)catalogue.View.Count, 20, 64);
    }
}
