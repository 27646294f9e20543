using System.Globalization;

namespace Lugwork.Tests.Fits;

public sealed class SideEffectsTests
{
    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    [InlineData("fa-IR")]
    public void Their_text_is_in_millimetres_and_the_same_in_every_culture(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            Assert.Equal("stack 12, chainline -0.25, rotor 3, each side 3.5 mm", new SideEffects(12_000, -250, 3_000, 3_500).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Those_of_two_bridges_add_up_figure_by_figure()
    {
        SideEffects one = new(1_000, 250, 3_000, 3_500);
        SideEffects two = new(-300, 1_500, -1_000, 2_000);
        Assert.Equal(new SideEffects(700, 1_750, 2_000, 5_500), one + two);
        Assert.Equal(one + two, two + one);
    }
}
