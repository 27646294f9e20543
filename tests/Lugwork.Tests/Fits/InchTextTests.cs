namespace Lugwork.Tests.Fits;

/// <summary>One sign for a fraction is written out, with a blank behind a figure: 1⅛ is never 11/8.</summary>
public sealed class InchTextTests
{
    [Theory]
    [InlineData("1⅛", "1 1/8")]
    [InlineData("⅞", "7/8")]
    [InlineData("1 ¼ - 1½", "1 1/4 - 1 1/2")]
    [InlineData("x⅜", "x3/8")]
    public void A_fraction_sign_is_written_out(string text, string plain) => Assert.Equal(plain, InchText.WithoutFractionSigns(text));

    [Fact]
    public void A_steerer_in_one_sign_is_the_one_in_figures() =>
        Assert.Equal(Lugwork.Steering.SteererSize.Parse("1 1/8", null), Lugwork.Steering.SteererSize.Parse("1⅛", null));
}
