using Lugwork.Drivetrain;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Each chain on each class of teeth, a cell for every pair: F fits, ? needs measuring, X does not fit. Chains from 1/8 in, 5 to 8, 9 to 13 speeds, 5/32 in, to the belt.</summary>
public sealed class ChainMatrixTests
{
    [Theory]
    [InlineData("1/8", "FXXXXXX?X")]
    [InlineData("3/32-single", "FF??????X")]
    [InlineData("5-8", "XFF????XX")]
    [InlineData("9", "XXF????XX")]
    [InlineData("10", "XXXF???XX")]
    [InlineData("11", "XXX?F??XX")]
    [InlineData("12", "XXXX?F?XX")]
    [InlineData("13", "XXXX??FXX")]
    [InlineData("belt", "XXXXXXXX?")]
    public void On_sprockets(string sprockets, string cells) => Assert.Equal(cells, Row(ChainRelations.OnSprockets, SprocketClass.Parse(sprockets, null).FitCode));

    [Theory]
    [InlineData("1/8", "FXXXXXX?X")]
    [InlineData("3/32-single", "FF??????X")]
    [InlineData("5-8", "XF?????XX")]
    [InlineData("9", "X?F????XX")]
    [InlineData("10", "X??F???XX")]
    [InlineData("11", "X???F??XX")]
    [InlineData("12", "X????F?XX")]
    [InlineData("13", "X?????FXX")]
    [InlineData("belt", "XXXXXXXX?")]
    public void On_rings(string rings, string cells) => Assert.Equal(cells, Row(ChainRelations.OnRings, SprocketClass.Parse(rings, null).FitCode));

    [Theory]
    [InlineData("5-8", "XF?????XX")]
    [InlineData("9", "X?F????XX")]
    [InlineData("10", "X??F???XX")]
    [InlineData("11", "X???F??XX")]
    [InlineData("12", "X????F?XX")]
    [InlineData("13", "X?????FXX")]
    [InlineData("belt", "XXXXXXXXX")]
    public void Through_a_derailleur(string made, string cells) => Assert.Equal(cells, Row(ChainRelations.ThroughDerailleur, ChainSize.Parse(made, null).FitCode));

    [Theory]
    [InlineData("100.5", "100 100.5 101")]
    [InlineData("100.4", "")]
    [InlineData("249.5", "249 249.5 250")]
    [InlineData("249.6", "")]
    public void A_crank_of_no_usual_length_is_told_as_far_as_cranks_go(string read, string lengths) =>
        Assert.Equal(lengths, string.Join(' ', UsualCrankLength.WithinError(decimal.Parse(read, System.Globalization.CultureInfo.InvariantCulture), 0.5m).Select(c => c.FitKey)));

    [Theory]
    [InlineData("100", true)]
    [InlineData("250", true)]
    [InlineData("99.999999", false)]
    [InlineData("250.000001", false)]
    public void A_crank_is_100_to_250_mm_long(string text, bool isOne) => Assert.Equal(isOne, UsualCrankLength.TryParse(text, null, out _));

    private static string Row(Relation relation, long code) => string.Concat(ChainSize.All.Select(c => relation.Judge([code, c.FitCode]).Verdict switch
    {
        Verdict.Fits => 'F',
        Verdict.NeedsMeasuring => '?',
        Verdict.DoesNotFit => 'X',
        _ => '!',
    }));
}
