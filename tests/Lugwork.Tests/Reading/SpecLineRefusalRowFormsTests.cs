using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Rows and spoken lines whose figure stands apart from its name and is denied, offered beside another, or in conflict.</summary>
public sealed class SpecLineRefusalRowFormsTests
{
    [Theory]
    [InlineData("frame", "post. \u25BA QR 130 mm (= Boost 12\u00D7148)", "rear")]
    [InlineData("frame", "post. QR 130 mm (Boost 12x148)", "rear")]
    [InlineData("chain guide", "ISCG tabs, not the 05", "mount")]
    [InlineData("chain guide", "ISCG, 05 oder alt", "mount")]
    [InlineData("chain guide", "ISCG mount, 5", "mount")]
    [InlineData("chain guide", "ISCG or ISCG 05", "mount")]
    [InlineData("fork", "110 boost, eje pasante de quince a veinte", "front")]
    [InlineData("fork", "110 Boost, Steckachse f\u00FCnfzehn oder zwanzig", "front")]
    [InlineData("rear derailleur", "electronic, cable, 11 speed", "signal")]
    [InlineData("rear derailleur", "11 velocidades, electr\u00F3nico, por cable", "signal")]
    public void What_is_in_doubt_is_not_read(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);
}
