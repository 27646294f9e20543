using Lugwork.Tyres;

namespace Lugwork.Tests.Tyres;

/// <summary>Decimal labels of one outer diameter are one family from its narrowest to its widest label; beyond it a label is no label.</summary>
public sealed class LabelFamilyTests
{
    [Theory]
    [InlineData("29 x 2.25", "29 x decimal", 622)]
    [InlineData("28 x 1.60", "28 x decimal", 622)]
    [InlineData("27.5 x 2.25", "27.5 x decimal", 584)]
    [InlineData("26 x 1.00", "26 x decimal", 559)]
    [InlineData("26 x 3.00", "26 x decimal", 559)]
    [InlineData("24 x 1.50", "24 x decimal", 507)]
    [InlineData("24 x 1.95", "24 x decimal", 507)]
    [InlineData("24 x 2.125", "24 x decimal", 507)]
    [InlineData("20 x 1.50", "20 x decimal", 406)]
    [InlineData("20 x 1.95", "20 x decimal", 406)]
    [InlineData("18 x 1.75", "18 x decimal", 355)]
    [InlineData("18 x 2.125", "18 x decimal", 355)]
    public void A_label_within_is_of_the_family(string text, string family, int seat)
    {
        TyreLabel found = TyreLabel.Read(text).Values.Single(l => l.FitKey == family);
        Assert.Equal([(long)seat], found.Seats.Select(s => s.FitCode));
    }

    [Theory]
    [InlineData("26 x 0.999")]
    [InlineData("26 x 3.001")]
    [InlineData("24 x 1.499")]
    [InlineData("24 x 2.126")]
    [InlineData("20 x 1.499")]
    [InlineData("20 x 2.126")]
    [InlineData("18 x 1.749")]
    [InlineData("18 x 2.126")]
    public void A_label_beyond_is_none(string text) => Assert.Empty(TyreLabel.Read(text).Values);
}
