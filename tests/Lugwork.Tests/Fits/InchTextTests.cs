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

    /// <summary>A freewheel thread is 1.375 in by 24 threads (ISO 6696), written with one sign or with figures.</summary>
    [Theory]
    [InlineData("1⅜ x 24", "1 3/8 x 24")]
    [InlineData("1⅜\" x 24 tpi", "1 3/8 x 24 ")]
    [InlineData("⅞ in", "7/8 ")]
    [InlineData("1⅜\u2033 x 24", "1 3/8 x 24")]
    [InlineData("1⅜'' x 24", "1 3/8 x 24")]
    [InlineData("26' x 24", "26' x 24")]
    public void The_plain_form_keeps_figure_and_fraction_apart(string text, string plain)
    {
        Assert.Equal(plain, InchText.Plain(text));
    }

    [Fact]
    public void A_steerer_in_one_sign_is_the_one_in_figures() =>
        Assert.Equal(Lugwork.Steering.SteererSize.Parse("1 1/8", null), Lugwork.Steering.SteererSize.Parse("1⅛", null));
}
