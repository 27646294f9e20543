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
}
