using Lugwork.Tyres;

namespace Lugwork.PublishedTables;

/// <summary>Labels and the ISO sizes printed with them: ETRTO (ISO 5775), workshop wiki table; L'Atelier du velo; 2024.</summary>
public sealed class TyreLabelChecks
{
    [Theory]
    [PrintedIn("ETRTO (ISO 5775), workshop table; Wiklou, L'Atelier du velo, Lyon")]
    [InlineData("700 x 23C", "23-622")]
    [InlineData("700x35c", "35-622 37-622")]
    [InlineData("700 × 28C", "28-622 30-622")]
    [InlineData("700x40C", "40-622 42-622")]
    [InlineData("622 x 37", "37-622")]
    public void A_label_is_read_as_the_sizes_that_carry_it(string label, string sizes) =>
        Assert.Equal(sizes, string.Join(' ', TyreSize.Read(label).Values));
}
