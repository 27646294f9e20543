namespace Lugwork.Tests.Steering;

/// <summary>A stem has two clamps: a bare size that suits both ends is never taken as one of them.</summary>
public sealed class StemTextTests
{
    [Theory]
    [InlineData("31.8")]
    [InlineData("25.4")]
    [InlineData("31.8 mm")]
    [InlineData("25.4; 31.8")]
    public void A_bare_size_of_both_ends_is_refused_and_both_are_named(string text)
    {
        Assert.False(Stem.TryRead(text, out _, out var problems));
        Assert.Contains("could be fixing or bar", problems[0].Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("28.6; 31.8", "clamp-28.6", "31.8")]
    [InlineData("28.6 clamp; 25.4", "clamp-28.6", "25.4")]
    [InlineData("bar 25.4; 31.8", "clamp-31.8", "25.4")]
    [InlineData("fixing 31.8; bar 31.8", "clamp-31.8", "31.8")]
    public void Where_one_end_is_settled_a_bare_size_is_the_other(string text, string fixing, string bar)
    {
        Stem stem = Stem.Read(text);
        Assert.Equal(fixing, stem.Fixing.Value.FitKey);
        Assert.Equal(bar, stem.BarClamp.Value.FitKey);
    }
}
